import { type Exact, fraction, minus, ONE, plus, times, ZERO } from "../../number/exact.ts";
import { compareRatios, floor, lcm } from "../../number/ratio.ts";
import type { AmountDemand, AmountsProblem, Choice, QuantitySum } from "./amounts.ts";
import { largest, type Restriction, smallest } from "./restriction.ts";

/** An amounts problem in whole numbers: what each candidate adds to each demand, and its ratio. */
export interface Tables {
  readonly problem: AmountsProblem;
  readonly demands: readonly WholeDemand[];
  /** `quantity / exact`, times `one`; by line, by candidate. */
  readonly ratios: readonly (readonly bigint[])[];
  readonly one: bigint;
  /** By line, times `weightOne`; a line without a ratio weighs nothing. */
  readonly weights: readonly bigint[];
  readonly weightOne: bigint;
}

/** A demand times `scale`, with its constant moved over to its ends. */
export interface WholeDemand {
  readonly values: readonly (readonly bigint[])[];
  readonly lower: bigint | undefined;
  readonly upper: bigint | undefined;
  /** What an excess of 1 widens an end by; nothing where the demand is firm. */
  readonly gives: Gives | undefined;
}

/** `constant + Σ value of the chosen`, above 0. */
export interface Gives {
  readonly constant: bigint;
  /** By line, by candidate; nothing where it is the same whatever is chosen. */
  readonly values: readonly (readonly bigint[])[] | undefined;
  /** The least and the most that it comes to. */
  readonly least: bigint;
  readonly most: bigint;
}

export function choiceTables(problem: AmountsProblem): Tables {
  const { lines, demands, common = ONE } = problem;
  const ratios = lines.map(({ exact, candidates }) =>
    candidates.map(({ quantity: q }) => (exact.n === 0n ? ZERO : fraction(q.n * exact.d, q.d * exact.n))),
  );
  const one = underAll(ratios.flat(), common.d);
  const weights = lines.map(({ exact, weight }) => (exact.n === 0n ? ZERO : weight));
  const weightOne = underAll(weights);
  return {
    problem,
    demands: demands.map((demand) => wholeDemand(problem, demand)),
    ratios: ratios.map((line) => line.map((f) => f.n * (one / f.d))),
    one,
    weights: weights.map((f) => f.n * (weightOne / f.d)),
    weightOne,
  };
}

function wholeDemand({ lines }: AmountsProblem, demand: AmountDemand): WholeDemand {
  const lower = demand.lower && minus(demand.lower, demand.constant);
  const upper = demand.upper && minus(demand.upper, demand.constant);
  const scale = demand.firm ? undefined : (demand.scale ?? ONE);
  const varies = scale !== undefined && "perUnit" in scale;
  const constant = varies ? scale.constant : scale;
  const addsTo = ({ perUnit }: Pick<QuantitySum, "perUnit">): Exact[][] =>
    lines.map(({ candidates }, i) => {
      const per = perUnit[i] ?? ZERO;
      return candidates.map(({ quantity }) => (per.n === 0n ? ZERO : times(per, quantity)));
    });
  const adds = addsTo(demand);
  const more = varies ? addsTo(scale) : undefined;
  const under = underAll([
    ...adds.flat(),
    ...(more ?? []).flat(),
    lower ?? ZERO,
    upper ?? ZERO,
    constant ?? ZERO,
  ]);
  const whole = (f: Exact): bigint => f.n * (under / f.d);
  return {
    values: adds.map((line) => line.map(whole)),
    lower: lower && whole(lower),
    upper: upper && whole(upper),
    gives:
      constant &&
      givesOf(
        whole(constant),
        more?.map((line) => line.map(whole)),
      ),
  };
}

function givesOf(constant: bigint, values: Gives["values"] = undefined): Gives {
  let [least, most] = [constant, constant];
  for (const line of values ?? []) {
    least += smallest(line);
    most += largest(line);
  }
  return { constant, values, least, most };
}

/** Whether what an excess of 1 comes to depends on what is chosen. */
export function varies({ demands }: Tables): boolean {
  return demands.some(({ gives }) => gives?.values !== undefined);
}

/** A common denominator. */
function underAll(all: readonly Exact[], start = 1n): bigint {
  let under = start;
  for (const { d } of all) if (under % d !== 0n) under = lcm(under, d);
  return under;
}

/** One end of a demand as a restriction, `by` times as large as the demand is in whole numbers. */
export interface Window extends Restriction {
  readonly by: bigint;
  readonly gives: Gives | undefined;
}

/**
 * The demands as restrictions, each end on its own, widened by an excess; `short` asks for less
 * than that excess.
 */
