import { count } from "../document/leaves.ts";
import { readInto } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { type MarkKind, markKinds } from "../food/figure.ts";
import { checkFoodTable, type FoodTable } from "../food/table.ts";
import { yieldFigure } from "../food/yield.ts";
import { amount, gramsOf } from "../measure/amount.ts";
import { type Fault, fault, kindOf, SteelyardError, throwIfAny, within } from "../number/error.ts";
import { exact } from "../number/exact.ts";
import { toFloat } from "../number/ratio.ts";
import type { Recipe, RecipeInput } from "../recipe/document.ts";
import { recipe } from "../recipe/recipe.ts";
import type { Quantity } from "../scale/demand.ts";
import { unitOf } from "../scale/linear.ts";
import { type SheetOptions, sheet } from "../sheet/build.ts";
import type { Bound } from "../sheet/tally.ts";
import type { Tabular } from "../show/tabular.ts";
import { ColumnData } from "./columnData.ts";
import { boundCodes } from "./columns.ts";
import { type Brings, Pantry } from "./pantry.ts";
import { marksIn, tallyOf } from "./piece.ts";
import { askedSchema } from "./portionsAt.ts";

/** A component of a portion of each of many recipes, or its mass, as a {@link PortionColumn} has it. */
export interface RecipeColumn {
  readonly component: Quantity;
  readonly unit: string;
  readonly value: Float64Array;
  readonly least: Float64Array;
  readonly most: Float64Array;
  /** How each value bounds the truth, as a place in `boundCodes`. */
  readonly bound: Uint8Array;
  /** What the figures behind each say of themselves: a bit for each of `markCodes`, the first the lowest. */
  readonly marks: Uint16Array;
  /** Share of the mass, 0 to 1, whose figures are known. */
  readonly coverage: Float64Array;
}

/** One slice of {@link portionsOfMany}: a portion of each recipe as written, as plain data. */
export interface RecipeColumns<Q extends Quantity = Quantity> {
  readonly is: "steelyard/recipe-columns@1";
  /** Where the slice begins among all recipes. */
  readonly from: number;
  readonly length: number;
  /** Of the recipes. */
  readonly names: readonly string[];
  /** By what was asked for, in that order. */
  readonly columns: { readonly [K in Q]: RecipeColumn };
}

/** What the bits of `marks` say, the lowest first. */
export const markCodes: readonly MarkKind[] = markKinds;

/** Options of {@link portionsOfMany}. */
export interface PortionsOfManyOptions extends SheetOptions {
  /** How many recipes go into a slice; 1,000 unless told. */
  readonly slice?: number;
}

/**
 * A portion of each of very many recipes, slice by slice, as columns: figures are doubles, each within 1e-12
 * of the sheet's, bounds and marks the sheet's literally. Recipes are taken one by one from whatever gives
 * them, and no more is kept than a slice and the foods named. Recipes that were read before (`recipe(…)`)
 * are not read again; reading takes longest of all.
 *
 * Throws what `sheet` does, with the recipe's place, when it comes to it; and `component-unknown`,
 * `food-malformed`, `recipe-malformed`, `sheet-malformed` for what is handed in besides.
 *
 * @example
 * ```ts
 * const oats = (grams: number): Recipe =>
 *   recipe({ name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: `${grams} g` }] });
 * const [{ columns }] = portionsOfMany([oats(50), oats(100)], starterFoods, ["energy"]);
 * console.log([...columns.energy.value]); // => [ 189.5, 379 ]
 * ```
 */
