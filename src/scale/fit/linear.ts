import { type Fraction, fraction, gcd, lcm } from "../../number/fraction.ts";

/**
 * A quantity of the portion over the common factor: what keeps the common factor, what each mover
 * brings at its own ratio to it, and what is the same for everyone, times `u`, which is one over the
 * common factor. Dividing by the common factor is what keeps a fit linear. In whole numbers over one
 * scale, so that adding up costs no cancelling.
 */
export interface Linear {
  readonly still: bigint;
  /** By mover. */
  readonly each: readonly bigint[];
  readonly dose: bigint;
  /** What all are divided by; above 0. */
  readonly scale: bigint;
}

/** Where a fit may stand: each mover's ratio to the common factor, and one over that factor. */
export interface Point {
  readonly ratios: readonly Fraction[];
  readonly u: Fraction;
}

/** `a − by × b`. */
export function less(a: Linear, by: Fraction, b: Linear): Linear {
  const same = a.scale === b.scale;
  const left = same ? by.d : by.d * b.scale;
  const right = same ? by.n : by.n * a.scale;
  const take = (own: bigint, other: bigint): bigint =>
    other === 0n ? (own === 0n ? own : own * left) : own * left - other * right;
  const each = new Array<bigint>(a.each.length);
  for (let j = 0; j < each.length; j += 1) each[j] = take(a.each[j] as bigint, b.each[j] as bigint);
  return { still: take(a.still, b.still), each, dose: take(a.dose, b.dose), scale: a.scale * left };
}

export function valueAt(linear: Linear, { ratios, u }: Point): Fraction {
  let [n, d] = [linear.still, 1n];
  const add = (own: bigint, at: Fraction): void => {
    if (own === 0n) return;
    const common = d % at.d === 0n ? d : lcm(d, at.d);
    n = n * (common / d) + own * at.n * (common / at.d);
    d = common;
  };
  for (let j = 0; j < ratios.length; j += 1) add(linear.each[j] as bigint, ratios[j] as Fraction);
  add(linear.dose, u);
  return fraction(n, d * linear.scale);
}

/** The same quantity times `times`, in the smallest whole numbers. */
export function inLeast(linear: Linear): { readonly whole: Linear; readonly times: Fraction } {
  const { still, each, dose, scale } = linear;
  let by = shared(shared(0n, still), dose);
  for (let j = 0; j < each.length && by !== 1n; j += 1) by = shared(by, each[j] as bigint);
  if (by === 0n || by === 1n) return { whole: { still, each, dose, scale: 1n }, times: { n: scale, d: 1n } };
  const part = (own: bigint): bigint => (own === 0n ? own : own / by);
  return {
    whole: { still: part(still), each: each.map(part), dose: part(dose), scale: 1n },
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
export function onePortion(movers: number): Linear {
  return { still: 0n, each: new Array<bigint>(movers).fill(0n), dose: 1n, scale: 1n };
}

/** Whether it is one portion, as amounts are compared with. */
export function isOnePortion({ still, each, dose, scale }: Linear): boolean {
  return still === 0n && dose === scale && each.every((own) => own === 0n);
}

/** Nothing but what keeps the common factor: what a ratio is compared with. */
export function oneRatio(movers: number): Linear {
  return { still: 1n, each: new Array<bigint>(movers).fill(0n), dose: 0n, scale: 1n };
}
