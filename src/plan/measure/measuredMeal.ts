import type { ServedPortion } from "../portion.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import { demandsOf } from "../read/readPerson.ts";
import type { ReadPlan } from "../read/readPlan.ts";
import type { EaterGroup } from "../share/groups.ts";
import { potGroups } from "../share/whoSharesAPot.ts";
import { MealFigures } from "./figures.ts";
import { Plate } from "./plate.ts";
import { SharedPot } from "./sharedPot.ts";

/**
 * A meal on its way into amounts that kitchens can measure: first the pots and the shares of them,
 * then each person's additions, which make up for what the pots cost where they can. Where they
 * cannot keep what must hold for someone, the pots they eat from go back to exact amounts.
 */
export class MeasuredMeal {
  readonly #read: ReadPlan;
  readonly #meal: ReadMeal;
  readonly #figures: MealFigures;
  readonly #plates: ReadonlyMap<string, Plate>;
  readonly #pots: readonly SharedPot[];
  readonly #groups: ReadonlyMap<string, readonly EaterGroup[]>;
  /** People for whom what must hold does not. */
  readonly #failing = new Set<string>();

  constructor(read: ReadPlan, meal: ReadMeal, portions: readonly ServedPortion[]) {
    this.#read = read;
    this.#meal = meal;
    this.#figures = MealFigures.of(meal);
    const places = new Map(read.people.map((person) => [person.id, person]));
    this.#plates = new Map(
      portions.flatMap((served): [string, Plate][] => {
        const person = places.get(served.person);
        const want = person?.wants.get(meal.id);
        if (!person || !want || served.factors().size === 0) return [];
        const kitchen = person.kitchen ?? read.kitchen;
        const wishesFor = (dish: string) => person.wishes.of(meal.id, dish);
        const at = { served, figures: this.#figures, demands: demandsOf(want), kitchen, wishesFor };
        return [[served.person, new Plate({ ...at, tolerance: read.tolerance })]];
      }),
    );
    this.#groups = new Map([...meal.dishes.keys()].map((dish) => [dish, this.#groupsOf(dish)]));
    this.#pots = [...this.#groups].flatMap(([dish, groups]) => this.#potsOf(dish, groups));
  }

  get id(): string {
    return this.#meal.id;
  }

  /** One pot after another: each knows what those before it cost. */
  measurePots(): void {
    const { kitchen, tolerance, wishes } = this.#read;
    if (!kitchen) return;
    const heldTo = new Map([...this.#plates].map(([person, plate]) => [person, plate.heldTo]));
    const held = { kitchen, tolerance, figures: this.#figures, heldTo };
    for (const pot of this.#pots) {
      const tasters = pot.people.flatMap((person) => this.#plates.get(person)?.taster ?? []);
      pot.measure({ ...held, wishes: wishes.of(this.id, pot.dish) }, tasters);
    }
  }

  plateOf(person: string): Plate | undefined {
    return this.#plates.get(person);
  }

  measureFor(person: string): void {
    if (this.#plates.get(person)?.measure() === false) this.#failing.add(person);
  }

  /** Gives up pots that leave someone without what must hold, and measures again for all who eat of them. */
  settle(): void {
    while (this.#failing.size > 0) {
      const given = this.#pots.filter(
        (pot) => pot.isRounded && pot.people.some((person) => this.#failing.has(person)),
      );
      this.#failing.clear();
      const text = "the pot stays in exact amounts: in measurable ones, what must hold for someone would not";
      for (const pot of given) pot.leave(text);
      for (const person of new Set(given.flatMap(({ people }) => people))) this.measureFor(person);
    }
  }

  /** Portions as they were measured, by person. */
  portions(): ReadonlyMap<string, ServedPortion> {
    return new Map(
      [...this.#plates].map(([person, { served, measured }]) => [person, served.measuredAs(measured)]),
    );
  }

  /** Who eats of one pot, and how it was measured, by dish. */
  groups(portions: ReadonlyMap<string, ServedPortion>): ReadonlyMap<string, readonly EaterGroup[]> {
    return new Map(
      [...this.#groups].map(([dish, groups]) => [
        dish,
        groups.map((group): EaterGroup => {
          const pot = this.#pots.find((each) => each.group === group);
          const eaters = group.eaters.map((eater) => portions.get(eater.person)?.eating(dish) ?? eater);
          return { ...group, eaters, ...(pot && { measured: pot.measured }) };
        }),
      ]),
    );
  }

  #groupsOf(dish: string): readonly EaterGroup[] {
    const base = this.#meal.dishes.get(dish);
    const eaters = [...this.#plates.values()].flatMap(({ served }) => served.eating(dish) ?? []);
    return base ? potGroups(base, eaters) : [];
  }

  #potsOf(dish: string, groups: readonly EaterGroup[]): readonly SharedPot[] {
    const base = this.#meal.dishes.get(dish);
    if (!base) return [];
    return groups
      .filter(({ pot }) => pot.length > 0)
      .map((group) => {
        const pot = new SharedPot(dish, base, group);
        for (const person of pot.people) this.#plates.get(person)?.pots.push(pot);
        return pot;
      });
  }
}
