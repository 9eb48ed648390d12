import { showPercent } from "../../measure/showFigure.ts";
import { type Exact, equals, fraction, ONE, ZERO } from "../../number/exact.ts";
import { isExact, type LimitEnd, withEnds } from "../engine/constraints.ts";
import type { FactorRange } from "../engine/halfToDouble.ts";
import { BASE, baseOfMover, type Mover } from "../engine/model.ts";
import { type InTheWay, isSame, openEnd, type RangeEnd } from "../engine/open.ts";
import { type Layout, layOut, solve, stopped } from "../engine/programme.ts";
import type { Problem } from "../engine/task.ts";
import { conflict as conflictingRows } from "../solve/conflict.ts";
import type { Holding, Infeasible } from "../solve/programme.ts";
import { askedText, type FigureRounding, factorText, gramsText, subjectName, timesText } from "./words.ts";

/**
 * An irreducible set that cannot stand together: leave out any one, and the others can. Where firm
 * demands and bounds cannot hold by themselves the set is of those alone.
 */
export function standingTogether(problem: Problem, pivots: number | undefined): InTheWay[] {
  const firm = { ...problem, constraints: problem.constraints.filter(({ soft }) => !soft) };
  return among(firm, pivots) ?? among(problem, pivots) ?? [];
}

function among({ model, constraints }: Problem, pivots: number | undefined): InTheWay[] | undefined {
  const layout = layOut(model, constraints, false);
  const yielding = layout.rows.flatMap(({ of }, i) => (of === "constraint" ? [i] : []));
  const found = conflictingRows(layout.programme, yielding, { pivots });
  if (found.status === "stopped") throw stopped(found.pivots);
  if (found.status === "feasible") return undefined;
  const standing = readProof(layout, found.proof);
  const rows = standing.flatMap((each) => (each.on === "constraint" ? [each] : []));
  const alone = rows.map(({ constraint, side }) =>
    isExact(constraint) ? constraint : withEnds(constraint, { ...OPEN, [side]: constraint[side] }),
  );
  const ends = standing.flatMap((each) => (each.on === "constraint" ? [] : [each]));
  return [...rows, ...neededEnds({ model, constraints: alone }, ends, pivots)];
}

const OPEN = { least: undefined, most: undefined };

/** Ranges tried for leaving out; of a dish of more movers some may be named that could be spared. */
const MOST_TRIED = 40;

/** Of the ends of ranges that a proof names, those without which the rest could stand. */
function neededEnds(
  problem: Problem,
  ends: readonly RangeEnd[],
  pivots: number | undefined,
): readonly RangeEnd[] {
  const { constraints } = problem;
  let model = problem.model;
  let named = ends;
  const tried: RangeEnd[] = [];
  const opened: RangeEnd[] = [];
  for (let tries = 0; tries < MOST_TRIED; tries += 1) {
    const left = named.filter((end) => !isAmong(tried, end));
    const next = left.find(({ on }) => on === "common") ?? left[0];
    if (!next) break;
    tried.push(next);
    const without = openEnd(model, next);
    const layout = layOut(without, constraints, false);
    const solution = solve(layout, [], pivots);
    if (solution?.status !== "infeasible") continue;
    // Another proof, which may rest on ends that the last one did without.
    model = without;
    opened.push(next);
    named = readProof(layout, solution).flatMap((each) =>
      each.on === "constraint" || isAmong(opened, each) ? [] : [each],
    );
  }
  return named;
}

function isAmong(all: readonly InTheWay[], one: InTheWay): boolean {
  return all.some((each) => isSame(each, one));
}

/** What a proof rests on, demands first. */
function readProof(layout: Layout, { certificate }: Infeasible): InTheWay[] {
  const holdings = [...certificate].sort(
    (a, b) => Number(a.on === "variable") - Number(b.on === "variable") || a.index - b.index,
  );
  return distinct(holdings.flatMap((holding) => readHolding(layout, holding)));
}

