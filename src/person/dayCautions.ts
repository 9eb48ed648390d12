import { fixedText } from "../number/digits.ts";
import { type Exact, exact, minus, over, times, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import {
  countedMass,
  isBelowIndex,
  isUnder18,
  isUnderweight,
  leastIndex,
  massToUnderweight,
} from "./body.ts";
import { type Caution, caution } from "./caution.ts";
import { macroEnergy, sideOfEnergy } from "./macroEnergy.ts";
import type { Facts } from "./person.ts";
import { lowForAge } from "./personCautions.ts";
import { type ProteinDay, proteinCautions } from "./proteinCautions.ts";

/** NICE: very-low-energy diets are those of 800 kcal a day or less. */
const VERY_LOW = "800";
/** NICE: 0.5 to 1 kg a week at most. */
const FASTEST_LOSS = "1";
/** Ruiz-Castellano 2021: share of body mass a week, at most. */
const FASTEST_LOSS_OF_MASS = "0.01";
/** How far ahead underweight is looked for: the weeks of a weight-loss programme (NHS England's has 12). */
const WEEKS_AHEAD = 12n;
/** IOC 2018, 2023: kcal for each kg of fat-free mass. */
const LEAST_AVAILABLE = "30";
/** Iraki 2019: share of body mass a week, at most. */
const FASTEST_GAIN = "0.005";
/** Thurber 2019: times resting energy. */
const SUSTAINED = "2.5";
/** NICE CG32, section 1.4: body mass index of those at high risk of refeeding problems, and kcal per kg to start with. The 5 below an index of 14 was not read. */
const REFEEDING = [
  { below: "14", perKg: "5" },
  { below: "16", perKg: "10" },
] as const;
/** The same: at high risk where one more of its signs is there, of which insulin is one. */
const REFEEDING_WITH_INSULIN = { below: "18.5", perKg: "10" } as const;

interface Day extends ProteinDay {
  readonly resting: Exact;
  readonly kgPerWeek: Exact;
}

/** What a day's figures give cause to say. */
export function targetCautions(day: Day): Caution[] {
  const { facts, aimed, target, resting, kgPerWeek } = day;
  const isAdultDiet = aimed.direction === "lose" && !isUnder18(facts);
  return [
    ...refeeding(facts, target),
    ...(isAdultDiet && compareRatios(target, exact(VERY_LOW)) <= 0 ? [caution("energy-below-800")] : []),
    ...(compareRatios(target, resting) < 0 ? [caution("energy-below-resting")] : []),
    ...(facts.lean && compareRatios(target, times(exact(LEAST_AVAILABLE), facts.lean)) < 0
      ? [caution("low-energy-availability")]
      : []),
    ...lossCautions(facts, minus(ZERO, kgPerWeek)),
    ...gainCautions(facts, kgPerWeek),
    ...(compareRatios(target, times(exact(SUSTAINED), resting)) > 0 ? [caution("energy-beyond-limit")] : []),
    ...macroCautions(day),
    ...proteinCautions(day),
  ];
}

/** Food itself can harm an adult this thin, whatever the aim: NICE starts far below what a day is to bring. */
function refeeding(facts: Facts, target: Exact): Caution[] {
  const rules = facts.conditions.includes("insulin") ? [...REFEEDING, REFEEDING_WITH_INSULIN] : REFEEDING;
  const rule = rules.find(({ below }) => isBelowIndex(facts, below));
  if (!rule) return [];
  const start = times(exact(rule.perKg), facts.mass);
  if (compareRatios(target, start) <= 0) return [];
  const text = `A body mass index below ${rule.below}${rule.below === "18.5" ? ", and insulin," : ""} is a high risk of refeeding problems, which can kill: after a time of eating little, food starts under clinical care at ${rule.perKg} kcal per kg a day or less, here ${fixedText(start, 0)} kcal, with vitamins, and with potassium, phosphate and magnesium watched. This day is of ${fixedText(target, 0)} kcal.`;
  return [caution("refeeding", rule.below === "14" ? { text, check: "unverified" } : { text })];
}

/** What a gain, in kg a week, gives cause to say; a loss is below zero. */
function gainCautions(facts: Facts, gain: Exact): Caution[] {
  if (compareRatios(gain, times(exact(FASTEST_GAIN), countedMass(facts))) <= 0) return [];
  // Neither a thin body that is to fill out nor a mother is one that trains to gain muscle.
  if (isUnderweight(facts) || facts.pregnant) return [];
  if (!isUnder18(facts)) return [caution("fast-gain")];
  const text =
    "More than 0.5 % of body mass a week is faster than adults who train to gain muscle are advised to aim for; a growing body has a pace of its own, which growth charts show.";
  return [caution("fast-gain", { text })];
}

/** What a loss, in kg a week, gives cause to say; a gain is below zero. */
function lossCautions(facts: Facts, loss: Exact): Caution[] {
  if (loss.n <= 0n) return [];
  const isFastForMass = compareRatios(loss, times(exact(FASTEST_LOSS_OF_MASS), facts.mass)) > 0;
  return [
    ...(compareRatios(loss, exact(FASTEST_LOSS)) > 0 ? [caution("fast-loss")] : []),
    ...(isFastForMass ? [caution("fast-loss-for-mass")] : []),
    ...underweightSoon(facts, loss),
  ];
}

/** Says within how many weeks a steady loss makes an adult underweight who is not so yet. */
function underweightSoon(facts: Facts, loss: Exact): Caution[] {
  const spare = massToUnderweight(facts);
  if (!spare || spare.n < 0n) return [];
  const weeks = over(spare, loss);
  const within = weeks.n / weeks.d + 1n;
  if (within > WEEKS_AHEAD) return [];
  const when = within === 1n ? "a week" : `${within} weeks`;
  const least = leastIndex(facts) ?? "";
  if (least === "18.5") {
    const text = `At this pace the body mass index falls below 18.5, which counts as underweight in adults, within ${when}.`;
    return [caution("underweight-soon", { text })];
  }
  return [caution("underweight-soon", lowForAge(`below ${least}, where this pace leads within ${when},`))];
}

function macroCautions({ facts, aimed, target }: Day): Caution[] {
  const side = sideOfEnergy(macroEnergy(facts, aimed, target), target);
  if (side === undefined) return [];
  const text = `Protein, fat and carbohydrate as asked come to ${side} than the day's energy by general factors (4, 9 and 4 kcal per g): only foods whose own factors differ can meet them together.`;
  return [caution("macros-energy", { text })];
}
