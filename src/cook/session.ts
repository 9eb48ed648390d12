import { britishEnglish, type Language } from "../document/language.ts";
import { readLanguage } from "../document/readLanguage.ts";
import { type Exact, fraction, isZero, over, times, ZERO } from "../number/exact.ts";
import { ToldResult } from "../number/told.ts";
import type { PlannedDish } from "../plan/dish.ts";
import type { RatioDrift } from "../plan/measure/drift.ts";
import type { KitchenNote } from "../plan/share/groups.ts";
import { onlyLines } from "../plan/share/lines.ts";
import type { Pot } from "../plan/share/parts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Days } from "./days.ts";
import type { Eating, EatingSpan } from "./eating.ts";
import type { Lot } from "./lot.ts";
import type { Lots } from "./lots.ts";
import type { PersonDrift } from "./measuring.ts";
import { type CookingNote, sessionNotes } from "./notes.ts";
import { type CookingSteps, stepsOf } from "./steps.ts";
import { type CookingRun, partOf, type VesselUse } from "./vessel.ts";

/** What one person eats of what is cooked on a day. */
export interface PersonPortions {
  readonly person: string;
  /** Whole portions, above 0. */
  readonly count: Exact;
}

/** A pot of a dish as it is cooked on one day. */
export interface CookedPot {
  /** Which of the dish's pots, from 1. */
  readonly number: number;
  readonly people: readonly PersonPortions[];
  /** All that is cooked of it; its portions are those that are eaten of it. */
  readonly sheet: Sheet;
  /** The portions as they were planned, added up: what is cooked is this, in amounts that can be measured. */
  readonly exact: Sheet;
  /** The line that measuring moves most against the rest; nothing where it moves none. */
  readonly drift: RatioDrift | undefined;
  /** Keys of lines in amounts that the plan's kitchen can measure, run by run; empty where it has none. */
  readonly measured: readonly string[];
  /** What a cook should know of its measured amounts. */
  readonly kitchenNotes: readonly KitchenNote[];
  /** Nothing where no vessel is given. */
  readonly vessel: VesselUse | undefined;
  /** Runs times what goes into each are the pot, literally. */
  readonly runs: readonly CookingRun[];
  /** Grams as cooked that nobody takes, since their limits leave no room for it; mostly 0. */
  readonly left: Exact;
  /** How to make one run, the first where they differ; in British English unless told. */
  steps(language?: Language): CookingSteps;
}

/** What is cooked for one person alone, in their share of the pot or apart from it. */
export interface CookedApart {
  readonly person: string;
  readonly meal: string;
  readonly sheet: Sheet;
}

/** A dish, cooked on one day for all that is eaten of it until it is cooked again. */
export interface CookingSession {
  /** Nothing where the schedule names no days. */
  readonly day: string | undefined;
  readonly meal: string;
  /** All meals that it is cooked for, in the plan's order: of a menu of days it may be several. */
  readonly meals: readonly string[];
  readonly dish: string;
  /** The days on which it is eaten, in order; empty where the schedule names none. */
  readonly eaten: readonly string[];
  readonly pots: readonly CookedPot[];
  readonly apart: readonly CookedApart[];
  /**
   * What measuring does to each person's portions of the whole meal, all that is cooked of it on this day
   * together; empty where the plan has no kitchen.
   */
  readonly drifts: readonly PersonDrift[];
  /** What the cook should know: room, large batches, keeping. In British English. */
  readonly notes: readonly CookingNote[];
}

interface Made {
  readonly days: Days;
  readonly dish: PlannedDish;
  readonly eating: Eating;
  readonly span: EatingSpan;
  readonly lots: Lots;
  readonly who: (eater: string) => { readonly person: string; readonly meal: string };
  readonly nameOf: (person: string) => string;
}

/** A session whose pots are made when first looked at. */
export class DishSession extends ToldResult implements CookingSession {
  readonly day: string | undefined;
  readonly meal: string;
  readonly meals: readonly string[];
  readonly dish: string;
  readonly eaten: readonly string[];
  readonly #made: Made;
  readonly #eatenAt: readonly number[];
  readonly #people: ReadonlyMap<string, bigint>;
  #pots: readonly DishPot[] | undefined;
  #apart: readonly CookedApart[] | undefined;

