import { leaf, type Schema } from "../document/schema.ts";
import { componentIds, isComponentId, OWN_PATTERN } from "../food/components.ts";
import { quote } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import type { Quantity } from "./demand.ts";

/** The schema of a component's id or `mass`, or one of a few more words. */
export function quantity<const W extends string = never>(more: readonly W[] = []): Schema<Quantity | W> {
  const words: readonly string[] = ["mass", ...more];
  const names = [...componentIds, ...words];
  const isText = (given: unknown): given is string => typeof given === "string";
  return leaf(
    "a component's id",
    { type: "string", anyOf: [{ enum: names }, { pattern: OWN_PATTERN }] },
    isText,
    (given, refuse) => {
      if (!isComponentId(given) && !words.includes(given)) {
        const hint = didYouMean(given, names, `use a component id, or ${words.join(", ")}`);
        refuse(`no component is called ${quote(given)}`, hint);
      }
      return given as Quantity | W;
    },
  );
}
