import { components } from "../food/components.ts";
import type { DoseCheck, DoseFor, DoseRow } from "../person/portion/doses.ts";
import { pointRow, tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** Columns of the records of doses beside those of every result. */
export const doseColumns: readonly string[] = [
  ...["verdict", "kind", "authority", "noLevelBy", "check"],
  ...["code", "text"],
];

/** Lines that are the same for everyone, each with what it brings, and against each person's level. */
export function doseTidy({ name, rows }: DoseCheck, asked: Asked): Tidy {
  return tidyOf(asked, doseColumns, () => doseRecords({ sheet: name }, rows));
}

export function* doseRecords(head: TidyRow, rows: readonly DoseRow[]): Generator<TidyRow> {
  for (const { line, grams, of, amount, people, checked, cautions } of rows) {
    const dose: TidyRow = { ...head, row: "line", line };
    yield { ...dose, what: "dose", component: "mass", ...pointRow(grams, "g") };
    yield { ...dose, what: "dose", component: of, ...tallyRow(amount) };
    for (const each of people) yield* levelRows({ ...dose, person: each.who, component: of }, each);
    for (const person of checked)
      if (!people.some(({ who }) => who === person))
        yield {
          ...dose,
          person,
          what: "upper-level",
          component: of,
          unit: components[of].unit,
          bound: "unknown",
        };
    for (const { code, text, source } of cautions)
      yield { ...dose, what: "caution", source, own: { ...head.own, code, text } };
  }
}

/** One person's level, and what share of it the dose is. */
function* levelRows(head: TidyRow, each: DoseFor): Generator<TidyRow> {
  const { level, authority, noLevelBy, verdict, bound } = each;
  const { kind, check, unit, source } = level;
  const row = { ...head, source, own: { ...head.own, verdict, kind, authority, noLevelBy, check } };
  yield { ...row, what: "upper-level", ...pointRow(level.value, unit) };
  const known = bound === "unknown" ? undefined : each.share;
  yield { ...row, what: "share", amount: known, unit: "", bound, least: each.least, most: each.most };
  if (each.perKg) yield { ...row, what: "per-kg", ...pointRow(each.perKg, `${unit}/kg`) };
}
