import { word } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import { fields, list, once, optional, type Schema } from "../../document/schema.ts";
import { showFigure } from "../../measure/showFigure.ts";
import { together } from "../../number/error.ts";
import { type Exact, exact, fraction, isZero, least, over, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { Result } from "../../number/result.ts";
import { addUp } from "../../sheet/energy.ts";
import type { Bound, Tally } from "../../sheet/tally.ts";
import { countedMass, isUnder18 } from "../body.ts";
import type { Facts, Person } from "../person.ts";
import { type Eaten, type EatenPortion, readEaten } from "../portion/eaten.ts";
import { personSchema } from "../readPerson.ts";
import {
  type Digestibility,
  digestedShare,
  digestibility,
  type ReadDigestibility,
  toldShare,
} from "./digestibility.ts";
import { type AminoName, aminoAcids, type PatternId } from "./pattern.ts";
import { aminoPatterns } from "./score.ts";
import { who2007Requirement } from "./who2007.ts";

/** One amino acid of a portion's protein, or the two that patterns count as one. */
export interface AminoContent {
  readonly of: AminoName;
  /** Grams in the portion. */
  readonly amount: Tally;
  /** mg in 1 g of the portion's protein. */
  readonly mgPerGram: Tally | undefined;
  /** Of an adult's mean requirement for a day, by body mass; nothing without a person. */
  readonly requirement: { readonly share: Exact; readonly bound: Bound } | undefined;
}

/** How a portion's protein scores by one pattern: the lowest ratio of its amino acids to the pattern's. */
export interface PortionScore {
  readonly pattern: PatternId;
  readonly name: string;
  /** The score lies between these; they are one where all is known. Not cut off at 1. */
  readonly least: Exact;
  /** Nothing where no amino acid has a limit. */
  readonly most: Exact | undefined;
  /** The amino acid with the lowest ratio of those that are known. */
  readonly limiting: AminoName | undefined;
  /** Whether silent lines leave no doubt that it is the lowest. */
  readonly proven: boolean;
  /** Both ends times the digestibility, where one was given for all of the protein. */
  readonly corrected: { readonly least: Exact; readonly most: Exact | undefined } | undefined;
  readonly source: string;
}

/** The quality of a portion's protein. */
export class ProteinQuality extends Result {
  readonly is = "steelyard/protein-quality@1";
  readonly protein: Tally;
  readonly aminoAcids: readonly AminoContent[];
  readonly scores: readonly PortionScore[];
  /** Of the protein, as a share: what comes with lines that tell all their amino acids. */
  readonly told: Exact;
  /** Of an adult's safe level of protein for a day (0.83 g per kg); nothing without a person. */
  readonly safeLevel: { readonly share: Exact; readonly bound: Bound } | undefined;
  /** Why no requirement is told for a person, where none is. */
  readonly note: string | undefined;
  readonly name: string;

  /** @internal Use {@link proteinQuality}. */
  constructor(name: string, made: Omit<ProteinQuality, "name" | "is" | "cloned" | "toString" | "toJSON">) {
    super();
    this.name = name;
    this.protein = made.protein;
    this.aminoAcids = made.aminoAcids;
    this.scores = made.scores;
    this.told = made.told;
    this.safeLevel = made.safeLevel;
    this.note = made.note;
  }

  override toString(): string {
    return `${this.name}: the quality of ${showFigure(this.protein.value, { unit: "g" })} of protein`;
  }
}

/** Options of {@link proteinQuality}. */
export interface ProteinQualityOptions {
  /** Whose requirement the portion is held against: an adult's, neither pregnant nor breastfeeding. */
  readonly person?: Person;
  /** Scoring patterns; WHO/FAO/UNU 2007 for adults and FAO 2013 for above 3 years, unless told. */
  readonly patterns?: readonly PatternId[];
  /**
   * Share of the protein that is digested, 0 to 1: one figure for the whole, or one for each line by
   * its key (`meal/line` of several meals). It is never presumed.
   */
  readonly digestibility?: Digestibility;
}

/**
 * The amino acid score of a portion's protein: amino acids of all lines are summed first, then each is
 * held against the pattern, per gram of protein; the lowest ratio is the score, its amino acid the
 * limiting one. Lines that are silent leave the score open, between `least` and `most`.
 *
 * Method: WHO/FAO/UNU 2007, WHO Technical Report Series 935, section 6; FAO 2013, Food and Nutrition
 * Paper 92, which scores digestible amino acids: without a digestibility for each, the figure here is
 * higher than its own would be. Requirements are means for adults in mg per kg of body mass and day.
 *
 * Throws `comparison-malformed`, `person-malformed`, and the number codes.
 *
 * @example
 * ```ts
 * const rice = { key: "rice", food: "rice-white-long-boiled", amount: "200 g" };
 * const beans = { key: "lentils", food: "lentils-boiled", amount: "150 g" };
 * const alone = proteinQuality(sheet({ name: "Rice", portions: 1, lines: [rice] }, starterFoods));
 * const mixed = proteinQuality(sheet({ name: "Rice and lentils", portions: 1, lines: [rice, beans] }, starterFoods));
 * for (const { scores } of [alone, mixed]) console.log(scores[0].limiting, scores[0].least.toFixed(2));
 * ```
 *
 * ```text
 * lysine 0.80
 * sulphur amino acids 1.27
 * ```
 */
export function proteinQuality(eaten: Eaten, how: ProteinQualityOptions = {}): ProteinQuality {
  const { portion, asked } = together({
    portion: () => readEaten(eaten, "comparison-malformed"),
    asked: () => read(qualityHow(), how, "comparison-malformed"),
  });
  const { patterns = USUAL, person: facts, digestibility } = asked;
  const mass = facts && isAdultAlone(facts) ? countedMass(facts) : undefined;
  const protein = portion.brings("protein");
  const contents = (Object.keys(aminoAcids) as AminoName[]).map((of): AminoContent => {
    const amount = gramsOf(portion, of);
    const perGram = isZero(protein.value) ? undefined : amount.times(1000).over(protein);
    return {
      of,
      amount,
      mgPerGram: perGram?.bound === "unknown" ? undefined : perGram,
      requirement: mass && requirementOf(amount, of, mass),
    };
  });
  const told = toldShare(portion);
  const digested = digestedShare(portion, digestibility);
  return new ProteinQuality(portion.name, {
    protein,
    aminoAcids: contents,
    scores: patterns.map((pattern) => scoreBy(pattern, contents, digested)),
    told,
    safeLevel: mass && safeLevelOf(protein, mass),
    note: facts && !mass ? ADULTS_ALONE : undefined,
  });
}

const ADULTS_ALONE =
  "requirements of a day are of adults neither pregnant nor breastfeeding: none is told for this person";

function isAdultAlone(facts: Facts): boolean {
  return !isUnder18(facts) && !facts.pregnant && !facts.breastfeeding;
}

const USUAL: readonly PatternId[] = ["who-2007-adult", "fao-2013-older"];

interface ReadOptions {
  readonly patterns?: readonly PatternId[];
  readonly person?: Facts;
  readonly digestibility?: ReadDigestibility;
}

const qualityHow: () => Schema<ReadOptions> = /* @__PURE__ */ once(() =>
  fields<ReadOptions>({
    patterns: optional(list(word(Object.keys(aminoPatterns) as PatternId[]))),
    person: optional(personSchema()),
    digestibility: optional(digestibility()),
  }),
);

/** Two that count as one are known when both are. */
function gramsOf(portion: EatenPortion, of: AminoName): Tally {
  const parts = aminoAcids[of].map((id) => portion.brings(id));
  const [only, ...others] = parts;
  return only && others.length === 0 ? only : addUp("g", parts);
}

function requirementOf(amount: Tally, of: AminoName, mass: Exact): AminoContent["requirement"] {
  if (amount.bound === "unknown") return undefined;
  const need = times(exact(who2007Requirement.mgPerKg[of]), mass);
  const share = over(times(amount.value, fraction(1000n)), need);
  return { share, bound: amount.bound };
}

function safeLevelOf(protein: Tally, mass: Exact): ProteinQuality["safeLevel"] {
  if (protein.bound === "unknown") return undefined;
  const safe = times(exact(who2007Requirement.proteinPerKg.safe), mass);
  return { share: over(protein.value, safe), bound: protein.bound };
}

interface Ratio {
  readonly of: AminoName;
  readonly low: Exact;
  readonly high: Exact | undefined;
}

function scoreBy(
  pattern: PatternId,
  contents: readonly AminoContent[],
  digested: Exact | undefined,
): PortionScore {
  const { name, mgPerGram, source } = aminoPatterns[pattern];
  const ratios = contents.map(({ of, mgPerGram: content }): Ratio => {
    const ratio = content && over(content.value, exact(mgPerGram[of]));
    const isLow = content?.bound === "point" || content?.bound === "at-least";
    const isHigh = content?.bound === "point" || content?.bound === "at-most";
    return { of, low: ratio && isLow ? ratio : ZERO, high: ratio && isHigh ? ratio : undefined };
  });
  const known = contents.filter(({ mgPerGram: content }) => content !== undefined);
  const ratioOf = ({ of, mgPerGram: content }: AminoContent): Exact =>
    over(content?.value ?? ZERO, exact(mgPerGram[of]));
  const [first, ...rest] = known;
  const lowest =
    first && rest.reduce((low, each) => (compareRatios(ratioOf(each), ratioOf(low)) < 0 ? each : low), first);
  const limiting = ratios.find(({ of }) => of === lowest?.of);
  const others = ratios.filter((each) => each !== limiting);
  const exactLeast = ratios.map(({ low }) => low).reduce(least);
  const highs = ratios.flatMap(({ high }) => (high ? [high] : []));
  const exactMost = highs.length > 0 ? highs.reduce(least) : undefined;
  const limit = limiting?.high;
  return {
    pattern,
    name,
    least: exactLeast,
    most: exactMost,
    limiting: lowest?.of,
    proven: limit !== undefined && others.every(({ low }) => compareRatios(limit, low) <= 0),
    corrected: digested && {
      least: times(exactLeast, digested),
      most: exactMost && times(exactMost, digested),
    },
    source,
  };
}