export function* portionsOfMany<const Q extends Quantity>(
  recipes: Iterable<RecipeInput | Recipe>,
  foods: FoodTable,
  components: readonly Q[],
  how: PortionsOfManyOptions = {},
): Generator<RecipeColumns<Q> & Tabular> {
  checkFoodTable(foods);
  const faults: Fault[] = [];
  const read = readInto(faults, askedSchema(), components, "component-unknown");
  const { recipes: nested, ...own } = typeof how === "object" && how !== null ? how : { how };
  const { slice = 1000 } = readInto(faults, howSchema(), own, "sheet-malformed", ["how"]) ?? {};
  throwIfAny(faults);
  if (typeof recipes !== "object" || recipes === null || !(Symbol.iterator in recipes))
    throw fault("recipe-malformed", `expected recipes, got ${kindOf(recipes)}`, "give a list of them", [
      "recipes",
    ]);
  const asked = [...new Set(read)] as Q[];
  const pantry = new Pantry(foods, asked);
  let made = new Slice(asked, slice, 0);
  let from = 0;
  for (const each of recipes) {
    within([from + made.length], () => made.add(each, pantry, foods, nested));
    if (made.length < slice) continue;
    yield made.columns() as RecipeColumns<Q> & Tabular;
    from += made.length;
    made = new Slice(asked, slice, from);
  }
  if (made.length > 0) yield made.columns() as RecipeColumns<Q> & Tabular;
}

const howSchema: () => Schema<{ readonly slice?: number }> = /* @__PURE__ */ once(() =>
  fields<{ readonly slice?: number }>({ slice: optional(count(1, 1_000_000)) }),
);

/** Of a sum smaller than this part of its terms too many digits are lost: the recipe is worked out exactly. */
const LOST = 1 / 32;

const BIT: { readonly [K in (typeof markKinds)[number]]: number } = {
  missing: 1 << markKinds.indexOf("missing"),
  trace: 1 << markKinds.indexOf("trace"),
  below: 1 << markKinds.indexOf("below"),
  borrowed: 1 << markKinds.indexOf("borrowed"),
  calculated: 1 << markKinds.indexOf("calculated"),
  derived: 1 << markKinds.indexOf("derived"),
  presumed: 1 << markKinds.indexOf("presumed"),
  ranged: 1 << markKinds.indexOf("ranged"),
};

type Mutable = { -readonly [K in keyof RecipeColumn]: RecipeColumn[K] };

/** Recipes that go out together. */
class Slice {
  length = 0;
  readonly #asked: readonly Quantity[];
  readonly #from: number;
  readonly #names: string[] = [];
  readonly #columns: readonly Mutable[];
  readonly #sums: Sums;

