import { britishEnglish, type Language, say } from "../document/language.ts";
import { Result } from "../number/result.ts";
import type { Plan } from "../plan/planned.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type Eaten, eatenOf } from "./eaten.ts";
import { type CookingNote, merged, sessionNotes } from "./notes.ts";
import type { ReadSchedule } from "./read.ts";
import { type DishServing, servingsOf } from "./served.ts";
import { type CookingSession, DishSession } from "./session.ts";
import { partOf } from "./vessel.ts";

/** What is cooked when, in how many runs, and what is served of it. */
export class CookingSchedule extends Result {
  readonly is = "steelyard/schedule@1";
  /** The days by the caller's names, in order; empty where none are named. */
  readonly days: readonly string[];
  /** The plan that is cooked. */
  readonly plan: Plan;
  readonly #read: ReadSchedule;
  #sessions: readonly DishSession[] | undefined;
  #servings: readonly DishServing[] | undefined;

  /** @internal Use {@link cookingSchedule}. */
  constructor(plan: Plan, read: ReadSchedule) {
    super();
    this.days = read.days.names;
    this.plan = plan;
    this.#read = read;
  }

  /** Each dish on each day that it is cooked, by day, then in the plan's order. */
  get sessions(): readonly CookingSession[] {
    return this.#dishSessions;
  }

  /** What each person is served of each dish, in the plan's order. */
  get servings(): readonly DishServing[] {
    const { days, meals } = this.#read;
    this.#servings ??= meals.flatMap((scheduled) =>
      [...scheduled.meal.dishes.values()].flatMap((dish) => servingsOf(dish, scheduled, days)),
    );
    return this.#servings;
  }

  /** @internal All that is cooked and added over all days, for whoever buys it. */
  cooked(): readonly Sheet[] {
    const pots = this.sessions.flatMap(({ pots, apart }) => [...pots, ...apart].map(({ sheet }) => sheet));
    const added = this.servings.flatMap((each) => (each.added ? [partOf(each.added, each.count)] : []));
    return [...pots, ...added];
  }

  /** @internal What each person eats of each meal over all days. */
  eaten(): readonly Eaten[] {
    return eatenOf(this.plan, this.#read.meals);
  }

  /** What the cook should know, each thing once with the days that it speaks of. In British English. */
  get notes(): readonly CookingNote[] {
    return this.#notes(britishEnglish);
  }

  override toString(): string {
    const dishes = this.sessions.map(({ dish, day }) => (day === undefined ? dish : `${dish} on ${day}`));
    return `to cook: ${dishes.join(", ")}`;
  }

  /** @internal What it shows in a language. */
  shows(language: Language): Shows {
    return {
      plan: this.plan,
      days: this.days,
      sessions: this.#dishSessions,
      servings: this.servings,
      notes: this.#notes(language),
    };
  }

  get #dishSessions(): readonly DishSession[] {
    this.#sessions ??= this.#makeSessions();
    return this.#sessions;
  }

  #makeSessions(): readonly DishSession[] {
    const { days, meals } = this.#read;
    const names = new Map(this.plan.people.map(({ id, name }) => [id, name]));
    const nameOf = (person: string): string => names.get(person) ?? person;
    const all = meals.flatMap(({ meal, eating, spans, lots }) =>
      spans.flatMap((span) => {
        if (span.eaten.length === 0) return [];
        const own = lots.of(eating.counts(span.eaten));
        return [...meal.dishes.values()].map(
          (dish) => new DishSession({ days, dish, eating, span, lots: own, nameOf }),
        );
      }),
    );
    const cooked = all.filter((session) => !session.isEmpty());
    return cooked.sort((a, b) => a.made().span.cooked - b.made().span.cooked);
  }

  /** What could do harm stands first. */
  #notes(language: Language): readonly CookingNote[] {
    const sessions = this.#dishSessions.flatMap((session) => sessionNotes(session, language));
    const notes = merged([...sessions, ...this.#idle(language)]);
    const isUrgent = ({ code }: CookingNote): boolean => code === "kept-too-long" || code === "overflows";
    return [...notes.filter(isUrgent), ...notes.filter((note) => !isUrgent(note))];
  }

  /** Days of cooking for nobody. */
  #idle(language: Language): readonly CookingNote[] {
    const { days, meals } = this.#read;
    return meals.flatMap(({ meal, spans }) =>
      spans
        .filter(({ eaten }) => eaten.length === 0)
        .map(
          ({ cooked }): CookingNote => ({
            code: "nothing-to-cook",
            days: days.names.slice(cooked, cooked + 1),
            meal: meal.id,
            dish: undefined,
            text: say(language, "nothing to cook: nobody eats of it until it is cooked again"),
            source: undefined,
          }),
        ),
    );
  }
}

/** What a schedule shows. */
export interface Shows {
  readonly plan: Plan;
  readonly days: readonly string[];
  readonly sessions: readonly DishSession[];
  readonly servings: readonly DishServing[];
  readonly notes: readonly CookingNote[];
}
