import type { Fault } from "../number/error.ts";
import type { AimFacts } from "./aim.ts";
import { isUnder18, isUnderweight, leastIndex } from "./body.ts";
import { type Caution, caution } from "./caution.ts";
import type { Facts } from "./person.ts";

/**
 * Weight loss that is refused unless a clinician's supervision is recorded with the person. NHS England
 * takes nobody under 18, pregnant or with an active eating disorder into its weight-loss programme
 * (NHS Digital Weight Management Programme, information for healthcare professionals); what is declared here does not tell a past disorder from a present one, so both are refused.
 */
export function refusals(facts: Facts, aim: AimFacts): Fault[] {
  if (aim.direction !== "lose" || facts.supervised) return [];
  const hint = "record the clinician in the person's supervised: { by }, or aim to hold weight";
  const refuse = (why: string): Fault => ({
    code: "aim-refused",
    path: ["weight", "lose"],
    message: `weight loss is refused for someone ${why}`,
    hint,
  });
  const faults = [
    ...(isUnder18(facts) ? [refuse("who is under 18")] : []),
    ...(facts.pregnant ? [refuse("who is pregnant")] : []),
    ...(facts.breastfeeding ? [refuse("who is breastfeeding")] : []),
    ...(isUnderweight(facts)
      ? [refuse(leastIndex(facts) === "18.5" ? "who is underweight" : "who is underweight for their age")]
      : []),
    ...(facts.conditions.includes("eating-disorder-history")
      ? [refuse("with an eating disorder now or before")]
      : []),
  ];
  if (faults.length > 0 || facts.height || isUnder18(facts)) return faults;
  return [
    {
      code: "person-needs",
      path: ["height"],
      message: "weight loss needs a height, to rule out underweight",
      hint: 'give the height, as in "1.70 m"',
    },
  ];
}

/** What is said where a recorded supervision lifted the refusals. */
export function supervision(facts: Facts, aim: AimFacts): Caution[] {
  if (!facts.supervised || aim.direction !== "lose") return [];
  const height = facts.height ? [] : [caution("underweight-unknown")];
  return [
    ...height,
    {
      code: "supervised",
      text: `Weight loss under the recorded supervision of ${facts.supervised.by}.`,
      source: "the person's own record",
      check: "unverified",
    },
  ];
}
