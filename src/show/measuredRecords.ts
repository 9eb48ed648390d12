import type { Portion } from "../plan/portion.ts";
import { demandRows } from "./fitDemandRecords.ts";
import type { TidyRow } from "./tidy.ts";

/** What measurable amounts cost one portion: its demands before and after, and the line that drifts most. */
export function* driftRows({ person, meal, drift, status }: Portion): Generator<TidyRow> {
  if (!drift) return;
  const head = { person, meal, row: "meal", own: { status } };
  for (const each of drift.demands) {
    const { unit, bound } = each;
    yield* demandRows(head, each, [
      { what: "before", value: each.before, unit, bound },
      { what: "brings", value: each.brings, unit, bound },
      { what: "line-by-line", value: each.lineByLine, unit, bound },
      // A share of what is asked.
      { what: "off", value: each.off, unit: "", bound: "point" },
    ]);
  }
  const worst = { drift: drift.ratio, "line-by-line-drift": drift.lineByLineRatio };
  for (const [what, ratio] of Object.entries(worst)) {
    if (!ratio) continue;
    const { dish, line, drift: moved } = ratio;
    const of = { ...head, dish, line, row: "line", what, component: "mass" };
    yield { ...of, amount: moved, unit: "", bound: "point", least: moved, most: moved };
  }
}
