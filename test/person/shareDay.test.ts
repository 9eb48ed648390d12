import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactText } from "../../src/number/digits.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { type Exact, exact, plus, ZERO } from "../../src/number/exact.ts";
import { leftOfDay, type Totals } from "../../src/person/leftOfDay.ts";
import { mealDemands, shareDay } from "../../src/person/shareDay.ts";
import type { Demand } from "../../src/scale/demand.ts";

const day: readonly Demand[] = [
  { of: "energy", exactly: "6751/3" },
  { of: "protein", least: "97.250204128", most: "140 g", firm: true },
  { of: "fibre", least: "28" },
  { energyShareOf: "fat", exactly: "0.3" },
  { ratioOf: ["omega6", "omega3"], most: 4 },
  { of: "sodium", most: "2300 mg" },
];

const number = (value: unknown): Exact => exact(String(value).split(" ")[0] ?? "");

function codeOf(step: () => unknown): string {
  try {
    step();
  } catch (error) {
    if (error instanceof SteelyardError) return error.code;
    throw error;
  }
  return "none";
}

describe("a day shared among meals", () => {
  it("totals the day literally, whatever the shares", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 997 }), { minLength: 1, maxLength: 6 }), (weights) => {
        const whole = weights.reduce((a, b) => a + b, 0);
        const meals = shareDay(
          day,
          Object.fromEntries(weights.map((w, i) => [`meal ${i}`, `${w}/${whole}`])),
        );
        for (const [i, demand] of day.entries()) {
          if (demand.of === undefined) continue;
          for (const key of ["exactly", "least", "most"] as const) {
            const total = demand[key];
            if (total === undefined) continue;
            const sum = meals.map((m) => number(m.demands[i]?.[key])).reduce(plus, ZERO);
            expect(exactText(sum)).toBe(exactText(number(total)));
          }
        }
      }),
    );
  });

  it("keeps units, firmness, shares and ratios", () => {
    const [breakfast] = shareDay(day, { breakfast: "25 %", rest: 0.75 });
    expect(breakfast?.share.toString()).toBe("0.25");
    expect(breakfast?.demands).toEqual([
      { of: "energy", exactly: "6751/12" },
      { of: "protein", least: "24.312551032", most: "35 g", firm: true },
      { of: "fibre", least: "7" },
      { energyShareOf: "fat", exactly: "0.3" },
      { ratioOf: ["omega6", "omega3"], most: 4 },
      { of: "sodium", most: "575 mg" },
    ]);
    expect(mealDemands(day, "1/4")).toEqual(breakfast?.demands);
  });

  it("wants the shares to be a whole", () => {
    expect(codeOf(() => shareDay(day, { a: 0.3, b: 0.3, c: 0.3 }))).toBe("shares-impossible");
    expect(codeOf(() => shareDay(day, {}))).toBe("shares-impossible");
    expect(codeOf(() => shareDay(day, { a: 1.5, b: -0.5 }))).toBe("shares-impossible");
    expect(codeOf(() => shareDay(day, { a: Number.NaN, b: 1 }))).toBe("number-not-finite");
    expect(codeOf(() => mealDemands(day, 40))).toBe("shares-impossible");
    expect(codeOf(() => mealDemands([{ of: "protein", exactly: "much" }], 0.5))).toBe("demand-malformed");
    expect(codeOf(() => mealDemands([{ of: "protein", exactly: -5 }], 0.5))).toBe("demand-malformed");
  });
});

