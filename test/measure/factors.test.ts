import { describe, expect, it } from "vitest";
import { amount, gramsOf, millilitresOf } from "../../src/measure/amount.ts";
import { convert } from "../../src/measure/convert.ts";
import { measureSetNames, measureSets } from "../../src/measure/measures.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, over, times } from "../../src/number/exact.ts";

const ml = (text: string): string => exactText(millilitresOf(amount(text)) ?? exact(-1));
const grams = (text: string): string => exactText(gramsOf(amount(text)) ?? exact(-1));

/** `a` divided by a whole number, as text. */
const part = (a: Exact, by: number): string => exactText(over(a, fraction(BigInt(by))));

describe("exact factors, from their definitions", () => {
  it("avoirdupois: the pound is 453.59237 g, the ounce 1/16 of it (Weights and Measures Act 1985, Sch. 1 Part V), the stone 14", () => {
    const pound = exact("453.59237");
    expect(grams("1 lb")).toBe(exactText(pound));
    expect(grams("1 oz")).toBe(part(pound, 16));
    expect(grams("1 st")).toBe(exactText(times(pound, exact(14))));
  });

  it("US liquid measures: 231 cubic inches of 2.54 cm to the gallon, and exact divisions (NIST Handbook 44, App. C)", () => {
    const inch = exact("2.54");
    const gallon = times(exact(231), times(inch, times(inch, inch)));
    expect(exactText(gallon)).toBe("3785.411784");
    const divisions = { gallon: 1, quart: 4, pint: 8, cup: 16, gill: 32, "fl oz": 128, tbsp: 256, tsp: 768 };
    for (const [unit, by] of Object.entries(divisions))
      expect(ml(`1 us ${unit}`), unit).toBe(part(gallon, by));
  });

  it("US label measures: cup 240, fluid ounce 30, tablespoon 15, teaspoon 5 ml (21 CFR 101.9(b)(5)(viii))", () => {
    expect(["cup", "fl oz", "tbsp", "tsp"].map((unit) => ml(`1 us-label ${unit}`))).toEqual([
      "240",
      "30",
      "15",
      "5",
    ]);
    // The same paragraph's ounce of 28 g is a label's rounding; an ounce stays an ounce.
    expect(exactText(gramsOf(amount("1 oz", { measures: "us-label" })) ?? exact(0))).toBe("28.349523125");
  });

  it("imperial measures: 4.54609 litres to the gallon, quart 1/4, pint 1/8, gill 1/4 pint, fluid ounce 1/20 pint (Weights and Measures Act 1985, Sch. 1 Part IV)", () => {
    const gallon = exact("4546.09");
    const divisions = { gallon: 1, quart: 4, pint: 8, gill: 32, "fl oz": 160 };
    for (const [unit, by] of Object.entries(divisions))
      expect(ml(`1 imperial ${unit}`), unit).toBe(part(gallon, by));
  });

  it("Australian measures: tablespoon 20, cup 250, teaspoon 5 ml (NSW Government kitchen measures chart)", () => {
    expect(["tbsp", "cup", "tsp"].map((unit) => ml(`1 australian ${unit}`))).toEqual(["20", "250", "5"]);
  });

  it("metric measures: cup 250, tablespoon 15, teaspoon 5 ml (NBS SP 430, 1975, as quoted at sizes.com); dessertspoon 10 ml (metricviews.uk)", () => {
    expect(["cup", "tbsp", "dessertspoon", "tsp"].map((unit) => ml(`1 metric ${unit}`))).toEqual([
      "250",
      "15",
      "10",
      "5",
    ]);
  });

  it("British spoons are 5, 10 and 15 ml (common practice, unverified), and there is no imperial cup", () => {
    expect(["tsp", "dessertspoon", "tbsp"].map((unit) => ml(`1 imperial ${unit}`))).toEqual([
      "5",
      "10",
      "15",
    ]);
    expect(measureSets.imperial.ml.cup).toBeUndefined();
  });

  it("energy: 1 kcal is 4.184 kJ (INFOODS, note to ENERC)", () => {
    expect(convert("1 kcal", "kJ").value.toString()).toBe("4.184");
    expect(convert("2.4 MJ", "kcal").value.toFixed(4)).toBe("573.6138"); // 2400 / 4.184
  });

  it("metric prefixes (SI Brochure)", () => {
    expect(["1 kg", "1 mg", "1 µg"].map(grams)).toEqual(["1000", "0.001", "0.000001"]);
    expect(["1 l", "1 dl", "1 cl", "1 ml"].map(ml)).toEqual(["1000", "100", "10", "1"]);
  });

  it("lengths: the inch is 25.4 mm and the foot 12 of it (NIST Handbook 44, App. C)", () => {
    expect(["1 in", "1 ft", "1 m", "1 cm"].map((text) => exactText(convert(text, "mm").value))).toEqual([
      "25.4",
      "304.8",
      "1000",
      "10",
    ]);
  });

  it("cubic measures: the inch of 2.54 cm to the third power, and 1728 of them (NIST Handbook 44, App. C)", () => {
    const inch = exact("2.54");
    const cubed = times(inch, times(inch, inch));
    expect(exactText(convert("1 in3", "ml").value)).toBe("16.387064");
    expect(ml("1 in3")).toBe(exactText(cubed));
    expect(ml("1 ft3")).toBe(exactText(times(cubed, exact(1728))));
    // The gallon by its own definition: 231 in³.
    expect(ml("231 in3")).toBe(ml("1 us gallon"));
    expect(ml("1 cm3")).toBe("1");
  });

  it("Nordic measures: 1, 5, 15 and 150 ml (Store norske leksikon, målenheter for matlaging; the Swedish spoons by common practice, no source)", () => {
    expect(["1 krm", "1 tsk", "1 msk", "1 kkp"].map(ml)).toEqual(["1", "5", "15", "150"]);
  });

  it("names a source for every set", () => {
    for (const name of measureSetNames) expect(measureSets[name].source, name).toMatch(/\w{4}/);
  });
});
