import { type Fraction, lcm, ZERO } from "../../number/fraction.ts";
import type { Objective, Programme, Span, Term } from "./programme.ts";

/**
 * A programme in whole numbers: variable `j` is counted in units of `1 / units[j]` and row `i` is
 * multiplied by `scales[i]`, both chosen so that every coefficient and every end is whole. Behind
 * the `n` variables stand the `m` rows' totals, as variables of their own: column `n + i` is
 * `−1` in row `i`, and every row reads `Σ coefficient × variable − total = 0`.
 */
export interface WholeProgramme {
  readonly n: number;
  readonly m: number;
  readonly columns: readonly Column[];
  readonly lower: readonly (bigint | undefined)[];
  readonly upper: readonly (bigint | undefined)[];
  readonly units: readonly bigint[];
  readonly scales: readonly bigint[];
}

export interface Column {
  readonly rows: readonly number[];
  readonly values: readonly bigint[];
}

export function inWholes(programme: Programme): WholeProgramme {
  const { variables, rows } = programme;
  const units = variables.map((v) => common(common(1n, v.lower), v.upper));
  const columns = variables.map(() => ({ rows: [] as number[], values: [] as bigint[] }));
  const lower = variables.map((v, j) => timesWhole(v.lower, units[j] as bigint));
  const upper = variables.map((v, j) => timesWhole(v.upper, units[j] as bigint));
  const scales = rows.map((row, i) => {
    const scale = scaleOf(row.terms, units, common(common(1n, row.lower), row.upper));
    eachWhole(row.terms, units, scale, (j, value) => add(columns[j] as MutableColumn, i, value));
    lower.push(timesWhole(row.lower, scale));
    upper.push(timesWhole(row.upper, scale));
    return scale;
  });
  return { n: variables.length, m: rows.length, columns, lower, upper, units, scales };
}

/** An objective times `scale`, per unit of each of the n + m whole variables. */
export interface WholeObjective {
  readonly costs: readonly bigint[];
  readonly scale: bigint;
}

export function objectiveInWholes(objective: Objective, whole: WholeProgramme): WholeObjective {
  const scale = scaleOf(objective, whole.units, 1n);
  const costs = new Array<bigint>(whole.n + whole.m).fill(0n);
  eachWhole(objective, whole.units, scale, (j, value) => {
    costs[j] = (costs[j] as bigint) + value;
  });
  return { costs, scale };
}

/** Whether the ends cross, so that no value lies between them. */
export function crosses(span: Span): boolean {
  const { lower, upper } = span;
  return lower !== undefined && upper !== undefined && lower.n * upper.d > upper.n * lower.d;
}

/** The least multiple of `start` that makes every term whole. */
function scaleOf(terms: readonly Term[], units: readonly bigint[], start: bigint): bigint {
  let scale = start;
  for (const { variable, coefficient } of terms) {
    if (coefficient.d === 1n && units[variable] === 1n) continue;
    if (coefficient.n !== 0n) scale = multiple(scale, coefficient.d * (units[variable] as bigint));
  }
  return scale;
}

function eachWhole(
  terms: readonly Term[],
  units: readonly bigint[],
  scale: bigint,
  take: (variable: number, value: bigint) => void,
): void {
  for (const { variable, coefficient } of terms) {
    if (coefficient.n === 0n) continue;
    const unit = units[variable] as bigint;
    const under = unit === 1n ? coefficient.d : coefficient.d * unit;
    take(variable, under === scale ? coefficient.n : coefficient.n * (scale / under));
  }
}

interface MutableColumn {
  readonly rows: number[];
  readonly values: bigint[];
}

/** Rows come in order, so a variable named twice in one row is the last entry of its column. */
function add(column: MutableColumn, row: number, value: bigint): void {
  const last = column.rows.length - 1;
  if (column.rows[last] === row) column.values[last] = (column.values[last] as bigint) + value;
  else {
    column.rows.push(row);
    column.values.push(value);
  }
}

function common(so: bigint, end: Fraction = ZERO): bigint {
  return multiple(so, end.d);
}

/** Least common multiple, without a gcd where one divides the other, as powers of ten do. */
function multiple(a: bigint, b: bigint): bigint {
  return a === b || a % b === 0n ? a : b % a === 0n ? b : lcm(a, b);
}

function timesWhole(end: Fraction | undefined, by: bigint): bigint | undefined {
  return end && end.n * (by / end.d);
}
