import { describe, expect, it } from "vitest";
import { amount, sameAmount, timesAmount } from "../../src/measure/amount.ts";
import { breakDown } from "../../src/measure/breakDown.ts";
import { convert } from "../../src/measure/convert.ts";
import { type FormatOptions, formatAmount } from "../../src/measure/format.ts";
import { measureSet } from "../../src/measure/measures.ts";
import { englishWords, type UnitWords } from "../../src/measure/words.ts";
import { exact } from "../../src/number/exact.ts";
import { errorOf } from "../number/errorOf.ts";

const us = { measures: "us" } as const;
const shown = (text: string, how: FormatOptions = us): string => {
  const { significant: _, places: __, denominators: ___, ...reading } = how;
  return formatAmount(amount(text, reading), how);
};

describe("amounts as a cook writes them", () => {
  const written: [string, string][] = [
    ["1.5 cups", "1 1/2 cups"],
    ["0.25 tsp", "1/4 tsp"],
    ["1 cup", "1 cup"],
    ["0.5 cup", "1/2 cup"],
    ["0 cups", "0 cups"],
    ["2 cup", "2 cups"],
    ["0.333 cup", "0.333 cup"],
    ["1/3 cups", "1/3 cup"],
    ["5/3 pints", "1 2/3 pints"],
    ["3 tablespoons", "3 tbsp"],
    ["2.625 lb", "2 5/8 lb"],
    ["4.35 lb", "4.35 lb"],
    ["1.25 kg", "1.25 kg"],
    ["1 1/2 g", "1.5 g"],
    ["1/3 g", "1/3 g"],
    ["4/3 g", "1 1/3 g"],
    ["250 millilitres", "250 ml"],
    ["0.5 l", "0.5 l"],
    ["2 fluid ounces", "2 fl oz"],
    ["1 lb 4 oz", "1 lb 4 oz"],
    ["1 cup 2 tbsp", "1 cup + 2 tbsp"],
    ["10 mcg", "10 µg"],
    ["650 kcal", "650 kcal"],
  ];
  it.each(written)("%j is written %j, and reads back", (text, expected) => {
    expect(shown(text)).toBe(expected);
    expect(sameAmount(amount(expected, us), amount(text, us))).toBe(true);
  });

  it("says whose measure it is unless the reader has the same", () => {
    const cup = amount("1 us cup");
    expect(formatAmount(cup)).toBe("1 US cup");
    expect(formatAmount(cup, { measures: "us" })).toBe("1 cup");
    expect(formatAmount(cup, { measures: "metric" })).toBe("1 US cup");
    expect(formatAmount(amount("2 us-label tbsp"))).toBe("2 US label tbsp");
    const grandmother = measureSet({ name: "grandmother", ml: { cup: 200 } });
    const hers = amount("2 cups", { measures: grandmother });
    expect(formatAmount(hers, { measures: grandmother })).toBe("2 cups");
    expect(formatAmount(hers, { measures: { name: "grandmother", ml: { cup: "200" } } })).toBe("2 cups");
    expect(formatAmount(hers)).toBe("2 grandmother cups");
    expect(sameAmount(amount("2 grandmother cups", { measures: grandmother }), hers)).toBe(true);
  });

  it("writes a food's own measures in singular and plural", () => {
    const own = ["can, drained", "medium", "leaf"];
    const names = ["1 can, drained", "1/2 can, drained", "2 cans, drained", "2 medium", "3 leaves"];
    for (const text of names) expect(formatAmount(amount(text, { own }))).toBe(text);
  });

  it("takes a comma for decimals", () => {
    expect(shown("1.25 kg", { decimal: "point" })).toBe("1.25 kg");
    expect(formatAmount(amount("1.25 kg"), { decimal: "comma" })).toBe("1,25 kg");
    expect(formatAmount(amount("1.125 kg"), { decimal: "comma" })).toBe("1,125 kg");
    expect(amount("1,125 kg", { decimal: "comma" }).value).toEqual(exact("1.125"));
  });

  it("writes in another language, and reads it back", () => {
    // German: Esslöffel and Teelöffel are abbreviated EL and TL (common practice, no source).
    const german: UnitWords = {
      units: { tbsp: "EL", tsp: "TL", cup: { one: "Tasse", other: "Tassen" }, g: "g" },
      sets: { metric: "metrische", us: "US-" },
      category: (figure) => new Intl.PluralRules("de").select(figure.toNumber()),
      joins: { mass: " ", other: " und " },
    };
    const how = { measures: "metric", words: german, decimal: "comma" } as const;
    const texts = ["1 1/2 Tassen", "1 Tasse", "2 EL", "1/2 TL", "1,5 g"];
    for (const text of texts) expect(formatAmount(amount(text, how), how)).toBe(text);
    expect(formatAmount(amount("1 cup", how), how)).toBe("1 Tasse");
    expect(amount("2 Tassen + 1 EL", how).parts?.map((part) => part.unit)).toEqual(["cup", "tbsp"]);
    const both = amount("2 Tassen und 1 EL und 1/2 TL", how);
    expect(formatAmount(both, how)).toBe("2 Tassen und 1 EL und 1/2 TL");
    expect(both.parts?.map((part) => part.unit)).toEqual(["cup", "tbsp", "tsp"]);
    expect(formatAmount(amount("1 us cup"), { words: { ...german, sets: {} } })).toBe("1 us Tasse");
    expect(formatAmount(amount("3 lb"), how)).toBe("3 lb");
  });

  it("uses `other` for a form that a language's table lacks", () => {
    const words: UnitWords = { ...englishWords, units: { cup: { other: "cupfuls" } } };
    expect(formatAmount(amount("1 us cup"), { measures: "us", words })).toBe("1 cupfuls");
  });
});

