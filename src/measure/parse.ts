import { collect, type Fault, fault, quote, throwIfAny } from "../number/error.ts";
import type { Exact } from "../number/exact.ts";
import { cleanText } from "./clean.ts";
import { type DecimalMark, readNumber, refuseAfter } from "./numberText.ts";
import { matchOwn, type OwnMatch } from "./own.ts";
import { fixedUnit, type Unit } from "./units.ts";
import { readUnit, spelled, type UnitContext } from "./unitText.ts";
import { plainWord, type UnitWords } from "./words.ts";

/** One of a food's own measures, whose size only the food knows. */
export interface OwnUnit {
  readonly id: string;
  readonly kind: "own";
}

/** One figure with its unit. */
export interface ReadPart {
  readonly value: Exact;
  readonly unit: Unit | OwnUnit;
}

export interface ReadContext extends UnitContext {
  readonly decimal?: DecimalMark | undefined;
}

/** Where the unit ends and the next part of a compound amount begins: ` + 2 tbsp`, ` 4 oz`. */
const NEXT = / ?(?:[+&,]| and | plus ) ?(?=[.\d])| (?=[.\d])/;
/** "2 cups 3 cups" is more likely a slip than a sum; with a sign or word between it is a sum. */
const SUM = /[^\s,]/;

/**
 * Reads an amount as written: one figure with a unit, or several that add up.
 *
 * Throws the `amount-…`, `number-…` and `measures-needed` codes.
 */
export function parseAmount(text: string, context: ReadContext): readonly ReadPart[] {
  const parts: ReadPart[] = [];
  const faults: Fault[] = [];
  let rest = cleanText(text);
  let joint = "";
  while (rest !== "") {
    const next = collect(faults, [], () => readNext(rest, context));
    if (!next) break;
    const unit = next.own ?? collect(faults, [], () => readUnit(next.phrase, context));
    if (unit) {
      if (twice(parts, unit, joint)) faults.push(twiceFault(text, unit));
      parts.push({ value: next.value, unit });
    }
    ({ rest, joint } = next);
  }
  throwIfAny(faults);
  return parts;
}

/** A figure, what follows it up to the next part of the amount, and that part. */
interface Next {
  readonly value: Exact;
  readonly own: OwnUnit | undefined;
  readonly phrase: string;
  /** What joins the next part on. */
  readonly joint: string;
  readonly rest: string;
}

function readNext(text: string, context: ReadContext): Next {
  const { value, rest: after } = readNumber(text, context.decimal);
  const own = ownAt(after, context.own);
  if (!own) refuseAfter(text.slice(0, text.length - after.length), after);
  const from = own?.length ?? 0;
  const found = nextPattern(context.words).exec(after.slice(from));
  const end = found ? from + found.index : after.length;
  const phrase = found ? after.slice(0, end) : dangling(after);
  const joint = found?.[0] ?? "";
  return { value, own: own && ownUnit(own.name), phrase, joint, rest: after.slice(end + joint.length) };
}

/** A language's own words between parts are read beside the English ones. */
function nextPattern(words: UnitWords | undefined): RegExp {
  const joins = Object.values(words?.joins ?? {})
    .map((join) => join.trim())
    .filter((join) => join !== "");
  if (joins.length === 0) return NEXT;
  const escaped = joins.map((join) => join.replace(/[\\^$.*+?()[\]{}|/-]/g, "\\$&"));
  return new RegExp(`${NEXT.source}| (?:${escaped.join("|")}) (?=[.\\d])`);
}

function dangling(phrase: string): string {
  if (!/(?:[+&,]| and| plus)$/.test(phrase)) return phrase;
  throw fault(
    "amount-no-number",
    `${quote(phrase)} ends where another amount should follow`,
    "leave out the last sign, or write the rest",
  );
}

/**
 * One of the food's own measures at the start of a text; a plain unit name stays that unit, but for
 * lengths, by which a food can only be measured where it says so: `cm` of ginger.
 */
export function ownAt(text: string, own: readonly string[] | undefined): OwnMatch | undefined {
  const found = own && own.length > 0 ? matchOwn(text, own) : undefined;
  const unit = found && spelled(plainWord(text.slice(0, found.length)));
  return unit === undefined || fixedUnit(unit)?.kind === "length" ? found : undefined;
}

export function ownUnit(name: string): OwnUnit {
  return { id: name, kind: "own" };
}

function twice(parts: readonly ReadPart[], unit: Unit | OwnUnit, joint: string): boolean {
  return parts.at(-1)?.unit.id === unit.id && !SUM.test(joint);
}

function twiceFault(text: string, unit: Unit | OwnUnit): Fault {
  const message = `${quote(text)} has the unit ${quote(unit.id)} twice`;
  const hint = 'write one figure, or put "+" between if you mean the sum';
  return { code: "amount-ambiguous", path: [], message, hint };
}
