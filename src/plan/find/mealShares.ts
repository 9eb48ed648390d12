import {
  type Exact,
  fraction,
  greatest,
  isZero,
  least,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";

/** What a meal brings of energy to one portion, as written. */
export interface MealEnergy {
  readonly id: string;
  /** What stays as it is: lines that are the same for everyone, and what is eaten besides. */
  readonly fixed: Exact;
  /** What moves with the meal. */
  readonly moving: Exact;
  /** The share that was told. */
  readonly told: Exact | undefined;
  readonly isAway: boolean;
  /** Whether what is eaten instead, elsewhere, is told. */
  readonly isLogged: boolean;
}

/** Which share of a day each meal is to bring. */
export interface DayShares {
  /** Of the day's energy as it is eaten in the plan, by meal; those that are eaten elsewhere left out. */
  readonly shares: ReadonlyMap<string, Exact>;
  /** Whether what is eaten besides any meal counts in what they are shares of. */
  readonly countsBesides: boolean;
  /** How much of the whole day is eaten in the plan. */
  readonly eaten: Exact;
}

/**
 * Tells what share of a day each meal is to bring. Shares that were told are taken as they are; other
 * meals share what is left as they are written. Where all were told and total less than 1, the rest is
 * what is eaten besides; nothing of that, and the meals make up the whole.
 */
export function sharesOf(meals: readonly MealEnergy[], besides: Exact): DayShares {
  const told = sum(meals.flatMap((meal) => meal.told ?? []));
  const open = meals.filter((meal) => meal.told === undefined);
  const written = sum(open.map(energyOf));
  const countsBesides = open.length === 0 && compareRatios(told, ONE) < 0 && !isZero(besides);
  const left = minus(ONE, told);
  const shareOf = (meal: MealEnergy): Exact => {
    if (meal.told) return open.length === 0 && !countsBesides ? over(meal.told, told) : meal.told;
    return isZero(written)
      ? over(left, fraction(BigInt(open.length)))
      : times(left, over(energyOf(meal), written));
  };
  const there = meals.filter(({ isAway }) => !isAway);
  const missed = sum(meals.filter(({ isAway, isLogged }) => isAway && !isLogged).map(shareOf));
  const eaten = minus(ONE, missed);
  // Beside a meal that was told, those of the plan share what it leaves, whatever that is.
  const isLogged = meals.some((meal) => meal.isLogged);
  const whole = isLogged ? sum(there.map(shareOf)) : eaten;
  return {
    shares: new Map(there.map((meal) => [meal.id, isZero(whole) ? ZERO : over(shareOf(meal), whole)])),
    countsBesides: countsBesides && !isLogged,
    eaten,
  };
}

function energyOf({ fixed, moving }: MealEnergy): Exact {
  return plus(fixed, moving);
}

const TENTH: Exact = /* @__PURE__ */ fraction(1n, 10n);
const TEN: Exact = /* @__PURE__ */ fraction(10n);

/** What a meal's dishes are multiplied by to bring so much energy, a tenth to ten times. */
export function factorTo(energy: Exact, { fixed, moving }: MealEnergy): Exact {
  if (isZero(moving)) return ONE;
  return least(TEN, greatest(TENTH, over(minus(energy, fixed), moving)));
}
