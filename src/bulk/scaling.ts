import { type Exact, exact, fraction, isZero, minus, over, plus, times, ZERO } from "../number/exact.ts";
import { toFloat } from "../number/ratio.ts";
import type { Quantity } from "../scale/demand.ts";
import { silentLines, splitOf } from "../scale/linear.ts";
import { factorFor } from "../scale/target.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { pointsOf } from "./affine.ts";
import { type AffinePiece, pieceThrough } from "./piece.ts";
import type { FactorWay, Solved } from "./way.ts";

/** A difference below this part of its figures is worked out exactly: as much precision is lost at most. */
const LEAST_LEFT = 1 / 32;

/** How often a step is shortened until it stays within a piece. */
const TRIES = 40;

/** Rows of one target: the one parameter is the factor. */
export function scaling(
  s: Sheet,
  of: Quantity | "factor",
  targets: Float64Array,
  asked: readonly Quantity[],
): FactorWay {
  const { fixed, moving } = of === "factor" ? { fixed: ZERO, moving: ONE_EACH } : splitOf(s, of);
  const [still, each] = [toFloat(fixed), toFloat(moving)];
  const isDried = !isZero(s.water.beyond);
  const factorOf = (i: number): Exact => over(minus(exact(targets[i] as number), fixed), moving);
  return {
    count: 1,
    place(at, status) {
      const none = isZero(moving);
      for (let i = 0; i < targets.length; i += 1) {
        const target = targets[i] as number;
        const left = target - still;
        let factor = left / each;
        if (!Number.isFinite(target)) {
          status[i] = 2;
          factor = Number.NaN;
        } else if (none || target < 0) {
          status[i] = 1;
          factor = Number.NaN;
        } else {
          if (still !== 0 && Math.abs(left) < LEAST_LEFT * Math.abs(target)) factor = toFloat(factorOf(i));
          if (!(factor > 0)) {
            status[i] = 1;
            factor = Number.NaN;
          }
        }
        at[i] = factor;
      }
    },
    isBeyond: () => false,
    isRefused: (piece) => of === "water" && piece.isDried !== isDried,
    solve(i): Solved | undefined {
      const factor = factorOf(i);
      const at = (by: Exact): Sheet => s.scaled(by, s.values.portions);
      if (of === "water" && !isZero(at(factor).water.beyond) !== isDried) return undefined;
      return { sheet: at(factor), factor: toFloat(factor), piece: () => pieceAround(at, factor, asked) };
    },
  };
}

const ONE_EACH: Exact = /* @__PURE__ */ fraction(1n);

/** The piece that a factor lies in. A factor near it of few digits serves as well, and keeps figures short. */
function pieceAround(
  at: (by: Exact) => Sheet,
  factor: Exact,
  asked: readonly Quantity[],
): AffinePiece | undefined {
  let step = times(factor, fraction(1n, 1000n));
  for (let k = 0; k < TRIES; k += 1) {
    const corner = { at: [factor], steps: [step] };
    const piece = pieceThrough(
      corner,
      pointsOf(corner).map(([by]) => at(by as Exact)),
      asked,
      [factor, plus(factor, step)],
    );
    if (piece) return piece;
    step = times(step, fraction(1n, 16n));
  }
  return undefined;
}

/** Throws `target-silent` as scaling to one target would, whatever the target. */
export function refuseSilent(s: Sheet, of: Quantity | "factor"): void {
  if (of !== "factor" && silentLines(s, of).length > 0) factorFor([s], { of, amount: ZERO }, "refuse");
}
