import { type ErrorCode, fault, quote, SteelyardError } from "../number/error.ts";
import { type Exact, exact, over, times, type Value } from "../number/exact.ts";
import { amount } from "./amount.ts";
import { wholeNumber } from "./amountData.ts";
import type { Unit } from "./units.ts";
import { readUnit } from "./unitText.ts";

/** Nothing but a number: no letter but an exponent, no per cent sign. */
const BARE = /^[\s\d.,/¼½¾⅐-⅞⁄∕]+$|^\s*\d*\.?\d+e[+-]?\d+\s*$/i;

/**
 * Reads a figure for something measured in a unit: `"650 kcal"`, `"2.4 MJ"`, `"1500 mg"`, `"60 g"`,
 * or a bare number, which is in that unit already. Gives it in that unit, exactly.
 *
 * Throws `unit-kinds-differ` where the figure measures something else, `amount-negative`, and the
 * codes of `amount`.
 *
 * @example
 * ```ts
 * figure("1500 mg", "g"); // => 1.5
 * figure(650, "kcal"); // => 650
 * ```
 */
export function figure(value: Value, unit: string): Exact {
  if (typeof value !== "string") return notNegative(exact(value), value);
  if (BARE.test(value)) return wholeNumber(value);
  const of = readUnit(unit, {});
  const read = hinting(`write a figure in ${unit}: "100 ${unit}"`, () => amount(value), of);
  if (read.size === undefined || read.kind !== of.kind) {
    throw fault(
      "unit-kinds-differ",
      `${quote(value)} is not a figure in ${unit}`,
      `write it in ${unit}, or in a unit of the same kind`,
    );
  }
  return over(times(read.value, read.size), of.size);
}

function notNegative(figure: Exact, written: Value): Exact {
  if (figure.n >= 0n) return figure;
  throw fault("amount-negative", `${quote(written)} is below 0`, "give 0 or more");
}

/** Faults whose hints say how an amount of food is written, which is no help where a figure is wanted. */
const OF_AMOUNTS: ReadonlySet<ErrorCode> = /* @__PURE__ */ new Set<ErrorCode>([
  ...(["amount-empty", "amount-no-number", "amount-no-size", "amount-no-unit"] as const),
  ...(["amount-unknown-unit", "measures-needed"] as const),
]);

/** Reads what is no amount of food; where it is refused as one, `hint` says what to write, but for a unit near one of the kind. */
export function hinting<T>(hint: string, read: () => T, of?: Unit): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof SteelyardError) || !OF_AMOUNTS.has(error.code)) throw error;
    const [first] = error.faults;
    throw of && namesKind(error.hint, of) ? error : fault(error.code, first?.message ?? "", hint, error.path);
  }
}

/** Whether a hint names a unit of a kind. */
function namesKind(hint: string, { kind, id }: Unit): boolean {
  if (!hint.startsWith("did you mean")) return hint.startsWith(`give ${id}`);
  return [...hint.matchAll(/"([^"]+)"/g)].some(([, word = ""]) => {
    try {
      return readUnit(word, {}).kind === kind;
    } catch {
      return false;
    }
  });
}
