import { type Exact, minus, over, plus, times } from "../number/exact.ts";
import { toFloat } from "../number/ratio.ts";

/** A point, and how far to step along each of its axes: as many points as fix an affine function. */
export interface Corner {
  readonly at: readonly Exact[];
  readonly steps: readonly Exact[];
}

/** A function `constant + Σ per × parameter` in doubles: the constant, then what each parameter counts. */
export type Affine = Float64Array;

/** How near 0 a function of doubles may come, over the size of its terms, before its sign is left to exact figures. */
const CLOSE = 1e-9;

/** Gives the corner and the ends of its steps, in their order. */
export function pointsOf({ at, steps }: Corner): readonly (readonly Exact[])[] {
  return [at, ...steps.map((step, d) => at.map((each, e) => (e === d ? plus(each, step) : each)))];
}

/** As {@link Affine}, exactly: the constant, then what each parameter counts. */
export type ExactAffine = readonly [Exact, ...Exact[]];

/** The affine function with these values at {@link pointsOf} a corner. */
export function exactlyThrough({ at, steps }: Corner, values: readonly Exact[]): ExactAffine {
  const first = values[0] as Exact;
  const per = steps.map((step, d) => over(minus(values[d + 1] as Exact, first), step));
  const constant = per.reduce((left, each, d) => minus(left, times(each, at[d] as Exact)), first);
  return [constant, ...per];
}

/** The same, each figure rounded once. */
export function through(corner: Corner, values: readonly Exact[]): Affine {
  return Float64Array.from(exactlyThrough(corner, values), toFloat);
}

/** Its value for row `i` of parameters that stand row by row. */
export function formValue(form: Affine, at: Float64Array, i: number): number {
  const count = form.length - 1;
  let value = form[0] as number;
  for (let d = 0; d < count; d += 1) value += (form[d + 1] as number) * (at[i * count + d] as number);
  return value;
}

/** The size of its terms for that row: what its value may be off by, over the precision of a double. */
export function sizeAt(form: Affine, at: Float64Array, i: number): number {
  const count = form.length - 1;
  let size = Math.abs(form[0] as number);
  for (let d = 0; d < count; d += 1)
    size += Math.abs((form[d + 1] as number) * (at[i * count + d] as number));
  return size;
}

/** Its sign for that row: 0 where doubles cannot tell. */
export function signAt(form: Affine, at: Float64Array, i: number): -1 | 0 | 1 {
  const value = formValue(form, at, i);
  if (Math.abs(value) <= CLOSE * sizeAt(form, at, i)) return 0;
  return value > 0 ? 1 : -1;
}