describe("rounding for show", () => {
  it("rounds to significant digits or decimals, halves up, without empty zeros", () => {
    const third = amount("100/3 g");
    expect(formatAmount(third, { significant: 3 })).toBe("33.3 g");
    expect(formatAmount(third, { places: 0 })).toBe("33 g");
    expect(formatAmount(amount("1234 g"), { significant: 2 })).toBe("1200 g");
    expect(formatAmount(amount("0.125 kg"), { places: 2 })).toBe("0.13 kg");
    expect(formatAmount(amount("2.50 kg"), { places: 3 })).toBe("2.5 kg");
    expect(formatAmount(amount("9.996 g"), { significant: 3 })).toBe("10 g");
    expect(formatAmount(amount("0 g"), { significant: 3 })).toBe("0 g");
  });

  it("leaves a cook's fraction, and a whole number of spoons agrees with its word", () => {
    expect(shown("1/3 cup", { ...us, significant: 2 })).toBe("1/3 cup");
    expect(shown("0.371 cup", { ...us, significant: 2 })).toBe("0.37 cup");
    expect(shown("1.001 cups", { ...us, significant: 2 })).toBe("1 cup");
  });

  it("rounds to fractions of the spoons there are", () => {
    const quarters = { ...us, denominators: [2, 3, 4] };
    expect(shown("0.73 cup", quarters)).toBe("3/4 cup");
    expect(shown("0.68 cup", quarters)).toBe("2/3 cup");
    expect(shown("1.95 cups", quarters)).toBe("2 cups");
    expect(shown("5/16 cup", quarters)).toBe("1/3 cup");
    expect(shown("33.3 g", { denominators: [2, 4] })).toBe("33.3 g");
    expect(shown("33.3 g", { denominators: [2, 4], significant: 2 })).toBe("33 g");
  });

  it("never rounds something to nothing", () => {
    expect(formatAmount(amount("0.004 g"), { places: 2 })).toBe("0.004 g");
    expect(formatAmount(amount("0.0044 g"), { places: 0 })).toBe("0.004 g");
    expect(shown("0.01 tsp", { ...us, denominators: [2, 4] })).toBe("0.01 tsp");
    expect(formatAmount(amount("0.005 g"), { places: 2 })).toBe("0.01 g");
  });

  it("rounds the last part of a compound alone", () => {
    expect(formatAmount(amount("1 lb 4.37 oz"), { places: 1 })).toBe("1 lb 4.4 oz");
  });

  const wrong: [string, FormatOptions][] = [
    ["significant", { significant: 0 }],
    ["significant", { significant: 2.5 }],
    ["significant", { significant: Number.NaN }],
    ["significant", { significant: 1e9 }],
    ["places", { places: -1 }],
    ["places", { places: 35 }],
    ["places", { significant: 2, places: 2 }],
    ["denominators", { denominators: [] }],
    ["denominators.0", { denominators: [1] }],
    ["denominators.1", { denominators: [4, 1.5] }],
    ["denominators.0", { denominators: [1e9] }],
    ["decimal", { decimal: "dot" as "point" }],
  ];
  it.each(wrong)("refuses %s of %j", (field, how) => {
    const error = errorOf(() => formatAmount(amount("1 g"), how));
    expect([error.code, error.path.join(".")]).toEqual(["format-malformed", field]);
  });
});

