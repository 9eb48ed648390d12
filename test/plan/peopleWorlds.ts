import fc from "fast-check";
import type { Allergen } from "../../src/food/allergens.ts";
import type { FoodInput, Origin } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import type { Avoided, MealInput, PlanInput } from "../../src/plan/input.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";

/** A few allergens are enough to meet often; wheat is there since it counts as gluten. */
export const some: readonly Allergen[] = ["milk", "fish", "gluten", "wheat", "nuts"];

/** What each food says of allergens; nothing where it is silent. */
type Said = readonly Allergen[] | undefined;

/** A line: a food by its number, or the recipe that stands so many places further on. */
type WorldLine = { readonly food: number } | { readonly nested: number };

/** Recipes as plain data: each may nest those after it, so that none comes round to itself. */
export interface World {
  readonly said: readonly Said[];
  /** Where each food comes from; nothing where it does not say. */
  readonly origins: readonly (Origin | undefined)[];
  readonly recipes: readonly (readonly WorldLine[])[];
  /** Recipes served, by meal and dish. */
  readonly meals: readonly (readonly number[])[];
  readonly people: readonly WorldPerson[];
}

export interface WorldPerson {
  readonly avoid: readonly WorldAvoid[];
  /** Declared on the person themselves. */
  readonly declared: readonly Allergen[];
  /** Places of the meals that they are not there for; those past the last one say nothing. */
  readonly away: readonly number[];
}

export interface WorldAvoid {
  readonly what: Allergen | number | "animal";
  readonly override: boolean;
}

const FOODS = 6;
const RECIPES = 5;

const line: fc.Arbitrary<WorldLine> = fc.oneof(
  { weight: 2, arbitrary: fc.record({ food: fc.nat(FOODS - 1) }) },
  { weight: 1, arbitrary: fc.record({ nested: fc.integer({ min: 1, max: RECIPES }) }) },
);

const avoid = fc.uniqueArray(
  fc.record({
    what: fc.oneof(fc.constantFrom(...some), fc.nat(FOODS - 1), fc.constant("animal" as const)),
    override: fc.boolean(),
  }),
  { maxLength: 4, selector: ({ what }) => what },
);

export const worlds: fc.Arbitrary<World> = fc.record({
  said: fc.array(fc.option(fc.subarray([...some]), { nil: undefined }), {
    minLength: FOODS,
    maxLength: FOODS,
  }),
  origins: fc.array(
    fc.constantFrom<Origin | undefined>("plant", "plant", "mineral", "animal", "mixed", undefined),
    { minLength: FOODS, maxLength: FOODS },
  ),
  recipes: fc.array(fc.array(line, { minLength: 1, maxLength: 3 }), {
    minLength: RECIPES,
    maxLength: RECIPES,
  }),
  meals: fc.array(fc.array(fc.nat(RECIPES - 1), { minLength: 1, maxLength: 2 }), {
    minLength: 1,
    maxLength: 2,
  }),
  people: fc.array(
    fc.record({
      avoid,
      declared: fc.subarray([...some], { maxLength: 2 }),
      away: fc.oneof({ weight: 3, arbitrary: fc.constant([]) }, fc.subarray([0, 1])),
    }),
    { minLength: 1, maxLength: 3 },
  ),
});

export const words = "The camp doctor allows it";

const lineKey = (i: number): string => `l${i}`;
/** The recipe that a line nests; nothing past the last one, where the line is the first food instead. */
const nestedIn = (world: World, recipe: number, each: WorldLine): number | undefined =>
  "nested" in each && recipe + each.nested < world.recipes.length ? recipe + each.nested : undefined;

function document(world: World, recipe: number, turned: boolean): RecipeInput {
  const lines = (world.recipes[recipe] ?? []).map((each, i) => {
    const nested = nestedIn(world, recipe, each);
    return nested === undefined
      ? { key: lineKey(i), food: `f${"food" in each ? each.food : 0}`, amount: "20 g" }
      : { key: lineKey(i), recipe: `r${nested}`, amount: "15 g" };
  });
  return { name: `r${recipe}`, portions: 2, lines: turned ? lines.reverse() : lines };
}

export function avoidOf({ avoid: list }: WorldPerson): readonly Avoided[] {
  return list.map(({ what, override }): Avoided => {
    const why = override ? { override: words } : {};
    if (typeof what === "number") return { food: `f${what}`, ...why };
    if (what === "animal") return { origin: what, ...why };
    return override ? { allergen: what, ...why } : what;
  });
}

