import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ComponentId, components } from "../../src/food/components.ts";
import { readFigure } from "../../src/food/composition.ts";
import { labelEu2012 } from "../../src/food/data/labelEu2012.ts";
import { labelUs101 } from "../../src/food/data/labelUs101.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodFromLabel } from "../../src/food/label.ts";
import type { LabelInput } from "../../src/food/labelDocument.ts";
import { foodTable } from "../../src/food/table.ts";
import { exactText } from "../../src/number/digits.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { exact } from "../../src/number/exact.ts";
import { sheet } from "../../src/sheet/build.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const label = (more: Partial<LabelInput>): LabelInput => ({
  id: "bar",
  name: "Protein bar",
  style: "us",
  per: "100 g",
  figures: {},
  ...more,
});
const us = (figures: LabelInput["figures"], per = "100 g"): FoodInput =>
  foodFromLabel(label({ figures, per }));
const eu = (figures: LabelInput["figures"], per = "100 g"): FoodInput =>
  foodFromLabel(label({ figures, per, style: "eu" }));

/** Value and interval of a component, as text. */
function span(food: FoodInput, id: ComponentId): string {
  const { kind, value, low, high } = readFigure(food, id);
  return kind === "below"
    ? `below ${exactText(high ?? exact(-1))}`
    : `${exactText(value)} [${low && exactText(low)}, ${high && exactText(high)}]`;
}

