import type { Allergen } from "../../food/allergens.ts";
import type { ComponentId } from "../../food/components.ts";
import type { FoodCaution, State } from "../../food/food.ts";
import { type Exact, minus, over } from "../../number/exact.ts";
import { Result } from "../../number/result.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Tally } from "../../sheet/tally.ts";
import type { Quantity } from "../demand.ts";
import type { Replaced } from "./moves.ts";
import type { LeftOut, Opening, OutsideServing } from "./opening.ts";

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

/** What could stand in, the closest first, and what was left out. */
export class Substitutes extends Result {
  readonly is = "steelyard/substitutes@1";
  /** What each brings just as much of as the line did. */
  readonly match: Quantity;
  readonly found: readonly Substitute[];
  /** Foods left out because they hold what is to be avoided. */
  readonly avoided: readonly { readonly food: string; readonly holds: readonly Allergen[] }[];
  /** Foods left out because nothing is known of their allergens: unknown is not free from. */
  readonly unknown: readonly string[];
  /** Foods left out because they bring none of what is matched, or do not say. */
  readonly without: readonly string[];
  /** Foods left out because a cook would not serve what it would take of them. */
  readonly outside: readonly OutsideServing[];
  /** Why nothing was found; nothing where something was. */
  readonly why: string | undefined;
  /** Where nothing was found, what would open it. */
  readonly opens: readonly string[];
  /** What was to stay close but the line says nothing of: there is no figure to stay close to. */
  readonly untold: readonly ComponentId[];
  readonly #of: Replaced;

  /** @internal Use {@link substitutes}. */
  constructor(
    of: Replaced,
    found: readonly Substitute[],
    left: LeftOut & Pick<Substitutes, "untold" | "match"> & { readonly opening: Opening | undefined },
  ) {
    super();
    this.#of = of;
    this.found = found;
    this.avoided = left.avoided;
    this.unknown = left.unknown;
    this.without = left.without;
    this.outside = left.outside;
    this.untold = left.untold;
    this.match = left.match;
    this.why = left.opening?.why;
    this.opens = left.opening?.opens ?? [];
  }

  override toString(): string {
    const foods = this.found.map(({ name }) => name).join(", ");
    return `instead of ${this.#of.name}: ${this.why ?? foods}`;
  }

  /** @internal The line that they stand in for. */
  of(): Replaced {
    return this.#of;
  }
}

/** By what share of itself a component moved; below 0 where it fell. */
export function shareMoved({ before, after }: Pick<SubstituteChange, "before" | "after">): Exact {
  return over(minus(after.value, before.value), before.value);
}
