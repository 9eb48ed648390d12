import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { exactText } from "../../src/number/digits.ts";
import { exact, plus, times } from "../../src/number/exact.ts";
import { compare } from "../../src/person/compare/compare.ts";
import type { Comparison } from "../../src/person/compare/comparison.ts";
import { type ReferenceIntakes, referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Authority } from "../../src/person/intakes/table.ts";
import type { Person } from "../../src/person/person.ts";
import { readEaten } from "../../src/person/portion/eaten.ts";
import { scale } from "../../src/scale/scale.ts";
import { between } from "../../src/sheet/between.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { runs } from "../runs.ts";

const woman: Person = { sex: "female", age: 30, mass: "60 kg", height: "1.70 m", activity: "active" };
const authorities: readonly Authority[] = ["uk", "us", "eu"];
const intakes: readonly ReferenceIntakes[] = authorities.map((a) => referenceIntakes(a, woman));

/** Amounts up to some three times what a day wants, so that every verdict turns up. */
const reaches: { readonly [C in ComponentId]?: number } = {
  energy: 900,
  protein: 60,
  fat: 40,
  carbohydrateByDifference: 120,
  alcohol: 10,
  saturatedFat: 15,
  addedSugars: 30,
  fibre: 30,
  sodium: 3000,
  potassium: 4000,
  iron: 60,
  selenium: 400,
  iodine: 900,
  vitaminE: 10,
  vitaminC: 150,
  niacin: 20,
  tryptophan: 1,
  retinol: 4000,
  betaCarotene: 9000,
  alphaCarotene: 900,
  betaCryptoxanthin: 900,
  foodFolate: 300,
  folicAcid: 1500,
  omega6: 15,
  omega3: 4,
  caffeine: 300,
};
const ids = Object.keys(reaches) as ComponentId[];

/** A food as it truly is, and what its data say of it: each figure told, hidden, a trace, a limit or an interval. */
interface Hidden {
  readonly truth: FoodInput;
  readonly told: FoodInput;
}

const part = fc.integer({ min: 0, max: 1000 });
const ways = ["told", "told", "told", "missing", "trace", "below", "interval"] as const;

const hiddenFood = (i: number, most: number): fc.Arbitrary<Hidden> =>
  fc
    .tuple(...ids.map(() => fc.tuple(part, fc.constantFrom(...ways.slice(0, most)), part)))
    .map((figures): Hidden => {
      const truth: { [C in ComponentId]?: Figure } = {};
      const told: { [C in ComponentId]?: Figure } = {};
      figures.forEach(([share, way, width], k) => {
        const id = ids[k] as ComponentId;
        // Protein and fat are never 0: nothing follows from them but what is told.
        const thousandths = share * (reaches[id] ?? 1) + (id === "protein" || id === "fat" ? 1 : 0);
        const text = (n: number): string => `${n}/1000`;
        truth[id] = text(thousandths);
        if (way === "told") told[id] = text(thousandths);
        if (way === "trace") told[id] = "trace";
        if (way === "below") told[id] = { below: text(thousandths + width + 1) };
        if (way === "interval") {
          const low = Math.max(0, thousandths - width);
          const middle = low + Math.floor((width + thousandths - low) / 2);
          told[id] = {
            value: text(middle),
            low: text(low),
            high: text(Math.max(middle, thousandths + width)),
          };
        }
      });
      const base = { id: `f${i}`, name: `f${i}`, source: "made up for a test" };
      return { truth: { ...base, per100g: truth }, told: { ...base, per100g: told } };
    });

/** With the first so many of the ways: 1 tells all, 6 hides, 7 rounds too. */
const foodsOf = (most: number): fc.Arbitrary<Hidden[]> =>
  fc
    .integer({ min: 1, max: 4 })
    .chain((n) => fc.tuple(...Array.from({ length: n }, (_, i) => hiddenFood(i, most))));

const someFoods = foodsOf(7);

function dish(foods: readonly FoodInput[], unit: "g" | "oz" = "g"): Sheet {
  // An ounce is 28.349523125 g exactly (international pound, 1959).
  const amount = unit === "g" ? "56.69904625 g" : "2 oz";
  const lines = foods.map(({ id }) => ({ key: id, food: id, amount }));
  return sheet({ name: "Dish", portions: 1, lines }, foodTable(foods));
}

/** Every verdict of a comparison, by what it is of. */
function verdicts(c: Comparison): Map<string, string> {
  const found = new Map<string, string>();
  for (const { of, references, uppers } of c.rows) {
    references.forEach((held, i) => {
      found.set(`${of} ${i}`, held.verdict);
    });
    uppers.forEach((held, i) => {
      found.set(`${of} upper ${i}`, held.verdict);
    });
  }
  c.balance.forEach(({ of, verdict }, i) => {
    if (verdict) found.set(`share of ${of} ${i}`, verdict);
  });
  return found;
}

