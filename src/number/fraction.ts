import { Decimal } from "decimal.js";
import { fault, kindOf, quote } from "./error.ts";
import { gcd } from "./gcd.ts";

/** An exact number: `n / d` in lowest terms, `d` above zero. Plain data; never changed. */
export interface Fraction {
  readonly n: bigint;
  readonly d: bigint;
}

/** A number as a caller may hand it in: text (`"0.1"`, `"1/3"`, `"2e3"`), a number or a Decimal. */
export type Value = string | number | Decimal;

/** Significant digits of a Decimal shown for a fraction that does not end: those of IEEE 754 decimal128. */
export const FACE_DIGITS = 34;

/**
 * The longest number read, in characters, and the largest power of ten. No kitchen needs such numbers, but
 * ten thousand factors one after the other make them; they are read within a second.
 */
export const LONGEST_NUMBER = 200_000;
const LARGEST_EXPONENT = 400;

/** Decimals beyond these say less than the fraction does, in more characters. */
const MOST_PLACES = 1000;

export const ZERO: Fraction = { n: 0n, d: 1n };
export const ONE: Fraction = { n: 1n, d: 1n };

/** Makes `n / d` in lowest terms. Throws `number-zero-denominator`. */
export function fraction(n: bigint, d: bigint = 1n): Fraction {
  if (d === 0n)
    throw fault(
      "number-zero-denominator",
      "a fraction over zero has no value",
      "write a denominator above 0",
    );
  if (d === 1n) return { n, d };
  const g = gcd(n < 0n ? -n : n, d < 0n ? -d : d);
  const s = d < 0n ? -g : g;
  return { n: n / s, d: d / s };
}

/**
 * Reads a number exactly. A JavaScript number stands for its shortest decimal text, so `0.1` is
 * one tenth and not the binary fraction next to it.
 *
 * Throws `number-not-finite`, `number-malformed`, `number-too-long`, `number-zero-denominator`.
 */
export function exact(value: Value | bigint): Fraction {
  if (typeof value === "bigint") return { n: value, d: 1n };
  if (typeof value === "number" || isDecimal(value)) {
    const text = String(value);
    if (/NaN|Infinity/.test(text)) {
      throw fault("number-not-finite", `${text} is not a finite number`, "give a finite number");
    }
    return fromText(text);
  }
  if (typeof value !== "string") {
    throw fault(
      "number-malformed",
      `${kindOf(value)} is not a number`,
      "give a number, decimal text or a Decimal",
    );
  }
  return fromText(value.trim());
}

/** Decimals of any copy of the package; not data that only carries its tag. */
export function isDecimal(value: unknown): value is Decimal {
  return Decimal.isDecimal(value) && !Object.hasOwn(value, "toStringTag");
}

const DECIMAL = /^([+-]?)(\d*)(?:\.(\d*))?(?:[eE]([+-]?\d+))?$/;
const RATIO = /^([+-]?\d+)\s*\/\s*(\d+)$/;

