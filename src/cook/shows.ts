import type { Plan } from "../plan/planned.ts";
import type { TableInput } from "../table/table.ts";
import type { CookingNote } from "./notes.ts";
import type { DishServing } from "./served.ts";
import type { DishSession } from "./session.ts";

/** What a schedule shows. */
export interface Shows {
  readonly plan: Plan;
  readonly days: readonly string[];
  readonly sessions: readonly DishSession[];
  readonly servings: readonly DishServing[];
  readonly notes: readonly CookingNote[];
}

/** What people and dishes are called. */
export interface Names {
  readonly person: (id: string) => string;
  readonly meal: (id: string) => string;
  readonly dish: (of: { readonly meal: string; readonly dish: string }) => string;
}

type Columns = TableInput["columns"];

/** A column that is there only where something stands in it. */
export function where(asked: boolean, key: string, heading: string, end = false): Columns {
  return asked ? [{ key, heading, align: end ? "end" : "start" }] : [];
}
