import { type Fraction, fraction, negate, sum, times, ZERO } from "../../number/fraction.ts";
import { basicValues, reducedCost, restingValue, rowPrices, type WorkingBasis } from "./basis.ts";
import type {
  End,
  Holding,
  Infeasible,
  Objective,
  Optimal,
  Prices,
  Programme,
  Span,
  Unbounded,
} from "./programme.ts";
import { allValues, type Entering, shortfallCosts } from "./simplex.ts";
import { objectiveInWholes, type WholeObjective, type WholeProgramme } from "./whole.ts";

/** Reads the answer off the last basis, back in the caller's units. */
export function optimal(
  programme: Programme,
  objectives: readonly Objective[],
  b: WorkingBasis,
  prices: Prices,
): Optimal {
  const { n } = b.whole;
  const basics = basicValues(b);
  const faces: Fraction[] = [];
  const ends: End[] = [];
  for (let j = 0; j < b.standing.length; j += 1) {
    if (b.standing[j] === "basic") continue;
    const span = (j < n ? programme.variables[j] : programme.rows[j - n]) as Span;
    const at = restingValue(b, j);
    const end = endOf(b.whole, at, 1n, j);
    ends[j] = end;
    // What rests on an end of its span is that end, as given.
    faces[j] =
      end === "neither"
        ? fraction(at, unitOf(b.whole, j))
        : ((end === "upper" ? span.upper : span.lower) ?? ZERO);
  }
  for (let p = 0; p < basics.length; p += 1) {
    const j = b.basic[p] as number;
    const value = basics[p] as bigint;
    ends[j] = endOf(b.whole, value, b.determinant, j);
    faces[j] = value === 0n ? ZERO : fraction(value, b.determinant * unitOf(b.whole, j));
  }
  return {
    status: "optimal",
    x: faces.slice(0, n),
    objectives: objectives.map((o) => worth(b, objectiveInWholes(o, b.whole))),
    prices,
    totals: faces.slice(n),
    binding: { variables: ends.slice(0, n), rows: ends.slice(n) },
    basis: { variables: b.standing.slice(0, n), rows: b.standing.slice(n) },
    pivots: b.pivots,
  };
}

/** Which end of its span `value / determinant` stands on. */
function endOf({ lower, upper }: WholeProgramme, value: bigint, determinant: bigint, j: number): End {
  const [below, above] = [lower[j], upper[j]];
  const low = below !== undefined && value === below * determinant;
  const high = above !== undefined && value === above * determinant;
  return low ? (high ? "both" : "lower") : high ? "upper" : "neither";
}

/** A variable, or a row's total, of 1 in whole numbers. */
function unitOf({ n, unit, scales }: WholeProgramme, j: number): bigint {
  return j < n ? unit : (scales[j - n] as bigint) * unit;
}

/** An objective at the basis as it stands. */
export function worth(b: WorkingBasis, { costs, scale }: WholeObjective): Fraction {
  const basics = basicValues(b);
  let resting = 0n;
  for (let j = 0; j < b.whole.n; j += 1) {
    if (costs[j] !== 0n && b.standing[j] !== "basic") resting += (costs[j] as bigint) * restingValue(b, j);
  }
  let total = resting * b.determinant;
  for (let p = 0; p < basics.length; p += 1) {
    const cost = costs[b.basic[p] as number] as bigint;
    if (cost !== 0n) total += cost * (basics[p] as bigint);
  }
  return total === 0n ? ZERO : fraction(total, b.determinant * scale * b.whole.unit);
}

/** The prices of an objective at a basis that makes it least; those of variables worked out when read. */
export function pricesAt(
  b: WorkingBasis,
  { costs, scale }: WholeObjective,
  perRow: readonly bigint[],
): Prices {
  const { whole, determinant } = b;
  const standing = [...b.standing];
  const under = determinant * scale;
  let variables: readonly Fraction[] | undefined;
  return {
    rows: whole.scales.map((by, i) =>
      perRow[i] === 0n ? ZERO : fraction((perRow[i] as bigint) * by, under),
    ),
    get variables(): readonly Fraction[] {
      variables ??= standing.slice(0, whole.n).map((place, j) => {
        const cost = place === "basic" ? 0n : reducedCost({ whole, determinant }, perRow, costs, j);
        return cost === 0n ? ZERO : fraction(cost, under);
      });
      return variables;
    },
  };
}

/** The proof that nothing meets every bound, from a basis whose shortfall is least yet above zero. */
export function infeasible(programme: Programme, b: WorkingBasis): Infeasible {
  const costs = shortfallCosts(b, basicValues(b)) ?? [];
  const perRow = rowPrices(b, costs);
  const certificate: Holding[] = [];
  for (let j = 0; j < b.standing.length; j += 1) {
    // What falls short is held at the end it misses, what rests at the end it rests on.
    const isBasic = b.standing[j] === "basic";
    const cost = isBasic ? -(costs[j] as bigint) * b.determinant : reducedCost(b, perRow, costs, j);
    if (cost !== 0n) certificate.push(holding(b.whole, j, cost));
  }
  return { status: "infeasible", certificate, gap: gap(programme, certificate), pivots: b.pivots };
}

function holding(whole: WholeProgramme, j: number, cost: bigint): Holding {
  const onVariable = j < whole.n;
  const index = onVariable ? j : j - whole.n;
  return {
    on: onVariable ? "variable" : "row",
    index,
    end: cost > 0n ? "lower" : "upper",
    weight: fraction((cost < 0n ? -cost : cost) * (onVariable ? 1n : (whole.scales[index] as bigint))),
  };
}

/** The proof for a span whose own ends cross. */
export function crossed(programme: Programme, on: "row" | "variable", index: number): Infeasible {
  const certificate = (["lower", "upper"] as const).map((end) => ({
    on,
    index,
    end,
    weight: { n: 1n, d: 1n },
  }));
  return { status: "infeasible", certificate, gap: gap(programme, certificate), pivots: 0 };
}

function gap(programme: Programme, certificate: readonly Holding[]): Fraction {
  return sum(
    certificate.map(({ on, index, end, weight }) => {
      const span = (on === "row" ? programme.rows[index] : programme.variables[index]) as Span;
      const bound = span[end] as Fraction;
      return times(weight, end === "lower" ? bound : negate(bound));
    }),
  );
}

/** The way along which the objective falls without end. */
export function unbounded(
  b: WorkingBasis,
  { variable, rising }: Entering,
  through: readonly bigint[],
  turn: number,
): Unbounded {
  const along = new Array<bigint>(b.standing.length).fill(0n);
  along[variable] = rising ? b.determinant : -b.determinant;
  for (let p = 0; p < through.length; p += 1) {
    along[b.basic[p] as number] = rising ? -(through[p] as bigint) : (through[p] as bigint);
  }
  const show = (values: readonly bigint[]): Fraction[] =>
    values.slice(0, b.whole.n).map((value) => fraction(value, b.determinant * b.whole.unit));
  return { status: "unbounded", from: show(allValues(b)), along: show(along), turn, pivots: b.pivots };
}
