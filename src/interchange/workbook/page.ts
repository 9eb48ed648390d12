import type { Exact } from "../../number/exact.ts";

/** How a cell looks: its place among the styles of the workbook (package.ts). */
export type Look = "text" | "figure" | "heading" | "title" | "total" | "totalText" | "input";

/** A cell: text that stays text, a figure, or a formula with what it comes to; undefined is empty. */
export type PageCell =
  | { readonly text: string; readonly look?: Look }
  | { readonly value: Exact; readonly look?: Look }
  | { readonly formula: string; readonly value: Exact | string; readonly look?: Look }
  | undefined;

/** One page of a workbook. */
export interface Page {
  readonly name: string;
  readonly rows: readonly (readonly PageCell[])[];
  /** Widths of its first columns, in digits; of the others `otherWidth`. */
  readonly widths: readonly number[];
  readonly otherWidth: number;
  /** Rows and columns that stay in sight, and are printed on each sheet of paper. */
  readonly heading: { readonly rows: number; readonly columns: number };
}

/** A column by its place from 0, as references have it: `A`, `AB`. */
export function columnName(place: number): string {
  const letter = String.fromCharCode(65 + (place % 26));
  return place < 26 ? letter : columnName(Math.floor(place / 26) - 1) + letter;
}

/** A cell by its row and column from 0: `B3`; `fixed` stays when a formula is copied: `$B$3`. */
export function cellName(row: number, column: number, fixed = false): string {
  return fixed ? `$${columnName(column)}$${row + 1}` : `${columnName(column)}${row + 1}`;
}

/** The cells of one column from a row up to another, that one left out. */
export function rangeName(column: number, from: number, to: number, fixed = false): string {
  return `${cellName(from, column, fixed)}:${cellName(to - 1, column, fixed)}`;
}

/** The name of a page as formulas have it, before the `!`. */
export function quotedName(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}

/** Names of pages from names of dishes: what no page may be called left out, at most 31 characters, no two alike. */
export function pageNames(names: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    const plain = name
      .replace(/[\p{Cc}:\\/?*[\]]|[\uD800-\uDFFF](?![\uDC00-\uDFFF])/gu, " ")
      .replace(/\s+/g, " ")
      .replace(/^[' ]+|[' ]+$/g, "");
    const cut = (text: string, room: number): string => {
      let made = "";
      for (const character of text) {
        if (made.length + character.length > room) break;
        made += character;
      }
      return made.replace(/[' ]+$/, "");
    };
    let made = cut(plain, 31) || "1";
    for (let k = 2; taken.has(made.toLowerCase()); k += 1)
      made = `${cut(plain, 31 - ` (${k})`.length)} (${k})`.trim();
    taken.add(made.toLowerCase());
    return made;
  });
}
