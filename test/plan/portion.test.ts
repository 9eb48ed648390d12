import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, over, sum, times, ZERO } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { fit } from "../../src/scale/fit.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toText as shown } from "../../src/show/text.ts";
import { arbitraryRecipe, watched } from "../arbitraries.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const text = (f: Exact | undefined): string => exactText(f ?? exact(-1));

const bowl = sheet(
  {
    name: "Rice and tofu",
    portions: 2,
    lines: [
      { key: "rice", food: "rice-white-long-boiled", amount: "400 g", part: "starch" },
      { key: "peas", food: "peas-frozen-boiled-drained", amount: "160 g" },
      { key: "tofu", food: "tofu-firm", amount: "200 g", scaling: "adjustable" },
      { key: "salt", food: "salt", amount: "2 g", scaling: "per-portion" },
    ],
  },
  starterFoods,
);

const athlete: readonly Demand[] = [
  { of: "energy", exactly: "700 kcal" },
  { of: "protein", least: "38 g" },
];

describe("a portion by demands", () => {
  it("is what a fit of one portion gives", () => {
    const plan = portionPlan({
      meals: [{ id: "lunch", dishes: bowl }],
      people: [{ id: "bow", demands: athlete }],
    });
    const portion = plan.portion("bow", "lunch");
    const one = fit(scale(bowl, { portions: 1 }).sheet, athlete);
    expect(portion.status).toBe("met");
    expect(one.status).toBe("met");
    if (one.status !== "met") return;
    expect(portion.dishes.get("lunch")?.lines.map((l) => text(l.grams))).toEqual(
      one.sheet.lines.map((l) => text(l.grams)),
    );
    expect(text(plan.brings("bow", "lunch", "energy").value)).toBe("700");
    expect(portion.fit?.factors.map(({ name }) => name)).toEqual(["starch", "tofu"]);
    expect(plan.unmet).toEqual([]);
  });

  it("fits the dishes of a meal together", () => {
    const shot = sheet(
      { name: "Shot", portions: 1, lines: [{ key: "milk", food: "milk-whole", amount: "150 g" }] },
      starterFoods,
    );
    const plan = portionPlan({
      meals: [{ id: "lunch", dishes: { bowl, shot }, fit: { base: "shot" } }],
      people: [{ id: "bow", demands: athlete }],
    });
    expect(text(plan.brings("bow", "lunch", "energy").value)).toBe("700");
    expect(plan.portion("bow", "lunch").fit?.factors.map(({ name }) => name)).toEqual([
      "bowl",
      "bowl/starch",
      "bowl/tofu",
    ]);
  });

  it("that is out of reach is the nearest, and says what it misses", () => {
    const plan = portionPlan({
      meals: [{ id: "lunch", name: "Lunch", dishes: bowl }],
      people: [
        { id: "bow", demands: athlete },
        {
          id: "stroke",
          name: "Stroke",
          demands: [
            { of: "energy", exactly: 700 },
            { of: "protein", least: 120 },
          ],
        },
      ],
    });
    const portion = plan.portion("stroke", "lunch");
    expect(portion.status).toBe("out-of-reach");
    expect(portion.misses.map(({ demand }) => demand)).toEqual([{ of: "protein", least: 120 }]);
    expect(portion.why).toMatch(/cannot stand together/);
    expect(portion.dishes.size).toBe(1);
    expect(plan.unmet).toEqual([portion]);
    expect(shown(plan, { parts: "all" })).toMatch(/Stroke +Lunch +protein at least 120 g: .* short/);
  });

  it("whose firm demands cannot hold is not served, and nothing is cooked for it", () => {
    const firm: readonly Demand[] = [
      { of: "energy", least: 700, firm: true },
      { of: "energy", most: 20, firm: true },
    ];
    const meals = [{ id: "lunch", name: "Lunch", dishes: bowl }];
    const plan = portionPlan({
      meals,
      people: [
        { id: "bow", demands: athlete },
        { id: "cox", demands: firm },
      ],
    });
    const portion = plan.portion("cox", "lunch");
    expect([portion.status, portion.dishes.size, portion.factor.toString()]).toEqual(["not-served", 0, "0"]);
    expect(text(plan.brings("cox", "lunch", "energy").value)).toBe("0");
    expect(text(plan.holds("lunch", "energy").value)).toBe("700");
    expect(plan.meals[0]?.batch.get("lunch")?.portions.toString()).toBe("1");
    expect(shown(plan, { parts: "all" })).toMatch(/cox +Lunch +nothing is served/);
    const nobody = portionPlan({ meals, people: [{ id: "cox", demands: firm }] });
    expect(nobody.meals[0]?.batch.get("lunch")?.mass.raw.toString()).toBe("0");
    expect(shown(nobody, { parts: "all" })).toMatch(/nothing is served/);
  });
});

