import { timesAmount, withExact } from "../measure/amount.ts";
import {
  type Exact,
  equals,
  fraction,
  greatest,
  isZero,
  minus,
  ONE,
  over,
  sum,
  times,
  ZERO,
} from "../number/exact.ts";
import { compareRatios, floor } from "../number/ratio.ts";
import { type RatioDrift, worstRatio } from "../plan/measure/drift.ts";
import type { PotTask } from "../plan/measure/potTask.ts";
import { type RoundedPot, roundPot } from "../plan/measure/roundPot.ts";
import { lineNotes, notProven } from "../plan/measure/sharedPot.ts";
import { lineTotals, potTotals } from "../plan/share/batch.ts";
import type { EaterGroup, KitchenNote } from "../plan/share/groups.ts";
import { withLineAmounts } from "../plan/share/lines.ts";
import { moveLines } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { capsOf, type Lot, type LotOf, plannedSheet } from "./lot.ts";
import { shareOf } from "./measuredBatch.ts";
import { type CookingRun, inVessel, roomOf, type VesselUse } from "./vessel.ts";

/** A lot in amounts that the kitchen can measure, before it is shared out. */
export interface MeasuredLot {
  readonly lot: Omit<Lot, "portions">;
  /** What each line of one base portion is multiplied by for all of it. */
  readonly totals: readonly Exact[];
  /** The same, each line of each run rounded for itself. */
  readonly lineByLine: readonly Exact[];
  /** Whether it is what was planned, to the last gram. */
  readonly isAsPlanned: boolean;
}

/** What a lot is measured with, and who eats of it. */
export type LotAsked = Omit<PotTask, "dish" | "base" | "group" | "totals" | "portions" | "caps">;

/** How often runs are made smaller for the room that rounding up takes. */
const TRIES = 5;

/**
 * Rounds each run to the kitchen as the plan rounds a pot, none beyond its vessel; nothing where no
 * such runs are found.
 */
export function measuredLot(of: LotOf, asked: LotAsked): MeasuredLot | undefined {
  const { vessel, dish } = of;
  const exact = plannedSheet(of);
  const totals = plannedTotals(of);
  let size = vessel?.size ?? ZERO;
  for (let i = 0; i < TRIES; i += 1) {
    const { use, runs } = inVessel(exact, vessel && { ...vessel, size }, dish.density);
    if (use?.fit === "several" && vessel?.runs === "full") return fullRuns(of, asked, { exact, totals, use });
    const rounded = runs.map(({ count, sheet }) => {
      const { portions } = sheet.values;
      const share = over(portions, exact.values.portions);
      const own = { totals: allTimes(totals, share), caps: shareOf(capsOf(of), share) };
      return roundRun(of, { ...own, portions, count }, asked);
    });
    const excess = vessel && vessel.runs !== "one" ? minus(fullest(of, rounded), vessel.size) : ZERO;
    if (excess.n <= 0n) return made(of, asked, { exact, rounded, use });
    size = minus(size, excess);
    if (size.n <= 0n) return undefined;
  }
  return undefined;
}

/**
 * Full runs keep the ratios alone, since how many portions they come to is the vessel's affair; the
 * rest is what they leave of all that was planned, line by line, so that it makes up for them.
 */
