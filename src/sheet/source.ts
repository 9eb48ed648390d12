import { type ComponentId, componentIds } from "../food/components.ts";
import { compose, marksOf, overOneScale, type Shares } from "../food/composition.ts";
import type { FigureKind, ReadFigure } from "../food/figure.ts";
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
  /** What cooking leaves of components. */
  readonly left: Shares;
  /** What a food says of a component, after cooking; nothing of a nested recipe, which asks its own lines. */
  figure(component: number): ReadFigure | undefined;
  marks(component: number): readonly Mark[];
}

const NO_MARKS: readonly Mark[] = [];

/** A food as a source, with what cooking leaves of each component. */
export function foodSource(food: Food, shares: Shares): Source {
  const { values, scale, figures } = shares.size === 0 ? food.composition : compose(food.input, shares);
  const { id, name, state } = food.input;
  return {
    ...{ id, name, state, food, values, scale, left: shares },
    figure: (component) => figures[component],
    marks: (component) => {
      const figure = figures[component];
      const kinds = figure ? marksOf(figure) : [];
      return kinds.length === 0 ? NO_MARKS : kinds.map((kind) => ({ at: "", kind, share: ONE }));
    },
  };
}

/** A nested recipe as eaten, per 100 g of it, with what cooking it again leaves of each component. */
export function nestedSource(id: string, nested: AsEaten, shares: Shares): Source {
  const left = componentIds.map((component) =>
    times(nested.per100g(component).exact, shares.get(component) ?? ONE),
  );
  return {
    id,
    name: nested.name,
    state: undefined,
    food: undefined,
    ...overOneScale(left),
    left: shares,
    figure: () => undefined,
    marks: (component) => nested.marks(component),
  };
}
