import { amountOfFood } from "../cook/amountOfFood.ts";
import type { CookedBatch } from "../cook/madeBatch.ts";
import { shortNames } from "../cook/method.ts";
import { OF_A_POT } from "../cook/notes.ts";
import type { CookingSchedule, Shows } from "../cook/schedule.ts";
import type { DishServing } from "../cook/served.ts";
import type { DishPot, DishSession } from "../cook/session.ts";
import { settledAmount, weighed } from "../cook/settledAmount.ts";
import { type Language, say } from "../document/language.ts";
import { withExact } from "../measure/amount.ts";
import { showFigure } from "../measure/showFigure.ts";
import { fault, quote } from "../number/error.ts";
import type { Exact } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { pieceOf, wholeIn } from "../plan/measure/pieces.ts";
import type { KitchenNote } from "../plan/share/groups.ts";
import { inSentence } from "../sheet/names.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { amountGroups } from "./amounts.ts";
import type { AmountRow, Take } from "./card.ts";
import type { CookCardOptions } from "./how.ts";
import { potShare } from "./potShare.ts";

// A cook's page as plain data, in the order of the trade's standardized recipe: what it is, how much of it
// for whom, what goes in, how it is made, what is served of it.

/** One thing that is made: a batch of a nested recipe, or a pot of a dish. */
export interface CookBlock {
  readonly name: string;
  /** Portions, yield, when it is eaten. */
  readonly facts: readonly string[];
  readonly rows: readonly AmountRow[];
  readonly steps: readonly string[];
  /** Columns of what is taken of it: when, who, how much, what is added. */
  readonly served: readonly ServedRow[];
  readonly notes: readonly string[];
}

export interface ServedRow extends Take {
  readonly when: string;
  readonly who: string;
  readonly added: string;
}

/** All that is cooked on one day. */
export interface CookDay {
  readonly day: string;
  /** In which order to work. */
  readonly order: readonly string[];
  readonly batches: readonly CookBlock[];
  readonly pots: readonly CookBlock[];
  readonly notes: readonly string[];
}

/** Gathers what a cook needs, day by day. Throws `card-malformed` for a day that the schedule lacks. */
export function cookDays(
  schedule: CookingSchedule,
  { day }: CookCardOptions,
  language: Language,
): readonly CookDay[] {
  if (day !== undefined && !schedule.days.includes(day)) {
    const hint = didYouMean(day, schedule.days, "use one of the schedule's days");
    throw fault("card-malformed", `the schedule has no day ${quote(day)}`, hint, ["day"]);
  }
  const shows = schedule.shows(language);
  const days: readonly (string | undefined)[] = schedule.days.length === 0 ? [undefined] : schedule.days;
  return days
    .filter((each) => day === undefined || each === day)
    .map((each) => new CookDayOf(shows, each, language).content)
    .filter(({ batches, pots }) => batches.length > 0 || pots.length > 0);
}

class CookDayOf {
  readonly #shows: Shows;
  readonly #day: string | undefined;
  readonly #language: Language;

  constructor(shows: Shows, day: string | undefined, language: Language) {
    this.#shows = shows;
    this.#day = day;
    this.#language = language;
  }

