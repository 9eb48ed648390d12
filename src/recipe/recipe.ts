import type { Measures } from "../measure/measures.ts";
import { readDocument } from "../number/document.ts";
import { collect, type Fault, fault, type Path, quote, throwIfAny } from "../number/error.ts";
import { exact, isNumeric, toText } from "../number/fraction.ts";
import { freezeAll } from "../number/freeze.ts";
import { didYouMean } from "../number/near.ts";
import { checkAcross, fieldsOf, keysOf } from "./across.ts";
import { type Line, type LineInput, RECIPE_FORMAT, type Recipe, type RecipeInput } from "./document.ts";
import { recipeSchema } from "./schema.ts";

/**
 * Reads a recipe document: JSON in, JSON out. Keys and defaults are filled in, everything is
 * frozen, and a document read twice is the same document.
 *
 * Of amounts it refuses what is wrong whatever the food is: a malformed figure, one below 0, a range,
 * a least above its most. What a unit comes to is `sheet`'s to say, because "1 can" and "2 medium"
 * mean what the food says.
 *
 * Throws one error with every fault that can be told, a fault in one field hiding none in another:
 * `recipe-malformed`, `recipe-format-newer`, `line-duplicate`, `method-unknown-line`,
 * `component-unknown`, `measures-…`, and the `amount-…` and `number-…` codes.
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
  const { recipe, faults } = recipeAsFar(input);
  throwIfAny(faults);
  if (recipe) return recipe;
  throw fault("recipe-malformed", "the recipe was refused", "compare it with the documented shape");
}

/** A recipe, or what could be read of one that is at fault: its faults, and the lines that have none. */
export interface AsFar {
  readonly recipe: Recipe | undefined;
  readonly faults: readonly Fault[];
  /** Sound lines by their place, with the measures they are written in; of a sound recipe, none. */
  readonly lines: readonly (readonly [place: number, line: Line])[];
  readonly measures: Measures | undefined;
}

/** @internal Reads a recipe as far as it can be read, so that `sheet` tells all faults at once. */
export function recipeAsFar(input: unknown): AsFar {
  if (typeof input === "object" && input !== null && read.has(input))
    return { recipe: input as Recipe, faults: [], lines: [], measures: undefined };
  const nested = new Map<number, Recipe>();
  const across = (written: unknown, faults: Fault[]): void => {
    checkAcross(written, faults);
    readNested(written, nested, faults);
  };
  const faults: Fault[] = [];
  const written = collect(faults, [], () => readDocument(recipeSchema(), input, "recipe-malformed", across));
  if (!written) return { recipe: undefined, faults, ...soundParts(input, faults) };
  const made = freezeAll(recipeOf(written, nested));
  read.add(made);
  return { recipe: made, faults, lines: [], measures: undefined };
}

/** Documents that this module made: frozen, so they need no second reading. */
const read: WeakSet<object> = /* @__PURE__ */ new WeakSet();

function recipeOf(written: RecipeInput, nested: ReadonlyMap<number, Recipe>): Recipe {
  const { format: _, lines, portions, ...rest } = written;
  const keys = keysOf(lines);
  return {
    format: RECIPE_FORMAT,
    ...plain(rest),
    portions: toText(exact(portions)),
    lines: lines.map((line, i) => lineOf(line, keys[i] ?? "", nested.get(i))),
  };
}

function lineOf(line: LineInput, key: string, written: Recipe | undefined): Line {
  const { recipe: named, scaling = "held", added = "cooking", ...rest } = line;
  const given = written ?? (typeof named === "string" ? named : undefined);
  const own = { ...plain(rest), key, scaling, added };
  return given === undefined ? own : { ...own, recipe: given };
}

function readNested(written: unknown, nested: Map<number, Recipe>, faults: Fault[]): void {
  const lines = fieldsOf(written)?.lines;
  if (!Array.isArray(lines)) return;
  lines.forEach((line: unknown, i) => {
    const inner = fieldsOf(line)?.recipe;
    if (typeof inner !== "object" || inner === null) return;
    const made = collect(faults, ["lines", i, "recipe"], () => recipe(inner));
    if (made) nested.set(i, made);
  });
}

/** The lines of a recipe at fault that have no fault themselves. */
function soundParts(input: unknown, faults: readonly Fault[]): Pick<AsFar, "lines" | "measures"> {
  const at = new Set(faults.map(({ path }) => (path[0] === "lines" ? path[1] : path[0])));
  const { lines, measures } = fieldsOf(input) ?? {};
  // A fault of the whole document, such as a cycle, leaves nothing that is safe to look at.
  if (!Array.isArray(lines) || at.has(undefined) || at.has("__proto__"))
    return { lines: [], measures: undefined };
  const sound = lines.flatMap((line: LineInput, i): [number, Line][] =>
    at.has(i) || typeof line.recipe === "object" ? [] : [[i, lineOf(line, line.key ?? "", undefined)]],
  );
  return { lines: sound, measures: at.has("measures") ? undefined : (measures as Measures | undefined) };
}

/** Numbers and Decimals become exact text, so that JSON holds what was meant. */
function plain<T>(data: T): T {
  if (typeof data === "number" || isNumeric(data)) return toText(exact(data as number)) as T;
  if (Array.isArray(data)) return data.map(plain) as T;
  if (typeof data !== "object" || data === null) return data;
  return Object.fromEntries(
    Object.entries(data)
      .filter(([, value]) => value !== undefined)
      .map(([key, value]) => [key, plain(value)]),
  ) as T;
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
