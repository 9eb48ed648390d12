import { type Exact, fraction, over, times } from "../number/exact.ts";
import { ceiling, compareRatios } from "../number/ratio.ts";

/**
 * To what a shop weighs out, in grams: up to a whole gram below 20 g, to 5 g below 100 g, to 10 g below
 * 1 kg, to 50 g below 10 kg, to 100 g from there on. Common practice, no source.
 */
const STEPS: readonly { readonly below: bigint; readonly step: bigint }[] = [
  { below: 20n, step: 1n },
  { below: 100n, step: 5n },
  { below: 1_000n, step: 10n },
  { below: 10_000n, step: 50n },
];
const LARGEST = 100n;

/** Grams rounded up to what a shop weighs out, so that it covers what is needed. */
export function weighedOut(grams: Exact): Exact {
  const found = STEPS.find(({ below }) => compareRatios(grams, fraction(below)) < 0);
  const step = fraction(found?.step ?? LARGEST);
  return times(fraction(ceiling(over(grams, step))), step);
}
