import { number } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { fault, quote } from "../number/error.ts";
import {
  type Exact,
  fraction,
  isZero,
  minus,
  over,
  plus,
  times,
  toStep,
  type Value,
  ZERO,
} from "../number/exact.ts";
import { compareRatios, floor } from "../number/ratio.ts";
import {
  type Amount,
  type AmountOptions,
  amountShape,
  type ReadAmountOptions,
  readAmount,
  readContext,
  simple,
  sumOfAmounts,
} from "./amount.ts";
import { readyMeasures } from "./measures.ts";
import type { Unit } from "./units.ts";
import { readUnit } from "./unitText.ts";

export interface BreakDownOptions extends AmountOptions {
  /** The smallest step of the smallest unit; the last figure is rounded to it, halves up. */
  readonly step?: Value;
}

/**
 * Breaks a mass, a volume or an energy down into larger and smaller units: whole numbers of each,
 * and what is left in the smallest. Without `step` the parts add up to the amount exactly; with it,
 * to within half a step.
 *
 * Throws `unit-kinds-differ`, `format-malformed` (no units, a step of 0 or less) and the codes of
 * `amount`.
 *
 * @example
 * ```ts
 * const batch = breakDown("4.35 lb", ["lb", "oz"], { step: "1/4" });
 * formatAmount(batch); // => 4 lb 5 1/2 oz
 * ```
 */
export function breakDown(a: Amount | string, units: readonly string[], how: BreakDownOptions = {}): Amount {
  const { step, ...rest } = read(breakDownHow(), how, "format-malformed");
  const context = readContext(rest);
  const whole = readAmount(a, context);
  const { size } = whole;
  const set = context.set ?? (whole.measures && readyMeasures(whole.measures));
  const falling = units
    .map((unit) => readUnit(unit, { ...context, set }))
    .sort((x, y) => compareRatios(y.size, x.size));
  const odd = falling.find((unit) => unit.kind !== whole.kind);
  if (odd || size === undefined) {
    const message = `${quote(whole.unit)} does not break down into ${quote(odd?.id ?? units[0])}`;
    throw fault("unit-kinds-differ", message, "give units of the same kind as the amount");
  }
  if (falling.length === 0)
    throw fault("format-malformed", "no units to break down into", 'give some: ["lb", "oz"]', ["units"]);
  return asAmount(shareOut(times(whole.value, size), falling, step), falling);
}

const breakDownHow: () => Schema<ReadBreakDownOptions> = /* @__PURE__ */ once(() =>
  fields<ReadBreakDownOptions>({ ...amountShape(), step: optional(number({ above: 0 })) }),
);

interface ReadBreakDownOptions extends ReadAmountOptions {
  readonly step?: Exact;
}

/** Figures for units from large to small, of a total in base units. */
function shareOut(total: Exact, falling: readonly Unit[], step: Exact | undefined): readonly Exact[] {
  const figures: Exact[] = [];
  let left = total;
  falling.forEach((unit, i) => {
    const exactly = over(left, unit.size);
    const last = i === falling.length - 1;
    const figure = last ? (step ? toStep(exactly, step) : exactly) : fraction(floor(exactly));
    figures.push(figure);
    left = minus(left, times(figure, unit.size));
  });
  return carried(figures, falling, step);
}

/** Where rounding filled the smallest unit up to one of the next, it is carried there. */
function carried(
  figures: readonly Exact[],
  falling: readonly Unit[],
  step: Exact | undefined,
): readonly Exact[] {
  const [above, last] = falling.slice(-2);
  const figure = figures.at(-1);
  if (!step || !above || !last || !figure || compareRatios(times(figure, last.size), above.size) < 0)
    return figures;
  const total = figures.reduce((sum, f, i) => plus(sum, times(f, falling[i]?.size ?? ZERO)), ZERO);
  return shareOut(total, falling, undefined);
}

function asAmount(figures: readonly Exact[], falling: readonly Unit[]): Amount {
  const parts = falling.flatMap((unit, i) => {
    const figure = figures[i];
    return figure && !isZero(figure) ? [simple({ value: figure, unit })] : [];
  });
  const smallest = falling.at(-1);
  return parts.length > 0 || !smallest ? sumOfAmounts(parts) : simple({ value: ZERO, unit: smallest });
}
