import { components } from "../food/components.ts";
import { householdUnits } from "../measure/measureSet.ts";
import { fixedUnitIds } from "../measure/units.ts";
import { englishWords } from "../measure/words.ts";
import { NOTES } from "./data/phraseList.ts";

/** A phrase as `Language.phrases` has it for its key, with the names of its gaps. */
export interface Phrase {
  readonly phrase: string;
  /** What is filled in: `["figure"]` of `at least {figure}`. A translation may set gaps in another order. */
  readonly gaps: readonly string[];
}

/** All that a translator has to say in another language. */
export interface Phrases {
  /** What results, tables and pages say, cautions among it: keys of `Language.phrases`. */
  readonly notes: readonly Phrase[];
  /** Names of components: keys of `Language.phrases`, too. */
  readonly components: readonly string[];
  /** Canonical names of the units of amounts: keys of `Language.words.units`. */
  readonly units: readonly string[];
  /** Whose spoon or cup it is: keys of `Language.words.sets`. */
  readonly measures: readonly string[];
  /** First words of foods' own measures: keys of `Language.words.nouns`. */
  readonly nouns: readonly string[];
}

/**
 * Lists all that results and pages can say, for a translator: phrases with their gaps, names of components, units.
 * Names of foods are those of the food table in use (`kitchenName`, else `name`) and belong among the phrases, too.
 *
 * @example
 * ```ts
 * const { notes, components, units } = phrases();
 * console.log(notes.find(({ phrase }) => phrase.startsWith("at least {f"))); // => { phrase: 'at least {figure}', gaps: [ 'figure' ] }
 * console.log(components.slice(0, 3), units.includes("tbsp")); // => [ 'energy', 'protein', 'fat' ] true
 * ```
 */
export function phrases(): Phrases {
  const { sets = {}, nouns = {} } = englishWords;
  return {
    notes: NOTES.split("\n").map((phrase) => ({ phrase, gaps: gapsOf(phrase) })),
    components: [...new Set(Object.values(components).map(({ name }) => name))],
    units: [...fixedUnitIds(), ...householdUnits],
    measures: Object.keys(sets),
    nouns: Object.keys(nouns),
  };
}

function gapsOf(phrase: string): readonly string[] {
  return [...new Set([...phrase.matchAll(/\{(\w+)\}/g)].map(([, gap = ""]) => gap))];
}
