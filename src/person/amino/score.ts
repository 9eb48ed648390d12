import { checkFields } from "../../document/fields.ts";
import { componentIds } from "../../food/components.ts";
import { fault, quote, within } from "../../number/error.ts";
import {
  compare,
  exact,
  type Fraction,
  fraction,
  ONE,
  over,
  sum,
  times,
  type Value,
} from "../../number/fraction.ts";
import { fao1991Preschool } from "./fao1991.ts";
import { fao2013Child, fao2013Infant, fao2013Older } from "./fao2013.ts";
import { iom2002 } from "./iom2002.ts";
import { type AminoName, type AminoPattern, aminoAcids, type PatternId } from "./pattern.ts";
import { who2007Adult, who2007Requirement } from "./who2007.ts";

/** Every scoring pattern, by id. */
export const aminoPatterns: { readonly [P in PatternId]: AminoPattern } = {
  "who-2007-adult": who2007Adult,
  "fao-2013-infant": fao2013Infant,
  "fao-2013-child": fao2013Child,
  "fao-2013-older": fao2013Older,
  "iom-2002": iom2002,
  "fao-1991-preschool": fao1991Preschool,
};

/** Grams of protein and of each amino acid in what is eaten; what is absent is unknown. */
export type ProteinAmounts = { readonly protein: Value } & {
  readonly [C in (typeof aminoAcids)[AminoName][number]]?: Value;
};

export interface AminoScore {
  readonly pattern: PatternId;
  /** The lowest ratio, times the digestibility: 1 is enough. Not cut off at 1. */
  readonly score: Fraction;
  readonly limiting: AminoName;
  /** Each amino acid: mg in 1 g of protein, and over the pattern. */
  readonly ratios: readonly {
    readonly of: AminoName;
    readonly mgPerGram: Fraction;
    readonly ratio: Fraction;
  }[];
  /** Amino acids that the amounts say nothing of: the score is then at most what it says. */
  readonly unknown: readonly AminoName[];
  readonly source: string;
}

/**
 * The amino acid score of a protein or a mixture: of each indispensable amino acid, mg in 1 g of
 * protein over that of the pattern; the lowest is the score and its amino acid the limiting one. A
 * mixture is scored after its amino acids are summed, never by averaging scores.
 *
 * `digestibility` (0 to 1) is only what the food carries; it multiplies the score, as the protein
 * digestibility-corrected score does.
 *
 * Throws `food-malformed` for no protein, no amino acid or an unknown pattern, and the number codes.
 *
 * @example
 * ```ts
 * aminoScore({ protein: 1, lysine: 0.026 }, "iom-2002").score.toFixed(2); // => 0.51
 * ```
 */
export function aminoScore(
  amounts: ProteinAmounts,
  pattern: PatternId = "fao-2013-older",
  how: { readonly digestibility?: Value } = {},
): AminoScore {
  if (typeof pattern !== "string" || !Object.hasOwn(aminoPatterns, pattern)) {
    const ids = Object.keys(aminoPatterns).join(", ");
    throw fault("food-malformed", `${quote(pattern)} is not a pattern`, `choose one of ${ids}`, ["pattern"]);
  }
  checkAmounts(amounts);
  checkFields(how, ["digestibility"], "food-malformed");
  const { mgPerGram, source } = aminoPatterns[pattern];
  const protein = read(amounts, "protein");
  if (!protein || protein.n <= 0n) {
    throw fault("food-malformed", "no protein to score", "give grams of protein above 0", ["protein"]);
  }
  const digestibility =
    how.digestibility === undefined ? ONE : within(["digestibility"], () => exact(how.digestibility ?? 1));
  if (digestibility.n < 0n || compare(digestibility, ONE) > 0) {
    throw fault("food-malformed", "a digestibility outside 0 to 1", "write it as a share: 0.85", [
      "digestibility",
    ]);
  }
  const names = Object.keys(aminoAcids) as AminoName[];
  const known: { of: AminoName; mg: Fraction; ratio: Fraction }[] = [];
  const unknown: AminoName[] = [];
  for (const name of names) {
    const grams = gramsOf(amounts, name);
    if (!grams) {
      unknown.push(name);
      continue;
    }
    const mg = over(times(grams, fraction(1000n)), protein);
    known.push({ of: name, mg, ratio: over(mg, exact(mgPerGram[name])) });
  }
  const [first, ...rest] = known;
  if (!first) throw fault("food-malformed", "no amino acid to score", "give grams of the amino acids");
  const limiting = rest.reduce((low, each) => (compare(each.ratio, low.ratio) < 0 ? each : low), first);
  return {
    pattern,
    score: times(limiting.ratio, digestibility),
    limiting: limiting.of,
    ratios: known.map(({ of, mg, ratio }) => ({ of, mgPerGram: mg, ratio })),
    unknown,
    source,
  };
}

/**
 * How much of an adult's mean requirement of each amino acid some grams meet: mg over mg per kg of
 * body mass and day (WHO/FAO/UNU 2007).
 */
export function aminoRequirementMet(
  amounts: Omit<ProteinAmounts, "protein">,
  kilograms: Value,
): readonly { readonly of: AminoName; readonly share: Fraction }[] {
  checkAmounts(amounts);
  const mass = within(["kilograms"], () => exact(kilograms));
  if (mass.n <= 0n) throw fault("person-malformed", "no body mass", "give kilograms above 0", ["kilograms"]);
  return (Object.keys(aminoAcids) as AminoName[]).flatMap((of) => {
    const grams = gramsOf(amounts, of);
    if (!grams) return [];
    const need = times(exact(who2007Requirement.mgPerKg[of]), mass);
    return [{ of, share: over(times(grams, fraction(1000n)), need) }];
  });
}

/** What a food holds besides may stand there, but no name that is nothing: it would count as unknown. */
function checkAmounts(amounts: object): void {
  checkFields(amounts, componentIds, "food-malformed");
}

function gramsOf(amounts: object, name: AminoName): Fraction | undefined {
  const parts = aminoAcids[name].map((id) => read(amounts, id));
  const known = parts.filter((part) => part !== undefined);
  return known.length === parts.length ? sum(known) : undefined;
}

function read(amounts: object, id: string): Fraction | undefined {
  const value = Object.hasOwn(amounts, id) ? (amounts as Record<string, Value | undefined>)[id] : undefined;
  if (value === undefined) return undefined;
  const grams = within([id], () => exact(value));
  if (grams.n < 0n) throw fault("food-malformed", "below 0", "give 0 g or more", [id]);
  return grams;
}
