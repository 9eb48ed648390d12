import type { ComponentId } from "./components.ts";
import type { RoundingRule } from "./labelRule.ts";

/** What one line of a label stands for, and how it is rounded. */
export interface LabelRow {
  readonly component: ComponentId;
  /** `micro` for vitamins and minerals of US labels, which go by the size of their Daily Value. */
  readonly rule: RoundingRule | "micro";
  readonly note?: string;
}
