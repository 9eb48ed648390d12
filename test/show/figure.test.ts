import Decimal from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { britishEnglish, type Language, say } from "../../src/document/language.ts";
import { type FigureOptions, showFigure, showPercent } from "../../src/measure/showFigure.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, minus, times } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { americanEnglish } from "../../src/show/american.ts";
import { figureCell, legend } from "../../src/show/figure.ts";
import { table } from "../../src/show/table.ts";
import { runs } from "../runs.ts";
import { anyFraction } from "./hostile.ts";

const show = (text: string, how?: FigureOptions): string => showFigure(exact(text), how);
const comma: Language = {
  tag: "de",
  decimal: ",",
  group: ".",
  phrases: { "at least {figure}": "mindestens {figure}" },
};

/** Kitchen-sized: from a microgram in kilograms to tonnes in grams. */
const kitchenSized = anyFraction.filter(
  (f) =>
    f.n === 0n || (compareRatios(abs(f), exact("1e-9")) >= 0 && compareRatios(abs(f), exact("1e15")) < 0),
);
const abs = (f: Exact): Exact => (f.n < 0n ? fraction(-f.n, f.d) : f);

describe("showFigure", () => {
  // Worked by hand: three significant digits, whole units in full, a half away from zero.
  it.each([
    ["0", "0"],
    ["60", "60"],
    ["61.538461", "61.5"],
    ["1/3", "0.333"],
    ["2/3", "0.667"],
    ["1234.5", "1235"],
    ["-1234.5", "-1235"],
    ["999.5", "1000"],
    ["9.995", "10"],
    ["0.09996", "0.1"],
    ["0.0123456", "0.0123"],
    ["0.000000001", "0.000000001"],
    ["123456789012345", "123456789012345"],
    ["2.125", "2.13"],
    ["-2.125", "-2.13"],
    ["60.04", "60"],
  ])("%s shows as %s", (value, text) => {
    expect(show(value)).toBe(text);
  });

  it("uses powers of ten outside a kitchen", () => {
    expect(show("1.234e-10")).toBe("1.23 × 10^-10");
    expect(show("9.999e20")).toBe("1 × 10^21");
    expect(show("-1e400")).toBe("-1 × 10^400");
    expect(show("1e15")).toBe("1 × 10^15");
  });

  // Independent method: decimal.js's own rounding to significant digits and to places.
  it("agrees with decimal.js on significant digits, keeping whole units", () => {
    fc.assert(
      fc.property(kitchenSized, fc.integer({ min: 1, max: 12 }), (f, digits) => {
        const D = Decimal.clone({ precision: 60, rounding: Decimal.ROUND_HALF_UP });
        const value = new D(f.n.toString()).div(f.d.toString());
        const rounded = value.abs().gte(new D(10).pow(digits)) ? value.toDP(0) : value.toSD(digits);
        expect(showFigure(f, { significant: digits })).toBe(rounded.toFixed());
      }),
      { numRuns: runs(500) },
    );
  });

  it("agrees with decimal.js on places, but for what would show as nothing", () => {
    fc.assert(
      fc.property(kitchenSized, fc.integer({ min: 0, max: 9 }), (f, places) => {
        const D = Decimal.clone({ precision: 60, rounding: Decimal.ROUND_HALF_UP });
        const rounded = new D(f.n.toString()).div(f.d.toString()).toFixed(places);
        const text = showFigure(f, { places, zeros: "keep" });
        if (f.n !== 0n && Number(rounded) === 0) expect(text).toMatch(/^(under|over) -?0\.0*5$/);
        else expect(text).toBe(rounded);
      }),
      { numRuns: runs(500) },
    );
  });

  it("shows no power of ten for a kitchen-sized figure, and nothing only for nothing", () => {
    fc.assert(
      fc.property(kitchenSized, (f) => {
        expect(showFigure(f)).toMatch(/^-?\d+(\.\d*[1-9])?$/);
        expect(showFigure(f) === "0").toBe(f.n === 0n);
      }),
    );
  });

  it("rises with the figure", () => {
    fc.assert(
      fc.property(kitchenSized, kitchenSized, fc.integer({ min: 1, max: 6 }), (a, b, significant) => {
        const [x, y] = [a, b].map((f) => exact(showFigure(f, { significant }))) as [Exact, Exact];
        expect(compareRatios(a, b) * compareRatios(x, y)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("keeps zeros where told", () => {
    expect(show("60", { zeros: "keep" })).toBe("60.0");
    expect(show("9.996", { zeros: "keep" })).toBe("10.0");
    expect(show("0.09996", { zeros: "keep" })).toBe("0.100");
    expect(show("3", { places: 2, zeros: "keep" })).toBe("3.00");
  });

  it("never shows something as nothing", () => {
    expect(show("0.2", { places: 0 })).toBe("under 0.5");
    expect(show("0.004", { places: 2, unit: "g" })).toBe("under 0.005 g");
    expect(show("-0.2", { places: 0 })).toBe("over -0.5");
    expect(show("0", { places: 0 })).toBe("0");
    expect(show("0.5", { places: 0 })).toBe("1");
  });

  it("groups thousands and sets the decimal mark as the language does", () => {
    expect(show("1234567.8", { grouped: true })).toBe("1,234,568");
    expect(show("-123456", { grouped: true })).toBe("-123,456");
    expect(show("999", { grouped: true })).toBe("999");
    expect(show("1234.56", { places: 1, grouped: true, language: comma })).toBe("1.234,6");
    expect(show("61.538", { language: comma })).toBe("61,5");
  });

  it("names units in the reader's language", () => {
    expect(show("2", { unit: "litres", language: americanEnglish })).toBe("2 liters");
    expect(show("2", { unit: "litres", language: britishEnglish })).toBe("2 litres");
    expect(show("2", { unit: "constructor", language: americanEnglish })).toBe("2 constructor");
  });

  it.each([
    { significant: 0 },
    { significant: 35 },
    { significant: 1.5 },
    { significant: Number.NaN },
    { places: -1 },
    { places: 1e9 },
    { places: Number.NaN },
  ])("refuses %o", (how) => {
    expect(() => show("1", how)).toThrow(expect.objectContaining({ code: "figure-malformed" }));
    expect(() => figureCell(exact("1"), { ...how, tone: "at-least" })).toThrow(
      expect.objectContaining({ code: "figure-malformed" }),
    );
  });
});

describe("showPercent", () => {
  // Common practice, no source: whole per cents, which need not add up.
  it("shows whole per cents", () => {
    expect(["1/3", "1/3", "1/3"].map((s) => showPercent(exact(s)))).toEqual(["33%", "33%", "33%"]);
    expect(showPercent(exact("1/200"))).toBe("1%");
    expect(showPercent(exact("1"))).toBe("100%");
    expect(showPercent(exact("0.001"))).toBe("under 0.5%");
    expect(showPercent(exact("-0.025"))).toBe("-3%");
  });

  it("is finer where told", () => {
    expect(showPercent(exact("1/3"), { significant: 3 })).toBe("33.3%");
    expect(showPercent(exact("1/3"), { places: 1, language: comma })).toBe("33,3%");
  });
});

describe("figure", () => {
  it("shows an unknown as unknown", () => {
    expect(figureCell(null)).toEqual({ text: "?", value: null, tone: "unknown" });
  });

  it("says bounds and marks", () => {
    const texts = (["known", "derived", "presumed", "borrowed", "trace", "at-least", "at-most"] as const).map(
      (tone) => figureCell(exact("4.1"), { tone, unit: "mg" }).text,
    );
    expect(texts).toEqual([
      "4.1 mg",
      "4.1 mg d",
      "4.1 mg p",
      "4.1 mg b",
      "4.1 mg t",
      "at least 4.1 mg",
      "at most 4.1 mg",
    ]);
    expect(figureCell(exact("0"), { tone: "trace", unit: "mg" }).text).toBe("trace");
    expect(figureCell(exact("4.1"), { tone: "at-least", language: comma }).text).toBe("mindestens 4,1");
  });

  it("rounds a bound so that it still holds", () => {
    expect(figureCell(exact("4.149"), { tone: "at-least" }).text).toBe("at least 4.14");
    expect(figureCell(exact("4.141"), { tone: "at-most" }).text).toBe("at most 4.15");
    expect(figureCell(exact("9.999"), { tone: "at-most" }).text).toBe("at most 10");
    expect(figureCell(exact("0.7"), { tone: "at-least", places: 0 }).text).toBe("over 0");
    expect(figureCell(exact("0.2"), { tone: "at-most", places: 0 }).text).toBe("at most 1");
    expect(figureCell(exact("-0.7"), { tone: "at-most", places: 0 }).text).toBe("under 0");
    const precision = fc.oneof(
      fc.record({ significant: fc.integer({ min: 1, max: 6 }) }),
      fc.record({ places: fc.integer({ min: 0, max: 4 }) }),
    );
    fc.assert(
      fc.property(kitchenSized, precision, (f, how) => {
        const low = figureCell(f, { ...how, tone: "at-least" }).text;
        const high = figureCell(f, { ...how, tone: "at-most" }).text;
        expect(low).toMatch(/^(at least -?[\d.]+|over 0)$/);
        expect(high).toMatch(/^(at most -?[\d.]+|under 0)$/);
        const number = (text: string): Exact => exact(text.split(" ").at(-1) ?? "");
        expect(compareRatios(number(low), f)).toBeLessThanOrEqual(0);
        expect(compareRatios(number(high), f)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("keeps the exact value beside what it shows, and makes a cell that a table takes", () => {
    fc.assert(
      fc.property(fc.option(anyFraction), (f) => {
        const cell = figureCell(f);
        expect(cell.value).toBe(f === null ? null : exactText(f));
        if (f !== null && cell.value !== null) expect(minus(exact(cell.value), f).n).toBe(0n);
        expect(() => table({ columns: [{ key: "a", heading: "A" }], rows: [[cell]] })).not.toThrow();
      }),
    );
  });

  it("shows within half a unit of the third digit", () => {
    fc.assert(
      fc.property(
        kitchenSized.filter((f) => f.n !== 0n),
        (f) => {
          const off = abs(minus(exact(figureCell(f).text), f));
          // Half a unit in the third digit is at most 1/200 of the figure, and of whole units at most 1/2.
          expect(
            compareRatios(off, times(abs(f), exact("1/200"))) <= 0 || compareRatios(off, exact("1/2")) <= 0,
          ).toBe(true);
          expect(off.lte(abs(f))).toBe(true);
        },
      ),
    );
  });
});

describe("legend", () => {
  it("explains each mark that a table uses, once", () => {
    const four = exact("4");
    const rows = [
      ["a", figureCell(four, { tone: "borrowed" }), figureCell(null)],
      ["b", figureCell(four, { tone: "borrowed" }), figureCell(four, { tone: "at-least" })],
    ];
    expect(legend(rows)).toEqual(["b: all or part borrowed from a like food", "?: not known"]);
    expect(legend([["a", figureCell(four), figureCell(exact("0"), { tone: "trace" })]])).toEqual([]);
    expect(
      legend([
        { kind: "group", heading: "g" },
        { kind: "total", cells: [figureCell(four, { tone: "trace" })] },
      ]),
    ).toEqual(["t: trace amounts not counted"]);
  });
});

describe("say", () => {
  it("falls back to our own phrase, and fills only the gaps it was given", () => {
    expect(say(comma, "at most {figure}", { figure: "$&" })).toBe("at most $&");
    expect(say(britishEnglish, "{constructor} {a}", { a: "{b}", b: "no" })).toBe("{constructor} {b}");
    expect(say(britishEnglish, "__proto__")).toBe("__proto__");
  });
});
