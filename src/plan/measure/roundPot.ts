import type { Kitchen } from "../../measure/kitchen.ts";
import { type Exact, ONE, times, ZERO } from "../../number/exact.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import { moveLines } from "../../scale/move.ts";
import type { HeldEnd } from "../../scale/round/problem.ts";
import type { Wish } from "../../scale/round/wish.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Group, LineAmounts, LineFactors } from "../share/groups.ts";
import { choose } from "./choose.ts";
import type { MealFigures } from "./figures.ts";
import { potEnds } from "./potEnds.ts";

/** What someone's portion of a meal is held to. */
export interface HeldTo {
  readonly person: string;
  readonly demands: readonly ReadDemand[];
  /** What measuring is held to: limits, and of the other demands what the exact portion held. */
  readonly standing: readonly ReadDemand[];
}

/** Someone who eats of a pot, with all that is on their plate of the meal. */
export interface Taster extends HeldTo {
  readonly factors: LineFactors;
}

/** A pot in amounts that can be measured, by line of the dish. */
export interface RoundedPot {
  /** What each line of one base portion is multiplied by, for all of them together. */
  readonly totals: readonly Exact[];
  /** The same, each line rounded for itself. */
  readonly lineByLine: readonly Exact[];
  readonly amounts: LineAmounts;
  readonly unmeasurable: readonly number[];
  readonly proven: boolean;
}

/** What a pot is measured with, and what everyone's portion of the meal is held to, by person. */
export interface PotAsked {
  readonly kitchen: Kitchen;
  readonly tolerance: Exact;
  readonly figures: MealFigures;
  readonly heldTo: ReadonlyMap<string, HeldTo>;
  /** By what lines are wished to be measured, by key. */
  readonly wishes: ReadonlyMap<string, Wish>;
}

/** All that goes into a pot, and who eats of it. */
export interface PotTask extends PotAsked {
  readonly tasters: readonly Taster[];
  readonly dish: string;
  readonly base: Sheet;
  readonly group: Pick<Group, "pot" | "by">;
  /** What each line of one base portion is multiplied by for all of it; lines that are not in the pot say nothing. */
  readonly totals: readonly Exact[];
  readonly portions: Exact;
}

/**
 * Rounds what goes into a pot, ratios drifting least. So far as the pot can see to it, everyone's
 * demands still hold if they take their share and everything else stays as it is; where it cannot,
 * additions may.
 */
export function roundPot(task: PotTask): RoundedPot {
  const { base, group, totals, portions, kitchen, wishes } = task;
  const inPot = new Set(group.pot);
  const exact = totals.map((f, line) => (inPot.has(line) ? f : ZERO));
  const dishes = [{ name: undefined, sheet: moveLines(base, exact, portions) }];
  const ends = potEnds(task, dishes, exact);
  const pick = (held: readonly HeldEnd[]) => choose({ dishes, kitchen, wishes, ends: held }, "pot");
  const found = pick(ends) ?? pick(ends.filter(({ firm }) => !firm));
  const moved = (choices: NonNullable<typeof found>["choices"] = []): readonly Exact[] => {
    const ratios = new Map(choices.map(({ line, ratio }) => [line, ratio]));
    return exact.map((f, line) => times(f, ratios.get(line) ?? ONE));
  };
  const amounts = new Map(found?.choices.map(({ line, amount }) => [line, amount]));
  return {
    totals: moved(found?.choices),
    lineByLine: moved(found?.lineByLine),
    amounts: exact.map((_, line) => amounts.get(line)),
    unmeasurable: (found?.unmeasurable ?? []).map(({ line }) => line),
    proven: found?.proven ?? false,
  };
}
