import { plainFractions } from "./clean.ts";

/** Where in a text one of a food's own measures was found. */
export interface OwnMatch {
  /** The measure's name, as the food writes it. */
  readonly name: string;
  /** How many characters of the text it took. */
  readonly length: number;
  /** How many words it took. */
  readonly words: number;
}

/** After a measure's name: the end, or the next part of a compound amount. */
const ENDS = /^(?: ?$| ?[+&,] ?[.\d]| (?:and |plus )?[.\d])/;

/**
 * The longest of a food's own measures that the text begins with, and that nothing but another
 * amount follows. Case, commas, and singular or plural make no difference.
 */
export function matchOwn(text: string, own: readonly string[]): OwnMatch | undefined {
  const written = tokens(text, MOST_WORDS);
  const initial = written[0]?.word[0];
  let best: OwnMatch | undefined;
  for (const name of own) {
    // A plural begins as its singular does; most names are ruled out by that.
    const first = name[0]?.toLowerCase();
    if (first !== initial && /^[a-z0-9]/i.test(name)) continue;
    const wanted = tokens(plainFractions(name), MOST_WORDS);
    if (wanted.length === 0 || wanted.length <= (best?.words ?? 0)) continue;
    if (!wanted.every((token, i) => sameWord(token.word, written[i]?.word))) continue;
    const length = written[wanted.length - 1]?.end ?? 0;
    if (ENDS.test(text.slice(length))) best = { name, length, words: wanted.length };
  }
  return best;
}

/** Whether a written amount could mean either of two measures: case, commas and plural make no difference. */
export function sameMeasure(a: string, b: string): boolean {
  const [one, other] = [a, b].map((name) => tokens(plainFractions(name), MOST_WORDS));
  return (
    one?.length === other?.length && (one ?? []).every(({ word }, i) => sameWord(word, other?.[i]?.word))
  );
}

/** More words than the name of any measure has. */
const MOST_WORDS = 50;

interface Token {
  readonly word: string;
  readonly end: number;
}

function tokens(text: string, most: number): Token[] {
  const found: Token[] = [];
  for (const m of text.toLowerCase().matchAll(/[^\s,()]+|[()]/g)) {
    if (found.length === most) break;
    found.push({ word: m[0], end: m.index + m[0].length });
  }
  return found;
}

/** Whether two words are the same but for an English plural ending. */
function sameWord(a: string, b: string | undefined): boolean {
  return b !== undefined && (a === b || isPlural(a, b) || isPlural(b, a));
}

function isPlural(one: string, many: string): boolean {
  if (!many.endsWith("s") || many.length <= one.length) return false;
  return (
    many === `${one}s` ||
    many === `${one}es` ||
    (one.endsWith("y") && many === `${one.slice(0, -1)}ies`) ||
    (one.endsWith("f") && many === `${one.slice(0, -1)}ves`) ||
    (one.endsWith("fe") && many === `${one.slice(0, -2)}ves`)
  );
}
