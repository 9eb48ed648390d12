import type { Sheet } from "../sheet/sheet.ts";
import type { Corner } from "./affine.ts";
import type { AffinePiece } from "./piece.ts";

/** How rows of targets become portions. */
export interface FactorWay {
  /** How many parameters a row has. */
  readonly count: number;
  /**
   * Sets the parameters of every row, row by row, with the status of those that need no portion to tell it:
   * a place in `statusCodes`.
   */
  place(at: Float64Array, status: Uint8Array): void;
  /** Whether a row is known to be out of reach from others that were solved. */
  isBeyond(at: Float64Array, i: number): boolean;
  /** Works a row out exactly; undefined where it is out of reach. */
  solve(i: number): Solved | undefined;
  /** Whether a row that lies in a piece is out of reach all the same. */
  isRefused(piece: AffinePiece): boolean;
}

/** One portion worked out exactly. */
export interface Solved {
  readonly sheet: Sheet;
  readonly factor: number;
  /** The piece that it lies in; undefined where it lies at a turn. */
  piece(): AffinePiece | undefined;
}

export type { Corner };
