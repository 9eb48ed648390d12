import type { Value } from "../number/fraction.ts";
import type { ComponentId } from "./components.ts";

/** What the energy of food is shared among. */
export type EnergyPart =
  | "protein"
  | "fat"
  | "carbohydrate"
  | "fibre"
  | "polyols"
  | "organicAcids"
  | "alcohol";

/** Energy per gram by constituent, kcal/g: which component each is read from, and the factor. */
export interface EnergySystem {
  readonly name: string;
  readonly source: string;
  readonly parts: {
    readonly [P in EnergyPart]?: { readonly component: ComponentId; readonly factor: Value };
  };
}

/** Named factor systems. Energy shares always say by which of them they were reckoned. */
export const energySystems = {
  "atwater-general": {
    name: "general Atwater factors",
    source:
      "FAO Food and Nutrition Paper 77, Food energy: methods of analysis and conversion factors (2003), section 3.5",
    parts: {
      protein: { component: "protein", factor: 4 },
      fat: { component: "fat", factor: 9 },
      carbohydrate: { component: "carbohydrateByDifference", factor: 4 },
      alcohol: { component: "alcohol", factor: 7 },
    },
  },
} as const satisfies Record<string, EnergySystem>;

export type EnergySystemId = keyof typeof energySystems;
