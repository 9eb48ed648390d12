/** zod, without the methods and messages of its own faces: what schemas are made of, and nothing more. */
export {
  $ZodArray,
  $ZodLazy,
  $ZodNever,
  $ZodObject,
  $ZodOptional,
  $ZodRecord,
  $ZodString,
  type $ZodType,
  $ZodUnion,
  $ZodUnknown,
} from "zod/v4/core";
