import { word } from "../document/leaves.ts";
import { coded, type Schema } from "../document/schema.ts";
import { fault } from "../number/error.ts";
import { type Exact, exact, fraction, plus, times, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { levelOfClass } from "./activity.ts";
import { isUnder18 } from "./body.ts";
import type { Check } from "./check.ts";
import { energyEquations } from "./equations/all.ts";
import type { EnergyEquation, EquationId, EquationLine } from "./equations/equation.ts";
import type { Facts } from "./person.ts";

/** Energy need in exact figures, kcal a day. */
export interface NeedFigures {
  readonly equation: EnergyEquation;
  /** The equation that was asked for; undefined where it was left to the person's age and data. */
  readonly chosen?: EquationId;
  readonly check: Check;
  readonly resting: Exact;
  readonly total: Exact;
  readonly level: Exact;
}

/**
 * Need in exact figures.
 *
 * Throws `person-needs`, `equation-unsuitable`.
 */
export function needOf(facts: Facts, chosen?: EquationId): NeedFigures {
  const equation = equationFor(facts, chosen);
  const missing = missingFor(equation, facts);
  if (missing.length > 0) {
    const wants = missing.join(" and ");
    throw fault(
      "person-needs",
      `${equation.name} needs ${wants}`,
      `give ${wants}, or choose another equation`,
      [missing[0] === "height" ? "height" : "leanMass"],
    );
  }
  const level = levelOf(facts);
  const line = lineFor(equation, facts);
  if (!line) throw unsuitable(`${equation.name} has no line for this age`);
  const need = needBy(equation, facts, level);
  if (!need) throw unsuitable(`${equation.name} gives no energy for this body`);
  return { ...need, ...(chosen !== undefined && { chosen }) };
}

/** Reckons a need by one equation whose data are there; undefined where it has no line, or gives nothing. */
export function needBy(
  equation: EnergyEquation,
  facts: Facts,
  level: Exact = levelOf(facts),
): NeedFigures | undefined {
  const line = lineFor(equation, facts);
  const resting = line && restingBy(line, facts);
  if (!resting || resting.n <= 0n) return undefined;
  return { equation, check: equation.check, resting, total: times(resting, level), level };
}

/** Every equation that the data serve. Those made from adults are left out for children. */
export function needsByEquation(
  facts: Facts,
  need: NeedFigures,
): { equation: EnergyEquation; resting: Exact }[] {
  return Object.values(energyEquations).flatMap((equation) => {
    const line = lineFor(equation, facts);
    const serves = isWithin(equation, facts) || !isUnder18(facts) || equation === need.equation;
    if (!line || !serves || missingFor(equation, facts).length > 0) return [];
    const resting = restingBy(line, facts);
    return resting.n > 0n ? [{ equation, resting }] : [];
  });
}

function equationFor(facts: Facts, chosen: EquationId | undefined): EnergyEquation {
  if (chosen === undefined) {
    const mifflin = energyEquations["mifflin-st-jeor"];
    return facts.height && isWithin(mifflin, facts) ? mifflin : energyEquations["schofield-1985"];
  }
  return energyEquations[chosen];
}

/** The schema of an equation's name; its faults have the code `equation-unsuitable`. */
export function equationName(): Schema<EquationId> {
  return coded("equation-unsuitable", word(Object.keys(energyEquations) as EquationId[]));
}

function unsuitable(message: string): Error {
  return fault("equation-unsuitable", message, "check the person's figures, or choose another equation", [
    "equation",
  ]);
}

function lineFor(equation: EnergyEquation, facts: Facts): EquationLine | undefined {
  return equation.lines.find(
    (line) =>
      (line.sex === undefined || line.sex === facts.sex) &&
      (line.from === undefined || compareRatios(facts.age, exact(line.from)) >= 0) &&
      (line.below === undefined || compareRatios(facts.age, exact(line.below)) < 0),
  );
}

function missingFor(equation: EnergyEquation, facts: Facts): ("height" | "lean mass or body fat")[] {
  const uses = (key: "heightCm" | "heightM" | "lean"): boolean =>
    equation.lines.some((l) => l[key] !== undefined);
  return [
    ...((uses("heightCm") || uses("heightM")) && !facts.height ? (["height"] as const) : []),
    ...(uses("lean") && !facts.lean ? (["lean mass or body fat"] as const) : []),
  ];
}

function restingBy(line: EquationLine, facts: Facts): Exact {
  const height = facts.height ?? ZERO;
  const terms: (readonly [string | undefined, Exact])[] = [
    [line.mass, facts.mass],
    [line.lean, facts.lean ?? ZERO],
    [line.heightM, height],
    [line.heightCm, times(height, fraction(100n))],
    [line.age, facts.age],
  ];
  return terms.reduce(
    (sum, [coefficient, measure]) => (coefficient ? plus(sum, times(exact(coefficient), measure)) : sum),
    exact(line.constant),
  );
}

export function isWithin(equation: EnergyEquation, facts: Facts): boolean {
  const { from, to } = equation.ages;
  return (
    compareRatios(facts.age, exact(from)) >= 0 &&
    (to === undefined || compareRatios(facts.age, exact(to + 1)) < 0)
  );
}

function levelOf(facts: Facts): Exact {
  const { activity } = facts;
  if (activity === undefined) {
    throw fault(
      "person-needs",
      "total energy needs an activity",
      'give activity: "sedentary", "active", "vigorous" or a physical activity level such as 1.6',
      ["activity"],
    );
  }
  return typeof activity === "string" ? levelOfClass(activity, facts.age) : activity;
}
