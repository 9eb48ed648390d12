import type { Demand } from "../scale/demand.ts";
import type { FitHow } from "../scale/fit.ts";
import type { Silence, Target } from "../scale/target.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** Dishes eaten together: one portion of a meal is one portion of each. */
export interface MealInput {
  readonly id: string;
  readonly name?: string;
  /** A sheet, or several by name. */
  readonly dishes: Sheet | Readonly<Record<string, Sheet>>;
  /** How its dishes are fitted to people whose demands are a list. */
  readonly fit?: FitHow;
}

/**
 * What a portion must bring: a target, met by one factor for the whole meal, or a list of demands,
 * to which the meal's dishes are fitted together.
 */
export type PortionDemands = Target | readonly Demand[];

/** Someone who is fed, and what each meal's portion must bring. */
export interface PersonInput {
  readonly id: string;
  readonly name?: string;
  /** What a portion of every meal must meet; the recipes' own portion where nothing is said. */
  readonly demands?: PortionDemands;
  /** What a portion of one meal must meet, by the meal's id, instead of `demands`. */
  readonly byMeal?: Readonly<Record<string, PortionDemands>>;
}

export interface PlanInput {
  readonly meals: readonly MealInput[];
  readonly people: readonly PersonInput[];
  /** What to do where lines say nothing of a target; `refuse` unless told. */
  readonly silent?: Silence;
}
