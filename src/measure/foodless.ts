import { isRecord } from "../document/safe.ts";
import { collect, type Fault, fault, kindOf, throwIfAny } from "../number/error.ts";
import { type Exact, times, type Value } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { amount } from "./amount.ts";
import { readValue } from "./amountData.ts";
import { cleanText } from "./clean.ts";
import type { Measures } from "./measures.ts";
import { rangeFault, readNumber, refuseAfter } from "./numberText.ts";
import { rangeEnds } from "./range.ts";
import { spelled } from "./unitText.ts";

/**
 * Refuses a written amount for what is wrong with it whatever the food is: a malformed figure, one
 * below 0, no unit, and a range unless it may be one. What a unit means is the food's to say, so that units pass.
 *
 * Throws `amount-…` and `number-…` codes.
 */
export function checkFoodless(
  written: unknown,
  mayRange = false,
): string | { readonly value: Value; readonly unit: string } {
  if (typeof written === "string") {
    const ends = mayRange ? rangeEnds(written) : undefined;
    for (const end of ends ?? [written]) checkText(end);
    return written;
  }
  if (!isRecord(written)) {
    throw fault(
      "amount-malformed",
      `${kindOf(written)} is not an amount`,
      'write text such as "1 1/2 tbsp", or { value: 100, unit: "g" }',
    );
  }
  const { value, unit } = written as { readonly value?: unknown; readonly unit?: unknown };
  const faults: Fault[] = [];
  collect(faults, ["value"], () => readValue(value));
  collect(faults, ["unit"], () => {
    if (typeof unit === "string" && unit.trim() !== "") return;
    throw fault("amount-no-unit", "the amount has no unit", 'give one: { value: 100, unit: "g" }');
  });
  const strange = Object.keys(written).find((field) => field !== "value" && field !== "unit");
  if (strange !== undefined)
    faults.push({
      code: "amount-malformed",
      path: [strange],
      message: "an amount with other fields",
      hint: "write { value, unit } and nothing else",
    });
  throwIfAny(faults);
  return { value, unit } as { readonly value: Value; readonly unit: string };
}

/** A range after a unit that every food has: "2 g to 3 g", "5g-10g". */
const RANGE_AFTER_UNIT = /^ ?([a-zA-Zµ]+) ?(?:[-–—‒−~…]|\.\.+|to |or )(?: ?[.,]?\d)/;

function checkText(text: string): void {
  const clean = cleanText(text);
  if (clean === "") throw fault("amount-empty", "the amount is empty", 'write a figure and a unit: "100 g"');
  const { rest } = readNumber(clean);
  // A food's own measure may begin with a figure: "2 10-inch".
  if (/^ \d/.test(rest)) return;
  refuseAfter(clean.slice(0, clean.length - rest.length), rest);
  const unit = RANGE_AFTER_UNIT.exec(rest)?.[1];
  if (unit !== undefined && spelled(unit.toLowerCase()) !== undefined) throw rangeFault(text);
}

/**
 * Whether one written amount is above another, as far as can be told without the food: both masses,
 * or both volumes of a known size.
 */
export function isAbove(a: unknown, b: unknown, measures: Measures | undefined): boolean {
  const [left, right] = [sizeOf(a, measures), sizeOf(b, measures)];
  return left !== undefined && left.kind === right?.kind && compareRatios(left.size, right.size) > 0;
}

function sizeOf(
  written: unknown,
  measures: Measures | undefined,
): { readonly kind: string; readonly size: Exact } | undefined {
  return collect([], [], () => {
    const read = amount(written as string, measures === undefined ? {} : { measures });
    return read.size && { kind: read.kind, size: times(read.value, read.size) };
  });
}
