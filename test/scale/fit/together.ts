import fc from "fast-check";
import { energySystems } from "../../../src/food/energy.ts";
import { exactText } from "../../../src/number/digits.ts";
import { type Exact, fraction, minus, ONE, over, plus, sum, times } from "../../../src/number/exact.ts";
import type { RecipeInput } from "../../../src/recipe/document.ts";
import type { Demand } from "../../../src/scale/demand.ts";
import { moveLines } from "../../../src/scale/move.ts";
import { sheet } from "../../../src/sheet/build.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";
import { highs } from "../solve/outside.ts";
import { boundsOf, bringsOf, groupsOf, Model, sideOf } from "./outside.ts";
import { type World, worlds } from "./worlds.ts";

/** Random dishes eaten together, each drawn at a size of its own, with demands on the whole of them. */
export interface Meal {
  readonly dishes: readonly Dish[];
  readonly demands: readonly Demand[];
}

export interface Dish {
  readonly name: string;
  readonly recipe: RecipeInput;
  readonly table: World["table"];
  readonly sheet: Sheet;
}

export const sheetsOf = ({ dishes }: Meal): Record<string, Sheet> =>
  Object.fromEntries(dishes.map(({ name, sheet: s }) => [name, s]));

const subjects = ["energy", "protein", "fibre", "sodium", "mass", "ratio", "share"] as const;
type Of = (typeof subjects)[number];

export interface MealShape {
  readonly dishes: { readonly min: number; readonly max: number };
  readonly demands: { readonly min: number; readonly max: number };
  /** Chance of a demand far from what can be met, 1 in so many; never where 0. */
  readonly wild: number;
}

export function meals({ dishes, demands, wild }: MealShape): fc.Arbitrary<Meal> {
  const drawn = fc.record({
    world: worlds({ adjustable: { min: 0, max: 3 }, demands: { min: 1, max: 1 }, wild: 0 }),
    // A dish may be nothing but lines that move alone.
    loose: fc.integer({ min: 0, max: 5 }).map((n) => n === 0),
  });
  const demand = fc.record({
    of: fc.constantFrom(...subjects),
    kind: fc.constantFrom("exactly", "exactly", "least", "most", "band"),
    slack: fc.integer({ min: 0, max: 15 }),
    wild: wild === 0 ? fc.constant(false) : fc.integer({ min: 1, max: wild }).map((n) => n === 1),
  });
  return fc
    .record({
      dishes: fc.array(drawn, { minLength: dishes.min, maxLength: dishes.max }),
      demands: fc.array(demand, { minLength: demands.min, maxLength: demands.max }),
    })
    .map((all) => {
      const made = all.dishes.map(({ world, loose }, d) => dishOf(world, loose, "abcd"[d] ?? "e"));
      const goals = made.map(({ goal }) => goal);
      return {
        dishes: made.map(({ dish }) => dish),
        demands: all.demands.map(({ of, kind, slack, wild: isWild }): Demand => {
          const { subject, value } = together(of, goals);
          const most = (f: Exact): Exact => (of === "share" && f.n > f.d ? ONE : f);
          const asked = most(isWild ? times(value, fraction(17n, 10n)) : value);
          const room = fraction(BigInt(slack), 100n);
          const ends = {
            least: exactText(times(asked, minus(ONE, room))),
            most: exactText(most(times(asked, plus(ONE, room)))),
          };
          if (kind === "exactly") return { ...subject, exactly: exactText(asked) } as Demand;
          return {
            ...subject,
            ...(kind === "most" ? {} : { least: ends.least }),
            ...(kind === "least" ? {} : { most: ends.most }),
          } as Demand;
        }),
      };
    });
}

function dishOf(world: World, loose: boolean, name: string): { readonly dish: Dish; readonly goal: Sheet } {
  const groups = groupsOf(world.recipe.lines);
  const isIn = (i: number): boolean => !loose || (groups[i] !== "base" && !groups[i]?.startsWith("part"));
  const lines = world.recipe.lines.filter((_, i) => isIn(i));
  const isCut = loose && groups.some((group) => group.startsWith("line"));
  const recipe = isCut ? { ...world.recipe, lines } : world.recipe;
  const factors = isCut ? world.factors.filter((_, i) => isIn(i)) : world.factors;
  const s = sheet(recipe, world.table);
  return {
    dish: { name, recipe, table: world.table, sheet: s },
    goal: moveLines(s, factors, s.values.portions),
  };
}

