import { type Exact, isZero, over, plus, times, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { checkSheet } from "../sheet/given.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Quantity } from "./demand.ts";
import { silentLines, splitOf, unitOf } from "./linear.ts";

/** What one portion can be brought to, in `unit`; `most` is null where there is no upper end. */
export interface Range {
  readonly least: Exact;
  readonly most: Exact | null;
}

/** What scaling can bring. */
export interface Reach extends Range {
  readonly unit: string;
  /** The same with every line kept within its `least` and `most`; null where no one factor keeps them all. */
  readonly withinBounds: Range | null;
  /** Lines that say nothing, so that the truth may lie higher. */
  readonly missing: readonly string[];
}

/**
 * What scaling by one factor can bring a portion to: from what per-portion lines alone bring (the
 * least, not itself reached unless nothing else brings any) upward.
 *
 * Throws `component-unknown`, and `sheet-malformed` for what is no sheet.
 */
export function reach(s: Sheet, of: Quantity): Reach {
  checkSheet(s);
  const { fixed, moving } = splitOf(s, of);
  const at = (factor: Exact): Exact => plus(fixed, times(moving, factor));
  const bounds = factorBounds(s);
  return {
    least: fixed,
    most: isZero(moving) ? fixed : null,
    unit: unitOf(of),
    withinBounds: bounds && {
      least: at(bounds.low),
      most: isZero(moving) ? fixed : bounds.high === undefined ? null : at(bounds.high),
    },
    missing: silentLines(s, of),
  };
}

/** The factors that keep every moving line within its bounds, or nothing where none does. */
function factorBounds(s: Sheet): { low: Exact; high: Exact | undefined } | null {
  let low = ZERO;
  let high: Exact | undefined;
  for (const [i, { line, least, most }] of s.plan.lines.entries()) {
    const grams = over(s.values.grams[i] ?? ZERO, s.values.portions);
    if (line.scaling === "per-portion" || isZero(grams)) continue;
    if (least !== undefined && compareRatios(over(least, grams), low) > 0) low = over(least, grams);
    if (most !== undefined && (high === undefined || compareRatios(over(most, grams), high) < 0))
      high = over(most, grams);
  }
  return high !== undefined && compareRatios(low, high) > 0 ? null : { low, high };
}
