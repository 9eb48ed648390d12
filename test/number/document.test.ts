import { Decimal } from "decimal.js";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { push, readDocument, textSchema, valueSchema, wordSchema } from "../../src/number/document.ts";
import { errorOf } from "./error-of.ts";

interface Kettle {
  readonly name: string;
  readonly litres: string | number | Decimal;
  readonly fuel?: "gas" | "wood" | undefined;
  readonly cups?: readonly string[] | undefined;
}

const kettle = z.strictObject({
  name: textSchema(40),
  litres: valueSchema({ above: 0, to: 5 }),
  fuel: z.optional(wordSchema(["gas", "wood"])),
  cups: z.optional(z.array(textSchema())),
}) as unknown as z.ZodMiniType<Kettle>;

const read = (input: unknown): Kettle => readDocument(kettle, input, "recipe-malformed");
const good = { name: "Kettle", litres: "1.5" };

describe("a document", () => {
  it("comes back as written", () => {
    for (const litres of ["1/3", 2, new Decimal("0.1"), " 1 "])
      expect(read({ ...good, litres })).toEqual({ ...good, litres });
    expect(read({ ...good, name: "x".repeat(40) }).name).toHaveLength(40);
    expect(read({ ...good, fuel: "gas", cups: ["tin\tcup"] }).cups).toEqual(["tin\tcup"]);
  });

  it("shows all its faults at once, each with its place and a way out", () => {
    const { faults } = errorOf(() =>
      read({ name: "", litres: 9, fuel: "coal", cups: [1, "a"], colour: "red" }),
    );
    expect(faults.map(({ code, path, hint }) => [code, path, hint !== ""])).toEqual(
      expect.arrayContaining([
        ["recipe-malformed", ["name"], true],
        ["recipe-malformed", ["litres"], true],
        ["recipe-malformed", ["fuel"], true],
        ["recipe-malformed", ["cups", 0], true],
        ["recipe-malformed", ["colour"], true],
      ]),
    );
    expect(faults).toHaveLength(5);
  });

  it.each<[string, unknown, string, RegExp]>([
    ["nothing", undefined, "recipe-malformed", /give an object/],
    ["null", null, "recipe-malformed", /give an object/],
    ["text", "Kettle", "recipe-malformed", /give an object/],
    ["a list", [], "recipe-malformed", /give an object/],
    ["a missing name", { litres: 1 }, "recipe-malformed", /give a string/],
    ["a name that is a number", { ...good, name: 3 }, "recipe-malformed", /give a string/],
    ["an empty name", { ...good, name: " " }, "recipe-malformed", /at least one character/],
    ["a long name", { ...good, name: "x".repeat(41) }, "recipe-malformed", /at most 40/],
    ["a name with a control character", { ...good, name: "a\u0000" }, "recipe-malformed", /control/],
    ["a number that is none", { ...good, litres: "two" }, "number-malformed", /digits/],
    ["a number that is not finite", { ...good, litres: Number.NaN }, "number-not-finite", /finite/],
    ["a number of 200,001 digits", { ...good, litres: "9".repeat(200_001) }, "number-too-long", /at most/],
    [
      "a number that is an object",
      { ...good, litres: { toStringTag: "[object Decimal]" } },
      "recipe-malformed",
      /number/,
    ],
    ["a number at an open bound", { ...good, litres: "0" }, "recipe-malformed", /above 0/],
    [
      "a number beyond its bound",
      { ...good, litres: "5.0000000000000000000001" },
      "recipe-malformed",
      /5 or less/,
    ],
    ["a number beyond every double", { ...good, litres: "1e400" }, "recipe-malformed", /5 or less/],
    ["a word of another list", { ...good, fuel: "Gas" }, "recipe-malformed", /did you mean gas\?/],
    [
      "a word far from every one",
      { ...good, fuel: "steam" },
      "recipe-malformed",
      /write one of "gas", "wood"/,
    ],
    ["a word that is a number", { ...good, fuel: 3 }, "recipe-malformed", /give one of "gas", "wood"/],
    ["a misspelt field", { ...good, nmae: "x" }, "recipe-malformed", /did you mean name\?/],
    ["a field named constructor", { ...good, constructor: 1 }, "recipe-malformed", /remove/],
    [
      "a field named __proto__",
      JSON.parse('{"name":"K","litres":1,"__proto__":{"a":1}}'),
      "recipe-malformed",
      /another name/,
    ],
    [
      "a deep __proto__",
      { ...good, cups: [JSON.parse('{"__proto__":1}')] },
      "recipe-malformed",
      /another name/,
    ],
  ])("is refused for %s", (_, input, code, hint) => {
    const error = errorOf(() => read(input));
    expect(error.code).toBe(code);
    expect(error.hint).toMatch(hint);
    expect(error.message.length).toBeLessThan(1000);
  });

  it("is held to its bounds exactly", () => {
    expect(read({ ...good, litres: "1e-400" }).litres).toBe("1e-400");
    expect(read({ ...good, litres: 5 }).litres).toBe(5);
    const ninth = `${"1".repeat(400)}/${"9".repeat(400)}`; // a ninth, of numbers that no double holds
    expect(read({ ...good, litres: ninth }).litres).toBe(ninth);
  });

  it("is refused when it holds itself, or goes on too deep, whatever it claims to be", () => {
    const self: Record<string, unknown> = { ...good };
    self.cups = [self];
    expect(errorOf(() => read(self)).path).toEqual(["cups", 0]);
    const tagged: Record<string, unknown> = { ...good, toStringTag: "[object Decimal]" };
    tagged.cups = [tagged];
    expect(errorOf(() => read(tagged)).hint).toMatch(/cycles/);
    let deep: unknown = "end";
    for (let i = 0; i < 100_000; i++) deep = [deep];
    expect(errorOf(() => read({ ...good, cups: deep })).hint).toMatch(/at most 60 levels/);
  });

  it("may name one thing twice, which is no cycle", () => {
    const cup = "tin";
    const cups = [cup, cup];
    expect(read({ ...good, cups })).toEqual({ ...good, cups });
    const shared = { a: 1 };
    expect(errorOf(() => read({ ...good, x: shared, y: shared })).faults).toHaveLength(2);
  });

  it("carries the code and hint that a check of its own gives", () => {
    const odd = z.string().check((ctx) => push(ctx, "odd", "make it even", "amount-range", ["deep"]));
    const error = errorOf(() => readDocument(odd as z.ZodMiniType<string>, "x", "recipe-malformed"));
    expect([error.code, error.hint, error.path]).toEqual(["amount-range", "make it even", ["deep"]]);
  });

  it("is read or refused with codes, whatever it is", () => {
    fc.assert(
      fc.property(fc.anything({ withNullPrototype: true, withBigInt: true, maxDepth: 4 }), (input) => {
        expect(errorOf(() => read(input)).faults.every(({ hint }) => hint.length > 0)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it("is refused in bounded time with 100,000 faults", () => {
    const start = performance.now();
    const cups = Array.from({ length: 100_000 }, (_, i) => i);
    expect(errorOf(() => read({ ...good, cups })).faults).toHaveLength(100_000);
    const strange = Object.fromEntries(cups.map((i) => [`unknownField${i}`, i]));
    expect(errorOf(() => read({ ...good, ...strange })).faults).toHaveLength(100_000);
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