  constructor(made: Made) {
    super();
    const { days, dish, eating, span } = made;
    this.day = days.names[span.cooked];
    this.dish = dish.name;
    this.#made = made;
    const people = new Map<string, bigint>();
    const eaten = new Set<number>();
    for (const { person } of dish.servings) {
      const own = eating.daysOf(person, span.eaten);
      for (const day of own) eaten.add(day);
      if (own.length > 0) people.set(person, eating.servings(person) * BigInt(own.length));
    }
    this.#eatenAt = span.eaten.filter((day) => eaten.has(day));
    this.eaten = this.#eatenAt.flatMap((day) => days.names[day] ?? []);
    this.#people = people;
    this.meals = [...new Set([...people.keys()].map((eater) => made.who(eater).meal))];
    this.meal = this.meals[0] ?? dish.meal;
  }

  /** @internal */
  made(): Made {
    return this.#made;
  }

  /** @internal Places of the days on which it is eaten. */
  eatenAt(): readonly number[] {
    return this.#eatenAt;
  }

  /** @internal Whether anything is cooked for anyone. */
  isEmpty(): boolean {
    return this.pots.length === 0 && this.apart.length === 0;
  }

  get pots(): readonly DishPot[] {
    const { dish, lots, who } = this.#made;
    this.#pots ??= dish.pots.flatMap((pot, i) => {
      const counts = new Map<string, bigint>();
      for (const [eater, count] of lots.counts(pot)) {
        const { person } = who(eater);
        counts.set(person, (counts.get(person) ?? 0n) + count);
      }
      const people = [...counts].map(([person, count]): PersonPortions => {
        return { person, count: fraction(count) };
      });
      return people.length === 0 ? [] : [new DishPot(this.#made, pot, i + 1, people)];
    });
    return this.#pots;
  }

  get apart(): readonly CookedApart[] {
    const { who } = this.#made;
    this.#apart ??= this.#made.dish.servings.flatMap(({ person, added }) => {
      const count = this.#people.get(person);
      const cooked = added && count !== undefined ? linesAdded(added, "cooking") : undefined;
      return cooked && count !== undefined
        ? [{ ...who(person), sheet: partOf(cooked, fraction(count)) }]
        : [];
    });
    return this.#apart;
  }

  get drifts(): readonly PersonDrift[] {
    const { lots, who } = this.#made;
    return lots.drifts.map(({ person, ...told }) => ({ ...told, person: who(person).person }));
  }

  get notes(): readonly CookingNote[] {
    return sessionNotes(this, britishEnglish);
  }
}

/** Those of a portion's additions that are cooked, or that are not; nothing where there are none. */
export function linesAdded(added: Sheet, when: "cooking" | "serving"): Sheet | undefined {
  const lines = added.plan.lines.flatMap(({ line }, i) => (line.added === when ? [i] : []));
  if (lines.length === 0) return undefined;
  return lines.length === added.plan.lines.length ? added : onlyLines(added, lines);
}

/** A pot whose sheets are made when first looked at. */
export class DishPot extends ToldResult implements CookedPot {
  readonly number: number;
  readonly people: readonly PersonPortions[];
  readonly #made: Made;
  readonly #pot: Pot;

  constructor(made: Made, pot: Pot, number: number, people: readonly PersonPortions[]) {
    super();
    this.#made = made;
    this.number = number;
    this.people = people;
    this.#pot = pot;
  }

  /** @internal */
  made(): Made {
    return this.#made;
  }

  get sheet(): Sheet {
    return this.#lot.sheet;
  }

  get exact(): Sheet {
    return this.#lot.exact;
  }

  get drift(): RatioDrift | undefined {
    return this.#lot.drift;
  }

  get left(): Exact {
    const pot = this.#pot;
    // A lot that is shared out anew leaves none.
    return isZero(pot.left) || this.#lot.portions
      ? ZERO
      : over(times(pot.left, this.sheet.masses.cooked), pot.sheet.masses.cooked);
  }

  get measured(): readonly string[] {
    return this.#lot.measured;
  }

  get kitchenNotes(): readonly KitchenNote[] {
    return this.#lot.notes;
  }

  get vessel(): VesselUse | undefined {
    return this.#lot.vessel;
  }

  get runs(): readonly CookingRun[] {
    return this.#lot.runs;
  }

  steps(language: Language = britishEnglish): CookingSteps {
    return stepsOf(this, readLanguage(language));
  }

  get #lot(): Lot {
    // Somebody eats of it, or there would be no session.
    return this.#made.lots.lot(this.#pot) as Lot;
  }
}
