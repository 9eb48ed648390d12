import { markKinds } from "../food/figure.ts";
import { type Exact, equals, fraction, minus, plus, times, ZERO } from "../number/exact.ts";
import { toFloat } from "../number/ratio.ts";
import type { Quantity } from "../scale/demand.ts";
import { endsOf } from "../sheet/bySource.ts";
import { sumOf } from "../sheet/ends.ts";
import { componentIndex } from "../sheet/plan.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type Bound, constantTally, type Marks, type Tally } from "../sheet/tally.ts";
import { type Affine, type Corner, signAt, through } from "./affine.ts";

/** A stretch of parameters over which every figure of a portion is affine in them. */
export interface AffinePiece {
  /** Above 0 within the stretch, each of them. */
  readonly margins: readonly Affine[];
  /** What held lines are multiplied by. */
  readonly factor: Affine;
  /** By the quantities asked for, in their order. */
  readonly forms: readonly Form[];
  /** Whether cooking takes off more than the water that the pot is known to hold. */
  readonly isDried: boolean;
}

/** A quantity of a portion within a piece; no form where nothing is known, or told of that end. */
export interface Form {
  readonly value: Affine | undefined;
  readonly least: Affine | undefined;
  readonly most: Affine | undefined;
  /** `narrow`: exact or between, as far as its ends lie from it. */
  readonly bound: Bound | "narrow";
  readonly marks: Marks;
}

/** The figures of one row as they stand in columns. */
export interface AffineCell {
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly bound: Bound;
  readonly marks: Marks;
}

/** The piece around a corner, from the sheets at its points; undefined where they are not all of one piece. */
export function pieceThrough(
  corner: Corner,
  sheets: readonly Sheet[],
  asked: readonly Quantity[],
  factors: readonly Exact[],
  margins: readonly Affine[] = [],
): AffinePiece | undefined {
  const turns = asked.includes("water") ? sheets.map(waterTurns) : sheets.map(() => NO_TURNS);
  const [first = NO_TURNS] = turns;
  if (turns.some((each) => each.length !== first.length)) return undefined;
  const own: Affine[] = [];
  for (const [k, here] of first.entries()) {
    const values = turns.map((each) => each[k] as Exact);
    if (values.every((each) => each.n === 0n)) continue;
    const isBelow = here.n < 0n;
    if (values.some((each) => each.n === 0n || each.n < 0n !== isBelow)) return undefined;
    own.push(
      through(
        corner,
        values.map((each) => (isBelow ? minus(ZERO, each) : each)),
      ),
    );
  }
  return {
    margins: [...margins, ...own],
    factor: through(corner, factors),
    forms: asked.map((of) =>
      formThrough(
        corner,
        sheets.map((s) => tallyOf(s, of)),
      ),
    ),
    isDried: (first[0]?.n ?? 0n) < 0n,
  };
}

const NO_TURNS: readonly Exact[] = [];

/**
 * Where the water of a pot that loses some takes another form, each where its figure passes 0: where no more
 * water is known to be left, and where its least and its most come to nothing.
 */
export function waterTurns(s: Sheet): readonly Exact[] {
  const { change } = s.masses;
  if (change.n >= 0n) return NO_TURNS;
  const water = componentIndex("water");
  const { low, high } = sumOf(
    s.plan.lines.flatMap(({ line, source }, i) =>
      line.added === "cooking" ? [endsOf(source, water, s.values.grams[i] ?? ZERO)] : [],
    ),
  );
  const ends = [low, high].flatMap((end) => (end ? [plus(end, change)] : []));
  return [plus(s.water.held, change), ...ends];
}

/** A component of one portion as eaten, or its mass. */
export function tallyOf(s: Sheet, of: Quantity): Tally {
  return of === "mass" ? constantTally(s.portionMass, "g") : s.portion(of);
}

function formThrough(corner: Corner, tallies: readonly Tally[]): Form {
  const first = tallies[0] as Tally;
  const { bound } = first;
  const values = tallies.map(({ value }) => value);
  const value = bound === "unknown" ? undefined : through(corner, values);
  const end = (which: "low" | "high"): Affine | undefined => {
    const ends = tallies.map((tally) => tally.ends[which]);
    if (!ends.every((each) => each !== undefined)) return undefined;
    return value && ends.every((each, k) => equals(each, values[k] as Exact)) ? value : through(corner, ends);
  };
  const [least, most] = [end("low"), end("high")];
  const isWide = least && most && (least !== value || most !== value);
  const isNarrow = first.ranged.length > 0 && first.below.length === 0 && isWide && bound !== "unknown";
  return { value, least, most, bound: isNarrow ? "narrow" : bound, marks: marksIn(first) };
}

/** What a tally's figures say of themselves, as plain data. */
export function marksIn(tally: Tally): Marks {
  return Object.fromEntries(markKinds.map((kind) => [kind, tally[kind]])) as unknown as Marks;
}

/** The figures of a portion that was worked out exactly. */
export function cellsOf(s: Sheet, asked: readonly Quantity[]): readonly AffineCell[] {
  return asked.map((of) => {
    const tally = tallyOf(s, of);
    const { bound } = tally;
    const { low, high } = tally.ends;
    const float = (end: Exact | undefined): number => (end ? toFloat(end) : Number.NaN);
    const value = bound === "unknown" ? Number.NaN : toFloat(tally.ratio);
    return { value, least: float(low), most: float(high), bound, marks: marksIn(tally) };
  });
}

/** Whether a row of parameters lies within a piece: above 0 if so, 0 where doubles cannot tell. */
export function standsIn({ margins }: AffinePiece, at: Float64Array, i: number): -1 | 0 | 1 {
  let stands: 0 | 1 = 1;
  for (const margin of margins) {
    const sign = signAt(margin, at, i);
    if (sign < 0) return -1;
    if (sign === 0) stands = 0;
  }
  return stands;
}

/** A step that is short beside a figure: a thousandth of it. */
export function shortStep(at: Exact): Exact {
  return times(at, fraction(1n, 1000n));
}
