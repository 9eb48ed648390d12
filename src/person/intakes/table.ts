import type { ComponentId } from "../../food/components.ts";
import type { Check } from "../check.ts";

/** Whose figures: `"nordic"` the Nordic and Baltic countries, `"who"` the World Health Organization and FAO, both in part. */
export type Authority = "uk" | "us" | "eu" | "nordic" | "who";

/** What kind of figure a reference is, in its authority's own words; an energy need is no published figure. */
export type ReferenceKind =
  | "energy need"
  | "RNI"
  | "RDA"
  | "RI"
  | "AI"
  | "PRI"
  | "safe intake"
  | "safe and adequate intake"
  | "AMDR"
  | "dietary guideline"
  | "population goal"
  | "NRV"
  | "NRV-R"
  | "NRV-NCD"
  | "DV";

/**
 * What kind of figure an upper level is. Only `UL`, `SUL` and `TDI` were set from evidence of harm; a `TDI`
 * (tolerable daily intake) is of what nobody needs, an `ADI` (acceptable daily intake) of what is added or used
 * on crops besides being needed, both of the mean of a life.
 */
export type UpperKind =
  | "UL"
  | "SUL"
  | "guidance level"
  | "safe level of intake"
  | "CDRR"
  | "TDI"
  | "ADI"
  | "population goal"
  | "advice";

/** The terms that an amount is counted in, where a nutrient has more than one. */
export type Basis =
  | "RAE"
  | "RE"
  | "retinol"
  | "DFE"
  | "folate"
  | "folic acid"
  | "NE"
  | "nicotinic acid"
  | "nicotinamide"
  | "alpha-tocopherol"
  | "alpha-tocopherol equivalents"
  | "phylloquinone";

/** Which intake an upper level counts. Only the first three can be compared with what food brings. */
export type Covers =
  | "all sources"
  | "preformed, all sources"
  | "added folic acid"
  | "supplements"
  | "supplements and fortified food"
  | "supplements and fortified food and water";

/** What an amount is published for: a day, or a day and each kilogram, megajoule or per cent of energy. */
export type Per = "day" | "kg" | "MJ" | "% energy";

/**
 * A group of people as a table heads its columns: a letter (M men and boys, F women and girls, P
 * pregnant, L breastfeeding, none for both sexes) and an age in completed years, `19-30` or `71+`. `P23 14-18` is
 * of the second and third trimester, `L6 18+` of breastfeeding from six months after the birth: the later stands first.
 */
export type StageText = string;

/**
 * What a row says, apart from its kind. Figures stand as printed, one for each stage:
 * `-` is none, `=` the figure of the same age when neither pregnant nor breastfeeding, `3-7` a range.
 */
export interface IntakeRow {
  /** The components that the figure counts; several are summed. */
  readonly of: readonly [ComponentId, ...ComponentId[]];
  readonly values: string;
  /** The unit as printed, where it is not the component's own. */
  readonly unit?: "g" | "mg" | "µg";
  readonly per?: Per;
  readonly basis?: Basis;
  /**
   * What pregnancy and breastfeeding add to the figure of the same age: one amount, or one for each
   * trimester; for breastfeeding, one at first and one from some month after the birth.
   */
  readonly adds?: {
    readonly pregnant?: string | readonly [string, string, string];
    readonly breastfeeding?:
      | string
      | { readonly first: string; readonly later: string; readonly fromMonth: number };
  };
  /** Read only for people of whom this holds. */
  readonly when?: "premenopausal" | "postmenopausal" | { readonly phytate: string };
  readonly note?: string;
  readonly source?: string;
  readonly check: Check;
  /** The stages and additions that `check` speaks of, where it is not the whole row: the rest is unverified. */
  readonly seen?: readonly (StageText | "adds pregnant" | "adds breastfeeding")[];
}

export interface ReferenceRow extends IntakeRow {
  readonly kind: ReferenceKind;
}

export interface UpperRow extends IntakeRow {
  readonly kind: UpperKind;
  readonly covers: Covers;
}

/** One published table. */
export interface IntakeTable {
  readonly source: string;
  readonly stages: readonly StageText[];
  /** What the authority has of mothers was not read: a figure that leaves them out is to say so. */
  readonly mothers?: "not read";
  readonly references?: readonly ReferenceRow[];
  readonly uppers?: readonly UpperRow[];
}

/** Values for food labels: one figure for a component, whoever eats. */
export interface LabelTable {
  readonly source: string;
  /** Whom the figures stand for. */
  readonly for: string;
  readonly references: readonly ReferenceRow[];
}
