import type { Exact } from "../../number/exact.ts";
import type { Demand } from "../demand.ts";
import type { ReadDemand } from "../engine/readDemand.ts";
import { meet, type Problem, type Task } from "../engine/task.ts";
import { Answer, type FitOutcome } from "./answer.ts";
import { boundText, demandText, factorText, listText, subjectFigure, subjectName } from "./words.ts";

/** What one demand by itself would give. */
export interface FitAlone {
  readonly demand: Demand;
  /** The common factor that meets it, nearest to 1; nothing where no factor does. */
  readonly factor: Exact | undefined;
  /** What the other demands would then be brought. */
  readonly brings: readonly FitOutcome[];
  readonly text: string;
}

/** Each demand by itself, where no ratio can move. */
export function eachAlone(task: Task, problem: Problem): FitAlone[] {
  return task.asked.map(({ demand }) => aloneWith(demand, task, problem));
}

function aloneWith(read: ReadDemand, task: Task, problem: Problem): FitAlone {
  const constraints = problem.constraints.filter(({ on }) => on.kind !== "demand" || on.demand === read);
  const found = meet({ model: problem.model, constraints }, task.pivots);
  const what = demandText(read);
  if (!("point" in found)) {
    const none = { factor: undefined, brings: [] };
    return { demand: read.demand, ...none, text: `${what}: no size of the dish meets it` };
  }
  const answer = new Answer(task, problem, found.point);
  const brings = answer.outcomes.filter(({ demand }) => demand !== read.demand);
  const others = task.asked.flatMap(({ demand }) => {
    const outcome = brings.find((each) => each.demand === demand.demand);
    if (!outcome?.brings) return [];
    const figure = boundText(subjectFigure(demand.subject, outcome.brings), outcome.bound);
    return [`${subjectName(demand.subject)} to ${figure}`];
  });
  return {
    demand: read.demand,
    factor: answer.common,
    brings,
    text: `${what}: ${factorText(answer.common)} times the recipe${others.length > 0 ? `, which brings ${listText(others)}` : ""}`,
  };
}
