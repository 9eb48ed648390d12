import fc from "fast-check";
import {
  type Exact,
  exact,
  fraction,
  minus,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../../src/number/exact.ts";
import { floor } from "../../../src/number/ratio.ts";
import type { AmountDemand, AmountLine, AmountsProblem } from "../../../src/scale/solve/amounts.ts";

/** Rounding problems as kitchens pose them; the same seed gives the same problems. */

/** Grams of what is measured: a scale's step, a quarter teaspoon, half an egg, a slice. */
const steps = ["1", "1", "1", "5", "1.25", "3.7", "25", "30"].map((s) => exact(s));

interface DrawnLine {
  readonly grams: Exact;
  readonly step: Exact;
  readonly below: number;
}

/** From a little over half a step to forty of them; some in thirds of a hundredth, as a fit leaves them. */
const line: fc.Arbitrary<DrawnLine> = fc
  .record({
    hundredths: fc.integer({ min: 60, max: 4000 }),
    thirds: fc.boolean(),
    step: fc.constantFrom(...steps),
    below: fc.integer({ min: 1, max: 2 }),
  })
  .map(({ hundredths, thirds, step, below }) => {
    const count = plus(fraction(BigInt(hundredths), 100n), fraction(thirds ? 1n : 0n, 300n));
    return { grams: times(count, step), step, below };
  });

/** The `count` multiples of the step about the exact amount, none of them zero. */
function about({ grams, step, below }: DrawnLine, count: number): AmountLine {
  const first = floor(over(grams, step)) - BigInt(below - 1);
  const from = first < 1n ? 1n : first;
  const candidates = Array.from({ length: count }, (_, k) => ({
    quantity: times(fraction(from + BigInt(k)), step),
  }));
  return { exact: grams, weight: fraction(1n), candidates };
}

export interface Shape {
  readonly lines: number;
  readonly candidates: number;
  readonly demands: number;
  /** Widest tolerance, in thousandths of the target. */
  readonly tolerance: number;
}

/** The same problems, off by parts of a sum that goes with the choice, as quotients are. */
export function quotients(shape: Shape): fc.Arbitrary<AmountsProblem> {
  return rounding(shape).map((p) => ({
    ...p,
    demands: p.demands.map((d) => ({
      ...d,
      scale: {
        perUnit: d.perUnit.map((per, i) => plus(per, fraction(BigInt(i % 3), 2n))),
        constant: fraction(1n),
      },
    })),
  }));
}

export function rounding({ lines, candidates, demands, tolerance }: Shape): fc.Arbitrary<AmountsProblem> {
  const demand = fc.record({
    perUnit: fc.array(
      fc.oneof(
        { weight: 3, arbitrary: fc.integer({ min: 0, max: 2500 }).map((n) => fraction(BigInt(n), 1000n)) },
        { weight: 1, arbitrary: fc.constant(ZERO) },
      ),
      { minLength: lines, maxLength: lines },
    ),
    constant: fc.integer({ min: 0, max: 50 }).map((n) => fraction(BigInt(n))),
    tolerance: fc
      .integer({ min: Math.ceil(tolerance / 4), max: tolerance })
      .map((n) => fraction(BigInt(n), 1000n)),
    kind: fc.constantFrom("both" as const, "both" as const, "both" as const, "limit" as const),
    /** How far the target is from what the exact amounts bring, in thousandths. */
    off: fc.integer({ min: -8, max: 8 }).map((n) => fraction(BigInt(1000 + n), 1000n)),
  });
  return fc
    .record({
      lines: fc.array(line, { minLength: lines, maxLength: lines }),
      demands: fc.array(demand, { minLength: demands, maxLength: demands }),
      free: fc.integer({ min: 0, max: 3 }).map((n) => n > 0),
    })
    .map(({ lines: drawn, demands, free }) => ({
      lines: drawn.map((l) => about(l, candidates)),
      demands: demands.map((d): AmountDemand => {
        const brought = sum(drawn.map((l, i) => times(l.grams, d.perUnit[i] ?? ZERO)));
        const target = times(plus(brought, d.constant), d.off);
        const give = times(target, d.tolerance);
        const ends =
          d.kind === "limit"
            ? { upper: plus(target, give) }
            : { lower: minus(target, give), upper: plus(target, give) };
        return {
          perUnit: d.perUnit,
          constant: d.constant,
          firm: d.kind === "limit",
          ...ends,
          ...(target.n > 0n && { scale: target }),
        };
      }),
      ...(free ? {} : { common: fraction(1n) }),
    }));
}
