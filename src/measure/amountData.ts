import { refuseHole } from "../document/safe.ts";
import { collect, type Fault, fault, kindOf, quote, throwIfAny, within } from "../number/error.ts";
import { type Exact, exact, type Value } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { cleanText } from "./clean.ts";
import { readyMeasures } from "./measures.ts";
import { type DecimalMark, readNumber } from "./numberText.ts";
import { type OwnUnit, ownAt, ownUnit, type ReadContext, type ReadPart } from "./parse.ts";
import type { Unit } from "./units.ts";
import { readUnit } from "./unitText.ts";

/** More parts than any amount has. */
const MOST_PARTS = 100;

/**
 * Reads an amount handed in as data: a value with its unit, or the parts of a compound.
 *
 * Throws `amount-malformed` and the codes of `amount`, with the path of each fault.
 */
export function readData(input: unknown, context: ReadContext): readonly ReadPart[] {
  checkObject(input);
  const { parts: given } = input as { readonly parts?: unknown };
  if (!Array.isArray(given)) return [readPart(input, context)];
  const parts: readonly unknown[] = given;
  if (parts.length > MOST_PARTS) {
    throw fault("amount-too-long", `an amount of ${parts.length} parts`, `write at most ${MOST_PARTS}`, [
      "parts",
    ]);
  }
  within(["parts"], () => refuseHole(parts, "amount-malformed"));
  return parts.map((part, i) => within(["parts", i], () => readPart(part, context)));
}

function checkObject(input: unknown): asserts input is { readonly [key: string]: unknown } {
  if (typeof input === "object" && input !== null) return;
  const hint = 'write text such as "100 g", or { value: 100, unit: "g" }';
  throw fault("amount-malformed", `${kindOf(input)} is not an amount`, hint);
}

function readPart(input: unknown, context: ReadContext): ReadPart {
  checkObject(input);
  const { value, unit, measures, kind } = input;
  const faults: Fault[] = [];
  const figure = collect(faults, ["value"], () => readValue(value));
  const read = collect(faults, [], () => {
    const set = measures === undefined ? context.set : within(["measures"], () => readyMeasures(measures));
    return within(["unit"], () => readGivenUnit(unit, kind, { ...context, set }));
  });
  throwIfAny(faults);
  if (!figure || !read) throw fault("amount-malformed", "not an amount", 'write { value: 100, unit: "g" }');
  return { value: figure, unit: read };
}

/** The ends of a range given as data. Throws `amount-malformed` and `amount-range`. */
export function readEnds(range: unknown): { readonly least: Exact; readonly most: Exact } {
  return within(["range"], () => {
    checkObject(range);
    const [least, most] = [
      within(["least"], () => readValue(range.least)),
      within(["most"], () => readValue(range.most)),
    ];
    if (compareRatios(least, most) > 0)
      throw fault("amount-range", "the range ends with its smaller end", "give the smaller one as least");
    return { least, most };
  });
}

export function readValue(value: unknown): Exact {
  if (value === undefined)
    throw fault("amount-no-number", "the amount has no value", 'give one: { value: 100, unit: "g" }');
  const figure = typeof value === "string" ? wholeNumber(value) : exact(value as Value);
  if (figure.n < 0n)
    throw fault("amount-negative", `${quote(value)} is below 0`, "give a value of 0 or more");
  return figure;
}

/** What reads the same whichever way numbers are written. */
const PLAIN = /^\d+(?:\.\d+|\/\d+)?$/;

/** A text that is one number and nothing else, as a cook or as JSON may write it. */
export function wholeNumber(text: string, mark?: DecimalMark): Exact {
  if (mark === undefined && PLAIN.test(text)) return exact(text);
  const clean = cleanText(text);
  if (/^\d*\.?\d+e[+-]?\d+$/i.test(clean)) return exact(clean);
  const { value, rest } = readNumber(clean, mark);
  if (rest !== "")
    throw fault(
      "number-malformed",
      `${quote(text)} is not a number alone`,
      "write the number without a unit",
    );
  return value;
}

function readGivenUnit(unit: unknown, kind: unknown, context: ReadContext): Unit | OwnUnit {
  if (typeof unit !== "string" || unit.trim() === "") {
    throw fault("amount-no-unit", "the amount has no unit", 'give one: { value: 100, unit: "g" }');
  }
  if (kind === "own") return ownUnit(unit);
  const clean = cleanText(unit);
  const own = ownAt(clean, context.own);
  return own?.length === clean.length ? ownUnit(own.name) : readUnit(clean, context);
}
