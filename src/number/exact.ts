import type { Decimal } from "decimal.js";
import { exactText, fixedText, readText } from "./digits.ts";
import { fault, kindOf, quote } from "./error.ts";
import { gcd } from "./gcd.ts";
import { compareRatios, magnitude, nearest, type Ratio, toFloat } from "./ratio.ts";

/**
 * A number as a caller may hand it in: text (`"0.1"`, `"1/3"`, `"2e3"`), a number, an exact number
 * or a Decimal.
 */
export type Value = string | number | Exact | Decimal;

/**
 * The longest text read as a number, in characters, and the largest power of ten. No kitchen needs such
 * numbers, but ten thousand factors one after the other make them; each is read within a second.
 */
const LONGEST = 200_000;
const LARGEST_EXPONENT = 400;

/**
 * An exact number: `n / d` in lowest terms, `d` above 0. Nothing rounds unless a method says so, so
 * that a third times three is one. In a template string it reads; asked for a number, by `<` or a
 * plot, it gives the nearest double; `+` and `==` throw and name `plus` and `eq`.
 *
 * Its JSON is its exact text (`"1/3"`), which every input takes back.
 *
 * @example
 * ```ts
 * const third = exact("1/3");
 * console.log(`${third.times(3)} and ${third.toFixed(2)}`); // => 1 and 0.33
 * console.log(JSON.stringify({ third })); // => {"third":"1/3"}
 * ```
 */
export class Exact {
  readonly n: bigint;
  readonly d: bigint;

  /** @internal Takes `n / d` as given: `d` above 0, in lowest terms. `exact` and `fraction` make any other so. */
  constructor(n: bigint, d: bigint) {
    this.n = n;
    this.d = d;
  }

  /** Adds. */
  plus(other: Value): Exact {
    return plus(this, exact(other));
  }

  /** Subtracts. */
  minus(other: Value): Exact {
    return minus(this, exact(other));
  }

  /** Multiplies. */
  times(other: Value): Exact {
    return times(this, exact(other));
  }

  /** Divides. Throws `number-zero-denominator`. */
  div(other: Value): Exact {
    return over(this, exact(other));
  }

  /** Turns the sign round. */
  neg(): Exact {
    return negate(this);
  }

  /** Takes the sign away. */
  abs(): Exact {
    return absolute(this);
  }

  /** Gives -1, 0 or 1, as this is less than, equal to or greater than the other. */
  comparedTo(other: Value): -1 | 0 | 1 {
    return compareRatios(this, exact(other));
  }

  /** Tells if both are the same number. */
  eq(other: Value): boolean {
    return equals(this, exact(other));
  }

  /** Tells if this is less than the other. */
  lt(other: Value): boolean {
    return this.comparedTo(other) < 0;
  }

  /** Tells if this is at most the other. */
  lte(other: Value): boolean {
    return this.comparedTo(other) <= 0;
  }

  /** Tells if this is greater than the other. */
  gt(other: Value): boolean {
    return this.comparedTo(other) > 0;
  }

  /** Tells if this is at least the other. */
  gte(other: Value): boolean {
    return this.comparedTo(other) >= 0;
  }

  /** Tells if this is 0. */
  isZero(): boolean {
    return this.n === 0n;
  }

  /**
   * Writes as many decimals as asked (0 to 400), a half rounded away from zero; as `toString` does if
   * none are asked for. Throws `number-malformed`.
   */
  toFixed(places?: number): string {
    return places === undefined ? this.toString() : fixedText(this, counted(places, 0, "decimal places"));
  }

  /** Rounds to as many decimals as asked (0 to 400), a half away from zero. Throws `number-malformed`. */
  toDecimalPlaces(places: number): Exact {
    return toPlaces(this, counted(places, 0, "decimal places"));
  }

  /** Rounds to as many significant digits as asked (1 to 400), a half away from zero. Throws `number-malformed`. */
  toSignificantDigits(digits: number): Exact {
    return toPlaces(this, counted(digits, 1, "significant digits") - 1 - magnitude(this));
  }

  /** Gives the nearest double; infinity beyond the largest. */
  toNumber(): number {
    return toFloat(this);
  }

  /** Writes it for reading: exact where it ends within 20 significant digits, else rounded to those. */
  toString(): string {
    return readText(this);
  }

  /** Writes it exactly: `3`, `0.25` or `1/3`. Every input takes that back. */
  toJSON(): string {
    return exactText(this);
  }

