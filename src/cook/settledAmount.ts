import { type Language, say } from "../document/language.ts";
import type { Amount } from "../measure/amount.ts";
import { type FormatOptions, formatAmount } from "../measure/format.ts";
import type { Measures } from "../measure/measures.ts";
import { showFigure } from "../measure/showFigure.ts";
import { absolute, type Exact, fraction, minus, times } from "../number/exact.ts";
import { compareRatios, nearest } from "../number/ratio.ts";
import { amountHow } from "../sheet/stated.ts";

/** Keys of lines whose amounts a kitchen measured: they are shown as they are, and not rounded again. */
export type MeasuredLines = readonly string[];

/** An amount that a kitchen can measure, to the last digit. */
export function settledAmount(a: Amount, measures: Measures | undefined, language: Language): string {
  return formatAmount(a, { ...amountHow(language), ...(measures !== undefined && { measures }) });
}

/** Grams as a kitchen scale is read: whole from 10 g up, tenths from 1 g, hundredths below. */
export function weighed(grams: Exact, language: Language): string {
  const places = grams.n >= 10n * grams.d ? 0 : grams.n >= grams.d ? 1 : 2;
  return showFigure(grams, { places, unit: "g", language });
}

/** Fractions that spoons and cups come in. Common practice, no source. */
const DENOMINATORS: readonly number[] = [2, 3, 4, 8];
/** A fraction stands in for a figure that it misses by no more than this share; beyond it decimals do. */
const CLOSE: Exact = /* @__PURE__ */ fraction(1n, 20n);
const METRIC_MASSES: readonly string[] = ["mg", "g", "kg"];

/** An amount in spoons, cups, millilitres or pieces, `about` where a near fraction stands for it. */
export function measured(a: Amount, measures: Measures | undefined, language: Language): string {
  if (a.kind === "mass" && METRIC_MASSES.includes(a.unit)) return "";
  const how: FormatOptions = { ...amountHow(language), ...(measures !== undefined && { measures }) };
  if (a.parts !== undefined || METRIC_VOLUMES.includes(a.unit)) {
    return formatAmount(a, { ...how, significant: 3 });
  }
  const miss = nearestMiss(a.value);
  if (miss.n === 0n) return formatAmount(a, { ...how, denominators: DENOMINATORS });
  const close = compareRatios(miss, times(a.value, CLOSE)) <= 0;
  const amount = formatAmount(a, close ? { ...how, denominators: DENOMINATORS } : { ...how, significant: 2 });
  return say(language, "about {amount}", { amount });
}

const METRIC_VOLUMES: readonly string[] = ["ml", "cl", "dl", "l"];

/** How far a figure lies from the nearest fraction that can be measured. */
function nearestMiss(figure: Exact): Exact {
  return [1, ...DENOMINATORS]
    .map((d) => {
      const parts = fraction(BigInt(d));
      const near = fraction(nearest(times(figure, parts)), BigInt(d));
      return absolute(minus(near, figure));
    })
    .reduce((best, miss) => (compareRatios(miss, best) < 0 ? miss : best));
}
