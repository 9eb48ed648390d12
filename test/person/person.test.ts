import { describe, expect, it } from "vitest";
import { exactText } from "../../src/number/digits.ts";
import { type Fault, SteelyardError } from "../../src/number/error.ts";
import { personFacts } from "../../src/person/readPerson.ts";

const cox = { sex: "female", age: 24, mass: "50 kg", height: "1.60 m", activity: "active" };

function faultsOf(input: unknown): readonly Fault[] {
  try {
    personFacts(input as Parameters<typeof personFacts>[0]);
  } catch (error) {
    if (error instanceof SteelyardError) return error.faults;
    throw error;
  }
  return [];
}

/** Each case: what is wrong, and the path that it is reported at. */
const bad: readonly [string, unknown, string][] = [
  ["nothing", undefined, ""],
  ["null", null, ""],
  ["a list", [], ""],
  ["text", "cox", ""],
  ["a number", 5, ""],
  ["no sex", { ...cox, sex: undefined }, "sex"],
  ["an unknown sex", { ...cox, sex: "f" }, "sex"],
  ["no age", { ...cox, age: undefined }, "age"],
  ["an age of NaN", { ...cox, age: Number.NaN }, "age"],
  ["an endless age", { ...cox, age: Number.POSITIVE_INFINITY }, "age"],
  ["an age below 1", { ...cox, age: 0.5 }, "age"],
  ["an age below 0", { ...cox, age: -3 }, "age"],
  ["an age above 120", { ...cox, age: 121 }, "age"],
  ["an age in words", { ...cox, age: "twenty" }, "age"],
  ["no mass", { ...cox, mass: undefined }, "mass"],
  ["a mass of a list", { ...cox, mass: ["50 kg"] }, "mass"],
  ["a mass in litres", { ...cox, mass: "50 l" }, "mass"],
  ["a mass of nothing", { ...cox, mass: "0 kg" }, "mass"],
  ["a mass of 1 kg", { ...cox, mass: "1 kg" }, "mass"],
  ["a mass of a tonne", { ...cox, mass: "1000 kg" }, "mass"],
  ["a mass in grams by slip", { ...cox, mass: 50000 }, "mass"],
  ["a bare height", { ...cox, height: 1.6 }, "height"],
  ["a bare height in text", { ...cox, height: "160" }, "height"],
  ["a height of 16 m", { ...cox, height: "16 m" }, "height"],
  ["a height of 1.6 cm", { ...cox, height: "1.6 cm" }, "height"],
  ["more lean than body", { ...cox, leanMass: "60 kg" }, "leanMass"],
  ["body fat of 22", { ...cox, bodyFat: 22 }, "bodyFat"],
  ["body fat of 120 %", { ...cox, bodyFat: "120 %" }, "bodyFat"],
  ["nothing but fat", { ...cox, bodyFat: 1 }, "bodyFat"],
  ["lean mass and body fat", { ...cox, leanMass: "40 kg", bodyFat: "20 %" }, "bodyFat"],
  ["an unknown activity", { ...cox, activity: "lazy" }, "activity"],
  ["an activity of 0.9", { ...cox, activity: 0.9 }, "activity"],
  ["an activity of 9", { ...cox, activity: 9 }, "activity"],
  ["a fourth trimester", { ...cox, pregnant: 4 }, "pregnant"],
  ["pregnant: true", { ...cox, pregnant: true }, "pregnant"],
  ["a pregnant man", { ...cox, sex: "male", pregnant: 1 }, "pregnant"],
  ["a breastfeeding man", { ...cox, sex: "male", breastfeeding: true }, "breastfeeding"],
  ["breastfeeding in words", { ...cox, breastfeeding: "yes" }, "breastfeeding"],
  ["months without breastfeeding", { ...cox, monthsSinceBirth: 3 }, "monthsSinceBirth"],
  ["an unknown condition", { ...cox, conditions: ["gout"] }, "conditions.0"],
  ["conditions as text", { ...cox, conditions: "insulin" }, "conditions"],
  ["an unknown allergen", { ...cox, allergens: ["nut"] }, "allergens.0"],
  ["supervision by nobody", { ...cox, supervised: { by: "  " } }, "supervised.by"],
  ["supervision as text", { ...cox, supervised: "Dr" }, "supervised"],
  ["an unknown field", { ...cox, hight: "1.60 m" }, "hight"],
  ["a poisoned field", JSON.parse('{"__proto__": {"sex": "male"}, "age": 3}'), "__proto__"],
  ["a field of every object", { ...cox, constructor: 1 }, "constructor"],
];

describe("a person from outside", () => {
  it.each(bad)("is refused for %s", (_, input, path) => {
    const faults = faultsOf(input);
    expect(faults.map((f) => f.path.join("."))).toContain(path);
    for (const f of faults) {
      expect(f.hint.length).toBeGreaterThan(3);
      expect(f.message.length).toBeGreaterThan(3);
    }
  });

  it("is told every fault at once", () => {
    const faults = faultsOf({ sex: "x", age: -1, mass: "?", height: 2, activity: "lazy", extra: 1 });
    expect(faults.map((f) => f.path[0]).sort()).toEqual([
      "activity",
      "age",
      "extra",
      "height",
      "mass",
      "sex",
    ]);
  });

  it("may not contain itself", () => {
    const looped: Record<string, unknown> = { ...cox };
    looped.supervised = looped;
    expect(faultsOf(looped).map((f) => f.message)).toEqual(["the document contains itself"]);
  });

  it("is read exactly", () => {
    const facts = personFacts({ ...cox, sex: "female", activity: "1.6", bodyFat: "22 %" });
    expect(exactText(facts.lean ?? facts.age)).toBe("39");
    expect(facts.activity).toEqual({ n: 8n, d: 5n });
    expect(facts.breastfeeding).toBe(false);
  });
});
