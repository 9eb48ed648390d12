import type { FoodInput } from "../food.ts";
import { dairyAndEggs } from "./dairyAndEggs.ts";
import { foodInput } from "./decode.ts";
import { fishAndMeat } from "./fishAndMeat.ts";
import { fruit } from "./fruit.ts";
import { grains } from "./grains.ts";
import { nutsSeedsAndOils } from "./nutsSeedsAndOils.ts";
import { pantry } from "./pantry.ts";
import { pulses } from "./pulses.ts";
import type { Shelf } from "./row.ts";
import { vegetables } from "./vegetables.ts";

/** The starter foods as rows, shelf by shelf: the form that they are kept in. */
export const shelves: readonly (readonly Shelf[])[] = [
  grains,
  pulses,
  dairyAndEggs,
  fishAndMeat,
  vegetables,
  fruit,
  nutsSeedsAndOils,
  pantry,
];

/** The foods of some shelves as plain food data. A food's figures are read when first asked for. */
export function foodsOf(file: readonly Shelf[]): readonly FoodInput[] {
  return file.flatMap((shelf) => shelf.foods.map((row) => foodInput(shelf, row)));
}

/** The starter foods as plain food data. */
export const starterFoodInputs: readonly FoodInput[] = /* @__PURE__ */ shelves.flatMap(foodsOf);
