import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { type AminoName, aminoAcids, type PatternId } from "../../src/person/amino/pattern.ts";
import { type PortionScore, proteinQuality } from "../../src/person/amino/quality.ts";
import { aminoPatterns, aminoScore } from "../../src/person/amino/score.ts";
import type { Person } from "../../src/person/person.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

type Figures = { readonly [C in ComponentId]?: Figure };

const names = Object.keys(aminoAcids) as AminoName[];
const ids = Object.values(aminoAcids).flat();

const food = (id: string, per100g: Figures): FoodInput => ({
  id,
  name: id,
  source: "made up for a test",
  per100g,
});

/** Of 10 g of protein, amino acids at so many per cent of a pattern; the two of a pair share it. */
function protein(
  id: string,
  pattern: PatternId,
  percents: { readonly [A in AminoName]?: number },
): FoodInput {
  const per100g: { [C in ComponentId]?: Figure } = { protein: 10 };
  for (const name of names) {
    const mg = (Number(aminoPatterns[pattern].mgPerGram[name]) * 10 * (percents[name] ?? 200)) / 100;
    for (const component of aminoAcids[name]) {
      per100g[component] = (mg / 1000 / aminoAcids[name].length).toFixed(8);
    }
  }
  return food(id, per100g);
}

function dish(foods: readonly FoodInput[], grams: readonly number[] = []): Sheet {
  const lines = foods.map(({ id }, i) => ({ key: id, food: id, amount: `${grams[i] ?? 100} g` }));
  return sheet({ name: "Dish", portions: 1, lines }, foodTable(foods));
}

const scoreOf = (s: Sheet, how: Parameters<typeof proteinQuality>[1] = {}): PortionScore => {
  const [first] = proteinQuality(s, how).scores;
  if (!first) throw new Error("no score");
  return first;
};