export function windows(demands: readonly WholeDemand[], excess: Exact, short = false): Window[] {
  return demands.flatMap(({ values, lower, upper, gives }) => [
    ...(upper === undefined ? [] : [windowOf(values, upper, gives, excess, short)]),
    ...(lower === undefined
      ? []
      : [
          windowOf(
            values.map((line) => line.map((v) => -v)),
            -lower,
            gives,
            excess,
            short,
          ),
        ]),
  ]);
}

/** `Σ values ≤ end + gives × excess`; a firm end stays. */
function windowOf(
  values: Restriction["values"],
  end: bigint,
  gives: Gives | undefined,
  excess: Exact,
  short: boolean,
): Window {
  if (!gives) return { values, limit: end, by: 1n, gives };
  const wide = end * excess.d + gives.constant * excess.n;
  const more = gives.values;
  if (!more) {
    // The largest whole number at or (short) below.
    const limit = short ? -floor(fraction(-wide, excess.d)) - 1n : floor(fraction(wide, excess.d));
    return { values, limit, by: 1n, gives };
  }
  const moved = values.map((line, i) =>
    line.map((v, k) => v * excess.d - ((more[i] as readonly bigint[])[k] as bigint) * excess.n),
  );
  return { values: moved, limit: short ? wide - 1n : wide, by: excess.d, gives };
}

/** The worst excess of a choice that holds the firm demands. */
export function excessOf(demands: readonly WholeDemand[], chosen: readonly number[]): Exact {
  let worst: Exact = ZERO;
  for (const { values, lower, upper, gives } of demands) {
    if (!gives) continue;
    const total = totalOf(values, chosen);
    const over = upper === undefined ? -1n : total - upper;
    const under = lower === undefined ? -1n : lower - total;
    const by = over > under ? over : under;
    if (by <= 0n) continue;
    const size = gives.constant + (gives.values ? totalOf(gives.values, chosen) : 0n);
    if (by * worst.d > worst.n * size) worst = fraction(by, size);
  }
  return worst;
}

/** `weight × |ratio − common|` of each candidate, with the common factor over `one`: a cost over `common × weightOne`. */
export function costsAt({ ratios, weights }: Tables, common: bigint): bigint[][] {
  return ratios.map((line, i) => {
    const weight = weights[i] as bigint;
    return line.map((ratio) => (ratio < common ? common - ratio : ratio - common) * weight);
  });
}

export function totalOf(values: readonly (readonly bigint[])[], chosen: readonly number[]): bigint {
  let total = 0n;
  for (let i = 0; i < values.length; i += 1)
    total += (values[i] as readonly bigint[])[chosen[i] as number] as bigint;
  return total;
}

/** States a choice in the caller's terms, with the common factor that suits it best. */
export function statedChoice(t: Tables, chosen: readonly number[]): Choice {
  const { problem, demands, one, weightOne } = t;
  const { common, cost } = bestCommon(t, chosen);
  return {
    chosen: [...chosen],
    common: fraction(common, one),
    drift: fraction(cost, common * weightOne),
    excess: excessOf(demands, chosen),
    totals: problem.demands.map((demand) =>
      problem.lines.reduce((sum, { candidates }, i) => {
        const { quantity } = candidates[chosen[i] as number] as { readonly quantity: Exact };
        const per = demand.perUnit[i] ?? ZERO;
        return per.n === 0n ? sum : plus(sum, times(per, quantity));
      }, demand.constant),
    ),
  };
}

/** A common factor over `one`, and a cost over `common × weightOne`. */
export interface AtCommon {
  readonly common: bigint;
  readonly cost: bigint;
}

/** The common factor of least drift; where a stretch of them is as good, its point nearest to 1. */
export function bestCommon(t: Tables, chosen: readonly number[]): AtCommon {
  const { ratios, weights, one, problem } = t;
  const costAt = (common: bigint): bigint => totalOf(costsAt(t, common), chosen);
  const held = problem.common;
  if (held) {
    const common = held.n * (one / held.d);
    return { common, cost: costAt(common) };
  }
  let best: AtCommon | undefined;
  let [low, high] = [one, one];
  for (const common of new Set(
    ratios.map((line, i) => (weights[i] === 0n ? 0n : (line[chosen[i] as number] as bigint))),
  )) {
    if (common === 0n) continue;
    const cost = costAt(common);
    const side =
      best === undefined ? -1 : compareRatios({ n: cost, d: common }, { n: best.cost, d: best.common });
    if (side > 0) continue;
    if (side < 0) best = { common, cost };
    if (side < 0 || common < low) low = common;
    if (side < 0 || common > high) high = common;
  }
  if (best === undefined) return { common: one, cost: costAt(one) };
  let common = one;
  if (common < low) common = low;
  if (common > high) common = high;
  return { common, cost: costAt(common) };
}
