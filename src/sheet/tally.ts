import type { Decimal } from "decimal.js";
import { fault } from "../number/error.ts";
import {
  equals,
  exact,
  type Fraction,
  fraction,
  isZero,
  least,
  minus,
  ONE,
  over,
  plus,
  ratioToDecimal,
  sum,
  times,
  toDecimal,
  toText,
  type Value,
} from "../number/fraction.ts";
import { boundOfProduct, boundOfQuotient, boundOfSum, opposite } from "./bound.ts";
import { unitOfProduct, unitOfQuotient } from "./unit.ts";

/** How a tally's value bounds the truth. */
export type Bound = "exact" | "at-least" | "at-most" | "unknown";

/** What the figures behind a tally say of themselves: line keys by kind, silent per-portion lines first. */
export interface Marks {
  readonly missing: readonly string[];
  readonly trace: readonly string[];
  readonly below: readonly string[];
  readonly borrowed: readonly string[];
  readonly derived: readonly string[];
  readonly presumed: readonly string[];
}

/** Makes marks, one list for each kind. */
export function makeMarks(of: (kind: keyof Marks) => readonly string[]): Marks {
  return {
    missing: of("missing"),
    trace: of("trace"),
    below: of("below"),
    borrowed: of("borrowed"),
    derived: of("derived"),
    presumed: of("presumed"),
  };
}

/**
 * A value and how far to trust it. Unknown is not zero: lines that say nothing are named in
 * `missing`, and the value is then what is known, a lower bound.
 */
export class Tally implements Marks {
  readonly unit: string;
  readonly #n: bigint;
  readonly #d: bigint;
  #marksOrHow: Marks | (() => Marks);
  readonly #covered: () => Fraction;
  readonly #bound: Bound | undefined;
  /** What a formula that failed says instead; a tally never does. */
  declare readonly failed?: never;
  #exact: Fraction | undefined;
  #value: Decimal | undefined;

  /** @internal */
  constructor(
    n: bigint,
    d: bigint,
    unit: string,
    marks: Marks | (() => Marks),
    covered: () => Fraction,
    bound?: Bound,
  ) {
    this.#n = n;
    this.#d = d;
    this.unit = unit;
    this.#marksOrHow = marks;
    this.#covered = covered;
    this.#bound = bound;
  }

  /** Gathered when first asked for: most figures are read without a look at what is behind them. */
  get #marks(): Marks {
    if (typeof this.#marksOrHow === "function") this.#marksOrHow = this.#marksOrHow();
    return this.#marksOrHow;
  }

  /** The value as an exact fraction, in `unit`. */
  get exact(): Fraction {
    this.#exact ??= fraction(this.#n, this.#d);
    return this.#exact;
  }

  /** The value's decimal face, to 34 significant digits, in `unit`. */
  get value(): Decimal {
    this.#value ??= ratioToDecimal(this.#n, this.#d);
    return this.#value;
  }

  /** Share of the mass, 0 to 1, whose figures are known; read it together with `missing`. */
  get massCoverage(): Decimal {
    return toDecimal(this.coverage);
  }

  /** @internal */
  get coverage(): Fraction {
    return this.#covered();
  }

  /** Whether every line says something. */
  get complete(): boolean {
    return this.#marks.missing.length === 0;
  }

