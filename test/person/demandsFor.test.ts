import { describe, expect, it } from "vitest";
import { components } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { compare } from "../../src/person/compare/compare.ts";
import { demandsFor } from "../../src/person/demandsFor.ts";
import { countsFood, type NoUpper, referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Authority } from "../../src/person/intakes/table.ts";
import { upperLimits } from "../../src/person/intakes/upperLimits.ts";
import type { Person } from "../../src/person/person.ts";
import { fit } from "../../src/scale/fit.ts";
import { sheet } from "../../src/sheet/build.ts";
import { tablesOf } from "../../src/show.ts";
import { errorOf } from "../number/errorOf.ts";

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
    expect(others).toEqual(["retinol", "folicAcid", "copper", "selenium", "iodine", "chromium", "manganese"]);
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

describe("a level that is guidance, not set from harm", () => {
  // Which kind each level is: EVM 2003 (SUL where the evidence was enough, else guidance) and SACN 2016;
  // EFSA 2023 and 2024 set no UL for manganese and iron, but a safe level of intake. See src/person/intakes.
  const limited = (authority: Authority, guidance?: "tell" | "limit"): readonly (string | undefined)[] =>
    demandsFor(woman, authority, guidance && { guidance }).demands.map(({ of }) => of);
  const told = (person: Person, authority: Authority): string | undefined =>
    demandsFor(person, authority).cautions.find(({ code }) => code === "guidance-level")?.text;

  it("is told, and is no limit unless asked", () => {
    expect([...limited("uk")].sort()).toEqual(["copper", "iodine", "retinol", "selenium", "vitaminD"]);
    for (const of of ["iron", "manganese", "fluoride"]) expect(limited("eu")).not.toContain(of);
    for (const of of ["zinc", "copper", "iodine", "retinol"]) expect(limited("eu")).toContain(of);
    expect(told(woman, "uk")).toBe(
      "Told, and not taken for limits: manganese 12.2 mg; chromium 10000 µg; folic acid 1000 µg a day. " +
        "These are guidance levels, given where the evidence was too thin for a safe upper level; more is proven neither harmful nor safe.",
    );
    expect(told(woman, "eu")).toMatch(/^Told, .*iron 40 mg; .*manganese 8 mg.* a day\./);
    for (const authority of ["uk", "eu"] as const) {
      expect(limited(authority, "limit")).toEqual(
        expect.arrayContaining(["manganese", ...limited(authority)]),
      );
      const { cautions } = demandsFor(woman, authority, { guidance: "limit" });
      expect(cautions.map(({ code }) => code)).not.toContain("guidance-level");
    }
    // The National Academies set ULs alone; their CDRR of sodium is no limit either way.
    expect(told(woman, "us")).toBeUndefined();
    expect(limited("us", "limit")).toEqual(limited("us"));
  });

  it("is a limit where more has done harm: retinol, iodine and caffeine", () => {
    // The EVM's note on retinol (bone; no liver in pregnancy) and EFSA 2015 on caffeine, 200 mg in pregnancy,
    // stand in the rows; EFSA and the National Academies set ULs of retinol and iodine.
    const most = (person: Person, authority: Authority, of: string): unknown =>
      demandsFor(person, authority).demands.find((demand) => demand.of === of)?.most;
    expect([most(woman, "uk", "retinol"), most(woman, "uk", "iodine")]).toEqual(["1500", "940"]);
    expect([most(woman, "eu", "caffeine"), most({ ...woman, pregnant: 2 }, "eu", "caffeine")]).toEqual([
      "400",
      "200",
    ]);
    expect(told(woman, "uk")).not.toMatch(/retinol|iodine/);
    expect(told(woman, "eu")).not.toContain("caffeine");
  });

  it("keeps no rower from an oat breakfast", () => {
    // 30 % of 12.2 mg of manganese are in some 100 g of oats (USDA SR28: 3.63 mg in 100 g).
    const oats = sheet(
      {
        name: "Oats",
        portions: 1,
        lines: [
          { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
          { key: "milk", food: "milk-whole", amount: "60 g" },
          { key: "honey", food: "honey", amount: "80 g" },
        ],
      },
      starterFoods,
    );
    const heavy: Person = { sex: "male", age: 27, mass: "94 kg", height: "1.96 m", activity: "2.3" };
    const how = { aim: { weight: "hold" }, share: "30 %" } as const;
    for (const authority of ["uk", "eu"] as const) {
      const { demands, energy } = demandsFor(heavy, authority, how);
      const fitted = fit(oats, demands);
      expect(fitted.status).toBe("met");
      if (fitted.status !== "met") continue;
      expect(fitted.sheet.portion("energy").value.toNumber()).toBeCloseTo(
        0.3 * (energy?.target.toNumber() ?? 0),
        6,
      );
      const row = compare(fitted.sheet, referenceIntakes(authority, heavy)).get("manganese");
      expect(row?.upper?.figure.kind).toMatch(/guidance level|safe level of intake/);
      expect(row?.upper?.share?.toNumber()).toBeGreaterThan(0.3);
      expect(fit(oats, demandsFor(heavy, authority, { ...how, guidance: "limit" }).demands).status).not.toBe(
        "met",
      );
    }
  });

  it("of manganese is lower for older people in the UK", () => {
    // EVM 2003, in a copy: 12.2 mg, and 8.7 mg from 50 (sanomedica.com/manganese-safety-assessment).
    const level = (age: number): string | undefined =>
      referenceIntakes("uk", { ...woman, age })
        .get("manganese")
        .upper?.value.toString();
    expect([17, 18, "49.9", 50, 80].map((age) => level(Number(age)))).toEqual([
      undefined,
      "12.2",
      "12.2",
      "8.7",
      "8.7",
    ]);
    expect(told({ ...woman, age: 61 }, "uk")).toContain("manganese 8.7 mg");
  });

  it("is taken in one of two ways", () => {
    for (const guidance of ["limits", "", null, 1, true]) {
      const how = { guidance } as never;
      const found = errorOf(() => demandsFor(woman, "uk", how));
      expect([found.code, found.faults[0]?.path]).toEqual(["aim-malformed", ["guidance"]]);
      expect(errorOf(() => upperLimits(referenceIntakes("uk", woman), 1, how)).code).toBe(
        "comparison-malformed",
      );
    }
    expect(
      errorOf(() => upperLimits(referenceIntakes("uk", woman), 1, { guide: "limit" } as never)).code,
    ).toBe("comparison-malformed");
  });
});

describe("an authority that was read in part", () => {
  // Which figures are held is walked in test/reference; what is said to be missing must be, and nothing of it held.
  it.each(["nordic", "who"] as const)("says what is not here, wherever it is asked: %s", (authority) => {
    const { cautions, intakes } = demandsFor(woman, authority);
    expect(intakes.missing).toContain("that nothing is said of protein");
    expect(intakes.get("protein").reference).toBeUndefined();
    expect(intakes.get("vitaminC").reference).toBeUndefined();
    expect(cautions.map(({ code, text }) => [code, text])).toContainEqual([
      "authority-in-part",
      intakes.missing,
    ]);
    const plate = sheet(
      { name: "Plate", portions: 1, lines: [{ amount: "100 g", food: "lentils-boiled" }] },
      starterFoods,
    );
    const [day] = tablesOf(compare(plate, intakes));
    expect(day?.notes).toContain(intakes.missing);
  });

  it.each(["uk", "us", "eu"] as const)("says nothing of the others: %s", (authority) => {
    const { cautions, intakes } = demandsFor(woman, authority);
    expect(intakes.missing).toBeUndefined();
    expect(cautions.map(({ code }) => code)).not.toContain("authority-in-part");
  });
});