  constructor(asked: readonly Quantity[], most: number, from: number) {
    this.#asked = asked;
    this.#from = from;
    this.#sums = new Sums(asked.length);
    this.#columns = asked.map((component) => ({
      component,
      unit: unitOf(component),
      value: new Float64Array(most),
      least: new Float64Array(most),
      most: new Float64Array(most),
      bound: new Uint8Array(most),
      marks: new Uint16Array(most),
      coverage: new Float64Array(most),
    }));
  }

  add(given: RecipeInput | Recipe, pantry: Pantry, foods: FoodTable, recipes: SheetOptions["recipes"]): void {
    const read = recipe(given);
    const isTold = unlessRefused(() => this.#quickly(read, pantry, foods.retention));
    // A sheet says at which line, and all that is at fault.
    if (!isTold) this.#exactly(read, foods, recipes === undefined ? {} : { recipes });
    this.#names.push(read.name);
    this.length += 1;
  }

  columns(): RecipeColumns & Tabular {
    const { length } = this;
    const cut = <A extends Float64Array | Uint8Array | Uint16Array>(all: A): A => all.slice(0, length) as A;
    const columns = this.#columns.map((column) => [
      column.component,
      {
        ...column,
        value: cut(column.value),
        least: cut(column.least),
        most: cut(column.most),
        bound: cut(column.bound),
        marks: cut(column.marks),
        coverage: cut(column.coverage),
      },
    ]);
    return Object.assign(new ColumnData(), {
      is: "steelyard/recipe-columns@1" as const,
      from: this.#from,
      length,
      names: this.#names,
      columns: Object.fromEntries(columns) as RecipeColumns["columns"],
    });
  }

  #exactly(read: Recipe, foods: FoodTable, how: SheetOptions): void {
    const s = sheet(read, foods, how);
    for (const [c, of] of this.#asked.entries()) {
      const tally = tallyOf(s, of);
      const { low, high } = tally.ends;
      const { bound } = tally;
      const marks = marksIn(tally);
      const bits = markKinds.reduce((all, kind) => (marks[kind].length > 0 ? all | BIT[kind] : all), 0);
      this.#set(c, {
        value: bound === "unknown" ? Number.NaN : toFloat(tally.ratio),
        least: low ? toFloat(low) : Number.NaN,
        most: high ? toFloat(high) : Number.NaN,
        bound,
        marks: bits,
        coverage: toFloat(tally.coverage),
      });
    }
  }

  #set(c: number, { value, least, most, bound, marks, coverage }: Said): void {
    const column = this.#columns[c] as Mutable;
    const i = this.length;
    column.value[i] = value;
    column.least[i] = least;
    column.most[i] = most;
    column.bound[i] = boundCodes.indexOf(bound);
    column.marks[i] = marks;
    column.coverage[i] = coverage;
  }

  /** In doubles, unless the recipe needs to be told exactly: then nothing is set. */
  #quickly(read: Recipe, pantry: Pantry, table: FoodTable["retention"]): boolean {
    const sums = this.#sums;
    sums.clear();
    let cooked = 0;
    const draw = pantry.by(read.measures);
    for (const line of read.lines) {
      if (line.food === undefined) return false;
      const { brings, grams } = draw(line);
      const { least, most, yieldFactor } = line;
      // Each is read, for a sheet refuses one that the food has no size for.
      const low = least === undefined ? 0 : grams(least);
      if (most !== undefined && grams(most) < low) return false;
      const weight = grams(line.amount);
      const isCooked = line.added === "cooking";
      sums.add(brings, weight, isCooked);
      if (isCooked)
        cooked += yieldFactor === undefined ? weight : weight * toFloat(yieldFigure(yieldFactor, table));
    }
    const factor = yieldOf(read, table, sums.pot, cooked);
    if (factor === undefined) return false;
    const portions = toFloat(exact(read.portions));
    const change = sums.pot * (factor - 1);
    const said: Said[] = [];
    for (const [c, of] of this.#asked.entries()) {
      const one =
        of === "mass"
          ? sums.mass(factor, portions)
          : of === "water"
            ? sums.water(c, change, portions)
            : sums.tell(c, portions);
      if (!one) return false;
      said.push(one);
    }
    for (const [c, one] of said.entries()) this.#set(c, one);
    return true;
  }
}

function unlessRefused(step: () => boolean): boolean {
  try {
    return step();
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    return false;
  }
}

/** Cooked over raw mass, of what is in the pot and what becomes of it line by line; undefined where a sheet has to tell. */
function yieldOf(
  { yieldFactor, cookedMass, lines }: Recipe,
  table: FoodTable["retention"],
  pot: number,
  cooked: number,
): number | undefined {
  if (cookedMass !== undefined) {
    const grams = gramsOf(amount(cookedMass));
    return grams && pot > 0 ? toFloat(grams) / pot : undefined;
  }
  if (yieldFactor !== undefined) return toFloat(yieldFigure(yieldFactor, table));
  return pot > 0 && lines.some((line) => line.yieldFactor !== undefined) ? cooked / pot : 1;
}

interface Said {
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly bound: Bound;
  readonly marks: number;
  readonly coverage: number;
}

/** The lines of one recipe added up. */
class Sums {
  pot = 0;
  raw = 0;
  readonly #value: Float64Array;
  readonly #low: Float64Array;
  readonly #high: Float64Array;
  /** What of it the pot holds before cooking. */
  readonly #held: Float64Array;
  readonly #silent: Float64Array;
  readonly #marks: Uint16Array;
  readonly #off: Uint8Array;
  readonly #spoken: Uint8Array;

  constructor(count: number) {
    this.#value = new Float64Array(count);
    this.#low = new Float64Array(count);
    this.#high = new Float64Array(count);
    this.#held = new Float64Array(count);
    this.#silent = new Float64Array(count);
    this.#marks = new Uint16Array(count);
    this.#off = new Uint8Array(count);
    this.#spoken = new Uint8Array(count);
  }

