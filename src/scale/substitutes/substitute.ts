import type { ComponentId } from "../../food/components.ts";
import type { FoodCaution, State } from "../../food/food.ts";
import { type Exact, minus, over } from "../../number/exact.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Tally } from "../../sheet/tally.ts";

/** One component of a portion before and after. */
export interface SubstituteChange {
  readonly component: ComponentId;
  readonly before: Tally;
  readonly after: Tally;
  /** After less before, over before. */
  readonly share: Exact;
}

/** A food that may stand in for another, with the amount to use. */
export interface Substitute {
  readonly food: string;
  readonly name: string;
  readonly state: State | undefined;
  /** For the batch, edible portion. */
  readonly grams: Exact;
  /** The sheet with it in the line's place. */
  readonly sheet: Sheet;
  /** Sum of the shares by which what was to stay close moved, up or down. */
  readonly distance: Exact;
  readonly changes: readonly SubstituteChange[];
  /** What moves beside, that a swap should not hide: sodium, unless it was to stay close. */
  readonly also: readonly Omit<SubstituteChange, "share">[];
  /** What it says nothing of, of what was to stay close; foods that say all come first. */
  readonly silent: readonly ComponentId[];
  /** What it does tell of what the line does not: the gaps that it would fill. */
  readonly tells: readonly ComponentId[];
  /** What to heed with it: raw beans must be boiled, say. */
  readonly cautions: readonly FoodCaution[];
}

/** By what share of itself a component moved; below 0 where it fell. */
export function shareMoved({ before, after }: Pick<SubstituteChange, "before" | "after">): Exact {
  return over(minus(after.value, before.value), before.value);
}
