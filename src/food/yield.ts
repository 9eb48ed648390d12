import { fault, kindOf, quote } from "../number/error.ts";
import { type Exact, exact, over, type Value } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { checkRetention, type RetentionTable } from "./retentionTable.ts";
import type { YieldRow, YieldTable } from "./yieldTable.ts";

/** A yield as written: cooked mass ÷ raw mass, or the code of a published one. */
export type YieldInput = Value | YieldCode;

/** The code of a published yield: {@link yieldCodes} finds them. */
export interface YieldCode {
  readonly code: string;
}

/** One row of a table of yields, read. */
export interface PublishedYield {
  readonly code: string;
  readonly name: string;
  /** The table that it stands in. */
  readonly source: string;
  /** Cooked mass ÷ raw mass. */
  readonly yieldFactor: Exact;
  /** Where the table tells it, between which yields most such foods lie, and how many there were. */
  readonly spread?: { readonly low: Exact; readonly high: Exact; readonly count: number };
}

/** Whether a yield is told by a code, and not as a figure. */
export function isYieldCode(told: YieldInput | undefined): told is YieldCode {
  return typeof told === "object" && told !== null && "code" in told;
}

/** A yield as a figure. Throws `yield-unknown` for a code that no table has. */
export function yieldFigure(told: YieldInput, table: RetentionTable | undefined): Exact {
  return isYieldCode(told) ? foundYield(told.code, table).yieldFactor : exact(told);
}

/** The published yield of a code. Throws `yield-unknown`. */
export function foundYield(code: string, table: RetentionTable | undefined): PublishedYield {
  const all = yieldTables(table);
  const found = all.find(({ codes }) => Object.hasOwn(codes, code));
  const row = found?.codes[code];
  if (found && row) return readRow(found.source, code, row);
  const hint =
    all.length === 0
      ? "give the foods a table of retention factors that has yields, as the starter foods have, or a factor"
      : didYouMean(
          code,
          all.flatMap(({ codes }) => Object.keys(codes)),
          "yieldCodes(table, words) finds codes",
        );
  throw fault("yield-unknown", `no table of yields has the code ${quote(code)}`, hint);
}

/** The tables of yields of a table of retention factors, and of those beside it. */
export function yieldTables(table: RetentionTable | undefined): readonly YieldTable[] {
  return table ? [...(table.yields ?? []), ...yieldTables(table.beside)] : [];
}

function readRow(source: string, code: string, [name, cooked, raw, spread]: YieldRow): PublishedYield {
  const [low = "", high = "", count] = spread?.split(/[-:]/) ?? [];
  return {
    ...{ code, name, source, yieldFactor: over(exact(cooked), exact(raw)) },
    ...(spread !== undefined && { spread: { low: exact(low), high: exact(high), count: Number(count) } }),
  };
}

/**
 * The published yields whose names hold all the words given, in any order: what a line or a recipe takes
 * for its `yieldFactor`, by `{ code }` or as the figure.
 *
 * Throws `retention-malformed` for what is no table of retention factors, where yields stand.
 *
 * @example
 * ```ts
 * const [steak] = yieldCodes(analysedRetention, "flank steak broiled");
 * console.log(steak.code, steak.yieldFactor.toFixed(3)); // => 13948 0.806
 * const [rice] = yieldCodes(analysedRetention, "rice boiled");
 * console.log(rice.code, `${rice.yieldFactor}`); // => rice-boiled 2.92
 * ```
 */
export function yieldCodes(table: RetentionTable, words = ""): readonly PublishedYield[] {
  checkRetention(table);
  if (typeof words !== "string")
    throw fault(
      "retention-malformed",
      `expected words, got ${kindOf(words)}`,
      'write them as text: "boiled"',
    );
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  return yieldTables(table).flatMap(({ source, codes }) =>
    Object.entries(codes)
      .filter(([, [name]]) => wanted.every((word) => name.toLowerCase().includes(word)))
      .map(([code, row]) => readRow(source, code, row)),
  );
}
