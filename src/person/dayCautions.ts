import { compare, exact, type Fraction, minus, over, times, ZERO } from "../number/fraction.ts";
import type { AimFacts, Band } from "./aim.ts";
import { type Caution, caution } from "./caution.ts";
import { macroEnergy, missesEnergy } from "./macroEnergy.ts";
import type { Facts } from "./person.ts";

/** NICE: very-low-energy diets are those of 800 kcal a day or less. */
const VERY_LOW = "800";
/** NICE: 0.5 to 1 kg a week at most. */
const FASTEST_LOSS = "1";
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
    ...(compare(minus(ZERO, kgPerWeek), exact(FASTEST_LOSS)) > 0 ? [caution("fast-loss")] : []),
    ...(isFastGain ? [caution("fast-gain")] : []),
    ...(compare(target, times(exact(SUSTAINED), resting)) > 0 ? [caution("energy-beyond-limit")] : []),
    ...(missesEnergy(macroEnergy(facts, aimed, target), target) ? [caution("macros-energy")] : []),
    ...proteinCautions(day),
  ];
}

function proteinCautions({ facts, aimed, target }: Day): Caution[] {
  const macro = aimed.macros.protein;
  if (!macro) return [];
  const perKg = over(perGram(target), facts.mass);
  const byMass: Band =
    macro.by === "perKg"
      ? macro.band
      : scaled(macro.band, macro.by === "share" ? perKg : over(facts.lean ?? facts.mass, facts.mass));
  const byShare: Band = macro.by === "share" ? macro.band : scaled(byMass, over({ n: 1n, d: 1n }, perKg));
  const low = byMass.exactly ?? byMass.most;
  const high = byMass.exactly ?? byMass.least;
  const shareLow = byShare.exactly ?? byShare.most;
  const shareHigh = byShare.exactly ?? byShare.least;
  const below = shareLow !== undefined && compare(shareLow, exact(SHARE_LEAST)) < 0;
  const above = shareHigh !== undefined && compare(shareHigh, exact(SHARE_MOST)) > 0;
  return [
    ...(low && compare(low, exact(PROTEIN_LEAST)) < 0 ? [caution("protein-low")] : []),
    ...(high && compare(high, exact(PROTEIN_MOST)) > 0 ? [caution("protein-high")] : []),
    ...(below || above ? [caution("protein-share")] : []),
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