describe("a batch", () => {
  it("is the sum of the portions, however each was found", () => {
    const demand: fc.Arbitrary<Demand> = fc.record({
      of: fc.constantFrom("energy" as const, "protein" as const, "mass" as const),
      least: fc.integer({ min: 0, max: 300 }),
    });
    const wanted = fc.oneof(
      fc.array(demand, { minLength: 1, maxLength: 3 }),
      fc.integer({ min: 1, max: 40 }).map((n) => ({ factor: `${n}/9` })),
    );
    fc.assert(
      fc.property(
        arbitraryRecipe,
        fc.array(wanted, { minLength: 1, maxLength: 4 }),
        ({ table, recipe }, all) => {
          const plan = portionPlan({
            meals: [{ id: "meal", dishes: sheet(recipe, table) }],
            people: all.map((demands, i) => ({ id: `p${i}`, demands })),
          });
          const served = plan.portions.flatMap((p) => p.dishes.get("meal") ?? []);
          const batch = plan.meals[0]?.batch.get("meal");
          batch?.lines.forEach(({ grams }, i) => {
            expect(text(sum(served.map((s) => s.lines[i]?.grams ?? ZERO)))).toBe(text(grams));
          });
          expect(text(sum(served.map((s) => s.masses.cooked)))).toBe(text(batch?.masses.cooked));
          for (const id of watched) {
            const [portions, all] = [
              sum(served.map((s) => s.total(id).value)),
              batch?.total(id).value ?? ZERO,
            ];
            // A portion that loses more than its water has an unknown amount left, counted as none: not less.
            if (id === "water" && served.some((s) => s.water.beyond.n !== 0n))
              expect(compareRatios(portions, all)).toBeGreaterThanOrEqual(0);
            else expect(text(portions)).toBe(text(all));
          }
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it("follows a target by one factor, as scaling does", () => {
    fc.assert(
      fc.property(arbitraryRecipe, fc.integer({ min: 1, max: 900 }), ({ table, recipe }, target) => {
        const s = sheet(recipe, table);
        const how = { silent: "accept" as const };
        const attempt = <T>(step: () => T): T | string => {
          try {
            return step();
          } catch (error) {
            return (error as { code: string }).code;
          }
        };
        const expected = attempt(() => text(scale(s, { protein: target }, how).factor));
        const got = attempt(() =>
          text(
            portionPlan({
              meals: [{ id: "m", dishes: s }],
              people: [{ id: "p", demands: { protein: target } }],
              ...how,
            }).portion("p", "m").factor,
          ),
        );
        expect(got).toBe(expected);
      }),
    );
  });

  it("is refused where a line says nothing of the target, unless that is accepted", () => {
    const meals = [{ id: "m", dishes: bowl }];
    const people = [{ id: "p", demands: { choline: "40 mg" } }];
    expect(errorOf(() => portionPlan({ meals, people })).code).toBe("target-silent");
  });

  it("is planned again the same, whatever the order of people", () => {
    const people = [3, 1, 2].map((n) => ({ id: `p${n}`, demands: { factor: `${n}/7` } }));
    const of = (all: typeof people) =>
      portionPlan({ meals: [{ id: "m", dishes: bowl }], people: all })
        .meals[0]?.batch.get("m")
        ?.lines.map((l) => text(l.grams));
    expect(of(people)).toEqual(of([...people].reverse()));
    const rice = times(exact(200), over(exact(6), exact(7)));
    expect(of(people)?.[0]).toBe(text(rice));
  });
});