  clear(): void {
    this.pot = 0;
    this.raw = 0;
    for (const each of [this.#value, this.#low, this.#high, this.#held, this.#silent]) each.fill(0);
    for (const each of [this.#marks, this.#off, this.#spoken]) each.fill(0);
  }

  add({ value, low, high, marks, off }: Brings, grams: number, isCooked: boolean): void {
    // Lines of no mass bring nothing, whether or not their figures are known.
    if (grams === 0) return;
    this.raw += grams;
    if (isCooked) this.pot += grams;
    const by = grams / 100;
    for (let c = 0; c < value.length; c += 1) {
      const said = marks[c] as number;
      this.#value[c] = (this.#value[c] as number) + by * (value[c] as number);
      if (isCooked) this.#held[c] = (this.#held[c] as number) + by * (value[c] as number);
      this.#low[c] = (this.#low[c] as number) + by * (low[c] as number);
      this.#high[c] = (this.#high[c] as number) + by * (high[c] as number);
      if (said === 0) {
        this.#spoken[c] = 1;
        continue;
      }
      this.#marks[c] = (this.#marks[c] as number) | said;
      this.#off[c] = (this.#off[c] as number) | (off[c] as number);
      if ((said & BIT.missing) === 0) this.#spoken[c] = 1;
      else this.#silent[c] = (this.#silent[c] as number) + grams;
    }
  }

  mass(factor: number, portions: number): Said {
    const value = (this.raw - this.pot + this.pot * factor) / portions;
    return { value, least: value, most: value, bound: "point", marks: 0, coverage: 1 };
  }

  /** Water follows the yield; undefined where the pot may hold no more than it loses. */
  water(c: number, change: number, portions: number): Said | undefined {
    if (change === 0) return this.tell(c, portions);
    const marks = this.#marks[c] as number;
    const held = this.#held[c] as number;
    // Water that is only bounded, or may be dried away, has rules of its own.
    if ((marks & (BIT.missing | BIT.trace | BIT.below | BIT.ranged)) !== 0) return undefined;
    if (change < 0 && held + change < LOST * held) return undefined;
    const value = ((this.#value[c] as number) + change) / portions;
    return { value, least: value, most: value, bound: "point", marks: marks | BIT.derived, coverage: 1 };
  }

  /** A component of a portion; undefined where doubles cannot tell how it is bounded. */
  tell(c: number, portions: number): Said | undefined {
    const [value, least, most] = [this.#value, this.#low, this.#high].map(
      (sum) => (sum[c] as number) / portions,
    ) as [number, number, number];
    const marks = this.#marks[c] as number;
    const silent = this.#silent[c] as number;
    const isUnknown = silent > 0 && this.#spoken[c] === 0;
    const left = this.raw - silent;
    if (silent > 0 && !isUnknown && left < LOST * this.raw) return undefined;
    const coverage = silent === 0 ? 1 : isUnknown ? 0 : left / this.raw;
    const bound = isUnknown ? "unknown" : this.#boundOf(c, value, least, most);
    return bound && { value: isUnknown ? Number.NaN : value, least, most, bound, marks, coverage };
  }

  #boundOf(c: number, value: number, least: number, most: number): Bound | undefined {
    const marks = this.#marks[c] as number;
    if ((marks & BIT.ranged) === 0)
      return (marks & (BIT.missing | BIT.trace | BIT.below)) === 0 ? "point" : "at-least";
    const off = this.#off[c] as number;
    if (Number.isNaN(most)) return (off & 1) === 0 ? "at-least" : "between";
    if ((marks & BIT.below) !== 0) return "between";
    const room = Math.abs(value) / 10;
    const furthest = Math.max(value - least, most - value);
    if (Math.abs(furthest - room) <= 1e-9 * Math.abs(value)) return undefined;
    return furthest < room ? "point" : "between";
  }
}