describe("the score of a portion", () => {
  const older = { patterns: ["fao-2013-older"] as const };

  it("of a mixture is that of the summed amino acids: a cereal at 0.56 and a pulse at 0.78 make 0.97", () => {
    // By hand from the pattern for older children and adults of FAO 2013, Food and Nutrition Paper 92, table 5:
    // lysine 48 and sulphur amino acids 23 mg in a gram of protein. A cereal of 27 and 35 mg scores
    // 27/48 = 0.5625, a pulse of 66 and 18 mg 18/23 = 0.783. Half of each has (27 + 66)/2 = 46.5 mg of lysine,
    // 46.5/48 = 0.969, and 26.5 mg of sulphur amino acids, which is above 23. The figures of both foods are
    // made up.
    const ofPattern = (lysine: number, sulphur: number): { readonly [A in AminoName]?: number } => ({
      lysine: (100 * lysine) / 48,
      "sulphur amino acids": (100 * sulphur) / 23,
    });
    const cereal = protein("cereal", "fao-2013-older", ofPattern(27, 35));
    const pulse = protein("pulse", "fao-2013-older", ofPattern(66, 18));
    const alone = [cereal, pulse].map((f) => scoreOf(dish([f]), older));
    expect(alone.map(({ least, limiting }) => [least.toFixed(4), limiting])).toEqual([
      ["0.5625", "lysine"],
      ["0.7826", "sulphur amino acids"],
    ]);
    const mixed = scoreOf(dish([cereal, pulse]), older);
    expect([mixed.least.toFixed(5), mixed.most?.toFixed(5), mixed.limiting, mixed.proven]).toEqual([
      "0.96875",
      "0.96875",
      "lysine",
      true,
    ]);
  });

  it("of wheat, chickpea and milk is corrected by the protein's own digestibility", () => {
    // FAO/WHO 1991, Food and Nutrition Paper 51, example of a mixture; inputs and result (about 0.74) from
    // memory. Protein 13, 22 and 34 %, lysine 25, 70 and 80 mg in its gram, digested 0.85, 0.80 and 0.95.
    const per = (
      g: number,
      lysine: number,
      sulphur: number,
      threonine: number,
      tryptophan: number,
    ): Figures => ({
      ...protein("any", "fao-1991-preschool", {}).per100g,
      protein: g,
      lysine: ((g * lysine) / 1000).toFixed(5),
      methionine: ((g * sulphur) / 2000).toFixed(5),
      cystine: ((g * sulphur) / 2000).toFixed(5),
      threonine: ((g * threonine) / 1000).toFixed(5),
      tryptophan: ((g * tryptophan) / 1000).toFixed(5),
      histidine: g / 20,
      leucine: g / 10,
      isoleucine: g / 20,
      valine: g / 20,
      phenylalanine: g / 20,
      tyrosine: g / 20,
    });
    const foods = [
      food("wheat", per(13, 25, 35, 30, 11)),
      food("chickpea", per(22, 70, 25, 42, 13)),
      food("milk", per(34, 80, 30, 37, 12)),
    ];
    const how = {
      patterns: ["fao-1991-preschool"] as const,
      digestibility: { wheat: 0.85, chickpea: "0.80", milk: 0.95 },
    };
    const score = scoreOf(dish(foods, [350, 150, 50]), how);
    expect(score.limiting).toBe("lysine");
    expect(Number(score.corrected?.least)).toBeCloseTo(0.74, 2);
    expect(
      scoreOf(dish(foods, [350, 150, 50]), { ...how, digestibility: { wheat: 0.85 } }).corrected,
    ).toBeUndefined();
  });

  it("agrees with the score of the same amounts handed over as numbers", () => {
    for (const id of [
      "lentils-boiled",
      "rice-white-long-boiled",
      "tofu-firm",
      "milk-whole",
      "oats-rolled-dry",
    ]) {
      const s = sheet({ name: id, portions: 1, lines: [{ food: id, amount: "100 g" }] }, starterFoods);
      const quality = proteinQuality(s);
      if (quality.told.toString() !== "1") continue;
      const amounts = Object.fromEntries(
        ["protein", ...ids].map((c) => [c, s.portion(c as ComponentId).value]),
      );
      for (const score of quality.scores) {
        const plain = aminoScore(amounts as never, score.pattern);
        expect([score.least.toJSON(), score.limiting]).toEqual([plain.score.toJSON(), plain.limiting]);
      }
    }
  });

  it("knows that lysine limits grains and sulphur amino acids pulses", () => {
    // Common practice, no source; both stand in every textbook of nutrition.
    const limiting = (id: string): unknown =>
      scoreOf(sheet({ name: id, portions: 1, lines: [{ food: id, amount: "100 g" }] }, starterFoods))
        .limiting;
    expect(limiting("rice-white-long-boiled")).toBe("lysine");
    expect(limiting("oats-rolled-dry")).toBe("lysine");
    expect(limiting("lentils-boiled")).toBe("sulphur amino acids");
  });

  it("lies where silence leaves it: what is told never contradicts the truth", () => {
    const percent = fc.integer({ min: 20, max: 300 });
    const hide = fc.boolean();
    const someFood = (i: number): fc.Arbitrary<readonly [FoodInput, FoodInput]> =>
      fc
        .tuple(...names.map(() => percent), ...ids.map(() => hide), hide)
        .map((drawn): readonly [FoodInput, FoodInput] => {
          const percents = Object.fromEntries(names.map((name, k) => [name, drawn[k] as number]));
          const truth = protein(`f${i}`, "who-2007-adult", percents);
          const told: { [C in ComponentId]?: Figure } = {};
          const hidden = drawn.slice(names.length) as boolean[];
          for (const [k, id] of ["protein" as const, ...ids].entries()) {
            // Most is told; protein is hidden only where much else is.
            const isHidden =
              id === "protein" ? hidden.every(Boolean) : hidden[k] && hidden[k - 1] && hidden[0];
            const figure = truth.per100g[id];
            if (!isHidden && figure !== undefined) told[id] = figure;
          }
          return [truth, { ...truth, per100g: told }];
        });
    let open = 0;
    fc.assert(
      fc.property(fc.tuple(someFood(0), someFood(1), someFood(2)), (pairs) => {
        const truth = proteinQuality(dish(pairs.map(([f]) => f)));
        const told = proteinQuality(dish(pairs.map(([, f]) => f)));
        told.scores.forEach((score, i) => {
          const real = truth.scores[i];
          if (!real) throw new Error("no score");
          expect(compareRatios(score.least, real.least)).toBeLessThanOrEqual(0);
          if (score.most) expect(compareRatios(real.least, score.most)).toBeLessThanOrEqual(0);
          if (!score.most || compareRatios(score.least, score.most) < 0) open += 1;
          if (score.proven) expect(score.limiting).toBe(real.limiting);
        });
      }),
      { numRuns: runs(100) },
    );
    expect(open).toBeGreaterThan(0);
  });

  it("proves no limiting amino acid while another is silent, and corrects nothing of unknown protein", () => {
    const { valine, ...rest } = protein("a", "who-2007-adult", { lysine: 60 }).per100g;
    const open = scoreOf(dish([food("a", rest)]));
    expect([open.limiting, open.proven, open.least.toString(), open.most?.toFixed(2)]).toEqual([
      "lysine",
      false,
      "0",
      "0.60",
    ]);
    const whole = scoreOf(dish([food("a", { ...rest, ...(valine !== undefined && { valine }) })]));
    expect([whole.proven, whole.least.toFixed(2)]).toEqual([true, "0.60"]);
    const how = { digestibility: { a: 0.9, b: 0.9 } };
    expect(scoreOf(dish([food("a", rest), food("b", {})]), how).corrected).toBeUndefined();
    expect(scoreOf(dish([food("a", rest), food("b", { protein: 1 })]), how).corrected).toBeDefined();
  });

  it("does not change with the size of the portion", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), (grams) => {
        const of = (g: number): unknown => {
          const { least, limiting } = scoreOf(
            sheet(
              { name: "x", portions: 1, lines: [{ food: "lentils-boiled", amount: `${g} g` }] },
              starterFoods,
            ),
          );
          return [least.toString(), limiting];
        };
        expect(of(grams)).toEqual(of(100));
      }),
      { numRuns: runs(20) },
    );
  });
});

