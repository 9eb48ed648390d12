import { fault } from "../../number/error.ts";
import { type Exact, fraction, minus, negate, ONE, over, plus, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { begin, Descent, minimiseInTurn } from "../solve/minimise.ts";
import type {
  Infeasible,
  Objective,
  Optimal,
  Programme,
  ProgrammeRow,
  ProgrammeTerm,
  SolverInterval,
} from "../solve/programme.ts";
import { type Constraint, isExact } from "./constraints.ts";
import type { FactorRange } from "./halfToDouble.ts";
import { inLeast, isOnePortion, type Linear, less, type Point, pointValue } from "./linear.ts";
import { amountAt, BASE, baseOfMover, type Model, type Mover, pointAsWritten } from "./model.ts";

/**
 * A fit as a linear programme, exact from end to end by the solver next door (`../solve`): it is
 * small enough that whole numbers cost less than a float solver's call, and its basis, prices and
 * proofs need no certifying afterwards.
 *
 * Mover `j` stands at `1 + rise − fall` times the common factor, variables `2j` and `2j + 1`, and one
 * of a further sheet at that sheet's own ratio `+ rise − fall`; `u`, one over the common factor, is
 * likewise `1 + rise − fall`, the pair after them. Each constraint `value / per` is a row for either
 * end, `value − end × per` against 0, and so is a range to a factor that moves itself. A soft row has its
 * misses as further variables.
 */
export interface Layout {
  readonly model: Model;
  readonly constraints: readonly Constraint[];
  readonly programme: Programme;
  /** What each row stands for. */
  readonly rows: readonly RowOf[];
  readonly misses: readonly Miss[];
  /** Of a day: how far each meal is from its share, either way; nothing of a fit that is no day. */
  readonly distances: readonly number[] | undefined;
}

export type EndOf = "least" | "most" | "exactly";

export interface RowOf {
  /** Place in `constraints`, or of the mover whose range it is; how far a meal is from its share has none. */
  readonly of: "constraint" | "range" | "distance";
  readonly place: number;
  readonly end: EndOf;
  /** What the row was multiplied by to be whole; its price counts that much less. */
  readonly times: Exact;
}

/** By how much a soft row is missed, in the measure of its `value`: over its `per`, what is asked is missed by. */
export interface Miss {
  readonly variable: number;
  /** Place in `constraints`. */
  readonly constraint: number;
  /** What one unit of it counts. */
  readonly weight: Exact;
  /** Whether nothing is asked, so that no miss is a share of the figure. */
  readonly ofNothing: boolean;
}

/** Rows for what is kept to; of a day `shares` are what meals come as near to as they can. */
export function layOut(
  model: Model,
  constraints: readonly Constraint[],
  mayMiss: boolean,
  shares?: readonly Constraint[],
): Layout {
  const variables: SolverInterval[] = [];
  // Most movers share one range, so that few are worked out.
  const known = new Map<FactorRange, readonly SolverInterval[]>();
  for (const mover of model.movers) {
    const { range } = mover;
    const pair = baseOfMover(model, mover) === BASE ? (known.get(range) ?? spans(range)) : FREE;
    if (pair !== FREE) known.set(range, pair);
    variables.push(...pair);
  }
  variables.push(...spans(overCommon(model.common)));
  const rows: (ProgrammeRow & RowOf)[] = [];
  const misses: Miss[] = [];
  const rowOf = (
    { value, per, least, most }: Pick<Constraint, "value" | "per" | "least" | "most">,
    end: EndOf,
    of: Pick<RowOf, "of" | "place">,
  ): ProgrammeRow & RowOf & { readonly terms: ProgrammeTerm[] } => {
    const { whole, times } = inLeast(less(value, (end === "most" ? most : least) as Exact, per));
    const { terms, constant } = termsOf(model, whole);
    return { terms, ...ENDS[end](fraction(-constant)), ...of, end, times };
  };
  constraints.forEach((constraint, c) => {
    for (const end of constraintEnds(constraint)) {
      const bound = (end === "most" ? constraint.most : constraint.least) as Exact;
      const row = rowOf(constraint, end, { of: "constraint", place: c });
      const { terms, times: by } = row;
      if (mayMiss && constraint.soft) {
        const weight = weightOf(model, constraint, bound);
        const ofNothing = bound.n === 0n;
        for (const sign of end === "exactly" ? [1n, -1n] : end === "least" ? [1n] : [-1n]) {
          terms.push({ variable: variables.length, coefficient: sign < 0n ? negate(by) : by });
          misses.push({ variable: variables.length, constraint: c, weight, ofNothing });
          variables.push({ lower: ZERO });
        }
      }
      rows.push(row);
    }
  });
  const distances = shares?.flatMap((share): number[] => {
    const row = rowOf(share, "exactly", { of: "distance", place: 0 });
    const pair = [variables.length, variables.length + 1];
    pair.forEach((variable, k) => {
      row.terms.push({ variable, coefficient: k === 0 ? row.times : negate(row.times) });
      variables.push({ lower: ZERO });
    });
    rows.push(row);
    return pair;
  });
  model.movers.forEach((mover, j) => {
    const base = baseOfMover(model, mover);
    if (base === BASE) return;
    const kept = { ...mover.range, value: amountAt(j, ONE), per: amountAt(base, ONE) };
    for (const end of constraintEnds(kept)) rows.push(rowOf(kept, end, { of: "range", place: j }));
  });
  return { model, constraints, programme: { variables, rows }, rows, misses, distances };
}

/** A rise and a fall that rows hold. */
const FREE: readonly SolverInterval[] = [{ lower: ZERO }, { lower: ZERO }];

/** The ends that a constraint has, as rows. */
export function constraintEnds(constraint: Pick<Constraint, "least" | "most">): readonly EndOf[] {
  const { least, most } = constraint;
  if (least && most) return isExact(constraint) ? ["exactly"] : ["least", "most"];
  return least ? ["least"] : most ? ["most"] : [];
}

/** What a row keeps to at each of them. */
const ENDS: { readonly [E in EndOf]: (at: Exact) => SolverInterval } = {
  least: (at) => ({ lower: at }),
  most: (at) => ({ upper: at }),
  exactly: (at) => ({ lower: at, upper: at }),
};

/**
 * What a miss of 1 counts: one over the figure that is asked, so that a tenth of one demand counts
 * as much as a tenth of another. Where 0 is asked, what the lines that move bring as written stands
 * in: that grows with the size of the recipe as all misses of 0 do, so the size has no say.
 */
function weightOf(model: Model, { value, per }: Constraint, bound: Exact): Exact {
  if (bound.n !== 0n) return over(ONE, bound);
  const written = pointAsWritten(model);
  const moving = pointValue({ ...value, dose: 0n }, written);
  const base = pointValue(isOnePortion(per) ? per : { ...per, dose: 0n }, written);
  return moving.n === 0n || base.n === 0n ? ONE : over(base, moving);
}

/** Ends of `rise` and `fall` that keep `1 + rise − fall` within a range. */
function spans({ least, most }: FactorRange): [SolverInterval, SolverInterval] {
  const above = (end: Exact): Exact => (compareRatios(end, ONE) > 0 ? minus(end, ONE) : ZERO);
  const below = (end: Exact): Exact => (compareRatios(end, ONE) < 0 ? minus(ONE, end) : ZERO);
  return [
    { lower: above(least), ...(most && { upper: above(most) }) },
    { lower: most ? below(most) : ZERO, upper: below(least) },
  ];
}

function overCommon({ least, most }: FactorRange): FactorRange {
  return { least: most ? over(ONE, most) : ZERO, most: over(ONE, least) };
}

/** The terms of a whole quantity, and what is left of it where no ratio and not `u` has moved. */
function termsOf(model: Model, whole: Linear): { terms: ProgrammeTerm[]; constant: bigint } {
  const { movers } = model;
  const terms: ProgrammeTerm[] = [];
  let constant = whole.still;
  const add = (own: bigint, j: number): void => {
    terms.push(
      { variable: 2 * j, coefficient: fraction(own) },
      { variable: 2 * j + 1, coefficient: fraction(-own) },
    );
  };
  for (let k = 0; k < whole.each.length; k += 1) {
    const [own, j] = [whole.each[k] as bigint, whole.movers[k] as number];
    constant += own;
    add(own, j);
    const base = baseOfMover(model, movers[j] as Mover);
    if (base !== BASE) add(own, base);
  }
  constant += whole.dose;
  if (whole.dose !== 0n) add(whole.dose, movers.length);
  return { terms, constant };
}

const TWO: Exact = /* @__PURE__ */ fraction(2n);

/**
 * What is made least in turn: the sum of departures, a fall counted twice; then how far the common factor is
 * from 1; then each by its name. Of a day departures inside dishes come first, then how far meals are
 * from their shares, and then those of whole dishes.
 */
export function objectivesOf({
  model: { movers },
  distances,
}: Pick<Layout, "model" | "distances">): Objective[] {
  const u = 2 * movers.length;
  const common = [u, u + 1].map((variable) => ({ variable, coefficient: ONE }));
  const each = movers.flatMap(
    ({ isDose, kind }, j): { readonly kind: Mover["kind"]; readonly terms: ProgrammeTerm[] }[] => {
      const rise = { variable: 2 * j, coefficient: ONE };
      return isDose ? [] : [{ kind, terms: [rise, { variable: 2 * j + 1, coefficient: TWO }] }];
    },
  );
  const alone = each.map(({ terms }) => terms);
  if (!distances) return [alone.flat(), common, ...alone];
  const [inside, whole] = [false, true].map((isDish) =>
    each.flatMap(({ kind, terms }) => ((kind === "dish") === isDish ? terms : [])),
  ) as [ProgrammeTerm[], ProgrammeTerm[]];
  const far = distances.map((variable) => ({ variable, coefficient: ONE }));
  return [inside, far, whole, common, ...alone];
}

/** An objective that is least where a quantity is. */
export function objectiveOf(model: Model, linear: Linear): Objective {
  return termsOf(model, inLeast(linear).whole).terms;
}

/** The quantity times `by` as an objective, but for what is left of it where nothing has moved. */
export function objectiveTimes(model: Model, linear: Linear, by: Exact): Objective {
  if (by.n === 0n) return [];
  const { whole, times: scale } = inLeast(linear);
  const share = over(by, scale);
  return termsOf(model, whole).terms.map(({ variable, coefficient }) => ({
    variable,
    coefficient: times(coefficient, share),
  }));
}

/** Begins a walk towards an objective, undefined where nothing meets every row; throws `fit-stopped`. */
export function descend(layout: Layout, towards: Objective, pivots: number | undefined): Descent | undefined {
  const walk = begin(layout.programme, towards, { pivots });
  if (walk instanceof Descent) return walk;
  if (walk.status === "stopped") throw stopped(walk.pivots);
  return undefined;
}

/** Walks on; false where there is no end to it. Throws `fit-stopped`. */
export function walkOn(walk: Descent, objective: Objective): boolean {
  const failed = walk.lessen(objective);
  if (failed?.status === "stopped") throw stopped(failed.pivots);
  return failed === undefined;
}

/** Solves, or throws `fit-stopped` where the effort allowed runs out. */
export function solve(
  layout: Layout,
  objectives: readonly Objective[],
  pivots: number | undefined,
): Optimal | Infeasible | undefined {
  const solution = minimiseInTurn(layout.programme, objectives, { pivots });
  if (solution.status === "stopped") throw stopped(solution.pivots);
  return solution.status === "unbounded" ? undefined : solution;
}

export function stopped(pivots: number): Error {
  return fault(
    "fit-stopped",
    `no answer was proven within ${pivots} steps`,
    "allow more with { pivots: … }, or make fewer lines adjustable",
  );
}

/** Where an answer stands. */
export function pointOf({ model }: Layout, { x }: Optimal): Point {
  const { movers } = model;
  const from = (start: Exact, j: number): Exact => {
    const [rise, fall] = [x[2 * j] as Exact, x[2 * j + 1] as Exact];
    if (fall.n === 0n) return rise.n === 0n ? start : plus(start, rise);
    return plus(start, rise.n === 0n ? negate(fall) : minus(rise, fall));
  };
  const ratios = movers.map((mover, j): Exact => {
    const base = baseOfMover(model, mover);
    return from(base === BASE ? ONE : from(ONE, base), j);
  });
  return { ratios, u: from(ONE, movers.length) };
}
