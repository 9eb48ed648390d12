import type { Target } from "../scale/target.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** Dishes eaten together: one portion of a meal is one portion of each. */
export interface MealInput {
  readonly id: string;
  readonly name?: string;
  /** A sheet, or several by name. */
  readonly dishes: Sheet | Readonly<Record<string, Sheet>>;
}

/** Someone who is fed, and what each meal's portion must bring. */
export interface PersonInput {
  readonly id: string;
  readonly name?: string;
  /** What a portion of every meal must meet. */
  readonly demands?: Target;
  /** What a portion of one meal must meet, by the meal's id, instead of `demands`. */
  readonly byMeal?: Readonly<Record<string, Target>>;
}

export interface PlanInput {
  readonly meals: readonly MealInput[];
  readonly people: readonly PersonInput[];
  /** What to do where lines say nothing of a target; `refuse` unless told. */
  readonly silent?: "refuse" | "accept";
}
