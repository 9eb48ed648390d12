import { type ComponentId, components } from "../food/components.ts";
import { trimZeros } from "../measure/clean.ts";
import { fixedText } from "../number/digits.ts";
import type { Exact } from "../number/exact.ts";
import { checkSheet } from "../sheet/given.ts";
import { recipeNow } from "../sheet/recipeNow.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { ingredientTexts, tableName } from "./ingredientTexts.ts";
import { OUR_TYPE } from "./jsonLd/readNode.ts";

/** A recipe in the words of schema.org, as plain data. */
export interface JsonLd {
  readonly "@context": "https://schema.org";
  readonly "@type": "Recipe";
  readonly name: string;
  readonly recipeYield: string;
  readonly recipeIngredient: readonly string[];
  readonly recipeInstructions?: readonly { readonly "@type": "HowToStep"; readonly text: string }[];
  readonly nutrition: Nutrition;
  /** The recipe's own document, so that it comes back whole. */
  readonly encoding: {
    readonly "@type": "MediaObject";
    readonly encodingFormat: string;
    readonly text: string;
  };
}

/** schema.org's NutritionInformation of one portion. */
export type Nutrition = { readonly "@type": "NutritionInformation"; readonly servingSize: string } & {
  readonly [N in NutritionField]?: string;
};

export type NutritionField =
  | "calories" | "carbohydrateContent" | "cholesterolContent" | "fatContent" | "fiberContent" | "proteinContent"
  | "saturatedFatContent" | "sodiumContent" | "sugarContent" | "transFatContent"; // biome-ignore format: names

/** Which component each field of schema.org's NutritionInformation tells; energy by the kilocalorie. */
const FIELDS: readonly (readonly [NutritionField, ComponentId])[] = [
  ["calories", "energy"],
  ["carbohydrateContent", "carbohydrateByDifference"],
  ["cholesterolContent", "cholesterol"],
  ["fatContent", "fat"],
  ["fiberContent", "fibre"],
  ["proteinContent", "protein"],
  ["saturatedFatContent", "saturatedFat"],
  ["sodiumContent", "sodium"],
  ["sugarContent", "sugars"],
  ["transFatContent", "transFat"],
];

/**
 * Writes a sheet as a schema.org Recipe, with the nutrition of one portion as eaten. A figure that is not known
 * of every line is left out, since schema.org has no word for "at least". In a page, write it with `<` as
 * `\u003c`, so that no text of it can end the script: `JSON.stringify(x).replaceAll("<", "\\u003c")`.
 *
 * Throws `sheet-malformed` for what is no sheet.
 *
 * @example
 * ```ts
 * const porridge = sheet({ name: "Porridge", portions: 2, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] }, starterFoods);
 * const { recipeYield, recipeIngredient, nutrition } = toJsonLd(porridge);
 * console.log(recipeYield, recipeIngredient, nutrition.calories); // => 2 portions [ '100 g Oats, rolled, dry' ] 189.5 kcal
 * ```
 */
export function toJsonLd(s: Sheet): JsonLd {
  checkSheet(s);
  const recipe = recipeNow(s);
  const { name, portions, method } = recipe;
  return {
    "@context": "https://schema.org",
    "@type": "Recipe",
    name,
    recipeYield: `${portions} ${portions === "1" ? "portion" : "portions"}`,
    recipeIngredient: ingredientTexts(s, recipe),
    ...(method && {
      recipeInstructions: method.map((step) => ({ "@type": "HowToStep", text: namedIn(step, s) }) as const),
    }),
    nutrition: {
      "@type": "NutritionInformation",
      servingSize: `${shown(s.portionMass)} g`,
      ...Object.fromEntries(
        FIELDS.flatMap(([field, id]) => {
          const { bound, value } = s.portion(id);
          return bound === "point" && value ? [[field, `${shown(value)} ${components[id].unit}`]] : [];
        }),
      ),
    },
    encoding: { "@type": "MediaObject", encodingFormat: OUR_TYPE, text: JSON.stringify(recipe) },
  };
}

/** A step with the names of lines in place of their keys. */
function namedIn(step: string, s: Sheet): string {
  const names = new Map(s.lines.map(({ key }) => [key, tableName(s, key)]));
  return step.replace(/\{([^{}]*)\}/g, (all, key: string) => names.get(key) ?? all);
}

/** A figure to a thousandth, as labels never need more. */
function shown(figure: Exact): string {
  return trimZeros(fixedText(figure, 3));
}
