import type { Piece } from "../cook/method.ts";
import type { ComponentId } from "../food/components.ts";
import type { EnergyPart } from "../food/energy.ts";
import type { Exact } from "../number/exact.ts";
import type { TableFigure } from "../show/table.ts";

// A card as plain data: words in the reader's language, not yet markup. Text from outside is as it
// came, and is made safe where it is written into the page.

/** How much to take, as it is best measured, and the same in other words; the latter empty where there are none. */
export interface Take {
  readonly lead: string;
  readonly also: string;
}

/** One line of a dish. */
export interface AmountRow extends Take {
  readonly key: string;
  readonly name: string;
  readonly prep: string | undefined;
  /** What a nested recipe is made of. */
  readonly madeOf: readonly string[];
  /** What is left of it to eat, where it is measured as purchased, before it is trimmed. */
  readonly edible: string | undefined;
  /** Whether it is the same for everyone. */
  readonly dose: boolean;
}

export interface AmountGroup {
  /** Nothing where a dish has one group. */
  readonly heading: string | undefined;
  readonly rows: readonly AmountRow[];
}

/** What to take of a pot. */
export interface PotShare extends Take {
  /** Days on which it is this much; empty where it is every time. */
  readonly when: string;
}

/** A nested recipe that is made first, as much of it as the dish takes. */
export interface CardBatch {
  readonly name: string;
  readonly rows: readonly AmountRow[];
  readonly mass: string;
  readonly method: readonly (readonly Piece[])[];
}

export interface CardDish {
  readonly name: string;
  /** What is made before it, innermost first; empty where a cook makes it for all. */
  readonly first: readonly CardBatch[];
  readonly groups: readonly AmountGroup[];
  /** This person's share of what is cooked for several, each time; empty where nothing is. */
  readonly pots: readonly PotShare[];
  /** As eaten. */
  readonly mass: string;
  readonly method: readonly (readonly Piece[])[];
  readonly notes: readonly string[];
}

/** Whether a row can hold it among those of several days: nothing is made for it but what a cook makes. */
export function isBrief({ first, method }: CardDish): boolean {
  return first.length === 0 && method.length === 0;
}

export interface CardMeal {
  readonly name: string;
  /** Its day's name, where the plan has days. */
  readonly day: string | undefined;
  /** What was asked of it and is not brought. */
  readonly missed: readonly string[];
  readonly dishes: readonly CardDish[];
  /** What a kitchen cannot measure of it. */
  readonly notes: readonly string[];
}

/** One nutrient: what the portion brings, and against a day. */
export interface DayRow {
  readonly id: ComponentId;
  readonly name: string;
  readonly brings: TableFigure;
  /** What part of the figure is not measured, in words; empty where all is. */
  readonly part: string;
  readonly share: RowDayShare | undefined;
}

export interface RowDayShare {
  /** What is known, of a day; 1 is all of it. */
  readonly known: Exact;
  /** Whether there may be more than is known. */
  readonly open: boolean;
  /** Where the upper level lies, of a day. */
  readonly upper: Exact | undefined;
  readonly over: boolean;
  /** As a table shows it: `38%`, `at least 38%`, `?`. */
  readonly shown: string;
  /** As it is read aloud. */
  readonly spoken: string;
}

export interface EnergySlice {
  readonly part: EnergyPart;
  readonly name: string;
  readonly percent: number;
  readonly shown: string;
}

export interface EnergyPicture {
  readonly slices: readonly EnergySlice[];
  /** Constituents of which not all is known. */
  readonly open: readonly string[];
  /** The share of the mass that does not tell all of them, 0 to 1: of the one that least is told of. */
  readonly untold: Exact;
  readonly spoken: string;
}

/** A sentence, with the footnote that gives its source. */
export interface Sourced {
  readonly text: string;
  readonly footnote: number | undefined;
}

export interface Card {
  readonly person: string;
  readonly date: string | undefined;
  readonly version: string | undefined;
  readonly about: readonly string[];
  /** What is known to be in it of allergens, and of which foods that is not known. */
  readonly allergens: readonly string[];
  readonly meals: readonly CardMeal[];
  /** By what the dish was multiplied, of the first meal: the picture at the card's head. */
  readonly factor: Exact;
  readonly energy: EnergyPicture | undefined;
  readonly day: readonly DayRow[];
  /** Of how many days the figures are the mean; 1 where they are of what is shown. */
  readonly days: number;
  /** Whether any row has a day to be held against. */
  readonly against: boolean;
  readonly cautions: readonly Sourced[];
  /** What a reader must know to read the figures right. */
  readonly notes: readonly string[];
  readonly sources: readonly string[];
}