function fullRuns(of: LotOf, asked: LotAsked, planned: Planned): MeasuredLot | undefined {
  const { exact, totals, use } = planned;
  // What a full run holds is the vessel's affair, whoever eats of it.
  const nobody = { ...asked, tasters: [] };
  const full = fullRun(of, nobody, planned);
  if (!full || !of.vessel) return undefined;
  const [room, whole] = [roomIn(of, full.run.sheet), roomIn(of, exact)];
  const fits = floor(over(whole, room));
  const count = fits > 0n ? fits : 1n;
  const left = totals.map((total, line) =>
    greatest(ZERO, minus(total, times(fraction(count), full.rounded.totals[line] ?? ZERO))),
  );
  const { portions } = exact.values;
  const caps = new Map(
    [...capsOf(of)].map(([line, most]) => {
      const taken = times(fraction(count), full.run.sheet.values.grams[of.group.pot.indexOf(line)] ?? ZERO);
      return [line, minus(most, taken)];
    }),
  );
  const sheet = moveLines(of.pot.sheet, ratiosOf(left, of.group, of.dish.base()), portions);
  const share = over(sheet.masses.raw, exact.masses.raw);
  const own = times(portions, share);
  const hasDose = sheet.lines.some(({ scaling }) => scaling === "per-portion");
  const isTrifle = !hasDose && compareRatios(share, asked.tolerance) <= 0;
  const rest =
    isTrifle || share.n === 0n
      ? []
      : [roundRun(of, { totals: left, caps, portions: own, count: ONE }, nobody)];
  if (compareRatios(fullest(of, rest), of.vessel.size) > 0) return undefined;
  const each = over(rest.length === 0 ? portions : minus(portions, own), fraction(count));
  const run = runOf(
    full.run.sheet.version({ ...full.run.sheet.values, portions: each }, []),
    fraction(count),
  );
  return made(of, asked, { exact, use, rounded: [{ ...full, run }, ...rest] });
}

interface Planned {
  readonly exact: Sheet;
  readonly totals: readonly Exact[];
  readonly use: VesselUse;
}

