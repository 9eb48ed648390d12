import { acts, behindFood, countUnits, manners, meats, preparations, stateWords } from "../data/words.ts";

/** A food's words, taken apart from what is said of its state and what is done to it. */
export interface FoodPhrase {
  readonly food: string;
  readonly state: readonly string[];
  readonly preparation: readonly string[];
  /** The piece that stands behind the food: garlic cloves. */
  readonly piece?: string;
}

/** Words of a phrase, without marks around them. */
export function wordsOf(phrase: string): string[] {
  return phrase
    .split(/\s+/)
    .map((word) => word.replace(/^[^\p{L}\d]+|[^\p{L}\d%]+$/gu, ""))
    .filter((word) => word !== "");
}

/** Whether a phrase says no more than what is done to a food. */
export function isPreparation(phrase: string): boolean {
  const words = phrase
    .toLowerCase()
    .split(/[\s,/]+/)
    .filter((word) => word !== "");
  return (
    words.length > 0 &&
    words.every((word) => preparations.has(word) || /^\d|^(?:cm|mm|inch|inches)$/.test(word)) &&
    words.some(
      (word) =>
        acts.has(word) ||
        /^(?:thin|thick|chunks|cubes|strips|slices|rings|wedges|rounds|quarters|paste|mince)$/.test(word),
    )
  );
}

/** Whether a phrase says no more than the state that a food is in. */
export function isState(phrase: string): boolean {
  const words = wordsOf(phrase.toLowerCase());
  return words.length > 0 && words.every((word) => stateWords.has(word));
}

/** Several preparations in one phrase: `peeled and chopped` is two. */
export function preparationsIn(phrase: string): string[] {
  return phrase
    .toLowerCase()
    .split(/\s*(?:,|\/|\band\b|\bor\b|\bthen\b|&)\s*/)
    .map((each) => wordsOf(each).join(" "))
    .filter((each) => each !== "");
}

/** Takes a food's words apart. */
export function foodPhrase(phrase: string, isCounted: boolean): FoodPhrase {
  const given = phrase.replace(/ & /g, " and ");
  const words = wordsOf(
    given.replace(/^\s*(?:of|of the|the|a|an|some|extra(?! virgin))\s+(?:the\s+)?/i, "").toLowerCase(),
  );
  const state: string[] = [];
  const preparation: string[] = [];
  let before: string[] = [];
  // From the front: states and preparations, until the name begins.
  while (words.length > 1) {
    const [word = "", next = ""] = words;
    if (word === "and" && (state.length > 0 || preparation.length > 0 || before.length > 0)) words.shift();
    else if (
      manners.has(word) &&
      words.length > 2 &&
      (acts.has(next) || stateWords.has(next) || next === "ground")
    )
      before.push(words.shift() ?? "");
    else if (isNameOf(word, words)) break;
    else if (stateWords.has(word) || (word === "ground" && before.length === 0))
      state.push(words.shift() ?? "");
    else if (acts.has(word)) {
      preparation.push([...before, words.shift() ?? ""].join(" "));
      before = [];
    } else break;
  }
  words.unshift(...before);
  // From behind: what is done to it.
  const tail: string[] = [];
  while (words.length > 1 && acts.has(words.at(-1) ?? "")) {
    tail.unshift(words.pop() ?? "");
    while (words.length > 1 && (manners.has(words.at(-1) ?? "") || words.at(-1) === "and"))
      tail.unshift(words.pop() ?? "");
  }
  if (tail.length > 0) preparation.push(...preparationsIn(tail.join(" ")));
  while (words.length > 1 && stateWords.has(words.at(-1) ?? "") && !NAME_ENDS.has(words.at(-1) ?? ""))
    state.push(words.pop() ?? "");
  const [one = "", of] = words;
  const counted = isCounted && of === "of" ? countUnits.get(one) : undefined;
  if (counted !== undefined && words.length > 2)
    return { food: words.slice(2).join(" "), state, preparation, piece: counted };
  const last = words.at(-1) ?? "";
  const piece = countUnits.get(last);
  if (isCounted && piece !== undefined && behindFood.has(piece) && words.length > 1) {
    words.pop();
    return { food: words.join(" "), state, preparation, piece };
  }
  return { food: words.join(" "), state, preparation };
}

/** States that a name may end with. */
const NAME_ENDS: ReadonlySet<string> = new Set(["whole", "lean", "live", "sweetened"]);

/** Whether a word that might be a state or a preparation makes the food's name here. */
function isNameOf(word: string, words: readonly string[]): boolean {
  const [, next = ""] = words;
  const rest = words.slice(1);
  if (word === "ground" || word === "minced") return rest.some((each) => meats.has(each));
  // Breads, milks and creams that are called so.
  if (word === "whole") return /^(?:wheat|grain|meal|spice|wholemeal)/.test(next);
  if (word === "dried" || word === "dry") return false;
  if (word === "sour" || word === "baked" || word === "refried") return true;
  if (word === "melted" || word === "softened") return false;
  if (word === "condensed" || word === "evaporated" || word === "whipped" || word === "clarified")
    return true;
  if (word === "crushed" || word === "broken") return false;
  if (word === "split" || word === "cracked" || word === "rolled" || word === "puffed") return true;
  if (word === "sweetened" || word === "unsweetened") return /^(?:condensed)$/.test(next);
  return word === "hard-boiled" || word === "smoked" || word === "cured";
}
