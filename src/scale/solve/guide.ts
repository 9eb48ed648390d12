import type { Standing } from "./programme.ts";
import type { WholeProgramme } from "./whole.ts";

/**
 * A quick walk in binary floats that proposes a basis for the exact one to start from. Nothing is
 * taken from it but where each variable stands: a wrong proposal costs exact pivots, never a wrong
 * answer. It uses only + − × ÷ and comparison, so every engine proposes the same.
 */
interface Table {
  readonly n: number;
  readonly m: number;
  /** Which variable heads each of the m rows (basic) and n columns (off the basis). */
  readonly heads: Int32Array;
  readonly sides: Int32Array;
  readonly standing: Standing[];
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** Rate at which row's variable falls as the column's rises: m × n, row after row. */
  readonly rates: Float64Array;
  readonly values: Float64Array;
  readonly slopes: Float64Array;
}

const TINY = 1e-9;

/** Where each of the n + m variables should stand, or nothing where floats cannot say. */
export function propose(
  whole: WholeProgramme,
  standing: readonly Standing[],
  costs: readonly bigint[],
): Standing[] | undefined {
  const table = tableOf(whole, standing, costs);
  if (table === undefined) return undefined;
  let steps = 40 + 10 * (whole.n + whole.m);
  for (const reaching of [true, false]) {
    while (steps > 0 && step(table, reaching)) steps -= 1;
  }
  return table.standing;
}

function tableOf(
  whole: WholeProgramme,
  standing: readonly Standing[],
  costs: readonly bigint[],
): Table | undefined {
  const { n, m, columns } = whole;
  const rates = new Float64Array(m * n);
  const rowSize = new Float64Array(m);
  for (let j = 0; j < n; j += 1) {
    const { rows, values } = columns[j] as WholeProgramme["columns"][number];
    for (let k = 0; k < rows.length; k += 1) {
      const i = rows[k] as number;
      const value = Number(values[k]);
      rates[i * n + j] = -value;
      rowSize[i] = Math.max(rowSize[i] as number, Math.abs(value));
    }
  }
  const columnSize = new Float64Array(n);
  for (let i = 0; i < m; i += 1) {
    const by = (rowSize[i] as number) || 1;
    if (by === Number.POSITIVE_INFINITY) return undefined;
    rowSize[i] = by;
    for (let j = 0; j < n; j += 1) {
      const at = i * n + j;
      rates[at] = (rates[at] as number) / by;
      columnSize[j] = Math.max(columnSize[j] as number, Math.abs(rates[at] as number));
    }
  }
  const slopes = new Float64Array(n);
  const lower = new Float64Array(n + m).fill(Number.NEGATIVE_INFINITY);
  const upper = new Float64Array(n + m).fill(Number.POSITIVE_INFINITY);
  const span = (j: number, by: number): void => {
    if (whole.lower[j] !== undefined) lower[j] = Number(whole.lower[j]) * by;
    if (whole.upper[j] !== undefined) upper[j] = Number(whole.upper[j]) * by;
  };
  for (let j = 0; j < n; j += 1) {
    const by = (columnSize[j] as number) || 1;
    for (let i = 0; i < m; i += 1) rates[i * n + j] = (rates[i * n + j] as number) / by;
    slopes[j] = Number(costs[j]) / by;
    span(j, by);
  }
  for (let i = 0; i < m; i += 1) span(n + i, 1 / (rowSize[i] as number));
  const table: Table = {
    n,
    m,
    heads: Int32Array.from({ length: m }, (_, i) => n + i),
    sides: Int32Array.from({ length: n }, (_, j) => j),
    standing: [...standing],
    lower,
    upper,
    rates,
    values: new Float64Array(m),
    slopes,
  };
  for (let c = 0; c < n; c += 1) shift(table, c, resting(table, c));
  return table;
}

function resting(t: Table, column: number): number {
  const j = t.sides[column] as number;
  const standing = t.standing[j];
  return standing === "lower" ? (t.lower[j] as number) : standing === "upper" ? (t.upper[j] as number) : 0;
}

/** Moves the column's variable by `far`, and the basic ones with it. */
function shift(t: Table, column: number, far: number): void {
  if (far === 0) return;
  for (let p = 0; p < t.m; p += 1) {
    t.values[p] = (t.values[p] as number) - far * (t.rates[p * t.n + column] as number);
  }
}

