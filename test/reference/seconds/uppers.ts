import type { ComponentId } from "../../../src/food/components.ts";
import type { Basis } from "../../../src/person/intakes/table.ts";

/**
 * Upper levels typed a second time, to hold against `src/person/intakes`: from other copies than the
 * first was typed from, or from a document that was not at hand then, by nutrient as those copies are laid
 * out, each figure in the copy's own unit. A slip of the hand shows here; a figure that both copies have
 * wrong does not.
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
 * United Kingdom, adults: a health adviser's list of the EVM's levels of 2003; copper and selenium from all
 * sources by a list of three bodies. Vitamin D: EFSA's announcement of 2012, whose level SACN goes by.
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

/** Levels as a copy prints them: a row for each component, a figure for each heading, `.` for none. */
export interface UpperTable {
  readonly bands: readonly string[];
  readonly rows: readonly (readonly [of: ComponentId, unit: Unit | "IU", values: string, basis?: Basis])[];
}

/** United States, above 50, where the same table has a span: calcium 2.0 to 2.5 g, phosphorus 3.0 to 4.0 g. */
export const usUppersOfOlder: UpperTable = {
  bands: ["19-50", "51-70", "71+"],
  rows: [
    ["calcium", "g", "2.5 2 2"],
    ["phosphorus", "g", "4 4 3"],
  ],
};

/** United States: the same review, table 6, where it takes the Institute of Medicine's levels. */
export const usUppersOfAdults: UpperTable = {
  bands: ["14-17", "19-50", "51-70", "71+", "P 14-18", "P 19-50", "L 14-18", "L 19-50"],
  rows: [
    ["vitaminC", "mg", "1800 2000 2000 2000 1800 2000 1800 2000"],
    ["vitaminD", "µg", "100 100 100 100 100 100 100 100"],
    ["choline", "mg", "3000 3500 3500 3500 3000 3500 3000 3500"],
  ],
};

/** United States: perinatal figures of a reference site for obstetricians, levels of mothers. */
export const usUppersOfMothers: UpperTable = {
  bands: ["P 14-18", "P 19-50"],
  rows: [
    ["retinol", "µg", "2800 3000"],
    ["vitaminE", "mg", "800 1000"],
    ["vitaminC", "mg", "1800 2000"],
    ["niacin", "mg", "30 35"],
  ],
};

/**
 * United States, the young, and mothers up to 18: a handbook of paediatric nutrition (9th edition),
 * appendix D-2. Its sodium is a UL of 2005, since replaced, and left out. Vitamin D is in IU there.
 */
export const usUppersOfYoung: UpperTable = {
  bands: ["1-3", "4-8", "9-13", "14-18", "P 14-18", "L 14-18"],
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
 * European Union: EFSA, Overview on Tolerable Upper Intake Levels, version 11 (August 2025), tables 1 to 3. The
 * first table was typed from copies of single opinions, and from memory, before this document was at hand.
 */
export const euUppersAgain: readonly UpperTable[] = [
  {
    bands: ["1-3", "4-6", "7-10", "11-14", "15-17", "18+", "P 18+", "L 18+"],
    rows: [
      ["calcium", "mg", ". . . . . 2500 2500 2500"],
      ["copper", "mg", "1 2 3 4 4 5 . ."],
      ["iodine", "µg", "200 250 300 450 500 600 600 600"],
      ["magnesium", "mg", ". 250 250 250 250 250 250 250"],
      ["molybdenum", "mg", "0.1 0.2 0.25 0.4 0.5 0.6 0.6 0.6"],
      ["selenium", "µg", "70 95 130 180 230 255 255 255"],
      ["zinc", "mg", "7 10 13 18 22 25 25 25"],
      ["iron", "mg", "10 15 20 30 35 40 40 40"],
      ["folicAcid", "µg", "200 300 400 600 800 1000 1000 1000"],
      ["niacin", "mg", "150 220 350 500 700 900 . .", "nicotinamide"],
      ["niacin", "mg", "2 3 4 6 8 10 . .", "nicotinic acid"],
      ["retinol", "µg", "800 1100 1500 2000 2600 3000 3000 3000"],
      ["vitaminB6", "mg", "3.2 4.5 6.1 8.6 10.7 12 12 12"],
      ["vitaminE", "mg", "100 120 160 220 260 300 300 300"],
      ["vitaminD", "µg", "50 50 50 100 100 100 100 100"],
    ],
  },
  {
    bands: ["1-2", "3-6", "7-13", "14-17", "18+", "P 18+", "L 18+"],
    rows: [["manganese", "mg", "4 5 6 7 8 8 8"]],
  },
  {
    bands: ["1-3", "4-8", "9-17", "18+", "P 18+", "L 18+"],
    rows: [["fluoride", "mg", "1.6 2.0 3.3 3.3 3.3 3.3"]],
  },
];

/** European Union: levels of which no second copy was found, and where the first was read. */
export const euUppersOnce: { readonly [C in ComponentId]?: string } = {
  caffeine: "EFSA Journal 2015;13(5):4102",
};
