import { type ComponentId, componentIds } from "../food/components.ts";
import { type FigureKind, overOneScale } from "../food/composition.ts";
import type { State } from "../food/food.ts";
import type { Food } from "../food/table.ts";
import { type Fraction, ONE, times } from "../number/fraction.ts";
import type { Tally } from "./tally.ts";

/** Something a source says of itself for one component. */
export interface Mark {
  /** Key of the line inside a nested recipe; empty for the source itself. */
  readonly at: string;
  readonly kind: Exclude<FigureKind, "known">;
  /** Share of the source's mass that the mark speaks of, 0 to 1. */
  readonly share: Fraction;
}

/** What a source needs of a nested sheet: its figures as eaten, and what they say of themselves. */
export interface AsEaten {
  readonly name: string;
  per100g(component: ComponentId): Tally;
  /** @internal */
  marks(component: number): readonly Mark[];
}

/**
 * What a line draws its figures from: a food, or a nested recipe as eaten. Values stand per 100 g
 * in registry order over one scale, so that a sheet adds whole numbers.
 */
export interface Source {
  readonly id: string;
  readonly name: string;
  readonly state: State | undefined;
  readonly food: Food | undefined;
  readonly values: readonly bigint[];
  readonly scale: bigint;
  marks(component: number): readonly Mark[];
}

const SELF: Readonly<Record<FigureKind, readonly Mark[]>> = {
  known: [],
  trace: [{ at: "", kind: "trace", share: ONE }],
  below: [{ at: "", kind: "below", share: ONE }],
  borrowed: [{ at: "", kind: "borrowed", share: ONE }],
  derived: [{ at: "", kind: "derived", share: ONE }],
  presumed: [{ at: "", kind: "presumed", share: ONE }],
  missing: [{ at: "", kind: "missing", share: ONE }],
};

/** A food as a source, before any retention. */
export function foodSource(food: Food): Source {
  const { values, scale, kinds } = food.composition;
  const { id, name, state } = food.input;
  return { id, name, state, food, values, scale, marks: (component) => SELF[kinds[component] ?? "missing"] };
}

/** A nested recipe as eaten, per 100 g of it. */
export function nestedSource(id: string, nested: AsEaten): Source {
  return {
    id,
    name: nested.name,
    state: undefined,
    food: undefined,
    ...overOneScale(componentIds.map((component) => nested.per100g(component).exact)),
    marks: (component) => nested.marks(component),
  };
}

/** A source with what cooking leaves of each component; shares not named are 1. */
export function retained(source: Source, shares: ReadonlyMap<ComponentId, Fraction>): Source {
  if (shares.size === 0) return source;
  const left = componentIds.map((id, i) =>
    times({ n: source.values[i] ?? 0n, d: source.scale }, shares.get(id) ?? ONE),
  );
  return { ...source, ...overOneScale(left) };
}
