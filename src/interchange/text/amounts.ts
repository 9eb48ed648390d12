import { liquidPacks, loose, sized } from "../data/words.ts";
import type { ReadAmount, StatedAmount } from "../readLine.ts";
import { isGreaterNumber, readOne, readQuantity, type SpelledNumber } from "./quantity.ts";
import { leadingUnit, type UnitFound } from "./unit.ts";

/** Amounts at the beginning of a text, and what follows them. */
export interface AmountsFound {
  readonly amounts: readonly ReadAmount[];
  readonly rest: string;
}

interface AmountFound {
  readonly amount: ReadAmount;
  readonly kind: UnitFound["kind"] | undefined;
  readonly rest: string;
}

const ABOUT =
  /^ ?(?:about|around|approx(?:imately|\.)?|ca\.?|circa|roughly|nearly|almost|up to|at least|max\.?|~|≈|±) ?(?=[\d.~]|[a-z]+\b)/i;
const FROM = /^ ?from (?=[\d.])/i;
const BETWEEN = /^ ?between (\S+(?: \d+\/\d+)?) and (?=[\d.])/i;
const VAGUE =
  /^an? (?:few|little|bit|lot|touch|hint|tad|teensy|tiny|couple)\b(?! of (?:tsp|tbsp|teaspoon|tablespoon|cup))/i;
const SAME = /^ ?(?:\/|\||=|\bor\b|,|;|–|—|-) ?/i;
const ADDED = /^ ?(?:\+|plus\b|and\b|&|,)? ?(?=[\d.]|an? |one |half )/i;
const UNTIL = /^ ?(?:-|–|—|to\b|or\b) ?/i;

/** Reads the amounts that a text begins with; none where it begins with no amount. */
export function readAmounts(text: string): AmountsFound | undefined {
  const first = readAmount(text.trim());
  if (!first) return undefined;
  const amounts = [first.amount];
  let { rest } = first;
  for (let next = another(rest, first); next; next = another(rest, first)) {
    amounts.push(next.amount);
    rest = next.rest;
    if (amounts.length > MOST_STATEMENTS) break;
  }
  return { amounts, rest: rest.replace(/^ (?:or so|approx\.?)(?= |$)/i, "").trim() };
}

const MOST_STATEMENTS = 5;

/** The same amount once more, in another unit. */
function another(rest: string, first: AmountFound): AmountFound | undefined {
  const mark = SAME.exec(rest);
  if (!mark) return undefined;
  const next = readAmount(rest.slice(mark[0].length));
  const isMeasured = next?.kind === "mass" || next?.kind === "volume";
  return next && isMeasured && next.amount.unit !== first.amount.unit ? next : undefined;
}

function readAmount(given: string): AmountFound | undefined {
  const about = ABOUT.exec(given);
  const isAbout = about !== null;
  const text = given
    .slice(about?.[0].length ?? 0)
    .replace(FROM, "")
    .replace(BETWEEN, "$1 to ");
  if (VAGUE.test(text)) return undefined;
  const quantity = withoutShape(readQuantity(text));
  if (!quantity) return bareUnit(text, isAbout);
  return packs(quantity, isAbout) ?? measured(quantity, isAbout);
}

/** `a thumb-sized piece` is a piece. */
function withoutShape(quantity: SpelledNumber | undefined): SpelledNumber | undefined {
  return (
    quantity && {
      ...quantity,
      rest: quantity.rest.replace(/^ \p{L}+[- ]sized?(?= (?:piece|chunk|knob))/u, ""),
    }
  );
}

/** `2 400 g cans`, `1 12 oz. bottle`, `a 14-ounce tin`, `2 x 400 g`. */
function packs(quantity: SpelledNumber, isAbout: boolean): AmountFound | undefined {
  const times = /^ ?[x×*] ?/i.exec(quantity.rest);
  const after = times ? quantity.rest.slice(times[0].length) : quantity.rest.replace(/^ /, "");
  if (!/^(?:\d|\.\d|an?\b|half\b)/i.test(after) || !/^\d+$/.test(quantity.least)) return undefined;
  const size = readQuantity(after);
  const unit = size && leadingUnit(size.rest);
  if (!size || !unit || unit.kind === "count" || unit.kind === "size") return undefined;
  const pack = leadingUnit(unit.rest.replace(/^-/, " "));
  const isPack = pack?.kind === "count" && sized.has(pack.unit);
  // "two 8-ounce fillets": the hyphen says that it is each one's.
  const isHyphened = /^-\p{L}/u.test(size.rest);
  if (!isPack && !times && !isHyphened) return undefined;
  const each = stated(size, unit.unit);
  return {
    amount: {
      ...stated(quantity, isPack ? pack.unit : null),
      each: isPack ? asPoured(each, pack.unit) : each,
      approximate: isAbout,
    },
    kind: "count",
    rest: isPack ? pack.rest : unit.rest,
  };
}

