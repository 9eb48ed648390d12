import { read, readFar } from "../document/read.ts";
import { andThen, leaf, once, type Schema } from "../document/schema.ts";
import { checkFoodTable, type FoodTable } from "../food/table.ts";
import { collect, type Fault, fault, throwIfAny } from "../number/error.ts";
import type { Recipe } from "../recipe/document.ts";
import { recipe } from "../recipe/recipe.ts";
import { sheet } from "../sheet/build.ts";
import { ingredientTexts } from "./ingredientTexts.ts";
import { recipesIn } from "./jsonLd/nodes.ts";
import { type JsonLdRecipe, type JsonLdTimes, readNode } from "./jsonLd/readNode.ts";
import { readLineOf } from "./readLineOf.ts";
import { type RecipeRead, type RecipeReadOptions, readOptions, recipeFromLines } from "./recipeOf.ts";

/** A recipe that was read from JSON-LD. */
export interface JsonLdRead extends RecipeRead {
  /** How long it takes, in minutes, where it says so. */
  readonly times: JsonLdTimes;
}

/**
 * Reads the first schema.org Recipe of a JSON-LD document, as text or parsed: alone, in a list, in a graph or
 * inside a page. Ingredients are read as {@link linesFromText} reads them; instructions may be text, steps or
 * sections; the yield a number or text; durations as ISO 8601 writes them. Marks of HTML fall away, scripts with
 * all that is in them. What {@link toJsonLd} wrote comes back as the same recipe, unless its ingredients were
 * changed since.
 *
 * Throws one error with every fault: `json-ld-malformed`, `food-malformed`, and `format-malformed` for other options.
 *
 * @example
 * ```ts
 * const page = {
 *   "@context": "https://schema.org",
 *   "@type": "Recipe",
 *   name: "Overnight oats",
 *   recipeYield: "2 servings",
 *   recipeIngredient: ["160 g rolled oats", "400 ml whole milk"],
 *   totalTime: "PT8H5M",
 * };
 * const { recipe: oats, times } = recipeFromJsonLd(page, starterFoods);
 * console.log(oats?.lines.map(({ amount, food }) => `${amount} ${food}`)); // => [ '160 g oats-rolled-dry', '400 ml milk-whole-vitamin-d' ]
 * console.log(`${times.total}`); // => 485
 * ```
 */
export function recipeFromJsonLd(
  json: unknown,
  foods: FoodTable,
  options: RecipeReadOptions = {},
): JsonLdRead {
  checkFoodTable(foods);
  const how = read(readOptions(), options, "format-malformed");
  const faults: Fault[] = [];
  const said = readFar(
    faults,
    jsonLdSchema(),
    typeof json === "string" ? parsed(json) : json,
    "json-ld-malformed",
  );
  throwIfAny(faults);
  const { ingredients, times, encoded, ...rest } = said as JsonLdRecipe;
  const lines = ingredients.map((line) => readLineOf(line, foods, how));
  const ours =
    encoded === undefined || options.name !== undefined || options.portions !== undefined
      ? undefined
      : ownRecipe(encoded, ingredients, foods);
  return ours ? { recipe: ours, lines, unclear: [], times } : { ...recipeFromLines(rest, lines, how), times };
}

const LONGEST_JSON = 5_000_000;

function parsed(json: string): unknown {
  if (json.length > LONGEST_JSON)
    throw fault(
      "json-ld-malformed",
      `a text of ${json.length} characters`,
      `give at most ${LONGEST_JSON}, the recipe's part alone`,
    );
  try {
    return JSON.parse(json);
  } catch {
    const hint = 'give what stands inside <script type="application/ld+json">, or that parsed';
    throw fault("json-ld-malformed", "the text is not JSON", hint);
  }
}

/** Our own document of the recipe, where its foods are in the table and the ingredients are still those that it writes. */
function ownRecipe(encoded: string, ingredients: readonly string[], foods: FoodTable): Recipe | undefined {
  return collect([], [], () => {
    const own = recipe(parsed(encoded));
    const written = ingredientTexts(sheet(own, foods));
    return written.length === ingredients.length && written.every((text, i) => text === ingredients[i])
      ? own
      : undefined;
  });
}

const jsonLdSchema: () => Schema<JsonLdRecipe> = /* @__PURE__ */ once(() =>
  andThen(
    leaf(
      "a JSON-LD document",
      {},
      (given): given is object => typeof given === "object" && given !== null,
      (given) => given,
    ),
    (given, refuse) => {
      const [first] = recipesIn(given);
      if (first) return readNode(first.node, first.path, refuse);
      refuse(
        "no Recipe is in it",
        'give the object whose "@type" is "Recipe", alone, in a list or in a "@graph"',
      );
      return NONE;
    },
  ),
);

const NONE: JsonLdRecipe = {
  name: undefined,
  portions: undefined,
  ingredients: [],
  method: [],
  times: {},
  encoded: undefined,
};