/** As much as the vessel holds in amounts that can be measured. */
function fullRun(of: LotOf, asked: LotAsked, { exact, totals }: Planned): RoundedRun | undefined {
  if (!of.vessel) return undefined;
  const whole = roomIn(of, exact);
  let size = of.vessel.size;
  for (let i = 0; i < TRIES; i += 1) {
    const share = over(size, whole);
    const portions = times(exact.values.portions, share);
    const own = { totals: allTimes(totals, share), caps: shareOf(capsOf(of), share) };
    const full = roundRun(of, { ...own, portions, count: ONE }, asked);
    const excess = minus(roomIn(of, full.run.sheet), of.vessel.size);
    if (excess.n <= 0n) return full;
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
function fullest(of: LotOf, runs: readonly RoundedRun[]): Exact {
  return runs.map(({ run }) => roomIn(of, run.sheet)).reduce(greatest, ZERO);
}

function roomIn({ vessel, dish }: LotOf, s: Sheet): Exact {
  return (vessel && roomOf(s, vessel.capacity, dish.density).room) ?? ZERO;
}

/** What goes into one run before it is rounded, by line of one base portion. */
interface RunOf {
  readonly totals: readonly Exact[];
  /** The most that there is of lines that are drawn from a batch, by line. */
  readonly caps: ReadonlyMap<number, Exact>;
  readonly portions: Exact;
  readonly count: Exact;
}

function roundRun(
  { dish, group, pot }: LotOf,
  { totals, caps, portions, count }: RunOf,
  asked: LotAsked,
): RoundedRun {
  const base = dish.base();
  const rounded = roundPot({ ...asked, dish: dish.name, base, group, totals, portions, caps });
  const moved = moveLines(pot.sheet, ratiosOf(rounded.totals, group, base), portions);
  const sheet = withLineAmounts(
    moved,
    group.pot.map((line) => rounded.amounts[line]),
  );
  return { rounded, run: runOf(sheet, count) };
}

function runOf(sheet: Sheet, count: Exact): CookingRun {
  return { count, sheet };
}

/** What each line of one base portion is multiplied by for all that was planned. */
function plannedTotals({ dish, group, counts }: LotOf): readonly Exact[] {
  const inPot = new Set(group.pot);
  const eaters = group.eaters.map(({ person, factors }) => {
    return { person, factors: allTimes(factors, fraction(counts.get(person) ?? 0n)) };
  });
  const totals = lineTotals(eaters, dish.base().plan.lines.length);
  return totals.map((total, line) => (inPot.has(line) ? total : ZERO));
}

/** Lines that move as one stay told by one figure, which they are recognised by. */
function allTimes(factors: readonly Exact[], by: Exact): readonly Exact[] {
  const known = new Map<Exact, Exact>();
  return factors.map((factor) => {
    const product = known.get(factor) ?? times(factor, by);
    known.set(factor, product);
    return product;
  });
}

/** What lines of the plan's pot are multiplied by to come to these multiples of a base portion. */
function ratiosOf(totals: readonly Exact[], group: EaterGroup, base: Sheet): readonly Exact[] {
  const planned = potTotals(group, base.plan.lines.length);
  return group.pot.map((line) => {
    const was = planned[line] ?? ZERO;
    return isZero(was) ? ONE : over(totals[line] ?? ZERO, was);
  });
}

interface Rounded {
  readonly exact: Sheet;
  readonly rounded: readonly RoundedRun[];
  readonly use: VesselUse | undefined;
}

function made(of: LotOf, asked: LotAsked, { exact, rounded, use }: Rounded): MeasuredLot {
  const { group, pot, dish } = of;
  const base = dish.base();
  const added = (multiples: (each: RoundedPot) => readonly Exact[]): readonly Exact[] =>
    base.plan.lines.map((_, line) =>
      sum(
        rounded.map(({ run, rounded: each }) => {
          return times(run.count, multiples(each)[line] ?? ZERO);
        }),
      ),
    );
  const totals = added((each) => each.totals);
  const lineByLine = added((each) => each.lineByLine);
  const moved = moveLines(pot.sheet, ratiosOf(totals, group, base), exact.values.portions);
  const sheet = withLineAmounts(moved, amountsOf(of, rounded));
  const isAsPlanned = sheet.values.grams.every((grams, i) => equals(grams, exact.values.grams[i] ?? ZERO));
  const [first, ...others] = rounded;
  const isOne = others.length === 0 && first?.run.count.eq(1) === true;
  const runs = isOne && first ? [{ ...first.run, sheet }] : rounded.map(({ run }) => run);
  const drift = isAsPlanned ? undefined : driftOf(of, asked, totals);
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
  return group.pot.map((line) => {
    const own = first.rounded.amounts[line];
    return own && timesAmount(own, first.run.count);
  });
}

/** The room that all of it takes. Several runs are told by what was planned, where rounding leaves less. */
function useOf(of: LotOf, use: VesselUse, exact: Sheet, sheet: Sheet, isOne: boolean): VesselUse {
  if (!of.vessel || use.fit === "not-known") return use;
  const { capacity, size } = of.vessel;
  const room = isOne ? roomIn(of, sheet) : greatest(roomIn(of, sheet), roomIn(of, exact));
  const one = compareRatios(room, size) <= 0 ? "fits" : "overflows";
  return {
    ...use,
    needs: withExact(capacity, over(room, capacity.size ?? ONE)),
    fit: isOne ? one : "several",
  };
}

/** The line that has moved most against the rest of the pot. */
function driftOf(lot: LotOf, { figures }: LotAsked, totals: readonly Exact[]): RatioDrift | undefined {
  const of = (multiples: readonly Exact[]) => new Map([[lot.dish.name, multiples]]);
  return worstRatio({ figures, exact: of(plannedTotals(lot)) }, of(totals));
}

/** Lines that stand in amounts of the kitchen in every run that has any. */
function keysOf({ group, dish }: LotOf, rounded: readonly RoundedRun[]): readonly string[] {
  const lines = group.pot.filter((line) =>
    rounded.every(({ rounded: { amounts, totals } }) => amounts[line] || isZero(totals[line] ?? ZERO)),
  );
  return lines.flatMap((line) => dish.base().plan.lines[line]?.line.key ?? []);
}

function notesOf({ dish }: LotOf, rounded: readonly RoundedRun[]): readonly KitchenNote[] {
  const of = (lines: (each: RoundedPot) => readonly number[]): readonly number[] => [
    ...new Set(rounded.flatMap(({ rounded: each }) => lines(each))),
  ];
  const unmeasurable = of((each) => each.unmeasurable);
  return [
    ...lineNotes(dish.base(), { unmeasurable, undivided: of((each) => each.undivided) }),
    ...(rounded.every(({ rounded: { proven } }) => proven) ? [] : [notProven("the pot")]),
  ];
}
