import { thing } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { componentId } from "../food/componentSchema.ts";
import type { ComponentId } from "../food/components.ts";
import { type Exact, equals, ZERO } from "../number/exact.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Tally } from "../sheet/tally.ts";
import { Plan } from "./planned.ts";

/** What came and what went. */
export interface InAndOut {
  readonly in: readonly string[];
  readonly out: readonly string[];
}

/** What two plans differ in. */
export interface PlanDifference {
  /** By id. */
  readonly people: InAndOut;
  readonly meals: InAndOut;
  /** Dishes by name, of meals that both have; those that have other dishes. */
  readonly dishes: readonly (InAndOut & { readonly meal: string })[];
  /** What someone is served otherwise of a dish that both plans serve them, in grams of the line. */
  readonly amounts: readonly {
    readonly person: string;
    readonly meal: string;
    readonly dish: string;
    readonly line: string;
    readonly name: string;
    readonly before: Exact;
    readonly after: Exact;
  }[];
  /** Means that moved, of people who are in both. */
  readonly means: readonly {
    readonly person: string;
    readonly component: ComponentId;
    readonly before: Tally;
    readonly after: Tally;
  }[];
}

/** What {@link planDifference} can be told. */
export interface PlanDifferenceOptions {
  /** Whose means are looked at: energy, macronutrients and fibre unless told. */
  readonly components?: readonly ComponentId[];
}

const asked: () => Schema<{
  readonly before: Plan;
  readonly after: Plan;
  readonly how: PlanDifferenceOptions;
}> = /* @__PURE__ */ once(() => {
  const plan = thing("a plan, made with portionPlan({ … })", (given): given is Plan => given instanceof Plan);
  const how = fields<PlanDifferenceOptions>({ components: optional(list(componentId())) });
  return fields({ before: plan, after: plan, how });
});

const MACROS: readonly ComponentId[] = ["energy", "protein", "fat", "carbohydrateByDifference", "fibre"];

/**
 * Tells what moved from one plan to another, this week's and the next say: people, meals, dishes, what
 * each person is served, and the means of their days. People, meals, dishes and lines go by their ids and
 * names. `components` are those whose means are looked at: energy, macronutrients and fibre unless told.
 *
 * @example
 * ```ts
 * const oats = sheet({ name: "Oats", portions: 1, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "60 g" }] }, starterFoods);
 * const week = (factor: number) => portionPlan({ days: [{ id: "mon", meals: [{ id: "breakfast", dishes: oats }] }], people: [{ id: "cox", demands: { factor } }] });
 * const { amounts } = planDifference(week(1), week(2));
 * console.log(amounts.map(({ name, before, after }) => `${name}: ${before} g, then ${after} g`)); // => [ 'Oats, rolled, dry: 60 g, then 120 g' ]
 * ```
 */
export function planDifference(before: Plan, after: Plan, how: PlanDifferenceOptions = {}): PlanDifference {
  read(asked(), { before, after, how }, "plan-malformed");
  const ids = (all: readonly { readonly id: string }[]): readonly string[] => all.map(({ id }) => id);
  const people = inAndOut(ids(before.people), ids(after.people));
  const meals = inAndOut(ids(before.meals), ids(after.meals));
  const both = before.people.filter(({ id }) => !people.out.includes(id));
  const menu = before.meals.filter(({ id }) => !meals.out.includes(id));
  const dishesIn = (plan: Plan, meal: string): readonly string[] => [
    ...(plan.meals.find(({ id }) => id === meal)?.dishes.keys() ?? []),
  ];
  return {
    people,
    meals,
    dishes: menu
      .map(({ id }) => ({ meal: id, ...inAndOut(dishesIn(before, id), dishesIn(after, id)) }))
      .filter((each) => each.in.length + each.out.length > 0),
    amounts: both.flatMap(({ id: person }) =>
      menu.flatMap(({ id: meal }) => {
        const now = after.portion(person, meal).dishes;
        return [...before.portion(person, meal).dishes].flatMap(([dish, s]) => {
          const other = now.get(dish);
          return other ? moved(s, other).map((each) => ({ person, meal, dish, ...each })) : [];
        });
      }),
    ),
    means: both.flatMap(({ id: person }) => {
      const [was, is] = [before.mean(person), after.mean(person)];
      return (how.components ?? MACROS).flatMap((component) => {
        const [a, b] = [was.brings(component), is.brings(component)];
        const isSame = equals(a.value, b.value) && a.bound === b.bound;
        return isSame ? [] : [{ person, component, before: a, after: b }];
      });
    }),
  };
}

function inAndOut(before: readonly string[], after: readonly string[]): InAndOut {
  return {
    in: after.filter((id) => !before.includes(id)),
    out: before.filter((id) => !after.includes(id)),
  };
}

/** Lines of a portion that weigh otherwise, those that went and came with them. */
function moved(
  before: Sheet,
  after: Sheet,
): readonly {
  readonly line: string;
  readonly name: string;
  readonly before: Exact;
  readonly after: Exact;
}[] {
  const byKey = ({ lines }: Sheet) => new Map(lines.map((line) => [line.key, line]));
  const [was, is] = [byKey(before), byKey(after)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((line) => {
    const [a, b] = [was.get(line), is.get(line)];
    const [old, now] = [a?.grams ?? ZERO, b?.grams ?? ZERO];
    const isSame = equals(old, now) && a?.name === b?.name;
    return isSame ? [] : [{ line, name: (b ?? a)?.name ?? line, before: old, after: now }];
  });
}
