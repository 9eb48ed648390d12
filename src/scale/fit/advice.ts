import type { Decimal } from "decimal.js";
import { compare, type Fraction, ONE, over, times, toDecimal } from "../../number/fraction.ts";
import type { Demand } from "../demand.ts";
import { moverText, standingText } from "./conflict.ts";
import { type Constraint, gramsOf, isExact, linesByName, weightOf, withEnds } from "./constraints.ts";
import { type Linear, onePortion, oneRatio } from "./linear.ts";
import { BASE, type LineAt, type Model } from "./model.ts";
import { openEnd, type Side, type Standing } from "./open.ts";
import { layOut } from "./programme.ts";
import { extreme } from "./quotient.ts";
import { type Found, meet, type Problem, problemOf, type Task, totalDeparture } from "./task.ts";
import { askedText, factorText, gramsText, listText, subjectFigure, subjectName } from "./words.ts";

/** A change that lets everything else be met. Each was tried: the fit was solved again with it. */
export interface FitSuggestion {
  readonly change: "make-adjustable" | "ease-demand" | "ease-line" | "ease-ratio" | "ease-common";
  /** Line keys, the part or sheet, or nothing where a demand or the common factor is meant. */
  readonly names: readonly string[];
  readonly demand: Demand | undefined;
  /** Which end gives way; nothing where a line is made adjustable within half to double its ratio. */
  readonly end: Side | undefined;
  /** The bound to ease to, exact: grams of a portion for a line, else as the demand or range has it. */
  readonly to: Decimal | undefined;
  readonly exactTo: Fraction | undefined;
  /** What the departures then total. */
  readonly departure: Decimal;
  readonly text: string;
}

/** What was found, and how many more changes there would have been to try. */
export interface Advice {
  readonly suggestions: readonly FitSuggestion[];
  readonly untried: number;
}

/** Changes tried unless told. */
const TRIES = 40;

/**
 * What would open a fit that is out of reach: lines to free first, then what stands in the way,
 * eased. Demands are tried before lines, and lines before bounds, as far as the tries go.
 */
export function adviceFor(task: Task, problem: Problem, standing: readonly Standing[]): Advice {
  const isDemand = (each: Standing): boolean =>
    each.on === "constraint" && each.constraint.on.kind === "demand";
  let left = task.tries ?? TRIES;
  const some = <T>(all: readonly T[]): readonly T[] => {
    const taken = all.slice(0, left);
    left -= taken.length;
    return taken;
  };
  const demands = some(standing.filter(isDemand));
  const held = heldLines(problem.model);
  const lines = some(held);
  const bounds = some(standing.filter((each) => !isDemand(each)));
  const eased = [...demands, ...bounds].flatMap((each) => ease(problem, each, task.pivots) ?? []);
  return {
    suggestions: [...freeing(task, lines), ...eased],
    untried: standing.length + held.length - demands.length - lines.length - bounds.length,
  };
}

/**
 * Held lines that would do if they were adjustable: each alone within the usual range, or else
 * with a bound of its own; where none does, the few that are needed together.
 */
function freeing(task: Task, held: readonly Named[]): FitSuggestion[] {
  const alone = held.flatMap((line) => {
    const usual = freed(task, [line], "usual");
    if (usual) return [{ turn: 0, total: totalDeparture(usual), made: adjustable([line.name], usual) }];
    const any = freed(task, [line], "any");
    const made = any && bounded(any, line);
    return made ? [{ turn: 1, total: totalDeparture(any), made }] : [];
  });
  if (alone.length > 0) {
    alone.sort((a, b) => a.turn - b.turn || compare(a.total, b.total));
    return alone.map(({ made }) => made);
  }
  const all = freed(task, held, "usual");
  if (!all) return [];
  const moved = new Set(
    all.problem.model.movers.filter((_, j) => !isOne(all.point.ratios[j])).map(({ name }) => name),
  );
  const few = held.filter(({ name }) => moved.has(name));
  const found = few.length > 0 ? freed(task, few, "usual") : undefined;
  return found
    ? [
        adjustable(
          few.map(({ name }) => name),
          found,
        ),
      ]
    : [];
}

type Named = LineAt & { readonly name: string };

function freed(task: Task, lines: readonly LineAt[], within: "usual" | "any"): Found | undefined {
  const found = meet(problemOf(task, { lines, within }), task.pivots);
  return "point" in found ? found : undefined;
}

function adjustable(names: readonly string[], found: Found): FitSuggestion {
  return {
    change: "make-adjustable",
    names,
    demand: undefined,
    end: undefined,
    to: undefined,
    exactTo: undefined,
    departure: toDecimal(totalDeparture(found)),
    text: `make ${listText(names)} adjustable`,
  };
}

/** A freed line with the bound that it would need; nothing where it would have to vanish. */
function bounded(found: Found, line: Named): FitSuggestion | undefined {
  const { model } = found.problem;
  const ratio = found.point.ratios[model.places[line.dish]?.[line.line] ?? BASE];
  if (!ratio || ratio.n === 0n) return undefined;
  const side = compare(ratio, ONE) > 0 ? "most" : "least";
  const grams = over(times(ratio, gramsOf(model, line)), found.point.u);
  const shown = gramsText(grams, side === "most" ? "up" : "down");
  return {
    ...adjustable([line.name], found),
    end: side,
    to: toDecimal(grams),
    exactTo: grams,
    text: `make ${line.name} adjustable, with ${side}: ${shown}`,
  };
}

