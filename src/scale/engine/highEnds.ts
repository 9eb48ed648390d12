import { type Exact, over } from "../../number/exact.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Quantity } from "../demand.ts";
import { type LinesOf, linesOverOneScale, quantityOf, readOf } from "./lines.ts";
import type { Margin } from "./margin.ts";
import type { ReadDemand, Subject } from "./readDemand.ts";

/** Says how a demand counts its subject: a firm limit on an amount by high ends, since that much may be served. */
export function countedIn(
  { firm, least, most }: Omit<ReadDemand, "demand" | "subject">,
  subject: Subject,
  margin?: Margin,
): Subject {
  const isLimit = firm && most !== undefined && least === undefined;
  if (subject.kind !== "amount") return subject;
  return { ...subject, ...(isLimit && { by: "high" }), ...(margin && { margin }) };
}

/** Tells what each line brings as {@link quantityOf} does, figures published as a range by their high ends. */
export function highEndsOf(s: Sheet, of: Quantity): LinesOf {
  const plain = quantityOf(s, of);
  // The water that a pot gives off belongs to no line, and a line's own high end says nothing of it.
  if (of === "mass" || of === "water" || s.total(of).ranged.length === 0) return plain;
  const { highs } = readOf(s);
  const found = highs.get(of);
  if (found) return found;
  const lines = s.plan.lines.map(({ line }): Exact => {
    const { value, ranged, ends } = s.cell(line.key, of);
    const high = ranged.length > 0 ? (ends.high ?? ends.told) : undefined;
    return over(high ?? value, s.values.portions);
  });
  const made = { ...plain, ...linesOverOneScale(lines), ranged: [], isHigh: true };
  highs.set(of, made);
  return made;
}
