import type { State } from "../../food/food.ts";
import type { Amount } from "../../measure/amount.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import type { Exact } from "../../number/exact.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { KitchenNote } from "./groups.ts";

/** Something that is weighed out for one person alone. */
export interface Addition {
  readonly line: string;
  readonly name: string;
  readonly state: State | undefined;
  readonly why: ApartWhy;
  /** Whether the recipe cooks it: it is then cooked for this person, apart or in their share. */
  readonly cooked: boolean;
  /** As the recipe writes it, or as a kitchen measured it. */
  readonly amount: Amount;
  /** What `amount` is of: the edible portion, or the food as purchased, before it is trimmed. */
  readonly weighed: "edible" | "as-purchased";
  /** Edible portion. */
  readonly grams: Exact;
}

/** What is cooked once, for all who eat of it. */
export interface Pot {
  /** All that goes in, and no other line; its portions are the people. */
  readonly sheet: Sheet;
  readonly people: readonly string[];
  /** Grams as cooked that nobody takes, since their firm demands leave no room for it; mostly 0. */
  readonly left: Exact;
  /** Where it leaves the recipe's own ratios, before a kitchen measures it; empty where it keeps them all. */
  readonly ratios: readonly PotRatio[];
  /** What a cook should know of its measured amounts; empty where no kitchen was given. */
  readonly notes: readonly KitchenNote[];
}

/** One person's part of a dish: a share of a pot, and what is added to it. */
export interface PartServing {
  readonly person: string;
  /** Nothing where nothing is cooked for more than this person. */
  readonly pot: Pot | undefined;
  /** Of the pot as cooked, 0 to 1. */
  readonly share: Exact;
  /** The share by mass, as cooked. */
  readonly grams: Exact;
  /** The share as the kitchen's scale shows it, where it is weighed out. */
  readonly weighed: Amount | undefined;
  /** Whether this person gets what the others leave, which is no whole number of the scale's steps. */
  readonly isRest: boolean;
  /** The share by volume, where the dish's density is given. */
  readonly millilitres: Exact | undefined;
  /** Keys of lines that a kitchen measured for this person alone: what is added, and a pot of one's own. */
  readonly measured: readonly string[];
  /** What this person measures with: their own kitchen, else the plan's. */
  readonly kitchen: Kitchen | undefined;
  /** What is added, as a sheet for this one portion; nothing where nothing is. */
  readonly added: Sheet | undefined;
  readonly additions: readonly Addition[];
}

/** Held lines that stand to the rest of a pot otherwise than in the recipe. */
export interface PotRatio {
  /** The part that they are; of lines without one, the first line's key. */
  readonly part: string;
  readonly lines: readonly string[];
  /** Their ratio to the rest over what the recipe has: 1.25 is a quarter more. */
  readonly ratio: Exact;
}

/**
 * Why a line is not in the pot: it is added at serving; it is the same for everyone, while shares of
 * the pot are not; or it keeps no ratio to the pot, since it was fitted to each person.
 */
export type ApartWhy = "serving" | "per-portion" | "adjustable";
