import type { Decimal } from "decimal.js";
import { fraction, toDecimal } from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { PlannedDish } from "../dish.ts";
import type { Serving } from "../pot.ts";
import type { Days } from "./days.ts";
import type { Eating } from "./eating.ts";
import { linesAdded } from "./session.ts";

/** What one person is served of a dish, each time they eat of it: their share, and what is added to it then. */
export interface DishServing {
  readonly meal: string;
  readonly dish: string;
  readonly person: string;
  /** The days on which they eat of it, in order; empty where the schedule names none. */
  readonly days: readonly string[];
  /** Portions in all. */
  readonly count: Decimal;
  readonly exactCount: bigint;
  /** One portion: the share of the pot, in grams as cooked and where it can be told in millilitres. */
  readonly portion: Pick<
    Serving,
    "pot" | "grams" | "exactGrams" | "weighed" | "millilitres" | "exactMillilitres"
  >;
  /** What is added to one portion when it is served, uncooked; nothing where nothing is. */
  readonly added: Sheet | undefined;
}

/** Each person's servings of a dish over all days; nobody who never eats of it. */
export function servingsOf(dish: PlannedDish, eating: Eating, days: Days): readonly DishServing[] {
  return dish.servings.flatMap((serving): DishServing[] => {
    const { person, added } = serving;
    const own = eating.daysOf(person);
    const exactCount = eating.servings(person) * BigInt(own.length);
    if (exactCount === 0n) return [];
    return [
      {
        meal: dish.meal,
        dish: dish.name,
        person,
        days: own.flatMap((day) => days.names[day] ?? []),
        count: toDecimal(fraction(exactCount)),
        exactCount,
        portion: serving,
        get added() {
          return added && linesAdded(added, "serving");
        },
      },
    ];
  });
}
