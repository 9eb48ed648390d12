import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactText } from "../../src/number/digits.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { readHeight, readMass } from "../../src/person/size.ts";

const mass = (text: string | number): string => exactText(readMass(text));
const height = (text: string): string => exactText(readHeight(text));

describe("body mass", () => {
  it("is exact in every unit", () => {
    // International yard and pound agreement, 1959: a pound is 0.45359237 kg; 14 pounds to the stone.
    expect(mass("1 lb")).toBe("0.45359237");
    expect(mass("9 st 8 lb")).toBe("60.78137758");
    expect(mass("134 lb")).toBe(mass("9 st 8 lb"));
    expect(mass("61 kg")).toBe("61");
    expect(mass(61.5)).toBe("61.5");
    expect(mass("61,5 kg")).toBe("61.5");
    for (const text of ["9st8lb", "9st 8lb", "9 st8 lb"]) expect(mass(text)).toBe(mass("9 st 8 lb"));
    expect(mass("61kg500g")).toBe("61.5");
    expect(mass("9 stone 8 pounds")).toBe(mass("9 st 8 lb"));
  });

  it("refuses what is not a mass", () => {
    for (const text of ["", "heavy", "1.7 m", "250 ml", "-61 kg", "61", "0 kg", "1,000 kg", "9st8"]) {
      if (text === "61") expect(mass(text)).toBe("61");
      else expect(() => readMass(text), text).toThrow(SteelyardError);
    }
    expect(() => readMass(Number.NaN)).toThrow(SteelyardError);
    expect(() => readMass(-1)).toThrow(SteelyardError);
  });
});

describe("height", () => {
  it("is exact in every unit", () => {
    // An inch is 25.4 mm exactly (1959).
    expect(height("5 ft 7 in")).toBe("1.7018");
    expect(height("5'7\"")).toBe("1.7018");
    expect(height("5′ 7½″")).toBe("1.7145");
    expect(height("67 inches")).toBe("1.7018");
    expect(height("170 cm")).toBe("1.7");
    expect(height("1.70 m")).toBe("1.7");
    expect(height("1,70 m")).toBe("1.7");
    expect(height("1 m 70 cm")).toBe("1.7");
    for (const text of ["1m70", "1 m 70", "1m70cm", "170cm", "1.70m"]) expect(height(text)).toBe("1.7");
    expect([height("1m05"), height("5ft7in")]).toEqual(["1.05", "1.7018"]);
    expect(height("6 ft")).toBe("1.8288");
  });

  it("refuses what could be read two ways, or not at all", () => {
    for (const text of [
      "1.7",
      "170",
      "5 ft 12 in",
      "7 in 5 ft",
      "1 m 7 in",
      "5 ft 7",
      "5 ft 70",
      "1m7",
      "1m700",
      "1m70.5",
      "170 cm 10",
      "tall",
      "",
      "0 m",
      "9 st",
    ]) {
      expect(() => readHeight(text), text).toThrow(SteelyardError);
    }
    expect(() => readHeight("1".repeat(500))).toThrow(SteelyardError);
  });

  it("adds up feet and inches as inches do", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 0, max: 11 }), (ft, inches) => {
        expect(height(`${ft} ft ${inches} in`)).toBe(height(`${12 * ft + inches} in`));
      }),
    );
  });
});
