import { amount, gramsOf } from "../measure/amount.ts";
import { isAbove } from "../measure/foodless.ts";
import { type Measures, readyMeasures } from "../measure/measures.ts";
import { collect, type ErrorCode, type Fault, fault, type Path, quote } from "../number/error.ts";
import { isZero } from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import { RECIPE_FORMAT } from "./document.ts";

/** A document of which nothing is known yet but that it holds fields. */
export type Fields = { readonly [field: string]: unknown };

/** The fields of an object from outside, or nothing where it is none. */
export function fieldsOf(value: unknown): Fields | undefined {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Fields) : undefined;
}

/**
 * What holds between the fields of a recipe document, looked at as far as it can be read, so that a
 * fault in one place hides none in another.
 */
export function checkAcross(input: unknown, faults: Fault[]): void {
  const written = fieldsOf(input);
  if (!written) return;
  checkFormat(written.format, faults);
  const { cookedMass, yieldFactor, yieldPresumed } = written;
  if (yieldPresumed === true && yieldFactor === undefined)
    wrong(faults, ["yieldPresumed"], "a presumed yield without a yieldFactor", "give one, or leave this out");
  if (cookedMass !== undefined && yieldFactor !== undefined)
    wrong(faults, ["yieldFactor"], "both cookedMass and yieldFactor", "give one; the other follows from it");
  checkCookedMass(cookedMass, faults);
  const measures = checkMeasures(written.measures, faults);
  if (!Array.isArray(written.lines)) return;
  const lines = written.lines.map(fieldsOf);
  lines.forEach((line, i) => {
    if (line) checkLine(line, i, measures, faults);
  });
  checkKeys(lines, faults);
  // A step cannot be held to lines that cannot be read.
  const named = lines.flatMap((line): Named[] =>
    line && (typeof line.food === "string" || line.recipe !== undefined) ? [line] : [],
  );
  if (named.length === lines.length) checkMethod(written.method, keysOf(named), faults);
}

function wrong(
  faults: Fault[],
  path: Path,
  message: string,
  hint: string,
  code: ErrorCode = "recipe-malformed",
): void {
  faults.push({ code, path, message, hint });
}

function checkFormat(format: unknown, faults: Fault[]): void {
  if (typeof format !== "string" || format === RECIPE_FORMAT) return;
  if (/^steelyard-recipe\/\d{1,6}$/.test(format)) {
    const message = `format ${quote(format)} is newer than this library`;
    const hint = "open it with the version that wrote it, or update steelyard";
    wrong(faults, ["format"], message, hint, "recipe-format-newer");
    return;
  }
  const hint = `write "${RECIPE_FORMAT}" or leave it out`;
  wrong(faults, ["format"], `${quote(format)} is not a recipe format`, hint);
}

/** An amount that says what is wrong with itself needs no second fault here. */
function checkCookedMass(written: unknown, faults: Fault[]): void {
  if (typeof written !== "string" && !fieldsOf(written)) return;
  if (faults.some(({ path }) => path[0] === "cookedMass")) return;
  collect(faults, ["cookedMass"], () => {
    const grams = gramsOf(amount(written as string));
    if (grams !== undefined && !isZero(grams)) return;
    throw fault("recipe-malformed", "the cooked mass is not a mass above 0", 'weigh it: "850 g"');
  });
}

function checkMeasures(written: unknown, faults: Fault[]): Measures | undefined {
  if (typeof written !== "string" && !fieldsOf(written)) return undefined;
  return collect(faults, [], () => {
    readyMeasures(written as Measures);
    return written as Measures;
  });
}

function checkLine(line: Fields, i: number, measures: Measures | undefined, faults: Fault[]): void {
  const { food, recipe, part, scaling, retention, added, least, most } = line;
  const at = (field: string): Path => ["lines", i, field];
  if ((food === undefined) === (recipe === undefined)) {
    const message = food === undefined ? "neither food nor recipe" : "both food and recipe";
    wrong(faults, at("food"), message, "name one food or one nested recipe");
  }
  if (part !== undefined && (scaling === "adjustable" || scaling === "per-portion")) {
    const message = `a part holds held lines, and this one is ${scaling}`;
    wrong(faults, at("part"), message, "leave out part, or the scaling");
  }
  if (retention !== undefined && added === "serving") {
    const message = "retention on a line that is added after cooking";
    wrong(faults, at("retention"), message, "leave out retention, or the added");
  }
  if (least !== undefined && most !== undefined && isAbove(least, most, measures))
    wrong(faults, at("least"), LEAST_ABOVE_MOST, LEAST_HINT);
}

export const LEAST_ABOVE_MOST = "least is above most, so no amount lies between them";
export const LEAST_HINT = "give the lower bound as least and the upper as most";

function checkKeys(lines: readonly (Fields | undefined)[], faults: Fault[]): void {
  const seen = new Set<string>();
  lines.forEach((line, i) => {
    const key = line?.key;
    if (typeof key !== "string") return;
    if (seen.has(key)) {
      const hint = "give each line a key of its own";
      wrong(faults, ["lines", i, "key"], `two lines have the key ${quote(key)}`, hint, "line-duplicate");
    }
    seen.add(key);
  });
}

/** What a line's key is made from. */
interface Named {
  readonly key?: unknown;
  readonly food?: unknown;
  readonly recipe?: unknown;
}

/** The key of each line: the one written, or the food's id, numbered where it comes again. */
export function keysOf(lines: readonly Named[]): string[] {
  const taken = new Set(lines.flatMap(({ key }) => (typeof key === "string" ? key : [])));
  const next = new Map<string, number>();
  return lines.map((line) => {
    const key = typeof line.key === "string" ? line.key : freeKey(baseKey(line), taken, next);
    taken.add(key);
    return key;
  });
}

function baseKey({ food, recipe }: Named): string {
  const name = food ?? (typeof recipe === "string" ? recipe : fieldsOf(recipe)?.name);
  return (typeof name === "string" ? name : "line").replaceAll(/[/{}]/g, "-");
}

function freeKey(base: string, taken: ReadonlySet<string>, next: Map<string, number>): string {
  if (!taken.has(base)) return base;
  let n = next.get(base) ?? 2;
  while (taken.has(`${base}-${n}`)) n += 1;
  next.set(base, n + 1);
  return `${base}-${n}`;
}

function checkMethod(method: unknown, keys: readonly string[], faults: Fault[]): void {
  if (!Array.isArray(method)) return;
  const known = new Set(keys);
  method.forEach((step: unknown, i) => {
    for (const named of typeof step === "string" ? linesNamed(step) : []) {
      if (known.has(named)) continue;
      const hint = didYouMean(named, known, "name a line by its key, in braces");
      wrong(faults, ["method", i], `no line has the key ${quote(named)}`, hint, "method-unknown-line");
    }
  });
}

/** The line keys that a method step names in braces, in order. */
export function linesNamed(step: string): string[] {
  return [...step.matchAll(/\{([^{}]+)\}/g)].map((m) => m[1] ?? "");
}
