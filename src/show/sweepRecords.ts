import { type ComponentId, components } from "../food/components.ts";
import type { Sweep } from "../scale/sweep.ts";
import { pointRow, tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/**
 * A row for each point and component of one portion as eaten, with where the point stands on each axis, in
 * a column of the axis's name behind `at_`. A point that was not reached keeps its rows: its `status` is the
 * code of the reason, and there is no amount. Components that are asked for by name need not be the sweep's own.
 */
export function sweepTidy(grid: Sweep, asked: Asked): Tidy {
  const columns = grid.axes.map(columnOf);
  return tidyOf(asked, [...columns, "status"], (want) => {
    const ids = asked?.components == null ? grid.components : want.ids;
    return sweepRows(grid, columns, ids, asked?.components?.includes("mass") === true);
  });
}

function columnOf(axis: string, i: number, all: readonly string[]): string {
  const plain = (name: string): string => `at_${name.replace(/\s+/g, "_")}`;
  const isTaken = all.some((other, k) => k < i && plain(other) === plain(axis));
  return isTaken ? `${plain(axis)}_${i + 1}` : plain(axis);
}

function* sweepRows(
  { name, points, places }: Sweep,
  columns: readonly string[],
  ids: readonly ComponentId[],
  hasMass: boolean,
): Generator<TidyRow> {
  for (const [i, { sheet, missed }] of points.entries()) {
    const at = Object.fromEntries(columns.map((column, k) => [column, places[i]?.[k]]));
    const own = { ...at, status: sheet ? "reached" : missed?.code };
    const head: TidyRow = { sheet: name, row: "portion", what: "eaten", own };
    if (hasMass && sheet) yield { ...head, component: "mass", ...pointRow(sheet.portionMass, "g") };
    for (const id of ids)
      yield {
        ...head,
        component: id,
        ...(sheet ? tallyRow(sheet.portion(id)) : { unit: components[id].unit, bound: "unknown" }),
      };
  }
}
