import Decimal from "decimal.js";
import { describe, expect, it } from "vitest";
import {
  type AmountOptions,
  amount,
  gramsOf,
  millilitresOf,
  sameAmount,
  timesAmount,
  withExact,
} from "../../src/measure/amount.ts";
import { setSpellings, spellings } from "../../src/measure/data/spellings.ts";
import { exactText } from "../../src/number/digits.ts";
import { exact, fraction } from "../../src/number/exact.ts";
import { errorOf } from "../number/errorOf.ts";

const read = (text: string, how?: AmountOptions): string => {
  const a = amount(text, how);
  return `${exactText(a.value)} ${a.unit}`;
};

describe("figures", () => {
  const figures: [string, string][] = [
    ["400 g", "400 g"],
    ["400g", "400 g"],
    ["0 g", "0 g"],
    ["0.0 g", "0 g"],
    ["007 g", "7 g"],
    ["1.5 g", "1.5 g"],
    ["1,5 g", "1.5 g"],
    [".5 g", "0.5 g"],
    [",5 g", "0.5 g"],
    ["0,125 g", "0.125 g"],
    ["0.125 g", "0.125 g"],
    ["1.000 g", "1 g"],
    ["1,25 g", "1.25 g"],
    ["1,2345 g", "1.2345 g"],
    ["1234,567 g", "1234.567 g"],
    ["1/2 g", "0.5 g"],
    ["1 / 2 g", "0.5 g"],
    ["3/2 g", "1.5 g"],
    ["1 1/2 g", "1.5 g"],
    ["1  1/2\tg", "1.5 g"],
    ["1 and 1/2 g", "1.5 g"],
    ["1 & 1/2 g", "1.5 g"],
    ["1/3 g", "1/3 g"],
    ["½ g", "0.5 g"],
    ["1½ g", "1.5 g"],
    ["1 ½ g", "1.5 g"],
    ["1½g", "1.5 g"],
    ["⅔ g", "2/3 g"],
    ["2⅞ g", "2.875 g"],
    ["1⁄4 g", "0.25 g"],
    ["3∕4 g", "0.75 g"],
    ["1 1⁄4 g", "1.25 g"],
    ["1\u00a0g", "1 g"],
    ["1\u202f1/2\u2009g", "1.5 g"],
  ];
  it.each(figures)("%j is %s", (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it("every fraction character has the value that Unicode gives it", () => {
    // The Unicode Standard's decompositions, as the JavaScript engine applies them (NFKC).
    for (const sign of "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞") {
      const [n = "", d = ""] = sign.normalize("NFKC").split("⁄");
      expect(amount(`${sign} g`).value, sign).toEqual(fraction(BigInt(n), BigInt(d)));
    }
  });

  it("a named decimal mark settles what either mark means", () => {
    expect(read("1,000 g", { decimal: "point" })).toBe("1000 g");
    expect(read("1,000 g", { decimal: "comma" })).toBe("1 g");
    expect(read("1.000 g", { decimal: "comma" })).toBe("1000 g");
    expect(read("1.000 g", { decimal: "point" })).toBe("1 g");
    expect(read("1,234,567.8 g", { decimal: "point" })).toBe("1234567.8 g");
    expect(read("1.234.567,8 g", { decimal: "comma" })).toBe("1234567.8 g");
    expect(read("0,5 g", { decimal: "comma" })).toBe("0.5 g");
  });

  it("reads as a decimal, and is kept exactly", () => {
    const third = amount("1/3 g");
    expect(third.value.toString()).toBe(`0.${"3".repeat(20)}`);
    expect(third.value.toJSON()).toBe("1/3");
    expect(third.value.eq("1/3")).toBe(true);
  });
});

describe("units", () => {
  it("reads every spelling, in any case and with stops", () => {
    for (const [unit, all] of Object.entries(spellings)) {
      for (const spelling of all) {
        for (const written of [spelling, spelling.toUpperCase(), `${spelling}.`]) {
          if (unit === "MJ" && written.length < 4) continue;
          const set = unit === "dessertspoon" ? "metric" : "us";
          expect(amount(`2 ${written}`, { measures: set }).unit, written).toBe(unit);
        }
      }
    }
    expect(amount("2.4 MJ").unit).toBe("MJ");
    expect(amount("2.4 megajoules").unit).toBe("MJ");
  });

  it("has no spelling for two units, and none that is refused as ambiguous", () => {
    const all = Object.values(spellings).flat();
    expect(new Set(all).size).toBe(all.length);
  });

  it("reads a unit of a named set whatever the measures", () => {
    const millilitres: [string, string][] = [
      ["1 us cup", "236.5882365"],
      ["1 US cup", "236.5882365"],
      ["1 U.S. cup", "236.5882365"],
      ["1 us fl oz", "29.5735295625"],
      ["1 us-label cup", "240"],
      ["1 US label cup", "240"],
      ["1 imperial pint", "568.26125"],
      ["1 UK pint", "568.26125"],
      ["1 imp. fl. oz.", "28.4130625"],
      ["1 metric tbsp", "15"],
      ["1 Australian tablespoon", "20"],
      ["1 AU tbsp", "20"],
    ];
    for (const measures of [undefined, "metric", "us", "imperial"] as const) {
      for (const [text, ml] of millilitres) {
        const a = amount(text, measures === undefined ? {} : { measures });
        expect(exactText(millilitresOf(a) ?? exact(-1)), text).toBe(ml);
      }
    }
    for (const [set, names] of Object.entries(setSpellings)) {
      for (const name of names) expect(amount(`1 ${name} tsp`).measures, name).toBe(set);
    }
  });

  it("reads spoons and cups by the measures, and keeps whose they are", () => {
    expect(amount("1 tbsp", { measures: "australian" }).measures).toBe("australian");
    expect(exactText(millilitresOf(amount("1 Tbsp", { measures: "australian" })) ?? exact(-1))).toBe("20");
    expect(exactText(millilitresOf(amount("1 level tbsp", { measures: "us" })) ?? exact(-1))).toBe(
      "14.78676478125",
    );
    expect(amount("1 g", { measures: "us" }).measures).toBeUndefined();
  });

  it("reads cubic and Nordic measures", () => {
    for (const text of ["1 in3", "1 in³", "1 cu. in.", "1 cubic inch"])
      expect(exactText(millilitresOf(amount(text)) ?? exact(-1)), text).toBe("16.387064");
    expect(exactText(millilitresOf(amount("2 kkp")) ?? exact(-1))).toBe("300");
    expect(amount("1 cm³").unit).toBe("ml");
  });

  it("knows no unit that nobody cooks with", () => {
    for (const unit of ["km3", "m3", "kl", "mm3", "yd3", "mt", "kanna", "Wh", "mWh", "kWh", "MWh", "GWh"])
      expect(errorOf(() => amount(`1 ${unit}`)).code, unit).toBe("amount-unknown-unit");
  });

  it("measures by a length only where the food says so", () => {
    expect(amount("23 cm")).toMatchObject({ unit: "cm", kind: "length" });
    expect(amount("3 cm", { own: ["cm"] }).kind).toBe("own");
    expect(amount("2 inches", { own: ["inch"] })).toMatchObject({ unit: "inch", kind: "own" });
    expect(amount("3 g", { own: ["g"] }).kind).toBe("mass");
    expect(amount("2 ft 3 in").parts?.length).toBe(2);
  });

  it("gives grams of a mass alone and millilitres of a volume alone", () => {
    expect(gramsOf(amount("1 ml"))).toBeUndefined();
    expect(millilitresOf(amount("1 g"))).toBeUndefined();
    expect(gramsOf(amount("2 medium", { own: ["medium"] }))).toBeUndefined();
    expect(gramsOf(amount("1 lb 4 oz"))).toEqual(exact("566.9904625"));
  });
});

describe("compound amounts", () => {
  const sums: [string, string, number][] = [
    ["1 lb 4 oz", "1.25 lb", 2],
    ["1 lb, 4 oz", "1.25 lb", 2],
    ["1 lb and 4 oz", "1.25 lb", 2],
    ["4 oz 1 lb", "1.25 lb", 2],
    ["1 cup + 2 tbsp", "1.125 cup", 2],
    ["1 cup plus 2 tbsp", "1.125 cup", 2],
    ["1 cup & 2 tbsp", "1.125 cup", 2],
    ["1½ cups 2 Tbsp.", "1.625 cup", 2],
    ["1/2 cup + 1/3 cup", "5/6 cup", 2],
    ["19 gal 3 qt 1 pt 1 c 10 tbsp 2 3/4 tsp", "61379/3072 gallon", 6],
    ["1 kg 250 g", "1.25 kg", 2],
    ["1 l 50 ml", "1.05 l", 2],
  ];
  it.each(sums)("%j is %s in %i parts", (text, expected, count) => {
    expect(read(text, { measures: "us" })).toBe(expected);
    expect(amount(text, { measures: "us" }).parts?.length).toBe(count);
  });

  it("takes spoons of different sets for what they are", () => {
    const a = amount("1 us cup + 1 australian tbsp");
    expect(exactText(millilitresOf(a) ?? exact(-1))).toBe("256.5882365");
  });
});

describe("a food's own measures", () => {
  const own = [
    "medium",
    "can",
    "can, drained",
    "cup, chopped",
    "slice (1/4 in thick)",
    "leaf",
    "berry",
    "half",
    "8 fl oz can",
  ];
  const found: [string, string][] = [
    ["2 medium", "2 medium"],
    ["2 Medium", "2 medium"],
    ["2 mediums", "2 medium"],
    ["½ medium", "0.5 medium"],
    ["1 can", "1 can"],
    ["2 cans", "2 can"],
    ["1 can, drained", "1 can, drained"],
    ["2 cans, drained", "2 can, drained"],
    ["2 cans drained", "2 can, drained"],
    ["1 1/2 cups, chopped", "1.5 cup, chopped"],
    ["3 slices (1/4 in thick)", "3 slice (1/4 in thick)"],
    ["3 slices (¼ in thick)", "3 slice (1/4 in thick)"],
    ["4 leaves", "4 leaf"],
    ["9 berries", "9 berry"],
    ["2 halves", "2 half"],
    ["2 8 fl oz cans", "2 8 fl oz can"],
    ["1 can + 2 cans", "3 can"],
  ];
  it.each(found)("%j is %s", (text, expected) => {
    expect(read(text, { own, measures: "us" })).toBe(expected);
    expect(amount(text, { own, measures: "us" }).kind).toBe("own");
  });

  it("leaves a plain unit that unit, and its name in a longer measure alone", () => {
    const how: AmountOptions = { own: ["cup", "oz", "cup, chopped"], measures: "metric" };
    expect(amount("1 cup", how)).toMatchObject({ kind: "volume", measures: "metric" });
    expect(amount("1 oz", how).kind).toBe("mass");
    expect(amount("1 cup, chopped", how).kind).toBe("own");
    expect(amount("1 cup 2 tbsp", how).kind).toBe("volume");
  });

  it("takes the longest name that fits, wherever it stands in the list", () => {
    for (const names of [
      ["can 400 g", "can"],
      ["can", "can 400 g"],
    ]) {
      expect(read("2 cans 400 g", { own: names })).toBe("2 can 400 g");
      expect(read("2 cans", { own: names })).toBe("2 can");
    }
  });

  it("prefers a food's pinch to none", () => {
    expect(read("1 pinch", { own: ["pinch"] })).toBe("1 pinch");
  });

  it("reads data by them too", () => {
    expect(amount({ value: 2, unit: "cans, drained" }, { own }).unit).toBe("can, drained");
    expect(amount({ value: 2, unit: "anything", kind: "own" }).kind).toBe("own");
  });
});

describe("amounts as data", () => {
  it("reads a value with its unit, numbers by their shortest decimal", () => {
    expect(amount({ value: 0.1, unit: "g" }).value).toEqual(exact("0.1"));
    expect(amount({ value: "1 1/2", unit: "us cup" }).value).toEqual(exact("1.5"));
    expect(amount({ value: new Decimal("0.25"), unit: "tsp" }, { measures: "us" }).measures).toBe("us");
    expect(amount({ value: 1e-7, unit: "g" }).value).toEqual(exact("1e-7"));
    expect(amount({ value: "1e308", unit: "g" }).value.n).toBe(10n ** 308n);
    expect(amount({ value: -0, unit: "g" }).value).toEqual(exact(0));
  });

  it("is frozen, and itself where it is read again", () => {
    const a = amount("1 lb 4 oz");
    expect(amount(a)).toBe(a);
    expect(Object.isFrozen(a)).toBe(true);
    expect(Object.isFrozen(a.parts)).toBe(true);
  });

  it("survives JSON", () => {
    const own = ["can, drained"];
    for (const text of ["1/3 g", "1 1/2 us cups", "1 us cup + 2 metric tbsp", "2 cans, drained", "5 in3"]) {
      const a = amount(text, { own });
      const again = amount(JSON.parse(JSON.stringify(a)));
      expect(sameAmount(again, a), text).toBe(true);
      expect(again.toJSON()).toEqual(a.toJSON());
    }
    expect(JSON.stringify(amount("1 1/2 us cups"))).toBe('{"value":"1.5","unit":"cup","measures":"us"}');
  });

  it("multiplies exactly, in the same unit", () => {
    const third = timesAmount(amount("1 us cup"), exact("1/3"));
    expect(third).toMatchObject({ unit: "cup", measures: "us", value: exact("1/3") });
    expect(timesAmount(third, exact(3)).value).toEqual(exact(1));
    const compound = amount("1 lb 4 oz");
    expect(timesAmount(compound, exact(2))).not.toHaveProperty("parts");
    expect(timesAmount(compound, exact(1))).toBe(compound);
    expect(withExact(amount("2 g"), exact(5)).value.toString()).toBe("5");
  });

  it("tells amounts apart by figure, unit, size and parts", () => {
    const same = (a: string, b: string) => sameAmount(amount(a), amount(b));
    expect(same("1.5 us cups", "1 1/2 us cups")).toBe(true);
    expect(same("1 us cup", "1 metric cup")).toBe(false);
    expect(same("1 g", "2 g")).toBe(false);
    expect(same("1 lb 4 oz", "1.25 lb")).toBe(false);
    expect(same("1000 g", "1 kg")).toBe(false);
  });
});
