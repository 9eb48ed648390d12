import { exactText } from "../number/digits.ts";
import { fault, quote } from "../number/error.ts";
import {
  type Exact,
  equals,
  exact,
  fraction,
  isZero,
  over,
  plus,
  times,
  type Value,
  ZERO,
} from "../number/exact.ts";
import { compareRatios, floor } from "../number/ratio.ts";
import { type Amount, gramsOf, millilitresOf, withExact } from "./amount.ts";
import { breakDown } from "./breakDown.ts";
import { type KitchenName, readyKitchen } from "./kitchen.ts";
import type { Kitchen, ReadyKitchen } from "./kitchenCheck.ts";
import { householdUnits, type Measures } from "./measureSet.ts";
import { readyMeasures } from "./measures.ts";
import { gridOf, nearestSums } from "./nearestSums.ts";
import { spelled } from "./unitText.ts";
import { plainWord } from "./words.ts";

/** An amount that a kitchen can measure. */
export interface Measurable {
  /** As the cook reads it: `1/2 cup + 1 tbsp`. */
  readonly amount: Amount;
  /** Grams of a mass, millilitres of a volume, number of a food's own measure. */
  readonly value: Exact;
}

export interface MeasurableOptions {
  /** How many to give on each side of the amount, 1 to 50; 2 unless told. */
  readonly each?: number;
  /** Whose cups and spoons the food's own measures ("cup, chopped") are; the kitchen's unless told. */
  readonly measures?: Measures;
  /**
   * The least part of one of the food's own measures that is taken, 1 over a whole number: 1 for eggs, 1/4 for
   * an apple. Halves unless told; in a kitchen of whole pieces it is 1 whatever is told.
   */
  readonly piece?: Value;
}

/**
 * The amounts nearest to one that a kitchen can measure, rising: some below, the amount itself where
 * it can be measured, some above. A mass is weighed; a volume written in spoons or cups is measured
 * in them, one written in litres in the jug, and what lies below the jug's lowest mark by spoon; a
 * food's own measures are counted, in halves or as `piece` says, or, where they are cups or spoons of it ("cup, chopped"), taken
 * in the parts that the drawer has. Nothing is ever rounded to 0. Empty where the kitchen lacks the
 * means, or where a food's own cup is another than the kitchen's.
 *
 * Throws `kitchen-malformed`, `measures-unknown`, `format-malformed`.
 *
 * @example
 * ```ts
 * measurable("metric", amount("207 ml"), { each: 1 }).map((m) => formatAmount(m.amount)); // => [ '200 ml', '210 ml' ]
 * ```
 */
export function measurable(
  place: Kitchen | KitchenName,
  a: Amount,
  how: MeasurableOptions = {},
): readonly Measurable[] {
  const ready = readyKitchen(place);
  const { each = 2 } = how;
  if (!Number.isInteger(each) || each < 1 || each > 50) {
    throw fault("format-malformed", `${quote(each)} neighbours on each side`, "ask for 1 to 50", ["each"]);
  }
  const grams = gramsOf(a);
  if (grams) return weighed(ready, grams, each);
  const ml = millilitresOf(a);
  if (ml) return poured(ready, a, ml, each);
  return a.kind === "own" ? counted(ready, a, each, how) : [];
}

function weighed({ scale }: ReadyKitchen, grams: Exact, each: number): Measurable[] {
  const step = scale && gramsOf(scale);
  if (!scale || !step) return [];
  return multiples(grams, step, ZERO, each).map(({ times: k, value }) => {
    const read = timesStep(scale, k);
    // A scale that shows ounces shows pounds and ounces.
    return {
      amount: read.unit === "oz" && read.value.n >= 16n * read.value.d ? breakDown(read, ["lb", "oz"]) : read,
      value,
    };
  });
}

