import { sizes } from "../data/words.ts";
import { alternativesIn, isAdjective, isChoice } from "./alternatives.ts";
import { readAmounts } from "./amounts.ts";
import { readBracket, readSegment } from "./asides.ts";
import { type Gathered, NOTE, takeNotes } from "./gathered.ts";
import { foodPhrase, isPreparation, isState } from "./phrases.ts";

/** The food of what is left of a line, everything else gathered. */
export function readFood(given: string, inside: readonly string[], got: Gathered): string {
  const [first = "", ...others] = segments(takeMore(takeVague(takeEach(given, got), got), got));
  let head = takeNotes(first, got);
  while (others.length > 0 && (isState(head) || isPreparation(head)))
    head = `${head} ${takeNotes(others.shift() ?? "", got)}`;
  const choice = others.findIndex(isChoice);
  if (choice >= 0) head = `${others.splice(choice, 1)[0]} ${head}`;
  const [name, ...instead] = alternativesIn(takeSize(head, got));
  const isCounted =
    got.amounts.some(({ unit }) => unit === null || sizes.has(unit)) ||
    inside.some((each) => /^\d/.test(each));
  const phrase = foodPhrase(name ?? "", isCounted);
  got.alternatives.push(...instead.map((each) => (isAdjective(each) ? `${each} ${phrase.food}` : each)));
  got.state.push(...phrase.state);
  got.preparation.push(...phrase.preparation);
  if (got.amounts.length === 0 || got.isEach)
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
  got.isEach = true;
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
    got.more = more[2] ?? "";
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

/** A size of what is weighed is a note: 150 g of large beans. */
function takeSize(phrase: string, got: Gathered): string {
  const size = /^(?:(?:very |extra )?(?:large|small|medium|big)(?:[ -]sized?)?) (?=\p{L})/iu.exec(phrase);
  if (!size || got.amounts.length === 0) return phrase;
  got.notes.push(size[0].trim().toLowerCase());
  return phrase.slice(size[0].length);
}

/** Foods in a row without an amount are one line of several foods; gives the parts that are something else. */
function listed(others: readonly string[], first: string, got: Gathered): readonly string[] {
  const isName = (each: string): boolean =>
    /^(?:(?:and|&) )?\p{L}+(?: \p{L}+)?(?: and \p{L}+)?$/u.test(each) &&
    !each.split(" and ").some((part) => isState(part) || isPreparation(part) || isAdjective(part)) &&
    takesNoNote(each);
  const isList = others.length > 1 || got.isEach || / and /.test(others[0] ?? "");
  if (first === "" || !isList || others.length === 0 || !others.every(isName)) return others;
  got.listed = others.map((each) => each.toLowerCase().replace(/^(?:and|&) /, ""));
  return [];
}

function takesNoNote(phrase: string): boolean {
  return !NOTE.test(phrase) && !/^(?:or|and\/or|other|etc|such|like) ?/i.test(phrase);
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
