import type { Standing } from "./programme.ts";
import type { WholeColumn, WholeProgramme } from "./whole.ts";

/**
 * A programme and a basis of it in doubles, every row and column scaled to a greatest entry of
 * about 1: the table that {@link propose} walks about in.
 */
export interface FloatTable {
  readonly n: number;
  readonly m: number;
  /** Which variable heads each of the m rows (basic) and n columns (off the basis). */
  readonly heads: number[];
  readonly sides: number[];
  readonly standing: Standing[];
  readonly lower: number[];
  readonly upper: number[];
  /** Rate at which a row's variable falls as a column's rises: m × n, row after row. */
  readonly rates: number[];
  /** Of the basic variables. */
  readonly values: number[];
  /** Rate at which the objective rises as a column's variable does. */
  readonly slopes: number[];
}

export const TINY = 1e-9;

/** The table of the basis of row totals; nothing where a figure is beyond doubles. */
export function tableOf(
  whole: WholeProgramme,
  standing: readonly Standing[],
  costs: readonly bigint[],
): FloatTable | undefined {
  const { n, m } = whole;
  const rates = new Array<number>(m * n).fill(0);
  const rowSizes = fillRates(whole, rates);
  const lower = new Array<number>(n + m).fill(Number.NEGATIVE_INFINITY);
  const upper = new Array<number>(n + m).fill(Number.POSITIVE_INFINITY);
  const slopes = new Array<number>(n).fill(0);
  for (let j = 0; j < n + m; j += 1) {
    const by = j < n ? scaleColumn(rates, rowSizes, whole, j) : 1 / ((rowSizes[j - n] as number) || 1);
    const [low, high] = [whole.lower[j], whole.upper[j]];
    if (low !== undefined) lower[j] = low === 0n ? 0 : Number(low) * by;
    if (high !== undefined) upper[j] = high === 0n ? 0 : Number(high) * by;
    if (j < n && costs[j] !== 0n) slopes[j] = Number(costs[j]) / by;
  }
  const heads = new Array<number>(m).fill(0);
  const sides = new Array<number>(n).fill(0);
  for (let p = 0; p < m; p += 1) heads[p] = n + p;
  for (let c = 0; c < n; c += 1) sides[c] = c;
  const values = new Array<number>(m).fill(0);
  const t: FloatTable = { n, m, heads, sides, standing: [...standing], lower, upper, rates, values, slopes };
  for (let c = 0; c < n; c += 1) shift(t, c, resting(t, c));
  return t.values.every(Number.isFinite) && t.slopes.every(Number.isFinite) ? t : undefined;
}

/** Fills the rates in as they are, and gives each row's greatest. */
function fillRates({ n, m, columns }: WholeProgramme, rates: number[]): number[] {
  const rowSizes = new Array<number>(m).fill(0);
  for (let j = 0; j < n; j += 1) {
    const { rows, values } = columns[j] as WholeColumn;
    for (let k = 0; k < rows.length; k += 1) {
      const i = rows[k] as number;
      const value = Number(values[k]);
      const at = i * n + j;
      rates[at] = (rates[at] as number) - value;
      if (Math.abs(value) > (rowSizes[i] as number)) rowSizes[i] = Math.abs(value);
    }
  }
  return rowSizes;
}

/** Scales a column by its rows, then by its own greatest entry, which it gives. */
function scaleColumn(rates: number[], rowSizes: number[], { n, columns }: WholeProgramme, j: number): number {
  const { rows } = columns[j] as WholeColumn;
  let most = 0;
  for (let k = 0; k < rows.length; k += 1) {
    const i = rows[k] as number;
    // A row that names the column twice is there twice, one after the other.
    if (k > 0 && i === rows[k - 1]) continue;
    const at = i * n + j;
    const scaled = (rates[at] as number) / (rowSizes[i] as number);
    rates[at] = scaled;
    if (Math.abs(scaled) > most) most = Math.abs(scaled);
  }
  if (most === 0) return 1;
  for (let at = j; at < rates.length; at += n) rates[at] = (rates[at] as number) / most;
  return most;
}

/** Where the variable at the side of a column rests. */
export function resting(t: FloatTable, column: number): number {
  const j = t.sides[column] as number;
  const standing = t.standing[j];
  return standing === "lower" ? (t.lower[j] as number) : standing === "upper" ? (t.upper[j] as number) : 0;
}

/** Moves the column's variable by `far`, and the basic ones with it. */
export function shift(t: FloatTable, column: number, far: number): void {
  if (far === 0) return;
  for (let p = 0; p < t.m; p += 1) {
    t.values[p] = (t.values[p] as number) - far * (t.rates[p * t.n + column] as number);
  }
}

/** How far a basic variable is beyond its span: below 0 under its lower end, above 0 over its upper. */
export function beyond(t: FloatTable, p: number): number {
  const j = t.heads[p] as number;
  const value = t.values[p] as number;
  const lower = t.lower[j] as number;
  const upper = t.upper[j] as number;
  if (value < lower - TINY * (1 + Math.abs(lower))) return value - lower;
  return value > upper + TINY * (1 + Math.abs(upper)) ? value - upper : 0;
}

/** The column's variable, moved to `value`, takes the row; what headed the row rests `to`. */
export function exchange(t: FloatTable, position: number, column: number, value: number, to: Standing): void {
  const { n, m, rates, slopes } = t;
  const at = position * n;
  const inverse = 1 / (rates[at + column] as number);
  for (let c = 0; c < n; c += 1) rates[at + c] = (rates[at + c] as number) * inverse;
  rates[at + column] = inverse;
  for (let p = 0; p < m; p += 1) {
    const factor = rates[p * n + column] as number;
    if (p === position || factor === 0) continue;
    const row = p * n;
    for (let c = 0; c < n; c += 1) {
      rates[row + c] = (rates[row + c] as number) - factor * (rates[at + c] as number);
    }
    rates[row + column] = -factor * inverse;
  }
  const slope = slopes[column] as number;
  if (slope !== 0) {
    for (let c = 0; c < n; c += 1) slopes[c] = (slopes[c] as number) - slope * (rates[at + c] as number);
    slopes[column] = -slope * inverse;
  }
  const entering = t.sides[column] as number;
  const leaving = t.heads[position] as number;
  t.heads[position] = entering;
  t.sides[column] = leaving;
  t.standing[entering] = "basic";
  t.standing[leaving] = to;
  t.values[position] = value;
}
