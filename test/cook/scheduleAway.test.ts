import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cookingSchedule, type ScheduleOptions } from "../../src/cook/cookingSchedule.ts";
import { starterFoods } from "../../src/foods.ts";
import type { PersonInput } from "../../src/plan/input.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const dish = (name: string, food: string) =>
  sheet({ name, portions: 1, lines: [{ key: "all", food, amount: "90 g" }] }, starterFoods);
const meals = [
  { id: "breakfast", name: "Breakfast", dishes: dish("Porridge", "oats-rolled-dry") },
  { id: "dinner", name: "Dinner", dishes: { rice: dish("Rice", "rice-white-long-boiled") } },
];
const crew: readonly PersonInput[] = [
  { id: "cox" },
  { id: "bow", demands: { factor: 2 } },
  { id: "stroke", demands: { factor: "5/3" } },
];
const plan = portionPlan({ meals, people: crew });
const days = ["Mon", "Tue", "Wed"];
const shown = (how: ScheduleOptions, of = plan): string => toText(cookingSchedule(of, { days, ...how }));
const served = (how: ScheduleOptions, of = plan): string[] =>
  cookingSchedule(of, { days, ...how }).servings.map(
    ({ meal, person, days: on }) => `${meal} ${person} ${on.join()}`,
  );

describe("someone away from one meal of a day", () => {
  it("eats the others of that day", () => {
    expect(served({ meals: { dinner: { away: { bow: ["Wed"] } } } })).toEqual([
      "breakfast cox Mon,Tue,Wed",
      "breakfast bow Mon,Tue,Wed",
      "breakfast stroke Mon,Tue,Wed",
      "dinner cox Mon,Tue,Wed",
      "dinner bow Mon,Tue",
      "dinner stroke Mon,Tue,Wed",
    ]);
    const [, last] = ["breakfast", "dinner"].map((id) =>
      cookingSchedule(plan, { days, meals: { dinner: { away: { bow: ["Wed"] } } } }).sessions.find(
        ({ meal, day }) => meal === id && day === "Wed",
      ),
    );
    expect(last?.pots[0]?.people.map(({ person }) => person)).toEqual(["cox", "stroke"]);
  });

  it("from every meal is away for the day, in whichever of both places that stands", () => {
    const some = fc.dictionary(fc.constantFrom("cox", "bow", "stroke"), fc.subarray(days));
    fc.assert(
      fc.property(some, (away) => {
        const byMeal = { breakfast: { away }, dinner: { away } };
        expect(shown({ meals: byMeal })).toBe(shown({ away }));
        expect(shown({ away, meals: byMeal })).toBe(shown({ away }));
      }),
      { numRuns: runs(40) },
    );
  });

  it("adds to the days on which they are away altogether", () => {
    const how = { away: { bow: ["Mon"] }, meals: { dinner: { away: { bow: ["Wed"] } } } };
    expect(served(how)).toContain("breakfast bow Tue,Wed");
    expect(served(how)).toContain("dinner bow Tue");
  });

  it("is read as strictly as for all meals", () => {
    const faultsOf = (away: unknown, how: object = { days }): string[] =>
      errorOf(() => cookingSchedule(plan, { ...how, meals: { dinner: { away } } } as never)).faults.map(
        ({ code, path, message }) => `${code} ${path.join(".")}: ${message}`,
      );
    expect(faultsOf({ bo: ["Wed"], cox: ["Sun", 3], stroke: "Mon" })).toEqual([
      "schedule-malformed meals.dinner.away.cox.1: expected text, got 3",
      'schedule-malformed meals.dinner.away.stroke: expected a list, got "Mon"',
      'schedule-malformed meals.dinner.away.bo: no person is called "bo"',
      'schedule-malformed meals.dinner.away.cox.0: no day is called "Sun"',
    ]);
    expect(faultsOf([])).toEqual(["schedule-malformed meals.dinner.away: expected an object, got a list"]);
    expect(faultsOf({ bow: ["Wed"] }, {})).toEqual([
      'schedule-malformed meals.dinner.away.bow.0: no day is called "Wed"',
    ]);
    const proto = JSON.parse('{"__proto__": ["Wed"]}');
    expect(faultsOf(proto)).toEqual([
      'schedule-malformed meals.dinner.away.__proto__: a key named "__proto__"',
    ]);
  });
});

