import { fault, kindOf, quote } from "../number/error.ts";
import {
  type Exact,
  exact,
  fraction,
  greatest,
  least,
  minus,
  ONE,
  over,
  plus,
  times,
  type Value,
  ZERO,
} from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import type { ComponentId } from "./components.ts";
import type { ShareSpread, Shares } from "./composition.ts";
import { checkRetention, type RetentionRow, type RetentionTable } from "./retentionTable.ts";
import { type YieldInput, yieldFigure } from "./yield.ts";

/** Shares left after cooking by component; with a code of the retention table, those that it says otherwise. */
export type RetentionShares = { readonly [C in ComponentId]?: Value } & { readonly code?: string };

/** Retention as written: a code of the retention table, or shares left after cooking by component. */
export type RetentionInput = string | RetentionShares;

/** One row of a retention table, read. */
export interface RetentionCode {
  readonly code: string;
  readonly name: string;
  /** The table that it stands in. */
  readonly source: string;
  /** The share of each component that is left, 0 to 1, as a recipe line takes it for its `retention`. */
  readonly shares: { readonly [C in ComponentId]?: Exact };
  /** Where the table tells it, between which shares nine analyses in ten of a like food lie, and how many there were. */
  readonly spread?: { readonly [C in ComponentId]?: ShareSpread };
  /** The yield that the shares are told at, where they move with it. */
  readonly usualYield?: Exact;
}

/** What a line says of cooking: what it leaves, what it weighs then, and whether that was said of another food. */
export interface LineRetention {
  readonly retention?: RetentionInput;
  readonly retentionPresumed?: boolean;
  readonly yieldFactor?: YieldInput;
}

const ALL: Shares = /* @__PURE__ */ new Map();

/**
 * The share of each component that a line's cooking leaves, 0 to 1; what is not named stays whole.
 *
 * Throws `retention-unknown` for a code that the table does not have, or where there is no table.
 */
export function retentionShares(
  { retention, retentionPresumed, yieldFactor }: LineRetention,
  table: RetentionTable | undefined,
): Shares {
  if (retention === undefined) return ALL;
  const { code, ...own } = typeof retention === "string" ? { code: retention } : retention;
  const named = code === undefined ? undefined : foundRow(code, table);
  const shares = named
    ? rowShares(
        named.table,
        named.row,
        yieldFactor === undefined ? undefined : yieldFigure(yieldFactor, table),
      )
    : { left: new Map(), spread: new Map() };
  for (const [id, share] of Object.entries(own)) {
    shares.left.set(id as ComponentId, exact(share as Value));
    shares.spread.delete(id as ComponentId);
  }
  const { left, spread } = shares;
  const said = { ...(spread.size > 0 && { spread }), ...(retentionPresumed && { presumed: true }) };
  return Object.assign(left, said);
}

/** The code that a line's retention names, if it names one. */
export function retentionCode(retention: RetentionInput | undefined): string | undefined {
  return typeof retention === "object" ? retention.code : retention;
}

/** The row of a code and the table that it stands in, this one or one beside it. */
export function findRow(
  code: string,
  table: RetentionTable | undefined,
): { readonly table: RetentionTable; readonly row: RetentionRow } | undefined {
  if (!table) return undefined;
  const row = Object.hasOwn(table.codes, code) ? table.codes[code] : undefined;
  return row ? { table, row } : findRow(code, table.beside);
}

function foundRow(code: string, table: RetentionTable | undefined): NonNullable<ReturnType<typeof findRow>> {
  if (!table) {
    throw fault(
      "retention-unknown",
      `no table of retention factors has the code ${quote(code)}`,
      "give the foods one, with foods.withRetention(usdaRetention), or shares from 0 to 1 by component",
    );
  }
  const found = findRow(code, table);
  if (found) return found;
  const codes = tablesOf(table).flatMap(({ codes }) => Object.keys(codes));
  const hint = didYouMean(code, codes, "retentionCodes(table, words) finds codes");
  throw fault("retention-unknown", `${table.source} has no code ${quote(code)}`, hint);
}

