import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { usPolyolFactors } from "../../src/food/data/energyUs101.ts";
import { type EnergySystemId, energySystems, termsOf } from "../../src/food/energy.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodFromLabel } from "../../src/food/label.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { exact, sum, times } from "../../src/number/exact.ts";
import { sheet } from "../../src/sheet/build.ts";
import { energyShares } from "../../src/sheet/energy.ts";
import { energyCheck } from "../../src/sheet/energyCheck.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText as shown } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const ids = Object.keys(energySystems) as EnergySystemId[];

/** A protein bar by its label, per 100 g; invented, and reckoned by hand below. */
const figures = {
  fat: "14 g",
  carbohydrate: "38 g",
  polyols: "20 g",
  fibre: "11 g",
  protein: "30 g",
  salt: "0.45 g",
} as const;
const bar = foodFromLabel({
  id: "bar",
  name: "Protein bar",
  style: "eu",
  per: "100 g",
  figures: { energy: "1622 kJ / 388 kcal", ...figures },
});
const hundred = sheet(
  { name: "Bar", portions: 1, lines: [{ food: "bar", amount: "100 g" }] },
  foodTable([bar]),
);

const bySystem = (s: Sheet, system: EnergySystemId): Record<string, string> =>
  Object.fromEntries(
    energyShares(s, { system }).shares.map((part) => [part.of, exactText(part.energy.value)]),
  );

const dishOf = (per100g: FoodInput["per100g"]): Sheet =>
  sheet(
    { name: "r", portions: 1, lines: [{ food: "x", amount: "100 g" }] },
    foodTable([{ id: "x", name: "X", source: "test", per100g }]),
  );

