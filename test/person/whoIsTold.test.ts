/**
 * Who is told what of a day, and who is not: person, aim, codes, each row by hand from the document that its
 * table names. A row lists every code, so that one which ought to be silent is.
 */
import { describe, expect, it } from "vitest";
import { SteelyardError } from "../../src/number/error.ts";
import type { Aim } from "../../src/person/aim.ts";
import { dayTarget } from "../../src/person/dayTarget.ts";
import type { Authority } from "../../src/person/intakes/table.ts";
import type { Person } from "../../src/person/person.ts";

const woman: Person = { sex: "female", age: 24, mass: "59 kg", height: "1.72 m", activity: "active" };
const man: Person = { sex: "male", age: 40, mass: "94 kg", height: "1.95 m", activity: "active" };
const heavy: Person = { sex: "male", age: 40, mass: "300 kg", height: "1.80 m", activity: "sedentary" };
const thin = (mass: string): Person => ({ ...woman, height: "1.70 m", mass });
const old = (age: number, mass: string): Person => ({
  sex: "female",
  age,
  mass,
  height: "1.50 m",
  activity: "sedentary",
});
const child = (age: number, mass: number, sex: Person["sex"] = "male", activity = "1.6"): Person => ({
  sex,
  age,
  mass,
  activity: age < 4 ? "1.4" : activity,
});
const bare = ({ height: _, ...person }: Person): Person => person;

const hold: Aim = { weight: "hold" };
const lose = (perWeek: string): Aim => ({ weight: { lose: { perWeek } } });
const eat = (kcal: string): Aim => ({ weight: { lose: { kcal } } });
const gain = (perWeek: string): Aim => ({ weight: { gain: { perWeek } } });
const protein = (perKg: string): Aim => ({ weight: "hold", protein: { perKg } });
const share = (of: string): Aim => ({ weight: "hold", protein: { share: of } });

type Row = readonly [who: string, person: Person, aim: Aim, codes: string, authority?: Authority];

/** Codes in alphabetical order, or how the aim was refused. */
function told([, person, aim, , authority]: Row): string {
  try {
    const { cautions } = dayTarget(person, aim, authority ? { authority } : {});
    return cautions
      .map(({ code }) => code)
      .sort()
      .join(" ");
  } catch (error) {
    if (error instanceof SteelyardError) return error.code;
    throw error;
  }
}

function table(what: string, rows: readonly Row[]): void {
  describe(what, () => {
    for (const row of rows) {
      it(row[0], () => {
        expect(told(row)).toBe(row[3]);
      });
    }
  });
}

// EFSA 2012, EFSA Journal 10(2):2557: 0.83 g per kg for adults; 1, 9 and 28 g more by trimester; 19 g more
// in the first six months of breastfeeding, then 13; of children by year of age. 59 kg x 0.83 = 48.97 g.
table("protein against EFSA's PRI of the age and state", [
  ["a woman at 0.83 g/kg: below 10 % of energy alone", woman, protein("0.83"), "protein-share"],
  ["a woman just under it", woman, protein("0.82"), "protein-low protein-share"],
  ["a woman at 1.6 g/kg", woman, protein("1.6"), ""],
  [
    "first trimester, 0.84: 49.56 of 49.97 g",
    { ...woman, pregnant: 1 },
    protein("0.84"),
    "pregnant protein-low protein-share",
  ],
  ["first trimester, 0.85", { ...woman, pregnant: 1 }, protein("0.85"), "pregnant protein-share"],
  [
    "second trimester, 0.98: 57.82 of 57.97 g",
    { ...woman, pregnant: 2 },
    protein("0.98"),
    "pregnant protein-low protein-share",
  ],
  ["second trimester, 0.99", { ...woman, pregnant: 2 }, protein("0.99"), "pregnant protein-share"],
  ["third trimester, 0.83", { ...woman, pregnant: 3 }, protein("0.83"), "pregnant protein-low protein-share"],
  [
    "third trimester, 1.30: 76.70 of 76.97 g",
    { ...woman, pregnant: 3 },
    protein("1.30"),
    "pregnant protein-low",
  ],
  ["third trimester, 1.31", { ...woman, pregnant: 3 }, protein("1.31"), "pregnant"],
  [
    "breastfeeding, 1.15: 67.85 of 67.97 g",
    { ...woman, breastfeeding: true },
    protein("1.15"),
    "breastfeeding protein-low",
  ],
  ["breastfeeding, 1.16", { ...woman, breastfeeding: true }, protein("1.16"), "breastfeeding"],
  [
    "breastfeeding for 7 months, 1.06",
    { ...woman, breastfeeding: true, monthsSinceBirth: 7 },
    protein("1.06"),
    "breastfeeding protein-share",
  ],
  [
    "a child of 1 1/2 at an adult's 0.83",
    child(1.5, 10, "female"),
    protein("0.83"),
    "protein-low protein-share under-18",
  ],
  ["a child of 1 1/2 just under 1.14", child(1.5, 10, "female"), protein("1.13"), "protein-low under-18"],
  ["a child of 1 1/2 at 1.14", child(1.5, 10, "female"), protein("1.14"), "under-18"],
  ["a boy of 2 at 0.97", child(2, 12), protein("0.97"), "protein-share under-18"],
  ["a girl of 15 at 0.85", child(15, 54, "female"), protein("0.85"), "protein-share under-18"],
  ["a girl of 15 under it", child(15, 54, "female"), protein("0.84"), "protein-low protein-share under-18"],
  ["a girl of 17 at 0.83", child(17, 57, "female"), protein("0.83"), "protein-share under-18"],
]);

