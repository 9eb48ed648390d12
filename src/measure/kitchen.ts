import { word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { choice, once, readAs, type Schema } from "../document/schema.ts";
import { fault, quote } from "../number/error.ts";
import { freezeAll } from "../number/freeze.ts";
import { didYouMean } from "../number/near.ts";
import { australianKitchen, imperialKitchen, metricKitchen, usKitchen } from "./data/kitchens.ts";
import { type Kitchen, kitchenSchema, type ReadyKitchen } from "./kitchenCheck.ts";

export type { Kitchen } from "./kitchenCheck.ts";

export type KitchenName = "metric" | "us" | "imperial" | "australian";

/** Kitchens to start from. */
export const kitchens: { readonly [N in KitchenName]: Kitchen } = /* @__PURE__ */ freezeAll({
  metric: metricKitchen,
  us: usKitchen,
  imperial: imperialKitchen,
  australian: australianKitchen,
});

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
 * }).scale; // => 5 g
 * ```
 */
export function kitchen(input: unknown): Kitchen {
  return readyKitchen(input).kitchen;
}

/** @internal The schema of a kitchen by name, or one of one's own, read with everything in it. */
export const kitchenGiven: () => Schema<Kitchen> = /* @__PURE__ */ once(() => {
  const names = word(Object.keys(kitchens) as KitchenName[]);
  const like = choice<unknown>([names, kitchenSchema()], () => undefined, "");
  return readAs(like, "a kitchen", kitchen);
});

const known: WeakMap<Kitchen, ReadyKitchen> = /* @__PURE__ */ new WeakMap();

/** @internal Reads a kitchen once; one that `kitchen` returned, or a named one, is not read again. */
export function readyKitchen(input: unknown): ReadyKitchen {
  const given = typeof input === "string" ? namedKitchen(input) : input;
  const before = known.get(given as Kitchen);
  if (before) return before;
  const made = read(kitchenSchema(), given, "kitchen-malformed");
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
