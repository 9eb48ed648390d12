import type { Kitchen } from "../../measure/kitchen.ts";
import { type Fault, type Path, quote, SteelyardError } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";
import { readWishes, type Wish } from "../../scale/round/wish.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { ReadMeal } from "./readMeal.ts";

/** By what lines are wished to be measured, by meal, dish and key. */
export class LineWishes {
  readonly #all: readonly Wished[];

  constructor(all: readonly Wished[] = []) {
    this.#all = all;
  }

  /** The wishes for a dish, by its lines' keys. */
  of(meal: string, dish: string): ReadonlyMap<string, Wish> {
    const own = this.#all.filter((each) => each.meal === meal && each.dish === dish);
    return new Map(own.map(({ key, wish }) => [key, wish]));
  }

  /** These and others, of which those win. */
  with(others: LineWishes): LineWishes {
    return new LineWishes([...this.#all, ...others.#all]);
  }
}

interface Place {
  readonly meal: string;
  readonly dish: string;
  readonly key: string;
  readonly sheet: Sheet;
}

interface Wished extends Omit<Place, "sheet"> {
  readonly wish: Wish;
}

/**
 * Reads wishes by line: a key by itself speaks of that line in every dish, `dish/key` of those of one name,
 * `meal/dish/key` of one; the narrower wins.
 */
export function readLineWishes(
  faults: Fault[],
  given: Readonly<Record<string, string>> | undefined,
  path: Path,
  { meals, kitchen }: { readonly meals: readonly ReadMeal[]; readonly kitchen: Kitchen | undefined },
): LineWishes {
  if (given === undefined) return new LineWishes();
  if (!kitchen) {
    const message = "wishes for a kitchen that there is not";
    faults.push({ code: "plan-malformed", path, message, hint: "give a kitchen, or leave lines out" });
    return new LineWishes();
  }
  const places = placesIn(meals);
  const read = Object.entries<string | undefined>(given).map(([name, wish]) => {
    const found = places.get(name) ?? [];
    if (found.length === 0) faults.push(unknownLine(name, places, [...path, name]));
    const wished = wish === undefined ? [] : wishedOf(faults, found, wish, [...path, name], kitchen);
    return { count: found.length, wished };
  });
  return new LineWishes(read.sort((a, b) => b.count - a.count).flatMap(({ wished }) => wished));
}

function unknownLine(name: string, places: ReadonlyMap<string, unknown>, path: Path): Fault {
  const hint = didYouMean(name, places.keys(), "use a key from .lines, after its dish's name where several");
  return { code: "line-unknown", path, message: `there is no line ${quote(name)}`, hint };
}

/** Every line, under each name that it can be wished for by. */
function placesIn(meals: readonly ReadMeal[]): ReadonlyMap<string, readonly Place[]> {
  const named = new Map<string, Place[]>();
  for (const { id, dishes } of meals) {
    for (const [dish, sheet] of dishes) {
      for (const { line } of sheet.plan.lines) {
        const { key } = line;
        const names = [
          key,
          `${dish}/${key}`,
          `${id}/${dish}/${key}`,
          ...(dishes.size > 1 ? [] : [`${id}/${key}`]),
        ];
        for (const name of new Set(names)) {
          named.set(name, [...(named.get(name) ?? []), { meal: id, dish, key, sheet }]);
        }
      }
    }
  }
  return named;
}

/** What is wrong with a wish is told once, however many lines it speaks of. */
function wishedOf(
  faults: Fault[],
  places: readonly Place[],
  wish: string,
  path: Path,
  kitchen: Kitchen,
): readonly Wished[] {
  const wished: Wished[] = [];
  for (const { sheet, ...place } of places) {
    try {
      const read = readWishes({ [place.key]: wish }, [{ name: undefined, sheet }], kitchen).get(place.key);
      if (read) wished.push({ ...place, wish: read });
    } catch (error) {
      if (!(error instanceof SteelyardError)) throw error;
      faults.push(...error.faults.map((each) => ({ ...each, path })));
      return [];
    }
  }
  return wished;
}
