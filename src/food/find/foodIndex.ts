import type { FoodInput } from "../food.ts";
import type { FoodTable } from "../table.ts";
import { cookedSigns, keptSigns, kindsBefore, plainSigns } from "./data/smallWords.ts";
import { MiniSearch } from "./miniSearch.ts";
import { plainWords } from "./plainWords.ts";

/** A food with the words of its names. */
export interface IndexEntry {
  readonly food: FoodInput;
  /** The words of its name. */
  readonly words: ReadonlySet<string>;
  /** The words of its group. */
  readonly group: ReadonlySet<string>;
  /** The words that its name begins with, after a kind that stands before it. */
  readonly head: readonly string[];
  /** Words of a maker or a brand, which tables write in capitals. */
  readonly isBranded: boolean;
}

/** A table's foods by their words. */
export interface FoodIndex {
  readonly entries: readonly IndexEntry[];
  /** The foods that have a word: their place among the entries, and how nearly it is the word, up to 1. */
  with(word: string): ReadonlyMap<number, number>;
}

const made: WeakMap<FoodTable, FoodIndex> = /* @__PURE__ */ new WeakMap();

/** The index of a table, made when it is first searched. */
export function indexOf(table: FoodTable): FoodIndex {
  const known = made.get(table);
  if (known) return known;
  const index = makeIndex([...table]);
  made.set(table, index);
  return index;
}

function makeIndex(foods: readonly FoodInput[]): FoodIndex {
  const entries = foods.map(entryOf);
  const search = new MiniSearch<{ readonly id: number; readonly words: string }>({
    fields: ["words"],
    tokenize: (text) => text.split(" "),
    processTerm: (term) => term,
  });
  search.addAll(
    entries.map(({ food, words }, id) => ({ id, words: [...words, ...otherWords(food)].join(" ") })),
  );
  const found = new Map<string, ReadonlyMap<number, number>>();
  const exactly = (word: string): ReadonlyMap<number, number> =>
    new Map(search.search(word).map(({ id }): [number, number] => [id as number, 1]));
  const nearly = (word: string): ReadonlyMap<number, number> => {
    if (word.length < 4) return new Map();
    const hits = search.search(word, { fuzzy: 0.2, prefix: word.length > 4 });
    return new Map(hits.map(({ id }): [number, number] => [id as number, NEARLY]));
  };
  const inTwo = (word: string): ReadonlyMap<number, number> => {
    for (let at = 3; at <= word.length - 3; at++) {
      const [left, right] = [exactly(word.slice(0, at)), exactly(word.slice(at))];
      const both = [...left].filter(([id]) => right.has(id));
      if (both.length > 0) return new Map(both);
    }
    return new Map();
  };
  return {
    entries,
    with(word) {
      const known = found.get(word);
      if (known) return known;
      const hits = [exactly, inTwo, nearly].reduce<ReadonlyMap<number, number>>(
        (before, next) => (before.size > 0 ? before : next(word)),
        new Map(),
      );
      if (found.size < MOST_KEPT) found.set(word, hits);
      return hits;
    },
  };
}

/** How near a word is that was only nearly written. */
const NEARLY = 0.7;
/** Words whose foods are kept in mind. */
const MOST_KEPT = 5000;

function entryOf(food: FoodInput): IndexEntry {
  const segments = food.name.split(/[,;(]/).map(plainWords);
  const first = segments.findIndex((each) => each.length > 0 && !kindsBefore.has(each.join(" ")));
  return {
    food,
    words: new Set(segments.flat()),
    group: new Set(plainWords(food.group ?? "")),
    head: segments[Math.max(first, 0)] ?? [],
    isBranded: /[a-z]/.test(food.name) && /(?<!\p{L})\p{Lu}[\p{Lu}'’&]{2,}/u.test(food.name),
  };
}

function otherWords({ otherNames = [] }: FoodInput): string[] {
  return otherNames.flatMap(plainWords);
}

/** What a word of a food's name costs it where nobody asked for it. */
export function editCost(word: string): number {
  if (plainSigns.has(word)) return 0;
  if (keptSigns.has(word)) return 0.06;
  return cookedSigns.has(word) ? 0.04 : 0.015;
}