describe("someone whom the plan has away from a meal", () => {
  const gone = portionPlan({
    meals,
    people: crew.map((each) => (each.id === "bow" ? { ...each, away: ["dinner"] } : each)),
  });

  it("is in no session, serving or shopping of it, and in all of the others", () => {
    const onlyDinner = (how: ScheduleOptions) =>
      cookingSchedule(gone, { days, cook: { breakfast: ["Mon"], rice: ["Mon"] }, ...how });
    const week = onlyDinner({ meals: { dinner: { vessel: "200 g" } } });
    const people = week.sessions.map(({ meal, pots }) => [
      meal,
      pots.map((pot) => pot.people.map(({ person }) => person)),
    ]);
    expect(people).toEqual([
      ["breakfast", [["cox", "bow", "stroke"]]],
      ["dinner", [["cox", "stroke"]]],
    ]);
    expect(served({}, gone)).not.toContain("dinner bow Mon,Tue,Wed");
    // What is cooked for the others is what it would be without them.
    const without = portionPlan({
      meals: [meals[1] as (typeof meals)[number]],
      people: crew.filter(({ id }) => id !== "bow"),
    });
    const [dinner] = [week.sessions[1]];
    const alone = cookingSchedule(without, {
      days,
      cook: { rice: ["Mon"] },
      meals: { dinner: { vessel: "200 g" } },
    });
    expect(dinner?.pots[0]?.sheet.lines.map(({ grams }) => grams)).toEqual(
      alone.sessions[0]?.pots[0]?.sheet.lines.map(({ grams }) => grams),
    );
    const bought = shoppingList(week);
    expect(bought.portions.some(({ person, meal }) => person === "bow" && meal === "dinner")).toBe(false);
    expect(bought.line("rice-white-long-boiled").needed).toEqual(
      shoppingList(alone).line("rice-white-long-boiled").needed,
    );
  });

  it("may be away from it in the schedule, too, and has no portions of it to give", () => {
    const away = { meals: { dinner: { away: { bow: ["Wed"] } } } };
    expect(shown(away, gone)).toBe(shown({}, gone));
    expect(shown({ meals: { dinner: { servings: { bow: 0 } } } }, gone)).toBe(shown({}, gone));
    const error = errorOf(() => cookingSchedule(gone, { meals: { dinner: { servings: { bow: 2 } } } }));
    expect([error.code, error.path, error.message]).toEqual([
      "schedule-malformed",
      ["meals", "dinner", "servings", "bow"],
      'meals.dinner.servings.bow: the plan has "bow" away from this meal, without a portion (let the plan have them there for it, or leave them out here)',
    ]);
  });

  it("may be everyone: nothing of it is cooked or refused, and a day of cooking says so", () => {
    const nobody = portionPlan({ meals, people: crew.map((each) => ({ ...each, away: ["dinner"] })) });
    const schedule = cookingSchedule(nobody, { days, meals: { dinner: { cook: ["Wed"] } } });
    expect(schedule.sessions.map(({ meal }) => meal)).toEqual(["breakfast", "breakfast", "breakfast"]);
    const ofDinner = schedule.notes.filter(({ meal }) => meal === "dinner");
    expect(ofDinner.map(({ code, meal, days: on }) => [code, meal, on])).toEqual([
      ["nothing-to-cook", "dinner", ["Wed"]],
    ]);
    const dinner = toRecords(schedule).filter(({ meal }) => meal === "dinner");
    expect(dinner.map(({ what, code }) => [what, code])).toEqual([["note", "nothing-to-cook"]]);
    expect(cookingSchedule(nobody).sessions).toHaveLength(1);
  });
});
