import { isRecord, refuseUnsafe } from "../document/safe.ts";
import { leaf, type Schema } from "../document/schema.ts";
import { type Fault, fault, quote, throwIfAny } from "../number/error.ts";
import { type ComponentId, isComponentId } from "./components.ts";
import { checkYields, type YieldTable } from "./yieldTable.ts";

/**
 * What a table says of one way of cooking: its name; what is left in whole per cents, one for each column,
 * between spaces; where the table tells it, the per cents between which nine analyses in ten of a like food
 * lie and how many there were, as in `61-97:13`, or `-`; and the yield that the shares are told at.
 */
export type RetentionRow = readonly [name: string, percents: string, spread?: string, usualYield?: string];

/** Published retention factors, by the code of a food cooked in some way. */
export interface RetentionTable {
  readonly source: string;
  /** What each figure of a row speaks of: one component or several that keep the same share. */
  readonly columns: readonly (readonly ComponentId[])[];
  readonly codes: { readonly [code: string]: RetentionRow };
  /**
   * By how many hundredths of a per cent the share of each column falls for 1 % less yield than the row's
   * usual one: whole numbers between spaces. It counts where a line tells its own yield.
   */
  readonly follows?: string;
  /** What foods weigh cooked, by codes that a line or a recipe may name for its yield. */
  readonly yields?: readonly YieldTable[];
  /** Another table, whose codes may be named too. */
  readonly beside?: RetentionTable;
}

/** The schema of a retention table in a document. */
export function retentionTableSchema(): Schema<RetentionTable> {
  return leaf("a table of retention factors", { type: "object" }, isRecord, (given) => {
    checkRetention(given as unknown as RetentionTable);
    return given as unknown as RetentionTable;
  });
}

const PERCENT = /^\d{1,3}$/;
const SPREAD = /^(-|\d{1,4}-\d{1,4}:\d{1,6})$/;
const YIELD = /^\d{1,4}(\.\d{1,6})?$/;

/** Checks a table from outside. Throws `retention-malformed`, all faults at once. */
export function checkRetention(table: RetentionTable): void {
  refuseUnsafe(table, "retention-malformed");
  const faults: Fault[] = [];
  checkEach(table, [], faults);
  throwIfAny(faults);
}

function checkEach(table: RetentionTable, at: readonly string[], faults: Fault[]): void {
  const isTable = typeof table === "object" && table !== null && Array.isArray(table.columns);
  if (!isTable || typeof table.codes !== "object" || table.codes === null || Array.isArray(table.codes))
    throw fault("retention-malformed", "not a table of retention factors", "give source, columns and codes");
  const wrong = (path: (string | number)[], message: string, hint: string): void => {
    faults.push({ code: "retention-malformed", path: [...at, ...path], message, hint });
  };
  if (typeof table.source !== "string") wrong(["source"], "no source", "say where the factors come from");
  table.columns.forEach((ids: readonly unknown[], i) => {
    const unknown = Array.isArray(ids) ? ids.filter((id) => !isComponentId(id)) : [ids];
    for (const id of unknown)
      wrong(["columns", i], `no component is called ${quote(id)}`, "use ids of the component registry");
  });
  const width = table.columns.length;
  const isRow = (text: unknown, each: RegExp): boolean =>
    typeof text === "string" &&
    text.split(" ").length === width &&
    text.split(" ").every((p) => each.test(p));
  if (table.follows !== undefined && !isRow(table.follows, PERCENT))
    wrong(["follows"], `not ${width} whole numbers`, "write one from 0 to 999 for each column");
  for (const [code, row] of Object.entries(table.codes)) {
    const [name, percents, spread, usual] = Array.isArray(row) ? row : [];
    const isSound = isRow(percents, PERCENT) && `${percents}`.split(" ").every((p) => Number(p) <= 100);
    if (typeof name !== "string")
      wrong(["codes", code], "a code without a name", 'give its name and per cents: ["boiled", "100 75"]');
    else if (!isSound)
      wrong(
        ["codes", code],
        `not ${width} per cents`,
        "write one whole number from 0 to 100 for each column",
      );
    else if (spread !== undefined && !isRow(spread, SPREAD))
      wrong(["codes", code], `not ${width} spreads`, "write low-high:count or - for each column");
    else if (usual !== undefined && !(YIELD.test(usual) && Number(usual) > 0))
      wrong(["codes", code], "not a yield", 'write one above 0, as text: "0.75"');
  }
  checkYields(table.yields, wrong);
  if (table.beside !== undefined) {
    if (at.length >= MOST_BESIDE)
      throw fault("retention-malformed", "too many tables beside each other", "give fewer");
    checkEach(table.beside, [...at, "beside"], faults);
  }
}

/** More tables beside each other than anyone has. */
const MOST_BESIDE = 20;
