import { timesAmount, withExact } from "../../measure/amount.ts";
import {
  compare,
  equals,
  type Fraction,
  fraction,
  greatest,
  isZero,
  minus,
  ONE,
  over,
  sum,
  times,
  ZERO,
} from "../../number/fraction.ts";
import { moveLines } from "../../scale/move.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { lineTotals } from "../batch.ts";
import type { Eater, Group, KitchenNote } from "../groups.ts";
import { PortionDrift, type RatioDrift } from "../kitchen/drift.ts";
import { type RoundedPot, roundPot, type Taster } from "../kitchen/pots.ts";
import { notProven, type PotAsked, unmeasurableNote } from "../kitchen/sharedPot.ts";
import { withAmounts } from "../lines.ts";
import { type Lot, type LotOf, plannedSheet } from "./lot.ts";
import { type CookingRun, inVessel, roomOf, type VesselUse } from "./vessel.ts";

/** A lot in amounts that the kitchen can measure, before it is shared out. */
export interface MeasuredLot {
  readonly lot: Omit<Lot, "portions">;
  /** What each line of one base portion is multiplied by for all of it. */
  readonly totals: readonly Fraction[];
  /** The same, each line of each run rounded for itself. */
  readonly lineByLine: readonly Fraction[];
  /** Whether it is what was planned, to the last gram. */
  readonly isAsPlanned: boolean;
}

/** How often runs are made smaller for the room that rounding up takes. */
const TRIES = 5;

/**
 * Rounds each run to the kitchen as the plan rounds a pot, none beyond its vessel; nothing where no
 * such runs are found.
 */
export function measuredLot(of: LotOf, asked: PotAsked, tasters: readonly Taster[]): MeasuredLot | undefined {
  const { vessel, dish } = of;
  const exact = plannedSheet(of);
  let size = vessel?.size ?? ZERO;
  for (let i = 0; i < TRIES; i += 1) {
    const { use, runs } = inVessel(exact, vessel && { ...vessel, size }, dish.exactDensity);
    const rounded = runs.map((run) => roundRun(of, exact, run, asked, tasters));
    const excess = vessel && vessel.runs !== "one" ? minus(fullest(of, rounded), vessel.size) : ZERO;
    if (excess.n <= 0n) return made(of, asked, { exact, rounded, use });
    size = minus(size, excess);
    if (size.n <= 0n) return undefined;
  }
  return undefined;
}

interface RoundedRun {
  readonly run: CookingRun;
  readonly rounded: RoundedPot;
}

/** The room of the fullest run; 0 where no room is known. */
function fullest(of: LotOf, runs: readonly RoundedRun[]): Fraction {
  return runs.map(({ run }) => roomIn(of, run.sheet)).reduce(greatest, ZERO);
}

function roomIn({ vessel, dish }: LotOf, s: Sheet): Fraction {
  return (vessel && roomOf(s, vessel.capacity, dish.exactDensity).room) ?? ZERO;
}

function roundRun(
  { dish, group, pot, counts }: LotOf,
  exact: Sheet,
  { count, exactCount, sheet }: CookingRun,
  { kitchen, tolerance, figures }: PotAsked,
  tasters: readonly Taster[],
): RoundedRun {
  const { portions } = sheet.values;
  const share = over(portions, exact.values.portions);
  const eaters = group.eaters.flatMap(({ person, factors }): Eater[] => {
    const own = counts.get(person);
    return own === undefined ? [] : [{ person, factors: allTimes(factors, times(fraction(own), share)) }];
  });
  const { base, name } = dish;
  const at = { dish: name, base, group: { ...group, eaters }, portions, tasters };
  const rounded = roundPot({ ...at, kitchen, tolerance, figures });
  const moved = moveLines(pot.sheet, ratiosOf(rounded.totals, group, base), portions);
  const amounts = group.pot.map((line) => rounded.amounts[line]);
  return { rounded, run: { count, exactCount, sheet: withAmounts(moved, amounts) } };
}

/** Lines that move as one stay told by one figure, which they are recognised by. */
function allTimes(factors: readonly Fraction[], by: Fraction): readonly Fraction[] {
  const known = new Map<Fraction, Fraction>();
  return factors.map((factor) => {
    const product = known.get(factor) ?? times(factor, by);
    known.set(factor, product);
    return product;
  });
}

/** What lines of the plan's pot are multiplied by to come to these multiples of a base portion. */
function ratiosOf(totals: readonly Fraction[], { eaters, pot }: Group, base: Sheet): readonly Fraction[] {
  const planned = lineTotals(eaters, base.plan.lines.length);
  return pot.map((line) => {
    const was = planned[line] ?? ZERO;
    return isZero(was) ? ONE : over(totals[line] ?? ZERO, was);
  });
}

