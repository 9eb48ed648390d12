import {
  type Exact,
  exact,
  fraction,
  greatest,
  minus,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { rootUp } from "../../number/root.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { type SpreadTerm, spreadOf } from "../../sheet/spreadOf.ts";
import type { Quantity } from "../demand.ts";
import { type LinesOf, linesOverOneScale, readOf } from "./lines.ts";

/** How sure a demand on an amount is to be of its one end. */
export interface Margin {
  readonly side: "least" | "most";
  /** One-sided, 0 to 1. */
  readonly confidence: Exact;
}

/**
 * How many standard errors off the mean a share of a normal distribution ends, on one side, rounded up.
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods (2012), 1.3.6.7.1, cumulative distribution function of
 * the standard normal distribution, read backwards; from memory to the fourth digit, and held to the integral
 * by test/scale/fit/margin.test.ts.
 */
const STANDARD_ERRORS: readonly (readonly [confidence: string, z: string])[] = [
  ["0.75", "0.6745"],
  ["0.8", "0.8417"],
  ["0.9", "1.2816"],
  ["0.95", "1.6449"],
  ["0.975", "1.96"],
  ["0.99", "2.3264"],
];

/** The confidences that a demand may ask, as a person writes them. */
export const confidences: readonly string[] = STANDARD_ERRORS.map(([share]) => `${Number(share) * 100} %`);

/** How many standard errors that is; undefined for what is not in the table. */
export function standardErrors(confidence: Exact): Exact | undefined {
  const found = STANDARD_ERRORS.find(([share]) => compareRatios(exact(share), confidence) === 0);
  return found && exact(found[1]);
}

/**
 * Tells what each line brings as `plain` does, less so many of its standard errors, or with them. All lines are
 * taken to err to the same side, so that the margin grows as the amounts do and the programme stays linear:
 * never less than what independent errors ask (JCGM 100:2008, 5.2.2, note 1). None brings less than nothing.
 */
export function withMargin(s: Sheet, of: Quantity, { side, confidence }: Margin, plain: LinesOf): LinesOf {
  const z = standardErrors(confidence) ?? ZERO;
  if (of === "mass" || of === "water") return plain;
  const { margins } = readOf(s);
  const key = `${of} ${side} ${confidence} ${plain.isHigh}`;
  const found = margins.get(key);
  if (found) return found;
  const unsure: { line: number; key: string }[] = [];
  const lines = s.plan.lines.map(({ line }, i): Exact => {
    const { terms, unsaid } = spreadOf(s, of, () => undefined, line.key);
    unsure.push(...unsaid.map((each) => ({ line: i, key: each })));
    const counted = fraction(plain.lines[i] ?? 0n, plain.scale);
    const off = over(times(z, standardError(terms)), s.values.portions);
    const figure = over(s.cell(line.key, of).value, s.values.portions);
    return side === "least" ? greatest(ZERO, minus(counted, off)) : greatest(counted, plus(figure, off));
  });
  const made = { ...plain, ...linesOverOneScale(lines), ranged: [], unsure, margin: side };
  margins.set(key, made);
  return made;
}

/** What a line errs by where all that it rests on errs to the same side. */
function standardError(terms: readonly SpreadTerm[]): Exact {
  const together = new Map<string, { slope: Exact; variance: Exact }>();
  for (const { of, slope, variance } of terms)
    together.set(of, { slope: plus(together.get(of)?.slope ?? ZERO, slope), variance });
  return sum(
    [...together.values()].map(({ slope, variance }) => {
      const one = times(slope, rootUp(variance));
      return one.n < 0n ? minus(ZERO, one) : one;
    }),
  );
}
