import { type Language, say } from "../document/language.ts";
import { type ComponentId, components } from "../food/components.ts";
import { portionInterval } from "../sheet/portionInterval.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Tally } from "../sheet/tally.ts";
import { legend } from "./figure.ts";
import { intervalFigure, intervalNotes } from "./intervalFigure.ts";
import { type Table, table } from "./table.ts";

/** A portion whose figures are shown with how sure they are: what it brings, and of which sheets it is one portion. */
export interface ShownPortion {
  readonly key: string;
  readonly heading: string;
  readonly sheets: readonly Sheet[];
  readonly brings: (id: ComponentId) => Tally;
}

/** How sure each figure of a portion is, of components that anything is told of. */
export function intervalTable(
  name: string,
  ids: readonly ComponentId[],
  portions: readonly ShownPortion[],
  language: Language,
): Table {
  const found = ids.map((id) => ({
    id,
    each: portions.map(({ brings, sheets }) => {
      const tally = brings(id);
      return { tally, interval: tally.bound === "point" ? portionInterval(sheets, id) : undefined };
    }),
  }));
  const told = found.filter(({ each }) => each.some(({ interval }) => interval !== undefined));
  const rows = told.map(({ id, each }) => [
    say(language, components[id].name),
    say(language, components[id].unit),
    ...each.map(({ tally, interval }) => intervalFigure(tally, interval, { language })),
  ]);
  return table({
    title: say(language, "{meal}: how sure a portion's figures are", { meal: name }),
    columns: [
      { key: "component", heading: say(language, "Component") },
      { key: "unit", heading: say(language, "Unit") },
      ...portions.map(({ key, heading }) => ({ key, heading, align: "end" as const })),
    ],
    rows,
    notes: [
      ...legend(rows, language),
      ...intervalNotes(
        told.flatMap(({ each }) => each.map(({ interval }) => interval)),
        language,
      ),
    ],
  });
}
