import type { ComponentId } from "../food/components.ts";
import type { FoodInput } from "../food/food.ts";

/** Sources in the order in which they are first named, each once. */
export class Footnotes {
  readonly #all: string[] = [];

  /** The number of a source, from 1. */
  number(source: string): number {
    const at = this.#all.indexOf(source);
    return at < 0 ? this.#all.push(source) : at + 1;
  }

  get all(): readonly string[] {
    return this.#all;
  }
}

/** Where the figures of foods come from: what each food names, and what single figures of it do. */
export function foodSources(foods: readonly FoodInput[], shown: readonly ComponentId[]): readonly string[] {
  return [...foods.map(({ source }) => source), ...foods.flatMap((food) => ownSources(food, shown))];
}

/** Sources that single figures carry. */
function ownSources(food: FoodInput, shown: readonly ComponentId[]): string[] {
  return shown.flatMap((id) => {
    const figure = food.per100g[id];
    return typeof figure === "object" && "source" in figure && figure.source !== undefined
      ? [figure.source]
      : [];
  });
}

const LAST_WORD_OF_DIGITS = /\s(?=\S*\d\S*$)/;

/**
 * Each source once. Those that differ in their last word alone, the number of a food in one table or
 * of a paper in one journal, stand together: `USDA SR28, NDB 08120, 01077`.
 */
export function joined(sources: readonly string[]): readonly string[] {
  const tails = new Map<string, string[]>();
  for (const source of new Set(sources)) {
    const cut = LAST_WORD_OF_DIGITS.exec(source)?.index ?? source.length;
    const [head, tail] = [source.slice(0, cut), source.slice(cut + 1)];
    tails.set(head, [...(tails.get(head) ?? []), ...(tail === "" ? [] : [tail])]);
  }
  return [...tails].map(([head, ends]) => (ends.length === 0 ? head : `${head} ${ends.join(", ")}`));
}
