import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Dietary Reference Intakes: Recommended Dietary Allowances and Adequate Intakes, Vitamins. Food and
 * Nutrition Board, Institute of Medicine, National Academies; the summary table as of the 2011 report
 * on calcium and vitamin D (which replaced vitamin D). Reports of 1998 (B vitamins, choline), 2000
 * (C, E), 2001 (A, K), 2011 (D).
 */
const whole: Check = "copy";
const issuer: Check = "issuer";

export const usVitamins: IntakeTable = {
  source:
    "National Academies (US, Canada), Dietary Reference Intakes, summary table: RDA and AI, vitamins (to 2011)",
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-8", "M 9-13", "M 14-18", "M 19-30", "M 31-50", "M 51-70", "M 71+", "F 9-13", "F 14-18", "F 19-30", "F 31-50", "F 51-70", "F 71+", "P 14-18", "P 19-30", "P 31-50", "L 14-18", "L 19-30", "L 31-50"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["vitaminARae"], kind: "RDA", basis: "RAE", values: "300 400 600 900 900 900 900 900 600 700 700 700 700 700 750 770 770 1200 1300 1300", check: issuer },
    { of: ["vitaminC"], kind: "RDA", values: "15 25 45 75 90 90 90 90 45 65 75 75 75 75 80 85 85 115 120 120", note: "people who smoke need 35 mg more (unverified)", check: issuer },
    { of: ["vitaminD"], kind: "RDA", values: "15 15 15 15 15 15 15 20 15 15 15 15 15 20 15 15 15 15 15 15", note: "on the assumption of minimal sunlight", check: whole },
    { of: ["vitaminE"], kind: "RDA", basis: "alpha-tocopherol", values: "6 7 11 15 15 15 15 15 11 15 15 15 15 15 15 15 15 19 19 19", check: issuer },
    { of: ["vitaminK"], kind: "AI", values: "30 55 60 75 120 120 120 120 60 75 90 90 90 90 75 90 90 75 90 90", check: issuer },
    { of: ["thiamin"], kind: "RDA", values: "0.5 0.6 0.9 1.2 1.2 1.2 1.2 1.2 0.9 1.0 1.1 1.1 1.1 1.1 1.4 1.4 1.4 1.4 1.4 1.4", check: issuer },
    { of: ["riboflavin"], kind: "RDA", values: "0.5 0.6 0.9 1.3 1.3 1.3 1.3 1.3 0.9 1.0 1.1 1.1 1.1 1.1 1.4 1.4 1.4 1.6 1.6 1.6", check: whole },
    { of: ["niacinEquivalents"], kind: "RDA", basis: "NE", values: "6 8 12 16 16 16 16 16 12 14 14 14 14 14 18 18 18 17 17 17", check: whole },
    { of: ["vitaminB6"], kind: "RDA", values: "0.5 0.6 1.0 1.3 1.3 1.3 1.7 1.7 1.0 1.2 1.3 1.3 1.5 1.5 1.9 1.9 1.9 2.0 2.0 2.0", check: whole },
    { of: ["folateDfe"], kind: "RDA", basis: "DFE", values: "150 200 300 400 400 400 400 400 300 400 400 400 400 400 600 600 600 500 500 500", note: "women who could become pregnant: 400 µg of folic acid besides the folate of food", check: whole },
    { of: ["vitaminB12"], kind: "RDA", values: "0.9 1.2 1.8 2.4 2.4 2.4 2.4 2.4 1.8 2.4 2.4 2.4 2.4 2.4 2.6 2.6 2.6 2.8 2.8 2.8", note: "above 50: mainly from fortified food or a supplement", check: whole },
    { of: ["pantothenicAcid"], kind: "AI", values: "2 3 4 5 5 5 5 5 4 5 5 5 5 5 6 6 6 7 7 7", check: whole },
    { of: ["biotin"], kind: "AI", values: "8 12 20 25 30 30 30 30 20 25 30 30 30 30 30 30 30 35 35 35", check: whole },
    { of: ["choline"], kind: "AI", values: "200 250 375 550 550 550 550 550 375 400 425 425 425 425 450 450 450 550 550 550", check: whole },
  ],
};
