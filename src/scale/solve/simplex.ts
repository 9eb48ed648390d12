import {
  basicValues,
  columnThroughBasis,
  pivot,
  reducedCost,
  restingValue,
  rowPrices,
  type WorkingBasis,
} from "./basis.ts";

/**
 * The primal simplex method with bounds kept as bounds, exact from the first pivot to the last.
 * The same walk serves both phases: to reach the rows and bounds it lessens the sum of what the
 * basic variables fall short by, afterwards the objective. It enters the variable of steepest
 * reduced cost; after a run of steps that gain nothing it takes the lowest index instead, entering
 * and leaving, until one does (Bland 1977, "New finite pivoting rules for the simplex method",
 * unverified), so it cannot cycle.
 */

/** How a walk ended; prices are {@link rowPrices} there. */
export type Walk =
  | {
      readonly end: "least";
      readonly prices: readonly bigint[];
      /** {@link reducedCost} of each variable off the basis that is not pinned, else 0. */
      readonly reduced: readonly bigint[];
    }
  | { readonly end: "stopped" }
  | { readonly end: "unbounded"; readonly entering: Entering; readonly through: readonly bigint[] };

/** Steps without gain before the walk turns cautious. */
const PATIENCE = 12;

/** Walks to a basis that meets every bound, or as near as the sum of shortfalls comes. */
export function meetBounds(b: WorkingBasis, limit: number): "met" | "short" | "stopped" {
  if (descend(b, undefined, limit).end === "stopped") return "stopped";
  return shortfallCosts(b, basicValues(b)) === undefined ? "met" : "short";
}

/** Walks from a basis that meets every bound to one whose objective is least. */
export function lessen(b: WorkingBasis, costs: readonly bigint[], limit: number): Walk {
  return descend(b, costs, limit);
}

/** Costs of −1 below the lower end and 1 above the upper, or nothing where every end is met. */
export function shortfallCosts(b: WorkingBasis, values: readonly bigint[]): bigint[] | undefined {
  let costs: bigint[] | undefined;
  for (let p = 0; p < b.basic.length; p += 1) {
    const side = beyond(b, p, values);
    if (side === 0n) continue;
    costs ??= new Array<bigint>(b.standing.length).fill(0n);
    costs[b.basic[p] as number] = side;
  }
  return costs;
}

function beyond(b: WorkingBasis, position: number, values: readonly bigint[]): -1n | 0n | 1n {
  const j = b.basic[position] as number;
  const value = values[position] as bigint;
  const lower = b.lower[j];
  const upper = b.upper[j];
  if (lower !== undefined && value < lower * b.determinant) return -1n;
  return upper !== undefined && value > upper * b.determinant ? 1n : 0n;
}

function descend(b: WorkingBasis, objective: readonly bigint[] | undefined, limit: number): Walk {
  let idle = 0;
  const reduced = new Array<bigint>(b.standing.length).fill(0n);
  for (;;) {
    const values = basicValues(b);
    const costs = objective ?? shortfallCosts(b, values);
    if (costs === undefined) return { end: "least", prices: [], reduced };
    const prices = rowPrices(b, costs);
    const entering = choose(b, prices, costs, reduced, idle > PATIENCE);
    if (entering === undefined) return { end: "least", prices, reduced };
    if (b.pivots >= limit) return { end: "stopped" };
    const through = columnThroughBasis(b, entering.variable);
    const block = firstBlock(b, values, through, entering, objective === undefined);
    if (block === undefined) return { end: "unbounded", entering, through };
    idle = block.far === 0n ? idle + 1 : 0;
    if (block.position === undefined) flip(b, entering.variable);
    else pivot(b, block.position, entering.variable, through, block.to);
  }
}

export interface Entering {
  readonly variable: number;
  readonly rising: boolean;
}

