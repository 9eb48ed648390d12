import { byName, coded, optional, type Shape } from "../../document/schema.ts";
import { share } from "../../measure/share.ts";
import { type Fault, type Path, quote } from "../../number/error.ts";
import { type Exact, fraction, ONE, sum } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { ReadDemand } from "../../scale/engine/readDemand.ts";
import { demandsSchema, readDemands } from "../../scale/fit/demands.ts";
import type { ReadBody } from "./readBody.ts";
import type { MealNames } from "./readMenu.ts";

/** What someone's days are to bring. */
export interface ReadDaily {
  readonly path: Path;
  readonly demands: readonly ReadDemand[];
  /** By the meal's id in the plan: those that were told. */
  readonly shares: ReadonlyMap<string, Exact>;
  /** How far a meal may be from its share, as a part of it. */
  readonly band: Exact;
  /** What one meal must bring beside, by its id in the plan. */
  readonly limits: ReadonlyMap<string, readonly ReadDemand[]>;
}

/** The fields that speak of a person's days, as they are read. */
export interface DailyFields {
  readonly daily?: readonly ReadDemand[];
  readonly shares?: { readonly [meal: string]: Exact };
  readonly shareBand?: Exact;
  readonly limits?: { readonly [meal: string]: readonly ReadDemand[] };
}

/** The schemas of those fields. */
export function dailyShape(): Shape<DailyFields> {
  return {
    daily: optional(coded("target-malformed", demandsSchema())),
    shares: optional(coded("shares-impossible", byName(share(), { like: '{ breakfast: "25 %" }' }))),
    shareBand: optional(share()),
    limits: optional(byName(demandsSchema(), { like: '{ supper: [{ of: "sodium", most: "800 mg" }] }' })),
  };
}

/** Of a share, either way. */
const TENTH: Exact = /* @__PURE__ */ fraction(1n, 10n);

/** What else of a person decides whether days are fitted. */
export interface Beside {
  readonly body: ReadBody | undefined;
  /** Whether anything is asked meal by meal, and in which field. */
  readonly byMeal: "demands" | "byMeal" | undefined;
}

/** Reads on from those fields; nothing where they say nothing, and meals are planned one by one. */
export function readDaily(
  faults: Fault[],
  { daily, shares, shareBand, limits }: DailyFields,
  path: Path,
  meals: MealNames,
  { body, byMeal }: Beside,
): ReadDaily | undefined {
  const given = { daily, shares, shareBand, limits };
  const [said] = Object.entries(given).flatMap(([field, value]) => (value === undefined ? [] : [field]));
  const aimed = body?.target;
  const refuse = (field: string, message: string, hint: string, ...at: Path): void => {
    faults.push({ code: "plan-malformed", path: [...path, field, ...at], message, hint });
  };
  if (byMeal) {
    if (said) refuse(said, `both ${said} and ${byMeal}`, "ask for days, or meal by meal: leave one out");
    return undefined;
  }
  if (daily && aimed) refuse("daily", "both an aim and daily demands", "leave one of them out");
  // An aim beside the meals of one day is what a card's shares of a day are of, and no more.
  if (!said && !(aimed && meals.days.length > 0)) return undefined;
  const told = byMealId(shares ?? {}, meals, (name) =>
    faults.push(meals.unknown(name, [...path, "shares", name])),
  );
  const demanded = byMealId(limits ?? {}, meals, (name) =>
    faults.push(meals.unknown(name, [...path, "limits", name])),
  );
  for (const day of meals.byDay) {
    const total = sum(day.flatMap((meal) => told.get(meal) ?? []));
    const open = day.filter((meal) => !told.has(meal));
    const isOver = compareRatios(total, ONE) > 0;
    if (!isOver && (open.length === 0 || open.length === day.length || compareRatios(total, ONE) < 0))
      continue;
    const left = open.map((meal) => quote(meal)).join(", ");
    const message = isOver
      ? "shares of a day that total more than 1"
      : `shares that leave nothing for ${left}`;
    faults.push({
      code: "shares-impossible",
      path: [...path, "shares"],
      message,
      hint: "let them add up to 1",
    });
    break;
  }
  return {
    path: [...path, daily ? "daily" : aimed ? "aim" : "shares"],
    demands: daily ?? (aimed ? readDemands(aimed.demands) : []),
    shares: told,
    band: shareBand ?? TENTH,
    limits: demanded,
  };
}

/** What is said of one day's meal wins over what is said of every day's. */
export function byMealId<T>(
  given: { readonly [meal: string]: T },
  meals: MealNames,
  unknown: (name: string) => void,
): ReadonlyMap<string, T> {
  const all = Object.entries(given).map(([name, value]) => ({ name, value, named: meals.meals(name) }));
  for (const { name, named } of all) if (named.length === 0 && meals.ids.length > 0) unknown(name);
  const found = new Map<string, T>();
  for (const { value, named } of all.sort((a, b) => b.named.length - a.named.length)) {
    for (const meal of value === undefined ? [] : named) found.set(meal, value);
  }
  return found;
}
