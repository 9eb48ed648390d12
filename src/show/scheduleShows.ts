import type { TableInput } from "./table.ts";

/** What people and dishes are called. */
export interface Names {
  readonly person: (id: string) => string;
  readonly meal: (id: string) => string;
  /** A nested recipe, by its id. */
  readonly recipe: (id: string) => string;
  readonly dish: (of: { readonly meal: string; readonly dish: string }) => string;
}

type Columns = TableInput["columns"];

/** A column that is there only where something stands in it. */
export function where(asked: boolean, key: string, heading: string, end = false): Columns {
  return asked ? [{ key, heading, align: end ? "end" : "start" }] : [];
}