  /** Reads as text, counts as a double; refuses `+` and `==`, which cannot tell the two apart. Throws `number-operator`. */
  [Symbol.toPrimitive](hint: string): string | number {
    if (hint === "number") return this.toNumber();
    if (hint === "string") return this.toString();
    throw fault(
      "number-operator",
      "an exact number cannot be added with + or compared with ==",
      "write a.plus(b) to add, a.eq(b) to compare, a.toString() for text",
    );
  }
}

/** A number to as many decimals as asked, a half away from zero; tens and hundreds below 0. */
function toPlaces(a: Exact, places: number): Exact {
  const power = 10n ** BigInt(Math.abs(places));
  return places < 0
    ? new Exact(nearest({ n: a.n, d: a.d * power }) * power, 1n)
    : fraction(nearest({ n: a.n * power, d: a.d }), power);
}

function counted(count: number, least: number, what: string): number {
  if (Number.isInteger(count) && count >= least && count <= LARGEST_EXPONENT) return count;
  const shown = typeof count === "number" ? String(count) : kindOf(count);
  throw fault(
    "number-malformed",
    `${shown} is no count of ${what}`,
    `give a whole number from ${least} to ${LARGEST_EXPONENT}`,
  );
}

export const ZERO: Exact = /* @__PURE__ */ nothing();
export const ONE: Exact = /* @__PURE__ */ new Exact(1n, 1n);

/**
 * Makes zero, and with it gives the class what consoles of Node and Deno ask for. Not written in the
 * class, since a call among its names would keep it in every bundle.
 */
function nothing(): Exact {
  Object.defineProperty(Exact.prototype, Symbol.for("nodejs.util.inspect.custom"), {
    value(this: Exact): string {
      return this.toString();
    },
  });
  return new Exact(0n, 1n);
}

/** Makes `n / d` in lowest terms. Throws `number-zero-denominator`. */
export function fraction(n: bigint, d: bigint = 1n): Exact {
  if (d === 1n) return new Exact(n, d);
  if (d === 0n)
    throw fault(
      "number-zero-denominator",
      "a fraction over zero has no value",
      "write a denominator above 0",
    );
  const g = gcd(n < 0n ? -n : n, d < 0n ? -d : d);
  const s = d < 0n ? -g : g;
  return new Exact(n / s, d / s);
}

/**
 * Reads a number exactly. A JavaScript number stands for its shortest decimal text, so `0.1` is
 * one tenth and not the binary fraction next to it. `{ n, d }` of two bigints is `n / d`: what an
 * exact number becomes when it is cloned, and that of another copy of the package.
 *
 * Throws `number-not-finite`, `number-malformed`, `number-too-long`, `number-zero-denominator`.
 *
 * @example
 * ```ts
 * exact("1/3").plus(exact(0.5)).toJSON(); // => 5/6
 * ```
 */
export function exact(value: Value | bigint | { readonly n: bigint; readonly d: bigint }): Exact {
  if (value instanceof Exact) return value;
  if (typeof value === "bigint") return new Exact(value, 1n);
  if (typeof value === "number" || isDecimal(value)) {
    const text = String(value);
    if (/NaN|Infinity/.test(text)) {
      throw fault("number-not-finite", `${text} is not a finite number`, "give a finite number");
    }
    return fromText(text);
  }
  if (isRatio(value)) return fraction(value.n, value.d);
  if (typeof value !== "string") {
    throw fault(
      "number-malformed",
      `${kindOf(value)} is not a number`,
      "give a number, decimal text, an exact number or a Decimal",
    );
  }
  return fromText(value.trim());
}

/** Tells if a value holds a number apart from its text: an exact number of any copy of the package, or its clone. */
export function isRatio(value: unknown): value is Ratio {
  if (typeof value !== "object" || value === null) return false;
  if (!Object.hasOwn(value, "n") || !Object.hasOwn(value, "d")) return false;
  const { n, d } = value as { readonly n: unknown; readonly d: unknown };
  return typeof n === "bigint" && typeof d === "bigint";
}

/** Tells an object that is a number to every input: exact, the clone of one, or a Decimal. */
export function isNumeric(value: unknown): value is Exact | Decimal {
  return isRatio(value) || isDecimal(value);
}

