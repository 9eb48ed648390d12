import * as z from "zod/mini";
import { componentIds, isComponentId } from "../food/components.ts";
import { checkFoodless } from "../measure/foodless.ts";
import { push, textSchema, valueSchema, wordSchema } from "../number/document.ts";
import { collect, type Fault } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import type { LineInput, RecipeInput, RecipeNote, Retention, WrittenAmount } from "./document.ts";

let made: z.ZodMiniType<RecipeInput> | undefined;

/** The schema of a recipe document, made on first use so that importing this module does nothing. */
export function recipeSchema(): z.ZodMiniType<RecipeInput> {
  made ??= makeRecipeSchema();
  return made;
}

function makeRecipeSchema(): z.ZodMiniType<RecipeInput> {
  const text = textSchema();
  const schema = z.strictObject({
    format: z.optional(text),
    name: textSchema(500),
    portions: valueSchema({ above: 0 }),
    // A set of one's own is checked where it is read.
    measures: z.optional(
      z.custom<unknown>((v) => typeof v === "string" || (typeof v === "object" && v !== null)),
    ),
    lines: z.array(lineSchema()).check((ctx) => {
      if (ctx.value.length === 0) push(ctx, "a recipe without lines", "write at least one line");
    }),
    cookedMass: z.optional(amountSchema()),
    yieldFactor: z.optional(valueSchema({ above: 0 })),
    yieldPresumed: z.optional(z.boolean()),
    method: z.optional(z.array(textSchema(10_000))),
    notes: z.optional(z.array(noteSchema())),
  });
  return schema as unknown as z.ZodMiniType<RecipeInput>;
}

function noteSchema(): z.ZodMiniType<RecipeNote> {
  const text = textSchema();
  const schema = z.strictObject({
    kind: wordSchema(["storage", "cooling", "reheating", "safety", "general"]),
    text,
    source: z.optional(text),
    days: z.optional(valueSchema({ from: 0 })),
  });
  return schema.check((ctx) => {
    if (ctx.value.days === undefined || ctx.value.kind === "storage") return;
    const message = `days on a note on ${ctx.value.kind}`;
    push(ctx, message, 'leave days out, or make the note one on "storage"', undefined, ["days"]);
  }) as unknown as z.ZodMiniType<RecipeNote>;
}

/** A line by itself: what holds between its fields is `across.ts`'s to check. */
function lineSchema(): z.ZodMiniType<LineInput> {
  const schema = z.strictObject({
    key: z.optional(keySchema()),
    food: z.optional(textSchema(200)),
    recipe: z.optional(nestedSchema()),
    amount: amountSchema(),
    weighed: z.optional(wordSchema(["edible", "as-purchased"])),
    scaling: z.optional(wordSchema(["held", "adjustable", "per-portion"])),
    part: z.optional(textSchema(200)),
    least: z.optional(amountSchema()),
    most: z.optional(amountSchema()),
    retention: z.optional(retentionSchema()),
    added: z.optional(wordSchema(["cooking", "serving"])),
    prep: z.optional(textSchema()),
  });
  return schema as unknown as z.ZodMiniType<LineInput>;
}

/** A nested document is checked by its own `recipe()`, so here only its kind is. */
function nestedSchema(): z.ZodMiniType<string | RecipeInput> {
  return z.custom<string | RecipeInput>(
    (v) => (typeof v === "string" && v.trim() !== "") || (typeof v === "object" && v !== null),
    {
      error: "give a recipe's id or its document",
    },
  );
}

/** `/` joins keys of nested recipes and braces name lines in a method, so a key has none of them. */
function keySchema(): z.ZodMiniType<string> {
  return textSchema(200).check((ctx) => {
    if (/[/{}]/.test(ctx.value)) push(ctx, "a key with / or braces", "use letters, digits and hyphens");
  }) as z.ZodMiniType<string>;
}

/** What is wrong with an amount whatever the food is; the rest is `sheet`'s to say. */
function amountSchema(): z.ZodMiniType<WrittenAmount> {
  const fields = z.strictObject({ value: z.any(), unit: z.any() });
  return z.custom<WrittenAmount>().check((ctx) => {
    const written: unknown = ctx.value;
    if (written === undefined || typeof written === "number") {
      push(ctx, "not an amount", 'write text such as "1 1/2 tbsp", or { value, unit }');
      return;
    }
    const faults: Fault[] = [];
    collect(faults, [], () => checkFoodless(written));
    for (const { code, path, message, hint } of faults) push(ctx, message, hint, code, path);
    if (faults.length > 0 || typeof written === "string" || fields.safeParse(written).success) return;
    push(ctx, "an amount with other fields", "write { value, unit } and nothing else");
  });
}

function retentionSchema(): z.ZodMiniType<Retention> {
  const share = valueSchema({ from: 0, to: 1 });
  return z.custom<Retention>().check((ctx) => {
    const retention: unknown = ctx.value;
    if (typeof retention === "string") return;
    if (typeof retention !== "object" || retention === null || Array.isArray(retention)) {
      push(ctx, "not retention", "give a code of the retention table, or shares from 0 to 1 by component");
      return;
    }
    for (const [id, value] of Object.entries(retention)) {
      if (!isComponentId(id))
        push(
          ctx,
          `no component is called "${id}"`,
          didYouMean(id, componentIds, "use a component id"),
          "component-unknown",
          [id],
        );
      else if (!share.safeParse(value).success)
        push(ctx, "not a share", "give a share from 0 to 1", undefined, [id]);
    }
  });
}
