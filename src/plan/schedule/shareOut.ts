import {
  ceiling,
  type Fraction,
  floor,
  fraction,
  greatest,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../number/fraction.ts";
import { shareEnds } from "../kitchen/limits.ts";
import type { Taster } from "../kitchen/pots.ts";
import { type PotAsked, readOn, scaleFor, TOO_COARSE } from "../kitchen/sharedPot.ts";
import { type ShareWish, weighShares } from "../kitchen/shares.ts";
import type { LotOf, LotPortion } from "./lot.ts";
import type { MeasuredLot } from "./measuredLot.ts";

/** What everyone takes of a lot; together it is all of it. */
export interface SharedOut {
  readonly portions: ReadonlyMap<string, readonly LotPortion[]>;
  /** Why portions are not weighed; nothing where they are, or there is one alone. */
  readonly why: string | undefined;
}

/** One share for each portion, as large to each other as they were planned. */
export function byShares({ dish, counts }: LotOf, why: string | undefined): SharedOut {
  const own = sharesOf(dish, counts);
  const portion = (person: string, share: Fraction): LotPortion => {
    return { count: counts.get(person) ?? 0n, share, weighed: undefined, isRest: false };
  };
  return { portions: new Map([...own].map(([person, share]) => [person, [portion(person, share)]])), why };
}

/** What one portion is of all. */
function sharesOf(dish: LotOf["dish"], counts: LotOf["counts"]): ReadonlyMap<string, Fraction> {
  const eaters = dish.servings.filter(({ person }) => counts.has(person));
  const whole = sum(
    eaters.map(({ person, exactShare }) => times(exactShare, fraction(counts.get(person) ?? 0n))),
  );
  return new Map(eaters.map(({ person, exactShare }) => [person, over(exactShare, whole)]));
}

/**
 * Shares a lot out in whole steps of the scale: each person's portions together as the plan shares a
 * pot, then one by one, so that no two of them are more than a step apart; the first are the larger.
 * What is left of the last step goes to somebody's last portion.
 */
export function byWeight(
  of: LotOf,
  { lot, totals }: MeasuredLot,
  { kitchen, figures }: PotAsked,
  tasters: readonly Taster[],
): SharedOut {
  const { dish, group, counts } = of;
  const { step, why } = scaleFor(kitchen, dish.base, group);
  const portions = [...counts.values()].reduce((all, each) => all + each, 0n);
  if (portions === 1n) return byShares(of, undefined);
  if (!step) return byShares(of, why);
  const mass = lot.sheet.masses.cooked;
  const all = over(mass, step);
  const shares = sharesOf(dish, counts);
  const wishes = tasters.map(({ person, demands, factors }): ShareWish => {
    const ends = shareEnds(figures, demands, factors, { dish: dish.name, lines: group.pot, totals });
    const count = fraction(counts.get(person) ?? 0n);
    // Each of someone's portions is to be within the ends, and so a whole number of steps each.
    const steps = (end: Fraction): Fraction => over(times(end, count), all);
    return {
      person,
      share: times(shares.get(person) ?? ZERO, count),
      least: steps(ends.least ? greatest(ONE, fraction(ceiling(times(ends.least, all)))) : ONE),
      most: ends.most && steps(fraction(floor(times(ends.most, all)))),
    };
  });
  const found = weighShares(wishes, mass, step);
  const weighed = found && portionsIn(found, { counts, all, kitchen, step });
  return weighed ? { portions: weighed, why: undefined } : byShares(of, TOO_COARSE);
}

interface Scale {
  readonly counts: LotOf["counts"];
  /** The lot, in steps. */
  readonly all: Fraction;
  readonly step: Fraction;
  readonly kitchen: PotAsked["kitchen"];
}

/** Nothing where someone has fewer steps than portions. */
function portionsIn(
  { shares, rest }: NonNullable<ReturnType<typeof weighShares>>,
  { counts, all, step, kitchen }: Scale,
): SharedOut["portions"] | undefined {
  const left = minus(all, fraction(floor(all)));
  const portions = new Map<string, readonly LotPortion[]>();
  for (const [person, share] of shares) {
    const count = counts.get(person) ?? 0n;
    const last = person === rest ? 1n : 0n;
    const own = minus(times(share, all), last === 1n ? left : ZERO);
    const steps = floor(own);
    const [each, more] = [steps / count, steps % count];
    if (each === 0n) return undefined;
    const portion = (many: bigint, of: Fraction, isRest: boolean): LotPortion[] => {
      const weighed = isRest ? undefined : readOn(kitchen, times(of, step));
      return many === 0n ? [] : [{ count: many, share: over(of, all), weighed, isRest }];
    };
    portions.set(person, [
      ...portion(more, fraction(each + 1n), false),
      ...portion(count - more - last, fraction(each), false),
      ...portion(last, plus(fraction(each), left), true),
    ]);
  }
  return portions;
}

/** A portion's factors, with a share of a lot in the pot's lines. */
export function withShare(
  factors: readonly Fraction[],
  pot: readonly number[],
  totals: readonly Fraction[],
  share: Fraction,
): readonly Fraction[] {
  const inPot = new Set(pot);
  return factors.map((factor, line) => (inPot.has(line) ? times(totals[line] ?? ZERO, share) : factor));
}

/** One portion of someone, on the mean of those that they take. */
export function meanShare(portions: readonly LotPortion[]): Fraction {
  const count = portions.reduce((all, each) => all + each.count, 0n);
  return over(sum(portions.map((each) => times(each.share, fraction(each.count)))), fraction(count));
}