function fromText(text: string): Fraction {
  if (text.length > LONGEST_NUMBER) {
    throw fault(
      "number-too-long",
      `a number of ${text.length} characters`,
      `write it in at most ${LONGEST_NUMBER} characters`,
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
  return exponent >= 0 ? { n: n * 10n ** BigInt(exponent), d: 1n } : fraction(n, 10n ** BigInt(-exponent));
}

export function plus(a: Fraction, b: Fraction): Fraction {
  // A whole number more or less leaves lowest terms as they are.
  if (a.d === 1n) return { n: a.n * b.d + b.n, d: b.d };
  if (b.d === 1n) return { n: a.n + b.n * a.d, d: a.d };
  if (a.d === b.d) return fraction(a.n + b.n, a.d);
  return fraction(a.n * b.d + b.n * a.d, a.d * b.d);
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return plus(a, negate(b));
}

export function times(a: Fraction, b: Fraction): Fraction {
  // What divides out is looked for crosswise, where numbers are short: the product is then in lowest terms.
  const [g, h] = [divisor(a.n, b.d), divisor(b.n, a.d)];
  if (g === 1n && h === 1n) return { n: a.n * b.n, d: a.d * b.d };
  return { n: (a.n / g) * (b.n / h), d: (a.d / h) * (b.d / g) };
}

/** Of a number and the denominator of another: 1 where there is nothing to divide by. */
function divisor(n: bigint, d: bigint): bigint {
  return d === 1n || n === 1n ? 1n : gcd(n < 0n ? -n : n, d);
}

/** `a / b`. Throws `number-zero-denominator`. */
export function over(a: Fraction, b: Fraction): Fraction {
  if (b.n === 0n) return fraction(a.n, b.n);
  return times(a, b.n < 0n ? { n: -b.d, d: -b.n } : { n: b.d, d: b.n });
}

export function negate(a: Fraction): Fraction {
  return { n: -a.n, d: a.d };
}

export function absolute(a: Fraction): Fraction {
  return a.n < 0n ? negate(a) : a;
}

export function sum(all: Iterable<Fraction>): Fraction {
  let total = ZERO;
  for (const each of all) total = plus(total, each);
  return total;
}

/** Below zero, zero or above zero, as `a` is less than, equal to or greater than `b`. */
export function compare(a: Fraction, b: Fraction): -1 | 0 | 1 {
  const left = a.n * b.d;
  const right = b.n * a.d;
  return left < right ? -1 : left > right ? 1 : 0;
}

export function equals(a: Fraction, b: Fraction): boolean {
  return a.n === b.n && a.d === b.d;
}

export function isZero(a: Fraction): boolean {
  return a.n === 0n;
}

export function least(a: Fraction, b: Fraction): Fraction {
  return compare(a, b) <= 0 ? a : b;
}

export function greatest(a: Fraction, b: Fraction): Fraction {
  return compare(a, b) >= 0 ? a : b;
}

/** The largest whole number not above `a`. */
export function floor(a: Fraction): bigint {
  const q = a.n / a.d;
  return a.n < 0n && q * a.d !== a.n ? q - 1n : q;
}

/** The smallest whole number not below `a`. */
export function ceiling(a: Fraction): bigint {
  return -floor(negate(a));
}

/** The nearest whole number; a half goes away from zero, as kitchens and price lists round. */
export function nearest(a: Fraction): bigint {
  const twice = { n: 2n * absolute(a).n + a.d, d: 2n * a.d };
  const rounded = twice.n / twice.d;
  return a.n < 0n ? -rounded : rounded;
}

/** `a` rounded to the nearest multiple of `step`, a half going away from zero. */
export function toStep(a: Fraction, step: Fraction): Fraction {
  return times(fraction(nearest(over(a, step))), step);
}

/**
 * Exact text: `3`, `0.25` or `1/3`, a fraction too where a thousand decimals do not end it; `exact` reads it
 * back as `a`, where it is no longer than `exact` reads.
 */
export function toText(a: Fraction): string {
  return decimalText(a) ?? `${a.n}/${a.d}`;
}

/** The decimal text of a fraction that ends, and within a thousand decimals; else nothing. */
export function decimalText(a: Fraction): string | undefined {
  if (a.d === 1n) return a.n.toString();
  const places = decimalPlaces(a.d);
  return places === undefined ? undefined : fixedText(a, places);
}

/** `a` to a number of decimal places, a half going away from zero. */
export function fixedText(a: Fraction, places: number): string {
  const scaled = nearest(
    places >= 0 ? { n: a.n * 10n ** BigInt(places), d: a.d } : over(a, fraction(10n ** BigInt(-places))),
  );
  if (places <= 0) return (scaled * 10n ** BigInt(-places)).toString();
  const digits = (scaled < 0n ? -scaled : scaled).toString().padStart(places + 1, "0");
  return `${scaled < 0n ? "-" : ""}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

/**
 * The face of a fraction: exact where it is whole or ends within {@link FACE_DIGITS} significant
 * digits, else the nearest decimal of that many, a half going away from zero.
 */
export function toDecimal(a: Fraction): Decimal {
  if (a.d === 1n) return new Decimal(a.n.toString());
  const places = FACE_DIGITS - magnitude(a) - 1;
  const ends = decimalPlaces(a.d);
  const text = fixedText(a, ends !== undefined && ends < places ? ends : places);
  return new Decimal(text);
}

let lastPower:
  | { readonly d: bigint; readonly odd: bigint; readonly lift: bigint; readonly places: number }
  | undefined;

/**
 * The face of `n / d`, not reduced first. Many figures of one sheet stand over one denominator, so
 * what lifts it to a power of ten is kept from call to call; `odd` is what neither 2 nor 5 divides.
 */
export function ratioToDecimal(n: bigint, d: bigint): Decimal {
  if (d < 0n) return ratioToDecimal(-n, -d);
  // Of a denominator of more than 1,024 binary digits the powers of 2 and 5 are not looked for.
  if (d >> 1024n !== 0n) return toDecimal(fraction(n, d));
  if (lastPower?.d !== d) lastPower = powerOf(d);
  const { odd, lift, places } = lastPower;
  if (odd !== 1n && n % odd !== 0n) return toDecimal(fraction(n, d));
  const digits = ((n < 0n ? -n : n) / odd) * lift;
  const padded = digits.toString().padStart(places + 1, "0");
  const text = `${padded.slice(0, padded.length - places)}.${padded.slice(padded.length - places)}`;
  const significant = text.length > FACE_DIGITS ? text.replace(/^[0.]+|\.|0+$/g, "").length : 0;
  return significant > FACE_DIGITS ? toDecimal(fraction(n, d)) : new Decimal(`${n < 0n ? "-" : ""}${text}`);
}

function powerOf(d: bigint): NonNullable<typeof lastPower> {
  if (d === 0n)
    throw fault(
      "number-zero-denominator",
      "a fraction over zero has no value",
      "write a denominator above 0",
    );
  let odd = d;
  while (odd % 2n === 0n) odd /= 2n;
  while (odd % 5n === 0n) odd /= 5n;
  const places = decimalPlaces(d / odd) ?? 0;
  return { d, odd, lift: 10n ** BigInt(places) / (d / odd), places };
}

/** The power of ten of the first significant digit: 0 for 1 to 9.99…, -1 for 0.1; 0 for zero. */
export function magnitude(a: Fraction): number {
  if (a.n === 0n) return 0;
  const size = absolute(a);
  const guess = size.n.toString().length - size.d.toString().length;
  const scaled =
    guess >= 0
      ? { n: size.n, d: size.d * 10n ** BigInt(guess) }
      : { n: size.n * 10n ** BigInt(-guess), d: size.d };
  return scaled.n >= scaled.d ? guess : guess - 1;
}

/** The least common multiple of two numbers above zero. */
export function lcm(a: bigint, b: bigint): bigint {
  if (a === b || b === 1n) return a;
  return a === 1n ? b : (a / gcd(a, b)) * b;
}

/** How many decimals a fraction over `d` has, or nothing where it does not end, or has more than a thousand. */
function decimalPlaces(d: bigint): number | undefined {
  // 10 to the 1,000 has 3,322 binary digits.
  if (d >> 3322n !== 0n) return undefined;
  let rest = d;
  let twos = 0;
  let fives = 0;
  for (; rest % 2n === 0n; rest /= 2n) twos += 1;
  for (; rest % 5n === 0n; rest /= 5n) fives += 1;
  return rest === 1n && Math.max(twos, fives) <= MOST_PLACES ? Math.max(twos, fives) : undefined;
}
