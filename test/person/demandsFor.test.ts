import { describe, expect, it } from "vitest";
import { components } from "../../src/food/components.ts";
import { demandsFor } from "../../src/person/demandsFor.ts";
import { countsFood, type NoUpper, referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Authority } from "../../src/person/intakes/table.ts";
import type { Person } from "../../src/person/person.ts";

const girl: Person = { sex: "female", age: 15, mass: "50 kg", height: "1.60 m", activity: "active" };
const woman: Person = { sex: "female", age: 30, mass: "60 kg", height: "1.70 m", activity: "active" };

const said = (person: Person, authority: Authority): string | undefined =>
  demandsFor(person, authority).cautions.find(({ code }) => code === "no-upper-level")?.text;

describe("what no upper level limits", () => {
  it("is said of a child whose authority set its levels for adults", () => {
    // EVM 2003: safe upper and guidance levels are of adults; SACN 2016 has vitamin D for children too.
    const { demands, intakes } = demandsFor(girl, "uk");
    expect(demands.map(({ of }) => of)).toEqual(["vitaminD"]);
    const others = intakes.withoutUpper.filter(({ forOthers }) => forOthers).map(({ of }) => of);
    expect(others).toEqual(["retinol", "folicAcid", "copper", "selenium", "iodine", "manganese", "chromium"]);
    for (const id of others) expect(said(girl, "uk")).toContain(components[id].name);
    expect(said(woman, "uk")).toBeUndefined();
    // EFSA 2012 gives calcium no level below 18.
    expect(said(girl, "eu")).toContain("No upper level applies to calcium:");
    expect(said(girl, "us")).toBeUndefined();
  });

  it.each(["uk", "us", "eu"] as const)("is all that has a figure and no level: %s", (authority) => {
    for (const age of [1, 6, 13, 15, 30, 75]) {
      const intakes = referenceIntakes(authority, { ...girl, age, mass: 40 });
      const limited = (of: NoUpper["of"]): boolean => intakes.get(of).uppers.some(countsFood);
      for (const { of } of intakes.withoutUpper) expect(limited(of), of).toBe(false);
      for (const of of intakes.components) {
        const { references } = intakes.get(of);
        const isNamed = intakes.withoutUpper.some((each) =>
          intakes.get(each.of).references.some((figure) => references.includes(figure)),
        );
        if (of !== "energy" && references.length > 0 && !limited(of)) expect(isNamed, of).toBe(true);
      }
      // Energy is limited by no level, and magnesium's counts supplements alone.
      const ids = intakes.withoutUpper.map(({ of }) => of);
      expect(ids).not.toContain("energy");
      if (age > 3) expect(ids).toContain("magnesium");
      expect(new Set(ids).size).toBe(ids.length);
    }
  });
});
