import { type Exact, fraction, isZero, plus, times, ZERO } from "../number/exact.ts";
import { floor } from "../number/ratio.ts";
import { type Amount, simple, sumOfAmounts } from "./amount.ts";
import type { ReadyKitchen } from "./kitchenCheck.ts";
import { type Place, type SpoonGrid, spoonGrid, type Way, worthIt } from "./spoons.ts";

const grids: WeakMap<ReadyKitchen, { readonly grid: SpoonGrid | undefined }> = /* @__PURE__ */ new WeakMap();

/** The grid of a kitchen's drawer, laid out once. */
export function gridOf(ready: ReadyKitchen): SpoonGrid | undefined {
  const known = grids.get(ready);
  if (known) return known.grid;
  const grid = spoonGrid(ready.drawer);
  grids.set(ready, { grid });
  return grid;
}

/** The sums of spoons and cups nearest to a volume, rising: `each` below, itself, `each` above. */
export function nearestSums(
  ready: ReadyKitchen,
  grid: SpoonGrid,
  ml: Exact,
  each: number,
): { amount: Amount; value: Exact }[] {
  const wanted = times(ml, fraction(grid.perMl));
  const at = floor(wanted);
  const onGrid = wanted.d === 1n;
  const below = isZero(ml) ? [] : walk(grid, onGrid ? at - 1n : at, -1, each);
  const above = isZero(ml) ? [] : walk(grid, at + 1n, 1, each);
  const same = onGrid ? walk(grid, at, 1, 1).filter((spot) => total(grid, spot) === at) : [];
  const nothing: Spot[] = isZero(ml) ? [{ turns: 0n, at: 0n, way: [] }] : [];
  return [...below.reverse(), ...nothing, ...same, ...above].map((spot) => ({
    amount: asAmount(ready, grid, spot),
    value: fraction(total(grid, spot), grid.perMl),
  }));
}

/** A volume: whole turns of the largest measure, and what goes on top. */
interface Spot {
  readonly turns: bigint;
  readonly at: bigint;
  readonly way: Way;
}

function total(grid: SpoonGrid, { turns, at }: Spot): bigint {
  return turns * grid.turn + at;
}

/** What can be measured from a place on, that place included, nearest first; downwards by -1. */
function walk(grid: SpoonGrid, from: bigint, by: 1 | -1, count: number): Spot[] {
  const found: Spot[] = [];
  let turns = from / grid.turn;
  let row = rowOf(grid, turns);
  let i = firstIndex(row, from - turns * grid.turn, by);
  while (found.length < count) {
    const place = row[i];
    if (place === undefined) {
      turns += BigInt(by);
      if (turns < 0n) break;
      row = rowOf(grid, turns);
      i = by === 1 ? 0 : row.length - 1;
      continue;
    }
    const { at } = place;
    const way = place.ways.find((each) => isWorthIt(grid, { turns, at, way: each }));
    if (way) found.push({ turns, at, way });
    i += by;
  }
  return found;
}

function rowOf(grid: SpoonGrid, turns: bigint): readonly Place[] {
  return turns === 0n ? grid.below : grid.onTop;
}

/** Below one of the largest measure every way on the grid is worth it already. */
function isWorthIt(grid: SpoonGrid, spot: Spot): boolean {
  const last = spot.way.at(-1);
  if (spot.turns === 0n || !last || last.measure === grid.largest) return true;
  return worthIt(last.steps, total(grid, spot));
}

/** By halving: the first sum at or above a place, or by -1 the last at or below it. */
function firstIndex(row: readonly Place[], at: bigint, by: 1 | -1): number {
  let low = 0;
  let high = row.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((row[middle]?.at ?? 0n) < at) low = middle + 1;
    else high = middle;
  }
  return by === 1 || row[low]?.at === at ? low : low - 1;
}

function asAmount(ready: ReadyKitchen, grid: SpoonGrid, { turns, way }: Spot): Amount {
  const { largest } = grid;
  const [first, ...others] = way;
  const onLargest = first?.measure === largest;
  const whole = plus(fraction(turns), onLargest ? first.figure : ZERO);
  const rest = onLargest ? others : way;
  const terms = isZero(whole) && rest.length > 0 ? rest : [{ measure: largest, figure: whole }, ...rest];
  const parts = terms.flatMap(({ measure, figure }) => {
    const unit = ready.set.units.get(measure.unit);
    return unit ? [simple({ value: figure, unit })] : [];
  });
  return sumOfAmounts(parts);
}
