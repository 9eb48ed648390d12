import { demandRows } from "../../scale/fit/records.ts";
import type { TidyRow } from "../../table/tidy.ts";
import type { Portion } from "../portion.ts";

/** What measurable amounts cost one portion: its demands before and after, and the line that drifts most. */
export function* driftRows({ person, meal, drift, status }: Portion): Generator<TidyRow> {
  if (!drift) return;
  const head = { person, meal, row: "meal", own: { status } };
  for (const each of drift.demands) {
    const { unit, bound } = each;
    yield* demandRows(head, each, [
      { what: "before", value: each.exactBefore, unit, bound },
      { what: "brings", value: each.exactBrings, unit, bound },
      { what: "line-by-line", value: each.exactLineByLine, unit, bound },
      // A share of what is asked.
      { what: "off", value: each.exactOff, unit: "", bound: "exact" },
    ]);
  }
  const worst = { drift: drift.ratio, "line-by-line-drift": drift.lineByLineRatio };
  for (const [what, ratio] of Object.entries(worst)) {
    if (!ratio) continue;
    const { dish, line, exactDrift } = ratio;
    const of = { ...head, dish, line, row: "line", what, component: "mass" };
    yield { ...of, amount: exactDrift, unit: "", bound: "exact", least: exactDrift, most: exactDrift };
  }
}
