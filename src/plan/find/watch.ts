import type { ErrorCode, Fault } from "../../number/error.ts";
import { type DishFood, MealFoods } from "../read/knownFoods.ts";
import { idOf, type ReadAvoid } from "../read/readAvoid.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import type { ReadPerson } from "../read/readPerson.ts";
import type { LineFactors } from "../share/lineFactors.ts";

/** A portion, as far as it matters here who is served what. */
export interface ServedLines {
  readonly person: string;
  readonly meal: string;
  /** Nothing where it is not known, so that all that is in the meal counts. */
  factors(): LineFactors | undefined;
}

/** Something that someone avoids, and what of a meal holds it. */
export interface WatchedMeeting {
  readonly avoid: ReadAvoid;
  readonly dish: string;
  readonly foods: readonly DishFood[];
}

/** Watches what people are served for what they avoid. */
export class Watch {
  readonly #foods: MealFoods;
  readonly #people: ReadonlyMap<string, ReadPerson>;
  readonly #mealNames: ReadonlyMap<string, string>;

  constructor(people: readonly ReadPerson[], meals: readonly ReadMeal[]) {
    this.#foods = new MealFoods(meals);
    this.#people = new Map(people.filter(({ avoids }) => avoids.length > 0).map((one) => [one.id, one]));
    this.#mealNames = new Map(meals.map(({ id, name }) => [id, name]));
  }

  /** Those who avoid something. */
  get people(): readonly ReadPerson[] {
    return [...this.#people.values()];
  }

  /** What a portion holds of what the person avoids, overridden or not. */
  meetings(served: ServedLines): readonly WatchedMeeting[] {
    const { person, meal } = served;
    const { avoids } = this.#people.get(person) ?? { avoids: [] };
    return avoids.flatMap((avoid) =>
      [...this.#foods.servedOf(avoid, meal, served.factors())].flatMap(([dish, foods]): WatchedMeeting[] =>
        foods.length > 0 ? [{ avoid, dish, foods }] : [],
      ),
    );
  }

  /** Every food of a portion, by dish, for those who avoid something. */
  foods(served: ServedLines): ReadonlyMap<string, readonly DishFood[]> {
    return this.#people.has(served.person) ? this.#foods.served(served.meal, served.factors()) : new Map();
  }

  /** What must not be served, one fault for each thing avoided and each dish that holds it. */
  faults(served: ServedLines): readonly Fault[] {
    const name = this.#people.get(served.person)?.name ?? served.person;
    const meal = this.#mealNames.get(served.meal) ?? served.meal;
    return this.meetings(served)
      .filter(({ avoid }) => avoid.because === undefined)
      .map(({ avoid, dish, foods }) => {
        const isMixed = ({ food }: DishFood): boolean => avoid.kind === "origin" && food.origin === "mixed";
        const lines = foods
          .map((each) => {
            const line = this.#foods.lineOf(served.meal, dish, each.key);
            return isMixed(each) ? `${line} (of mixed origin)` : line;
          })
          .join(", ");
        // An override would let all else of animal origin pass with it.
        const label = foods.some(isMixed)
          ? '; where the label of a mixed food says that nothing in it is of animal origin, give the food origin: "plant"'
          : "";
        return {
          code: avoid.kind === "allergen" ? "allergen-served" : "avoided-served",
          path: avoid.path,
          message: `${avoid.name}, which ${name} is not to be served, is in ${meal}: ${lines}`,
          hint: `serve a substitute (see substitutes), or plan for them apart; only avoid: [{ ${avoid.kind}: ${JSON.stringify(idOf(avoid))}, override: "who allows it, and why" }] lets it pass${label}`,
        } satisfies Fault & { readonly code: ErrorCode };
      });
  }
}
