import { type Exact, fraction, minus, negate, over, plus, times, ZERO } from "../number/exact.ts";
import { type Layout, objectivesOf } from "../scale/engine/programme.ts";
import type { ProgrammeBasis, SolverInterval, Standing } from "../scale/solve/programme.ts";

/**
 * Where a basis puts a programme, feasible or not, and what tells whether it is the best there. Each figure is
 * over `u`, one over the common factor: a target is a coefficient of `u` alone, so that these are affine in the
 * targets for as long as the basis stays.
 */
export interface Stand {
  readonly x: readonly Exact[];
  readonly common: Exact;
  /**
   * What must not fall below 0, one list for each condition, in turn: the first figure that is not 0 has the
   * say. What a basic variable or row has left to its ends is one figure; what leaving the basis would cost is
   * one for each objective.
   */
  readonly inTurn: readonly (readonly Exact[])[];
}

/** Gives undefined where the basis does not fix one point. */
export function standAt(layout: Layout, basis: ProgrammeBasis): Stand | undefined {
  const { variables } = layout.programme;
  const rows = layout.programme.rows.map((row, i) =>
    unscaled(row, layout.rows[i]?.times as Exact, variables.length),
  );
  const basic = places(basis.variables, (each) => each === "basic");
  const tight = places(basis.rows, (each) => each !== "basic");
  if (basic.length !== tight.length) return undefined;
  const inverse = inverted(tight.map((r) => basic.map((j) => rows[r]?.of[j] as Exact)));
  if (!inverse) return undefined;
  const x = variables.map((span, j) => restAt(span, basis.variables[j] as Standing));
  const left = tight.map((r) => {
    const { of, span } = rows[r] as Dense;
    return minus(restAt(span, basis.rows[r] as Standing), dot(of, x));
  });
  basic.forEach((j, k) => {
    x[j] = dot(inverse[k] as readonly Exact[], left);
  });
  const u = plus(fraction(1n), minus(x.at(-2) as Exact, x.at(-1) as Exact));
  if (u.n <= 0n) return undefined;
  const per = (all: readonly Exact[]): Exact[] => all.map((each) => over(each, u));
  const room = [
    ...basic.flatMap((j) => leftTo(variables[j] as SolverInterval, x[j] as Exact)),
    ...places(basis.rows, (each) => each === "basic").flatMap((r) => {
      const { of, span } = rows[r] as Dense;
      return leftTo(span, dot(of, x));
    }),
  ];
  return {
    x,
    common: over(fraction(1n), u),
    inTurn: [
      ...room.map((each) => per([each])),
      ...costs(layout, basis, rows, basic, tight, inverse).map(per),
    ],
  };
}

/** What it would cost, objective by objective, to move what rests at an end that it could leave. */
function costs(
  layout: Layout,
  basis: ProgrammeBasis,
  rows: readonly Dense[],
  basic: readonly number[],
  tight: readonly number[],
  inverse: Matrix,
): Exact[][] {
  const { variables } = layout.programme;
  const turns = objectivesOf(layout).map((objective) => {
    const cost = variables.map(() => ZERO);
    for (const { variable, coefficient } of objective)
      cost[variable] = plus(cost[variable] as Exact, coefficient);
    const prices = tight.map((_, r) =>
      basic.reduce((sum, j, k) => plus(sum, times(cost[j] as Exact, inverse[k]?.[r] as Exact)), ZERO),
    );
    return { cost, prices };
  });
  const inwards = (standing: Standing, cost: Exact): Exact => (standing === "upper" ? negate(cost) : cost);
  const ofVariables = places(basis.variables, (each) => each !== "basic").filter((j) =>
    canMove(variables[j] as SolverInterval),
  );
  const ofRows = tight.flatMap((r, k) => (canMove(rows[r]?.span as SolverInterval) ? [[r, k] as const] : []));
  return [
    ...ofVariables.map((j) =>
      turns.map(({ cost, prices }) => {
        const priced = tight.reduce(
          (sum, r, k) => plus(sum, times(prices[k] as Exact, rows[r]?.of[j] as Exact)),
          ZERO,
        );
        return inwards(basis.variables[j] as Standing, minus(cost[j] as Exact, priced));
      }),
    ),
    ...ofRows.map(([r, k]) =>
      turns.map(({ prices }) => inwards(basis.rows[r] as Standing, prices[k] as Exact)),
    ),
  ];
}

type Matrix = readonly (readonly Exact[])[];

/** A row as a coefficient for each variable, as it was before it was made whole. */
interface Dense {
  readonly of: readonly Exact[];
  readonly span: SolverInterval;
}

function unscaled(
  { terms, lower, upper }: Layout["programme"]["rows"][number],
  by: Exact,
  count: number,
): Dense {
  const of = new Array<Exact>(count).fill(ZERO);
  for (const { variable, coefficient } of terms)
    of[variable] = plus(of[variable] as Exact, over(coefficient, by));
  const span = { ...(lower && { lower: over(lower, by) }), ...(upper && { upper: over(upper, by) }) };
  return { of, span };
}

function canMove({ lower, upper }: SolverInterval): boolean {
  return !lower || !upper || lower.n * upper.d !== upper.n * lower.d;
}

function restAt({ lower, upper }: SolverInterval, standing: Standing): Exact {
  return (standing === "upper" ? upper : standing === "lower" ? lower : undefined) ?? ZERO;
}

function leftTo({ lower, upper }: SolverInterval, at: Exact): Exact[] {
  return [...(lower ? [minus(at, lower)] : []), ...(upper ? [minus(upper, at)] : [])];
}

function places(all: readonly Standing[], are: (each: Standing) => boolean): number[] {
  return all.flatMap((each, i) => (are(each) ? i : []));
}

function dot(a: readonly Exact[], b: readonly Exact[]): Exact {
  return a.reduce((sum, each, k) => (each.n === 0n ? sum : plus(sum, times(each, b[k] as Exact))), ZERO);
}

/** The inverse of a square of numbers; undefined where there is none. */
function inverted(square: Matrix): Matrix | undefined {
  const size = square.length;
  const all = square.map((row, r) => [...row, ...row.map((_, c) => fraction(c === r ? 1n : 0n))]);
  for (let c = 0; c < size; c += 1) {
    const found = all.findIndex((row, r) => r >= c && row[c]?.n !== 0n);
    if (found < 0) return undefined;
    [all[c], all[found]] = [all[found] as Exact[], all[c] as Exact[]];
    const pivot = all[c] as Exact[];
    const by = pivot[c] as Exact;
    for (let k = 0; k < 2 * size; k += 1) pivot[k] = over(pivot[k] as Exact, by);
    for (const [r, row] of all.entries()) {
      const times_ = row[c] as Exact;
      if (r === c || times_.n === 0n) continue;
      for (let k = 0; k < 2 * size; k += 1) row[k] = minus(row[k] as Exact, times(times_, pivot[k] as Exact));
    }
  }
  return all.map((row) => row.slice(size));
}
