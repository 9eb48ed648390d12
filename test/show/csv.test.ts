import fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { exact } from "../../src/number/exact.ts";
import { toCsv } from "../../src/show/csv.ts";
import { figureCell } from "../../src/show/figure.ts";
import { type Table, table } from "../../src/show/table.ts";
import { runs } from "../runs.ts";
import { grid, HOSTILE, headingText, hostileText, neutral, shown, tables } from "./hostile.ts";

/** Read by papaparse, with any separator it is told. */
function read(csv: string, delimiter = ","): string[][] {
  const { data, errors } = Papa.parse<string[]>(csv.replace(/\r\n$/, ""), { delimiter, newline: "\r\n" });
  if (delimiter === ",") expect(errors).toEqual([]);
  return data;
}

// Which characters begin a formula: those that compatibility normalisation (UAX #15) makes = + - or @,
// and the minus sign U+2212. OWASP's page on CSV injection names = + - @, tab, CR, LF and full-width forms.
const LEADS = /^[=+\-@\u2212]/;
// The first character by itself: a mark that follows could compose with it, = with a stroke to \u2260.
const leads = (text: string): boolean => LEADS.test(([...text][0] ?? "").normalize("NFKC"));
const executes = (field: string): boolean => leads(field.replace(/^[\s"]+/, ""));
const begins = (text: string): boolean => leads(text.replace(/^[\s"']+/, ""));

/** Takes the apostrophes away again, as the rule says: one from each place where a formula could begin. */
function undone(text: string): string {
  return text.replace(/(^|[;\n])'([^;\n]*)/g, (all, before: string, rest: string) =>
    begins(rest) ? before + rest : all,
  );
}

const columns = [
  { key: "line", heading: "Line" },
  { key: "grams", heading: "Amount", unit: "g", align: "end" },
] as const;
const lineOf = (text: string): string =>
  toCsv(table({ columns: [columns[0]], rows: [[text]] })).split("\r\n")[1] ?? "";

describe("toCsv", () => {
  it("writes what RFC 4180 asks: quotes doubled, records ended by CR LF", () => {
    const t = table({
      columns,
      rows: [
        ['Oats, "rolled"', figureCell(exact("40"))],
        ["two\nlines", figureCell(exact("1/3"))],
      ],
    });
    expect(toCsv(t)).toBe('Line,Amount (g)\r\n"Oats, ""rolled""",40\r\n"two\nlines",0.333\r\n');
  });

  it("is read back as what was put in, once the apostrophes are taken away", () => {
    fc.assert(
      fc.property(tables(), (t) => {
        const [header, ...rows] = read(toCsv(t)).map((line) => line.map(undone));
        expect(header).toEqual(t.columns.map((c) => neutral(headingText(c))));
        expect(rows).toEqual(grid(t).map((cells) => cells.map(neutral)));
      }),
      { numRuns: runs(500) },
    );
  });

  it("guards an equals sign that a stroke turns into another sign, and takes the guard away again", () => {
    const struck = table({ columns: [columns[0]], rows: [["=\u0338 1"]] });
    expect(read(toCsv(struck))[1]).toEqual(["'=\u0338 1"]);
    expect(undone("'=\u0338 1")).toBe("=\u0338 1");
    expect(read(toCsv(table({ columns: [columns[0]], rows: [["\u2260 1"]] })))[1]).toEqual(["\u2260 1"]);
  });

  it("gives a spreadsheet program no formula, whether it parts fields at commas or at semicolons", () => {
    fc.assert(
      fc.property(tables(fc.oneof(fc.constantFrom(...HOSTILE), hostileText)), (t) => {
        const csv = toCsv(t, { notes: true, header: "key" });
        const numbers = new Set(
          grid(t)
            .flat()
            .filter((text) => /^-[\d.,]+$/.test(text)),
        );
        for (const field of read(csv).flat()) if (executes(field)) expect(numbers).toContain(field);
        // A program of another locale, which also takes a bare line end inside a field for a new record.
        for (const line of csv.split(/\r\n|\n/)) {
          for (const field of read(line, ";").flat()) {
            // Numbers may stand there, and after them nothing but numbers and words in quotes.
            if (executes(field)) expect(field).toMatch(/^-?\d[\d.,-]*(?:"|$)/);
          }
        }
      }),
      { numRuns: runs(500) },
    );
  });

  it("makes inert every character that normalises to the start of a formula", () => {
    const started: string[] = [];
    for (let c = 0x20; c <= 0xffff; c += 1) {
      const character = String.fromCharCode(c);
      if (begins(`${character}1`) && !/\s/.test(character)) started.push(character);
    }
    expect(started.length).toBeGreaterThanOrEqual(16);
    for (const character of started) {
      expect(read(lineOf(`${character}1`))[0]).toEqual([character === "'" ? "'1" : `'${character}1`]);
    }
  });

  it.each([
    ["=cmd|'/c calc'!A1", "'=cmd|'/c calc'!A1"],
    ["  =1", "'  =1"],
    ["\t=1", "' =1"],
    ["\r=1", '"\n\'=1"'],
    ['"=1', '"\'""=1"'],
    ["a;=1", '"a;\'=1"'],
    ["'=1", "''=1"],
    ["\u202E=1", "'=1"],
    ["-", "'-"],
    ["−1", "'−1"],
    ["a=1", "a=1"],
    ["a, -b", '"a, -b"'],
    ["10-12", "10-12"],
    ["'n lekker ontbijt", "'n lekker ontbijt"],
  ])("writes %j as %j", (text, field) => {
    expect(lineOf(text)).toBe(field);
  });

  it("leaves numbers numbers, and what is not quite one as it is shown", () => {
    const cells = [
      figureCell(exact("-3.5")),
      figureCell(exact("-1234"), { grouped: true }),
      figureCell(exact("-3.5"), { unit: "g" }),
      figureCell(exact("4.1"), { tone: "at-least" }),
      figureCell(null),
    ];
    const t = table({ columns: [columns[1]], rows: cells.map((c) => [c]) });
    expect(read(toCsv(t)).slice(1).flat()).toEqual(["-3.5", "-1,234", "'-3.5 g", "at least 4.1", "?"]);
    // The same text as words is no number: someone typed it.
    expect(lineOf("-3.5")).toBe("'-3.5");
  });

  it("lets no number at the start of a record begin a sum with the words after it", () => {
    const t = table({
      columns: [columns[1], columns[0]],
      rows: [[figureCell(exact("-3")), "5+cmd|'/c calc'!A0"]],
    });
    expect(toCsv(t).split("\r\n")[1]).toBe("-3,\"5+cmd|'/c calc'!A0\"");
  });

  it("gives plain figures where asked, unknowns as empty fields", () => {
    const plain = (text: string): string =>
      toCsv(table({ columns: [columns[1]], rows: [[figureCell(exact(text))]] }), {
        figures: "plain",
      }).split("\r\n")[1] ?? "";
    expect(["1/3", "-2/3", "40", "0", "1234567.891", "1e-7", "-1e20"].map(plain)).toEqual([
      "0.333333333333333",
      "-0.666666666666667",
      "40",
      "0",
      "1234567.891",
      "0.0000001",
      "-100000000000000000000",
    ]);
    const unknown = table({ columns, rows: [["a", figureCell(null)]] });
    expect(read(toCsv(unknown, { figures: "plain" }))[1]).toEqual(["a", "", "unknown"]);
    // A bare number would pass for exact: how it bounds the truth stands beside it.
    const rows = [
      ["a", figureCell(exact("40"))],
      ["b", figureCell(exact("4"), { tone: "at-least" })],
    ] as const;
    const bounded = table({ columns, rows: [...rows, { kind: "group", heading: "c" }] });
    expect(read(toCsv(bounded, { figures: "plain" }))).toEqual([
      ["Line", "Amount (g)", "Amount: bound"],
      ["a", "40", "point"],
      ["b", "4", "at-least"],
      ["c", "", ""],
    ]);
    expect(read(toCsv(bounded, { figures: "plain", header: "key" }))[0]?.at(-1)).toBe(
      `${columns[1].key}Bound`,
    );
    expect(read(toCsv(bounded))[0]).toHaveLength(2);
    fc.assert(
      fc.property(fc.integer(), (n) => {
        expect(Number(plain(String(n)))).toBe(n === 0 ? 0 : n);
      }),
    );
  });

  it("writes an empty field alone as quotes, sets tables apart by an empty line, and notes where asked", () => {
    const t: Table = table({ columns: [columns[0]], rows: [["a"], [""]], notes: ["=n"] });
    expect(toCsv(t)).toBe('Line\r\na\r\n""\r\n');
    expect(toCsv([t, t])).toBe('Line\r\na\r\n""\r\n\r\nLine\r\na\r\n""\r\n');
    expect(toCsv(t, { notes: true })).toBe('Line\r\na\r\n""\r\n\r\n\'=n\r\n');
    expect(toCsv([])).toBe("");
  });

  it("writes 100,000 rows, and long hostile cells, in bounded time", () => {
    const start = performance.now();
    const rows = Array.from({ length: 100_000 }, (_, i) => [`=Line ${i}`, figureCell(exact(-i))]);
    const back = read(toCsv(table({ columns, rows })));
    expect(back).toHaveLength(100_001);
    expect(back[100_000]).toEqual(["'=Line 99999", "-99999"]);
    for (const cell of [";=", "\n", " ", '"', ";'", "\u00A0", "; "].map((c) => c.repeat(100_000))) {
      expect(undone(read(lineOf(cell))[0]?.[0] ?? "")).toHaveLength(cell.length);
    }
    expect(performance.now() - start).toBeLessThan(20_000);
  });

  it("shows each figure as its cell does", () => {
    fc.assert(
      fc.property(tables(), (t) => {
        const rows = read(toCsv(t)).slice(1);
        t.rows.forEach((row, r) => {
          if (row.kind === "group") return;
          row.cells.forEach((cell, c) => {
            if (typeof cell !== "string") expect(rows[r]?.[c]?.replace(/^'/, "")).toBe(shown(cell));
          });
        });
      }),
    );
  });
});
