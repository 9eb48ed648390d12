import { exactText } from "../../number/digits.ts";
import { type Exact, fraction, minus, plus, sum, times, ZERO } from "../../number/exact.ts";
import { gcd } from "../../number/gcd.ts";
import { compareRatios } from "../../number/ratio.ts";
import { stopped } from "../../scale/engine/programme.ts";
import { minimise, minimiseInTurn } from "../../scale/solve/minimise.ts";
import type { Infeasible, Programme } from "../../scale/solve/programme.ts";
import { type Held, programmeOf } from "./heldPortion.ts";

/** `Σ coefficient × ratio ≥ least`, which holds for all ratios that suit a portion. */
export interface Cut {
  /** Whole, and without a common divisor. */
  readonly coefficients: readonly bigint[];
  readonly least: Exact;
}

/** The ratios of a pot that suit someone: a convex set, known by what does not suit. */
export interface Region {
  /** What is known to hold so far. */
  readonly cuts: readonly Cut[];
  /** A cut that these ratios break; nothing where they suit. */
  refuse(ratios: readonly Exact[]): Cut | undefined;
  /** The most that the first ratio can be; nothing where there is no end to it. */
  readonly farthest: Exact | undefined;
}

/**
 * The ratios that suit a portion that can be fitted to them. Ratios are tried by solving; from the
 * proof that some do not suit comes a cut, which is kept.
 *
 * Method: feasibility cuts (Benders 1962, "Partitioning procedures for solving mixed-variables
 * programming problems", unverified).
 */
export class HeldRegion implements Region {
  readonly cuts: Cut[] = [];
  readonly #held: Held;
  readonly #tolerance: Exact;
  readonly #pivots: number | undefined;
  readonly #suits = new Set<string>();
  #farthest: { readonly value: Exact | undefined } | undefined;

  constructor(held: Held, tolerance: Exact, pivots: number | undefined) {
    this.#held = held;
    this.#tolerance = tolerance;
    this.#pivots = pivots;
  }

  refuse(ratios: readonly Exact[]): Cut | undefined {
    const key = ratios.map(exactText).join();
    if (this.#suits.has(key)) return undefined;
    const solution = minimiseInTurn(this.#programme(ratios), [], { pivots: this.#pivots });
    if (solution.status === "stopped") throw stopped(solution.pivots);
    if (solution.status === "infeasible") {
      const cut = cutOf(solution, ratios);
      this.cuts.push(cut);
      return cut;
    }
    this.#suits.add(key);
    return undefined;
  }

  get farthest(): Exact | undefined {
    this.#farthest ??= { value: this.#far() };
    return this.#farthest.value;
  }

  #far(): Exact | undefined {
    const away = [{ variable: 0, coefficient: fraction(-1n) }];
    const solution = minimise(this.#programme(undefined), away, { pivots: this.#pivots });
    if (solution.status === "stopped") throw stopped(solution.pivots);
    return solution.status === "optimal" ? solution.x[0] : undefined;
  }

  #programme(ratios: readonly Exact[] | undefined): Programme {
    return programmeOf(this.#held, this.#tolerance, ratios);
  }
}

/** Someone whose portion stays as it is: no other ratios suit. */
export class FixedRegion implements Region {
  readonly cuts: readonly Cut[];
  readonly #ratios: readonly Exact[];

  constructor(ratios: readonly Exact[]) {
    this.#ratios = ratios;
    this.cuts = ratios.flatMap((ratio, p) => [alone(p, 1n, ratio), alone(p, -1n, ratio)]);

    function alone(place: number, sign: bigint, { n, d }: Exact): Cut {
      return { coefficients: ratios.map((_, p) => (p === place ? sign : 0n)), least: fraction(sign * n, d) };
    }
  }

  refuse(ratios: readonly Exact[]): Cut | undefined {
    return this.cuts.find((cut) => short(cut, ratios));
  }

  get farthest(): Exact | undefined {
    return this.#ratios[0];
  }
}

/** Whether ratios break a cut. */
export function short({ coefficients, least }: Cut, ratios: readonly Exact[]): boolean {
  const value = sum(coefficients.map((c, p) => times(fraction(c), ratios[p] ?? ZERO)));
  return compareRatios(value, least) < 0;
}

/**
 * In the proof the pinned ratios are weighed too. Without them it is a sum of what the portion keeps
 * to, in which nothing is left but ratios: that holds for all that suit.
 */
function cutOf({ certificate, gap }: Infeasible, ratios: readonly Exact[]): Cut {
  const weights = ratios.map(() => ZERO);
  for (const { on, index, end, weight } of certificate) {
    const now = weights[index];
    if (on !== "variable" || !now) continue;
    weights[index] = end === "upper" ? plus(now, weight) : minus(now, weight);
  }
  const least = plus(gap, sum(weights.map((weight, p) => times(weight, ratios[p] ?? ZERO))));
  return inWholes(weights, least);
}

function inWholes(weights: readonly Exact[], least: Exact): Cut {
  const scale = weights.reduce((all, { d }) => (all / gcd(all, d)) * d, 1n);
  const whole = weights.map(({ n, d }) => n * (scale / d));
  const by = whole.reduce((all, own) => gcd(own < 0n ? -own : own, all), 0n) || 1n;
  return { coefficients: whole.map((own) => own / by), least: times(least, fraction(scale, by)) };
}
