import type { Decimal } from "decimal.js";
import { type Fraction, toDecimal } from "../../number/fraction.ts";
import type { FitOutcome } from "../../scale/fit/answer.ts";
import { showPercent } from "../../table/figure.ts";

/** What sharing a pot costs a portion: it is served other ratios than it would have alone. */
export interface PortionSharing {
  /** By how much each figure that is asked, and not firm, may be missed: a share of it. */
  readonly tolerance: Decimal;
  readonly exactTolerance: Fraction;
  /** The worst miss, as a share of the figure asked. */
  readonly worst: Decimal;
  readonly exactWorst: Fraction;
  /** What each demand asked, and what the portion brings; empty where a factor was asked. */
  readonly outcomes: readonly FitOutcome[];
  readonly text: string;
}

/** What it costs a portion; what it brings is worked out when first looked at. */
export class SharedCost implements PortionSharing {
  readonly exactTolerance: Fraction;
  readonly exactWorst: Fraction;
  readonly #bring: () => readonly FitOutcome[];
  #outcomes: readonly FitOutcome[] | undefined;

  constructor(tolerance: Fraction, worst: Fraction, bring: () => readonly FitOutcome[]) {
    this.exactTolerance = tolerance;
    this.exactWorst = worst;
    this.#bring = bring;
  }

  get tolerance(): Decimal {
    return toDecimal(this.exactTolerance);
  }

  get worst(): Decimal {
    return toDecimal(this.exactWorst);
  }

  get outcomes(): readonly FitOutcome[] {
    this.#outcomes ??= this.#bring();
    return this.#outcomes;
  }

  get text(): string {
    const cost =
      this.exactWorst.n === 0n
        ? "and still gets all that was asked"
        : `and is ${percent(this.exactWorst)} off at worst, of ${percent(this.exactTolerance)} allowed`;
    return `shares a pot in ratios that are not its own, ${cost}`;
  }
}

/** How far the pots of a dish could be brought together, where that was asked. */
export interface DishSharing {
  readonly tolerance: Decimal;
  readonly exactTolerance: Fraction;
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
export function percent(f: Fraction): string {
  return showPercent(f, { significant: 2 });
}