// COMA 1991, Report 41: 0.75 g per kg, 6 g more in pregnancy. Institute of Medicine 2002/2005: 0.8 g per kg,
// and 25 g more in pregnancy and breastfeeding: 72.2 g at 59 kg.
table("protein against the chosen authority's figure", [
  ["the UK's 0.75 g/kg", woman, protein("0.75"), "protein-share", "uk"],
  ["under the UK's", woman, protein("0.74"), "protein-low protein-share", "uk"],
  [
    "the UK's in pregnancy, 0.85: 50.15 of 50.25 g",
    { ...woman, pregnant: 3 },
    protein("0.85"),
    "pregnant protein-low protein-share",
    "uk",
  ],
  ["the UK's in pregnancy, 0.86", { ...woman, pregnant: 3 }, protein("0.86"), "pregnant protein-share", "uk"],
  ["the US's 0.8 g/kg", woman, protein("0.8"), "protein-share", "us"],
  [
    "the US's in pregnancy, 1.22: 71.98 of 72.2 g",
    { ...woman, pregnant: 3 },
    protein("1.22"),
    "pregnant protein-low protein-share",
    "us",
  ],
  ["the US's in pregnancy, 1.23", { ...woman, pregnant: 3 }, protein("1.23"), "pregnant protein-share", "us"],
  ["the US's of a boy of 2, 1.05", child(2, 12), protein("1.05"), "under-18", "us"],
  ["the US's of a boy of 2, under it", child(2, 12), protein("1.04"), "protein-low under-18", "us"],
]);

// Institute of Medicine 2002/2005, AMDR of protein: 5 to 20 % at 1 to 3, 10 to 30 % at 4 to 18, 10 to 35 % for adults.
table("protein's share of energy against the range of the age", [
  ["a boy of 2 at 5 %", child(2, 12), share("5 %"), "under-18"],
  ["a boy of 2 at 4.9 %", child(2, 12), share("4.9 %"), "protein-share under-18"],
  ["a boy of 2 at 20 %", child(2, 12), share("20 %"), "under-18"],
  ["a boy of 2 at 21 %", child(2, 12), share("21 %"), "protein-share under-18"],
  ["a boy of 9 at 9 %", child(9, 28), share("9 %"), "protein-share under-18"],
  ["a boy of 9 at 30 %", child(9, 28), share("30 %"), "under-18"],
  ["a boy of 9 at 31 %", child(9, 28), share("31 %"), "protein-share under-18"],
  ["a man at 10 %", man, share("10 %"), ""],
  ["a man at 36 %", man, share("36 %"), "protein-high protein-share"],
]);

