import type { ComponentId } from "../food/components.ts";
import type { Value } from "../number/exact.ts";

/**
 * What a share of energy can be asked of. Fibre and alcohol count by the energy that they bring;
 * saturated fat counts 9 kcal/g and added sugars 4.
 */
export type EnergyShareOf =
  | "protein"
  | "fat"
  | "carbohydrate"
  | "saturatedFat"
  | "addedSugars"
  | "fibre"
  | "alcohol";

/** A component, in its own unit, or the mass of the portion in grams. */
export type Quantity = ComponentId | "mass";

/**
 * What a demand is about, always for one portion as eaten: an amount, a share of the energy
 * (0 to 1, or text such as `"25 %"`), or the ratio of two amounts, each in its own unit.
 */
export type DemandSubject =
  | { readonly of: Quantity; readonly energyShareOf?: never; readonly ratioOf?: never }
  | { readonly energyShareOf: EnergyShareOf; readonly of?: never; readonly ratioOf?: never }
  | { readonly ratioOf: readonly [Quantity, Quantity]; readonly of?: never; readonly energyShareOf?: never };

/**
 * How much: one figure, or a limit, or a band. A bare number is in the component's own unit; text
 * may carry a unit (`"60 g"`, `"650 kcal"`) or be an exact fraction (`"1/3"`).
 */
export type DemandAmount =
  | { readonly exactly: Value; readonly least?: never; readonly most?: never }
  | { readonly least: Value; readonly most?: Value; readonly exactly?: never }
  | { readonly most: Value; readonly least?: Value; readonly exactly?: never };

/** What a portion must meet. A firm demand never yields to another. */
export type Demand = DemandSubject & DemandAmount & { readonly firm?: boolean };