/** −1 below the lower end, 1 above the upper, else 0. */
function beyond(t: Table, p: number): number {
  const j = t.heads[p] as number;
  const value = t.values[p] as number;
  const lower = t.lower[j] as number;
  const upper = t.upper[j] as number;
  if (value < lower - TINY * (1 + Math.abs(lower))) return -1;
  return value > upper + TINY * (1 + Math.abs(upper)) ? 1 : 0;
}

function step(t: Table, reaching: boolean): boolean {
  const slopes = reaching ? shortfallSlopes(t) : t.slopes;
  const column = slopes && steepest(t, slopes);
  if (slopes === undefined || column === undefined) return false;
  const rising = (slopes[column] as number) < 0;
  const entering = t.sides[column] as number;
  let far = (t.upper[entering] as number) - (t.lower[entering] as number);
  let position = -1;
  let to: Standing = rising ? "upper" : "lower";
  let size = 0;
  for (let p = 0; p < t.m; p += 1) {
    const rate = (t.rates[p * t.n + column] as number) * (rising ? 1 : -1);
    if (rate > -TINY && rate < TINY) continue;
    const side = reaching ? beyond(t, p) : 0;
    if (side !== 0 && side > 0 !== rate > 0) continue;
    const falls = rate > 0;
    const end: Standing = falls === (side === 0) ? "lower" : "upper";
    const bound = (end === "lower" ? t.lower : t.upper)[t.heads[p] as number] as number;
    const distance = Math.max(0, ((t.values[p] as number) - bound) / rate);
    if (distance > far || (distance === far && Math.abs(rate) <= size)) continue;
    far = distance;
    position = p;
    to = end;
    size = Math.abs(rate);
  }
  if (far === Number.POSITIVE_INFINITY) return false;
  const start = resting(t, column);
  shift(t, column, rising ? far : -far);
  if (position < 0) t.standing[entering] = to;
  else exchange(t, position, column, start + (rising ? far : -far), to);
  return true;
}

function shortfallSlopes(t: Table): Float64Array | undefined {
  let slopes: Float64Array | undefined;
  for (let p = 0; p < t.m; p += 1) {
    const side = beyond(t, p);
    if (side === 0) continue;
    slopes ??= new Float64Array(t.n);
    for (let c = 0; c < t.n; c += 1)
      slopes[c] = (slopes[c] as number) - side * (t.rates[p * t.n + c] as number);
  }
  return slopes;
}

function steepest(t: Table, slopes: Float64Array): number | undefined {
  let best: number | undefined;
  let most = TINY;
  for (let c = 0; c < t.n; c += 1) {
    const slope = slopes[c] as number;
    const size = Math.abs(slope);
    if (!(size > most)) continue;
    const j = t.sides[c] as number;
    if (t.lower[j] === t.upper[j] || t.standing[j] === (slope < 0 ? "upper" : "lower")) continue;
    most = size;
    best = c;
  }
  return best;
}

/** The column's variable takes the row; what headed the row takes the column. */
function exchange(t: Table, position: number, column: number, value: number, to: Standing): void {
  const { n, m, rates, slopes } = t;
  const at = position * n;
  const inverse = 1 / (rates[at + column] as number);
  for (let c = 0; c < n; c += 1) rates[at + c] = (rates[at + c] as number) * inverse;
  rates[at + column] = inverse;
  for (let p = 0; p < m; p += 1) {
    const factor = rates[p * n + column] as number;
    if (p === position || factor === 0) continue;
    const row = p * n;
    for (let c = 0; c < n; c += 1)
      rates[row + c] = (rates[row + c] as number) - factor * (rates[at + c] as number);
    rates[row + column] = -factor * inverse;
  }
  const slope = slopes[column] as number;
  for (let c = 0; c < n; c += 1) slopes[c] = (slopes[c] as number) - slope * (rates[at + c] as number);
  slopes[column] = -slope * inverse;
  const entering = t.sides[column] as number;
  const leaving = t.heads[position] as number;
  t.heads[position] = entering;
  t.sides[column] = leaving;
  t.standing[entering] = "basic";
  t.standing[leaving] = to;
  t.values[position] = value;
}
