import { type Exact, isZero, least, ONE, over, times, ZERO } from "../../number/exact.ts";
import { moveLines } from "../../scale/move.ts";
import type { HeldEnd } from "../../scale/round/problem.ts";
import { Sheet } from "../../sheet/sheet.ts";
import type { LineAmounts } from "../share/lineFactors.ts";
import { choose } from "./choose.ts";
import { pieceOf, wholeIn } from "./pieces.ts";
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
  /** Lines that are weighed where whole pieces were to be counted. */
  readonly undivided: readonly number[];
  readonly proven: boolean;
}

/**
 * Rounds what goes into a pot, ratios drifting least. So far as the pot can see to it, everyone's
 * demands still hold if they take their share and everything else stays as it is; where it cannot,
 * additions may.
 */
export function roundPot(task: PotTask): RoundedPot {
  const { base, group, totals, kitchen, wishes } = task;
  const inPot = new Set(group.pot);
  const planned = totals.map((f, line) => (inPot.has(line) ? f : ZERO));
  const { pot, by } = wholePieces(base, planned, task);
  const exact = by === ONE ? planned : planned.map((f) => times(f, by));
  const dishes = [{ name: undefined, sheet: withinCaps(pot, task.caps) }];
  const ends = potEnds(task, dishes, planned);
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
    undivided: (found?.undivided ?? []).map(({ line }) => line),
    proven: found?.proven ?? false,
  };
}

/** The pot as it was found; of a dish that is served in pieces, as many whole ones as come nearest. */
function wholePieces(
  base: Sheet,
  planned: readonly Exact[],
  { portions, group: { pot: lines } }: PotTask,
): { readonly pot: Sheet; readonly by: Exact } {
  const pot = moveLines(base, planned, portions);
  const piece = pieceOf(base);
  const hasDose = lines.some((line) => base.plan.lines[line]?.line.scaling === "per-portion");
  const mass = pot.masses.cooked;
  if (!piece || hasDose || isZero(mass)) return { pot, by: ONE };
  const by = over(times(piece.grams, wholeIn(piece, mass, portions)), mass);
  return {
    pot: moveLines(
      base,
      planned.map((f) => times(f, by)),
      portions,
    ),
    by,
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
