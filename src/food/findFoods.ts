import { size, text, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { componentId } from "./componentSchema.ts";
import type { ComponentId } from "./components.ts";
import { indexOf } from "./find/foodIndex.ts";
import { plainWords } from "./find/plainWords.ts";
import { rank } from "./find/rank.ts";
import { readingsOf } from "./find/readings.ts";
import type { Figure, FoodInput, State } from "./food.ts";
import { states } from "./schema.ts";
import { checkFoodTable, type FoodTable } from "./table.ts";

/** What narrows a search. */
export interface FindOptions {
  /** Only foods weighed in this state. */
  readonly state?: State;
  /** Only foods of this group, as the table calls it. */
  readonly group?: string;
  /** Only foods of which all of these are known; among foods that answer about alike, those with the fullest data first. */
  readonly known?: readonly ComponentId[];
  /** How many at most; 10 unless told. */
  readonly limit?: number;
}

/** A food that answers the words. */
export interface FoundFood {
  readonly id: string;
  readonly name: string;
  /** How well it answers, from above 0 to 1: it ranks, and measures nothing. */
  readonly score: number;
}

/**
 * Finds foods by the words that a cook writes, best first: `rolled oats`, `2 eggs` without the figure,
 * `aubergine` or `eggplant`. Plural, word order and the spelling of either English make no difference.
 * A bare word means what a kitchen means by it: tomatoes are red and raw, milk is whole, flour is white
 * wheat, and a food is raw unless the words or `state` say otherwise.
 *
 * Throws `food-malformed` for what is no table, `options-malformed` for options that there are not.
 *
 * @example
 * ```ts
 * findFoods(starterFoods, "eggs", { limit: 1 })[0]?.id; // => egg-raw
 * findFoods(starterFoods, "cooked red kidney beans", { limit: 1 })[0]?.id; // => kidney-beans-red-boiled
 * ```
 */
export function findFoods(table: FoodTable, words: string, options: FindOptions = {}): readonly FoundFood[] {
  checkFoodTable(table);
  const { state, group, known, limit = 10 } = read(optionsSchema(), options, "format-malformed");
  const index = indexOf(table);
  const wanted = plainWords(read(text(10_000), words, "format-malformed"));
  const best = new Map<number, number>();
  for (const { place, score } of readingsOf(wanted).flatMap((reading) => rank(index, reading)))
    if (score > (best.get(place) ?? 0)) best.set(place, score);
  const found = [...best].flatMap(([place, score]) => {
    const food = index.entries[place]?.food;
    const isWanted =
      food !== undefined &&
      (state === undefined || food.state === state) &&
      (group === undefined || food.group === group) &&
      (known ?? []).every((id) => food.per100g[id] !== undefined);
    return isWanted ? [{ food, place, score: Math.min(1, Math.round(score * 1000) / 1000) }] : [];
  });
  const fullness = known && new Map(found.map(({ food }) => [food, fullOf(food)]));
  const top = Math.max(...found.map(({ score }) => score));
  const band = (score: number): number => (fullness ? -Math.floor((top - score) / ABOUT) : score);
  return found
    .sort(
      (a, b) =>
        band(b.score) - band(a.score) ||
        (fullness?.get(b.food) ?? 0) - (fullness?.get(a.food) ?? 0) ||
        b.score - a.score ||
        a.food.name.length - b.food.name.length ||
        a.place - b.place,
    )
    .filter(({ score }) => score > 0)
    .slice(0, limit)
    .map(({ food: { id, name }, score }) => ({ id, name, score }));
}

/** Foods within this of the best answer about as well. */
const ABOUT = 0.1;

/** How many components of a food its own analysis gives. */
function fullOf({ per100g }: FoodInput): number {
  return Object.values<Figure | undefined>(per100g).filter(
    (figure) =>
      typeof figure === "string" ||
      typeof figure === "number" ||
      (figure !== undefined &&
        !("borrowedFrom" in figure) &&
        !("presumed" in figure) &&
        !("calculated" in figure)),
  ).length;
}

const optionsSchema: () => Schema<FindOptions> = /* @__PURE__ */ once(() =>
  fields<FindOptions>({
    state: optional(word(states)),
    group: optional(text()),
    known: optional(list(componentId())),
    limit: optional(size("how many, 1 or more", 1)),
  }),
);
