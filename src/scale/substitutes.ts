import type { Allergen } from "../food/allergens.ts";
import { allergens } from "../food/allergens.ts";
import { type ComponentId, component } from "../food/components.ts";
import type { FoodInput } from "../food/food.ts";
import type { FoodTable } from "../food/table.ts";
import { collect, type Fault, quote, throwIfAny } from "../number/error.ts";
import { fieldsGiven } from "../number/fields.ts";
import { absolute, compare, isZero, sum, toText, ZERO } from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import { checkSheet } from "../sheet/given.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Demand } from "./demand.ts";
import { fit } from "./fit.ts";
import { onlyMoving, replaceFood } from "./replace.ts";
import { type Substitute, type SubstituteChange, Substitutes, shareMoved } from "./substitute.ts";

/** Options of {@link substitutes}. */
export interface SubstitutesHow {
  /** What of a portion is to stay close: energy, protein, fat, carbohydrate by difference and fibre, unless told. */
  readonly components?: readonly ComponentId[];
  /** Allergens that a substitute may not hold. Foods of which nothing is said are left out and listed. */
  readonly avoid?: readonly Allergen[];
  /** Ids of the foods to choose among: those of the same group and state, unless told. */
  readonly among?: readonly string[];
  /** How many at most: 5 unless told. */
  readonly most?: number;
}

const FIELDS: readonly string[] = ["components", "avoid", "among", "most"];

const USUAL: readonly ComponentId[] = ["energy", "protein", "fat", "carbohydrateByDifference", "fibre"];

/** What a cured, salted or fermented food brings unasked. */
const WATCHED: readonly ComponentId[] = ["sodium"];

/** A factor may take a substitute from a thousandth to a thousandfold of the line's mass. */
const ANY = { least: "1/1000", most: "1000" } as const;

/**
 * Foods that may stand in for one line of a recipe, the closest first: for each, the amount with which
 * a portion as eaten keeps the components asked for as close as can be, and what it changes. Close is
 * the sum of the shares by which they move, an excess counting as a lack does; all other lines stay,
 * and what stands in is cooked as the line was, and weighs a thousandth to a thousand times as much.
 * What the line itself says nothing of is not held to be none: it is listed as `untold`, and each
 * substitute says what it `tells` of that.
 *
 * Foods that hold what is to be avoided are left out, and so are those of which no allergens are
 * known: unknown is never free from. Both are listed. The library computes and does not judge whether
 * the dish works, or is safe for the person who eats it: read the label, and ask whoever advises them.
 *
 * Throws one error with every fault: `line-unknown`, `substitutes-malformed` (a nested recipe or
 * nothing to replace, options that are none), `component-unknown`, `food-unknown`, and `sheet-malformed`
 * for what is no sheet.
 *
 * @example
 * ```ts
 * const bowl = sheet(
 *   {
 *     name: "Beans and rice",
 *     portions: 1,
 *     lines: [
 *       { food: "rice-brown-long-boiled", amount: "200 g" },
 *       { key: "beans", food: "kidney-beans-red-boiled", amount: "150 g" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const [first] = substitutes(bowl, "beans", { avoid: ["soya", "peanut"] }).found;
 * console.log(first.name, first.grams.toFixed(0)); // => Black beans, boiled without salt 144
 * ```
 */
export function substitutes(s: Sheet, lineKey: string, how: SubstitutesHow = {}): Substitutes {
  checkSheet(s);
  const i = s.plan.indexOf(lineKey);
  const { ids, untold, candidates, avoid, most } = read(s, i, how);
  const left = { avoided: [] as { food: string; holds: readonly Allergen[] }[], unknown: [] as string[] };
  const kept = candidates.filter((food) => {
    const holds = food.allergens?.filter((a) => avoid.includes(a)) ?? [];
    if (holds.length > 0) left.avoided.push({ food: food.id, holds });
    else if (avoid.length > 0 && food.allergens === undefined) left.unknown.push(food.id);
    return holds.length === 0 && (avoid.length === 0 || food.allergens !== undefined);
  });
  const found = kept
    .flatMap((food) => tried(s, i, food, { ids, untold }) ?? [])
    .sort(
      (a, b) =>
        a.silent.length - b.silent.length || compare(a.distance, b.distance) || (a.food < b.food ? -1 : 1),
    );
  const of = { dish: s.name, line: s.plan.lines[i]?.source.name ?? lineKey };
  return new Substitutes(of, found.slice(0, most), { ...left, untold });
}

