import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  collect,
  type Fault,
  fault,
  kindOf,
  type Path,
  quote,
  showPath,
  throwIfAny,
  within,
} from "../../src/number/error.ts";
import { runs } from "../runs.ts";
import { errorOf } from "./errorOf.ts";

const aFault = (n: number, path: Path = []): Fault => ({
  code: "number-malformed",
  path,
  message: `fault ${n}`,
  hint: `hint ${n}`,
});

const anyPath: fc.Arbitrary<Path> = fc.array(fc.oneof(fc.nat(1000), fc.string({ unit: "binary" })), {
  maxLength: 6,
});

describe("an error in JSON", () => {
  it("has its message, as well as what a program reads", () => {
    const error = fault("number-malformed", '"x" is not a number', "write digits", ["lines", 2]);
    expect(JSON.parse(JSON.stringify(error))).toEqual({
      name: "SteelyardError",
      code: "number-malformed",
      path: ["lines", 2],
      message: error.message,
      hint: "write digits",
      faults: [
        {
          code: "number-malformed",
          path: ["lines", 2],
          message: '"x" is not a number',
          hint: "write digits",
        },
      ],
    });
  });
});

describe("SteelyardError", () => {
  it("carries the first fault's fields and all the faults, frozen", () => {
    const error = errorOf(() => throwIfAny([aFault(1, ["lines", 2, "amount"]), aFault(2)]));
    expect(error).toBeInstanceOf(Error);
    expect(error.name).toBe("SteelyardError");
    expect([error.code, error.path, error.hint]).toEqual([
      "number-malformed",
      ["lines", 2, "amount"],
      "hint 1",
    ]);
    expect(error.faults).toHaveLength(2);
    expect(Object.isFrozen(error.faults)).toBe(true);
    expect(error.message).toBe("lines[2].amount: fault 1 (hint 1)\nfault 2 (hint 2)");
  });

  it("shows twenty faults and counts the rest", () => {
    const all = Array.from({ length: 25 }, (_, i) => aFault(i));
    const { message, faults } = errorOf(() => throwIfAny(all));
    expect(faults).toEqual(all);
    expect(message.split("\n")).toHaveLength(21);
    expect(message).toMatch(/fault 19 \(hint 19\)\nand 5 more, in faults$/);
    expect(errorOf(() => throwIfAny(all.slice(0, 20))).message).not.toMatch(/more/);
  });

  it("survives being written as JSON with all that a program needs", () => {
    const error = fault("amount-empty", "nothing there", "write an amount", ["amount"]);
    expect(JSON.parse(JSON.stringify(error))).toMatchObject({
      name: "SteelyardError",
      code: "amount-empty",
      path: ["amount"],
      hint: "write an amount",
      faults: [{ message: "nothing there" }],
    });
  });
});

describe("throwIfAny", () => {
  it("lets no faults pass in silence", () => {
    expect(throwIfAny([])).toBeUndefined();
  });
});

describe("within", () => {
  it("puts its path before the path of every fault, level upon level", () => {
    fc.assert(
      fc.property(anyPath, anyPath, anyPath, (outer, inner, own) => {
        const error = errorOf(() =>
          within(outer, () => within(inner, () => throwIfAny([aFault(1, own), aFault(2)]))),
        );
        expect(error.faults.map((f) => f.path)).toEqual([
          [...outer, ...inner, ...own],
          [...outer, ...inner],
        ]);
        expect(error.path).toEqual(error.faults[0]?.path);
        expect(error.faults.map((f) => [f.code, f.message, f.hint])).toEqual(
          [aFault(1), aFault(2)].map((f) => [f.code, f.message, f.hint]),
        );
      }),
    );
  });

  it("gives back what the step gives, and lets foreign errors through as they are", () => {
    const foreign = new RangeError("not ours");
    expect(within(["a"], () => 42)).toBe(42);
    expect(() =>
      within(["a"], () => {
        throw foreign;
      }),
    ).toThrow(foreign);
  });
});

describe("collect", () => {
  it("keeps faults in order and goes on", () => {
    const faults: Fault[] = [];
    expect(collect(faults, ["a"], () => 1)).toBe(1);
    expect(collect(faults, ["b"], () => throwIfAny([aFault(1), aFault(2)]))).toBeUndefined();
    expect(
      collect(faults, ["c", 0], () => {
        throw fault("amount-empty", "m", "h", ["x"]);
      }),
    ).toBeUndefined();
    expect(faults.map((f) => f.path)).toEqual([["b"], ["b"], ["c", 0, "x"]]);
  });

  it("does not swallow foreign errors", () => {
    const faults: Fault[] = [];
    expect(() =>
      collect(faults, [], () => {
        throw new RangeError("not ours");
      }),
    ).toThrow("not ours");
    expect(faults).toEqual([]);
  });

  it("holds more faults than a call has room for arguments", () => {
    const many = Array.from({ length: 700_000 }, (_, i) => aFault(i));
    const faults: Fault[] = [];
    collect(faults, ["deep"], () => throwIfAny(many));
    expect(faults).toHaveLength(many.length);
  });
});

describe("showPath", () => {
  it.each<[Path, string]>([
    [[], ""],
    [["lines", 2, "amount"], "lines[2].amount"],
    [[0, "name"], "[0].name"],
    [["per100g", "__proto__"], "per100g.__proto__"],
    [["a\u202eb\n"], "a\ufffdb\ufffd"],
  ])("shows %j as %j", (path, shown) => {
    expect(showPath(path)).toBe(shown);
  });
});

describe("quote", () => {
  const unprintable = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u;

  it("never lets through control or direction-changing characters, nor half a character, nor much", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 200 }), fc.anything()), (value) => {
        const shown = quote(value);
        expect(shown).not.toMatch(unprintable);
        expect(shown.length).toBeLessThanOrEqual(63);
      }),
      { numRuns: runs(1000) },
    );
  });

  it("leaves plain text of any script as it is", () => {
    for (const text of ["two cups", "½ cup", "甘い", "ملعقة", "<b>&", "=1+1", ""])
      expect(quote(text)).toBe(`"${text}"`);
  });

  it.each<[string, unknown, string]>([
    ["a new line and a bell", "a\nb\u0007", '"a\ufffdb\ufffd"'],
    ["a right-to-left override", "abc\u202edef", '"abc\ufffddef"'],
    ["an emoji cut in two", `${"a".repeat(59)}😀`, `"${"a".repeat(59)}\ufffd…"`],
    ["a million characters", "x".repeat(1_000_000), `"${"x".repeat(60)}…"`],
    ["an object with no text", Object.create(null), '"object"'],
    [
      "an object that throws",
      {
        toString: () => {
          throw new Error("boo");
        },
      },
      '"object"',
    ],
    ["a symbol", Symbol("s"), '"Symbol(s)"'],
    ["nothing", undefined, '"undefined"'],
  ])("shows %s", (_, value, shown) => {
    expect(quote(value)).toBe(shown);
  });
});

describe("kindOf", () => {
  it.each([
    [undefined, "nothing"],
    [null, "null"],
    [[1], "a list"],
    [5, "a number"],
    ["5", "a string"],
    [true, "a boolean"],
    [5n, "a bigint"],
    [Symbol("s"), "a symbol"],
    [() => 1, "a function"],
    [class A {}, "a class"],
    [{}, "an object"],
    [new Map(), "a Map"],
    [new Date(0), "a Date"],
  ])("%s is told as %s", (value, told) => {
    expect(kindOf(value)).toBe(told);
  });
});
