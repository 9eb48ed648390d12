import { type Exact, ONE } from "../number/exact.ts";
import type { PersonDay } from "../plan/day.ts";
import { PortionDrift } from "../plan/measure/drift.ts";
import { MealFigures } from "../plan/measure/figures.ts";
import type { LineFactors } from "../plan/share/lineFactors.ts";
import type { Sheet } from "../sheet/sheet.ts";

/** What cooking by a schedule does to one person's day. */
export interface ScheduledDrift {
  readonly person: string;
  /** The day's id in the plan. */
  readonly day: string;
  /** What the day as it was fitted brings (`before`), and what it brings as it is cooked and served (`brings`). */
  readonly drift: PortionDrift;
}

/** Holds what someone eats on a day, as it is cooked, against what was asked of the day; nothing where it was not fitted as one. */
export function driftOfDay(planned: PersonDay, eaten: readonly Sheet[]): ScheduledDrift | undefined {
  const { fit, person, day, drift } = planned;
  if (!fit || !drift) return undefined;
  const besides = planned.besides.map(({ sheet }) => sheet);
  const all = [...eaten, ...besides].map((s) => s.version({ ...s.values, portions: ONE }, []));
  const figures = new MealFigures(named(all), fit.day().system);
  const factors: LineFactors = new Map(all.map((s, i) => [String(i), s.plan.lines.map((): Exact => ONE)]));
  const before = drift.exactly();
  return {
    person,
    day,
    drift: new PortionDrift(
      {
        figures,
        figuresBefore: before.figures,
        demands: fit.asked(),
        tolerance: before.tolerance,
        exact: before.exact,
        measured: factors,
        lineByLine: factors,
        unrounded: false,
      },
      () => all,
    ),
  };
}

function named(sheets: readonly Sheet[]): readonly { readonly name: string; readonly sheet: Sheet }[] {
  return sheets.map((sheet, i) => ({ name: String(i), sheet }));
}
