import type { FoodInput } from "../../food/food.ts";
import { isZero, ZERO } from "../../number/exact.ts";
import { holdsAllergen } from "../../person/portion/allergens.ts";
import { readEaten } from "../../person/portion/eaten.ts";
import type { LineFactors } from "../share/lineFactors.ts";
import { idOf, type KnownFoods, type ReadAvoid } from "./readAvoid.ts";
import type { ReadMeal } from "./readMeal.ts";

/** A food of a dish, however deep it is nested. */
export interface DishFood {
  /** Its line: `line/inner` in a nested recipe. */
  readonly key: string;
  readonly food: FoodInput;
  /** The place of the dish's own line that brings it. */
  readonly at: number;
}

/** The foods of each dish, looked up once for everyone. */
export class MealFoods {
  readonly #meals: ReadonlyMap<string, ReadMeal>;
  readonly #made = new Map<string, ReadonlyMap<string, readonly DishFood[]>>();
  readonly #holding = new Map<string, ReadonlyMap<string, readonly DishFood[]>>();

  constructor(meals: readonly ReadMeal[]) {
    this.#meals = new Map(meals.map((meal) => [meal.id, meal]));
  }

  /** What of a meal someone is served, by dish; all that is in it where the portion is not known. */
  served(meal: string, factors: LineFactors | undefined): ReadonlyMap<string, readonly DishFood[]> {
    return onPlate(this.#foodsOf(meal), factors);
  }

  /** What of that holds something that they avoid. */
  servedOf(
    avoid: ReadAvoid,
    meal: string,
    factors: LineFactors | undefined,
  ): ReadonlyMap<string, readonly DishFood[]> {
    const key = JSON.stringify([meal, avoid.kind, idOf(avoid)]);
    const all = this.#holding.get(key) ?? this.#holdersOf(avoid, meal);
    this.#holding.set(key, all);
    return onPlate(all, factors);
  }

  /** Dishes that hold none of it are left out. */
  #holdersOf(avoid: ReadAvoid, meal: string): ReadonlyMap<string, readonly DishFood[]> {
    const found = [...this.#foodsOf(meal)].map(
      ([dish, foods]) => [dish, foods.filter(({ food }) => holds(food, avoid))] as const,
    );
    return new Map(found.filter(([, foods]) => foods.length > 0));
  }

  /** A food's line, with its dish where the meal has several. */
  lineOf(meal: string, dish: string, key: string): string {
    return this.#foodsOf(meal).size > 1 ? `${dish}/${key}` : key;
  }

  #foodsOf(id: string): ReadonlyMap<string, readonly DishFood[]> {
    const made = this.#made.get(id);
    if (made) return made;
    const dishes = this.#meals.get(id)?.dishes ?? new Map();
    const foods = new Map(
      [...dishes].map(([name, s]) => [
        name,
        readEaten(s, "plan-malformed").foods.map(
          ({ key, food, top }): DishFood => ({ key, food, at: s.plan.indexOf(top.key) }),
        ),
      ]),
    );
    this.#made.set(id, foods);
    return foods;
  }
}

function holds(food: FoodInput, avoid: ReadAvoid): boolean {
  switch (avoid.kind) {
    case "allergen":
      return holdsAllergen(food, avoid.allergen);
    case "food":
      return food.id === avoid.food;
    case "origin":
      // Nothing says what a mixed food is mixed of.
      return food.origin === avoid.origin || food.origin === "mixed";
  }
}

/** Those that someone has some of. */
function onPlate(
  all: ReadonlyMap<string, readonly DishFood[]>,
  factors: LineFactors | undefined,
): ReadonlyMap<string, readonly DishFood[]> {
  if (!factors || all.size === 0) return all;
  return new Map(
    [...all].map(([dish, foods]) => {
      const own = factors.get(dish);
      return [dish, own ? foods.filter(({ at }) => !isZero(own[at] ?? ZERO)) : []];
    }),
  );
}

/** The foods of every table that the meals' recipes draw on. */
export function knownFoods(meals: readonly ReadMeal[]): KnownFoods {
  const tables = new Set(meals.flatMap(({ dishes }) => [...dishes.values()].map(({ plan }) => plan.foods)));
  return {
    get ids() {
      return [...tables].flatMap(({ ids }) => ids);
    },
    nameOf: (id) => {
      const table = [...tables].find((each) => each.has(id));
      return table?.get(id).name;
    },
  };
}
