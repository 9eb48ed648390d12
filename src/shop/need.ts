import type { FoodInput } from "../food/food.ts";
import type { Amount } from "../measure/amount.ts";
import { type Fault, quote } from "../number/error.ts";
import { type Exact, isZero, ONE, over, plus, times, ZERO } from "../number/exact.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type Goods, goodsOf, sameGoods } from "./goods.ts";
import type { ShoppingLine } from "./line.ts";
import { piecesOf } from "./pieces.ts";

/** Grams of edible portion by the food's id; nothing that weighs nothing. */
export type Grams = ReadonlyMap<string, Exact>;

/** Opens dishes to their foods, nested recipes by the share of their batch that is used. */
export class Opener {
  readonly #nested = new Map<Sheet, Grams>();
  readonly #foods = new Map<string, FoodInput>();
  readonly #goods = new Map<string, Goods>();
  readonly #used = new Map<string, Set<string>>();
  readonly #clashes = new Set<string>();

  /** The foods of several sheets, added up. */
  gramsOf(sheets: readonly Sheet[]): Grams {
    const total = new Map<string, Exact>();
    for (const s of sheets) this.#add(total, s, ONE);
    return total;
  }

  /** What a shop needs to know of every food that was met. */
  get goods(): ReadonlyMap<string, Goods> {
    return this.#goods;
  }

  /** How many pieces some grams of a food that was met are. */
  pieces(id: string, grams: Exact): ShoppingLine["pieces"] {
    const food = this.#foods.get(id);
    return food && piecesOf(food, grams, this.#used.get(id) ?? new Set());
  }

  /** Foods that mean one thing in one sheet and another in the next. */
  get faults(): readonly Fault[] {
    return [...this.#clashes].map((id) => ({
      code: "shopping-malformed",
      path: [],
      message: `the sheets have two foods called ${quote(id)}, which differ in name, state, packs, price, aisle or what they carry`,
      hint: "make the sheets from one food table",
    }));
  }

  #add(total: Map<string, Exact>, s: Sheet, share: Exact): void {
    s.plan.lines.forEach(({ source, nested }, i) => {
      const grams = times(s.values.grams[i] ?? ZERO, share);
      if (isZero(grams)) return;
      if (source.food) {
        this.#meet(source.food.input, s.values.amounts[i]);
        addTo(total, source.food.input.id, grams);
      }
      if (nested) {
        const used = over(grams, nested.masses.cooked);
        for (const [id, inner] of this.#opened(nested)) addTo(total, id, times(inner, used));
      }
    });
  }

  /** Once for each, however many recipes draw on it. */
  #opened(nested: Sheet): Grams {
    const known = this.#nested.get(nested) ?? this.gramsOf([nested]);
    this.#nested.set(nested, known);
    return known;
  }

  #meet(food: FoodInput, written: Amount | undefined): void {
    const { id } = food;
    if (written?.kind === "own") {
      const used = this.#used.get(id) ?? new Set();
      this.#used.set(id, used.add(written.unit));
    }
    const met = this.#foods.get(id);
    if (met === food) return;
    const goods = goodsOf(food);
    const known = this.#goods.get(id);
    if (known && !sameGoods(known, goods)) this.#clashes.add(id);
    this.#foods.set(id, food);
    if (!known) this.#goods.set(id, goods);
  }
}

function addTo(total: Map<string, Exact>, id: string, grams: Exact): void {
  const before = total.get(id);
  total.set(id, before ? plus(before, grams) : grams);
}
