import { yieldFigure } from "../food/yield.ts";
import type { Amount } from "../measure/amount.ts";
import { fault } from "../number/error.ts";
import { type Exact, isZero, minus, ONE, over, plus, sum, times, ZERO } from "../number/exact.ts";
import { lcm } from "../number/ratio.ts";
import type { SheetPlan } from "./plan.ts";

/** How the cooked mass is known: as a factor of the raw mass, as a mass on the scale, or line by line. */
export type Cooking =
  | { readonly by: "lines" }
  | { readonly by: "factor"; readonly factor: Exact; readonly presumed?: boolean }
  | { readonly by: "mass"; readonly mass: Exact };

/** What tells one version of a sheet from another. */
export interface Values {
  readonly amounts: readonly Amount[];
  /** Grams of edible portion by line, for the batch. */
  readonly grams: readonly Exact[];
  readonly portions: Exact;
  readonly cooking: Cooking;
}

/** The masses of a batch, in grams. */
export interface Masses {
  /** Everything as weighed in. */
  readonly raw: Exact;
  /** Everything as eaten: what was cooked, after cooking, and what is added at serving. */
  readonly cooked: Exact;
  /** What was cooked, after cooking, without what is added at serving. */
  readonly pot: Exact;
  /** What cooking takes up (above 0) or gives off (below 0): water, as far as the pot holds any. */
  readonly change: Exact;
  /** Cooked ÷ raw mass of what is cooked. */
  readonly yieldFactor: Exact;
}

/** A mass that was weighed is of what was weighed: of anything else only the yield that it implied is known, presumed. */
export function impliedYield(cooking: Cooking, { yieldFactor }: Masses): Cooking {
  return cooking.by === "mass" ? { by: "factor", factor: yieldFactor, presumed: true } : cooking;
}

/** Whether the cooked mass is reckoned from a yield that nobody measured. */
export function isPresumed({ cooking }: Values): boolean {
  return cooking.by === "factor" && cooking.presumed === true;
}

/** Refuses a cooked mass of nothing cooked, which would be made out of nothing. Throws `recipe-malformed`. */
export function checkedValues(plan: SheetPlan, values: Values): Values {
  const { cooking, grams } = values;
  const cooked = plan.lines.some(({ line }, i) => line.added === "cooking" && !isZero(grams[i] ?? ZERO));
  if (cooking.by !== "mass" || cooked) return values;
  const hint = "leave out cookedMass, or give a line in cooking an amount above 0";
  throw fault("recipe-malformed", "a cooked mass, but nothing is cooked", hint, ["cookedMass"]);
}

export function massesOf(plan: SheetPlan, { grams, cooking }: Values): Masses {
  const raw = sum(grams);
  const served = sum(grams.filter((_, i) => plan.lines[i]?.line.added === "serving"));
  const potRaw = minus(raw, served);
  if (cooking.by === "factor") return cookedMasses(potRaw, served, cooking.factor);
  const pot =
    cooking.by === "mass"
      ? cooking.mass
      : sum(grams.flatMap((g, i) => (isCooked(plan, i) ? times(g, lineYield(plan, i)) : [])));
  return cookedMasses(potRaw, served, isZero(potRaw) ? ONE : over(pot, potRaw));
}

function isCooked(plan: SheetPlan, i: number): boolean {
  return plan.lines[i]?.line.added === "cooking";
}

/** Cooked ÷ raw mass of a line that is cooked, by what it says itself. */
export function lineYield(plan: SheetPlan, i: number): Exact {
  return yieldFigure(plan.lines[i]?.line.yieldFactor ?? ONE, plan.foods.retention);
}

/** The masses of so much in the pot, and so much added at serving. */
export function cookedMasses(potRaw: Exact, served: Exact, yieldFactor: Exact): Masses {
  const pot = times(potRaw, yieldFactor);
  return {
    raw: plus(potRaw, served),
    cooked: plus(pot, served),
    pot,
    change: minus(pot, potRaw),
    yieldFactor,
  };
}

/**
 * Grams by line over one denominator, each lifted to the sources' common scale, so that the total
 * of a component is `Σ lifted × value` over `denominator`.
 */
export interface Weights {
  readonly lifted: readonly bigint[];
  readonly denominator: bigint;
  /** The least common denominator that the grams were brought to. */
  readonly common: bigint;
}

/** `earlier` is the denominator of an earlier version, kept where it still serves. */
export function weigh(plan: SheetPlan, grams: readonly Exact[], earlier = 1n): Weights {
  const kept = grams.every((g) => earlier % g.d === 0n);
  const common = kept ? earlier : grams.reduce((all, g) => lcm(all, g.d), 1n);
  return {
    lifted: grams.map((g, i) => g.n * (common / g.d) * (plan.lifts[i] ?? 1n)),
    denominator: common * plan.scale * 100n,
    common,
  };
}
