import type { Language } from "../document/language.ts";
import type { ComponentId } from "../food/components.ts";
import type { Value } from "../number/exact.ts";
import type { Check } from "../person/check.ts";
import type { Comparison } from "../person/compare/comparison.ts";
import type { EnergyBy } from "../sheet/energy.ts";

/** A figure for a day, and who gives it. */
export interface CardDayFigure {
  /** Above 0, in the component's own unit. */
  readonly value: Value;
  readonly source: string;
  /** How it was checked; one that is `unverified` says so among the card's sources. */
  readonly check?: Check;
}

/** What a day should bring of a component, and what it should stay under. */
export interface CardDay {
  readonly of: ComponentId;
  readonly reference?: CardDayFigure;
  /** One that counts what food brings. */
  readonly upper?: CardDayFigure;
}

/** Something to heed, as foods, people and days carry it. */
export interface CardCaution {
  readonly code?: string;
  readonly text: string;
  readonly source?: string;
  readonly check?: Check;
  /** What of the person it meets: with anything in it, it is a caution about the person. */
  readonly because?: readonly string[];
}

/** What a card says of the person; nothing of it unless it is given here. */
export interface CardAbout {
  readonly mass?: string;
  readonly age?: string;
  readonly conditions?: readonly string[];
}

/** Options of {@link personCard}. */
export interface CardOptions {
  /** When it was made, as it should stand there; the library has no clock. */
  readonly date?: string;
  /** Which edition of the plan this is. */
  readonly version?: string;
  /** Ids of the meals to show, in this order; all of them unless told. */
  readonly meals?: readonly string[];
  /** Days of the menu to show, by id; all of them unless told. Nutrients of several days stand for their mean. */
  readonly days?: readonly string[];
  /** What to show of nutrients, in this order; energy and what meals often lack or overdo unless told. */
  readonly components?: readonly ComponentId[];
  /**
   * The person's day, for shares of it and upper levels: figures, or a comparison, of which those
   * count that speak of one component and of what food brings. Unless told it is the plan's own, by its
   * `authority` for the `person`; figures by body mass are left out of that unless `personal` is
   * `"show"`. An empty list shows none.
   */
  readonly day?: readonly CardDay[] | Comparison;
  /** Cautions beside those that foods and scaling bring; unless told, those that meet the plan's `person`. */
  readonly cautions?: readonly CardCaution[];
  /**
   * Whether cautions that give away age or health, and what the person avoids, are shown; they are not
   * unless told.
   */
  readonly personal?: "hide" | "show";
  readonly about?: CardAbout;
  /** Whether figures say how sure they are (`about 12 mg, 10 to 14`), as far as foods and retention factors tell; not unless told. */
  readonly intervals?: boolean;
  /** The factors by which energy is shared; general Atwater factors unless told. */
  readonly energyBy?: EnergyBy;
  /** British English unless told. */
  readonly language?: Language;
}

/** Options of {@link cookCard}. */
export interface CookCardOptions {
  /** The day of cooking to show; all of them unless told. */
  readonly day?: string;
  /** When it was made, as it should stand there; the library has no clock. */
  readonly date?: string;
  /** Which edition of the plan this is. */
  readonly version?: string;
  /** British English unless told. */
  readonly language?: Language;
}
