import { sizes } from "../data/words.ts";
import { alternativesIn } from "./alternatives.ts";
import { type AmountsFound, asPoured, readAmounts } from "./amounts.ts";
import { type Gathered, takeNotes, takeOptional } from "./gathered.ts";
import { isPreparation, isState, preparationsIn, wordsOf } from "./phrases.ts";

/** A part behind a comma. */
export function readSegment(given: string, isList: boolean, got: Gathered): void {
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
export function readBracket(given: string, isFirst: boolean, got: Gathered): void {
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
