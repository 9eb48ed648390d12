import type { Amount } from "../../measure/amount.ts";
import type { Exact } from "../../number/exact.ts";

/** What every line of a meal is multiplied by for someone, by dish and line. */
export type LineFactors = ReadonlyMap<string, readonly Exact[]>;

/** Amounts as they were measured, by line; nothing where a line was not. */
export type LineAmounts = readonly (Amount | undefined)[];

/** Grams of each line that someone keeps of a meal, by dish. */
export type KeptAmounts = { readonly [dish: string]: { readonly [line: string]: Exact } };
