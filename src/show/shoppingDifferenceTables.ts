import { type Language, say } from "../document/language.ts";
import { ZERO } from "../number/exact.ts";
import { stated } from "../sheet/stated.ts";
import type { ShoppingLine } from "../shop/line.ts";
import type { ShoppingChange, ShoppingDifference } from "../shop/shoppingDifference.ts";
import { figureCell } from "./figure.ts";
import { toBuy } from "./shoppingTables.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";
import { pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** What is bought otherwise, by aisle. */
export function shoppingDifferenceTables(d: ShoppingDifference, language: Language): readonly Table[] {
  const moved = d.changes.filter(({ change }) => change !== "needed");
  const bought = (line: ShoppingLine | undefined): Cell =>
    line ? toBuy(line, language) : say(language, "none");
  const rowOf = ({ name, state, before, after, by }: ShoppingChange): Row => ({
    kind: "body",
    cells: [
      stated(name, state, language),
      bought(before),
      bought(after),
      figureCell(by, { places: 0, language }),
    ],
  });
  const aisles = [...new Set(moved.map(({ aisle }) => aisle))];
  const others = d.changes.length - moved.length;
  const phrase =
    others === 1
      ? "1 more food is needed in another amount, and the same is bought"
      : "{count} more foods are needed in other amounts, and the same is bought";
  return [
    table({
      title: say(language, "Bought otherwise than before"),
      columns: [
        { key: "food", heading: say(language, "Food") },
        { key: "before", heading: say(language, "Before"), align: "end" },
        { key: "now", heading: say(language, "Now"), align: "end" },
        { key: "by", heading: say(language, "By"), unit: "g", align: "end" },
      ],
      rows: aisles.flatMap((aisle): Row[] => [
        { kind: "group", heading: say(language, aisle) },
        ...moved.filter((change) => change.aisle === aisle).map(rowOf),
      ]),
      notes: [
        ...(moved.length === 0 ? [say(language, "the same is bought")] : []),
        ...(others > 0 ? [say(language, phrase, { count: String(others) })] : []),
      ],
    }),
  ];
}

/**
 * Three rows for each food: grams bought `before` and `after`, as eaten, and the `change` between; and what is
 * weighed out, where it is bought by weight.
 */
export function shoppingDifferenceTidy(d: ShoppingDifference, asked: Asked): Tidy {
  return tidyOf(asked, OF_CHANGES, () => changeRows(d));
}

/** Columns that rows of changes have of their own. */
export const OF_CHANGES: readonly string[] = ["name", "state", "aisle", "moved"];

export function* changeRows({ changes }: ShoppingDifference): Generator<TidyRow> {
  for (const { food, name, state, aisle, change, before, after, by } of changes) {
    const head: TidyRow = {
      food,
      row: "food",
      component: "mass",
      own: { name, state, aisle, moved: change },
    };
    yield { ...head, what: "before", ...pointRow(before?.bought ?? ZERO, "g") };
    yield { ...head, what: "after", ...pointRow(after?.bought ?? ZERO, "g") };
    yield { ...head, what: "change", ...pointRow(by, "g") };
    for (const [what, line] of [
      ["weigh-before", before],
      ["weigh-after", after],
    ] as const)
      if (line?.weighOut) yield { ...head, what, ...pointRow(line.weighOut, "g") };
  }
}
