import { type ComponentId, components } from "../../food/components.ts";
import { exact } from "../../number/fraction.ts";
import { figure } from "../../table/figure.ts";
import { type Cell, type Table, table } from "../../table/table.ts";
import { bounded } from "./cells.ts";
import type { ComparisonData } from "./comparison.ts";
import type { HeldReference, HeldUpper } from "./held.ts";

/** One record for each figure that the portion was held against. */
export function longTable(c: ComparisonData): Table {
  const end = "end" as const;
  const rows = c.rows.flatMap(({ of, references, uppers }) =>
    [...references, ...uppers].map((held) => longCells(of, held)),
  );
  return table({
    columns: [
      { key: "component", heading: "component" },
      { key: "name", heading: "name" },
      { key: "unit", heading: "unit" },
      { key: "against", heading: "against" },
      { key: "amount", heading: "amount", align: end },
      { key: "bound", heading: "bound" },
      { key: "least", heading: "least", align: end },
      { key: "most", heading: "most", align: end },
      { key: "coverage", heading: "share of the mass that is known", align: end },
      { key: "silent", heading: "silent lines" },
      { key: "figure", heading: "a day's figure", align: end },
      { key: "kind", heading: "kind" },
      { key: "covers", heading: "covers" },
      { key: "share", heading: "share of the figure", align: end },
      { key: "verdict", heading: "where it stands" },
      { key: "source", heading: "source" },
      { key: "check", heading: "check" },
      { key: "note", heading: "note" },
    ],
    rows,
  });
}

function longCells(of: readonly ComponentId[], held: HeldReference | HeldUpper): Cell[] {
  const { amount, figure: f, bound } = held;
  return [
    of.join("+"),
    of.map((id) => components[id].name).join(" and "),
    f.unit,
    "covers" in f ? "upper level" : "reference",
    bounded(amount.value, bound, {}, amount.ends),
    bound,
    figure(amount.least ?? null),
    figure(amount.most ?? null),
    figure(amount.coverage),
    amount.missing.join(" "),
    figure(exact(f.value)),
    f.kind,
    "covers" in f ? f.covers : "",
    bounded(held.share, bound, {}, amount.over(f.value).ends),
    held.verdict,
    f.source,
    f.check,
    f.note ?? "",
  ];
}
