import {
  absolute,
  type Exact,
  equals,
  fraction,
  greatest,
  isZero,
  least,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Bound } from "./bound.ts";

/**
 * Between what a value can lie: figures are published with their ends, limits are told, silence has no
 * end. How ends pass through arithmetic is interval arithmetic: of one figure used twice it tells more
 * than can be, and never less.
 */
export interface Ends {
  /** The least that it can be; nothing where nothing says. */
  readonly low: Exact | undefined;
  /** The most that it can be; nothing where a line is silent, or a trace. */
  readonly high: Exact | undefined;
  /** The most of what is told: what silent lines hold comes on top. Nothing after arithmetic that blurs it. */
  readonly told: Exact | undefined;
}

/** Ends further from the value than this part of it make it a middle figure; rounding stays within. */
const NARROW: Exact = /* @__PURE__ */ fraction(1n, 10n);

const NO_ENDS: Ends = { low: undefined, high: undefined, told: undefined };

/** Ends that are the value alone. */
export function pointEnds(value: Exact): Ends {
  return { low: value, high: value, told: value };
}

/** What a bound says of the ends. */
export function endsOfBound(value: Exact, bound: Bound): Ends {
  if (bound === "point") return pointEnds(value);
  if (bound === "at-least") return { low: value, high: undefined, told: value };
  return bound === "at-most" ? { low: undefined, high: value, told: value } : NO_ENDS;
}

/** How a middle figure bounds the truth that lies between ends. */
export function boundOfEnds(value: Exact, { low, high }: Ends, hasLimits: boolean): Bound {
  if (low === undefined && high === undefined) return "unknown";
  if (low && high) {
    if (equals(low, high)) return "point";
    const room = times(absolute(value), NARROW);
    const isNarrow =
      compareRatios(minus(value, low), room) <= 0 && compareRatios(minus(high, value), room) <= 0;
    return isNarrow && !hasLimits ? "point" : "between";
  }
  if (low) return equals(low, value) ? "at-least" : "between";
  return high && equals(high, value) ? "at-most" : "between";
}

export function sumOf(all: readonly Ends[]): Ends {
  return {
    low: sumIfAll(all.map(({ low }) => low)),
    high: sumIfAll(all.map(({ high }) => high)),
    told: sumIfAll(all.map(({ told }) => told)),
  };
}

/** Times a number of 0 or above. */
export function scaledBy({ low, high, told }: Ends, by: Exact): Ends {
  const scaled = (end: Exact | undefined): Exact | undefined => end && times(end, by);
  return { low: scaled(low), high: scaled(high), told: scaled(told) };
}

export function lessOf(a: Ends, b: Ends): Ends {
  return {
    low: a.low && b.high && minus(a.low, b.high),
    high: a.high && b.low && minus(a.high, b.low),
    told: a.told && b.low && minus(a.told, b.low),
  };
}

export function productOf(a: Ends, b: Ends): Ends {
  if (isPoint(b)) return timesKnown(a, b.low);
  if (isPoint(a)) return timesKnown(b, a.low);
  if (a.low && a.high && b.low && b.high) {
    const corners = [a.low, a.high].flatMap((x) => [b.low, b.high].map((y) => times(x, y as Exact)));
    return { low: corners.reduce(least), high: corners.reduce(greatest), told: undefined };
  }
  const grows = a.low && b.low && a.low.n >= 0n && b.low.n >= 0n;
  return grows ? { ...NO_ENDS, low: times(a.low as Exact, b.low as Exact) } : NO_ENDS;
}

/** Nothing of anything is nothing, and below 0 the ends change places. */
function timesKnown(e: Ends, by: Exact): Ends {
  if (by.n === 0n) return pointEnds(ZERO);
  const { low, high, told } = scaledBy(e, by);
  return by.n > 0n ? { low, high, told } : { low: high, high: low, told: undefined };
}

export function quotientOf(a: Ends, b: Ends): Ends {
  if (!b.low || b.low.n <= 0n) {
    // A divisor that may be 0, or below, bounds nothing, but one below 0 altogether turns the sign.
    if (!b.high || b.high.n >= 0n) return NO_ENDS;
    const turned = (e: Ends): Ends => lessOf(pointEnds(ZERO), e);
    return quotientOf(turned(a), turned(b));
  }
  const inverse: Ends = {
    low: b.high ? over(ONE, b.high) : ZERO,
    high: over(ONE, b.low),
    told: undefined,
  };
  return productOf(a, inverse);
}

function isPoint(e: Ends): e is Ends & { readonly low: Exact; readonly high: Exact } {
  return e.low !== undefined && e.high !== undefined && equals(e.low, e.high);
}

/** Cooked water, more or less by what the pot takes up or gives off; where not even the most of it is enough, all may have stayed. */
export function driedBy({ low, high }: Ends, change: Exact): Ends {
  const left = high && plus(high, change);
  const most = left && left.n < 0n ? high : left;
  return { low: greatest(ZERO, plus(low ?? ZERO, change)), high: most, told: most };
}

export function sameEnds(a: Ends, b: Ends): boolean {
  const same = (x: Exact | undefined, y: Exact | undefined): boolean =>
    x === undefined || y === undefined ? x === y : equals(x, y);
  return same(a.low, b.low) && same(a.high, b.high);
}

/** The sum, or nothing where one of them is nothing. */
function sumIfAll(all: readonly (Exact | undefined)[]): Exact | undefined {
  const known = all.filter((each) => each !== undefined);
  return known.length === all.length ? sum(known) : undefined;
}

/** Whether nothing but 0 is possible. */
export function isNothing({ low, high }: Ends): boolean {
  return low !== undefined && high !== undefined && isZero(low) && isZero(high);
}
