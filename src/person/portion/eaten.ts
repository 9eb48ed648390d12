import { refuseHole } from "../../document/safe.ts";
import { type ComponentId, components } from "../../food/components.ts";
import type { FoodCaution, FoodInput } from "../../food/food.ts";
import { type ErrorCode, fault, quote } from "../../number/error.ts";
import { type Exact, isZero, ONE, over, sum, ZERO } from "../../number/exact.ts";
import type { Ends } from "../../sheet/ends.ts";
import { addUp, type EnergyBy, energyShares } from "../../sheet/energy.ts";
import { Sheet } from "../../sheet/sheet.ts";
import type { Tally } from "../../sheet/tally.ts";

/** What someone eats: a portion of one sheet, or of each of several, all in the same day. */
export type Eaten =
  | Sheet
  | readonly Sheet[]
  | ReadonlyMap<string, Sheet>
  | { readonly [meal: string]: Sheet };

/** A food that a portion holds, however deep it is nested. */
export interface EatenFood {
  /** Its line: `meal/dish/line`. */
  readonly key: string;
  readonly food: FoodInput;
  /** The line of the meal's own recipe that brings it. */
  readonly top: { readonly meal: number; readonly key: string };
}

/** A line that is the same in every portion. */
export interface Dose {
  readonly key: string;
  readonly name: string;
  /** Of one portion. */
  readonly grams: Exact;
  /** What bodies have said of its foods. */
  readonly cautions: readonly FoodCaution[];
  readonly brings: (id: ComponentId) => Tally;
  /** The least and the most of it: nothing for the most where it is silent, or a trace. */
  readonly ends: (id: ComponentId) => Ends;
  /** Of doses over several days: the days whose doses are above a level by themselves. */
  readonly daysPast?: (id: ComponentId, level: Exact) => readonly string[];
}

interface Meal {
  readonly name: string | undefined;
  readonly sheet: Sheet;
}

/** One portion of every sheet that is eaten, added up. */
export class EatenPortion {
  readonly meals: readonly Meal[];
  readonly #tallies = new Map<ComponentId, Tally>();
  #foods: readonly EatenFood[] | undefined;

  constructor(meals: readonly Meal[]) {
    this.meals = meals;
  }

  /** What it is called: the sheet's name, or those of the meals. */
  get name(): string {
    return this.meals.map(({ name, sheet }) => name ?? sheet.name).join(", ");
  }

  /** A component, as eaten. */
  brings(id: ComponentId): Tally {
    const made = this.#tallies.get(id) ?? this.#add(components[id].unit, (s) => s.portion(id));
    this.#tallies.set(id, made);
    return made;
  }

  /** What the lines that bring some of its foods bring of a component, and no others. */
  bringsIn(id: ComponentId, foods: readonly Pick<EatenFood, "top">[]): Tally {
    const lines = this.meals.flatMap(({ name, sheet }, meal) => {
      const keys = new Set(foods.filter(({ top }) => top.meal === meal).map(({ top }) => top.key));
      return [...keys].map((key) => lineTally(sheet, name, key, id));
    });
    const [first] = lines;
    return first && lines.length === 1 ? first : addUp(components[id].unit, lines);
  }

  /** The least and the most that it can be: nothing for the most where a line is silent or has a trace. */
  ends(id: ComponentId): Ends {
    return this.brings(id).ends;
  }

  /** What each constituent brings of the energy by a factor system, in kcal. */
  energies(system: EnergyBy): ReadonlyMap<string, Tally> {
    const byMeal = this.meals.map(({ name, sheet }) =>
      energyShares(sheet, { system }).shares.map(({ of, energy }) => {
        const tally = energy.share(over(ONE, sheet.values.portions));
        return { of, tally: name === undefined ? tally : tally.within(name) };
      }),
    );
    const parts = byMeal[0] ?? [];
    return new Map(
      parts.map(({ of, tally }, i) => [
        of,
        byMeal.length === 1
          ? tally
          : addUp(
              "kcal",
              byMeal.flatMap((shares) => shares[i]?.tally ?? []),
            ),
      ]),
    );
  }

