import { type Exact, ONE, ZERO } from "../../number/exact.ts";
import {
  type Constraint,
  isExact,
  quotientAt,
  sideMissed,
  weightOf,
  withEnds,
} from "../engine/constraints.ts";
import { type Linear, ONE_PORTION, ONE_RATIO, type Point } from "../engine/linear.ts";
import { amountAt, baseOfMover, type Model } from "../engine/model.ts";
import { type InTheWay, openEnd, type RangeEnd } from "../engine/open.ts";
import { layOut } from "../engine/programme.ts";
import { extreme, nearestPoint } from "../engine/quotient.ts";
import { meet, type Problem } from "../engine/task.ts";
import { easedTo, type FitSuggestion } from "./suggestion.ts";

/** How far what stands in the way has to give, all else as it is; nothing where that is not enough. */
export function ease(
  problem: Problem,
  standing: InTheWay,
  pivots: number | undefined,
): FitSuggestion | undefined {
  const opened = openedBy(problem, standing);
  const { value, per } = measureOf(problem.model, standing);
  const toward = standing.side === "least" ? "greatest" : "least";
  const to = extreme(layOut(opened.model, opened.constraints, false), value, per, toward, pivots);
  if (to === undefined) return undefined;
  const found = meet(closedAt(opened, [[standing, to]]), pivots);
  return "point" in found ? easedTo(standing, to, found) : undefined;
}

/**
 * How far several have to give together, so that what they give, each as a share of its own figure,
 * is least, as `nearest` has it; nothing where all of them are not enough.
 */
export function easeTogether(
  problem: Problem,
  standings: readonly InTheWay[],
  pivots: number | undefined,
): FitSuggestion[] | undefined {
  const opened = standings.reduce(openedBy, problem);
  const firm = opened.constraints.map((each) => (each.soft ? { ...each, soft: false } : each));
  const yielding = standings.map((standing) => asSoft(problem.model, standing));
  const found = nearestPoint(layOut(opened.model, [...firm, ...yielding], true), pivots);
  if (!found) return undefined;
  const given = standings.map(
    (standing) => [standing, standsAt(problem.model, standing, found.point)] as const,
  );
  // Where one of them need not give at all, they are more than it takes.
  if (yielding.some((each) => sideMissed(each, found.point) === undefined)) return undefined;
  const met = meet(closedAt(opened, given), pivots);
  return "point" in met ? given.map(([standing, to]) => easedTo(standing, to, met)) : undefined;
}

/** The problem with one end opened; of a demand for one figure, both. */
export function openedBy({ model, constraints }: Problem, standing: InTheWay): Problem {
  if (standing.on !== "constraint") return { model: openEnd(model, standing), constraints };
  const { on, least, most } = standing.constraint;
  const ends = isExact(standing.constraint) ? OPEN : { least, most, [standing.side]: undefined };
  return { model, constraints: constraints.map((each) => (each.on === on ? withEnds(each, ends) : each)) };
}

const OPEN = { least: undefined, most: undefined };

interface Measure {
  readonly value: Linear;
  readonly per: Linear;
}

/** What a bound is told in: a line's in grams of one portion, also where its ratio is what stands in the way. */
function measureOf(model: Model, standing: InTheWay): Measure {
  if (standing.on === "range" && standing.mover.kind === "line") {
    const { dish, lines } = standing.mover;
    return { value: weightOf(model, { dish, line: lines[0] ?? 0 }), per: ONE_PORTION };
  }
  return standing.on === "constraint" ? standing.constraint : rangeMeasure(model, standing);
}

/** A factor over another. */
function rangeMeasure(model: Model, end: RangeEnd): Measure {
  if (end.on === "common") return { value: ONE_RATIO, per: ONE_PORTION };
  return { value: amountAt(end.place, ONE), per: amountAt(baseOfMover(model, end.mover), ONE) };
}

function standsAt(model: Model, standing: InTheWay, point: Point): Exact {
  return quotientAt(measureOf(model, standing), point) ?? ZERO;
}

/** What stands in the way, as something that may be missed. */
function asSoft(model: Model, standing: InTheWay): Constraint {
  if (standing.on === "constraint") return { ...standing.constraint, soft: true };
  const ends = { ...OPEN, [standing.side]: standing.bound };
  return { on: NOBODY, ...rangeMeasure(model, standing), ...ends, soft: true };
}

const NOBODY = { kind: "line", name: "", dish: 0, line: 0 } as const;

/** An opened problem, held at what was eased. */
function closedAt({ model, constraints }: Problem, given: readonly (readonly [InTheWay, Exact])[]): Problem {
  const held = given.map(([standing, to]): Constraint => {
    const ends = { ...OPEN, [standing.side]: to };
    return { on: NOBODY, ...measureOf(model, standing), ...ends, soft: false };
  });
  return { model, constraints: [...constraints, ...held] };
}
