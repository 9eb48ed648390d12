import { britishEnglish, type Language, say } from "../document/language.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import { fraction, over } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import type { Plan } from "../plan/planned.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { batchNotes } from "./batchNotes.ts";
import { driftOfDay, type ScheduledDrift } from "./dayDrift.ts";
import { ownFoods } from "./drawn.ts";
import { type EatenOfPot, eatenOf, eatenOn } from "./eaten.ts";
import { KitchenWork } from "./kitchenWork.ts";
import type { CookedBatch } from "./madeBatch.ts";
import { type CookingNote, merged, sessionNotes } from "./notes.ts";
import type { ReadSchedule } from "./read.ts";
import type { DishServing } from "./served.ts";
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
  readonly #kitchen: KitchenWork;
  #sessions: readonly DishSession[] | undefined;
  #servings: readonly DishServing[] | undefined;
  #drifts: readonly ScheduledDrift[] | undefined;

  /** @internal Use {@link cookingSchedule}. */
  constructor(plan: Plan, read: ReadSchedule) {
    super();
    this.days = read.days.names;
    this.plan = plan;
    this.#read = read;
    this.#kitchen = new KitchenWork(plan, read);
  }

  /**
   * Nested recipes, by the day on which they are made, those that go into others first. Each is made once
   * for every dish and day that draws on it until it is made again: see `cook` of the options.
   */
  get batches(): readonly CookedBatch[] {
    return this.#kitchen.batches;
  }

  /** Each dish on each day that it is cooked, by day, then in the plan's order. */
  get sessions(): readonly CookingSession[] {
    return this.#dishSessions;
  }

  /** What each person is served of each dish, in the plan's order. */
  get servings(): readonly DishServing[] {
    this.#servings ??= this.#kitchen.servings();
    return this.#servings;
  }

  /** @internal All that is cooked and added over all days, for whoever buys it; nested recipes are batches of their own. */
  cooked(): readonly Sheet[] {
    return this.cookedByDay().flat();
  }

  /** @internal The same by the day on which it is cooked, made or added, in the order of {@link days}. */
  cookedByDay(): readonly (readonly Sheet[])[] {
    const all = this.#read.days.all.map((): Sheet[] => []);
    const use = (day: number, s: Sheet): void => {
      const own = ownFoods(s);
      if (own) all[day]?.push(own);
    };
    for (const batch of this.#kitchen.batches) use(batch.place().made, batch.sheet);
    for (const session of this.#dishSessions) {
      const { cooked } = session.made().span;
      for (const { sheet } of [...session.pots, ...session.apart]) use(cooked, sheet);
    }
    for (const { added, count, days } of this.servings) {
      if (!added) continue;
      const places = days.length === 0 ? [0] : days.map((day) => this.#read.days.place(day) ?? 0);
      const each = partOf(added, over(count, fraction(BigInt(places.length))));
      for (const day of places) use(day, each);
    }
    return all;
  }

  /** @internal What each person eats of each meal over all days. */
  eaten(): readonly EatenOfPot[] {
    return eatenOf(this.plan, this.#read, this.#kitchen);
  }

  /**
   * What cooking does to each person's days, day by day: what each day that was fitted as one was to bring, what
   * it brings as it was planned, and as it is cooked and shared out. Empty where nobody measures.
   */
  get drifts(): readonly ScheduledDrift[] {
    this.#drifts ??= this.plan.people.flatMap(({ id: person }) =>
      this.plan.days.flatMap(({ id: day }) => {
        const planned = this.plan.day(person, day);
        if (!planned.fit) return [];
        const eaten = eatenOn(this.plan, this.#read, this.#kitchen, { person, day });
        return (
          driftOfDay(
            planned,
            eaten.flatMap(({ sheets }) => sheets),
          ) ?? []
        );
      }),
    );
    return this.#drifts;
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
      batches: this.#kitchen.batches,
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
    const all = meals.flatMap((scheduled) =>
      scheduled.spans.flatMap((span) => {
        if (span.eaten.length === 0) return [];
        const lots = this.#kitchen.lots(scheduled, span);
        const { eating, who } = scheduled;
        return scheduled.dishes.flatMap(({ name }) => {
          const dish = lots.dish(name);
          return dish ? [new DishSession({ days, dish, eating, span, lots, who, nameOf })] : [];
        });
      }),
    );
    const place = new Map(
      this.plan.meals
        .flatMap(({ id, dishes }) => [...dishes.keys()].map((name) => JSON.stringify([id, name])))
        .map((key, i) => [key, i]),
    );
    const placeOf = ({ meal, dish }: DishSession): number => place.get(JSON.stringify([meal, dish])) ?? 0;
    return all
      .filter((session) => !session.isEmpty())
      .sort((a, b) => a.made().span.cooked - b.made().span.cooked || placeOf(a) - placeOf(b));
  }

  /** What could do harm stands first. */
  #notes(language: Language): readonly CookingNote[] {
    const sessions = this.#dishSessions.flatMap((session) => sessionNotes(session, language));
    const ahead = this.#kitchen.batches.flatMap((batch) => batchNotes(batch, this.#read.days, language));
    const told = [...this.#offDays(language), ...this.#onTheDay(language), ...this.#idle(language)];
    const notes = merged([...ahead, ...sessions, ...told]);
    const isUrgent = ({ code }: CookingNote): boolean => code === "kept-too-long" || code === "overflows";
    return [...notes.filter(isUrgent), ...notes.filter((note) => !isUrgent(note))];
  }

  /** Whose days cooking takes off what was asked of them, by more than the tolerance. */
  #offDays(language: Language): readonly CookingNote[] {
    const names = new Map([...this.plan.people, ...this.plan.days].map(({ id, name }) => [id, name]));
    return this.drifts.flatMap(({ person, day, drift }) =>
      drift.demands
        .filter(({ holds, heldBefore }) => !holds && heldBefore)
        .map(({ of, asked, brings, unit, demand }): CookingNote => {
          const isShare = demand.energyShareOf !== undefined;
          const figure = !brings
            ? ""
            : isShare
              ? showPercent(brings, { significant: 3, language })
              : showFigure(brings, { significant: 4, language, ...(unit !== "" && { unit }) });
          const gaps = { person: names.get(person) ?? person, demand: say(language, of), asked, figure };
          return {
            code: "off-target",
            days: this.days.filter((each) => each === day),
            meal: undefined,
            dish: undefined,
            text: say(language, OFF_DAY, gaps),
            source: undefined,
          };
        }),
    );
  }

  /** Dishes that are not kept, though others are. */
  #onTheDay(language: Language): readonly CookingNote[] {
    const { days, meals } = this.#read;
    return meals.flatMap(({ meal, onTheDay, spans }) =>
      onTheDay.map(
        ({ name }): CookingNote => ({
          code: "cooked-on-the-day",
          days: spans
            .filter(({ eaten }) => eaten.length > 0)
            .flatMap(({ cooked }) => days.names[cooked] ?? []),
          meal: meal.id,
          dish: name,
          text: say(language, ON_THE_DAY),
          source: undefined,
        }),
      ),
    );
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

const OFF_DAY =
  "{person}: {demand} {asked}: {figure} as it is cooked, which is off by more than the tolerance";
const ON_THE_DAY =
  "cooked on the day it is eaten, since it holds rice and its recipe does not say how long it keeps (common practice, no source)";

/** What a schedule shows. */
export interface Shows {
  readonly plan: Plan;
  readonly days: readonly string[];
  readonly batches: readonly CookedBatch[];
  readonly sessions: readonly DishSession[];
  readonly servings: readonly DishServing[];
  readonly notes: readonly CookingNote[];
}
