import type { ReadAmount } from "../readLine.ts";

/** What is being gathered of one line. */
export interface Gathered {
  amounts: ReadAmount[];
  readonly state: string[];
  readonly preparation: string[];
  readonly alternatives: string[];
  readonly notes: string[];
  optional: boolean;
  /** Whether the amount is of each of several foods. */
  isEach: boolean;
  /** Another food with an amount of its own, as it is written. */
  more: string | undefined;
  /** Foods named behind the first, where no amount tells them apart. */
  listed: readonly string[];
  /** Whether a bracket stands right behind the number: 4 (6 ounce) fillets. */
  readonly isBracketFirst: boolean;
}

const OPTIONAL = /\(?\boptional(?:ly)?\b\)?:?/i;

export function takeOptional(text: string, got: Gathered): string {
  if (!OPTIONAL.test(text)) return text;
  got.optional = true;
  return text
    .replace(OPTIONAL, " ")
    .replace(/\s+/g, " ")
    .replace(/^[\s,;:.-]+|[\s,;-]+$/g, "");
}

export const NOTE: RegExp =
  /\s*(?:\b(?:to taste|as needed|as required|as desired|if (?:needed|desired|you|necessary|available|possible|using|preferred)|for (?!instance)|enough to|to (?:serve|garnish|fry|cover|coat|grease|drizzle|sprinkle|finish|decorate|dust|top|feed|cook|deglaze)|per (?:person|portion|serving)|at room temp(?:erature)?|plus (?:more|extra)|of (?:your )?choice|of your|such as|like (?!new)|each\b|preferably|ideally|or (?:so|more|less|to taste|as needed)|depending|about \d|approx|e\.g|i\.e|etc|not )).*$/i;

/** Takes a note off the end of a phrase. */
export function takeNotes(phrase: string, got: Gathered): string {
  const note = NOTE.exec(phrase);
  if (!note || note.index === 0) return phrase;
  got.notes.push(note[0].trim().toLowerCase());
  return phrase.slice(0, note.index).trim();
}
