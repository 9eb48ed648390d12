import { foodSpellings } from "./data/spellings.ts";

/** Plurals that no rule makes, and words that end in `s` without being one. */
const irregular: { readonly [word: string]: string } = {
  leaves: "leaf",
  loaves: "loaf",
  halves: "half",
  calves: "calf",
  geese: "goose",
  chillies: "chilli",
  chilies: "chili",
  cookies: "cookie",
  brownies: "brownie",
  pies: "pie",
  sundaes: "sundae",
  molasses: "molasses",
  hummus: "hummus",
  anis: "anise",
  gas: "gas",
};

/** Longest text that is looked through for words. */
const LONGEST = 1000;

/**
 * The words of a text, plain: lower case, no accents, singular, one spelling for both Englishes. A
 * figure is a word too.
 */
export function plainWords(text: string): string[] {
  const plain = text
    .slice(0, LONGEST)
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/['’]s?\b/g, "");
  return (plain.match(/\p{L}+|\d+(?:\.\d+)?/gu) ?? []).map(plainWord);
}

/** One word in its plain form. */
function plainWord(word: string): string {
  const one = singular(word);
  return foodSpellings.get(one) ?? one;
}

/** The singular of an English noun, near enough: the same rule reads both a food's name and what is looked for. */
export function singular(word: string): string {
  const known = irregular[word];
  if (known !== undefined) return known;
  if (word.length < 4 || !word.endsWith("s")) return word;
  if (/(?:ss|us)$/.test(word)) return word;
  if (/ies$/.test(word)) return `${word.slice(0, -3)}y`;
  if (/(?:oes|sses|xes|zes|ches|shes)$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}