describe("a US label", () => {
  // 21 CFR 101.9(c), as quoted in data/labelUs101.ts; each interval worked by hand from the rule's text.
  it.each([
    ["energy", 0, "below 5"],
    ["energy", "5 kcal", "5 [5, 7.5]"],
    ["energy", 45, "45 [42.5, 47.5]"],
    ["energy", 50, "50 [47.5, 55]"],
    ["energy", "120 Calories", "120 [115, 125]"],
    ["fat", 0, "below 0.5"],
    ["fat", "2.5 g", "2.5 [2.25, 2.75]"],
    ["fat", 5, "5 [4.75, 5.5]"],
    ["fat", "12g", "12 [11.5, 12.5]"],
    ["cholesterol", "less than 5 mg", "below 5"],
    ["cholesterol", "0 mg", "below 2"],
    ["cholesterol", 5, "5 [5, 7.5]"],
    ["cholesterol", 30, "30 [27.5, 32.5]"],
    ["sodium", 0, "below 5"],
    ["sodium", 140, "140 [137.5, 145]"],
    ["sodium", 330, "330 [325, 335]"],
    ["fibre", "Less than 1g", "below 1"],
    ["fibre", "contains less than 1 g", "below 1"],
    ["fibre", "<1 g", "below 1"],
    ["fibre", 1, "1 [0.5, 1.5]"],
    ["protein", "24 g", "24 [23.5, 24.5]"],
    ["sugars", 0, "below 0.5"],
    // Printed finer than the rule asks: rounded to its own last digit.
    ["protein", "24.3 g", "24.3 [24.25, 24.35]"],
    ["energy", 7, "7 [6.5, 7.5]"],
    ["energy", 55, "55 [54.5, 55.5]"],
    // Amounts of vitamins and minerals go to the digits of their Daily Value, or finer.
    ["vitaminC", "9 mg", "9 [8.5, 9.5]"],
    ["iron", "3.6 mg", "3.6 [3.55, 3.65]"],
    ["vitaminB6", "1 mg", "1 [0.95, 1.05]"],
    // FDA guidance of 2017: to tens for a Daily Value of 250 or more; the sample label of 21 CFR 101.9(d)(12).
    ["calcium", "260 mg", "260 [255, 265]"],
    ["calcium", "260mg 20%", "260 [255, 265]"],
    ["potassium", "235 mg", "235 [232.5, 237.5]"],
    ["potassium", "233 mg", "233 [232.5, 233.5]"],
    ["magnesium", "100 mg", "100 [95, 105]"],
    ["iodine", "150 mcg", "150 [149.5, 150.5]"],
    ["iron", "8 mg", "8 [7.5, 8.5]"],
    ["vitaminD", "2 mcg (10 %)", "2 [1.5, 2.5]"],
    ["vitaminD", "2mcg 10%", "2 [1.5, 2.5]"],
    // Under 2 % of the Daily Value (90 mg), 0 may be declared.
    ["vitaminC", "0 mg", "below 1.8"],
    // 400 IU of vitamin D are 10 µg.
    ["vitaminD", "400 IU", "10 [9.5, 10.5]"],
    // Any other component goes by its last digit.
    ["leucine", "2.50 g", "2.5 [2.495, 2.505]"],
    ["caffeine", 0, "below 0.5"],
  ] as const)("%s %s is %s", (key, printed, expected) => {
    expect(span(us({ [key]: printed }), key)).toBe(expected);
  });

  it.each([
    // Daily Values (2016): vitamin C 90 mg, calcium 1300 mg, fat 78 g. 10 % may be 9 to 12.5 %.
    ["vitaminC", "10 %", "vitaminC", "9 [8.1, 11.25]"],
    ["calcium", "20% DV", "calcium", "260 [227.5, 292.5]"],
    ["iron", "0 %", "iron", "below 0.36"],
    ["iron", "2 %", "iron", "0.36 [0.18, 0.54]"],
    ["vitaminA", "60 %", "vitaminARae", "540 [495, 585]"],
    ["fat", "10 %", "fat", "7.8 [7.41, 8.19]"],
    ["folate", "50 %", "folateDfe", "200 [190, 220]"],
    ["niacin", "25 %", "niacinEquivalents", "4 [3.6, 4.4]"],
    // With what the amount counts in, as 21 CFR 101.9(c)(8)(iv) has it printed.
    ["folate", "200 mcg DFE", "folateDfe", "200 [195, 205]"],
    ["folate", "200mcg DFE 50%", "folateDfe", "200 [195, 205]"],
    ["niacin", "16 mg NE", "niacinEquivalents", "16 [15.5, 16.5]"],
    ["vitaminA", "90 mcg RAE", "vitaminARae", "90 [85, 95]"],
    ["vitaminA", "90 mcg RAE (10 %)", "vitaminARae", "90 [85, 95]"],
  ] as const)("%s %s of the Daily Value is %s %s", (key, printed, id, expected) => {
    expect(span(us({ [key]: printed }), id)).toBe(expected);
  });

  it("counts carbohydrate by difference, fibre in, so that what is available follows", () => {
    const food = us({ carbohydrate: "24 g", fibre: "3 g" });
    expect(span(food, "carbohydrateByDifference")).toBe("24 [23.5, 24.5]");
    expect(span(food, "availableCarbohydrate")).toBe("21 [20, 22]");
    expect(readFigure(food, "availableCarbohydrate").kind).toBe("derived");
  });

  it("brings a serving to 100 g, and makes a measure of it", () => {
    const food = us({ protein: "24 g", energy: 120, fat: 0 }, "30 g");
    expect(span(food, "protein")).toBe("80 [235/3, 245/3]");
    expect(span(food, "fat")).toBe("below 5/3");
    expect(food.measures).toEqual([{ name: "serving", grams: "30" }]);
    const s = sheet(
      { name: "r", portions: 1, lines: [{ food: "bar", amount: "2 serving" }] },
      foodTable([food]),
    );
    expect(s.total("protein").value.toString()).toBe("48");
    expect(s.total("fat").bound).toBe("at-least");
  });

  it("reads spoons and cups as labels size them, by density", () => {
    // 21 CFR 101.9(b)(5)(viii): a label's cup is 240 ml. 240 ml × 1.03 g/ml = 247.2 g.
    const food = foodFromLabel(label({ per: "1 cup", density: "1.03", figures: { protein: "8 g" } }));
    expect(food.measures).toEqual([{ name: "serving", grams: "247.2" }]);
  });
});

