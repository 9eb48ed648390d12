import { britishEnglish } from "../document/language.ts";
import { missedOf } from "../plan/missed.ts";
import type { AboutPeople } from "../plan/people/about.ts";
import type { PlanAvoided } from "../plan/people/avoided.ts";
import type { Portion } from "../plan/portion.ts";
import { cautionColumns, cautionRows } from "./cautionRecords.ts";
import { doseColumns, doseRecords } from "./doseRecords.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** Columns of the records of what concerns people beside those of every result. */
export const aboutColumns: readonly string[] = [...new Set([...cautionColumns, ...doseColumns, "because"])];

/** What concerns the people of a plan: what portions miss, what people avoid, what to heed, doses and levels. */
export function* aboutRows(portions: readonly Portion[], about: AboutPeople): Generator<TidyRow> {
  for (const portion of portions) {
    const { person, meal, status } = portion;
    for (const { text, why } of missedOf(portion, britishEnglish))
      yield { person, meal, row: "meal", what: "missed", own: { status, text, because: why } };
  }
  yield* avoidedRows(about.avoided);
  for (const person of about.bodies.keys())
    for (const portion of about.portionsOf(person)) {
      const heeded = about.cautions(person, [portion]).filter(({ because }) => because.length > 0);
      yield* cautionRows({ person, meal: portion.meal, row: "meal" }, heeded);
    }
  if (about.doses) yield* doseRecords({}, about.doses.rows);
}

/** What people avoid, and what to ask and to know before serving, as rows of words. */
export function avoidedTidy(avoided: PlanAvoided, asked: Asked): Tidy {
  return tidyOf(asked, ["text", "because"], () => avoidedRows(avoided));
}

/** What is avoided and served all the same, and what a food does not say of it. */
function* avoidedRows({ people, overridden, unknown }: PlanAvoided): Generator<TidyRow> {
  for (const { person, avoids } of people)
    for (const text of avoids) yield { person, what: "avoids", own: { text } };
  for (const { person, meal, dish, lines, name, because } of overridden)
    for (const line of lines)
      yield {
        person,
        meal,
        dish,
        line,
        row: "line",
        what: "served-all-the-same",
        own: { text: name, because },
      };
  for (const { person, meal, dish, line, of, origin, why } of unknown)
    for (const text of origin === undefined ? of : [origin])
      yield { person, meal, dish, line, row: "line", what: "not-known", own: { text, because: why } };
}
