import { thing } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, once, type Schema } from "../document/schema.ts";
import type { State } from "../food/food.ts";
import { type Exact, equals, minus, ZERO } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import type { ShoppingLine } from "./line.ts";
import { ShoppingList } from "./list.ts";
import { byAisle } from "./order.ts";

/** A food of which another amount is bought than before, or needed. */
export interface ShoppingChange {
  readonly food: string;
  readonly name: string;
  readonly state: State | undefined;
  readonly aisle: string;
  /** `needed`: another amount is needed, and the same is bought. */
  readonly change: "added" | "removed" | "bought" | "needed";
  /** Undefined where the list before has none of it to buy. */
  readonly before: ShoppingLine | undefined;
  readonly after: ShoppingLine | undefined;
  /** Grams that are bought now less grams that were bought before, as eaten. */
  readonly by: Exact;
}

/** What two shopping lists differ in. */
export class ShoppingDifference extends Result {
  readonly is = "steelyard/shopping-difference@1";
  /** By aisle, then by name. */
  readonly changes: readonly ShoppingChange[];
  readonly before: ShoppingList;
  readonly after: ShoppingList;

  /** @internal Use {@link shoppingDifference}. */
  constructor(before: ShoppingList, after: ShoppingList) {
    super();
    this.before = before;
    this.after = after;
    this.changes = changesOf(before, after);
  }

  override toString(): string {
    const moved = this.changes.filter(({ change }) => change !== "needed");
    return moved.length === 0
      ? "the same is bought"
      : `bought otherwise: ${moved.map(({ name }) => name).join(", ")}`;
  }
}

const asked: () => Schema<{ readonly before: ShoppingList; readonly after: ShoppingList }> =
  /* @__PURE__ */ once(() => {
    const isList = (given: unknown): given is ShoppingList => given instanceof ShoppingList;
    const list = thing("a list, made with shoppingList(…)", isList);
    return fields({ before: list, after: list });
  });

/**
 * Tells what is bought otherwise than on an earlier list, last week's say: foods that came and went, and other
 * packs or weights. Throws `shopping-malformed` for what is no list.
 *
 * @example
 * ```ts
 * const oats = (amount: string) => sheet({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount }] }, starterFoods);
 * const { changes } = shoppingDifference(shoppingList(oats("60 g")), shoppingList(oats("100 g")));
 * console.log(changes.map(({ name, change, by }) => `${name}, ${change}: ${by} g`)); // => [ 'Oats, rolled, dry, bought: 40 g' ]
 * ```
 */
export function shoppingDifference(before: ShoppingList, after: ShoppingList): ShoppingDifference {
  read(asked(), { before, after }, "shopping-malformed");
  return new ShoppingDifference(before, after);
}

function changesOf(before: ShoppingList, after: ShoppingList): readonly ShoppingChange[] {
  const [was, is] = [bought(before), bought(after)];
  const foods = new Set([...was.keys(), ...is.keys()]);
  return [...foods]
    .flatMap((food): ShoppingChange[] => {
      const [old, now] = [was.get(food), is.get(food)];
      const line = now ?? old;
      const change = changeOf(old, now);
      if (!line || !change) return [];
      const { name, state, aisle } = line;
      const by = minus(now?.bought ?? ZERO, old?.bought ?? ZERO);
      return [{ food, name, state, aisle, change, before: old, after: now, by }];
    })
    .sort(byAisle);
}

function bought({ lines }: ShoppingList): ReadonlyMap<string, ShoppingLine> {
  return new Map(lines.filter((line) => line.bought.n !== 0n).map((line) => [line.food, line]));
}

function changeOf(
  before: ShoppingLine | undefined,
  after: ShoppingLine | undefined,
): ShoppingChange["change"] | undefined {
  if (!before || !after) return after ? "added" : "removed";
  if (!equals(before.bought, after.bought) || packsOf(before) !== packsOf(after)) return "bought";
  return equals(before.needed, after.needed) ? undefined : "needed";
}

function packsOf({ packs }: ShoppingLine): string {
  return JSON.stringify(packs.map(({ name, count }) => [name, count.toString()]));
}
