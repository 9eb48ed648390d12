import { exactText } from "../../number/digits.ts";
import { type Exact, equals } from "../../number/exact.ts";
import { groupBy } from "../../number/groupBy.ts";
import { compareText } from "../../number/text.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { ServedPortion } from "../portion.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import type { ReadPlan } from "../read/readPlan.ts";
import type { ReadPots } from "../read/readPots.ts";
import { commonRatios, leastMissed } from "./commonRatios.ts";
import { type Alike, alikeOf, type Diner } from "./diners.ts";
import { fewest } from "./fewest.ts";
import { type PotGroups, ratiosIn } from "./need.ts";
import type { DishSharing } from "./sharing.ts";
import { sharingText } from "./sharingText.ts";

/** Portions with pots brought together, and by meal and dish how far that went. */
export interface SharedPots {
  readonly portions: readonly ServedPortion[];
  readonly sharing: ReadonlyMap<string, ReadonlyMap<string, DishSharing>>;
}

/**
 * Brings people who need different ratios of held parts together in the fewest pots that leave
 * nobody further off than the tolerance. Portions change only for those who share a pot that is not
 * their own; where no pot is saved nothing changes.
 *
 * A meal's dishes are taken in turn, by name, each with the ratios of those before it settled.
 */
export function sharePots(read: ReadPlan, portions: readonly ServedPortion[]): SharedPots {
  const { pots } = read;
  if (!pots) return { portions, sharing: new Map() };
  const people = new Map(read.people.map((person) => [person.id, person]));
  const moved = new Map<ServedPortion, ServedPortion>();
  const sharing = new Map<string, ReadonlyMap<string, DishSharing>>();
  for (const meal of read.meals) {
    // What suits someone with a version of their own is not looked for: pots stay as they were found.
    if (read.pooled.get(meal.id)?.isVaried) continue;
    const diners = portions.flatMap((served): Diner[] => {
      const want = served.meal === meal.id ? people.get(served.person)?.wants.get(meal.id) : undefined;
      return want && served.factors().size > 0 ? [{ served, want }] : [];
    });
    const names = new Map([...people].map(([id, { name }]) => [id, name]));
    const shared = shareMeal(meal, diners, pots, names);
    diners.forEach(({ served }, i) => {
      moved.set(served, shared.diners[i]?.served ?? served);
    });
    sharing.set(meal.id, shared.sharing);
  }
  return { portions: portions.map((served) => moved.get(served) ?? served), sharing };
}

/** What was found for one dish. */
interface Step {
  readonly groups: PotGroups;
  readonly proven: boolean;
  readonly tried: number;
}

function shareMeal(
  meal: ReadMeal,
  before: readonly Diner[],
  pots: ReadPots,
  names: ReadonlyMap<string, string>,
): { readonly diners: readonly Diner[]; readonly sharing: ReadonlyMap<string, DishSharing> } {
  const all = [...meal.dishes]
    .map(([dish, s]): PotGroups => ({ dish, lines: potGroups(s) }))
    .filter(({ lines }) => lines.length > 1)
    .sort((a, b) => compareText(a.dish, b.dish));
  let diners = before;
  const steps: Step[] = [];
  for (const groups of all) {
    const settled = steps.map((step) => step.groups);
    const step = shareDish(meal, groups, settled, diners, pots);
    diners = step.diners;
    steps.push({ groups, proven: step.proven, tried: step.tried });
  }
  const count = (of: readonly Diner[]): number => all.reduce((n, groups) => n + versions(of, groups).size, 0);
  if (count(diners) >= count(before)) diners = before;
  const sharing = steps.map(({ groups, proven, tried }): [string, DishSharing] => {
    const now = versions(diners, groups);
    const apart = versions(before, groups).size;
    const figures = {
      tolerance: pots.tolerance,
      apart,
      // What is settled for one dish may stand in the way of the next.
      proven: now.size < 2 || (proven && all.length === 1),
      tried,
    };
    return [groups.dish, { ...figures, text: sharingText(figures, [...now.values()], names) }];
  });
  return { diners, sharing: new Map(sharing) };
}

