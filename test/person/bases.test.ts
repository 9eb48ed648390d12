import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { type Amounts, amountOf } from "../../src/person/intakes/bases.ts";
import { basisRules } from "../../src/person/intakes/basisRules.ts";
import { alphaTocopherolEquivalents, alphaTocopherolEstimate } from "../../src/person/intakes/tocopherols.ts";

const value = (of: ComponentId, amounts: Amounts): string | undefined =>
  amountOf([of], amounts)?.value.toString();

describe("one nutrient in other terms", () => {
  it("vitamin A: 1 µg RAE is 1 µg retinol, 12 µg beta-carotene, 24 µg of the others", () => {
    // Footnote a of the DRI summary table (books.nap.edu 13050, page 1106).
    const carotenoids = { betaCarotene: 1200, alphaCarotene: 240, betaCryptoxanthin: 240 };
    expect(value("vitaminARae", { retinol: 300, ...carotenoids })).toBe("420");
    // The same footnote: of provitamin carotenoids of food an RAE counts half of what an RE does.
    expect(value("vitaminARe", { retinol: 300, ...carotenoids })).toBe("540");
    expect(value("vitaminARe", { vitaminARae: 420, retinol: 300 })).toBe("540");
    expect(value("vitaminARae", { vitaminARe: 540, retinol: 300 })).toBe("420");
    // Retinol alone is the same in both.
    expect(value("vitaminARe", { vitaminARae: 300, retinol: 300 })).toBe("300");
  });

  it("folate: folic acid counts 1.7 times", () => {
    expect(value("folateDfe", { foodFolate: 100, folicAcid: 200 })).toBe("440");
    expect(value("folateDfe", { folate: 300, folicAcid: 200 })).toBe("440");
    expect(value("folate", { folateDfe: 440, folicAcid: 200 })).toBe("300");
    expect(value("folate", { foodFolate: 100, folicAcid: 200 })).toBe("300");
  });

  it("niacin: 60 mg of tryptophan is 1 mg", () => {
    expect(value("niacinEquivalents", { niacin: 10, tryptophan: "0.6" })).toBe("20");
  });

  it("salt: 2.5 times the sodium, as EU labels reckon", () => {
    expect(value("salt", { sodium: 2400 })).toBe("6");
    expect(value("sodium", { salt: 6 })).toBe("2400");
  });

  it("vitamin E: equivalents never below the alpha-tocopherol, and tables differ", () => {
    const forms = { alpha: 10, beta: 1, gamma: 20, delta: 5 };
    expect(alphaTocopherolEquivalents(forms).toString()).toBe("13.3");
    expect(alphaTocopherolEquivalents(forms, "usda").toString()).toBe("12.45");
    expect(alphaTocopherolEquivalents({ alpha: 10 }).toString()).toBe("10");
    expect(alphaTocopherolEstimate(15).toString()).toBe("12");
  });

  it("takes what is given before it converts, and sums what a figure sums", () => {
    expect(amountOf(["vitaminARe"], { vitaminARe: 5, retinol: 300, vitaminARae: 400 })).toEqual({
      value: expect.anything(),
    });
    expect(amountOf(["epa", "dha"], { epa: "0.1", dha: "0.2" })?.value.toString()).toBe("0.3");
    expect(amountOf(["niacinEquivalents"], { niacin: 10, tryptophan: 1 })?.rule?.formula).toContain(
      "tryptophan",
    );
  });

  it("gives nothing where a term is unknown", () => {
    expect(amountOf(["vitaminARe"], { vitaminARae: 420 })).toBeUndefined();
    expect(amountOf(["vitaminARae"], { retinol: 300, betaCarotene: 12 })).toBeUndefined();
    expect(amountOf(["niacinEquivalents"], { niacin: 10 })).toBeUndefined();
    expect(amountOf(["epa", "dha"], { epa: "0.1" })).toBeUndefined();
    expect(amountOf(["iron"], {})).toBeUndefined();
    expect(() => amountOf(["iron"], { iron: Number.NaN })).toThrow(SteelyardError);
  });

  it("turns back into itself", () => {
    const figure = fc.integer({ min: 0, max: 100000 }).map((n) => (n / 100).toFixed(2));
    fc.assert(
      fc.property(figure, figure, (retinol, rest) => {
        const rae = (Number(retinol) + Number(rest)).toFixed(2);
        const re = value("vitaminARe", { vitaminARae: rae, retinol });
        expect(Number(value("vitaminARae", { vitaminARe: re ?? "", retinol }))).toBe(Number(rae));
        const dfe = value("folateDfe", { folate: rae, folicAcid: retinol });
        expect(Number(value("folate", { folateDfe: dfe ?? "", folicAcid: retinol }))).toBe(Number(rae));
      }),
    );
  });

  it("each have a source", () => {
    for (const rule of basisRules) {
      expect(rule.source.length, rule.formula).toBeGreaterThan(10);
      expect(Object.keys(rule.terms).sort(), rule.formula).toEqual([...rule.from].sort());
      expect(rule.check === "memory" || rule.check.read.length > 5).toBe(true);
    }
  });
});
