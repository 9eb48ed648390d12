import type { SolvedMet, SolvedMissed } from "../engine/solveTask.ts";
import { FitMet, FitMetTogether } from "./met.ts";
import { FitOutOfReach, FitOutOfReachTogether } from "./missed.ts";

/** Gives a solved fit as its caller is to have it: of one sheet, or of several by name. */
export function resultOf(
  solved: SolvedMet | SolvedMissed,
): FitMet | FitMetTogether | FitOutOfReach | FitOutOfReachTogether {
  const isOne = solved.task.dishes[0]?.name === undefined;
  if (solved.found) return isOne ? new FitMet(solved) : new FitMetTogether(solved);
  return isOne ? new FitOutOfReach(solved) : new FitOutOfReachTogether(solved);
}
