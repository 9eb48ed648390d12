import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { SteelyardError } from "../../src/number/error.ts";
import { cautionTexts } from "../../src/person/caution.ts";
import { energyNeed } from "../../src/person/energyNeed.ts";
import type { EquationId } from "../../src/person/equations/equation.ts";
import type { Person } from "../../src/person/person.ts";
import { runs } from "../runs.ts";

const lightweight: Person = { sex: "female", age: 24, mass: "59 kg", height: "1.72 m", activity: "vigorous" };

function codeOf(step: () => unknown): string {
  try {
    step();
  } catch (error) {
    if (error instanceof SteelyardError) return error.code;
    throw error;
  }
  return "none";
}

const codes = (person: Person, equation?: EquationId): string[] =>
  energyNeed(person, equation ? { equation } : {}).cautions.map((c) => c.code);

describe("energy need", () => {
  it("takes Mifflin-St Jeor for adults whose height is known, else Schofield", () => {
    expect(energyNeed(lightweight).equation).toBe("mifflin-st-jeor");
    const { height: _, ...heightless } = lightweight;
    expect(energyNeed(heightless).equation).toBe("schofield-1985");
    expect(energyNeed({ ...lightweight, age: 15 }).equation).toBe("schofield-1985");
    expect(energyNeed({ ...lightweight, age: 79 }).equation).toBe("schofield-1985");
    expect(energyNeed({ ...lightweight, age: "78.9" }).equation).toBe("mifflin-st-jeor");
  });

  it("shows how far the equations lie apart", () => {
    const need = energyNeed({ ...lightweight, bodyFat: "18 %" });
    expect(need.spread.map((s) => s.equation).sort()).toEqual([
      "cunningham-1980",
      "cunningham-1991",
      "harris-benedict-1984",
      "henry-2005",
      "henry-2005-mass",
      "katch-mcardle",
      "mifflin-st-jeor",
      "schofield-1985",
    ]);
    const totals = need.spread.map((s) => s.total.toNumber());
    expect(need.range.least.toNumber()).toBe(Math.min(...totals));
    expect(need.range.most.toNumber()).toBe(Math.max(...totals));
    // One number hides a few hundred kcal: common practice, no source.
    expect(need.range.most.minus(need.range.least).toNumber()).toBeGreaterThan(200);
    expect(need.spread.find((s) => s.equation === need.equation)?.total.eq(need.total)).toBe(true);
  });

  it("leaves equations made from adults out of a child's spread", () => {
    const spread = energyNeed({
      sex: "male",
      age: 9,
      mass: "30 kg",
      height: "134 cm",
      bodyFat: 0.16,
      activity: "active",
    }).spread;
    expect(spread.map((s) => s.equation).sort()).toEqual(["henry-2005", "henry-2005-mass", "schofield-1985"]);
  });

  it("names the class and band that activity was read as", () => {
    const { activity } = energyNeed(lightweight);
    // FAO/WHO/UNU 2004, table 5.3: vigorous 2.00 to 2.40; middle 2.20.
    expect([activity.level, activity.band?.least, activity.band?.most].map(String)).toEqual([
      "2.2",
      "2",
      "2.4",
    ]);
    expect(energyNeed({ ...lightweight, activity: 1.75 }).activity).toEqual({ level: expect.anything() });
  });

  it("reads a class of activity by age: EFSA 2013 for the young, with 1 % for growth", () => {
    const levels = (age: number): string[] =>
      (["sedentary", "active", "vigorous"] as const).map((activity) => {
        const { level, source } = energyNeed({ sex: "male", age, mass: 30, activity }).activity;
        return `${level} ${source?.slice(0, 9)}`;
      });
    expect(levels(2)).toEqual(["1.414 EFSA 2013", "1.414 EFSA 2013", "1.414 EFSA 2013"]);
    expect(levels(4)).toEqual(["1.414 EFSA 2013", "1.616 EFSA 2013", "1.818 EFSA 2013"]);
    expect(levels(9.9)).toEqual(levels(4));
    expect(levels(10)).toEqual(["1.616 EFSA 2013", "1.818 EFSA 2013", "2.02 EFSA 2013"]);
    expect(levels(17.9)).toEqual(levels(10));
    expect(levels(18)).toEqual(["1.55 FAO/WHO/U", "1.85 FAO/WHO/U", "2.2 FAO/WHO/U"]);
    // EFSA's announcement of 2013: a moderately active boy of 17 needs 2,900 kcal, a girl 2,300; Henry (Oxford).
    const need = (sex: "male" | "female", mass: number, height: string): number =>
      energyNeed(
        { sex, age: 17, mass, height, activity: "sedentary" },
        { equation: "henry-2005" },
      ).total.toNumber();
    expect(Math.abs(need("male", 65, "1.75 m") - 2900)).toBeLessThan(50);
    expect(Math.abs(need("female", 56, "1.63 m") - 2300)).toBeLessThan(50);
  });

  it("says what is missing", () => {
    const { height: _, ...heightless } = lightweight;
    const { activity: __, ...idle } = lightweight;
    expect(codeOf(() => energyNeed(heightless, { equation: "mifflin-st-jeor" }))).toBe("person-needs");
    expect(codeOf(() => energyNeed(lightweight, { equation: "cunningham-1980" }))).toBe("person-needs");
    expect(codeOf(() => energyNeed(idle))).toBe("person-needs");
    for (const name of ["mifflin", "__proto__", "constructor", "", 5]) {
      expect(
        codeOf(() => energyNeed(lightweight, { equation: name as EquationId })),
        String(name),
      ).toBe("equation-unsuitable");
    }
  });

  it("refuses a body that an equation gives no energy for", () => {
    const odd: Person = { sex: "male", age: 120, mass: "4 kg", height: "50 cm", activity: "sedentary" };
    expect(codeOf(() => energyNeed(odd, { equation: "mifflin-st-jeor" }))).toBe("equation-unsuitable");
    expect(energyNeed(odd).spread.every((s) => s.resting.gt(0))).toBe(true);
  });

  it("gives the same in pounds, stones, feet and inches as in kilograms and metres", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 80, max: 350 }),
        fc.integer({ min: 55, max: 80 }),
        fc.integer({ min: 18, max: 90 }),
        fc.constantFrom("female" as const, "male" as const),
        (lb, inches, age, sex) => {
          const base = { sex, age, activity: "active", bodyFat: "25 %" } as const;
          const kg = ((BigInt(lb) * 45359237n) / 1n).toString().padStart(9, "0");
          const metric = energyNeed({
            ...base,
            mass: `${kg.slice(0, -8)}.${kg.slice(-8)} kg`,
            height: `${((inches * 254) / 100).toFixed(2)} cm`,
          });
          const imperial = energyNeed({
            ...base,
            mass: `${Math.floor(lb / 14)} st ${lb % 14} lb`,
            height: `${Math.floor(inches / 12)} ft ${inches % 12} in`,
          });
          expect(imperial).toEqual(metric);
        },
      ),
      { numRuns: runs(50) },
    );
  });
});

