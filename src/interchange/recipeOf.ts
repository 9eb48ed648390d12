import { number, text } from "../document/leaves.ts";
import { byName, fields, once, optional, type Schema, type Shape } from "../document/schema.ts";
import { type Measures, measures, type ReadySet } from "../measure/measures.ts";
import { collect, type Fault } from "../number/error.ts";
import type { Exact, Value } from "../number/exact.ts";
import type { LineInput, Recipe } from "../recipe/document.ts";
import { recipe } from "../recipe/recipe.ts";
import type { ReadLine } from "./readLine.ts";

/** By what a recipe from outside is read. */
export interface RecipeReadOptions {
  /** Whose spoons and cups are meant. Without it a line in spoons or cups stays unclear. */
  readonly measures?: Measures;
  /** What the recipe is called, whatever it says itself. */
  readonly name?: string;
  /** How many portions it makes, whatever it says itself. */
  readonly portions?: Value;
  /** Which food of the table a line's food words mean, by those words: what was unclear is settled so. */
  readonly means?: { readonly [words: string]: string };
}

/** A recipe from outside, as far as it could be read. */
export interface RecipeRead {
  /** The document of what is clear; none where no line is, or its name or portions are not known. */
  readonly recipe?: Recipe;
  /** Every line, in order. */
  readonly lines: readonly ReadLine[];
  /** What is not in `recipe`, or not known, and why: by `lines` and their number, `name` or `portions`. */
  readonly unclear: readonly Fault[];
}

/** {@link RecipeReadOptions}, read. */
export interface RecipeOptionsAsRead extends Omit<RecipeReadOptions, "measures" | "portions"> {
  readonly measures?: ReadySet;
  readonly portions?: Exact;
}

export const readOptions: () => Schema<RecipeOptionsAsRead> = /* @__PURE__ */ once(() =>
  fields<RecipeOptionsAsRead>(readShape()),
);

function readShape(): Shape<RecipeOptionsAsRead> {
  return {
    measures: optional(measures()),
    name: optional(text(500)),
    portions: optional(number({ above: 0 })),
    means: optional(byName(text(200))),
  };
}

/** What a recipe says of itself beside its lines. */
export interface RecipeHead {
  readonly name: string | undefined;
  readonly portions: Exact | undefined;
  readonly method: readonly string[];
}

/** The document of what is clear among lines, and all that is not. */
export function recipeFromLines(
  said: RecipeHead,
  lines: readonly ReadLine[],
  options: RecipeOptionsAsRead,
): RecipeRead {
  const unclear: Fault[] = lines.flatMap((line, i) => unclearIn(line, ["lines", i]));
  const name = options.name ?? said.name;
  const portions = options.portions ?? said.portions;
  if (name === undefined)
    unclear.push(missing("name", "the recipe does not say what it is called", 'name: "Lentil pot"'));
  if (portions === undefined)
    unclear.push(missing("portions", "the recipe does not say how many portions it makes", "portions: 4"));
  const clear = lines.flatMap(clearIn);
  if (name === undefined || portions === undefined || clear.length === 0) return { lines, unclear };
  const made = collect(unclear, [], () =>
    recipe({
      name,
      portions,
      ...(options.measures && { measures: options.measures.measures }),
      lines: clear,
      // A step names lines in braces; those of a text are brackets.
      ...(said.method.length > 0 && {
        method: said.method.map((step) => step.replaceAll("{", "(").replaceAll("}", ")")),
      }),
    }),
  );
  return made ? { recipe: made, lines, unclear } : { lines, unclear };
}

function clearIn({ line, apart }: ReadLine): readonly LineInput[] {
  return apart?.flatMap(clearIn) ?? (line ? [line] : []);
}

/** Why a line is not clear; of one that names several foods, why each of them is not. */
function unclearIn({ unclear, apart }: ReadLine, path: Fault["path"]): readonly Fault[] {
  if (apart) return apart.flatMap((each, i) => unclearIn(each, [...path, "apart", i]));
  return unclear ? [{ ...unclear, path: [...path, ...unclear.path] }] : [];
}

function missing(field: string, message: string, say: string): Fault {
  return { code: "recipe-malformed", path: [field], message, hint: `say it: { ${say} }` };
}
