import { type Exact, equals, ONE } from "../number/exact.ts";
import { gcd } from "../number/gcd.ts";
import { lcm } from "../number/ratio.ts";
import { type ComponentId, componentAt, componentIds, componentPlace, isOwnComponent } from "./components.ts";
import type { Formula } from "./data/formulas.ts";
import { apply, derive } from "./derive.ts";
import { energyLeft } from "./energyLeft.ts";
import { figureAsRead, MISSING, presuming, type ReadFigure, shareOfFigure } from "./figure.ts";
import type { FoodInput } from "./food.ts";
import { presumed } from "./presumed.ts";
import { waterLeft } from "./waterLeft.ts";

/** What is left of components after cooking, 0 to 1; of those not named, all. */
export interface Shares extends ReadonlyMap<ComponentId, Exact> {
  /** Whether they were said of another food: what they change is presumed. */
  readonly presumed?: boolean;
  /** How far analyses of like foods lie apart, where that is known. */
  readonly spread?: ReadonlyMap<ComponentId, ShareSpread>;
}

/** Between which shares nine analyses in ten of a like food lie, and how many there were of just this one. */
export interface ShareSpread {
  readonly low: Exact;
  readonly high: Exact;
  readonly count: number;
}

/**
 * All components of a food in one row of whole numbers over one common denominator, in registry
 * order, so that a sheet's totals are integer sums. `figures` tells zeros that are known from gaps.
 */
export interface Composition {
  readonly values: readonly bigint[];
  readonly scale: bigint;
  readonly figures: readonly ReadFigure[];
}

/**
 * What is known of one component: as the food gives it; else computed from what it gives, where a
 * published formula can be; else zero, where that may be presumed; else missing.
 *
 * With shares, it is what cooking leaves, one cooking after another. A share named for a component holds
 * for it. A derived figure with no share of its own follows from what is left of its inputs, so that a
 * total of it is still what the formula makes of the totals; one that is a difference from 100 g stays,
 * since what cooking destroys does not become something else. Energy that the food gives loses what its
 * constituents lose, by their factors; water takes the place of what ash, fat or alcohol lose of the mass.
 */
export function readFigure(food: FoodInput, id: ComponentId, ...cookings: readonly Shares[]): ReadFigure {
  const shares = cookings.at(-1);
  if (shares === undefined) return whole(food, id);
  const earlier = cookings.slice(0, -1);
  const cooked = cooking(food, shares, earlier, (each) => readFigure(food, each, ...earlier));
  return cooked(id);
}

/** The whole composition of a food, before cooking or with what cooking leaves of it. */
export function compose(food: FoodInput, ...cookings: readonly Shares[]): Composition {
  const figures = componentIds.map((id) => whole(food, id));
  for (const id of ownComponentsOf(food)) figures[componentPlace(id)] = whole(food, id);
  const raw = composition(figures);
  return cookings.reduce((left, shares, k) => cook(food, left, shares, cookings.slice(0, k)), raw);
}

/** What a cooking leaves of a composition that earlier ones may have left. */
export function cook(
  food: FoodInput,
  { figures }: Composition,
  shares: Shares,
  earlier: readonly Shares[],
): Composition {
  const before = (id: ComponentId): ReadFigure => figures[componentPlace(id)] ?? MISSING;
  const cooked = cooking(food, shares, earlier, before);
  return composition(figures.map((figure, i) => cooked(componentAt(i), figure)));
}

/** Components of a food that the registry lacks. */
export function ownComponentsOf({ per100g }: FoodInput): readonly ComponentId[] {
  return Object.keys(per100g).filter(isOwnComponent);
}

function composition(figures: readonly ReadFigure[]): Composition {
  return { figures, ...overOneScale(figures.map((f) => f.value)) };
}

/** One cooking as a step from each figure before it to the one after it. */
function cooking(
  food: FoodInput,
  shares: Shares,
  earlier: readonly Shares[],
  before: (id: ComponentId) => ReadFigure,
): (id: ComponentId, figure?: ReadFigure) => ReadFigure {
  /** The formula that a figure follows: once a share was named for it, it is what that share left. */
  const followed = (id: ComponentId, { formula }: ReadFigure): Formula | undefined =>
    formula?.from === undefined && !earlier.some((each) => each.has(id)) ? formula : undefined;
  const changes = (id: ComponentId, figure = before(id)): boolean => {
    const own = shares.get(id);
    if (own) return !equals(own, ONE);
    const inputs = Object.keys(followed(id, figure)?.terms ?? {}) as ComponentId[];
    return inputs.some((input) => changes(input));
  };
  const after = (id: ComponentId, figure = before(id)): ReadFigure => {
    const own = shares.get(id);
    if (own) return equals(own, ONE) ? figure : shareOfFigure(figure, own);
    const formula = followed(id, figure);
    if (formula) return (changes(id, figure) && apply(formula, (input) => after(input))) || figure;
    if (id === "water") return waterLeft(figure, { before, after });
    if (id !== "energy") return figure;
    return energyLeft(food, figure, { before, after, changes, left: (each) => shares.get(each) });
  };
  if (!shares.presumed) return after;
  return (id, figure = before(id)) => {
    const left = after(id, figure);
    return left === figure ? figure : presuming(left);
  };
}

/** A row of fractions over one denominator in lowest terms. */
export function overOneScale(values: readonly Exact[]): { values: bigint[]; scale: bigint } {
  const scale = values.reduce((all, v) => lcm(all, v.d), 1n);
  const whole = values.map((v) => v.n * (scale / v.d));
  const common = whole.reduce((all, v) => gcd(all, v < 0n ? -v : v), scale);
  return common > 1n
    ? { values: whole.map((v) => v / common), scale: scale / common }
    : { values: whole, scale };
}

function whole(food: FoodInput, id: ComponentId): ReadFigure {
  return given(food, id) ?? derive(food, id, stated(food)) ?? presumed(food, id) ?? MISSING;
}

function given(food: FoodInput, id: ComponentId): ReadFigure | undefined {
  const figure = Object.hasOwn(food.per100g, id) ? food.per100g[id] : undefined;
  return figure === undefined ? undefined : figureAsRead(figure);
}

/** What formulas read: figures that are given or presumed, never ones that another formula made. */
function stated(food: FoodInput): (id: ComponentId) => ReadFigure {
  return (id) => given(food, id) ?? presumed(food, id) ?? MISSING;
}
