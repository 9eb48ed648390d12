import { word } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import { type ComponentId, component, components } from "../../food/components.ts";
import { fraction } from "../../number/exact.ts";
import { uncloned } from "../../number/uncloned.ts";
import type { Facts } from "../person.ts";
import { labelCodex } from "./labelCodex.ts";
import { labelEu } from "./labelEu.ts";
import { labelUs } from "./labelUs.ts";
import { type ReferenceFigure, resolveRow } from "./resolve.ts";
import { readStage } from "./stage.ts";
import type { LabelTable } from "./table.ts";

export type LabelAuthority = "eu" | "us" | "codex";

/** Reference values that food labels state their per cents of. */
export interface LabelReference {
  /** @internal Refuses a structured clone, which has no functions. */
  readonly cloned?: symbol;
  readonly authority: LabelAuthority;
  /** Whom the figures stand for. */
  readonly for: string;
  /** The figure that counts this very component; there is none for another form of it. Throws `component-unknown`. */
  get(id: ComponentId): ReferenceFigure | undefined;
  readonly components: readonly ComponentId[];
  /** All figures, for `JSON.stringify`. */
  readonly references: readonly ReferenceFigure[];
}

export const labelTables: { readonly [A in LabelAuthority]: LabelTable } = {
  eu: labelEu,
  us: labelUs,
  codex: labelCodex,
};

/** Labels speak to nobody in particular: a column of one, which everybody is in. */
const anybody: Facts = {
  sex: "female",
  age: /* @__PURE__ */ fraction(30n),
  mass: /* @__PURE__ */ fraction(60n),
  breastfeeding: false,
  conditions: [],
  allergens: [],
};

/**
 * Reference values for food labels: nutrient reference values and reference intakes of Regulation
 * (EU) 1169/2011, Daily Values of the United States, nutrient reference values of the Codex.
 *
 * Throws `authority-unknown`.
 *
 * @example
 * ```ts
 * labelReference("eu").get("vitaminC")?.value; // => 80
 * ```
 */
export function labelReference(authority: LabelAuthority): LabelReference {
  read(word(Object.keys(labelTables) as LabelAuthority[]), authority, "authority-unknown");
  const table = labelTables[authority];
  const figures = new Map<ComponentId, ReferenceFigure>();
  const found = { source: table.source, stages: [readStage("1+")] };
  for (const row of table.references) {
    const figure = resolveRow(found, row, anybody, { phytate: "600" });
    if (figure && figure !== "energy") figures.set(row.of[0], { ...figure, kind: row.kind });
  }
  return {
    cloned: uncloned,
    authority,
    for: table.for,
    get: (id) => figures.get(component(id).id as ComponentId),
    components: (Object.keys(components) as ComponentId[]).filter((id) => figures.has(id)),
    references: [...figures.values()],
  };
}
