import type { Kitchen } from "../../measure/kitchen.ts";
import {
  compare,
  type Fraction,
  fraction,
  greatest,
  isZero,
  least as lesser,
  minus,
  ONE,
  over,
  plus,
  times,
  ZERO,
} from "../../number/fraction.ts";
import { askedOf } from "../../scale/fit/brought.ts";
import type { ReadDemand } from "../../scale/fit/demands.ts";
import { moveLines } from "../../scale/move.ts";
import type { Wish } from "../../scale/round/wish.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { lineTotals } from "../batch.ts";
import type { Group, LineAmounts, LineFactors } from "../groups.ts";
import { choose } from "./choose.ts";
import { type MealFigures, potBrings, type Row, rowAt } from "./figures.ts";

/** Someone who eats of a pot, with all that is on their plate of the meal. */
export interface Taster {
  readonly person: string;
  readonly demands: readonly ReadDemand[];
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
  const { base, group, kitchen, tolerance, figures } = task;
  const wishes = task.wishes ?? group.measured?.asked?.wishes ?? new Map<string, Wish>();
  const { eaters, pot } = group;
  const inPot = new Set(pot);
  const exact = lineTotals(eaters, base.plan.lines.length).map((f, line) => (inPot.has(line) ? f : ZERO));
  const sheet = moveLines(base, exact, portionsIn(task));
  const dishes = [{ name: undefined, sheet }];
  const demands = potDemands(task, exact);
  const pick = (asked: readonly ReadDemand[]) =>
    choose({ dishes, kitchen, tolerance, wishes, asked: askedOf(dishes, asked, figures.system) }, "pot");
  const found = pick(demands) ?? pick(demands.filter(({ firm }) => !firm));
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

/**
 * What everyone's demands leave to the pot, for a portion of it. As it stands the pot is always
 * within: who misses a demand already is not made to hold it here.
 */
function potDemands(task: PotTask, exact: readonly Fraction[]): readonly ReadDemand[] {
  const { dish, group, figures, tasters } = task;
  const count = portionsIn(task);
  const found = new Map<string, { readonly demand: ReadDemand; least?: Fraction; most?: Fraction }>();
  for (const { demands, factors } of tasters) {
    for (const demand of demands) {
      if (demand.subject.kind !== "amount") continue;
      const key = `${demand.subject.of} ${demand.subject.by ?? ""} ${demand.firm}`;
      const ends = found.get(key) ?? { demand };
      for (const row of figures.rows(demand)) {
        const ratio = ratioLeft(row, dish, group.pot, factors);
        if (!ratio) continue;
        if (row.side === "least") ends.least = greatest(ends.least ?? ratio, ratio);
        else ends.most = lesser(ends.most ?? ratio, ratio);
      }
      found.set(key, ends);
    }
  }
  return [...found.values()].flatMap(({ demand, least, most }): ReadDemand[] => {
    const [row] = figures.rows(demand);
    const whole = row && over(potBrings(row, dish, group.pot, exact), count);
    if (!whole || isZero(whole) || !(least ?? most)) return [];
    const ends = {
      least: least && times(whole, lesser(least, ONE)),
      most: most && times(whole, greatest(most, ONE)),
    };
    return [{ ...demand, ...ends }];
  });
}

/** By what a pot may be multiplied so that a row still just holds for someone; nothing where it says nothing. */
function ratioLeft(
  row: Row,
  dish: string,
  pot: readonly number[],
  factors: LineFactors,
): Fraction | undefined {
  const own = potBrings(row, dish, pot, factors.get(dish) ?? []);
  if (own.n <= 0n) return undefined;
  const ratio = plus(ONE, over(minus(row.end, rowAt(row, factors)), own));
  return compare(ratio, ZERO) > 0 || row.side === "most" ? ratio : undefined;
}
