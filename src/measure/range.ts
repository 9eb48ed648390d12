import { collect, type Fault, fault, quote, throwIfAny } from "../number/error.ts";
import { exact, over, plus, times } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { type Amount, ranged } from "./amount.ts";
import { cleanText } from "./clean.ts";
import { readNumber } from "./numberText.ts";

const BETWEEN = / ?(?:[-–—‒−~…]|\.\.+|\b(?:to|or)\b) ?(?=[.,]?\d)/gi;
const DASH = /^ ?[-–—‒−] ?$/;

/**
 * The two ends of a written range, each with its unit: `2-3 tbsp` is `2 tbsp` and `3 tbsp`. Nothing where the
 * text is no range; `1-1/2 cups` is one and a half or a range, which nobody can tell.
 */
export function rangeEnds(text: string): readonly [string, string] | undefined {
  const clean = cleanText(text);
  for (const { 0: mark, index } of clean.matchAll(BETWEEN)) {
    const [left, right] = [clean.slice(0, index), clean.slice(index + mark.length)];
    if (left === "" || !/^[.\d]/.test(left)) continue;
    // A measure's own name may say how long it is: `1 large (8" to 8-7/8" long)`.
    if (left.lastIndexOf("(") > left.lastIndexOf(")")) continue;
    if (DASH.test(mark) && /^\d+$/.test(left) && /^\d+ ?\/ ?\d/.test(right)) return undefined;
    const isBare = /^[\d\s./,]+$/.test(left);
    const after = collect([], [], () => readNumber(right).rest);
    if (after === undefined) continue;
    return [isBare ? `${left}${after}` : left, right];
  }
  return undefined;
}

/**
 * Reads a written amount that may be a range: its middle, with its ends. `read` reads one amount.
 *
 * Throws what `read` throws, `amount-mixed-kinds` for ends of two kinds, and `amount-range` for ends in
 * the wrong order.
 */
export function readRanged(text: string, read: (text: string) => Amount): Amount {
  const ends = rangeEnds(text);
  if (!ends) return read(text);
  const faults: Fault[] = [];
  const [least, most] = ends.map((end) => collect(faults, [], () => read(end)));
  if (!least || !most) {
    // A food may have a measure whose name looks like a range; else what is wrong with an end is what to mend.
    const whole = collect([], [], () => read(text));
    if (!whole) throwIfAny(faults.slice(0, 1));
    return whole ?? read(text);
  }
  const isAlike = least.kind === most.kind && (least.size !== undefined || least.unit === most.unit);
  if (!isAlike || (least.size === undefined) !== (most.size === undefined)) {
    const hint = "write both ends by weight, or both by the same measure";
    throw fault("amount-mixed-kinds", `${quote(text)} has ends that cannot be compared`, hint);
  }
  const low = least.size && most.size ? over(times(least.value, least.size), most.size) : least.value;
  if (compareRatios(low, most.value) > 0) {
    const hint = "write the smaller end first, or the one figure to use";
    throw fault("amount-range", `${quote(text)} ends with its smaller end`, hint);
  }
  return ranged(most, over(plus(low, most.value), exact(2)), { least: low, most: most.value });
}