/** What several sheets bring together, from their public faces alone. */
export function together(of: Of, all: readonly Sheet[]): { readonly subject: object; readonly value: Exact } {
  const total = (id: "omega3" | "omega6" | "energy" | "protein" | "fibre" | "sodium" | "fat"): Exact =>
    sum(all.map((s) => s.portion(id).value));
  if (of === "mass") return { subject: { of }, value: sum(all.map((s) => s.portionMass)) };
  if (of === "ratio") {
    const [a, b] = [total("omega6"), total("omega3")];
    return { subject: { ratioOf: ["omega6", "omega3"] }, value: b.n === 0n ? ONE : over(a, b) };
  }
  if (of === "share") {
    const terms = Object.entries(energySystems["atwater-general"].parts).map(([part, term]) => {
      const grams = sum(all.map((s) => s.portion(term.component).value));
      return { part, kcal: times(grams, fraction(BigInt(Math.round(Number(term.factor) * 100)), 100n)) };
    });
    const whole = sum(terms.map(({ kcal }) => kcal));
    const fat = sum(terms.filter(({ part }) => part === "fat").map(({ kcal }) => kcal));
    return { subject: { energyShareOf: "fat" }, value: whole.n === 0n ? ONE : over(fat, whole) };
  }
  return { subject: { of }, value: total(of) };
}

/**
 * A fit of several sheets written out once more, in binary floats. Columns are factors over the common
 * one: each dish's, that of the first with held lines being 1, and each part's and line's; `u` is one over
 * the common factor.
 */
export interface TogetherModel {
  readonly model: Model;
  readonly u: number;
}

export function togetherModel({ dishes, demands }: Meal): TogetherModel {
  const model = new Model();
  const inf = highs.infinity;
  const u = model.column(0, 0.1, 10);
  const groups = dishes.map(({ recipe }) => groupsOf(recipe.lines));
  const hasHeld = (d: number): boolean =>
    groups[d]?.some((g) => g === "base" || g.startsWith("part")) ?? false;
  const places = dishes.map((_, d) => d);
  const lead = places.find(hasHeld) ?? 0;
  const sizes = places.map((d) => (d === lead ? model.column(0, 1, 1) : model.column(0, 0, inf)));
  const further = sizes.filter((_, d) => d !== lead);
  const departs = (column: number, from: number): void => {
    const [rise, fall] = [model.column(1, 0, inf), model.column(2, 0, inf)];
    model.row(0, 0, [column, 1], [from, -1], [rise, -1], [fall, 1]);
  };
  for (const size of further) {
    departs(size, sizes[lead] as number);
    model.row(0, inf, [size, 1], [u, -0.1]);
    model.row(-inf, 0, [size, 1], [u, -10]);
  }
  const columns = dishes.map(({ recipe, sheet: s }, d) => {
    const size = sizes[d] as number;
    const own = new Map<string, number>();
    const ownGroups = groups[d] ?? [];
    // The base of a dish is what is in no part, else its first part.
    const base = ownGroups.includes("base")
      ? "base"
      : [...ownGroups].filter((g) => g.startsWith("part")).sort()[0];
    const columnOf = (i: number): number => {
      const group = ownGroups[i] ?? "base";
      return group === "dose" ? u : group === base ? size : (own.get(group) ?? size);
    };
    ownGroups.forEach((group, i) => {
      if (group === base || group === "dose" || own.has(group)) return;
      const { low, high } = boundsOf(recipe.lines, i);
      const f = model.column(0, 0, inf);
      model.row(0, inf, [f, 1], [size, -low]);
      if (high !== inf) model.row(-inf, 0, [f, 1], [size, -high]);
      departs(f, size);
      own.set(group, f);
    });
    recipe.lines.forEach((_, i) => {
      const { least, most } = boundsOf(recipe.lines, i);
      const grams = (s.lines[i]?.grams.toNumber() ?? 0) / s.portions.toNumber();
      if (ownGroups[i] === "dose") return;
      if (least !== undefined) model.row(0, inf, [columnOf(i), grams], [u, -least]);
      if (most !== undefined) model.row(-inf, 0, [columnOf(i), grams], [u, -most]);
    });
    return columnOf;
  });
  for (const demand of demands) {
    const sides = dishes.map(({ sheet: s }) => sideOf(demand, bringsOf(s)));
    const { least, most } = sides[0] ?? {};
    const terms = (bound: number): (readonly [number, number])[] => [
      ...sides.flatMap(({ value, per }, d) =>
        value.map(
          (v, i) =>
            [
              (columns[d] as (i: number) => number)(i),
              per === "portion" ? v : v - bound * (per[i] ?? 0),
            ] as const,
        ),
      ),
      ...(sides[0]?.per === "portion" ? [[u, -bound] as const] : []),
    ];
    if (least !== undefined) model.row(0, inf, ...terms(least));
    if (most !== undefined) model.row(-inf, 0, ...terms(most));
  }
  return { model, u };
}