// ISSN 2017, J Int Soc Sports Nutr 14:20: 1.4 to 2.0 g per kg in training. Of a body past an index of 30 its
// mass at 30 is counted: 97.2 kg at 1.80 m. Common practice, no source.
table("protein per kilogram, of bodies of every mass", [
  ["a man at 2.0 g/kg", man, protein("2.0"), ""],
  ["a man at 2.01 g/kg", man, protein("2.01"), "protein-high"],
  ["a boy of 17 at 2.1 g/kg", child(17, 68, "male", "1.8"), protein("2.1"), "protein-high under-18"],
  ["a girl of 13 at 2.5 g/kg", child(13, 46, "female"), protein("2.5"), "under-18"],
  ["300 kg, 480 g", heavy, protein("1.6"), "protein-high"],
  ["300 kg and no height, 480 g", bare(heavy), protein("1.6"), "protein-high"],
  ["300 kg, 180 g", heavy, protein("0.6"), ""],
  ["300 kg, 75 g: less than 0.83 x 97.2 = 80.7 g", heavy, protein("0.25"), "protein-low protein-share"],
  ["100 kg at 1.80 m, 190 g of 194.4", { ...heavy, mass: "100 kg" }, protein("1.9"), ""],
  ["100 kg at 1.80 m, 195 g", { ...heavy, mass: "100 kg" }, protein("1.95"), "protein-high"],
]);

// NICE 2006, CG32, section 1.4: high risk below an index of 16, or below 18.5 with a second sign, insulin
// among them. For adults. WHO 2000, TRS 894: underweight below 18.5. 1.70 m: 12.9 is 37.281 kg, 16 is 46.24.
table("thin bodies", [
  ["an index of 12.9 that gains", thin("37.281 kg"), gain("0.25 kg"), "refeeding underweight"],
  ["an index of 12.9 that holds", thin("37.281 kg"), hold, "refeeding underweight"],
  ["an index of 15 that gains", thin("43.35 kg"), gain("0.5 kg"), "refeeding underweight"],
  ["just under 16", thin("46.2 kg"), gain("0.2 kg"), "refeeding underweight"],
  ["16", thin("46.24 kg"), gain("0.2 kg"), "underweight"],
  ["17.5 that gains fast", thin("50.575 kg"), gain("0.5 kg"), "underweight"],
  [
    "17.5 on insulin",
    { ...thin("50.575 kg"), conditions: ["insulin"] },
    gain("0.2 kg"),
    "insulin refeeding underweight",
  ],
  ["18.5 on insulin", { ...thin("53.465 kg"), conditions: ["insulin"] }, gain("0.2 kg"), "insulin"],
  ["12.9 without a height", bare(thin("37.281 kg")), hold, ""],
  ["a girl of 5 of an index of 13.5", { ...child(5, 16, "female"), height: "1.09 m" }, hold, "under-18"],
  ["an index of 12.9 that loses", thin("37.281 kg"), lose("0.1 kg"), "aim-refused"],
  ["one of 13 at 75", old(75, "29.25 kg"), hold, "over-65 refeeding underweight"],
]);

// NICE, CG189: 800 kcal a day or less is a very-low-energy diet, of adults who lose weight.
table("very little energy", [
  [
    "a man who eats 800 kcal",
    { ...man, mass: "110 kg" },
    eat("3128.9375"),
    "energy-below-800 energy-below-resting fast-loss fast-loss-for-mass",
  ],
  [
    "a man who eats 801 kcal",
    { ...man, mass: "110 kg" },
    eat("3127.9375"),
    "energy-below-resting fast-loss fast-loss-for-mass",
  ],
  ["a girl of 1 who needs 765 kcal", child(1, 9.9, "female"), hold, "under-18"],
  [
    "a small woman who needs 791 kcal",
    { ...woman, age: 60, mass: "30 kg", height: "1.27 m", activity: "1.25" },
    hold,
    "unusual-activity",
  ],
]);

