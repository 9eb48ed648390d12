import { showFigure, showPercent } from "../measure/showFigure.ts";
import { exact } from "../number/exact.ts";
import { AT_LEAST, type EnergyCheck, type EnergyCheckLine } from "../sheet/energyCheck.ts";
import { figureCell, legend } from "./figure.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";
import { tallyFigure } from "./tallyFigure.ts";

/** Energy given and computed, line by line. */
export function energyCheckTables(check: EnergyCheck): readonly Table[] {
  const rows: Row[] = check.lines.map((line) => ({ kind: "body", cells: cellsOf(line) }));
  const { tolerance, floor } = check.limits;
  return [
    table({
      title: `${check.name}: energy given and computed`,
      columns: [
        { key: "line", heading: "Line" },
        { key: "given", heading: "Given", unit: "kcal", align: "end" },
        { key: "computed", heading: "Computed", unit: "kcal", align: "end" },
        { key: "difference", heading: "Difference", unit: "kcal", align: "end" },
        { key: "verdict", heading: "Verdict" },
        { key: "system", heading: "By" },
      ],
      rows,
      notes: [
        ...legend(rows),
        `they differ where they are further apart than ${showPercent(tolerance)} and ${showFigure(floor)} kcal in 100 g before cooking, rounding of labels allowed for`,
      ],
    }),
  ];
}

function cellsOf({
  key,
  name,
  given,
  computed,
  difference,
  verdict,
  system,
  why,
  silent,
}: EnergyCheckLine): Cell[] {
  const known = verdict !== "unknown";
  const off = difference === undefined ? figureCell(null) : figureCell(exact(difference));
  const counted = known && silent.length > 0 ? `${verdict}; ${silent.join(", ")} not known` : verdict;
  return [
    key.includes("/") ? `${key}: ${name}` : name,
    tallyFigure(given),
    known || why === AT_LEAST ? tallyFigure(computed) : figureCell(null),
    off,
    why ?? counted,
    system ?? "",
  ];
}
