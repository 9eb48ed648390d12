import { type Amount, amount, withExact } from "../../measure/amount.ts";
import { type Exact, exact, ONE, over } from "../../number/exact.ts";
import type { PlanLine } from "../../sheet/plan.ts";

/** How a line is divided where it is counted, by what its food or nested recipe says. */
export interface LineDivision {
  /** The least part of a piece. */
  readonly step: Exact;
  /** One of what is counted, where that is not what the line is written in. */
  readonly one: Amount | undefined;
}

/** Reads how a line that is written so is divided; undefined where nothing says so, or it is not counted. */
export function divisionOf({ source, nested, reader }: PlanLine, written: Amount): LineDivision | undefined {
  const piece = nested?.origin.piece;
  if (piece) return { step: exact(piece.step ?? ONE), one: onePiece(piece.name) };
  const divides = source.food?.input.divides;
  // A cup of the food, chopped, is no piece of it.
  if (!divides || written.kind !== "own" || reader.toGrams(written).by.kind !== "measure") return undefined;
  const { step, by } = divides;
  return { step: exact(step), one: by === undefined || by === written.unit ? undefined : onePiece(by) };
}

/** So much of a line in what is counted. */
export function counted({ reader }: PlanLine, { one }: LineDivision, written: Amount): Amount {
  if (!one || one.unit === written.unit) return written;
  return withExact(one, over(reader.toGrams(written).grams, reader.toGrams(one).grams));
}

/** One of a food's own measure, or of a recipe's pieces. */
export function onePiece(name: string): Amount {
  return amount({ value: 1, unit: name, kind: "own" });
}