describe("cautions with the need", () => {
  it("come with the person", () => {
    expect(codes(lightweight)).toEqual([]);
    expect(codes({ ...lightweight, age: 17 })).toEqual(["under-18"]);
    expect(codes({ ...lightweight, age: "64.9" })).toEqual([]);
    expect(codes({ ...lightweight, age: 65, mass: "65 kg" })).toEqual(["over-65"]);
    expect(codes({ ...lightweight, pregnant: 2 })).toEqual(["pregnant"]);
    expect(codes({ ...lightweight, breastfeeding: true })).toEqual(["breastfeeding"]);
    // 18.5 kg per square metre at 1.72 m is 54.7304 kg (WHO class).
    expect(codes({ ...lightweight, mass: "54.73 kg" })).toEqual(["underweight"]);
    expect(codes({ ...lightweight, mass: "54.7304 kg" })).toEqual([]);
    const conditions = [
      "kidney-disease",
      "insulin",
      "warfarin",
      "thyroid-disease",
      "eating-disorder-history",
      "coeliac-disease",
      "diabetes",
      "hypertension",
    ] as const;
    expect(codes({ ...lightweight, conditions })).toEqual(conditions);
    // A card that others read leaves out what has a reason in the person.
    const { cautions } = energyNeed({ ...lightweight, conditions });
    expect(cautions.map(({ because }) => because?.join())).toEqual(conditions);
  });

  it("come with the equation and the activity", () => {
    expect(codes({ ...lightweight, age: 80, mass: "66 kg" }, "mifflin-st-jeor")).toEqual([
      "outside-population",
      "over-65",
    ]);
    expect(codes({ ...lightweight, activity: 2.6 })).toEqual(["unusual-activity"]);
    expect(codes({ ...lightweight, activity: 1.3 })).toEqual(["unusual-activity"]);
    expect(codes({ ...lightweight, activity: 2.4 })).toEqual([]);
  });

  it("each name the body that issued them", () => {
    for (const [code, { text, source, check }] of Object.entries(cautionTexts)) {
      expect(text.length, code).toBeGreaterThan(20);
      expect(source.length, code).toBeGreaterThan(10);
      expect(["issuer", "copy", "unverified"], code).toContain(check);
    }
  });
});
