import { word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { fault, together } from "../number/error.ts";
import { type Exact, exact, fraction, plus, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { practitionerNote } from "./caution.ts";
import type { Check } from "./check.ts";
import {
  type RequirementActivity,
  type RequirementAges,
  requirementAges,
  requirementCheck,
  requirementGroups,
  requirementSource,
} from "./equations/eer2023.ts";
import type { Facts, Person } from "./person.ts";
import { personFacts } from "./readPerson.ts";

/** What the Dietary Reference Intakes of 2023 reckon that a person needs in a day. */
export interface EstimatedEnergyRequirement {
  /** kcal a day, with growth. */
  readonly value: Exact;
  /** What of it is for growth, kcal a day. */
  readonly growth: Exact;
  readonly activity: RequirementActivity;
  readonly source: string;
  readonly check: Check;
  readonly note: string;
}

/** How active the person is, where their own `activity` is a class and no level. */
export interface RequirementOptions {
  readonly activity?: RequirementActivity;
}

const ACTIVITIES: readonly RequirementActivity[] = ["inactive", "low-active", "active", "very-active"];
/** The report's equations end below this physical activity level. */
const LEVEL_BELOW = "2.5";

/**
 * Reckons the Estimated Energy Requirement of the United States and Canada, kcal a day: total energy by sex, age,
 * height, mass and one of four spans of activity, with growth to 18 years (National Academies 2023, Dietary
 * Reference Intakes for Energy). There is no resting energy in it, and no equation for those below three, for
 * pregnancy or for breastfeeding: `energyNeed` and its `additions` serve them.
 *
 * The span is that of `how.activity`, or the one that the person's physical activity level lies in. Classes of
 * activity are of other authorities, and name none.
 *
 * Throws `person-malformed`; `person-needs` without a height or a span of activity; `equation-unsuitable` where it
 * has no equation.
 *
 * @example
 * ```ts
 * const rower = { sex: "male", age: 25, mass: "68.5 kg", height: "176.1 cm", activity: 1.75 } as const;
 * const { value, activity } = estimatedEnergyRequirement(rower);
 * console.log(`${value.toFixed(0)} kcal, ${activity}`); // => 2972 kcal, active
 * ```
 */
export function estimatedEnergyRequirement(
  person: Person,
  how: RequirementOptions = {},
): EstimatedEnergyRequirement {
  const { asked, facts } = together({
    asked: () => read(requirementOptions(), how, "person-malformed"),
    facts: () => personFacts(person),
  });
  const group = requirementGroups.find((each) => each.sex === facts.sex && isOfAge(facts, each));
  const ages = requirementAges.find((each) => isOfAge(facts, each));
  if (!group || !ages) throw unsuitable("there is none below three years", "age");
  if (facts.pregnant) throw unsuitable("there is another for pregnancy, which is not here", "pregnant");
  if (facts.breastfeeding) {
    throw unsuitable("there is another for breastfeeding, which is not here", "breastfeeding");
  }
  if (!facts.height) {
    throw fault("person-needs", "the energy requirement needs a height", "give a height", ["height"]);
  }
  const activity = asked.activity ?? spanOf(facts, ages);
  const measures = [fraction(1n), facts.age, times(facts.height, fraction(100n)), facts.mass];
  const growth = exact(ages.growth[facts.sex]);
  const value = group.by[activity]
    .split(" ")
    .reduce((sum, text, i) => plus(sum, times(exact(text), measures[i] ?? fraction(0n))), growth);
  if (value.n <= 0n) throw unsuitable("it gives no energy for this body", "mass");
  return {
    value,
    growth,
    activity,
    source: requirementSource,
    check: requirementCheck,
    note: practitionerNote,
  };
}

const requirementOptions: () => Schema<RequirementOptions> = /* @__PURE__ */ once(() =>
  fields<RequirementOptions>({ activity: optional(word(ACTIVITIES)) }),
);

/** The span of activity that a person's level lies in. */
function spanOf({ activity }: Facts, { begin }: RequirementAges): RequirementActivity {
  if (activity === undefined || typeof activity === "string") {
    const choices = ACTIVITIES.map((each) => `"${each}"`).join(", ");
    const hint = `give one of ${choices} as activity in the second argument, or the person's level, such as 1.6`;
    throw fault("person-needs", "the energy requirement needs a span of activity", hint, ["activity"]);
  }
  if (compareRatios(activity, exact(LEVEL_BELOW)) >= 0) {
    throw unsuitable(`its levels of activity end below ${LEVEL_BELOW}`, "activity");
  }
  return (
    [...ACTIVITIES].reverse().find((each) => compareRatios(activity, exact(begin[each])) >= 0) ?? "inactive"
  );
}

function isOfAge(
  { age }: Facts,
  { from, below }: { readonly from: number; readonly below?: number },
): boolean {
  return (
    compareRatios(age, exact(from)) >= 0 && (below === undefined || compareRatios(age, exact(below)) < 0)
  );
}

function unsuitable(why: string, field: string): Error {
  const hint = "take energyNeed, with its additions for pregnancy and breastfeeding";
  return fault("equation-unsuitable", `no Estimated Energy Requirement: ${why}`, hint, [field]);
}