/** A food in the line's place, in the amount that fits best; nothing where it brings none of what is asked. */
function tried(
  s: Sheet,
  i: number,
  food: FoodInput,
  { ids, untold }: Pick<Read, "ids" | "untold">,
): Substitute | undefined {
  const grams = s.values.grams[i] ?? ZERO;
  const raw = replaceFood(s, i, food.id, grams);
  const key = s.plan.lines[i]?.line.key ?? "";
  const isSilent = (id: ComponentId): boolean => raw.cell(key, id).bound === "unknown";
  const asked = ids.filter((id) => !isSilent(id));
  if (asked.every((id) => isZero(raw.cell(key, id).value))) return undefined;
  const demands = asked.map((id): Demand => ({ of: id, exactly: toText(s.portion(id).value) }));
  const fitted = fit(onlyMoving(raw, i), demands, { common: ANY });
  const nearest = fitted.status === "met" ? fitted.sheet : fitted.nearest;
  const exactGrams = nearest?.values.grams[i];
  if (!exactGrams) return undefined;
  const made = replaceFood(s, i, food.id, exactGrams);
  const changes = asked.map((component): SubstituteChange => {
    const pair = { before: s.portion(component), after: made.portion(component) };
    return { component, ...pair, share: shareMoved(pair) };
  });
  const distance = sum(changes.map((change) => absolute(shareMoved(change))));
  const { id, name, state } = food;
  return {
    food: id,
    name,
    state,
    grams: exactGrams,
    sheet: s.rebuilt(made),
    distance,
    changes,
    also: WATCHED.filter((id) => !ids.includes(id) && !isSilent(id)).map((component) => ({
      component,
      before: s.portion(component),
      after: made.portion(component),
    })),
    silent: [...ids, ...untold].filter(isSilent),
    tells: untold.filter((id) => !isSilent(id)),
    cautions: food.cautions ?? [],
  };
}

interface Read {
  /** What is to stay close. */
  readonly ids: readonly ComponentId[];
  /** What was to stay close, had the line said how much it brings. */
  readonly untold: readonly ComponentId[];
  readonly candidates: readonly FoodInput[];
  readonly avoid: readonly Allergen[];
  readonly most: number;
}

function read(s: Sheet, i: number, how: SubstitutesHow): Read {
  const { line, source } = s.plan.lines[i] ?? {};
  const food = source?.food?.input;
  const faults: Fault[] = [];
  const refuse = (path: (string | number)[], message: string, hint: string): void => {
    faults.push({ code: "substitutes-malformed", path, message, hint });
  };
  if (!food)
    refuse([], `${quote(line?.key)} is a recipe, not a food`, "ask for substitutes inside the nested recipe");
  else if (isZero(s.values.grams[i] ?? ZERO))
    refuse([], `${quote(line?.key)} has no mass to replace`, "give it an amount above 0");
  const given: SubstitutesHow = fieldsGiven(how, FIELDS, "substitutes-malformed", faults);
  const { components: asked = USUAL, avoid = [], among, most = 5 } = given;
  const list = (name: string, value: unknown): value is readonly unknown[] => {
    if (!Array.isArray(value)) refuse([name], `${name} is not a list`, "give a list, even for one");
    return Array.isArray(value);
  };
  const named = list("components", asked)
    ? asked.flatMap((id, k) => collect(faults, ["components", k], () => component(id).id) ?? [])
    : [];
  if (list("avoid", avoid))
    avoid.forEach((a, k) => {
      if (typeof a !== "string" || !Object.hasOwn(allergens, a))
        refuse(
          ["avoid", k],
          `${quote(a)} is no allergen of the lists`,
          didYouMean(a, Object.keys(allergens), `use ${Object.keys(allergens).join(", ")}`),
        );
    });
  if (!Number.isInteger(most) || most < 1)
    refuse(["most"], `${quote(most)} substitutes`, "give a whole number above 0");
  const others =
    among === undefined || !list("among", among)
      ? like(s.plan.foods, food)
      : among.flatMap((id, k) => collect(faults, ["among", k], () => s.plan.foods.get(id)) ?? []);
  const untold = food ? named.filter((id) => s.cell(line?.key ?? "", id).bound === "unknown") : [];
  const ids = named.filter((id) => !untold.includes(id) && !isZero(s.portion(id).value));
  if (faults.length === 0 && ids.length === 0) {
    const message =
      untold.length > 0
        ? `${quote(line?.key)} says nothing of ${untold.map((id) => component(id).name).join(", ")}`
        : "the portion holds none of what is to stay close";
    refuse(["components"], message, "name components that it is known to hold");
  }
  throwIfAny(faults);
  return { ids, untold, candidates: others.filter((each) => each.id !== food?.id), avoid, most };
}

function like(foods: FoodTable, food: FoodInput | undefined): readonly FoodInput[] {
  return foods.ids
    .map((id) => foods.get(id))
    .filter((each) => each.group !== undefined && each.group === food?.group && each.state === food?.state);
}
