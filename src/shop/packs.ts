import { type Exact, fraction, ONE, times, ZERO } from "../number/exact.ts";
import { gcd } from "../number/gcd.ts";
import { ceiling, compareRatios, lcm } from "../number/ratio.ts";

/** A pack as it is sold, in exact grams of what of it is used. */
export interface PackSize {
  readonly name: string;
  readonly edible: Exact;
  readonly price: Exact | undefined;
}

/** How many of each pack to buy. */
export interface PackChoice {
  /** In the order that the packs were given in. */
  readonly counts: readonly bigint[];
  /** Whether no other choice is better; not known where there were too many to look through. */
  readonly proven: boolean;
}

/** A pack in whole units: of mass, the largest that all packs are multiples of; of money likewise. */
interface Item {
  readonly index: number;
  readonly name: string;
  readonly size: bigint;
  readonly cost: bigint;
}

/** Packs taken together, as the last of them and those before. */
interface Sum {
  readonly size: bigint;
  readonly cost: bigint;
  readonly count: number;
  readonly last: Item | undefined;
  readonly before: Sum | undefined;
}

/** The most different sums of packs that are looked through: some tenths of a second. */
const MOST_SUMS = 50_000;

/**
 * Whole packs that cover a need: at the least cost where every pack has a price, else with the least
 * left over; among equals the least left over, then the fewest packs. No pack can be spared.
 *
 * Method: the pack that is cheapest by mass (the largest, among equals) is the bulk. Of any `b` other
 * packs, `b` being the bulk's size in whole units, some have a total that the bulk divides, since two
 * of their `b + 1` running totals leave the same remainder; bulk in their stead weighs the same and
 * costs no more. So a best choice has fewer than `b` others, which bounds what is not bulk. The rest is
 * found by dynamic programming over the sums of packs below the need, each kept at its least cost.
 * Where that takes more than 50,000 sums, more is filled with bulk, and the choice is not proven.
 */
export function choosePacks(need: Exact, packs: readonly PackSize[]): PackChoice {
  const none = packs.map(() => 0n);
  const items = inUnits(packs);
  const [first] = items.list;
  if (need.n <= 0n || !first) return { counts: none, proven: true };
  const wanted = ceiling(times(need, items.unitsPerGram));
  // The largest come first, and so stay among equals.
  const bulk = items.list.reduce((best, each) => (isCheaperByMass(each, best) ? each : best), first);
  const enough = (bulk.size - 1n) * first.size;
  // There are at least as many sums below a reach as the smallest pack goes into it.
  const manageable = BigInt(MOST_SUMS) * (items.list.at(-1) ?? first).size;
  for (let reach = enough < manageable ? enough : manageable; ; reach /= 2n) {
    const taken = wanted > reach ? ceiling(fraction(wanted - reach, bulk.size)) : 0n;
    const rest = cheapestCover(wanted - taken * bulk.size, items.list);
    if (rest)
      return { counts: countsOf(rest, none, bulk.index, taken), proven: taken === 0n || reach === enough };
  }
}

/** Largest first, so that the answer does not depend on the order in which packs are given. */
function inUnits(packs: readonly PackSize[]): { list: readonly Item[]; unitsPerGram: Exact } {
  const priced = packs.every(({ price }) => price !== undefined);
  const sizes = overOne(packs.map(({ edible }) => edible));
  const costs = overOne(packs.map(({ price }) => (priced && price ? price : ZERO)));
  const unit = sizes.whole.reduce((a, b) => gcd(a, b), 0n);
  const list = packs.map(({ name }, index) => ({
    index,
    name,
    size: (sizes.whole[index] ?? 0n) / unit,
    cost: costs.whole[index] ?? 0n,
  }));
  list.sort((a, b) => order(b.size, a.size) || order(a.cost, b.cost) || order(a.name, b.name));
  return { list, unitsPerGram: unit === 0n ? ONE : fraction(sizes.denominator, unit) };
}

function overOne(all: readonly Exact[]): { whole: readonly bigint[]; denominator: bigint } {
  const denominator = all.reduce((d, each) => lcm(d, each.d), 1n);
  return { whole: all.map(({ n, d }) => n * (denominator / d)), denominator };
}

function order<T extends bigint | string | number>(a: T, b: T): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function isCheaperByMass(a: Item, b: Item): boolean {
  return compareRatios({ n: a.cost, d: a.size }, { n: b.cost, d: b.size }) < 0;
}

const NOTHING: Sum = { size: 0n, cost: 0n, count: 0, last: undefined, before: undefined };

/** The best packs that make up `wanted` units or more; nothing where there are too many sums to look through. */
function cheapestCover(wanted: bigint, items: readonly Item[]): Sum | undefined {
  if (wanted <= 0n) return NOTHING;
  let sums: readonly Sum[] = [NOTHING];
  let best: Sum | undefined;
  for (const item of items) {
    const grown = withItem(sums, item, wanted);
    if (!grown) return undefined;
    sums = grown.below;
    if (grown.best && (!best || isBetter(grown.best, best))) best = grown.best;
  }
  return best;
}

/** Sums below `wanted` with any number of a pack added, rising, and the best sum that one more takes to it. */
function withItem(
  sums: readonly Sum[],
  item: Item,
  wanted: bigint,
): { below: readonly Sum[]; best: Sum | undefined } | undefined {
  const below: Sum[] = [];
  let best: Sum | undefined;
  let [old, from] = [0, 0];
  while (old < sums.length || from < below.length) {
    const one = sums[old];
    const base = below[from];
    const more = base && plusItem(base, item);
    if (more && more.size >= wanted) {
      if (!best || isBetter(more, best)) best = more;
      from += 1;
      continue;
    }
    const first =
      !more || (one && (one.size < more.size || (one.size === more.size && !isBetter(more, one))))
        ? one
        : more;
    if (!first) break;
    if (one?.size === first.size) old += 1;
    if (more?.size === first.size) from += 1;
    below.push(first);
    if (below.length > MOST_SUMS) return undefined;
  }
  return { below, best };
}

function plusItem(sum: Sum, item: Item): Sum {
  return {
    size: sum.size + item.size,
    cost: sum.cost + item.cost,
    count: sum.count + 1,
    last: item,
    before: sum,
  };
}

function isBetter(a: Sum, b: Sum): boolean {
  return (order(a.cost, b.cost) || order(a.size, b.size) || order(a.count, b.count)) < 0;
}

function countsOf(sum: Sum, none: readonly bigint[], bulk: number, taken: bigint): readonly bigint[] {
  const counts = [...none];
  counts[bulk] = taken;
  for (let at: Sum | undefined = sum; at?.last; at = at.before)
    counts[at.last.index] = (counts[at.last.index] ?? 0n) + 1n;
  return counts;
}
