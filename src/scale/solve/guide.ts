import { beyond, exchange, type FloatTable, resting, shift, TINY, tableOf } from "./floats.ts";
import type { Standing } from "./programme.ts";
import type { WholeProgramme } from "./whole.ts";

/**
 * A quick walk in binary floats that proposes a basis for the exact one to start from. Nothing is
 * taken from it but where each variable stands: a wrong proposal costs exact pivots, never a wrong
 * answer. It uses only + − × ÷ and comparison, so every engine proposes the same.
 *
 * Where no variable would gain by moving but rows are missed, as in a fit before anything has moved, it
 * mends one row at a time by whatever costs least (the dual simplex method, letting variables cross
 * from bound to bound on the way); the primal method does the rest.
 */
export function propose(
  whole: WholeProgramme,
  standing: readonly Standing[],
  costs: readonly bigint[],
): Standing[] | undefined {
  const t = tableOf(whole, standing, costs);
  if (t === undefined) return undefined;
  let steps = 40 + 10 * (whole.n + whole.m);
  if (steepest(t, t.slopes) === undefined) {
    while (steps > 0 && mend(t)) steps -= 1;
  }
  while (steps > 0 && walk(t, true)) steps -= 1;
  // Where rows stay missed, this is where their shortfall is least: to go on would lead away from the proof.
  if (shortfallSlopes(t)) return t.standing;
  while (steps > 0 && walk(t, false)) steps -= 1;
  return t.standing;
}

/** Mends the row that is missed most; says whether one was. */
function mend(t: FloatTable): boolean {
  let position = -1;
  let missed = 0;
  for (let p = 0; p < t.m; p += 1) {
    const by = beyond(t, p);
    if (Math.abs(by) <= Math.abs(missed)) continue;
    missed = by;
    position = p;
  }
  if (position < 0) return false;
  const crossing: number[] = [];
  let left = Math.abs(missed);
  for (;;) {
    const column = cheapest(t, position, missed < 0, crossing);
    if (column < 0) return false;
    const j = t.sides[column] as number;
    const room = (t.upper[j] as number) - (t.lower[j] as number);
    left -= room * Math.abs(t.rates[position * t.n + column] as number);
    if (left <= 0) {
      cross(t, crossing);
      enter(t, position, column, missed < 0 ? "lower" : "upper");
      return true;
    }
    crossing.push(column);
  }
}

/** The column that moves a row's variable the right way at least cost, of those not yet used; else −1. */
function cheapest(t: FloatTable, position: number, rising: boolean, used: readonly number[]): number {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  let size = 0;
  for (let c = 0; c < t.n; c += 1) {
    const rate = t.rates[position * t.n + c] as number;
    const j = t.sides[c] as number;
    const grows = rate < 0 === rising;
    if (Math.abs(rate) < TINY || t.standing[j] === (grows ? "upper" : "lower")) continue;
    if (t.lower[j] === t.upper[j]) continue;
    const cost = Math.abs(t.slopes[c] as number) / Math.abs(rate);
    if (cost > least || (cost === least && Math.abs(rate) <= size) || used.includes(c)) continue;
    [best, least, size] = [c, cost, Math.abs(rate)];
  }
  return best;
}

function cross(t: FloatTable, columns: readonly number[]): void {
  for (const column of columns) {
    const j = t.sides[column] as number;
    const rises = t.standing[j] === "lower";
    const room = (t.upper[j] as number) - (t.lower[j] as number);
    shift(t, column, rises ? room : -room);
    t.standing[j] = rises ? "upper" : "lower";
  }
}

/** Moves the column's variable until the row's stands on its end, then lets it take the row. */
function enter(t: FloatTable, position: number, column: number, to: "lower" | "upper"): void {
  const bound = t[to][t.heads[position] as number] as number;
  const far = ((t.values[position] as number) - bound) / (t.rates[position * t.n + column] as number);
  const value = resting(t, column) + far;
  shift(t, column, far);
  exchange(t, position, column, value, to);
}

/** One step of the primal method, of its first phase or its second; says whether there was one. */
function walk(t: FloatTable, reaching: boolean): boolean {
  const slopes = reaching ? shortfallSlopes(t) : t.slopes;
  const column = slopes && steepest(t, slopes);
  if (slopes === undefined || column === undefined) return false;
  const rising = (slopes[column] as number) < 0;
  const j = t.sides[column] as number;
  let far = (t.upper[j] as number) - (t.lower[j] as number);
  let position = -1;
  let to: "lower" | "upper" = rising ? "upper" : "lower";
  let size = 0;
  for (let p = 0; p < t.m; p += 1) {
    const rate = (t.rates[p * t.n + column] as number) * (rising ? 1 : -1);
    if (Math.abs(rate) < TINY) continue;
    const side = reaching ? beyond(t, p) : 0;
    if (side !== 0 && side > 0 !== rate > 0) continue;
    const end = rate > 0 === (side === 0) ? "lower" : "upper";
    const distance = ((t.values[p] as number) - (t[end][t.heads[p] as number] as number)) / rate;
    const near = Math.max(0, distance);
    if (near > far || (near === far && Math.abs(rate) <= size)) continue;
    [far, position, to, size] = [near, p, end, Math.abs(rate)];
  }
  if (far === Number.POSITIVE_INFINITY) return false;
  if (position < 0) cross(t, [column]);
  else {
    const value = resting(t, column) + (rising ? far : -far);
    shift(t, column, rising ? far : -far);
    exchange(t, position, column, value, to);
  }
  return true;
}

/** Rate at which what the basic variables are beyond their spans grows; nothing where none is. */
function shortfallSlopes(t: FloatTable): number[] | undefined {
  let slopes: number[] | undefined;
  for (let p = 0; p < t.m; p += 1) {
    const by = beyond(t, p);
    if (by === 0) continue;
    slopes ??= new Array<number>(t.n).fill(0);
    for (let c = 0; c < t.n; c += 1) {
      slopes[c] = (slopes[c] as number) - Math.sign(by) * (t.rates[p * t.n + c] as number);
    }
  }
  return slopes;
}

/** The column whose variable gains most by moving, if any does. */
function steepest(t: FloatTable, slopes: number[]): number | undefined {
  let best: number | undefined;
  let most = TINY;
  for (let c = 0; c < t.n; c += 1) {
    const slope = slopes[c] as number;
    if (Math.abs(slope) <= most) continue;
    const j = t.sides[c] as number;
    if (t.lower[j] === t.upper[j] || t.standing[j] === (slope < 0 ? "upper" : "lower")) continue;
    most = Math.abs(slope);
    best = c;
  }
  return best;
}
