// What a plan is handed in: meals, people, and what the cook has to measure with.
import type { Json } from "../document/leaves.ts";
import type { Allergen } from "../food/allergens.ts";
import type { ComponentId } from "../food/components.ts";
import type { Kitchen, KitchenName } from "../measure/kitchen.ts";
import type { Value } from "../number/exact.ts";
import type { Aim } from "../person/aim.ts";
import type { Authority } from "../person/intakes/table.ts";
import type { Person } from "../person/person.ts";
import type { Demand } from "../scale/demand.ts";
import type { FitOptions } from "../scale/fit.ts";
import type { Silence, Target } from "../scale/target.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** A dish with what the plan should know of how it is made. */
export interface DishInput {
  readonly sheet: Sheet;
  /** Grams per millilitre of what was cooked, so that shares of the pot can be told by volume. */
  readonly density?: Value;
}

/** Dishes eaten together: one portion of a meal is one portion of each. */
export interface MealInput {
  readonly id: string;
  readonly name?: string;
  /** A sheet, or several by name. */
  readonly dishes: Sheet | Readonly<Record<string, Sheet | DishInput>>;
  /** How its dishes are fitted to people whose demands are a list. */
  readonly fit?: FitOptions;
  /** An app's own data, any JSON of at most 100,000 characters: carried along untouched, and never read. */
  readonly meta?: Json;
}

/**
 * What a portion must bring: a target, met by one factor for the whole meal, or a list of demands,
 * to which the meal's dishes are fitted together.
 */
export type PortionDemands = Target | readonly Demand[];

/**
 * What someone is not to be served: an allergen, by its id, which is looked for in every food that is
 * said to hold it; one food by its id; or every food of animal origin. `override` says in writing who
 * allows it all the same, and why.
 *
 * Of animal origin are milk, eggs and honey as much as meat and fish: every food whose `origin` is
 * `animal`, and every one that is `mixed`, since nothing says of what. Fining agents, carriers of added
 * vitamins and other aids to making are told by no table: a label or the maker has the last word.
 */
export type Avoided =
  | Allergen
  | { readonly allergen: Allergen; readonly override?: string }
  | { readonly food: string; readonly override?: string }
  | { readonly origin: "animal"; readonly override?: string };

/**
 * Something that someone eats besides what a plan serves: a supplement, milk, or a meal that was written
 * down elsewhere. One portion of a `sheet`, or what it `brings` of components, of which nothing else is known.
 */
export interface Besides {
  readonly name: string;
  /** Days that it is eaten on; every day unless told. */
  readonly days?: readonly string[];
  /** The meal that it counts in, by id; of a meal that they are away for it is what they eat instead. */
  readonly meal?: string;
  readonly sheet?: Sheet;
  /** In the components' own units, or with a unit: `{ vitaminD: "10 µg" }`. */
  readonly brings?: Readonly<Partial<Record<ComponentId, Value>>>;
}

/** A portion to be kept: grams of each line, by dish. */
export type KeptPortion = Readonly<Record<string, Readonly<Record<string, Value>>>>;

/** Someone who is fed, and what each meal's portion must bring. */
export interface PersonInput {
  readonly id: string;
  readonly name?: string;
  /**
   * Their body and what they declare, for cautions, upper levels and the day on their card. Allergens
   * that they declare are avoided.
   */
  readonly person?: Person;
  /**
   * What their day aims at: its energy is then what a card's shares of a day are of, and no longer what would
   * hold their mass. In a menu of days, and wherever `shares` are told, days are fitted to its demands,
   * unless `demands` or `byMeal` ask meal by meal. Wants a `person`; refused as `dayTarget` refuses it.
   */
  readonly aim?: Aim;
  /**
   * What they are not to be served. Whatever a plan would serve them of it is an error, unless it is
   * overridden in writing; foods that say nothing of an allergen, or of their origin, are listed in
   * `plan.avoided`.
   */
  readonly avoid?: readonly Avoided[];
  /**
   * What their day must bring, all meals together: see {@link portionPlan}. Instead of an `aim`, which asks
   * for a day likewise, and of `demands` and `byMeal`.
   */
  readonly daily?: readonly Demand[];
  /**
   * What each meal brings of the day's energy, as `0.25`, `"1/4"` or `"25 %"`, by the meal's id; as the
   * recipes are written unless told. Meals that are not named share what is left. Shares that total
   * less than 1, of every meal, leave the rest to what is eaten besides.
   */
  readonly shares?: Readonly<Record<string, Value>>;
  /** How far a meal may be from its share, as a part of it: `"10 %"` unless told. */
  readonly shareBand?: Value;
  /** Of a person whose days are fitted: what one meal must meet by itself, by the meal's id. */
  readonly limits?: Readonly<Record<string, readonly Demand[]>>;
  /** What a portion of every meal must meet; the recipes' own portion where nothing is said. */
  readonly demands?: PortionDemands;
  /**
   * What a portion of one meal must meet, instead of `demands`: by the meal's id. In a menu of days
   * `supper` speaks of every day's, `mon/supper` of one, which wins.
   */
  readonly byMeal?: Readonly<Record<string, PortionDemands>>;
  /**
   * When this person is not there, so that nothing is cooked for them: meals by id, and in a menu of days
   * whole days, too: `["mon/supper", "tue"]`.
   */
  readonly away?: readonly string[];
  /** What this person measures additions with; the plan's kitchen unless told. */
  readonly kitchen?: Kitchen | KitchenName;
  /**
   * Portions that stay as they were while the rest is planned again: grams by meal, dish and line, as
   * `plan.kept` gives them. What is not named of a kept portion is not in it.
   */
  readonly keep?: Readonly<Record<string, KeptPortion>>;
  /** What they eat besides what the plan serves: it counts in their days' demands, shares and levels. */
  readonly besides?: readonly Besides[];
  /**
   * What they eat instead of a dish, by its name, `supper/stew` or `mon/supper/stew`: their own version of
   * it, which shares the pot where it differs in nothing that is cooked with it.
   */
  readonly instead?: Readonly<Record<string, Sheet>>;
  /** What they have left out of a dish: `["stew/cream"]`. The rest keeps its ratios. */
  readonly leaveOut?: readonly string[];
  /**
   * By what this person's additions are measured, as the plan's `lines`; beside those, which these
   * outdo, unless the kitchen is their own.
   */
  readonly lines?: Readonly<Record<string, string>>;
  /** An app's own data, any JSON of at most 100,000 characters: carried along untouched, and never read. */
  readonly meta?: Json;
}

