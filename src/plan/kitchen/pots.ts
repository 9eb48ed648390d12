import type { Kitchen } from "../../measure/kitchen.ts";
import { type Fraction, fraction, ONE, over, ZERO } from "../../number/fraction.ts";
import type { ReadDemand } from "../../scale/fit/demands.ts";
import { moveLines } from "../../scale/move.ts";
import type { HeldEnd } from "../../scale/round/problem.ts";
import type { Wish } from "../../scale/round/wish.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { lineTotals } from "../batch.ts";
import type { Group, LineAmounts, LineFactors } from "../groups.ts";
import { choose } from "./choose.ts";
import type { MealFigures } from "./figures.ts";
import { potEnds } from "./potEnds.ts";

/** Someone who eats of a pot, with all that is on their plate of the meal. */
export interface Taster {
  readonly person: string;
  readonly demands: readonly ReadDemand[];
  /** What measuring is held to: limits, and of the other demands what the exact portion held. */
  readonly standing: readonly ReadDemand[];
  readonly factors: LineFactors;
}

/** A pot in amounts that can be measured, by line of the dish. */
export interface RoundedPot {
  /** What each line of one base portion is multiplied by, for all of them together. */
  readonly totals: readonly Fraction[];
  /** The same, each line rounded for itself. */
  readonly lineByLine: readonly Fraction[];
  readonly amounts: LineAmounts;
  readonly unmeasurable: readonly number[];
  readonly proven: boolean;
}

export interface PotTask {
  readonly dish: string;
  readonly base: Sheet;
  readonly group: Group;
  readonly kitchen: Kitchen;
  readonly tolerance: Fraction;
  readonly figures: MealFigures;
  readonly tasters: readonly Taster[];
  /** How many portions it makes; as many as people unless told. */
  readonly portions?: Fraction;
  /** By what lines are wished to be measured, by key; of another lot of a pot as it was for the first. */
  readonly wishes?: ReadonlyMap<string, Wish>;
}

/**
 * Rounds what goes into a pot, ratios drifting least. So far as the pot can see to it, everyone's
 * demands still hold if they take their share and everything else stays as it is; where it cannot,
 * additions may.
 */
export function roundPot(task: PotTask): RoundedPot {
  const { base, group, kitchen } = task;
  const wishes = task.wishes ?? group.measured?.asked?.wishes ?? new Map<string, Wish>();
  const { eaters, pot } = group;
  const inPot = new Set(pot);
  const exact = lineTotals(eaters, base.plan.lines.length).map((f, line) => (inPot.has(line) ? f : ZERO));
  const sheet = moveLines(base, exact, portionsIn(task));
  const dishes = [{ name: undefined, sheet }];
  const ends = potEnds(task, dishes, exact, portionsIn(task));
  const pick = (held: readonly HeldEnd[]) => choose({ dishes, kitchen, wishes, ends: held }, "pot");
  const found = pick(ends) ?? pick(ends.filter(({ firm }) => !firm));
  const moved = (choices: NonNullable<typeof found>["choices"] = []): readonly Fraction[] => {
    const grams = new Map(choices.map((choice) => [choice.line, choice.grams]));
    return exact.map((f, line) => {
      const own = grams.get(line);
      return own ? over(own, base.values.grams[line] ?? ONE) : f;
    });
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

function portionsIn({ portions, group }: PotTask): Fraction {
  return portions ?? fraction(BigInt(group.eaters.length));
}
