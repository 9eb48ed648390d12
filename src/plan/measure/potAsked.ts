import type { Kitchen } from "../../measure/kitchen.ts";
import type { Exact } from "../../number/exact.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import type { Wish } from "../../scale/round/wish.ts";
import type { MealFigures } from "./figures.ts";

/** What a pot is measured with, and what everyone's portion of the meal is held to, by person. */
export interface PotAsked {
  readonly kitchen: Kitchen;
  readonly tolerance: Exact;
  readonly figures: MealFigures;
  readonly heldTo: ReadonlyMap<string, HeldTo>;
  /** By what lines are wished to be measured, by key. */
  readonly wishes: ReadonlyMap<string, Wish>;
}

/** What someone's portion of a meal is held to. */
export interface HeldTo {
  readonly person: string;
  readonly demands: readonly ReadDemand[];
  /** What measuring is held to: limits, and of the other demands what the exact portion held. */
  readonly standing: readonly ReadDemand[];
}
