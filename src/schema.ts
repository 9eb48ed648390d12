export {
  demandJsonSchema,
  foodJsonSchema,
  kitchenJsonSchema,
  personJsonSchema,
  planJsonSchema,
  recipeJsonSchema,
} from "./document/data/jsonSchemas.ts";
export type { JsonSchema } from "./document/schema.ts";
