import { describe, expect, it } from "vitest";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import { foodTable } from "../../src/food/table.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const foods = foodTable([{ id: "oats", name: "Oats", source: "made up", per100g: {} }]);
const oats = sheet({ name: "Porridge", portions: 2, lines: [{ food: "oats", amount: "60 g" }] }, foods);
const plan = portionPlan({
  meals: [
    { id: "early", name: "Breakfast", dishes: oats },
    { id: "late", dishes: { pot: oats, side: oats } },
  ],
  people: [{ id: "cox" }, { id: "bow" }],
});

const schedule = (how: unknown) => (): unknown => cookingSchedule(plan, how as never);
const faultsOf = (how: unknown): string[] =>
  errorOf(schedule(how)).faults.map(({ code, path, message, hint }) => {
    expect(hint).not.toBe("");
    return `${code} ${path.join(".")}: ${message}`;
  });

describe("what cannot be scheduled", () => {
  it.each([undefined, null, 5, "plan", {}, [], oats, { meals: [] }])("is no plan: %s", (x) => {
    const error = errorOf(() => cookingSchedule(x as never));
    expect([error.code, error.message]).toEqual([
      "schedule-malformed",
      "there is no plan to cook (make one with portionPlan({ … }))",
    ]);
  });

  it("is refused with every fault at once, each with its place and a way out", () => {
    expect(
      faultsOf({
        days: ["Sun", "Mon", "Sun", "", 3, "a\u0007b", "__proto__"],
        cook: ["Sum", null],
        away: { cocks: [], cox: ["Tue"], bow: "Sun" },
        meals: {
          early: { eaten: {}, cook: ["Fri"], servings: "1/2", vessel: "2", vessels: { pot: "2 l" } },
          late: {
            servings: { cox: -1, bow: Number.NaN, box: 2 },
            vessels: { side: "2-3 l", dip: "1 l" },
            lid: 1,
          },
          lunch: {},
        },
        runs: "equal",
      }),
    ).toEqual([
      "schedule-malformed days.3: expected text, got none",
      "schedule-malformed days.4: expected text, got 3",
      "schedule-malformed days.5: text with control characters",
      'schedule-malformed days.6: a name that is "__proto__"',
      "schedule-malformed cook.1: expected text, got null",
      'schedule-malformed away.bow: expected a list, got "Sun"',
      "schedule-malformed meals.early.eaten: expected a list, got an object",
      'schedule-malformed meals.early.servings: "0.5" portions',
      'amount-no-unit meals.early.vessel: "2" has no unit',
      'schedule-malformed meals.late.servings.cox: "-1" is below 0',
      "number-not-finite meals.late.servings.bow: NaN is not a finite number",
      'amount-range meals.late.vessels.side: "2-3 l" is a range',
      'schedule-malformed meals.late.lid: "lid" is not a field here',
      'schedule-malformed runs: "runs" is not a field here',
      // What is not there, or there twice, is told after what is of the wrong shape.
      'schedule-malformed days.2: "Sun" comes twice',
      'schedule-malformed cook.0: no day is called "Sum"',
      'schedule-malformed away.cocks: no person is called "cocks"',
      'schedule-malformed away.cox.0: no day is called "Tue"',
      'schedule-malformed meals.lunch: no meal is called "lunch"',
      'schedule-malformed meals.early.vessels.pot: no dish is called "pot"',
      'schedule-malformed meals.early.cook.0: no day is called "Fri"',
      'schedule-malformed meals.late.vessels.dip: no dish is called "dip"',
      'schedule-malformed meals.late.servings.box: no person is called "box"',
    ]);
  });

  it.each([
    [null, "expected an object, got null"],
    [[], "expected an object, got a list"],
    [{ days: "Sun" }, 'expected a list, got "Sun"'],
    [{ days: [] }, "an empty list"],
    [{ away: [] }, "expected an object, got a list"],
    [{ meals: null }, "expected an object, got null"],
    [{ meals: { early: "2 l" } }, 'expected an object, got "2 l"'],
    [{ meals: { late: { vessels: [] } } }, "expected an object, got a list"],
    [JSON.parse('{"__proto__": {"x": 1}}'), 'a key named "__proto__"'],
    [{ meals: JSON.parse('{"__proto__": {}}') }, 'a key named "__proto__"'],
    [{ meals: { constructor: {} } }, 'no meal is called "constructor"'],
    [{ away: { toString: [] } }, 'no person is called "toString"'],
  ])("in shape: %j", (how, message) => {
    expect(errorOf(schedule(how)).faults.map((each) => each.message)).toContain(message);
  });

  it.each([
    ["0 l", "schedule-malformed"],
    ["0 g", "schedule-malformed"],
    ["200 kJ", "schedule-malformed"],
    ["-2 l", "amount-negative"],
    ["NaN l", "amount-no-number"],
    ["", "amount-empty"],
    ["2 cups", "measures-needed"],
    ["2 jugs", "amount-unknown-unit"],
    ["a pot", "amount-no-number"],
    [{ capacity: undefined }, "amount-malformed"],
    [{ capacity: { value: Number.POSITIVE_INFINITY, unit: "l" } }, "number-not-finite"],
    [{ capacity: { value: "1e999999", unit: "l" } }, "number-too-long"],
    [{ capacity: "2 l", runs: "many" }, "schedule-malformed"],
    [{ capacity: "2 l", lid: true }, "schedule-malformed"],
    [2, "schedule-malformed"],
    [["2 l"], "schedule-malformed"],
    [null, "schedule-malformed"],
  ])("in a vessel of %j", (vessel, code) => {
    const error = errorOf(schedule({ meals: { early: { vessel } } }));
    expect(error.faults.map((each) => each.code)).toEqual([code]);
    expect(error.path.slice(0, 3)).toEqual(["meals", "early", "vessel"]);
    expect(error.hint).not.toBe("");
  });

  it.each(["0.5", -1, 10_001, "1e300", "many", Number.NaN, null, true])("%j portions", (servings) => {
    const error = errorOf(schedule({ meals: { early: { servings } } }));
    expect(error.faults).toHaveLength(1);
    expect(error.path).toEqual(["meals", "early", "servings"]);
  });

  it("is eaten before it is first cooked", () => {
    const days = ["Sat", "Sun", "Mon"];
    expect(faultsOf({ days, cook: ["Sun"], meals: { late: { cook: ["Sat"] } } })).toEqual([
      'schedule-malformed cook: "Breakfast" is eaten on "Sat", before it is first cooked, on "Sun"',
    ]);
    expect(faultsOf({ days, meals: { late: { cook: [] } } })).toEqual([
      'schedule-malformed meals.late.cook: "late" is eaten on "Sat", "Sun", "Mon", but on no day cooked',
    ]);
    // Nobody who eats is nobody who eats too early.
    const away = { cox: ["Sat"], bow: ["Sat"] };
    expect(() => cookingSchedule(plan, { days, cook: ["Sun"], away })).not.toThrow();
    expect(() =>
      cookingSchedule(plan, {
        days,
        cook: ["Sun"],
        meals: { early: { eaten: ["Mon"] }, late: { servings: 0 } },
      }),
    ).not.toThrow();
  });

  it("has days that cannot be read: no others are then held against them", () => {
    expect(faultsOf({ days: "Sun", cook: ["Sun"] })).toEqual([
      'schedule-malformed days: expected a list, got "Sun"',
    ]);
  });

  it("names days before it has any", () => {
    const error = errorOf(schedule({ cook: ["Sun"] }));
    expect(error.hint).toBe('name the days first, in order: days: ["Sun", "Mon", "Tue"]');
  });
});

