import type { Value } from "../number/exact.ts";
import type { ComponentId } from "./components.ts";
import type { FoodInput } from "./food.ts";

/** Words of labels for which there is more than one component. */
export type LabelWord = "carbohydrate" | "vitaminA";

/** A food of which only its label is known, as it is printed. */
export interface LabelInput extends Omit<FoodInput, "per100g" | "source" | "energyFactors"> {
  /** Which rules it was printed by: US 21 CFR 101.9, or Regulation (EU) No 1169/2011. */
  readonly style: "us" | "eu";
  /** What the figures are for: `"100 g"`, `"100 ml"`, or a serving, `"30 g"`. A volume needs a density. */
  readonly per: string | { readonly value: Value; readonly unit: string };
  /**
   * The figures as printed: `"24 g"`, `"less than 1 g"`, `"<0.5 g"`, `"1046 kJ / 250 kcal"`, and on a
   * US label per cents of the Daily Value, `"10 %"`. A bare number is in the component's own unit; write
   * text where a last 0 was printed, `"3.0 g"`, since it tells how far the figure was rounded.
   */
  readonly figures: { readonly [K in ComponentId | LabelWord]?: Value };
  readonly source?: string;
}
