import { type Fraction, gcd, lcm, ONE } from "../number/fraction.ts";
import { type ComponentId, componentIds } from "./components.ts";
import { apply, derive } from "./derive.ts";
import { type FigureKind, MISSING, type ReadFigure, read, share } from "./figure.ts";
import type { FoodInput } from "./food.ts";
import { presumed } from "./presumed.ts";

/** What is left of components after cooking, 0 to 1; of those not named, all. */
export type Shares = ReadonlyMap<ComponentId, Fraction>;

/**
 * All components of a food in one row of whole numbers over one common denominator, in registry
 * order, so that a sheet's totals are integer sums. `figures` tells zeros that are known from gaps.
 */
export interface Composition {
  readonly values: readonly bigint[];
  readonly scale: bigint;
  readonly figures: readonly ReadFigure[];
}

const NO_LOSS: Shares = /* @__PURE__ */ new Map();

/**
 * What is known of one component: as the food gives it; else computed from what it gives, where a
 * published formula can be; else zero, where that may be presumed; else missing.
 *
 * With shares, it is what cooking leaves. A share named for a component holds for it. A derived figure
 * with no share of its own follows from what is left of its inputs, so that a total of it is still what
 * the formula makes of the totals; one that is a difference from 100 g stays, since what cooking
 * destroys does not become something else.
 */
export function readFigure(food: FoodInput, id: ComponentId, shares: Shares = NO_LOSS): ReadFigure {
  const figure = given(food, id) ?? derive(food, id, stated(food)) ?? presumed(food, id) ?? MISSING;
  if (shares.size === 0) return figure;
  const own = shares.get(id);
  if (own) return share(figure, own);
  const { formula } = figure;
  if (formula === undefined || formula.from !== undefined) return figure;
  const asStated = stated(food);
  return apply(formula, (input) => share(asStated(input), shares.get(input) ?? ONE)) ?? figure;
}

/** The whole composition of a food, before cooking or with what cooking leaves of it. */
export function compose(food: FoodInput, shares: Shares = NO_LOSS): Composition {
  const figures = componentIds.map((id) => readFigure(food, id, shares));
  return { figures, ...overOneScale(figures.map((f) => f.value)) };
}

/** A row of fractions over one denominator in lowest terms. */
export function overOneScale(values: readonly Fraction[]): { values: bigint[]; scale: bigint } {
  const scale = values.reduce((all, v) => lcm(all, v.d), 1n);
  const whole = values.map((v) => v.n * (scale / v.d));
  const common = whole.reduce((all, v) => gcd(all, v < 0n ? -v : v), scale);
  return common > 1n
    ? { values: whole.map((v) => v / common), scale: scale / common }
    : { values: whole, scale };
}

/** What the figures say of themselves, one entry for each thing to be said. */
export function marksOf({ kind, inputs = [] }: ReadFigure): readonly Exclude<FigureKind, "known">[] {
  return kind === "known" ? inputs : [...new Set([kind, ...inputs])];
}

function given(food: FoodInput, id: ComponentId): ReadFigure | undefined {
  const figure = Object.hasOwn(food.per100g, id) ? food.per100g[id] : undefined;
  return figure === undefined ? undefined : read(figure);
}

/** What formulas read: figures that are given or presumed, never ones that another formula made. */
function stated(food: FoodInput): (id: ComponentId) => ReadFigure {
  return (id) => given(food, id) ?? presumed(food, id) ?? MISSING;
}
