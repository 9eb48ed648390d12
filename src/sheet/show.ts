import { type FigureHow, figure } from "../table/figure.ts";
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
