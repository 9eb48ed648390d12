import { type Exact, ONE, sum } from "../../number/exact.ts";
import { boundOfQuotient, boundOfSum } from "../../sheet/bound.ts";
import { boundOfEnds, sumOf } from "../../sheet/ends.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Bound } from "../../sheet/tally.ts";
import type { Quantity } from "../demand.ts";
import type { Brought } from "../engine/brought.ts";
import type { Subject } from "../engine/readDemand.ts";

/** How what sheets together bring of a subject bounds the truth, by what is known of each line. */
export function boundAt(
  sheets: readonly Sheet[],
  subject: Subject,
  {
    silent,
    loose,
    looseRest,
    ranged,
    isHigh,
    margin,
  }: Pick<Brought, "silent" | "loose" | "looseRest" | "ranged" | "isHigh" | "margin">,
): Bound {
  if (subject.kind === "share") {
    if (silent.length > 0 || (loose.length > 0 && looseRest.length > 0)) return "unknown";
    if (ranged.length > 0) return "between";
    // More of a part is a larger share, more of anything else a smaller one.
    return loose.length > 0 ? "at-least" : looseRest.length > 0 ? "at-most" : "point";
  }
  if (margin === "least") return "at-least";
  if (isHigh || margin) return silent.length + loose.length > 0 ? "unknown" : "at-most";
  if (subject.kind === "amount") return known(sheets, subject.of).bound;
  const [a, b] = [known(sheets, subject.of[0]), known(sheets, subject.of[1])];
  return b.value.n === 0n ? "unknown" : boundOfQuotient(a.bound, a.value, b.bound, b.value);
}

function known(sheets: readonly Sheet[], of: Quantity): { readonly bound: Bound; readonly value: Exact } {
  if (of === "mass") return { bound: "point", value: ONE };
  const totals = sheets.map((s) => s.total(of));
  const value = sum(totals.map((t) => t.value));
  const bound = totals.map((t) => t.bound).reduce(boundOfSum, "point");
  const isRanged = totals.some((t) => t.ranged.length > 0) && totals.every((t) => t.bound !== "unknown");
  const hasLimits = totals.some((t) => t.below.length > 0);
  return { bound: isRanged ? boundOfEnds(value, sumOf(totals.map((t) => t.ends)), hasLimits) : bound, value };
}
