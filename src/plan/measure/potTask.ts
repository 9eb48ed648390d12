import type { Exact } from "../../number/exact.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { EaterGroup } from "../share/groups.ts";
import type { LineFactors } from "../share/lineFactors.ts";
import type { HeldTo, PotAsked } from "./potAsked.ts";

/** Someone who eats of a pot, with all that is on their plate of the meal. */
export interface Taster extends HeldTo {
  readonly factors: LineFactors;
}

/** All that goes into a pot, and who eats of it. */
export interface PotTask extends PotAsked {
  readonly tasters: readonly Taster[];
  readonly dish: string;
  readonly base: Sheet;
  readonly group: Pick<EaterGroup, "pot" | "by">;
  /** What each line of one base portion is multiplied by for all of it; lines that are not in the pot say nothing. */
  readonly totals: readonly Exact[];
  readonly portions: Exact;
  /** The most of a line that there is, in grams, by its place in the dish; of others there is enough. */
  readonly caps?: ReadonlyMap<number, Exact>;
}
