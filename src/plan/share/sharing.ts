import { showPercent } from "../../measure/showFigure.ts";
import type { Exact } from "../../number/exact.ts";
import { ToldResult } from "../../number/told.ts";
import type { FitOutcome } from "../../scale/fit/answer.ts";

/** What sharing a pot costs a portion: it is served other ratios than it would have alone. */
export interface PortionSharing {
  /** By how much each figure that is asked, and not firm, may be missed: a share of it. */
  readonly tolerance: Exact;
  /** The worst miss, as a share of the figure asked. */
  readonly worst: Exact;
  /** What each demand asked, and what the portion brings; empty where a factor was asked. */
  readonly outcomes: readonly FitOutcome[];
  readonly text: string;
}

/** What it costs a portion; what it brings is worked out when first looked at. */
export class SharedCost extends ToldResult implements PortionSharing {
  readonly #bring: () => readonly FitOutcome[];
  #outcomes: readonly FitOutcome[] | undefined;

  constructor(tolerance: Exact, worst: Exact, bring: () => readonly FitOutcome[]) {
    super();
    this.tolerance = tolerance;
    this.worst = worst;
    this.#bring = bring;
  }

  readonly tolerance: Exact;

  readonly worst: Exact;

  get outcomes(): readonly FitOutcome[] {
    this.#outcomes ??= this.#bring();
    return this.#outcomes;
  }

  get text(): string {
    const cost =
      this.worst.n === 0n
        ? "and still gets all that was asked"
        : `and is ${percent(this.worst)} off at worst, of ${percent(this.tolerance)} allowed`;
    return `shares a pot in ratios that are not its own, ${cost}`;
  }
}

/** How far the pots of a dish could be brought together, where that was asked. */
export interface DishSharing {
  readonly tolerance: Exact;
  /** How many pots there would be if everyone kept the ratios that suit them best. */
  readonly apart: number;
  /** Whether fewer pots are proven impossible within the tolerance. */
  readonly proven: boolean;
  /** Sets of people that were looked at. */
  readonly tried: number;
  /** In a sentence or two: for whom each pot is, and how far off it leaves them. */
  readonly text: string;
}

/** A share as per cent: `3.1%`. */
export function percent(f: Exact): string {
  return showPercent(f, { significant: 2 });
}
