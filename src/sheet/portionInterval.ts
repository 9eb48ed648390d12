import type { ComponentId } from "../food/components.ts";
import {
  type Exact,
  fraction,
  greatest,
  isZero,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../number/exact.ts";
import { rootUp } from "../number/root.ts";
import type { Sheet } from "./sheet.ts";
import { spreadOf } from "./spreadOf.ts";

/** Between what a figure lies about 95 times in 100, and the foods of which nobody says how sure they are. */
export interface PortionInterval {
  readonly low: Exact;
  readonly high: Exact;
  /** Names of foods that bring some, and count as they stand. */
  readonly unsaid: readonly string[];
}

const TWO: Exact = /* @__PURE__ */ fraction(2n);

/**
 * How sure a portion of each of some sheets together is, two standard uncertainties either way, foods that
 * several of them hold moving together; nothing where nobody says how sure any line is. Method: as `uncertainty`.
 */
export function portionInterval(sheets: readonly Sheet[], id: ComponentId): PortionInterval | undefined {
  const together = new Map<string, { readonly slope: Exact; readonly variance: Exact }>();
  const unsaid = new Set<string>();
  for (const s of sheets) {
    const share = over(ONE, s.values.portions);
    const spread = spreadOf(s, id, () => undefined);
    for (const { of, slope, variance } of spread.terms)
      together.set(of, { slope: plus(together.get(of)?.slope ?? ZERO, times(slope, share)), variance });
    for (const key of spread.unsaid) unsaid.add(nameAt(s, key.split("/")));
  }
  const variance = sum([...together.values()].map((t) => times(times(t.slope, t.slope), t.variance)));
  if (isZero(variance)) return undefined;
  const off = times(TWO, rootUp(variance));
  const value = sum(sheets.map((s) => s.portion(id).value));
  return { low: greatest(ZERO, minus(value, off)), high: plus(value, off), unsaid: [...unsaid].sort() };
}

/** The name of the food at a line, that of a nested recipe's line too. */
function nameAt({ plan }: Sheet, [key = "", ...within]: readonly string[]): string {
  const source = plan.lines[plan.indexOf(key)]?.source;
  return source?.asEaten && within.length > 0 ? nameAt(source.asEaten, within) : (source?.name ?? key);
}