/** Held lines that are cooked, by the part they are in: of each part a line. Lines without one come first. */
function potGroups(s: Sheet): readonly number[] {
  const found = new Map<string | undefined, number>();
  s.plan.lines.forEach(({ line }, i) => {
    const isIn = line.added === "cooking" && line.scaling === "held" && s.values.grams[i]?.n !== 0n;
    if (isIn && !found.has(line.part)) found.set(line.part, i);
  });
  return [...found]
    .sort(([a], [b]) => (a === undefined ? -1 : b === undefined ? 1 : compareText(a, b)))
    .map(([, line]) => line);
}

/** Who has which ratios, in the order of the people. */
function versions(
  diners: readonly Diner[],
  groups: PotGroups,
): ReadonlyMap<string, readonly ServedPortion[]> {
  const all = diners.map(({ served }) => served);
  return groupBy(
    all,
    (served) => ratiosIn(served.factors(), groups)?.map(exactText).join(" ") ?? served.person,
  );
}

function shareDish(
  meal: ReadMeal,
  groups: PotGroups,
  settled: readonly PotGroups[],
  diners: readonly Diner[],
  { tolerance, tries }: ReadPots,
): Omit<Step, "groups"> & { readonly diners: readonly Diner[] } {
  const now = versions(diners, groups).size;
  if (now < 2) return { diners, proven: true, tried: 0 };
  const { all, apart } = alikeOf(meal, groups, settled, diners);
  const order = [...all].sort((a, b) => byFarEnd(a, b, tolerance));
  const count = groups.lines.length - 1;
  const pivots = meal.fit.pivots;
  const canShare = (places: readonly number[]): boolean => {
    const regions = places.flatMap((place) => order[place]?.region(tolerance) ?? []);
    return commonRatios(regions, count, pivots) !== undefined;
  };
  const found = fewest(order.length, canShare, tries, count === 1);
  const how = { proven: found.proven && apart.length === 0, tried: found.tried };
  if (found.groups.length + apart.length >= now) return { diners, ...how };
  const moved = new Map<Diner, ServedPortion>();
  for (const places of found.groups) {
    for (const [diner, served] of together(
      places.flatMap((place) => order[place] ?? []),
      tolerance,
      count,
      pivots,
    )) {
      moved.set(diner, served);
    }
  }
  return { diners: diners.map((diner) => ({ ...diner, served: moved.get(diner) ?? diner.served })), ...how };
}

/** Portions of those who now share a pot with others; whoever has its ratios already keeps theirs. */
function together(
  group: readonly Alike[],
  tolerance: Exact,
  count: number,
  pivots: number | undefined,
): readonly (readonly [Diner, ServedPortion])[] {
  const [first] = group;
  if (!first || group.every((each) => isSame(each.ratios, first.ratios))) return [];
  const at = (missed: Exact) => group.map((each) => each.region(missed));
  const shared = leastMissed(at, tolerance, count, pivots);
  if (!shared) return [];
  return group
    .filter(({ ratios }) => !isSame(ratios, shared.ratios))
    .flatMap((each) => {
      const served = each.served(shared.ratios, shared.tolerance, tolerance);
      return each.diners.flatMap((diner, i) => {
        const own = served[i];
        return own ? [[diner, own] as const] : [];
      });
    });
}

function isSame(a: readonly Exact[], b: readonly Exact[]): boolean {
  return a.every((ratio, p) => equals(ratio, b[p] as Exact));
}

/** By how far the first ratio can go, then by what is asked, whatever the order of people. */
function byFarEnd(a: Alike, b: Alike, tolerance: Exact): number {
  const [left, right] = [a, b].map((each) => each.region(tolerance).farthest);
  if (left && right && !equals(left, right)) return left.n * right.d < right.n * left.d ? -1 : 1;
  if (!left !== !right) return left ? -1 : 1;
  return compareText(a.key, b.key);
}