  get bound(): Bound {
    if (this.#bound !== undefined) return this.#bound;
    const { missing, trace, below } = this.#marks;
    if (missing.length > 0 && this.#covered().n === 0n) return "unknown";
    return missing.length + trace.length + below.length > 0 ? "at-least" : "exact";
  }

  get missing(): readonly string[] {
    return this.#marks.missing;
  }
  get trace(): readonly string[] {
    return this.#marks.trace;
  }
  get below(): readonly string[] {
    return this.#marks.below;
  }
  get borrowed(): readonly string[] {
    return this.#marks.borrowed;
  }
  get derived(): readonly string[] {
    return this.#marks.derived;
  }
  get presumed(): readonly string[] {
    return this.#marks.presumed;
  }

  /** @internal The same tally of a share of the whole: a portion, 100 g. */
  share(share: Fraction): Tally {
    const [n, d] = [this.#n * share.n, this.#d * share.d];
    return new Tally(n, d, this.unit, this.#marksOrHow, this.#covered, this.#bound);
  }

  /** @internal The same tally with its lines named from one floor up: `pot/oats`. */
  within(dish: string): Tally {
    const marks = makeMarks((kind) => this.#marks[kind].map((key) => `${dish}/${key}`));
    return new Tally(this.#n, this.#d, this.unit, marks, this.#covered, this.#bound);
  }

  /** This and another of the same unit. Throws `unit-kinds-differ`, and `number-…` codes. */
  plus(other: Tally | Value): Tally {
    const b = this.#operand(other, this.unit);
    sameUnit(this, b, "added to");
    return this.#with(b, plus(this.exact, b.exact), this.unit, boundOfSum(this.bound, b.bound));
  }

  /** This less another of the same unit: at least less at least may be anything. Throws as {@link plus}. */
  minus(other: Tally | Value): Tally {
    const b = this.#operand(other, this.unit);
    sameUnit(this, b, "taken from");
    return this.#with(b, minus(this.exact, b.exact), this.unit, boundOfSum(this.bound, opposite(b.bound)));
  }

  /** This times a number, or another tally; units multiply and cancel: g × kcal is `g·kcal`, g × GBP/g is `GBP`. */
  times(other: Tally | Value): Tally {
    const b = this.#operand(other, "");
    const unit = unitOfProduct(this.unit, b.unit);
    return this.#with(
      b,
      times(this.exact, b.exact),
      unit,
      boundOfProduct(this.bound, this.exact, b.bound, b.exact),
    );
  }

  /** This divided by a number or another tally; of like units the result is a plain number. Throws `number-zero-denominator`. */
  over(other: Tally | Value): Tally {
    const b = this.#operand(other, "");
    const unit = unitOfQuotient(this.unit, b.unit);
    return this.#with(
      b,
      over(this.exact, b.exact),
      unit,
      boundOfQuotient(this.bound, this.exact, b.bound, b.exact),
    );
  }

  #operand(other: Tally | Value, unit: string): Tally {
    return other instanceof Tally ? other : constantTally(exact(other), unit);
  }

  #with(other: Tally, value: Fraction, unit: string, bound: Bound): Tally {
    const marks = makeMarks((kind) => union(this.#marks[kind], other[kind]));
    const covered = (): Fraction => least(this.coverage, other.coverage);
    return new Tally(value.n, value.d, unit, marks, covered, bound);
  }

  /** @internal Whether another tally says the same: value, unit, bound, marks and coverage. */
  same(other: Tally): boolean {
    if (this === other) return true;
    return (
      this.unit === other.unit &&
      this.#n * other.#d === other.#n * this.#d &&
      this.bound === other.bound &&
      equals(this.coverage, other.coverage) &&
      MARK_KINDS.every((kind) => sameList(this.#marks[kind], other[kind]))
    );
  }

  /** Plain data, the value as exact text. */
  toJSON(): TallyData {
    const { missing, trace, below, borrowed, derived, presumed } = this.#marks;
    return {
      value: toText(this.exact),
      unit: this.unit,
      bound: this.bound,
      massCoverage: toText(this.#covered()),
      complete: this.complete,
      ...{ missing, trace, below, borrowed, derived, presumed },
    };
  }
}

/** A number that is known, as a tally. */
export function constantTally(value: Fraction, unit: string): Tally {
  return new Tally(
    value.n,
    value.d,
    unit,
    makeMarks(() => NONE),
    () => ONE,
  );
}

const NONE: readonly string[] = [];

const MARK_KINDS: readonly (keyof Marks)[] = ["missing", "trace", "below", "borrowed", "derived", "presumed"];

function sameList(a: readonly string[], b: readonly string[]): boolean {
  return a === b || (a.length === b.length && a.every((each, i) => each === b[i]));
}

function union(a: readonly string[], b: readonly string[]): readonly string[] {
  if (b.length === 0) return a;
  return a.length === 0 ? b : [...new Set([...a, ...b])];
}

function sameUnit(a: Tally, b: Tally, how: string): void {
  if (a.unit === b.unit) return;
  const hint = "bring them to one unit first, with times";
  throw fault("unit-kinds-differ", `"${b.unit}" cannot be ${how} "${a.unit}"`, hint);
}

/** A tally as plain data. */
export interface TallyData extends Marks {
  readonly value: string;
  readonly unit: string;
  readonly bound: Bound;
  readonly massCoverage: string;
  readonly complete: boolean;
}

/**
 * A weighted sum of tallies with weights of 0 or more: marks gather, and the sum is covered no
 * better than its least covered term, unless told by what mass.
 */
export function combine(
  unit: string,
  terms: readonly (readonly [Tally, Fraction])[],
  coverage?: () => Fraction,
): Tally {
  const counted = terms.filter(([, weight]) => !isZero(weight));
  const value = sum(counted.map(([tally, weight]) => times(tally.exact, weight)));
  const marks = makeMarks((kind) => [...new Set(counted.flatMap(([tally]) => tally[kind]))]);
  const covered =
    coverage ?? ((): Fraction => counted.reduce((all, [tally]) => least(all, tally.coverage), ONE));
  return new Tally(value.n, value.d, unit, marks, covered);
}
