import { isRecord, refuseUnsafe } from "../document/safe.ts";
import { leaf, type Schema } from "../document/schema.ts";
import { type Fault, fault, kindOf, quote, throwIfAny } from "../number/error.ts";
import { type Exact, exact, fraction, type Value } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { type ComponentId, isComponentId } from "./components.ts";
import type { Shares } from "./composition.ts";

/** Retention as written: shares left after cooking by component, or a code of the retention table. */
export type RetentionInput = string | { readonly [C in ComponentId]?: Value };

/** Published retention factors, by the code of a food cooked in some way. */
export interface RetentionTable {
  readonly source: string;
  /** What each figure of a row speaks of: one component or several that keep the same share. */
  readonly columns: readonly (readonly ComponentId[])[];
  /** Of each code its name, and what is left in whole per cents, one for each column, between spaces. */
  readonly codes: { readonly [code: string]: readonly [name: string, percents: string] };
}

/** One row of a retention table, read. */
export interface RetentionCode {
  readonly code: string;
  readonly name: string;
  /** The share of each component that is left, 0 to 1, as a recipe line takes it for its `retention`. */
  readonly shares: { readonly [C in ComponentId]?: Exact };
}

/** What a line says of cooking: what it leaves, and whether that was said of another food in its place. */
export interface LineRetention {
  readonly retention?: RetentionInput;
  readonly retentionPresumed?: boolean;
}

const ALL: Shares = /* @__PURE__ */ new Map();

/**
 * The share of each component that a line's cooking leaves, 0 to 1; what is not named stays whole.
 *
 * Throws `retention-unknown` for a code that the table does not have, or where there is no table.
 */
export function retentionShares(
  { retention, retentionPresumed }: LineRetention,
  table: RetentionTable | undefined,
): Shares {
  if (retention === undefined) return ALL;
  const shares = sharesSaid(retention, table);
  return retentionPresumed ? Object.assign(new Map(shares), { presumed: true }) : shares;
}

function sharesSaid(
  retention: RetentionInput,
  table: RetentionTable | undefined,
): ReadonlyMap<ComponentId, Exact> {
  if (typeof retention !== "string")
    return new Map(Object.entries(retention).map(([id, share]) => [id as ComponentId, exact(share)]));
  if (!table) {
    throw fault(
      "retention-unknown",
      `no table of retention factors has the code ${quote(retention)}`,
      "give the foods one, with foods.withRetention(usdaRetention), or shares from 0 to 1 by component",
    );
  }
  const row = Object.hasOwn(table.codes, retention) ? table.codes[retention] : undefined;
  if (row) return sharesOf(table, row[1]);
  const hint = didYouMean(retention, Object.keys(table.codes), "retentionCodes(table, words) finds codes");
  throw fault("retention-unknown", `${table.source} has no code ${quote(retention)}`, hint);
}

/**
 * The codes of a retention table whose names hold all the words given, in any order. Throws
 * `retention-malformed` for what is no such table.
 *
 * @example
 * ```ts
 * const [code] = retentionCodes(usdaRetention, "greens boiled drained");
 * console.log(code.code, code.name); // => 3004 vegetables, greens, boiled, little water, drained
 * ```
 */
export function retentionCodes(table: RetentionTable, words = ""): readonly RetentionCode[] {
  checkRetention(table);
  if (typeof words !== "string")
    throw fault(
      "retention-malformed",
      `expected words, got ${kindOf(words)}`,
      'write them as text: "boiled"',
    );
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  return Object.entries(table.codes)
    .filter(([, [name]]) => wanted.every((word) => name.toLowerCase().includes(word)))
    .map(([code, [name, percents]]) => ({
      code,
      name,
      shares: Object.fromEntries(sharesOf(table, percents)),
    }));
}

/** The schema of a retention table in a document. */
export function retentionTableSchema(): Schema<RetentionTable> {
  return leaf("a table of retention factors", { type: "object" }, isRecord, (given) => {
    checkRetention(given as unknown as RetentionTable);
    return given as unknown as RetentionTable;
  });
}

/** Checks a table from outside. Throws `retention-malformed`, all faults at once. */
export function checkRetention(table: RetentionTable): void {
  refuseUnsafe(table, "retention-malformed");
  const isTable = typeof table === "object" && table !== null && Array.isArray(table.columns);
  if (!isTable || typeof table.codes !== "object" || table.codes === null || Array.isArray(table.codes))
    throw fault("retention-malformed", "not a table of retention factors", "give source, columns and codes");
  const faults: Fault[] = [];
  const wrong = (path: (string | number)[], message: string, hint: string): void => {
    faults.push({ code: "retention-malformed", path, message, hint });
  };
  if (typeof table.source !== "string") wrong(["source"], "no source", "say where the factors come from");
  table.columns.forEach((ids: readonly unknown[], i) => {
    const unknown = Array.isArray(ids) ? ids.filter((id) => !isComponentId(id)) : [ids];
    for (const id of unknown)
      wrong(["columns", i], `no component is called ${quote(id)}`, "use ids of the component registry");
  });
  for (const [code, row] of Object.entries(table.codes)) {
    const percents = Array.isArray(row) && typeof row[1] === "string" ? row[1].split(" ") : [];
    const sound = percents.every((p) => /^\d{1,3}$/.test(p) && Number(p) <= 100);
    if (!Array.isArray(row) || typeof row[0] !== "string")
      wrong(["codes", code], "a code without a name", 'give its name and per cents: ["boiled", "100 75"]');
    else if (percents.length !== table.columns.length || !sound)
      wrong(
        ["codes", code],
        `not ${table.columns.length} per cents`,
        "write one whole number from 0 to 100 for each column",
      );
  }
  throwIfAny(faults);
}

function sharesOf(table: RetentionTable, percents: string): ReadonlyMap<ComponentId, Exact> {
  const shares = new Map<ComponentId, Exact>();
  percents.split(" ").forEach((percent, i) => {
    for (const id of table.columns[i] ?? []) shares.set(id, fraction(BigInt(percent), 100n));
  });
  return shares;
}
