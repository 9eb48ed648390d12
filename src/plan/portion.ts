import type { Kitchen } from "../measure/kitchen.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, ONE, sum } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import { Lookup } from "../number/told.ts";
import type {
  FitMet,
  FitMetTogether,
  FitOutcome,
  FitOutOfReach,
  FitOutOfReachTogether,
} from "../scale/fit.ts";
import { moveLines, notesOn, type ScaleNote } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { DayFit } from "./find/dayFit.ts";
import type { PortionDrift } from "./measure/drift.ts";
import { type PortionSize, sizesOf } from "./normalPortion.ts";
import type { ReadMeal } from "./read/readMeal.ts";
import { ownFactors, pooledFactors, type Versions } from "./read/versions.ts";
import type { Eater, KitchenNote } from "./share/groups.ts";
import type { LineAmounts, LineFactors } from "./share/lineFactors.ts";
import { withLineAmounts } from "./share/lines.ts";
import type { PortionSharing } from "./share/sharing.ts";

/** The answer of a fit, where a person's demands were a list. */
export type PortionFit = FitMet | FitMetTogether | FitOutOfReach | FitOutOfReachTogether;

/**
 * How a portion stands to what was asked of it: `met`; `within-tolerance`, where it shares a pot that
 * leaves it off by no more than the plan was told; `out-of-reach`, where it comes as near as the dish
 * allows; `not-served`, where even the firm demands cannot hold, so that nothing is; or `away`, where the
 * person is not there for the meal.
 */
export type PortionStatus = "met" | "within-tolerance" | "out-of-reach" | "not-served" | "away";

/** One person's portion of one meal. */
export interface Portion {
  readonly person: string;
  readonly meal: string;
  readonly status: PortionStatus;
  /**
   * What the held lines were multiplied by: of a fit, the common factor (of several dishes that of the first by name with held lines); 0 where nothing is served.
   * Measured amounts drift from it.
   */
  readonly factor: Exact;
  /** What the person is served, by dish: a sheet for one portion. Empty where nothing is served. */
  readonly dishes: ReadonlyMap<string, Sheet>;
  /** Demands that the portion misses, and by how much. */
  readonly misses: readonly FitOutcome[];
  /** Why demands are not all met; empty where they are. */
  readonly why: string;
  /** How the dishes were fitted to this person alone, where demands were a list. */
  readonly fit: PortionFit | undefined;
  /** What sharing a pot costs; nothing where the portion keeps the ratios that suit it best. */
  readonly shared: PortionSharing | undefined;
  /** What measurable amounts cost in accuracy; nothing where no kitchen was given. */
  readonly drift: PortionDrift | undefined;
  /** Its size beside a normal portion, of each dish whose recipe tells one. */
  readonly sizes: readonly PortionSize[];
  /** What a cook should know of its size. */
  readonly notes: readonly ScaleNote[];
  /** What a cook should know of its measured amounts; empty where no kitchen was given. */
  readonly kitchenNotes: readonly KitchenNote[];
}

/** A portion as kitchens measure it. */
export interface MeasuredPortion {
  /** What this person measures with. */
  readonly kitchen: Kitchen | undefined;
  readonly factors: LineFactors;
  /** With every line of pots and additions rounded for itself. */
  readonly lineByLine: LineFactors;
  readonly tolerance: Exact;
  /** Whether some of it stays as it was found. */
  readonly unrounded: boolean;
  readonly amounts: ReadonlyMap<string, LineAmounts>;
  readonly drift: (sheets: () => readonly Sheet[]) => PortionDrift;
  readonly notes: readonly KitchenNote[];
}

/** A portion whose sheets are made when first looked at: a plan of thousands is cheap to make. */
export class ServedPortion extends Result implements Portion {
  readonly is = "steelyard/portion@1";
  readonly person: string;
  readonly meal: string;
  readonly status: PortionStatus;
  readonly fit: PortionFit | undefined;
  readonly drift: PortionDrift | undefined;
  readonly shared: PortionSharing | undefined;
  readonly #made: { readonly meal: ReadMeal; readonly answer: Answered };
  readonly #versions: Versions | undefined;
  readonly #measured: MeasuredPortion | undefined;
  #dishes: ReadonlyMap<string, Sheet> | undefined;

  /** @internal Made by a plan. */
  constructor(
    person: string,
    meal: ReadMeal,
    answer: Answered,
    measured?: MeasuredPortion,
    versions?: Versions,
  ) {
    super();
    this.person = person;
    this.meal = meal.id;
    this.status = answer.status;
    this.factor = answer.factor;
    this.fit = answer.fit;
    this.shared = answer.shared;
    this.drift = measured?.drift(() => [...this.dishes.values()]);
    this.#made = { meal, answer };
    this.#measured = measured;
    this.#versions = versions;
  }

