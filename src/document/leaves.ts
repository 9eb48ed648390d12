import { type ErrorCode, isClass, quote } from "../number/error.ts";
import { type Exact, exact, isNumeric, isRatio, type Value } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { compareRatios } from "../number/ratio.ts";
import { isRecord } from "./safe.ts";
import { type JsonSchema, leaf, type Refuse, type Schema } from "./schema.ts";

/** Non-empty text without control characters, of at most `longest` characters. */
export function text(longest = 2000, check?: (text: string, refuse: Refuse) => void): Schema<string> {
  const json = { type: "string", minLength: 1, maxLength: longest };
  return leaf("text", json, isText, (given, refuse) => {
    if (given.trim() === "") refuse("expected text, got none", "write at least one character");
    else if (given.length > longest)
      refuse(`text of ${given.length} characters`, `write at most ${longest} characters`);
    // Tabs and line breaks belong in prose; other control characters never do.
    else if (/[^\P{Cc}\t\r\n]/u.test(given))
      refuse("text with control characters", "remove the control characters");
    else check?.(given, refuse);
    return given;
  });
}

/** One of a few words; the hint names the nearest, else lists them, or says what to do `otherwise`. */
export function word<const W extends string>(
  words: readonly W[],
  code?: ErrorCode,
  otherwise?: string,
): Schema<W> {
  const all = words.map((each) => `"${each}"`).join(", ");
  const expected = words.length > 1 ? `one of ${all}` : all;
  return leaf(expected, { enum: words }, isText, (given, refuse) => {
    if (!words.some((each) => each === given))
      refuse(
        `${quote(given)} is not ${expected}`,
        didYouMean(given, words, otherwise ?? `write ${expected}`),
        [],
        code,
      );
    return given as W;
  });
}

/** Any text, of no characters too. */
export function anyText(): Schema<string> {
  return leaf("text", { type: "string" }, isText, (given) => given);
}

/** A whole number that says how many. */
export function count(from: number, to: number = Number.POSITIVE_INFINITY): Schema<number> {
  const isOpen = to === Number.POSITIVE_INFINITY;
  const json = { type: "integer", minimum: from, ...(isOpen ? {} : { maximum: to }) };
  const expected = `a whole number ${isOpen ? `of ${from} or more` : `from ${from} to ${to}`}`;
  const isCount = (given: unknown): given is number =>
    Number.isInteger(given) && (given as number) >= from && (given as number) <= to;
  return leaf(expected, json, isCount, (given) => given);
}

/** How much of something to take, `Infinity` for all. */
export function size(expected: string, least: number = Number.NEGATIVE_INFINITY): Schema<number> {
  const isSize = (given: unknown): given is number => typeof given === "number" && given >= least;
  return leaf(expected, { type: "number" }, isSize, (given) => given);
}

/** A function of the caller's; a class is none, for it cannot be called. */
export function callback<F>(expected: string): Schema<F> {
  return leaf(expected, {}, isCallable<F>, (given) => given);
}

/** Whether something can be called, as a class cannot. */
export function isCallable<F>(given: unknown): given is F {
  return typeof given === "function" && !isClass(given);
}

export function flag(): Schema<boolean> {
  return leaf(
    "true or false",
    { type: "boolean" },
    (given) => typeof given === "boolean",
    (given) => given,
  );
}

/** Limits of a number; they count in but for `above`. */
export interface NumberLimits {
  readonly above?: number;
  readonly from?: number;
  readonly to?: number;
}

/** A number as a document may hold it, kept as it is written; the clone of an exact one becomes one again. */
export function value(range: NumberLimits = {}): Schema<Value> {
  return figureLeaf(
    (given) => exact(given),
    range,
    (given, read) => (isRatio(given) ? read : given),
  );
}

/** A number, read exactly. */
export function number(range: NumberLimits = {}): Schema<Exact> {
  return figureLeaf(
    (given) => exact(given),
    range,
    (_, read) => read,
  );
}

