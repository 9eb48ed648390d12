import type { ComponentId } from "../food/components.ts";
import { type EnergyPart, type EnergySystem, termsOf } from "../food/energy.ts";
import { type Exact, exact, negate, sum, times } from "../number/exact.ts";
import { lineEnergies } from "./energy.ts";
import type { Sheet } from "./sheet.ts";
import { type Spread, spreadOf, type Weighing } from "./spreadOf.ts";

/** Energy reckoned by factors, kcal, to first order. */
export interface EnergySpread extends Spread {
  readonly value: Exact;
}

/**
 * The energy of a batch or a line by a system's factors, of one constituent or of all, and what it rests on: each
 * component that the system reads counts with its factor, one that it takes off with the factor below 0.
 */
export function energySpread(
  s: Sheet,
  system: EnergySystem,
  part: EnergyPart | undefined,
  weighing: (line: string) => Weighing | undefined,
  only?: string,
): EnergySpread {
  const wanted = termsOf(system).map(([name]) => part === undefined || part === name);
  const lines = s.plan.lines.map(({ line }, i) => ({ i, key: line.key }));
  const energies = lines
    .filter(({ key }) => only === undefined || key === only)
    .flatMap(({ i }) => lineEnergies(s, i, system, (term) => term.factor).filter((_, at) => wanted[at]));
  const spreads = [...weights(system, part)].map(([id, weight]): Spread => {
    const { terms, unsaid } = spreadOf(s, id, weighing, only);
    return { terms: terms.map((t) => ({ ...t, slope: times(t.slope, weight) })), unsaid };
  });
  return {
    value: sum(energies.map(({ value }) => value)),
    terms: spreads.flatMap(({ terms }) => terms),
    unsaid: [...new Set(spreads.flatMap(({ unsaid }) => unsaid))],
  };
}

function weights(
  system: EnergySystem,
  part: EnergyPart | undefined,
): readonly (readonly [ComponentId, Exact])[] {
  return termsOf(system)
    .filter(([name]) => part === undefined || part === name)
    .flatMap(([, { component, factor, less = [], apart = [] }]) => {
      const off = negate(exact(factor));
      return [[component, exact(factor)] as const, ...[...less, ...apart].map((id) => [id, off] as const)];
    });
}
