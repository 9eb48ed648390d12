import type { Allergen } from "../../food/allergens.ts";
import { kitchenNameOf } from "../../food/kitchenName.ts";
import { Result } from "../../number/result.ts";
import { type AllergenUnknown, unknownOf } from "../../person/portion/allergens.ts";
import type { ServedLines, Watch } from "../find/watch.ts";
import type { ReadAvoid } from "../read/readAvoid.ts";

/**
 * A food on someone's plate that may hold an allergen which they avoid, or be of an origin which they
 * avoid, for all that is said of it.
 */
export interface AvoidedUnknown extends Omit<AllergenUnknown, "why"> {
  /** The allergens that nothing rules out; none where it is the `origin` that is not said. */
  readonly of: readonly Allergen[];
  /** Set where the food does not say where it comes from. */
  readonly origin?: "animal";
  readonly why: AllergenUnknown["why"] | "says nothing of its origin";
  readonly person: string;
  readonly meal: string;
  readonly dish: string;
}

/** What is served though someone avoids it, since it was overridden in writing. */
export interface AvoidedServed {
  readonly person: string;
  readonly meal: string;
  readonly dish: string;
  readonly avoided:
    | { readonly allergen: Allergen }
    | { readonly food: string }
    | { readonly origin: "animal" };
  /** Of the allergen or of the food; "food of animal origin". */
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
export class PlanAvoided extends Result {
  readonly is = "steelyard/avoided@1";
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
   * Foods that say nothing of an allergen which the person avoids, or nothing of their origin where
   * that is avoided: ask the maker before serving. Nothing said is unknown, and never free from.
   */
  get unknown(): readonly AvoidedUnknown[] {
    this.#unknown ??= this.#watch.people.flatMap(({ id, avoids }) =>
      avoids.some(({ kind }) => kind !== "food")
        ? this.#of(id).flatMap((served) => this.#unknownIn(served, avoids))
        : [],
    );
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

  override toString(): string {
    const all = this.people.map(({ person, avoids }) => `${person}: ${avoids.join(", ")}`);
    return all.length === 0 ? "nobody avoids anything" : `avoided by ${all.join("; ")}`;
  }

  /** @internal What things are called. */
  names(): Names {
    return this.#names;
  }

  /** @internal Whether somebody avoids by origin. */
  byOrigin(): boolean {
    return this.#watch.people.some(({ avoids }) => avoids.some(({ kind }) => kind === "origin"));
  }

  #of(person: string): readonly ServedLines[] {
    return this.#served.get(person) ?? [];
  }

  #unknownIn(served: ServedLines, avoids: readonly ReadAvoid[]): readonly AvoidedUnknown[] {
    const { person, meal } = served;
    const ids = avoids.flatMap((avoid) => (avoid.kind === "allergen" ? [avoid.allergen] : []));
    const byOrigin = avoids.some(({ kind }) => kind === "origin");
    return [...this.#watch.foods(served)].flatMap(([dish, foods]) =>
      foods.flatMap((each): AvoidedUnknown[] => [
        ...unknownOf(each, ids).map((unknown) => ({ person, meal, dish, ...unknown })),
        ...(byOrigin && each.food.origin === undefined
          ? [{ person, meal, dish, line: each.key, food: kitchenNameOf(each.food), ...NO_ORIGIN }]
          : []),
      ]),
    );
  }
}

const NO_ORIGIN = { of: [], origin: "animal", why: "says nothing of its origin" } as const;

/** What people and meals are called. */
export interface Names {
  readonly person: (id: string) => string;
  readonly meal: (id: string) => string;
  /** A line, with its dish where the meal has several. */
  readonly line: (meal: string, dish: string, key: string) => string;
}

function thing(avoid: ReadAvoid): AvoidedServed["avoided"] {
  switch (avoid.kind) {
    case "allergen":
      return { allergen: avoid.allergen };
    case "food":
      return { food: avoid.food };
    case "origin":
      return { origin: avoid.origin };
  }
}
