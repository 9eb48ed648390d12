import { describe, expect, it } from "vitest";
import { SteelyardError } from "../../src/number/error.ts";
import type { RequirementActivity } from "../../src/person/equations/eer2023.ts";
import {
  estimatedEnergyRequirement,
  type RequirementOptions,
} from "../../src/person/estimatedEnergyRequirement.ts";
import type { Person } from "../../src/person/person.ts";

const spans: readonly RequirementActivity[] = ["inactive", "low-active", "active", "very-active"];

type Printed = readonly (readonly [age: number, cm: string, kg: string, kcal: string])[];

/**
 * National Academies 2023, Dietary Reference Intakes for Energy, appendix M, as printed there: median heights and
 * masses of an age, and the requirement by the four spans of activity. The ages are those of the tables' note c.
 */
const tables: readonly (readonly [name: string, sex: Person["sex"], Printed])[] = [
  [
    "M-1, boys: underweight, normal weight",
    "male",
    [
      [3, "95.6", "13.1", "1000 1140 1121 1134"],
      [6, "120.2", "20.8", "1427 1514 1596 1698"],
      [11, "148.2", "31.2", "1956 1995 2192 2398"],
      [16, "173.3", "49.1", "2532 2588 2889 3214"],
      [3, "94.9", "14.3", "1006 1158 1137 1151"],
      [6, "118.1", "21.3", "1406 1506 1580 1677"],
    ],
  ],
  [
    "M-2, girls: overweight, obese",
    "female",
    [
      [16, "161.6", "70.8", "2290 2473 2670 2908"],
      [3, "95.7", "17.3", "1106 1128 1200 1229"],
      [6, "122.1", "32.1", "1514 1616 1714 1854"],
      [11, "152.7", "66.5", "2263 2417 2608 2805"],
      [16, "161.6", "88.0", "2584 2726 2986 3153"],
    ],
  ],
  [
    "M-3, men: underweight, normal weight, overweight",
    "male",
    [
      [40, "176.3", "54.7", "2237 2429 2591 2846"],
      [60, "174.9", "53.9", "2000 2189 2353 2593"],
      [80, "172.2", "51.7", "1735 1917 2084 2292"],
      [50, "175.4", "54.3", "2117 2307 2471 2716"],
      [25, "176.1", "68.5", "2593 2796 2972 3269"],
      [40, "175.9", "71", "2464 2669 2848 3152"],
      [60, "174.2", "69.9", "2221 2422 2603 2887"],
      [80, "170.5", "65.8", "1923 2113 2297 2535"],
      [25, "176.1", "83.3", "2802 3017 3208 3552"],
      [40, "175.7", "84.9", "2659 2875 3068 3414"],
      [60, "174.6", "83", "2408 2621 2814 3144"],
      [80, "171.3", "80.1", "2130 2334 2530 2820"],
    ],
  ],
  [
    "M-4, women: obese",
    "female",
    [
      [40, "162.5", "94.6", "2342 2516 2660 2893"],
      [60, "160.5", "91.2", "2150 2322 2465 2692"],
      [80, "157.0", "83.6", "1901 2066 2208 2425"],
      [50, "161.1", "91.9", "2232 2404 2547 2777"],
    ],
  ],
];

describe("the Estimated Energy Requirement of 2023", () => {
  it.each(tables)("is what the report prints: table %s", (_, sex, printed) => {
    for (const [age, cm, kg, kcal] of printed) {
      const person: Person = { sex, age, mass: `${kg} kg`, height: `${cm} cm` };
      const figures = spans.map((activity) => estimatedEnergyRequirement(person, { activity }).value);
      // To the nearest kilocalorie; one half (2,802 at 2,801.5) is rounded up there.
      expect(
        figures.map((f) => f.toFixed(0)),
        `${sex} of ${age}, ${kg} kg`,
      ).toEqual(kcal.split(" "));
    }
  });

  const rower: Person = { sex: "female", age: 30, mass: "61 kg", height: "1.70 m" };

  it("takes the span that a level lies in", () => {
    // Notes d of M-2 and M-4: at 9 to 13 years the spans begin at 1.44, 1.60 and 1.77, at 14 at 1.57, 1.74 and 1.94.
    const at = (age: number, activity: string): string =>
      estimatedEnergyRequirement({ ...rower, age, activity }).activity;
    expect(["1.52", "1.53", "1.68", "1.69", "1.84", "1.85"].map((level) => at(30, level))).toEqual([
      ...["inactive", "low-active", "low-active", "active", "active", "very-active"],
    ]);
    expect([at(8, "1.59"), at(9, "1.59"), at(13, "1.60"), at(14, "1.60"), at(18, "1.94")]).toEqual([
      ...["very-active", "low-active", "active", "low-active", "very-active"],
    ]);
  });

  it("counts growth in, to 18 years", () => {
    const growth = (sex: Person["sex"], age: number): string =>
      estimatedEnergyRequirement({ ...rower, sex, age }, { activity: "active" }).growth.toString();
    expect([3, 4, 8, 9, 13, 14, 18, 19].map((age) => growth("male", age))).toEqual([
      ...["20", "15", "15", "25", "25", "20", "20", "0"],
    ]);
    expect([3, 8, 9, 14, 19].map((age) => growth("female", age))).toEqual(["15", "15", "30", "20", "0"]);
  });

  it("says what it lacks, and where another way lies", () => {
    const fault = (person: Partial<Person>, how?: RequirementOptions): string => {
      try {
        estimatedEnergyRequirement({ ...rower, activity: "1.6", ...person }, how);
        return "none";
      } catch (error) {
        if (!(error instanceof SteelyardError)) throw error;
        return `${error.code} ${error.path.join("/")}`;
      }
    };
    const { height: _, ...small } = { ...rower, activity: "1.6" };
    expect(() => estimatedEnergyRequirement(small)).toThrow(/height/);
    expect(fault({})).toBe("none");
    expect(fault({ age: 2 })).toBe("equation-unsuitable age");
    expect(fault({ pregnant: 2 })).toBe("equation-unsuitable pregnant");
    expect(fault({ breastfeeding: true })).toBe("equation-unsuitable breastfeeding");
    expect(fault({ activity: "active" })).toBe("person-needs activity");
    expect(fault({ activity: "active" }, { activity: "active" })).toBe("none");
    expect(fault({ activity: "2.5" })).toBe("equation-unsuitable activity");
    expect(fault({}, { activity: "vigorous" as never })).toBe("person-malformed activity");
    expect(fault({}, { span: "active" } as never)).toBe("person-malformed span");
  });
});
