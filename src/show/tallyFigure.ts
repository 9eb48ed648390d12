import { britishEnglish, type Language, say } from "../document/language.ts";
import type { FigureOptions } from "../measure/showFigure.ts";
import { inSentence, keyWords } from "../sheet/names.ts";
import type { Tally } from "../sheet/tally.ts";
import { figureCell, markOf, rangeFigure } from "./figure.ts";
import type { Column, TableFigure, Tone } from "./table.ts";

/**
 * A tally as a table shows it: bound and provenance said, unknown looking unknown. A middle figure is
 * not shown for what it is no bound of: its ends are, or the one end that there is.
 */
export function tallyFigure(tally: Tally, how: FigureOptions = {}): TableFigure {
  const tone = toneOf(tally);
  if (tone === "unknown") return figureCell(null, how);
  return tone === "between" ? endsFigure(tally, how) : figureCell(tally.value, { ...how, tone });
}

/** A tally as {@link tallyFigure} shows it, its letter left to a column of marks: see {@link marksOf}. */
export function plainFigure(tally: Tally, how: FigureOptions = {}): TableFigure {
  const shown = tallyFigure(tally, how);
  const isLetter =
    MARKED.some((tone) => tone === shown.tone) && (shown.tone !== "trace" || tally.value.n !== 0n);
  return isLetter ? { ...figureCell(tally.value, how), tone: shown.tone } : shown;
}

const MARKED = ["trace", "borrowed", "calculated", "derived", "presumed"] as const;

/**
 * What is to be said of how a tally's figures are known, the weightiest first: of lines that bring some of
 * it, or of all where there is none of it. A tally itself names every line.
 */
export function marksOf(tally: Tally): readonly Tone[] {
  const isNone = tally.value.n === 0n;
  let nil: ReadonlySet<string> | undefined;
  const brings = (key: string): boolean => {
    if (isNone) return true;
    nil ??= new Set(tally.nil);
    return !nil.has(key);
  };
  return MARKED.filter((kind) => tally[kind].some(brings));
}

/** A column of marks for a table's rows, where any has one, and what its letters mean. */
export function marksColumn(
  marks: readonly (readonly Tone[])[],
  language: Language,
): {
  readonly columns: readonly Column[];
  cell(i: number): readonly string[];
  readonly used: readonly Tone[];
} {
  const used = marks.flat();
  if (used.length === 0) return { columns: [], cell: () => [], used };
  const cell = (i: number): readonly string[] => [
    (marks[i] ?? []).map((tone) => markOf(tone, language)).join(" "),
  ];
  return { columns: [{ key: "marks", heading: say(language, "Marks"), align: "start" }], cell, used };
}

/** The ends of a tally, whatever its bound: those that there are. */
export function endsFigure(
  { value, ends: { low, high } }: Pick<Tally, "value" | "ends">,
  how: FigureOptions = {},
): TableFigure {
  if (low && high) return rangeFigure(value, low, high, how);
  if (low) return figureCell(low, { ...how, tone: "at-least" });
  return high ? figureCell(high, { ...how, tone: "at-most" }) : figureCell(null, how);
}

/** Whether the ends tell more than the bound does: the most is known, or the value is a middle figure. */
export function hasEnds({ bound, ranged, most }: Tally): boolean {
  return most !== undefined || (ranged.length > 0 && bound !== "unknown");
}

/** The weakest thing that must be said of a tally. */
function toneOf(tally: Tally): Tone {
  if (tally.bound === "unknown") return "unknown";
  if (tally.bound === "at-most" || tally.bound === "between") return tally.bound;
  const isOpen = tally.bound === "at-least" && tally.trace.length === 0;
  if (isOpen || tally.missing.length + tally.below.length > 0) return "at-least";
  return marksOf(tally)[0] ?? "known";
}

/** Notes on gaps, one for each set of silent lines, naming all components that share it. */
export function silentNotes(
  tallies: readonly (readonly [name: string, tally: Tally])[],
  language: Language = britishEnglish,
  most?: number,
  lineName: (key: string) => string = keyWords,
): string[] {
  const byLines = new Map<string, string[]>();
  for (const [name, tally] of tallies) {
    if (tally.missing.length === 0) continue;
    const lines = linesText(tally.missing, lineName, language, most);
    byLines.set(lines, [...(byLines.get(lines) ?? []), say(language, name)]);
  }
  return [...byLines].map(([lines, names]) =>
    say(language, "no {components} data: {lines}", { components: names.join(", "), lines }),
  );
}

/** Lines by name, each once, so many at most where that is said, and how many more there are. */
function linesText(
  keys: readonly string[],
  lineName: (key: string) => string,
  language: Language,
  most = Number.POSITIVE_INFINITY,
): string {
  const names = [...new Set(keys.map((key) => inSentence(lineName(key), language)))];
  const more = names.length - Math.max(1, most);
  if (!(more > 0)) return names.join(", ");
  const shown = names.slice(0, names.length - more).join(", ");
  return say(language, "{lines} and {count} more", { lines: shown, count: String(more) });
}

/** Notes on what is shown from end to end, one for each set of lines that are published as a range. */
export function rangedNotes(
  tallies: readonly (readonly [name: string, tally: Tally])[],
  language: Language = britishEnglish,
  most?: number,
  lineName: (key: string) => string = keyWords,
): string[] {
  const byLines = new Map<string, string[]>();
  for (const [name, tally] of tallies) {
    if (tally.bound !== "between") continue;
    const lines = linesText(tally.ranged, lineName, language, most);
    byLines.set(lines, [...(byLines.get(lines) ?? []), say(language, name)]);
  }
  return [...byLines].map(([lines, names]) =>
    say(language, "published as a range, and shown from end to end: {components} of {lines}", {
      components: names.join(", "),
      lines,
    }),
  );
}
