import { type Exact, fraction, greatest, isZero, least, ONE, over, plus, times } from "../number/exact.ts";
import { compareRatios, floor, lcm } from "../number/ratio.ts";
import type { DrawerMeasure } from "./kitchenCheck.ts";

/** One figure of one spoon or cup. */
export interface SpoonCount {
  readonly measure: DrawerMeasure;
  readonly figure: Exact;
  /** The volume, in steps of the grid. */
  readonly steps: bigint;
}

/** A way to measure a volume: nothing, one figure, or two of different measures, the larger first. */
export type Way = readonly SpoonCount[];

/** A volume that can be measured, and how. */
export interface Place {
  /** The volume, in steps of the grid. */
  readonly at: bigint;
  /** The least trouble first; later ways end in a larger figure. */
  readonly ways: readonly Way[];
}

/**
 * Everything that a drawer measures, on a grid of whole numbers: below one of the largest measure
 * every sum of at most two figures; above it whole ones and, on top, a part of one and at most one
 * figure more.
 */
export interface SpoonGrid {
  /** Steps of the grid in a millilitre. */
  readonly perMl: bigint;
  readonly largest: DrawerMeasure;
  /** One of the largest measure, in steps. */
  readonly turn: bigint;
  /** Sums below one of the largest measure, rising. */
  readonly below: readonly Place[];
  /** What can be put on top of whole ones of the largest, rising; the first is nothing. */
  readonly onTop: readonly Place[];
}

/**
 * The smaller of two figures is at least a fiftieth of the sum: a cup cannot be filled so level that
 * less would show (common practice, no source).
 */
const WORTH_A_SPOON = 50n;

/** A second figure costs the cook as much as two more scoops. */
const SECOND_FIGURE = 2;

/** Nobody counts on beyond these while a larger measure will do. */
const FEW_SCOOPS: Exact = /* @__PURE__ */ fraction(4n);

/** Nobody counts further than this in any case. */
const MOST_SCOOPS = 16n;

/** Lays out a drawer; nothing where it is empty. */
export function spoonGrid(drawer: readonly DrawerMeasure[]): SpoonGrid | undefined {
  const [largest] = drawer;
  if (!largest) return undefined;
  const perMl = drawer
    .flatMap(({ ml, parts }) => [ml, ...parts.map((part) => times(ml, part))])
    .reduce((all, { d }) => lcm(all, d), 1n);
  const turn = floor(times(largest.ml, fraction(perMl)));
  const single = drawer.map((measure, i) => termsOf(measure, drawer[i - 1], perMl));
  const below = new Places();
  const onTop = new Places();
  onTop.add([]);
  single.forEach((terms, i) => {
    const smaller = single.slice(i + 1).flat();
    for (const first of terms) {
      below.add([first]);
      onTop.add([first]);
      for (const second of smaller) {
        const at = first.steps + second.steps;
        if (at >= turn || !worthIt(second.steps, at)) continue;
        below.add([first, second]);
        if (i === 0) onTop.add([first, second]);
      }
    }
  });
  return { perMl, largest, turn, below: below.rising(), onTop: onTop.rising() };
}

/** Whether the last figure of a sum is worth taking out a spoon for. */
export function worthIt(last: bigint, whole: bigint): boolean {
  return last * WORTH_A_SPOON >= whole;
}

/** Figures of a measure, below one of the next larger, and few where that has parts to begin with. */
function termsOf(measure: DrawerMeasure, larger: DrawerMeasure | undefined, perMl: bigint): SpoonCount[] {
  const most = larger ? least(over(larger.ml, measure.ml), fewest(measure, larger)) : ONE;
  const scoops = floor(most) < MOST_SCOOPS ? floor(most) : MOST_SCOOPS;
  const wholes = Array.from({ length: Number(scoops) + 1 }, (_, i) => fraction(BigInt(i)));
  return wholes
    .flatMap((whole) => [whole, ...measure.parts.map((part) => plus(whole, part))])
    .filter((figure) => !isZero(figure) && compareRatios(figure, most) < 0)
    .map((figure) => ({ measure, figure, steps: floor(times(times(measure.ml, figure), fraction(perMl))) }));
}

/** Scoops up to the smallest thing that the larger measure can do, but never fewer than a few. */
function fewest(measure: DrawerMeasure, larger: DrawerMeasure): Exact {
  const smallest = times(larger.ml, larger.parts[0] ?? ONE);
  return greatest(over(smallest, measure.ml), FEW_SCOOPS);
}

/** Gathers the ways to each volume. */
class Places {
  readonly #ways = new Map<bigint, Way[]>();

  add(way: Way): void {
    const at = way.reduce((all, term) => all + term.steps, 0n);
    const known = this.#ways.get(at);
    if (known) known.push(way);
    else this.#ways.set(at, [way]);
  }

  rising(): readonly Place[] {
    return [...this.#ways]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([at, ways]) => ({ at, ways: useful(ways) }));
  }
}

/** The least troublesome way, and those that may be worth a spoon where it no longer is. */
function useful(ways: readonly Way[]): readonly Way[] {
  const [best, ...others] = [...ways].sort((a, b) => trouble(a) - trouble(b));
  const kept = best ? [best] : [];
  for (const way of others) if (lastSteps(way) > lastSteps(kept.at(-1))) kept.push(way);
  return kept;
}

function lastSteps(way: Way | undefined): bigint {
  return way?.at(-1)?.steps ?? 0n;
}

/** Scoops to take, a part of a measure counting as one. */
function trouble(way: Way): number {
  const scoops = way.reduce((all, { figure }) => all + Number(floor(figure)) + (figure.d === 1n ? 0 : 1), 0);
  return scoops + SECOND_FIGURE * Math.max(0, way.length - 1);
}