/** The variable off the basis that lessens the objective most per unit, else (cautious) the first that does. */
function choose(
  b: WorkingBasis,
  prices: readonly bigint[],
  costs: readonly bigint[],
  reduced: bigint[],
  cautious: boolean,
): Entering | undefined {
  let best: Entering | undefined;
  let steepest = 0n;
  for (let j = 0; j < b.standing.length; j += 1) {
    const standing = b.standing[j];
    const cost = standing === "basic" || isPinned(b, j) ? 0n : reducedCost(b, prices, costs, j);
    reduced[j] = cost;
    const rising = cost < 0n;
    if (cost === 0n || standing === (rising ? "upper" : "lower")) continue;
    const slope = rising ? -cost : cost;
    if (slope <= steepest) continue;
    best = { variable: j, rising };
    if (cautious) return best;
    steepest = slope;
  }
  return best;
}

/** Whether a variable has no room to move. */
export function isPinned(b: WorkingBasis, j: number): boolean {
  const lower = b.lower[j];
  return lower !== undefined && lower === b.upper[j];
}

interface Block {
  /** Distance to it, as `far / per`. */
  readonly far: bigint;
  readonly per: bigint;
  /** Which position leaves; none where the entering variable only crosses to its other bound. */
  readonly position?: number;
  readonly to: "lower" | "upper";
}

/** The first bound met as the entering variable moves; among equally near ones, the lowest variable's. */
function firstBlock(
  b: WorkingBasis,
  values: readonly bigint[],
  through: readonly bigint[],
  { variable, rising }: Entering,
  reaching: boolean,
): Block | undefined {
  const lower = b.lower[variable];
  const upper = b.upper[variable];
  let first: Block | undefined;
  if (lower !== undefined && upper !== undefined) {
    first = { far: upper - lower, per: 1n, to: rising ? "upper" : "lower" };
  }
  for (let p = 0; p < through.length; p += 1) {
    const rate = through[p] as bigint;
    if (rate === 0n) continue;
    const falls = rate > 0n === rising;
    const end = blockingEnd(b, p, values, falls, reaching);
    if (end === undefined) continue;
    const bound = b[end][b.basic[p] as number] as bigint;
    const gap = (values[p] as bigint) - bound * b.determinant;
    const block: Block = {
      far: gap < 0n ? -gap : gap,
      per: rate < 0n ? -rate : rate,
      position: p,
      to: end,
    };
    if (first === undefined || isNearer(b, block, first)) first = block;
  }
  return first;
}

/** The end at which a basic variable stops the walk: where it would leave its span, or enter it. */
function blockingEnd(
  b: WorkingBasis,
  position: number,
  values: readonly bigint[],
  falls: boolean,
  reaching: boolean,
): "lower" | "upper" | undefined {
  const j = b.basic[position] as number;
  const side = reaching ? beyond(b, position, values) : 0n;
  if (side === 1n) return falls ? "upper" : undefined;
  if (side === -1n) return falls ? undefined : "lower";
  const end = falls ? "lower" : "upper";
  return b[end][j] === undefined ? undefined : end;
}

function isNearer(b: WorkingBasis, block: Block, than: Block): boolean {
  const left = block.far * than.per;
  const right = than.far * block.per;
  if (left !== right) return left < right;
  if (than.position === undefined) return false;
  return (b.basic[block.position as number] as number) < (b.basic[than.position] as number);
}

function flip(b: WorkingBasis, j: number): void {
  b.standing[j] = b.standing[j] === "lower" ? "upper" : "lower";
  b.values = undefined;
  b.pivots += 1;
}

/** The value of every variable, times the determinant. */
export function allValues(b: WorkingBasis): bigint[] {
  const values = b.standing.map((s, j) => (s === "basic" ? 0n : restingValue(b, j) * b.determinant));
  const basics = basicValues(b);
  for (let p = 0; p < basics.length; p += 1) values[b.basic[p] as number] = basics[p] as bigint;
  return values;
}
