import { exactText } from "../number/digits.ts";
import { type Exact, fraction, over, times } from "../number/exact.ts";
import type { PlannedDish } from "../plan/dish.ts";
import type { PartServing } from "../plan/share/parts.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Days } from "./days.ts";
import { hasNested } from "./drawn.ts";
import type { EatingSpan } from "./eating.ts";
import type { Lot, LotPortion } from "./lot.ts";
import { isMeasured, type Lots } from "./lots.ts";
import type { ScheduledMeal } from "./read.ts";
import { linesAdded } from "./session.ts";

/**
 * What one person is served of a dish, each time they eat of it: their share, and what is added to it
 * then. Where a kitchen measures what is cooked, shares of it may differ from day to day: there is one
 * for each size.
 */
export interface DishServing {
  readonly meal: string;
  readonly dish: string;
  readonly person: string;
  /** The days on which they eat of it, in order; empty where the schedule names none. */
  readonly days: readonly string[];
  /** Portions in all. */
  readonly count: Exact;
  /** One portion: the share of the pot, in grams as cooked and where it can be told in millilitres. */
  readonly portion: Pick<PartServing, "pot" | "grams" | "weighed" | "isRest" | "millilitres">;
  /** What is added to one portion when it is served, uncooked; nothing where nothing is. */
  readonly added: Sheet | undefined;
}

/** What is made of dishes. */
export interface Work {
  /** What is cooked of a meal's dishes for the days of a span. */
  lots(scheduled: ScheduledMeal, span: EatingSpan): Lots;
  /** A dish as it is made of the batches at hand when it is cooked, and when it is served. */
  dish(dish: PlannedDish, cooked: number, served: number): PlannedDish;
}

/** Each person's servings of a dish over all days; nobody who never eats of it. */
export function servingsOf(
  dish: PlannedDish,
  scheduled: ScheduledMeal,
  days: Days,
  work: Work,
): readonly DishServing[] {
  const isSized = isMeasured(dish) || hasNested(dish.base());
  return dish.servings.flatMap((serving) => {
    const { person } = serving;
    const { eating } = scheduled;
    const own = eating.daysOf(person);
    const count = eating.servings(person) * BigInt(own.length);
    if (count === 0n) return [];
    const sizes = isSized
      ? sizesOf(dish, person, scheduled, work)
      : [{ serving, portion: planned(serving, false), days: own, count }];
    return sizes.map((size) => servingOf(dish, size, days, scheduled));
  });
}

/** Portions of one size, and the days on which they are eaten. */
interface Size {
  readonly serving: PartServing;
  readonly portion: DishServing["portion"];
  readonly days: readonly number[];
  readonly count: bigint;
}

function servingOf(
  dish: PlannedDish,
  { serving: { person, added }, portion, days: own, count }: Size,
  days: Days,
  { who }: ScheduledMeal,
): DishServing {
  return {
    ...who(person),
    dish: dish.name,
    days: own.flatMap((day) => days.names[day] ?? []),
    count: fraction(count),
    portion,
    get added() {
      return added && linesAdded(added, "serving");
    },
  };
}

/** The plan's own portion. It is what others leave only where each of them takes one. */
function planned(serving: PartServing, isOnce: boolean): DishServing["portion"] {
  return {
    pot: serving.pot,
    weighed: serving.weighed,
    isRest: isOnce && serving.isRest,
    get grams() {
      return serving.grams;
    },
    get millilitres() {
      return serving.millilitres;
    },
  };
}

/** Someone's portions by their size, in the order in which they are first eaten. */
function sizesOf(dish: PlannedDish, person: string, scheduled: ScheduledMeal, work: Work): readonly Size[] {
  const { eating, spans } = scheduled;
  const each = eating.servings(person);
  const found = new Map<string, Size & { days: number[]; count: bigint }>();
  const made: PlannedDish[] = [];
  for (const span of spans) {
    const own = eating.daysOf(person, span.eaten);
    if (own.length === 0) continue;
    const lots = work.lots(scheduled, span);
    const serving = lots.dish(dish.name)?.serving(person) ?? dish.serving(person);
    const lot = serving.pot && lots.lot(serving.pot);
    for (const { day, count, portion } of inTurn(serving, lot, own, each)) {
      const { grams, isRest, weighed } = portion;
      // What is added may be of another batch than what was cooked.
      const plated = work.dish(dish, span.cooked, day);
      const place = made.includes(plated) ? made.indexOf(plated) : made.push(plated) - 1;
      const key = [exactText(grams), isRest, weighed !== undefined, count, place].join(" ");
      const size = found.get(key) ?? { serving: plated.serving(person), portion, days: [], count: 0n };
      size.days.push(day);
      size.count += count;
      found.set(key, size);
    }
  }
  return [...found.values()];
}

interface Turn {
  readonly day: number;
  readonly count: bigint;
  readonly portion: DishServing["portion"];
}

/** Day by day, the portions of a lot that fall to it. */
function inTurn(
  serving: PartServing,
  lot: Lot | undefined,
  days: EatingSpan["eaten"],
  each: bigint,
): readonly Turn[] {
  const own = lot?.portions?.get(serving.person);
  if (!own || !lot) {
    const isOnce = lot?.sheet.values.portions.n === BigInt(serving.pot?.people.length ?? 0);
    const portion = planned(serving, isOnce);
    return days.map((day) => ({ day, count: each, portion }));
  }
  const left = own.map((size) => ({ portion: portionOf(serving, lot, size), count: size.count }));
  return days.flatMap((day) => {
    const turns: Turn[] = [];
    let wanted = each;
    while (wanted > 0n && left[0]) {
      const [size] = left;
      const isAll = size.count <= wanted;
      const count = isAll ? size.count : wanted;
      turns.push({ day, count, portion: size.portion });
      size.count -= count;
      wanted -= count;
      if (isAll) left.shift();
    }
    return turns;
  });
}

/** A share of what is cooked, told as the plan tells it. */
function portionOf(serving: PartServing, { sheet }: Lot, size: LotPortion): DishServing["portion"] {
  const grams = times(sheet.masses.cooked, size.share);
  const perGram = volumeOfGram(serving);
  return {
    pot: serving.pot,
    grams,
    millilitres: perGram && times(grams, perGram),
    weighed: size.weighed,
    isRest: size.isRest,
  };
}

/** Millilitres of a gram; nothing where the plan was told none. */
function volumeOfGram({ millilitres, grams }: PartServing): Exact | undefined {
  return millilitres && grams.n !== 0n ? over(millilitres, grams) : undefined;
}