function readHolding(layout: Layout, { on, index, end }: Holding): InTheWay[] {
  const { movers, common } = layout.model;
  if (on === "row") {
    const { of, place = 0 } = layout.rows[index] ?? {};
    const side = end === "lower" ? "least" : "most";
    const constraint = of === "constraint" ? layout.constraints[place] : undefined;
    if (constraint) return [{ on: "constraint", constraint, side }];
    const mover = of === "range" ? movers[place] : undefined;
    const bound = mover?.range[side];
    return mover && bound ? [{ on: "range", mover, place, side, bound }] : [];
  }
  const place = index >> 1;
  const mover = movers[place];
  // Rows hold the range to a factor that moves itself.
  if (mover && baseOfMover(layout.model, mover) !== BASE) return [];
  const side = sideOf(mover ? mover.range : overTurned(common), index % 2 === 0, end);
  if (!side) return [];
  // What holds one over the common factor from below holds the factor from above.
  const turned = side === "least" ? "most" : "least";
  const bound = mover ? mover.range[side] : common[turned];
  if (!bound) return [];
  return mover ? [{ on: "range", mover, place, side, bound }] : [{ on: "common", side: turned, bound }];
}

/** Which end of `1 + rise − fall` a bound of the pair is; a rise or fall of nothing is no end. */
function sideOf({ least, most }: FactorRange, isRise: boolean, end: "lower" | "upper"): LimitEnd | undefined {
  if (end === "upper") return isRise ? "most" : "least";
  if (isRise) return least.n > least.d ? "least" : undefined;
  return most && most.n < most.d ? "most" : undefined;
}

function overTurned({ least, most }: FactorRange): FactorRange {
  const turn = ({ n, d }: FactorRange["least"]): FactorRange["least"] => fraction(d, n);
  return { least: most ? turn(most) : ZERO, most: turn(least) };
}

/** A range's two variables may both be named. */
function distinct(all: readonly InTheWay[]): InTheWay[] {
  return all.filter((each, i) => !isAmong(all.slice(0, i), each));
}

/** In the cook's words: `protein at least 60 g`, `tofu at most 150 g a portion`. */
export function standingText(standing: InTheWay): string {
  const { side } = standing;
  if (standing.on === "common") {
    return `the whole dish at ${side} ${factorText(standing.bound)} times the recipe`;
  }
  if (standing.on === "range") {
    const name = moverText(standing.mover);
    if (standing.bound.n === 0n) return `${name} no less than none`;
    return `${name} at ${side} ${proportionText(standing.mover, standing.bound)}`;
  }
  const { on, least, most } = standing.constraint;
  if (on.kind === "sheet")
    return `the ${on.name} sheet at ${side} ${factorText(standing.constraint[side] ?? ZERO)} times its recipe`;
  if (on.kind === "share")
    return `${on.name} at ${side} ${showPercent(standing.constraint[side] ?? ZERO, { significant: 3 })} of the day's energy`;
  if (on.kind === "line" && on.isDose)
    return `${on.name} ${gramsText(least ?? ZERO)} a portion, the same for everyone`;
  if (on.kind === "line") return `${on.name} at ${side} ${gramsText(least ?? most ?? ZERO)} a portion`;
  const { subject, firm } = on.demand;
  const asked = isExact(standing.constraint)
    ? { least, most }
    : { least: undefined, most: undefined, [side]: standing.constraint[side] };
  return `${subjectName(subject)} ${askedText({ subject, ...asked })}${firm ? " (firm)" : ""}`;
}

/** What a mover may be or is: of a sheet, so many times the common factor. */
export function proportionText(
  { kind }: Pick<Mover, "kind">,
  ratio: Exact,
  rounding?: FigureRounding,
): string {
  if (kind !== "dish") return timesText(ratio, rounding);
  return equals(ratio, ONE) ? "the common factor" : `${factorText(ratio, rounding)} times the common factor`;
}

/** A line goes by its key; what is no line says what it is: `the sauce part`. */
export function moverText({ kind, name }: Pick<Mover, "kind" | "name">): string {
  return kind === "line" ? name : `the ${name} ${kind === "dish" ? "sheet" : "part"}`;
}
