import type { FoodInput } from "../../food/food.ts";
import { type Exact, exact, fraction, greatest, least as lesser, over, times } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";

/** What one portion of a line, or so much of a food in its place, brings; nothing where it is not known. */
export interface Helping {
  readonly food: FoodInput;
  /** Edible portion. */
  readonly grams: Exact;
  /** kcal */
  readonly energy: Exact | undefined;
  /** mg */
  readonly sodium: Exact | undefined;
}

/** Grams of edible portion, for one portion. */
export interface ServingRange {
  readonly least: Exact;
  readonly most: Exact;
}

/*
 * The figures of this rule: common practice, no source, but for the day's sodium: under 2 g, WHO,
 * Guideline: Sodium intake for adults and children (2012), recommendations; read in a copy.
 */

/** Of the mass of what it stands in for. */
const OF_MASS: ServingRange = { least: /* @__PURE__ */ fraction(1n, 3n), most: /* @__PURE__ */ fraction(3n) };
/** Of the energy of what it stands in for, or 50 kcal where that is more. */
const OF_ENERGY: Exact = /* @__PURE__ */ fraction(2n);
const LITTLE_ENERGY: Exact = /* @__PURE__ */ fraction(50n);
/** Half a day's, in mg. */
const MOST_SODIUM: Exact = /* @__PURE__ */ fraction(1000n);
/** Spoonfuls of what is measured by the spoon alone. */
const SPOONS: Exact = /* @__PURE__ */ fraction(4n);

/** The most grams of a portion, by the group of a food: of what seasons, sweetens, binds or is strewn. */
const BY_GROUP: Readonly<Record<string, number>> = {
  salt: 3,
  spices: 5,
  leavening: 10,
  seaweed: 10,
  herbs: 30,
  vinegar: 30,
  oils: 45,
  sweeteners: 50,
  cocoa: 50,
  seeds: 60,
  nuts: 80,
  "dried fruit": 100,
};

/**
 * Returns how much of a food a cook would serve in the place of another, for one portion: a third to
 * three times the mass; no more than twice the energy (or 50 kcal) and half a day's sodium (1 g), unless
 * the line brought more; and of what seasons, sweetens or is strewn, or is measured by the spoon alone, no
 * more than a portion of such a food, or twice what the line had of its like.
 */
export function cooksServing(line: Helping, instead: Helping): ServingRange {
  const mosts = [times(line.grams, OF_MASS.most)];
  const notAbove = (per: Exact | undefined, most: Exact): void => {
    if (per && per.n > 0n) mosts.push(over(times(instead.grams, most), per));
  };
  if (line.energy) notAbove(instead.energy, greatest(times(line.energy, OF_ENERGY), LITTLE_ENERGY));
  notAbove(instead.sodium, greatest(line.sodium ?? MOST_SODIUM, MOST_SODIUM));
  const usual = usualPortion(instead.food);
  const isAlike = instead.food.group !== undefined && instead.food.group === line.food.group;
  if (usual) mosts.push(isAlike ? greatest(usual, times(line.grams, OF_ENERGY)) : usual);
  return { least: times(line.grams, OF_MASS.least), most: mosts.reduce(lesser) };
}

function usualPortion({ group, measures = [] }: FoodInput): Exact | undefined {
  const own = group !== undefined && Object.hasOwn(BY_GROUP, group) ? BY_GROUP[group] : undefined;
  const spoons = measures.filter(({ name }) => /^(tsp|tbsp|dash|pinch|sachet|pat)\b/.test(name));
  const sizes = spoons.map(({ grams }) => exact(grams)).sort(compareRatios);
  const bySpoon = spoons.length === measures.length ? sizes.at(-1) : undefined;
  if (own === undefined) return bySpoon && times(bySpoon, SPOONS);
  return exact(own);
}