/** A number in the words of `reader`, within a range of what it comes to, read. */
export function figureLeaf<T>(
  reader: (given: Value) => Exact,
  range: NumberLimits,
  made: (given: Value, read: Exact, refuse: Refuse) => T,
): Schema<T> {
  const { above, from, to } = range;
  const json = {
    type: ["number", "string"],
    ...(above !== undefined && { exclusiveMinimum: above }),
    ...(from !== undefined && { minimum: from }),
    ...(to !== undefined && { maximum: to }),
  };
  return leaf(NUMBER, json, isValue, (given, refuse) => {
    const read = reader(given);
    if (above !== undefined && compareRatios(read, exact(above)) <= 0)
      refuse(`${quote(given)} is not above ${above}`, `give a number above ${above}`);
    if (from !== undefined && compareRatios(read, exact(from)) < 0)
      refuse(`${quote(given)} is below ${from}`, `give ${from} or more`);
    if (to !== undefined && compareRatios(read, exact(to)) > 0)
      refuse(`${quote(given)} is above ${to}`, `give ${to} or less`);
    return made(given, read, refuse);
  });
}

export const NUMBER = "a number, or text, an exact number or a Decimal that holds one";

/** A figure with or without its unit, kept as it is written: what it comes to is for its unit to say. */
export function figureWritten(): Schema<Value> {
  return leaf(`${NUMBER}, with or without a unit`, { type: ["number", "string"] }, isValue, (given) => given);
}

/** Whatever is there, kept as it is written, where something else reads it later. */
export function asWritten<T>(): Schema<T> {
  return readBy((given: T) => given, {}, "a value");
}

/** A value that one of our readers takes as it is; the reader says what is wrong with it. */
export function readBy<T>(
  read: (given: never) => T,
  json: JsonSchema = { type: ["number", "string"] },
  expected: string = NUMBER,
): Schema<T> {
  return leaf(
    expected,
    json,
    (given) => given !== undefined,
    (given) => read(given as never),
  );
}

/** A thing of ours, which no JSON holds: a sheet, a plan. */
export function thing<T>(
  expected: string,
  is: (given: unknown) => given is T,
  json: JsonSchema = {},
): Schema<T> {
  return leaf(expected, json, is, (given) => given);
}

/** Anything that JSON can hold. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [name: string]: Json };

/** Characters in a piece of `meta`, written as JSON. */
const LONGEST_META = 100_000;

/** An app's own data: carried along, never read; a copy of it, at most 100,000 characters of JSON. */
export function meta(): Schema<Json> {
  return leaf(
    "JSON data",
    {},
    (given) => given !== undefined,
    (given, refuse): Json => {
      const odd = oddIn(given);
      if (odd) refuse(...odd);
      const written = odd ? "null" : JSON.stringify(given);
      if (written.length > LONGEST_META)
        refuse(`meta of ${written.length} characters`, `keep it to ${LONGEST_META}, and the rest elsewhere`);
      return JSON.parse(written) as Json;
    },
  );
}

/** What JSON would lose. */
function oddIn(given: unknown, path: readonly (string | number)[] = []): Parameters<Refuse> | undefined {
  if (Array.isArray(given) || isRecord(given)) {
    for (const [key, value] of Object.entries(given)) {
      if (value === undefined && !Array.isArray(given)) continue;
      const odd = oddIn(value, [...path, Array.isArray(given) ? Number(key) : key]);
      if (odd) return odd;
    }
    return undefined;
  }
  const isJson =
    given === null ||
    typeof given === "string" ||
    typeof given === "boolean" ||
    (typeof given === "number" && Number.isFinite(given));
  return isJson
    ? undefined
    : ["meta holds JSON alone", "write it as text, a number, true, false or null", path];
}

function isText(given: unknown): given is string {
  return typeof given === "string";
}

export function isValue(given: unknown): given is Value {
  return typeof given === "string" || typeof given === "number" || isNumeric(given);
}
