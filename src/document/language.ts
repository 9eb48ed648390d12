import type { Exact } from "../number/exact.ts";

/** A word with its number forms, by CLDR plural category; `other` is used where a form is missing. */
export type PluralForms = { readonly [category: string]: string } & { readonly other: string };

/**
 * How units are written in a language. A unit that the table leaves out is written by its canonical
 * name. Amounts written with a table are read back with the same table.
 */
export interface UnitWords {
  /**
   * By canonical name (`tbsp`, `cup`) or a food's own measure (`medium`): a symbol that never changes, or a word
   * with its forms. The figure stands before it, or where `{figure}` does (`大さじ{figure}`). Words of foods' own
   * measures, and figures within a word, are for readers: amounts are not read back from them.
   */
  readonly units: { readonly [unit: string]: string | PluralForms };
  /** Whose measure it is, set before the unit where it has to be said: `1 US cup`. */
  readonly sets?: { readonly [set: string]: string };
  /** First words of foods' own measures, with their plural: `{ can: "cans" }`. */
  readonly nouns?: { readonly [one: string]: string };
  /** Between the parts of a compound mass (`1 lb 4 oz`) and of any other amount (`1 cup + 2 tbsp`), spaces and all. */
  readonly joins?: { readonly mass: string; readonly other: string };
  /** The CLDR plural category of a figure; `Intl.PluralRules` has them for every language. */
  readonly category?: (figure: Exact) => string;
}

/**
 * How figures and our own phrases are written for a reader. Phrases are keyed by their British
 * English form; one that is missing shows in that form, so a language can be supplied in parts.
 */
export interface Language {
  /** BCP 47 tag: `en-GB`. */
  readonly tag: string;
  readonly decimal: "." | ",";
  /** Stands between thousands where grouping is asked for. */
  readonly group: string;
  /**
   * Ours to theirs; `{figure}` and the like are filled in. Names of components, groups, states,
   * allergens and units of figures belong here too, and so may names of foods.
   */
  readonly phrases: { readonly [british: string]: string };
  /**
   * Single words, or a few together, that the language writes otherwise wherever a phrase without a
   * form of its own holds them: `{ fibre: "fiber" }`. Keys in lower case; a capital stays a capital.
   */
  readonly spellings?: { readonly [british: string]: string };
  /** How the units of amounts are written; the English way where it is not said. */
  readonly words?: UnitWords;
  /** The scale of the temperatures in a method's steps; as written unless told. */
  readonly temperatures?: "celsius" | "fahrenheit" | "both";
  /** Whether times in a method's steps are told in hours and minutes or in minutes alone; as written unless told. */
  readonly times?: "hours" | "minutes";
}

export const britishEnglish: Language = { tag: "en-GB", decimal: ".", group: ",", phrases: {} };

/**
 * A phrase in a language, its `{gaps}` filled.
 *
 * @example
 * ```ts
 * say(britishEnglish, "at least {figure}", { figure: "4.1 mg" }); // => at least 4.1 mg
 * ```
 */
export function say(
  language: Language,
  phrase: string,
  gaps: { readonly [name: string]: string } = {},
): string {
  const own = Object.hasOwn(language.phrases, phrase) ? language.phrases[phrase] : undefined;
  return (own ?? respelt(language, phrase)).replace(/\{(\w+)\}/g, (gap, name: string) =>
    Object.hasOwn(gaps, name) ? (gaps[name] ?? gap) : gap,
  );
}

const SPELT: WeakMap<Language, RegExp> = /* @__PURE__ */ new WeakMap();

/** A phrase with its words as the language writes them, the longest first; gaps stay gaps. */
function respelt(language: Language, phrase: string): string {
  const { spellings } = language;
  if (spellings === undefined) return phrase;
  const found = SPELT.get(language) ?? wordsOf(spellings);
  SPELT.set(language, found);
  return phrase.replace(found, (word) => {
    const other = spellings[word.toLowerCase()] ?? word;
    return /^\p{Lu}/u.test(word) ? other.charAt(0).toUpperCase() + other.slice(1) : other;
  });
}

function wordsOf(spellings: NonNullable<Language["spellings"]>): RegExp {
  const words = Object.keys(spellings)
    .sort((a, b) => b.length - a.length)
    .map((word) => word.replace(/[\\^$.*+?()[\]{}|/-]/g, "\\$&"));
  // No word is a pattern that matches nothing.
  return new RegExp(`(?<![\\p{L}\\p{M}{])(?:${words.join("|") || "(?!)"})(?![\\p{L}\\p{M}}])`, "giu");
}
