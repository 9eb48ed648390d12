import { type Language, say } from "../document/language.ts";
import { singular } from "../food/find/plainWords.ts";

/** One piece of a size, or a part of one. */
const ONE_PIECE = /^(?:1|\d+\/\d+|[½⅓⅔¼¾⅛⅜⅝⅞]) (?:small|medium|large)$/;

/** Several pieces of a size. */
const PIECES = / (?:small|medium|large)$/;

/**
 * An amount before the food that it is of, as a cook says it: `1/2 medium banana`, `2 medium bananas`. Other
 * languages have it as their phrase has it.
 */
export function amountOfFood(amount: string, name: string, language: Language): string {
  const counted = language.tag.startsWith("en") && PIECES.test(amount);
  // Tables name most foods in the plural, and eggs in the singular.
  const said = name.replace(/\p{L}+(?=$|,)/u, (noun) =>
    ONE_PIECE.test(amount) ? singular(noun) : /[shy]$/.test(noun) ? noun : `${noun}s`,
  );
  return say(language, "{amount} {name}", { amount, name: counted ? said : name });
}
