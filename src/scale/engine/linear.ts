import { type Exact, fraction } from "../../number/exact.ts";
import { gcd } from "../../number/gcd.ts";
import { lcm } from "../../number/ratio.ts";

/**
 * A quantity of the portion over the common factor: what keeps the common factor, what movers bring
 * at their own ratios to it, and what is the same for everyone, times `u`, which is one over the
 * common factor. Dividing by the common factor is what keeps a fit linear. In whole numbers over one
 * scale, so that adding up costs no cancelling.
 */
export interface Linear {
  readonly still: bigint;
  /** Places of the movers that bring anything, upwards. */
  readonly movers: readonly number[];
  /** What each of those brings, never 0. */
  readonly each: readonly bigint[];
  readonly dose: bigint;
  /** What all are divided by; above 0. */
  readonly scale: bigint;
}

/** Where a fit may stand: each mover's ratio to the common factor, and one over that factor. */
export interface Point {
  readonly ratios: readonly Exact[];
  readonly u: Exact;
}

/** `a − by × b`, over their least common scale. */
export function less(a: Linear, by: Exact, b: Linear): Linear {
  const own = by.d * b.scale;
  const common = own === a.scale ? own : gcd(a.scale, own);
  const left = own / common;
  const right = by.n * (a.scale / common);
  const still = a.still * left - b.still * right;
  const dose = a.dose * left - b.dose * right;
  const scale = a.scale * left;
  if (b.movers.length > 0) return { still, ...merged(a, left, b, -right), dose, scale };
  const each = left === 1n ? a.each : a.each.map((from) => from * left);
  return { still, movers: a.movers, each, dose, scale };
}

/** What movers bring to `left × a + right × b`. */
function merged(a: Linear, left: bigint, b: Linear, right: bigint): Pick<Linear, "movers" | "each"> {
  const movers: number[] = [];
  const each: bigint[] = [];
  for (let i = 0, k = 0; i < a.movers.length || k < b.movers.length; ) {
    const [of, other] = [a.movers[i] ?? Number.POSITIVE_INFINITY, b.movers[k] ?? Number.POSITIVE_INFINITY];
    const own = of <= other ? (a.each[i] as bigint) * left : 0n;
    const brought = other <= of ? own + (b.each[k] as bigint) * right : own;
    if (brought !== 0n) {
      movers.push(Math.min(of, other));
      each.push(brought);
    }
    if (of <= other) i += 1;
    if (other <= of) k += 1;
  }
  return { movers, each };
}

export function pointValue({ still, movers, each, dose, scale }: Linear, { ratios, u }: Point): Exact {
  let [n, d] = [still, 1n];
  const add = (own: bigint, at: Exact): void => {
    if (own === 0n) return;
    const common = d % at.d === 0n ? d : lcm(d, at.d);
    n = n * (common / d) + own * at.n * (common / at.d);
    d = common;
  };
  for (let k = 0; k < movers.length; k += 1) add(each[k] as bigint, ratios[movers[k] as number] as Exact);
  add(dose, u);
  return fraction(n, d * scale);
}

/** The same quantity times `times`, in the smallest whole numbers. */
export function inLeast(linear: Linear): { readonly whole: Linear; readonly times: Exact } {
  const { still, movers, each, dose, scale } = linear;
  let by = shared(shared(0n, still), dose);
  for (let k = 0; k < each.length && by !== 1n; k += 1) by = shared(by, each[k] as bigint);
  if (by === 0n || by === 1n) return { whole: { ...linear, scale: 1n }, times: fraction(scale) };
  return {
    whole: { still: still / by, movers, each: each.map((own) => own / by), dose: dose / by, scale: 1n },
    times: fraction(scale, by),
  };
}

/** The greatest divisor of both; `by` is 0 or above. */
function shared(by: bigint, own: bigint): bigint {
  if (own === 0n || by === 1n) return by;
  const size = own < 0n ? -own : own;
  return by === 0n ? size : gcd(size, by);
}

/** Nothing but `u`: what an amount of one portion is compared with. */
export const ONE_PORTION: Linear = { still: 0n, movers: [], each: [], dose: 1n, scale: 1n };

/** Nothing but what keeps the common factor: what a ratio is compared with. */
export const ONE_RATIO: Linear = { still: 1n, movers: [], each: [], dose: 0n, scale: 1n };

/** Whether it is one portion, as amounts are compared with. */
export function isOnePortion({ still, movers, dose, scale }: Linear): boolean {
  return still === 0n && dose === scale && movers.length === 0;
}
