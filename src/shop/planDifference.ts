import { thing } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { componentId } from "../food/componentSchema.ts";
import type { ComponentId } from "../food/components.ts";
import { type Exact, equals, ZERO } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import { Plan } from "../plan/planned.ts";
import type { Sheet } from "../sheet/sheet.ts";
import type { Tally } from "../sheet/tally.ts";
import { ShoppingList } from "./list.ts";
import { type ShoppingDifference, shoppingDifference } from "./shoppingDifference.ts";
import { shoppingList } from "./shoppingList.ts";

/** What came and what went. */
export interface InAndOut {
  readonly in: readonly string[];
  readonly out: readonly string[];
}

/** Grams of a line that someone is served otherwise. */
export interface AmountChange {
  readonly person: string;
  readonly meal: string;
  readonly dish: string;
  readonly line: string;
  readonly name: string;
  readonly before: Exact;
  readonly after: Exact;
}

/** A mean of someone's days that moved. */
export interface MeanChange {
  readonly person: string;
  readonly component: ComponentId;
  readonly before: Tally;
  readonly after: Tally;
}

/** What two plans differ in. */
export class PlanDifference extends Result {
  readonly is = "steelyard/plan-difference@1";
  /** By id. */
  readonly people: InAndOut;
  readonly meals: InAndOut;
  /** Dishes by name, of meals that both have; those that have other dishes. */
  readonly dishes: readonly (InAndOut & { readonly meal: string })[];
  /** What someone is served otherwise of a dish that both plans serve them, in grams of the line. */
  readonly amounts: readonly AmountChange[];
  /** Means that moved, of people who are in both. */
  readonly means: readonly MeanChange[];
  readonly #before: Plan;
  readonly #after: Plan;
  readonly #lists: PlanDifferenceOptions["shopping"];
  #shopping: ShoppingDifference | undefined;

  /** @internal Use {@link planDifference}. */
  constructor(before: Plan, after: Plan, how: PlanDifferenceOptions) {
    super();
    const ids = (all: readonly { readonly id: string }[]): readonly string[] => all.map(({ id }) => id);
    this.people = inAndOut(ids(before.people), ids(after.people));
    this.meals = inAndOut(ids(before.meals), ids(after.meals));
    const both = ids(before.people).filter((id) => !this.people.out.includes(id));
    const menu = ids(before.meals).filter((id) => !this.meals.out.includes(id));
    this.dishes = dishesMoved(before, after, menu);
    this.amounts = amountsMoved(before, after, both, menu);
    this.means = meansMoved(before, after, both, how.components ?? MACROS);
    this.#before = before;
    this.#after = after;
    this.#lists = how.shopping;
  }

