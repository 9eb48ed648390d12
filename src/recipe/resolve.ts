import type { FoodInput } from "../food/food.ts";
import { type Amount, type AmountOptions, amount, gramsOf, millilitresOf } from "../measure/amount.ts";
import type { Measures } from "../measure/measures.ts";
import { readRanged } from "../measure/range.ts";
import { exactText } from "../number/digits.ts";
import { fault, quote } from "../number/error.ts";
import { absolute, type Exact, exact, minus, over, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { WrittenAmount } from "./document.ts";
import { type OwnMeasure, ownMeasures, volumeOf } from "./ownMeasures.ts";

/** How an amount became grams, for the explanation of a figure. */
export interface Conversion {
  readonly grams: Exact;
  readonly by:
    | { readonly kind: "mass" }
    | { readonly kind: "measure"; readonly measure: string; readonly grams: Exact }
    | { readonly kind: "density"; readonly gramsPerMl: Exact; readonly from: string };
}

/** Reads and converts amounts of one food. */
export interface AmountReader {
  read(written: WrittenAmount): Amount;
  toGrams(amount: Amount): Conversion;
}

/**
 * Amounts of a food, by what the food says of itself. A mass is a mass. A volume becomes mass by
 * the food's own measure in that unit; else by its density; else by its nearest plain measure; else
 * by its only measure. `2 medium` and `1 cup, chopped` are the food's own measures, a cup of them
 * being as large as the recipe's cup.
 *
 * `read` throws the `amount-…` and `measures-…` codes, `toGrams` throws `density-needed` and
 * `amount-unknown-unit`.
 */
export function amountReader(food: FoodInput, measures: Measures | undefined): AmountReader {
  const { measures: own, names } = ownMeasures(food);
  const how = measures === undefined ? { own: names } : { measures, own: names };
  return {
    read: (written) => readWritten(written, how),
    toGrams: (a) => {
      const grams = gramsOf(a);
      if (grams !== undefined) return { grams, by: { kind: "mass" } };
      const ml = millilitresOf(a);
      if (ml !== undefined) return byVolume(food, own, a, ml);
      return byOwnMeasure(food, own, a, measures);
    },
  };
}

/** A written amount, which may be a range. */
export function readWritten(written: WrittenAmount, how: AmountOptions): Amount {
  if (typeof written !== "string") return amount(written, how);
  return readRanged(written, (text) => amount(text, how));
}

function byVolume(food: FoodInput, own: readonly OwnMeasure[], a: Amount, ml: Exact): Conversion {
  const volumes = own.filter((m) => m.ml !== undefined);
  const plain = volumes.filter((m) => m.form === "");
  const perUnit = over(ml, a.value.n === 0n ? exact(1) : a.value);
  const same = plain.find((m) => m.unit === a.unit);
  const chosen =
    same ?? (food.density === undefined ? (nearestMeasure(plain, perUnit) ?? only(volumes)) : undefined);
  if (chosen?.ml)
    return byDensity(
      ml,
      over(chosen.grams, chosen.ml),
      `its own measure: 1 ${chosen.name} is ${exactText(chosen.grams)} g`,
    );
  if (food.density !== undefined) return byDensity(ml, exact(food.density), "its density");
  const forms = volumes.map((m) => `"1 ${m.name}"`).join(", ");
  const hint = forms
    ? `write which form, one of ${forms}, or a mass`
    : "write a mass, or give the food a density (g/ml) or a measure";
  throw fault("density-needed", `${quote(food.name)} has no density, so a volume of it has no mass`, hint);
}

function byDensity(ml: Exact, gramsPerMl: Exact, from: string): Conversion {
  return { grams: times(ml, gramsPerMl), by: { kind: "density", gramsPerMl, from } };
}

function nearestMeasure(all: readonly OwnMeasure[], ml: Exact): OwnMeasure | undefined {
  const distance = (m: OwnMeasure): Exact => absolute(minus(m.ml ?? ml, ml));
  return [...all].sort((a, b) => compareRatios(distance(a), distance(b)))[0];
}

function only(all: readonly OwnMeasure[]): OwnMeasure | undefined {
  return all.length === 1 ? all[0] : undefined;
}

function byOwnMeasure(
  food: FoodInput,
  own: readonly OwnMeasure[],
  a: Amount,
  measures: Measures | undefined,
): Conversion {
  const found = own.find((m) => m.name === a.unit);
  if (!found) {
    const names = own.map((m) => `"1 ${m.name}"`).join(", ");
    throw fault(
      "amount-unknown-unit",
      `${quote(a.unit)} says nothing of the mass of ${quote(food.name)}`,
      names ? `write a mass, or one of ${names}` : "write a mass",
    );
  }
  if (found.ml === undefined)
    return {
      grams: times(a.value, found.grams),
      by: { kind: "measure", measure: found.name, grams: found.grams },
    };
  const ml = measures === undefined ? undefined : volumeOf(found.unit, measures);
  if (ml === undefined) {
    throw fault(
      "measures-needed",
      `"1 ${found.name}" does not say whose ${found.unit}`,
      'say whose spoons and cups the recipe was written with: measures: "us", "metric", …',
    );
  }
  return byDensity(
    times(a.value, ml),
    over(found.grams, found.ml),
    `its own measure: 1 ${found.name} is ${exactText(found.grams)} g`,
  );
}
