import { Decimal } from "decimal.js";
import { readDocument } from "../number/document.ts";
import { collect, type Fault, fault, type Path, quote, throwIfAny } from "../number/error.ts";
import { exact, toText } from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import { type Line, type LineInput, RECIPE_FORMAT, type Recipe } from "./document.ts";
import { recipeSchema } from "./schema.ts";

/**
 * Reads a recipe document: JSON in, JSON out. Keys and defaults are filled in, everything is
 * frozen, and a document read twice is the same document.
 *
 * Amounts are read later, by `sheet`, because "1 can" and "2 medium" mean what the food says.
 *
 * Throws one error with every fault: `recipe-malformed`, `recipe-format-newer`, `line-duplicate`,
 * `method-unknown-line`, `component-unknown`, and `number-…` codes.
 *
 * @example
 * ```ts
 * const porridge = recipe({
 *   name: "Porridge",
 *   portions: 2,
 *   lines: [
 *     { food: "oats-rolled-dry", amount: "100 g" },
 *     { food: "salt", amount: "1 g", scaling: "per-portion" },
 *   ],
 * });
 * console.log(porridge.lines.map((line) => line.key)); // => [ 'oats-rolled-dry', 'salt' ]
 * ```
 */
export function recipe(input: unknown): Recipe {
  if (typeof input === "object" && input !== null && read.has(input)) return input as Recipe;
  const written = readDocument(recipeSchema(), input, "recipe-malformed");
  const faults: Fault[] = [];
  checkFormat(written.format, faults);
  const lines = keyed(written.lines, faults);
  checkMethod(written.method ?? [], lines, faults);
  const nested = lines.map((line, i) => nestedRecipe(line, ["lines", i, "recipe"], faults));
  throwIfAny(faults);
  const { format: _, lines: __, portions, ...rest } = written;
  const made: Recipe = freezeAll({
    format: RECIPE_FORMAT,
    ...plain(rest),
    portions: toText(exact(portions)),
    lines: nested,
  });
  read.add(made);
  return made;
}

/** Documents that this function made: frozen, so they need no second reading. */
const read: WeakSet<object> = /* @__PURE__ */ new WeakSet();

function checkFormat(format: string | undefined, faults: Fault[]): void {
  if (format === undefined || format === RECIPE_FORMAT) return;
  const newer = /^steelyard-recipe\/(\d{1,6})$/.exec(format);
  faults.push(
    newer
      ? {
          code: "recipe-format-newer",
          path: ["format"],
          message: `format ${quote(format)} is newer than this library`,
          hint: "open it with the version that wrote it, or update steelyard",
        }
      : {
          code: "recipe-malformed",
          path: ["format"],
          message: `${quote(format)} is not a recipe format`,
          hint: `write "${RECIPE_FORMAT}" or leave it out`,
        },
  );
}

/** Gives each line its key: the one written, or the food's id, numbered where it comes again. */
function keyed(lines: readonly LineInput[], faults: Fault[]): Omit<Line, "recipe">[] {
  const written = new Set<string>();
  lines.forEach(({ key }, i) => {
    if (key === undefined) return;
    if (written.has(key)) {
      faults.push({
        code: "line-duplicate",
        path: ["lines", i, "key"],
        message: `two lines have the key ${quote(key)}`,
        hint: "give each line a key of its own",
      });
    }
    written.add(key);
  });
  const taken = new Set(written);
  const next = new Map<string, number>();
  return lines.map((line) => {
    const key = line.key ?? freeKey(baseKey(line), taken, next);
    taken.add(key);
    return { ...line, key, scaling: line.scaling ?? "held", added: line.added ?? "cooking" };
  });
}

function baseKey(line: LineInput): string {
  const name = line.food ?? (typeof line.recipe === "string" ? line.recipe : line.recipe?.name) ?? "line";
  return String(name).replaceAll(/[/{}]/g, "-");
}

function freeKey(base: string, taken: ReadonlySet<string>, next: Map<string, number>): string {
  if (!taken.has(base)) return base;
  let n = next.get(base) ?? 2;
  while (taken.has(`${base}-${n}`)) n += 1;
  next.set(base, n + 1);
  return `${base}-${n}`;
}

function checkMethod(
  method: readonly string[],
  lines: readonly Omit<Line, "recipe">[],
  faults: Fault[],
): void {
  const keys = new Set(lines.map((line) => line.key));
  method.forEach((step, i) => {
    for (const named of linesNamed(step)) {
      if (keys.has(named)) continue;
      const hint = didYouMean(named, keys, "name a line by its key, in braces");
      faults.push({
        code: "method-unknown-line",
        path: ["method", i],
        message: `no line has the key ${quote(named)}`,
        hint,
      });
    }
  });
}

/** The line keys that a method step names in braces, in order. */
export function linesNamed(step: string): string[] {
  return [...step.matchAll(/\{([^{}]+)\}/g)].map((m) => m[1] ?? "");
}

function nestedRecipe(line: Omit<Line, "recipe"> & { recipe?: unknown }, path: Path, faults: Fault[]): Line {
  const { recipe: nested, ...rest } = line;
  if (nested === undefined) return plain(rest);
  if (typeof nested === "string") return { ...plain(rest), recipe: nested };
  const read = collect(faults, path, () => recipe(nested));
  return read ? { ...plain(rest), recipe: read } : plain(rest);
}

/** Numbers and Decimals become exact text, so that JSON holds what was meant. */
function plain<T>(data: T): T {
  if (typeof data === "number" || Decimal.isDecimal(data)) return toText(exact(data as number)) as T;
  if (Array.isArray(data)) return data.map(plain) as T;
  if (typeof data !== "object" || data === null) return data;
  return Object.fromEntries(
    Object.entries(data)
      .filter(([, value]) => value !== undefined)
      .map(([key, value]) => [key, plain(value)]),
  ) as T;
}

function freezeAll<T>(data: T): T {
  if (typeof data === "object" && data !== null && !Object.isFrozen(data)) {
    Object.freeze(data);
    for (const value of Object.values(data)) freezeAll(value);
  }
  return data;
}

/** @internal Says that a recipe id is not known. */
export function unknownRecipe(id: string, known: Iterable<string>, path: Path): Error {
  return fault(
    "recipe-unknown",
    `no recipe is called ${quote(id)}`,
    didYouMean(id, known, "hand it in with { recipes: { … } }"),
    path,
  );
}
