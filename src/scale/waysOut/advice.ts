import { sideMissed } from "../engine/constraints.ts";
import { type InTheWay, isSame } from "../engine/open.ts";
import { layOut } from "../engine/programme.ts";
import { nearestPoint } from "../engine/quotient.ts";
import type { Problem, Task } from "../engine/task.ts";
import { standingTogether } from "../fit/conflict.ts";
import { ease, easeTogether, openedBy } from "./easing.ts";
import { freeing, heldLines } from "./freeing.ts";
import { allTogether, type FitSuggestion } from "./suggestion.ts";

/** What was found, and how many more changes there would have been to try. */
export interface Advice {
  readonly suggestions: readonly FitSuggestion[];
  readonly untried: number;
}

/** Changes tried unless told. */
const TRIES = 40;
/** And what they may cost, in the size of the programme that each solves: about a second's work. */
const WORK = 4_000_000;

/** Fewer of a large programme, of which each is dear. */
function triesFor({ model, constraints }: Problem): number {
  const rows = constraints.length;
  return Math.max(1, Math.min(TRIES, Math.floor(WORK / (1 + rows * rows * 2 * model.movers.length))));
}

/** Counts what is tried, and what is not for want of tries. */
class Tries {
  untried = 0;
  #left: number;

  constructor(left: number) {
    this.#left = left;
  }

  /** As many as there are tries left for. */
  some<T>(all: readonly T[]): readonly T[] {
    const taken = all.slice(0, this.#left);
    this.#left -= taken.length;
    this.untried += all.length - taken.length;
    return taken;
  }
}

/**
 * What would open a fit that is out of reach: lines to free first, then what stands in the way,
 * eased. Demands are tried before lines, and lines before bounds, as far as the tries go. Where no
 * single change is enough, pairs are tried, and then all that is missed together.
 */
export function adviceFor(task: Task, problem: Problem, standing: readonly InTheWay[]): Advice {
  const tries = new Tries(task.tries ?? triesFor(problem));
  const demands = tries.some(standing.filter(isDemand));
  // Where doses break a limit by themselves, no line that is held can mend it.
  const isDosed = problem.model.movers.some(({ isDose }) => isDose);
  const lines = tries.some(isDosed ? [] : heldLines(problem.model));
  const bounds = tries.some(standing.filter((each) => !isDemand(each)));
  const eased = [...demands, ...bounds].flatMap((each) => ease(problem, each, task.pivots) ?? []);
  const single = [...freeing(task, lines), ...eased];
  if (single.length > 0 || tries.untried > 0) return { suggestions: single, untried: tries.untried };
  const yielding = standing.filter((each) => !isFirm(each));
  const pairs = pairsFor(task, problem, yielding, tries);
  if (pairs.length > 0 || tries.untried > 0) return { suggestions: pairs, untried: tries.untried };
  return { suggestions: allFor(task, problem, yielding), untried: 0 };
}

function isDemand(each: InTheWay): boolean {
  return each.on === "constraint" && each.constraint.on.kind === "demand";
}

function isFirm(each: InTheWay): boolean {
  return isDemand(each) && each.on === "constraint" && !each.constraint.soft;
}

/** Pairs: one that stands in the way, and one of those that do when that is out of the way. */
function pairsFor(
  task: Task,
  problem: Problem,
  yielding: readonly InTheWay[],
  tries: Tries,
): FitSuggestion[] {
  const tried: (readonly [InTheWay, InTheWay])[] = [];
  const found = tries.some(yielding).flatMap((first) => {
    const seconds = standingTogether(openedBy(problem, first), task.pivots).filter(
      (second) =>
        !isFirm(second) &&
        !isSame(first, second) &&
        !tried.some(([a, b]) => isSame(a, second) && isSame(b, first)),
    );
    return tries.some(seconds).flatMap((second) => {
      tried.push([first, second]);
      return allTogether(easeTogether(problem, [first, second], task.pivots) ?? []);
    });
  });
  return found.sort((a, b) => boundsIn(a) - boundsIn(b) || a.departure.comparedTo(b.departure));
}

/** How many of a suggestion's changes are not of demands. */
function boundsIn(one: FitSuggestion): number {
  return [one, ...one.also].filter(({ demand }) => demand === undefined).length;
}

/** All that the nearest answer misses; where firm demands cannot hold, with a bound that is in their way. */
function allFor(task: Task, problem: Problem, yielding: readonly InTheWay[]): FitSuggestion[] {
  const bounds = yielding.filter((each) => !isDemand(each));
  for (const first of [[], ...bounds.map((each) => [each])]) {
    const opened = first.reduce(openedBy, problem);
    const near = nearestPoint(layOut(opened.model, opened.constraints, true), task.pivots);
    if (!near) continue;
    const missed = opened.constraints.flatMap((constraint): InTheWay[] => {
      const side = sideMissed(constraint, near.point);
      return constraint.soft && side ? [{ on: "constraint", constraint, side }] : [];
    });
    const found = easeTogether(problem, [...first, ...missed], task.pivots);
    if (found) return allTogether(found);
  }
  return [];
}
