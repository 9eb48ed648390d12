import fc from "fast-check";
import MarkdownIt from "markdown-it";
import { marked } from "marked";
import { parseFragment } from "parse5";
import { describe, expect, it } from "vitest";
import { exact } from "../../src/number/exact.ts";
import { figureCell } from "../../src/show/figure.ts";
import { toMarkdown } from "../../src/show/markdown.ts";
import { table } from "../../src/show/table.ts";
import { runs } from "../runs.ts";
import { grid, HOSTILE, headingText, hostileText, neutral, tables, withoutIsolates } from "./hostile.ts";
import { elements, textOf } from "./markup.ts";

// Two parsers that notebooks use, each as permissive as it gets: raw HTML on, bare addresses linked.
const markdownIt = new MarkdownIt({ html: true, linkify: true });
const parsers: readonly (readonly [string, (text: string) => string])[] = [
  ["marked", (text) => marked.parse(text, { async: false, gfm: true })],
  ["markdown-it", (text) => markdownIt.render(text)],
];

const asShown = (text: string): string => neutral(text).trim();
const asRead = (text: string): string => withoutIsolates(text).trim();

describe.each(parsers)("toMarkdown, read by %s", (_, render) => {
  it("is read back as what was put in, ends trimmed", () => {
    fc.assert(
      fc.property(tables(), (t) => {
        const parsed = parseFragment(render(toMarkdown(t)));
        const rows = elements(parsed, "tr").map((row) =>
          elements(row, "th", "td").map((c) => asRead(textOf(c))),
        );
        expect(rows[0]).toEqual(t.columns.map((c) => asShown(headingText(c))));
        expect(rows.slice(1)).toEqual(grid(t).map((cells) => cells.map(asShown)));
        const title = t.title === undefined || asShown(t.title) === "" ? [] : [asShown(t.title)];
        expect(
          elements(parsed, "p")
            .slice(0, title.length)
            .map((p) => asRead(textOf(p))),
        ).toEqual(title);
        const notes = t.notes.map(asShown).filter((note) => note !== "");
        expect(elements(parsed, "li").map((li) => asRead(textOf(li)))).toEqual(notes);
      }),
      { numRuns: runs(500) },
    );
  });

  it("holds no markup but its own, no link, no image, no raw HTML", () => {
    fc.assert(
      fc.property(tables(fc.oneof(fc.constantFrom(...HOSTILE), hostileText)), (t) => {
        const own = ["table", "thead", "tbody", "tr", "th", "td", "ul", "li", "p", "strong", "br"];
        for (const element of elements(parseFragment(render(toMarkdown(t)))))
          expect(own).toContain(element.nodeName);
      }),
      { numRuns: runs(300) },
    );
  });

  it("shows every hostile text in a cell, a title and a note as it was written", () => {
    for (const text of HOSTILE) {
      const t = table({ title: text, columns: [{ key: "a", heading: text }], rows: [[text]], notes: [text] });
      const parsed = parseFragment(render(toMarkdown(t)));
      expect(elements(parsed, "th", "td").map((c) => asRead(textOf(c)))).toEqual([
        asShown(text),
        asShown(text),
      ]);
    }
  });
});

describe("toMarkdown", () => {
  it("is a table that reads well unrendered", () => {
    const t = table({
      title: "Breakfast",
      columns: [
        { key: "line", heading: "Line" },
        { key: "g", heading: "Cox", unit: "g", align: "end" },
      ],
      rows: [
        { kind: "group", heading: "Pot" },
        ["Oats, rolled", figureCell(exact("40.5"))],
        { kind: "total", cells: ["All", figureCell(exact("40.5"), { tone: "at-least" })] },
      ],
      notes: ["common practice, no source"],
    });
    expect(toMarkdown(t)).toBe(
      [
        "**Breakfast**",
        "",
        "| Line | Cox (g) |",
        "| :--- | ---: |",
        "| **Pot** |  |",
        "| Oats, rolled | 40.5 |",
        "| **All** | **at least 40.5** |",
        "",
        "- common practice, no source",
      ].join("\n"),
    );
  });

  it("leaves a mathematics renderer nothing between dollars", () => {
    // Jupyter's markdown sets $...$ as mathematics unless the dollar is escaped.
    expect(toMarkdown(table({ columns: [{ key: "a", heading: "$x$" }], rows: [] }))).toContain("\\$x\\$");
  });

  it("says how many rows it leaves out", () => {
    const t = table({ columns: [{ key: "a", heading: "A" }], rows: [["1"], ["2"]] });
    expect(toMarkdown(t, { rows: 1 })).toBe("| A |\n| :--- |\n| 1 |\n\n- 1 more row not shown");
  });

  it("writes 100,000 rows, and a cell of 10,000 characters, in bounded time", () => {
    const start = performance.now();
    const columns = [{ key: "a", heading: "A" }];
    const rows = Array.from({ length: 100_000 }, (_, i) => [`*${i}|`]);
    expect(toMarkdown(table({ columns, rows })).split("\n")).toHaveLength(100_002);
    for (const cell of ["|", "\\", "a.", "\n", "*"].map((c) => c.repeat(10_000))) {
      expect(toMarkdown(table({ columns, rows: [[cell]] })).split("\n")).toHaveLength(3);
    }
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
