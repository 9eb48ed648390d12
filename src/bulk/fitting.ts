import { type Exact, exact, fraction, minus, over, plus, times } from "../number/exact.ts";
import { toFloat } from "../number/ratio.ts";
import type { Quantity } from "../scale/demand.ts";
import { lineFactorsAt } from "../scale/engine/model.ts";
import { type Layout, layOut, pointOf } from "../scale/engine/programme.ts";
import { meet, type Task, taskProblem } from "../scale/engine/task.ts";
import { readTask } from "../scale/fit/read.ts";
import { moveLines } from "../scale/move.ts";
import type { Infeasible, Optimal } from "../scale/solve/programme.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type Affine, type Corner, pointsOf, signAt, through } from "./affine.ts";
import { type Stand, standAt } from "./basis.ts";
import { type AffinePiece, pieceThrough } from "./piece.ts";
import type { FactorWay, Solved } from "./way.ts";

/** Rows of several targets, each a fit: the parameters are the targets themselves. */
export function fitting(
  s: Sheet,
  of: readonly Quantity[],
  targets: readonly Float64Array[],
  asked: readonly Quantity[],
): FactorWay {
  const beyond: Affine[] = [];
  const taskAt = (at: readonly Exact[]): Task =>
    readTask(
      s,
      of.map((each, d) => ({ of: each, exactly: at[d] as Exact })),
      {},
    );
  const rows = targets[0]?.length ?? 0;
  return {
    count: of.length,
    place(at, status) {
      for (let i = 0; i < rows; i += 1) {
        for (let d = 0; d < of.length; d += 1) {
          const target = targets[d]?.[i] as number;
          at[i * of.length + d] = target;
          if (!Number.isFinite(target)) status[i] = 2;
          else if (target < 0 && status[i] === 0) status[i] = 1;
        }
      }
    },
    isBeyond: (at, i) => beyond.some((proof) => signAt(proof, at, i) > 0),
    isRefused: () => false,
    solve(i): Solved | undefined {
      const at = of.map((_, d) => exact(targets[d]?.[i] as number));
      const task = taskAt(at);
      const problem = taskProblem(task);
      const found = meet(problem, task.pivots);
      if (!("point" in found)) {
        const layout = layOut(problem.model, problem.constraints, false);
        beyond.push(proofOf(found, layout, of, at));
        return undefined;
      }
      const { point, solution } = found;
      const [factors = []] = lineFactorsAt(problem.model, point);
      return {
        sheet: moveLines(s, factors, s.values.portions),
        factor: toFloat(over(fraction(1n), point.u)),
        piece: () => pieceAround(s, solution, (t) => layoutOf(taskAt(t)), at, asked),
      };
    },
  };
}

function layoutOf(task: Task): Layout {
  const { model, constraints } = taskProblem(task);
  return layOut(model, constraints, false);
}

/** The stretch of targets over which the basis of a solution stays, from a corner within it. */
function pieceAround(
  s: Sheet,
  solution: Optimal,
  layoutAt: (t: readonly Exact[]) => Layout,
  at: readonly Exact[],
  asked: readonly Quantity[],
): AffinePiece | undefined {
  let by = fraction(1n, 1000n);
  for (let k = 0; k < 6; k += 1, by = times(by, fraction(1n, 16n))) {
    const corner = { at, steps: at.map((each) => times(each, by)) };
    if (corner.steps.some((step) => step.n === 0n)) return undefined;
    const layouts = pointsOf(corner).map(layoutAt);
    const stands = layouts.map((layout) => standAt(layout, solution.basis));
    if (!stands.every((each) => each !== undefined)) return undefined;
    const margins = marginsOf(corner, stands);
    if (!margins) continue;
    const sheets = stands.map(({ x }, p) => {
      const layout = layouts[p] as Layout;
      const [factors = []] = lineFactorsAt(layout.model, pointOf(layout, { ...solution, x }));
      return moveLines(s, factors, s.values.portions);
    });
    const common = stands.map(({ common }) => common);
    const piece = pieceThrough(corner, sheets, asked, common, margins);
    if (piece) return piece;
  }
  return undefined;
}

/** What must stay above 0 for the basis to stay; undefined where some of it is not at each of the points. */
function marginsOf(corner: Corner, stands: readonly Stand[]): readonly Affine[] | undefined {
  const margins: Affine[] = [];
  const all = stands.map(({ inTurn }) => inTurn);
  for (const k of (all[0] ?? []).keys()) {
    // Of what counts in turn the first that is not 0 throughout has the say.
    const turns = all[0]?.[k]?.length ?? 0;
    for (let turn = 0; turn < turns; turn += 1) {
      const values = all.map((each) => each[k]?.[turn] as Exact);
      if (values.every(({ n }) => n === 0n)) continue;
      if (values.some(({ n }) => n <= 0n)) return undefined;
      margins.push(through(corner, values));
      break;
    }
  }
  return margins;
}

/**
 * From a proof that nothing meets these targets, one for others: above 0 where it still holds. The proof adds
 * up rows so that nothing but `−gap` is left of them; other targets leave `σ × u` besides, `u` being one over
 * the common factor.
 */
function proofOf(
  { certificate, gap }: Infeasible,
  { constraints, rows, model }: Layout,
  of: readonly Quantity[],
  at: readonly Exact[],
): Affine {
  const weights = of.map(() => fraction(0n));
  for (const { on, index, end, weight } of certificate) {
    const row = on === "row" ? rows[index] : undefined;
    const about = row?.of === "constraint" ? constraints[row.place]?.on : undefined;
    if (!row || about?.kind !== "demand" || about.demand.subject.kind !== "amount") continue;
    const d = of.indexOf(about.demand.subject.of);
    const own = times(weight, row.times);
    weights[d] = plus(weights[d] as Exact, end === "upper" ? own : minus(fraction(0n), own));
  }
  const most = over(fraction(1n), model.common.least);
  // gap − most × Σ weight × (target − at), above 0; a sum below 0 proves it all the more.
  const constant = weights.reduce(
    (sum, weight, d) => plus(sum, times(times(weight, at[d] as Exact), most)),
    gap,
  );
  return Float64Array.from(
    [constant, ...weights.map((weight) => minus(fraction(0n), times(weight, most)))],
    toFloat,
  );
}
