import type { Amount } from "../measure/amount.ts";
import { type Exact, equals, fraction, plus, times, ZERO } from "../number/exact.ts";
import type { PlannedDish } from "../plan/dish.ts";
import type { RatioDrift } from "../plan/measure/drift.ts";
import type { EaterGroup, KitchenNote } from "../plan/share/groups.ts";
import type { Pot } from "../plan/share/parts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Draw } from "./draw.ts";
import type { ReadVessel } from "./readMeal.ts";
import { type CookingRun, inVessel, partOf, type VesselUse } from "./vessel.ts";

/** Portions of one size that someone takes of what is cooked at once. */
export interface LotPortion {
  readonly count: bigint;
  /** One portion's, of all that is cooked. */
  readonly share: Exact;
  /** As the scale shows it; nothing where it is not weighed. */
  readonly weighed: Amount | undefined;
  /** Whether it is what the others leave, which is no whole number of the scale's steps. */
  readonly isRest: boolean;
}

/** All that is cooked of a pot until it is cooked again. */
export interface Lot {
  /** The portions as they were planned, added up. */
  readonly exact: Sheet;
  /** What is cooked. */
  readonly sheet: Sheet;
  readonly vessel: VesselUse | undefined;
  readonly runs: readonly CookingRun[];
  /** What each person takes of it, in the order of eating; nothing where it is what was planned. */
  readonly portions: ReadonlyMap<string, readonly LotPortion[]> | undefined;
  /** The line that measuring moves most against the rest; nothing where it moves none. */
  readonly drift: RatioDrift | undefined;
  /** Keys of lines that stand in amounts that the kitchen measures. */
  readonly measured: readonly string[];
  readonly notes: readonly KitchenNote[];
}

/** A pot, for whom how much of it is cooked, and in what. */
export interface LotOf {
  readonly dish: PlannedDish;
  readonly group: EaterGroup;
  readonly pot: Pot;
  /** Portions by person, above 0; others eat none. */
  readonly counts: ReadonlyMap<string, bigint>;
  readonly vessel: ReadVessel | undefined;
  /** What it takes of batches of nested recipes, by the line of the dish. */
  readonly draws?: ReadonlyMap<number, Draw>;
  /** Whether what must hold for an eater does, besides what the pot is asked. */
  readonly keeps?: (eater: string, factors: readonly Exact[]) => boolean;
}

/** The most of each line that there is for a pot, where it is drawn from a batch. */
export function capsOf({ draws }: LotOf): ReadonlyMap<number, Exact> {
  return new Map([...(draws ?? [])].map(([line, draw]) => [line, draw.cap]));
}

/** Takes from the batches what goes into a lot. */
export function settleLot({ draws, group }: LotOf, { sheet }: Lot): void {
  for (const [line, draw] of draws ?? []) {
    draw.settle(sheet.values.grams[group.pot.indexOf(line)] ?? draw.exact);
  }
}

/** What goes in as it was planned: multiples and parts of what the plan's pot takes. */
export function exactLot(of: LotOf, notes: readonly KitchenNote[] = []): Lot {
  const { pot, vessel, dish } = of;
  const exact = plannedSheet(of);
  const { use, runs } = inVessel(exact, vessel, dish.density);
  const isOne = runs.length === 1 && runs[0]?.count.eq(1);
  // The plan's own pot, cooked once as it is, has its own amounts.
  const isOwn = isOne && exact.values.grams.every((g, i) => equals(g, pot.sheet.values.grams[i] ?? ZERO));
  const measured = isOwn ? ownMeasured(of) : [];
  return { exact, sheet: exact, vessel: use, runs, portions: undefined, drift: undefined, measured, notes };
}

function ownMeasured({ group: { pot, measured }, dish }: LotOf): readonly string[] {
  const lines = pot.filter((line) => measured?.amounts[line] !== undefined);
  return lines.flatMap((line) => dish.base().plan.lines[line]?.line.key ?? []);
}

/** The pot that makes so many portions of each, as they were planned. */
export function plannedSheet({ pot, dish, counts }: LotOf): Sheet {
  const all = pot.people.map((person) => counts.get(person) ?? 0n);
  const usual = all[0] ?? 0n;
  // Shares add up to 1, so only those who eat more or less often than the first need to be looked at.
  const others = dish.servings.flatMap(({ person, pot: own, share }): Exact[] => {
    const more = (counts.get(person) ?? 0n) - usual;
    return own === pot && more !== 0n ? [times(fraction(more), share)] : [];
  });
  const whole = partOf(pot.sheet, others.reduce(plus, fraction(usual)));
  const portions = fraction(all.reduce((total, count) => total + count, 0n));
  return whole.version({ ...whole.values, portions }, []);
}