  /** Every food in it, those of nested recipes with them; nothing that weighs nothing. */
  get foods(): readonly EatenFood[] {
    this.#foods ??= this.meals.flatMap(({ name, sheet }, meal) =>
      foodsOf(sheet).map(({ key, food, line }) => ({
        key: name === undefined ? key : `${name}/${key}`,
        food,
        top: { meal, key: line },
      })),
    );
    return this.#foods;
  }

  /** The lines whose foods had a component added to them as a nutrient: what they bring, and at most. */
  fortified(id: ComponentId): readonly { readonly amount: Tally; readonly most: Exact | undefined }[] {
    const tops = this.foods.filter(({ food }) => food.fortifiedWith?.includes(id)).map(({ top }) => top);
    return this.meals.flatMap(({ name, sheet }, meal) => {
      const keys = new Set(tops.filter((top) => top.meal === meal).map(({ key }) => key));
      return [...keys].map((key) => ({
        amount: lineTally(sheet, name, key, id),
        most: lineTally(sheet, undefined, key, id).most,
      }));
    });
  }

  /** The lines that are the same for everyone. */
  get doses(): readonly Dose[] {
    return this.meals.flatMap(({ name, sheet }, meal) =>
      sheet.lines
        .filter(({ scaling, grams }) => scaling === "per-portion" && !isZero(grams))
        .map((line) => ({
          key: name === undefined ? line.key : `${name}/${line.key}`,
          name: line.name,
          grams: over(line.grams, sheet.values.portions),
          cautions: this.foods
            .filter(({ top }) => top.meal === meal && top.key === line.key)
            .flatMap(({ food }) => food.cautions ?? []),
          brings: (id: ComponentId): Tally => lineTally(sheet, name, line.key, id),
          ends: (id: ComponentId): Ends => lineTally(sheet, undefined, line.key, id).ends,
        })),
    );
  }

  #add(unit: string, of: (s: Sheet) => Tally): Tally {
    const [first, ...others] = this.meals;
    if (first && others.length === 0 && first.name === undefined) return of(first.sheet);
    const masses = this.meals.map(({ sheet }) => over(sheet.masses.raw, sheet.values.portions));
    const whole = sum(masses);
    return addUp(
      unit,
      this.meals.map(({ name, sheet }) => (name === undefined ? of(sheet) : of(sheet).within(name))),
      isZero(whole) ? undefined : masses.map((mass) => over(mass, whole)),
    );
  }
}

function lineTally(sheet: Sheet, meal: string | undefined, key: string, id: ComponentId): Tally {
  const tally = sheet.cell(key, id).share(over(ONE, sheet.values.portions));
  return meal === undefined ? tally : tally.within(meal);
}

function foodsOf(s: Sheet): { key: string; food: FoodInput; line: string }[] {
  return s.plan.lines.flatMap(({ line, source, nested }, i) => {
    if (isZero(s.values.grams[i] ?? ZERO)) return [];
    if (source.food) return [{ key: line.key, food: source.food.input, line: line.key }];
    const inner = nested ? foodsOf(nested) : [];
    return inner.map(({ key, food }) => ({ key: `${line.key}/${key}`, food, line: line.key }));
  });
}

/** Reads what is eaten. Throws `code` for anything that is not a sheet, and for nothing at all. */
export function readEaten(given: unknown, code: ErrorCode): EatenPortion {
  if (given instanceof Sheet) return new EatenPortion([{ name: undefined, sheet: given }]);
  const entries = entriesOf(given, code);
  const hint = "give a sheet, a list of sheets, or sheets by meal: { breakfast, lunch }";
  if (entries.length === 0) throw fault(code, "there is no sheet to look at", hint);
  const names = new Set<string>();
  return new EatenPortion(
    entries.map(([key, sheet]) => {
      if (!(sheet instanceof Sheet)) throw fault(code, `${quote(key)} is not a sheet`, hint, [key]);
      const wanted = typeof key === "number" ? sheet.name : key;
      const name = names.has(wanted) ? `${wanted} (${names.size + 1})` : wanted;
      names.add(name);
      return { name, sheet };
    }),
  );
}

function entriesOf(given: unknown, code: ErrorCode): readonly (readonly [string | number, unknown])[] {
  if (Array.isArray(given)) {
    refuseHole(given, code);
    return given.map((sheet, i) => [i, sheet] as const);
  }
  if (given instanceof Map) return [...given].map(([key, sheet]) => [String(key), sheet] as const);
  return typeof given === "object" && given !== null ? Object.entries(given) : [];
}
