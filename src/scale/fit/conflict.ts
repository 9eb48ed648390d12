import { type Fraction, ZERO } from "../../number/fraction.ts";
import { conflict as conflictingRows } from "../solve/conflict.ts";
import type { Holding } from "../solve/programme.ts";
import { type Constraint, isExact } from "./constraints.ts";
import type { Mover, Range } from "./model.ts";
import { type Layout, layOut, stopped } from "./programme.ts";
import type { Problem } from "./task.ts";
import { askedText, factorText, gramsText, subjectName } from "./words.ts";

/** The end of something that stands in the way. */
export type Side = "least" | "most";

/** One of those that cannot stand together: a demand or a line's bound, a ratio's range, the common factor's. */
export type Standing =
  | { readonly on: "constraint"; readonly constraint: Constraint; readonly side: Side }
  | {
      readonly on: "range";
      readonly mover: Mover;
      readonly place: number;
      readonly side: Side;
      readonly bound: Fraction;
    }
  | { readonly on: "common"; readonly side: Side; readonly bound: Fraction };

/**
 * An irreducible set that cannot stand together. Leave out any one of its demands or line bounds
 * and the others can, within the ranges that the proof names. Where firm demands and bounds cannot
 * hold by themselves the set is of those alone.
 */
export function standingTogether(problem: Problem, pivots: number | undefined): Standing[] {
  const firm = { ...problem, constraints: problem.constraints.filter(({ soft }) => !soft) };
  return among(firm, pivots) ?? among(problem, pivots) ?? [];
}

function among(problem: Problem, pivots: number | undefined): Standing[] | undefined {
  const layout = layOut(problem.model, problem.constraints, false);
  const effort = pivots === undefined ? {} : { pivots };
  const found = conflictingRows(layout.programme, [...layout.rows.keys()], effort);
  if (found.status === "stopped") throw stopped(found.pivots);
  if (found.status === "feasible") return undefined;
  const holdings = [...found.proof.certificate].sort(
    (a, b) => Number(a.on === "variable") - Number(b.on === "variable") || a.index - b.index,
  );
  return distinct(holdings.flatMap((holding) => readHolding(layout, holding)));
}

function readHolding(layout: Layout, { on, index, end }: Holding): Standing[] {
  if (on === "row") {
    const row = layout.rows[index];
    const constraint = row && layout.constraints[row.constraint];
    return constraint ? [{ on: "constraint", constraint, side: end === "lower" ? "least" : "most" }] : [];
  }
  const { movers, common } = layout.model;
  const place = index >> 1;
  const mover = movers[place];
  const side = sideOf(mover ? mover.range : overTurned(common), index % 2 === 0, end);
  if (!side) return [];
  // What holds one over the common factor from below holds the factor from above.
  const turned = side === "least" ? "most" : "least";
  const bound = mover ? mover.range[side] : common[turned];
  if (!bound) return [];
  return mover ? [{ on: "range", mover, place, side, bound }] : [{ on: "common", side: turned, bound }];
}

/** Which end of `1 + rise − fall` a bound of the pair is; a rise or fall of nothing is no end. */
function sideOf({ least, most }: Range, isRise: boolean, end: "lower" | "upper"): Side | undefined {
  if (end === "upper") return isRise ? "most" : "least";
  if (isRise) return least.n > least.d ? "least" : undefined;
  return most && most.n < most.d ? "most" : undefined;
}

function overTurned({ least, most }: Range): Range {
  const turn = ({ n, d }: Range["least"]): Range["least"] => ({ n: d, d: n });
  return { least: most ? turn(most) : { n: 0n, d: 1n }, most: turn(least) };
}

function distinct(all: readonly Standing[]): Standing[] {
  const texts = all.map(standingText);
  return all.filter((_, i) => texts.indexOf(texts[i] ?? "") === i);
}

/** In the cook's words: `protein at least 60 g`, `tofu at most 150 g a portion`. */
export function standingText(standing: Standing): string {
  const { side } = standing;
  if (standing.on === "common") {
    return `the common factor at ${side} ${factorText(standing.bound)}`;
  }
  if (standing.on === "range") {
    const name = moverText(standing.mover);
    if (standing.bound.n === 0n) return `${name} no less than none`;
    return `${name} at ${side} ${factorText(standing.bound)} times its ratio`;
  }
  const { on, least, most } = standing.constraint;
  if (on.kind === "line") return `${on.name} at ${side} ${gramsText(least ?? most ?? ZERO)} a portion`;
  const { subject, firm } = on.demand;
  const asked = isExact(standing.constraint)
    ? { least, most }
    : { least: undefined, most: undefined, [side]: standing.constraint[side] };
  return `${subjectName(subject)} ${askedText({ subject, ...asked })}${firm ? " (firm)" : ""}`;
}

/** A line goes by its key; what is no line says what it is. */
export function moverText({ kind, name }: Pick<Mover, "kind" | "name">): string {
  return kind === "line" ? name : `${kind === "dish" ? "sheet" : "part"} ${name}`;
}
