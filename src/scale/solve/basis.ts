import type { Standing } from "./programme.ts";
import type { WholeColumn, WholeProgramme } from "./whole.ts";

/**
 * A basis of a whole-number programme and its inverse, fraction-free: `inverse / determinant` is
 * the inverse of the basic columns, `inverse` is whole and `determinant` above 0. A pivot keeps
 * both whole, since each division below comes out even (Edmonds 1967; Bareiss 1968, "Sylvester's
 * identity and multistep integer-preserving Gaussian elimination"; both unverified).
 */
export interface WorkingBasis {
  readonly whole: WholeProgramme;
  /** Where each of the `n + m` variables stands. */
  readonly standing: Standing[];
  /** The variable that is basic at each of the `m` positions. */
  readonly basic: number[];
  /** Ends pinned on the way, over the programme's own. */
  readonly lower: (bigint | undefined)[];
  readonly upper: (bigint | undefined)[];
  readonly inverse: bigint[][];
  determinant: bigint;
  /** What {@link basicValues} last found, until something moves. */
  values?: readonly bigint[] | undefined;
  pivots: number;
}

/** The basis of row totals, every variable at the end nearer to zero. */
export function startingBasis(whole: WholeProgramme): WorkingBasis {
  const { n, m } = whole;
  const standing: Standing[] = [];
  for (let j = 0; j < n; j += 1) standing.push(restingPlace(whole.lower[j], whole.upper[j]));
  for (let i = 0; i < m; i += 1) standing.push("basic");
  const basic = Array.from({ length: m }, (_, i) => n + i);
  const inverse = basic.map((_, i) => basic.map((_, k) => (k === i ? -1n : 0n)));
  const [lower, upper] = [[...whole.lower], [...whole.upper]];
  return { whole, standing, basic, lower, upper, inverse, determinant: 1n, pivots: 0 };
}

function restingPlace(lower: bigint | undefined, upper: bigint | undefined): Standing {
  if (lower === undefined) return upper === undefined ? "free" : "upper";
  if (upper === undefined) return "lower";
  return (lower < 0n ? -lower : lower) <= (upper < 0n ? -upper : upper) ? "lower" : "upper";
}

/** The value of a variable off the basis. */
export function restingValue(b: WorkingBasis, j: number): bigint {
  const standing = b.standing[j];
  return (standing === "lower" ? b.lower[j] : standing === "upper" ? b.upper[j] : 0n) ?? 0n;
}

/** `determinant × (basis inverse) × column j`, by position. */
export function columnThroughBasis(b: WorkingBasis, j: number): bigint[] {
  const { n, columns } = b.whole;
  if (j >= n) return b.inverse.map((row) => -(row[j - n] as bigint));
  return b.inverse.map((row) => entryOf(row, columns[j] as WholeColumn));
}

function entryOf(row: readonly bigint[], { rows, values }: WholeColumn): bigint {
  let total = 0n;
  for (let k = 0; k < rows.length; k += 1) {
    const entry = row[rows[k] as number] as bigint;
    if (entry !== 0n) total += entry * (values[k] as bigint);
  }
  return total;
}

/** `determinant × value` of the basic variables, by position. */
export function basicValues(b: WorkingBasis): readonly bigint[] {
  b.values ??= findValues(b);
  return b.values;
}

function findValues(b: WorkingBasis): bigint[] {
  const { n, m, columns } = b.whole;
  const moved = new Array<bigint>(m).fill(0n);
  for (let j = 0; j < n; j += 1) {
    if (b.standing[j] === "basic") continue;
    const at = restingValue(b, j);
    if (at === 0n) continue;
    const { rows, values } = columns[j] as WholeColumn;
    for (let k = 0; k < rows.length; k += 1) {
      const i = rows[k] as number;
      moved[i] = (moved[i] as bigint) - (values[k] as bigint) * at;
    }
  }
  for (let i = 0; i < m; i += 1) {
    if (b.standing[n + i] !== "basic") moved[i] = (moved[i] as bigint) + restingValue(b, n + i);
  }
  return b.inverse.map((row) => {
    let total = 0n;
    for (let i = 0; i < m; i += 1) {
      if (moved[i] !== 0n && row[i] !== 0n) total += (row[i] as bigint) * (moved[i] as bigint);
    }
    return total;
  });
}

/** `determinant × (costs of the basic variables) × (basis inverse)`, by row: the rows' prices. */
export function rowPrices(b: WorkingBasis, costs: readonly bigint[]): bigint[] {
  const prices = new Array<bigint>(b.whole.m).fill(0n);
  for (let p = 0; p < b.basic.length; p += 1) {
    const cost = costs[b.basic[p] as number] as bigint;
    if (cost === 0n) continue;
    const row = b.inverse[p] as bigint[];
    for (let i = 0; i < row.length; i += 1) {
      if (row[i] !== 0n) prices[i] = (prices[i] as bigint) + cost * (row[i] as bigint);
    }
  }
  return prices;
}

