import { sentenceWords, sizes, stepVerbs, tools } from "../data/words.ts";
import type { ReadLine } from "../readLine.ts";
import { type AmountsFound, readAmountBehind, readAmounts } from "./amounts.ts";
import { takeBrackets } from "./brackets.ts";
import { readFood } from "./foodOf.ts";
import { type Gathered, takeOptional } from "./gathered.ts";
import { wordsOf } from "./phrases.ts";
import { LONGEST_LINE, plainLine } from "./plainLine.ts";
import { portionsInTitle, saysPortions } from "./portionsOf.ts";
import { readOne } from "./quantity.ts";

/** A line as it reads by itself, without a table of foods. */
export interface Written extends Omit<ReadLine, "candidates" | "line" | "unclear" | "apart"> {
  /** Each food of a line that names several; none where it names one. */
  readonly apart: readonly Written[];
}

/** A line that says nothing of a food. */
export function nothingOf(text: string): Omit<Written, "kind" | "note"> {
  return {
    text,
    amounts: [],
    food: "",
    state: [],
    preparation: [],
    optional: false,
    alternatives: [],
    apart: [],
  };
}

/** Reads one line. */
export function leadingAmount(line: string): Written {
  const text = line.length > LONGEST_LINE ? "" : plainLine(line);
  const empty = nothingOf(line);
  if (text === "") return { ...empty, kind: "other", note: line.trim().slice(0, LONGEST_LINE) };
  if (isHeading(line, text)) return { ...empty, kind: "heading", note: text };
  if (saysPortions(text)) return { ...empty, kind: "other", note: text };
  const got: Gathered = {
    amounts: [],
    state: [],
    preparation: [],
    alternatives: [],
    notes: [],
    optional: false,
    isEach: false,
    more: undefined,
    listed: [],
    isBracketFirst: /^\d+ ?[([]/.test(text),
  };
  const { text: outside, inside } = takeBrackets(text);
  const only = outside === "" && inside.length === 1 ? inside.splice(0) : [outside];
  const main = splitSentence(takeOptional(only[0] ?? "", got), got);
  const isSpoken = isSentence(main);
  const found = isSpoken ? undefined : (juiceOf(main) ?? readAmounts(main));
  const behind = found || isSpoken ? undefined : readAmountBehind(main);
  got.amounts = [...(found?.amounts ?? behind?.amounts ?? [])];
  const rest = found
    ? found.rest
    : behind
      ? `${behind.before}${/^[,;]/.test(behind.rest) ? "" : " "}${behind.rest}`
      : main;
  const food = readFood(rest, inside, got);
  if (isSpoken || food === "" || (isTool(food) && isToolish(food, got)))
    return { ...empty, kind: "other", note: text };
  const { amounts, state, preparation, alternatives, notes, optional } = got;
  const kind = amounts.length > 0 ? "ingredient" : "no-amount";
  const note = notes.join("; ");
  const read = { text: line, kind, amounts, food, state, preparation, optional, alternatives, note } as const;
  return { ...read, apart: foodsApart(read, got) };
}

/** Each food of a line that names several: of an amount for all of them together none knows its own. */
function foodsApart(read: Omit<Written, "apart">, { isEach, more }: Gathered): readonly Written[] {
  const names = namesIn(read.food);
  if (names.length === 1 && more === undefined) return [];
  const own = names.map((food): Written => {
    const amounts = names.length === 1 || isEach ? read.amounts : [];
    return { ...read, food, amounts, kind: amounts.length > 0 ? "ingredient" : "no-amount", apart: [] };
  });
  const [another] = more === undefined ? [] : [leadingAmount(more)];
  if (!another) return own;
  const others = another.apart.length > 0 ? another.apart : [another];
  return [...own, ...others.map((each) => ({ ...each, text: read.text }))];
}

/** The foods that a phrase names: `salt and pepper` is two, `half and half` is one. */
function namesIn(food: string): readonly string[] {
  const names = food.split(/,\s+|\s+(?:and|&|\+)\s+/).filter((each) => each !== "");
  return names.length > 1 && !/\bhalf and half\b/.test(food) ? names : [food];
}

/** `For the sauce:`, `## Dough`, `To serve`. */
function isHeading(line: string, text: string): boolean {
  if (/^\s*#{1,6}\s/.test(line)) return true;
  if (/^\s*(?:\*\*|__)[^*_\d]+(?:\*\*|__)\s*$/.test(line)) return true;
  if (/^(?:ingredients|method|instructions|directions|preparation|steps|notes)$/i.test(text)) return true;
  if (/[:：]$/.test(text)) return !/\d/.test(text) || text.length < 40;
  if (portionsInTitle(text) !== undefined) return true;
  return (
    /^(?:for|to) (?:the|serve|garnish|decorate|finish|assemble|make)\b/i.test(text) &&
    !/[\d,]/.test(text) &&
    wordsOf(text).length <= 6
  );
}

/** A sentence after the first is a note. */
function splitSentence(text: string, got: Gathered): string {
  const end =
    /(?<!\b(?:oz|lb|lbs|tsp|tbsp|tbs|approx|ca|pkg|fl|pt|qt|c|no|dr|gr|kg|ml|g))[.!?;] +(?=\p{L})/iu.exec(
      text,
    );
  if (!end) return text.replace(/[.;!,]+$/, "");
  got.notes.push(
    text
      .slice(end.index + end[0].length)
      .replace(/[.!]+$/, "")
      .toLowerCase(),
  );
  return text.slice(0, end.index);
}

/** Whether a line speaks of the recipe, and lists no food. */
function isSentence(text: string): boolean {
  const words = wordsOf(text.toLowerCase());
  const begins = readOne(text) !== undefined;
  const spoken = words.filter((word) => sentenceWords.has(word)).length;
  if (
    stepVerbs.has(words[0] ?? "") &&
    words.length >= 4 &&
    /\b(?:the|them|it|until|minutes?|oven|hours?)\b/i.test(text)
  )
    return true;
  if (begins && !/^(?:a|an|one)\b/i.test(text)) return words.length > 40;
  return (spoken >= 2 && words.length >= 5) || (spoken >= 1 && words.length >= 9) || words.length > 25;
}

/** `juice of 1 lemon`, `zest of half an orange`: one fruit of it. */
function juiceOf(text: string): AmountsFound | undefined {
  const match =
    /^(?:the )?(?:freshly squeezed |fresh |grated )?((?:juice|zest|rind|peel)(?: and (?:juice|zest|rind|peel))?)(?: of| from)? (?=\S)/i.exec(
      text,
    );
  if (!match) return undefined;
  const found = readAmounts(text.slice(match[0].length));
  const [amount] = found?.amounts ?? [];
  const fruit = /^(?:large |small |medium )?(\p{L}+)(.*)$/u.exec(found?.rest ?? "");
  if (!found || !amount || !fruit) return undefined;
  const one = (fruit[1] ?? "")
    .toLowerCase()
    .replace(/ies$/, "y")
    .replace(/([^s])s$/, "$1");
  const part = (match[1] ?? "").toLowerCase();
  return {
    amounts: [{ ...amount, unit: one }],
    rest: `${one} ${part.split(" ")[0]}${fruit[2]}`,
  };
}

function isTool(food: string): boolean {
  return tools.has(wordsOf(food).at(-1) ?? "");
}

/** Whether a thing named as a tool is one: chips and sticks may be eaten. */
function isToolish(food: string, { amounts }: Gathered): boolean {
  const words = wordsOf(food);
  return (
    (!amounts.some(({ unit }) => unit !== null && !sizes.has(unit)) &&
      !/^(?:chips|stick|sticks|rack|jars|cups)$/.test(words.at(-1) ?? "")) ||
    /wood|wooden|bamboo/.test(food)
  );
}
