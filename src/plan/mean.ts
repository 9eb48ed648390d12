import { type ComponentId, components } from "../food/components.ts";
import { type Exact, fraction, greatest, least, ONE, over, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { compareText } from "../number/text.ts";
import { ToldResult } from "../number/told.ts";
import { readEaten } from "../person/portion/eaten.ts";
import { moveLines } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { combine, NO_MARKS, Tally } from "../sheet/tally.ts";
import type { PersonDay } from "./day.ts";

/** Between what the least of several days lies, or the most; nothing for an end that nothing limits. */
export interface DayEnd {
  readonly least: Exact | undefined;
  readonly most: Exact | undefined;
  /** The day, where it is proven to be it. */
  readonly day: string | undefined;
}

/** A group of foods, on which days it is eaten, and which foods of it. */
export interface GroupEaten {
  readonly group: string;
  readonly days: readonly string[];
  readonly foods: readonly string[];
}

/** What a person eats on the mean of the days that are wholly eaten in the plan. */
export class PersonMean extends ToldResult {
  readonly person: string;
  /** The days that it is the mean of. */
  readonly days: readonly string[];
  /** Days that are not wholly eaten in the plan, and do not count. */
  readonly others: readonly string[];
  readonly #days: readonly PersonDay[];
  readonly #all: readonly PersonDay[];

  /** @internal Use `plan.mean`. */
  constructor(person: string, days: readonly PersonDay[]) {
    super();
    this.person = person;
    this.#all = days;
    this.#days = days.filter(({ isWhole }) => isWhole);
    this.days = this.#days.map(({ day }) => day);
    this.others = days.filter(({ isWhole }) => !isWhole).map(({ day }) => day);
  }

  /** What they eat on the mean, by `day/meal/dish`: what `compare` takes. */
  get dishes(): ReadonlyMap<string, Sheet> {
    const count = fraction(BigInt(this.#days.length));
    return new Map(
      this.#days.flatMap(({ day, dishes }) =>
        [...dishes].map(([name, s]) => [`${day}/${name}`, moveLines(s, [], count)] as const),
      ),
    );
  }

  /**
   * Which groups of foods they eat, and on which days, of all that are in the plan: plain counts. Foods
   * that say no group are left out.
   */
  get variety(): readonly GroupEaten[] {
    const found = new Map<string, { readonly days: Set<string>; readonly foods: Set<string> }>();
    for (const { day, dishes } of this.#all) {
      if (dishes.size === 0) continue;
      for (const { food } of readEaten(dishes, "plan-malformed").foods) {
        if (food.group === undefined) continue;
        const own = found.get(food.group) ?? { days: new Set(), foods: new Set() };
        own.days.add(day);
        own.foods.add(food.name);
        found.set(food.group, own);
      }
    }
    return [...found]
      .map(([group, { days, foods }]) => ({ group, days: [...days], foods: [...foods] }))
      .sort((a, b) => b.days.length - a.days.length || compareText(a.group, b.group));
  }

  /** The mean of a component over the days; unknown where there is none of them. */
  brings(id: ComponentId): Tally {
    const { unit } = components[id];
    if (this.#days.length === 0) return new Tally(0n, 1n, unit, NO_MARKS, () => ZERO, "unknown");
    const share = over(ONE, fraction(BigInt(this.#days.length)));
    return combine(
      unit,
      this.#days.map((each) => [each.brings(id).within(each.day), share]),
    );
  }

  /**
   * The least day of a component: the least of what each day can be at least, and the least of what each
   * can be at most.
   */
  least(id: ComponentId): DayEnd {
    const all = this.#ends(id);
    const lows = all.map(({ low }) => low);
    return {
      least: lows.includes(undefined) ? undefined : endOf(lows, least),
      most: endOf(
        all.map(({ high }) => high),
        least,
      ),
      day: all.find((own) => all.every((each) => isUnder(own.high, each === own ? own.high : each.low)))?.day,
    };
  }

  /** The most day of a component, likewise. */
  most(id: ComponentId): DayEnd {
    const all = this.#ends(id);
    const highs = all.map(({ high }) => high);
    return {
      least: endOf(
        all.map(({ low }) => low),
        greatest,
      ),
      most: highs.includes(undefined) ? undefined : endOf(highs, greatest),
      day: all.find((own) => all.every((each) => isUnder(each === own ? own.low : each.high, own.low)))?.day,
    };
  }

  #ends(
    id: ComponentId,
  ): readonly { readonly day: string; readonly low: Exact | undefined; readonly high: Exact | undefined }[] {
    return this.#days.map((each) => {
      const { low, high } = each.brings(id).ends;
      return { day: each.day, low, high };
    });
  }
}

function endOf(all: readonly (Exact | undefined)[], of: (a: Exact, b: Exact) => Exact): Exact | undefined {
  const known = all.flatMap((end) => end ?? []);
  return known.length === 0 ? undefined : known.reduce(of);
}

function isUnder(a: Exact | undefined, b: Exact | undefined): boolean {
  return a !== undefined && b !== undefined && compareRatios(a, b) <= 0;
}