describe("conversion", () => {
  it("is exact, and there and back is where it began", () => {
    expect(convert("1 lb 4 oz", "g").value.toString()).toBe("566.9904625");
    const third = timesAmount(amount("1 us cup"), exact("1/3"));
    expect(sameAmount(convert(convert(third, "imperial pint"), "us cup"), third)).toBe(true);
  });

  it("reads the unit by the measures given, else by the amount's own", () => {
    expect(convert("1 us cup", "tbsp").value.toString()).toBe("16");
    expect(convert("1 us cup", "tbsp").measures).toBe("us");
    expect(convert("1 cup", "tbsp", { measures: "australian" }).value.toString()).toBe("12.5");
    expect(convert(amount("1 us cup"), "tbsp", { measures: "metric" }).value.toFixed(6)).toBe("15.772549");
  });

  it("crosses from volume to mass and back by a density in g/ml", () => {
    expect(convert("1 us cup", "g", { density: "1.03" }).value.toString()).toBe("243.685883595");
    expect(convert("103 g", "ml", { density: 1.03 }).value.toString()).toBe("100");
    expect(convert("1 lb", "oz", { density: 5 }).value.toString()).toBe("16");
  });

  const refused: [string, () => unknown, string, string][] = [
    ["no density", () => convert("1 us cup", "g"), "density-needed", "grams per millilitre"],
    ["a density of 0", () => convert("1 us cup", "g", { density: 0 }), "density-needed", "above 0"],
    ["a negative density", () => convert("1 g", "ml", { density: -1 }), "density-needed", "above 0"],
    [
      "a density that is none",
      () => convert("1 g", "ml", { density: Number.NaN }),
      "number-not-finite",
      "finite",
    ],
    ["mass to energy", () => convert("1 g", "kcal"), "unit-kinds-differ", "made of"],
    ["energy to volume", () => convert("1 kcal", "ml", { density: 1 }), "unit-kinds-differ", "made of"],
    [
      "a food's own measure",
      () => convert(amount("2 medium", { own: ["medium"] }), "g"),
      "unit-kinds-differ",
      "own measures weigh",
    ],
    ["an unknown unit", () => convert("1 g", "blob"), "amount-unknown-unit", "write grams"],
    ["a cup of nobody's", () => convert("1 ml", "cup"), "measures-needed", "metric cup"],
  ];
  it.each(refused)("refuses %s", (_, step, code, hint) => {
    const error = errorOf(step);
    expect(error.code).toBe(code);
    expect(error.hint).toContain(hint);
  });
});

describe("breaking down", () => {
  const parts = (text: string, units: string[], how = {}) =>
    formatAmount(breakDown(text, units, { ...us, ...how }), us);

  it("gives whole numbers of the larger units and what is left in the smallest, exactly", () => {
    expect(parts("1.3 lb", ["lb", "oz"])).toBe("1 lb 4 4/5 oz");
    expect(parts("1/3 cup", ["tbsp", "tsp"])).toBe("5 tbsp + 1 tsp");
    expect(parts("1 1/2 kg", ["g", "kg"])).toBe("1 kg 500 g");
    expect(parts("2 lb", ["lb", "oz"])).toBe("2 lb");
    expect(parts("0 lb", ["lb", "oz"])).toBe("0 oz");
    expect(parts("3 oz", ["lb", "oz"])).toBe("3 oz");
  });

  it("carries what rounding fills up", () => {
    expect(parts("15.99 oz", ["lb", "oz"], { step: "1/4" })).toBe("1 lb");
    expect(parts("2.99 tsp", ["tbsp", "tsp"], { step: "1/4" })).toBe("1 tbsp");
    expect(parts("3.999 cups", ["quart", "cup", "tbsp", "tsp"], { step: "1/4" })).toBe("1 quart");
    expect(parts("0.01 oz", ["lb", "oz"], { step: "1/4" })).toBe("0 oz");
  });

  it("takes units that do not divide each other: 12.5 Australian tablespoons to the cup", () => {
    const cup = breakDown("1.999 cups", ["cup", "tbsp"], { measures: "australian", step: "1/2" });
    expect(formatAmount(cup, { measures: "australian" })).toBe("2 cups");
  });

  const refused: [string, () => unknown, string][] = [
    ["no units", () => breakDown("1 lb", []), "format-malformed"],
    ["a step of 0", () => breakDown("1 lb", ["oz"], { step: 0 }), "format-malformed"],
    ["a negative step", () => breakDown("1 lb", ["oz"], { step: "-1/4" }), "format-malformed"],
    ["units of another kind", () => breakDown("1 lb", ["lb", "ml"]), "unit-kinds-differ"],
    [
      "a food's own measure",
      () => breakDown(amount("2 medium", { own: ["medium"] }), ["g"]),
      "unit-kinds-differ",
    ],
  ];
  it.each(refused)("refuses %s", (_, step, code) => {
    expect(errorOf(step).code).toBe(code);
  });
});