describe("an EU label", () => {
  // Commission guidance of December 2012, table 4, as quoted in data/labelEu2012.ts; worked by hand.
  it.each([
    ["energy", "388 kcal", "energy", "388 [387.5, 388.5]"],
    ["energy", "1622 kJ / 388 kcal", "energy", "388 [387.5, 388.5]"],
    ["energy", "388 kcal (1622 kJ)", "energy", "388 [387.5, 388.5]"],
    // 418.4 kJ are 100 kcal; printed to whole kilojoules.
    [
      "energy",
      "1046 kJ",
      "energy",
      `250 [${exactText(exact("1045500/4184"))}, ${exactText(exact("1046500/4184"))}]`,
    ],
    ["fat", "3.2 g", "fat", "3.2 [3.15, 3.25]"],
    ["fat", "3,2 g", "fat", "3.2 [3.15, 3.25]"],
    ["fat", "14 g", "fat", "14 [13.5, 14.5]"],
    ["fat", "10 g", "fat", "10 [9.5, 10.5]"],
    ["fat", "10.0 g", "fat", "10 [9.95, 10.5]"],
    ["fat", 0, "fat", "below 0.5"],
    ["fat", "<0.5 g", "fat", "below 0.5"],
    ["fat", "< 0,5 g", "fat", "below 0.5"],
    ["saturatedFat", 0, "saturatedFat", "below 0.1"],
    // Coarser than the guidance asks, as many labels are.
    ["fat", "3 g", "fat", "3 [2.5, 3.5]"],
    ["fat", "3.0 g", "fat", "3 [2.95, 3.05]"],
    // Finer than it asks.
    ["protein", "30.4 g", "protein", "30.4 [30.35, 30.45]"],
    ["carbohydrate", "38 g", "availableCarbohydrate", "38 [37.5, 38.5]"],
    ["salt", "0.45 g", "salt", "0.45 [0.445, 0.455]"],
    ["salt", "1.2 g", "salt", "1.2 [1.15, 1.25]"],
    ["salt", "0 g", "salt", "below 0.0125"],
    // The guidance prints as 0 what is below 0.0125; a label may print it all the same.
    ["salt", "0.01 g", "salt", "0.01 [0.005, 0.015]"],
    ["salt", "0.02 g", "salt", "0.02 [0.015, 0.025]"],
    ["vitaminA", "120 µg RE", "vitaminARe", "120 [119.5, 120.5]"],
    ["vitaminE", "1.5 mg α-TE", "vitaminE", "1.5 [1.45, 1.55]"],
    ["salt", "<0.01 g", "salt", "below 0.01"],
    ["sodium", "0.12 g", "sodium", "120 [115, 125]"],
    ["vitaminA", "120 µg", "vitaminARe", "120 [119.5, 120.5]"],
    ["vitaminC", "12 mg", "vitaminC", "12 [11.5, 12.5]"],
    ["vitaminC", "120 mg", "vitaminC", "120 [115, 125]"],
    ["vitaminC", "12.5 mg", "vitaminC", "12.5 [12.45, 12.55]"],
    ["thiamin", "0.17 mg", "thiamin", "0.17 [0.165, 0.175]"],
    ["folicAcid", "200 µg", "folate", "200 [199.5, 200.5]"],
    ["iron", "2.1 mg", "iron", "2.1 [2.05, 2.15]"],
    ["iron", "0.0021 g", "iron", "2.1 [2.05, 2.15]"],
  ] as const)("%s %s is %s %s", (key, printed, id, expected) => {
    expect(span(eu({ [key]: printed }), id)).toBe(expected);
  });

  it("says salt, from which sodium follows, interval and all", () => {
    // Regulation 1169/2011, Annex I: salt is sodium × 2.5.
    expect(span(eu({ salt: "0.45 g" }), "sodium")).toBe("180 [178, 182]");
  });

  it("keeps a trace a trace", () => {
    expect(eu({ alcohol: "traces" }).per100g.alcohol).toBe("trace");
  });

  it("per 100 ml goes by density", () => {
    const milk = foodFromLabel(
      label({ style: "eu", per: "100 ml", density: "1.03", figures: { protein: "3.4 g" } }),
    );
    expect(readFigure(milk, "protein").value).toEqual(exact("340/103"));
    expect(milk.measures).toBeUndefined();
  });
});

/** Rounds an amount as a label does, by the rule's text, in whole thousandths; both ways where a half may go either. */
function prints(x: number, rule: keyof typeof forward): number[] {
  return forward[rule](x);
}
const nearest = (x: number, step: number): number[] => {
  const low = Math.floor(x / step) * step;
  const rest = x - low;
  return rest * 2 === step ? [low, low + step] : [rest * 2 < step ? low : low + step];
};
const forward = {
  energy: (x: number) => (x < 5000 ? [0] : x <= 50_000 ? nearest(x, 5000) : nearest(x, 10_000)),
  fat: (x: number) => (x < 500 ? [0] : x < 5000 ? nearest(x, 500) : nearest(x, 1000)),
  sodium: (x: number) => (x < 5000 ? [0] : x <= 140_000 ? nearest(x, 5000) : nearest(x, 10_000)),
  protein: (x: number) => (x < 500 ? [0] : nearest(x, 1000)),
} as const;