describe("a day's requirement", () => {
  it("is met in mg per kg of body mass, worked by hand", () => {
    // WHO/FAO/UNU 2007: 30 mg of lysine per kg; 60 kg want 1,800 mg. Safe level of protein 0.83 g per kg: 49.8 g.
    const s = dish([food("a", { protein: "24.9", lysine: "0.9", methionine: "0.45", cystine: "0.45" })]);
    const q = proteinQuality(s, { person: { sex: "female", age: 30, mass: "60 kg" } });
    const of = (name: AminoName): unknown =>
      q.aminoAcids.find((each) => each.of === name)?.requirement?.share.toString();
    expect(of("lysine")).toBe("0.5");
    // 15 mg per kg of the sulphur amino acids: 900 mg.
    expect(of("sulphur amino acids")).toBe("1");
    expect(of("valine")).toBeUndefined();
    expect(q.safeLevel?.share.toString()).toBe("0.5");
    expect(proteinQuality(s).aminoAcids.every(({ requirement }) => requirement === undefined)).toBe(true);
  });
});

describe("a requirement of adults", () => {
  const s = dish([food("a", { protein: "24.9", lysine: "0.9" })]);
  const woman: Person = { sex: "female", age: 30, mass: "60 kg" };

  it.each<Partial<Person>>([
    { age: 5, mass: "18 kg" },
    { age: "17.9" },
    { pregnant: 2 },
    { breastfeeding: true },
  ])("is told to nobody else, and that is said: %o", (other) => {
    const q = proteinQuality(s, { person: { ...woman, ...other } });
    expect(q.aminoAcids.every(({ requirement }) => requirement === undefined)).toBe(true);
    expect(q.safeLevel).toBeUndefined();
    expect(toText(q)).toContain("requirements of a day are of adults neither pregnant nor breastfeeding");
  });

  it("counts a body up to a mass index of 30", () => {
    // 30 x 1.6 squared is 76.8 kg; 0.83 g x 76.8 = 63.744 g.
    const q = proteinQuality(s, { person: { ...woman, mass: "200 kg", height: "1.60 m" } });
    expect(q.safeLevel?.share.toFixed(6)).toBe((24.9 / 63.744).toFixed(6));
    expect(q.note).toBeUndefined();
  });
});

describe("what is shown", () => {
  it("names the limiting amino acid, or says that it is not proven", () => {
    const wheat = protein("wheat", "fao-2013-older", { lysine: 57 });
    expect(toText(proteinQuality(dish([wheat])))).toMatch(/limiting: lysine/);
    const half = toText(proteinQuality(dish([wheat, food("silent", { protein: 5 })])));
    expect(half).toMatch(/lowest so far as is known: lysine/);
    expect(half).toMatch(/score +at least \d+ +at least \d+/);
    expect(half).toMatch(/no [\s\S]* data: silent/);
    expect(half).toContain("67% of the protein comes from lines that tell all");
  });

  it("of no protein at all is unknown, and nothing is divided by nothing", () => {
    const water = dish([food("water", { protein: 0 })]);
    const { scores, told } = proteinQuality(water);
    expect(scores[0]?.most).toBeUndefined();
    expect(scores[0]?.limiting).toBeUndefined();
    expect(told.toString()).toBe("0");
    expect(toText(proteinQuality(water))).toMatch(/score +\? +\?/);
  });
});

describe("input", () => {
  it("of another shape is refused", () => {
    const s = dish([food("a", { protein: 1 })]);
    expect(errorOf(() => proteinQuality(null as unknown as Sheet)).code).toBe("comparison-malformed");
    for (const patterns of ["who-2007-adult", ["who"], ["__proto__"], [null]]) {
      expect(errorOf(() => proteinQuality(s, { patterns: patterns as never })).code).toBe(
        "comparison-malformed",
      );
    }
    for (const digestibility of [1.2, -1, { a: 2 }, { b: 0.5 }, { constructor: 0.5 }]) {
      expect(errorOf(() => proteinQuality(s, { digestibility: digestibility as never })).code).toBe(
        "comparison-malformed",
      );
    }
    expect(errorOf(() => proteinQuality(s, { digestibility: "most" })).code).toBe("number-malformed");
  });
});
