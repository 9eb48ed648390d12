import type { Language } from "../document/language.ts";
import type { ServedPortion } from "../plan/portion.ts";
import { lineColumns, lineRows, sumRows } from "./sheetRecords.ts";
import { sheetTables } from "./sheetTables.ts";
import type { Table } from "./table.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** Each dish that a person is served of a meal, as a sheet for the one portion. */
export function portionTables(
  { dishes }: ServedPortion,
  language: Language,
  most?: number,
): readonly Table[] {
  return [...dishes.values()].flatMap((s) => sheetTables(s, language, most));
}

/** The same lines and sums as in the records of its plan. */
export function portionTidy({ person, meal, status, dishes }: ServedPortion, asked: Asked): Tidy {
  return tidyOf(asked, [...lineColumns, "status"], (want) =>
    [...dishes].flatMap(([dish, s]): TidyRow[] => {
      const whose = { person, meal, dish, sheet: s.name, own: { status } };
      return [...s.lines.keys()]
        .flatMap((i) => lineRows(s, i, whose, want))
        .concat(sumRows(s, "portion", whose, want));
    }),
  );
}
