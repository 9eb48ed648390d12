import type { Decimal } from "decimal.js";
import { type ComponentId, components } from "../../food/components.ts";
import { compare, exact, type Fraction, over, plus, sum, toDecimal, ZERO } from "../../number/fraction.ts";
import { addUp } from "../../sheet/energy.ts";
import { type Bound, Tally } from "../../sheet/tally.ts";
import type { ReferenceFigure, UpperFigure } from "../intakes/resolve.ts";
import type { EatenPortion } from "../portion/eaten.ts";

/**
 * What a portion is of a day's reference. `whole`: at least all of it, proven. `part`: less than all of
 * it, proven. `not-proven`: silent lines leave it open.
 */
export type ReferenceVerdict = "part" | "whole" | "not-proven";

/**
 * Where a portion stands to an upper level of a day. `past`: above it, proven even where lines are
 * silent. `under`: not above it, proven. `not-proven`: not above it so far as is known.
 * `other-sources`: the level counts supplements or added forms, which this portion is not known to hold.
 */
export type UpperVerdict = "under" | "past" | "not-proven" | "other-sources";

/** A portion held against a reference. */
export interface HeldReference {
  readonly figure: ReferenceFigure;
  /** What the portion brings of just what the figure counts. */
  readonly amount: Tally;
  /** Of the day's figure; nothing where nothing is known. */
  readonly share: Decimal | undefined;
  readonly exactShare: Fraction | undefined;
  readonly bound: Bound;
  readonly verdict: ReferenceVerdict;
}

/** A portion held against an upper level of a day. */
export interface HeldUpper {
  readonly figure: UpperFigure;
  /** What the portion brings of just what the level counts. */
  readonly amount: Tally;
  readonly share: Decimal | undefined;
  readonly exactShare: Fraction | undefined;
  readonly bound: Bound;
  readonly verdict: UpperVerdict;
}

/** Holds a portion against a reference. */
export function holdReference(portion: EatenPortion, figure: ReferenceFigure): HeldReference {
  const amount = amountFor(portion, figure);
  const whole = exact(figure.value);
  const { low, high } = endsOf(portion, figure);
  const verdict =
    compare(low, whole) >= 0 ? "whole" : high && compare(high, whole) < 0 ? "part" : "not-proven";
  return { figure, amount, ...shareOf(amount, whole), verdict };
}

/** Holds a portion against an upper level, with the interval that the figures leave open. */
export function holdUpper(portion: EatenPortion, figure: UpperFigure): HeldUpper {
  const level = exact(figure.value);
  if (figure.covers.startsWith("supplements")) return holdAdded(portion, figure, level);
  const amount = amountFor(portion, figure);
  const { low, high } = endsOf(portion, figure);
  const verdict =
    compare(low, level) > 0 ? "past" : high && compare(high, level) <= 0 ? "under" : "not-proven";
  return { figure, amount, ...shareOf(amount, level), verdict };
}

/** The least and the most of what a figure counts, for all that silent lines, limits and rounding leave open. */
function endsOf(
  portion: EatenPortion,
  { of, basis }: ReferenceFigure | UpperFigure,
): { readonly low: Fraction; readonly high: Fraction | undefined } {
  const low = sum(of.map((id) => portion.ends(id).low));
  const high = of.map((id) => mostOf(portion, id)).reduce(add, ZERO);
  return { low, high: basis === "alpha-tocopherol equivalents" ? undefined : high };
}

/** What was added to fortified foods is at most all that these foods hold. */
function holdAdded(portion: EatenPortion, figure: UpperFigure, level: Fraction): HeldUpper {
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
  const bound = held.bound === "exact" || held.bound === "at-most" ? "at-most" : "unknown";
  const amount = new Tally(held.exact.n, held.exact.d, held.unit, held, () => held.coverage, bound);
  const under = high && compare(high, level) <= 0;
  return { figure, amount, ...shareOf(amount, level), verdict: under ? "under" : "not-proven" };
}

const NO_MARKS = { missing: [], trace: [], below: [], borrowed: [], derived: [], presumed: [] } as const;

/**
 * What the portion brings of just what a figure counts. Of alpha-tocopherol equivalents a food table
 * that gives alpha-tocopherol tells a part, the main one: what there is at least.
 */
function amountFor(portion: EatenPortion, { of, basis }: ReferenceFigure | UpperFigure): Tally {
  const tallies = of.map((id) => portion.brings(id));
  const [only, ...others] = tallies;
  const all = only && others.length === 0 ? only : addUp(components[of[0] ?? "energy"].unit, tallies);
  if (basis !== "alpha-tocopherol equivalents" || all.bound === "unknown") return all;
  return new Tally(all.exact.n, all.exact.d, all.unit, all, () => all.coverage, "at-least");
}

/** What holds a component whole: where the part is silent, it is at most the whole. */
const WHOLES: { readonly [C in ComponentId]?: ComponentId } = {
  retinol: "vitaminARae",
  folicAcid: "folate",
};

function mostOf(portion: EatenPortion, id: ComponentId): Fraction | undefined {
  const { high } = portion.ends(id);
  const whole = WHOLES[id];
  return high ?? (whole && portion.ends(whole).high);
}

function add(all: Fraction | undefined, next: Fraction | undefined): Fraction | undefined {
  return all && next && plus(all, next);
}

function shareOf(amount: Tally, whole: Fraction): Pick<HeldReference, "share" | "exactShare" | "bound"> {
  const exactShare = amount.bound === "unknown" || whole.n === 0n ? undefined : over(amount.exact, whole);
  return { share: exactShare && toDecimal(exactShare), exactShare, bound: amount.bound };
}
