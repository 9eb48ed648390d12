import type { Exact, Value } from "../../number/exact.ts";
import type { WrittenAmount } from "../../recipe/document.ts";
import type { Sheet } from "../../sheet/sheet.ts";

/** One place on an axis. */
export interface Setting {
  readonly name: string;
  /** As it was written. */
  readonly shown: string;
  /** As a number in the axis's unit; nothing where the axis has none. */
  readonly figure: Exact | undefined;
  readonly line: WrittenAmount | undefined;
  readonly target: Value | undefined;
  /** Makes another sheet of it, for what is no amount and no target. */
  readonly vary?: (s: Sheet) => Sheet;
}

/** An axis, read. */
export interface ReadAxis {
  readonly name: string;
  readonly unit: string | undefined;
  readonly settings: readonly Setting[];
}
