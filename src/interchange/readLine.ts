import type { FoundFood } from "../food/findFoods.ts";
import type { Fault } from "../number/error.ts";
import type { LineInput } from "../recipe/document.ts";

/**
 * What a line of a recipe is: a food with an amount in figures or words, a food without one, a heading,
 * or something else (a tool, a sentence that names no one food).
 */
export type LineKind = "ingredient" | "no-amount" | "heading" | "other";

/**
 * An amount or a size as a line states it: text of exact numbers, equal unless it states a range. A figure that
 * could be read in two ways (`1,000`) stands as it was written.
 */
export interface StatedAmount {
  readonly least: string;
  readonly most: string;
  /** The word in the line, in one spelling; a size (`medium`) where one stands with a count; null for a bare count. */
  readonly unit: string | null;
}

/** An amount of a line. */
export interface ReadAmount extends StatedAmount {
  /** The size of one pack or piece. */
  readonly each?: StatedAmount;
  /** What is added to it: `1 cup plus 2 tbsp`. */
  readonly plus?: StatedAmount;
  /** Whether the line says so ("about"), or the unit is no measure (a pinch, a handful). */
  readonly approximate: boolean;
}

/** A line of a recipe as it was read. What could not be read is kept in `note`, and nothing is made up. */
export interface ReadLine {
  /** As it was written. */
  readonly text: string;
  readonly kind: LineKind;
  /** The one stated first stands first; others say the same amount in other units. */
  readonly amounts: readonly ReadAmount[];
  /** The food's words, lower case; empty where there is none. */
  readonly food: string;
  /** Fresh, canned, ground, boneless: where it is written. */
  readonly state: readonly string[];
  /** What is done to it: chopped, peeled, melted. */
  readonly preparation: readonly string[];
  readonly optional: boolean;
  /** What may stand instead, with its own amount where it has one. */
  readonly alternatives: readonly string[];
  readonly note: string;
  /** Foods of the table that may be meant, best first. */
  readonly candidates: readonly FoundFood[];
  /** The line for a recipe document, where the food and its amount are clear. */
  readonly line?: LineInput;
  /** Each food of a line that names several (`salt and pepper`, `2 carrots and 1 onion`), as a line of its own. */
  readonly apart?: readonly ReadLine[];
  /** Why there is no `line` though there is a food, and what would give one. */
  readonly unclear?: Fault;
}
