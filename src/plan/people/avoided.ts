import type { Allergen } from "../../food/allergens.ts";
import { type AllergenUnknown, unknownOf } from "../../person/portion/allergens.ts";
import { britishEnglish, type Language } from "../../table/language.ts";
import { readLanguage } from "../../table/readLanguage.ts";
import { Shown } from "../../table/shown.ts";
import type { Table } from "../../table/table.ts";
import type { ReadAvoid } from "./avoid.ts";
import { avoidedTable } from "./avoidedTable.ts";
import type { ServedLines, Watch } from "./watch.ts";

/** A food on someone's plate that may hold an allergen which they avoid, for all that is said of it. */
export interface AvoidedUnknown extends AllergenUnknown {
  readonly person: string;
  readonly meal: string;
  readonly dish: string;
}

/** What is served though someone avoids it, since it was overridden in writing. */
export interface AvoidedServed {
  readonly person: string;
  readonly meal: string;
  readonly dish: string;
  readonly avoided: { readonly allergen: Allergen } | { readonly food: string };
  /** Of the allergen or of the food. */
  readonly name: string;
  /** In the dish: `line/inner` in a nested recipe. */
  readonly lines: readonly string[];
  /** The override's words. */
  readonly because: string;
}

/** Someone who avoids something, and the names of what. */
export interface Avoider {
  readonly person: string;
  readonly avoids: readonly string[];
}

/**
 * What people avoid, held against what they are served. Whatever must not be served has been refused
 * by then; this is what is left to ask and to know. Worked out when first looked at.
 */
export class PlanAvoided extends Shown {
  /** Everyone who avoids something. */
  readonly people: readonly Avoider[];
  readonly #watch: Watch;
  readonly #served = new Map<string, ServedLines[]>();
  readonly #names: Names;
  #unknown: readonly AvoidedUnknown[] | undefined;

  /** @internal Use `plan.avoided`. */
  constructor(watch: Watch, served: readonly ServedLines[], names: Names) {
    super();
    this.people = watch.people.map(({ id, avoids }) => ({
      person: id,
      avoids: avoids.map(({ name }) => name),
    }));
    this.#watch = watch;
    this.#names = names;
    for (const { person } of this.people) this.#served.set(person, []);
    for (const each of served) this.#served.get(each.person)?.push(each);
  }

  /**
   * Foods that say nothing of an allergen which the person avoids: ask the maker before serving.
   * Nothing said is unknown, and never free from.
   */
  get unknown(): readonly AvoidedUnknown[] {
    this.#unknown ??= this.#watch.people.flatMap(({ id, avoids }) => {
      const ids = avoids.flatMap((avoid) => (avoid.kind === "allergen" ? [avoid.allergen] : []));
      if (ids.length === 0) return [];
      return this.#of(id).flatMap((served) => this.#unknownIn(served, ids));
    });
    return this.#unknown;
  }

  /** What is served though it is avoided, with the words that allow it. */
  get overridden(): readonly AvoidedServed[] {
    return this.#watch.people.flatMap(({ id }) =>
      this.#of(id).flatMap((served) =>
        this.#watch.meetings(served).map(({ avoid, dish, foods }) => ({
          person: served.person,
          meal: served.meal,
          dish,
          avoided: thing(avoid),
          name: avoid.name,
          lines: foods.map(({ key }) => key),
          because: avoid.because ?? "",
        })),
      ),
    );
  }

  override toTables(language: Language = britishEnglish): readonly Table[] {
    const read = readLanguage(language);
    return this.people.length === 0 ? [] : [avoidedTable(this, this.#names, read)];
  }

  #of(person: string): readonly ServedLines[] {
    return this.#served.get(person) ?? [];
  }

  #unknownIn(served: ServedLines, ids: readonly Allergen[]): readonly AvoidedUnknown[] {
    const { person, meal } = served;
    return [...this.#watch.foods(served)].flatMap(([dish, foods]) =>
      foods.flatMap((food) => unknownOf(food, ids).map((each) => ({ person, meal, dish, ...each }))),
    );
  }
}

/** What people and meals are called. */
export interface Names {
  readonly person: (id: string) => string;
  readonly meal: (id: string) => string;
  /** A line, with its dish where the meal has several. */
  readonly line: (meal: string, dish: string, key: string) => string;
}

function thing(avoid: ReadAvoid): AvoidedServed["avoided"] {
  return avoid.kind === "allergen" ? { allergen: avoid.allergen } : { food: avoid.food };
}
