import fc from "fast-check";
import { type DefaultTreeAdapterMap, parseFragment } from "parse5";
import { describe, expect, it } from "vitest";
import { exact } from "../../src/number/exact.ts";
import { figureCell } from "../../src/show/figure.ts";
import { escapeHtml, toHtml } from "../../src/show/html.ts";
import { table } from "../../src/show/table.ts";
import { runs } from "../runs.ts";
import { HOSTILE, headingText, hostileText, neutral, shown, tables } from "./hostile.ts";
import { elements, textOf } from "./markup.ts";

type Node = DefaultTreeAdapterMap["node"];

const attributes = (node: Node): Record<string, string> =>
  "attrs" in node ? Object.fromEntries(node.attrs.map((a) => [a.name, a.value])) : {};

const ALLOWED: Record<string, RegExp> = {
  style: /^text-align:(start|end)$/,
  scope: /^(col|row|rowgroup)$/,
  colspan: /^\d+$/,
  "data-tone": /^(derived|presumed|borrowed|trace|at-least|at-most|between|unknown)$/,
  "data-row": /^(group|subtotal|total)$/,
};

describe("toHtml", () => {
  it("is read back as what was put in, by a parser of the HTML standard", () => {
    fc.assert(
      fc.property(tables(), (t) => {
        const errors: string[] = [];
        const parsed = parseFragment(toHtml(t), { onParseError: (e) => errors.push(e.code) });
        // Text may hold code points that the standard forbids yet keeps: non-characters.
        expect(errors.filter((e) => !e.startsWith("noncharacter-"))).toEqual([]);
        expect(elements(parsed, "caption").map(textOf)).toEqual(
          t.title === undefined ? [] : [neutral(t.title)],
        );
        expect(elements(parsed, "thead").flatMap((h) => elements(h, "th").map(textOf))).toEqual(
          t.columns.map((c) => neutral(headingText(c))),
        );
        const rows = elements(parsed, "tr").slice(1);
        expect(rows.map((row) => elements(row, "th", "td").map(textOf))).toEqual(
          t.rows.map((row) => (row.kind === "group" ? [row.heading] : row.cells.map(shown)).map(neutral)),
        );
        expect(elements(parsed, "li").map(textOf)).toEqual(t.notes.map(neutral));
      }),
      { numRuns: runs(500) },
    );
  });

  it("holds no element or attribute but its own, whatever the names", () => {
    fc.assert(
      fc.property(tables(fc.oneof(fc.constantFrom(...HOSTILE), hostileText)), (t) => {
        const own = ["table", "caption", "thead", "tbody", "tfoot", "tr", "th", "td", "ul", "li", "br"];
        for (const element of elements(parseFragment(toHtml(t)))) {
          expect(own).toContain(element.nodeName);
          for (const [name, value] of Object.entries(attributes(element)))
            expect(value).toMatch(ALLOWED[name] ?? /^$a/);
        }
      }),
    );
  });

  it("escapes so that a text is safe inside a quoted attribute too", () => {
    fc.assert(
      fc.property(hostileText, (text) => {
        const line = text.replaceAll(/[\n\r\v\f\u0085\u2028\u2029]/g, " ");
        for (const quote of ['"', "'"]) {
          const [node] = elements(parseFragment(`<p title=${quote}${escapeHtml(line)}${quote}></p>`));
          expect(node && attributes(node)).toEqual({ title: neutral(line) });
        }
      }),
    );
  });

  it("gives each cell its scope, side and tone, groups their own body and closing totals the foot", () => {
    const t = table({
      title: "Breakfast",
      columns: [
        { key: "line", heading: "Line" },
        { key: "g", heading: "Cox", unit: "g", align: "end" },
      ],
      rows: [
        { kind: "group", heading: "Pot" },
        ["Oats", figureCell(exact("40"))],
        { kind: "subtotal", cells: ["Pot", figureCell(exact("40"), { tone: "borrowed" })] },
        { kind: "group", heading: "Jar" },
        ["Seeds", figureCell(null)],
        { kind: "total", cells: ["All", figureCell(exact("40"), { tone: "at-least" })] },
      ],
      notes: ["?: not known"],
    });
    expect(toHtml(t)).toBe(
      [
        "<table>",
        "<caption>Breakfast</caption>",
        '<thead><tr><th scope="col" style="text-align:start">Line</th><th scope="col" style="text-align:end">Cox (g)</th></tr></thead>',
        "<tbody>",
        '<tr data-row="group"><th scope="rowgroup" colspan="2" style="text-align:start">Pot</th></tr>',
        '<tr><th scope="row" style="text-align:start">Oats</th><td style="text-align:end">40</td></tr>',
        '<tr data-row="subtotal"><th scope="row" style="text-align:start">Pot</th><td data-tone="borrowed" style="text-align:end">40 b</td></tr>',
        "</tbody>",
        "<tbody>",
        '<tr data-row="group"><th scope="rowgroup" colspan="2" style="text-align:start">Jar</th></tr>',
        '<tr><th scope="row" style="text-align:start">Seeds</th><td data-tone="unknown" style="text-align:end">?</td></tr>',
        "</tbody>",
        "<tfoot>",
        '<tr data-row="total"><th scope="row" style="text-align:start">All</th><td data-tone="at-least" style="text-align:end">at least 40</td></tr>',
        "</tfoot>",
        "</table>",
        "<ul><li>?: not known</li></ul>",
      ].join("\n"),
    );
  });

  it("says how many rows it leaves out", () => {
    const t = table({ columns: [{ key: "a", heading: "A" }], rows: [["1"], ["2"], ["3"]] });
    const parsed = parseFragment(toHtml(t, { rows: 1 }));
    expect(elements(parsed, "tbody").flatMap((b) => elements(b, "tr"))).toHaveLength(1);
    expect(elements(parsed, "li").map(textOf)).toEqual(["2 more rows not shown"]);
  });

  it("writes 100,000 rows, and a cell of 10,000 characters, in bounded time", () => {
    const start = performance.now();
    const rows = Array.from({ length: 100_000 }, (_, i) => [`<b>${i}`]);
    expect(toHtml(table({ columns: [{ key: "a", heading: "A" }], rows })).length).toBeGreaterThan(1_000_000);
    const long = "<".repeat(10_000);
    const [cell] = elements(
      parseFragment(toHtml(table({ columns: [{ key: "a", heading: "A" }], rows: [[long]] }))),
      "tbody",
    );
    expect(cell && textOf(cell).trim()).toBe(long);
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
