/** zod, without the methods and messages of its own faces: what schemas are made of, and nothing more. */
export { $ZodObject, $ZodType } from "zod/v4/core";
