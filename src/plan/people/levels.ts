import type { ComponentId } from "../../food/components.ts";
import { compare } from "../../person/compare/compare.ts";
import type { HeldUpper } from "../../person/compare/held.ts";
import { countsFood, type ReferenceIntakes } from "../../person/intakes/referenceIntakes.ts";
import type { PersonDay } from "../day.ts";
import type { PersonMean } from "../mean.ts";

/** An upper level that the mean of the days is above, or may be, or that some day by itself is. */
export interface LevelOfDays {
  readonly of: readonly ComponentId[];
  /** The mean of the days that are wholly eaten in the plan: what the level judges. Nothing where there are none. */
  readonly mean: HeldUpper | undefined;
  /** Days above it by themselves, proven: a note, since a level is of what is eaten over time. */
  readonly days: readonly string[];
  /** Whether it is proven, or may be, that the mean is above it. */
  readonly verdict: "past" | "may-be-past" | "days-alone";
}

/** Holds days, and the mean of those that are wholly eaten, against upper levels that count food. */
export function levelsOf(
  mean: PersonMean,
  days: readonly PersonDay[],
  intakes: ReferenceIntakes,
): readonly LevelOfDays[] {
  const all = days.filter(({ dishes }) => dishes.size > 0);
  const uppers = (dishes: PersonDay["dishes"]): ReadonlyMap<string, HeldUpper> =>
    new Map(
      compare(dishes, intakes).rows.flatMap(({ of, uppers }) => {
        const upper = uppers.find(({ figure }) => countsFood(figure));
        return upper ? [[of.join(" "), upper] as const] : [];
      }),
    );
  const ofMean = mean.days.length > 0 ? uppers(mean.dishes) : new Map<string, HeldUpper>();
  const ofDays = all.map(({ day, dishes }) => ({ day, uppers: uppers(dishes) }));
  const keys = new Set([...ofMean.keys(), ...ofDays.flatMap((each) => [...each.uppers.keys()])]);
  return [...keys].flatMap((key): LevelOfDays[] => {
    const own = ofMean.get(key);
    const above = ofDays.filter((each) => each.uppers.get(key)?.verdict === "past").map(({ day }) => day);
    const standing = own?.verdict;
    const verdict = standing === "past" || standing === "may-be-past" ? standing : "days-alone";
    if (verdict === "days-alone" && above.length === 0) return [];
    return [{ of: key.split(" ") as ComponentId[], mean: own, days: above, verdict }];
  });
}
