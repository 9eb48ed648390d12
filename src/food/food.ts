import type { Json } from "../document/leaves.ts";
import type { MeasureSetName } from "../measure/measures.ts";
import type { Value } from "../number/exact.ts";
import type { Allergen } from "./allergens.ts";
import type { ComponentId } from "./components.ts";

/** What a food was when it was analysed and is when it is weighed; shown on every line. */
export type State = "raw" | "dry" | "drained" | "cooked" | "as sold";

/**
 * Where a food comes from; decides which components may be presumed absent from it, and whether it may
 * be served to someone who avoids what is of animal origin. `mixed` may be of animals in part.
 */
export type Origin = "plant" | "animal" | "mineral" | "mixed";

/**
 * What is known of one component in 100 g of edible portion, in the component's own unit.
 * `"trace"` is present but not measured; `below` lies between 0 and the limit. A component that a
 * food does not list is missing: unknown, never zero.
 */
export type Figure =
  | Value
  | "trace"
  | { readonly below: Value; readonly source?: string }
  | {
      readonly value: Value;
      /** The interval that the true figure lies in, where one is published or follows from rounding. */
      readonly low?: Value;
      readonly high?: Value;
      /** The food that the figure was taken over from: its id, or its name where the source borrowed it. */
      readonly borrowedFrom?: string;
      /** How the source came by the figure where nobody measured it: from a recipe, an average, other figures. */
      readonly calculated?: string;
      /** The formula that the figure was computed by. */
      readonly derived?: string;
      /** Set where nobody measured and the source takes it for zero. */
      readonly presumed?: true;
      /** Standard error of the value, a mean of several figures, in the component's unit. */
      readonly error?: Value;
      /** How many figures the value is the mean of. */
      readonly count?: number;
      /** The least and the most that was found among them: not the interval of `low` to `high`. */
      readonly least?: Value;
      readonly most?: Value;
      /** The source's own code for how it came by the figure, as it prints it. */
      readonly sourceCode?: string;
      readonly source?: string;
    };

/**
 * A household measure of this food: `{ name: "medium", grams: 110 }`, `{ name: "cup, chopped", grams: 160 }`.
 * Its name begins with a word, since a written amount begins with a figure of its own.
 */
export interface FoodMeasure {
  readonly name: string;
  /** Of what is eaten: without peel, bone or core, as agencies tell them. */
  readonly grams: Value;
}

/** How a food is divided where it is counted: eggs stay whole, a banana may be halved, a loaf is cut into slices. */
export interface Division {
  /** The least part of one piece that is taken, 1 over a whole number: `1` where none is cut, `1/2` for halves. */
  readonly step: Value;
  /** Which of its measures is counted, whatever it was written in: `slice` of a loaf. Each of its own where left out. */
  readonly by?: string;
}

/** A caution that rides along with a food: what to heed, who says so. */
export interface FoodCaution {
  readonly code: string;
  readonly text: string;
  readonly source: string;
  /**
   * Whom it concerns, where that is not everyone: any of the conditions that a person may declare, or
   * `pregnant`, `breastfeeding`, `under-18`, `under-1`. It is left out for someone who is known and is none of these.
   */
  readonly for?: readonly string[];
}

/** Energy per gram of each macronutrient as the source's energy figure was computed, kcal/g. */
export interface EnergyFactors {
  readonly protein: Value;
  readonly fat: Value;
  readonly carbohydrate: Value;
}

/**
 * How a food is sold: `edible` is what of the pack's content is used (drained, for a tin; peeled, for
 * a bag of potatoes), in grams. The food's `price` says in which currency `price` is.
 */
export interface Pack {
  readonly name: string;
  readonly edible: Value;
  readonly price?: Value;
}

/** What a food costs: its currency (ISO 4217), and 100 g as purchased where it is sold by weight. */
export interface FoodPrice {
  readonly currency: string;
  readonly per100g?: Value;
}

/** A food as data. `FoodInput` is what a caller writes and what a food table keeps. */
export interface FoodInput {
  readonly id: string;
  readonly name: string;
  /**
   * What a kitchen calls it where the name says more than a cook needs, in words of that name: `Milk, whole`. It is
   * shown by it, but for tables of foods. Other words than the name's are passed over.
   */
  readonly kitchenName?: string;
  /** What else it is called: a cook's word, a trade's, another country's. It is found by them too. */
  readonly otherNames?: readonly string[];
  readonly state?: State;
  readonly group?: string;
  readonly origin?: Origin;
  readonly per100g: { readonly [C in ComponentId]?: Figure };
  /** Where the figures come from, with the food's id there. */
  readonly source: string;
  /** Grams per millilitre. */
  readonly density?: Value;
  readonly measures?: readonly FoodMeasure[];
  /** The set that cups and spoons among `measures` belong to; `us` where the source is American. */
  readonly measuredWith?: MeasureSetName;
  /** How it is divided where it is counted; as the kitchen divides pieces where left out. */
  readonly divides?: Division;
  /** Share of the food as purchased that is eaten, above 0 to 1 (refuse is the rest). */
  readonly edibleShare?: Value;
  readonly energyFactors?: EnergyFactors;
  /** Components that were added to it as nutrients, by law or by its maker: never borrowed, never presumed absent. */
  readonly fortifiedWith?: readonly ComponentId[];
  /** What it contains of the regulated allergens. Absent means unknown, never "free from". */
  readonly allergens?: readonly Allergen[];
  readonly cautions?: readonly FoodCaution[];
  readonly packs?: readonly Pack[];
  /** Its currency, which its packs' prices are in too, and the price of 100 g as purchased. */
  readonly price?: FoodPrice;
  /** Where it stands in the shop, for grouping a shopping list. */
  readonly aisle?: string;
  /** How many days it keeps as it is bought, from its own label. Nothing is presumed where it does not say. */
  readonly keepsDays?: Value;
  /** An app's own data, carried along untouched. */
  readonly meta?: Json;
}
