import {
  type Exact,
  fraction,
  greatest,
  isZero,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../number/exact.ts";
import { ceiling, compareRatios, floor } from "../number/ratio.ts";
import { shareEnds } from "../plan/measure/limits.ts";
import { scaleFor, TOO_COARSE } from "../plan/measure/sharedPot.ts";
import { type ShareWish, weighShares } from "../plan/measure/weighShares.ts";
import type { LotOf, LotPortion } from "./lot.ts";
import type { LotAsked, MeasuredLot } from "./measuredLot.ts";

/** What everyone takes of a lot; together it is all of it. */
export interface SharedOut {
  readonly portions: ReadonlyMap<string, readonly LotPortion[]>;
  /** Why portions are not weighed; nothing where they are, or there is one alone. */
  readonly why: string | undefined;
}

/** One share for each portion, as large to each other as they were planned. */
export function byShares({ dish, counts }: LotOf, why: string | undefined): SharedOut {
  const own = sharesOf(dish, counts);
  const portion = (person: string, share: Exact): LotPortion => {
    return { count: counts.get(person) ?? 0n, share, weighed: undefined, isRest: false };
  };
  return { portions: new Map([...own].map(([person, share]) => [person, [portion(person, share)]])), why };
}

/** What one portion is of all. */
function sharesOf(dish: LotOf["dish"], counts: LotOf["counts"]): ReadonlyMap<string, Exact> {
  const eaters = dish.servings.filter(({ person }) => counts.has(person));
  const whole = sum(eaters.map(({ person, share }) => times(share, fraction(counts.get(person) ?? 0n))));
  return new Map(eaters.map(({ person, share }) => [person, over(share, whole)]));
}

/**
 * Shares a lot out in whole steps of the scale, each person's portions together as the plan shares a
 * pot. Then one by one, the best way first: all of someone's portions alike, and what is left with
 * somebody's last, where that is within the tolerance; or no two of them more than a step apart, the
 * first the larger, so that no more than a part of a step is left.
 */
export function byWeight(
  of: LotOf,
  { lot, totals }: MeasuredLot,
  { kitchen, figures, tolerance, tasters }: LotAsked,
): readonly SharedOut[] {
  const { dish, group, counts } = of;
  const mass = lot.sheet.masses.cooked;
  const portions = [...counts.values()].reduce((all, each) => all + each, 0n);
  const { step, read, why } = scaleFor(kitchen, dish.base(), group, { mass, portions: fraction(portions) });
  if (portions === 1n && !dish.base().origin.piece) return [byShares(of, undefined)];
  if (!step || !read) return [byShares(of, why)];
  const all = over(mass, step);
  const shares = sharesOf(dish, counts);
  const wishes = tasters.map(({ person, demands, factors }): ShareWish => {
    const ends = shareEnds(figures, demands, factors, { dish: dish.name, lines: group.pot, totals });
    const count = fraction(counts.get(person) ?? 0n);
    // Each of someone's portions is to be within the ends, and so a whole number of steps each.
    const steps = (end: Exact): Exact => over(times(end, count), all);
    return {
      person,
      share: times(shares.get(person) ?? ZERO, count),
      least: steps(ends.least ? greatest(ONE, fraction(ceiling(times(ends.least, all)))) : ONE),
      most: ends.most && steps(fraction(floor(times(ends.most, all)))),
    };
  });
  const found = weighShares(wishes, mass, step);
  if (found && !isZero(found.left)) return [byShares(of, NO_ROOM)];
  const bowls = found && bowlsOf(found, counts, shares, all);
  if (!bowls) return [byShares(of, TOO_COARSE)];
  const scale = { all, step, read };
  const ways = [alike(bowls, scale, tolerance), stepApart(bowls, scale)];
  return ways.flatMap((way) => (way ? [{ portions: way, why: undefined }] : []));
}

const NO_ROOM =
  "shares of the pot are not weighed: in the scale's steps, some of it would be more than anybody's limits allow";

interface Scale {
  /** The lot, in steps. */
  readonly all: Exact;
  readonly step: Exact;
  readonly read: (grams: Exact) => LotPortion["weighed"];
}

/** Someone's portions of a lot, in whole steps. */
interface Bowls {
  readonly person: string;
  readonly count: bigint;
  /** Of all of them together. */
  readonly steps: bigint;
  /** How much a portion is short of what it should have with each of them rounded down. */
  readonly short: Exact;
  /** Whether the last of them gets what is left. */
  readonly isLast: boolean;
}

/** Nothing where someone has fewer steps than portions. */
function bowlsOf(
  { shares, rest }: NonNullable<ReturnType<typeof weighShares>>,
  counts: LotOf["counts"],
  planned: ReadonlyMap<string, Exact>,
  all: Exact,
): readonly Bowls[] | undefined {
  const part = minus(all, fraction(floor(all)));
  // Largest first: where no part of a step is left, what else is goes to the largest share.
  const last = rest ?? [...shares.keys()][0];
  const bowls = [...shares].map(([person, share]): Bowls => {
    const count = counts.get(person) ?? 1n;
    const steps = floor(minus(times(share, all), person === rest ? part : ZERO));
    const short = minus(times(planned.get(person) ?? ZERO, all), fraction(steps / count));
    return { person, count, steps, short, isLast: person === last };
  });
  return bowls.every(({ steps, count }) => steps >= count) ? bowls : undefined;
}

/** All of someone's portions alike; nothing where too much is left. */
function alike(bowls: readonly Bowls[], scale: Scale, tolerance: Exact): SharedOut["portions"] | undefined {
  let left = bowls.reduce((total, { steps, count }) => total + (steps % count), 0n);
  const more = new Set<string>();
  for (const { person, count, short } of [...bowls].sort((a, b) => compareRatios(b.short, a.short))) {
    if (count > left || short.n <= 0n) continue;
    left -= count;
    more.add(person);
  }
  const rest = plus(fraction(left), minus(scale.all, fraction(floor(scale.all))));
  const sized = bowls.map((each) => ({
    ...each,
    each: each.steps / each.count + (more.has(each.person) ? 1n : 0n),
  }));
  const last = sized.find(({ isLast }) => isLast);
  if (!last || compareRatios(rest, times(tolerance, fraction(last.each))) > 0) return undefined;
  return new Map(
    sized.map(({ person, count, each, isLast }) => {
      const hasRest = isLast && rest.n > 0n;
      return [
        person,
        [
          ...portionOf(count - (hasRest ? 1n : 0n), fraction(each), false, scale),
          ...(hasRest ? portionOf(1n, plus(fraction(each), rest), true, scale) : []),
        ],
      ];
    }),
  );
}

/** Someone's portions no more than a step apart, but for the part of a step that is left. */
function stepApart(bowls: readonly Bowls[], scale: Scale): SharedOut["portions"] {
  const rest = minus(scale.all, fraction(floor(scale.all)));
  return new Map(
    bowls.map(({ person, count, steps, isLast }) => {
      const [each, more] = [steps / count, steps % count];
      const last = isLast && rest.n > 0n ? 1n : 0n;
      return [
        person,
        [
          ...portionOf(more, fraction(each + 1n), false, scale),
          ...portionOf(count - more - last, fraction(each), false, scale),
          ...portionOf(last, plus(fraction(each), rest), true, scale),
        ],
      ];
    }),
  );
}

function portionOf(
  count: bigint,
  steps: Exact,
  isRest: boolean,
  { all, step, read }: Scale,
): readonly LotPortion[] {
  if (count === 0n) return [];
  const weighed = isRest ? undefined : read(times(steps, step));
  return [{ count, share: over(steps, all), weighed, isRest }];
}

/** A portion's factors, with a share of a lot in the pot's lines. */
export function withShare(
  factors: readonly Exact[],
  pot: readonly number[],
  totals: readonly Exact[],
  share: Exact,
): readonly Exact[] {
  const inPot = new Set(pot);
  return factors.map((factor, line) => (inPot.has(line) ? times(totals[line] ?? ZERO, share) : factor));
}

/** One portion of someone, on the mean of those that they take. */
export function meanShare(portions: readonly LotPortion[]): Exact {
  const count = portions.reduce((all, each) => all + each.count, 0n);
  return over(sum(portions.map((each) => times(each.share, fraction(each.count)))), fraction(count));
}
