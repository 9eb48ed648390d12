import { type EnergySystem, energySystems } from "../../food/energy.ts";
import type { Exact } from "../../number/exact.ts";
import { fraction, isZero, minus, ONE, over, plus, sum, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { compareText } from "../../number/text.ts";
import { type AskedDemand, broughtBy, withinDishes } from "../../scale/engine/brought.ts";
import type { ByLine, Dish } from "../../scale/engine/model.ts";
import type { ReadDemand, Subject } from "../../scale/engine/readDemand.ts";
import type { MealEnergyShare, Task } from "../../scale/engine/task.ts";
import { splitOf } from "../../scale/linear.ts";
import type { SubjectFigures } from "../../scale/round/heldBefore.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { EatenBeside } from "../read/readBesides.ts";
import type { ReadDaily } from "../read/readDaily.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import type { ReadDay } from "../read/readMenu.ts";
import { type DayShares, factorTo, type MealEnergy, sharesOf } from "./mealShares.ts";

/** Something that is eaten that day besides what the plan serves. */
export interface BesideOfDay {
  readonly name: string;
  readonly sheet: Sheet;
  /** The meal that it counts in; of no meal where there is none. */
  readonly meal: string | undefined;
}

/** What someone eats on a day besides, and of which meal. */
export function besidesOf(besides: readonly EatenBeside[], day: ReadDay): readonly BesideOfDay[] {
  return besides
    .filter(({ days, meals }) =>
      days ? days.includes(day.id) : meals.length === 0 || day.meals.some((id) => meals.includes(id)),
    )
    .map(({ name, sheet, meals }) => ({ name, sheet, meal: day.meals.find((id) => meals.includes(id)) }));
}

/** A dish of a day: which meal's it is, if it is the plan's. */
export interface DayDish extends Dish {
  readonly name: string;
  readonly meal: string | undefined;
  /** Its name in the meal; nothing where it is eaten besides. */
  readonly own: string | undefined;
}

/** A person's day, to be solved as one. */
export interface DayTask {
  readonly task: Task;
  readonly dishes: readonly DayDish[];
  readonly shares: DayShares;
  readonly system: EnergySystem;
  /** What is asked of the day, in the order of the task; then of its meals. */
  readonly demands: readonly ReadDemand[];
  readonly limits: ReadonlyMap<string, readonly ReadDemand[]>;
}

/** Of all the meals of a day, one portion of each dish, in the order of their names, and what is eaten besides. */
export function dishesOfDay(meals: readonly ReadMeal[], besides: readonly BesideOfDay[]): readonly DayDish[] {
  const own = meals.flatMap(({ id, own, together }) =>
    together.map(({ name, sheet }): DayDish => {
      const path = name === undefined ? own.id : `${own.id}/${name}`;
      return { name: path, sheet, meal: id, own: name ?? own.id };
    }),
  );
  const eaten = besides.map(({ name, sheet, meal }, i): DayDish => {
    return { name: `besides/${name}/${i}`, sheet, meal, own: undefined, isFixed: true };
  });
  return [...own, ...eaten].sort((a, b) => compareText(a.name, b.name));
}

/**
 * Lays out a day as one fit: each dish first multiplied so that its meal brings its share of the day's
 * energy, in closed form, so that departures count from there. `menu` are all meals of the day, of which
 * some may be eaten elsewhere: of what is asked the day then owes the rest.
 */
export function dayTaskOf(
  menu: readonly ReadMeal[],
  isAway: (meal: string) => boolean,
  daily: ReadDaily,
  given: readonly BesideOfDay[],
): DayTask {
  const there = menu.filter(({ id }) => !isAway(id));
  // A meal that was eaten elsewhere, and is told, is of no meal of the plan.
  const logged = new Set(given.flatMap(({ meal }) => (meal !== undefined && isAway(meal) ? [meal] : [])));
  const besides = given.map((each) =>
    each.meal !== undefined && logged.has(each.meal) ? { ...each, meal: undefined } : each,
  );
  const energies = menu.map((meal) => ({
    ...energyOf(meal, daily, besides, isAway(meal.id)),
    isLogged: logged.has(meal.id),
  }));
  const apart = sum(besides.flatMap((each) => (each.meal === undefined ? energyIn(each.sheet) : [])));
  const shares = sharesOf(energies, apart);
  const demands = daily.demands.map((demand) => partOf(demand, shares.eaten));
  const before = factorsBefore(energies, shares, demands, apart);
  const dishes = dishesOfDay(there, besides).map((dish): DayDish => {
    const by = dish.isFixed ? undefined : before.get(dish.meal ?? "");
    return by ? { ...dish, before: by } : dish;
  });
  const [first] = there;
  const system =
    there.find(({ fit }) => fit.system !== energySystems["atwater-general"])?.fit.system ?? first?.fit.system;
  if (!first || !system) throw new Error("a day without meals");
  const placesOf = (is: (dish: DayDish) => boolean): readonly number[] =>
    dishes.flatMap((dish, d) => (is(dish) ? [d] : []));
  const asked = demands.map(
    (demand): AskedDemand => ({ demand, brought: broughtBy(dishes, demand.subject, system) }),
  );
  const limits = new Map(there.map(({ id }) => [id, daily.limits.get(id) ?? []]));
  const limited = [...limits].flatMap(([meal, own]) => {
    const within = placesOf((dish) => dish.meal === meal);
    return own.map((demand): AskedDemand => {
      const brought = withinDishes(broughtBy(dishes, demand.subject, system), within);
      return { demand, brought, within };
    });
  });
  const energy = broughtBy(dishes, { kind: "amount", of: "energy" }, system);
  const per = withinDishes(
    energy,
    placesOf(({ meal }) => meal !== undefined || shares.countsBesides),
  ).value;
  const ofMeals = there.map(({ id, name }): MealEnergyShare => {
    const share = shares.shares.get(id) ?? ZERO;
    const value = withinDishes(
      energy,
      placesOf(({ meal }) => meal === id),
    ).value;
    const room = times(share, daily.band);
    const isTold = daily.shares.size > 0;
    return { name, share, value, per, ...(isTold && { least: minus(share, room), most: plus(share, room) }) };
  });
  return {
    task: {
      dishes,
      asked: [...asked, ...limited],
      ranges: { common: first.fit.ranges.common, parts: partsOf(there), base: undefined },
      pivots: first.fit.pivots,
      tries: undefined,
      shares: ofMeals,
    },
    dishes,
    shares,
    system,
    demands,
    limits,
  };
}

/** What of a subject is eaten besides the plan's meals. */
export function besidesIn({ dishes, system }: DayTask, subject: Subject): SubjectFigures {
  const places = dishes.flatMap(({ own }, d) => (own === undefined ? [d] : []));
  if (places.length === 0) return { value: ZERO, per: ZERO };
  const { value, per } = withinDishes(broughtBy(dishes, subject, system), places);
  const all = ({ lines, scale }: ByLine): Exact => {
    const total = lines.flat().reduce((a, b) => a + b, 0n);
    return fraction(total, scale);
  };
  return { value: all(value), per: per ? all(per) : ZERO };
}

/** Ranges that meals tell of their parts, by the names that these have in the day. */
function partsOf(meals: readonly ReadMeal[]): Task["ranges"]["parts"] {
  return new Map(
    meals.flatMap(({ own, fit }) =>
      [...fit.ranges.parts].map(([name, range]) => [`${own.id}/${name}`, range] as const),
    ),
  );
}

function energyOf(
  { id, together }: ReadMeal,
  { shares }: ReadDaily,
  besides: readonly BesideOfDay[],
  isAway: boolean,
): Omit<MealEnergy, "isLogged"> {
  const splits = together.map(({ sheet }) => splitOf(sheet, "energy"));
  const beside = besides.flatMap((each) => (each.meal === id ? energyIn(each.sheet) : []));
  return {
    id,
    fixed: sum([...splits.map(({ fixed }) => fixed), ...beside]),
    moving: sum(splits.map(({ moving }) => moving)),
    told: shares.get(id),
    isAway,
  };
}

function energyIn(s: Sheet): Exact {
  const { fixed, moving } = splitOf(s, "energy");
  return plus(fixed, moving);
}

/** What of a day's demand is left where some of the day is eaten elsewhere: shares of energy and ratios stay. */
function partOf(demand: ReadDemand, eaten: Exact): ReadDemand {
  if (demand.subject.kind !== "amount" || compareRatios(eaten, ONE) === 0) return demand;
  const { least, most } = demand;
  return { ...demand, least: least && times(least, eaten), most: most && times(most, eaten) };
}

/** What each meal is multiplied by to bring its share of the day's energy. */
function factorsBefore(
  energies: readonly MealEnergy[],
  { shares, countsBesides }: DayShares,
  demands: readonly ReadDemand[],
  apart: Exact,
): ReadonlyMap<string, Exact> {
  const there = energies.filter(({ isAway }) => !isAway);
  const written = plus(sum(there.flatMap(({ fixed, moving }) => [fixed, moving])), apart);
  const total = energyAsked(demands, written);
  const whole = countsBesides ? total : minus(total, apart);
  return new Map(there.map((meal) => [meal.id, factorTo(times(shares.get(meal.id) ?? ZERO, whole), meal)]));
}

/** The energy that a day is to have; as written where nothing is asked, or what is asked allows it. */
function energyAsked(demands: readonly ReadDemand[], written: Exact): Exact {
  const asked = demands.find(({ subject }) => subject.kind === "amount" && subject.of === "energy");
  if (!asked) return written;
  const { least, most } = asked;
  if (least && most) return over(plus(least, most), plus(ONE, ONE));
  if (least) return compareRatios(written, least) < 0 ? least : written;
  return most && compareRatios(written, most) > 0 && !isZero(most) ? most : written;
}
