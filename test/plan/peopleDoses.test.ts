import { describe, expect, it } from "vitest";
import { personCard } from "../../src/card/personCard.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exact, times } from "../../src/number/exact.ts";
import { compare } from "../../src/person/compare/compare.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Person } from "../../src/person/person.ts";
import { cautionsFor } from "../../src/person/portion/cautions.ts";
import { type DoseCheck, doseCheck } from "../../src/person/portion/doses.ts";
import type { PersonInput, PlanInput } from "../../src/plan/input.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const cox: Person = { sex: "female", age: 15, mass: "46 kg" };
const stroke: Person = { sex: "male", age: 27, mass: "92 kg", conditions: ["warfarin"] };

const food = (id: string, iodine: Figure): FoodInput => ({
  id,
  name: id,
  source: "made up for a test",
  per100g: { energy: 130, iodine },
});
const foods = foodTable([food("rice", 900), food("kelp", 5500), food("dulse", 100)]);

/** A spoon of kelp the same for everyone: 10 g, 550 µg of iodine. */
const soup = sheet(
  {
    name: "Soup",
    portions: 2,
    lines: [
      { key: "rice", food: "rice", amount: "200 g" },
      { key: "kelp", food: "kelp", amount: "20 g", scaling: "per-portion", added: "serving" },
    ],
  },
  foods,
);
const side = sheet(
  { name: "Side", portions: 1, lines: [{ key: "dulse", food: "dulse", amount: "5 g" }] },
  foods,
);
const people: PlanInput["people"] = [
  { id: "cox", name: "Cox", person: cox, demands: { energy: 143 } },
  { id: "stroke", name: "Stroke", person: stroke, demands: { energy: 400 } },
  { id: "guest", name: "Guest" },
];
const meals = [{ id: "supper", name: "Supper", dishes: { soup, side } }];
const plan = portionPlan({ meals, people, authority: "eu" });

