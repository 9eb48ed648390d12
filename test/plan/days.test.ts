import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { sheet } from "../../src/index.ts";
import { compare, referenceIntakes } from "../../src/person.ts";
import type { DayInput, PlanInput } from "../../src/plan/input.ts";
import { openPlan, portionPlan } from "../../src/plan.ts";
import { errorOf } from "../number/errorOf.ts";

const of = (food: string, grams: number, key = food) =>
  sheet({ name: food, portions: 1, lines: [{ key, food, amount: `${grams} g` }] }, starterFoods);
const oats = of("oats-rolled-dry", 60);
const rice = of("rice-white-long-boiled", 200);
const kale = of("kale-raw", 80);

const days: readonly DayInput[] = [
  {
    id: "mon",
    name: "Monday",
    meals: [
      { id: "breakfast", name: "Breakfast", dishes: oats },
      { id: "supper", dishes: { rice, kale } },
    ],
  },
  {
    id: "tue",
    meals: [
      { id: "breakfast", dishes: oats },
      { id: "supper", dishes: { rice } },
    ],
  },
];
const people: PlanInput["people"] = [
  { id: "cox", byMeal: { breakfast: { factor: 2 }, "tue/breakfast": { factor: 3 } } },
  { id: "bow", away: ["mon/supper"] },
  { id: "stroke", away: ["tue"] },
];

describe("a menu of days", () => {
  const plan = portionPlan({ days, people });

  it("has meals by day, each named with its day", () => {
    expect(plan.meals.map(({ id }) => id)).toEqual([
      "mon/breakfast",
      "mon/supper",
      "tue/breakfast",
      "tue/supper",
    ]);
    expect(plan.meals.map(({ name }) => name).slice(0, 3)).toEqual([
      "Monday: Breakfast",
      "Monday: supper",
      "tue: breakfast",
    ]);
    expect(plan.days.map(({ id, meals }) => [id, ...meals])).toEqual([
      ["mon", "mon/breakfast", "mon/supper"],
      ["tue", "tue/breakfast", "tue/supper"],
    ]);
    expect(plan.dish("mon/breakfast").name).toBe("breakfast");
  });

  it("takes what is said of every day's meal, and of one day's before that", () => {
    expect(plan.portion("cox", "mon/breakfast").factor.toString()).toBe("2");
    expect(plan.portion("cox", "tue/breakfast").factor.toString()).toBe("3");
  });

  it("serves nobody who is away for a meal or a day", () => {
    expect(
      plan.portions.filter(({ status }) => status === "away").map(({ person, meal }) => `${person} ${meal}`),
    ).toEqual(["bow mon/supper", "stroke tue/breakfast", "stroke tue/supper"]);
    expect(plan.day("stroke", "tue").status).toBe("away");
  });

  it("sums a day, never the week", () => {
    const energy = (person: string, day: string): string =>
      plan.day(person, day).brings("energy").value.toString();
    const meal = (person: string, id: string) => plan.brings(person, id, "energy").value;
    expect(energy("cox", "mon")).toBe(
      meal("cox", "mon/breakfast").plus(meal("cox", "mon/supper")).toString(),
    );
    expect([...plan.day("cox", "mon").dishes.keys()]).toEqual(["breakfast", "supper/rice", "supper/kale"]);
  });

  it("takes the mean over days that are wholly eaten, and tells the least and the most", () => {
    const mean = plan.mean("cox");
    const [mon, tue] = ["mon", "tue"].map((day) => plan.day("cox", day).brings("calcium").value);
    if (!mon || !tue) throw new Error("no days");
    expect(mean.brings("calcium").value.toString()).toBe(mon.plus(tue).div(2).toString());
    expect(compare(mean.dishes, eu).get("calcium")?.reference?.amount.value.toString()).toBe(
      mon.plus(tue).div(2).toString(),
    );
    expect([mean.least("calcium").day, mean.most("calcium").day]).toEqual(["tue", "mon"]);
    expect([plan.mean("bow").days, plan.mean("bow").others]).toEqual([["tue"], ["mon"]]);
  });

  it("opens again as it was", () => {
    const opened = openPlan(JSON.parse(JSON.stringify(plan)));
    const { days: menu, portions, people: all } = opened.toJSON();
    expect({ menu, portions, all }).toEqual({
      menu: plan.toJSON().days,
      portions: plan.toJSON().portions,
      all: plan.toJSON().people,
    });
  });

  it("refuses what it cannot read, all at once", () => {
    const told = (input: object): readonly string[] =>
      errorOf(() => portionPlan(input as PlanInput)).faults.map(
        ({ path, message }) => `${path.join(".")}: ${message}`,
      );
    expect(told({ people })).toEqual(["meals: no meals"]);
    expect(told({ days, meals: days[0]?.meals, people })).toEqual(["meals: both days and meals"]);
    expect(told({ days: [...days, { ...days[0] }, { id: "a/b", meals: days[0]?.meals }], people })).toEqual([
      "days.3.id: a day with a stroke in its id",
      'days.2.id: "mon" comes twice',
    ]);
    expect(
      told({ days, people: [{ id: "cox", away: ["wed", "supper"], byMeal: { mon: { factor: 1 } } }] }),
    ).toEqual([
      'people.0.away.0: no meal or day is called "wed"',
      'people.0.byMeal.mon: no meal is called "mon"',
    ]);
    expect(errorOf(() => plan.day("cox")).message).toContain("several days");
    expect(errorOf(() => plan.day("cox", "wed")).hint).toContain("mon");
  });
});

const eu = referenceIntakes("eu", { sex: "female", age: 24, mass: "60 kg" });
