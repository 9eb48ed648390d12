import { type Exact, exact, minus, plus, ZERO } from "../number/exact.ts";
import { freezeAll } from "../number/freeze.ts";
import type { ComponentId } from "./components.ts";
import { atwaterOwn } from "./data/energyAtwaterOwn.ts";
import { eu1169 } from "./data/energyEu1169.ts";
import { atwaterGeneral } from "./data/energyFao77.ts";
import { us101B, us101C } from "./data/energyUs101.ts";
import type { EnergyPart, EnergySystem, EnergyTerm } from "./energySystem.ts";
import type { FoodInput } from "./food.ts";

export type { EnergyPart, EnergySystem, EnergyTerm } from "./energySystem.ts";

export type EnergySystemId = "atwater-general" | "atwater-own" | "eu-1169" | "us-101.9-b" | "us-101.9-c";

/**
 * Named factor systems. Energy shares always say by which of them they were reckoned. A system of
 * one's own may stand in for a named one: a copy in which one factor is another, say.
 */
export const energySystems: { readonly [S in EnergySystemId]: EnergySystem } = /* @__PURE__ */ freezeAll({
  "atwater-general": atwaterGeneral,
  "atwater-own": atwaterOwn,
  "eu-1169": eu1169,
  "us-101.9-b": us101B,
  "us-101.9-c": us101C,
});

/** The constituents of a system with their terms, in order. */
export function termsOf(system: EnergySystem): readonly (readonly [EnergyPart, EnergyTerm])[] {
  return Object.entries(system.parts) as [EnergyPart, EnergyTerm][];
}

/** A system as one food has it: with its own factors, or nothing where it has none and needs them. */
export function systemFor(system: EnergySystem, food: FoodInput): EnergySystem | undefined {
  if (system.factors !== "food") return system;
  const own = food.energyFactors;
  const { protein, fat, carbohydrate, ...rest } = system.parts;
  if (!own || !protein || !fat || !carbohydrate) return undefined;
  const { protein: p, fat: f, carbohydrate: c } = own;
  return {
    ...system,
    parts: {
      protein: { ...protein, factor: p },
      fat: { ...fat, factor: f },
      carbohydrate: { ...carbohydrate, factor: c },
      ...rest,
    },
  };
}

/** The factors that a food's energy was most likely computed by, told from what it gives. */
export function likelySystem(food: FoodInput | undefined): {
  readonly name: EnergySystemId;
  readonly system: EnergySystem;
} {
  if (food?.energyFactors) return { name: "atwater-own", system: atwaterOwn };
  const gives = (id: ComponentId): boolean => food?.per100g[id] !== undefined;
  return gives("availableCarbohydrate") && !gives("carbohydrateByDifference")
    ? { name: "eu-1169", system: eu1169 }
    : { name: "atwater-general", system: atwaterGeneral };
}

/** What a gram of each component adds to the energy, kcal; below 0 where it takes more off than it adds. */
export function weightsOf(system: EnergySystem): ReadonlyMap<ComponentId, Exact> {
  const weights = new Map<ComponentId, Exact>();
  const add = (id: ComponentId, weight: Exact): void => {
    weights.set(id, plus(weights.get(id) ?? ZERO, weight));
  };
  for (const [, { component, factor, less = [], apart = [] }] of termsOf(system)) {
    const weight = exact(factor);
    add(component, weight);
    for (const id of [...less, ...apart]) add(id, minus(ZERO, weight));
  }
  return weights;
}

/** The components that a system reads. */
export function componentsOf(system: EnergySystem): readonly ComponentId[] {
  const all = termsOf(system).flatMap(([, { component, less = [], apart = [] }]) => [
    component,
    ...less,
    ...apart,
  ]);
  return [...new Set(all)];
}
