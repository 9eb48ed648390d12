import { type MarkKind, markKinds } from "../food/figure.ts";
import { exactText } from "../number/digits.ts";
import { fault } from "../number/error.ts";
import {
  type Exact,
  equals,
  exact,
  fraction,
  isZero,
  least,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  type Value,
} from "../number/exact.ts";
import type { Ratio } from "../number/ratio.ts";
import { uncloned } from "../number/uncloned.ts";
import { type Bound, boundOfProduct, boundOfQuotient, boundOfSum, opposite } from "./bound.ts";
import { tallyText } from "./formatTally.ts";

export type { Bound } from "./bound.ts";

import {
  boundOfEnds,
  type Ends,
  endsOfBound,
  lessOf,
  productOf,
  quotientOf,
  sameEnds,
  scaledBy,
  sumOf,
} from "./ends.ts";
import { unitOfProduct, unitOfQuotient } from "./unit.ts";

/**
 * What the figures behind a tally say of themselves: line keys by kind, silent per-portion lines first.
 * `ranged` are the lines whose figure is a middle one, printed with the ends that the truth may lie at.
 */
export type Marks = { readonly [K in MarkKind]: readonly string[] };

/** Marks as a tally keeps them: with the marked lines that bring nothing, as far as their figures go. */
export type KeptMarks = Marks & { readonly nil: readonly string[] };

export type KeptKind = MarkKind | "nil";

const KEPT: readonly KeptKind[] = [...markKinds, "nil"];

const NONE: readonly string[] = [];

/** Makes marks, one list for each kind. */
export function makeMarks(of: (kind: KeptKind) => readonly string[]): KeptMarks {
  const marks: { -readonly [K in KeptKind]?: readonly string[] } = {};
  for (const kind of KEPT) marks[kind] = of(kind);
  return marks as KeptMarks;
}

/**
 * A value and how far to trust it. Unknown is not zero: lines that say nothing are named in
 * `missing`, and the value is then what is known, a lower bound. Lines whose figures are published as a
 * range are named in `ranged`: the value counts their middle figures and bounds nothing, while the truth
 * lies from `least` to `most`.
 */
export class Tally implements Marks {
  /** @internal Refuses a structured clone, which would keep the unit alone. */
  readonly cloned: symbol = uncloned;
  readonly unit: string;
  readonly #n: bigint;
  readonly #d: bigint;
  #marksOrHow: KeptMarks | (() => KeptMarks);
  readonly #covered: () => Exact;
  readonly #bound: Bound | undefined;
  #endsOrHow: Ends | (() => Ends) | undefined;
  /** What a formula that failed says instead; a tally never does. */
  declare readonly failed?: never;
  #value: Exact | undefined;

  /** @internal */
  constructor(
    n: bigint,
    d: bigint,
    unit: string,
    marks: KeptMarks | (() => KeptMarks),
    covered: () => Exact,
    bound?: Bound,
    ends?: () => Ends,
  ) {
    this.#n = n;
    this.#d = d;
    this.unit = unit;
    this.#marksOrHow = marks;
    this.#covered = covered;
    this.#bound = bound;
    this.#endsOrHow = ends;
    if (!isTaught) teach();
  }

  /** Gathered when first asked for: most figures are read without a look at what is behind them. */
  get #marks(): KeptMarks {
    if (typeof this.#marksOrHow === "function") this.#marksOrHow = this.#marksOrHow();
    return this.#marksOrHow;
  }

  /** In a line, in British English: `at least 4.1 mg`. {@link formatTally} takes a language, digits and marks. */
  toString(): string {
    return tallyText(this, { marks: false });
  }

