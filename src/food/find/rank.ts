import { cookedSigns, kindWords, rawSigns, smallWords } from "./data/smallWords.ts";
import { editCost, type FoodIndex, type IndexEntry } from "./foodIndex.ts";
import type { WordReading } from "./readings.ts";

/** A food's place in the index, and how well it answers the words: up to 1. */
export interface Ranked {
  readonly place: number;
  readonly score: number;
}

/**
 * How well each food answers one reading of the words: the share of them that it has, rare words
 * counting more; whether its name begins with them; and how much else its name says that nobody asked for.
 */
export function rank(index: FoodIndex, reading: WordReading): Ranked[] {
  const isOfState = (word: string): boolean => cookedSigns.has(word) || UNCOOKED.has(word);
  const plain = reading.core.filter((word) => !isOfState(word));
  const core = [...new Set(plain)].map((word) => {
    const hits = index.with(word);
    return { word, hits, weight: weightOf(word, hits.size, index.entries.length) };
  });
  const ways = reading.core.filter((word) => cookedSigns.has(word));
  const uncooked = reading.core.filter((word) => UNCOOKED.has(word));
  const isSaidOtherwise = (word: string): boolean =>
    (ways.length > 0 && rawSigns.has(word)) ||
    (reading.core.includes("fresh") && DRIED.has(word)) ||
    (reading.core.includes("dried") && UNCOOKED.has(word));
  const unless = new Set([...uncooked, ...reading.soft].filter((word) => !isSaidOtherwise(word)));
  const soft = [...unless].map((word) => ({ word, hits: index.with(word) }));
  const whole = core.reduce((sum, { weight }) => sum + weight, 0);
  const asked = new Set([...reading.core, ...unless]);
  const places = new Set(core.flatMap(({ hits, weight }) => (weight > SMALL ? [...hits.keys()] : [])));
  return [...places].flatMap((place): Ranked[] => {
    const entry = index.entries[place];
    if (!entry || whole === 0) return [];
    const share = core.reduce((sum, { hits, weight }) => sum + weight * (hits.get(place) ?? 0), 0) / whole;
    if (share < LEAST_SHARE) return [];
    const has = soft.filter(({ word, hits }) => hits.get(place) === 1 || entry.group.has(word)).length;
    const begins = shareOfHead(entry, core, asked, place);
    const score = share * (0.6 + 0.25 * begins) + 0.15 * (soft.length === 0 ? 1 : has / soft.length) * share;
    return [
      { place, score: score - reading.less - excess(entry, asked) - otherwiseMade(entry, asked, ways) },
    ];
  });
}

const SMALL = 0.1;
const LEAST_SHARE = 0.25;
const DRIED: ReadonlySet<string> = new Set(["dried", "ground", "spice"]);
const UNCOOKED: ReadonlySet<string> = new Set(["raw", "fresh", "uncooked", "unprepared"]);
const OF_A_KIND = 0.35;

function weightOf(word: string, foods: number, all: number): number {
  if (smallWords.has(word)) return SMALL;
  return Math.log(1 + all / Math.max(foods, 0.5)) * (kindWords.has(word) ? OF_A_KIND : 1);
}

/** How much of what a name begins with was asked for. */
function shareOfHead(
  { head }: IndexEntry,
  core: readonly { readonly word: string; readonly hits: ReadonlyMap<number, number> }[],
  asked: ReadonlySet<string>,
  place: number,
): number {
  if (head.some((word) => asked.has(word)))
    return head.filter((word) => asked.has(word) || editCost(word) === 0).length / head.length;
  return core.some(({ word, hits }) => hits.has(place) && head.some((each) => each.startsWith(word)))
    ? 0.4
    : 0;
}

/** What a name costs by all that it says and nobody asked for. */
function excess({ words, isBranded }: IndexEntry, asked: ReadonlySet<string>): number {
  let cost = isBranded ? BRANDED : 0;
  for (const word of words) if (!asked.has(word)) cost += editCost(word);
  return Math.min(cost, MOST_EXCESS);
}

const BRANDED = 0.1;
const MOST_EXCESS = 0.25;

/** A food is raw unless a way of cooking was asked for; then it is cooked, best in that way. */
function otherwiseMade(
  { words, food }: IndexEntry,
  asked: ReadonlySet<string>,
  ways: readonly string[],
): number {
  const signs = [...words].filter((word) => cookedSigns.has(word));
  if (ways.length === 0) {
    const isCooked =
      food.state === undefined ? signs.some((word) => !asked.has(word)) : food.state === "cooked";
    return isCooked ? COOKED : 0;
  }
  if (ways.some((way) => words.has(way))) return 0;
  return food.state === "cooked" || signs.length > 0 ? IN_ANOTHER_WAY : COOKED;
}

const COOKED = 0.15;
const IN_ANOTHER_WAY = 0.03;