/** `determinant × reduced cost` of variable j. */
export function reducedCost(
  b: Pick<WorkingBasis, "whole" | "determinant">,
  prices: readonly bigint[],
  costs: readonly bigint[],
  j: number,
): bigint {
  const { n, columns } = b.whole;
  let total = b.determinant * (costs[j] as bigint);
  if (j >= n) return total + (prices[j - n] as bigint);
  const { rows, values } = columns[j] as WholeColumn;
  for (let k = 0; k < rows.length; k += 1)
    total -= (prices[rows[k] as number] as bigint) * (values[k] as bigint);
  return total;
}

/** Puts variable `entering` in at a position; what stood there rests at `leavingTo`. */
export function pivot(
  b: WorkingBasis,
  position: number,
  entering: number,
  through: readonly bigint[],
  leavingTo: Standing,
): void {
  pivotAmong(b, b.inverse.keys(), position, entering, through, leavingTo);
}

/** A pivot that leaves the inverse's rows at all other positions as they were. */
function pivotAmong(
  b: WorkingBasis,
  positions: Iterable<number>,
  position: number,
  entering: number,
  through: readonly bigint[],
  leavingTo: Standing,
): void {
  const at = through[position] as bigint;
  const size = at < 0n ? -at : at;
  const row = b.inverse[position] as bigint[];
  for (const p of positions) {
    if (p === position) continue;
    const factor = at < 0n ? -(through[p] as bigint) : (through[p] as bigint);
    eliminate(b.inverse[p] as bigint[], row, size, factor, b.determinant);
  }
  if (at < 0n) b.inverse[position] = row.map((v) => -v);
  b.determinant = size;
  b.values = undefined;
  b.standing[b.basic[position] as number] = leavingTo;
  b.standing[entering] = "basic";
  b.basic[position] = entering;
  b.pivots += 1;
}

/** Makes `other` `(size × other − factor × row) ÷ old`; most entries are 0 while few columns are in. */
function eliminate(other: bigint[], row: readonly bigint[], size: bigint, factor: bigint, old: bigint): void {
  const isKept = size === old;
  if (factor === 0n && isKept) return;
  for (let i = 0; i < other.length; i += 1) {
    const own = other[i] as bigint;
    const by = row[i] as bigint;
    if (factor !== 0n && by !== 0n) other[i] = (size * own - factor * by) / old;
    else if (own !== 0n && !isKept) other[i] = (size * own) / old;
  }
}

/**
 * Takes up a proposed basis by pivots from the one of row totals, as far as the limit goes. A column
 * that turns out to depend on those before it is left off, its row's total staying in.
 *
 * Only rows whose totals are to leave take part in the pivots; what the others come to in the
 * inverse follows from those, all at once.
 */
export function takeUp(b: WorkingBasis, proposed: readonly Standing[], limit: number): void {
  const { n, m, columns } = b.whole;
  for (let j = 0; j < n; j += 1) {
    const standing = proposed[j] as Standing;
    if (standing !== "basic") b.standing[j] = standing;
  }
  b.values = undefined;
  const leaving: number[] = [];
  for (let i = m - 1; i >= 0; i -= 1) if (proposed[n + i] !== "basic") leaving.push(i);
  const through = new Array<bigint>(m).fill(0n);
  for (let j = 0; j < n; j += 1) {
    if (proposed[j] !== "basic" || b.pivots >= limit) continue;
    for (const p of leaving) through[p] = entryOf(b.inverse[p] as bigint[], columns[j] as WholeColumn);
    const position = leaving.find((p) => (b.basic[p] as number) >= n && through[p] !== 0n);
    if (position === undefined) continue;
    pivotAmong(b, leaving, position, j, through, proposed[n + position] as Standing);
  }
  followUp(b, leaving);
}

/** Rows of the inverse whose own totals are basic: what the basic columns bring to them, less the total. */
function followUp(b: WorkingBasis, leaving: readonly number[]): void {
  const { n, m, columns } = b.whole;
  for (let i = 0; i < m; i += 1) {
    if (leaving.includes(i)) continue;
    b.inverse[i] = new Array<bigint>(m).fill(0n);
    (b.inverse[i] as bigint[])[i] = -b.determinant;
  }
  for (const p of leaving) {
    const j = b.basic[p] as number;
    if (j >= n) continue;
    const { rows, values } = columns[j] as WholeColumn;
    const from = b.inverse[p] as bigint[];
    for (let k = 0; k < rows.length; k += 1) {
      const i = rows[k] as number;
      if (leaving.includes(i)) continue;
      const to = b.inverse[i] as bigint[];
      const value = values[k] as bigint;
      for (const c of leaving) if (from[c] !== 0n) to[c] = (to[c] as bigint) + value * (from[c] as bigint);
    }
  }
}