interface Rounded {
  readonly exact: Sheet;
  readonly rounded: readonly RoundedRun[];
  readonly use: VesselUse | undefined;
}

function made(of: LotOf, asked: PotAsked, { exact, rounded, use }: Rounded): MeasuredLot {
  const { group, pot, dish } = of;
  const { base } = dish;
  const added = (multiples: (each: RoundedPot) => readonly Fraction[]): readonly Fraction[] =>
    base.plan.lines.map((_, line) =>
      sum(
        rounded.map(({ run, rounded: each }) => {
          return times(fraction(run.exactCount), multiples(each)[line] ?? ZERO);
        }),
      ),
    );
  const totals = added((each) => each.totals);
  const lineByLine = added((each) => each.lineByLine);
  const moved = moveLines(pot.sheet, ratiosOf(totals, group, base), exact.values.portions);
  const sheet = withAmounts(moved, amountsOf(of, rounded));
  const isAsPlanned = sheet.values.grams.every((grams, i) => equals(grams, exact.values.grams[i] ?? ZERO));
  const [first, ...others] = rounded;
  const isOne = others.length === 0 && first?.run.exactCount === 1n;
  const runs = isOne && first ? [{ ...first.run, sheet }] : rounded.map(({ run }) => run);
  const drift = isAsPlanned ? undefined : driftOf(of, asked, totals, lineByLine);
  const vessel = use && useOf(of, use, exact, sheet, isOne);
  const lot = {
    exact,
    sheet,
    vessel,
    runs,
    drift,
    measured: keysOf(of, rounded),
    notes: notesOf(of, rounded),
  };
  return { lot, totals, lineByLine, isAsPlanned };
}

/** Of runs alike; those that differ are measured out one by one, and nobody measures their sum. */
function amountsOf({ group }: LotOf, [first, ...others]: readonly RoundedRun[]) {
  if (!first || others.length > 0) return undefined;
  const { exactCount } = first.run;
  return group.pot.map((line) => {
    const own = first.rounded.amounts[line];
    return own && timesAmount(own, fraction(exactCount));
  });
}

/** The room that all of it takes. Several runs are told by what was planned, where rounding leaves less. */
function useOf(of: LotOf, use: VesselUse, exact: Sheet, sheet: Sheet, isOne: boolean): VesselUse {
  if (!of.vessel || use.fit === "not-known") return use;
  const { capacity, size } = of.vessel;
  const room = isOne ? roomIn(of, sheet) : greatest(roomIn(of, sheet), roomIn(of, exact));
  const one = compare(room, size) <= 0 ? "fits" : "overflows";
  return {
    ...use,
    needs: withExact(capacity, over(room, capacity.size ?? ONE)),
    fit: isOne ? one : "several",
  };
}

/** The line that has moved most against the rest of the pot. */
function driftOf(
  { dish, group, counts }: LotOf,
  { figures, tolerance }: PotAsked,
  totals: readonly Fraction[],
  lineByLine: readonly Fraction[],
): RatioDrift | undefined {
  const inPot = new Set(group.pot);
  const eaters = group.eaters.map(({ person, factors }) => {
    return { person, factors: allTimes(factors, fraction(counts.get(person) ?? 0n)) };
  });
  const planned = lineTotals(eaters, totals.length).map((total, line) => (inPot.has(line) ? total : ZERO));
  const of = (multiples: readonly Fraction[]) => new Map([[dish.name, multiples]]);
  const [exact, measured, alone] = [of(planned), of(totals), of(lineByLine)];
  const drift = { exact, measured, lineByLine: alone, figures, tolerance, demands: [], unrounded: false };
  return new PortionDrift(drift, () => []).ratio;
}

/** Lines that every run has in amounts of the kitchen. */
function keysOf({ group, dish }: LotOf, rounded: readonly RoundedRun[]): ReadonlySet<string> {
  const lines = group.pot.filter((line) =>
    rounded.every(({ rounded: each }) => each.amounts[line] !== undefined),
  );
  return new Set(lines.flatMap((line) => dish.base.plan.lines[line]?.line.key ?? []));
}

function notesOf({ dish }: LotOf, rounded: readonly RoundedRun[]): readonly KitchenNote[] {
  const lines = new Set(rounded.flatMap(({ rounded: { unmeasurable } }) => unmeasurable));
  return [
    ...[...lines].map((line) => unmeasurableNote(dish.base, line)),
    ...(rounded.every(({ rounded: { proven } }) => proven) ? [] : [notProven("the pot")]),
  ];
}
