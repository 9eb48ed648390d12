import { describe, expect, it } from "vitest";
import { amount } from "../../src/measure/amount.ts";
import { convert } from "../../src/measure/convert.ts";
import { formatAmount } from "../../src/measure/format.ts";
import { errorOf } from "../number/errorOf.ts";

describe("a fault of an option or an amount", () => {
  it("says where the density stands", () => {
    for (const density of [Number.NaN, "x", "1/0", 0, -1])
      expect(errorOf(() => convert("1 l", "kg", { density })).path).toEqual(["density"]);
  });

  it.each([
    [undefined, "nothing is not an amount"],
    [null, "null is not an amount"],
    [5, "a number is not an amount"],
    [true, "a boolean is not an amount"],
  ])("says in words what %s is", (given, message) => {
    expect(errorOf(() => amount(given as never)).message).toContain(message);
  });
});

describe("options", () => {
  const grams = amount("100 g");
  it.each([
    ["amount", () => amount("1 g", { mesures: "us" } as never), "mesures", "measures"],
    ["amount of an amount", () => amount(grams, { densty: 1 } as never), "densty", "use"],
    ["convert", () => convert("1 cup", "g", { densty: 1, measures: "us" } as never), "densty", "density"],
    ["formatAmount", () => formatAmount(grams, { signficant: 3 } as never), "signficant", "significant"],
  ])("that %s has not are refused, with the one that was likely meant", (_, step, field, hint) => {
    const error = errorOf(step);
    expect([error.code, error.path]).toEqual(["format-malformed", [field]]);
    expect(error.hint).toContain(hint);
  });

  it.each([null, "us", 1, []])("are no %j", (how) => {
    const wrong = how as never;
    const steps = [
      () => amount("1 g", wrong),
      () => convert("1 g", "kg", wrong),
      () => formatAmount(grams, wrong),
    ];
    for (const step of steps) expect(errorOf(step).code).toBe("format-malformed");
  });

  it.each(["1 g", null, undefined, 1, {}, []])("do not make an amount of %j", (given) => {
    const error = errorOf(() => formatAmount(given as never));
    expect(error.code).toBe("amount-malformed");
    expect(error.hint).toContain("amount(");
  });
});
