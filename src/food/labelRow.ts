import type { ComponentId } from "./components.ts";
import type { RoundingRule } from "./labelRule.ts";

/** What one line of a label stands for, and how it is rounded. */
export interface LabelRow {
  readonly component: ComponentId;
  readonly rule: RoundingRule;
  /** Set for vitamins and minerals, whose per cents are rounded by steps of their own. */
  readonly micro?: true;
  readonly note?: string;
}