describe("doses of a plan", () => {
  it("weigh most on the smallest, against each one's own level", () => {
    // SCF and EFSA, overview of 2018: iodine 500 µg a day at 15 to 17 years, 600 µg for adults.
    const iodine = plan.doses?.rows.find(({ of }) => of === "iodine");
    expect(iodine?.line).toBe("supper/soup/kelp");
    expect(iodine?.amount.value.toString()).toBe("550");
    expect(iodine?.people.map(({ who, level, verdict }) => [who, level.value.toString(), verdict])).toEqual([
      ["cox", "500", "past"],
      ["stroke", "600", "under"],
    ]);
    expect(iodine?.riskiest).toBe("cox");
    // Someone whose body the plan was not told is not checked.
    expect(iodine?.checked).toEqual(["cox", "stroke"]);
    // Held lines grow with the portion, and are no doses.
    expect(plan.doses?.rows.every(({ line }) => line.endsWith("kelp"))).toBe(true);
    expect(plan.doses?.past.map(({ of }) => of)).toEqual(["iodine"]);
  });

  it("of cassia are held against the coumarin of each one's mass, under any authority", () => {
    // EFSA 2008: 0.1 mg per kg a day; BfR 2012: 0.5 g of cassia for a child of 15 kg, 2 g for 60 kg.
    const lines = [
      { key: "oats", food: "oats-rolled-dry", amount: "120 g" },
      { key: "cassia", food: "cinnamon-ground", amount: "6 g", scaling: "per-portion", added: "serving" },
    ] as const;
    const porridge = sheet({ name: "Porridge", portions: 3, lines }, starterFoods);
    const crew: PlanInput["people"] = [15, 60, 90].map((mass) => ({
      id: `kg${mass}`,
      person: { sex: "male", age: mass === 15 ? 4 : 30, mass },
    }));
    for (const authority of ["uk", "us", "eu"] as const) {
      const { doses } = portionPlan({
        meals: [{ id: "breakfast", dishes: { porridge } }],
        people: crew,
        authority,
      });
      const coumarin = doses?.rows.find(({ of }) => of === "coumarin");
      expect(coumarin?.people.map(({ who, share, verdict }) => [who, share?.toFixed(3), verdict])).toEqual([
        ["kg15", "4.000", "past"],
        ["kg60", "1.000", "may-be-past"],
        ["kg90", "0.667", "may-be-past"],
      ]);
      expect(doses?.past.map(({ of }) => of)).toContain("coumarin");
    }
  });

  it("weigh, of people with one level, most on the lightest", () => {
    // 18 and over share EFSA's level; per kilogram the lightest gets most.
    const crew = [84, 61, 75].map((mass) => ({
      id: `kg${mass}`,
      person: { sex: "male", age: 30, mass: `${mass} kg` } as const,
    }));
    const doses = portionPlan({ meals, people: crew, authority: "eu" }).doses;
    const iodine = doses?.rows.find(({ of }) => of === "iodine");
    expect(iodine?.people.map(({ who }) => who)).toEqual(["kg61", "kg75", "kg84"]);
    expect(iodine?.people[0]?.perKg?.toFixed(3)).toBe((550 / 61).toFixed(3));
  });

  it("are those of a check by hand of the dishes", () => {
    const who = { cox: referenceIntakes("eu", cox), stroke: referenceIntakes("eu", stroke) };
    const byHand = doseCheck({ "supper/soup": soup, "supper/side": side }, who);
    const told = ({ rows }: typeof byHand): unknown =>
      rows.map(({ line, of, grams, people: all }) => [
        line,
        of,
        `${grams}`,
        all.map((p) => [p.who, `${p.share}`, p.verdict]),
      ]);
    expect(plan.doses && told(plan.doses)).toEqual(told(byHand));
  });

  it("leave out whoever is served nothing", () => {
    // Nobody can have less than a portion's kelp alone brings.
    const [first, ...others] = people;
    const none = { ...first, id: "cox", demands: [{ of: "iodine", most: 100, firm: true }] } as const;
    const short = portionPlan({ meals, people: [none, ...others], authority: "eu" });
    expect(short.portion("cox", "supper").status).toBe("not-served");
    expect(short.doses?.rows.map(({ checked }) => checked)).toContainEqual(["stroke"]);
    expect(short.doses?.rows.some(({ checked }) => checked.includes("cox"))).toBe(false);
    expect(short.cautions("cox", "supper")).toEqual([]);
    expect(() => toText(short, { parts: "all" })).not.toThrow();
  });

  it("stand in the plan's tables by name, though two people share one", () => {
    const twins = people.map((one) => ({ ...one, name: "Twin" }));
    const twice = portionPlan({ meals, people: twins, authority: "eu" });
    const doses = tablesOf(twice).find(({ title }) => title?.includes("upper levels"));
    expect(doses?.columns.filter(({ heading }) => heading === "Twin")).toHaveLength(2);
    expect(toText(plan, { parts: "all" })).toContain("110% of 500 µg");
  });

  it("show a seaweed's range to a girl whose authority has no level at her age", () => {
    // EVM 2003: iodine 940 µg, for adults; SCF 2002: 500 µg at 15 to 17. 1.7 g of raw kelp: 75 to 3,132 µg.
    const lines = [{ key: "kelp", food: "kelp-raw", amount: "1.7 g", scaling: "per-portion" as const }];
    const broth = sheet({ name: "Broth", portions: 1, lines }, starterFoods);
    const uk = portionPlan({
      meals: [{ id: "dinner", dishes: broth }],
      people: [{ id: "cox", name: "Cox", person: { ...cox, age: 17 } }],
      authority: "uk",
    });
    expect(uk.doses?.mayBePast.map(({ of }) => of)).toEqual(["iodine"]);
    expect(toText(uk, { parts: "all", width: 160 })).toContain(
      "15 to 627% of 500 µg (EU level: no UK level at this age)",
    );
    // On the card of a plan by the EU's figures, the words go with both ends, silent lines or not.
    const card = (more: readonly object[]): string => {
      const dishes = sheet(
        { name: "Dinner", portions: 1, lines: [...lines, ...(more as typeof lines)] },
        starterFoods,
      );
      const eaten = portionPlan({
        meals: [{ id: "dinner", dishes }],
        people: [{ id: "cox", name: "Cox", person: { ...cox, age: 17 } }],
        authority: "eu",
      });
      return personCard(eaten, "cox").replaceAll("&nbsp;", " ");
    };
    expect(card([])).toContain("75.4 to 3132 µg may be above the upper level of 500 µg a day");
    const rice = { key: "rice", food: "rice-white-long-boiled", amount: "200 g" };
    expect(card([rice])).toContain("75.4 to 3132 µg or more may be above the upper level of 500 µg a day");
  });

  it("are not there without an authority, or a person", () => {
    expect(portionPlan({ meals, people }).doses).toBeUndefined();
    expect(portionPlan({ meals, people: [{ id: "guest" }], authority: "uk" }).doses).toBeUndefined();
    expect(portionPlan({ meals, people }).intakes("cox")).toBeUndefined();
  });
});

