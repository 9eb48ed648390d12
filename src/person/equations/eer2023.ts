import type { Check } from "../check.ts";

/** How active a life is, in the terms of the Dietary Reference Intakes: each is a span of the physical activity level. */
export type RequirementActivity = "inactive" | "low-active" | "active" | "very-active";

/**
 * Equations of total energy for one sex from an age, and below another: kcal a day are the constant plus
 * each coefficient times its measure, in the order constant, years of age, centimetres, kilograms.
 */
export interface RequirementGroup {
  readonly sex: "female" | "male";
  readonly from: number;
  readonly below?: number;
  readonly by: { readonly [Activity in RequirementActivity]: string };
}

/** What growth takes, kcal a day, and where the spans of activity begin, from an age and below another. */
export interface RequirementAges {
  readonly from: number;
  readonly below?: number;
  readonly growth: { readonly female: string; readonly male: string };
  readonly begin: { readonly [Activity in RequirementActivity]: string };
}

export const requirementSource = "National Academies (US, Canada) 2023, Dietary Reference Intakes for Energy";

/**
 * The report's appendix M prints what the equations give: the coefficients, from memory, reproduce every one of
 * 108 figures that were read in tables M-1 to M-4 to the kilocalorie, with growth at 3, 6, 11 and 16 years.
 */
export const requirementCheck: Check = "issuer";

export const requirementGroups: readonly RequirementGroup[] = [
  {
    sex: "male",
    from: 3,
    below: 19,
    by: {
      inactive: "-447.51 3.68 13.01 13.15",
      "low-active": "19.12 3.68 8.62 20.28",
      active: "-388.19 3.68 12.66 20.46",
      "very-active": "-671.75 3.68 15.38 23.25",
    },
  },
  {
    sex: "female",
    from: 3,
    below: 19,
    by: {
      inactive: "55.59 -22.25 8.43 17.07",
      "low-active": "-297.54 -22.25 12.77 14.73",
      active: "-189.55 -22.25 11.74 18.34",
      "very-active": "-709.59 -22.25 18.22 14.25",
    },
  },
  {
    sex: "male",
    from: 19,
    by: {
      inactive: "753.07 -10.83 6.50 14.10",
      "low-active": "581.47 -10.83 8.30 14.94",
      active: "1004.82 -10.83 6.52 15.91",
      "very-active": "-517.88 -10.83 15.61 19.11",
    },
  },
  {
    sex: "female",
    from: 19,
    by: {
      inactive: "584.90 -7.01 5.72 11.71",
      "low-active": "575.77 -7.01 6.60 12.14",
      active: "710.25 -7.01 6.54 12.34",
      "very-active": "511.83 -7.01 9.07 12.56",
    },
  },
];

/**
 * Table notes c and d of M-2 and M-4. Health Canada's page of the equations begins some spans a hundredth or two
 * lower (1.68, 1.59, 1.56, 1.73 and 1.92): the report's own stand here.
 */
export const requirementAges: readonly RequirementAges[] = [
  {
    from: 3,
    below: 4,
    growth: { female: "15", male: "20" },
    begin: { inactive: "1", "low-active": "1.31", active: "1.44", "very-active": "1.59" },
  },
  {
    from: 4,
    below: 9,
    growth: { female: "15", male: "15" },
    begin: { inactive: "1", "low-active": "1.31", active: "1.44", "very-active": "1.59" },
  },
  {
    from: 9,
    below: 14,
    growth: { female: "30", male: "25" },
    begin: { inactive: "1", "low-active": "1.44", active: "1.60", "very-active": "1.77" },
  },
  {
    from: 14,
    below: 19,
    growth: { female: "20", male: "20" },
    begin: { inactive: "1", "low-active": "1.57", active: "1.74", "very-active": "1.94" },
  },
  {
    from: 19,
    growth: { female: "0", male: "0" },
    begin: { inactive: "1", "low-active": "1.53", active: "1.69", "very-active": "1.85" },
  },
];
