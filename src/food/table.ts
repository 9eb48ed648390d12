import { versioned } from "../document/format.ts";
import { isCallable, text, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { trust } from "../document/safe.ts";
import { andThen, asFar, attemptAt, fields, list, once, optional, type Schema } from "../document/schema.ts";
import { collect, type Fault, fault, kindOf, quote, throwIfAny } from "../number/error.ts";
import { freezeAll } from "../number/freeze.ts";
import { didYouMean } from "../number/near.ts";
import { uncloned } from "../number/uncloned.ts";
import { type Composition, compose } from "./composition.ts";
import type { FoodInput } from "./food.ts";
import { AT_ONCE, PACKED_FORMAT, type PackedFoods, packedSchema, packFoods, unpacked } from "./packed.ts";
import { readWhenAsked } from "./readPacked.ts";
import { checkRetention, type RetentionTable, retentionTableSchema } from "./retentionTable.ts";
import { foodSchema } from "./schema.ts";

/** A food that the library has read: what was written, and its figures ready to be added up. */
export class Food {
  #given: FoodInput | (() => FoodInput);
  #composition: Composition | undefined;

  /** @internal With a function, the food is read when it is first asked for. */
  constructor(given: FoodInput | (() => FoodInput)) {
    this.#given = given;
  }

  get input(): FoodInput {
    if (typeof this.#given === "function") this.#given = this.#given();
    return this.#given;
  }

  get composition(): Composition {
    this.#composition ??= compose(this.input);
    return this.#composition;
  }
}

/**
 * Foods by id. A table never changes: `with` gives a new one.
 *
 * @example
 * ```ts
 * const table = foodTable([
 *   { id: "oats", name: "Rolled oats", state: "dry", source: "own analysis", per100g: { energy: 379, protein: "13.15" } },
 * ]);
 * console.log(table.ids); // => [ 'oats' ]
 * console.log(table.get("oats").per100g.protein); // => 13.15
 * ```
 */
export class FoodTable {
  readonly is = "steelyard/foods@1";
  /** @internal Refuses a structured clone, which would keep no food. */
  readonly cloned: symbol = uncloned;
  readonly #foods: ReadonlyMap<string, Food>;
  /** What cooking leaves, by the codes that recipe lines may name. */
  readonly retention: RetentionTable | undefined;

  /** @internal Use {@link foodTable}. */
  constructor(foods: ReadonlyMap<string, Food>, retention?: RetentionTable) {
    this.#foods = foods;
    this.retention = retention;
  }

  get ids(): readonly string[] {
    return [...this.#foods.keys()];
  }

  /** The foods as they were written, in order. */
  *[Symbol.iterator](): IterableIterator<FoodInput> {
    for (const { input } of this.#foods.values()) yield freezeAll(input);
  }

  get size(): number {
    return this.#foods.size;
  }

  has(id: string): boolean {
    return this.#foods.has(id);
  }

  /** The food as it was written, frozen, as {@link with} takes it. Throws `food-unknown`. */
  get(id: string): FoodInput {
    return freezeAll(this.food(id).input);
  }

  /**
   * A table with these foods added, a list of them or another table; one with an id already here takes its
   * place. Throws as {@link foodTable}.
   */
  with(foods: readonly FoodInput[] | FoodTable): FoodTable {
    if (foods instanceof FoodTable)
      return new FoodTable(new Map([...this.#foods, ...foods.#foods]), this.retention ?? foods.retention);
    return new FoodTable(
      new Map([...this.#foods, ...tableOf(read(foodsSchema(), foods, "food-malformed"))]),
      this.retention,
    );
  }

  /** A table of these foods and another's, whose foods and retention factors take the place of those of the same name. */
  merge(other: FoodTable): FoodTable {
    checkFoodTable(other);
    return new FoodTable(new Map([...this.#foods, ...other.#foods]), other.retention ?? this.retention);
  }

  /**
   * A table of some of these foods: those of these ids, in their order here, or those that `which` says yes to.
   * Throws `food-unknown` for ids that there are not, all at once, and `food-malformed` for what picks none.
   */
  subset(which: readonly string[] | ((food: FoodInput) => boolean)): FoodTable {
    const isWanted = isCallable<(food: FoodInput) => boolean>(which) ? which : among(this, which);
    const kept = [...this.#foods].filter(([, { input }]) => isWanted(freezeAll(input)));
    return new FoodTable(new Map(kept), this.retention);
  }

  /**
   * The same foods with a table of retention factors, whose codes recipe lines may then name.
   * Throws `retention-malformed`.
   */
  withRetention(retention: RetentionTable): FoodTable {
    checkRetention(retention);
    return new FoodTable(this.#foods, retention);
  }

  /** Gives every food, packed, with the table of retention factors: `foodTable` reads it back as it was. */
  toJSON(): PackedFoods {
    const foods = [...this.#foods.values()].map(({ input }) => input);
    return packFoods(foods, this.retention);
  }

  /** @internal The food with its figures read. */
  food(id: string): Food {
    const found = this.#foods.get(id);
    if (found) return found;
    const hint = didYouMean(id, this.#foods.keys(), "add it with .with([…]), or use an id from .ids");
    throw fault("food-unknown", `the table has no food ${quote(id)}`, hint);
  }
}

/** Whether a food is among those of some ids, all of which have to be in the table. */
function among(table: FoodTable, ids: unknown): (food: FoodInput) => boolean {
  const wanted = new Set(read(list(text(200)), ids, "food-malformed"));
  const faults: Fault[] = [];
  for (const id of wanted) collect(faults, [], () => table.food(id));
  throwIfAny(faults);
  return ({ id }) => wanted.has(id);
}

const FOODS_FORMAT = "steelyard-foods/1" as const;

/** A table of foods as plain data, written out: a form to write by hand. */
export interface StoredFoods {
  readonly format: typeof FOODS_FORMAT;
  readonly foods: readonly FoodInput[];
  readonly retention?: RetentionTable;
}

/**
 * Makes a table of foods from plain data, a list of them or what a table wrote of itself, checking every
 * one. Of more than a thousand that a table wrote, each is read and checked when it is first asked for.
 *
 * Throws one error with all faults: `food-malformed`, `food-duplicate`, `component-unknown`,
 * `retention-malformed`, `foods-format-newer`, and the `number-…` codes for figures that are not numbers.
 *
 * @example
 * ```ts
 * const stored = JSON.stringify(starterFoods);
 * foodTable(JSON.parse(stored)).get("oats-rolled-dry").name; // => Oats, rolled, dry
 * ```
 */
export function foodTable(foods: readonly FoodInput[] | StoredFoods | PackedFoods): FoodTable {
  if (!isStored(foods)) return new FoodTable(tableOf(read(foodsSchema(), foods, "food-malformed")));
  if (isPacked(foods) && foods.foods.length > AT_ONCE) {
    const { foods: unread, retention } = readWhenAsked(foods);
    return new FoodTable(new Map([...unread].map(([id, readIt]) => [id, new Food(readIt)])), retention);
  }
  const { foods: all, retention } = read(storedSchema(), foods, "food-malformed");
  return new FoodTable(tableOf(all), retention);
}

function isStored(foods: unknown): foods is StoredFoods | PackedFoods {
  return typeof foods === "object" && foods !== null && !Array.isArray(foods) && "format" in foods;
}

function isPacked(foods: StoredFoods | PackedFoods): foods is PackedFoods {
  return foods.format === PACKED_FORMAT && Array.isArray(foods.foods);
}

/** @internal A table of packed foods already known to be sound. */
export function trustedPacked({ foods, components, marks }: Omit<PackedFoods, "format">): FoodTable {
  const packing = { components, marks };
  return new FoodTable(new Map(foods.map((food) => [food.id, new Food(unpacked(food, packing))])));
}

/** @internal Refuses what is no food table. Throws `food-malformed`. */
export function checkFoodTable(given: unknown): void {
  if (given instanceof FoodTable) return;
  const hint = "make one with foodTable([…]), or use starterFoods";
  throw fault("food-malformed", `expected a food table, got ${kindOf(given)}`, hint, ["table"]);
}

/** @internal A table of foods already known to be sound, such as the starter foods. */
export function trustedTable(foods: readonly FoodInput[], retention?: RetentionTable): FoodTable {
  for (const input of foods) trust(input);
  return new FoodTable(tableOf(foods), retention);
}

function tableOf(foods: readonly FoodInput[]): Map<string, Food> {
  return new Map(foods.map((food) => [food.id, new Food(food)]));
}

/** Every format that a table was ever written in. */
const storedSchema: () => Schema<ReadFoods> = /* @__PURE__ */ once(() =>
  versioned<ReadFoods>("foods", "foods-format-newer", {
    1: fields<StoredFoods>({
      format: word([FOODS_FORMAT]),
      foods: foodsSchema(),
      retention: optional(retentionTableSchema()),
    }),
    2: packedFoodsSchema(),
    3: packedFoodsSchema(),
  }),
);

function packedFoodsSchema(): Schema<ReadFoods> {
  return andThen(packedSchema(), ({ foods, retention }, refuse) => ({
    foods: attemptAt(refuse, ["foods"], () => read(foodsSchema(), foods, "food-malformed")) ?? [],
    ...(retention && { retention }),
  }));
}

type ReadFoods = Pick<StoredFoods, "foods" | "retention">;

const foodsSchema: () => Schema<readonly FoodInput[]> = /* @__PURE__ */ once(() =>
  asFar(list(foodSchema()), (foods, refuse) => {
    const seen = new Set<string>();
    foods.forEach((food, i) => {
      const id = food?.id;
      if (id === undefined) return;
      if (seen.has(id))
        refuse(
          `two foods are called ${quote(id)}`,
          "give each food an id of its own",
          [i, "id"],
          "food-duplicate",
        );
      seen.add(id);
    });
    return foods;
  }),
);
