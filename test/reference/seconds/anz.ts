import type { ComponentId } from "../../../src/food/components.ts";
import { byBand, type Second } from "./second.ts";
import type { UpperTable } from "./uppers.ts";

/**
 * Australia and New Zealand (NHMRC 2006, version 1.2), typed again from another transcription of the same tables:
 * everyone from 14 years who is neither pregnant nor breastfeeding.
 */
export const anzMineralsAgain: readonly Second[] = byBand(
  ["fibre", "calcium", "iodine", "iron", "magnesium", "potassium", "selenium", "zinc"],
  [
    ["M 14-18", "28 1300 150 11 410 3600 70 13"],
    ["M 19-30", "30 1000 150 8 400 3800 70 14"],
    ["M 31-50", "30 1000 150 8 420 3800 70 14"],
    ["M 51-70", "30 1000 150 8 420 3800 70 14"],
    ["M 71+", "30 1300 150 8 420 3800 70 14"],
    ["F 14-18", "22 1300 150 15 360 2600 60 7"],
    ["F 19-30", "25 1000 150 18 310 2800 60 8"],
    ["F 31-50", "25 1000 150 18 320 2800 60 8"],
    ["F 51-70", "25 1300 150 8 320 2800 60 8"],
    ["F 71+", "25 1300 150 8 320 2800 60 8"],
  ],
);

export const anzVitaminsAgain: readonly Second[] = byBand(
  [
    "vitaminARe",
    "thiamin",
    "riboflavin",
    "niacinEquivalents",
    "vitaminB6",
    "vitaminB12",
    "folateDfe",
    "vitaminC",
  ],
  [
    ["M 14-18", "900 1.2 1.3 16 1.3 2.4 400 40"],
    ["M 19-30", "900 1.2 1.3 16 1.3 2.4 400 45"],
    ["M 31-50", "900 1.2 1.3 16 1.3 2.4 400 45"],
    ["M 51-70", "900 1.2 1.3 16 1.7 2.4 400 45"],
    ["M 71+", "900 1.2 1.6 16 1.7 2.4 400 45"],
    ["F 14-18", "700 1.1 1.1 14 1.2 2.4 400 40"],
    ["F 19-30", "700 1.1 1.1 14 1.3 2.4 400 45"],
    ["F 31-50", "700 1.1 1.1 14 1.3 2.4 400 45"],
    ["F 51-70", "700 1.1 1.1 14 1.5 2.4 400 45"],
    ["F 71+", "700 1.1 1.3 14 1.5 2.4 400 45"],
  ],
);

export const anzUppersAgain: UpperTable = {
  bands: ["14-18", "19-50", "51-70", "71+"],
  rows: [
    ["calcium", "mg", "2500 2500 2500 2500"],
    ["iodine", "µg", "900 1100 1100 1100"],
    ["iron", "mg", "45 45 45 45"],
    ["selenium", "µg", "400 400 400 400"],
    ["zinc", "mg", "35 40 40 40"],
    ["vitaminB6", "mg", "40 50 50 50"],
    ["vitaminD", "µg", "80 . . ."],
    ["retinol", "µg", ". 3000 3000 3000"],
    ["niacin", "mg", ". 35 35 35", "nicotinic acid"],
    ["folicAcid", "µg", ". 1000 1000 1000"],
    ["magnesium", "mg", ". 350 350 350"],
  ],
};

/** Levels of which no second copy was found, and where the first was read. */
export const anzUppersOnce: { readonly [C in ComponentId]?: string } = {
  niacin: "NHMRC",
  vitaminE: "NHMRC",
  choline: "NHMRC",
  phosphorus: "NHMRC",
  molybdenum: "NHMRC",
  copper: "NHMRC",
  fluoride: "NHMRC",
  epa: "NHMRC",
  dpa: "NHMRC",
  dha: "NHMRC",
};
