import { word } from "../document/leaves.ts";
import { readFar } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import { andThen, byName, choice, fields, once, optional, type Schema } from "../document/schema.ts";
import type { FoodInput } from "../food/food.ts";
import type { FoodTable } from "../food/table.ts";
import type { Measures } from "../measure/measures.ts";
import { measures as measuresSchema } from "../measure/measures.ts";
import { collect, type Fault, fault, quote, throwIfAny, within } from "../number/error.ts";
import { type Exact, exact, times } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import type { WrittenAmount } from "../recipe/document.ts";
import { amountReader } from "../recipe/resolve.ts";
import { writtenAmount } from "../recipe/schema.ts";

/** A food in the cupboard, in grams of edible portion. */
export interface Stock {
  readonly food: FoodInput;
  readonly had: Exact | "enough";
}

/**
 * Reads what is in the cupboard. Foods that nothing is cooked from may stand there too, as long as
 * some table knows them.
 *
 * Throws one error with every fault: `shopping-malformed`, and the codes of amounts.
 */
export function readCupboard(given: unknown, tables: ReadonlySet<FoodTable>): readonly Stock[] {
  const faults: Fault[] = [];
  const { cupboard = {}, measures } = readFar(faults, shoppingHow(), given, "shopping-malformed") ?? {};
  const stock = Object.entries(cupboard).flatMap(([id, entry]) => {
    const read = collect(faults, ["cupboard", id], (): Stock | undefined => {
      const food = foodCalled(id, tables);
      return entry && { food, had: gramsOf(entry, food, measures) };
    });
    return read ?? [];
  });
  throwIfAny(faults);
  return stock;
}

/** What is had of a food, as written. */
type Held = "enough" | { readonly amount: WrittenAmount; readonly weighed?: "edible" | "as-purchased" };

interface ReadShoppingOptions {
  readonly cupboard?: { readonly [food: string]: Held };
  readonly measures?: Measures;
}

const shoppingHow: () => Schema<ReadShoppingOptions> = /* @__PURE__ */ once(() => {
  const enough = word(["enough"]);
  const amount = andThen(writtenAmount(), (amount): Held => ({ amount }));
  const weighed = fields<Exclude<Held, "enough">>({
    amount: writtenAmount(),
    weighed: optional(word(["edible", "as-purchased"])),
  });
  const held = choice<Held>(
    [enough, amount, weighed],
    (given) => (given === "enough" ? enough : isRecord(given) && "amount" in given ? weighed : amount),
    'an amount, "250 g", or "enough"',
  );
  return fields<ReadShoppingOptions>({
    cupboard: optional(byName(held)),
    measures: optional(andThen(measuresSchema(), (set) => set.measures)),
  });
});

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

function gramsOf(held: Held, food: FoodInput, measures: Measures | undefined): Stock["had"] {
  if (held === "enough") return "enough";
  const { amount, weighed = "edible" } = held;
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
