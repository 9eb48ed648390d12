import { type Language, say } from "../document/language.ts";
import { type ComponentId, components } from "../food/components.ts";
import type { FigureOptions } from "../measure/showFigure.ts";
import type { Exact } from "../number/exact.ts";
import type { Ends } from "../sheet/ends.ts";
import type { Bound, Tally } from "../sheet/tally.ts";
import { figureCell } from "./figure.ts";
import type { TableFigure } from "./table.ts";
import { endsFigure, tallyFigure } from "./tallyFigure.ts";

/** Components by name, as one. */
export function nameOf(of: readonly ComponentId[], language: Language): string {
  return of.map((id) => say(language, components[id].name)).join(say(language, " and "));
}

/** As a tally is shown; a part that is known to be less than the whole says so. */
export function boundFigure(tally: Tally, how: FigureOptions): TableFigure {
  const isPart = tally.bound === "at-least" && tally.trace.length === 0;
  return isPart ? figureCell(tally.value, { ...how, tone: "at-least" }) : tallyFigure(tally, how);
}

/** A figure with its bound, a middle one with its ends; unknown where it has none. */
export function bounded(
  value: Exact | undefined,
  bound: Bound,
  how: FigureOptions,
  ends?: Ends,
): TableFigure {
  if (value === undefined || bound === "unknown") return figureCell(null, how);
  if (bound === "between") return ends ? endsFigure({ value, ends }, how) : figureCell(null, how);
  return figureCell(value, { ...how, ...(bound !== "point" && { tone: bound }) });
}
