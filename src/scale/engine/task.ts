import type { Exact } from "../../number/exact.ts";
import type { Infeasible, Optimal } from "../solve/programme.ts";
import type { Asked } from "./brought.ts";
import {
  type Constraint,
  demandConstraint,
  doseConstraints,
  lineConstraints,
  sheetConstraints,
} from "./constraints.ts";
import type { Point } from "./linear.ts";
import { type Dish, type Freed, type Model, modelOf, type Ranges } from "./model.ts";
import { departures, type Layout, layOut, pointOf, solve } from "./programme.ts";
import type { ReadDemand } from "./readDemand.ts";

/** All that a fit was handed, read. */
export interface Task {
  readonly dishes: readonly Dish[];
  readonly ranges: Ranges;
  /** In an order of their own. */
  readonly asked: readonly Asked[];
  readonly pivots: number | undefined;
  /** Changes tried for suggestions. */
  readonly tries: number | undefined;
}

/** What is solved: what moves, and what it keeps to, demands first. */
export interface Problem {
  readonly model: Model;
  readonly constraints: readonly Constraint[];
}

/** The problem of a task, perhaps with some held lines freed. */
export function problemOf({ dishes, ranges, asked }: Task, freed?: Freed): Problem {
  const silent = asked.flatMap(({ demand, brought }) => (isLimit(demand) ? [] : brought.silent));
  const model = modelOf(dishes, ranges, silent, freed);
  const demanded = asked.map(({ demand, brought }) => demandConstraint(model, demand, brought));
  const bounds = [...lineConstraints(model), ...sheetConstraints(model, ranges), ...doseConstraints(model)];
  return { model, constraints: [...demanded, ...bounds] };
}

/**
 * Whether a demand does nothing but limit from above. What a line does not tell can only be on top of
 * what is known, moved or not, so that keeping the line in its place would prove nothing; to reach a
 * figure, though, a line cannot be relied on for what it does not tell.
 */
function isLimit({ least }: ReadDemand): boolean {
  return least === undefined;
}

/** Everything met with the least departure, and the proof of it. */
export interface Found {
  readonly problem: Problem;
  readonly layout: Layout;
  readonly solution: Optimal;
  readonly point: Point;
}

/** Meets every constraint, or proves that nothing does. */
export function meet(problem: Problem, pivots: number | undefined): Found | Infeasible {
  const layout = layOut(problem.model, problem.constraints, false);
  const solution = solve(layout, departures(problem.model), pivots);
  // Departures are never below 0, so that no walk is without end.
  if (solution?.status !== "optimal") return solution as Infeasible;
  return { problem, layout, solution, point: pointOf(layout, solution) };
}

/** What a fit makes least: the sum of departures, a fall counted twice. */
export function totalDeparture({ solution }: Pick<Found, "solution">): Exact {
  return solution.objectives[0] as Exact;
}
