import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { type LineInput, type Sheet, sheet } from "../../src/index.ts";
import type { DayInput, PersonInput } from "../../src/plan/input.ts";
import { openPlan, planDifference, portionPlan, shoppingDifference, shoppingList } from "../../src/plan.ts";
import { toCsv, toRecords, toText } from "../../src/show.ts";
import { errorOf } from "../number/errorOf.ts";

const of = (name: string, lines: readonly LineInput[]): Sheet =>
  sheet({ name, portions: 1, lines }, starterFoods);
const porridge = of("Porridge", [{ key: "oats", food: "oats-rolled-dry", amount: "80 g" }]);
const stew = of("Stew", [
  { key: "lentils", food: "lentils-boiled", amount: "200 g" },
  { key: "kale", food: "kale-raw", amount: "80 g", scaling: "adjustable" },
]);
const days: readonly DayInput[] = ["mon", "tue"].map((id) => ({
  id,
  meals: [
    { id: "breakfast", dishes: porridge },
    { id: "supper", dishes: { stew } },
  ],
}));
const planned = (person: Omit<PersonInput, "id">, menu = days) =>
  portionPlan({ days: menu, people: [{ id: "cox", ...person }, { id: "bow" }] });
const daily = (kcal: number) => [{ of: "energy", exactly: kcal }] as const;
const grams = (plan: ReturnType<typeof planned>, meal: string) =>
  [...plan.portion("cox", meal).dishes].map(([dish, s]) => [
    dish,
    ...s.lines.map((line) => line.grams.toString()),
  ]);

describe("portions that are kept", () => {
  const before = planned({ daily: daily(1500) });
  const keep = { "mon/breakfast": before.kept("cox", "mon/breakfast") };

  it("stay as they were, and the rest of the day makes up for them", () => {
    const after = planned({ daily: daily(2000), keep });
    expect(grams(after, "mon/breakfast")).toEqual(grams(before, "mon/breakfast"));
    expect(after.day("cox", "mon").brings("energy").value.toString()).toBe("2000");
    expect(after.day("cox", "mon").status).toBe("met");
    const energy = (day: string) => after.brings("cox", `${day}/supper`, "energy").value;
    expect(energy("mon").gt(energy("tue"))).toBe(true);
  });

  it("stay where meals are planned one by one, and open again", () => {
    const after = planned({ demands: { factor: 3 }, keep });
    expect(grams(after, "mon/breakfast")).toEqual(grams(before, "mon/breakfast"));
    expect(grams(after, "tue/breakfast")).toEqual([["breakfast", "240"]]);
    expect(openPlan(JSON.parse(JSON.stringify(after))).toJSON().portions).toEqual(after.toJSON().portions);
  });

  it("are refused where they name what is not there", () => {
    const told = (given: object) =>
      errorOf(() => planned({ keep: given as never })).faults.map(
        ({ path, message }) => `${path.join(".")}: ${message}`,
      );
    expect(told({ tea: {} })).toEqual(['people.0.keep.tea: no meal is called "tea"']);
    expect(told({ "mon/supper": { soup: {} } })).toEqual([
      'people.0.keep.mon/supper.soup: no dish is called "soup"',
    ]);
    expect(told({ "mon/supper": { stew: { tofu: 1 } } })).toEqual([
      'people.0.keep.mon/supper.stew.tofu: there is no line "tofu"',
    ]);
  });
});

describe("the difference of two plans", () => {
  it("tells people, meals, dishes, amounts and means", () => {
    const [mon] = days;
    if (!mon) throw new Error("no day");
    const before = planned({ demands: { factor: 1 } });
    const after = portionPlan({
      days: [
        {
          ...mon,
          meals: [
            { id: "breakfast", dishes: porridge },
            { id: "supper", dishes: { soup: stew } },
          ],
        },
      ],
      people: [{ id: "cox", demands: { factor: 2 } }, { id: "stroke" }],
    });
    const { people, meals, dishes, amounts, means } = planDifference(before, after);
    expect(people).toEqual({ in: ["stroke"], out: ["bow"] });
    expect(meals).toEqual({ in: [], out: ["tue/breakfast", "tue/supper"] });
    expect(dishes).toEqual([{ meal: "mon/supper", in: ["soup"], out: ["stew"] }]);
    expect(
      amounts.map(({ person, line, before: was, after: is }) => `${person} ${line} ${was} ${is}`),
    ).toEqual(["cox oats 80 160"]);
    expect(means.map(({ person, component }) => `${person} ${component}`)[0]).toBe("cox energy");
    const none = planDifference(before, before);
    expect([none.amounts, none.means, none.dishes, none.shopping.changes]).toEqual([[], [], [], []]);
  });

  it("tells what is bought otherwise in the same call, by the plans or by lists of one's own", () => {
    const after = planned({ daily: daily(2000) });
    const before = planned({ daily: daily(1500) });
    const whole = planDifference(before, after);
    const apart = shoppingDifference(shoppingList(before), shoppingList(after));
    expect(whole.shopping.changes.length).toBeGreaterThan(0);
    expect(toCsv(whole)).toContain(toCsv(apart).split("\n")[2] ?? "nothing");
    const shopping = {
      before: shoppingList(before),
      after: shoppingList(after, { cupboard: { "oats-rolled-dry": "enough" } }),
    };
    const { changes } = planDifference(before, after, { shopping }).shopping;
    expect(changes.find(({ food }) => food === "oats-rolled-dry")?.change).toBe("removed");
    const text = toText(whole);
    for (const heading of ["Served otherwise", "A day on the mean", "Bought otherwise than before"])
      expect(text).toContain(heading);
    expect(toRecords(whole).filter(({ what }) => what === "before")).toHaveLength(
      whole.amounts.length + whole.means.length + whole.shopping.changes.length,
    );
  });
});
