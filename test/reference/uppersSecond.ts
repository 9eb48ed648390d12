import type { ComponentId } from "../../src/food/components.ts";
import type { Basis } from "../../src/person/intakes/table.ts";

/**
 * Upper levels typed a second time, to hold against `src/person/intakes`: from other copies than the
 * first was typed from, by nutrient as those copies are laid out, each figure in the copy's own unit.
 * A slip of the hand shows here; a figure that both copies have wrong does not.
 */
export interface SecondUpper {
  readonly of: ComponentId;
  /** Where an authority has a level for each of two forms. */
  readonly basis?: Basis;
  readonly value: number;
  readonly unit: "g" | "mg" | "µg";
}

type Unit = SecondUpper["unit"];
const level = (of: ComponentId, value: number, unit: Unit, basis?: Basis): SecondUpper => ({
  of,
  value,
  unit,
  ...(basis && { basis }),
});

/**
 * United Kingdom, adults: a health adviser's list of the EVM's levels of 2003 (fullhealthsecrets.com,
 * nrv-sul-for-vitamins-minerals); copper and selenium from all sources by a list of three bodies
 * (eco-supplements.com). Vitamin D: EFSA's announcement of 2012, whose level SACN goes by.
 */
export const ukUppersAgain: readonly SecondUpper[] = [
  level("retinol", 1500, "µg"),
  level("betaCarotene", 7, "mg"),
  level("thiamin", 100, "mg"),
  level("riboflavin", 40, "mg"),
  level("niacin", 500, "mg", "nicotinamide"),
  level("niacin", 17, "mg", "nicotinic acid"),
  level("pantothenicAcid", 200, "mg"),
  level("vitaminB6", 10, "mg"),
  level("vitaminB12", 2000, "µg"),
  level("folicAcid", 1000, "µg"),
  level("biotin", 900, "µg"),
  level("vitaminC", 1000, "mg"),
  level("vitaminD", 100, "µg"),
  level("vitaminE", 540, "mg"),
  level("vitaminK", 1000, "µg"),
  level("calcium", 1500, "mg"),
  level("chromium", 10, "mg"),
  level("copper", 10, "mg"),
  level("iron", 17, "mg"),
  level("magnesium", 400, "mg"),
  level("phosphorus", 250, "mg"),
  level("potassium", 3700, "mg"),
  level("selenium", 450, "µg"),
  level("zinc", 25, "mg"),
];

/** United Kingdom: levels of which no second copy gives the whole, only the part from supplements. */
export const ukUppersOnce: { readonly [C in ComponentId]?: string } = {
  iodine: "0.5 mg of it from supplements",
  manganese: "4 mg of it from supplements",
};

/** United States and Canada, 19 to 50 years: Allen et al. 2020 (PMC7231601), table 5; chloride: a handbook's table, as of 14 to 18. */
export const usUppersAgain: readonly SecondUpper[] = [
  level("retinol", 3000, "µg"),
  level("vitaminC", 2000, "mg"),
  level("vitaminD", 100, "µg"),
  level("vitaminE", 1000, "mg"),
  level("niacin", 35, "mg"),
  level("vitaminB6", 100, "mg"),
  level("folicAcid", 1000, "µg"),
  level("choline", 3.5, "g"),
  level("calcium", 2.5, "g"),
  level("phosphorus", 4, "g"),
  level("copper", 10, "mg"),
  level("fluoride", 10, "mg"),
  level("manganese", 11, "mg"),
  level("molybdenum", 2000, "µg"),
  level("iodine", 1100, "µg"),
  level("iron", 45, "mg"),
  level("magnesium", 350, "mg"),
  level("selenium", 400, "µg"),
  level("zinc", 40, "mg"),
  level("chloride", 3.6, "g"),
];

/** United States, above 50, where the same table has a span: calcium 2.0 to 2.5 g, phosphorus 3.0 to 4.0 g. */
export const usUppersOfOlder: readonly (readonly [age: number, level: SecondUpper])[] = [
  [50, level("calcium", 2.5, "g")],
  [51, level("calcium", 2, "g")],
  [70, level("phosphorus", 4, "g")],
  [71, level("phosphorus", 3, "g")],
];

