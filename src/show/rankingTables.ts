import { type Language, say } from "../document/language.ts";
import { components } from "../food/components.ts";
import type { FoodRanking, RankedFood } from "../food/rankFoods.ts";
import { showFigure } from "../measure/showFigure.ts";
import { exactText } from "../number/digits.ts";
import { type Table, table } from "./table.ts";
import { pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** A row for each food, the richest first. */
export function rankingTables(x: FoodRanking, language: Language): readonly Table[] {
  const of = say(language, components[x.component].name);
  return [
    table({
      title: say(language, "{of}: the richest foods first", { of }),
      columns: [
        { key: "food", heading: say(language, "Food") },
        { key: "state", heading: say(language, "State") },
        { key: "value", heading: of, unit: say(language, x.unit), align: "end" },
        { key: "marks", heading: say(language, "Marks") },
      ],
      rows: x.foods.map(({ name, state, value, marks }) => [
        name,
        state === undefined ? "" : say(language, state),
        { text: showFigure(value, { language }), value: exactText(value), tone: "known" },
        marks.map((mark) => say(language, mark)).join(", "),
      ]),
      notes:
        x.unknown.length === 0
          ? []
          : [say(language, "{count} foods do not tell it", { count: String(x.unknown.length) })],
    }),
  ];
}

/** A row for each food. */
export function rankingTidy(x: FoodRanking, asked: Asked): Tidy {
  const row = ({ id, name, state, group, value, marks }: RankedFood, k: number): TidyRow => ({
    food: id,
    row: "food",
    component: x.component,
    ...pointRow(value, x.unit),
    marks: marks.join(" "),
    own: { name, state, group, place: { n: BigInt(k + 1), d: 1n } },
  });
  return tidyOf(asked, ["name", "state", "group", "place"], (want) =>
    want.has(x.component) ? x.foods.map(row) : [],
  );
}
