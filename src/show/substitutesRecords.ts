import { type Moves, movesOf, type Replaced } from "../scale/substitutes/moves.ts";
import type { Substitutes } from "../scale/substitutes/result.ts";
import type { Substitute, SubstituteChange } from "../scale/substitutes/substitute.ts";
import { cellRow, pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/**
 * What could stand in, the closest first (`rank`): its mass for the batch (`instead`), what it changes of a
 * portion (`before`, `after`, and the `share` that it moves by, or the `change`), what to heed; then the foods
 * that were left out, and why.
 */
export function substitutesTidy(s: Substitutes, asked: Asked): Tidy {
  const own = ["rank", "name", "state", "tells", "code", "text"];
  return tidyOf(asked, own, () => substituteRows(s, s.of()), ["distance"]);
}

function* substituteRows(s: Substitutes, { sheet, key }: Replaced): Generator<TidyRow> {
  const of: TidyRow = { sheet: sheet.name, line: key };
  for (const [i, each] of s.found.entries()) yield* foundRows(of, each, movesOf(sheet, each), String(i + 1));
  for (const id of s.untold) yield { ...of, what: "untold", component: id, bound: "unknown" };
  for (const { food, holds } of s.avoided)
    for (const text of holds) yield { ...of, food, what: "left-out", own: { code: "holds", text } };
  for (const food of s.unknown) yield { ...of, food, what: "left-out", own: { code: "allergens-not-known" } };
  for (const food of s.without)
    yield { ...of, food, what: "left-out", own: { code: "none-of-it", text: s.match } };
  for (const { food, grams, least, most } of s.outside) {
    const own = { code: "not-as-served" };
    yield { ...of, food, what: "left-out", component: "mass", ...pointRow(grams, "g"), own };
    yield { ...of, food, what: "served", component: "mass", unit: "g", bound: "between", least, most, own };
  }
  if (s.why !== undefined) yield { ...of, what: "nothing", own: { text: s.why } };
  for (const text of s.opens) yield { ...of, what: "opens", own: { text } };
}

function* foundRows(of: TidyRow, found: Substitute, moves: Moves, rank: string): Generator<TidyRow> {
  const { food, name, state, tells, changes, also, cautions, silent } = found;
  const own = { rank, name, state, tells: tells.join(", ") };
  const head: TidyRow = { ...of, food, row: "line", own };
  yield { ...head, what: "instead", component: "mass", ...pointRow(found.grams, "g") };
  yield { ...head, what: "instead", component: "distance", ...pointRow(found.distance, "") };
  for (const change of changes) {
    yield* changeRows(head, change);
    yield cellRow(
      { ...head, row: "portion", what: "share" },
      change.component,
      moves.share(change.component),
    );
  }
  for (const change of also) {
    yield* changeRows(head, change);
    yield cellRow({ ...head, row: "portion", what: "change" }, change.component, moves.by(change.component));
  }
  for (const id of silent) yield { ...head, row: "portion", what: "after", component: id, bound: "unknown" };
  for (const { code, text, source } of cautions)
    yield { ...head, what: "caution", source, own: { ...own, code, text } };
}

function* changeRows(
  head: TidyRow,
  { component, before, after }: Omit<SubstituteChange, "share">,
): Generator<TidyRow> {
  const of = { ...head, row: "portion" };
  yield cellRow({ ...of, what: "before" }, component, before);
  yield cellRow({ ...of, what: "after" }, component, after);
}
