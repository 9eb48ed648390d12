import type { ComponentId } from "../../food/components.ts";
import { type Exact, exact, isZero, over } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { boundOfEnds, type Ends } from "../../sheet/ends.ts";
import { addUp, type EnergyBy } from "../../sheet/energy.ts";
import { type Bound, Tally } from "../../sheet/tally.ts";
import type { EatenPortion } from "../portion/eaten.ts";
import type { EnergyRange, RangeOf } from "../ranges/range.ts";

/** Where a share of energy lies against a published range of a day's. */
export type RangeVerdict = "under" | "within" | "over" | "not-proven";

/** A share of the portion's energy, and a published range where there is one. */
export interface EnergyBalance {
  readonly of: RangeOf;
  /** Its energy, kcal. */
  readonly energy: Tally;
  /** 0 to 1; nothing where nothing is known. */
  readonly share: Exact | undefined;
  readonly bound: Bound;
  /** Between what the share can lie; nothing for an end that nothing limits. */
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
  readonly range: EnergyRange | undefined;
  readonly verdict: RangeVerdict | undefined;
}

/** Energy of a gram of fatty acid, and of sugar: general Atwater factors, as `fit` counts them. */
const PER_GRAM: { readonly [O in RangeOf]?: readonly [ComponentId, number] } = {
  saturatedFat: ["saturatedFat", 9],
  linoleicAcid: ["linoleicAcid", 9],
  alphaLinolenicAcid: ["alphaLinolenicAcid", 9],
  omega3: ["omega3", 9],
  polyunsaturatedFat: ["polyunsaturatedFat", 9],
  transFat: ["transFat", 9],
  addedSugars: ["addedSugars", 4],
  freeSugars: ["addedSugars", 4],
};

/**
 * The portion's shares of energy by a factor system: those that it counts, and those with a range.
 * Figures that are published with their ends count with both: a verdict that only one of them bears out is
 * not proven.
 */
export function balanceOf(
  portion: EatenPortion,
  ranges: readonly EnergyRange[],
  system: EnergyBy,
): readonly EnergyBalance[] {
  const parts = portion.energies(system);
  const whole = addUp("kcal", [...parts.values()]);
  if (isZero(whole.value)) return [];
  const ofParts = [...parts].flatMap(([of, energy]): EnergyBalance[] => {
    const known = ranges.filter((range) => range.of === of);
    if (known.length > 0) return known.map((range) => held(range.of, energy, whole, range));
    return isRangeOf(of) ? [held(of, energy, whole, undefined)] : [];
  });
  const others = ranges
    .filter(({ of }) => !parts.has(of))
    .flatMap((range): EnergyBalance[] => {
      const energy = energyOf(portion, range.of);
      return energy ? [held(range.of, energy, whole, range)] : [];
    });
  const hasSaturated = others.some(({ of }) => of === "saturatedFat");
  const saturated = hasSaturated ? undefined : energyOf(portion, "saturatedFat");
  return [...ofParts, ...others, ...(saturated ? [held("saturatedFat", saturated, whole, undefined)] : [])];
}

function isRangeOf(part: string): part is RangeOf {
  return ["protein", "fat", "carbohydrate", "fibre", "alcohol"].includes(part);
}

function energyOf(portion: EatenPortion, of: RangeOf): Tally | undefined {
  const [id, factor] = PER_GRAM[of] ?? [];
  if (id === undefined || factor === undefined) return undefined;
  const grams = portion.brings(id);
  const kcal = grams.times(factor);
  // Free sugars are added sugars and more: those of honey and juice.
  const isPart = of === "freeSugars" && grams.bound !== "unknown";
  const ends = (): Ends => (isPart ? { ...kcal.ends, high: undefined } : kcal.ends);
  const whole = grams.bound === "point" ? "at-least" : grams.bound;
  const part = grams.ranged.length > 0 ? boundOfEnds(kcal.value, ends(), false) : whole;
  const bound = isPart ? part : grams.bound;
  return new Tally(kcal.value.n, kcal.value.d, "kcal", grams, () => grams.coverage, bound, ends);
}

function held(of: RangeOf, energy: Tally, whole: Tally, range: EnergyRange | undefined): EnergyBalance {
  const share = energy.over(whole);
  const known = share.bound !== "unknown";
  return {
    of,
    energy,
    share: known ? share.value : undefined,
    bound: share.bound,
    least: known ? share.least : undefined,
    most: known ? share.most : undefined,
    range,
    verdict: range && verdictOf(share, range),
  };
}

