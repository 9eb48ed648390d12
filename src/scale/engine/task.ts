import type { Exact } from "../../number/exact.ts";
import type { Infeasible, Optimal } from "../solve/programme.ts";
import type { AskedDemand } from "./brought.ts";
import {
  type Constraint,
  demandConstraint,
  doseConstraints,
  lineConstraints,
  sheetConstraints,
  withEnds,
} from "./constraints.ts";
import type { Point } from "./linear.ts";
import { type ByLine, type Dish, type Freed, gather, type Model, modelOf, type Ranges } from "./model.ts";
import { type Layout, layOut, objectivesOf, pointOf, solve } from "./programme.ts";
import type { ReadDemand } from "./readDemand.ts";

/** All that a fit was handed, read. */
export interface Task {
  readonly dishes: readonly Dish[];
  readonly ranges: Ranges;
  /** In an order of their own. */
  readonly asked: readonly AskedDemand[];
  readonly pivots: number | undefined;
  /** Changes tried for suggestions. */
  readonly tries: number | undefined;
  /** Of a day: what meals bring of its energy. A task that is no day has none. */
  readonly shares?: readonly MealEnergyShare[];
}

/** What a meal is to bring of a day's energy. */
export interface MealEnergyShare {
  readonly name: string;
  readonly share: Exact;
  /** Ends of it that have to hold; it comes as near to `share` as it can all the same. */
  readonly least?: Exact;
  readonly most?: Exact;
  /** What the meal brings, and what that is a share of. */
  readonly value: ByLine;
  readonly per: ByLine;
}

/** What is solved: what moves, and what it keeps to, demands first. */
export interface Problem {
  readonly model: Model;
  readonly constraints: readonly Constraint[];
  /** Of a day: the shares that meals come near to. */
  readonly shares?: readonly Constraint[];
}

/** The problem of a task, perhaps with some held lines freed. */
export function taskProblem({ dishes, ranges, asked, shares }: Task, freed?: Freed): Problem {
  const silent = asked.flatMap(({ demand, brought }) => (isLimit(demand) ? [] : brought.silent));
  const model = modelOf(dishes, ranges, silent, freed);
  const demanded = asked.map(({ demand, brought }) => demandConstraint(model, demand, brought));
  const bounds = [...lineConstraints(model), ...sheetConstraints(model, ranges), ...doseConstraints(model)];
  if (!shares) return { model, constraints: [...demanded, ...bounds] };
  const held = shares.map((each) => shareConstraint(model, each));
  const bands = held.filter(({ least, most }) => least || most);
  const near = held.map((each, i) => {
    const at = shares[i]?.share;
    return withEnds(each, { least: at, most: at });
  });
  return { model, constraints: [...demanded, ...bands, ...bounds], shares: near };
}

function shareConstraint(model: Model, { name, value, per, least, most }: MealEnergyShare): Constraint {
  const on = { kind: "share", name } as const;
  return { on, value: gather(model, value), per: gather(model, per), least, most, soft: false };
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
export interface LeastDeparture {
  readonly problem: Problem;
  readonly layout: Layout;
  readonly solution: Optimal;
  readonly point: Point;
}

/** Meets every constraint, or proves that nothing does. */
export function meet(problem: Problem, pivots: number | undefined): LeastDeparture | Infeasible {
  const layout = layOut(problem.model, problem.constraints, false, problem.shares);
  const solution = solve(layout, objectivesOf(layout), pivots);
  // Departures are never below 0, so that no walk is without end.
  if (solution?.status !== "optimal") return solution as Infeasible;
  return { problem, layout, solution, point: pointOf(layout, solution) };
}

/** What a fit makes least: the sum of departures, a fall counted twice. */
export function totalDeparture({ solution }: Pick<LeastDeparture, "solution">): Exact {
  return solution.objectives[0] as Exact;
}
