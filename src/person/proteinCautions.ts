import { fixedText } from "../number/digits.ts";
import { type Exact, exact, over, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { AimFacts, Band } from "./aim.ts";
import { countedMass, isUnder18 } from "./body.ts";
import { type Caution, caution } from "./caution.ts";
import { figuresFor } from "./intakes/figures.ts";
import type { ReferenceFigure } from "./intakes/resolve.ts";
import type { Authority } from "./intakes/table.ts";
import type { Facts } from "./person.ts";
import { rangesOf } from "./ranges/all.ts";
import type { EnergyRange } from "./ranges/range.ts";

/** ISSN 2017: upper end for people in training, g per kg of body mass. */
const TRAINED_MOST = "2.0";
/** From what age it is used: common practice, no source. The Institute of Medicine's last stage of childhood begins there. */
const TRAINED_FROM = "14";
/** General Atwater factor, kcal per g of protein. */
const KCAL = "4";

/** What a day's protein is judged by. */
export interface ProteinDay {
  readonly facts: Facts;
  readonly aimed: AimFacts;
  /** Energy of the day, kcal. */
  readonly target: Exact;
  /** Whose reference intakes; EFSA's unless told. */
  readonly authority?: Authority | undefined;
}

/** What a day's protein gives cause to say, by the figures for the person's age and state. */
export function proteinCautions({ facts, aimed, target, authority = "eu" }: ProteinDay): Caution[] {
  const macro = aimed.macros.protein;
  if (!macro) return [];
  const ofShare = over(target, exact(KCAL));
  const grams =
    macro.by === "share"
      ? scaled(macro.band, ofShare)
      : scaled(macro.band, macro.by === "perKg" ? facts.mass : (facts.lean ?? facts.mass));
  const share = scaled(grams, over(exact(1), ofShare));
  const reference = referenceOf(authority, facts) ?? referenceOf("eu", facts);
  return [
    ...low(grams.exactly ?? grams.most, reference, facts),
    ...high(grams.exactly ?? grams.least, reference, facts),
    ...shares(share, facts, authority),
  ];
}

/** What an authority has of protein for someone; one that has none leaves the word to EFSA. */
function referenceOf(authority: Authority, facts: Facts): ReferenceFigure | undefined {
  return figuresFor(authority, facts, { phytate: "600" }, "protein").references[0];
}

function low(grams: Exact | undefined, reference: ReferenceFigure | undefined, facts: Facts): Caution[] {
  if (!grams || !reference || compareRatios(grams, exact(reference.value)) >= 0) return [];
  const { value, kind, leavesOut, source, check } = reference;
  const own = exact(value);
  const without = leavesOut ? `, which leaves out what ${leavesOut} adds` : "";
  const perKg = `${fixedText(over(own, countedMass(facts)), 2)} g per ${ofMass(facts)}`;
  const text = `Less than ${fixedText(own, 1)} g of protein a day (${perKg}), the ${kind} for ${stageOf(facts)}${without}.`;
  return [caution("protein-low", { text, source, check })];
}

/** The mass that figures are reckoned by, as a reader needs it told. */
function ofMass(facts: Facts): string {
  const counted = countedMass(facts);
  if (compareRatios(counted, facts.mass) === 0) return "kg of body mass";
  return `kg of ${fixedText(counted, 0)} kg, the mass at a body mass index of 30, by which larger bodies are reckoned here`;
}

function stageOf(facts: Facts): string {
  const { pregnant, breastfeeding } = facts;
  const states = [
    ...(pregnant ? [`trimester ${pregnant} of pregnancy`] : []),
    ...(breastfeeding ? ["breastfeeding"] : []),
  ];
  return states.length > 0
    ? `this age and ${states.join(" and ")}`
    : isUnder18(facts)
      ? "this age"
      : "adults";
}

/**
 * Above the upper end for people in training, by the mass that figures per kilogram are of. Younger children
 * eat more than that for each kilogram in ordinary diets: of them the share of energy speaks.
 */
function high(grams: Exact | undefined, reference: ReferenceFigure | undefined, facts: Facts): Caution[] {
  if (!grams || compareRatios(facts.age, exact(TRAINED_FROM)) < 0) return [];
  const limit = times(exact(TRAINED_MOST), countedMass(facts));
  if (compareRatios(grams, limit) <= 0) return [];
  const isTwice =
    reference !== undefined && compareRatios(grams, times(exact(2), exact(reference.value))) > 0;
  const text = `More than ${TRAINED_MOST} g of protein a day per ${ofMass(facts)}: above the range given for people in training (1.4 to 2.0)${isTwice ? ", and above twice the reference intake" : ""}.`;
  return [caution("protein-high", { text })];
}

/** The authority's own range for protein, or else that of the Institute of Medicine. */
function shares(band: Band, facts: Facts, authority: Authority): Caution[] {
  const range = [...rangesOf(authority, facts), ...rangesOf("us", facts)].find(({ of }) => of === "protein");
  if (!range?.least || !range.most) return [];
  const percent = (end: string): Exact => over(exact(end), exact(100));
  const lowEnd = band.exactly ?? band.most;
  const highEnd = band.exactly ?? band.least;
  const isBelow = lowEnd !== undefined && compareRatios(lowEnd, percent(range.least)) < 0;
  const isAbove = highEnd !== undefined && compareRatios(highEnd, percent(range.most)) > 0;
  if (!isBelow && !isAbove) return [];
  const { source, check } = range;
  return [caution("protein-share", { text: shareText(range, isBelow), source, check })];
}

function shareText({ least, most, from, below }: EnergyRange, isBelow: boolean): string {
  const whom = below === undefined ? "adults" : `ages ${from} to ${below - 1}`;
  const where = isBelow ? `less than ${least} % of energy, below` : `more than ${most} % of energy, above`;
  return `Protein brings ${where} the range set for ${whom} (${least} to ${most} %).`;
}

function scaled(band: Band, by: Exact): Band {
  return {
    ...(band.exactly && { exactly: times(band.exactly, by) }),
    ...(band.least && { least: times(band.least, by) }),
    ...(band.most && { most: times(band.most, by) }),
  };
}
