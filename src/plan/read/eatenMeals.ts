import type { Sheet } from "../../sheet/sheet.ts";
import { mealWith, type ReadMeal } from "./readMeal.ts";
import type { OwnSheets } from "./readVersions.ts";
import { type PooledVersions, poolVersions, type Versions } from "./versions.ts";

/** A meal as one person eats it. */
export interface EatenMeal {
  /** With their own sheets: what they are fitted to. */
  readonly meal: ReadMeal;
  /** Their versions of its dishes, where somebody has one of their own; nothing where nobody has. */
  readonly versions: Versions | undefined;
}

/** A meal for everyone: its dishes hold the lines of all versions. */
export interface PooledMeal {
  readonly meal: ReadMeal;
  readonly isVaried: boolean;
  /** Of those who have no version of their own. */
  readonly usual: Versions | undefined;
  readonly eatenBy: (person: string) => EatenMeal;
}

/** Pools what people eat instead with the dishes of a menu. A dish that is served again is pooled once. */
export function pooledMeals(
  meals: readonly ReadMeal[],
  own: ReadonlyMap<string, OwnSheets>,
): readonly PooledMeal[] {
  const known = new Map<Sheet, Map<string, PooledVersions>>();
  const ids = new Map<Sheet, number>();
  const idOf = (s: Sheet): number => {
    if (!ids.has(s)) ids.set(s, ids.size);
    return ids.get(s) ?? 0;
  };
  const poolOf = (base: Sheet, versions: readonly Sheet[]): PooledVersions => {
    const all = known.get(base) ?? new Map<string, PooledVersions>();
    known.set(base, all);
    const id = versions.map(idOf).join(" ");
    const made = all.get(id) ?? poolVersions(base, versions);
    all.set(id, made);
    return made;
  };
  return meals.map((meal) => pooledMeal(meal, own, poolOf));
}

function pooledMeal(
  meal: ReadMeal,
  own: ReadonlyMap<string, OwnSheets>,
  poolOf: (base: Sheet, versions: readonly Sheet[]) => PooledVersions,
): PooledMeal {
  const mine = new Map([...own].flatMap(([person, all]) => [[person, all.get(meal.id)] as const]));
  const isVaried = [...mine.values()].some((sheets) => sheets !== undefined);
  if (!isVaried) return { meal, isVaried, usual: undefined, eatenBy: () => ({ meal, versions: undefined }) };
  const pools = new Map(
    [...meal.dishes].map(([dish, base]) => {
      const versions = new Set([...mine.values()].flatMap((sheets) => sheets?.get(dish) ?? []));
      return [dish, poolOf(base, [...versions])] as const;
    }),
  );
  const apart = dishesApart(meal, mine, pools);
  const all = new Map([...meal.dishes].map(([dish, base]) => [dish, pools.get(dish)?.all ?? base]));
  for (const [s, name] of apart) all.set(name, s);
  const usual: Versions = new Map(
    [...meal.dishes].flatMap(([dish, base]) => {
      const version = pools.get(dish)?.versions.get(base);
      return version ? [[dish, version] as const] : [];
    }),
  );
  const eatenBy = (person: string): EatenMeal => {
    const sheets = mine.get(person);
    if (!sheets) return { meal, versions: usual };
    const versions = new Map(usual);
    const dishes = new Map<string, Sheet>();
    for (const [dish, base] of meal.dishes) {
      const s = sheets.get(dish) ?? base;
      const name = apart.get(s) ?? dish;
      const version = pools.get(dish)?.versions.get(s);
      dishes.set(name, s);
      versions.delete(dish);
      if (version && name === dish) versions.set(dish, version);
    }
    return { meal: mealWith(meal, dishes), versions };
  };
  const eaten = new Map([...own.keys()].map((person) => [person, eatenBy(person)]));
  return {
    meal: mealWith(meal, all),
    isVaried,
    usual,
    eatenBy: (person) => eaten.get(person) ?? { meal, versions: usual },
  };
}

/** What is no version of the dish that it stands for is a dish of its own, by its recipe's name. */
function dishesApart(
  meal: ReadMeal,
  mine: ReadonlyMap<string, ReadonlyMap<string, Sheet> | undefined>,
  pools: ReadonlyMap<string, PooledVersions>,
): ReadonlyMap<Sheet, string> {
  const taken = new Set(meal.dishes.keys());
  const apart = new Map<Sheet, string>();
  for (const sheets of mine.values()) {
    for (const [dish, s] of sheets ?? []) {
      if (pools.get(dish)?.versions.has(s) || apart.has(s)) continue;
      let name = s.name;
      for (let n = 2; taken.has(name); n += 1) name = `${s.name} (${n})`;
      taken.add(name);
      apart.set(s, name);
    }
  }
  return apart;
}
