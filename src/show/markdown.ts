import { read } from "../document/read.ts";
import { clean, isolate } from "./clean.ts";
import type { Row, Table } from "./table.ts";
import {
  firstRows,
  headingOf,
  type RowsOptions,
  rowsHow,
  type Showable,
  shownCells,
  tablesFrom,
} from "./tabular.ts";

export interface MarkdownOptions extends RowsOptions {}

/**
 * Tables as GitHub Flavored Markdown: the title in bold, the table, its notes as a list. Text from
 * outside is escaped, so that it shows as it was written: no markup, no link, no formula, no further
 * cell. Line breaks inside a cell are `<br>`.
 *
 * Throws `table-malformed`.
 */
export function toMarkdown(x: Showable, how: MarkdownOptions = {}): string {
  read(rowsHow(), how, "table-malformed");
  return tablesFrom(x, how)
    .map((t) => tableMarkdown(firstRows(t, how)))
    .join("\n\n");
}

function tableMarkdown(t: Table): string {
  const title = t.title === undefined ? "" : escapeMarkdown(t.title);
  const grid = [
    line(t.columns.map((c) => escapeMarkdown(headingOf(c)))),
    line(t.columns.map((c) => (c.align === "end" ? "---:" : ":---"))),
    ...t.rows.map((row) => rowMarkdown(row, t.columns.length)),
  ];
  const notes = t.notes.map(noteMarkdown).filter((note) => note !== "");
  return [title === "" ? "" : strong(title), grid.join("\n"), notes.join("\n")]
    .filter((part) => part !== "")
    .join("\n\n");
}

function rowMarkdown(row: Row, columns: number): string {
  const cells = shownCells(row, columns).map(escapeMarkdown);
  return line(row.kind === "body" ? cells : cells.map(strong));
}

function line(cells: readonly string[]): string {
  return `| ${cells.join(" | ")} |`;
}

function strong(text: string): string {
  return text === "" ? "" : `**${text}**`;
}

/** A note is a list item, which could start another list, a heading or a quotation of its own. */
function noteMarkdown(note: string): string {
  const text = escapeMarkdown(note);
  return text === "" ? "" : `- ${text.replace(/^[-+#=]/, "\\$&").replace(/^(\d+)([.)])/, "$1\\$2")}`;
}

/**
 * Text as markdown that shows it, ends trimmed. Backslashes as CommonMark 0.31.2 allows them (section
 * 2.4); those in front of `:`, `@` and a point inside a word keep addresses from becoming links.
 */
export function escapeMarkdown(text: string): string {
  return isolate(clean(text).trim())
    .replace(/[\\`*_{}[\]~$:@^]/g, "\\$&")
    .replace(/\.(?=\p{L})|(?<=\p{L})\.(?=\p{N})/gu, "\\.")
    .replace(/[&<>|]/g, (c) => ENTITIES[c] ?? c)
    .replaceAll("\n", "<br>");
}

const ENTITIES: { readonly [character: string]: string } = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  "|": "&#124;",
};
