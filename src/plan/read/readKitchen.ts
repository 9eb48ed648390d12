import { type Kitchen, kitchen } from "../../measure/kitchen.ts";
import { readShare } from "../../measure/share.ts";
import { TWO_PER_CENT } from "../../measure/tolerance.ts";
import { collect, fault, type Path, quote } from "../../number/error.ts";
import { compare, type Fraction, ONE, type Value } from "../../number/fraction.ts";
import type { PlanFaults } from "./planFaults.ts";

/** A kitchen by name, or one of one's own; nothing where it is left out or refused. */
export function readPlace(faults: PlanFaults, given: unknown, path: Path): Kitchen | undefined {
  return given === undefined ? undefined : collect(faults.all, path, () => kitchen(given));
}

/** How far a target may be off, as a share of it. */
export function readTolerance(faults: PlanFaults, given: unknown): Fraction {
  if (given === undefined) return TWO_PER_CENT;
  const read = collect(faults.all, ["tolerance"], () => {
    const share = readShare(given as Value, "plan-malformed");
    if (compare(share, ONE) < 0) return share;
    const hint = 'give a share from 0 to below 1, or text such as "2 %"';
    throw fault("plan-malformed", `a tolerance of ${quote(given)}`, hint);
  });
  return read ?? TWO_PER_CENT;
}
