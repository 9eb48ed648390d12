import { type Amount, amount, gramsOf } from "../../measure/amount.ts";
import { type Exact, exact, fraction, greatest, ONE, over, times, ZERO } from "../../number/exact.ts";
import { ceiling, nearest } from "../../number/ratio.ts";
import { onePiece } from "../../scale/round/division.ts";
import type { Sheet } from "../../sheet/sheet.ts";

/** A piece that a dish is served in. */
export interface ServedPiece {
  /** One of it. */
  readonly one: Amount;
  /** As its recipe says, as eaten. */
  readonly grams: Exact;
  /** The least part of one that is served. */
  readonly step: Exact;
}

/** Reads in what pieces a dish is served; undefined where its recipe tells of none. */
export function pieceOf({ origin: { piece } }: Sheet): ServedPiece | undefined {
  if (!piece) return undefined;
  const grams = gramsOf(amount(piece.mass)) ?? ZERO;
  return { one: onePiece(piece.name), grams, step: exact(piece.step ?? ONE) };
}

/** How many whole pieces come nearest to a mass: enough for everyone's least part of one, and at least one. */
export function wholeIn({ grams, step }: ServedPiece, mass: Exact, portions: Exact): Exact {
  const enough = fraction(ceiling(times(step, portions)));
  return [fraction(nearest(over(mass, grams))), enough].reduce(greatest, ONE);
}

/** What the least part of a piece weighs that is served of so much, made into whole pieces. */
export function stepIn(piece: ServedPiece, mass: Exact, portions: Exact): Exact {
  return times(over(mass, wholeIn(piece, mass, portions)), piece.step);
}