describe("the interval of a printed figure", () => {
  const scales = { energy: 900_000, fat: 100_000, sodium: 4_000_000, protein: 100_000 } as const;
  it.each(["energy", "fat", "sodium", "protein"] as const)(
    "of %s holds every amount that prints so, and no other",
    (rule) => {
      fc.assert(
        fc.property(
          fc.integer({ min: 0, max: scales[rule] }),
          fc.integer({ min: -30_000, max: 30_000 }),
          (x, shift) => {
            for (const printed of prints(x, rule)) {
              if (printed > scales[rule]) continue;
              const { kind, value, low, high } = readFigure(us({ [rule]: printed / 1000 }), rule);
              const ends = [low, high].map((e) => Number(e?.n) / Number(e?.d));
              const inside = (y: number): boolean =>
                ends[0] !== undefined && ends[1] !== undefined && ends[0] * 1000 <= y && y <= ends[1] * 1000;
              expect(kind === "below" ? 0 : Number(value.n) / Number(value.d)).toBeCloseTo(printed / 1000, 9);
              expect([x, printed, inside(x)]).toEqual([x, printed, true]);
              const other = Math.max(0, x + shift);
              // The limit of a printed 0 itself prints as something.
              const atLimit = kind === "below" && ends[1] !== undefined && other === ends[1] * 1000;
              if (!atLimit)
                expect([other, printed, inside(other)]).toEqual([
                  other,
                  printed,
                  prints(other, rule).includes(printed),
                ]);
            }
          },
        ),
        { numRuns: runs(400) },
      );
    },
  );
});

describe("any figure that a label can print", () => {
  it.each([
    ["us", Object.keys(labelUs101)],
    ["eu", Object.keys(labelEu2012)],
  ] as const)(
    "of a %s label lies in its own interval, and makes a food that a table takes",
    (style, keys) => {
      fc.assert(
        fc.property(
          fc.constantFrom(...keys),
          fc.integer({ min: 0, max: 99_999 }),
          fc.nat(3),
          (key, digits, places) => {
            const printed = (digits / 10 ** places).toFixed(places);
            const unit =
              components[(style === "us" ? labelUs101 : labelEu2012)[key]?.component ?? "energy"].unit;
            let food: FoodInput;
            try {
              food = foodFromLabel(label({ style, per: "100 g", figures: { [key]: `${printed} ${unit}` } }));
            } catch (error) {
              // No food has 900 g of anything in 100 g.
              if (error instanceof SteelyardError && /come to|more energy/.test(error.message)) return;
              throw error;
            }
            expect(() => foodTable([food])).not.toThrow();
          },
        ),
        { numRuns: runs(500) },
      );
    },
  );
});