describe("a verdict", () => {
  it("that is proven of what is told holds of the truth, whatever the gaps hide", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        fc.constantFrom(1, 6, 7).chain((most) => fc.tuple(foodsOf(most), fc.constant(most))),
        ([foods]) => {
          for (const day of intakes) {
            const told = verdicts(compare(dish(foods.map((f) => f.told)), day));
            const truth = verdicts(compare(dish(foods.map((f) => f.truth)), day));
            for (const [name, verdict] of told) {
              // Alpha-tocopherol and free sugars stay open even where all is told.
              if (verdict === "not-proven" || verdict === "may-be-past") continue;
              expect(truth.get(name), `${day.authority} ${name}`).toBe(verdict);
              seen.add(verdict);
            }
          }
        },
      ),
      { numRuns: runs(90) },
    );
    expect([...seen].sort()).toEqual(["other-sources", "over", "part", "past", "under", "whole", "within"]);
  });

  it("does not change with the units that a recipe and a body are written in", () => {
    // 60 kg is 60/0.45359237 lb; 1.70 m is 1700/304.8 ft (international yard and pound agreement, 1959).
    const imperial: Person = { ...woman, mass: "6000000000/45359237 lb", height: "17000/3048 ft" };
    fc.assert(
      fc.property(someFoods, fc.constantFrom(...authorities), (foods, authority) => {
        const told = foods.map((f) => f.told);
        const [metric, other] = [
          compare(dish(told), referenceIntakes(authority, woman)),
          compare(dish(told, "oz"), referenceIntakes(authority, imperial)),
        ];
        expect(verdicts(other)).toEqual(verdicts(metric));
        expect(other.rows.map((r) => r.reference?.share?.toString())).toEqual(
          metric.rows.map((r) => r.reference?.share?.toString()),
        );
      }),
      { numRuns: runs(30) },
    );
  });
});

describe("a share", () => {
  it("is twice as much of twice the portion, literally", () => {
    fc.assert(
      fc.property(someFoods, fc.constantFrom(...intakes), (foods, day) => {
        const s = dish(foods.map((f) => f.told));
        const once = compare(s, day).rows;
        const twice = compare(scale(s, { factor: 2 }).sheet, day).rows;
        once.forEach(({ references, uppers }, i) => {
          const held = [...references, ...uppers];
          const more = [...(twice[i]?.references ?? []), ...(twice[i]?.uppers ?? [])];
          held.forEach(({ share, bound }, k) => {
            expect(more[k]?.bound).toBe(bound);
            expect(more[k]?.share && exactText(more[k].share)).toBe(
              share && exactText(times(share, exact(2))),
            );
          });
        });
      }),
      { numRuns: runs(40) },
    );
  });

  it("of meals together is the sum of theirs, in any order", () => {
    fc.assert(
      fc.property(someFoods, someFoods, fc.constantFrom(...intakes), (one, other, day) => {
        const [a, b] = [dish(one.map((f) => f.truth)), dish(other.map((f) => f.truth))];
        const [ca, cb] = [compare(a, day), compare(b, day)];
        const together = compare({ a, b }, day);
        const turned = compare({ b, a }, day);
        together.rows.forEach(({ reference }, i) => {
          const [x, y] = [ca.rows[i]?.reference, cb.rows[i]?.reference];
          if (!reference || !x?.share || !y?.share) return;
          expect(reference.share && exactText(reference.share)).toBe(exactText(plus(x.share, y.share)));
          expect(turned.rows[i]?.reference?.share).toEqual(reference.share);
        });
      }),
      { numRuns: runs(30) },
    );
  });

  it("of a smaller body is no smaller, where a figure is per kilogram", () => {
    // Protein: RNI and PRI per kilogram (COMA 1991, EFSA 2012), RDA too (Institute of Medicine 2002/2005).
    const s = dish([{ id: "a", name: "a", source: "made up for a test", per100g: { protein: 40 } }]);
    fc.assert(
      fc.property(fc.integer({ min: 35, max: 140 }), fc.integer({ min: 1, max: 30 }), (mass, more) => {
        for (const authority of authorities) {
          const share = (kg: number): number =>
            Number(
              compare(s, referenceIntakes(authority, { ...woman, mass: kg })).get("protein")?.reference
                ?.share,
            );
          // No more is counted than the mass at a body mass index of 30: 86.7 kg at 1.70 m.
          if (mass >= 87) expect(share(mass)).toBe(share(mass + more));
          else expect(share(mass)).toBeGreaterThan(share(mass + more));
        }
      }),
      { numRuns: runs(30) },
    );
  });
});

describe("what a portion can hold, least and most", () => {
  it("is what the sheet says of its range with no like food, nested or not, told or hidden", () => {
    fc.assert(
      fc.property(fc.constantFrom(1, 6, 7).chain(foodsOf), (foods) => {
        const told = foods.map((f) => f.told);
        const inner = {
          name: "In",
          portions: 2,
          lines: told.map(({ id }) => ({ key: id, food: id, amount: "30 g" })),
        };
        const nested = sheet(
          {
            name: "Out",
            portions: 3,
            lines: [
              { key: "in", recipe: inner, amount: "50 g", retention: { iron: "0.7", selenium: "0.9" } },
              { key: "f0", food: "f0", amount: "10 g" },
            ],
          },
          foodTable(told),
        );
        for (const s of [dish(told), nested]) {
          const portion = readEaten(s, "comparison-malformed");
          for (const id of ids) {
            const range = between(s, id, { where: "portion", like: () => [] });
            const { low, high } = portion.ends(id);
            expect(low && exactText(low), id).toBe(exactText(range.least));
            expect(high && exactText(high), id).toBe(range.most && exactText(range.most));
          }
        }
      }),
      { numRuns: runs(40) },
    );
  });
});
