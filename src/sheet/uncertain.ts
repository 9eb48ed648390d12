import { showFigure, showRange } from "../measure/showFigure.ts";
import type { Exact } from "../number/exact.ts";
import { Result } from "../number/result.ts";

/** What of a variance one line brings; below 0 where it takes off what others bring. */
export interface LineUncertainty {
  /** Its key, `pot/oats` within a nested recipe. */
  readonly line: string;
  readonly variance: Exact;
  /** Of the whole variance; the lines' shares add up to 1. */
  readonly share: Exact;
}

interface Told {
  readonly label: string;
  readonly unit: string;
  readonly value: Exact;
  readonly variance: Exact;
  readonly standard: Exact;
  readonly coverage: Exact;
  readonly low: Exact;
  readonly high: Exact;
  readonly worstLow: Exact;
  readonly worstHigh: Exact;
  readonly by: readonly LineUncertainty[];
  readonly unsaid: readonly string[];
}

/** How sure a figure is. Plain data. */
export class Uncertainty extends Result {
  readonly is = "steelyard/uncertainty@1";
  readonly label: string;
  readonly unit: string;
  readonly value: Exact;
  /** In the square of the unit, exact. */
  readonly variance: Exact;
  /** Standard uncertainty: the variance's root, rounded up to six digits. */
  readonly standard: Exact;
  /** How many standard uncertainties off `low` and `high` lie. */
  readonly coverage: Exact;
  readonly low: Exact;
  readonly high: Exact;
  /** The same where everything errs to the same side at once. */
  readonly worstLow: Exact;
  readonly worstHigh: Exact;
  /** What each line brings of the variance, the largest first. */
  readonly by: readonly LineUncertainty[];
  /** Lines that bring some, and of which nobody says how sure that is. */
  readonly unsaid: readonly string[];

  /** @internal */
  constructor(told: Told) {
    super();
    this.label = told.label;
    this.unit = told.unit;
    this.value = told.value;
    this.variance = told.variance;
    this.standard = told.standard;
    this.coverage = told.coverage;
    this.low = told.low;
    this.high = told.high;
    this.worstLow = told.worstLow;
    this.worstHigh = told.worstHigh;
    this.by = told.by;
    this.unsaid = told.unsaid;
  }

  override toString(): string {
    const unit = this.unit === "" ? {} : { unit: this.unit };
    const about = `about ${showFigure(this.value, unit)}, ${showRange(this.low, this.high, unit)}`;
    const unsaid = this.unsaid.length === 0 ? "" : `; nobody says how sure ${this.unsaid.join(", ")} is`;
    return `${this.label}: ${about}${unsaid}`;
  }
}