describe("energy of a label, worked by hand", () => {
  // Regulation (EU) No 1169/2011, Annex XIV:
  //   protein 30 × 4 = 120, fat 14 × 9 = 126, carbohydrate but polyols (38 − 20) × 4 = 72,
  //   polyols 20 × 2.4 = 48, fibre 11 × 2 = 22: 388 kcal;
  //   30 × 17 + 14 × 37 + 18 × 17 + 20 × 10 + 11 × 8 = 510 + 518 + 306 + 200 + 88 = 1622 kJ.
  it("by EU factors", () => {
    const eu = energyShares(hundred, { system: "eu-1169" });
    expect(bySystem(hundred, "eu-1169")).toEqual({
      protein: "120",
      fat: "126",
      carbohydrate: "72",
      fibre: "22",
      polyols: "48",
      organicAcids: "0",
      alcohol: "0",
    });
    expect([eu.energy, eu.kilojoules].map((t) => t && `${t.value} ${t.unit}`)).toEqual([
      "388 kcal",
      "1622 kJ",
    ]);
    expect(eu.energy.missing).toEqual(["bar"]); // alcohol: the label does not say
    // Each is rounded to a gram: 29.5 × 4 + 13.5 × 9 + (37.5 − 20.5) × 4 + 19.5 × 2.4 + 10.5 × 2 = 375.3 at least.
    expect([eu.energy.bound, `${eu.energy.least}`, eu.energy.most]).toEqual(["between", "375.3", undefined]);
  });

  // 21 CFR 101.9(c)(1)(i)(B): total carbohydrate is 38 + 11 = 49 g; 30 × 4 + 14 × 9 + 49 × 4 = 442.
  it("by US factors 4, 4 and 9", () => {
    const b = energyShares(hundred, { system: "us-101.9-b" });
    expect(b.energy.value.toString()).toBe("442");
    expect([b.energy.bound, b.complete, b.kilojoules]).toEqual(["point", true, undefined]);
    expect(b.energy.derived).toEqual(["bar"]);
  });

  // (C): carbohydrate less fibre and sugar alcohols, (49 − 11 − 20) × 4 = 72; 120 + 126 + 72 = 318, and
  // at least that, since the soluble share of the fibre (at 2) and the sugar alcohol meant are not told.
  it("by US factors with what is not digested taken off", () => {
    const c = energyShares(hundred, { system: "us-101.9-c" });
    // Rounding left out of it, that is; with it 29.5 × 4 + 13.5 × 9 + (37.5 + 10.5 − 11.5 − 20.5) × 4 = 303.5.
    expect([c.energy.value.toString(), c.energy.bound]).toEqual(["318", "between"]);
    expect(`${c.energy.least}`).toBe("303.5");
    // With maltitol at 2.1 (F): 20 × 2.1 = 42 more. With 5 g of the fibre soluble: 10 more.
    const { parts } = energySystems["us-101.9-c"];
    const maltitol = {
      ...energySystems["us-101.9-c"],
      name: "with maltitol",
      parts: { ...parts, polyols: { component: "polyols", factor: usPolyolFactors.maltitol } },
    } as const;
    const soluble = foodTable([{ ...bar, per100g: { ...bar.per100g, solubleFibre: 5 } }]);
    const s = sheet({ name: "Bar", portions: 1, lines: [{ food: "bar", amount: "100 g" }] }, soluble);
    const told = energyShares(s, { system: maltitol });
    expect([told.system, told.energy.value.toString(), told.energy.bound]).toEqual([
      "with maltitol",
      "370",
      "point",
    ]);
  });

  it("by general Atwater factors and by those of a food: rolled oats of SR28", () => {
    // 13.15 × 4 + 6.52 × 9 + 67.7 × 4 = 382.08; by its own 3.46, 8.37 and 4.12, 379.0 (published 379).
    const oats = sheet(
      { name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
      starterFoods,
    );
    expect(energyShares(oats).energy.value.toString()).toBe("382.08");
    expect(energyShares(oats, { system: "atwater-own" }).energy.value.toString()).toBe("378.9954");
    expect(energyCheck(oats).lines[0]).toMatchObject({ verdict: "agrees", system: "atwater-own" });
  });

  it("is shown with what it is checked against", () => {
    const check = energyCheck(hundred);
    expect(shown(check)).toMatch(/Protein bar +388 +at least 375 +0 +agrees; alcohol not known +eu-1169/);
    expect(check.differing).toEqual([]);
    expect(energyCheck(hundred, { system: "us-101.9-b" }).differing).toEqual(["bar"]);
  });
});

describe("energy shares", () => {
  const foods = fc.array(fc.tuple(fc.constantFrom(...starterFoods.ids), fc.integer({ min: 0, max: 5000 })), {
    minLength: 1,
    maxLength: 6,
  });
  const made = (all: readonly (readonly [string, number])[]): Sheet =>
    sheet(
      { name: "r", portions: 1, lines: all.map(([food, n]) => ({ food, amount: `${n}/7 g` })) },
      starterFoods,
    );

  it.each(ids)("by %s total the energy, and 100 whole per cents", (system) => {
    fc.assert(
      fc.property(foods, (all) => {
        const { energy, shares, kilojoules } = energyShares(made(all), { system });
        expect(exactText(sum(shares.map((part) => part.energy.value)))).toBe(exactText(energy.value));
        expect([0, 100]).toContain(shares.reduce((total, part) => total + part.percent, 0));
        expect(kilojoules === undefined).toBe(system !== "eu-1169");
        for (const part of shares) expect(part.energy.value.n >= 0n).toBe(true);
      }),
      { numRuns: runs(80) },
    );
  });

  it.each(ids)("by %s of a dish are those of what is in it, nested or not", (system) => {
    fc.assert(
      fc.property(foods, foods, fc.constantFrom("0.8", "1", "1.5"), (inner, outer, yieldFactor) => {
        if (inner.every(([, n]) => n === 0)) return;
        const lines = (all: typeof inner): { food: string; amount: string }[] =>
          all.map(([food, n]) => ({ food, amount: `${n}/7 g` }));
        const whole = { name: "Inner", portions: 1, yieldFactor, lines: lines(inner) };
        const nested = sheet(
          { name: "r", portions: 1, lines: [...lines(outer), { recipe: whole, amount: "1 batch" }] },
          starterFoods,
        );
        const flat = made([...outer, ...inner]);
        const [a, b] = [nested, flat].map((s) => energyShares(s, { system }));
        expect(a?.shares.map((part) => exactText(part.energy.value))).toEqual(
          b?.shares.map((part) => exactText(part.energy.value)),
        );
        expect(a?.energy.bound).toBe(b?.energy.bound);
      }),
      { numRuns: runs(40) },
    );
  });

  it("by systems that read totals alone agree with the factors times the totals", () => {
    fc.assert(
      fc.property(
        foods,
        fc.constantFrom("atwater-general" as const, "us-101.9-b" as const),
        (all, system) => {
          const s = made(all);
          const expected = termsOf(energySystems[system]).map(([, t]) =>
            times(s.total(t.component).value, exact(t.factor)),
          );
          expect(exactText(energyShares(s, { system }).energy.value)).toBe(exactText(sum(expected)));
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it("name lines without factors of their own as silent, and are then at least", () => {
    const table = starterFoods.with([
      {
        id: "x",
        name: "X",
        source: "test",
        per100g: { protein: 10, fat: 1, carbohydrateByDifference: 5, alcohol: 0 },
      },
    ]);
    const s = sheet(
      {
        name: "r",
        portions: 1,
        lines: [
          { food: "x", amount: "100 g" },
          { food: "oats-rolled-dry", amount: "100 g" },
        ],
      },
      table,
    );
    const { energy, shares } = energyShares(s, { system: "atwater-own" });
    expect([energy.bound, energy.missing.includes("x"), shares[0]?.energy.coverage.toString()]).toEqual([
      "at-least",
      true,
      "0.5",
    ]);
  });

  it("know nothing of carbohydrate from which an unknown fibre must come off first", () => {
    const { shares } = energyShares(dishOf({ protein: 1, fat: 1, carbohydrateByDifference: 10 }), {
      system: "us-101.9-c",
    });
    expect(shares.find((part) => part.of === "carbohydrate")?.energy).toMatchObject({
      value: exact(0),
      bound: "unknown",
      missing: ["x"],
    });
  });

  it("are at least where sugar alcohols of no stated kind count as nothing", () => {
    const per100g = { protein: 1, fat: 1, carbohydrateByDifference: 10, fibre: 0, solubleFibre: 0 };
    expect(energyShares(dishOf({ ...per100g, polyols: 5 }), { system: "us-101.9-c" }).energy.bound).toBe(
      "at-least",
    );
    expect(energyShares(dishOf({ ...per100g, polyols: 0 }), { system: "us-101.9-c" }).energy.bound).toBe(
      "point",
    );
  });

  it("never fall below nothing where rounded figures would make them", () => {
    const { shares } = energyShares(
      dishOf({
        protein: 1,
        fat: 1,
        carbohydrateByDifference: 1,
        fibre: 2,
        solubleFibre: 0,
      }),
      { system: "us-101.9-c" },
    );
    expect(shares.find((part) => part.of === "carbohydrate")?.energy.value).toEqual(exact(0));
  });

  it("are unknown where no line knows anything", () => {
    const { energy, complete } = energyShares(dishOf({}));
    expect([energy.bound, complete, energy.missing]).toEqual(["unknown", false, ["x"]]);
  });

  it("count what cooking a nested dish leaves", () => {
    const table = foodTable([
      {
        id: "wine",
        name: "Wine",
        source: "test",
        per100g: { alcohol: 10, protein: 0, fat: 0, carbohydrateByDifference: 2 },
      },
    ]);
    const sauce = {
      name: "Sauce",
      portions: 1,
      lines: [{ food: "wine", amount: "100 g", retention: { alcohol: "0.5" } }],
    };
    const s = sheet(
      { name: "r", portions: 1, lines: [{ recipe: sauce, amount: "50 g", retention: { alcohol: "0.4" } }] },
      table,
    );
    // 10 × 0.5 × 0.5 × 0.4 = 1 g of alcohol at 7, 1 g of carbohydrate at 4.
    expect(bySystem(s, "atwater-general")).toEqual({
      protein: "0",
      fat: "0",
      carbohydrate: "4",
      alcohol: "7",
    });
    expect(s.total("alcohol").value.toString()).toBe("1");
  });

  it("refuse a system that is none, and say which there are", () => {
    const error = errorOf(() => energyShares(hundred, { system: "eu" as EnergySystemId }));
    expect([error.code, error.hint]).toEqual(["energy-system-unknown", expect.stringMatching(/eu-1169/)]);
    expect(errorOf(() => energyShares(hundred, { system: "__proto__" as EnergySystemId })).code).toBe(
      "energy-system-unknown",
    );
  });
});

describe("energyCheck", () => {
  const one = (energy: number | string | undefined, more = {}): Sheet => {
    const food = {
      id: "x",
      name: "X",
      source: "test",
      per100g: {
        ...(energy === undefined ? {} : { energy }),
        protein: 10,
        fat: 10,
        carbohydrateByDifference: 10,
        alcohol: 0,
        ...more,
      },
    };
    return sheet({ name: "r", portions: 1, lines: [{ food: "x", amount: "200 g" }] }, foodTable([food]));
  };
  // 4 × 10 + 9 × 10 + 4 × 10 = 170.
  it.each([
    [170, "agrees", "0"],
    [178, "agrees", "-16"], // 8 of 178 is 4.5 %
    [180, "differs", "-20"], // 10 of 180 is 5.6 %
    [160, "differs", "20"],
  ])("of %d kcal given: %s", (given, verdict, difference) => {
    const [line] = energyCheck(one(given)).lines;
    expect([line?.verdict, line?.difference?.toString()]).toEqual([verdict, difference]);
  });

  it("keeps to the tolerance and the floor it is given", () => {
    expect(energyCheck(one(180), { tolerance: "0.06" }).differing).toEqual([]);
    expect(energyCheck(one(171), { tolerance: 0, floor: 0 }).differing).toEqual(["x"]);
    expect(energyCheck(one(171), { tolerance: 0 }).differing).toEqual([]);
    expect(errorOf(() => energyCheck(one(171), { tolerance: -1 })).code).toBe("number-malformed");
    expect(errorOf(() => energyCheck(one(171), { floor: Number.NaN })).code).toBe("number-not-finite");
  });

  it("allows for the rounding of a label", () => {
    // Rounded to 0 to 0.5 g of fat and whole grams: 24 × 4 = 96 kcal may be 90 to 102, and 110 may be 105.
    const label = foodFromLabel({
      id: "x",
      name: "X",
      style: "us",
      per: "30 g",
      figures: { energy: 110, protein: 24, fat: 0, carbohydrate: "less than 1 g" },
    });
    const s = sheet({ name: "r", portions: 1, lines: [{ food: "x", amount: "30 g" }] }, foodTable([label]));
    expect(energyCheck(s).lines[0]?.verdict).toBe("agrees");
    expect(energyCheck(s).lines[0]?.difference?.toString()).toBe("-14");
  });

  it.each([
    [one(undefined), /computed/],
    [one(170, { protein: "trace" }), undefined],
    [
      sheet(
        { name: "r", portions: 1, lines: [{ food: "x", amount: "1 g" }] },
        foodTable([{ id: "x", name: "X", source: "t", per100g: {} }]),
      ),
      /no energy is given/,
    ],
    [
      sheet(
        { name: "r", portions: 1, lines: [{ food: "x", amount: "1 g" }] },
        foodTable([{ id: "x", name: "X", source: "t", per100g: { energy: 90, fat: 10 } }]),
      ),
      /protein, carbohydrate/,
    ],
  ])("gives no verdict where there is nothing to compare (%#)", (s, why) => {
    const [line] = energyCheck(s).lines;
    if (why) expect([line?.verdict, line?.why]).toEqual(["unknown", expect.stringMatching(why)]);
    else expect(line?.verdict).not.toBe("unknown");
  });

  it("goes by what carbohydrate the food gives, and by EU factors for available alone", () => {
    const both = one(170, { availableCarbohydrate: 9 });
    expect(energyCheck(both).lines[0]?.system).toBe("atwater-general");
  });

  it("lets what is taken off vary as it may", () => {
    // EU: 10 g of carbohydrate, of which 2 to 8 g are polyols at 2.4 instead of 4: 40 − 1.6 × 8 to 40 − 1.6 × 2.
    const made = (energy: number): Sheet =>
      dishOf({
        energy,
        protein: 0,
        fat: 0,
        availableCarbohydrate: 10,
        fibre: 0,
        polyols: { value: 5, low: 2, high: 8 },
      });
    const strict = { tolerance: 0, floor: 0 };
    const verdicts = [27, 28, 36, 37].map((kcal) => energyCheck(made(kcal), strict).lines[0]?.verdict);
    expect(verdicts).toEqual(["differs", "agrees", "agrees", "differs"]);
  });

  it("looks into nested dishes and names their lines", () => {
    const inner = { name: "Inner", portions: 1, yieldFactor: "0.5", lines: [{ food: "x", amount: "100 g" }] };
    const table = foodTable([
      {
        id: "x",
        name: "X",
        source: "t",
        per100g: { energy: 300, protein: 10, fat: 10, carbohydrateByDifference: 10, alcohol: 0 },
      },
    ]);
    const s = sheet(
      { name: "r", portions: 1, lines: [{ key: "pot", recipe: inner, amount: "25 g" }] },
      table,
    );
    const check = energyCheck(s);
    expect(check.differing).toEqual(["pot/x"]);
    expect([check.total.given, check.total.computed].map(String)).toEqual(["150", "85"]);
    expect(check.lines[0]?.difference?.toString()).toBe("-65");
  });
});
