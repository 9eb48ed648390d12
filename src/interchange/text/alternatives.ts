import { heads } from "../data/words.ts";
import { readAmounts } from "./amounts.ts";
import { wordsOf } from "./phrases.ts";

/** A name, and what may stand in its place: `butter or ghee`, `red or green lentils`. */
export function alternativesIn(phrase: string): string[] {
  const parts = phrase
    .toLowerCase()
    .split(/\s+(?:and\/or|or)\s+(?!so\b)|(?<=\p{L}{2})\s?\/\s?(?=\p{L}{2})/iu)
    .map((each) => each.trim());
  const [name = "", ...others] = parts.filter((each) => each !== "");
  const [second] = others;
  if (second === undefined || readAmounts(second)) return [name, ...others];
  const stock = STOCKS.exec(second);
  if (stock && STOCKED.test(name)) return [`${name} ${stock[1]}`, ...others];
  const oil = / oil$/.test(second) && OILED.test(name);
  if (oil) return [`${name} oil`, ...others];
  // "red or green lentils": the noun stands behind the second alone.
  const nouns = wordsOf(second);
  if (isAdjective(name) && nouns.length > 1) return [`${name} ${nouns.slice(1).join(" ")}`, ...others];
  const head = nouns.at(-1) ?? "";
  if (nouns.length > 1 && heads.get(head)?.has(name)) return [`${name} ${head}`, ...others];
  // "chicken breast or thigh": the animal stands before the first alone.
  const before = wordsOf(name);
  const cut = before.pop() ?? "";
  if (CUTS.test(cut) && before.length > 0 && CUTS.test(second))
    return [name, ...others.map((each) => (CUTS.test(each) ? `${before.at(-1)} ${each}` : each))];
  return [name, ...others];
}

const CUTS = /^(?:breasts?|thighs?|legs?|wings?|drumsticks?|shoulder|loin|belly|shank|cheeks?)$/;

/** What may stand behind a food instead of before it: `red or green` of lentils. */
export function isChoice(phrase: string): boolean {
  const parts = phrase.split(/\s+(?:and\/or|or)\s+/i);
  return parts.length > 1 && parts.every(isAdjective);
}

const STOCKS = / (stock|broth|bouillon)(?: cubes?)?$/;

const STOCKED = /^(?:chicken|beef|vegetable|veggie|fish|pork|lamb|veal|mushroom)$/;

const OILED = /^(?:canola|vegetable|sunflower|olive|peanut|corn|sesame|rapeseed|coconut|grapeseed|avocado)$/;

const ADJECTIVES: ReadonlySet<string> = new Set(
  "red green yellow white black brown orange purple fresh dried frozen canned smoked sweet hot mild dark light raw roasted salted unsalted large small medium plain whole skim low fat full boneless skinless ground".split(
    " ",
  ),
);

export function isAdjective(phrase: string): boolean {
  const words = wordsOf(phrase.toLowerCase());
  return words.length > 0 && words.every((word) => ADJECTIVES.has(word));
}
