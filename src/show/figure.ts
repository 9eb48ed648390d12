import { britishEnglish, type Language, say } from "../document/language.ts";
import { type FigureOptions, showBound, showFigure, showRange } from "../measure/showFigure.ts";
import { exactText } from "../number/digits.ts";
import type { Exact } from "../number/exact.ts";
import type { Cell, Table, TableFigure, Tone } from "./table.ts";

/**
 * A figure for a table's cell: its text, with bound and mark as its tone asks, and its exact value.
 * `null` is unknown, and looks it.
 *
 * Throws `figure-malformed`.
 *
 * @example
 * ```ts
 * figureCell(exact("4.1"), { tone: "at-least", unit: "mg" }).text; // => at least 4.1 mg
 * figureCell(null).text; // => ?
 * ```
 */
export function figureCell(
  value: Exact | null,
  how: FigureOptions & { readonly tone?: Exclude<Tone, "unknown" | "between"> } = {},
): TableFigure {
  const language = how.language ?? britishEnglish;
  if (value === null) return { text: say(language, "?"), value, tone: "unknown" };
  const tone = how.tone ?? "known";
  const text =
    tone === "at-least" || tone === "at-most"
      ? showBound(value, tone, how)
      : say(language, tone === "trace" && value.n === 0n ? "trace" : PATTERNS[tone], {
          figure: showFigure(value, how),
        });
  return { text, value: exactText(value), tone };
}

/** The ends of a range for a table's cell, rounded so that both still hold; its value is a middle figure. */
export function rangeFigure(value: Exact, low: Exact, high: Exact, how: FigureOptions = {}): TableFigure {
  return { text: showRange(low, high, how), value: exactText(value), tone: "between" };
}

const PATTERNS: { readonly [T in Exclude<Tone, "unknown" | "between" | "at-least" | "at-most">]: string } = {
  known: "{figure}",
  presumed: "{figure} p",
  derived: "{figure} d",
  calculated: "{figure} c",
  borrowed: "{figure} b",
  trace: "{figure} t",
};

const MEANINGS: readonly (readonly [Tone, string])[] = [
  ["derived", "d: all or part worked out: from other figures, or by what cooking leaves"],
  ["presumed", "p: all or part assumed to be none"],
  ["calculated", "c: all or part calculated by its source, not measured"],
  ["borrowed", "b: all or part borrowed from a like food"],
  ["trace", "t: trace amounts not counted"],
  ["unknown", "?: not known"],
];

/** The letter that marks a figure of a tone; empty for what needs none. */
export function markOf(tone: Tone, language: Language = britishEnglish): string {
  const isLetter = tone !== "unknown" && MEANINGS.some(([each]) => each === tone);
  return isLetter ? say(language, PATTERNS[tone as keyof typeof PATTERNS], { figure: "" }).trim() : "";
}

/** What the marks in a table mean, one note for each that it uses, or that a column of marks does. */
export function legend(
  rows: Table["rows"] | readonly (readonly Cell[])[],
  language: Language = britishEnglish,
  marks: Iterable<Tone> = [],
): string[] {
  const used = new Set<Tone>(marks);
  for (const row of rows) {
    const cells = "kind" in row ? (row.kind === "group" ? [] : row.cells) : row;
    for (const cell of cells)
      if (typeof cell !== "string" && cell.text !== say(language, "trace")) used.add(cell.tone);
  }
  return MEANINGS.filter(([tone]) => used.has(tone)).map(([, note]) => say(language, note));
}
