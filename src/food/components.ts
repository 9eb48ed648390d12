import { fault, quote } from "../number/error.ts";
import { freezeAll } from "../number/freeze.ts";
import { didYouMean } from "../number/near.ts";
import { componentDetails, type DetailId } from "./data/componentDetails.ts";
import { componentRows } from "./data/componentRows.ts";

/** The unit that figures of a component are written and shown in. */
export type ComponentUnit = "kcal" | "g" | "mg" | "µg";

export type ComponentGroup =
  | "energy"
  | "proximate"
  | "carbohydrate"
  | "fattyAcid"
  | "mineral"
  | "vitamin"
  | "carotenoid"
  | "aminoAcid"
  | "other";

/** The id of a component. */
export type ComponentId = ListedId | DetailId;

/** The id of a component that every card and table may list. */
// biome-ignore format: as in the registry below
export type ListedId =
  | "energy"
  | "protein" | "fat" | "carbohydrateByDifference" | "availableCarbohydrate" | "fibre" | "solubleFibre" | "sugars"
  | "addedSugars" | "polyols" | "organicAcids" | "starch" | "water" | "ash" | "alcohol" | "saturatedFat"
  | "monounsaturatedFat" | "polyunsaturatedFat" | "transFat" | "omega3" | "omega6" | "linoleicAcid"
  | "alphaLinolenicAcid" | "epa" | "dpa" | "dha" | "salt"
  | "cholesterol" | "sodium" | "potassium" | "calcium" | "magnesium" | "phosphorus" | "iron" | "zinc"
  | "copper" | "manganese" | "chloride" | "fluoride" | "vitaminC" | "thiamin" | "riboflavin" | "niacin"
  | "niacinEquivalents" | "pantothenicAcid" | "vitaminB6" | "vitaminE" | "choline" | "betaine"
  | "caffeine" | "theobromine" | "coumarin" | "phytate" | "oxalate" | "phytosterols"
  | "selenium" | "iodine" | "chromium" | "molybdenum" | "vitaminARae" | "vitaminARe" | "retinol"
  | "betaCarotene" | "alphaCarotene" | "betaCryptoxanthin" | "lycopene" | "luteinZeaxanthin" | "vitaminD"
  | "vitaminK" | "biotin" | "folate" | "folateDfe" | "foodFolate" | "folicAcid" | "vitaminB12"
  | "tryptophan" | "threonine" | "isoleucine" | "leucine" | "lysine" | "methionine" | "cystine"
  | "phenylalanine" | "tyrosine" | "valine" | "arginine" | "histidine" | "alanine" | "asparticAcid"
  | "glutamicAcid" | "glycine" | "proline" | "serine";

/** One nutrient or constituent of food. */
export interface Component {
  readonly id: ComponentId;
  /** Its identifier in exchanged food tables. */
  readonly tagname: string;
  /** Where the tagname comes from, if it is not on the INFOODS list: from SR28, or it is our own. */
  readonly tagList?: "SR28" | "own";
  /** The unit that INFOODS gives the tagname by default, where it is not the component's `unit` here. */
  readonly tagUnit?: "kJ" | "mg" | "µg";
  readonly name: string;
  readonly unit: ComponentUnit;
  readonly group: ComponentGroup;
}

const listed = /* @__PURE__ */ read(componentRows) as { readonly [C in ListedId]: Component };

/**
 * Every component that the library knows, by id.
 *
 * Tagnames: INFOODS Food Component Identifiers (Klensin, Feskanich, Lin, Truswell & Southgate 1989,
 * with the FAO/INFOODS revisions to 2010), read in the published tagname files. `VITA_RAE` and
 * `LUT+ZEA` are not on that list: they are the names used by the USDA National Nutrient Database for
 * Standard Reference, Release 28 (2016). INFOODS `VITA` is retinol equivalents, not activity
 * equivalents; `CHOAVLDF` is carbohydrate by difference less fibre; `F18D3CN3` and `CRYPXB` name the
 * isomer where shorter tags leave it open. Single sugars, fatty acids, vitamers and sterols come last:
 * tables list them where a recipe holds some, and records where they are asked for.
 */
export const components: { readonly [C in ComponentId]: Component } = /* @__PURE__ */ registry();

/** The registry, in which a component of one's own is found as well, though it is not listed. */
function registry(): { readonly [C in ComponentId]: Component } {
  const known = freezeAll({ ...listed, ...read(componentDetails) });
  const others = new Proxy(Object.prototype, {
    get: (target, key) =>
      (typeof key === "string" && ownDefinition(key)) || (Reflect.get(target, key) as unknown),
  });
  return Object.freeze(Object.assign(Object.create(others), known));
}

/**
 * The id of a component that the registry lacks: a name and a unit, `taurine (mg)`, and a group where it has
 * one, `elaidic acid (g, fattyAcid)`: as a regular expression. Capitals alone are a tagname of the registry, or
 * of nothing that is known.
 */
export const OWN_PATTERN =
  "^(?![A-Z0-9_+.-]+ )([^\\s()](?:[^()]{0,78}[^\\s()])?) \\((kcal|g|mg|µg)(?:, (energy|proximate|carbohydrate|fattyAcid|mineral|vitamin|carotenoid|aminoAcid|other))?\\)$";

const OWN: RegExp = /* @__PURE__ */ new RegExp(OWN_PATTERN);

