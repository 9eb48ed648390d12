import { describe, expect, it } from "vitest";
import { amount } from "../../src/measure/amount.ts";
import { convert } from "../../src/measure/convert.ts";
import { errorOf } from "../number/error-of.ts";

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
