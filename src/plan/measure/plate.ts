import type { Kitchen } from "../../measure/kitchen.ts";
import type { Exact } from "../../number/exact.ts";
import type { ReadDemand, Subject } from "../../scale/engine/readDemand.ts";
import type { SubjectFigures } from "../../scale/round/heldBefore.ts";
import { heldBefore } from "../../scale/round/heldBefore.ts";
import type { Wish } from "../../scale/round/wish.ts";
import type { MeasuredPortion, ServedPortion } from "../portion.ts";
import type { KitchenNote } from "../share/groups.ts";
import type { LineAmounts, LineFactors } from "../share/lineFactors.ts";
import { type RoundedAdditions, roundAdditions } from "./additions.ts";
import type { DayTable } from "./dayTable.ts";
import { PortionDrift } from "./drift.ts";
import type { MealFigures } from "./figures.ts";
import { firmHold } from "./limits.ts";
import type { HeldTo } from "./potAsked.ts";
import type { Taster } from "./potTask.ts";
import { lineNotes, notProven, type SharedPot } from "./sharedPot.ts";

interface At {
  readonly served: ServedPortion;
  readonly figures: MealFigures;
  readonly demands: readonly ReadDemand[];
  readonly kitchen: Kitchen | undefined;
  readonly tolerance: Exact;
  readonly wishesFor: (dish: string) => ReadonlyMap<string, Wish>;
}

/** One person's portion on its way into measurable amounts. */
export class Plate {
  readonly served: ServedPortion;
  readonly heldTo: HeldTo;
  readonly #at: At;
  /** The pots that this person eats from, one a dish at most. */
  readonly pots: SharedPot[] = [];
  /** The day that it is a part of, where that was fitted as one. */
  day: DayTable | undefined;
  #additions: RoundedAdditions | undefined;

  constructor(at: At) {
    this.#at = at;
    this.served = at.served;
    const { served, demands, tolerance, figures } = at;
    const standing = demands.map((demand) =>
      heldBefore(demand, tolerance, figures.at(demand.subject, served.factors())),
    );
    this.heldTo = { person: served.person, demands, standing };
  }

  get person(): string {
    return this.served.person;
  }

  /** As who eats of a pot that is to be measured. */
  get taster(): Taster {
    return { ...this.heldTo, factors: this.withPots };
  }

  /** With the shares of the pots as they stand, additions as they were found. */
  get withPots(): LineFactors {
    return this.#shared(this.served.factors());
  }

  /** What the portion brings as it was found. */
  found(subject: Subject): SubjectFigures {
    return this.#at.figures.at(subject, this.served.factors());
  }

  /** Its figure as it stands. */
  stands(subject: Subject): SubjectFigures {
    return this.#at.figures.at(subject, this.#additions?.factors ?? this.withPots);
  }

  /**
   * Rounds what is added, as the pots stand. Whether the firm demands hold then, be it that additions
   * had to stay as they were found.
   */
  measure(): boolean {
    const { figures, kitchen, tolerance, wishesFor } = this.#at;
    const { withPots: factors, heldTo } = this;
    const { demands, standing } = heldTo;
    const inPot = new Map(this.pots.map(({ dish, group }) => [dish, new Set(group.pot)]));
    const ofDay = this.day?.heldFor(this) ?? [];
    const task = { figures, standing, ofDay, tolerance, inPot, wishesFor, factors };
    this.#additions = kitchen && roundAdditions({ ...task, kitchen });
    if (this.#additions) return true;
    return firmHold(figures, demands, factors) && (this.day?.firmHold ?? true);
  }

  /** How it was measured; nothing where nobody measures anything of it. */
  get measured(): MeasuredPortion | undefined {
    const { figures, demands, kitchen, tolerance } = this.#at;
    const potted = this.pots.some(({ isRounded }) => isRounded);
    if (!kitchen && !potted) return undefined;
    const exact = this.served.factors();
    const measured = this.#additions?.factors ?? this.withPots;
    const alone = this.#shared(this.#additions?.lineByLine ?? exact, "line-by-line");
    const exactAdditions = kitchen !== undefined && this.#additions === undefined;
    const unrounded = exactAdditions || this.pots.some(({ isLeft }) => isLeft);
    const of = { figures, demands, tolerance, exact, measured, lineByLine: alone, unrounded };
    return {
      kitchen,
      factors: measured,
      lineByLine: alone,
      tolerance,
      unrounded,
      amounts: this.#amounts(),
      drift: (sheets) => new PortionDrift(of, sheets),
      notes: this.#notes(exactAdditions),
    };
  }

  #shared(factors: LineFactors, how?: "line-by-line"): LineFactors {
    return new Map(
      [...factors].map(([dish, own]) => {
        const pot = this.pots.find((each) => each.dish === dish);
        return [dish, pot ? pot.portionOf(this.person, own, how) : own];
      }),
    );
  }

  #amounts(): ReadonlyMap<string, LineAmounts> {
    return new Map(
      [...this.served.factors()].map(([dish, factors]) => {
        const added = this.#additions?.amounts.get(dish);
        const shared = this.pots.find((pot) => pot.dish === dish)?.amountsOf(this.person);
        return [dish, factors.map((_, line) => added?.[line] ?? shared?.[line])];
      }),
    );
  }

  #notes(exactAdditions: boolean): readonly KitchenNote[] {
    const { figures } = this.#at;
    const linesOf = (lines: RoundedAdditions["undivided"] = [], dish = ""): readonly number[] =>
      lines.filter((each) => each.dish === dish).map(({ line }) => line);
    const lines = figures.dishes.flatMap(({ name, sheet }) =>
      lineNotes(sheet, {
        unmeasurable: linesOf(this.#additions?.unmeasurable, name),
        undivided: linesOf(this.#additions?.undivided, name),
      }),
    );
    return [
      ...(exactAdditions ? [EXACT_ADDITIONS] : []),
      ...this.pots.flatMap((pot) => pot.measured.notes.filter(({ code }) => code === "not-rounded")),
      ...lines,
      ...(this.#additions?.proven === false ? [notProven("additions")] : []),
    ];
  }
}

const EXACT_ADDITIONS: KitchenNote = {
  code: "not-rounded",
  line: undefined,
  text: "additions stay exact: no amounts that the kitchen can measure keep what must hold",
};
