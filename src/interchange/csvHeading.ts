import { type ComponentId, componentIds, components, isOwnComponent } from "../food/components.ts";
import type { FoodInput } from "../food/food.ts";
import { figureUnit } from "./units.ts";

/** Fields of a food that have a column of their own, as plain text. */
const PLAIN = [
  "id",
  "name",
  "kitchenName",
  "state",
  "group",
  "origin",
  "source",
  "density",
  "measuredWith",
  "edibleShare",
  "aisle",
] as const;
/** Fields that hold more than text: JSON. */
// biome-ignore format: a list
const JSON_FIELDS = ["otherNames", "measures", "divides", "energyFactors", "fortifiedWith", "allergens", "cautions", "packs", "price", "keepsDays", "meta"] as const;

type AboutField = keyof Omit<FoodInput, "per100g">;

/** Every field of a food but its figures: a new one that has no place here does not compile. */
export const aboutFields: readonly (Exclude<AboutField, Listed> extends never ? AboutField : never)[] = [
  ...PLAIN,
  ...JSON_FIELDS,
];

type Listed = (typeof PLAIN)[number] | (typeof JSON_FIELDS)[number];

/** What an estimate says of itself that a table sets in brackets. */
export const ESTIMATE = "an estimate, as its table marks it";

/** The column of what figures say beside their value, as JSON by component. */
export const DETAILS = "figures";

export function isJsonField(field: string): boolean {
  return JSON_FIELDS.some((each) => each === field);
}

/** What a column holds, or why nothing is read from it. */
export type Heading =
  | { readonly kind: "component"; readonly component: ComponentId; readonly unit: string }
  | { readonly kind: "about"; readonly field: (typeof aboutFields)[number] }
  | { readonly kind: "details" }
  | { readonly kind: "no-unit"; readonly component: ComponentId }
  | { readonly kind: "none"; readonly unit: string };

/** Tagnames that other tables spell otherwise; the unit that a tag itself names goes with it. */
// biome-ignore format: a table
const OTHER_TAGS: { readonly [tag: string]: readonly [ComponentId, string?] } = {
  ENERC_KCAL: ["energy", "kcal"], ENERC_KJ: ["energy", "kJ"], FLD: ["fluoride"], CRYPX: ["betaCryptoxanthin"],
  F20D5: ["epa"], F22D5: ["dpa"], F22D6: ["dha"], F18D3CN6: ["gammaLinolenicAcid"],
  TRP_G: ["tryptophan", "g"], THR_G: ["threonine", "g"], ILE_G: ["isoleucine", "g"], LEU_G: ["leucine", "g"],
  LYS_G: ["lysine", "g"], MET_G: ["methionine", "g"], CYS_G: ["cystine", "g"], PHE_G: ["phenylalanine", "g"],
  TYR_G: ["tyrosine", "g"], VAL_G: ["valine", "g"], ARG_G: ["arginine", "g"], HISTN_G: ["histidine", "g"],
  ALA_G: ["alanine", "g"], ASP_G: ["asparticAcid", "g"], GLU_G: ["glutamicAcid", "g"], GLY_G: ["glycine", "g"],
  PRO_G: ["proline", "g"], SER_G: ["serine", "g"],
};

/** Reads a heading: a field of a food, or an INFOODS tagname or component id with its unit, `FE (mg)`, `iron [mg]`. */
export function readHeading(heading: string): Heading {
  const written = heading.trim();
  if (written === DETAILS) return { kind: "details" };
  if (isOwnComponent(written))
    return { kind: "component", component: written, unit: components[written].unit };
  const field = aboutFields.find((each) => each === written);
  if (field) return { kind: "about", field };
  const [, name = "", unit = ""] = /^(.*?)\s*(?:[([,]\s*([^()[\],]+?)\s*[)\]]?)?$/s.exec(written) ?? [];
  const [component, own] = tagged(name);
  const told = unit === "" ? own : figureUnit(unit);
  if (component === undefined) return { kind: "none", unit };
  if (unit === "" && own === undefined) return { kind: "no-unit", component };
  // A tag that names its unit has no other.
  if (told === undefined || (own !== undefined && told !== own)) return { kind: "none", unit };
  return { kind: "component", component, unit: told };
}

function tagged(name: string): readonly [ComponentId?, string?] {
  const id = componentIds.find((each) => each === name || components[each].tagname === name);
  if (id) return [id];
  return Object.hasOwn(OTHER_TAGS, name) ? (OTHER_TAGS[name] ?? []) : [];
}

/** How a component's column is headed: its tagname and its unit. */
export function headingFor(id: ComponentId): string {
  return isOwnComponent(id as string) ? id : `${components[id].tagname} (${components[id].unit})`;
}