  get content(): CookDay {
    const batches = this.#shows.batches.filter(({ day }) => day === this.#day);
    const sessions = this.#shows.sessions.filter(({ day }) => day === this.#day);
    const notes = this.#shows.notes.filter(({ code, days, recipe }) => {
      return (
        !OF_A_POT.has(code) &&
        // What it costs a person is theirs and the planner's to know.
        code !== "off-target" &&
        (days.length === 0 || days.includes(this.#day ?? "")) &&
        recipe === undefined
      );
    });
    return {
      day: this.#dayName(this.#day),
      order: this.#order(batches, sessions),
      batches: batches.map((batch) => this.#batch(batch)),
      pots: sessions.flatMap((session) => session.pots.map((pot) => this.#pot(session, pot))),
      notes: [...new Set(notes.map(({ dish, meal, text, source }) => this.#note(meal, dish, text, source)))],
    };
  }

  /** What goes into others first, then what keeps longest, and last what is eaten the same day. */
  #order(batches: readonly CookedBatch[], sessions: readonly DishSession[]): readonly string[] {
    const lasts = (session: DishSession): number =>
      Math.max(0, ...session.eatenAt().map((at) => at - session.made().span.cooked));
    const sorted = [...sessions].sort((a, b) => lasts(b) - lasts(a));
    return [
      ...batches.map(({ name, sheet }) =>
        this.#say("{name}, {mass}: it goes into other dishes", { name, mass: this.#grams(sheet) }),
      ),
      ...sorted.map((session) => {
        const name = session.made().dish.batch.name;
        const kept = lasts(session);
        if (kept > 0)
          return this.#say("{name}: it is kept, the last of it for {day}", {
            name,
            day: this.#dayName(session.eaten.at(-1)),
          });
        return this.#say("{name}: served today", { name });
      }),
    ];
  }

  #batch(batch: CookedBatch): CookBlock {
    const { name, sheet, runs, measured, draws, left } = batch;
    const steps = batch.steps(this.#language);
    return {
      name,
      facts: [this.#portions(sheet), this.#yield(sheet), ...this.#runs(runs)],
      rows: this.#rows(runs[0]?.sheet ?? sheet, measured),
      steps: steps.by === "recipe" ? steps.steps : [],
      served: [...this.#draws(draws), ...this.#left(left, "left over")],
      notes: [
        ...this.#ofAmounts(batch.kitchenNotes),
        ...this.#shows.notes
          .filter(
            ({ recipe, days, code }) =>
              recipe === batch.recipe &&
              !OF_A_POT.has(code) &&
              (days.length === 0 || days.includes(this.#day ?? "")),
          )
          .map(({ text }) => text),
      ],
    };
  }

  /** The same amount for the same purpose on several days is one row. */
  #draws(draws: CookedBatch["draws"]): readonly ServedRow[] {
    const rows = new Map<string, ServedRow>();
    for (const draw of draws) {
      const when = draw.day === undefined ? "" : this.#dayName(draw.day);
      const who = draw.person === undefined ? this.#into(draw) : this.#personName(draw.person);
      const added = draw.person === undefined ? "" : this.#into(draw);
      const take = this.#weighed(draw.grams);
      const key = [who, added, take.lead].join("\n");
      const before = rows.get(key);
      const days = [before?.when ?? "", when].filter((each) => each !== "").join(", ");
      rows.set(key, { when: days, who, ...take, added });
    }
    return [...rows.values()];
  }

  #pot(session: DishSession, pot: DishPot): CookBlock {
    const { dish } = session.made();
    const { sheet, runs, measured, people } = pot;
    const steps = pot.steps(this.#language);
    const listed = (phrase: string, lines: readonly string[]): readonly string[] =>
      lines.length === 0 ? [] : [this.#say(phrase, { lines: lines.join("; ") })];
    const several = dish.pots.length > 1;
    const own = people.map(({ person }) => this.#personName(person)).join(", ");
    const known = dish.knownTo(people.map(({ person }) => person)).name;
    return {
      name: several ? this.#say("{name}, for {people}", { name: known, people: own }) : known,
      facts: [this.#portions(sheet), this.#yield(sheet), ...this.#runs(runs)],
      rows: this.#rows(runs[0]?.sheet ?? sheet, measured),
      steps: steps.by === "recipe" ? steps.steps : [],
      served: [
        ...this.#servings(session, pot).map((each) => this.#served(each)),
        ...this.#left(pot.left, "left in the pot"),
      ],
      notes: [
        ...listed("Not named in the method: {lines}", steps.unnamed),
        ...listed("Left for serving: {lines}", steps.atServing),
        ...this.#ofAmounts(pot.kitchenNotes),
        ...session.apart
          .filter(({ person }) => people.some((each) => each.person === person))
          .map(({ person, sheet: s }) =>
            this.#say("For {person} alone: {lines}", {
              person: this.#personName(person),
              lines: this.#lines(s),
            }),
          ),
      ],
    };
  }

  /** What could not be measured or divided as it was meant. */
  #ofAmounts(notes: readonly KitchenNote[]): readonly string[] {
    return notes
      .filter(({ code }) => code === "not-divided" || code === "not-measurable")
      .map(({ text }) => this.#say(text));
  }

  /** Less than a gram is what rounding leaves, and nobody's to find. */
  #left(grams: Exact, phrase: string): readonly ServedRow[] {
    if (grams.n < grams.d) return [];
    return [{ when: "", who: this.#say(phrase), ...this.#weighed(grams), added: "" }];
  }

  #weighed(grams: Exact): Take {
    return { lead: weighed(grams, this.#language), also: "" };
  }

  #servings(session: DishSession, pot: DishPot): readonly DishServing[] {
    const own = new Set(pot.people.map(({ person }) => person));
    return this.#shows.servings.filter(
      ({ meal, dish, person, days }) =>
        dish === session.dish &&
        session.meals.includes(meal) &&
        own.has(person) &&
        (days.length === 0 || days.some((day) => session.eaten.includes(day))),
    );
  }

  #served({ meal, person, days, count, portion, added }: DishServing): ServedRow {
    const menu = this.#shows.plan.meals.find(({ id }) => id === meal);
    const isMenu = menu !== undefined && menu.id !== menu.own.id;
    const times =
      days.length === 0 && !count.eq(1) ? this.#say("{count} times", { count: count.toString() }) : "";
    return {
      when: isMenu
        ? menu.day === this.#day
          ? menu.own.name
          : menu.name
        : days.length > 0
          ? days.map((day) => this.#dayName(day)).join(", ")
          : times,
      who: this.#personName(person),
      ...potShare(portion, undefined, this.#language),
      added: added ? this.#lines(added) : "",
    };
  }

  #rows(s: Sheet, measured: readonly string[]): readonly AmountRow[] {
    const kitchen = this.#shows.plan.kitchen();
    return amountGroups(s, { measured, kitchen }, this.#language)
      .flatMap(({ rows }) => rows)
      .map((row) => ({ ...row, madeOf: [] }));
  }

  #lines(s: Sheet): string {
    const names = shortNames(s.lines, this.#language);
    const groups = amountGroups(
      s,
      { measured: s.lines.map(({ key }) => key), kitchen: this.#shows.plan.kitchen() },
      this.#language,
    );
    return groups
      .flatMap(({ rows }) => rows)
      .map(({ key, lead }) =>
        amountOfFood(lead, inSentence(names.get(key) ?? key, this.#language), this.#language),
      )
      .join("; ");
  }

  #portions(s: Sheet): string {
    const piece = pieceOf(s);
    if (piece) {
      const count = withExact(piece.one, wholeIn(piece, s.masses.cooked, s.values.portions));
      return settledAmount(count, undefined, this.#language);
    }
    const { portions } = s.values;
    const count = showFigure(portions, { significant: 2, language: this.#language });
    return this.#say(portions.eq(1) ? "1 portion" : "{count} portions", { count });
  }

  #yield(s: Sheet): string {
    return this.#say("{grams} when done", { grams: this.#grams(s) });
  }

  #grams(s: Sheet): string {
    return weighed(s.masses.cooked, this.#language);
  }

  #runs(runs: CookedBatch["runs"]): readonly string[] {
    const [first, rest] = runs;
    if (!first || (first.count.eq(1) && !rest)) return [];
    const count = first.count.toString();
    return [
      this.#say(
        rest
          ? "{count} full runs and a rest; amounts are those of a full run"
          : "{count} runs; amounts are those of one",
        { count },
      ),
    ];
  }

  #into({ meal, dish, recipe }: CookedBatch["draws"][number]): string {
    const { plan, batches } = this.#shows;
    if (recipe !== undefined) return batches.find((each) => each.recipe === recipe)?.name ?? recipe;
    return plan.meals.find(({ id }) => id === meal)?.dishes.get(dish ?? "")?.batch.name ?? dish ?? "";
  }

  #note(
    meal: string | undefined,
    dish: string | undefined,
    text: string,
    source: string | undefined,
  ): string {
    const found = this.#shows.plan.meals.find(({ id }) => id === meal);
    const name = (dish === undefined ? found?.name : found?.dishes.get(dish)?.batch.name) ?? "";
    const told = source === undefined ? text : this.#say("{text} ({source})", { text, source });
    return name === "" ? told : this.#say("{name}: {text}", { name, text: told });
  }

  #dayName(day: string | undefined): string {
    return day === undefined ? "" : (this.#shows.plan.days.find(({ id }) => id === day)?.name ?? day);
  }

  #personName(person: string): string {
    return this.#shows.plan.people.find(({ id }) => id === person)?.name ?? person;
  }

  #say(phrase: string, gaps: { readonly [name: string]: string } = {}): string {
    return say(this.#language, phrase, gaps);
  }
}
