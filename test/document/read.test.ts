import { Decimal } from "decimal.js";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Json, meta, text, value, word } from "../../src/document/leaves.ts";
import { read as readBySchema } from "../../src/document/read.ts";
import { isRecord } from "../../src/document/safe.ts";
import { andThen, choice, coded, fields, list, optional } from "../../src/document/schema.ts";
import type { Value } from "../../src/number/exact.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

interface Kettle {
  readonly name: string;
  readonly litres: Value;
  readonly fuel?: "gas" | "wood" | undefined;
  readonly cups?: readonly string[] | undefined;
}

const kettle = fields<Kettle>({
  name: text(40),
  litres: value({ above: 0, to: 5 }),
  fuel: optional(word(["gas", "wood"])),
  cups: optional(list(text())),
});

const read = (input: unknown): Kettle => readBySchema(kettle, input, "recipe-malformed");
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
    ["nothing", undefined, "recipe-malformed", /give an object of name, litres, fuel, cups/],
    ["null", null, "recipe-malformed", /give an object of name, litres, fuel, cups/],
    ["text", "Kettle", "recipe-malformed", /give an object of name, litres, fuel, cups/],
    ["a list", [], "recipe-malformed", /give an object of name, litres, fuel, cups/],
    ["a missing name", { litres: 1 }, "recipe-malformed", /give text/],
    ["a name that is a number", { ...good, name: 3 }, "recipe-malformed", /give text/],
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
    ["a field named constructor", { ...good, constructor: 1 }, "recipe-malformed", /use name/],
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

  it("carries the code, hint and place that a check of its own gives, or the code of its place", () => {
    const odd = () => text(9, (_, refuse) => refuse("odd", "make it even", ["deep"], "amount-range"));
    const pot = fields<{ a: string; b: string; c: string }>({
      a: odd(),
      b: coded("label-malformed", text()),
      c: coded("label-malformed", odd()),
    });
    const { faults } = errorOf(() =>
      readBySchema(pot, { a: "x", b: 1, c: "x" }, "recipe-malformed", ["pot"]),
    );
    expect(faults.map(({ code, path, hint }) => [code, path.join("."), hint])).toEqual([
      ["amount-range", "pot.a.deep", "make it even"],
      ["label-malformed", "pot.b", "give text"],
      ["amount-range", "pot.c.deep", "make it even"],
    ]);
  });

  it("gives the fields at that place for what was likely meant", () => {
    const hints = (given: object): readonly string[] =>
      errorOf(() => read({ ...good, ...given })).faults.map(({ hint }) => hint);
    expect(hints({ cup: [] })).toEqual(["did you mean cups?"]);
    expect(hints({ lid: 1, litre: 2 })).toEqual(["use name, litres, fuel, cups", "did you mean litres?"]);
    const shelf = fields<{ readonly kettles: readonly Kettle[] }>({ kettles: list(kettle) });
    const { faults } = errorOf(() =>
      readBySchema(shelf, { kettles: [{ ...good, kettles: 1 }] }, "recipe-malformed"),
    );
    expect(faults.map(({ path, hint }) => [path.join("."), hint])).toEqual([
      ["kettles.0.kettles", "use name, litres, fuel, cups"],
    ]);
  });

  it("is looked at across its fields though one of them is at fault", () => {
    const seen: unknown[] = [];
    const pair = fields<{ a: string; b: string }>({ a: text(1), b: text(1) }, (given, part, refuse) => {
      seen.push(given.a, part.a, part.b);
      if (part.b === "b") refuse("b it is", "write c", ["b"]);
    });
    const { faults } = errorOf(() => readBySchema(pair, { a: 7, b: "b" }, "recipe-malformed"));
    expect(faults.map(({ path }) => path.join("."))).toEqual(["a", "b"]);
    expect(seen).toEqual([7, undefined, "b"]);
  });

  it("is read on only where it has no fault", () => {
    const twice = andThen(list(text(3), { least: 1 }), (words, refuse) => {
      if (words[0] === "no") refuse("no", "say yes");
      return words.length * 2;
    });
    expect(readBySchema(twice, ["a", "b"], "recipe-malformed")).toBe(4);
    for (const given of [[], ["long"], ["no"], "a", undefined])
      expect(errorOf(() => readBySchema(twice, given, "recipe-malformed")).faults).toHaveLength(1);
  });

  it("of several kinds is told apart, and refused as all of them where it is none", () => {
    const schema = choice<string | Kettle>(
      [text(9), kettle],
      (given) => (typeof given === "string" ? text(9) : isRecord(given) ? kettle : undefined),
      "a name or a kettle",
    );
    expect(readBySchema(schema, "old one", "recipe-malformed")).toBe("old one");
    expect(readBySchema(schema, good, "recipe-malformed")).toEqual(good);
    expect(errorOf(() => readBySchema(schema, { ...good, name: 1 }, "recipe-malformed")).path).toEqual([
      "name",
    ]);
    for (const given of [1, [], undefined, null])
      expect(errorOf(() => readBySchema(schema, given, "recipe-malformed")).hint).toBe(
        "give a name or a kettle",
      );
  });

  it.each<[string, () => unknown]>([
    ["a list with holes", () => ({ ...good, cups: new Array(3) })],
    ["a list with a hole at its end", () => ({ ...good, cups: Object.assign(["a"], { length: 2 }) })],
    ["a list of four thousand million holes", () => ({ ...good, cups: new Array(2 ** 32 - 1) })],
    ["a list with fields", () => ({ ...good, cups: Object.assign(["a"], { b: 1 }) })],
    [
      "a getter",
      () => ({
        ...good,
        get fuel() {
          return "gas";
        },
      }),
    ],
    [
      "a getter that throws",
      () => ({
        ...good,
        get fuel() {
          throw new Error("mine");
        },
      }),
    ],
    [
      "a proxy that throws",
      () =>
        new Proxy(
          {},
          {
            ownKeys: () => {
              throw new Error("mine");
            },
          },
        ),
    ],
    ["a map", () => new Map([["name", "K"]])],
    ["a date", () => new Date(0)],
    ["a Decimal", () => new Decimal(1)],
    ["a function", () => () => good],
    ["what writes itself", () => ({ ...good, toJSON: () => good })],
    [
      "two lists that hold each other, twice",
      () => {
        const a: unknown[] = [];
        const b: unknown[] = [a, a];
        a.push(b, b);
        return { ...good, cups: a };
      },
    ],
    [
      "lists that double sixty times",
      () => {
        let cups: unknown = "tin";
        for (let i = 0; i < 50; i++) cups = [cups, cups];
        return { ...good, cups };
      },
    ],
  ])("is refused for %s, at once and with one fault", (_, make) => {
    const start = performance.now();
    const { faults } = errorOf(() => read(make()));
    expect(faults).toHaveLength(1);
    expect(faults[0]?.code).toBe("recipe-malformed");
    expect(performance.now() - start).toBeLessThan(20_000);
  });

  it("is read or refused with codes, whatever it is", () => {
    fc.assert(
      fc.property(fc.anything({ withNullPrototype: true, withBigInt: true, maxDepth: 4 }), (input) => {
        expect(errorOf(() => read(input)).faults.every(({ hint }) => hint.length > 0)).toBe(true);
      }),
      { numRuns: runs(500) },
    );
  });

  it("is refused in bounded time with 200,000 faults, of which it tells the first thousand and that there are more", () => {
    const start = performance.now();
    const cups = Array.from({ length: 200_000 }, (_, i) => i);
    const { faults } = errorOf(() => read({ ...good, cups }));
    expect(faults).toHaveLength(1001);
    expect(faults.at(-1)).toMatchObject({ path: ["cups"], hint: "mend these first" });
    const strange = Object.fromEntries(cups.map((i) => [`unknownField${i}`, i]));
    expect(errorOf(() => read({ ...good, ...strange })).faults).toHaveLength(101);
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});

describe("what an app keeps with a document", () => {
  const kept = (given: unknown): Json => readBySchema(meta(), given, "recipe-malformed");

  it("is carried as JSON holds it, apart from what was handed in", () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (given) => {
        expect(kept(given)).toEqual(JSON.parse(JSON.stringify(given)));
      }),
    );
    const given = { tags: ["a"], none: undefined };
    const carried = kept(given);
    expect(carried).toEqual({ tags: ["a"] });
    given.tags.push("b");
    expect(carried).toEqual({ tags: ["a"] });
  });

  it.each([
    ["a function", { a: { b: () => 1 } }, ["a", "b"]],
    ["a date", { at: new Date(0) }, ["at"]],
    ["a number that is none", [1, Number.NaN], [1]],
    ["a bigint", 1n, []],
    ["a list that holds undefined", [undefined], [0]],
    ["more than 100,000 characters", "x".repeat(100_000), []],
  ])("is refused with %s, by its place", (_, given, path) => {
    const { faults } = errorOf(() => kept(given));
    expect(faults.map((each) => each.path)).toEqual([path]);
  });
});
