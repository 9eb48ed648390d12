import { type ComponentId, components } from "../../food/components.ts";
import { type Exact, exact, over, plus, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { boundOfEnds, type Ends, sumOf } from "../../sheet/ends.ts";
import { addUp } from "../../sheet/energy.ts";
import { type Bound, NO_MARKS, Tally } from "../../sheet/tally.ts";
import type { ReferenceFigure, UpperFigure } from "../intakes/resolve.ts";
import type { EatenPortion } from "../portion/eaten.ts";
import { type LevelVerdict, verdictOn } from "../portion/verdict.ts";

/**
 * What a portion is of a day's reference. `whole`: at least all of it, proven. `part`: less than all of
 * it, proven. `not-proven`: silent lines leave it open.
 */
export type ReferenceVerdict = "part" | "whole" | "not-proven";

/**
 * Where a portion stands to an upper level of a day. `past`: above it, proven even where lines are
 * silent, and by the low ends of ranged figures. `may-be-past`: what is told reaches from no more than
 * the level to more. `under`: not above it, proven, by the high ends. `not-proven`: not above it so far
 * as is told, but not all is told.
 * `other-sources`: the level counts supplements or added forms, which this portion is not known to hold.
 */
export type UpperVerdict = LevelVerdict | "other-sources";

/** A portion held against a reference. */
export interface HeldReference {
  readonly figure: ReferenceFigure;
  /** What the portion brings of just what the figure counts. */
  readonly amount: Tally;
  /** Of the day's figure; nothing where nothing is known. */
  readonly share: Exact | undefined;
  /** Between what the share can lie; nothing for an end that nothing limits. */
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
  readonly bound: Bound;
  readonly verdict: ReferenceVerdict;
}

/** A portion held against an upper level of a day. */
export interface HeldUpper {
  readonly figure: UpperFigure;
  /** What the portion brings of just what the level counts. */
  readonly amount: Tally;
  readonly share: Exact | undefined;
  /** Between what the share can lie; nothing for an end that nothing limits. */
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
  readonly bound: Bound;
  readonly verdict: UpperVerdict;
}

/** Holds a portion against a reference. */
export function holdReference(portion: EatenPortion, figure: ReferenceFigure): HeldReference {
  const amount = amountFor(portion, figure);
  const whole = exact(figure.value);
  const { low, high } = amount.ends;
  const verdict =
    low && compareRatios(low, whole) >= 0
      ? "whole"
      : high && compareRatios(high, whole) < 0
        ? "part"
        : "not-proven";
  return { figure, amount, ...shareOf(amount, whole), verdict };
}

/** Holds a portion against an upper level, with the interval that the figures leave open. */
export function holdUpper(portion: EatenPortion, figure: UpperFigure): HeldUpper {
  const level = exact(figure.value);
  if (figure.covers.startsWith("supplements")) return holdAdded(portion, figure, level);
  const amount = amountFor(portion, figure);
  return { figure, amount, ...shareOf(amount, level), verdict: verdictOn(amount.ends, level) };
}

/** The least and the most of what a figure counts, for all that silent lines, limits and rounding leave open. */
function endsOf(portion: EatenPortion, { of, basis }: ReferenceFigure | UpperFigure): Ends {
  const ends = sumOf(of.map((id) => ({ ...portion.ends(id), high: mostOf(portion, id) })));
  return basis === "alpha-tocopherol equivalents" ? { ...ends, high: undefined } : ends;
}

/** What was added to fortified foods is at most all that these foods hold. */
function holdAdded(portion: EatenPortion, figure: UpperFigure, level: Exact): HeldUpper {
  const [of] = figure.of;
  const isAdded = figure.covers !== "supplements";
  const fortified = of && isAdded ? portion.fortified(of) : [];
  const none = new Tally(0n, 1n, components[of ?? "energy"].unit, NO_MARKS, () => ZERO, "unknown");
  if (fortified.length === 0) {
    return { figure, amount: none, ...shareOf(none, level), verdict: "other-sources" };
  }
  const held = addUp(
    none.unit,
    fortified.map(({ amount }) => amount),
  );
  const high = fortified.map(({ most }) => most).reduce(add, ZERO);
  const bound = held.bound === "point" || held.bound === "at-most" ? "at-most" : "unknown";
  // Nobody tells how much of it was added: from nothing to all of it.
  const ends = (): Ends => ({ low: ZERO, high, told: high });
  const own = bound === "at-most" && held.ranged.length > 0 ? boundOfEnds(held.value, ends(), false) : bound;
  const amount = new Tally(held.value.n, held.value.d, held.unit, held, () => held.coverage, own, ends);
  return { figure, amount, ...shareOf(amount, level), verdict: verdictOn(ends(), level) };
}

/**
 * What the portion brings of just what a figure counts. Of alpha-tocopherol equivalents a food table
 * that gives alpha-tocopherol tells a part, the main one: what there is at least.
 */
function amountFor(portion: EatenPortion, figure: ReferenceFigure | UpperFigure): Tally {
  const { of, basis } = figure;
  const tallies = of.map((id) => portion.brings(id));
  const [only, ...others] = tallies;
  const all = only && others.length === 0 ? only : addUp(components[of[0] ?? "energy"].unit, tallies);
  const isPart = basis === "alpha-tocopherol equivalents" && all.bound !== "unknown";
  const ends = (): Ends => endsOf(portion, figure);
  const bound = !isPart
    ? all.bound
    : all.ranged.length > 0
      ? boundOfEnds(all.value, ends(), false)
      : "at-least";
  return new Tally(all.value.n, all.value.d, all.unit, all, () => all.coverage, bound, ends);
}

/** What holds a component whole: where the part is silent, it is at most the whole. */
const WHOLES: { readonly [C in ComponentId]?: ComponentId } = {
  retinol: "vitaminARae",
  folicAcid: "folate",
};

function mostOf(portion: EatenPortion, id: ComponentId): Exact | undefined {
  const { high } = portion.ends(id);
  const whole = WHOLES[id];
  if (high || !whole) return high;
  const most = portion.ends(whole).high;
  // Data that tell more of a part than of the whole bound nothing.
  return most && compareRatios(most, portion.brings(id).value) >= 0 ? most : undefined;
}

function add(all: Exact | undefined, next: Exact | undefined): Exact | undefined {
  return all && next && plus(all, next);
}

function shareOf(amount: Tally, whole: Exact): Pick<HeldReference, "share" | "least" | "most" | "bound"> {
  const { value, bound, ends } = amount;
  const ofWhole = (of: Exact | undefined): Exact | undefined =>
    of === undefined || whole.n === 0n ? undefined : over(of, whole);
  const exactShare = bound === "unknown" ? undefined : ofWhole(value);
  const [low, high] = [ofWhole(ends.low), ofWhole(ends.high)];
  return {
    share: exactShare,
    least: low && low,
    most: high && high,
    bound,
  };
}
