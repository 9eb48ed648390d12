import type { Amount } from "../../../src/measure/amount.ts";
import { amount } from "../../../src/measure/amount.ts";
import type { Kitchen } from "../../../src/measure/kitchen.ts";
import { type Exact, equals, exact, fraction, minus, over, times } from "../../../src/number/exact.ts";
import { compareRatios, floor } from "../../../src/number/ratio.ts";

/**
 * Whether a kitchen can measure an amount, told from the kitchen's own description and by nothing
 * that chooses amounts: what is wrong with it, or nothing.
 */
export function faultIn(a: Amount, place: Kitchen): string | undefined {
  if (a.value.n <= 0n) return a.value.n === 0n ? undefined : "below nothing";
  if (a.kind === "mass") return weighed(a, place);
  if (a.kind === "volume") return isSpooned(a) ? spooned(a, place) : poured(a, place);
  const parts = partsOf(a.unit, place) ?? (place.pieces === "half" ? ["1/2"] : []);
  return isWholeAnd(a.value, parts) ? undefined : "pieces that cannot be had";
}

function size(a: Amount): Exact {
  return times(a.value, a.size ?? exact(1));
}

function isMultiple(of: Exact, step: Exact): boolean {
  return over(of, step).d === 1n;
}

function weighed(a: Amount, { scale }: Kitchen): string | undefined {
  if (scale === undefined) return "no scale";
  return isMultiple(size(a), size(amount(scale))) ? undefined : "between the scale's steps";
}

function poured(a: Amount, { jug, measures }: Kitchen): string | undefined {
  if (!jug) return "no jug";
  const [step, least] = [amount(jug.step, { measures }), amount(jug.least, { measures })];
  if (compareRatios(size(a), size(least)) < 0) return "below the jug's lowest mark";
  return isMultiple(size(a), size(step)) ? undefined : "between the jug's marks";
}

const SPOONS: readonly string[] = ["cup", "tbsp", "tsp", "dessertspoon"];

function isSpooned(a: Amount): boolean {
  return (a.parts ?? [a]).some(({ unit }) => SPOONS.includes(unit));
}

/** One figure, or two as short sums go: of measures in the drawer, the larger first. */
function spooned(a: Amount, place: Kitchen): string | undefined {
  const parts = a.parts ?? [a];
  if (parts.length > 2) return "more than two figures";
  for (const part of parts) {
    if (part.measures !== place.measures) return "another kitchen's spoons";
    const has = partsOf(part.unit, place);
    if (!has) return `no ${part.unit} in the drawer`;
    if (!isWholeAnd(part.value, has)) return `a part of a ${part.unit} that the drawer has not`;
  }
  const [first, second] = parts.map((part) => part.size);
  return first && second && compareRatios(second, first) >= 0 ? "the smaller measure first" : undefined;
}

/** The parts of a cup or spoon, also where a food has its own ("cup, chopped"). */
function partsOf(unit: string, { drawer }: Kitchen): readonly string[] | undefined {
  const word = unit.split(/[ ,]/)[0] ?? "";
  const parts = Object.entries(drawer).find(([each]) => each === word)?.[1];
  return parts?.map(String);
}

function isWholeAnd(f: Exact, parts: readonly string[]): boolean {
  const rest = minus(f, fraction(floor(f)));
  return rest.n === 0n || parts.some((part) => equals(rest, exact(part)));
}
