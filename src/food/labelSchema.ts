import * as z from "zod/mini";
import { textSchema, valueSchema, wordSchema } from "../number/document.ts";
import type { LabelInput } from "./labelDocument.ts";
import { aboutFood } from "./schema.ts";

/** The shape of a label document; what its figures say is read afterwards, one by one. */
export function labelSchema(): z.ZodMiniType<LabelInput> {
  const amount = z.union([
    textSchema(100),
    z.strictObject({ value: valueSchema({ above: 0 }), unit: textSchema(50) }),
  ]);
  const schema = z.strictObject({
    ...aboutFood(),
    style: wordSchema(["us", "eu"]),
    per: amount,
    figures: z.record(z.string(), z.unknown()),
    source: z.optional(textSchema()),
  });
  return schema as unknown as z.ZodMiniType<LabelInput>;
}
