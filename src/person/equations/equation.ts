import type { Check } from "../check.ts";

export type EquationId =
  | "mifflin-st-jeor"
  | "henry-2005"
  | "henry-2005-mass"
  | "schofield-1985"
  | "cunningham-1980"
  | "cunningham-1991"
  | "katch-mcardle"
  | "harris-benedict-1984";

/**
 * One line of a published equation: resting energy in kcal a day is the constant plus each
 * coefficient times its measure. Coefficients are as printed, decimals as text.
 */
export interface EquationLine {
  readonly sex?: "female" | "male";
  /** Age in years: from this age, and below that. */
  readonly from?: number;
  readonly below?: number;
  readonly constant: string;
  /** Per kg of body mass. */
  readonly mass?: string;
  /** Per kg of fat-free mass. */
  readonly lean?: string;
  /** Per centimetre of height. */
  readonly heightCm?: string;
  /** Per metre of height. */
  readonly heightM?: string;
  /** Per year of age. */
  readonly age?: string;
}

/** An equation for resting energy, with where it is from and whom it was made for. */
export interface EnergyEquation {
  readonly id: EquationId;
  readonly name: string;
  readonly source: string;
  readonly check: Check;
  readonly population: string;
  /** Ages of the people it was made from; outside, the result carries a caution. */
  readonly ages: { readonly from: number; readonly to?: number };
  readonly lines: readonly EquationLine[];
}
