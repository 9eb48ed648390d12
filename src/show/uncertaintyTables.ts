import { type Language, say } from "../document/language.ts";
import { fraction, times } from "../number/exact.ts";
import type { Uncertainty } from "../sheet/uncertain.ts";
import { figureCell } from "./figure.ts";
import { type Cell, type Row, type Table, table } from "./table.ts";
import { pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** The figure with how sure it is, and which lines make it unsure. */
export function uncertaintyTables(u: Uncertainty, language: Language): readonly Table[] {
  const row = (...cells: readonly Cell[]): Row => ({ kind: "body", cells });
  const unit = u.unit === "" ? {} : { unit: u.unit };
  const unsaid = u.unsaid.join(", ");
  return [
    table({
      title: u.label,
      columns: [
        { key: "what", heading: say(language, "What") },
        { key: "value", heading: say(language, "Value"), align: "end", ...unit },
      ],
      rows: shown(u).map(([what, value]) => row(say(language, what), figureCell(value, { language }))),
      notes:
        unsaid === ""
          ? []
          : [say(language, "nobody says how sure these lines are: {lines}", { lines: unsaid })],
    }),
    table({
      title: say(language, "Where it comes from"),
      columns: [
        { key: "line", heading: say(language, "Line") },
        { key: "share", heading: say(language, "Share of the variance"), unit: "%", align: "end" },
      ],
      rows: u.by.map(({ line, share }) => row(line, figureCell(times(share, fraction(100n)), { language }))),
    }),
  ];
}

function shown(u: Uncertainty): readonly (readonly [string, Uncertainty["value"]])[] {
  return [
    ["value", u.value],
    ["standard uncertainty", u.standard],
    ["from", u.low],
    ["to", u.high],
    ["from, at worst", u.worstLow],
    ["to, at worst", u.worstHigh],
  ];
}

/** The value with its ends, its variance, the worst case, and what each line has in the variance. */
export function uncertaintyTidy(u: Uncertainty, asked: Asked): Tidy {
  return tidyOf(asked, ["label", "coverageFactor"], () => rowsOf(u));
}

function* rowsOf(u: Uncertainty): Generator<TidyRow> {
  const { unit, unsaid } = u;
  const head: TidyRow = { row: "sum", own: { label: u.label, coverageFactor: u.coverage } };
  const silent = unsaid.join(", ");
  const value = { ...head, amount: u.value, unit, bound: "between", silent };
  yield { ...value, what: "value", least: u.low, most: u.high };
  yield { ...value, what: "worst", least: u.worstLow, most: u.worstHigh };
  yield { ...head, what: "standard", ...pointRow(u.standard, unit) };
  yield { ...head, what: "variance", ...pointRow(u.variance, squared(unit)) };
  for (const { line, variance, share } of u.by) {
    const own = { ...head, row: "line", line };
    yield { ...own, what: "variance", ...pointRow(variance, squared(unit)) };
    yield { ...own, what: "share", ...pointRow(times(share, fraction(100n)), "%") };
  }
}

function squared(unit: string): string {
  return unit === "" ? "" : `(${unit})²`;
}
