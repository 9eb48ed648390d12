import type { Sheet } from "../../sheet/sheet.ts";
import type { Task } from "../engine/task.ts";

/** Sheets eaten together, by name. */
export interface Sheets {
  readonly [name: string]: Sheet;
}

/** The names of a task's dishes, in their order. */
export function dishNames({ dishes }: Task): string[] {
  return dishes.map(({ name }) => name ?? "");
}

/** Sheets under their names; none where there is none for a name. */
export function sheetsByName(names: readonly string[], sheets: readonly Sheet[]): Sheets {
  return Object.fromEntries(names.flatMap((name, d) => (sheets[d] ? [[name, sheets[d]]] : [])));
}
