import Decimal from "decimal.js";
import { describe, expect, it } from "vitest";
import { figure } from "../../src/measure/figure.ts";
import { exactText } from "../../src/number/digits.ts";
import { errorOf } from "../number/errorOf.ts";

describe("figures for components", () => {
  const read: [string | number | Decimal, string, string][] = [
    ["650 kcal", "kcal", "650"],
    ["2.4 MJ", "kcal", "300000/523"], // 2400 / 4.184
    ["2720 kJ", "kcal", "340000/523"],
    ["60 g", "g", "60"],
    ["1500 mg", "g", "1.5"],
    ["1.5 g", "mg", "1500"],
    ["400 µg", "mg", "0.4"],
    ["400 mcg", "µg", "400"],
    ["0.4 mg", "µg", "400"],
    ["1 oz", "g", "28.349523125"],
    [650, "kcal", "650"],
    [0.1, "g", "0.1"],
    [0, "g", "0"],
    ["60", "g", "60"],
    ["60.5", "g", "60.5"],
    ["60,5", "g", "60.5"],
    ["1/3", "g", "1/3"],
    ["1 1/2", "g", "1.5"],
    ["½", "g", "0.5"],
    ["1e3", "mg", "1000"],
    [new Decimal("0.25"), "g", "0.25"],
  ];
  it.each(read)("%s for a component in %s is %s", (value, unit, expected) => {
    const text = exactText(figure(value, unit));
    expect(text).toBe(expected);
  });

  const bad: [string | number, string, string, string][] = [
    ["650 kcal", "g", "unit-kinds-differ", "write it in g"],
    ["60 g", "kcal", "unit-kinds-differ", "write it in kcal"],
    ["60 ml", "g", "unit-kinds-differ", "write it in g"],
    ["1 us cup", "g", "unit-kinds-differ", "write it in g"],
    ["", "g", "amount-empty", "100 g"],
    ["   ", "g", "amount-empty", "100 g"],
    ["-5", "g", "amount-negative", "0 or more"],
    ["-5 g", "g", "amount-negative", "0 or more"],
    [-5, "g", "amount-negative", "0 or more"],
    [Number.NaN, "g", "number-not-finite", "finite"],
    ["25 %", "g", "amount-unknown-unit", 'write a figure in g: "100 g"'],
    ["650 calories", "kcal", "amount-ambiguous", '"kcal"'],
    ["1,000", "kcal", "amount-ambiguous", "write 1000 or 1"],
    ["60-70 g", "g", "amount-range", "one figure"],
    ["60/0", "g", "number-zero-denominator", "above 0"],
    ["lots", "g", "amount-no-number", 'write a figure in g: "100 g"'],
    ["much", "kcal", "amount-no-number", 'write a figure in kcal: "100 kcal"'],
    ["", "kcal", "amount-empty", 'write a figure in kcal: "100 kcal"'],
    ["a pinch", "mg", "amount-no-size", 'write a figure in mg: "100 mg"'],
    ["2 cups", "kcal", "measures-needed", 'write a figure in kcal: "100 kcal"'],
    ["5 blobs", "mg", "amount-unknown-unit", 'write a figure in mg: "100 mg"'],
    // A unit that was meant is named where it is one of the kind; grams are no help for energy.
    ["5 kcall", "kcal", "amount-unknown-unit", 'did you mean "kcal"'],
    ["5 mgg", "kcal", "amount-unknown-unit", 'write a figure in kcal: "100 kcal"'],
    ["10 IU", "µg", "amount-unknown-unit", "give µg: an international unit"],
    ["10 IU", "kcal", "amount-unknown-unit", 'write a figure in kcal: "100 kcal"'],
    ["1e999999", "g", "number-too-long", "check the number"],
    ["9".repeat(200_001), "g", "number-too-long", "at most"],
  ];
  it.each(bad)("%s for a component in %s is refused: %s", (value, unit, code, hint) => {
    const error = errorOf(() => figure(value, unit));
    expect(error.code).toBe(code);
    expect(error.hint).toContain(hint);
  });
});
