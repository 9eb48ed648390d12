import type { Exact } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Ends } from "../../sheet/ends.ts";

/**
 * Where what can be anything between two ends stands to a level. `past`: all of it is above.
 * `may-be-past`: what is told can be above. `under`: none of it is above. `not-proven`: only what is not
 * told could be above.
 */
export type LevelVerdict = "under" | "past" | "may-be-past" | "not-proven";

export function verdictOn({ low, high, told }: Ends, level: Exact): LevelVerdict {
  if (low && compareRatios(low, level) > 0) return "past";
  if (high && compareRatios(high, level) <= 0) return "under";
  const known = high ?? told;
  return known && compareRatios(known, level) > 0 ? "may-be-past" : "not-proven";
}
