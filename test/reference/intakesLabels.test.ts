import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import { foodFromLabel } from "../../src/food/label.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { type LabelAuthority, labelReference, labelTables } from "../../src/person/intakes/labelReference.ts";

/**
 * Label values typed a second time, in the order of another copy: the EU's from the facsimile of the
 * Official Journal (Portuguese, L 304/61), in the component's own unit, the columns one after the
 * other; the United States' from a consumer organisation's list of the 2016 values.
 */
const euFacsimile: readonly [ComponentId, number][] = [
  ["vitaminARe", 800],
  ["vitaminD", 5],
  ["vitaminE", 12],
  ["vitaminK", 75],
  ["vitaminC", 80],
  ["thiamin", 1.1],
  ["riboflavin", 1.4],
  ["niacinEquivalents", 16],
  ["vitaminB6", 1.4],
  ["folate", 200],
  ["vitaminB12", 2.5],
  ["biotin", 50],
  ["pantothenicAcid", 6],
  ["potassium", 2000],
  ["chloride", 800],
  ["calcium", 800],
  ["phosphorus", 700],
  ["magnesium", 375],
  ["iron", 14],
  ["zinc", 10],
  ["copper", 1],
  ["manganese", 2],
  ["fluoride", 3.5],
  ["selenium", 55],
  ["chromium", 40],
  ["molybdenum", 50],
  ["iodine", 150],
  ["energy", 2000],
  ["fat", 70],
  ["saturatedFat", 20],
  ["availableCarbohydrate", 260],
  ["sugars", 90],
  ["protein", 50],
  ["salt", 6],
];

const usList: readonly [ComponentId, number][] = [
  ["biotin", 30],
  ["calcium", 1300],
  ["chloride", 2300],
  ["choline", 550],
  ["chromium", 35],
  ["copper", 0.9],
  ["folateDfe", 400],
  ["iodine", 150],
  ["iron", 18],
  ["magnesium", 420],
  ["manganese", 2.3],
  ["molybdenum", 45],
  ["niacinEquivalents", 16],
  ["pantothenicAcid", 5],
  ["phosphorus", 1250],
  ["potassium", 4700],
  ["riboflavin", 1.3],
  ["selenium", 55],
  ["sodium", 2300],
  ["thiamin", 1.2],
  ["vitaminARae", 900],
  ["vitaminB6", 1.7],
  ["vitaminB12", 2.4],
  ["vitaminC", 90],
  ["vitaminD", 20],
  ["vitaminE", 15],
  ["vitaminK", 120],
  ["zinc", 11],
  ["fibre", 28],
  // 21 CFR 101.9(c)(9): fat as its change is told, the others as usDailyValues says; carbohydrate unverified.
  ["fat", 78],
  ["saturatedFat", 20],
  ["cholesterol", 300],
  ["carbohydrateByDifference", 275],
  ["protein", 50],
  ["addedSugars", 50],
];

/** Adopted in July 2013, in a trade report of the session. */
const codexSession: readonly [ComponentId, number][] = [
  ["vitaminK", 60],
  ["vitaminB6", 1.3],
  ["vitaminB12", 2.4],
  ["biotin", 30],
  ["folateDfe", 400],
  ["niacinEquivalents", 15],
  ["pantothenicAcid", 5],
  ["riboflavin", 1.2],
  ["thiamin", 1.2],
  ["calcium", 1000],
  ["iodine", 150],
];

describe("label values", () => {
  const lists: readonly [LabelAuthority, readonly [ComponentId, number][]][] = [
    ["eu", euFacsimile],
    ["us", usList],
    ["codex", codexSession],
  ];

  it.each(lists)("agree with a second copy: %s", (authority, list) => {
    const labels = labelReference(authority);
    for (const [id, value] of list) expect(Number(labels.get(id)?.value), id).toBe(value);
    if (authority !== "codex") expect(labels.components.length).toBe(list.length);
  });

  it("each have a source and a check", () => {
    for (const [authority, table] of Object.entries(labelTables)) {
      expect(table.source, authority).toMatch(/\d{4}/);
      for (const row of table.references) {
        expect(["issuer", "copy", "unverified"], String(row.of)).toContain(row.check);
      }
    }
  });

  it("are those that a label's per cents are read by: one table", () => {
    // 45 % of the Daily Value of iron, 18 mg, is 8.1 mg.
    const read = foodFromLabel({
      ...{ id: "bar", name: "Bar", style: "us", per: "100 g", source: "made up for a test" },
      figures: { iron: "45 %" },
    });
    const iron = read.per100g.iron;
    const of = labelReference("us").get("iron")?.value;
    expect(typeof iron === "object" && "value" in iron && Number(iron.value)).toBe(
      of?.times("0.45").toNumber(),
    );
  });

  it("speak of one form of a nutrient, and of no other", () => {
    expect(labelReference("us").get("vitaminARae")?.basis).toBe("RAE");
    expect(labelReference("us").get("vitaminARe")).toBeUndefined();
    expect(labelReference("eu").get("vitaminARae")).toBeUndefined();
    expect(labelReference("codex").get("vitaminD")?.most?.toString()).toBe("15");
    expect(labelReference("codex").get("copper")?.value.toString()).toBe("0.9");
  });

  it("come from a known authority", () => {
    for (const name of ["uk", "__proto__", ""]) {
      expect(() => labelReference(name as LabelAuthority)).toThrow(SteelyardError);
    }
    expect(() => labelReference("eu").get("vitaminX" as "iron")).toThrow(SteelyardError);
  });
});
