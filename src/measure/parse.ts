import { collect, type Fault, fault, quote, throwIfAny } from "../number/error.ts";
import type { Fraction } from "../number/fraction.ts";
import { cleanText } from "./clean.ts";
import { type DecimalMark, readNumber, refuseAfter } from "./number-text.ts";
import { matchOwn, type OwnMatch } from "./own.ts";
import { readUnit, spelled, type UnitContext } from "./unit-text.ts";
import type { Unit } from "./units.ts";
import { plainWord } from "./words.ts";

/** One of a food's own measures, whose size only the food knows. */
export interface OwnUnit {
  readonly id: string;
  readonly kind: "own";
}

/** One figure with its unit. */
export interface ReadPart {
  readonly exact: Fraction;
  readonly unit: Unit | OwnUnit;
}

export interface ReadContext extends UnitContext {
  readonly decimal?: DecimalMark | undefined;
}

/** Where the unit ends and the next part of a compound amount begins: ` + 2 tbsp`, ` 4 oz`. */
const NEXT = / ?(?:[+&,]| and | plus ) ?(?=[.\d])| (?=[.\d])/;
const ADDED = /[+&]|and|plus/;

/**
 * Reads an amount as written: one figure with a unit, or several that add up.
 *
 * Throws the `amount-…`, `number-…` and `measures-needed` codes.
 */
export function parseAmount(text: string, context: ReadContext): readonly ReadPart[] {
  const parts: ReadPart[] = [];
  const faults: Fault[] = [];
  let rest = cleanText(text);
  while (rest !== "") {
    const { value, rest: after } = readNumber(rest, context.decimal);
    const written = rest.slice(0, rest.length - after.length);
    const own = ownAt(after, context.own);
    if (!own) refuseAfter(written, after);
    const [phrase, joint, next] = own
      ? cut(after, own.length, NEXT.exec(after.slice(own.length)))
      : cut(after, 0, NEXT.exec(after));
    const unit = own ? ownUnit(own.name) : collect(faults, [], () => readUnit(phrase, context));
    if (unit) {
      refuseTwice(parts, unit, joint, text);
      parts.push({ exact: value, unit });
    }
    rest = next;
  }
  throwIfAny(faults);
  return parts;
}

/** Splits what follows a number into its unit, what joins it to the next part, and that part. */
function cut(after: string, from: number, found: RegExpExecArray | null): readonly [string, string, string] {
  if (!found) return [dangling(after), "", ""];
  const at = from + found.index;
  return [after.slice(0, at), found[0], after.slice(at + found[0].length)];
}

function dangling(phrase: string): string {
  if (!/(?:[+&,]| and| plus)$/.test(phrase)) return phrase;
  throw fault(
    "amount-no-number",
    `${quote(phrase)} ends where another amount should follow`,
    "leave out the last sign, or write the rest",
  );
}

/** One of the food's own measures at the start of a text; a plain unit name stays that unit. */
export function ownAt(text: string, own: readonly string[] | undefined): OwnMatch | undefined {
  const found = own && own.length > 0 ? matchOwn(text, own) : undefined;
  if (!found || spelled(plainWord(text.slice(0, found.length))) !== undefined) return undefined;
  return found;
}

export function ownUnit(name: string): OwnUnit {
  return { id: name, kind: "own" };
}

/** "2 cups 3 cups" is more likely a slip than a sum. */
function refuseTwice(parts: readonly ReadPart[], unit: Unit | OwnUnit, joint: string, text: string): void {
  const before = parts.at(-1);
  if (before?.unit.id !== unit.id || ADDED.test(joint)) return;
  throw fault(
    "amount-ambiguous",
    `${quote(text)} has the unit ${quote(unit.id)} twice`,
    'write one figure, or put "+" between if you mean the sum',
  );
}