describe("what is left of a day", () => {
  it("subtracts exactly", () => {
    const left = leftOfDay(day, { energy: "6751/12", protein: 24, fibre: 30, sodium: "575 mg" });
    expect(left.demands).toEqual([
      { of: "energy", exactly: "1687.75" },
      { of: "protein", least: "73.250204128", most: "116", firm: true },
      { of: "sodium", most: "1725" },
    ]);
    expect(left.over).toEqual([]);
    expect(left.unknown).toEqual([]);
    expect(left.wholeDay).toEqual([day[3], day[4]]);
  });

  it("says where earlier meals are already past the day", () => {
    const left = leftOfDay(day, { energy: 2500, protein: 150, fibre: 0, sodium: 2300 });
    expect(left.over.map((o) => [o.of, o.by.toFixed(3)])).toEqual([
      ["energy", "249.667"],
      ["protein", "10.000"],
    ]);
    expect(left.demands).toContainEqual({ of: "sodium", most: "0" });
    expect(left.demands).toContainEqual({ of: "energy", exactly: "0" });
  });

  it("drops a lower limit that is met, and keeps the upper one beside it", () => {
    const band: Demand = { of: "protein", least: "60 g", most: "100 g" };
    expect(leftOfDay([band], { protein: "70 g" }).demands).toEqual([{ of: "protein", most: "30" }]);
    expect(leftOfDay([band], { protein: "60 g" }).demands).toEqual([{ of: "protein", most: "40" }]);
    expect(leftOfDay([{ ...band, firm: true }], { protein: 59 }).demands).toEqual([
      { of: "protein", least: "1", most: "41", firm: true },
    ]);
    expect(leftOfDay([{ of: "protein", least: "60 g" }], { protein: 60 }).demands).toEqual([]);
    // A figure and an upper limit stay: nothing more of it may come.
    const full = leftOfDay([band, { of: "energy", exactly: 700 }], { protein: 120, energy: 700 });
    expect(full.demands).toEqual([
      { of: "protein", most: "0" },
      { of: "energy", exactly: "0" },
    ]);
  });

  it("does not take unknown for zero", () => {
    const left = leftOfDay(day, { energy: 500 });
    expect(left.demands.map((d) => d.of)).toEqual(["energy"]);
    expect(left.unknown.map((d) => d.of)).toEqual(["protein", "fibre", "sodium"]);
  });

  it("and the meals before it make the day again", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1000 }), (thousandths) => {
        const first = mealDemands(day, `${thousandths}/1000`);
        const eaten: Totals = {
          energy: exactText(number(first[0]?.exactly)),
          protein: exactText(number(first[1]?.least)),
        };
        const left = leftOfDay(day.slice(0, 1), eaten);
        expect(exactText(plus(number(left.demands[0]?.exactly), number(first[0]?.exactly)))).toBe("6751/3");
      }),
    );
  });

  it("refuses totals of what is no component", () => {
    expect(codeOf(() => leftOfDay(day, { proteins: 5 } as Totals))).toBe("component-unknown");
    expect(codeOf(() => leftOfDay(day, JSON.parse('{"__proto__": 5}') as Totals))).toBe("demand-malformed");
    expect(codeOf(() => leftOfDay(day, { protein: "some" }))).toBe("demand-malformed");
    expect(codeOf(() => leftOfDay(day, { protein: -1 }))).toBe("demand-malformed");
    expect(codeOf(() => leftOfDay([{ of: "protein", exactly: "2 ml" }], { protein: 1 }))).toBe(
      "demand-malformed",
    );
  });
});

describe("a day in a cook's units", () => {
  // An ounce is 28.349523125 g, sixteen to the pound: yard and pound agreement, 1959. 1 kcal is 4.184 kJ.
  const cooks: readonly Demand[] = [
    { of: "protein", least: "3 oz" },
    { of: "sodium", most: "2 g" },
    { of: "mass", exactly: "1 lb 4 oz" },
    { of: "energy", exactly: "8368 kJ" },
    { of: "fat", most: "2,5 oz" },
  ];

  it("is shared as it was written, or in the own unit where that was compound", () => {
    expect(mealDemands(cooks, "1/4")).toEqual([
      { of: "protein", least: "0.75 oz" },
      { of: "sodium", most: "0.5 g" },
      { of: "mass", exactly: "141.747615625 g" },
      { of: "energy", exactly: "2092 kJ" },
      { of: "fat", most: "17.718451953125 g" },
    ]);
  });

  it("is subtracted from, whatever unit either was written in", () => {
    const left = leftOfDay(cooks, { protein: "1 oz", sodium: 500, mass: "1 lb", energy: "500 kcal", fat: 0 });
    expect(left.demands).toEqual([
      { of: "protein", least: "56.69904625" },
      { of: "sodium", most: "1500" },
      { of: "mass", exactly: "113.3980925" },
      { of: "energy", exactly: "1500" },
      { of: "fat", most: "70.8738078125" },
    ]);
  });

  it("shares the same portion as one in the own units", () => {
    const units = ["g", "oz", "lb", "mg", "kg"] as const;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.constantFrom(...units), (n, unit) => {
        const [whole] = leftOfDay([{ of: "protein", exactly: `${n} ${unit}` }], { protein: 0 }).demands;
        const [part] = mealDemands([{ of: "protein", exactly: `${n} ${unit}` }], "2/7");
        const [same] = leftOfDay(part ? [part] : [], { protein: 0 }).demands;
        const [expected] = mealDemands(whole ? [whole] : [], "2/7");
        expect(same).toEqual(expected);
      }),
    );
  });

  it("is refused where it can be read two ways, or measures something else", () => {
    for (const exactly of ["1,000 g", "5 ml", "2 cups", "300 kcal", "2-3 oz", "", "-1 oz"]) {
      const demand: Demand = { of: "protein", exactly };
      expect(
        codeOf(() => mealDemands([demand], 0.5)),
        exactly,
      ).toBe("demand-malformed");
      expect(
        codeOf(() => leftOfDay([demand], { protein: 1 })),
        exactly,
      ).toBe("demand-malformed");
    }
  });
});
