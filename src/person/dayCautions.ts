import { compare, exact, type Fraction, minus, ONE, over, times, ZERO } from "../number/fraction.ts";
import type { AimFacts, Band } from "./aim.ts";
import { type Caution, caution } from "./caution.ts";
import { macroEnergy, sideOfEnergy } from "./macroEnergy.ts";
import type { Facts } from "./person.ts";
import { massToUnderweight } from "./personCautions.ts";

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
/** EFSA 2012 reference intake; ISSN 2017 upper end for people in training: g per kg of body mass. */
const PROTEIN_LEAST = "0.83";
const PROTEIN_MOST = "2.0";
/** Institute of Medicine 2002/2005: share of energy from protein, adults. */
const SHARE_LEAST = "0.10";
const SHARE_MOST = "0.35";
/** General Atwater factor, kcal per g of protein. */
const PROTEIN_KCAL = "4";

interface Day {
  readonly facts: Facts;
  readonly aimed: AimFacts;
  readonly resting: Fraction;
  readonly target: Fraction;
  readonly kgPerWeek: Fraction;
}

/** What a day's figures give cause to say. */
export function targetCautions(day: Day): Caution[] {
  const { facts, aimed, target, resting, kgPerWeek } = day;
  const isFastGain =
    aimed.direction === "gain" && compare(kgPerWeek, times(exact(FASTEST_GAIN), facts.mass)) > 0;
  return [
    ...(compare(target, exact(VERY_LOW)) <= 0 ? [caution("energy-below-800")] : []),
    ...(compare(target, resting) < 0 ? [caution("energy-below-resting")] : []),
    ...(facts.lean && compare(target, times(exact(LEAST_AVAILABLE), facts.lean)) < 0
      ? [caution("low-energy-availability")]
      : []),
    ...lossCautions(facts, minus(ZERO, kgPerWeek)),
    ...(isFastGain ? [caution("fast-gain")] : []),
    ...(compare(target, times(exact(SUSTAINED), resting)) > 0 ? [caution("energy-beyond-limit")] : []),
    ...macroCautions(day),
    ...proteinCautions(day),
  ];
}

/** What a loss, in kg a week, gives cause to say; a gain is below zero. */
function lossCautions(facts: Facts, loss: Fraction): Caution[] {
  if (loss.n <= 0n) return [];
  const isFastForMass = compare(loss, times(exact(FASTEST_LOSS_OF_MASS), facts.mass)) > 0;
  return [
    ...(compare(loss, exact(FASTEST_LOSS)) > 0 ? [caution("fast-loss")] : []),
    ...(isFastForMass ? [caution("fast-loss-for-mass")] : []),
    ...underweightSoon(facts, loss),
  ];
}

/** Says within how many weeks a steady loss makes an adult underweight who is not so yet. */
function underweightSoon(facts: Facts, loss: Fraction): Caution[] {
  const spare = massToUnderweight(facts);
  if (!spare || spare.n < 0n) return [];
  const weeks = over(spare, loss);
  const within = weeks.n / weeks.d + 1n;
  if (within > WEEKS_AHEAD) return [];
  const when = within === 1n ? "a week" : `${within} weeks`;
  const text = `At this pace the body mass index falls below 18.5, which counts as underweight in adults, within ${when}.`;
  return [caution("underweight-soon", { text })];
}

function macroCautions({ facts, aimed, target }: Day): Caution[] {
  const side = sideOfEnergy(macroEnergy(facts, aimed, target), target);
  if (side === undefined) return [];
  const text = `Protein, fat and carbohydrate as asked come to ${side} than the day's energy by general factors (4, 9 and 4 kcal per g): only foods whose own factors differ can meet them together.`;
  return [caution("macros-energy", { text })];
}

function proteinCautions({ facts, aimed, target }: Day): Caution[] {
  const macro = aimed.macros.protein;
  if (!macro) return [];
  const perKg = over(perGram(target), facts.mass);
  const byMass: Band =
    macro.by === "perKg"
      ? macro.band
      : scaled(macro.band, macro.by === "share" ? perKg : over(facts.lean ?? facts.mass, facts.mass));
  const byShare: Band = macro.by === "share" ? macro.band : scaled(byMass, over(ONE, perKg));
  const low = byMass.exactly ?? byMass.most;
  const high = byMass.exactly ?? byMass.least;
  const shareLow = byShare.exactly ?? byShare.most;
  const shareHigh = byShare.exactly ?? byShare.least;
  const below = shareLow !== undefined && compare(shareLow, exact(SHARE_LEAST)) < 0;
  const above = shareHigh !== undefined && compare(shareHigh, exact(SHARE_MOST)) > 0;
  const shareText = below
    ? "Protein brings less than 10 % of energy, below the range set for adults (10 to 35 %)."
    : "Protein brings more than 35 % of energy, above the range set for adults (10 to 35 %).";
  return [
    ...(low && compare(low, exact(PROTEIN_LEAST)) < 0 ? [caution("protein-low")] : []),
    ...(high && compare(high, exact(PROTEIN_MOST)) > 0 ? [caution("protein-high")] : []),
    ...(below || above ? [caution("protein-share", { text: shareText })] : []),
  ];
}

/** Grams of protein that would bring all of some energy. */
function perGram(energy: Fraction): Fraction {
  return over(energy, exact(PROTEIN_KCAL));
}

function scaled(band: Band, by: Fraction): Band {
  return {
    ...(band.exactly && { exactly: times(band.exactly, by) }),
    ...(band.least && { least: times(band.least, by) }),
    ...(band.most && { most: times(band.most, by) }),
  };
}
