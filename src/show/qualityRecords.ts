import type { PortionScore, ProteinQuality } from "../person/amino/quality.ts";
import { aminoPatterns } from "../person/amino/score.ts";
import { pointRow, tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/**
 * A portion's amino acids: how much `eaten`, in 1 g of protein (`per-g-protein`), as a share of each pattern and
 * of a day's requirement; then the scores, of which both ends are told, and the corrected ones.
 */
export function qualityTidy(q: ProteinQuality, asked: Asked): Tidy {
  const names = [...q.aminoAcids.map(({ of }) => of), "score"];
  return tidyOf(asked, ["pattern", "limiting", "proven", "text"], () => qualityRows(q), names);
}

function* qualityRows(q: ProteinQuality): Generator<TidyRow> {
  const head: TidyRow = { sheet: q.name, row: "portion" };
  yield { ...head, what: "eaten", component: "protein", ...tallyRow(q.protein) };
  yield { ...head, what: "told", component: "protein", ...pointRow(q.told, "") };
  if (q.safeLevel) {
    const { share, bound } = q.safeLevel;
    yield {
      ...head,
      what: "safe-level",
      component: "protein",
      amount: bound === "unknown" ? undefined : share,
      unit: "",
      bound,
    };
  }
  for (const { of, amount, mgPerGram, requirement } of q.aminoAcids) {
    const row = { ...head, component: of };
    yield { ...row, what: "eaten", ...tallyRow(amount) };
    const unknown = { unit: "mg/g", bound: "unknown" };
    yield { ...row, what: "per-g-protein", ...(mgPerGram ? tallyRow(mgPerGram) : unknown), unit: "mg/g" };
    for (const { pattern, source } of q.scores) {
      const share = mgPerGram?.over(aminoPatterns[pattern].mgPerGram[of]);
      const figures = share ? tallyRow(share) : unknown;
      yield { ...row, what: "share", ...figures, unit: "", source, own: { pattern } };
    }
    if (requirement) {
      const { share, bound } = requirement;
      yield { ...row, what: "requirement", amount: bound === "unknown" ? undefined : share, unit: "", bound };
    }
  }
  for (const score of q.scores) yield* scoreRows(head, score);
  if (q.note !== undefined) yield { ...head, what: "note", own: { text: q.note } };
}

/** A score is one figure where all is known, and else two ends. */
function* scoreRows(head: TidyRow, score: PortionScore): Generator<TidyRow> {
  const { pattern, least, most, limiting, proven, corrected, source } = score;
  const own = { pattern, limiting, proven: proven ? "yes" : "no" };
  const row = { ...head, component: "score", unit: "", source, own };
  yield { ...row, what: "score", ...endsOf(least, most) };
  if (corrected) yield { ...row, what: "corrected", ...endsOf(corrected.least, corrected.most) };
}

function endsOf(least: PortionScore["least"], most: PortionScore["most"]): TidyRow {
  const isPoint = most?.eq(least);
  if (isPoint) return { amount: least, bound: "point", least, most };
  return most === undefined ? { amount: least, bound: "at-least", least } : { bound: "between", least, most };
}
