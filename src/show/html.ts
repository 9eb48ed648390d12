import { read } from "../document/read.ts";
import { clean } from "./clean.ts";
import type { Cell, Column, Row, Table } from "./table.ts";
import { firstRows, headingOf, type RowsOptions, rowsHow, type Showable, tablesFrom } from "./tabular.ts";

export interface HtmlOptions extends RowsOptions {}

/**
 * Tables as a fragment of HTML, to put inside a page: a `table` with its caption, scoped headings
 * and closing totals in `tfoot`, then its notes as a list. Everything from outside is escaped. It
 * needs no style or script; a page may style `td[data-tone="unknown"]` and the like. A name that
 * runs from right to left cannot move its neighbours, since each cell is a paragraph of its own.
 *
 * Throws `table-malformed`.
 */
export function toHtml(x: Showable, how: HtmlOptions = {}): string {
  read(rowsHow(), how, "table-malformed");
  return tablesFrom(x, how)
    .map((t) => tableHtml(firstRows(t, how)))
    .join("\n");
}

function tableHtml(t: Table): string {
  const caption = t.title === undefined ? [] : [`<caption>${escapeHtml(t.title)}</caption>`];
  const headings = t.columns.map((c) => `<th scope="col"${aligned(c)}>${escapeHtml(headingOf(c))}</th>`);
  const foot = footStart(t.rows);
  const notes = t.notes.map((note) => `<li>${escapeHtml(note)}</li>`);
  return [
    "<table>",
    ...caption,
    `<thead><tr>${headings.join("")}</tr></thead>`,
    ...bodies(t, t.rows.slice(0, foot)),
    ...(foot < t.rows.length
      ? ["<tfoot>", ...t.rows.slice(foot).map((row) => rowHtml(t, row)), "</tfoot>"]
      : []),
    "</table>",
    ...(notes.length > 0 ? [`<ul>${notes.join("")}</ul>`] : []),
  ].join("\n");
}

/** Text as HTML that shows it and does nothing else; safe inside an element or a quoted attribute. */
export function escapeHtml(text: string): string {
  return clean(text).replace(/[&<>"'\n]/g, (c) => ENTITIES[c] ?? c);
}

const ENTITIES: { readonly [character: string]: string } = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
  "\n": "<br>",
};

/** Each group is a `tbody` of its own, so that its heading's scope is the rows under it. */
function bodies(t: Table, rows: readonly Row[]): string[] {
  const lines = ["<tbody>"];
  for (const row of rows) {
    if (row.kind === "group" && lines.length > 1) lines.push("</tbody>", "<tbody>");
    lines.push(rowHtml(t, row));
  }
  return [...lines, "</tbody>"];
}

function rowHtml(t: Table, row: Row): string {
  if (row.kind === "group") {
    const across = `<th scope="rowgroup" colspan="${t.columns.length}" style="text-align:start">`;
    return `<tr data-row="group">${across}${escapeHtml(row.heading)}</th></tr>`;
  }
  const kind = row.kind === "body" ? "" : ` data-row="${row.kind}"`;
  return `<tr${kind}>${row.cells.map((cell, c) => cellHtml(t.columns[c], cell, c === 0)).join("")}</tr>`;
}

function cellHtml(column: Column | undefined, cell: Cell, first: boolean): string {
  const style = column === undefined ? "" : aligned(column);
  if (typeof cell === "string") {
    return first
      ? `<th scope="row"${style}>${escapeHtml(cell)}</th>`
      : `<td${style}>${escapeHtml(cell)}</td>`;
  }
  const tone = cell.tone === "known" ? "" : ` data-tone="${cell.tone}"`;
  return `<td${tone}${style}>${escapeHtml(cell.text)}</td>`;
}

// A host page's own rule for tables may set everything to one side, figures and words alike.
function aligned(column: Column): string {
  return ` style="text-align:${column.align}"`;
}

function footStart(rows: readonly Row[]): number {
  let start = rows.length;
  while (start > 0 && rows[start - 1]?.kind === "total") start -= 1;
  return start;
}
