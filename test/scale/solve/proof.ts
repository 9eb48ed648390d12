import { type Exact, minus, negate, ONE, plus, times, ZERO } from "../../../src/number/exact.ts";
import { compareRatios } from "../../../src/number/ratio.ts";
import type {
  Infeasible,
  Objective,
  Optimal,
  Programme,
  ProgrammeTerm,
  Solution,
  SolverInterval,
  Unbounded,
} from "../../../src/scale/solve/programme.ts";

/**
 * Checks an answer against the programme alone, in exact arithmetic, by the conditions that any
 * textbook of linear programming gives (duality theorem, Farkas' lemma); it knows nothing of how
 * the answer was found. Returns what is wrong, so that a test can expect nothing.
 */
export function faultsOf(programme: Programme, objective: Objective, solution: Solution): string[] {
  if (solution.status === "optimal") return faultsOfOptimal(programme, objective, solution);
  if (solution.status === "infeasible") return faultsOfProof(programme, solution);
  if (solution.status === "unbounded") return faultsOfRay(programme, objective, solution);
  return ["stopped before an answer"];
}

export function total(terms: readonly ProgrammeTerm[], x: readonly Exact[]): Exact {
  return terms.reduce((total, t) => plus(total, times(t.coefficient, x[t.variable] ?? ZERO)), ZERO);
}

export function faultsOfPoint({ variables, rows }: Programme, x: readonly Exact[]): string[] {
  const faults: string[] = [];
  if (x.length !== variables.length) faults.push(`${x.length} values for ${variables.length} variables`);
  for (const [j, v] of variables.entries())
    if (!holds(v, x[j] ?? ZERO)) faults.push(`variable ${j} leaves its bounds`);
  for (const [i, r] of rows.entries())
    if (!holds(r, total(r.terms, x))) faults.push(`row ${i} does not hold`);
  return faults;
}

function holds({ lower, upper }: SolverInterval, value: Exact): boolean {
  return !(lower && compareRatios(value, lower) < 0) && !(upper && compareRatios(value, upper) > 0);
}

function faultsOfOptimal(
  programme: Programme,
  objective: Objective,
  { x, objectives, prices, totals, binding }: Optimal,
): string[] {
  const faults = faultsOfPoint(programme, x);
  const { variables, rows } = programme;
  // Reduced costs follow from the row prices; the answer must have stated the same.
  const reduced = variables.map(() => ZERO as Exact);
  for (const t of objective) reduced[t.variable] = plus(reduced[t.variable] ?? ZERO, t.coefficient);
  for (const [i, row] of rows.entries()) {
    for (const t of row.terms) {
      reduced[t.variable] = minus(reduced[t.variable] ?? ZERO, times(prices.rows[i] ?? ZERO, t.coefficient));
    }
    if (compareRatios(totals[i] ?? ZERO, total(row.terms, x)) !== 0)
      faults.push(`total of row ${i} misstated`);
  }
  for (const [j, cost] of reduced.entries()) {
    if (compareRatios(cost, prices.variables[j] ?? ZERO) !== 0)
      faults.push(`price of variable ${j} misstated`);
  }
  // Dual feasible: a price pulls only on an end that exists. Both objectives equal.
  let dual = ZERO;
  const pull = (price: Exact, span: SolverInterval, what: string): void => {
    if (price.n === 0n) return;
    const end = price.n > 0n ? span.lower : span.upper;
    if (!end) faults.push(`${what} priced at an end it has not`);
    else dual = plus(dual, times(price, end));
  };
  for (const [i, row] of rows.entries()) pull(prices.rows[i] ?? ZERO, row, `row ${i}`);
  for (const [j, v] of variables.entries()) pull(reduced[j] ?? ZERO, v, `variable ${j}`);
  const primal = total(objective, x);
  if (compareRatios(primal, dual) !== 0) faults.push("primal and dual objectives differ");
  if (compareRatios(primal, objectives[0] ?? ZERO) !== 0) faults.push("objective misstated");
  for (const [i, row] of rows.entries())
    if (binding.rows[i] !== end(row, totals[i] ?? ZERO)) faults.push(`binding of row ${i} misstated`);
  for (const [j, v] of variables.entries())
    if (binding.variables[j] !== end(v, x[j] ?? ZERO)) faults.push(`binding of variable ${j} misstated`);
  return faults;
}

function end({ lower, upper }: SolverInterval, value: Exact): string {
  const [low, high] = [
    lower && compareRatios(lower, value) === 0,
    upper && compareRatios(upper, value) === 0,
  ];
  return low && high ? "both" : low ? "lower" : high ? "upper" : "neither";
}

export function faultsOfProof({ variables, rows }: Programme, { certificate, gap }: Infeasible): string[] {
  const faults: string[] = [];
  const left = variables.map(() => ZERO as Exact);
  let right = ZERO;
  for (const { on, index, end, weight } of certificate) {
    if (weight.n <= 0n) faults.push(`${on} ${index} weighs nothing`);
    const bound = (on === "row" ? rows[index] : variables[index])?.[end];
    if (!bound) {
      faults.push(`${on} ${index} has no ${end} end`);
      continue;
    }
    const signed = end === "upper" ? weight : negate(weight);
    right = plus(right, times(signed, bound));
    const terms = on === "row" ? (rows[index]?.terms ?? []) : [{ variable: index, coefficient: ONE }];
    for (const t of terms) left[t.variable] = plus(left[t.variable] ?? ZERO, times(signed, t.coefficient));
  }
  if (left.some((c) => c.n !== 0n)) faults.push("the holdings do not cancel");
  if (right.n >= 0n) faults.push("the holdings do not contradict");
  if (compareRatios(negate(right), gap) !== 0) faults.push("gap misstated");
  return faults;
}

function faultsOfRay(programme: Programme, objective: Objective, { from, along }: Unbounded): string[] {
  const faults = faultsOfPoint(programme, from);
  const recede = ({ lower, upper }: SolverInterval): SolverInterval => ({
    ...(lower && { lower: ZERO }),
    ...(upper && { upper: ZERO }),
  });
  const cone = {
    variables: programme.variables.map(recede),
    rows: programme.rows.map((r) => ({ terms: r.terms, ...recede(r) })),
  };
  faults.push(...faultsOfPoint(cone, along));
  if (total(objective, along).n >= 0n) faults.push("the objective does not fall along the way");
  return faults;
}
