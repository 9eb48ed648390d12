import { type Amount, amount, gramsOf } from "../../measure/amount.ts";
import { type Exact, exact, fraction, ONE, over, times, ZERO } from "../../number/exact.ts";
import { nearest } from "../../number/ratio.ts";
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

/** How many whole pieces come nearest to a mass: at least one. */
export function wholeIn({ grams }: ServedPiece, mass: Exact): Exact {
  const count = nearest(over(mass, grams));
  return fraction(count > 0n ? count : 1n);
}

/** What the least part of a piece weighs that is served of so much, made into whole pieces. */
export function stepIn(piece: ServedPiece, mass: Exact): Exact {
  return times(over(mass, wholeIn(piece, mass)), piece.step);
}
