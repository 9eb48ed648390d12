import type { Exact } from "../../number/exact.ts";
import { lcm } from "../../number/ratio.ts";
import type { Objective, Programme, ProgrammeRow, ProgrammeTerm, SolverInterval } from "./programme.ts";

/**
 * A programme in whole numbers: every variable is counted in units of `1 / unit` and the terms of row
 * `i` are multiplied by `scales[i]`, chosen so that every coefficient and every end is whole. Behind
 * the `n` variables stand the `m` rows' totals, as variables of their own: column `n + i` is
 * `−1` in row `i`, and every row reads `Σ coefficient × variable − total = 0`, its total being
 * counted in units of `1 / (scales[i] × unit)`.
 */
export interface WholeProgramme {
  readonly n: number;
  readonly m: number;
  readonly columns: readonly WholeColumn[];
  readonly lower: readonly (bigint | undefined)[];
  readonly upper: readonly (bigint | undefined)[];
  readonly unit: bigint;
  readonly scales: readonly bigint[];
}

/** The coefficients of one variable; a row that names it twice is there twice. */
export interface WholeColumn {
  readonly rows: readonly number[];
  readonly values: readonly bigint[];
}

export function inWholes({ variables, rows }: Programme): WholeProgramme {
  const scales = rows.map((row) => scaleOf(row.terms));
  let unit = 1n;
  for (const { lower, upper } of variables) {
    if (lower) unit = multiple(unit, lower.d);
    if (upper) unit = multiple(unit, upper.d);
  }
  rows.forEach(({ lower, upper }, i) => {
    for (const end of [lower, upper]) {
      if (end && end.d !== 1n && (scales[i] as bigint) % end.d !== 0n) unit = multiple(unit, end.d);
    }
  });
  const columns = emptyColumns(variables.length, rows);
  const lower: (bigint | undefined)[] = [];
  const upper: (bigint | undefined)[] = [];
  const addEnds = (span: SolverInterval, by: bigint): void => {
    lower.push(span.lower && wholeEnd(span.lower, by));
    upper.push(span.upper && wholeEnd(span.upper, by));
  };
  for (const variable of variables) addEnds(variable, unit);
  rows.forEach((row, i) => {
    const scale = scales[i] as bigint;
    eachWhole(row.terms, scale, (j, value) => {
      const column = columns[j] as FilledColumn;
      column.rows[column.filled] = i;
      column.values[column.filled] = value;
      column.filled += 1;
    });
    addEnds(row, scale * unit);
  });
  return { n: variables.length, m: rows.length, columns, lower, upper, unit, scales };
}

interface FilledColumn extends WholeColumn {
  readonly rows: number[];
  readonly values: bigint[];
  filled: number;
}

/** Columns with room for just what the rows name: thousands of them are made. */
function emptyColumns(n: number, rows: readonly ProgrammeRow[]): FilledColumn[] {
  const sizes = new Array<number>(n).fill(0);
  for (const { terms } of rows) {
    for (const { variable, coefficient } of terms) {
      if (coefficient.n !== 0n) sizes[variable] = (sizes[variable] as number) + 1;
    }
  }
  return sizes.map((size) => ({ rows: new Array(size), values: new Array(size), filled: 0 }));
}

function wholeEnd({ n, d }: Exact, by: bigint): bigint {
  return n === 0n ? n : d === 1n ? n * by : (n * by) / d;
}

/** The objective times `scale`, for each of the n + m variables. */
export interface WholeObjective {
  readonly costs: readonly bigint[];
  readonly scale: bigint;
}

export function objectiveInWholes(objective: Objective, { n, m }: WholeProgramme): WholeObjective {
  const scale = scaleOf(objective);
  const costs = new Array<bigint>(n + m).fill(0n);
  eachWhole(objective, scale, (j, value) => {
    costs[j] = (costs[j] as bigint) + value;
  });
  return { costs, scale };
}

/** Whether the ends cross, so that no value lies between them. */
export function crosses({ lower, upper }: SolverInterval): boolean {
  return lower !== undefined && upper !== undefined && lower.n * upper.d > upper.n * lower.d;
}

/** The least number that makes every term whole. */
function scaleOf(terms: readonly ProgrammeTerm[]): bigint {
  let scale = 1n;
  for (const { coefficient } of terms) if (coefficient.d !== 1n) scale = multiple(scale, coefficient.d);
  return scale;
}

/** Gives the terms times `scale`, leaving out those of zero. */
function eachWhole(
  terms: readonly ProgrammeTerm[],
  scale: bigint,
  take: (variable: number, value: bigint) => void,
): void {
  let under = scale;
  let by = 1n;
  for (const { variable, coefficient } of terms) {
    if (coefficient.n === 0n) continue;
    if (coefficient.d !== under) {
      under = coefficient.d;
      by = scale / under;
    }
    take(variable, by === 1n ? coefficient.n : coefficient.n * by);
  }
}

/** Least common multiple, without a gcd where one divides the other, as powers of ten do. */
function multiple(a: bigint, b: bigint): bigint {
  return a === b || a % b === 0n ? a : b % a === 0n ? b : lcm(a, b);
}
