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
  /** Ours to theirs; `{figure}` and the like are filled in. Units and component names belong here too. */
  readonly phrases: { readonly [british: string]: string };
}

export const britishEnglish: Language = { tag: "en-GB", decimal: ".", group: ",", phrases: {} };

export const americanEnglish: Language = {
  tag: "en-US",
  decimal: ".",
  group: ",",
  phrases: {
    fibre: "fiber",
    Fibre: "Fiber",
    litre: "liter",
    litres: "liters",
    millilitre: "milliliter",
    millilitres: "milliliters",
  },
};

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
  return (own ?? phrase).replace(/\{(\w+)\}/g, (gap, name: string) =>
    Object.hasOwn(gaps, name) ? (gaps[name] ?? gap) : gap,
  );
}
