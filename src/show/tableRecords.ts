import { fixedText } from "../number/digits.ts";
import { magnitude, type Ratio, toFloat } from "../number/ratio.ts";
import type { Cell, Table } from "./table.ts";

/** One row of data: words as they are, figures as numbers or exact text, what there is none of as null. */
export type DataRecord = { readonly [key: string]: string | number | null };

/** One record for each body row of a table, by column keys. */
export function tableRecords(t: Table, figures: "number" | "exact"): DataRecord[] {
  const records: DataRecord[] = [];
  const grouped = t.rows.some((row) => row.kind === "group") && !t.columns.some((c) => c.key === "group");
  const bounded = boundedColumns(t);
  let group: string | null = null;
  for (const row of t.rows) {
    if (row.kind === "group") group = row.heading;
    if (row.kind !== "body") continue;
    const own = t.columns.map((c, i) => [c.key, datum(row.cells[i] ?? null, figures)] as const);
    const bounds = bounded.map(([key, i]) => [key, boundOf(row.cells[i])] as const);
    const all = [...own, ...bounds];
    records.push(Object.fromEntries(grouped ? [["group", group], ...all] : all));
  }
  return records;
}

/**
 * Columns with a figure that only bounds the truth, under the keys that say so: a bare number would
 * pass for exact. Long tables that say it in a column of their own need no other.
 */
export function boundedColumns(t: Table): (readonly [key: string, column: number])[] {
  const keys = t.columns.map(({ key }) => key);
  if (keys.includes("bound")) return [];
  return keys.flatMap((key, i) => {
    const bound = `${key}Bound`;
    const isBounded = t.rows.some((row) => {
      const said = row.kind === "body" ? boundOf(row.cells[i]) : null;
      return said !== null && said !== "point";
    });
    return isBounded && !keys.includes(bound) ? [[bound, i] as const] : [];
  });
}

/** How a figure bounds the truth; nothing of words. */
export function boundOf(
  cell: Cell | undefined,
): "point" | "at-least" | "at-most" | "between" | "unknown" | null {
  if (cell === undefined || typeof cell === "string") return null;
  if (cell.value === null) return "unknown";
  if (cell.tone === "trace") return "at-least";
  const { tone } = cell;
  const isBound = tone === "at-least" || tone === "at-most" || tone === "between" || tone === "unknown";
  return isBound ? tone : "point";
}

function datum(cell: Cell | null, figures: "number" | "exact"): string | number | null {
  if (cell === null || typeof cell === "string") return cell;
  return cell.value === null || figures === "exact" ? cell.value : numberOr(cell.value);
}

/** The nearest double, or the text where no double holds it. */
function numberOr(value: string): number | string {
  const exactly = parsed(value);
  const number = toFloat(exactly);
  return Number.isFinite(number) && (number !== 0 || exactly.n === 0n) ? number : value;
}

/** Exact text as a bare decimal, to 15 significant digits where it is longer. */
export function plainNumber(value: string): string {
  const f = parsed(value);
  const places = 15 - 1 - magnitude(f);
  const text = fixedText(f, places);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/** The value of a checked figure; `exact` has a shorter limit than a figure may need. */
function parsed(value: string): Ratio {
  const [n = "0", d] = value.split("/");
  if (d !== undefined) return { n: BigInt(n), d: BigInt(d) };
  const [whole = "0", part = ""] = n.split(".");
  return { n: BigInt(whole + part), d: 10n ** BigInt(part.length) };
}