function verdictOf({ value: share, bound, ranged, ends }: Tally, range: EnergyRange): RangeVerdict {
  const end = (text: string | undefined): Exact | undefined =>
    text === undefined ? undefined : over(exact(text), exact(100));
  const [least, most] = [end(range.least), end(range.most)];
  if (ranged.length > 0) return verdictOfEnds(ends, least, most);
  const isUnder = least !== undefined && compareRatios(share, least) < 0;
  const isOver = most !== undefined && compareRatios(share, most) > 0;
  if (bound === "point") return isUnder ? "under" : isOver ? "over" : "within";
  if (bound === "at-least") return isOver ? "over" : !isUnder && most === undefined ? "within" : "not-proven";
  if (bound === "at-most")
    return isUnder ? "under" : !isOver && least === undefined ? "within" : "not-proven";
  return "not-proven";
}

function verdictOfEnds({ low, high }: Ends, least: Exact | undefined, most: Exact | undefined): RangeVerdict {
  if (least && high && compareRatios(high, least) < 0) return "under";
  if (most && low && compareRatios(low, most) > 0) return "over";
  const isEnough = least === undefined || (low !== undefined && compareRatios(low, least) >= 0);
  const isFew = most === undefined || (high !== undefined && compareRatios(high, most) <= 0);
  return isEnough && isFew ? "within" : "not-proven";
}

/** A quotient that is often asked for, with what has been published of it. */
export interface PortionRatio {
  readonly id: "n6-to-n3" | "sodium-to-potassium" | "fibre-per-1000-kcal";
  readonly name: string;
  readonly unit: string;
  /** Nothing where it would be divided by nothing, or too little is known. */
  readonly value: Exact | undefined;
  readonly bound: Bound;
  /** Between what it can lie; nothing for an end that nothing limits. */
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
  readonly note: string;
  readonly source: string;
}

/** n-6 to n-3 fatty acids by mass, sodium to potassium by count of atoms, grams of fibre in 1,000 kcal. */
export function ratiosOf(portion: EatenPortion): readonly PortionRatio[] {
  const brings = (id: ComponentId): Tally => portion.brings(id);
  return [
    ratio("n6-to-n3", "n-6 to n-3 fatty acids", "", brings("omega6"), brings("omega3"), N6_N3),
    ratio(
      "sodium-to-potassium",
      "sodium to potassium, mole for mole",
      "",
      brings("sodium").times(POTASSIUM_G_PER_MOL),
      brings("potassium").times(SODIUM_G_PER_MOL),
      SODIUM_POTASSIUM,
    ),
    ratio(
      "fibre-per-1000-kcal",
      "fibre in 1,000 kcal",
      "g",
      brings("fibre").times(1000),
      brings("energy"),
      FIBRE,
    ),
  ];
}

/** Standard atomic weights: IUPAC, abridged to five digits (2021). */
const SODIUM_G_PER_MOL = "22.990";
const POTASSIUM_G_PER_MOL = "39.098";

type Told = Pick<PortionRatio, "note" | "source">;

const N6_N3: Told = {
  note: "no body of the three sets a figure; a workshop of the UK Food Standards Agency found the ratio of little use beside the amounts of long-chain n-3",
  source: "UK Food Standards Agency, workshop report on the n-6:n-3 ratio, British Journal of Nutrition 2007",
};

const SODIUM_POTASSIUM: Told = {
  note: "about 1 where a day holds 2 g of sodium and 3,510 mg of potassium, the WHO's limits for adults",
  source: "World Health Organization 2012, guidelines on sodium and on potassium intake",
};

const FIBRE: Told = {
  note: "14 g is what the United States' adequate intakes of fibre were reckoned from",
  source: "Institute of Medicine (US) 2002/2005, DRI for macronutrients, chapter 7",
};

function ratio(
  id: PortionRatio["id"],
  name: string,
  unit: string,
  above: Tally,
  below: Tally,
  said: { readonly note: string; readonly source: string },
): PortionRatio {
  const quotient = isZero(below.value) ? undefined : above.over(below);
  const known = quotient && quotient.bound !== "unknown" ? quotient : undefined;
  return {
    id,
    name,
    unit,
    value: known?.value,
    bound: known?.bound ?? "unknown",
    least: known?.least,
    most: known?.most,
    ...said,
  };
}
