import type { ComponentId } from "../food/components.ts";
import { type EnergySystem, termsOf } from "../food/energy.ts";
import type { ReadFigure } from "../food/figure.ts";
import { exact, type Fraction, greatest, minus, plus, sum, times, ZERO } from "../number/fraction.ts";

/** The least and the most that something may be. */
export interface Interval {
  readonly low: Fraction;
  readonly high: Fraction;
}

type FigureOf = (id: ComponentId) => ReadFigure | undefined;

/**
 * The least and most energy of 100 g that the figures allow, kcal; what has no upper limit counts as it
 * stands. Each component counts once with all that it does, so that what is taken off one constituent
 * and added to another does not vary twice.
 */
export function reckon(system: EnergySystem, figureOf: FigureOf): Interval {
  const ends = [...weightsOf(system)].map(([id, weight]): Interval => {
    const { low, high } = endsOf(figureOf(id));
    const [a, b] = [times(low, weight), times(high, weight)];
    return weight.n < 0n ? { low: b, high: a } : { low: a, high: b };
  });
  return { low: sum(ends.map((e) => e.low)), high: sum(ends.map((e) => e.high)) };
}

/** What a gram of each component adds to the energy, kcal; below 0 where it takes more off than it adds. */
function weightsOf(system: EnergySystem): ReadonlyMap<ComponentId, Fraction> {
  const weights = new Map<ComponentId, Fraction>();
  const add = (id: ComponentId, weight: Fraction): void => {
    weights.set(id, plus(weights.get(id) ?? ZERO, weight));
  };
  for (const [, { component, factor, less = [], apart = [] }] of termsOf(system)) {
    const weight = exact(factor);
    add(component, weight);
    for (const id of [...less, ...apart]) add(id, minus(ZERO, weight));
  }
  return weights;
}

/** How far what is given lies from what is computed; nothing where the two touch. */
export function gapBetween(given: ReadFigure, computed: Interval): Fraction {
  const { low, high } = endsOf(given);
  return greatest(ZERO, greatest(minus(low, computed.high), minus(computed.low, high)));
}

function endsOf(f: ReadFigure | undefined): Interval {
  return { low: f?.low ?? f?.value ?? ZERO, high: f?.high ?? f?.value ?? ZERO };
}
