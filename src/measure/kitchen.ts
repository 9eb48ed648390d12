import { fault, quote } from "../number/error.ts";
import type { Value } from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import { australianKitchen, imperialKitchen, metricKitchen, usKitchen } from "./data/kitchens.ts";
import { type ReadyKitchen, readKitchen } from "./kitchen-check.ts";
import type { Measures } from "./measures.ts";
import type { HouseholdUnit } from "./units.ts";

/** What can be measured where the food is made. */
export interface Kitchen {
  readonly name: string;
  /** Whose spoons and cups lie in the drawer. */
  readonly measures: Measures;
  /** Each spoon and cup that there is, with the parts of one that can be measured beside whole ones. */
  readonly drawer: { readonly [U in HouseholdUnit]?: readonly Value[] };
  /** The scale's step, a mass: `1 g`, `1/4 oz`. Without one nothing can be weighed. */
  readonly scale?: string;
  /** The measuring jug's step, and the least that it can measure: volumes, spoons by `measures`. */
  readonly jug?: { readonly step: string; readonly least: string };
  /** Whether pieces (eggs, onions, slices) may be halved. */
  readonly pieces: "whole" | "half";
}

export type KitchenName = "metric" | "us" | "imperial" | "australian";

/** Kitchens to start from. */
export const kitchens: { readonly [N in KitchenName]: Kitchen } = {
  metric: metricKitchen,
  us: usKitchen,
  imperial: imperialKitchen,
  australian: australianKitchen,
};

/**
 * A kitchen by name, or one of one's own, checked and frozen.
 *
 * Throws `kitchen-malformed` and the codes of `amount` and of measures, all faults at once.
 *
 * @example
 * ```ts
 * kitchen({
 *   name: "boathouse",
 *   measures: "metric",
 *   drawer: { tbsp: [], tsp: ["1/2"] },
 *   scale: "5 g",
 *   pieces: "whole",
 * }).scale; // "5 g"
 * ```
 */
export function kitchen(input: unknown): Kitchen {
  return readyKitchen(input).kitchen;
}

const known: WeakMap<Kitchen, ReadyKitchen> = /* @__PURE__ */ new WeakMap();

/** @internal Reads a kitchen once; one that `kitchen` returned, or a named one, is not read again. */
export function readyKitchen(input: unknown): ReadyKitchen {
  const given = typeof input === "string" ? namedKitchen(input) : input;
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    const hint = `use kitchens.${Object.keys(kitchens).join(", kitchens.")}, or describe your own`;
    throw fault("kitchen-malformed", `${quote(given)} is not a kitchen`, hint);
  }
  const before = known.get(given as Kitchen);
  if (before) return before;
  const made = readKitchen(given);
  known.set(made.kitchen, made);
  const named = Object.values(kitchens).find((each) => each === given);
  if (named) known.set(named, made);
  return made;
}

function namedKitchen(name: string): Kitchen {
  const found = Object.entries(kitchens).find(([each]) => each === name);
  if (found) return found[1];
  const otherwise = `use ${Object.keys(kitchens).join(", ")}, or describe your own`;
  throw fault(
    "kitchen-malformed",
    `no kitchen is called ${quote(name)}`,
    didYouMean(name, Object.keys(kitchens), otherwise),
  );
}
