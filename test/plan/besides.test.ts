import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { type LineInput, type Sheet, sheet } from "../../src/index.ts";
import type { DayInput, PersonInput } from "../../src/plan/input.ts";
import { openPlan, type Plan, portionPlan } from "../../src/plan.ts";
import { errorOf } from "../number/errorOf.ts";

const of = (name: string, lines: readonly LineInput[]): Sheet =>
  sheet({ name, portions: 1, lines }, starterFoods);
const porridge = of("Porridge", [{ key: "oats", food: "oats-rolled-dry", amount: "80 g" }]);
const stew = of("Stew", [
  { key: "lentils", food: "lentils-boiled", amount: "200 g" },
  { key: "kale", food: "kale-raw", amount: "80 g" },
]);
const milk = of("Milk", [{ key: "milk", food: "milk-whole", amount: "300 g" }]);
const days: readonly DayInput[] = ["mon", "tue"].map((id) => ({
  id,
  meals: [
    { id: "breakfast", dishes: porridge },
    { id: "supper", dishes: stew },
  ],
}));
const planned = (person: Omit<PersonInput, "id">, authority?: "uk"): Plan =>
  portionPlan({ days, people: [{ id: "cox", ...person }], ...(authority && { authority }) });
const energy = (plan: Plan, day: string): string => plan.day("cox", day).brings("energy").value.toString();
const daily = [{ of: "energy", exactly: 1800 }] as const;
const shares = { breakfast: "40 %", supper: "60 %" };

describe("what is eaten besides the plan", () => {
  it("counts in the day's demands, on the days that it is eaten", () => {
    const plan = planned({ daily, shares, besides: [{ name: "Milk", sheet: milk, days: ["mon"] }] });
    expect([energy(plan, "mon"), energy(plan, "tue")]).toEqual(["1800", "1800"]);
    const served = (day: string) =>
      plan
        .brings("cox", `${day}/supper`, "energy")
        .value.plus(plan.brings("cox", `${day}/breakfast`, "energy").value);
    expect(served("tue").minus(served("mon")).toString()).toBe(milk.portion("energy").value.toString());
    expect([...plan.day("cox", "mon").dishes.keys()]).toEqual(["breakfast", "supper", "Milk"]);
  });

  it("counts in a meal's share where it is of that meal", () => {
    const plan = planned({ daily, shares, besides: [{ name: "Milk", sheet: milk, meal: "breakfast" }] });
    const brought = plan.brings("cox", "mon/breakfast", "energy").value.plus(milk.portion("energy").value);
    expect(brought.toString()).toBe("720");
  });

  it("leaves shares that total less than 1 as they are", () => {
    const bar = { name: "Bar", brings: { energy: 180 } };
    const plan = planned({ daily, shares: { breakfast: "30 %", supper: "60 %" }, besides: [bar] });
    expect(plan.brings("cox", "mon/breakfast", "energy").value.toString()).toBe("540");
    expect(energy(plan, "mon")).toBe("1800");
  });

  it("stands for a meal that they are away for, so that the day is whole", () => {
    const logged = { name: "Canteen", brings: { energy: 1000, protein: "40 g" }, meal: "mon/supper" };
    const plan = planned({ daily, shares, away: ["mon/supper"], besides: [logged] });
    expect(energy(plan, "mon")).toBe("1800");
    expect(plan.brings("cox", "mon/breakfast", "energy").value.toString()).toBe("800");
    expect([plan.day("cox", "mon").isWhole, plan.mean("cox").days]).toEqual([true, ["mon", "tue"]]);
  });

  it("counts in levels, which judge the mean and name days above them", () => {
    const person = { sex: "female", age: 24, mass: "60 kg" } as const;
    const tablet = { name: "Tablet", brings: { vitaminD: "150 µg" } };
    const one = planned({ person, besides: [{ ...tablet, days: ["mon"] }] }, "uk").levels("cox");
    const both = planned({ person, besides: [tablet] }, "uk").levels("cox");
    const of = (all: typeof one) => all?.find(({ of }) => of.join() === "vitaminD");
    expect([of(one)?.verdict, of(one)?.days]).toEqual(["days-alone", ["mon"]]);
    expect([of(both)?.verdict, of(both)?.days]).toEqual(["past", ["mon", "tue"]]);
    expect(planned({}).levels("cox")).toBeUndefined();
  });

  it("is told in the variety of the week, as plain counts", () => {
    const plan = planned({ besides: [{ name: "Milk", sheet: milk, days: ["mon"] }] });
    expect(plan.mean("cox").variety.map(({ group, days: on }) => `${group} ${on.length}`)).toEqual([
      "grains 2",
      "pulses 2",
      "vegetables 2",
      "dairy 1",
    ]);
  });

  it("opens again as it was", () => {
    const plan = planned({
      daily,
      besides: [
        { name: "Milk", sheet: milk },
        { name: "Tablet", brings: { vitaminD: 10 } },
      ],
    });
    const opened = openPlan(JSON.parse(JSON.stringify(plan)));
    expect(opened.day("cox", "mon").brings("vitaminD").value.toString()).toBe(
      plan.day("cox", "mon").brings("vitaminD").value.toString(),
    );
    expect(opened.toJSON().portions).toEqual(plan.toJSON().portions);
  });

  it("is refused where it cannot be read, all at once", () => {
    const told = (...besides: readonly object[]): readonly string[] =>
      errorOf(() => planned({ besides } as object)).faults.map(
        ({ path, message }) => `${path.join(".")}: ${message}`,
      );
    expect(
      told({ name: "A", brings: { vitaminQ: 1 } }, { name: "B", sheet: milk, days: ["wed"], meal: "tea" }),
    ).toEqual([
      'people.0.besides.0.brings.vitaminQ: no component is called "vitaminQ"',
      'people.0.besides.1.meal: no meal is called "tea"',
      'people.0.besides.1.days.0: no day is called "wed"',
    ]);
    expect(told({ name: "C" })).toEqual(["people.0.besides.0: neither a sheet nor what it brings, or both"]);
  });
});
