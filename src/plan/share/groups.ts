import type { Amount } from "../../measure/amount.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import type { Exact } from "../../number/exact.ts";
import type { PotAsked } from "../measure/potAsked.ts";
import type { LineAmounts } from "./lineFactors.ts";

/** Someone who eats of a dish, and what each line of one base portion is multiplied by for them. */
export interface Eater {
  readonly person: string;
  readonly factors: readonly Exact[];
  /** Lines that are not in their own version of the dish. */
  readonly lacks?: ReadonlySet<number>;
  /** This portion's, where a kitchen measured it. */
  readonly amounts?: LineAmounts;
  /** What this person measures with, where there is a kitchen. */
  readonly kitchen?: Kitchen | undefined;
}

/** People who can eat of one pot: the held lines that are cooked keep the same ratios for all of them. */
export interface EaterGroup {
  readonly eaters: readonly Eater[];
  /** Lines that go into the pot: cooked, and in the same ratios for everyone. Empty where nothing is. */
  readonly pot: readonly number[];
  /** Lines that are added person by person. */
  readonly apart: readonly number[];
  /** A line of the pot that everyone has some of, by which shares are told. */
  readonly by: number | undefined;
  /** How a kitchen measured the pot, where one did. */
  readonly measured?: MeasuredPot;
}

/** A pot as a kitchen measures it out and shares it. */
export interface MeasuredPot {
  /** Who eats of it, with factors as they were found: the ratios that people need. */
  readonly before: readonly Eater[];
  readonly amounts: LineAmounts;
  /** Each person's share as it is weighed, by id; empty where shares are not. */
  readonly weighed: ReadonlyMap<string, Amount>;
  /** Who gets what is left, which is no whole number of the scale's steps. */
  readonly rest: string | undefined;
  /** What stays in the pot, of it, since nobody's firm demands leave room for it; mostly 0. */
  readonly left: Exact;
  readonly notes: readonly KitchenNote[];
  /** What it was measured with and for whom, for another lot of it; nothing where it stays as it was found. */
  readonly asked: PotAsked | undefined;
}

/** What a cook should know of amounts that a kitchen was to measure. Never an error. */
export interface KitchenNote {
  readonly code:
    | "not-measurable"
    | "not-divided"
    | "shares-exact"
    | "not-rounded"
    | "left-in-pot"
    | "off-target"
    | "not-proven";
  /** The line it speaks of; nothing where it speaks of the whole. */
  readonly line: string | undefined;
  readonly text: string;
}
