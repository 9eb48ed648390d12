import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { energyNeed } from "../../src/person/energyNeed.ts";
import { energyEquations } from "../../src/person/equations/all.ts";
import type { EquationId } from "../../src/person/equations/equation.ts";
import type { Person } from "../../src/person/person.ts";
import { runs } from "../runs.ts";

const ids = Object.keys(energyEquations) as EquationId[];

function resting(equation: EquationId, person: Omit<Person, "activity">): string {
  return energyNeed({ ...person, activity: 1.6 }, { equation }).resting.toString();
}

const woman25: Person = { sex: "female", age: 25, mass: "60 kg", height: "160 cm" };

describe("published worked examples", () => {
  it("Mifflin-St Jeor", () => {
    // Teaching notes on energy requirements: woman of 25, 60 kg, 160 cm: 1314 kcal.
    expect(resting("mifflin-st-jeor", woman25)).toBe("1314");
    // A handout: woman of 32, 55 kg, 165 cm: 1260.25 kcal.
    expect(resting("mifflin-st-jeor", { sex: "female", age: 32, mass: "55 kg", height: "165 cm" })).toBe(
      "1260.25",
    );
  });

  it("Mifflin-St Jeor, against the unrounded form of the same abstract", () => {
    // REE = 9.99 W + 6.25 H - 4.92 A + 166 (men) - 161; the paper says simplifying changed little.
    fc.assert(
      fc.property(
        fc.constantFrom("female" as const, "male" as const),
        fc.integer({ min: 19, max: 78 }),
        fc.integer({ min: 45, max: 130 }),
        fc.integer({ min: 150, max: 200 }),
        (sex, age, kg, cm) => {
          const full = 9.99 * kg + 6.25 * cm - 4.92 * age + (sex === "male" ? 166 : 0) - 161;
          const ours = Number(resting("mifflin-st-jeor", { sex, age, mass: kg, height: `${cm} cm` }));
          expect(Math.abs(ours - full)).toBeLessThan(10);
        },
      ),
    );
  });

  it("Harris-Benedict, revised 1984", () => {
    // The same teaching notes: woman of 25, 60 kg, 160 cm: prints 1,389 (its terms sum to 1389.843).
    expect(resting("harris-benedict-1984", woman25)).toBe("1389.843");
  });

  it("Schofield", () => {
    // FAO/WHO/UNU 2004, section 5.4.1: women of 20 to 30, 55 kg: BMR
    // 5.45 MJ (1 302 kcal); times 1.85: 10.08 MJ (2 410 kcal), reckoned there from the MJ form.
    const need = energyNeed(
      { sex: "female", age: 25, mass: "55 kg", activity: "active" },
      { equation: "schofield-1985" },
    );
    expect(need.resting.toFixed(0)).toBe("1302");
    expect(Math.abs(need.total.toNumber() - 2410)).toBeLessThan(3);
    // A guide to energy requirements: middle-aged man of 70 kg, 0.048 W + 3.653 = 7.013 MJ or 1676 kcal.
    expect(Number(resting("schofield-1985", { sex: "male", age: 45, mass: "70 kg" }))).toBeCloseTo(1676, 0);
  });

  it("Cunningham 1980", () => {
    // A textbook example: athlete of 82 kg with 15 % fat, fat-free mass rounded to 70 kg: 2,040 kcal.
    expect(resting("cunningham-1980", { sex: "male", age: 30, mass: "82 kg", leanMass: "70 kg" })).toBe(
      "2040",
    );
  });
});

/** The MJ forms: FAO/WHO/UNU 2004 table 5.2 as in the encyclopaedia copy (adults); children unverified. */
const schofieldMj: readonly ["female" | "male", number, number, number][] = [
  ["male", 20, 0.063, 2.896],
  ["male", 45, 0.048, 3.653],
  ["male", 70, 0.049, 2.459],
  ["female", 20, 0.062, 2.036],
  ["female", 45, 0.034, 3.538],
  ["female", 70, 0.038, 2.755],
  ["male", 2, 0.249, -0.127],
  ["male", 5, 0.095, 2.11],
  ["male", 15, 0.074, 2.754],
  ["female", 2, 0.244, -0.13],
  ["female", 5, 0.085, 2.033],
  ["female", 15, 0.056, 2.898],
];

/** Henry 2005, MJ forms, all unverified: mass only, then mass and height. */
const henryMj: readonly ["female" | "male", number, number, number, number, number, number][] = [
  ["male", 20, 0.0669, 2.28, 0.06, 1.31, 0.473],
  ["male", 45, 0.0592, 2.48, 0.0476, 2.26, -0.574],
  ["male", 70, 0.0563, 2.15, 0.0478, 2.26, -1.07],
  ["female", 20, 0.0546, 2.33, 0.0433, 2.57, -1.18],
  ["female", 45, 0.0407, 2.9, 0.0342, 2.1, -0.0486],
  ["female", 70, 0.0424, 2.38, 0.0356, 1.76, 0.0448],
  ["male", 2, 0.255, -0.141, 0.118, 3.59, -1.55],
  ["male", 7, 0.0974, 2.15, 0.0632, 1.31, 1.28],
  ["male", 15, 0.0769, 2.43, 0.0651, 1.11, 1.25],
  ["female", 2, 0.246, -0.0965, 0.127, 2.94, -1.2],
  ["female", 7, 0.0842, 2.12, 0.0666, 0.878, 1.46],
  ["female", 15, 0.0465, 3.18, 0.0393, 1.04, 1.93],
];

