import type { Check } from "../check.ts";
import type { IntakeTable } from "./table.ts";

/**
 * Dietary Reference Intakes: Recommended Dietary Allowances and Adequate Intakes, Elements. National
 * Academies of Sciences, Engineering, and Medicine 2019, Dietary Reference Intakes for Sodium and
 * Potassium, appendix J, table J-3. The magnesium of men and women changes at 31.
 */
const check: Check = "issuer";

export const usElements: IntakeTable = {
  source:
    "National Academies (US, Canada) 2019, DRI for Sodium and Potassium, table J-3: RDA and AI, elements",
  // biome-ignore format: the columns of the table
  stages: ["1-3", "4-8", "M 9-13", "M 14-18", "M 19-30", "M 31-50", "M 51-70", "M 71+", "F 9-13", "F 14-18", "F 19-30", "F 31-50", "F 51-70", "F 71+", "P 14-18", "P 19-30", "P 31-50", "L 14-18", "L 19-30", "L 31-50"],
  // biome-ignore format: one nutrient a line
  references: [
    { of: ["calcium"], kind: "RDA", values: "700 1000 1300 1300 1000 1000 1000 1200 1300 1300 1000 1000 1200 1200 1300 1000 1000 1300 1000 1000", check },
    { of: ["chromium"], kind: "AI", values: "11 15 25 35 35 35 30 30 21 24 25 25 20 20 29 30 30 44 45 45", check },
    { of: ["copper"], kind: "RDA", unit: "µg", values: "340 440 700 890 900 900 900 900 700 890 900 900 900 900 1000 1000 1000 1300 1300 1300", check },
    { of: ["fluoride"], kind: "AI", values: "0.7 1 2 3 4 4 4 4 2 3 3 3 3 3 3 3 3 3 3 3", check },
    { of: ["iodine"], kind: "RDA", values: "90 90 120 150 150 150 150 150 120 150 150 150 150 150 220 220 220 290 290 290", check },
    { of: ["iron"], kind: "RDA", values: "7 10 8 11 8 8 8 8 8 15 18 18 8 8 27 27 27 10 9 9", note: "vegetarian diets: 1.8 times as much (unverified)", check },
    { of: ["magnesium"], kind: "RDA", values: "80 130 240 410 400 420 420 420 240 360 310 320 320 320 400 350 360 360 310 320", check },
    { of: ["manganese"], kind: "AI", values: "1.2 1.5 1.9 2.2 2.3 2.3 2.3 2.3 1.6 1.6 1.8 1.8 1.8 1.8 2.0 2.0 2.0 2.6 2.6 2.6", check },
    { of: ["molybdenum"], kind: "RDA", values: "17 22 34 43 45 45 45 45 34 43 45 45 45 45 50 50 50 50 50 50", check },
    { of: ["phosphorus"], kind: "RDA", values: "460 500 1250 1250 700 700 700 700 1250 1250 700 700 700 700 1250 700 700 1250 700 700", check },
    { of: ["selenium"], kind: "RDA", values: "20 30 40 55 55 55 55 55 40 55 55 55 55 55 60 60 60 70 70 70", check },
    { of: ["zinc"], kind: "RDA", values: "3 5 8 11 11 11 11 11 8 9 8 8 8 8 12 11 11 13 12 12", check },
    { of: ["potassium"], kind: "AI", values: "2000 2300 2500 3000 3400 3400 3400 3400 2300 2300 2600 2600 2600 2600 2600 2900 2900 2500 2800 2800", note: "not meant for people whose kidneys pass too little potassium", check },
    { of: ["sodium"], kind: "AI", values: "800 1000 1200 1500 1500 1500 1500 1500 1200 1500 1500 1500 1500 1500 1500 1500 1500 1500 1500 1500", check },
    { of: ["chloride"], kind: "AI", unit: "g", values: "1.5 1.9 2.3 2.3 2.3 2.3 2.0 1.8 2.3 2.3 2.3 2.3 2.0 1.8 2.3 2.3 2.3 2.3 2.3 2.3", check },
  ],
};
