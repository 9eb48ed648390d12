import { britishEnglish } from "../document/language.ts";
import { components } from "../food/components.ts";
import type { Sweep } from "../scale/sweep.ts";
import { lineNameIn } from "../sheet/names.ts";
import { type Cell, type Table, table } from "./table.ts";
import { silentNotes, tallyFigure } from "./tallyFigure.ts";

/** A row for each point, components as columns. */
export function sweepTables(s: Sweep): readonly Table[] {
  const rows = s.points.map(({ at, sheet, missed }): Cell[] => [
    ...s.axes.map((axis) => at[axis] ?? ""),
    ...s.components.map((id) => (sheet ? tallyFigure(sheet.portion(id)) : (missed?.code ?? ""))),
  ]);
  const silent = s.points.flatMap(({ sheet }) =>
    s.components.map((id) => (sheet ? ([components[id].name, sheet.portion(id)] as const) : undefined)),
  );
  const [some] = s.points.flatMap(({ sheet }) => sheet ?? []);
  const lineName = (key: string): string => (some ? lineNameIn(some, key, britishEnglish) : key);
  return [
    table({
      title: "One portion as eaten",
      columns: [
        ...s.axes.map((axis) => ({ key: `at_${axis.replace(/\s+/g, "_")}`, heading: axis })),
        ...s.components.map((id) => ({
          key: id,
          heading: components[id].name,
          unit: components[id].unit,
          align: "end" as const,
        })),
      ],
      rows,
      notes: [
        ...new Set(
          silentNotes(
            [...new Map(silent.filter((each) => each !== undefined))],
            britishEnglish,
            undefined,
            lineName,
          ),
        ),
      ],
    }),
  ];
}
