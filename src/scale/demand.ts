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
export type Demand = DemandSubject &
  DemandAmount & {
    readonly firm?: boolean;
    /**
     * How sure a `least` or a `most` of a component is to hold, by what is known of how far figures err: 75, 80,
     * 90, 95, 97.5 or 99 per cent (`"90 %"`). Each line then counts with so many of its standard errors, all to
     * the same side; lines of which nobody says how sure they are count as they stand, and are named.
     */
    readonly confidence?: Value;
  };
