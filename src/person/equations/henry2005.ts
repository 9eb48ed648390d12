import type { EnergyEquation } from "./equation.ts";

/**
 * Henry CJK. Basal metabolic rate studies in humans: measurement and development of new equations.
 * Public Health Nutr 2005; 8(7A): 1133-1152. The Oxford equations, kcal forms, height in metres; SACN
 * 2011 and EFSA 2013 build their energy values on them. Only the paper's abstract could be read: the
 * coefficients are unverified. Their kcal and MJ forms agree at 239 kcal to the MJ.
 */
const source = "Henry 2005, Public Health Nutr 8(7A):1133-1152";

const population =
  "10,552 people in 166 studies, many from the tropics, without the Italian subjects that weigh in Schofield's";

export const henry2005: EnergyEquation = {
  id: "henry-2005",
  name: "Henry (Oxford), mass and height",
  source,
  check: "unverified",
  population,
  ages: { from: 0 },
  lines: [
    { sex: "male", below: 3, constant: "-371", mass: "28.2", heightM: "859" },
    { sex: "male", from: 3, below: 10, constant: "306", mass: "15.1", heightM: "313" },
    { sex: "male", from: 10, below: 18, constant: "299", mass: "15.6", heightM: "266" },
    { sex: "male", from: 18, below: 30, constant: "113", mass: "14.4", heightM: "313" },
    { sex: "male", from: 30, below: 60, constant: "-137", mass: "11.4", heightM: "541" },
    { sex: "male", from: 60, constant: "-256", mass: "11.4", heightM: "541" },
    { sex: "female", below: 3, constant: "-287", mass: "30.4", heightM: "703" },
    { sex: "female", from: 3, below: 10, constant: "349", mass: "15.9", heightM: "210" },
    { sex: "female", from: 10, below: 18, constant: "462", mass: "9.40", heightM: "249" },
    { sex: "female", from: 18, below: 30, constant: "-282", mass: "10.4", heightM: "615" },
    { sex: "female", from: 30, below: 60, constant: "-11.6", mass: "8.18", heightM: "502" },
    { sex: "female", from: 60, constant: "10.7", mass: "8.52", heightM: "421" },
  ],
};

export const henry2005Mass: EnergyEquation = {
  id: "henry-2005-mass",
  name: "Henry (Oxford), mass only",
  source,
  check: "unverified",
  population,
  ages: { from: 0 },
  lines: [
    { sex: "male", below: 3, constant: "-33.7", mass: "61.0" },
    { sex: "male", from: 3, below: 10, constant: "514", mass: "23.3" },
    { sex: "male", from: 10, below: 18, constant: "581", mass: "18.4" },
    { sex: "male", from: 18, below: 30, constant: "545", mass: "16.0" },
    { sex: "male", from: 30, below: 60, constant: "593", mass: "14.2" },
    { sex: "male", from: 60, constant: "514", mass: "13.5" },
    { sex: "female", below: 3, constant: "-23.1", mass: "58.9" },
    { sex: "female", from: 3, below: 10, constant: "507", mass: "20.1" },
    { sex: "female", from: 10, below: 18, constant: "761", mass: "11.1" },
    { sex: "female", from: 18, below: 30, constant: "558", mass: "13.1" },
    { sex: "female", from: 30, below: 60, constant: "694", mass: "9.74" },
    { sex: "female", from: 60, constant: "569", mass: "10.1" },
  ],
};
