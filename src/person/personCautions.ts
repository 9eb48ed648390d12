import { exact } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { isUnder18, isUnderweight, leastIndex } from "./body.ts";
import { type Caution, caution } from "./caution.ts";
import type { Facts } from "./person.ts";
import { type StateEnergy, stateCautions } from "./stateCautions.ts";

/** From this age on the ESPEN guideline on nutrition in geriatrics speaks of older people. */
const OLDER = "65";

/**
 * What a person's age, state and declared conditions give cause to say. `energy` is what their day's
 * energy holds for pregnancy or breastfeeding, where more than an equation was reckoned with.
 */
export function personCautions(facts: Facts, energy?: StateEnergy): Caution[] {
  return [
    ...(isUnder18(facts) ? [caution("under-18")] : []),
    ...(compareRatios(facts.age, exact(OLDER)) >= 0 ? [caution("over-65")] : []),
    ...stateCautions(facts, energy).map(({ caution }) => caution),
    ...(isUnderweight(facts) ? [underweight(facts)] : []),
    ...facts.conditions.map((condition) => ({ ...caution(condition), because: [condition] })),
  ];
}

function underweight(facts: Facts): Caution {
  const least = leastIndex(facts);
  return least === "18.5" ? caution("underweight") : caution("underweight", lowForAge(`below ${least}`));
}

/** What a body mass index that is low for an older person means, and who says so. */
export function lowForAge(index: string): Pick<Caution, "text" | "source" | "check"> {
  return {
    text: `A body mass index ${index} counts as low at this age, and is one sign of malnutrition; in Asian populations the lines are 18.5, and 20 from 70 on.`,
    source: "Global Leadership Initiative on Malnutrition (GLIM) 2019, Clin Nutr 38:1-9, phenotypic criteria",
    check: "unverified",
  };
}
