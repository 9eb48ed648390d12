import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SteelyardError } from "../../src/number/error.ts";
import { type AminoName, aminoAcids } from "../../src/person/amino/pattern.ts";
import {
  aminoPatterns,
  aminoRequirementMet,
  aminoScore,
  type ProteinAmounts,
} from "../../src/person/amino/score.ts";
import { who2007Requirement } from "../../src/person/amino/who2007.ts";

const names = Object.keys(aminoAcids) as AminoName[];

describe("amino acid score", () => {
  it("of lysine in wheat, against the Institute of Medicine pattern", () => {
    // A teaching handout (studylib.net 7903368): wheat with 2.6 % lysine against 5.1 %: 51.
    const wheat = aminoScore({ protein: 100, lysine: "2.6" }, "iom-2002");
    expect(wheat.score.times(100).toFixed(0)).toBe("51");
    expect(wheat.limiting).toBe("lysine");
    expect(wheat.unknown.length).toBe(8);
  });

  it("of wheat, chickpea and milk, summed first and scored once", () => {
    // FAO/WHO 1991, Food and Nutrition Paper 51, example of a mixture; inputs and result (about 0.74)
    // unverified. Protein and amino acids, mg per g of protein: 350 g wheat at 13 %, 150 g chickpea
    // at 22 %, 50 g milk powder at 34 %; lysine 25, 70, 80; sulphur 35, 25, 30; threonine 30, 42, 37;
    // tryptophan 11, 13, 12; digestibility 0.85, 0.80, 0.95.
    const parts = [
      { protein: 45.5, lysine: 25, sulphur: 35, threonine: 30, tryptophan: 11 },
      { protein: 33, lysine: 70, sulphur: 25, threonine: 42, tryptophan: 13 },
      { protein: 17, lysine: 80, sulphur: 30, threonine: 37, tryptophan: 12 },
    ];
    const grams = (key: "lysine" | "sulphur" | "threonine" | "tryptophan"): string =>
      (parts.reduce((sum, part) => sum + Math.round(part.protein * part[key] * 10) / 10, 0) / 1000).toFixed(
        6,
      );
    const mixture = aminoScore(
      {
        protein: "95.5",
        lysine: grams("lysine"),
        methionine: grams("sulphur"),
        cystine: 0,
        threonine: grams("threonine"),
        tryptophan: grams("tryptophan"),
      },
      "fao-1991-preschool",
      { digestibility: "0.851" },
    );
    expect(mixture.limiting).toBe("lysine");
    expect(mixture.ratios.find((r) => r.of === "lysine")?.mgPerGram.toFixed(1)).toBe("50.3");
    expect(mixture.score.toFixed(2)).toBe("0.74");
  });

  it("is 1 for a protein of the pattern itself, and limiting where one falls short", () => {
    for (const pattern of Object.values(aminoPatterns)) {
      const amounts: Record<string, string> = { protein: "1000" };
      for (const name of names) {
        const [first, ...rest] = aminoAcids[name];
        amounts[first ?? ""] = pattern.mgPerGram[name];
        for (const other of rest) amounts[other] = "0";
      }
      const whole = aminoScore(amounts as unknown as ProteinAmounts, pattern.id);
      expect(whole.score.toString(), pattern.id).toBe("1");
      expect(whole.unknown).toEqual([]);
      for (const name of names) {
        const [first = ""] = aminoAcids[name];
        const short = { ...amounts, [first]: (Number(pattern.mgPerGram[name]) * 0.9).toFixed(4) };
        const scored = aminoScore(short as unknown as ProteinAmounts, pattern.id);
        expect([scored.limiting, scored.score.toFixed(4)]).toEqual([name, "0.9000"]);
      }
    }
  });

  it("does not depend on how much of the protein is eaten", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 90 }), (grams, lysine) => {
        const once = aminoScore({ protein: grams, lysine: `${lysine * grams}/1000` });
        const twice = aminoScore({ protein: 2 * grams, lysine: `${2 * lysine * grams}/1000` });
        expect(twice.score.eq(once.score)).toBe(true);
      }),
    );
  });

  it("does not take an unknown amino acid for none, nor half of a pair for the pair", () => {
    const score = aminoScore({ protein: 10, lysine: 0.6, methionine: 0.1 });
    expect(score.unknown).toContain("sulphur amino acids");
    expect(score.limiting).toBe("lysine");
  });

  it("refuses what cannot be scored", () => {
    const bad: [ProteinAmounts, string?, object?][] = [
      [{ protein: 0, lysine: 1 }],
      [{ protein: 10 }],
      [{ protein: 10, lysine: -1 }],
      [{ protein: Number.NaN, lysine: 1 }],
      [{ protein: 10, lysine: 1 }, "__proto__"],
      [{ protein: 10, lysine: 1 }, "iom-2002", { digestibility: 1.2 }],
    ];
    for (const [amounts, pattern, how] of bad) {
      expect(() => aminoScore(amounts, pattern as "iom-2002", how ?? {})).toThrow(SteelyardError);
    }
  });
});

describe("patterns", () => {
  it("WHO 2007: mg per g of protein is the requirement over 0.66 g of protein per kg", () => {
    // The report's own derivation: 30 / 0.66 is 45 lysine; rounded figures, so within 1.
    const adult = aminoPatterns["who-2007-adult"];
    for (const name of names) {
      const derived = Number(who2007Requirement.mgPerKg[name]) / Number(who2007Requirement.proteinPerKg.mean);
      expect(Math.abs(derived - Number(adult.mgPerGram[name])), name).toBeLessThanOrEqual(1);
    }
  });

  it("FAO 2013: as in the table of mg per g by age (encyclopaedia copy, typed again)", () => {
    const table: readonly [AminoName, number, number, number][] = [
      ["histidine", 21, 20, 16],
      ["isoleucine", 55, 32, 30],
      ["leucine", 96, 66, 61],
      ["lysine", 69, 57, 48],
      ["sulphur amino acids", 33, 27, 23],
      ["aromatic amino acids", 94, 52, 41],
      ["threonine", 44, 31, 25],
      ["tryptophan", 17, 8.5, 6.6],
      ["valine", 55, 43, 40],
    ];
    for (const [name, infant, child, older] of table) {
      expect(
        (["fao-2013-infant", "fao-2013-child", "fao-2013-older"] as const).map((id) =>
          Number(aminoPatterns[id].mgPerGram[name]),
        ),
        name,
      ).toEqual([infant, child, older]);
    }
  });

  it("each have a source", () => {
    for (const [id, pattern] of Object.entries(aminoPatterns)) {
      expect(pattern.id).toBe(id);
      expect(pattern.source).toMatch(/\d{4}/);
      expect(Object.keys(pattern.mgPerGram).sort()).toEqual([...names].sort());
      expect(["issuer", "copy", "unverified"]).toContain(pattern.check);
    }
  });
});

describe("requirement met", () => {
  it("is mg over mg per kg of body mass", () => {
    // 60 kg need 60 x 30 = 1800 mg of lysine a day; 0.9 g is half of it.
    expect(aminoRequirementMet({ lysine: "0.9" }, 60)).toEqual([{ of: "lysine", share: expect.anything() }]);
    expect(aminoRequirementMet({ lysine: "0.9" }, 60)[0]?.share.toString()).toBe("0.5");
    expect(aminoRequirementMet({ methionine: 1 }, 60)).toEqual([]);
    expect(() => aminoRequirementMet({ lysine: 1 }, 0)).toThrow(SteelyardError);
  });
});