describe("a label that cannot be", () => {
  const faults = (more: object): string[] =>
    errorOf(() => foodFromLabel(label(more as Partial<LabelInput>))).faults.map(
      (f) => `${f.code} ${f.path.join(".")}`,
    );

  it("is refused with all its faults at once", () => {
    expect(
      faults({
        per: "1 bar",
        figures: { energy: "much", fat: -1, protein: "1,000 g", kale: 1, iron: "2 IU", calcium: true },
      }),
    ).toEqual([
      "label-malformed per",
      "label-malformed figures.energy",
      "label-malformed figures.fat",
      "label-malformed figures.protein",
      "label-malformed figures.kale",
      "label-malformed figures.iron",
      "label-malformed figures.calcium",
    ]);
  });

  it.each([
    ["no density for a volume", { per: "100 ml", figures: { fat: 1 } }, "per"],
    ["a serving of nothing", { per: "0 g" }, "per"],
    ["more saturated fat than fat", { figures: { fat: "2 g", saturatedFat: "4 g" } }, "figures.saturatedFat"],
    ["more sugars than carbohydrate", { figures: { carbohydrate: "2 g", sugars: "9 g" } }, "figures.sugars"],
    ["more than the serving weighs", { per: "10 g", figures: { protein: 8, fat: 4 } }, "per"],
    ["more energy than fat", { per: "10 g", figures: { energy: 120 } }, "figures.energy"],
    ["kJ that are not the kcal", { figures: { energy: "120 kJ / 120 kcal" } }, "figures.energy"],
    ["kJ twice", { figures: { energy: "120 kJ / 120 kJ" } }, "figures.energy"],
    ["vitamin A in IU", { figures: { vitaminA: "500 IU" } }, "figures.vitaminA"],
    ["folate in niacin equivalents", { figures: { folate: "200 mcg NE" } }, "figures.folate"],
    [
      "EU vitamin A in activity equivalents",
      { style: "eu", figures: { vitaminA: "9 µg RAE" } },
      "figures.vitaminA",
    ],
    ["a mineral in equivalents", { figures: { iron: "2 mg RAE" } }, "figures.iron"],
    [
      "folic acid inside folate",
      { figures: { folate: "200 mcg DFE (120 mcg folic acid)" } },
      "figures.folate",
    ],
    ["a per cent of no Daily Value", { figures: { sugars: "5 %" } }, "figures.sugars"],
    ["a per cent on an EU label", { style: "eu", figures: { iron: "5 %" } }, "figures.iron"],
    ["folate twice", { style: "eu", figures: { folate: 1, folicAcid: 1 } }, "figures.folicAcid"],
    ["less than nothing", { figures: { fat: "<0 g" } }, "figures.fat"],
    ["NaN", { figures: { fat: Number.NaN } }, "figures.fat"],
    ["an infinite figure", { figures: { fat: "1e999 g" } }, "figures.fat"],
    ["an unknown style", { style: "uk" }, "style"],
    ["no name", { name: "" }, "name"],
    ["a field that is none", { per100g: {} }, "per100g"],
    ["a list", { figures: [] }, "figures"],
  ])("%s", (_, more, path) => {
    const error = errorOf(() => foodFromLabel(label(more as Partial<LabelInput>)));
    expect(error.faults.map((f) => f.path.join("."))).toContain(path);
    expect(error.hint.length).toBeGreaterThan(5);
  });

  it("allows for rounding before it refuses", () => {
    expect(() => us({ fat: "2 g", saturatedFat: "2 g" })).not.toThrow();
    // Fat of up to 2.25 g may hold saturated fat from 2.25 g on.
    expect(() => us({ fat: "2 g", saturatedFat: "2.5 g" })).not.toThrow();
    expect(() => us({ fat: "2 g", saturatedFat: "3 g" })).toThrow();
    // 0.5 to 1.5 g of carbohydrate may hold "1 g" of sugars and "1 g" of fibre.
    expect(() => us({ carbohydrate: "1 g", sugars: "1 g", fibre: "1 g" })).not.toThrow();
  });

  it("is refused for hostile keys and texts, in bounded time", () => {
    expect(faults(JSON.parse('{"figures":{"__proto__":{"fat":1}}}'))).toEqual([
      "label-malformed figures.__proto__",
    ]);
    expect(faults({ figures: { constructor: 1, toString: 2 } })).toHaveLength(2);
    for (const none of [undefined, null, 7, "24 g", [], {}])
      expect(errorOf(() => foodFromLabel(none as unknown as LabelInput)).code).toBe("label-malformed");
    expect(faults({ figures: { fat: `${"9".repeat(100_000)} g` } })).toHaveLength(1);
    expect(faults({ figures: { fat: `1${" ".repeat(100_000)}x` } })).toHaveLength(1);
  });
});

describe("what a label makes", () => {
  it("is a food that a table takes, says where its figures come from, and keeps what else was said", () => {
    const food = foodFromLabel(
      label({
        figures: { protein: "24 g", fat: "trace" },
        allergens: ["soya"],
        fortifiedWith: ["vitaminB12"],
        measures: [{ name: "bar", grams: 60 }],
        source: "its wrapper",
      }),
    );
    const kept = foodTable([food]).get("bar");
    expect(kept).toMatchObject({
      state: "as sold",
      source: "its wrapper",
      allergens: ["soya"],
      fortifiedWith: ["vitaminB12"],
    });
    expect(kept.per100g.protein).toMatchObject({ source: "label, US style: 24 g" });
    expect(JSON.parse(JSON.stringify(kept))).toEqual(JSON.parse(JSON.stringify(food)));
  });
});
