import { type Exact, greatest, isZero, minus, plus, sum, ZERO } from "../number/exact.ts";
import type { ComponentId } from "./components.ts";
import type { OneCooking } from "./energyLeft.ts";
import type { ReadFigure } from "./figure.ts";

/** What, with water, makes up the mass of a food: INFOODS proximates. */
const BESIDE_WATER: readonly ComponentId[] = ["protein", "fat", "carbohydrateByDifference", "ash", "alcohol"];

/** Grams that a cooking takes of a food's other constituents, of 100 g, by constituent. */
export function lostBesideWater({
  before,
  after,
}: Pick<OneCooking, "before" | "after">): readonly (readonly [ComponentId, Exact])[] {
  return BESIDE_WATER.flatMap((id): (readonly [ComponentId, Exact])[] => {
    const was = before(id);
    if (was.kind === "missing") return [];
    const lost = minus(was.value, after(id).value);
    return isZero(lost) ? [] : [[id, lost]];
  });
}

/**
 * Water as the mass balance leaves it: what is told of the cooked mass is told of all of it, so that where
 * ash, fat or alcohol went, so much less of the loss was water.
 */
export function waterLeft(water: ReadFigure, cooking: Pick<OneCooking, "before" | "after">): ReadFigure {
  if (water.kind === "missing") return water;
  const lost = sum(lostBesideWater(cooking).map(([, grams]) => grams));
  if (isZero(lost)) return water;
  const {
    kind,
    inputs = [],
    error: _,
    count: __,
    least: ___,
    most: ____,
    sourceCode: _____,
    ...rest
  } = water;
  const more = (end: Exact): Exact => greatest(ZERO, plus(end, lost));
  const said = kind === "known" || kind === "derived" ? inputs : [kind, ...inputs];
  return {
    ...rest,
    ...{ kind: "derived", inputs: said.filter((each) => each !== "derived"), value: more(water.value) },
    ...(water.low && { low: more(water.low) }),
    ...(water.high && { high: more(water.high) }),
  };
}