/**
 * Lines that are held now, of some mass, whose ratio a fit may not move alone. The last held line
 * stays, for ratios to be taken to.
 */
function heldLines({ dishes, movers, places }: Model): Named[] {
  const held = linesByName({ dishes }).filter((at) => {
    const place = places[at.dish]?.[at.line] ?? BASE;
    const isHeld = dishes[at.dish]?.sheet.plan.lines[at.line]?.line.scaling === "held";
    const isAlone = movers[place]?.kind === "line";
    return isHeld && !isAlone && gramsOf({ dishes }, at).n !== 0n;
  });
  return held.length > 1 ? held : [];
}

function isOne(ratio: Fraction | undefined): boolean {
  return ratio === undefined || ratio.n === ratio.d;
}

/** How far what stands in the way has to give, all else as it is; nothing where that is not enough. */
function ease(problem: Problem, standing: Standing, pivots: number | undefined): FitSuggestion | undefined {
  const { opened, value, per } = openedBy(problem, standing);
  const toward = standing.side === "least" ? "greatest" : "least";
  const to = extreme(layOut(opened.model, opened.constraints, false), value, per, toward, pivots);
  if (to === undefined) return undefined;
  const found = meet(closedAt(opened, standing, value, per, to), pivots);
  if (!("point" in found)) return undefined;
  return suggestion(standing, to, found);
}

interface Opened {
  readonly opened: Problem;
  /** `value / per` is what was bounded there. */
  readonly value: Linear;
  readonly per: Linear;
}

/** The problem with one end opened. */
function openedBy(problem: Problem, standing: Standing): Opened {
  const { model, constraints } = problem;
  const per = onePortion(model.movers.length);
  const { side } = standing;
  if (standing.on === "constraint") {
    const own = standing.constraint;
    const ends = isExact(own) ? OPEN : { least: own.least, most: own.most, [side]: undefined };
    const left = constraints.map((each) => (each === own ? withEnds(own, ends) : each));
    return { opened: { model, constraints: left }, value: own.value, per: own.per };
  }
  const opened = { model: openEnd(model, standing), constraints };
  if (standing.on === "common") return { opened, value: oneRatio(model.movers.length), per };
  const { mover, place } = standing;
  // A line's ratio is eased by its own bound, in grams of a portion; a part's by its range.
  const line = mover.lines[0];
  if (mover.kind === "line" && line !== undefined) {
    return { opened, value: weightOf(model, { dish: mover.dish, line }), per };
  }
  const each = model.movers.map((_, j) => (j === place ? 1n : 0n));
  return { opened, value: { still: 0n, each, dose: 0n, scale: 1n }, per: oneRatio(model.movers.length) };
}

const OPEN = { least: undefined, most: undefined };

/** The opened problem, held at what it was eased to. */
function closedAt(
  { model, constraints }: Problem,
  { side }: Standing,
  value: Linear,
  per: Linear,
  to: Fraction,
): Problem {
  const at: Constraint = {
    on: { kind: "line", name: "", dish: 0, line: 0 },
    value,
    per,
    least: side === "least" ? to : undefined,
    most: side === "most" ? to : undefined,
    soft: false,
  };
  return { model, constraints: [...constraints, at] };
}

function suggestion(standing: Standing, to: Fraction, found: Found): FitSuggestion {
  const shared = {
    demand: undefined,
    end: standing.side,
    to: toDecimal(to),
    exactTo: to,
    departure: toDecimal(totalDeparture(found)),
  };
  // What is shown has to do as well as what was found.
  const { side } = standing;
  const rounding = side === "most" ? "up" : "down";
  const now = standingText(standing);
  if (standing.on === "common") {
    const text = `let the common factor be ${farther(side)} ${factorText(to, rounding)} (now at ${side} ${factorText(standing.bound)})`;
    return { ...shared, change: "ease-common", names: [], text };
  }
  if (standing.on === "range") {
    const { kind, name } = standing.mover;
    const what = moverText(standing.mover);
    const text =
      kind === "line"
        ? `let ${what} have ${side}: ${gramsText(to, rounding)} (now ${now})`
        : `let ${what} stand ${farther(side)} ${factorText(to, rounding)} times its ratio (now ${now})`;
    return { ...shared, change: kind === "line" ? "ease-line" : "ease-ratio", names: [name], text };
  }
  const { on } = standing.constraint;
  if (on.kind === "line") {
    const text = `let ${on.name} have ${side}: ${gramsText(to, rounding)} (now ${now})`;
    return { ...shared, change: "ease-line", names: [on.name], text };
  }
  const { demand, subject, firm } = on.demand;
  const figure = subjectFigure(subject, to, rounding);
  const text = firm
    ? `${now} is firm; all else could be met with ${subjectName(subject)} at ${figure}`
    : `ask for ${subjectName(subject)} ${farther(side)} ${figure} (now ${askedText(on.demand)})`;
  return { ...shared, change: "ease-demand", names: [], demand, text };
}

function farther(side: Side): string {
  return side === "most" ? "up to" : "down to";
}
