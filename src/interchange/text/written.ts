import { sentenceWords, sizes, stepVerbs, tools } from "../data/words.ts";
import type { ReadAmount, ReadLine } from "../readLine.ts";
import { type AmountsFound, asPoured, readAmountBehind, readAmounts } from "./amounts.ts";
import { takeBrackets } from "./brackets.ts";
import { foodPhrase, isPreparation, isState, preparationsIn, wordsOf } from "./phrases.ts";
import { LONGEST_LINE, plainLine } from "./plainLine.ts";
import { readOne } from "./quantity.ts";

/** A line as it reads by itself, without a table of foods. */
export interface Written extends Omit<ReadLine, "candidates" | "line" | "unclear"> {
  /** Whether its amount is of several foods. */
  readonly several: boolean;
}

/** What is being gathered of one line. */
interface Gathered {
  amounts: ReadAmount[];
  readonly state: string[];
  readonly preparation: string[];
  readonly alternatives: string[];
  readonly notes: string[];
  optional: boolean;
  several: boolean;
  /** Foods named behind the first, where no amount tells them apart. */
  listed: readonly string[];
  /** Whether a bracket stands right behind the number: 4 (6 ounce) fillets. */
  readonly isBracketFirst: boolean;
}

/** Reads one line. */
export function readWritten(line: string): Written {
  const text = line.length > LONGEST_LINE ? "" : plainLine(line);
  const empty = {
    text: line,
    amounts: [],
    food: "",
    state: [],
    preparation: [],
    optional: false,
    alternatives: [],
    several: false,
  };
  if (text === "") return { ...empty, kind: "other", note: line.trim().slice(0, LONGEST_LINE) };
  if (isHeading(line, text)) return { ...empty, kind: "heading", note: text };
  const got: Gathered = {
    amounts: [],
    state: [],
    preparation: [],
    alternatives: [],
    notes: [],
    optional: false,
    several: false,
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
  const { amounts, state, preparation, alternatives, notes, optional, several } = got;
  return {
    text: line,
    kind: amounts.length > 0 ? "ingredient" : "no-amount",
    amounts,
    food,
    state,
    preparation,
    optional,
    alternatives,
    several,
    note: notes.join("; "),
  };
}

/** `For the sauce:`, `## Dough`, `To serve`. */
function isHeading(line: string, text: string): boolean {
  if (/^\s*#{1,6}\s/.test(line)) return true;
  if (/^\s*(?:\*\*|__)[^*_\d]+(?:\*\*|__)\s*$/.test(line)) return true;
  if (/^(?:ingredients|method|instructions|directions|preparation|steps|notes)$/i.test(text)) return true;
  if (/[:：]$/.test(text)) return !/\d/.test(text) || text.length < 40;
  return (
    /^(?:for|to) (?:the|serve|garnish|decorate|finish|assemble|make)\b/i.test(text) &&
    !/[\d,]/.test(text) &&
    wordsOf(text).length <= 6
  );
}

const OPTIONAL = /\(?\boptional(?:ly)?\b\)?:?/i;

function takeOptional(text: string, got: Gathered): string {
  if (!OPTIONAL.test(text)) return text;
  got.optional = true;
  return text
    .replace(OPTIONAL, " ")
    .replace(/\s+/g, " ")
    .replace(/^[\s,;:.-]+|[\s,;-]+$/g, "");
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

/** The food of what is left of a line, everything else gathered. */
function readFood(given: string, inside: readonly string[], got: Gathered): string {
  const [first = "", ...others] = segments(takeMore(takeVague(takeEach(given, got), got), got));
  let head = takeNotes(first, got);
  while (others.length > 0 && (isState(head) || isPreparation(head)))
    head = `${head} ${takeNotes(others.shift() ?? "", got)}`;
  const [name, ...instead] = alternativesIn(takeSize(head, got));
  const isCounted =
    got.amounts.some(({ unit }) => unit === null || sizes.has(unit)) ||
    inside.some((each) => /^\d/.test(each));
  const phrase = foodPhrase(name ?? "", isCounted);
  got.alternatives.push(...instead.map((each) => (isAdjective(each) ? `${each} ${phrase.food}` : each)));
  got.state.push(...phrase.state);
  got.preparation.push(...phrase.preparation);
  if (got.amounts.length === 0 || got.several)
    others.splice(0, others.length, ...listed(others, phrase.food, got));
  const isList = others.some((each) => /^(?:and\/)?or\b/i.test(each));
  for (const each of others) readSegment(each, isList, got);
  const isEachFirst = /^\d+$/.test(got.amounts[0]?.least ?? "") && got.isBracketFirst;
  for (const [i, each] of inside.entries()) readBracket(each, i === 0 && isEachFirst, got);
  if (phrase.piece !== undefined) takePiece(phrase.piece, got);
  const food = withoutMarks([phrase.food, ...got.listed].join(", "));
  if (food !== "") return food;
  // "2 cloves": what stands as a unit is the food itself.
  const [only] = got.amounts;
  if (only === undefined || only.unit === null || sizes.has(only.unit) || !FOODS_BY_PIECE.has(only.unit))
    return "";
  got.amounts = [{ ...only, unit: null }];
  return only.unit;
}

const FOODS_BY_PIECE: ReadonlySet<string> = new Set(["clove"]);

/** `1 tsp each salt and pepper`: so much of each. */
function takeEach(given: string, got: Gathered): string {
  const each = /^\s*each(?: of(?: the)?)?(?: (?:of )?)(?=\p{L})/iu.exec(given);
  if (!each) return given;
  got.several = true;
  got.notes.push("each");
  return given.slice(each[0].length);
}

/** `1 cup milk plus 2 tbsp` is more of it; `1 egg + 1 egg yolk` is another food. */
function takeMore(given: string, got: Gathered): string {
  const more = /^(.*?\p{L}.*?)\s+(?:\+|and|plus|&)\s+(?=\d|an? |one |two )(.*)$/iu.exec(given);
  const found = more && readAmounts(more[2] ?? "");
  if (!more || !found) return given;
  const [first, ...others] = got.amounts;
  const [added] = found.amounts;
  if (first && added && !first.plus && /^(?:(?:for|to)\b|$)/.test(found.rest)) {
    const { least, most, unit } = added;
    got.amounts = [{ ...first, plus: { least, most, unit } }, ...others];
    if (found.rest !== "") got.notes.push(found.rest.toLowerCase());
  } else {
    got.several = true;
    got.notes.push(`plus ${(more[2] ?? "").toLowerCase()}`);
  }
  return more[1] ?? "";
}

const VAGUE =
  /^(?:(?:just )?an? (?:(?:teensy|tiny|good|wee|very) )?(?:few|little|bit|lot|touch|hint|tad|amount)(?: bit)?|some|several|plenty|lots|enough|any|extra(?! virgin)|more|as much)(?: of)? (?:of )?(?=\p{L})/iu;

/** "a few", "a little", "some" is no amount, and is kept as it stands. */
function takeVague(given: string, got: Gathered): string {
  const text = given.replace(/^\s*(?:of (?:the |of )?|the )/i, "").replace(/^\d+ ?[-–] ?\d+ ?% /, (share) => {
    got.notes.push(share.trim());
    return "";
  });
  const vague = VAGUE.exec(text);
  if (!vague) return text;
  got.notes.push(vague[0].trim().toLowerCase().replace(/ of$/, ""));
  return text.slice(vague[0].length);
}

/** Parts between commas. */
function segments(text: string): string[] {
  return text
    .split(/\s*[,;]\s+|,(?=\p{L})|\s+[–—-]\s+/u)
    .map((each) => each.trim())
    .filter((each) => each !== "");
}

const NOTE =
  /\s*(?:\b(?:to taste|as needed|as required|as desired|if (?:needed|desired|you|necessary|available|possible|using|preferred)|for (?!instance)|enough to|to (?:serve|garnish|fry|cover|coat|grease|drizzle|sprinkle|finish|decorate|dust|top|feed|cook|deglaze)|per (?:person|portion|serving)|at room temp(?:erature)?|plus (?:more|extra)|of (?:your )?choice|of your|such as|like (?!new)|each\b|preferably|ideally|or (?:so|more|less|to taste|as needed)|depending|about \d|approx|e\.g|i\.e|etc|not )).*$/i;

/** Takes a note off the end of a phrase. */
function takeNotes(phrase: string, got: Gathered): string {
  const note = NOTE.exec(phrase);
  if (!note || note.index === 0) return phrase;
  got.notes.push(note[0].trim().toLowerCase());
  return phrase.slice(0, note.index).trim();
}

/** A size of what is weighed is a note: 150 g of large beans. */
function takeSize(phrase: string, got: Gathered): string {
  const size = /^(?:(?:very |extra )?(?:large|small|medium|big)(?:[ -]sized?)?) (?=\p{L})/iu.exec(phrase);
  if (!size || got.amounts.length === 0) return phrase;
  got.notes.push(size[0].trim().toLowerCase());
  return phrase.slice(size[0].length);
}

/** A name, and what may stand in its place: `butter or ghee`, `red or green lentils`. */
function alternativesIn(phrase: string): string[] {
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
  return [name, ...others];
}

const STOCKS = / (stock|broth|bouillon)(?: cubes?)?$/;
const STOCKED = /^(?:chicken|beef|vegetable|veggie|fish|pork|lamb|veal|mushroom)$/;
const OILED = /^(?:canola|vegetable|sunflower|olive|peanut|corn|sesame|rapeseed|coconut|grapeseed|avocado)$/;

const ADJECTIVES: ReadonlySet<string> = new Set(
  "red green yellow white black brown orange purple fresh dried frozen canned smoked sweet hot mild dark light raw roasted salted unsalted large small medium plain whole skim low fat full boneless skinless ground".split(
    " ",
  ),
);

function isAdjective(phrase: string): boolean {
  const words = wordsOf(phrase.toLowerCase());
  return words.length > 0 && words.every((word) => ADJECTIVES.has(word));
}

/** Foods in a row without an amount are one line of several foods; gives the parts that are something else. */
function listed(others: readonly string[], first: string, got: Gathered): readonly string[] {
  const isName = (each: string): boolean =>
    /^(?:(?:and|&) )?\p{L}+(?: \p{L}+)?(?: and \p{L}+)?$/u.test(each) &&
    !isState(each) &&
    !isPreparation(each) &&
    takesNoNote(each);
  if (first === "" || (others.length < 2 && !got.several) || others.length === 0 || !others.every(isName))
    return others;
  got.several = true;
  got.listed = others.map((each) => each.toLowerCase().replace(/^(?:and|&) /, ""));
  return [];
}

function takesNoNote(phrase: string): boolean {
  return !NOTE.test(phrase) && !/^(?:or|and\/or|other|etc|such|like) ?/i.test(phrase);
}

/** A part behind a comma. */
function readSegment(given: string, isList: boolean, got: Gathered): void {
  const segment = given
    .replace(/^(?:and|&) /i, "")
    .replace(/[.]+$/, "")
    .trim();
  const instead = /^(?:and\/or|or)\s+(?:even better |better |alternatively |preferably )?/i.exec(segment);
  const used =
    /^(.+) (?:can|may|could|will|would|works?)(?: also| as well)?(?: be used| do| work)?(?: instead| too| as well)?$/i.exec(
      segment,
    );
  const amounts = got.amounts.length === 0 ? readAmounts(segment) : undefined;
  if (amounts?.rest === "") got.amounts = [...amounts.amounts];
  else if (/^etc$/i.test(segment)) got.notes.push("etc.");
  else if (instead)
    got.alternatives.push(...alternativesIn(segment.slice(instead[0].length)).map(withoutUse));
  else if (used) got.alternatives.push(...(used[1] ?? "").split(/,\s*/).flatMap(alternativesIn));
  else if (isState(segment)) got.state.push(...wordsOf(segment.toLowerCase()));
  else if (isPreparation(segment)) got.preparation.push(...preparationsIn(segment));
  else if (isList && !/\d|\b(?:with|for|to|in|at)\b/.test(segment))
    got.alternatives.push(segment.toLowerCase());
  else {
    const kept = takeNotes(segment, got);
    if (kept !== segment && isPreparation(kept)) got.preparation.push(...preparationsIn(kept));
    else if (kept !== "") got.notes.push(kept.toLowerCase());
  }
}

function withoutUse(phrase: string): string {
  return phrase.replace(/ (?:can|may|could) (?:also )?(?:be used|work|do)$/, "");
}

/** What stands in brackets: an amount, a size, something else that would do, or a note. */
function readBracket(given: string, isFirst: boolean, got: Gathered): void {
  const noted = /^note: (.*)$/s.exec(given);
  if (noted) {
    got.notes.push(noted[1] ?? "");
    return;
  }
  const text = takeOptional(given, got);
  if (text === "") return;
  const found = readAmounts(text.replace(/^(?:or|=|i\.e\.|that is|total|from) (?=[\d~])/i, ""));
  const rest =
    found?.rest.replace(/^(?:each|apiece|in total|total|drained|net|weight|dry weight)$/i, "") ?? "";
  if (
    found &&
    (rest === "" || isPreparation(rest) || isState(rest)) &&
    takeAmounts(found, isFirst || /\b(?:each|apiece)$/i.test(text), got)
  ) {
    if (isPreparation(rest)) got.preparation.push(...preparationsIn(rest));
    else if (rest !== "") got.state.push(...wordsOf(rest.toLowerCase()));
    return;
  }
  const size = sizes.get(text.toLowerCase().replace(/(?:[ -]sized?)$/, ""));
  const [first] = got.amounts;
  if (size !== undefined && first && first.unit === null)
    got.amounts = [{ ...first, unit: size }, ...got.amounts.slice(1)];
  else if (/ (?:can|may|could) (?:also )?be used/i.test(text))
    readSegment(text.replace(/,?\s+or /gi, ", "), false, got);
  else for (const each of text.split(/\s*;\s+|,\s+(?=or\b)/)) readSegment(each, false, got);
}

/** Takes amounts from brackets; says whether they could be the line's. */
function takeAmounts(found: AmountsFound, isEach: boolean, got: Gathered): boolean {
  const [first, ...others] = got.amounts;
  const [amount] = found.amounts;
  if (!amount) return false;
  if (first === undefined) {
    got.amounts = [...found.amounts];
    return true;
  }
  const isLess = /^\d+\/|^0?\./.test(first.least);
  if (first.each === undefined && amount.unit !== null && (isEach || (isPack(first.unit) && !isLess))) {
    const { least, most, unit } = amount;
    got.amounts = [{ ...first, each: asPoured({ least, most, unit }, first.unit ?? "") }, ...others];
    return true;
  }
  if (amount.unit === null || sizes.has(amount.unit)) return false;
  got.amounts.push(...found.amounts);
  return true;
}

function isPack(unit: string | null): boolean {
  return (
    unit !== null &&
    /^(?:can|tin|jar|bottle|package|packet|pack|bag|box|carton|tub|container|sachet|envelope|tube|pouch|piece|block|bar|log|loaf)$/.test(
      unit,
    )
  );
}

/** A piece behind the food is the unit of a bare count. */
function takePiece(piece: string, got: Gathered): void {
  const at = got.amounts.findIndex(({ unit }) => unit === null || sizes.has(unit));
  if (at >= 0) got.amounts = got.amounts.map((each, i) => (i === at ? { ...each, unit: piece } : each));
}

function withoutMarks(food: string): string {
  return food
    .replace(/["“”*^†‡]/g, "")
    .replace(/\s+/g, " ")
    .trim();
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
