import type { Amount } from "../measure/amount.ts";
import type { RoundedDemand, RoundedLine } from "../scale/round/report.ts";
import type { Measured, RoundingOutOfReach } from "../scale/round/result.ts";
import { demandColumns, demandNames, demandRows } from "./fitDemandRecords.ts";
import { pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

const OWN: readonly string[] = ["name", "state", "status", "kept", ...demandColumns, "holds", "text"];

/**
 * Amounts as a kitchen measures them: of each line `before`, `after` and rounded for itself (`line-by-line`),
 * how far it `moved` and how far its ratio drifts; each demand before and after; the drift in all.
 */
export function roundedTidy(r: Measured, asked: Asked): Tidy {
  return tidyOf(asked, OWN, () => roundedRows(r), [...demandNames(r.demands.map((d) => d.demand)), "ratios"]);
}

function* roundedRows(r: Measured): Generator<TidyRow> {
  const own = { status: r.status };
  const lines = r.measured().flatMap((s) => s.lines.map((line) => ({ sheet: s.name, line })));
  for (const [i, each] of r.lines.entries()) {
    const at = lines[i];
    if (!at) continue;
    const { key, food, name, state } = at.line;
    const head = { sheet: at.sheet, line: key, food, row: "line" };
    yield* lineRows({ ...head, own: { ...own, name, state, kept: each.kept } }, each);
  }
  for (const each of r.demands) yield* roundedDemand(each, own);
  const all = { ...pointRow(r.drift.ratios, ""), component: "ratios", row: "total", own };
  yield { ...all, what: "drift" };
  yield { ...all, what: "line-by-line", ...pointRow(r.lineByLine.ratios, "") };
  if (r.bound) yield { ...all, what: "bound", ...pointRow(r.bound.ratios, "") };
  for (const { text } of r.notProven) yield { what: "not-proven", own: { ...own, text } };
  for (const { line, text } of r.notes) yield { line, what: "note", own: { ...own, text } };
}

function* lineRows(
  head: TidyRow,
  { before, after, lineByLine, moved, drift }: RoundedLine,
): Generator<TidyRow> {
  const amounts: { readonly [what: string]: Amount } = { before, after, "line-by-line": lineByLine };
  for (const [what, amount] of Object.entries(amounts))
    for (const { value, unit } of amount.parts ?? [amount])
      yield { ...head, what, component: "amount", ...pointRow(value, unit) };
  yield { ...head, what: "moved", component: "amount", ...pointRow(moved, "") };
  yield { ...head, what: "ratio-drift", component: "amount", ...pointRow(drift, "") };
}

function* roundedDemand(each: RoundedDemand, own: { readonly status: string }): Generator<TidyRow> {
  const { before, brings, lineByLine, miss, unit, bound, holds } = each;
  yield* demandRows({ row: "portion", own: { ...own, holds: holds ? "yes" : "no" } }, each, [
    { what: "before", value: before, unit, bound },
    { what: "brings", value: brings, unit, bound },
    { what: "line-by-line", value: lineByLine, unit, bound },
    { what: "miss", value: miss, unit, bound: "point" },
  ]);
}

/** Which limits no measurable amounts keep, and how near they can be kept. */
export function unroundableTidy(r: RoundingOutOfReach, asked: Asked): Tidy {
  const names = demandNames(r.limits.map(({ demand }) => demand));
  return tidyOf(asked, OWN, () => unroundableRows(r), names);
}

function* unroundableRows(r: RoundingOutOfReach): Generator<TidyRow> {
  const own = { status: r.status };
  for (const each of r.limits) yield* roundedDemand(each, own);
  yield { what: "why", own: { ...own, text: r.text } };
}
