import type { TableInput } from "./table.ts";

/** What people, days and dishes are called. */
export interface ScheduleNames {
  readonly day: (id: string | undefined) => string;
  readonly days: (ids: readonly string[]) => string;
  /** What is cooked at once, beside its day: of several meals the dish alone. */
  readonly cooked: (of: {
    readonly meals: readonly string[];
    readonly meal: string;
    readonly dish: string;
  }) => string;
  readonly person: (id: string) => string;
  readonly meal: (id: string) => string;
  /** A nested recipe, by its id. */
  readonly recipe: (id: string) => string;
  readonly dish: (of: { readonly meal: string; readonly dish: string }) => string;
  /** A dish by its own name, whichever meals it is for. */
  readonly named: (of: { readonly meal: string; readonly dish: string }) => string;
}

type Columns = TableInput["columns"];

/** A column that is there only where something stands in it. */
export function where(asked: boolean, key: string, heading: string, end = false): Columns {
  return asked ? [{ key, heading, align: end ? "end" : "start" }] : [];
}
