import { Answer } from "../fit/answer.ts";
import type { Constraint } from "./constraints.ts";
import { layOut } from "./programme.ts";
import { nearestPoint } from "./quotient.ts";
import { type LeastDeparture, meet, type Problem, type Task, taskProblem } from "./task.ts";

/** Everything met, with the least departure. */
export interface SolvedMet {
  readonly task: Task;
  readonly found: LeastDeparture;
  readonly answer: Answer;
}

function yielding(constraint: Constraint): Constraint {
  return constraint.on.kind === "share" ? { ...constraint, soft: true } : constraint;
}

/** Not everything can be met. */
export interface SolvedMissed {
  readonly task: Task;
  readonly found: undefined;
  readonly problem: Problem;
  /** Gives what misses least, looked for once; undefined if firm demands and bounds cannot hold. */
  readonly nearest: () => Answer | undefined;
}

/**
 * Solves a fit of sheets and demands as they were read: an answer has a factor for each line. Throws
 * `fit-stopped`. This is the inner face of `fit`, for what goes on with factors.
 */
export function solveTask(task: Task): SolvedMet | SolvedMissed {
  const problem = taskProblem(task);
  const found = meet(problem, task.pivots);
  if ("point" in found) return { task, found, answer: new Answer(task, problem, found.point) };
  let near: { readonly answer: Answer | undefined } | undefined;
  const look = (): Answer | undefined => {
    const { model, constraints, shares } = problem;
    const at = (of: readonly Constraint[]) => nearestPoint(layOut(model, of, true, shares), task.pivots);
    // Where what is firm leaves no room for a day's shares, they give way before it is served nothing.
    const least = at(constraints) ?? (shares && at(constraints.map(yielding)));
    return least && new Answer(task, problem, least.point);
  };
  return {
    task,
    found: undefined,
    problem,
    nearest: () => {
      near ??= { answer: look() };
      return near.answer;
    },
  };
}
