import type { Value } from "../number/exact.ts";
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

/** What one constituent brings. */
export interface EnergyTerm {
  /** The component that it is read from, in grams. */
  readonly component: ComponentId;
  /** kcal per gram. */
  readonly factor: Value;
  /** kJ per gram, where the system has factors of its own for kilojoules. */
  readonly kilojoules?: Value;
  /** Taken off the component first; without them nothing is known of the constituent. */
  readonly less?: readonly ComponentId[];
  /** Taken off where a food tells them apart; where it does not, they count with the component. */
  readonly apart?: readonly ComponentId[];
  /** Set where the true factor depends on what exactly is meant, and `factor` is the least of them. */
  readonly atLeast?: true;
}

/** Energy per gram by constituent. */
export interface EnergySystem {
  readonly name: string;
  readonly source: string;
  /** `food` where each food has factors of its own, which then stand in for those of `parts`. */
  readonly factors?: "food";
  readonly parts: { readonly [P in EnergyPart]?: EnergyTerm };
}