describe("a plan's people", () => {
  const greens = sheet(
    { name: "Greens", portions: 1, lines: [{ key: "kale", food: "kale-raw", amount: "80 g" }] },
    starterFoods,
  );
  const liver = sheet(
    { name: "Liver", portions: 1, lines: [{ key: "liver", food: "beef-liver-braised", amount: "80 g" }] },
    starterFoods,
  );
  const two = portionPlan({
    meals: [
      { id: "lunch", dishes: greens },
      { id: "supper", dishes: liver },
    ],
    people,
    authority: "uk",
  });

  it("have the cautions of what they are served, meal by meal and together", () => {
    const codes = (id: string, meal?: string): string[] =>
      two.cautions(id, meal).map(({ code, lines }) => `${code} ${lines.join(",")}`);
    const lunch = two.portion("stroke", "lunch").dishes.get("lunch");
    const byHand = cautionsFor(lunch ?? greens, stroke).map(
      ({ code, lines }) => `${code} ${lines.join(",")}`,
    );
    expect(codes("stroke", "lunch")).toEqual(byHand);
    expect(codes("stroke", "lunch")[0]).toBe("warfarin-vitamin-k kale");
    expect(codes("stroke")[0]).toBe("warfarin-vitamin-k lunch/kale");
    // What foods carry for everyone comes to a guest, too; what meets a person does not.
    expect(two.cautions("guest", "lunch").every(({ because }) => because.length === 0)).toBe(true);
    expect(two.cautions("guest", "lunch").length).toBeGreaterThan(0);
    expect(toText(two, { parts: "all" })).toContain("Cautions, person by person");
  });

  it("have a day that their portions can be held against", () => {
    const day = two.intakes("stroke");
    const lunch = two.portion("stroke", "lunch").dishes;
    expect(day?.authority).toBe("uk");
    expect(day && toText(compare(lunch, day))).toBe(toText(compare(lunch, referenceIntakes("uk", stroke))));
  });

  it("are asked for by their ids", () => {
    expect(errorOf(() => two.cautions("stork")).hint).toContain("stroke");
    expect(errorOf(() => two.cautions("stroke", "luunch")).hint).toContain("lunch");
    expect(errorOf(() => two.intakes("nobody")).code).toBe("plan-malformed");
  });
});

