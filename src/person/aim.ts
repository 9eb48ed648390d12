import type { Exact, Value } from "../number/exact.ts";
import type { EquationId } from "./equations/equation.ts";

/** How fast to lose or gain: per cent of the day's need (15, `"15 %"`), kcal a day (300, `"300 kcal"`, `"1.2 MJ"`), or body mass a week. */
export type Rate =
  | { readonly percent: Value; readonly kcal?: never; readonly perWeek?: never }
  | { readonly kcal: Value; readonly percent?: never; readonly perWeek?: never }
  /** `"0.5 kg"`, `"1 lb"`; a bare number is kilograms. */
  | { readonly perWeek: Value; readonly percent?: never; readonly kcal?: never };

/** One figure, or limits. */
export type Wanted = Value | { readonly least?: Value; readonly most?: Value };

/** Grams per kilogram of body mass or of lean mass, or a share of energy (`0.25`, `"25 %"`). */
export type MacroAim =
  | { readonly perKg: Wanted; readonly perKgLean?: never; readonly share?: never }
  | { readonly perKgLean: Wanted; readonly perKg?: never; readonly share?: never }
  | { readonly share: Wanted; readonly perKg?: never; readonly perKgLean?: never };

/** What a day is to bring about. */
export interface Aim {
  readonly weight: "hold" | { readonly lose: Rate } | { readonly gain: Rate };
  readonly protein?: MacroAim;
  readonly fat?: MacroAim;
  readonly carbohydrate?: MacroAim;
  /** At least this many grams for every 1,000 kcal. */
  readonly fibre?: { readonly per1000kcal: Value };
  readonly equation?: EquationId;
}

export interface Band {
  readonly exactly?: Exact;
  readonly least?: Exact;
  readonly most?: Exact;
}

export type MacroName = "protein" | "fat" | "carbohydrate";

/** How fast, and how much of a macronutrient, as they are read: by what, and the figure. */
export type ReadRate = readonly ["percent" | "kcal" | "perWeek", Exact];
export type ReadMacro = readonly ["perKg" | "perKgLean" | "share", Band];

/** An aim once read. */
export interface AimFacts {
  readonly direction: "hold" | "lose" | "gain";
  readonly rate?: { readonly kind: "percent" | "kcal" | "kgPerWeek"; readonly value: Exact };
  readonly macros: {
    readonly [M in MacroName]?: { readonly by: "perKg" | "perKgLean" | "share"; readonly band: Band };
  };
  readonly fibrePer1000?: Exact;
  readonly equation?: EquationId;
}
