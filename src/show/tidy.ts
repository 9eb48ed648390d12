import { anyText } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, list, once, optional, type Schema, type Shape } from "../document/schema.ts";
import type { Ratio } from "../number/ratio.ts";

/**
 * One figure, with whose it is and what it is, before it is made a number or text. What does not apply
 * is left out.
 */
export interface TidyRow {
  /** What many rows share: it stands where the row itself says nothing. */
  readonly head?: TidyRow | undefined;
  /** The recipe's name. */
  readonly sheet?: string | undefined;
  readonly person?: string | undefined;
  readonly day?: string | undefined;
  readonly meal?: string | undefined;
  readonly dish?: string | undefined;
  /** A line's key. */
  readonly line?: string | undefined;
  /** A food's id. */
  readonly food?: string | undefined;
  /** A line, or which sum of lines. */
  readonly row?: string | undefined;
  /** What the amount is, where there are several of one component: `raw`, `eaten`, `before`, `change`. */
  readonly what?: string | undefined;
  /** A component's id, `mass`, or the name of a column of one's own. */
  readonly component?: string | undefined;
  /** Nothing where nothing is known, or where the row says something else than an amount. */
  readonly amount?: Ratio | undefined;
  readonly unit?: string | undefined;
  readonly bound?: string | undefined;
  readonly least?: Ratio | undefined;
  readonly most?: Ratio | undefined;
  readonly coverage?: Ratio | undefined;
  /** What the figures behind the amount say of themselves, apart by spaces: `derived presumed`. */
  readonly marks?: string | undefined;
  /** Keys of the lines that say nothing, apart by commas. */
  readonly silent?: string | undefined;
  readonly source?: string | undefined;
  /** What only this kind of result has, by the names of `Tidy.own`. */
  readonly own?: { readonly [column: string]: string | Ratio | undefined };
}

/** A result as tidy rows: all with the same columns. */
export interface Tidy {
  /** Columns that this kind of result has beside those of {@link TidyRow}, in their order. */
  readonly own: readonly string[];
  readonly rows: Iterable<TidyRow>;
}

/** What rows are asked for. */
export interface Asked {
  /** Rows of these alone: ids of components, `mass`, names of columns of one's own; all unless told. */
  readonly components?: readonly string[];
}

/** @internal The fields of {@link Asked}, for options that have more. */
export function askedShape(): Shape<Asked> {
  return { components: optional(list(anyText())) };
}

const askedSchema: () => Schema<Asked> = /* @__PURE__ */ once(() => fields<Asked>(askedShape()));

/** Refuses what asks for no rows that there could be. Throws `table-malformed`. */
export function checkAsked(asked: unknown): void {
  read(askedSchema(), asked, "table-malformed");
}