describe("doses and cautions over days", () => {
  const cox: PersonInput["person"] = { sex: "female", age: 15, mass: "48 kg" };
  const liver = (grams: number): Sheet =>
    sheet(
      {
        name: "Broth",
        portions: 1,
        lines: [
          { key: "water", food: "water-tap", amount: "250 g" },
          { key: "liver", food: "beef-liver-braised", amount: `${grams} g`, scaling: "per-portion" },
        ],
      },
      starterFoods,
    );
  const retinolIn = (doses: DoseCheck | undefined) => doses?.rows.find(({ of }) => of === "retinol");
  const meals = (...grams: readonly number[]) =>
    grams.map((each, i) => ({ id: `meal${i}`, dishes: { broth: liver(each) } }));

  // SCF 2002: preformed vitamin A, 2,000 µg at 11 to 14, 2,600 µg at 15 to 17. SR28: 9,428 µg in 100 g of the liver.
  it("judge a dose by its day: eaten twice, with a supplement beside it", () => {
    const person = { id: "cox", person: cox };
    const once = portionPlan({ meals: meals(12), people: [person], authority: "eu" });
    expect(retinolIn(once.doses)?.people[0]?.verdict).toBe("under");
    const twice = portionPlan({ meals: meals(12, 12), people: [person], authority: "eu" });
    expect(retinolIn(twice.doses)?.amount.value.eq(times(exact("94.28"), exact(24)))).toBe(true);
    expect(retinolIn(twice.doses)?.people[0]?.verdict).toBe("under");
    const capsule = [{ name: "Capsule", brings: { retinol: "500 µg" } }];
    const more = portionPlan({
      meals: meals(12, 12),
      people: [{ ...person, besides: capsule }],
      authority: "eu",
    });
    expect(retinolIn(more.doses)?.people[0]?.verdict).toBe("past");
    expect(retinolIn(more.doses)?.line).toBe("meal0/liver + meal1/liver");
  });

  it("judge the mean of several days, a single day above being a note", () => {
    const days = [40, 0, 0].map((grams, i) => ({
      id: `day${i}`,
      meals: [
        {
          id: "supper",
          dishes:
            grams > 0
              ? { broth: liver(grams) }
              : {
                  broth: sheet(
                    { name: "Water", portions: 1, lines: [{ food: "water-tap", amount: "250 g" }] },
                    starterFoods,
                  ),
                },
        },
      ],
    }));
    const plan = portionPlan({ days, people: [{ id: "cox", name: "Cox", person: cox }], authority: "eu" });
    const [own] = retinolIn(plan.doses)?.people ?? [];
    expect([own?.verdict, own?.days]).toEqual(["under", ["day0"]]);
    expect(plan.doses?.past.some(({ of }) => of === "retinol")).toBe(false);
    expect(toText(plan, { parts: "people" })).toContain(
      "Cox is above the level on single days, not on the mean: day0",
    );
  });

  it("heed each day by itself, never a week as one day, and what is drunk besides", () => {
    // EFSA 2015: caffeine, 200 mg a day in pregnancy. A cup is about 95 mg.
    const cup = sheet(
      { name: "Coffee", portions: 1, lines: [{ food: "coffee-brewed", amount: "237 g" }] },
      starterFoods,
    );
    const days = ["mon", "tue", "wed"].map((id) => ({ id, meals: [{ id: "tea", dishes: { cup } }] }));
    const person: PersonInput = { id: "bow", person: { sex: "female", age: 31, mass: "66 kg", pregnant: 2 } };
    const caffeine = (plan: Plan, at?: string) => {
      const own = plan.cautions("bow", at).find(({ code }) => code === "caffeine-pregnancy");
      return [own?.days, own?.amounts[0]?.amount.value.toFixed(0)];
    };
    // SR28: 40 mg of caffeine in 100 g of brewed coffee.
    const plain = portionPlan({ days, people: [person], authority: "eu" });
    expect(caffeine(plain)).toEqual([["mon", "tue", "wed"], "95"]);
    expect(caffeine(plain, "mon/tea")).toEqual([undefined, "95"]);
    const besides = [
      { name: "Coffee at the club", days: ["tue"], sheet: cup },
      { name: "Cola", days: ["tue"], brings: { caffeine: "40 mg" } },
    ];
    const more = portionPlan({ days, people: [{ ...person, besides }], authority: "eu" });
    expect(caffeine(more, "tue")).toEqual([["tue"], "230"]);
    expect(caffeine(more, "mon")).toEqual([["mon"], "95"]);
    expect(caffeine(more)).toEqual([["mon", "tue", "wed"], "140"]);
  });
});
