import { anyText, figureWritten, thing } from "../../document/leaves.ts";
import { byName, fields, list, optional, type Schema } from "../../document/schema.ts";
import { type ComponentId, components, isComponentId } from "../../food/components.ts";
import { foodTable } from "../../food/table.ts";
import { figure } from "../../measure/figure.ts";
import { exactText } from "../../number/digits.ts";
import { collect, type Fault, type Path, quote, throwIfAny } from "../../number/error.ts";
import {
  type Exact,
  fraction,
  greatest,
  isZero,
  ONE,
  over,
  sum,
  times,
  type Value,
} from "../../number/exact.ts";
import { didYouMean } from "../../number/near.ts";
import { sheet } from "../../sheet/build.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { name } from "./name.ts";
import { onePortion } from "./readMeal.ts";
import type { MealNames } from "./readMenu.ts";

/** Something eaten besides what the plan serves, as it is read. */
export interface BesidesFields {
  readonly name: string;
  readonly days?: readonly string[];
  readonly meal?: string;
  readonly sheet?: Sheet;
  readonly brings?: { readonly [component: string]: Value };
}

/** Something eaten besides what the plan serves. */
export interface EatenBeside {
  readonly name: string;
  /** What is eaten of it at a time: one portion. */
  readonly sheet: Sheet;
  /** Days that it is eaten on; every day unless told. */
  readonly days: readonly string[] | undefined;
  /** Ids of the meals that it counts in; of no meal where there are none. */
  readonly meals: readonly string[];
}

/** The schema of what is eaten besides. */
export function besidesSchema(): Schema<readonly BesidesFields[]> {
  const eaten = thing(
    "a sheet, made with sheet(recipe, foods)",
    (given): given is Sheet => given instanceof Sheet,
    // In a stored plan sheets are named by their place.
    { type: "integer", minimum: 0 },
  );
  const one = fields<BesidesFields>(
    {
      name: name(),
      days: optional(list(anyText(), { like: '["mon", "wed"]' })),
      meal: optional(anyText()),
      sheet: optional(eaten),
      brings: optional(byName(figureWritten(), { like: '{ vitaminD: "10 µg" }' })),
    },
    ({ sheet, brings }, _, refuse) => {
      if ((sheet === undefined) === (brings === undefined))
        refuse("neither a sheet nor what it brings, or both", "give one of them: brings: { vitaminD: 10 }");
    },
  );
  return list(one, { like: '[{ name: "Tablet", brings: { vitaminD: "10 µg" } }]' });
}

/** Reads on from what is eaten besides, with all faults. */
export function readBesides(
  faults: Fault[],
  given: readonly (Partial<BesidesFields> | undefined)[],
  path: Path,
  meals: MealNames,
): readonly EatenBeside[] {
  return given.flatMap((each, i): EatenBeside[] => {
    if (!each) return [];
    const at = [...path, i];
    const known = each.meal === undefined ? [] : meals.meals(each.meal);
    if (each.meal !== undefined && known.length === 0 && meals.ids.length > 0)
      faults.push(meals.unknown(each.meal, [...at, "meal"]));
    (each.days ?? []).forEach((day, k) => {
      if (day === undefined || meals.days.includes(day)) return;
      const hint = didYouMean(
        day,
        meals.days,
        meals.days.length === 0 ? "the plan has one day: leave it out" : "use a day of the menu",
      );
      faults.push({
        code: "plan-malformed",
        path: [...at, "days", k],
        message: `no day is called ${quote(day)}`,
        hint,
      });
    });
    const made = each.sheet
      ? onePortion(each.sheet)
      : each.brings &&
        collect(faults, [...at, "brings"], () => broughtBy(each.name ?? "", each.brings ?? {}));
    return made && each.name !== undefined
      ? [{ name: each.name, sheet: made, days: each.days, meals: known }]
      : [];
  });
}

/** A portion of what brings just that, of which nothing else is known. */
function broughtBy(name: string, brings: { readonly [component: string]: Value }): Sheet {
  const faults: Fault[] = [];
  const read = Object.entries(brings).flatMap(([id, value]): [ComponentId, Exact][] => {
    if (!isComponentId(id)) {
      const hint = didYouMean(id, Object.keys(components), "use the id of a component: vitaminD");
      faults.push({
        code: "component-unknown",
        path: [id],
        message: `no component is called ${quote(id)}`,
        hint,
      });
      return [];
    }
    const amount = collect(faults, [id], () => figure(value, components[id].unit));
    return amount ? [[id, amount]] : [];
  });
  throwIfAny(faults);
  const grams = massFor(read);
  const per100g = Object.fromEntries(
    read.map(([id, amount]) => [id, exactText(over(times(amount, fraction(100n)), grams))]),
  );
  const foods = foodTable([{ id: "eaten", name, source: "as told in the plan", per100g }]);
  return sheet(
    { name, portions: 1, lines: [{ key: "eaten", food: "eaten", amount: `${exactText(grams)} g` }] },
    foods,
  );
}

const GRAMS: { readonly [unit: string]: bigint } = { g: 1n, mg: 1000n, µg: 1_000_000n };
/** No food has more energy to the gram than fat. FAO Food and Nutrition Paper 77 (2003), section 3.5. */
const MOST_ENERGY: Exact = /* @__PURE__ */ fraction(9n);

/** What it weighs at least, as nobody says: all that it brings, and no less than a gram. */
function massFor(read: readonly (readonly [ComponentId, Exact])[]): Exact {
  const grams = read.flatMap(([id, amount]) => {
    const per = GRAMS[components[id].unit];
    return per === undefined ? [] : [over(amount, fraction(per))];
  });
  const energy = read.flatMap(([id, amount]) =>
    id === "energy" && !isZero(amount) ? [over(amount, MOST_ENERGY)] : [],
  );
  return [sum(grams), ...energy].reduce(greatest, ONE);
}
