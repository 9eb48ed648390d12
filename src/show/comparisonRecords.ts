import { exact, over } from "../number/exact.ts";
import type { EnergyBalance, PortionRatio } from "../person/compare/balance.ts";
import type { ComparisonData } from "../person/compare/comparison.ts";
import type { HeldReference, HeldUpper } from "../person/compare/held.ts";
import type { EnergyRange } from "../person/ranges/range.ts";
import { cautionColumns, cautionRows } from "./cautionRecords.ts";
import { type FigureRow, pointRow, tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

const OWN: readonly string[] = [
  ...["against", "kind", "covers", "verdict", "check", "note", "of", "name", "authority"],
  ...cautionColumns,
];

/**
 * A comparison as tidy rows. For each figure of a day: what was `eaten` of just what it counts, the
 * `reference` or `upper-level` itself, and the `share` of it. Then shares of energy against their ranges,
 * ratios, and what to heed. Components that a figure counts together stand with a plus between.
 */
export function comparisonTidy(c: ComparisonData, asked: Asked): Tidy {
  const others = [
    ...c.rows.map(({ of }) => of.join("+")),
    ...c.balance.map(({ of }) => of),
    ...c.ratios.map(({ id }) => id),
  ];
  return tidyOf(asked, OWN, () => comparisonRows(c), others);
}

function* comparisonRows(c: ComparisonData): Generator<TidyRow> {
  const head: TidyRow = {
    sheet: c.name,
    row: c.meals > 1 ? "meals" : "portion",
    own: { authority: c.authority },
  };
  for (const { of, references, uppers } of c.rows)
    for (const held of [...references, ...uppers])
      yield* heldRows({ ...head, component: of.join("+") }, held);
  for (const { of } of c.withoutUpper)
    yield { ...head, component: of, what: "upper-level", bound: "unknown" };
  for (const each of c.balance) yield* balanceRows(head, each);
  for (const each of c.ratios) yield ratioRow(head, each);
  yield* cautionRows(head, c.cautions);
}

function* heldRows(head: TidyRow, held: HeldReference | HeldUpper): Generator<TidyRow> {
  const { amount, figure: f, verdict } = held;
  const isUpper = "covers" in f;
  const against = isUpper ? "upper-level" : "reference";
  const { kind, check, note, source, unit } = f;
  const said = { against, kind, covers: isUpper ? f.covers : undefined, verdict, check, note };
  const row = { ...head, own: { ...head.own, ...said } };
  const day = f.value;
  yield { ...row, what: "eaten", ...tallyRow(amount) };
  // A range is told by its ends, of which the lower is the figure.
  const published = { ...pointRow(day, unit), ...(f.most && { bound: "between", most: f.most }) };
  yield { ...row, what: against, ...published, source };
  yield { ...row, what: "share", ...shareOf(held), source };
}

/** The share of a day's figure, by the same bound as the amount. */
function shareOf({ amount, figure: f, share, bound }: HeldReference | HeldUpper): FigureRow {
  const day = f.value;
  const { low, high } = amount.ends;
  const known = bound === "unknown" ? undefined : share;
  const ends = { least: low && over(low, day), most: high && over(high, day) };
  return { ...tallyRow(amount), amount: known, unit: "", bound, ...ends };
}

function* balanceRows(head: TidyRow, each: EnergyBalance): Generator<TidyRow> {
  const { of, energy, share, bound, least, most, range, verdict } = each;
  const row = {
    ...head,
    component: of,
    own: { ...head.own, ...(verdict && { verdict }), of: "share of energy" },
  };
  yield { ...row, what: "eaten", ...tallyRow(energy), own: { ...row.own, of: "energy" } };
  const known = bound === "unknown" ? undefined : share;
  const ends = { least, most };
  yield { ...row, what: "share", ...tallyRow(energy), amount: known, unit: "", bound, ...ends };
  if (range) yield { ...row, ...rangeRow(range), own: { ...row.own, kind: range.kind, check: range.check } };
}

/** A published range of shares; per cents as published, shares here. */
function rangeRow({ least, most, source }: EnergyRange): TidyRow {
  const ofAll = (percent: string | undefined): TidyRow["least"] =>
    percent === undefined ? undefined : over(exact(percent), exact(100));
  return { what: "reference", unit: "", bound: "between", least: ofAll(least), most: ofAll(most), source };
}

function ratioRow(head: TidyRow, ratio: PortionRatio): TidyRow {
  const { id, name, unit, value, bound, least, most, note, source } = ratio;
  const own = { ...head.own, of: "ratio", name, note };
  const amount = bound === "unknown" ? undefined : value;
  const ends = { least, most };
  return { ...head, component: id, what: "eaten", amount, unit, bound, ...ends, source, own };
}
