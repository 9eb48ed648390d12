import type { Kitchen } from "../../measure/kitchen.ts";
import { type Exact, ONE, times } from "../../number/exact.ts";
import { askedOf } from "../../scale/engine/brought.ts";
import { type Dish, nameIn } from "../../scale/engine/model.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import { moveLines } from "../../scale/move.ts";
import type { SubjectFigures } from "../../scale/round/heldBefore.ts";
import { demandEnds, type HeldEnd } from "../../scale/round/problem.ts";
import type { Wish } from "../../scale/round/wish.ts";
import type { LineAmounts, LineFactors } from "../share/lineFactors.ts";
import { choose, type LineChoice } from "./choose.ts";
import type { MealFigures } from "./figures.ts";

/** One person's additions in amounts that can be measured, with the rest of the portion. */
export interface RoundedAdditions {
  readonly factors: LineFactors;
  /** Each line that is added rounded for itself. */
  readonly lineByLine: LineFactors;
  readonly amounts: ReadonlyMap<string, LineAmounts>;
  /** Lines that the kitchen cannot measure. */
  readonly unmeasurable: readonly AddedLine[];
  /** Lines that are weighed where whole pieces were to be counted. */
  readonly undivided: readonly AddedLine[];
  readonly proven: boolean;
}

interface AddedLine {
  readonly dish: string;
  readonly line: number;
}

export interface AdditionsTask {
  readonly figures: MealFigures;
  /** What the portion is held to: see {@link heldBefore}. */
  readonly standing: readonly ReadDemand[];
  /** What the day is held to that it is a part of, and what the rest of the day brings of that. */
  readonly ofDay: readonly { readonly demand: ReadDemand; readonly beside: SubjectFigures }[];
  readonly kitchen: Kitchen;
  readonly tolerance: Exact;
  /** What the pots leave as it stands: lines that someone shares, by dish. */
  readonly inPot: ReadonlyMap<string, ReadonlySet<number>>;
  /** By what the lines of a dish are wished to be measured. */
  readonly wishesFor: (dish: string) => ReadonlyMap<string, Wish>;
  /** The portion with its shares of the pots, additions as they were found. */
  readonly factors: LineFactors;
}

/**
 * Rounds what is added for one person, across the dishes of a meal, so that the portion with its
 * shares of the pots meets what was asked; nothing where no amounts keep the firm demands.
 */
export function roundAdditions(task: AdditionsTask): RoundedAdditions | undefined {
  const { figures, standing, ofDay, kitchen, tolerance, inPot, wishesFor, factors } = task;
  const dishes = figures.dishes.flatMap(({ name = "", sheet }): Dish[] => {
    const own = factors.get(name);
    return own ? [{ name, sheet: moveLines(sheet, own, ONE) }] : [];
  });
  const wishes = new Map<string, Wish>();
  for (const dish of dishes) {
    for (const [key, wish] of wishesFor(dish.name ?? "")) wishes.set(nameIn(dish, key), wish);
    for (const line of inPot.get(dish.name ?? "") ?? []) {
      const key = dish.sheet.plan.lines[line]?.line.key;
      if (key !== undefined) wishes.set(nameIn(dish, key), "as-written");
    }
  }
  const heldTo = (demands: readonly ReadDemand[]): readonly HeldEnd[] =>
    demandEnds(askedOf(dishes, demands, figures.system), tolerance);
  const ends = [
    ...heldTo(standing),
    ...ofDay.flatMap(({ demand, beside }) => heldTo([demand]).map((end) => ({ ...end, beside }))),
  ];
  const found = choose({ dishes, kitchen, wishes, ends }, "additions");
  if (!found) return undefined;
  const of = (choices: readonly LineChoice[], d: number): ReadonlyMap<number, LineChoice> =>
    new Map(choices.filter(({ dish }) => dish === d).map((choice) => [choice.line, choice]));
  const moved = (choices: readonly LineChoice[]): LineFactors =>
    new Map(
      dishes.map(({ name = "" }, d) => {
        const own = of(choices, d);
        return [name, (factors.get(name) ?? []).map((f, line) => times(f, own.get(line)?.ratio ?? ONE))];
      }),
    );
  const added = (lines: typeof found.unmeasurable): readonly AddedLine[] =>
    lines.map(({ dish, line }) => ({ dish: dishes[dish]?.name ?? "", line }));
  return {
    factors: moved(found.choices),
    lineByLine: moved(found.lineByLine),
    amounts: new Map(
      dishes.map(({ name = "", sheet }, d) => {
        const own = of(found.choices, d);
        return [name, sheet.plan.lines.map((_, line) => own.get(line)?.amount)];
      }),
    ),
    unmeasurable: added(found.unmeasurable),
    undivided: added(found.undivided),
    proven: found.proven,
  };
}
