import type { ErrorCode } from "../number/codes.ts";
import { type Fault, kindOf, type Path, quote, throwIfAny } from "../number/error.ts";
import { checkFields, fieldsGiven } from "../number/fields.ts";
import { britishEnglish, type Language, type UnitWords } from "./language.ts";

const FIELDS: readonly string[] = [
  "tag",
  "decimal",
  "group",
  "phrases",
  "spellings",
  "words",
  "temperatures",
  "times",
] satisfies (keyof Language)[];
const TEMPERATURES: readonly unknown[] = [undefined, "celsius", "fahrenheit", "both"];
const TIMES: readonly unknown[] = [undefined, "hours", "minutes"];
const WORDS: readonly string[] = ["units", "sets", "nouns", "joins", "category"];
const HINT = "write what it stands for as text";

/** One language words many tables, and its words many amounts: each is looked through once. */
const READ: WeakSet<Language> = /* @__PURE__ */ new WeakSet();
const READ_WORDS: WeakSet<UnitWords> = /* @__PURE__ */ new WeakSet();

/** A language from outside, British English where it is left out. Throws `table-malformed`. */
export function readLanguage(given: Language = britishEnglish): Language {
  if (READ.has(given)) return given;
  const { tag, decimal, group, phrases, spellings, words, temperatures, times } = checkFields(
    given,
    FIELDS,
    CODE,
    ["language"],
  );
  const faults: Fault[] = [];
  const refuse = (field: string, value: unknown, hint: string): void => {
    const message = `${field} is ${typeof value === "string" ? quote(value) : kindOf(value)}`;
    faults.push({ code: CODE, path: ["language", field], message, hint });
  };
  if (typeof tag !== "string" || tag === "") refuse("tag", tag, 'give a BCP 47 tag: "en-GB"');
  if (decimal !== "." && decimal !== ",") refuse("decimal", decimal, 'give "." or ","');
  if (typeof group !== "string") refuse("group", group, 'give what parts thousands: ","');
  if (!TEMPERATURES.includes(temperatures))
    refuse("temperatures", temperatures, 'give "celsius", "fahrenheit" or "both"');
  if (!TIMES.includes(times)) refuse("times", times, 'give "hours" or "minutes"');
  texts(phrases, CODE, ["language", "phrases"], faults);
  if (spellings !== undefined) texts(spellings, CODE, ["language", "spellings"], faults);
  if (words !== undefined) wordFaults(words, CODE, ["language", "words"], faults);
  throwIfAny(faults);
  READ.add(given);
  return given;
}

const CODE: ErrorCode = "table-malformed";

/** Refuses what are no unit words, where they are given. Throws `format-malformed`. */
export function checkWords(given: UnitWords | undefined): void {
  if (given === undefined || READ_WORDS.has(given)) return;
  const faults: Fault[] = [];
  wordFaults(given, "format-malformed", ["words"], faults);
  throwIfAny(faults);
  READ_WORDS.add(given);
}

function wordFaults(given: unknown, code: ErrorCode, path: Path, faults: Fault[]): void {
  const { units, sets, nouns, joins, category } = fieldsGiven(given, WORDS, code, faults, path);
  if (!isRecord(given)) return;
  if (!isRecord(units)) {
    faults.push({ code, path: [...path, "units"], message: `units are ${kindOf(units)}`, hint: BY_UNIT });
  } else {
    for (const [unit, word] of Object.entries(units)) {
      if (typeof word === "string") continue;
      const at = [...path, "units", unit];
      texts(word, code, at, faults);
      if (isRecord(word) && !Object.hasOwn(word, "other"))
        faults.push({ code, path: at, message: "the form for other numbers is left out", hint: BY_UNIT });
    }
  }
  if (sets !== undefined) texts(sets, code, [...path, "sets"], faults);
  if (nouns !== undefined) texts(nouns, code, [...path, "nouns"], faults);
  if (joins !== undefined) {
    texts(joins, code, [...path, "joins"], faults);
    if (isRecord(joins) && !(Object.hasOwn(joins, "mass") && Object.hasOwn(joins, "other")))
      faults.push({
        code,
        path: [...path, "joins"],
        message: "a join is left out",
        hint: "give mass and other",
      });
  }
  if (category !== undefined && typeof category !== "function") {
    const hint = "give a function from a figure to its plural category";
    faults.push({ code, path: [...path, "category"], message: `category is ${kindOf(category)}`, hint });
  }
}

const BY_UNIT = 'give words by unit: { cup: { one: "cup", other: "cups" } }';

/** Refuses what is not text by name. */
function texts(given: unknown, code: ErrorCode, path: Path, faults: Fault[]): void {
  if (!isRecord(given)) {
    const hint = "give an object, { } where there is nothing to say";
    faults.push({ code, path, message: `expected text by name, got ${kindOf(given)}`, hint });
    return;
  }
  for (const [name, text] of Object.entries(given)) {
    if (typeof text === "string") continue;
    faults.push({ code, path: [...path, name], message: `${quote(name)} is ${kindOf(text)}`, hint: HINT });
  }
}

function isRecord(given: unknown): given is { readonly [name: string]: unknown } {
  return typeof given === "object" && given !== null && !Array.isArray(given);
}
