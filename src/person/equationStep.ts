import { fixedText } from "../number/digits.ts";
import { absolute, type Exact, exact, minus, negate, over, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { childActivity } from "./activity.ts";
import { isUnder18 } from "./body.ts";
import { type Caution, caution } from "./caution.ts";
import type { Check } from "./check.ts";
import { energyEquations } from "./equations/all.ts";
import { type NeedFigures, needBy } from "./need.ts";
import type { Facts } from "./person.ts";

/** A step in the need that is smaller than this share is passed over: common practice, no source. */
const WORTH = "0.05";
/** How near a birthday has to be, in years, for its step to be told. */
const NEAR = "0.5";
/** Just before a birthday. */
const DAY = "1/365";

/** What the need comes to on the other side of a birthday. */
interface Step {
  /** The age in years at which the figures change. */
  readonly at: number;
  readonly other: NeedFigures;
}

/**
 * Tells where a need takes a step that no body takes: where the equation that is taken unasked changes with
 * age, and where an equation's own figures, or the activity of children, change within half a year of the
 * person's age. Both figures are told. The largest step alone, if it is a twentieth of the need or more.
 */
export function stepCautions(facts: Facts, need: NeedFigures): Caution[] {
  const steps = [...defaultStep(facts, need), ...ownSteps(facts, need)];
  const [step] = steps.sort((a, b) => compareRatios(sizeOf(b, need), sizeOf(a, need)));
  if (!step || compareRatios(sizeOf(step, need), exact(WORTH)) < 0) return [];
  const { other } = step;
  const closer = {
    text: wordsOf(facts, need, step),
    source: sourceOf(need, other),
    check: weaker(need, other),
  };
  return [caution("equation-step", closer)];
}

/** The change between Mifflin-St Jeor and Schofield, which {@link needBy} is asked for by age. */
function defaultStep(facts: Facts, need: NeedFigures): Step[] {
  if (need.chosen !== undefined || !facts.height || isUnder18(facts)) return [];
  const mifflin = energyEquations["mifflin-st-jeor"];
  const { from, to = from } = mifflin.ages;
  const isOld = compareRatios(facts.age, exact((from + to) / 2)) > 0;
  const at = isOld ? to + 1 : from;
  const isTaken = need.equation === mifflin;
  if (isTaken && !isNear(facts.age, at)) return [];
  const other = needBy(isTaken ? energyEquations["schofield-1985"] : mifflin, facts);
  return other ? [{ at, other }] : [];
}

/** The changes at the bounds of the equation's own lines, and of the activity of children. */
function ownSteps(facts: Facts, need: NeedFigures): Step[] {
  const { lines } = need.equation;
  const ends = new Set(lines.flatMap(({ below }) => below ?? []));
  const bounds = new Set([
    ...lines.flatMap(({ from }) => (from !== undefined && ends.has(from) ? [from] : [])),
    ...(typeof facts.activity === "string" ? childActivity.map(({ below }) => below) : []),
  ]);
  return [...bounds].flatMap((at): Step[] => {
    if (!isNear(facts.age, at)) return [];
    const age = isPast(facts.age, at) ? minus(exact(at), exact(DAY)) : exact(at);
    const other = needBy(need.equation, { ...facts, age });
    return other ? [{ at, other }] : [];
  });
}

function isNear(age: Exact, at: number): boolean {
  const past = minus(age, exact(at));
  return compareRatios(past, negate(exact(NEAR))) >= 0 && compareRatios(past, exact(NEAR)) < 0;
}

function isPast(age: Exact, at: number): boolean {
  return compareRatios(age, exact(at)) >= 0;
}

function sizeOf({ other }: Step, need: NeedFigures): Exact {
  return absolute(over(minus(other.total, need.total), need.total));
}

function wordsOf(facts: Facts, need: NeedFigures, { at, other }: Step): string {
  const kcal = (figures: NeedFigures): string => `${fixedText(figures.total, 0)} kcal a day`;
  const percent = fixedText(times(over(minus(other.total, need.total), need.total), exact(100)), 0);
  const than = percent.startsWith("-") ? `${percent.slice(1)} % less` : `${percent} % more`;
  const past = isPast(facts.age, at);
  if (other.equation === need.equation) {
    const also = compareRatios(other.level, need.level) === 0 ? "" : " and of activity";
    return `At ${at} years the figures of ${need.equation.name}${also} change in one step: ${kcal(past ? need : other)} from then on, ${kcal(past ? other : need)} before. No body changes so in a day.`;
  }
  const when = past ? "before" : "from then on";
  return `The equation changes at ${at} years, for Mifflin-St Jeor was made from people of 19 to 78. ${need.equation.name} gives ${kcal(need)}; ${other.equation.name}, which is taken ${when}, gives ${kcal(other)} (${than}). No body changes so in a day.`;
}

function sourceOf(need: NeedFigures, other: NeedFigures): string {
  return [...new Set([need.equation.source, other.equation.source])].join("; ");
}

function weaker({ check }: NeedFigures, other: NeedFigures): Check {
  const order: readonly Check[] = ["unverified", "copy", "issuer"];
  return order.find((each) => each === check || each === other.check) ?? "unverified";
}
