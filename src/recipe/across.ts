import { refuseFormat } from "../document/format.ts";
import { isRecord } from "../document/safe.ts";
import { attemptAt, type Given, type Refuse } from "../document/schema.ts";
import { amount, gramsOf } from "../measure/amount.ts";
import { isAbove } from "../measure/foodless.ts";
import { spelled } from "../measure/unitText.ts";
import { plainWord } from "../measure/words.ts";
import { type Path, quote } from "../number/error.ts";
import { isZero } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import type { WrittenAmount } from "./document.ts";
import type { LineAsRead, ReadRecipe } from "./readRecipe.ts";

/**
 * What holds between the fields of a recipe document, looked at as far as they could be read, so that a
 * fault in one place hides none in another.
 */
export function checkRecipe(given: Given, read: Partial<ReadRecipe>, refuse: Refuse): void {
  if (read.format !== undefined)
    refuseFormat(read.format, { of: "recipe", known: [1], newer: "recipe-format-newer" }, refuse);
  if (read.yieldPresumed === true && given.yieldFactor === undefined)
    refuse("a presumed yield without a yieldFactor", "give one, or leave this out", ["yieldPresumed"]);
  if (given.cookedMass !== undefined && given.yieldFactor !== undefined)
    refuse("both cookedMass and yieldFactor", "give one; the other follows from it", ["yieldFactor"]);
  checkMass(read.cookedMass, ["cookedMass"], "the cooked mass", refuse);
  checkMass(read.normalPortion, ["normalPortion"], "the normal portion", refuse);
  checkMass(read.piece?.mass, ["piece", "mass"], "the mass of a piece", refuse);
  const called = read.piece?.name;
  if (called !== undefined && (NESTED_UNITS.includes(called) || spelled(plainWord(called)) !== undefined))
    refuse(`pieces that are called ${quote(called)}`, "take a word that is no unit: muffin, slice", [
      "piece",
      "name",
    ]);
  const { lines } = read;
  if (lines === undefined) return;
  lines.forEach((line, i) => {
    if (line?.least !== undefined && line.most !== undefined && isAbove(line.least, line.most, read.measures))
      refuse(LEAST_ABOVE_MOST, LEAST_HINT, ["lines", i, "least"]);
  });
  checkKeys(lines, refuse);
  // A step cannot be held to lines that cannot be read; a nested recipe at fault still names its line.
  const named = lines.map((line, i): Named => {
    const recipe = line?.recipe ?? nestedName(given.lines, i);
    return { ...line, ...(recipe !== undefined && { recipe }) };
  });
  if (named.every(({ food, recipe }) => food !== undefined || recipe !== undefined))
    checkMethod(read.method, keysOf(named), refuse);
}

function nestedName(lines: unknown, i: number): string | undefined {
  const line: unknown = Array.isArray(lines) ? lines[i] : undefined;
  const { recipe } = isRecord(line) ? line : {};
  const { name } = isRecord(recipe) ? recipe : {};
  return typeof name === "string" ? name : undefined;
}

/** What a nested recipe is measured in beside masses and its own pieces. */
export const NESTED_UNITS: readonly string[] = ["portion", "batch"];

function checkMass(written: WrittenAmount | undefined, path: Path, what: string, refuse: Refuse): void {
  if (written === undefined) return;
  attemptAt(refuse, path, () => {
    const grams = gramsOf(amount(written));
    if (grams === undefined || isZero(grams))
      refuse(`${what} is not a mass above 0`, 'weigh it: "850 g"', path);
  });
}

/** What holds between the fields of one line. */
export function checkLine(given: Given, read: Partial<LineAsRead>, refuse: Refuse): void {
  const { food, recipe, part, retention, yieldFactor } = given;
  if ((food === undefined) === (recipe === undefined)) {
    const message = food === undefined ? "neither food nor recipe" : "both food and recipe";
    refuse(message, "name one food or one nested recipe", ["food"]);
  }
  const { scaling, added } = read;
  if (part !== undefined && (scaling === "adjustable" || scaling === "per-portion"))
    refuse(`a part holds held lines, and this one is ${scaling}`, "leave out part, or the scaling", ["part"]);
  if (read.retentionPresumed === true && retention === undefined)
    refuse("a presumed retention without one", "give the retention, or leave this out", [
      "retentionPresumed",
    ]);
  if (retention !== undefined && added === "serving")
    refuse("retention on a line that is added after cooking", "leave out retention, or the added", [
      "retention",
    ]);
  if (yieldFactor !== undefined && added === "serving")
    refuse("a yield on a line that is added after cooking", "leave out yieldFactor, or the added", [
      "yieldFactor",
    ]);
}

export const LEAST_ABOVE_MOST = "least is above most, so no amount lies between them";
export const LEAST_HINT = "give the lower bound as least and the upper as most";

function checkKeys(lines: readonly (LineAsRead | undefined)[], refuse: Refuse): void {
  const seen = new Set<string>();
  lines.forEach((line, i) => {
    const key = line?.key;
    if (key === undefined) return;
    if (seen.has(key))
      refuse(
        `two lines have the key ${quote(key)}`,
        "give each line a key of its own",
        ["lines", i, "key"],
        "line-duplicate",
      );
    seen.add(key);
  });
}

/** What a line's key is made from. */
type Named = Pick<LineAsRead, "key" | "food" | "recipe">;

/** The key of each line: the one written, or the food's id, numbered where it comes again. */
export function keysOf(lines: readonly Named[]): string[] {
  const taken = new Set(lines.flatMap(({ key }) => key ?? []));
  const next = new Map<string, number>();
  return lines.map((line) => {
    const key = line.key ?? freeKey(baseKey(line), taken, next);
    taken.add(key);
    return key;
  });
}

function baseKey({ food, recipe }: Named): string {
  const name = food ?? (typeof recipe === "object" ? recipe.name : recipe);
  return (name ?? "line").replaceAll(/[/{}]/g, "-");
}

function freeKey(base: string, taken: ReadonlySet<string>, next: Map<string, number>): string {
  if (!taken.has(base)) return base;
  let n = next.get(base) ?? 2;
  while (taken.has(`${base}-${n}`)) n += 1;
  next.set(base, n + 1);
  return `${base}-${n}`;
}

function checkMethod(method: readonly string[] | undefined, keys: readonly string[], refuse: Refuse): void {
  const known = new Set(keys);
  method?.forEach((step, i) => {
    for (const named of step === undefined ? [] : linesNamed(step)) {
      if (known.has(named)) continue;
      const hint = didYouMean(named, known, "name a line by its key, in braces");
      refuse(`no line has the key ${quote(named)}`, hint, ["method", i], "method-unknown-line");
    }
  });
}

/** The line keys that a method step names in braces, in order. */
export function linesNamed(step: string): string[] {
  return [...step.matchAll(/\{([^{}]+)\}/g)].map((m) => m[1] ?? "");
}