describe("two derivations of one equation agree", () => {
  it.each(schofieldMj)("Schofield, %s of %d: kcal form against MJ form", (sex, age, slope, constant) => {
    for (const kg of age < 3 ? [10, 14] : age < 10 ? [15, 30] : [45, 60, 90]) {
      const ours = Number(resting("schofield-1985", { sex, age, mass: kg }));
      // The two forms were rounded apart: the slope of the MJ form is good to half a kJ a kg.
      expect(Math.abs(ours - ((slope * kg + constant) * 1000) / 4.184)).toBeLessThan(2 + 0.13 * kg);
    }
  });

  it.each(henryMj)(
    "Henry, %s of %d: kcal forms against MJ forms (both unverified)",
    (sex, age, s1, c1, s2, h2, c2) => {
      for (const kg of age < 18 ? [12, 25, 50] : [50, 65, 90]) {
        const byMass = Number(resting("henry-2005-mass", { sex, age, mass: kg }));
        expect(Math.abs(byMass - ((s1 * kg + c1) * 1000) / 4.184)).toBeLessThan(6);
        const tall = Number(resting("henry-2005", { sex, age, mass: kg, height: "172 cm" }));
        expect(Math.abs(tall - ((s2 * kg + h2 * 1.72 + c2) * 1000) / 4.184)).toBeLessThan(8);
      }
    },
  );

  it("Henry: the form with height agrees with that without, at an ordinary height", () => {
    // A slip in one coefficient of either table would show: 3 % is the paper's own order of difference.
    for (const [sex, cm] of [
      ["female", 163],
      ["male", 177],
    ] as const) {
      for (const age of [20, 45, 70]) {
        const kg = sex === "female" ? 62 : 78;
        const a = Number(resting("henry-2005", { sex, age, mass: kg, height: `${cm} cm` }));
        const b = Number(resting("henry-2005-mass", { sex, age, mass: kg }));
        expect(Math.abs(a / b - 1), `${sex} ${age}`).toBeLessThan(0.03);
      }
      for (const [years, kg, cmAtAge] of [
        [2, 12, 86],
        [7, 24, 123],
        [14, 50, 162],
      ] as const) {
        const child = { sex, age: years, mass: kg } as const;
        const a = Number(resting("henry-2005", { ...child, height: `${cmAtAge} cm` }));
        expect(Math.abs(a / Number(resting("henry-2005-mass", child)) - 1), `${sex} ${years}`).toBeLessThan(
          0.05,
        );
      }
    }
  });

  it("Cunningham 1991 and Katch-McArdle print one line; it stays near Cunningham 1980 (unverified)", () => {
    for (const lean of [35, 50, 65, 80]) {
      const person = { sex: "male", age: 30, mass: 100, leanMass: lean } as const;
      const newer = resting("cunningham-1991", person);
      expect(newer).toBe(resting("katch-mcardle", person));
      // 370 + 21.6 FFM, worked by hand for 50 kg: 1450.
      if (lean === 50) expect(newer).toBe("1450");
      const older = Number(resting("cunningham-1980", person));
      expect(older - Number(newer)).toBeGreaterThan(130);
      expect(older - Number(newer)).toBeLessThan(170);
    }
  });
});

describe("every equation", () => {
  const person = fc.record({
    sex: fc.constantFrom("female" as const, "male" as const),
    age: fc.integer({ min: 19, max: 74 }),
    kg: fc.integer({ min: 40, max: 150 }),
    cm: fc.integer({ min: 140, max: 205 }),
    fat: fc.integer({ min: 5, max: 50 }),
    level: fc.integer({ min: 14, max: 24 }),
  });
  type Body = { sex: "female" | "male"; age: number; kg: number; cm: number; fat: number; level: number };
  const need = (b: Body, equation: EquationId): ReturnType<typeof energyNeed> =>
    energyNeed(
      {
        sex: b.sex,
        age: b.age,
        mass: b.kg,
        height: `${b.cm} cm`,
        bodyFat: `${b.fat} %`,
        activity: b.level / 10,
      },
      { equation },
    );

  it.each(ids)("%s rises with mass and activity, and never falls with height", (equation) => {
    fc.assert(
      fc.property(person, (b) => {
        const here = need(b, equation);
        expect(need({ ...b, kg: b.kg + 1 }, equation).resting.gt(here.resting)).toBe(true);
        expect(need({ ...b, level: b.level + 1 }, equation).total.gt(here.total)).toBe(true);
        expect(need({ ...b, cm: b.cm + 1 }, equation).resting.gte(here.resting)).toBe(true);
        expect(here.total.eq(here.resting.times(b.level).div(10))).toBe(true);
      }),
      { numRuns: runs(50) },
    );
  });

  it("says who it is from, whom it was made for and how it was checked", () => {
    for (const id of ids) {
      const equation = energyEquations[id];
      expect(equation.id).toBe(id);
      expect(equation.source).toMatch(/\d{4}|textbook/);
      expect(equation.population.length).toBeGreaterThan(20);
      expect(["issuer", "copy", "unverified"]).toContain(equation.check);
    }
  });
});
