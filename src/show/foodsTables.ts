import { britishEnglish, type Language, say } from "../document/language.ts";
import { type ComponentId, componentIds, components } from "../food/components.ts";
import type { ReadFigure } from "../food/figure.ts";
import type { FoodInput } from "../food/food.ts";
import type { FoodTable } from "../food/table.ts";
import { figureCell, legend } from "./figure.ts";
import { type Cell, type Table, type TableFigure, table } from "./table.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";
import type { WantedRows } from "./wanted.ts";

/** What a list of foods shows of each; `toRecords` has all that is known. */
const SHOWN: readonly ComponentId[] = [
  "energy",
  "protein",
  "fat",
  "carbohydrateByDifference",
  "fibre",
  "iron",
  "calcium",
  "vitaminC",
];

/** A row for each food: what it is called, its state and group, and what 100 g of it have. */
export function foodsTables(
  foods: FoodTable,
  language: Language = britishEnglish,
  most: number = Number.POSITIVE_INFINITY,
): readonly Table[] {
  const shown = Math.min(foods.size, Math.max(0, most));
  const rows: Cell[][] = [];
  for (const food of foods) {
    if (rows.length >= shown) break;
    rows.push(rowOf(food, foods, language));
  }
  return [
    table({
      title: say(language, "Foods, what 100 g have"),
      columns: [
        { key: "food", heading: say(language, "Food") },
        { key: "id", heading: say(language, "Id") },
        { key: "state", heading: say(language, "State") },
        { key: "group", heading: say(language, "Group") },
        ...SHOWN.map((id) => ({
          key: id,
          heading: say(language, components[id].name),
          unit: components[id].unit,
          align: "end" as const,
        })),
      ],
      rows,
      ...(foods.size > rows.length && { more: foods.size - rows.length }),
      notes: legend(rows, language),
    }),
  ];
}

function rowOf({ id, name, state, group }: FoodInput, foods: FoodTable, language: Language): Cell[] {
  const { figures } = foods.food(id).composition;
  return [
    say(language, name),
    id,
    state === undefined ? "" : say(language, state),
    group === undefined ? "" : say(language, group),
    ...SHOWN.map((each) => cellOf(figures[componentIds.indexOf(each)], language)),
  ];
}

function cellOf(read: ReadFigure | undefined, language: Language): TableFigure {
  if (!read || read.kind === "missing") return figureCell(null, { language });
  if (read.kind === "below") return figureCell(read.high ?? null, { tone: "at-most", language });
  return figureCell(read.value, { tone: read.kind, language });
}

/** A row for each food and component of which something is known, per 100 g. */
export function foodsTidy(foods: FoodTable, asked: Asked): Tidy {
  return tidyOf(asked, ["name", "state", "group"], (want) => foodsRows(foods, want));
}

function* foodsRows(foods: FoodTable, want: WantedRows): Generator<TidyRow> {
  for (const { id, name, state, group } of foods) {
    const { figures } = foods.food(id).composition;
    const head: TidyRow = { food: id, row: "food", what: "per 100 g", own: { name, state, group } };
    for (const component of want.ids) {
      const read = figures[componentIds.indexOf(component)];
      if (!read || read.kind === "missing") continue;
      const { unit } = components[component];
      const isPoint = read.low === undefined && read.high === undefined && read.kind !== "trace";
      yield {
        head,
        component,
        amount: read.value,
        unit,
        bound: isPoint ? "point" : read.kind === "trace" || read.kind === "below" ? "at-least" : "between",
        least: read.low ?? read.value,
        most: read.high ?? (read.kind === "trace" ? undefined : read.value),
        marks: read.kind === "known" ? "" : read.kind,
        source: read.note,
      };
    }
  }
}
