import { type Language, say } from "../../document/language.ts";
import { fault } from "../../number/error.ts";
import { exact } from "../../number/exact.ts";
import type { Cell, Row, Table } from "../../show/table.ts";
import { type Page, type PageCell, pageNames } from "./page.ts";

/** As many rows as a page has (ISO/IEC 29500-1, 18.3.1.73, from memory: 1,048,576), less those of title and headings. */
const MOST_ROWS = 1_048_576 - 2;

/**
 * A page for each table: figures as numbers, and behind a column in which some are no more than a bound, or lie
 * between ends, a column that says so. Throws `workbook-malformed` for more rows than a page has.
 */
export function tablePages(tables: readonly Table[], language: Language): readonly Page[] {
  const names = pageNames(tables.map(({ title = say(language, "Table") }) => title));
  return tables.map((table, i) => tablePage(names[i] ?? "", table, language));
}

function tablePage(name: string, { title, columns, rows, notes }: Table, language: Language): Page {
  if (rows.length > MOST_ROWS) {
    const hint = "write fewer at a time, or as values between commas: toCsv";
    throw fault("workbook-malformed", `${rows.length} rows, and a page has ${MOST_ROWS}`, hint);
  }
  const isBounded = columns.map((_, c) =>
    rows.some((row) => row.kind !== "group" && boundOf(row.cells[c] ?? "") !== ""),
  );
  const across = (of: (c: number) => readonly PageCell[]): PageCell[] => columns.flatMap((_, c) => of(c));
  const heading = across((c) => {
    const { heading: text = "", unit } = columns[c] ?? {};
    const head: PageCell = { text: unit === undefined ? text : `${text}, ${unit}`, look: "heading" };
    return isBounded[c] ? [head, { text: say(language, "Bound"), look: "heading" }] : [head];
  });
  const cells = (row: Row): PageCell[] =>
    row.kind === "group"
      ? [{ text: row.heading, look: "totalText" }]
      : across((c) => {
          const cell = row.cells[c] ?? "";
          const bound = boundOf(cell);
          return isBounded[c]
            ? [cellOf(cell), bound === "" ? undefined : { text: say(language, bound) }]
            : [cellOf(cell)];
        });
  return {
    name,
    rows: [
      [{ text: title ?? name, look: "title" }],
      heading,
      ...rows.map(cells),
      ...notes.map((text): PageCell[] => [{ text }]),
    ],
    widths: [24],
    otherWidth: 14,
    heading: { rows: 2, columns: 1 },
  };
}

function cellOf(cell: Cell): PageCell {
  if (typeof cell === "string") return cell === "" ? undefined : { text: cell };
  return cell.value === null ? undefined : { value: exact(cell.value) };
}

/** What is to be said of a figure that is no point. */
function boundOf(cell: Cell): string {
  if (typeof cell === "string") return "";
  const { tone } = cell;
  return tone === "at-least" || tone === "at-most" || tone === "between" ? tone.replace("-", " ") : "";
}
