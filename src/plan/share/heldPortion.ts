import { type Exact, fraction, minus, negate, ONE, plus, times, ZERO } from "../../number/exact.ts";
import { type Constraint, withEnds } from "../../scale/engine/constraints.ts";
import { inLeast, type Linear, less } from "../../scale/engine/linear.ts";
import { BASE, baseOfMover, type LineAt, type Model } from "../../scale/engine/model.ts";
import { constraintEnds } from "../../scale/engine/programme.ts";
import type { Problem } from "../../scale/engine/task.ts";
import type { Programme, ProgrammeRow, ProgrammeTerm, SolverInterval } from "../../scale/solve/programme.ts";

/**
 * One portion, to be served from a pot that others share. The pot has several groups of held lines,
 * each told by one of its lines; in everyone's share they stand in the pot's ratios to the first.
 *
 * Everything a fit keeps to is a sum over what the lines are multiplied by, with nothing left over.
 * Divided by what the first group is multiplied by, it is linear in the pot's ratios and in all that
 * the portion still chooses for itself: its size and its adjustable lines.
 */
export interface Held {
  readonly problem: Problem;
  /** A line of each group, the one that ratios are taken to first. */
  readonly groups: readonly LineAt[];
}

/** A constraint that may be missed by a share of the figure asked; one that may not stays as it is. */
export function easedPortion(constraint: Constraint, by: Exact): Constraint {
  if (!constraint.soft || by.n === 0n) return constraint;
  const { least, most } = constraint;
  return withEnds(constraint, {
    least: least && times(least, minus(ONE, by)),
    most: most && times(most, plus(ONE, by)),
  });
}

/** Where a group stands among what moves: a mover's place, or `BASE`. */
export function placeOf({ places }: Model, { dish, line }: LineAt): number {
  return places[dish]?.[line] ?? BASE;
}

/**
 * The portion as a programme, of which the first variables are the ratios: given ones are pinned, and
 * otherwise free. Whatever is asked may be missed by `tolerance`, a share of the figure.
 */
export function programmeOf(
  { problem, groups }: Held,
  tolerance: Exact,
  ratios: readonly Exact[] | undefined,
): Programme {
  const { model } = problem;
  const forms = new Forms(model, groups, ratios);
  for (const constraint of problem.constraints) {
    const own = easedPortion(constraint, tolerance);
    for (const end of constraintEnds(own)) {
      const bound = (end === "most" ? own.most : own.least) as Exact;
      forms.keep(partsOf(inLeast(less(own.value, bound, own.per)).whole, model.movers), end);
    }
  }
  const last = model.movers.length + 1;
  model.movers.forEach((mover, j) => {
    forms.range(j + 1, baseOfMover(model, mover) + 1, mover.range.least, mover.range.most);
  });
  forms.range(0, last, model.common.least, model.common.most);
  return { variables: forms.variables, rows: forms.rows };
}

/** What keeps the common factor, each mover, then what is the same for everyone. */
function partsOf({ still, movers, each, dose }: Linear, { length }: Model["movers"]): readonly bigint[] {
  const parts = new Array<bigint>(length + 2).fill(0n);
  movers.forEach((j, k) => {
    parts[j + 1] = each[k] as bigint;
  });
  [parts[0], parts[length + 1]] = [still, dose];
  return parts;
}

type Sign = "least" | "most" | "exactly";

/** Rows and bounds from sums over what is multiplied, each held against 0. */
class Forms {
  readonly variables: { lower?: Exact; upper?: Exact }[] = [];
  readonly rows: ProgrammeRow[] = [];
  readonly #pinned: number;
  /** By what is multiplied: its variable, or nothing where it is what all else is divided by. */
  readonly #at: (number | undefined)[];

  constructor(model: Model, [first, ...others]: readonly LineAt[], ratios: readonly Exact[] | undefined) {
    const known = new Map<number, number | undefined>();
    if (first) known.set(placeOf(model, first) + 1, undefined);
    this.#pinned = others.length;
    const twice: (readonly [number, number])[] = [];
    others.forEach((group, p) => {
      const ratio = ratios?.[p];
      this.variables.push(ratio ? { lower: ratio, upper: ratio } : { lower: ZERO });
      const place = placeOf(model, group) + 1;
      if (known.has(place)) twice.push([p, place]);
      else known.set(place, p);
    });
    this.#at = Array.from({ length: model.movers.length + 2 }, (_, c) => {
      if (known.has(c)) return known.get(c);
      return this.variables.push({ lower: ZERO }) - 1;
    });
    // Two groups of the pot that move as one for this portion: their ratios are the same.
    for (const [p, place] of twice) {
      const at = this.#at[place];
      const other: ProgrammeTerm[] = at === undefined ? [] : [{ variable: at, coefficient: MINUS }];
      const end = at === undefined ? ONE : ZERO;
      this.rows.push({ terms: [{ variable: p, coefficient: ONE }, ...other], lower: end, upper: end });
    }
  }

  /** Keeps one thing between `least` and `most` times another. */
  range(of: number, to: number, least: Exact, most: Exact | undefined): void {
    const form = (bound: Exact): bigint[] => {
      const made = this.#at.map(() => 0n);
      made[of] = bound.d;
      made[to] = (made[to] as bigint) - bound.n;
      return made;
    };
    if (least.n > 0n) this.keep(form(least), "least");
    if (most) this.keep(form(most), "most");
  }

  /** Keeps a sum at or above 0, at or below it, or at it. */
  keep(parts: readonly bigint[], sign: Sign): void {
    const terms: ProgrammeTerm[] = [];
    let constant = 0n;
    parts.forEach((own, c) => {
      if (own === 0n) return;
      const variable = this.#at[c];
      if (variable === undefined) constant += own;
      else terms.push({ variable, coefficient: fraction(own) });
    });
    const [only, ...more] = terms;
    if (only && more.length === 0 && only.variable >= this.#pinned) this.#bound(only, constant, sign);
    else this.rows.push({ terms, ...ends(fraction(-constant), sign) });
  }

  #bound({ variable, coefficient: { n } }: ProgrammeTerm, constant: bigint, sign: Sign): void {
    const span = this.variables[variable];
    if (!span) return;
    const at = fraction(-constant, n);
    const turned = sign === "exactly" || n > 0n ? sign : sign === "least" ? "most" : "least";
    const { lower, upper } = ends(at, turned);
    if (lower && (!span.lower || isAbove(lower, span.lower))) span.lower = lower;
    if (upper && (!span.upper || isAbove(span.upper, upper))) span.upper = upper;
  }
}

const MINUS: Exact = /* @__PURE__ */ negate(ONE);

function ends(at: Exact, sign: Sign): SolverInterval {
  return { ...(sign !== "most" && { lower: at }), ...(sign !== "least" && { upper: at }) };
}

function isAbove(a: Exact, b: Exact): boolean {
  return a.n * b.d > b.n * a.d;
}
