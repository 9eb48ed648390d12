import type { Exact } from "../number/exact.ts";
import type { PlannedDish } from "../plan/dish.ts";
import type { PlannedMeal } from "../plan/planned.ts";
import type { EaterGroup } from "../plan/share/groups.ts";
import type { Pot } from "../plan/share/parts.ts";
import type { Draw } from "./draw.ts";
import { exactLot, type Lot, type LotOf, type LotPortion } from "./lot.ts";
import { Measuring, type PersonDrift } from "./measuring.ts";
import type { ReadVessel } from "./readMeal.ts";

/** A dish's pots with who eats of them. */
export function potsOf(
  dish: PlannedDish,
): readonly { readonly pot: Pot; readonly group: EaterGroup; readonly number: number }[] {
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

/** All that is cooked of a meal's dishes at once. */
export class Lots {
  readonly #lots: ReadonlyMap<Pot, LotOf>;
  readonly #made = new Map<Pot, Lot>();
  readonly #dishes: ReadonlyMap<string, PlannedDish>;
  readonly #before: ReadonlyMap<string, PlannedDish>;
  readonly #counts: ReadonlyMap<string, bigint>;
  readonly #isMeasured: boolean;
  #measuring: Measuring | undefined;

  constructor({ meal, dishes, counts, made, draws, vessel, keeps }: LotsOf) {
    this.#counts = counts;
    this.#before = meal.dishes;
    this.#dishes = new Map([...meal.dishes].map(([name, dish]) => [name, made(dish)]));
    const own = dishes.flatMap(({ name }) => this.#dishes.get(name) ?? []);
    this.#isMeasured = own.some(isMeasured);
    this.#lots = new Map(
      own.flatMap((dish) =>
        potsOf(dish).flatMap(({ pot, group, number }): [Pot, LotOf][] => {
          const counts = new Map(pot.people.flatMap((person) => this.#portions(person)));
          if (counts.size === 0) return [];
          const drawn = draws(dish)?.(number);
          return [
            [
              pot,
              {
                dish,
                group,
                pot,
                counts,
                vessel: vessel(dish.name),
                ...(drawn && { draws: drawn }),
                ...(keeps && { keeps }),
              },
            ],
          ];
        }),
      ),
    );
  }

  /** A dish as it is made of the batches at hand. */
  dish(name: string): PlannedDish | undefined {
    return this.#dishes.get(name);
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
    return this.#isMeasured ? this.#measured.drifts : [];
  }

  /** Makes every lot, so that batches know what is taken of them. */
  makeAll(): void {
    for (const pot of this.#lots.keys()) this.lot(pot);
  }

  get #measured(): Measuring {
    const at = { dishes: this.#dishes, before: this.#before, counts: this.#counts };
    this.#measuring ??= new Measuring({ ...at, lots: [...this.#lots.values()] });
    return this.#measuring;
  }

  #portions(person: string): readonly (readonly [string, bigint])[] {
    const count = this.#counts.get(person);
    return count === undefined ? [] : [[person, count]];
  }
}

/** What is cooked at once, for how many portions of each person. */
export interface LotsOf {
  readonly meal: PlannedMeal;
  /** Those that are cooked now; others are on the plate as they were planned. */
  readonly dishes: readonly PlannedDish[];
  readonly counts: ReadonlyMap<string, bigint>;
  readonly made: (dish: PlannedDish) => PlannedDish;
  readonly draws: (dish: PlannedDish) => ((pot: number) => ReadonlyMap<number, Draw>) | undefined;
  readonly vessel: (dish: string) => ReadVessel | undefined;
  readonly keeps?: ((eater: string, factors: readonly Exact[]) => boolean) | undefined;
}