function ownDefinition(id: string): Component | undefined {
  const [, name, unit, group = "other"] = OWN.exec(id) ?? [];
  if (name === undefined || Object.hasOwn(components, name)) return undefined;
  return Object.freeze({ id, tagname: name, tagList: "own", name, unit, group } as Component);
}

/**
 * Names a component that the registry lacks: its id tells its name, the unit of its figures and, where told,
 * its group, so that foods, recipes, sheets and all that is made of them know it without being told again.
 * Food tables that are exchanged head its column so.
 *
 * Throws `component-unknown` for a name with brackets in it, one of capitals alone, or one that the registry has.
 *
 * @example
 * ```ts
 * const taurine = ownComponent("taurine", "mg");
 * const foods = foodTable([{ id: "mussels", name: "Mussels, raw", source: "own analysis", per100g: { [taurine]: 655 } }]);
 * const pot = sheet({ name: "Pot", portions: 2, lines: [{ food: "mussels", amount: "400 g" }] }, foods);
 * console.log(taurine, `${pot.portion(taurine)}`); // => taurine (mg) 1310 mg
 * ```
 */
export function ownComponent(name: string, unit: ComponentUnit, group?: ComponentGroup): ComponentId {
  const isText = [name, unit, group ?? ""].every((each: unknown) => typeof each === "string");
  const id = isText ? `${name} (${unit}${group === undefined ? "" : `, ${group}`})` : "";
  const has = componentIds.find((each) => each === name || components[each].tagname === name);
  if (has === undefined && isComponentId(id)) return id;
  const hint =
    has === undefined
      ? 'give a name in small letters, without brackets, and a unit: ownComponent("taurine", "mg")'
      : `use ${has}`;
  throw fault("component-unknown", `${quote(id)} cannot be a component of one's own`, hint);
}

/** Whether an id is that of a component which the registry lacks. */
export function isOwnComponent(id: string): id is ComponentId {
  return !Object.hasOwn(components, id) && ownDefinition(id) !== undefined;
}

/** Places of components of one's own behind those of the registry: where rows of figures keep them, and no more. */
const ownPlaces: Map<string, number> = /* @__PURE__ */ new Map();
const ownAt: ComponentId[] = [];
let places: ReadonlyMap<string, number> | undefined;

/** Where a component stands in rows of figures. Throws `component-unknown`. */
export function componentPlace(id: ComponentId): number {
  places ??= new Map(componentIds.map((each, i) => [each, i]));
  return places.get(id) ?? ownPlaces.get(id) ?? ownPlace(component(id).id);
}

function ownPlace(id: ComponentId): number {
  const place = componentIds.length + ownAt.length;
  ownAt.push(id);
  ownPlaces.set(id, place);
  return place;
}

/** The component that stands at a place. */
export function componentAt(place: number): ComponentId {
  return componentIds[place] ?? (ownAt[place - componentIds.length] as ComponentId);
}

/** Components by id, from rows that name no more than they have to. */
function read(rows: string): { readonly [id: string]: Component } {
  const made = rows
    .trim()
    .split("\n")
    .map((row) => {
      const [id = "", tagname, name, unit, group, tagUnit, tagList] = row.split("|");
      const found = {
        id,
        tagname,
        name,
        unit,
        group,
        ...(tagUnit && { tagUnit }),
        ...(tagList && { tagList }),
      };
      return [id, found];
    });
  return Object.fromEntries(made);
}

/** Components that tables and records list without being asked: all but single sugars, fatty acids and the like. */
export const listedIds: readonly ComponentId[] = /* @__PURE__ */ Object.keys(listed) as ComponentId[];

/** All component ids, in the order of the registry. */
export const componentIds: readonly ComponentId[] = /* @__PURE__ */ Object.keys(components) as ComponentId[];

/** Whether a component is listed without being asked for. */
export function isListed(id: ComponentId): boolean {
  return Object.hasOwn(listed, id);
}

/** Whether a value from outside is the id of a component. */
export function isComponentId(id: unknown): id is ComponentId {
  return typeof id === "string" && (Object.hasOwn(components, id) || isOwnComponent(id));
}

/**
 * The component with an id.
 *
 * Throws `component-unknown`, with the ids that come nearest.
 *
 * @example
 * ```ts
 * component("iron").unit; // => mg
 * ```
 */
export function component(id: string): Component {
  if (isComponentId(id)) return components[id];
  throw fault("component-unknown", `${quote(id)} is not a component`, hintFor(id));
}

/** Everyday words that no id resembles. */
const everydayWords: Readonly<Record<string, string>> = {
  calories: "energy",
  kcal: "energy",
  kj: "energy",
  kilojoules: "energy",
  carb: "availableCarbohydrate or carbohydrateByDifference",
  carbs: "availableCarbohydrate or carbohydrateByDifference",
  carbohydrate: "availableCarbohydrate or carbohydrateByDifference",
  carbohydrates: "availableCarbohydrate or carbohydrateByDifference",
  fiber: "fibre",
  lutein: "luteinZeaxanthin",
};

function hintFor(id: unknown): string {
  if (typeof id !== "string") return LISTED;
  const wanted = id.toLowerCase().trim();
  const word = Object.hasOwn(everydayWords, wanted) ? everydayWords[wanted] : undefined;
  const meant = word ?? componentIds.find((each) => components[each].tagname.toLowerCase() === wanted);
  if (meant) return `did you mean ${meant}?`;
  return didYouMean(id.replace(/[\s-]/g, ""), componentIds, LISTED);
}

const LISTED = "components lists every component by its id";
