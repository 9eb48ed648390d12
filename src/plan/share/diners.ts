import { exactText } from "../../number/digits.ts";
import type { Exact } from "../../number/exact.ts";
import { groupBy } from "../../number/groupBy.ts";
import type { Answered, ServedPortion } from "../portion.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import type { Want } from "../read/readPerson.ts";
import { Need, type PotGroups, ratiosIn, type SettledNeed, wantText } from "./need.ts";
import { SharedCost } from "./sharing.ts";
import { FixedRegion, HeldRegion, type Region } from "./suitingRatios.ts";
import { portionAt } from "./tiedPortion.ts";

/** Someone who is served a portion of the meal, and what they asked of it. */
export interface Diner {
  readonly served: ServedPortion;
  readonly want: Want;
}

/** People who asked for the same and were found the same: whatever suits one of them suits all. */
export class Alike {
  readonly key: string;
  readonly diners: readonly Diner[];
  /** What they have now. */
  readonly ratios: readonly Exact[];
  readonly #need: Need | undefined;
  readonly #groups: PotGroups;
  readonly #regions = new Map<string, Region>();

  constructor(key: string, diners: readonly Diner[], at: Found) {
    this.key = key;
    this.diners = diners;
    this.ratios = at.ratios;
    this.#need = at.need;
    this.#groups = at.groups;
  }

  /** The ratios that suit them, where what is asked may be missed by a share of it. */
  region(tolerance: Exact): Region {
    const key = exactText(tolerance);
    const known = this.#regions.get(key) ?? this.#regionAt(tolerance);
    this.#regions.set(key, known);
    return known;
  }

  #regionAt(tolerance: Exact): Region {
    const need = this.#need;
    if (!need) return new FixedRegion(this.ratios);
    const held = { problem: need.problem, groups: need.groupsAt(this.#groups) };
    return new HeldRegion(held, tolerance, need.pivots);
  }

  /** Their portions from a pot of these ratios, none of which misses by more than `missed`. */
  served(ratios: readonly Exact[], missed: Exact, tolerance: Exact): readonly ServedPortion[] {
    const need = this.#need;
    if (!need) return this.diners.map(({ served }) => served);
    const held = { problem: need.problem, groups: need.groupsAt(this.#groups) };
    const point = portionAt(held, ratios, missed, need.pivots);
    const worst = need.worst(point);
    const shared = new SharedCost(tolerance, worst, () => need.outcomes(point));
    const answer: Omit<Answered, "fit"> = {
      status: worst.n === 0n ? "met" : "within-tolerance",
      factor: need.common(point),
      factors: need.factors(point),
      shared,
    };
    return this.diners.map(({ served }) => served.sharing({ ...answer, fit: served.fit }));
  }
}

interface Found {
  readonly ratios: readonly Exact[];
  readonly groups: PotGroups;
  /** Nothing where the portion is to stay as it is. */
  readonly need: Need | undefined;
}

/** Who is alike, in an order that does not hang on the people's; and those who have none of the first group. */
export function alikeOf(
  meal: ReadMeal,
  groups: PotGroups,
  settled: readonly PotGroups[],
  diners: readonly Diner[],
): { readonly all: readonly Alike[]; readonly apart: readonly Diner[] } {
  const byKey = groupBy(diners, (diner) => keyOf(diner, groups, settled));
  const apart = byKey.get(undefined) ?? [];
  const all = [...byKey].flatMap(([key, same]): Alike[] => {
    const [first] = same;
    const ratios = first && ratiosIn(first.served.factors(), groups);
    if (key === undefined || !first || !ratios) return [];
    const need = stays(first) ? undefined : needOf(meal, first, groups, settled);
    return [new Alike(key, same, { ratios, groups, need })];
  });
  return { all, apart };
}

/** A portion that cannot be had as it was asked stays as near as it is, and one that nobody eats is none. */
function stays({ served: { status }, want }: Diner): boolean {
  if (want.kind === "day") return true;
  return status === "out-of-reach" || status === "not-served" || status === "away";
}

/** Nothing where ratios to the first group cannot be told. */
function keyOf(
  { served, want }: Diner,
  groups: PotGroups,
  settled: readonly PotGroups[],
): string | undefined {
  const all = [groups, ...settled].map((each) => ratiosIn(served.factors(), each));
  const texts = all.map((ratios) => ratios?.map(exactText).join(" "));
  if (texts.includes(undefined)) return undefined;
  return [stays({ served, want }) ? "stays" : wantText(want), ...texts].join("\n");
}

function needOf(
  meal: ReadMeal,
  { served, want }: Diner,
  groups: PotGroups,
  settled: readonly PotGroups[],
): Need {
  const tied = settled.flatMap((each): SettledNeed[] => {
    const ratios = ratiosIn(served.factors(), each);
    return ratios ? [{ groups: each, ratios }] : [];
  });
  return new Need(meal, want, served.factor, groups, tied);
}