/**
 * United States, the young, and mothers up to 18: a handbook of paediatric nutrition (9th edition),
 * appendix D-2. Its sodium is a UL of 2005, since replaced, and left out. Vitamin D is in IU there.
 */
export const usUppersOfYoung: {
  readonly columns: readonly (readonly [age: number, state?: "pregnant" | "breastfeeding"])[];
  readonly rows: readonly (readonly [of: ComponentId, unit: Unit | "IU", values: string])[];
} = {
  columns: [[2], [6], [11], [16], [16, "pregnant"], [16, "breastfeeding"]],
  rows: [
    ["retinol", "µg", "600 900 1700 2800 2800 2800"],
    ["vitaminC", "mg", "400 650 1200 1800 1800 1800"],
    ["vitaminD", "IU", "2520 3000 4000 4000 4000 4000"],
    ["vitaminE", "mg", "200 300 600 800 800 800"],
    ["niacin", "mg", "10 15 20 30 30 30"],
    ["vitaminB6", "mg", "30 40 60 80 80 80"],
    ["folicAcid", "µg", "300 400 600 800 800 800"],
    ["choline", "g", "1.0 1.0 2.0 3.0 3.0 3.0"],
    ["calcium", "mg", "2500 2500 3000 3000 3000 3000"],
    ["copper", "µg", "1000 3000 5000 8000 8000 8000"],
    ["fluoride", "mg", "1.3 2.2 10 10 10 10"],
    ["iodine", "µg", "200 300 600 900 900 900"],
    ["iron", "mg", "40 40 40 45 45 45"],
    ["magnesium", "mg", "65 110 350 350 350 350"],
    ["manganese", "mg", "2 3 6 9 9 9"],
    ["molybdenum", "µg", "300 600 1100 1700 1700 1700"],
    ["phosphorus", "g", "3 3 4 4 3.5 4"],
    ["selenium", "µg", "90 150 280 400 400 400"],
    ["zinc", "mg", "7 12 23 34 34 34"],
    ["chloride", "g", "2.3 2.9 3.4 3.6 3.6 3.6"],
  ],
};

/**
 * European Union, adults: Allen et al. 2020 (PMC7231601), tables 5 and 6, for levels that stand as they
 * were; nicotinamide: a list of three bodies (eco-supplements.com); vitamin D: the opinion's abstract of
 * 2023. Vitamin B6, selenium, iron and manganese: figures noted when each abstract or announcement was
 * read, apart from this table (a university's pages of the opinions; iron unverified).
 */
export const euUppersAgain: readonly SecondUpper[] = [
  level("retinol", 3000, "µg"),
  level("vitaminD", 100, "µg"),
  level("vitaminE", 300, "mg"),
  level("niacin", 10, "mg", "nicotinic acid"),
  level("niacin", 900, "mg", "nicotinamide"),
  level("vitaminB6", 12, "mg"),
  level("folicAcid", 1000, "µg"),
  level("calcium", 2.5, "g"),
  level("copper", 5, "mg"),
  level("iodine", 600, "µg"),
  level("iron", 40, "mg"),
  level("magnesium", 250, "mg"),
  level("manganese", 8, "mg"),
  level("molybdenum", 600, "µg"),
  level("selenium", 255, "µg"),
  level("zinc", 25, "mg"),
];

/** European Union: levels of which no second copy was found, and where the first was read. */
export const euUppersOnce: { readonly [C in ComponentId]?: string } = {
  fluoride: "EFSA Journal 23(7):9478",
  caffeine: "EFSA Journal 2015;13(5):4102",
};

/** European Union, the young: PMC7231601 table 6, at 2, 5, 8, 12 and 16 years. */
export const euUppersOfYoung: readonly (readonly [
  of: ComponentId,
  unit: Unit,
  values: string,
  basis?: Basis,
])[] = [
  ["retinol", "µg", "800 1100 1500 2000 2600"],
  ["vitaminE", "mg", "100 120 160 220 260"],
  ["niacin", "mg", "2 3 4 6 8", "nicotinic acid"],
  ["folicAcid", "µg", "200 300 400 600 800"],
];
