import { type Restriction, shiftFor } from "./restriction.ts";

/**
 * Lagrangian bounds: charging every candidate for what it adds to the demands leaves each line free
 * to take its cheapest, and whatever the charges, no choice that keeps the demands costs less
 * than the sum. Good charges are looked for in doubles (subgradient steps); the bound is then taken
 * in whole numbers with those charges, so it holds however good or bad they are.
 *
 * Method: Held and Karp 1971, "The traveling-salesman problem and minimum spanning trees: part II";
 * Fisher 1981, "The Lagrangian relaxation method for solving integer programming problems" (both
 * unverified).
 */

/** A restriction shifted down to fit doubles. Values are rounded down, so the limit may be too: whole sums stay below it. */
export interface ShiftedRow {
  readonly values: readonly (readonly bigint[])[];
  readonly doubles: readonly Float64Array[];
  readonly limit: bigint;
}

export function rounded({ values, limit }: Restriction): ShiftedRow {
  const shift = shiftFor(values);
  const small = values.map((line) => line.map((v) => v >> shift));
  return {
    values: small,
    doubles: small.map((line) => Float64Array.from(line, Number)),
    limit: limit >> shift,
  };
}

const STEPS = 60;

/** Looks for charges that push the bound on the cost towards `aim`, from given ones. */
export function charge(
  cost: ShiftedRow,
  demands: readonly ShiftedRow[],
  aim: number,
  from?: Float64Array,
): Float64Array {
  const rates = Float64Array.from({ length: demands.length }, (_, r) => from?.[r] ?? 0);
  const best = rates.slice();
  const limits = demands.map((d) => Number(d.limit));
  const excess = new Float64Array(demands.length);
  let highest = Number.NEGATIVE_INFINITY;
  let pace = 1;
  let idle = 0;
  for (let step = 0; step < STEPS; step += 1) {
    let bound = 0;
    for (let r = 0; r < limits.length; r += 1) {
      excess[r] = -(limits[r] as number);
      bound -= (rates[r] as number) * (limits[r] as number);
    }
    for (let i = 0; i < cost.doubles.length; i += 1) bound += takeCheapest(cost, demands, rates, i, excess);
    if (bound > highest) {
      highest = bound;
      best.set(rates);
      idle = 0;
    } else {
      idle += 1;
      if (idle === 4) {
        pace /= 2;
        idle = 0;
        rates.set(best);
      }
    }
    if (bound >= aim) break;
    let size = 0;
    for (let r = 0; r < limits.length; r += 1) {
      const e = excess[r] as number;
      if (e > 0 || (rates[r] as number) > 0) size += e * e;
    }
    if (size === 0) break;
    const far = (pace * (aim - bound)) / size;
    for (let r = 0; r < limits.length; r += 1) {
      rates[r] = Math.max(0, (rates[r] as number) + far * (excess[r] as number));
    }
  }
  return best;
}

/** A line's cheapest candidate under the charges: adds what it brings to `excess`, gives its cost. */
function takeCheapest(
  cost: ShiftedRow,
  demands: readonly ShiftedRow[],
  rates: Float64Array,
  line: number,
  excess: Float64Array,
): number {
  const costs = cost.doubles[line] as Float64Array;
  let cheapest = Number.POSITIVE_INFINITY;
  let taken = 0;
  for (let k = 0; k < costs.length; k += 1) {
    let total = costs[k] as number;
    for (let r = 0; r < demands.length; r += 1) {
      const rate = rates[r] as number;
      if (rate !== 0)
        total += rate * (((demands[r] as ShiftedRow).doubles[line] as Float64Array)[k] as number);
    }
    if (total < cheapest) {
      cheapest = total;
      taken = k;
    }
  }
  for (let r = 0; r < demands.length; r += 1) {
    excess[r] =
      (excess[r] as number) + (((demands[r] as ShiftedRow).doubles[line] as Float64Array)[taken] as number);
  }
  return cheapest;
}
