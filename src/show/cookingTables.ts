import { britishEnglish } from "../document/language.ts";
import { componentIds, components } from "../food/components.ts";
import { type Exact, fraction, isZero, over, times } from "../number/exact.ts";
import type { Balance, CookingBalance } from "../sheet/cooking.ts";
import { driedNote } from "../sheet/water.ts";
import { figureCell, legend } from "./figure.ts";
import { type Row, type Table, table } from "./table.ts";
import { marksColumn, marksOf, plainFigure } from "./tallyFigure.ts";

/** Mass, and every component that cooking changes. */
export function cookingTables(cooking: CookingBalance): readonly Table[] {
  const s = cooking.cooked();
  const changed = componentIds
    .map((id) => ({ id, balance: cooking.of(id) }))
    .filter(({ balance }) => !isZero(balance.lost.value) || !isZero(balance.gained.value));
  const named: readonly (readonly [string, string, Balance])[] = [
    ["mass", "g", cooking.mass],
    ...changed.map(({ id, balance }) => [components[id].name, components[id].unit, balance] as const),
  ];
  const marks = marksColumn(
    named.map(([, , { retained }]) => marksOf(retained)),
    britishEnglish,
  );
  const rows = named.map(([name, unit, b], i): Row => {
    const figures = [b.raw, b.gained, b.retained, b.lost].map((tally) => plainFigure(tally));
    return { kind: "body", cells: [name, unit, ...figures, leftOf(b), ...marks.cell(i)] };
  });
  return [
    table({
      title: `${s.name}: what cooking keeps`,
      columns: [
        { key: "component", heading: "Component" },
        { key: "unit", heading: "Unit" },
        { key: "raw", heading: "Raw", align: "end" },
        { key: "gained", heading: "Gained", align: "end" },
        { key: "retained", heading: "As eaten", align: "end" },
        { key: "lost", heading: "Lost", align: "end" },
        { key: "left", heading: "Left", unit: "%", align: "end" },
        ...marks.columns,
      ],
      rows,
      notes: [
        ...legend(rows, britishEnglish, marks.used),
        ...driedNote(s.water),
        "components not listed are taken to stay whole",
      ],
    }),
  ];
}

function leftOf({ raw, retained }: Balance): ReturnType<typeof figureCell> {
  return isZero(raw.value) ? figureCell(null) : figureCell(times(over(retained.value, raw.value), HUNDRED));
}

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);
