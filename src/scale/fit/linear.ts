import { type Fraction, fraction, minus, plus, times, ZERO } from "../../number/fraction.ts";

/**
 * A quantity of the portion over the common factor: what keeps the common factor, what each mover
 * brings at its own ratio to it, and what is the same for everyone, times `u`, which is one over the
 * common factor. Dividing by the common factor is what keeps a fit linear.
 */
export interface Linear {
  readonly still: Fraction;
  /** By mover. */
  readonly each: readonly Fraction[];
  readonly dose: Fraction;
}

/** Where a fit may stand: each mover's ratio to the common factor, and one over that factor. */
export interface Point {
  readonly ratios: readonly Fraction[];
  readonly u: Fraction;
}

/** `a − by × b`. */
export function less(a: Linear, by: Fraction, b: Linear): Linear {
  return {
    still: minus(a.still, times(by, b.still)),
    each: a.each.map((own, j) => minus(own, times(by, b.each[j] ?? ZERO))),
    dose: minus(a.dose, times(by, b.dose)),
  };
}

export function valueAt(linear: Linear, { ratios, u }: Point): Fraction {
  let total = plus(linear.still, times(linear.dose, u));
  for (const [j, own] of linear.each.entries()) {
    if (own.n !== 0n) total = plus(total, times(own, ratios[j] ?? ZERO));
  }
  return total;
}

/** Nothing but `u`: what an amount of one portion is compared with. */
export function onePortion(movers: number): Linear {
  return { still: ZERO, each: new Array<Fraction>(movers).fill(ZERO), dose: fraction(1n) };
}
