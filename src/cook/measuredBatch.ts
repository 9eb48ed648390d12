import { timesAmount } from "../measure/amount.ts";
import type { Kitchen } from "../measure/kitchen.ts";
import { type Exact, equals, fraction, ONE, over, sum, times } from "../number/exact.ts";
import { ceiling, compareRatios } from "../number/ratio.ts";
import { choose } from "../plan/measure/choose.ts";
import { type RatioDrift, worstRatio } from "../plan/measure/drift.ts";
import { lineNotes, notProven } from "../plan/measure/sharedPot.ts";
import type { KitchenNote } from "../plan/share/groups.ts";
import { withLineAmounts } from "../plan/share/lines.ts";
import { quantityOf } from "../scale/engine/lines.ts";
import { moveLines } from "../scale/move.ts";
import type { HeldEnd } from "../scale/round/problem.ts";
import { Sheet } from "../sheet/sheet.ts";
import type { ReadVessel } from "./readMeal.ts";
import { type CookingRun, inVessel, partOf, roomOf, type VesselUse } from "./vessel.ts";

/** All that is made of a nested recipe at once. */
export interface MeasuredBatch {
  /** What is asked of it. */
  readonly exact: Sheet;
  readonly sheet: Sheet;
  readonly vessel: VesselUse | undefined;
  readonly runs: readonly CookingRun[];
  readonly drift: RatioDrift | undefined;
  readonly measured: readonly string[];
  readonly notes: readonly KitchenNote[];
  /** Whether it is what was asked, to the last gram. */
  readonly isAsAsked: boolean;
}

/** A batch just as it is asked for. */
export function exactBatch(exact: Sheet, vessel: ReadVessel | undefined): MeasuredBatch {
  const { use, runs } = inVessel(exact, vessel, undefined);
  return {
    exact,
    sheet: exact,
    vessel: use,
    runs,
    drift: undefined,
    measured: [],
    notes: [],
    isAsAsked: true,
  };
}

/** The most that may be taken of each line, in grams; lines that are not named may be any. */
export type Caps = ReadonlyMap<number, Exact>;

/** How often runs are made smaller for the room that rounding up takes. */
const TRIES = 20;

/**
 * Rounds a batch up to what a kitchen measures: its lines at held ratios, so that it covers all that is drawn
 * on it. Where it is made in several runs, each is measured alike.
 */
export function measuredBatch(
  exact: Sheet,
  {
    kitchen,
    vessel,
    caps,
  }: { readonly kitchen: Kitchen; readonly vessel: ReadVessel | undefined; readonly caps: Caps },
): MeasuredBatch {
  const whole = exactBatch(exact, vessel);
  let count = ceiling(sum(whole.runs.map((run) => run.count)));
  for (let i = 0; i < TRIES; i += 1) {
    const runs = fraction(count);
    const one = roundedRun(partOf(exact, over(ONE, runs)), kitchen, shareOf(caps, over(ONE, runs)));
    if (!one) return whole;
    const made = madeOf(exact, one, runs, whole.vessel);
    const room =
      vessel && vessel.runs !== "one" ? roomOf(one.sheet, vessel.capacity, undefined).room : undefined;
    if (!vessel || !room || compareRatios(room, vessel.size) <= 0) return made;
    count += 1n;
  }
  return whole;
}

/** Caps of a part of what they speak of. */
export function shareOf(caps: Caps, share: Exact): Caps {
  return new Map([...caps].map(([line, most]) => [line, times(most, share)]));
}

interface RoundedRun {
  readonly sheet: Sheet;
  readonly ratios: readonly Exact[];
  readonly measured: readonly string[];
  readonly notes: readonly KitchenNote[];
}

function roundedRun(exact: Sheet, kitchen: Kitchen, caps: Caps): RoundedRun | undefined {
  const task = { dishes: [{ name: undefined, sheet: heldWithin(exact, caps) }], kitchen, wishes: new Map() };
  const found = choose({ ...task, ends: [covers(exact)] }, "pot");
  if (!found) return undefined;
  const ratios = new Map(found.choices.map(({ line, ratio }) => [line, ratio]));
  const amounts = new Map(found.choices.map(({ line, amount }) => [line, amount]));
  const all = exact.plan.lines.map((_, line) => ratios.get(line) ?? ONE);
  const moved = moveLines(exact, all, exact.values.portions);
  // A portion of it stays what it was: a batch that is rounded up makes more of them.
  const portions = times(exact.values.portions, over(moved.masses.cooked, exact.masses.cooked));
  const sheet = moved.version({ ...moved.values, portions }, []);
  return {
    sheet: withLineAmounts(
      sheet,
      all.map((_, line) => amounts.get(line)),
    ),
    ratios: all,
    measured: exact.plan.lines.flatMap(({ line }, i) => (amounts.has(i) ? [line.key] : [])),
    notes: [
      ...lineNotes(exact, {
        unmeasurable: found.unmeasurable.map(({ line }) => line),
        undivided: found.undivided.map(({ line }) => line),
      }),
      ...(found.proven ? [] : [notProven("the batch")]),
    ],
  };
}

/** All lines move together: what is the same for every portion belongs to the nested recipe's own portions. */
function heldWithin({ plan, values }: Sheet, caps: Caps): Sheet {
  const lines = plan.lines.map(({ line, ...own }, i) => {
    const most = caps.get(i);
    return { ...own, line: { ...line, scaling: "held" as const }, most: most && over(most, values.portions) };
  });
  return new Sheet(plan.withLines(lines), values);
}

/** At least as much of it, as eaten. */
function covers(exact: Sheet): HeldEnd {
  const { lines, scale } = quantityOf(exact, "mass");
  const end = exact.portionMass;
  return {
    brought: { value: { lines: [lines], scale }, per: undefined },
    side: "least",
    end,
    asked: end,
    firm: true,
  };
}

function madeOf(exact: Sheet, one: RoundedRun, runs: Exact, use: VesselUse | undefined): MeasuredBatch {
  const isOne = equals(runs, ONE);
  const sheet = isOne ? one.sheet : manyOf(one.sheet, runs);
  const isAsAsked = sheet.values.grams.every((grams, i) => equals(grams, exact.values.grams[i] as Exact));
  const fits = isOne ? use : use && { ...use, fit: "several" as const };
  return {
    exact,
    sheet,
    vessel: fits,
    runs: [{ count: runs, sheet: one.sheet }],
    drift: isAsAsked ? undefined : driftOf(exact, one.ratios),
    measured: one.measured,
    notes: one.notes,
    isAsAsked,
  };
}

function manyOf(one: Sheet, count: Exact): Sheet {
  return withLineAmounts(
    partOf(one, count),
    one.values.amounts.map((own) => timesAmount(own, count)),
  );
}

function driftOf(exact: Sheet, ratios: readonly Exact[]): RatioDrift | undefined {
  const figures = { dishes: [{ name: "", sheet: heldWithin(exact, new Map()) }] };
  return worstRatio({ figures, exact: new Map([["", ratios.map(() => ONE)]]) }, new Map([["", ratios]]));
}
