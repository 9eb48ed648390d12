import type { ComponentId } from "../../food/components.ts";
import type { EnergyShareOf } from "../../scale/demand.ts";
import type { Check } from "../check.ts";
import type { Authority } from "../intakes/table.ts";

/** What a published range is of: a share of energy, or that of some fatty acids. */
export type RangeOf =
  | EnergyShareOf
  | Extract<ComponentId, "linoleicAcid" | "alphaLinolenicAcid" | "omega3" | "polyunsaturatedFat" | "transFat">
  | "freeSugars";

/** A range of shares of energy, in per cent, as published. */
export interface EnergyRange {
  readonly authority: Authority;
  readonly of: RangeOf;
  readonly least?: string;
  readonly most?: string;
  /** From this age in years, and below that. */
  readonly from: number;
  readonly below?: number;
  readonly kind: string;
  readonly note?: string;
  readonly source: string;
  readonly check: Check;
}