/** Ounces of a bottle are fluid ones. */
export function asPoured(each: StatedAmount, pack: string): StatedAmount {
  return each.unit === "oz" && liquidPacks.has(pack) ? { ...each, unit: "fl oz" } : each;
}

function measured(quantity: SpelledNumber, isAbout: boolean): AmountFound | undefined {
  const unit = leadingUnit(quantity.rest);
  if (!unit) {
    // An article before a food is one of it, if something is named at all.
    if (!/^(?: ?$| ?[,(/]| )/.test(quantity.rest)) return undefined;
    return {
      amount: { ...stated(quantity, null), approximate: isAbout },
      kind: undefined,
      rest: quantity.rest,
    };
  }
  if (unit.kind === "size") {
    const piece = leadingUnit(unit.rest);
    if (piece?.kind === "count" && piece.rest !== "") return ended(quantity, piece, isAbout);
    return ended(quantity, unit, isAbout);
  }
  if (unit.kind !== "count") {
    const pack = leadingUnit(unit.rest.replace(/^-/, " "));
    if (pack?.kind === "count" && sized.has(pack.unit) && !pack.isPlural && !quantity.isArticle) {
      const each = asPoured(stated(quantity, unit.unit), pack.unit);
      const one = { least: "1", most: "1", unit: pack.unit, each, approximate: isAbout };
      return { amount: one, kind: "count", rest: pack.rest };
    }
  }
  return ended(quantity, unit, isAbout);
}

/** The rest of an amount whose unit was read: the end of a range, what is added. */
function ended(quantity: SpelledNumber, unit: UnitFound, isAbout: boolean): AmountFound {
  let { most } = quantity;
  let { rest } = unit;
  const until = UNTIL.exec(rest);
  const end = until ? readOne(rest.slice(until[0].length)) : undefined;
  const again = end && leadingUnit(end.rest);
  let isLoose = false;
  if (
    end &&
    isGreaterNumber(end.value, most) &&
    (again ? again.unit === unit.unit : !/^ ?\p{L}/u.test(end.rest) && until)
  ) {
    most = end.value;
    rest = again ? again.rest : end.rest;
    // "a pound or two" is said loosely.
    isLoose = quantity.isArticle;
  }
  const added = plusOf(rest, unit);
  const amount: ReadAmount = {
    least: quantity.least,
    most,
    unit: unit.unit,
    ...(added && { plus: added.amount }),
    approximate: isAbout || isLoose || loose.has(unit.unit),
  };
  return { amount, kind: unit.kind, rest: added?.rest ?? rest };
}

/** `1 lb 4 oz`, `1 cup plus 2 tbsp`: a second measure of the same kind. */
function plusOf(rest: string, unit: UnitFound): { amount: StatedAmount; rest: string } | undefined {
  if (unit.kind !== "mass" && unit.kind !== "volume") return undefined;
  const mark = ADDED.exec(rest);
  const more = mark ? readQuantity(rest.slice(mark[0].length)) : undefined;
  const other = more && leadingUnit(more.rest);
  const isSaid = /\+|plus/i.test(mark?.[0] ?? "");
  if (!more || other?.kind !== unit.kind || (other.unit === unit.unit && !isSaid)) return undefined;
  return { amount: stated(more, other.unit), rest: other.rest };
}

/** `pinch of salt`, `tablespoon of oil`: one of it. */
function bareUnit(text: string, isAbout: boolean): AmountFound | undefined {
  const unit = leadingUnit(text);
  if (!unit || unit.kind === "size" || !/^ of /i.test(unit.rest)) return undefined;
  if (unit.kind === "mass" || unit.kind === "length" || unit.isPlural) return undefined;
  const amount = { least: "1", most: "1", unit: unit.unit, approximate: isAbout || loose.has(unit.unit) };
  return { amount, kind: unit.kind, rest: unit.rest };
}

function stated({ least, most }: SpelledNumber, unit: string | null): StatedAmount {
  return { least, most, unit };
}

/** Where an amount stands behind its food: `Butter melted 2 tbsp`, `Tomato 2 medium-sized`, `Flour: 200 g`. */
export function readAmountBehind(text: string): (AmountsFound & { readonly before: string }) | undefined {
  for (const { index } of text.matchAll(/(?<=[\p{L}):] ?[:–—-]? ?)(?:[~≈] ?)?(?:\d|\.\d)/gu)) {
    if (index === 0 || /[\d./]$/.test(text.slice(0, index))) continue;
    const found = readAmounts(text.slice(index));
    const first = found?.amounts[0];
    if (!found || !first) continue;
    if (first.unit === null && found.rest !== "" && !/^[,.;)]/.test(found.rest)) continue;
    const before = text.slice(0, index).replace(/(?:[\s:–—-]|\b(?:about|around|approx\.?|ca\.?))+$/i, "");
    if (before !== "") return { ...found, before };
  }
  return undefined;
}
