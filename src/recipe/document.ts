import type { Json } from "../document/leaves.ts";
import type { RetentionInput } from "../food/retention.ts";
import type { YieldInput } from "../food/yield.ts";
import type { Measures } from "../measure/measures.ts";
import type { Value } from "../number/exact.ts";

/** The format that this version writes; older ones are read, newer ones refused. */
export const RECIPE_FORMAT = "steelyard-recipe/1";

/**
 * How a line follows a person. `held` keeps its ratio to the other held lines, `adjustable` may be
 * moved alone by a fit, `per-portion` is the same for everyone.
 */
export type Scaling = "held" | "adjustable" | "per-portion";

/** An amount as a document holds it: text as a cook writes it, or a value with its unit. */
export type WrittenAmount = string | { readonly value: Value; readonly unit: string };

/**
 * A code of the retention table, or shares of components left after cooking (0 to 1); both together where
 * shares stand beside the `code` that they say otherwise than: `{ code: "521", fat: "0.8" }`.
 */
export type Retention = RetentionInput;

/** One row of a recipe as written. Exactly one of `food` and `recipe` is given. */
export interface LineInput {
  /** Name of the line within the recipe; taken from the food where left out. */
  readonly key?: string;
  readonly food?: string;
  /** A nested recipe: its id, looked up in `recipes`, or the document itself. */
  readonly recipe?: string | RecipeInput;
  /**
   * For the batch as written, of the edible portion unless `weighed` says otherwise. It may be a range
   * (`2-3 tbsp`): its middle is used, and its ends are carried.
   */
  readonly amount: WrittenAmount;
  /** `as-purchased` counts peel, bone and core in; the food's edible share takes them off. */
  readonly weighed?: "edible" | "as-purchased";
  readonly scaling?: Scaling;
  readonly part?: string;
  /** Bounds for one portion; they never move with a factor. */
  readonly least?: WrittenAmount;
  readonly most?: WrittenAmount;
  readonly retention?: Retention;
  /** Whether `retention` was said of another food, which this one took the place of: what it changes is presumed. */
  readonly retentionPresumed?: boolean;
  /**
   * Cooked mass ÷ raw mass of this line, above 0, or `{ code }` of a published one. What a retention table tells to move with the yield does so
   * by it; and where the recipe gives neither `cookedMass` nor `yieldFactor`, its lines' yields make its own.
   */
  readonly yieldFactor?: YieldInput;
  /** `serving` lines are added after cooking: the yield factor and retention do not touch them. */
  readonly added?: "cooking" | "serving";
  readonly prep?: string;
  /** An app's own data, carried along untouched. */
  readonly meta?: Json;
}

/** What the recipe says beside its method (storage, cooling, reheating), with its source. */
export interface RecipeNote {
  readonly kind: "storage" | "cooling" | "reheating" | "safety" | "general";
  readonly text: string;
  readonly source?: string;
  /** Of `storage`: how many days the cooked dish keeps, 0 being the day it is cooked. */
  readonly days?: Value;
}

/** A piece that a dish is served in: one muffin of 75 g as eaten. */
export interface ServedIn {
  /** What one is called: `muffin`. */
  readonly name: string;
  /** A mass, as eaten. */
  readonly mass: WrittenAmount;
  /** The least part of one that is served, 1 over a whole number; 1, none being cut, where left out. */
  readonly step?: Value;
}

/** A recipe as written: what {@link recipe} reads. */
export interface RecipeInput {
  readonly format?: string;
  readonly name: string;
  /** How many portions the batch makes; above 0. */
  readonly portions: Value;
  /** The spoons and cups it was written with; their sizes differ by country. */
  readonly measures?: Measures;
  readonly lines: readonly LineInput[];
  /** Mass of what was cooked, after cooking; lines added at serving are not in it. */
  readonly cookedMass?: WrittenAmount;
  /** Cooked mass ÷ raw mass of what is cooked, or `{ code }` of a published one. */
  readonly yieldFactor?: YieldInput;
  /** Whether nobody measured that factor: an earlier cooked mass implied it, and lines have changed since. */
  readonly yieldPresumed?: boolean;
  /** What a person is usually served of it, as eaten: a mass. Plans tell how far a portion is from it. */
  readonly normalPortion?: WrittenAmount;
  /** What it is served in, where that is pieces: kitchens make, share and take whole ones. */
  readonly piece?: ServedIn;
  /** Steps; `{key}` names a line. */
  readonly method?: readonly string[];
  readonly notes?: readonly RecipeNote[];
  /** An app's own data, carried along untouched. */
  readonly meta?: Json;
}

/** A line of a validated recipe. */
export interface Line extends Omit<LineInput, "key" | "recipe" | "scaling" | "added"> {
  readonly key: string;
  readonly recipe?: string | Recipe;
  readonly scaling: Scaling;
  readonly added: "cooking" | "serving";
}

/** A validated recipe: plain, frozen data that survives a JSON round trip unchanged. */
export interface Recipe extends Omit<RecipeInput, "lines" | "format" | "portions"> {
  readonly format: typeof RECIPE_FORMAT;
  readonly portions: string;
  readonly lines: readonly Line[];
}
