import type { ComponentId } from "../../food/components.ts";
import { changesBetween } from "../../sheet/change.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Tally } from "../../sheet/tally.ts";
import type { Substitute } from "./substitute.ts";

/** The line that something stands in for. */
export interface Replaced {
  readonly sheet: Sheet;
  readonly key: string;
  /** Its food's name. */
  readonly name: string;
}

/**
 * How far a substitute moves a component of one portion, by how much and by which share of what there was. Lines
 * that stay change nothing, whether or not their figures are known; a share of what is only known in part is a bound.
 */
export interface Moves {
  by(id: ComponentId): Tally;
  share(id: ComponentId): Tally;
}

export function movesOf(before: Sheet, { sheet }: Substitute): Moves {
  const by = changesBetween(before, sheet);
  return { by, share: (id) => by(id).over(before.portion(id)) };
}
