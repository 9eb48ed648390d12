import { count, word } from "../../document/leaves.ts";
import { isRecord } from "../../document/safe.ts";
import { andThen, choice, fields, optional, type Schema } from "../../document/schema.ts";
import { tolerance } from "../../measure/tolerance.ts";
import type { Exact } from "../../number/exact.ts";

/** How pots are to be brought together. */
export interface ReadPots {
  readonly tolerance: Exact;
  readonly tries: number;
}

/** Sets of people looked at for one dish, unless told: seconds at most. */
const TRIES = 2_000;

/** The schema of how pots are shared; undefined where everyone keeps the ratios that suit them best. */
export function potsSchema(): Schema<ReadPots | undefined> {
  const exact = andThen(word(["exact"]), () => undefined);
  const fewest = andThen(
    fields<{ readonly tolerance: Exact; readonly tries?: number }>({
      tolerance: tolerance(),
      tries: optional(count(1)),
    }),
    ({ tolerance, tries = TRIES }): ReadPots => ({ tolerance, tries }),
  );
  return choice<ReadPots | undefined>(
    [exact, fewest],
    (given) => (isRecord(given) ? fewest : exact),
    '"exact", or how far off a demand may be: { tolerance: "5 %" }',
  );
}
