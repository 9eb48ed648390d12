import type { Allergen } from "../allergens.ts";
import type { ComponentId } from "../components.ts";
import type { Origin, State } from "../food.ts";
import type { StarterCaution } from "./cautions.ts";

/**
 * The columns of the starter tables, panel by panel, in the order that a row's figures are written
 * in. `nutrient` is the number of the figure in USDA SR28 (file NUTR_DEF), and `places` the
 * decimals that it is printed with. `scale: 1000` marks a column written in a unit a thousand times smaller
 * than the component's own.
 */
export const panels: { readonly [P in PanelName]: readonly StarterColumn[] } = {
  proximates: [
    { nutrient: "208", places: 0, component: "energy" },
    { nutrient: "203", places: 2, component: "protein" },
    { nutrient: "204", places: 2, component: "fat" },
    { nutrient: "205", places: 2, component: "carbohydrateByDifference" },
    { nutrient: "291", places: 1, component: "fibre" },
    { nutrient: "269", places: 2, component: "sugars" },
    { nutrient: "209", places: 2, component: "starch" },
    { nutrient: "255", places: 2, component: "water" },
    { nutrient: "207", places: 2, component: "ash" },
    { nutrient: "221", places: 1, component: "alcohol" },
  ],
  fats: [
    { nutrient: "606", places: 3, component: "saturatedFat" },
    { nutrient: "645", places: 3, component: "monounsaturatedFat" },
    { nutrient: "646", places: 3, component: "polyunsaturatedFat" },
    { nutrient: "605", places: 3, component: "transFat" },
    { nutrient: "618", places: 3, acid: "18:2" },
    { nutrient: "675", places: 3, acid: "18:2 n-6" },
    { nutrient: "619", places: 3, acid: "18:3" },
    { nutrient: "851", places: 3, acid: "18:3 n-3" },
    { nutrient: "685", places: 3, acid: "18:3 n-6" },
    { nutrient: "620", places: 3, acid: "20:4" },
    { nutrient: "629", places: 3, component: "epa" },
    { nutrient: "631", places: 3, component: "dpa" },
    { nutrient: "621", places: 3, component: "dha" },
    { nutrient: "601", places: 0, component: "cholesterol" },
  ],
  minerals: [
    { nutrient: "307", places: 0, component: "sodium" },
    { nutrient: "306", places: 0, component: "potassium" },
    { nutrient: "301", places: 0, component: "calcium" },
    { nutrient: "304", places: 0, component: "magnesium" },
    { nutrient: "305", places: 0, component: "phosphorus" },
    { nutrient: "303", places: 2, component: "iron" },
    { nutrient: "309", places: 2, component: "zinc" },
    { nutrient: "312", places: 3, component: "copper" },
    { nutrient: "315", places: 3, component: "manganese" },
    { nutrient: "313", places: 1, component: "fluoride", scale: 1000 },
    { nutrient: "317", places: 1, component: "selenium" },
  ],
  vitamins: [
    { nutrient: "401", places: 1, component: "vitaminC" },
    { nutrient: "404", places: 3, component: "thiamin" },
    { nutrient: "405", places: 3, component: "riboflavin" },
    { nutrient: "406", places: 3, component: "niacin" },
    { nutrient: "410", places: 3, component: "pantothenicAcid" },
    { nutrient: "415", places: 3, component: "vitaminB6" },
    { nutrient: "417", places: 0, component: "folate" },
    { nutrient: "432", places: 0, component: "foodFolate" },
    { nutrient: "431", places: 0, component: "folicAcid" },
    { nutrient: "435", places: 0, component: "folateDfe" },
    { nutrient: "418", places: 2, component: "vitaminB12" },
    { nutrient: "323", places: 2, component: "vitaminE" },
    { nutrient: "328", places: 1, component: "vitaminD" },
    { nutrient: "430", places: 1, component: "vitaminK" },
    { nutrient: "421", places: 1, component: "choline" },
  ],
  retinoids: [
    { nutrient: "320", places: 0, component: "vitaminARae" },
    { nutrient: "319", places: 0, component: "retinol" },
    { nutrient: "321", places: 0, component: "betaCarotene" },
    { nutrient: "322", places: 0, component: "alphaCarotene" },
    { nutrient: "334", places: 0, component: "betaCryptoxanthin" },
    { nutrient: "337", places: 0, component: "lycopene" },
    { nutrient: "338", places: 0, component: "luteinZeaxanthin" },
  ],
  others: [
    { nutrient: "454", places: 1, component: "betaine" },
    { nutrient: "262", places: 0, component: "caffeine" },
    { nutrient: "263", places: 0, component: "theobromine" },
    { nutrient: "636", places: 0, component: "phytosterols" },
  ],
  aminoAcids: [
    { nutrient: "501", places: 3, component: "tryptophan" },
    { nutrient: "502", places: 3, component: "threonine" },
    { nutrient: "503", places: 3, component: "isoleucine" },
    { nutrient: "504", places: 3, component: "leucine" },
    { nutrient: "505", places: 3, component: "lysine" },
    { nutrient: "506", places: 3, component: "methionine" },
    { nutrient: "507", places: 3, component: "cystine" },
    { nutrient: "508", places: 3, component: "phenylalanine" },
    { nutrient: "509", places: 3, component: "tyrosine" },
    { nutrient: "510", places: 3, component: "valine" },
    { nutrient: "511", places: 3, component: "arginine" },
    { nutrient: "512", places: 3, component: "histidine" },
    { nutrient: "513", places: 3, component: "alanine" },
    { nutrient: "514", places: 3, component: "asparticAcid" },
    { nutrient: "515", places: 3, component: "glutamicAcid" },
    { nutrient: "516", places: 3, component: "glycine" },
    { nutrient: "517", places: 3, component: "proline" },
    { nutrient: "518", places: 3, component: "serine" },
  ],
};

