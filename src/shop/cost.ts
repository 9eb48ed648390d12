import { type Exact, fraction, over, times } from "../number/exact.ts";
import { compareRatios, nearest, type Ratio } from "../number/ratio.ts";
import { ToldResult } from "../number/told.ts";
import { minorUnits } from "./minorUnits.ts";

/** An amount of money. */
export interface Cost {
  /** ISO 4217 code. */
  readonly currency: string;
  /** In whole minor units (pence, cents): parts are rounded so that they add up to their whole. */
  readonly value: Exact;
  /** Before rounding. */
  readonly unrounded: Exact;
  /** `at-least` where something that it pays for has no price. */
  readonly bound: "point" | "at-least";
}

/** What one unit of a currency is divided into: 100, unless ISO 4217 says otherwise. */
function minorsIn(currency: string): Exact {
  return fraction(10n ** BigInt(minorPlaces(currency)));
}

/** The decimals of a currency's minor unit. */
export function minorPlaces(currency: string): number {
  return (Object.hasOwn(minorUnits, currency) ? minorUnits[currency] : undefined) ?? 2;
}

/** A cost by itself, rounded to the nearest minor unit, a half up. */
export function costOfPieces(currency: string, unrounded: Exact, bound: Cost["bound"]): Cost {
  const minors = minorsIn(currency);
  return { currency, unrounded, bound, value: over(fraction(nearest(times(unrounded, minors))), minors) };
}

/** One part of a cost. Many are never asked for more than their value, so what it is exactly is worked out late. */
class Part extends ToldResult implements Cost {
  readonly currency: string;
  readonly value: Exact;
  readonly bound: Cost["bound"];
  readonly #raw: Ratio;
  #unrounded: Exact | undefined;

  constructor(currency: string, value: Exact, { raw, bound }: Unrounded) {
    super();
    this.currency = currency;
    this.value = value;
    this.bound = bound;
    this.#raw = raw;
  }

  get unrounded(): Exact {
    this.#unrounded ??= fraction(this.#raw.n, this.#raw.d);
    return this.#unrounded;
  }
}

/** A part before rounding; it need not be in lowest terms. */
export interface Unrounded {
  readonly raw: Ratio;
  readonly bound: Cost["bound"];
}

/**
 * Parts of one cost in whole minor units, which add up to the whole in whole minor units: each loses
 * what it has beyond them, and as many as the whole then wants get one more, largest remainder first,
 * earlier ones first among equals. A part that is in whole minor units stays as it is, which sharing
 * the rounded whole in proportion would not ensure.
 *
 * Method: largest remainder (Hamilton's).
 */
export function costParts(currency: string, whole: Exact, parts: readonly Unrounded[]): readonly Cost[] {
  const minors = minorsIn(currency);
  const cut = parts.map(({ raw: { n, d } }) => ({
    units: (n * minors.n) / d,
    left: { n: (n * minors.n) % d, d },
  }));
  const wanted = nearest(times(whole, minors)) - cut.reduce((total, { units }) => total + units, 0n);
  const ranked = cut
    .map(({ left }, i) => ({ i, left, near: (left.n * NEAR) / left.d }))
    .sort((a, b) => order(b.near, a.near) || compareRatios(b.left, a.left) || a.i - b.i);
  const more = new Set(ranked.slice(0, Number(wanted)).map(({ i }) => i));
  return parts.map((part, i) => {
    const units = (cut[i]?.units ?? 0n) + (more.has(i) ? 1n : 0n);
    return new Part(currency, over(fraction(units), minors), part);
  });
}

/** Remainders are first told apart by so many parts of a unit, which is quick; equal ones exactly. */
const NEAR = 1_000_000_000_000_000_000_000_000_000_000n;

function order(a: bigint, b: bigint): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