function tablesOf(table: RetentionTable): readonly RetentionTable[] {
  return [table, ...(table.beside ? tablesOf(table.beside) : [])];
}

/**
 * A table with no more than these codes of retention and of yields, of itself and what stands beside it;
 * undefined where none is left.
 */
export function onlyCodes(
  table: RetentionTable | undefined,
  named: ReadonlySet<string>,
  yields: ReadonlySet<string>,
): RetentionTable | undefined {
  if (!table) return undefined;
  const { beside, yields: all = [], ...own } = table;
  const without = (some: ReadonlySet<string>, ...found: readonly object[]): ReadonlySet<string> =>
    new Set([...some].filter((code) => !found.some((codes) => Object.hasOwn(codes, code))));
  const rest = onlyCodes(
    beside,
    without(named, table.codes),
    without(yields, ...all.map(({ codes }) => codes)),
  );
  const codes = Object.entries(table.codes).filter(([code]) => named.has(code));
  const told = all.flatMap(({ source, codes }) => {
    const some = Object.entries(codes).filter(([code]) => yields.has(code));
    return some.length === 0 ? [] : [{ source, codes: Object.fromEntries(some) }];
  });
  if (codes.length === 0 && told.length === 0) return rest;
  return {
    ...{ ...own, codes: Object.fromEntries(codes) },
    ...(told.length > 0 && { yields: told }),
    ...(rest && { beside: rest }),
  };
}

/**
 * The codes of a retention table whose names hold all the words given, in any order. Throws
 * `retention-malformed` for what is no such table.
 *
 * @example
 * ```ts
 * const [code] = retentionCodes(usdaRetention, "greens boiled drained");
 * console.log(code.code, code.name); // => 3004 vegetables, greens, boiled, little water, drained
 * const [own] = retentionCodes(analysedRetention, "legumes boiled slow");
 * console.log(own.code, `${own.shares.folate}`); // => legumes-boiled 0.85
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
  return tablesOf(table).flatMap((each) =>
    Object.entries(each.codes)
      .filter(([, [name]]) => wanted.every((word) => name.toLowerCase().includes(word)))
      .map(([code, row]) => {
        const { left, spread } = rowShares(each, row);
        const [name, , , usual] = row;
        return {
          ...{ code, name, source: each.source, shares: Object.fromEntries(left) },
          ...(spread.size > 0 && { spread: Object.fromEntries(spread) }),
          ...(usual !== undefined && { usualYield: exact(usual) }),
        };
      }),
  );
}

/** A row's shares; at a line's own yield rather than the usual one, where they move with it. */
function rowShares(
  { columns, follows }: RetentionTable,
  [, percents, spread, usual]: RetentionRow,
  yieldFactor?: Exact,
): { left: Map<ComponentId, Exact>; spread: Map<ComponentId, ShareSpread> } {
  const slopes = follows?.split(" ") ?? [];
  const told = spread?.split(" ") ?? [];
  const less =
    usual === undefined || yieldFactor === undefined ? ZERO : minus(over(yieldFactor, exact(usual)), ONE);
  const made = { left: new Map<ComponentId, Exact>(), spread: new Map<ComponentId, ShareSpread>() };
  percents.split(" ").forEach((percent, i) => {
    const by = greatest(ZERO, plus(ONE, times(fraction(BigInt(slopes[i] ?? 0), 100n), less)));
    const left = least(ONE, times(fraction(BigInt(percent), 100n), by));
    const [low, high, count] = (told[i] ?? "-").split(/[-:]/);
    for (const id of columns[i] ?? []) {
      made.left.set(id, left);
      if (!low || !high) continue;
      const at = (end: string): Exact => times(fraction(BigInt(end), 100n), by);
      made.spread.set(id, { low: at(low), high: at(high), count: Number(count) });
    }
  });
  return made;
}
