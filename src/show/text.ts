import { size } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { clean, isolate } from "./clean.ts";
import type { Parts } from "./parts.ts";
import type { Table } from "./table.ts";
import {
  firstRows,
  headingOf,
  type RowsOptions,
  rowsShape,
  type Showable,
  shownCells,
  tablesFrom,
} from "./tabular.ts";
import { displayWidth, wrap } from "./width.ts";

export interface TextOptions extends RowsOptions {
  /** The most columns of the terminal to fill: 20 or more, 100 unless told; `Infinity` for no limit. */
  readonly width?: number;
}

const textHow: () => Schema<TextOptions> = /* @__PURE__ */ once(() =>
  fields<TextOptions>({
    ...rowsShape(),
    width: optional(size("a width of 20 columns or more, or Infinity", 20)),
  }),
);

/** A plan of many people is thousands of lines: on a terminal its summary comes first. */
const TEXT_PARTS: Parts = "summary";
const GAP = "  ";
const RULE = "─";
/** Words are wrapped no narrower than this; after that the columns go into blocks below each other. */
const NARROWEST = 16;

/**
 * Tables for a terminal: columns aligned by display width, long words wrapped, and where the
 * columns do not fit beside each other, blocks that each repeat the first column. Text from
 * outside cannot move its neighbours: see the rules in `clean.ts`. No trailing newline.
 *
 * Of a plan it shows the summary, unless `parts` asks for more.
 *
 * Throws `table-malformed`.
 */
export function toText(x: Showable, how: TextOptions = {}): string {
  const { width = 100 } = read(textHow(), how, "table-malformed");
  return tablesFrom(x, { parts: TEXT_PARTS, ...how })
    .map((t) => tableText(firstRows(t, how), width))
    .join("\n\n");
}

function tableText(t: Table, width: number): string {
  const lines: string[] = [];
  if (t.title !== undefined) prose(t.title, width, lines);
  const rows = t.rows.map((row) => shownCells(row, t.columns.length).map(clean));
  const headings = t.columns.map((c) => clean(headingOf(c)));
  for (const [i, block] of blocks(sizes(t, headings, rows), width).entries()) {
    if (i > 0) lines.push("");
    blockText(t, { headings, rows }, block, width, lines);
  }
  for (const note of t.notes) prose(note, width, lines);
  return lines.join("\n");
}

interface Shown {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Some of a table's columns, and how wide each is set. */
interface Block {
  readonly columns: readonly number[];
  readonly widths: readonly number[];
}

function blockText(t: Table, shown: Shown, block: Block, width: number, lines: string[]): void {
  const ends = block.columns.map((c) => t.columns[c]?.align === "end");
  const put = (cells: readonly string[], from: "top" | "bottom"): void => {
    const wrapped = block.columns.map((c, i) => wrap(cells[c] ?? "", block.widths[i] ?? 0));
    const height = largest(wrapped.map((w) => w.length));
    for (let h = 0; h < height; h += 1) {
      const at = wrapped.map((w) => w[from === "top" ? h : h - height + w.length] ?? "");
      lines.push(
        at
          .map((text, i) => pad(text, block.widths[i] ?? 0, ends[i] ?? false))
          .join(GAP)
          .trimEnd(),
      );
    }
  };
  const rule = block.widths.map((w) => RULE.repeat(w)).join(GAP);
  put(shown.headings, "bottom");
  lines.push(rule);
  t.rows.forEach((row, r) => {
    const before = t.rows[r - 1]?.kind;
    if (row.kind === "group") {
      if (r > 0) lines.push("");
      prose(row.heading, width, lines);
      return;
    }
    if (row.kind !== "body" && before === "body") lines.push(rule);
    put(shown.rows[r] ?? [], "top");
  });
}

/** How wide a column would stand, and how narrow it may. */
interface Size {
  readonly natural: number;
  readonly least: number;
}

function sizes(t: Table, headings: readonly string[], rows: readonly (readonly string[])[]): Size[] {
  const body = headings.map(() => 1);
  rows.forEach((cells, r) => {
    if (t.rows[r]?.kind === "group") return;
    for (let c = 0; c < cells.length; c += 1) body[c] = Math.max(body[c] ?? 0, widest(cells[c] ?? ""));
  });
  return headings.map((heading, c) => {
    const natural = Math.max(body[c] ?? 0, widest(heading));
    // A figure is kept whole; its heading may go over several lines, and so may words.
    const whole = Math.max(body[c] ?? 0, largest(heading.split(/[ \n]+/).map(displayWidth)));
    return { natural, least: t.columns[c]?.align === "end" ? whole : Math.min(natural, NARROWEST) };
  });
}

/** Sets the columns side by side where they fit at their least width, else block under block. */
function blocks(all: readonly Size[], width: number): Block[] {
  const half = Math.floor((width - GAP.length) / 2);
  const size = all.map(({ natural, least }) => ({ natural, least: Math.min(least, half) }));
  const groups: number[][] = [[0]];
  let used = size[0]?.least ?? 0;
  for (let c = 1; c < size.length; c += 1) {
    const more = GAP.length + (size[c]?.least ?? 0);
    const current = groups.at(-1) ?? [];
    if (used + more > width && current.length > 1) {
      groups.push([0, c]);
      used = (size[0]?.least ?? 0) + more;
    } else {
      current.push(c);
      used += more;
    }
  }
  return groups.map((columns) => ({
    columns,
    widths: spread(
      columns.map((c) => size[c] ?? { natural: 1, least: 1 }),
      width - GAP.length * (columns.length - 1),
    ),
  }));
}

/** Widths between least and natural that fill the room, the widest columns giving way first. */
function spread(size: readonly Size[], room: number): number[] {
  const at = (cap: number): number[] =>
    size.map(({ least, natural }) => Math.max(least, Math.min(natural, cap)));
  const fits = (cap: number): boolean => at(cap).reduce((a, b) => a + b, 0) <= room;
  let low = 0;
  let high = largest(size.map((s) => s.natural));
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  return at(low);
}

function prose(text: string, width: number, lines: string[]): void {
  for (const line of wrap(clean(text), width)) lines.push(isolate(line));
}

function widest(text: string): number {
  if (!text.includes("\n")) return displayWidth(text.trim());
  return largest(text.split("\n").map((line) => displayWidth(line.trim())));
}

function pad(text: string, width: number, atEnd: boolean): string {
  const spaces = " ".repeat(Math.max(0, width - displayWidth(text)));
  return atEnd ? spaces + isolate(text) : isolate(text) + spaces;
}

/** As `Math.max`, for lists of any length. */
function largest(numbers: readonly number[]): number {
  return numbers.reduce((a, b) => Math.max(a, b), 0);
}
