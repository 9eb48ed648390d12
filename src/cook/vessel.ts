import type { FoodInput } from "../food/food.ts";
import { type Amount, millilitresOf, withExact } from "../measure/amount.ts";
import {
  type Exact,
  exact,
  fraction,
  greatest,
  isZero,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../number/exact.ts";
import { ceiling, compareRatios, floor } from "../number/ratio.ts";
import { ownMeasures } from "../recipe/ownMeasures.ts";
import { moveLines } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { RunsOptions } from "./input.ts";
import type { ReadVessel } from "./readMeal.ts";

/** Runs of one size: what goes in at once, and how often. */
export interface CookingRun {
  readonly count: Exact;
  /** What goes into one run; its portions are those that it makes. */
  readonly sheet: Sheet;
}

/**
 * How a pot stands to its vessel: it `fits`; it takes `several` runs; it `overflows`, where only one
 * run was allowed; or that is `not-known`, since nothing says how much room it takes.
 */
export type VesselFit = "fits" | "several" | "overflows" | "not-known";

/** A pot and the vessel that it is made in. */
export interface VesselUse {
  readonly capacity: Amount;
  readonly fit: VesselFit;
  /** The room that the whole pot takes, in the capacity's unit; nothing where that is not known. */
  readonly needs: Amount | undefined;
  /**
   * By what the room is told: weighed; by the dish's density; or line by line, which a mix mostly falls
   * short of.
   */
  readonly by: "weight" | "density" | "lines";
  /** Names of the lines of which no volume is known; empty where the room is. */
  readonly silent: readonly string[];
}

/** A pot parted into runs; one of all of it where there is no vessel, or it is not known whether it fits. */
export function inVessel(
  pot: Sheet,
  vessel: ReadVessel | undefined,
  density: Exact | undefined,
): { readonly use: VesselUse | undefined; readonly runs: readonly CookingRun[] } {
  if (!vessel) return { use: undefined, runs: [wholeOf(pot)] };
  const { capacity, size } = vessel;
  const { by, room, silent } = roomOf(pot, capacity, density);
  const unit = capacity.size ?? ONE;
  const runs = room ? runsOf(pot, vessel.runs, size, room) : [wholeOf(pot)];
  const fit = room ? fitOf(vessel.runs, size, room) : "not-known";
  return { use: { capacity, fit, needs: room && withExact(capacity, over(room, unit)), by, silent }, runs };
}

function fitOf(how: RunsOptions, size: Exact, room: Exact): VesselFit {
  if (compareRatios(room, size) <= 0) return "fits";
  return how === "one" ? "overflows" : "several";
}

function runsOf(pot: Sheet, how: RunsOptions, size: Exact, room: Exact): readonly CookingRun[] {
  if (how === "one" || compareRatios(room, size) <= 0) return [wholeOf(pot)];
  const fills = over(room, size);
  if (how === "equal") return [runOf(pot, ceiling(fills), fraction(1n, ceiling(fills)))];
  const full = runOf(pot, floor(fills), over(ONE, fills));
  const rest = minus(fills, fraction(floor(fills)));
  return isZero(rest) ? [full] : [full, runOf(pot, 1n, over(rest, fills))];
}

function wholeOf(pot: Sheet): CookingRun {
  return { count: ONE, sheet: pot };
}

function runOf(pot: Sheet, count: bigint, share: Exact): CookingRun {
  return { count: fraction(count), sheet: partOf(pot, share) };
}

/** A share of a sheet, all its lines alike. */
export function partOf(s: Sheet, share: Exact): Sheet {
  return moveLines(
    s,
    s.plan.lines.map(() => share),
    times(s.values.portions, share),
  );
}

/**
 * What a pot takes of its vessel, in grams or millilitres: the larger of what goes in and what comes
 * out, since a pot boils down or takes up water.
 */
export function roomOf(
  pot: Sheet,
  { kind }: Amount,
  density: Exact | undefined,
): Pick<VesselUse, "by" | "silent"> & { readonly room: Exact | undefined } {
  const { raw, cooked } = pot.masses;
  const most = greatest(raw, cooked);
  if (kind === "mass") return { by: "weight", silent: [], room: most };
  if (density) return { by: "density", silent: [], room: over(most, density) };
  const volumes = pot.lines.map((_, i) => volumeOf(pot, i));
  const silent = pot.lines.flatMap(({ name }, i) => (volumes[i] ? [] : [name]));
  if (silent.length > 0) return { by: "lines", silent, room: undefined };
  const full = sum(volumes.map((each) => each ?? ZERO));
  // What a pot takes up is water, of which a gram is a millilitre for a cook.
  return { by: "lines", silent, room: plus(full, minus(most, raw)) };
}

/** Millilitres of a line: as it is written, else by its food's density, else by a cup or spoon of it. */
function volumeOf(s: Sheet, at: number): Exact | undefined {
  const [line, own] = [s.lines[at], s.plan.lines[at]];
  if (!line || !own) return undefined;
  if (isZero(line.grams)) return ZERO;
  const written = millilitresOf(line.amount);
  if (written && own.line.weighed !== "as-purchased") return written;
  const perMl = own.source.food && densityOf(own.source.food.input);
  return perMl && over(line.grams, perMl);
}

/** Grams in a millilitre of a food; of several cups and spoons of it the lightest, which takes most room. */
function densityOf(food: FoodInput): Exact | undefined {
  if (food.density !== undefined) return exact(food.density);
  const filled = ownMeasures(food).measures.filter(({ ml }) => ml !== undefined);
  const plain = filled.filter(({ form }) => form === "");
  return (plain.length > 0 ? plain : filled)
    .map(({ grams, ml }) => over(grams, ml ?? ONE))
    .reduce<Exact | undefined>(
      (least, each) => (least && compareRatios(least, each) < 0 ? least : each),
      undefined,
    );
}
