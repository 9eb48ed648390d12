import { type Exact, exact } from "../../src/number/exact.ts";

/** Doubles are within this part of the exact figure. */
const WITHIN = exact("1e-12");

/** Whether a double stands for a figure: near enough, or for none by being no number. */
export function standsFor(double: number, figure: Exact | undefined): boolean {
  if (figure === undefined) return Number.isNaN(double);
  if (!Number.isFinite(double)) return false;
  return exact(double).minus(figure).abs().lte(figure.abs().times(WITHIN));
}
