import { type ComponentId, componentIds, components } from "../food/components.ts";
import { ONE, toText } from "../number/fraction.ts";
import { figure } from "../table/figure.ts";
import { type Cell, type Table, table } from "../table/table.ts";
import type { Sheet } from "./sheet.ts";
import { tallyFigure } from "./show.ts";

/**
 * One row for each line and component of a sheet's batch as eaten, and one for the line's mass in
 * grams: line, component, amount, unit, bound, coverage, least and most. What is not known has no amount. The water
 * that a pot takes up or gives off belongs to no line, so that water alone does not add up to the
 * batch. `own` stands at the head of every row.
 */
export function longRows(s: Sheet, own: readonly string[], ids: readonly ComponentId[]): Cell[][] {
  return s.lines.flatMap((line) => [
    [
      ...own,
      line.key,
      "mass",
      figure(line.grams),
      "g",
      "exact",
      figure(WHOLE),
      figure(line.grams),
      figure(line.grams),
    ],
    ...ids.map((id) => {
      const tally = s.cell(line.key, id);
      return [
        ...own,
        line.key,
        id,
        // Amounts add up, middle figures too; their ends stand beside them.
        tally.bound === "between"
          ? { ...tallyFigure(tally), value: toText(tally.value) }
          : tallyFigure(tally),
        components[id].unit,
        tally.bound,
        figure(tally.coverage),
        figure(tally.least ?? null),
        figure(tally.most ?? null),
      ];
    }),
  ]);
}

/** Rows under the names of their columns. */
export function longTable(keys: readonly string[], rows: readonly Cell[][]): Table {
  const names = [...keys, "line", "component", "amount", "unit", "bound", "coverage", "least", "most"];
  const figures = ["amount", "coverage", "least", "most"];
  return table({
    columns: names.map((key) => ({ key, heading: key, align: figures.includes(key) ? "end" : "start" })),
    rows,
  });
}

/** The components that some line of some sheet knows of, in registry order. */
export function knownIn(sheets: Iterable<Sheet>): readonly ComponentId[] {
  const all = [...sheets];
  return componentIds.filter((id) => all.some((s) => s.total(id).bound !== "unknown"));
}

/** A sheet as long tidy rows. */
export function sheetLong(s: Sheet, ids: readonly ComponentId[] = knownIn([s])): Table {
  return longTable([], longRows(s, [], ids));
}

const WHOLE = ONE;
