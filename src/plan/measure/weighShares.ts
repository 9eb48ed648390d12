import { type Exact, fraction, minus, over, plus, times, ZERO } from "../../number/exact.ts";
import { ceiling, compareRatios, floor } from "../../number/ratio.ts";
import { compareText } from "../../number/text.ts";
import { whoGetsTheRemainder } from "./remainder.ts";

/** What someone should get of a pot, and within which ends their firm demands leave it. */
export interface ShareWish {
  readonly person: string;
  readonly share: Exact;
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
}

export interface WeighedShares {
  /** Of the pot; together with what is left 1. */
  readonly shares: ReadonlyMap<string, Exact>;
  /** What stays in the pot, of it, since nobody's firm demands leave room for it; mostly 0. */
  readonly left: Exact;
  /** Who gets what is left over, where it is no whole number of steps. */
  readonly rest: string | undefined;
}

interface Bowl {
  readonly person: string;
  /** In steps of the scale. */
  readonly exact: Exact;
  readonly low: bigint;
  readonly high: bigint | undefined;
  /** The end that `high` is the last whole step below, in steps. */
  readonly most: Exact | undefined;
  steps: bigint;
  /** What is still missing of `exact`. */
  short: Exact;
}

/**
 * Shares a pot out in whole steps of a scale: each gets the whole part of their share, kept within
 * what their firm demands allow, and steps that are left go one each to the largest remainders. What
 * is left of the last step is the {@link whoGetsTheRemainder | remainder}; what nobody may take stays in the pot. Among equals the first by name, so that the
 * order of people does not matter.
 *
 * Nothing where the pot has fewer steps than people.
 *
 * Method: largest remainder (Hamilton's method of apportionment), with ends for each share.
 */
export function weighShares(
  wishes: readonly ShareWish[],
  mass: Exact,
  step: Exact,
): WeighedShares | undefined {
  const all = over(mass, step);
  const whole = floor(all);
  if (whole < BigInt(wishes.length)) return undefined;
  const bowls = wishes.map((wish) => bowlOf(wish, all)).sort(largestFirst);
  let left = whole - bowls.reduce((total, { steps }) => total + steps, 0n);
  const by = left > 0n ? 1n : -1n;
  for (; left !== 0n; left -= by) {
    const bowl = nextFor(bowls, by);
    if (!bowl) break;
    bowl.steps += by;
    bowl.short = minus(bowl.short, fraction(by));
  }
  const over1 = minus(all, fraction(whole));
  const rest = over1.n === 0n ? undefined : whoGetsTheRemainder(bowls, (bowl) => takesPart(bowl, over1));
  const stays = plus(fraction(left), rest ? ZERO : over1);
  const stepsOf = (bowl: Bowl): Exact => {
    const own = fraction(bowl.steps);
    return bowl === rest ? plus(own, over1) : own;
  };
  return {
    shares: new Map(bowls.map((bowl) => [bowl.person, over(stepsOf(bowl), all)])),
    rest: rest?.person,
    left: over(stays, all),
  };
}

function bowlOf({ person, share, least, most }: ShareWish, all: Exact): Bowl {
  const exact = times(share, all);
  const low = atLeastOne(least ? ceiling(times(least, all)) : 1n);
  const high = most && atLeastOne(floor(times(most, all)));
  // Where the ends leave no whole step between them the lower wins: there is nothing right to take.
  let steps = within(atLeastOne(floor(exact)), high);
  if (steps < low) steps = low;
  const end = most && times(most, all);
  return { person, exact, low, high, most: end, steps, short: minus(exact, fraction(steps)) };
}

function within(steps: bigint, high: bigint | undefined): bigint {
  return high === undefined || steps <= high ? steps : high;
}

function atLeastOne(steps: bigint): bigint {
  return steps > 0n ? steps : 1n;
}

function largestFirst(a: Bowl, b: Bowl): number {
  return compareRatios(b.exact, a.exact) || compareText(a.person, b.person);
}

function takes({ steps, low, high }: Bowl, by: bigint): boolean {
  return by > 0n ? high === undefined || steps < high : steps > low;
}

function takesPart({ steps, most }: Bowl, part: Exact): boolean {
  return most === undefined || compareRatios(plus(fraction(steps), part), most) <= 0;
}

/** Who is furthest from their share on the side of `by` and may move there; else, where there is too little, the largest. */
function nextFor(bowls: readonly Bowl[], by: bigint): Bowl | undefined {
  const side = Number(by);
  let best: Bowl | undefined;
  for (const bowl of bowls) {
    if (takes(bowl, by) && (!best || compareRatios(bowl.short, best.short) * side > 0)) best = bowl;
  }
  return best ?? (by > 0n ? undefined : bowls.find(({ steps }) => steps + by > 0n));
}