// ESPEN 2019 and 2022, nutrition in geriatrics: older people are those of 65 and more. GLIM 2019: low below
// 20, from 70 on below 22. At 1.50 m: 18.5 is 41.625 kg, 20 is 45 kg, 22 is 49.5 kg.
table("older bodies", [
  ["64 at an index of 19", old(64, "42.75 kg"), hold, ""],
  ["65 at an index of 19", old(65, "42.75 kg"), hold, "over-65 underweight"],
  ["65 at 20", old(65, "45 kg"), hold, "over-65"],
  ["69 at 21", old(69, "47.25 kg"), hold, "over-65"],
  ["70 at 21", old(70, "47.25 kg"), hold, "over-65 underweight"],
  ["70 at 22", old(70, "49.5 kg"), hold, "over-65"],
  ["64 at 19 that loses", old(64, "42.75 kg"), lose("0.05 kg"), ""],
  ["65 at 19 that loses", old(65, "42.75 kg"), lose("0.05 kg"), "aim-refused"],
  ["75 at 21.9 that loses", old(75, "49.275 kg"), lose("0.05 kg"), "aim-refused"],
  ["75 at 22.1 that loses", old(75, "49.725 kg"), lose("0.05 kg"), "over-65 underweight-soon"],
  ["95 at 19 that loses: no reason to lose", old(95, "42.75 kg"), lose("0.05 kg"), "aim-refused"],
  ["75 at 27 that loses", old(75, "60.75 kg"), lose("0.2 kg"), "over-65"],
]);

// EFSA 2012: 0.83 g per kg, where WHO and FAO, and the Nordic countries, have no figure here.
table("protein by other authorities", [
  ["WHO has none, and EFSA's speaks", woman, protein("0.82"), "protein-low protein-share", "who"],
  ["WHO at 1.6 g/kg", woman, protein("1.6"), "", "who"],
  ["20.5 % by EFSA", { ...woman, activity: "sedentary" }, share("20.5 %"), "", "eu"],
  ["the Nordic countries have none either", woman, protein("0.82"), "protein-low protein-share", "nordic"],
  ["14 % by EFSA", woman, share("14 %"), "", "eu"],
]);

// Mifflin et al. 1990: people of 19 to 78. Schofield 1985: figures change at 18, 30 and 60 years, which is told
// within half a year where it is a twentieth of the need. EFSA 2013: levels of 1.4 at 1 to 3, 1.4 to 1.8 at 4 to 9,
// 1.6 to 2.0 at 10 to 17, each with 1 % for growth. FAO/WHO/UNU 2004, table 5.3: 1.40 to 2.40 for adults.
table("equations and activity by age", [
  ["77", old(77, "60.75 kg"), hold, "over-65"],
  ["78", old(78, "60.75 kg"), hold, "over-65"],
  ["78 1/2: the equation changes at the next birthday", old(78.5, "60.75 kg"), hold, "equation-step over-65"],
  ["79", old(79, "60.75 kg"), hold, "equation-step over-65"],
  ["80", old(80, "60.75 kg"), hold, "equation-step over-65"],
  ["95", old(95, "60.75 kg"), hold, "equation-step over-65"],
  [
    "80 by the equation that was asked for",
    old(80, "60.75 kg"),
    { ...hold, equation: "schofield-1985" },
    "over-65",
  ],
  [
    "80 by one made from younger people",
    old(80, "60.75 kg"),
    { ...hold, equation: "mifflin-st-jeor" },
    "outside-population over-65",
  ],
  ["80 without a height", bare(old(80, "60.75 kg")), hold, "over-65"],
  ["a tall man of 18 1/2: 2 % apart", { ...man, age: "18.5" }, hold, ""],
  [
    "a woman of 18 1/2, 90 kg at 1.60 m: 10 % apart",
    { ...woman, age: "18.5", mass: "90 kg", height: "1.60 m" },
    hold,
    "equation-step",
  ],
  ["a man of 21", { ...man, age: 21 }, hold, ""],
  ["a man of 59 1/2 without a height", bare({ ...man, age: "59.5" }), hold, "equation-step"],
  ["a man of 58 without a height", bare({ ...man, age: 58 }), hold, ""],
  [
    "an active girl of 9 1/2",
    { ...child(9.5, 30, "female"), activity: "active" },
    hold,
    "equation-step under-18",
  ],
  ["an active girl of 8", { ...child(8, 26, "female"), activity: "active" }, hold, "under-18"],
  ["a sedentary boy of 2", { ...child(2, 12), activity: "sedentary" }, hold, "under-18"],
  ["a boy of 2 at an adult's 1.55", { ...child(2, 12), activity: "1.55" }, hold, "under-18 unusual-activity"],
  ["a boy of 8 at 1.8", child(8, 26, "male", "1.8"), hold, "under-18"],
  ["a boy of 8 at 1.9", child(8, 26, "male", "1.9"), hold, "under-18 unusual-activity"],
  ["a boy of 12 at 1.5", child(12, 40, "male", "1.5"), hold, "under-18 unusual-activity"],
  ["a man at 1.5", { ...man, activity: "1.5" }, hold, ""],
  ["a man at 2.4", { ...man, activity: "2.4" }, hold, ""],
  ["a man at 2.5", { ...man, activity: "2.5" }, hold, "unusual-activity"],
]);