/** Tells a Decimal of any copy of decimal.js by its tag and shape, so that nothing here needs the package. */
export function isDecimal(value: unknown): value is Decimal {
  if (typeof value !== "object" || value === null || Object.hasOwn(value, "toStringTag")) return false;
  const { toStringTag, s, d } = value as {
    readonly toStringTag?: unknown;
    readonly s?: unknown;
    readonly d?: unknown;
  };
  return toStringTag === "[object Decimal]" && typeof s === "number" && (d === null || Array.isArray(d));
}

const DECIMAL = /^([+-]?)(\d*)(?:\.(\d*))?(?:[eE]([+-]?\d+))?$/;
const RATIO = /^([+-]?\d+)\s*\/\s*(\d+)$/;

function fromText(text: string): Exact {
  if (text.length > LONGEST) {
    throw fault(
      "number-too-long",
      `a number of ${text.length} characters`,
      `write it in at most ${LONGEST} characters`,
    );
  }
  const ratio = RATIO.exec(text);
  if (ratio) return fraction(BigInt(ratio[1] ?? ""), BigInt(ratio[2] ?? ""));
  const parts = DECIMAL.exec(text);
  const [, sign, whole = "", part = "", power = "0"] = parts ?? [];
  if (!parts || whole.length + part.length === 0) {
    throw fault(
      "number-malformed",
      `${quote(text)} is not a number`,
      "write digits, with a point for decimals: 12.5",
    );
  }
  const exponent = Number(power) - part.length;
  if (Math.abs(Number(power)) > LARGEST_EXPONENT) {
    throw fault(
      "number-too-long",
      `${quote(text)} is beyond 10 to the ${LARGEST_EXPONENT}`,
      "check the number and its unit",
    );
  }
  const digits = BigInt(`${whole}${part}`);
  const n = sign === "-" ? -digits : digits;
  return exponent >= 0 ? new Exact(n * 10n ** BigInt(exponent), 1n) : fraction(n, 10n ** BigInt(-exponent));
}

export function plus(a: Exact, b: Exact): Exact {
  // A whole number more or less leaves lowest terms as they are.
  if (a.d === 1n) return new Exact(a.n * b.d + b.n, b.d);
  if (b.d === 1n) return new Exact(a.n + b.n * a.d, a.d);
  if (a.d === b.d) return fraction(a.n + b.n, a.d);
  return fraction(a.n * b.d + b.n * a.d, a.d * b.d);
}

export function minus(a: Exact, b: Exact): Exact {
  return plus(a, negate(b));
}

/** Multiplies two numbers in lowest terms. What divides out is looked for crosswise, where numbers are short. */
export function times(a: Exact, b: Exact): Exact {
  if (a.n === 0n || b.n === 0n) return ZERO;
  const g = divisor(a.n, b.d);
  const h = divisor(b.n, a.d);
  if (g === 1n && h === 1n) return new Exact(a.n * b.n, a.d * b.d);
  return new Exact((a.n / g) * (b.n / h), (a.d / h) * (b.d / g));
}

function divisor(n: bigint, d: bigint): bigint {
  return d === 1n || n === 1n ? 1n : gcd(n < 0n ? -n : n, d);
}

/** Divides `a` by `b`. Throws `number-zero-denominator`. */
export function over(a: Exact, b: Exact): Exact {
  if (b.n <= 0n) return b.n === 0n ? fraction(a.n, b.n) : over(negate(a), negate(b));
  return times(a, new Exact(b.d, b.n));
}

export function negate(a: Exact): Exact {
  return new Exact(-a.n, a.d);
}

export function absolute(a: Exact): Exact {
  return a.n < 0n ? negate(a) : a;
}

export function sum(all: Iterable<Exact>): Exact {
  let total = ZERO;
  for (const each of all) total = plus(total, each);
  return total;
}

export function equals(a: Exact, b: Exact): boolean {
  return a.n === b.n && a.d === b.d;
}

export function isZero(a: Exact): boolean {
  return a.n === 0n;
}

export function least(a: Exact, b: Exact): Exact {
  return compareRatios(a, b) <= 0 ? a : b;
}

export function greatest(a: Exact, b: Exact): Exact {
  return compareRatios(a, b) >= 0 ? a : b;
}

/** Rounds `a` to the nearest multiple of `step`, a half going away from zero. */
export function toStep(a: Exact, step: Exact): Exact {
  return times(new Exact(nearest(over(a, step)), 1n), step);
}