function poured(ready: ReadyKitchen, a: Amount, ml: Exact, each: number): readonly Measurable[] {
  const grid = gridOf(ready);
  const least = ready.jug && millilitresOf(ready.jug.least);
  const jugged = ready.jug && least && compareRatios(ml, least) >= 0;
  // Spoons alone give way to the jug from its lowest mark on; cups do not.
  const spooned = grid && (!jugged || (isHousehold(a) && compareRatios(grid.largest.ml, least) >= 0));
  if (spooned) return nearestSums(ready, grid, ml, each);
  const step = ready.jug && millilitresOf(ready.jug.step);
  if (!ready.jug || !step || !least) return [];
  const { jug } = ready;
  return multiples(ml, step, least, each).map(({ times: k, value }) => ({
    amount: timesStep(jug.step, k),
    value,
  }));
}

function isHousehold(a: Amount): boolean {
  return householdUnits.some((unit) => unit === a.unit);
}

function counted(
  ready: ReadyKitchen,
  a: Amount,
  each: number,
  { measures, piece = HALF }: MeasurableOptions,
): Measurable[] {
  const named = spelled(plainWord(/^[^,(]+/.exec(a.unit)?.[0] ?? ""));
  const unit = householdUnits.find((each) => each === named);
  const measure = ready.drawer.find((m) => m.unit === unit);
  const size = unit && measures !== undefined ? readyMeasures(measures).units.get(unit)?.size : measure?.ml;
  if (unit && !(measure && size && equals(measure.ml, size))) return [];
  const cut = ready.kitchen.pieces === "half" && !measure ? partsBy(exact(piece)) : [];
  const parts = [ZERO, ...(measure ? measure.parts : cut)];
  return around(a.value, parts, each).map((figure) => ({ amount: withExact(a, figure), value: figure }));
}

const HALF: Exact = /* @__PURE__ */ fraction(1n, 2n);

/** Parts of one piece, above 0 and below 1. */
function partsBy(step: Exact): readonly Exact[] {
  if (step.n !== 1n || step.d > 100n) {
    const hint = 'give 1 over a whole number of at most 100: 1, "1/2", "1/4"';
    throw fault("format-malformed", `pieces in parts of ${quote(exactText(step))}`, hint, ["piece"]);
  }
  return Array.from({ length: Number(step.d) - 1 }, (_, i) => fraction(BigInt(i) + 1n, step.d));
}

/** Wholes and parts of one nearest to a figure, rising; never 0 unless the figure is. */
function around(figure: Exact, parts: readonly Exact[], each: number): Exact[] {
  if (isZero(figure)) return [ZERO];
  const whole = floor(figure);
  const reach = BigInt(each);
  const lowest = whole > reach ? whole - reach : 0n;
  const all: Exact[] = [];
  for (let w = lowest; w <= whole + reach + 1n; w += 1n)
    all.push(...parts.map((part) => plus(fraction(w), part)));
  const usable = all.filter((f) => f.n > 0n);
  const below = usable.filter((f) => compareRatios(f, figure) < 0).slice(-each);
  const same = usable.filter((f) => equals(f, figure));
  const above = usable.filter((f) => compareRatios(f, figure) > 0).slice(0, each);
  return [...below, ...same, ...above];
}

/** Multiples of a step from a least one on, nearest to a figure, rising. */
function multiples(
  figure: Exact,
  step: Exact,
  least: Exact,
  each: number,
): { times: bigint; value: Exact }[] {
  if (isZero(figure)) return [{ times: 0n, value: ZERO }];
  const steps = over(figure, step);
  const low = floor(steps);
  const first = steps.d === 1n ? low - BigInt(each) : low - BigInt(each) + 1n;
  return Array.from({ length: 2 * each + (steps.d === 1n ? 1 : 0) }, (_, i) => first + BigInt(i))
    .map((k) => ({ times: k, value: times(step, fraction(k)) }))
    .filter(({ times: k, value }) => k > 0n && compareRatios(value, least) >= 0);
}

function timesStep(step: Amount, k: bigint): Amount {
  return withExact(step, times(step.value, fraction(k)));
}
