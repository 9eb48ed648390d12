import { type Language, say } from "../document/language.ts";
import { type ComponentId, components } from "../food/components.ts";
import { componentsOf, type EnergyPart, termsOf } from "../food/energy.ts";
import { isZero, least, minus, ONE, sum } from "../number/exact.ts";
import { apportion } from "../number/share.ts";
import type { EatenPortion } from "../person/portion/eaten.ts";
import { type EnergyBy, energySystem } from "../sheet/energy.ts";
import type { EnergyPicture, EnergySlice } from "./card.ts";

/** Energy shares of all dishes together, with the system that they were reckoned by. */
export interface CardEnergy {
  readonly picture: EnergyPicture;
  readonly source: string;
  /** The components that it is reckoned from. */
  readonly reads: readonly ComponentId[];
}

/** Nothing where they bring no energy that can be told apart. Throws `energy-system-unknown`. */
export function energyOf(eaten: EatenPortion, by: EnergyBy, language: Language): CardEnergy | undefined {
  const { system } = energySystem(by);
  const energies = eaten.energies(by);
  const parts = termsOf(system).flatMap(([part, { component }]) => {
    const energy = energies.get(part);
    return energy ? [{ part, component, energy }] : [];
  });
  const values = parts.map(({ energy }) => energy.value);
  if (isZero(sum(values))) return undefined;
  const percents = apportion(100n, values);
  const slices = parts.map(({ part, component }, i) => sliceOf(part, component, percents[i] ?? 0n, language));
  const seen = slices.filter(({ percent }) => percent > 0);
  const open = parts
    .filter(({ energy }) => !energy.complete)
    .map(({ part, component }) => nameOf(part, component, language));
  const told = parts.map(({ energy }) => energy.coverage).reduce(least, ONE);
  const list = seen.map(({ name, shown }) => `${name} ${shown}`).join(", ");
  const rest = open.length > 0 ? [say(language, "not all known: {parts}", { parts: open.join(", ") })] : [];
  return {
    picture: {
      slices: seen,
      open,
      untold: minus(ONE, told),
      spoken: [say(language, "Energy: {shares}", { shares: list }), ...rest].join("; "),
    },
    source: system.source,
    reads: componentsOf(system),
  };
}

function sliceOf(part: EnergyPart, component: ComponentId, share: bigint, language: Language): EnergySlice {
  return {
    part,
    name: nameOf(part, component, language),
    percent: Number(share),
    shown: say(language, "{figure}%", { figure: share.toString() }),
  };
}

/** What carbohydrate is read from is a matter of the system, and no part of its name. */
function nameOf(part: EnergyPart, component: ComponentId, language: Language): string {
  return say(language, part === "carbohydrate" ? "carbohydrate" : components[component].name);
}
