import type { Amount } from "../measure/amount.ts";
import { formatAmount } from "../measure/format.ts";
import type { Measures } from "../measure/measures.ts";
import { type FigureHow, figure, showFigure } from "../table/figure.ts";
import type { Figure, Tone } from "../table/table.ts";
import type { Tally } from "./tally.ts";

/** A tally as a table shows it: bound and provenance said, unknown looking unknown. */
export function tallyFigure(tally: Tally, how: FigureHow = {}): Figure {
  const tone = toneOf(tally);
  return tone === "unknown" ? figure(null, how) : figure(tally.exact, { ...how, tone });
}

/** The weakest thing that must be said of a tally. */
function toneOf(tally: Tally): Tone {
  if (tally.bound === "unknown") return "unknown";
  if (tally.bound === "at-most") return "at-most";
  if (tally.missing.length + tally.below.length > 0) return "at-least";
  if (tally.trace.length > 0) return "trace";
  if (tally.borrowed.length > 0) return "borrowed";
  if (tally.derived.length > 0) return "derived";
  return tally.presumed.length > 0 ? "presumed" : "known";
}

/** Notes on gaps, one for each set of silent lines, naming all components that share it. */
export function silentNotes(tallies: readonly (readonly [name: string, tally: Tally])[]): string[] {
  const byLines = new Map<string, string[]>();
  for (const [name, tally] of tallies) {
    if (tally.missing.length === 0) continue;
    const lines = tally.missing.join(", ");
    byLines.set(lines, [...(byLines.get(lines) ?? []), name]);
  }
  return [...byLines].map(([lines, names]) => `silent on ${names.join(", ")}: ${lines}`);
}

/** A food's name with its state, said once: taking dry for cooked is the commonest threefold error. */
export function stated(name: string, state: string | undefined): string {
  const said =
    state === undefined ||
    name
      .toLowerCase()
      .split(/[^\p{L}]+/u)
      .includes(state);
  return said ? name : `${name}, ${state}`;
}

/** An amount as its recipe writes it, to 3 significant digits, a bare spoon being the recipe's own. */
export function shownAmount(a: Amount, measures: Measures | undefined): string {
  return formatAmount(a, { significant: 3, ...(measures === undefined ? {} : { measures }) });
}

/** Says how large the spoons and cups are that amounts are written in, where any is. */
export function measuresNote(amounts: readonly Amount[]): string[] {
  const sizes = new Map<string, string>();
  for (const { measures, unit, size } of amounts) {
    if (measures === undefined || size === undefined) continue;
    const set = typeof measures === "string" ? measures : measures.name;
    sizes.set(`${set} ${unit}`, `1 ${set} ${unit} is ${showFigure(size, { significant: 4, unit: "ml" })}`);
  }
  return sizes.size === 0 ? [] : [[...sizes.values()].join("; ")];
}
