import {
  type ComponentId,
  componentIds,
  isComponentId,
  isOwnComponent,
  listedIds,
} from "../food/components.ts";
import { fault, quote } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import { type Asked, checkAsked } from "./tidy.ts";

/** Which rows are wanted, by what they are of. */
export interface WantedRows {
  /** Components in registry order. */
  readonly ids: readonly ComponentId[];
  /** Whether rows of this are wanted: a component, `mass`, a column of one's own. */
  has(component: string): boolean;
}

/**
 * Reads what records are asked for. Other names than those of components are `mass`, `amount` (as a recipe writes it) and those that the
 * result has of its own; `lacked` are components of its foods that the registry lacks. Throws `table-malformed` for what asks for none, and `component-unknown` for the first name that nothing is called by.
 */
export function wanted(
  asked: Asked,
  own: Iterable<string> = [],
  lacked: readonly ComponentId[] = [],
): WantedRows {
  checkAsked(asked);
  const { components } = asked;
  if (components === undefined) return { ids: [...listedIds, ...lacked], has: () => true };
  const others = new Set([...own, "mass", "amount"]);
  components.forEach((name, i) => {
    if (isComponentId(name) || others.has(name)) return;
    const hint = didYouMean(name, [...componentIds, ...others], "use a component id, or mass");
    throw fault("component-unknown", `no rows are of ${quote(name)}`, hint, ["components", i]);
  });
  const names = new Set(components);
  const ids = [...componentIds.filter((id) => names.has(id)), ...[...names].filter(isOwnComponent)];
  return { ids, has: (name) => names.has(name) };
}
