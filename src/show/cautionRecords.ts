import type { PortionCaution } from "../person/portion/cautions.ts";
import { tallyRow } from "./tallyRow.ts";
import type { TidyRow } from "./tidy.ts";

/** Columns of the records of cautions beside those of every result. */
export const cautionColumns: readonly string[] = ["code", "text", "for", "check"];

/** What to heed: a row for each line that gives cause, or for the whole, and for each figure spoken of. */
export function* cautionRows(head: TidyRow, cautions: readonly PortionCaution[]): Generator<TidyRow> {
  for (const { code, text, source, check, lines, because, amounts } of cautions) {
    const own = { ...head.own, code, text, for: because.join(", "), check };
    const row: TidyRow = { ...head, what: "caution", source, own };
    for (const line of lines) yield { ...row, row: "line", line };
    if (lines.length === 0 && amounts.length === 0) yield row;
    for (const { of, amount } of amounts) yield { ...row, component: of, ...tallyRow(amount) };
  }
}
