import type { Value } from "../number/exact.ts";
import type { WrittenAmount } from "../recipe/document.ts";

/**
 * How a pot that its vessel cannot hold at once is parted: in `equal` runs, in `full` ones and what is
 * left, or not at all, `one` run being all there is time for.
 */
export type RunsOptions = "equal" | "full" | "one";

/**
 * What a dish is made in: how much it may be filled with, by volume or by weight (`"2 l"`, `"1.5 kg"`).
 * Leave room to stir and to boil: nothing is taken off here.
 */
export type Vessel = string | { readonly capacity: WrittenAmount; readonly runs?: RunsOptions };

/** When a meal is eaten and cooked, and in what. */
export interface MealSchedule {
  /** Days on which it is eaten; all of them unless told. */
  readonly eaten?: readonly string[];
  /** Days on which it is cooked, instead of the schedule's `cook`. */
  readonly cook?: readonly string[];
  /**
   * Portions that each person eats of it on a day, or by person; 1 unless told. Without days: in all.
   * Whole, 0 to 10,000.
   */
  readonly servings?: Value | Readonly<Record<string, Value>>;
  /** Days on which someone is not there for this meal, by the person's id, beside the schedule's `away`. */
  readonly away?: Readonly<Record<string, readonly string[]>>;
  /** What each of its dishes is made in. */
  readonly vessel?: Vessel;
  /** The same dish by dish, by name, instead of `vessel`. */
  readonly vessels?: Readonly<Record<string, Vessel>>;
}

/** Options of {@link cookingSchedule}. */
export interface ScheduleOptions {
  /**
   * The days, in order, in any words: `["Sun", "Mon", "Tue"]`. None left out between the first and the
   * last, since how long food is kept is counted in them. At most 366.
   */
  readonly days?: readonly string[];
  /**
   * Days of cooking, for all or dish by dish: `{ dal: ["Sun", "Wed"] }`. A dish is cooked on each of them
   * for what is eaten from then until the next; every day unless told. A nested recipe is named by its
   * id; unless told it is made when it is first drawn on, for as long as it says that it keeps.
   */
  readonly cook?: readonly string[] | Readonly<Record<string, readonly string[]>>;
  /** What dishes and nested recipes are made in, by name or id, in every meal that does not say. */
  readonly vessels?: Readonly<Record<string, Vessel>>;
  /** Days on which someone is not there for any meal, by the person's id; for one meal, see {@link MealSchedule}. */
  readonly away?: Readonly<Record<string, readonly string[]>>;
  /** By the meal's id. */
  readonly meals?: Readonly<Record<string, MealSchedule>>;
}
