import { type Exact, fraction, ZERO } from "../../number/exact.ts";
import { basicValues, restingValue, type WorkingBasis } from "./basis.ts";
import type {
  End,
  Objective,
  Optimal,
  Prices,
  Programme,
  ProgrammeBasis,
  SolverInterval,
} from "./programme.ts";
import { objectiveInWholes, type WholeObjective, type WholeProgramme } from "./whole.ts";

/** Reads the answer off the last basis, back in the caller's units. */
export function optimal(
  programme: Programme,
  objectives: readonly Objective[],
  b: WorkingBasis,
  prices: Prices,
): Optimal {
  return new Answered(programme, objectives, b, prices);
}

/** What few callers look at is worked out when looked at: a plan solves by the thousand. */
class Answered implements Optimal {
  readonly status = "optimal";
  readonly prices: Prices;
  readonly pivots: number;
  readonly x: readonly Exact[];
  readonly #programme: Programme;
  readonly #objectives: readonly Objective[];
  readonly #basis: WorkingBasis;
  #worths: readonly Exact[] | undefined;

  constructor(programme: Programme, objectives: readonly Objective[], b: WorkingBasis, prices: Prices) {
    this.#programme = programme;
    this.#objectives = objectives;
    this.#basis = b;
    this.prices = prices;
    this.pivots = b.pivots;
    this.x = this.#faces(0, b.whole.n);
  }

  get objectives(): readonly Exact[] {
    const b = this.#basis;
    this.#worths ??= this.#objectives.map((o) => worth(b, objectiveInWholes(o, b.whole)));
    return this.#worths;
  }

  get totals(): readonly Exact[] {
    const { standing, whole } = this.#basis;
    return this.#faces(whole.n, standing.length);
  }

  get binding(): Optimal["binding"] {
    const { standing, whole } = this.#basis;
    return { variables: this.#ends(0, whole.n), rows: this.#ends(whole.n, standing.length) };
  }

  get basis(): ProgrammeBasis {
    const { standing, whole } = this.#basis;
    return { variables: standing.slice(0, whole.n), rows: standing.slice(whole.n) };
  }

  #faces(from: number, to: number): Exact[] {
    const b = this.#basis;
    const faces: Exact[] = [];
    for (let j = from; j < to; j += 1) if (b.standing[j] !== "basic") faces[j - from] = this.#restingFace(j);
    basicValues(b).forEach((value, p) => {
      const j = b.basic[p] as number;
      if (j < from || j >= to) return;
      faces[j - from] = value === 0n ? ZERO : fraction(value, b.determinant * unitOf(b.whole, j));
    });
    return faces;
  }

  /** What rests on an end of its span is that end, as given. */
  #restingFace(j: number): Exact {
    const { n } = this.#basis.whole;
    const span = (j < n ? this.#programme.variables[j] : this.#programme.rows[j - n]) as SolverInterval;
    const at = restingValue(this.#basis, j);
    const end = endOf(this.#basis.whole, at, 1n, j);
    if (end === "neither") return fraction(at, unitOf(this.#basis.whole, j));
    return (end === "upper" ? span.upper : span.lower) ?? ZERO;
  }

  #ends(from: number, to: number): End[] {
    const b = this.#basis;
    const ends: End[] = [];
    for (let j = from; j < to; j += 1) {
      if (b.standing[j] !== "basic") ends[j - from] = endOf(b.whole, restingValue(b, j), 1n, j);
    }
    basicValues(b).forEach((value, p) => {
      const j = b.basic[p] as number;
      if (j >= from && j < to) ends[j - from] = endOf(b.whole, value, b.determinant, j);
    });
    return ends;
  }
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
export function worth(b: WorkingBasis, { costs, scale }: WholeObjective): Exact {
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