  /** What is bought otherwise: by the lists that were told, else by what each plan cooks once. */
  get shopping(): ShoppingDifference {
    this.#shopping ??= this.#lists
      ? shoppingDifference(this.#lists.before, this.#lists.after)
      : shoppingDifference(shoppingList(this.#before), shoppingList(this.#after));
    return this.#shopping;
  }

  override toString(): string {
    const people = new Set([...this.amounts, ...this.means].map(({ person }) => person));
    const some =
      people.size === 0 ? "nobody is served otherwise" : `served otherwise: ${[...people].join(", ")}`;
    return `${some}; ${this.shopping}`;
  }

  /** @internal What people, meals and dishes are called. */
  names(): {
    readonly person: (id: string) => string;
    readonly meal: (id: string) => string;
    readonly dish: (meal: string, name: string) => string;
  } {
    const named = (of: "people" | "meals"): ReadonlyMap<string, string> =>
      new Map([...this.#before[of], ...this.#after[of]].map(({ id, name }) => [id, name]));
    const [people, meals] = [named("people"), named("meals")];
    const dishes = new Map(
      [...this.#before.meals, ...this.#after.meals].flatMap(({ id, batch }) =>
        [...batch].map(([name, { name: title }]) => [JSON.stringify([id, name]), title]),
      ),
    );
    return {
      person: (id) => people.get(id) ?? id,
      meal: (id) => meals.get(id) ?? id,
      dish: (meal, name) => dishes.get(JSON.stringify([meal, name])) ?? name,
    };
  }
}

/** What {@link planDifference} can be told. */
export interface PlanDifferenceOptions {
  /** Whose means are looked at: energy, macronutrients and fibre unless told. */
  readonly components?: readonly ComponentId[];
  /** What is bought for each, where that is not what the plans cook once: of schedules, with a cupboard. */
  readonly shopping?: { readonly before: ShoppingList; readonly after: ShoppingList };
}

const asked: () => Schema<{
  readonly before: Plan;
  readonly after: Plan;
  readonly how: PlanDifferenceOptions;
}> = /* @__PURE__ */ once(() => {
  const plan = thing("a plan, made with portionPlan({ … })", (given): given is Plan => given instanceof Plan);
  const bought = thing(
    "a list, made with shoppingList(…)",
    (given): given is ShoppingList => given instanceof ShoppingList,
  );
  const how = fields<PlanDifferenceOptions>({
    components: optional(list(componentId())),
    shopping: optional(fields({ before: bought, after: bought })),
  });
  return fields({ before: plan, after: plan, how });
});

const MACROS: readonly ComponentId[] = ["energy", "protein", "fat", "carbohydrateByDifference", "fibre"];

/**
 * Tells what moved from one plan to another, this week's and the next say: people, meals, dishes, what
 * each person is served, the means of their days, and what is bought. People, meals, dishes and lines go by
 * their ids and names. `components` are those whose means are looked at: energy, macronutrients and fibre unless
 * told; `shopping` are the two lists, where they are of schedules, or know a cupboard. Throws `plan-malformed`
 * for what is no plan.
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
  return new PlanDifference(before, after, how);
}

function dishesMoved(before: Plan, after: Plan, menu: readonly string[]): PlanDifference["dishes"] {
  const dishesIn = (plan: Plan, meal: string): readonly string[] => [
    ...(plan.meals.find(({ id }) => id === meal)?.dishes.keys() ?? []),
  ];
  return menu
    .map((meal) => ({ meal, ...inAndOut(dishesIn(before, meal), dishesIn(after, meal)) }))
    .filter((each) => each.in.length + each.out.length > 0);
}

function amountsMoved(
  before: Plan,
  after: Plan,
  people: readonly string[],
  menu: readonly string[],
): readonly AmountChange[] {
  return people.flatMap((person) =>
    menu.flatMap((meal) => {
      const now = after.portion(person, meal).dishes;
      return [...before.portion(person, meal).dishes].flatMap(([dish, s]) => {
        const other = now.get(dish);
        return other ? moved(s, other).map((each) => ({ person, meal, dish, ...each })) : [];
      });
    }),
  );
}

function meansMoved(
  before: Plan,
  after: Plan,
  people: readonly string[],
  of: readonly ComponentId[],
): readonly MeanChange[] {
  return people.flatMap((person) => {
    const [was, is] = [before.mean(person), after.mean(person)];
    return of.flatMap((component) => {
      const [a, b] = [was.brings(component), is.brings(component)];
      const isSame = equals(a.value, b.value) && a.bound === b.bound;
      return isSame ? [] : [{ person, component, before: a, after: b }];
    });
  });
}

function inAndOut(before: readonly string[], after: readonly string[]): InAndOut {
  return {
    in: after.filter((id) => !before.includes(id)),
    out: before.filter((id) => !after.includes(id)),
  };
}

/** Lines of a portion that weigh otherwise, those that went and came with them. */
function moved(before: Sheet, after: Sheet): readonly Omit<AmountChange, "person" | "meal" | "dish">[] {
  const byKey = ({ lines }: Sheet) => new Map(lines.map((line) => [line.key, line]));
  const [was, is] = [byKey(before), byKey(after)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((line) => {
    const [a, b] = [was.get(line), is.get(line)];
    const [old, now] = [a?.grams ?? ZERO, b?.grams ?? ZERO];
    const isSame = equals(old, now) && a?.name === b?.name;
    const { name = "" } = b ?? a ?? {};
    return isSame ? [] : [{ line, name, before: old, after: now }];
  });
}