/**
 * What to do with a line that is to be the same for everyone, though it is cooked in a pot of which
 * people take different shares: add it to each portion at `serving`, or let it follow the `pot`, so
 * that larger portions get more of it.
 */
export type PotChoice = "serving" | "pot";

/** The answer to a plan's question. */
export interface PlanAnswer {
  readonly meal: string;
  /** By name; may be left out where the meal has one dish. */
  readonly dish?: string;
  readonly line: string;
  readonly answer: PotChoice;
}

/**
 * Asks for the fewest pots. People who need different ratios of held parts are brought together where
 * nobody's demand is then missed by more than the tolerance; firm demands, targets and the bounds of
 * lines and parts hold as ever.
 */
export interface FewestPots {
  /**
   * By how much a figure that is asked, and not firm, may be missed: a share of it, 0 to below 1
   * (`"5 %"`). Of a factor that is asked it is how far each held amount may be off.
   */
  readonly tolerance: Value;
  /** Sets of people looked at for each dish; 2,000 unless told. A plan says where that was not enough. */
  readonly tries?: number;
}

/** A day of a menu. */
export interface DayInput {
  /** Without a stroke: meals go by `mon/supper`. */
  readonly id: string;
  readonly name?: string;
  /** In the order that they are eaten in. Their ids are their own within the day. */
  readonly meals: readonly MealInput[];
  /** An app's own data, any JSON of at most 100,000 characters: carried along untouched, and never read. */
  readonly meta?: Json;
}

/** What a plan is made from: a menu of `days`, or the `meals` of one. */
export interface PlanInput {
  /** A menu of several days, in their order. Its meals go by `mon/supper`. */
  readonly days?: readonly DayInput[];
  /** The meals of one day, instead of `days`. */
  readonly meals?: readonly MealInput[];
  readonly people: readonly PersonInput[];
  /** Whose reference intakes and upper levels hold for those with a `person`; none are read unless told. */
  readonly authority?: Authority;
  /** What to do where lines say nothing of a target; `refuse` unless told. */
  readonly silent?: Silence;
  /**
   * Where people need different ratios of held parts: `exact`, unless told, cooks each of them a pot of
   * their own.
   */
  readonly pots?: "exact" | FewestPots;
  /** Answers to the questions of an earlier plan. */
  readonly answers?: readonly PlanAnswer[];
  /**
   * What the cook has to measure with. With it pots, shares of them and additions come out in amounts
   * that can be measured, and each portion tells what that costs in accuracy (`drift`). Without it
   * amounts are exact.
   */
  readonly kitchen?: Kitchen | KitchenName;
  /**
   * By what lines are measured in the plan's kitchen, as `roundToKitchen` takes it: `weigh`,
   * `as-written` to leave the line alone, or a unit (`tbsp`, `ml`, `medium`). A line's key speaks of it
   * in every dish, `dish/key` or `meal/dish/key` of one. Not for per-portion lines. Unless told a line stays in its
   * own family of units; what is counted is weighed where the least that can be counted is more than
   * twice as much as is wanted, or where counting breaks what must hold; and without a scale a mass is
   * measured by cup or spoon, where the food says what one weighs.
   */
  readonly lines?: Readonly<Record<string, string>>;
  /** How far a measured portion may be off a target, as a share of it, 0 to below 1; 2 % unless told. */
  readonly tolerance?: Value;
  /** An app's own data, any JSON of at most 100,000 characters: carried along untouched, and never read. */
  readonly meta?: Json;
}