describe("names that mean harm", () => {
  it("are days like any others", () => {
    const days = ["constructor", "toString", "=1+1", "<b>Sun</b>", "hasOwnProperty"];
    const made = cookingSchedule(plan, { days, cook: ["constructor"], away: { cox: ["toString"] } });
    expect(made.sessions[0]?.eaten).toEqual(days);
    expect(made.servings.find(({ person }) => person === "cox")?.days).not.toContain("toString");
  });

  it("are people like any others", () => {
    const odd = ["constructor", "toString", "valueOf"];
    const made = cookingSchedule(
      portionPlan({ meals: odd.map((id) => ({ id, dishes: oats })), people: odd.map((id) => ({ id })) }),
      { days: ["a", "b"], away: { constructor: ["a"] }, meals: { toString: { servings: { valueOf: 2 } } } },
    );
    expect(made.servings.map(({ meal, person, count }) => `${meal} ${person} ${count}`)).toContain(
      "toString valueOf 4",
    );
    expect(made.servings.find(({ person }) => person === "constructor")?.count.toNumber()).toBe(1);
  });
});

describe("size", () => {
  const named = (count: number): string[] => Array.from({ length: count }, (_, i) => `day ${i}`);

  it("of more days than a year is refused at once, wherever they stand", () => {
    const many = named(10_000);
    const faults = faultsOf({
      days: many,
      cook: many,
      away: { cox: many },
      meals: { early: { eaten: many } },
    });
    expect(faults).toHaveLength(4);
    for (const each of faults) expect(each).toContain("a list of 10000");
  });

  it("of a year for a hundred people stays quick, and is exact to the last day", () => {
    const crew = Array.from({ length: 100 }, (_, i) => ({ id: `p${i}`, demands: { factor: `${i + 7}/13` } }));
    const large = portionPlan({
      meals: [
        { id: "early", dishes: oats },
        { id: "late", dishes: oats },
      ],
      people: crew,
    });
    const days = named(366);
    const away = Object.fromEntries(
      crew.map(({ id }, i) => [id, days.filter((_, day) => day % (i + 2) === 1)]),
    );
    const start = performance.now();
    const made = cookingSchedule(large, { days, cook: days.filter((_, i) => i % 3 === 0), away });
    expect(made.sessions).toHaveLength(244);
    const text = toText(made);
    expect(text).toContain("day 365");
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
