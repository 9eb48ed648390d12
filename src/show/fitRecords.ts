import { type Exact, ONE, plus } from "../number/exact.ts";
import type { FitFactor, FitOutcome } from "../scale/fit/answer.ts";
import type { Met } from "../scale/fit/met.ts";
import type { Missed } from "../scale/fit/missed.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { demandColumns, demandNames, demandRows } from "./fitDemandRecords.ts";
import { lineColumns, writtenRows } from "./sheetRecords.ts";
import { pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";
import type { WantedRows } from "./wanted.ts";

const OWN: readonly string[] = [...lineColumns, ...demandColumns, "status", "kind", "kept", "text"];

/** Each demand with what is brought, the factors, what a cook should know, and the amounts of each sheet. */
export function metTidy(met: Met, asked: Asked): Tidy {
  const names = demandNames(met.outcomes.map(({ demand }) => demand));
  return tidyOf(asked, OWN, (want) => metRows(met, met.fitted(), want), [...names, "factor"]);
}

function* metRows(met: Met, sheets: readonly Sheet[], want: WantedRows): Generator<TidyRow> {
  const own = { status: met.status };
  yield* answerRows(met, met.factor, sheets, own, want);
  for (const { kind, line, text, price, unit } of met.binding)
    yield { line, what: "binding", ...pointRow(price, unit), own: { ...own, kind, text } };
}

/** Why not, what would open it, and the nearest that can be had. */
export function missedTidy(missed: Missed, asked: Asked): Tidy {
  const names = demandNames(missed.outcomes.map(({ demand }) => demand));
  return tidyOf(asked, OWN, (want) => missedRows(missed, missed.nearestSheets(), want), [...names, "factor"]);
}

function* missedRows(missed: Missed, sheets: readonly Sheet[], want: WantedRows): Generator<TidyRow> {
  const own = { status: missed.status };
  for (const { kind, text } of missed.conflict) yield { what: "conflict", own: { ...own, kind, text } };
  for (const { text } of missed.alone) yield { what: "alone", own: { ...own, text } };
  for (const { change, text } of missed.suggestions)
    yield { what: "opens", own: { ...own, kind: change, text } };
  if (missed.factor) yield* answerRows(missed, missed.factor, sheets, own, want);
}

interface Answered {
  readonly outcomes: readonly FitOutcome[];
  readonly factors: readonly FitFactor[];
  readonly notes: readonly { readonly line: string | undefined; readonly text: string }[];
  readonly notProven: readonly { readonly text: string }[];
}

function* answerRows(
  { outcomes, factors, notes, notProven }: Answered,
  common: Exact,
  sheets: readonly Sheet[],
  own: { readonly status: string },
  want: WantedRows,
): Generator<TidyRow> {
  for (const each of outcomes) {
    const { brings, miss, unit, bound, text } = each;
    yield* demandRows({ row: "portion", own: { ...own, text } }, each, [
      { what: "brings", value: brings, unit, bound },
      { what: "miss", value: miss, unit, bound: "point" },
    ]);
  }
  yield { what: "common", component: "factor", ...pointRow(common, ""), own };
  for (const { kind, name, factor, departure, kept } of factors) {
    const of = { ...(kind === "line" ? { line: name, row: "line" } : {}), component: "factor" };
    const said = { ...own, kind, name, kept: kept ? "yes" : "" };
    yield { ...of, what: "factor", ...pointRow(factor, ""), own: said };
    yield { ...of, what: "ratio", ...pointRow(plus(ONE, departure), ""), own: said };
  }
  for (const { text } of notProven) yield { what: "not-proven", own: { ...own, text } };
  for (const { line, text } of notes) yield { line, what: "note", own: { ...own, text } };
  for (const s of sheets) {
    for (const i of s.lines.keys()) yield* writtenRows(s, i, { sheet: s.name, own }, want);
    const { raw, cooked } = s.masses;
    yield { sheet: s.name, row: "total", what: "raw", component: "mass", ...pointRow(raw, "g"), own };
    yield { sheet: s.name, row: "total", what: "eaten", component: "mass", ...pointRow(cooked, "g"), own };
    yield {
      sheet: s.name,
      row: "portion",
      what: "eaten",
      component: "mass",
      ...pointRow(s.portionMass, "g"),
      own,
    };
  }
}
