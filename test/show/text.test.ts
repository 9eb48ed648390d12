import fc from "fast-check";
import stringWidth from "string-width";
import { describe, expect, it } from "vitest";
import { exact } from "../../src/number/exact.ts";
import { figureCell } from "../../src/show/figure.ts";
import { type Table, table } from "../../src/show/table.ts";
import { toText } from "../../src/show/text.ts";
import { runs } from "../runs.ts";
import {
  anyFigure,
  grid,
  HOSTILE,
  headingText,
  hostileText,
  neutral,
  shown,
  tables,
  withoutIsolates,
} from "./hostile.ts";

const segmenter = new Intl.Segmenter("en", { granularity: "grapheme" });

/** The piece of a line that a terminal shows from one column up to another. */
function columns(line: string, from: number, to: number): string {
  let at = 0;
  let piece = "";
  for (const { segment } of segmenter.segment(line)) {
    const wide = stringWidth(segment);
    // What has no width stands with its neighbour, at the very end too.
    if (at >= from && (at < to || (at === to && wide === 0))) piece += segment;
    at += wide;
  }
  return piece;
}

/** Where the columns stand, read off a rule. */
function stretches(rule: string): [number, number][] {
  return [...rule.matchAll(/─+/g)].map((m) => [m.index, m.index + m[0].length]);
}

const isRule = (line: string | undefined): boolean => line !== undefined && /^─+(?: {2}─+)*$/.test(line);

const count = (text: string): number => [...segmenter.segment(text)].length;

/** Text whose place in a line can be read: a mark at its start would join the space before it. */
const placed = hostileText
  // How wide an unassigned character would be depends on the Unicode version asked.
  .map((text) => text.replace(/\p{Cn}/gu, "x"))
  .filter((text) => count(` ${neutral(text)} `) === count(neutral(text)) + 2);

/** One line of words as the terminal should show it. */
const oneLine = placed.map((t) => t.replace(/[\n\r\v\f\u0085\u2028\u2029]/g, " "));
const asShown = (text: string): string => neutral(text).trim();
const squeezed = (text: string): string => withoutIsolates(text).replace(/\s/gu, "");

const camp: Table = table({
  title: "Breakfast",
  columns: [
    { key: "line", heading: "Line" },
    { key: "cox", heading: "Cox", unit: "g", align: "end" },
    { key: "heavyweight", heading: "Heavyweight", unit: "g", align: "end" },
  ],
  rows: [
    { kind: "group", heading: "Porridge" },
    ["Oats, rolled", figureCell(exact("40")), figureCell(exact("61.538"))],
    ["Sunflower seeds", figureCell(exact("4.1"), { tone: "at-least" }), figureCell(null)],
    { kind: "total", cells: ["Total", figureCell(exact("44.1"), { tone: "at-least" }), figureCell(null)] },
  ],
  notes: ["?: not known"],
});

