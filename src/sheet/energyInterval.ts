import type { ComponentId } from "../food/components.ts";
import { type EnergySystem, termsOf, weightsOf } from "../food/energy.ts";
import type { ReadFigure } from "../food/figure.ts";
import { type Exact, greatest, isZero, minus, sum, times, ZERO } from "../number/exact.ts";

/** The least and the most that energy may be. */
export interface EnergyInterval {
  readonly low: Exact;
  /** Nothing where a factor is but the least that it may be. */
  readonly high: Exact | undefined;
  /** The most by the factors as they stand. */
  readonly highAsStated: Exact;
}

type FigureOf = (id: ComponentId) => ReadFigure | undefined;

/**
 * The least and most energy of 100 g that the figures allow, kcal; a figure that has no upper limit
 * counts as it stands, and a factor that is the least of several leaves the energy without one. Each
 * component counts once with all that it does, so that what is taken off one constituent and added to
 * another does not vary twice.
 */
export function reckon(system: EnergySystem, figureOf: FigureOf): EnergyInterval {
  const ends = [...weightsOf(system)].map(([id, weight]): Ends => {
    const { low, high } = endsOf(figureOf(id));
    const [a, b] = [times(low, weight), times(high, weight)];
    return weight.n < 0n ? { low: b, high: a } : { low: a, high: b };
  });
  const isOpen = termsOf(system).some(
    ([, { component, atLeast }]) => atLeast && !isZero(endsOf(figureOf(component)).high),
  );
  const highAsStated = sum(ends.map((e) => e.high));
  return { low: sum(ends.map((e) => e.low)), high: isOpen ? undefined : highAsStated, highAsStated };
}

/** How far what is given lies from what is computed; nothing where the two touch. */
export function gapBetween(given: ReadFigure, computed: EnergyInterval): Exact {
  const { low, high } = endsOf(given);
  const above = computed.high ? minus(low, computed.high) : ZERO;
  return greatest(ZERO, greatest(above, minus(computed.low, high)));
}

interface Ends {
  readonly low: Exact;
  readonly high: Exact;
}

function endsOf(f: ReadFigure | undefined): Ends {
  return { low: f?.low ?? f?.value ?? ZERO, high: f?.high ?? f?.value ?? ZERO };
}
