import { fixedText } from "../number/digits.ts";
import { type Exact, exact, minus, over, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Facts } from "./person.ts";

const ADULT = "18";

/**
 * Below which body mass index an adult counts as underweight, by age. WHO 2000 (TRS 894) classes adults at
 * 18.5. Of older people, GLIM 2019 (Cederholm et al., Clin Nutr 38:1-9, table of phenotypic criteria) calls
 * an index low below 20, and below 22 from 70 on; the ESPEN guideline on nutrition in geriatrics goes by it.
 * That 20 holds from 65 on is ours: the guideline's older people are those of 65 and more.
 */
const UNDERWEIGHT: readonly { readonly from: string; readonly below: string }[] = [
  { from: "70", below: "22" },
  { from: "65", below: "20" },
  { from: ADULT, below: "18.5" },
];

/**
 * Figures per kilogram are of bodies of a usual mass; nobody's fat needs protein, nor carries off fluoride.
 * So no more is counted than the mass at a body mass index of 30, where WHO's obesity begins, and without a
 * height no more than that of someone of 2 m. Common practice, no source: where dietitians begin to correct
 * a body's mass, by rules that differ.
 */
const FULL_INDEX = "30";
const TALL = "2";

/** Tells whether someone is under 18. */
export function isUnder18(facts: Facts): boolean {
  return compareRatios(facts.age, exact(ADULT)) < 0;
}

/** Returns the body mass index, kg per square metre, where the height is known. */
export function bodyMassIndex(facts: Facts): Exact | undefined {
  return facts.height && over(facts.mass, times(facts.height, facts.height));
}

/** Returns the index below which an adult of an age counts as underweight; children have growth charts, not a cut-off. */
export function leastIndex(facts: Facts): string | undefined {
  return UNDERWEIGHT.find(({ from }) => compareRatios(facts.age, exact(from)) >= 0)?.below;
}

/** Tells whether an adult counts as underweight at their age. */
export function isUnderweight(facts: Facts): boolean {
  const least = leastIndex(facts);
  return least !== undefined && isBelowIndex(facts, least);
}

/** Tells whether an adult's body mass index is known to be below one. */
export function isBelowIndex(facts: Facts, index: string): boolean {
  const own = bodyMassIndex(facts);
  return own !== undefined && !isUnder18(facts) && compareRatios(own, exact(index)) < 0;
}

/** Returns what an adult has to lose before they count as underweight, kg; below zero where they do already. */
export function massToUnderweight(facts: Facts): Exact | undefined {
  const least = leastIndex(facts);
  if (!facts.height || least === undefined) return undefined;
  return minus(facts.mass, massAt(least, facts.height));
}

/** Returns the mass by which figures per kilogram are reckoned for someone, kg: theirs, up to that of an index of 30. */
export function countedMass(facts: Facts): Exact {
  const most = massAt(FULL_INDEX, facts.height ?? exact(TALL));
  return compareRatios(facts.mass, most) > 0 ? most : facts.mass;
}

/** Says by what mass figures per kilogram were reckoned, where that is not the whole of someone's. */
export function countedText(facts: Facts): string | undefined {
  if (compareRatios(countedMass(facts), facts.mass) === 0) return undefined;
  const index = facts.height ? "of this height" : "2 m tall, since no height is given";
  return `by ${fixedText(countedMass(facts), 0)} kg, the mass at a body mass index of 30 of someone ${index}: figures per kilogram are of bodies of a usual mass`;
}

function massAt(index: string, height: Exact): Exact {
  return times(exact(index), times(height, height));
}
