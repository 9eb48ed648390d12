import { byName, leaf, type Refuse, type Schema } from "../document/schema.ts";
import { quote } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import { type ComponentId, componentIds, isComponentId, OWN_PATTERN } from "./components.ts";

/** The id of a component. Its faults have the code `component-unknown`. */
export function componentId(): Schema<ComponentId> {
  const isText = (given: unknown): given is string => typeof given === "string";
  return leaf(
    "a component's id",
    { type: "string", anyOf: [{ enum: componentIds }, { pattern: OWN_PATTERN }] },
    isText,
    (id, refuse) => {
      refuseUnknown(id, refuse);
      return id as ComponentId;
    },
  );
}

/** Values by component. */
export function byComponent<T>(each: Schema<T>): Schema<{ readonly [C in ComponentId]?: T }> {
  return byName(each, { check: refuseUnknown, names: componentIds, pattern: OWN_PATTERN }) as Schema<{
    readonly [C in ComponentId]?: T;
  }>;
}

function refuseUnknown(id: string, refuse: Refuse): void {
  if (isComponentId(id)) return;
  const hint = didYouMean(id, componentIds, "use an id of the component registry");
  refuse(`no component is called ${quote(id)}`, hint, [], "component-unknown");
}