  /** @internal The same among the versions of everyone: `meal` has the lines of all of them. */
  among(meal: ReadMeal, versions: Versions | undefined): ServedPortion {
    const { answer } = this.#made;
    const factors = versions ? pooledFactors(answer.factors, versions) : answer.factors;
    return new ServedPortion(this.person, meal, { ...answer, factors }, undefined, versions);
  }

  override toString(): string {
    const grams = sum([...this.dishes.values()].map(({ portionMass }) => portionMass));
    const served = grams.n === 0n ? "" : `${showFigure(grams, { unit: "g" })}, `;
    return `${this.person}, ${this.meal}: ${served}${this.status.replaceAll("-", " ")}`;
  }

  /** How its day was fitted as one; nothing where meals were planned one by one. */
  dayFit(): DayFit | undefined {
    return this.#made.answer.day;
  }

  /** @internal What was found before a kitchen measured, and what that made of it. */
  found(): { readonly exact: LineFactors; readonly measured: MeasuredPortion | undefined } {
    const own = (of: LineFactors): LineFactors => ownFactors(of, this.#versions);
    const measured = this.#measured && {
      ...this.#measured,
      factors: own(this.#measured.factors),
      lineByLine: own(this.#measured.lineByLine),
    };
    return { exact: own(this.#made.answer.factors), measured };
  }

  /** @internal Of one portion as written, by dish; nothing where nothing is served. */
  factors(): LineFactors {
    return this.#measured?.factors ?? this.#made.answer.factors;
  }

  /** @internal The same portion in amounts that kitchens can measure. */
  measuredAs(measured: MeasuredPortion | undefined): ServedPortion {
    const { meal, answer } = this.#made;
    return measured ? new ServedPortion(this.person, meal, answer, measured, this.#versions) : this;
  }

  /** @internal The same person's portion from a pot that others share. */
  sharing(answer: Answered): ServedPortion {
    return new ServedPortion(this.person, this.#made.meal, answer, undefined, this.#versions);
  }

  /** @internal What this person eats of a dish; nothing where that is nothing. */
  eating(dish: string): Eater | undefined {
    const factors = this.factors().get(dish);
    const amounts = this.#measured?.amounts.get(dish);
    const kitchen = this.#measured?.kitchen;
    const lacks = this.#versions?.get(dish)?.lacks;
    return (
      factors && {
        person: this.person,
        factors,
        kitchen,
        ...(amounts && { amounts }),
        ...(lacks && { lacks }),
      }
    );
  }

  readonly factor: Exact;

  get dishes(): ReadonlyMap<string, Sheet> {
    this.#dishes ??= new Lookup(
      [...this.factors()].flatMap(([name, factors]): [string, Sheet][] => {
        const version = this.#versions?.get(name);
        const base = version?.sheet ?? this.#made.meal.dishes.get(name);
        if (!base) return [];
        const amounts = this.#measured?.amounts.get(name);
        const own = version ? version.own(factors) : factors;
        return [
          [name, withLineAmounts(moveLines(base, own, ONE), version ? version.ownAmounts(amounts) : amounts)],
        ];
      }),
    );
    return this.#dishes;
  }

  get misses(): readonly FitOutcome[] {
    if (this.shared) return this.shared.outcomes.filter(({ met }) => !met);
    const day = this.#made.answer.day;
    if (day) return day.limits(this.meal).filter(({ met }) => !met);
    return this.fit?.status === "out-of-reach" ? this.fit.misses : [];
  }

  get why(): string {
    if (this.shared) return this.status === "met" ? "" : this.shared.text;
    const day = this.#made.answer.day;
    if (day) return day.text;
    return this.fit?.status === "out-of-reach" ? this.fit.text : "";
  }

  get sizes(): readonly PortionSize[] {
    return sizesOf(this.dishes);
  }

  get notes(): readonly ScaleNote[] {
    const { dishes } = this.#made.meal;
    return [...this.dishes].flatMap(([name, s]) =>
      notesOn(this.#versions?.get(name)?.sheet ?? dishes.get(name) ?? s, s),
    );
  }

  get kitchenNotes(): readonly KitchenNote[] {
    return [...(this.#measured?.notes ?? []), ...offTarget(this.drift)];
  }
}

const OFF = "measurable amounts are off by more than the tolerance";
const STILL_OFF = "off by more than the tolerance, as exact amounts miss it too";

function offTarget(drift: PortionDrift | undefined): KitchenNote[] {
  if (drift?.status !== "off-target") return [];
  return drift.demands
    .filter(({ holds }) => !holds)
    .map(({ of, asked, heldBefore }) => ({
      code: "off-target",
      line: undefined,
      text: `${of} ${asked}: ${heldBefore ? OFF : STILL_OFF}`,
    }));
}

/** What was found for someone. */
export interface Answered {
  readonly status: PortionStatus;
  readonly factor: Exact;
  readonly factors: LineFactors;
  readonly fit: PortionFit | undefined;
  readonly shared?: PortionSharing;
  /** How the day was fitted that it is a part of, where days are fitted as one. */
  readonly day?: DayFit;
}
