import { type ComponentId, components } from "../../food/components.ts";
import type { Fraction } from "../../number/fraction.ts";
import { pointRow, tallyRow } from "../../sheet/tallyRow.ts";
import { tidyOf } from "../../sheet/tidyOf.ts";
import type { Asked, Tidy, TidyRow } from "../../table/tidy.ts";
import type { SweepPoint } from "../sweep.ts";

/** A sweep as its records see it. */
export interface SweptGrid {
  readonly name: string;
  readonly axes: readonly string[];
  readonly points: readonly SweepPoint[];
  /** Where each point stands, axis by axis: a figure, or words where the axis has no unit of its own. */
  readonly places: readonly (readonly (Fraction | string)[])[];
  readonly components: readonly ComponentId[];
}

/**
 * A row for each point and component of one portion as eaten, with where the point stands on each axis, in
 * a column of the axis's name behind `at_`. A point that was not reached keeps its rows: its `status` is the
 * code of the reason, and there is no amount. Components that are asked for by name need not be the sweep's own.
 */
export function sweepTidy(grid: SweptGrid, asked: Asked): Tidy {
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
  { name, points, places }: SweptGrid,
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
