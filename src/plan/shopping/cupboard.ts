import * as z from "zod/mini";
import type { FoodInput } from "../../food/food.ts";
import type { FoodTable } from "../../food/table.ts";
import type { Measures } from "../../measure/measures.ts";
import { readDocument, wordSchema } from "../../number/document.ts";
import { collect, type Fault, fault, quote, throwIfAny, within } from "../../number/error.ts";
import { exact, type Fraction, times } from "../../number/fraction.ts";
import { didYouMean } from "../../number/near.ts";
import type { WrittenAmount } from "../../recipe/document.ts";
import { amountReader } from "../../recipe/resolve.ts";
import type { InCupboard } from "./input.ts";

/** A food in the cupboard, in grams of edible portion. */
export interface Stock {
  readonly food: FoodInput;
  readonly had: Fraction | "enough";
}

/**
 * Reads what is in the cupboard. Foods that nothing is cooked from may stand there too, as long as
 * some table knows them.
 *
 * Throws one error with every fault: `shopping-malformed`, and the codes of amounts.
 */
export function readCupboard(given: unknown, tables: ReadonlySet<FoodTable>): readonly Stock[] {
  const { cupboard = {}, measures } = readDocument(howSchema(), given, "shopping-malformed");
  const faults: Fault[] = [];
  const stock = Object.entries(cupboard).flatMap(([id, entry]) => {
    const read = collect(faults, ["cupboard", id], (): Stock => {
      const food = foodCalled(id, tables);
      return { food, had: gramsOf(entry, food, measures) };
    });
    return read ?? [];
  });
  throwIfAny(faults);
  return stock;
}

interface ReadHow {
  readonly cupboard?: Readonly<Record<string, InCupboard>>;
  readonly measures?: Measures;
}

/** Measures of one's own and amounts are checked where they are read. */
function howSchema(): z.ZodMiniType<ReadHow> {
  const amount = z.custom<WrittenAmount>(isTextOrObject, { error: 'expected an amount: "250 g"' });
  const weighed = z.optional(wordSchema(["edible", "as-purchased"]));
  const entry = z.custom<InCupboard>(isTextOrObject, { error: 'expected an amount, "250 g", or "enough"' });
  const full = z.strictObject({ amount, weighed });
  const checked = entry.check((ctx) => {
    const held: unknown = ctx.value;
    if (typeof held !== "object" || held === null || !("amount" in held)) return;
    const { error } = full.safeParse(held);
    for (const issue of error?.issues ?? [])
      ctx.issues.push({ ...issue, input: held } as z.core.$ZodRawIssue);
  });
  const measures = z.custom<Measures>(isTextOrObject, { error: 'expected a set of measures: "metric"' });
  const schema = z.strictObject({
    cupboard: z.optional(z.record(z.string(), checked)),
    measures: z.optional(measures),
  });
  return schema as unknown as z.ZodMiniType<ReadHow>;
}

function isTextOrObject(value: unknown): boolean {
  return typeof value === "string" || (typeof value === "object" && value !== null && !Array.isArray(value));
}

function foodCalled(id: string, tables: ReadonlySet<FoodTable>): FoodInput {
  for (const table of tables) if (table.has(id)) return table.get(id);
  const known = [...tables].flatMap((table) => table.ids);
  const hint = didYouMean(
    id,
    new Set(known),
    "use the id of a food in the table that the sheets were made with",
  );
  throw fault("shopping-malformed", `no food is called ${quote(id)}`, hint);
}

function gramsOf(held: InCupboard, food: FoodInput, measures: Measures | undefined): Stock["had"] {
  if (typeof held === "string" && held.trim() === "enough") return "enough";
  const { amount, weighed = "edible" } =
    typeof held === "object" && "amount" in held ? held : { amount: held };
  const reader = amountReader(food, measures);
  const { grams, by } = reader.toGrams(reader.read(amount));
  // A food's own measures are told in grams of what is eaten of them.
  if (weighed === "edible" || by.kind === "measure") return grams;
  if (food.edibleShare !== undefined) return times(grams, exact(food.edibleShare));
  return within(["weighed"], () => {
    const hint = "weigh the edible portion, or give the food an edibleShare";
    throw fault("shopping-malformed", `nothing is known of what of ${quote(food.name)} is eaten`, hint);
  });
}
