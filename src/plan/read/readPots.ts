import { readShare } from "../../measure/share.ts";
import { collect } from "../../number/error.ts";
import { compare, type Fraction, ONE, type Value } from "../../number/fraction.ts";
import type { FewestPots } from "../input.ts";
import { kindOf, type PlanFaults } from "./planFaults.ts";

/** How pots are to be brought together. */
export interface ReadPots {
  readonly tolerance: Fraction;
  readonly tries: number;
}

/** Sets of people looked at for one dish, unless told: seconds at most. */
const TRIES = 2_000;

const FIELDS: readonly string[] = ["tolerance", "tries"] satisfies (keyof FewestPots)[];

/** Nothing where everyone keeps the ratios that suit them best. */
export function readPots(faults: PlanFaults, given: unknown): ReadPots | undefined {
  if (given === undefined || given === "exact") return undefined;
  const hint = 'write "exact", or how far off a demand may be: { tolerance: "5 %" }';
  if (typeof given !== "object") return faults.refuse(["pots"], `pots is ${kindOf(given)}`, hint);
  const record = faults.record(given, ["pots"], "how pots are shared", FIELDS, hint);
  if (!record) return undefined;
  const { tolerance: told, tries = TRIES } = record;
  if (!(Number.isInteger(tries) && (tries as number) >= 1)) {
    faults.refuse(["pots", "tries"], `tries is ${kindOf(tries)}`, "give a whole number of 1 or more");
  }
  if (told === undefined) return faults.refuse(["pots", "tolerance"], "no tolerance", hint);
  const tolerance = collect(faults.all, ["pots", "tolerance"], () =>
    readShare(told as Value, "plan-malformed"),
  );
  if (!tolerance) return undefined;
  if (compare(tolerance, ONE) < 0) return { tolerance, tries: tries as number };
  return faults.refuse(
    ["pots", "tolerance"],
    `a tolerance of ${String(told)}`,
    'give a share from 0 to below 1, or text such as "5 %"',
  );
}
