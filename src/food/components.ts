import { fault, quote } from "../number/error.ts";
import { freezeAll } from "../number/freeze.ts";
import { didYouMean } from "../number/near.ts";
import { componentDetails, type DetailId } from "./data/componentDetails.ts";

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

// biome-ignore format: one component a line
const listed: { readonly [C in ListedId]: Component } = {
  energy: { id: "energy", tagname: "ENERC", name: "energy", unit: "kcal", group: "energy", tagUnit: "kJ" },

  protein: { id: "protein", tagname: "PROCNT", name: "protein", unit: "g", group: "proximate" },
  fat: { id: "fat", tagname: "FAT", name: "fat", unit: "g", group: "proximate" },
  carbohydrateByDifference: { id: "carbohydrateByDifference", tagname: "CHOCDF", name: "carbohydrate by difference", unit: "g", group: "proximate" },
  availableCarbohydrate: { id: "availableCarbohydrate", tagname: "CHOAVLDF", name: "available carbohydrate", unit: "g", group: "carbohydrate" },
  fibre: { id: "fibre", tagname: "FIBTG", name: "fibre", unit: "g", group: "carbohydrate" },
  solubleFibre: { id: "solubleFibre", tagname: "FIBSOL", name: "soluble fibre", unit: "g", group: "carbohydrate" },
  sugars: { id: "sugars", tagname: "SUGAR", name: "sugars", unit: "g", group: "carbohydrate" },
  addedSugars: { id: "addedSugars", tagname: "SUGAD", name: "added sugars", unit: "g", group: "carbohydrate" },
  polyols: { id: "polyols", tagname: "POLYL", name: "polyols", unit: "g", group: "carbohydrate", tagUnit: "mg" },
  organicAcids: { id: "organicAcids", tagname: "OA", name: "organic acids", unit: "g", group: "carbohydrate" },
  starch: { id: "starch", tagname: "STARCH", name: "starch", unit: "g", group: "carbohydrate" },
  water: { id: "water", tagname: "WATER", name: "water", unit: "g", group: "proximate" },
  ash: { id: "ash", tagname: "ASH", name: "ash", unit: "g", group: "proximate" },
  alcohol: { id: "alcohol", tagname: "ALC", name: "alcohol", unit: "g", group: "proximate" },
  saturatedFat: { id: "saturatedFat", tagname: "FASAT", name: "saturated fat", unit: "g", group: "fattyAcid" },
  monounsaturatedFat: { id: "monounsaturatedFat", tagname: "FAMS", name: "monounsaturated fat", unit: "g", group: "fattyAcid" },
  polyunsaturatedFat: { id: "polyunsaturatedFat", tagname: "FAPU", name: "polyunsaturated fat", unit: "g", group: "fattyAcid" },
  transFat: { id: "transFat", tagname: "FATRN", name: "trans fat", unit: "g", group: "fattyAcid" },
  omega3: { id: "omega3", tagname: "FAPUN3", name: "omega-3 fatty acids", unit: "g", group: "fattyAcid" },
  omega6: { id: "omega6", tagname: "FAPUN6", name: "omega-6 fatty acids", unit: "g", group: "fattyAcid" },
  linoleicAcid: { id: "linoleicAcid", tagname: "F18D2CN6", name: "linoleic acid (18:2 n-6)", unit: "g", group: "fattyAcid" },
  alphaLinolenicAcid: { id: "alphaLinolenicAcid", tagname: "F18D3CN3", name: "alpha-linolenic acid (18:3 n-3)", unit: "g", group: "fattyAcid" },
  epa: { id: "epa", tagname: "F20D5N3", name: "EPA (20:5 n-3)", unit: "g", group: "fattyAcid" },
  dpa: { id: "dpa", tagname: "F22D5N3", name: "DPA (22:5 n-3)", unit: "g", group: "fattyAcid" },
  dha: { id: "dha", tagname: "F22D6N3", name: "DHA (22:6 n-3)", unit: "g", group: "fattyAcid" },
  salt: { id: "salt", tagname: "NACL", name: "salt", unit: "g", group: "mineral", tagUnit: "mg" },

  cholesterol: { id: "cholesterol", tagname: "CHOLE", name: "cholesterol", unit: "mg", group: "other" },
  sodium: { id: "sodium", tagname: "NA", name: "sodium", unit: "mg", group: "mineral" },
  potassium: { id: "potassium", tagname: "K", name: "potassium", unit: "mg", group: "mineral" },
  calcium: { id: "calcium", tagname: "CA", name: "calcium", unit: "mg", group: "mineral" },
  magnesium: { id: "magnesium", tagname: "MG", name: "magnesium", unit: "mg", group: "mineral" },
  phosphorus: { id: "phosphorus", tagname: "P", name: "phosphorus", unit: "mg", group: "mineral" },
  iron: { id: "iron", tagname: "FE", name: "iron", unit: "mg", group: "mineral" },
  zinc: { id: "zinc", tagname: "ZN", name: "zinc", unit: "mg", group: "mineral" },
  copper: { id: "copper", tagname: "CU", name: "copper", unit: "mg", group: "mineral" },
  manganese: { id: "manganese", tagname: "MN", name: "manganese", unit: "mg", group: "mineral", tagUnit: "µg" },
  chloride: { id: "chloride", tagname: "CLD", name: "chloride", unit: "mg", group: "mineral" },
  fluoride: { id: "fluoride", tagname: "FD", name: "fluoride", unit: "mg", group: "mineral", tagUnit: "µg" },
  vitaminC: { id: "vitaminC", tagname: "VITC", name: "vitamin C", unit: "mg", group: "vitamin" },
  thiamin: { id: "thiamin", tagname: "THIA", name: "thiamin", unit: "mg", group: "vitamin" },
  riboflavin: { id: "riboflavin", tagname: "RIBF", name: "riboflavin", unit: "mg", group: "vitamin" },
  niacin: { id: "niacin", tagname: "NIA", name: "niacin, preformed", unit: "mg", group: "vitamin" },
  niacinEquivalents: { id: "niacinEquivalents", tagname: "NIAEQ", name: "niacin equivalents", unit: "mg", group: "vitamin" },
  pantothenicAcid: { id: "pantothenicAcid", tagname: "PANTAC", name: "pantothenic acid", unit: "mg", group: "vitamin" },
  vitaminB6: { id: "vitaminB6", tagname: "VITB6A", name: "vitamin B6", unit: "mg", group: "vitamin" },
  vitaminE: { id: "vitaminE", tagname: "TOCPHA", name: "vitamin E (alpha-tocopherol)", unit: "mg", group: "vitamin" },
  choline: { id: "choline", tagname: "CHOLN", name: "choline", unit: "mg", group: "vitamin" },
  betaine: { id: "betaine", tagname: "BETN", name: "betaine", unit: "mg", group: "other" },
  caffeine: { id: "caffeine", tagname: "CAFFN", name: "caffeine", unit: "mg", group: "other" },
  theobromine: { id: "theobromine", tagname: "THEBRN", name: "theobromine", unit: "mg", group: "other" },
  coumarin: { id: "coumarin", tagname: "COUMARIN", name: "coumarin", unit: "mg", group: "other", tagList: "own" },
  phytate: { id: "phytate", tagname: "PHYTAC", name: "phytate", unit: "mg", group: "other" },
  oxalate: { id: "oxalate", tagname: "OXALAC", name: "oxalate", unit: "mg", group: "other" },
  phytosterols: { id: "phytosterols", tagname: "PHYSTR", name: "phytosterols", unit: "mg", group: "other" },

  selenium: { id: "selenium", tagname: "SE", name: "selenium", unit: "µg", group: "mineral" },
  iodine: { id: "iodine", tagname: "ID", name: "iodine", unit: "µg", group: "mineral" },
  chromium: { id: "chromium", tagname: "CR", name: "chromium", unit: "µg", group: "mineral" },
  molybdenum: { id: "molybdenum", tagname: "MO", name: "molybdenum", unit: "µg", group: "mineral" },
  vitaminARae: { id: "vitaminARae", tagname: "VITA_RAE", name: "vitamin A, retinol activity equivalents", unit: "µg", group: "vitamin", tagList: "SR28" },
  vitaminARe: { id: "vitaminARe", tagname: "VITA", name: "vitamin A, retinol equivalents", unit: "µg", group: "vitamin" },
  retinol: { id: "retinol", tagname: "RETOL", name: "retinol", unit: "µg", group: "vitamin" },
  betaCarotene: { id: "betaCarotene", tagname: "CARTB", name: "beta-carotene", unit: "µg", group: "carotenoid" },
  alphaCarotene: { id: "alphaCarotene", tagname: "CARTA", name: "alpha-carotene", unit: "µg", group: "carotenoid" },
  betaCryptoxanthin: { id: "betaCryptoxanthin", tagname: "CRYPXB", name: "beta-cryptoxanthin", unit: "µg", group: "carotenoid" },
  lycopene: { id: "lycopene", tagname: "LYCPN", name: "lycopene", unit: "µg", group: "carotenoid" },
  luteinZeaxanthin: { id: "luteinZeaxanthin", tagname: "LUT+ZEA", name: "lutein and zeaxanthin", unit: "µg", group: "carotenoid", tagList: "SR28" },
  vitaminD: { id: "vitaminD", tagname: "VITD", name: "vitamin D (D2 and D3)", unit: "µg", group: "vitamin" },
  vitaminK: { id: "vitaminK", tagname: "VITK1", name: "vitamin K (phylloquinone)", unit: "µg", group: "vitamin" },
  biotin: { id: "biotin", tagname: "BIOT", name: "biotin", unit: "µg", group: "vitamin" },
  folate: { id: "folate", tagname: "FOL", name: "folate, total", unit: "µg", group: "vitamin" },
  folateDfe: { id: "folateDfe", tagname: "FOLDFE", name: "folate, dietary folate equivalents", unit: "µg", group: "vitamin" },
  foodFolate: { id: "foodFolate", tagname: "FOLFD", name: "folate, naturally in food", unit: "µg", group: "vitamin" },
  folicAcid: { id: "folicAcid", tagname: "FOLAC", name: "folic acid", unit: "µg", group: "vitamin" },
  vitaminB12: { id: "vitaminB12", tagname: "VITB12", name: "vitamin B12", unit: "µg", group: "vitamin" },

  tryptophan: { id: "tryptophan", tagname: "TRP", name: "tryptophan", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  threonine: { id: "threonine", tagname: "THR", name: "threonine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  isoleucine: { id: "isoleucine", tagname: "ILE", name: "isoleucine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  leucine: { id: "leucine", tagname: "LEU", name: "leucine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  lysine: { id: "lysine", tagname: "LYS", name: "lysine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  methionine: { id: "methionine", tagname: "MET", name: "methionine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  cystine: { id: "cystine", tagname: "CYS", name: "cystine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  phenylalanine: { id: "phenylalanine", tagname: "PHE", name: "phenylalanine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  tyrosine: { id: "tyrosine", tagname: "TYR", name: "tyrosine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  valine: { id: "valine", tagname: "VAL", name: "valine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  arginine: { id: "arginine", tagname: "ARG", name: "arginine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  histidine: { id: "histidine", tagname: "HIS", name: "histidine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  alanine: { id: "alanine", tagname: "ALA", name: "alanine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  asparticAcid: { id: "asparticAcid", tagname: "ASP", name: "aspartic acid", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  glutamicAcid: { id: "glutamicAcid", tagname: "GLU", name: "glutamic acid", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  glycine: { id: "glycine", tagname: "GLY", name: "glycine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  proline: { id: "proline", tagname: "PRO", name: "proline", unit: "g", group: "aminoAcid", tagUnit: "mg" },
  serine: { id: "serine", tagname: "SER", name: "serine", unit: "g", group: "aminoAcid", tagUnit: "mg" },
};

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
export const components: { readonly [C in ComponentId]: Component } = /* @__PURE__ */ freezeAll({
  ...listed,
  ...details(),
});

/** Components of which rows name no more than they have to. */
function details(): { readonly [C in DetailId]: Component } {
  const rows = componentDetails.trim().split("\n");
  const made = rows.map((row): readonly [string, Component] => {
    const [id = "", tagname = "", name = "", unit, group, tagUnit, tagList] = row.split("|");
    const found = {
      id,
      tagname,
      name,
      unit,
      group,
      ...(tagUnit && { tagUnit }),
      ...(tagList && { tagList }),
    };
    return [id, found as Component];
  });
  return Object.fromEntries(made) as { readonly [C in DetailId]: Component };
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
  return typeof id === "string" && Object.hasOwn(components, id);
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