  /** @internal The value as it was summed, not in lowest terms: all that a double is made of. */
  get ratio(): Ratio {
    return { n: this.#n, d: this.#d };
  }

  /** @internal Whether nothing at all must be said of what it is made of. */
  get isPlain(): boolean {
    return this.#marks === NO_MARKS;
  }

  /** @internal Whether the value is its own ends: nothing that it is made of widens it. */
  get isPoint(): boolean {
    return this.#bound === undefined && WIDENS.every((kind) => this.#marks[kind].length === 0);
  }

  /** The value, in `unit`. */
  get value(): Exact {
    this.#value ??= fraction(this.#n, this.#d);
    return this.#value;
  }

  /** Share of the mass, 0 to 1, whose figures are known; read it together with `missing`. */
  get coverage(): Exact {
    return this.#covered();
  }

  /** Whether every line says something. */
  get complete(): boolean {
    return this.#marks.missing.length === 0;
  }

  /** The least that it can be by what is known; nothing where nothing says. */
  get least(): Exact | undefined {
    return this.ends.low;
  }

  /** The most that it can be; nothing where a line is silent, or a trace. */
  get most(): Exact | undefined {
    return this.ends.high;
  }

  /** @internal Asked for only where something widens the value: a total of plain figures is its own ends. */
  get ends(): Ends {
    if (typeof this.#endsOrHow === "function") {
      this.#endsOrHow = this.isPoint ? endsOfBound(this.value, "point") : this.#endsOrHow();
    }
    return this.#endsOrHow ?? endsOfBound(this.value, this.bound);
  }

  get bound(): Bound {
    if (this.#bound !== undefined) return this.#bound;
    const { missing, trace, below, ranged } = this.#marks;
    if (missing.length > 0 && this.#covered().n === 0n) return "unknown";
    if (ranged.length > 0) return boundOfEnds(this.value, this.ends, below.length > 0);
    return missing.length + trace.length + below.length > 0 ? "at-least" : "point";
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
  get calculated(): readonly string[] {
    return this.#marks.calculated;
  }
  get derived(): readonly string[] {
    return this.#marks.derived;
  }
  get presumed(): readonly string[] {
    return this.#marks.presumed;
  }
  get ranged(): readonly string[] {
    return this.#marks.ranged;
  }
  /** @internal */
  get nil(): readonly string[] {
    return this.#marks.nil;
  }

  /** @internal The same tally of a share of the whole: a portion, 100 g. */
  share(share: Exact): Tally {
    const [n, d] = [this.#n * share.n, this.#d * share.d];
    const ends = this.#endsOrHow && ((): Ends => scaledBy(this.ends, share));
    return new Tally(n, d, this.unit, this.#marksOrHow, this.#covered, this.#bound, ends);
  }

  /** @internal The same tally, reckoned from what nobody measured of some lines. */
  derivedFrom(lines: readonly string[]): Tally {
    const marks = (): KeptMarks => ({
      ...this.#marks,
      derived: [...new Set([...this.#marks.derived, ...lines])],
    });
    return new Tally(
      this.#n,
      this.#d,
      this.unit,
      marks,
      this.#covered,
      this.#bound,
      this.#endsOrHow && ((): Ends => this.ends),
    );
  }

  /** @internal The same tally with its lines named from one floor up: `pot/oats`. */
  within(dish: string): Tally {
    const marks = makeMarks((kind) => this.#marks[kind].map((key) => `${dish}/${key}`));
    const ends = this.#endsOrHow && ((): Ends => this.ends);
    return new Tally(this.#n, this.#d, this.unit, marks, this.#covered, this.#bound, ends);
  }

  /** This and another of the same unit. Throws `unit-kinds-differ`, and `number-…` codes. */
  plus(other: Tally | Value): Tally {
    const b = this.#operand(other, this.unit);
    sameUnit(this, b, "added to");
    const bound = (): Bound => boundOfSum(this.bound, b.bound);
    return this.#with(b, plus(this.value, b.value), this.unit, bound, () => sumOf([this.ends, b.ends]));
  }

  /** This less another of the same unit: at least less at least may be anything. Throws as {@link plus}. */
  minus(other: Tally | Value): Tally {
    const b = this.#operand(other, this.unit);
    sameUnit(this, b, "taken from");
    const bound = (): Bound => boundOfSum(this.bound, opposite(b.bound));
    return this.#with(b, minus(this.value, b.value), this.unit, bound, () => lessOf(this.ends, b.ends));
  }

  /** This times a number, or another tally; units multiply and cancel: g × kcal is `g·kcal`, g × GBP/g is `GBP`. */
  times(other: Tally | Value): Tally {
    const b = this.#operand(other, "");
    const unit = unitOfProduct(this.unit, b.unit);
    const bound = (): Bound => boundOfProduct(this.bound, this.value, b.bound, b.value);
    return this.#with(b, times(this.value, b.value), unit, bound, () => productOf(this.ends, b.ends));
  }

  /** This divided by a number or another tally; of like units the result is a plain number. Throws `number-zero-denominator`. */
  over(other: Tally | Value): Tally {
    const b = this.#operand(other, "");
    const unit = unitOfQuotient(this.unit, b.unit);
    const bound = (): Bound => boundOfQuotient(this.bound, this.value, b.bound, b.value);
    return this.#with(b, over(this.value, b.value), unit, bound, () => quotientOf(this.ends, b.ends));
  }

  #operand(other: Tally | Value, unit: string): Tally {
    return other instanceof Tally ? other : constantTally(exact(other), unit);
  }

  #with(other: Tally, value: Exact, unit: string, bound: () => Bound, ends: () => Ends): Tally {
    const marks = makeMarks((kind) => union(this.#marks[kind], other[kind]));
    const covered = (): Exact => least(this.coverage, other.coverage);
    // Of middle figures the ends alone tell what is bounded.
    const isRanged = this.bound !== "unknown" && other.bound !== "unknown" && marks.ranged.length > 0;
    const own = isRanged ? boundOfEnds(value, ends(), marks.below.length > 0) : bound();
    return new Tally(value.n, value.d, unit, marks, covered, own, ends);
  }

  /** @internal Whether another tally says the same: value, unit, bound, marks and coverage. */
  same(other: Tally): boolean {
    if (this === other) return true;
    return (
      this.unit === other.unit &&
      this.#n * other.#d === other.#n * this.#d &&
      this.bound === other.bound &&
      equals(this.coverage, other.coverage) &&
      markKinds.every((kind) => sameList(this.#marks[kind], other[kind])) &&
      (WIDENS.every((kind) => this.#marks[kind].length === 0) || sameEnds(this.ends, other.ends))
    );
  }

  get is(): "steelyard/tally@1" {
    return "steelyard/tally@1";
  }

  /** Plain data, the value as exact text. */
  toJSON(): TallyData {
    const { low, high } = this.ends;
    const { nil: _, ...marks } = makeMarks((kind) => this.#marks[kind]);
    return {
      value: exactText(this.value),
      unit: this.unit,
      bound: this.bound,
      least: low === undefined ? null : exactText(low),
      most: high === undefined ? null : exactText(high),
      coverage: exactText(this.#covered()),
      complete: this.complete,
      ...marks,
    };
  }
}

let isTaught = false;

/** Gives the prototype, when the first tally is made, what Node's console asks for by symbol. */
function teach(): void {
  isTaught = true;
  Object.defineProperty(Tally.prototype, Symbol.for("nodejs.util.inspect.custom"), {
    value(this: Tally) {
      return this.toString();
    },
    configurable: true,
    writable: true,
  });
}

/** A number that is known, as a tally. */
export function constantTally(value: Exact, unit: string): Tally {
  return new Tally(value.n, value.d, unit, NO_MARKS, () => ONE);
}

/** What keeps a value from being its own ends. */
const WIDENS = ["missing", "trace", "below", "ranged"] as const;

/** The marks of what is plainly known. */
export const NO_MARKS: KeptMarks = /* @__PURE__ */ makeMarks(() => NONE);

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
  readonly least: string | null;
  readonly most: string | null;
  readonly coverage: string;
  readonly complete: boolean;
}

/**
 * A weighted sum of tallies with weights of 0 or more: marks gather, and the sum is covered no
 * better than its least covered term, unless told by what mass.
 */
export function combine(
  unit: string,
  terms: readonly (readonly [Tally, Exact])[],
  coverage?: () => Exact,
): Tally {
  const counted = terms.filter(([, weight]) => !isZero(weight));
  const value = sum(counted.map(([tally, weight]) => times(tally.value, weight)));
  const marks = makeMarks((kind) => [...new Set(counted.flatMap(([tally]) => tally[kind]))]);
  const covered =
    coverage ?? ((): Exact => counted.reduce((all, [tally]) => least(all, tally.coverage), ONE));
  const ends = (): Ends => sumOf(counted.map(([tally, weight]) => scaledBy(tally.ends, weight)));
  return new Tally(value.n, value.d, unit, marks, covered, undefined, ends);
}
