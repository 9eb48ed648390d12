import { type FoundFood, findFoods } from "../food/findFoods.ts";
import type { FoodInput } from "../food/food.ts";
import type { FoodTable } from "../food/table.ts";
import type { ReadySet } from "../measure/measures.ts";
import { collect, type Fault, quote, within } from "../number/error.ts";
import type { LineInput } from "../recipe/document.ts";
import { amountReader } from "../recipe/resolve.ts";
import { ofItsKind } from "./ofItsKind.ts";
import type { ReadLine } from "./readLine.ts";
import { searchWords } from "./searchWords.ts";
import type { Written } from "./text/written.ts";
import { waysToWrite } from "./waysToWrite.ts";

/** A food whose score is below this is offered, and not taken. */
const CLEAR = 0.75;
/** Foods offered with a line. */
const OFFERED = 5;

/** A line with the foods that may be meant, and the line of a document where food and amount are clear. */
export function readyLine(
  { apart, ...written }: Written,
  foods: FoodTable,
  set: ReadySet | undefined,
  means: { readonly [words: string]: string } = {},
): ReadLine {
  if (written.food === "") return { ...written, candidates: [] };
  const named = namedFood(written, foods, means);
  if (named) return readyFor(written, named, [{ id: named.id, name: named.name, score: 1 }], set, foods);
  if (apart.length > 0) {
    const lines = apart.map((each) => readyLine(each, foods, set, means));
    const candidates = lines.map((each) => each.candidates).reduce(inTurn, []);
    const names = apart.map(({ food }) => food);
    return {
      ...written,
      candidates: candidates.slice(0, OFFERED),
      apart: lines,
      unclear: severalFoods(names),
    };
  }
  const candidates = findFoods(foods, searchWords(written), { limit: OFFERED });
  const [first] = candidates;
  if (first === undefined || first.score < CLEAR)
    return { ...written, candidates, unclear: notFound(written.food, first) };
  return readyFor(written, foods.get(first.id), candidates, set, foods);
}

/** A line of a food that is known, where its amount is clear. */
export function readyFor(
  written: Omit<Written, "apart">,
  food: FoodInput,
  candidates: readonly FoundFood[],
  set: ReadySet | undefined,
  foods: FoodTable,
): ReadLine {
  const read = { ...written, candidates };
  if (written.amounts.length === 0) return { ...read, unclear: noAmount(written.food) };
  const faults: Fault[] = [];
  const amount = amountFor(written, food, set, faults);
  const [unclear] = faults;
  if (amount === undefined) return unclear ? { ...read, unclear: withKind(unclear, food, foods) } : read;
  return { ...read, line: lineOf(written, food, amount) };
}

/** The food that the caller says the words mean. Throws `food-unknown` where the table has none of that id. */
function namedFood(
  { food }: Omit<Written, "apart">,
  foods: FoodTable,
  means: { readonly [words: string]: string },
): FoodInput | undefined {
  const id = Object.hasOwn(means, food) ? means[food] : undefined;
  return id === undefined ? undefined : within(["means", food], () => foods.get(id));
}

/** A food without a density is asked for one, with what foods of its kind weigh. */
function withKind(why: Fault, food: FoodInput, foods: FoodTable): Fault {
  const kind = why.code === "density-needed" ? ofItsKind(food, foods) : undefined;
  return kind === undefined ? why : { ...why, hint: `${why.hint}; ${kind}` };
}

/** Foods of several names, each name's best first. */
function inTurn(a: readonly FoundFood[], b: readonly FoundFood[]): readonly FoundFood[] {
  const turns = Array.from({ length: Math.max(a.length, b.length) }, (_, i) => [a[i], b[i]]);
  const all = turns.flat().filter((each) => each !== undefined);
  return all.filter((each, i) => all.findIndex(({ id }) => id === each.id) === i);
}

/** The first way of writing the amount that the food can be measured in. */
function amountFor(
  written: Omit<Written, "apart">,
  food: FoodInput,
  set: ReadySet | undefined,
  faults: Fault[],
): string | undefined {
  const reader = amountReader(food, set?.measures);
  for (const way of waysToWrite(written, food)) {
    const read = collect(faults, [], () => reader.toGrams(reader.read(way)));
    if (read) return way;
  }
  return undefined;
}

function lineOf(written: Omit<Written, "apart">, food: FoodInput, amount: string): LineInput {
  const prep = written.preparation.join(", ");
  return { food: food.id, amount, ...(prep !== "" && { prep }) };
}

function notFound(food: string, nearest: FoundFood | undefined): Fault {
  const hint = nearest
    ? `choose one of the candidates, the nearest being ${quote(nearest.name)}, or add the food to the table`
    : "add the food to the table, or write another name of it";
  return {
    code: "food-unknown",
    path: ["food"],
    message: `no food of the table is clearly ${quote(food)}`,
    hint,
  };
}

function severalFoods(names: readonly string[]): Fault {
  return {
    code: "line-several-foods",
    path: ["food"],
    message: `one line names ${names.map((name) => quote(name)).join(" and ")}`,
    hint: "take the lines of `apart`, one for each food, or write a line for each",
  };
}

function noAmount(food: string): Fault {
  return {
    code: "amount-empty",
    path: ["amounts"],
    message: `${quote(food)} has no amount`,
    hint: 'weigh it once, and write a mass: "3 g"',
  };
}
