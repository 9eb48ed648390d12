/** Makes the JSON Schemas of documents from the very schemas that the reader uses. */
import { execFileSync } from "node:child_process";
import { toJSONSchema } from "zod/v4/core";
import type { Schema } from "../../src/document/schema.ts";
import { foodSchema } from "../../src/food/schema.ts";
import { kitchenSchema } from "../../src/measure/kitchenCheck.ts";
import { personSchema } from "../../src/person/readPerson.ts";
import { storedPlanSchema } from "../../src/plan/openPlan.ts";
import { recipeSchema } from "../../src/recipe/schema.ts";
import { demandSchema } from "../../src/scale/fit/demands.ts";
import { root } from "../sources.ts";

/** Each document with its title and its schema. */
const documents: { readonly [name: string]: readonly [string, () => Schema<unknown>] } = {
  recipe: ["A recipe", recipeSchema],
  food: ["A food, its figures per 100 g of edible portion", foodSchema],
  person: ["A person", personSchema],
  demand: ["What a portion must meet", demandSchema],
  plan: ["A plan as it is stored", storedPlanSchema],
  kitchen: ["What can be measured where the food is made", kitchenSchema],
};

export const names: readonly string[] = Object.keys(documents);

/** The JSON Schema of a document, draft 2020-12. */
function jsonSchemaOf([title, schema]: readonly [string, () => Schema<unknown>]): object {
  const { $schema, ...rest } = toJSONSchema(schema(), {
    io: "input",
    reused: "ref",
    unrepresentable: "any",
    override: ({ zodSchema, jsonSchema }) => {
      Object.assign(jsonSchema, (zodSchema._zod.def as { readonly json?: object }).json);
    },
  });
  return { $schema, title, ...rest };
}

/** The text of the data file. */
export function dataFile(): string {
  const constants = Object.entries(documents).map(
    ([name, made]) => `export const ${name}JsonSchema: JsonSchema = ${JSON.stringify(jsonSchemaOf(made))};\n`,
  );
  const source = `// JSON Schemas of documents (draft 2020-12), made from the schemas that the reader uses: npm run schemas.
import type { JsonSchema } from "../schema.ts";

${constants.join("\n")}`;
  return execFileSync("npx", ["biome", "format", "--stdin-file-path=src/document/data/jsonSchemas.ts"], {
    cwd: root,
    input: source,
    encoding: "utf8",
  });
}
