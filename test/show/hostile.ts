import fc from "fast-check";
import { exact, fraction, greatest, least } from "../../src/number/exact.ts";
import { figureCell, rangeFigure } from "../../src/show/figure.ts";
import type { Cell, Column, Row, Table, Tone } from "../../src/show/table.ts";

/** Texts that have broken renderers before, whole or in pieces. */
export const HOSTILE: readonly string[] = [
  "<img src=x onerror=alert(1)>",
  "</td></tr></table><script>alert(1)</script>",
  "<!-- ",
  "]]>",
  "&lt;b&gt; &amp; &#60; &bogus",
  '" onmouseover="alert(1)',
  "' onfocus='alert(1)",
  "=cmd|'/c calc'!A1",
  "+1+1",
  "-2+3",
  "@SUM(1)",
  "＝1+1",
  "－1",
  " \t=1",
  "a;=1",
  'a;"=1',
  "a\n=1",
  "'=1",
  "| a | b |",
  "\\| a \\\\| b \\",
  "one\ntwo\r\nthree\rfour\u2028five\u0085six",
  "`code` ``more``",
  "**bold** _it_ *it* ~~gone~~",
  "[a](javascript:alert(1)) ![b](x) [c] [d]: e",
  "https://example.org www.example.org someone@example.org example.org a@1.2",
  "$x^2$ $$y$$ \\(z\\)",
  "# heading",
  "- item",
  "1. item",
  "> quoted",
  "---",
  "===",
  "```\nfence",
  ":smile: {{x}} {% y %}",
  "abc\u202Efed\u202C",
  "\u2067abc\u2069",
  "\u200Fabc\u200E\u061C",
  "שיבולת שועל",
  "شوفان ١٢",
  "\u001B[31mred\u001B[0m \u009B2J \u0007\u0008\u0000",
  "燕麦 ｶﾞ 한국",
  "🥣 👩‍🍳 🇬🇧 ✔️ 1️⃣",
  "e\u0301 अजवाइन ไทย",
  "\uD83E lone \uDD63",
  "\uFEFFmark\u00ADsoft\u200Bzero",
  "   ",
  "",
  "__proto__",
  "constructor",
];

export const hostileText: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(...HOSTILE),
  fc.string({ unit: "binary", maxLength: 12 }),
  fc.string({ unit: "grapheme", maxLength: 12 }),
  fc
    .array(fc.oneof(fc.constantFrom(...HOSTILE), fc.constantFrom(..."=+-@;'\"|\\`*_<>&[]()!~$:#\n ,.")), {
      maxLength: 6,
    })
    .map((parts) => parts.join("")),
);

const tones = fc.constantFrom<Exclude<Tone, "unknown" | "between">>(
  "known",
  "derived",
  "presumed",
  "borrowed",
  "trace",
  "at-least",
  "at-most",
);

export const anyFraction = fc
  .tuple(fc.bigInt(-(10n ** 12n), 10n ** 12n), fc.bigInt(1n, 10n ** 6n))
  .map(([n, d]) => fraction(n, d));

export const anyFigure = fc.oneof(
  fc.constant(figureCell(null)),
  fc.tuple(anyFraction, tones).map(([f, tone]) => figureCell(f, { tone })),
  fc.integer({ min: -5000, max: 5000 }).map((n) => figureCell(exact(n), { grouped: true })),
  fc.tuple(anyFraction, anyFraction).map(([a, b]) => rangeFigure(a, least(a, b), greatest(a, b))),
);

export const anyCell: fc.Arbitrary<Cell> = fc.oneof(hostileText, anyFigure);

function rowOf(columns: number, cell: fc.Arbitrary<Cell>, heading: fc.Arbitrary<string>): fc.Arbitrary<Row> {
  const cells = fc.array(cell, { minLength: columns, maxLength: columns });
  return fc.oneof(
    { weight: 6, arbitrary: cells.map((c): Row => ({ kind: "body", cells: c })) },
    { weight: 1, arbitrary: cells.map((c): Row => ({ kind: "subtotal", cells: c })) },
    { weight: 1, arbitrary: cells.map((c): Row => ({ kind: "total", cells: c })) },
    { weight: 1, arbitrary: heading.map((h): Row => ({ kind: "group", heading: h })) },
  );
}

/** Any table, its words drawn from `text`. */
export function tables(text: fc.Arbitrary<string> = hostileText): fc.Arbitrary<Table> {
  const key = text.filter((k) => k !== "" && k !== "__proto__");
  const columns = fc.uniqueArray(
    fc.record(
      { key, heading: text, unit: text, align: fc.constantFrom("start", "end") },
      {
        requiredKeys: ["key", "heading", "align"],
      },
    ) as fc.Arbitrary<Column>,
    { selector: (c) => c.key, minLength: 1, maxLength: 4 },
  );
  return columns.chain((cols) =>
    fc.record(
      {
        columns: fc.constant(cols),
        rows: fc.array(rowOf(cols.length, fc.oneof(text, anyFigure), text), { maxLength: 6 }),
        notes: fc.array(text, { maxLength: 3 }),
        title: text,
      },
      { requiredKeys: ["columns", "rows", "notes"] },
    ),
  );
}

/*
 * What should be left of a text, written apart from the code under test: code point by code point.
 * Direction marks: UAX #9, section 2. Other invisible marks: Unicode's Default_Ignorable_Code_Point list
 * (DerivedCoreProperties.txt), unverified, less joiners and variation selectors.
 */
const DROPPED: readonly (readonly [number, number])[] = [
  [0x00ad, 0x00ad],
  [0x034f, 0x034f],
  [0x061c, 0x061c],
  [0x115f, 0x1160],
  [0x17b4, 0x17b5],
  [0x180e, 0x180e],
  [0x200b, 0x200b],
  [0x200e, 0x200f],
  [0x202a, 0x202e],
  [0x2060, 0x206f],
  [0x3164, 0x3164],
  [0xfeff, 0xfeff],
  [0xffa0, 0xffa0],
  [0xfff0, 0xfffb],
  [0x1bca0, 0x1bca3],
  [0x1d173, 0x1d17a],
  [0xe0000, 0xe00ff],
  [0xe01f0, 0xe0fff],
];
const LINE_ENDS = [0x0a, 0x0b, 0x0c, 0x0d, 0x85, 0x2028, 0x2029];

export function neutral(text: string): string {
  let out = "";
  let before = 0;
  for (const character of text) {
    const c = character.codePointAt(0) ?? 0;
    if (c === 0x0a && before === 0x0d) out += "";
    else if (LINE_ENDS.includes(c)) out += "\n";
    else if (c === 0x09) out += " ";
    else if (c < 0x20 || (c >= 0x7f && c <= 0x9f) || (c >= 0xd800 && c <= 0xdfff)) out += "\uFFFD";
    else if (!DROPPED.some(([from, to]) => c >= from && c <= to)) out += character;
    before = c;
  }
  return out;
}

/** Without the isolates that a renderer puts round a name that runs from right to left. */
export function withoutIsolates(text: string): string {
  return text.replace(/[\u2068\u2069]/g, "");
}

export const shown = (cell: Cell): string => (typeof cell === "string" ? cell : cell.text);

export const headingText = (c: Column): string => (c.unit ? `${c.heading} (${c.unit})` : c.heading);

/** Every row as its cells' texts, blanks beside a group's heading. */
export function grid(t: Table): string[][] {
  return t.rows.map((row) =>
    row.kind === "group"
      ? [row.heading, ...Array<string>(t.columns.length - 1).fill("")]
      : row.cells.map(shown),
  );
}
