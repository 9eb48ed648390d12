import { gcd } from "./gcd.ts";

/** A quotient of two whole numbers, `d` above zero, not always in lowest terms: what the rules here need of a figure. */
export interface Ratio {
  readonly n: bigint;
  readonly d: bigint;
}

/** Below zero, zero or above zero, as `a` is less than, equal to or greater than `b`. */
export function compareRatios(a: Ratio, b: Ratio): -1 | 0 | 1 {
  const left = a.n * b.d;
  const right = b.n * a.d;
  return left < right ? -1 : left > right ? 1 : 0;
}

/** Gives the largest whole number not above `a`. */
export function floor(a: Ratio): bigint {
  const q = a.n / a.d;
  return a.n < 0n && q * a.d !== a.n ? q - 1n : q;
}

/** Gives the smallest whole number not below `a`. */
export function ceiling(a: Ratio): bigint {
  const q = a.n / a.d;
  return a.n > 0n && q * a.d !== a.n ? q + 1n : q;
}

/** Gives the nearest whole number; a half goes away from zero, as kitchens and price lists round. */
export function nearest({ n, d }: Ratio): bigint {
  const rounded = (2n * (n < 0n ? -n : n) + d) / (2n * d);
  return n < 0n ? -rounded : rounded;
}

/** Gives the power of ten of the first significant digit: 0 for 1 to 9.99…, -1 for 0.1; 0 for zero. */
export function magnitude({ n, d }: Ratio): number {
  if (n === 0n) return 0;
  const size = n < 0n ? -n : n;
  const guess = size.toString().length - d.toString().length;
  const reached = guess >= 0 ? size >= d * 10n ** BigInt(guess) : size * 10n ** BigInt(-guess) >= d;
  return reached ? guess : guess - 1;
}

/** Gives the least common multiple of two numbers above zero. */
export function lcm(a: bigint, b: bigint): bigint {
  if (a === b || b === 1n) return a;
  return a === 1n ? b : (a / gcd(a, b)) * b;
}

/**
 * Gives the double nearest to a ratio, an even one between two equally near, as IEEE 754 rounds;
 * infinity beyond the largest.
 */
export function toFloat({ n, d }: Ratio): number {
  if (n < 0n) return -toFloat({ n: -n, d });
  // The division of two numbers that a double holds is rounded right.
  if (n <= SAFE && d <= SAFE) return Number(n) / Number(d);
  const lift = BigInt(66 + bits(d) - bits(n));
  if (lift > 1050n) {
    // Below the least normal double the steps are even: rounded to one of them at once, and not twice.
    const steps = toEven(n << 1074n, d);
    if (steps <= SAFE) return Number(steps) * 2 ** -1074;
  }
  const top = lift > 0n ? n << lift : n;
  const under = lift < 0n ? d << -lift : d;
  const whole = top / under;
  // A last bit that stands for all that was cut off: no half is taken for one that is not.
  const kept = Number(whole * under === top ? whole : whole | 1n);
  const half = Math.trunc(Number(lift) / 2);
  return kept * 2 ** -half * 2 ** (half - Number(lift));
}

/** The nearest whole number, an even one of two equally near. */
function toEven(n: bigint, d: bigint): bigint {
  const whole = n / d;
  const over = 2n * (n - whole * d);
  return over > d || (over === d && whole % 2n === 1n) ? whole + 1n : whole;
}

const SAFE = 9007199254740991n;

/** Gives the length of a number above zero in bits, to within three. */
function bits(a: bigint): number {
  return a.toString(16).length * 4;
}
