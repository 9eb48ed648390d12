import { compare, exact, type Fraction, minus, over, times } from "../number/fraction.ts";
import { type Caution, caution } from "./caution.ts";
import type { Facts } from "./person.ts";
import { type StateEnergy, stateCautions } from "./stateCautions.ts";

const ADULT = "18";
const UNDERWEIGHT = "18.5";

/**
 * What a person's age, state and declared conditions give cause to say. `energy` is what their day's
 * energy holds for pregnancy or breastfeeding, where more than an equation was reckoned with.
 */
export function personCautions(facts: Facts, energy?: StateEnergy): Caution[] {
  return [
    ...(isUnder18(facts) ? [caution("under-18")] : []),
    ...(compare(facts.age, exact(65)) > 0 ? [caution("over-65")] : []),
    ...stateCautions(facts, energy).map(({ caution }) => caution),
    ...(isUnderweight(facts) ? [caution("underweight")] : []),
    ...facts.conditions.map((condition) => ({ ...caution(condition), because: [condition] })),
  ];
}

export function isUnder18(facts: Facts): boolean {
  return compare(facts.age, exact(ADULT)) < 0;
}

/** Body mass index, kg per square metre, where the height is known. */
export function bodyMassIndex(facts: Facts): Fraction | undefined {
  return facts.height && over(facts.mass, times(facts.height, facts.height));
}

/** Underweight as the WHO classes adults; children have growth charts, not this cut-off. */
export function isUnderweight(facts: Facts): boolean {
  const index = bodyMassIndex(facts);
  return index !== undefined && !isUnder18(facts) && compare(index, exact(UNDERWEIGHT)) < 0;
}

/** What an adult has to lose before they count as underweight, kg; below zero where they do already. */
export function massToUnderweight(facts: Facts): Fraction | undefined {
  if (!facts.height || isUnder18(facts)) return undefined;
  return minus(facts.mass, times(exact(UNDERWEIGHT), times(facts.height, facts.height)));
}
