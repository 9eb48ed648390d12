import { components } from "../food/components.ts";
import { type Exact, exact, ZERO } from "../number/exact.ts";
import type { ComponentChange, Difference, LineChange, MassChange } from "../sheet/difference.ts";
import { figureCell, legend } from "./figure.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";
import { tallyFigure } from "./tallyFigure.ts";

/** Lines that moved, then mass and components. */
export function differenceTables({ lines, mass, components: changed }: Difference): readonly Table[] {
  return [linesTable(lines), figuresTable(mass, changed)];
}

/** Two figures and what lies between them, with the decimals that it takes to see it. */
function figuresOf(before: Exact | null, after: Exact | null, by: Exact): readonly Cell[] {
  const moved = figureCell(by);
  const cell = (grams: Exact | null): Cell => {
    if (grams === null) return { ...figureCell(ZERO), text: "none" };
    const plain = figureCell(exact(grams));
    const places = Math.max(decimalsOf(plain.text), decimalsOf(moved.text));
    return places === 0 ? plain : figureCell(exact(grams), { places });
  };
  return [cell(before), cell(after), moved];
}

/** How many decimals a figure is shown with; none where it is shown as a power of ten. */
function decimalsOf(text: string): number {
  return /^-?\d+\.(\d+)$/.exec(text)?.[1]?.length ?? 0;
}

function linesTable(lines: readonly LineChange[]): Table {
  return table({
    title: "Lines, one portion",
    columns: [
      { key: "line", heading: "Line" },
      { key: "change", heading: "Change" },
      { key: "before", heading: "Before", unit: "g", align: "end" },
      { key: "after", heading: "After", unit: "g", align: "end" },
      { key: "by", heading: "By", unit: "g", align: "end" },
    ],
    rows: lines.map(({ name, change, before, after, by }) => [name, change, ...figuresOf(before, after, by)]),
  });
}

function figuresTable(mass: MassChange | undefined, changes: readonly ComponentChange[]): Table {
  const weighed: Row[] = mass
    ? [{ kind: "body", cells: ["mass", "g", ...figuresOf(mass.before, mass.after, mass.by)] }]
    : [];
  const changed = changes.map(({ component, before, after, change }): Row => {
    const { name, unit } = components[component];
    return {
      kind: "body",
      cells: [name, unit, tallyFigure(before), tallyFigure(after), tallyFigure(change)],
    };
  });
  const rows = [...weighed, ...changed];
  return table({
    title: "Figures, one portion as eaten",
    columns: [
      { key: "component", heading: "Component" },
      { key: "unit", heading: "Unit" },
      { key: "before", heading: "Before", align: "end" },
      { key: "after", heading: "After", align: "end" },
      { key: "by", heading: "By", align: "end" },
    ],
    rows,
    notes: legend(rows),
  });
}