/** The plan of a world; `turned` with the lines of every recipe in the other order. */
export function inputOf(world: World, { turned = false } = {}): PlanInput {
  const foods = foodTable(
    world.said.map(
      (said, i): FoodInput => ({
        id: `f${i}`,
        name: `Food ${i}`,
        source: "made up for a test",
        per100g: { energy: 100, protein: 5 },
        ...(said && { allergens: said }),
        ...(world.origins[i] && { origin: world.origins[i] }),
      }),
    ),
  );
  const recipes = Object.fromEntries(world.recipes.map((_, i) => [`r${i}`, document(world, i, turned)]));
  const meals = world.meals.map((served, m): MealInput => {
    const sheets = served.map((recipe) => sheet(document(world, recipe, turned), foods, { recipes }));
    const [only] = sheets;
    const dishes = Object.fromEntries(sheets.map((s, d) => [`d${d}`, s]));
    return { id: `m${m}`, dishes: sheets.length === 1 && only ? only : dishes };
  });
  return {
    meals,
    people: world.people.map((person, p) => ({
      id: `p${p}`,
      avoid: avoidOf(person),
      away: person.away.filter((m) => m < world.meals.length).map((m) => `m${m}`),
      person: { sex: "female", age: 22, mass: "52 kg", allergens: person.declared },
    })),
  };
}

/** Where each food of a recipe stands, told from the data alone. */
function walk(world: World, recipe: number): readonly { readonly key: string; readonly food: number }[] {
  return (world.recipes[recipe] ?? []).flatMap((each, i) => {
    const nested = nestedIn(world, recipe, each);
    if (nested === undefined) return [{ key: lineKey(i), food: "food" in each ? each.food : 0 }];
    return walk(world, nested).map(({ key, food }) => ({ key: `${lineKey(i)}/${key}`, food }));
  });
}

/** Regulation (EU) No 1169/2011, Annex II, entry 1: cereals containing gluten, wheat first among them. */
const holds = (said: Said, id: Allergen): boolean =>
  said !== undefined && (said.includes(id) || (id === "gluten" && said.includes("wheat")));

export interface Expected {
  /** `person entry meal dish: lines`, for what must not be served. */
  readonly refused: readonly string[];
  /** The same, for what is overridden. */
  readonly overridden: readonly string[];
  /** `person meal dish line allergens`, and the same with `animal` for an origin that is not said. */
  readonly unknown: readonly string[];
}

/** What is to be found, by walking the recipes. */
export function expected(world: World): Expected {
  const refused: string[] = [];
  const overridden: string[] = [];
  const unknown: string[] = [];
  world.people.forEach((person, p) => {
    const named = person.avoid.map(({ what }) => what);
    const entries = [
      ...person.avoid.map((each, i) => ({ ...each, at: `avoid.${i}` })),
      ...person.declared.flatMap((what, i) =>
        named.includes(what) ? [] : [{ what, override: false, at: `person.allergens.${i}` }],
      ),
    ];
    world.meals.forEach((served, m) => {
      if (person.away.includes(m)) return;
      served.forEach((recipe, d) => {
        const dish = served.length === 1 ? `m${m}` : `d${d}`;
        const prefix = served.length === 1 ? "" : `${dish}/`;
        const all = walk(world, recipe);
        for (const { what, override, at } of entries) {
          const lines = all.filter(({ food }) => {
            if (typeof what === "number") return food === what;
            if (what === "animal") return ["animal", "mixed"].includes(world.origins[food] ?? "");
            return holds(world.said[food], what);
          });
          if (lines.length === 0) continue;
          const mark = (food: number): string =>
            what === "animal" && world.origins[food] === "mixed" ? " (of mixed origin)" : "";
          const keys = lines
            .map(({ key, food }) => (override ? key : `${prefix}${key}${mark(food)}`))
            .join(", ");
          const id = typeof what === "number" ? `f${what}` : what;
          (override ? overridden : refused).push(
            override ? `p${p} ${id} m${m} ${dish}: ${keys}` : `people.${p}.${at} m${m}: ${keys}`,
          );
        }
        const ids = entries.flatMap(({ what }) =>
          typeof what === "number" || what === "animal" ? [] : [what],
        );
        const byOrigin = entries.some(({ what }) => what === "animal");
        for (const { key, food } of all) {
          const said = world.said[food];
          // Wheat is left open by a food that says gluten alone.
          const open =
            said === undefined
              ? ids
              : ids.filter((id) => id === "wheat" && said.includes("gluten") && !said.includes("wheat"));
          if (byOrigin && !world.origins[food]) unknown.push(`p${p} m${m} ${dish} ${key} animal`);
          if (open.length > 0) unknown.push(`p${p} m${m} ${dish} ${key} ${[...open].sort().join("+")}`);
        }
      });
    });
  });
  return { refused: refused.sort(), overridden: overridden.sort(), unknown: unknown.sort() };
}
