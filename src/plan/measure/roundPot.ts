import { type Exact, least, ONE, over, times, ZERO } from "../../number/exact.ts";
import { moveLines } from "../../scale/move.ts";
import type { HeldEnd } from "../../scale/round/problem.ts";
import { Sheet } from "../../sheet/sheet.ts";
import type { LineAmounts } from "../share/lineFactors.ts";
import { choose } from "./choose.ts";
import { potEnds } from "./potEnds.ts";
import type { PotTask } from "./potTask.ts";

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

/**
 * Rounds what goes into a pot, ratios drifting least. So far as the pot can see to it, everyone's
 * demands still hold if they take their share and everything else stays as it is; where it cannot,
 * additions may.
 */
export function roundPot(task: PotTask): RoundedPot {
  const { base, group, totals, portions, kitchen, wishes } = task;
  const inPot = new Set(group.pot);
  const exact = totals.map((f, line) => (inPot.has(line) ? f : ZERO));
  const dishes = [{ name: undefined, sheet: withinCaps(moveLines(base, exact, portions), task.caps) }];
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

/** The same sheet with lines that are never rounded up beyond what there is of them. */
function withinCaps(s: Sheet, caps: PotTask["caps"]): Sheet {
  if (!caps || caps.size === 0) return s;
  const { plan, values } = s;
  const lines = plan.lines.map((own, i) => {
    const cap = caps.get(i);
    const most = cap && over(cap, values.portions);
    return most ? { ...own, most: own.most ? least(own.most, most) : most } : own;
  });
  return new Sheet(plan.withLines(lines), values);
}
