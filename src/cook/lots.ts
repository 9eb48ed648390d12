import type { PlannedDish } from "../plan/dish.ts";
import type { PlannedMeal } from "../plan/planned.ts";
import type { Group } from "../plan/share/groups.ts";
import type { Pot } from "../plan/share/parts.ts";
import { exactLot, type Lot, type LotOf, type LotPortion } from "./lot.ts";
import { Measuring, type PersonDrift } from "./measuring.ts";
import type { ReadVessel } from "./readMeal.ts";

/** A dish's pots with who eats of them. */
export function potsOf(
  dish: PlannedDish,
): readonly { readonly pot: Pot; readonly group: Group; readonly number: number }[] {
  const groups = dish.groups().filter(({ by }) => by !== undefined);
  return dish.pots.flatMap((pot, i) => {
    const group = groups[i];
    return group ? [{ pot, group, number: i + 1 }] : [];
  });
}

/** Whether a kitchen measured some pot of a dish, and so measures its lots. */
export function isMeasured(dish: PlannedDish): boolean {
  return dish.groups().some(({ measured }) => measured?.asked !== undefined);
}

/** A meal's pots, made once for each set of portions that is eaten of it. */
export class MealLots {
  readonly #meal: PlannedMeal;
  readonly #vessel: (dish: string) => ReadVessel | undefined;
  readonly #made = new Map<string, Lots>();

  constructor(meal: PlannedMeal, vessel: (dish: string) => ReadVessel | undefined) {
    this.#meal = meal;
    this.#vessel = vessel;
  }

  /** For so many portions of each person. */
  of(counts: ReadonlyMap<string, bigint>): Lots {
    const key = JSON.stringify([...counts].map(([person, count]) => [person, String(count)]));
    const made = this.#made.get(key) ?? new Lots(this.#meal, counts, this.#vessel);
    this.#made.set(key, made);
    return made;
  }
}

/** All that is cooked of a meal at once. */
export class Lots {
  readonly #lots: ReadonlyMap<Pot, LotOf>;
  readonly #made = new Map<Pot, Lot>();
  readonly #meal: PlannedMeal;
  readonly #counts: ReadonlyMap<string, bigint>;
  #measuring: Measuring | undefined;

  constructor(
    meal: PlannedMeal,
    counts: ReadonlyMap<string, bigint>,
    vessel: (dish: string) => ReadVessel | undefined,
  ) {
    this.#meal = meal;
    this.#counts = counts;
    this.#lots = new Map(
      [...meal.dishes.values()].flatMap((dish) =>
        potsOf(dish).flatMap(({ pot, group }): [Pot, LotOf][] => {
          const own = new Map(pot.people.flatMap((person) => this.#portions(person)));
          return own.size === 0 ? [] : [[pot, { dish, group, pot, counts: own, vessel: vessel(dish.name) }]];
        }),
      ),
    );
  }

  /** Who eats of a pot, and how many portions; nobody where none is cooked. */
  counts(pot: Pot): ReadonlyMap<string, bigint> {
    return this.#lots.get(pot)?.counts ?? new Map();
  }

  /** Of a pot that somebody eats of. */
  lot(pot: Pot): Lot | undefined {
    const of = this.#lots.get(pot);
    if (!of) return undefined;
    const lot = this.#made.get(pot) ?? (of.group.measured?.asked ? this.#measured.lots.get(pot) : undefined);
    const made = lot ?? exactLot(of);
    this.#made.set(pot, made);
    return made;
  }

  /** What someone takes of a pot; nothing where that is what was planned. */
  portions(pot: Pot, person: string): readonly LotPortion[] | undefined {
    return this.lot(pot)?.portions?.get(person);
  }

  /** What measuring does to each person's portions of the meal; empty where nothing is measured. */
  get drifts(): readonly PersonDrift[] {
    return [...this.#meal.dishes.values()].some(isMeasured) ? this.#measured.drifts : [];
  }

  get #measured(): Measuring {
    this.#measuring ??= new Measuring(this.#meal, this.#counts, [...this.#lots.values()]);
    return this.#measuring;
  }

  #portions(person: string): readonly (readonly [string, bigint])[] {
    const count = this.#counts.get(person);
    return count === undefined ? [] : [[person, count]];
  }
}
