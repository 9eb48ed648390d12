import { type Language, say } from "../document/language.ts";
import { components } from "../food/components.ts";
import { type Exact, fraction, times } from "../number/exact.ts";
import type { Influence, LineInfluence } from "../sheet/influence.ts";
import { figureCell, legend } from "./figure.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";
import { tallyFigure } from "./tallyFigure.ts";
import { tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** A row for each line, the largest share first. */
export function influenceTables(x: Influence, language: Language): readonly Table[] {
  const { component, unit, where, name } = x;
  const change = (by: Exact | undefined): Cell =>
    by ? figureCell(by, { language }) : figureCell(null, { language });
  const rows: Row[] = x.lines.map(({ name, brings, share, byAmount, byFigure, byYield }) => ({
    kind: "body",
    cells: [
      name,
      tallyFigure(brings, { language }),
      share ? figureCell(times(share, fraction(100n)), { language }) : figureCell(null, { language }),
      change(byAmount),
      change(byFigure),
      change(byYield),
    ],
  }));
  const of = say(language, components[component].name);
  const part = say(language, where === "portion" ? "one portion" : "100 g");
  return [
    table({
      title: say(language, "{of} in {part} of {name}: where it comes from", { of, part, name }),
      columns: [
        { key: "line", heading: say(language, "Line") },
        { key: "brings", heading: say(language, "Brings"), unit, align: "end" },
        { key: "share", heading: say(language, "Share"), unit: "%", align: "end" },
        { key: "byAmount", heading: say(language, "10 % more of it"), unit, align: "end" },
        { key: "byFigure", heading: say(language, "10 % more in it"), unit, align: "end" },
        { key: "byYield", heading: say(language, "10 % more left of it"), unit, align: "end" },
      ],
      rows,
      notes: legend(rows, language),
    }),
  ];
}

const OWN: readonly string[] = ["name", "share", "by_amount", "by_figure", "by_yield", "grams"];

/** One row for each line, what it brings as the amount. */
export function influenceTidy(x: Influence, asked: Asked): Tidy {
  const row = ({
    line,
    name,
    brings,
    share,
    byAmount,
    byFigure,
    byYield,
    grams,
  }: LineInfluence): TidyRow => ({
    sheet: x.name,
    line,
    row: "line",
    what: x.where,
    component: x.component,
    ...tallyRow(brings),
    own: { name, share, by_amount: byAmount, by_figure: byFigure, by_yield: byYield, grams },
  });
  return tidyOf(asked, OWN, (want) => (want.has(x.component) ? x.lines.map(row) : []));
}
