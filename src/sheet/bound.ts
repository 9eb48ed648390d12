import type { Exact } from "../number/exact.ts";

/**
 * How a tally's value bounds the truth. `between`: it is a middle figure and no bound, and the truth lies
 * from `least` to `most`; of these `most` is nothing where lines are silent, too. Ends within a tenth of
 * the value, as rounding leaves them, are `exact`: `least` and `most` tell them.
 */
export type Bound = "point" | "at-least" | "at-most" | "between" | "unknown";

/**
 * How bounds pass through arithmetic. A tally's value is a bound of the truth; what is true of a
 * result follows from the directions of its operands and their signs. Of a middle figure the direction tells
 * nothing: a tally then goes by its ends, and what has none here is unknown.
 */

/** The bound of the opposite: at least turns into at most. */
export function opposite(bound: Bound): Bound {
  return bound === "at-least" ? "at-most" : bound === "at-most" ? "at-least" : bound;
}

/** The bound of a sum. */
export function boundOfSum(a: Bound, b: Bound): Bound {
  if (a === "point") return b;
  if (b === "point" || a === b) return a;
  return "unknown";
}

/** The bound of a product. */
export function boundOfProduct(a: Bound, x: Exact, b: Bound, y: Exact): Bound {
  if (a === "point") return byKnown(b, x);
  if (b === "point") return byKnown(a, y);
  // Only of two numbers that are both known not to be below zero does the product grow with each.
  return a === "at-least" && b === "at-least" && x.n >= 0n && y.n >= 0n ? "at-least" : "unknown";
}

/** The bound of a quotient; the divisor is not zero. */
export function boundOfQuotient(a: Bound, x: Exact, b: Bound, y: Exact): Bound {
  if (b === "point") return byKnown(a, y);
  // Of a divisor with a bound, the truth must lie on the same side of zero.
  if (b !== "at-least" || y.n <= 0n) return "unknown";
  if (a === "point") return x.n >= 0n ? (x.n === 0n ? "point" : "at-most") : "at-least";
  return a === "at-most" && x.n >= 0n ? "at-most" : "unknown";
}

/** The bound of `bound` times a known number. */
function byKnown(bound: Bound, known: Exact): Bound {
  if (known.n === 0n) return bound === "unknown" ? "unknown" : "point";
  return known.n > 0n ? bound : opposite(bound);
}
