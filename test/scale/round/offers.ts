import { formatAmount } from "../../../src/measure/format.ts";
import type { Kitchen } from "../../../src/measure/kitchen.ts";
import { measurable } from "../../../src/measure/measurable.ts";
import { type Exact, exact, minus, ONE, over, times } from "../../../src/number/exact.ts";
import type { Sheet, SheetLine } from "../../../src/sheet/sheet.ts";

/**
 * Grams that a line may become, from the public face: what the kitchen can measure of an amount, read
 * again by `edit`.
 */
export function offersOf(s: Sheet, line: SheetLine, place: Kitchen): Exact[] {
  const measures = s.origin.measures;
  const how = measures === undefined ? {} : { measures };
  const near = (of: SheetLine): Exact[] =>
    measurable(place, of.amount, how).map(({ amount }) => {
      const edited = s.edit({ [line.key]: formatAmount(amount, how) });
      return lineOf(edited, line.key).grams;
    });
  const own = near(line);
  const weighed = (): Exact[] => {
    const gross = over(line.grams, lineOf(s.edit({ [line.key]: "1 g" }), line.key).grams);
    return near(lineOf(s.edit({ [line.key]: { value: `${gross.n}/${gross.d}`, unit: "g" } }), line.key));
  };
  if (own.length === 0) return weighed();
  if (!line.nested || line.amount.kind === "mass") return own;
  const byMass = weighed();
  if (byMass.length === 0) return own;
  // Portions stay where they are measurable as they stand.
  const isWhole = own.some((g) => minus(g, line.grams).n === 0n);
  return isWhole ? [line.grams, ...byMass] : byMass;
}

function lineOf(s: Sheet, key: string): SheetLine {
  const found = s.lines.find((line) => line.key === key);
  if (!found) throw new Error(`no line ${key}`);
  return found;
}

/** What a gram of a line brings to one portion, by the quantity. */
export function perGram(s: Sheet, line: SheetLine, of: string): Exact {
  const share = over(ONE, exact(s.portions));
  if (of === "mass") return times(share, line.added === "cooking" ? s.masses.yieldFactor : ONE);
  const brought = s.cell(line.key, of as "energy").value;
  return times(share, over(brought, line.grams));
}