/** A column: a component of the registry, or a fatty acid that the decoder makes components of. */
export type StarterColumn =
  | ({ readonly component: ComponentId; readonly scale?: 1000 } & Printed)
  | ({ readonly acid: FattyAcid } & Printed);

interface Printed {
  readonly nutrient: string;
  readonly places: number;
}

export type FattyAcid = "18:2" | "18:2 n-6" | "18:3" | "18:3 n-3" | "18:3 n-6" | "20:4";

export type PanelName =
  | "proximates"
  | "fats"
  | "minerals"
  | "vitamins"
  | "retinoids"
  | "others"
  | "aminoAcids";

/** A volume that a food's density can be reckoned from, US customary but for the litre. */
export type VolumeMeasure = "cup" | "fl oz" | "tbsp" | "tsp" | "litre";

/** A volume, or a volume of one form: `tsp, ground`. */
export type SpoonedBy = VolumeMeasure | `${VolumeMeasure}, ${"ground" | "leaves" | "whole"}`;

/**
 * One food, compactly. In a panel, figures stand in the order of its columns, in units of the last decimal
 * that the source prints there (`1315` of protein is 13.15 g): without points and leading zeros the tables
 * take an eighth less room. `-` is not given there, `*` after a figure is "assumed zero" (SR28 source code 7).
 * A letter after it says how the source came by it where nobody measured it (derivation.ts), a digit behind the
 * letter from which of the row's lenders: `414S1` is of the second of them, brought over by solids.
 */
export interface StarterRow extends Partial<Readonly<Record<PanelName, string>>> {
  readonly id: string;
  readonly name: string;
  /** The food's number in SR28. */
  readonly ndb: string;
  /**
   * Standard errors of analysed figures (source code 1) and of how many data points each is the mean, in
   * SR28's NUT_DATA, in all columns, panel after panel: `55:9` is 0.055 of 9 points, and `~3` stands for
   * three columns of which it has none. `npx vitest run test/food/starterStatistics.test.ts` holds them to it.
   */
  readonly errors?: string;
  /** Numbers in SR28 of the foods that some of its figures were taken from. */
  readonly lenders?: string;
  readonly state: State;
  /**
   * Grams of dry matter in 100 g of the food that the figures are of, where this one is that food dried:
   * its figures are then worked out by dry matter, as if it held no water at all.
   */
  readonly dryMatter?: string;
  /** `name grams; name grams`, each for one of it. */
  readonly measures?: string;
  /** The one among `measures` that the density follows from: of the form that a bare spoon of it means. */
  readonly density?: SpoonedBy;
  /** Grams per millilitre as filled into a vessel, where SR28 measures no volume of it and another source does. */
  readonly bulkDensity?: string;
  /** The least part of a piece that a cook takes, and the measure that is counted: `1`, `1/2`, `1 slice`. Common practice, no source. */
  readonly divides?: string;
  /** Inedible share of the food as bought, per cent. */
  readonly refuse?: string;
  /** Energy by which the source's figure was computed, kcal per gram of protein, fat, carbohydrate. */
  readonly factors?: string;
  /** What the source leaves out and the food cannot hold, by what it is: it is presumed to have none. */
  readonly none?: readonly ComponentId[];
  /** Set where 18:2 and 18:3 may hold other acids than linoleic and alpha-linolenic. */
  readonly otherIsomers?: true;
  /** What was added to it, as its name in the source says, or as no such food holds by itself. */
  readonly fortifiedWith?: readonly ComponentId[];
  readonly origin?: Origin;
  readonly aisle?: string;
  readonly allergens?: readonly Allergen[];
  readonly cautions?: readonly StarterCaution[];
}

/** Foods that share a group, and an origin and an aisle unless a row says otherwise. */
export interface Shelf {
  readonly group: string;
  readonly origin: Origin;
  readonly aisle: string;
  readonly foods: readonly StarterRow[];
}