describe("toText", () => {
  it("sets a table as a person reads it", () => {
    expect(toText(camp)).toBe(
      [
        "Breakfast",
        "Line                   Cox (g)  Heavyweight (g)",
        "───────────────  ─────────────  ───────────────",
        "Porridge",
        "Oats, rolled                40             61.5",
        "Sunflower seeds   at least 4.1                ?",
        "───────────────  ─────────────  ───────────────",
        "Total            at least 44.1                ?",
        "?: not known",
      ].join("\n"),
    );
  });

  it("goes into blocks where the columns do not fit, each with the first column", () => {
    expect(toText(camp, { width: 34 })).toBe(
      [
        "Breakfast",
        "Line                   Cox (g)",
        "───────────────  ─────────────",
        "Porridge",
        "Oats, rolled                40",
        "Sunflower seeds   at least 4.1",
        "───────────────  ─────────────",
        "Total            at least 44.1",
        "",
        "Line             Heavyweight (g)",
        "───────────────  ───────────────",
        "Porridge",
        "Oats, rolled                61.5",
        "Sunflower seeds                ?",
        "───────────────  ───────────────",
        "Total                          ?",
        "?: not known",
      ].join("\n"),
    );
  });

  it("draws one rule between the rows and what sums them up", () => {
    const columns = [{ key: "line", heading: "Line" }];
    const sums = [
      { kind: "subtotal", cells: ["Pot"] },
      { kind: "total", cells: ["All"] },
    ] as const;
    expect(toText(table({ columns, rows: [["Oats"], ...sums] }))).toBe("Line\n────\nOats\n────\nPot\nAll");
    expect(toText(table({ columns, rows: sums }))).toBe("Line\n────\nPot\nAll");
  });

  it("wraps words and headings before it breaks the table up, and never a figure that fits", () => {
    expect(toText(camp, { width: 43 })).toBe(
      [
        "Breakfast",
        "                                Heavyweight",
        "Line                   Cox (g)          (g)",
        "───────────────  ─────────────  ───────────",
        "Porridge",
        "Oats, rolled                40         61.5",
        "Sunflower seeds   at least 4.1            ?",
        "───────────────  ─────────────  ───────────",
        "Total            at least 44.1            ?",
        "?: not known",
      ].join("\n"),
    );
  });

  it("puts every cell whole under its heading, whatever is in it", () => {
    fc.assert(
      fc.property(tables(oneLine), (t) => {
        const untitled = { ...t, title: "T", notes: ["N"] };
        const lines = toText(untitled, { width: Number.POSITIVE_INFINITY }).split("\n");
        const rule = lines[2] ?? "";
        expect(isRule(rule)).toBe(true);
        const at = stretches(rule);
        const body = lines.slice(3, -1).filter((line) => !isRule(line));
        const read = [lines[1] ?? "", ...body].map((line) =>
          at.map(([a, b]) => withoutIsolates(columns(line, a, b)).trim()),
        );
        const expected = grid(t).map((cells) => cells.map(asShown));
        expect(read[0]).toEqual(t.columns.map((c) => asShown(headingText(c))));
        // Group headings run across the columns, after an empty line, and are read apart.
        let line = 1;
        t.rows.forEach((row, r) => {
          if (row.kind === "group" && r > 0) line += 1;
          if (row.kind === "group") expect(withoutIsolates(body[line - 1] ?? "")).toBe(asShown(row.heading));
          else expect(read[line]).toEqual(expected[r]);
          line += 1;
        });
        expect(read).toHaveLength(line);
      }),
      { numRuns: runs(300) },
    );
  });

  it("gives each column one width, figures to the end and words to the start", () => {
    fc.assert(
      fc.property(tables(oneLine), (t) => {
        const lines = toText({ ...t, notes: [] }, { width: Number.POSITIVE_INFINITY }).split("\n");
        const rules = lines.filter(isRule);
        expect(new Set(rules).size).toBe(1);
        const at = stretches(rules[0] ?? "");
        const rows = t.rows.filter((row) => row.kind !== "group");
        const after = lines.slice(lines.indexOf(rules[0] ?? "") + 1);
        for (const row of rows) {
          const cells = row.cells.map((c) => asShown(typeof c === "string" ? c : c.text));
          const expected = at.map(([a, b], c) => {
            const space = " ".repeat(b - a - stringWidth(cells[c] ?? ""));
            return t.columns[c]?.align === "end" ? space + cells[c] : cells[c] + space;
          });
          expect(after.map(withoutIsolates)).toContain(expected.join("  ").trimEnd());
        }
      }),
      { numRuns: runs(200) },
    );
  });

  it("keeps to any width, and loses nothing by wrapping or by blocks", () => {
    const single = fc.array(fc.oneof(placed, anyFigure), { minLength: 1, maxLength: 5 }).map((cells) => ({
      columns: cells.map((_, c) => ({
        key: `k${c}`,
        heading: "H",
        align: c % 2 ? ("end" as const) : ("start" as const),
      })),
      rows: [cells],
    }));
    fc.assert(
      fc.property(single, fc.integer({ min: 20, max: 90 }), (t, width) => {
        const lines = toText(table(t), { width }).split("\n");
        for (const line of lines) expect(stringWidth(line)).toBeLessThanOrEqual(width);
        const rules = lines.flatMap((line, i) => (isRule(line) ? [i] : []));
        const read: string[] = [];
        for (const [b, i] of rules.entries()) {
          // Before the next block's rule stand an empty line and its heading.
          const next = rules[b + 1];
          const body = lines.slice(i + 1, next === undefined ? undefined : next - 2);
          const block = stretches(lines[i] ?? "").map(([from, to]) =>
            squeezed(body.map((l) => columns(l, from, to)).join("")),
          );
          if (b > 0) expect(block[0]).toBe(read[0]);
          read.push(...block.slice(b > 0 ? 1 : 0));
        }
        expect(read).toEqual(t.rows[0]?.map((cell) => squeezed(neutral(shown(cell)))));
      }),
      { numRuns: runs(300) },
    );
  });

  it("lets no name turn the figures beside it round", () => {
    for (const name of HOSTILE) {
      const t = table({
        columns: camp.columns,
        rows: [[name, figureCell(exact("12")), figureCell(exact("34"))]],
      });
      const text = toText(t);
      expect(withoutIsolates(text)).not.toMatch(/[\u202A-\u202E\u2066-\u2069\u200E\u200F\u061C]/);
      // UAX #9: each isolate is closed before the cell ends, so the figures stand outside it.
      for (const line of text.split("\n")) {
        expect(line.replace(/\u2068[^\u2068\u2069]*\u2069/g, "")).not.toMatch(/[\u2068\u2069\u0590-\u08FF]/);
      }
      expect(text).toMatch(/12\s+34$/m);
    }
  });

  it("says how many rows it leaves out", () => {
    expect(toText({ ...camp, rows: camp.rows.slice(1) }, { rows: 1 })).toContain(
      "61.5\n2 more rows not shown\n?: not known",
    );
    expect(toText(camp, { rows: 3 })).toContain("1 more row not shown");
    expect(toText(camp, { rows: 4 })).not.toContain("not shown");
    expect(toText(camp, { rows: 0 })).toContain("4 more rows not shown");
    expect(toText(camp, { rows: -3 })).toContain("4 more rows not shown");
  });

  it.each([0, 19, -1, Number.NaN])("refuses a width of %s", (width) => {
    expect(() => toText(camp, { width })).toThrow(
      expect.objectContaining({ code: "table-malformed", path: ["width"] }),
    );
  });

  it("sets 100,000 rows, and a cell of 10,000 characters, in bounded time", () => {
    const start = performance.now();
    const rows = Array.from({ length: 100_000 }, (_, i) => [
      `Line ${i} ${i % 7 ? "" : "燕麦"}`,
      figureCell(exact(i)),
      figureCell(null),
    ]);
    expect(toText(table({ columns: camp.columns, rows })).split("\n")).toHaveLength(100_002);
    for (const cell of ["x".repeat(10_000), "🥣".repeat(10_000), "a ".repeat(5000), "\n".repeat(10_000)]) {
      toText(table({ columns: camp.columns, rows: [[cell, cell, cell]], notes: [cell], title: cell }));
    }
    expect(performance.now() - start).toBeLessThan(30_000);
  });
});
