import { asWritten, number, word } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import { fields, once, optional, type Schema, type Shape } from "../../document/schema.ts";
import { type ComponentId, componentIds } from "../../food/components.ts";
import { fault, together } from "../../number/error.ts";
import {
  type Exact,
  exact,
  fraction,
  isZero,
  ONE,
  over,
  sum,
  times,
  type Value,
} from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
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
  readonly [C in ComponentId]?: Value;
};

export interface AminoScore {
  readonly pattern: PatternId;
  /** The lowest ratio, times the digestibility: 1 is enough. Not cut off at 1. */
  readonly score: Exact;
  readonly limiting: AminoName;
  /** Each amino acid: mg in 1 g of protein, and over the pattern. */
  readonly ratios: readonly {
    readonly of: AminoName;
    readonly mgPerGram: Exact;
    readonly ratio: Exact;
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
  const { id, eaten, asked } = together({
    id: () => read(word(Object.keys(aminoPatterns) as PatternId[]), pattern, "food-malformed", ["pattern"]),
    eaten: () => read(amountsSchema(), amounts, "food-malformed"),
    asked: () => read(scoreHow(), how, "food-malformed"),
  });
  const { mgPerGram, source } = aminoPatterns[id];
  const { protein } = eaten;
  if (!protein || isZero(protein)) {
    throw fault("food-malformed", "no protein to score", "give grams of protein above 0", ["protein"]);
  }
  const { digestibility = ONE } = asked;
  const names = Object.keys(aminoAcids) as AminoName[];
  const known: { of: AminoName; mg: Exact; ratio: Exact }[] = [];
  const unknown: AminoName[] = [];
  for (const name of names) {
    const grams = gramsOf(eaten, name);
    if (!grams) {
      unknown.push(name);
      continue;
    }
    const mg = over(times(grams, fraction(1000n)), protein);
    known.push({ of: name, mg, ratio: over(mg, exact(mgPerGram[name])) });
  }
  const [first, ...rest] = known;
  if (!first) throw fault("food-malformed", "no amino acid to score", "give grams of the amino acids");
  const limiting = rest.reduce((low, each) => (compareRatios(each.ratio, low.ratio) < 0 ? each : low), first);
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
): readonly { readonly of: AminoName; readonly share: Exact }[] {
  const { eaten, mass } = together({
    eaten: () => read(amountsSchema(), amounts, "food-malformed"),
    mass: () => read(number({ above: 0 }), kilograms, "person-malformed", ["kilograms"]),
  });
  return (Object.keys(aminoAcids) as AminoName[]).flatMap((of) => {
    const grams = gramsOf(eaten, of);
    if (!grams) return [];
    const need = times(exact(who2007Requirement.mgPerKg[of]), mass);
    return [{ of, share: over(times(grams, fraction(1000n)), need) }];
  });
}

const scoreHow: () => Schema<{ readonly digestibility?: Exact }> = /* @__PURE__ */ once(() =>
  fields<{ readonly digestibility?: Exact }>({ digestibility: optional(number({ from: 0, to: 1 })) }),
);

type ReadAmounts = { readonly [C in ComponentId]?: Exact };

/** What a food holds besides may stand there, but no name that is nothing: it would count as unknown. */
const amountsSchema: () => Schema<ReadAmounts> = /* @__PURE__ */ once(() => {
  const wanted = new Set<ComponentId>(["protein", ...Object.values(aminoAcids).flat()]);
  const grams = optional(number({ from: 0 }));
  const other = optional(asWritten<Exact>());
  const shape = componentIds.map((id) => [id, wanted.has(id) ? grams : other]);
  return fields<ReadAmounts>(Object.fromEntries(shape) as Shape<ReadAmounts>);
});

function gramsOf(amounts: ReadAmounts, name: AminoName): Exact | undefined {
  const parts = aminoAcids[name].map((id) => amounts[id]);
  const known = parts.filter((part) => part !== undefined);
  return known.length === parts.length ? sum(known) : undefined;
}
