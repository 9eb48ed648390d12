/**
 * Published worked examples, as far as they touch units. "Read" and "derived" say how each figure
 * was come by: read in the published text, or its last step worked out from what was read.
 */
import { describe, expect, it } from "vitest";
import { amount, timesAmount } from "../../src/measure/amount.ts";
import { breakDown } from "../../src/measure/breakDown.ts";
import { convert } from "../../src/measure/convert.ts";
import { formatAmount } from "../../src/measure/format.ts";
import { englishWords, type UnitWords } from "../../src/measure/words.ts";
import { exact } from "../../src/number/exact.ts";

const times = (text: string, factor: string) => timesAmount(amount(text, { measures: "us" }), exact(factor));
const us = { measures: "us" } as const;

describe("US Armed Forces Recipe Service, A. General Information No. 1", () => {
  it("1(2), read: 1.25 lb × 3.48 is 4.35 lb; .35 lb is 5.60 oz, weighed out as 5 1/2 oz", () => {
    const batch = times("1.25 lb", "3.48");
    expect(batch.value.toString()).toBe("4.35");
    expect(convert("0.35 lb", "oz").value.toString()).toBe("5.6");
    expect(formatAmount(breakDown(batch, ["lb", "oz"], { step: "1/4" }))).toBe("4 lb 5 1/2 oz");
  });

  /** 1(2), read: hundredths of an ounce, from and to, and what is weighed out. */
  const scale: [number, number, string][] = [
    [0, 12, "0 oz"],
    [13, 37, "1/4 oz"],
    [38, 62, "1/2 oz"],
    [63, 87, "3/4 oz"],
    [88, 99, "1 oz"],
  ];
  it.each(scale)("1(2), read: from .%i to .%i of an ounce is %s", (from, to, weighed) => {
    for (let hundredths = from; hundredths <= to; hundredths++) {
      const part = amount({ value: hundredths / 100, unit: "oz" });
      expect(formatAmount(breakDown(part, ["oz"], { step: "1/4" })), `${hundredths}`).toBe(weighed);
    }
  });

  it("1(3), read: 3 oz for 4 oz is .75; 348 × .75 is 261; 2 lb × 2.61 is 5.22 lb (continued in NAVEDTRA 14163)", () => {
    expect(convert("3 oz", "lb").value.div(convert("4 oz", "lb").value).toString()).toBe("0.75");
    expect(times("2 lb", "2.61").value.toString()).toBe("5.22");
  });

  it("NAVEDTRA 14163, read: 6 gal × 3.33 is 19.98 gal, measured as 19 gal 3 qt 1 pt 1 c 10 tbsp 2 3/4 tsp", () => {
    const batch = times("6 gal", "3.33");
    expect(batch.value.toString()).toBe("19.98");
    const measured = breakDown(batch, ["gal", "qt", "pt", "c", "tbsp", "tsp"], { step: "1/4", ...us });
    // Written as the card writes it, by a table of its abbreviations.
    const card: UnitWords = {
      ...englishWords,
      units: { gallon: "gal", quart: "qt", pint: "pt", cup: "c" },
      joins: { mass: " ", other: " " },
    };
    const text = formatAmount(measured, { ...us, words: card });
    expect(text).toBe("19 gal 3 qt 1 pt 1 c 10 tbsp 2 3/4 tsp");
    expect(amount(text, us).toJSON()).toEqual(measured.toJSON());
    // 2.64 tsp before rounding (read): the breakdown misses the batch by 0.11 tsp.
    const missed = convert(measured, "tsp", us).value.minus(convert(batch, "tsp", us).value);
    expect(missed.toString()).toBe("0.11");
  });

  it("read: ounces as decimal pounds to two places, halves up", () => {
    const table: Record<number, string> = {
      1: ".06",
      2: ".13",
      3: ".19",
      4: ".25",
      5: ".31",
      6: ".38",
      7: ".44",
      8: ".50",
      9: ".56",
      10: ".63",
      11: ".69",
      12: ".75",
      13: ".81",
      14: ".88",
      15: ".94",
    };
    for (const [ounces, pounds] of Object.entries(table)) {
      const lb = convert(`${ounces} oz`, "lb").value;
      expect(lb.toFixed(2), ounces).toBe(`0${pounds}`);
    }
    expect(amount("1 lb 4 oz").value.toString()).toBe("1.25");
  });
});

describe("quantity recipes", () => {
  /** USDA FNS "Chicken or Turkey Salad", E-07 and E-05 (read by OCR; only cells that were plain): 25, 50, 100 servings. */
  const doublings: [string, string][] = [
    ["3 lb 3 oz", "6 lb 6 oz"],
    ["6 lb 6 oz", "12 lb 12 oz"],
    ["2 qt 2 cups", "1 gal 1 qt"],
    ["1 gal 1 qt", "2 gal 2 qt"],
    ["11 oz", "1 lb 6 oz"],
    ["2 1/2 cups 2 Tbsp", "1 qt 1 1/4 cups"],
    ["6 oz", "12 oz"],
    ["1 cup", "2 cups"],
    ["7 1/2 oz", "15 oz"],
    ["3/4 cup 2 Tbsp", "1 3/4 cups"],
  ];
  it.each(doublings)("USDA FNS E-07: twice %s is %s", (once, twice) => {
    const doubled = times(once, "2");
    expect(convert(doubled, twice.includes("oz") ? "oz" : "tsp", us).value).toEqual(
      convert(twice, twice.includes("oz") ? "oz" : "tsp", us).value,
    );
  });

  it("USDA Recipes for Schools, factor method: 349 oz × 0.80 is 279.2 oz (read; last step derived)", () => {
    expect(times("349 oz", "0.80").value.toString()).toBe("279.2");
  });

  it("Kendall College guide, read: five bowls of 8 oz are ten cups of 4 oz", () => {
    expect(times("8 oz", "5").value).toEqual(times("4 oz", "10").value);
  });

  it("slide deck, read: 20 servings to 40 is 2, to 6 is 0.3; and 32/8 is 4", () => {
    expect(times("1 1/2 cups", "40/20").value.toString()).toBe("3");
    expect(times("2 cups", "6/20").value.toString()).toBe("0.6");
    expect(times("1/4 tsp", "32/8").value.toString()).toBe("1");
  });
});
