import type { FoodInput, FoodMeasure } from "../food/food.ts";
import { avoirdupois } from "../measure/data/avoirdupois.ts";
import { usCustomary } from "../measure/data/usCustomary.ts";
import { sameMeasure } from "../measure/own.ts";
import { exactText } from "../number/digits.ts";
import { absolute, type Exact, equals, exact, minus, over, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";

/** A household weight as a table prints it: so many of a measure weigh so much. */
export interface PrintedWeight {
  readonly amount: string;
  readonly name: string;
  readonly grams: string;
}

/** Thirds, sixths and twelfths as tables print them. */
const PARTS: { readonly [printed: string]: string } = {
  "33": "1/3",
  "333": "1/3",
  "66": "2/3",
  "67": "2/3",
  "666": "2/3",
  "667": "2/3",
  "167": "1/6",
  "083": "1/12",
};

/** A printed amount, its decimals read as the part of one that they stand for. */
export function printedAmount(printed: string): Exact {
  const [whole = "", decimals = ""] = printed.split(".");
  const part = PARTS[decimals];
  return part === undefined ? exact(printed) : exact(part).plus(whole === "" ? "0" : whole);
}

/**
 * Measures of a food from printed weights, each for one of it. Of several of one name that weigh
 * otherwise, the one that was weighed singly has the name to itself, else the first; others are told apart
 * by a number: `cup, weight 2`. Ounces and pounds are masses already: one is left out where it weighs what
 * it should, and is a portion where it does not.
 */
export function measuresOf(weights: readonly PrintedWeight[]): readonly FoodMeasure[] {
  const kept = weights.flatMap(({ amount, name: printed, grams }) => {
    const name = measureName(printed);
    const many = printedAmount(amount);
    const each = over(exact(grams), many);
    const mass = Object.hasOwn(MASSES, name) ? MASSES[name] : undefined;
    if (mass !== undefined && isNear(each, exact(mass))) return [];
    return [{ name: mass === undefined ? name : `portion, ${name}`, each, single: many.eq(1) }];
  });
  const made = new Map<string, string>();
  for (const { name, each } of kept) {
    const ownName =
      kept.find((other) => sameMeasure(other.name, name) && other.single) ??
      kept.find((other) => sameMeasure(other.name, name));
    const weight = exactText(each);
    const isTaken = (called: string): boolean => made.has(called) && made.get(called) !== weight;
    let called = name;
    if (ownName && !equals(ownName.each, each))
      for (let k = 2; called === name || isTaken(called); k += 1) called = `${name}, weight ${k}`;
    made.set(called, weight);
  }
  return [...made].map(([name, grams]) => ({ name, grams }));
}

/** A name that a measure can have: it begins with a word and ends with one. */
function measureName(printed: string): string {
  const name = printed.replace(/[\s,;]+$/, "").trim();
  return /^[\p{N}.+-]/u.test(name) ? `portion, ${name}` : name;
}

const MASSES: { readonly [name: string]: string } = { ...avoirdupois };

/** Whether a weight is what it should be, but for what was rounded off it: 1.5 in 100. */
function isNear(weight: Exact, mass: Exact): boolean {
  return compareRatios(absolute(minus(weight, mass)), times(mass, exact("0.015"))) <= 0;
}

/** Measures of volume that a density follows from, the best first. */
const VOLUMES = {
  "fl oz": "fl oz",
  cup: "cup",
  tbsp: "tbsp",
  tablespoon: "tbsp",
  tsp: "tsp",
  teaspoon: "tsp",
} as const;

/** Grams per millilitre where a measure is nothing but a volume, exactly as it implies. */
export function densityOf(measures: readonly FoodMeasure[]): Pick<FoodInput, "density"> {
  for (const [name, unit] of Object.entries(VOLUMES)) {
    const measure = measures.find((each) => each.name === name);
    const ml = usCustomary.ml[unit];
    if (measure && ml !== undefined) return { density: exactText(over(exact(measure.grams), exact(ml))) };
  }
  return {};
}