// Iraki et al. 2019, Sports 7(7):154: 0.25 to 0.5 % of body mass a week for adults who train to gain muscle.
table("gains", [
  ["a man at 0.5 %", man, gain("0.47 kg"), ""],
  ["a man above it", man, gain("0.48 kg"), "fast-gain"],
  ["300 kg at 1.80 m: 0.5 % of 97.2 kg is 0.486", heavy, gain("0.49 kg"), "fast-gain"],
  ["in pregnancy", { ...woman, pregnant: 2 }, gain("0.45 kg"), "pregnant"],
  ["a boy of 17", child(17, 68, "male", "1.8"), gain("0.5 kg"), "fast-gain under-18"],
]);

describe("the words of a day's cautions", () => {
  const text = (person: Person, aim: Aim, code: string): string =>
    dayTarget(person, aim).cautions.find((caution) => caution.code === code)?.text ?? "";

  it("name the figure of the age and state, and no adult's to a child", () => {
    expect(text({ ...woman, pregnant: 3 }, protein("0.83"), "protein-low")).toContain(
      "Less than 77.0 g of protein a day (1.30 g per kg of body mass), the PRI for this age and trimester 3 of pregnancy",
    );
    const low = text(child(2, 12), protein("0.5"), "protein-low");
    expect(low).toContain(
      "Less than 11.6 g of protein a day (0.97 g per kg of body mass), the PRI for this age",
    );
    const shares = text(child(5, 18), protein("0.85"), "protein-share");
    expect(shares).toContain("below the range set for ages 4 to 18 (10 to 30 %)");
    expect(shares).not.toContain("adult");
  });

  it("say what the need is on both sides of a step", () => {
    // 66 kg, 160 cm, 79 years: Mifflin 660 + 1000 - 395 - 161 = 1104; Schofield 9.082 x 66 + 658.5 = 1257.9; x 1.55.
    const lady: Person = { sex: "female", age: 79, mass: "66 kg", height: "1.60 m", activity: "sedentary" };
    expect(text(lady, hold, "equation-step")).toBe(
      "The equation changes at 79 years, for Mifflin-St Jeor was made from people of 19 to 78. Schofield gives 1950 kcal a day; Mifflin-St Jeor, which is taken before, gives 1711 kcal a day (12 % less). No body changes so in a day.",
    );
    expect(text({ ...lady, age: "78.5" }, hold, "equation-step")).toMatch(
      /Mifflin-St Jeor gives 1715 kcal a day; Schofield, which is taken from then on, gives 1950 kcal a day \(14 % more\)/,
    );
    // Schofield, men: 11.472 x 66 + 873.1 = 1630.3 to 60 years, 11.711 x 66 + 587.7 = 1360.6 from then on.
    expect(
      text({ sex: "male", age: "59.5", mass: "66 kg", activity: "sedentary" }, hold, "equation-step"),
    ).toBe(
      "At 60 years the figures of Schofield change in one step: 2109 kcal a day from then on, 2527 kcal a day before. No body changes so in a day.",
    );
  });

  it("say by what mass a large body was reckoned", () => {
    expect(text(heavy, protein("1.6"), "protein-high")).toContain(
      "More than 2.0 g of protein a day per kg of 97 kg, the mass at a body mass index of 30, by which larger bodies are reckoned here: above the range",
    );
  });

  it("say what a thin body starts with, and nothing of fat", () => {
    expect(text(thin("37.281 kg"), gain("0.25 kg"), "refeeding")).toMatch(
      /under clinical care at 5 kcal .*here 186 kcal/,
    );
    expect(text(thin("43.35 kg"), gain("0.5 kg"), "refeeding")).toMatch(
      /under clinical care at 10 kcal .*here 434 kcal/,
    );
    expect(text(child(17, 68, "male", "1.8"), gain("0.5 kg"), "fast-gain")).not.toContain("fat");
    expect(text(old(75, "29.25 kg"), hold, "underweight")).toContain("below 22 counts as low at this age");
  });
});
