import { describe, expect, it } from "vitest";
import { components } from "../../src/food/components.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { intakeTables } from "../../src/person/intakes/figures.ts";
import { countsFood, referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import { readStage } from "../../src/person/intakes/stage.ts";
import type { Authority, IntakeRow } from "../../src/person/intakes/table.ts";
import { upperLimits } from "../../src/person/intakes/upperLimits.ts";
import type { Person } from "../../src/person/person.ts";
import { energyRanges, energyRangesFor } from "../../src/person/ranges/all.ts";

const authorities: readonly Authority[] = ["uk", "us", "eu"];

const woman: Person = { sex: "female", age: 30, mass: "60 kg", height: "1.70 m", activity: "active" };
const man: Person = { sex: "male", age: 30, mass: "80 kg", height: "1.80 m", activity: "active" };

describe("every row", () => {
  const rows = authorities.flatMap((authority) =>
    intakeTables[authority].flatMap(({ references = [], uppers = [], stages }) =>
      [...references, ...uppers].map((row: IntakeRow) => [row, stages] as const),
    ),
  );

  it("has a figure for each column of its table, of known components", () => {
    for (const [row, stages] of rows) {
      const values = row.values.split(" ");
      expect(values.length, String(row.of)).toBe(stages.length);
      for (const value of values)
        expect(value, String(row.of)).toMatch(/^(?:-|=|\d+(?:\.\d+)?(?:-\d+(?:\.\d+)?)?)$/);
      for (const id of row.of) expect(Object.hasOwn(components, id)).toBe(true);
      for (const seen of row.seen ?? [])
        expect([...stages, "adds pregnant", "adds breastfeeding"]).toContain(seen);
    }
  });

  it("stands under columns that do not overlap", () => {
    for (const table of authorities.flatMap((a) => intakeTables[a])) {
      const stages = table.stages.map(readStage);
      for (const [i, a] of stages.entries()) {
        expect(a.from, table.stages[i]).toBeLessThan(100);
        for (const [j, b] of stages.entries()) {
          if (j <= i) continue;
          const sexes = a.letter === b.letter || (a.letter === undefined && /[MF]/.test(b.letter ?? "M"));
          const apart = a.from >= (b.below ?? 999) || b.from >= (a.below ?? 999);
          expect(!sexes || apart, `${table.stages[i]} and ${table.stages[j]}`).toBe(true);
        }
      }
    }
  });

  it("is read the right way round: no reference above an upper level that counts all food", () => {
    // EFSA's fluoride of 2013 is held to its safe level of 2025 in bodies above 66 kg, and its note says so.
    for (const authority of authorities) {
      for (const person of [
        woman,
        man,
        { ...woman, age: 8, mass: 26 },
        { ...man, age: 15 },
        { ...woman, age: 75 },
      ]) {
        const intakes = referenceIntakes(authority, person);
        for (const id of intakes.components) {
          const { reference, upper } = intakes.get(id);
          if (!reference || !upper || upper.covers !== "all sources" || upper.kind === "population goal")
            continue;
          const who = `${authority} ${id} at ${person.age}`;
          expect(reference.of, who).toEqual(upper.of);
          const isHeld = reference.note?.includes("held to the safe level of intake");
          expect(reference.value.lt(upper.value) || isHeld, who).toBe(true);
          expect(reference.value.lte(upper.value), who).toBe(true);
        }
      }
    }
  });
});

describe("facts that have misled others", () => {
  it("the US magnesium RDA lies above its UL, which counts supplements only", () => {
    const { reference, upper } = referenceIntakes("us", man).get("magnesium");
    expect(reference && upper && reference.value.gt(upper.value)).toBe(true);
    expect(upper && countsFood(upper)).toBe(false);
  });

  it("vitamin A: adults 900 and 700 µg RAE in the US; UK vitamin E 4 and 3 mg", () => {
    expect(
      [man, woman].map((p) => referenceIntakes("us", p).get("vitaminARae").reference?.value.toString()),
    ).toEqual(["900", "700"]);
    expect(
      [man, woman].map((p) => referenceIntakes("uk", p).get("vitaminE").reference?.value.toString()),
    ).toEqual(["4", "3"]);
  });

  it("upper levels of vitamin A, folate and niacin name the form that they count", () => {
    for (const authority of authorities) {
      const intakes = referenceIntakes(authority, woman);
      expect(intakes.get("vitaminARae").upper?.of).toEqual(["retinol"]);
      expect(intakes.get("folate").upper?.of).toEqual(["folicAcid"]);
      expect(intakes.get("folate").upper?.covers).toBe("added folic acid");
      const niacin = intakes.get("niacin").upper;
      expect(niacin && countsFood(niacin)).toBe(false);
    }
  });

  it("UK, US and EU count vitamin A and folate in different terms", () => {
    const of = (a: Authority, id: "folate" | "vitaminARae"): unknown =>
      referenceIntakes(a, woman).get(id).reference?.of[0];
    expect(authorities.map((a) => of(a, "vitaminARae"))).toEqual(["vitaminARe", "vitaminARae", "vitaminARe"]);
    expect(authorities.map((a) => of(a, "folate"))).toEqual(["folate", "folateDfe", "folateDfe"]);
  });

  it("the UK's level of vitamin D is SACN's of 2016, not the EVM's of 2003", () => {
    // NHS: no more than 100 µg a day for adults and from 11 to 17, 50 µg from 1 to 10.
    const level = (age: number): unknown => {
      const { uppers } = referenceIntakes("uk", { ...woman, age, mass: 40 }).get("vitaminD");
      return uppers.map(({ value, covers }) => `${value} ${covers}`);
    };
    expect([1, 10, 11, 17, 18, 80].map(level)).toEqual([
      ["50 all sources"],
      ["50 all sources"],
      ["100 all sources"],
      ["100 all sources"],
      ["100 all sources"],
      ["100 all sources"],
    ]);
    expect(upperLimits(referenceIntakes("uk", woman))).toContainEqual({
      of: "vitaminD",
      most: "100",
      firm: true,
    });
  });

  it("EFSA's thiamin and niacin are per MJ", () => {
    // 0.1 mg and 1.6 mg NE per MJ: at 10 MJ (2390.06 kcal) 1 mg and 16 mg.
    const intakes = referenceIntakes("eu", woman, { energy: "2390.057361376673" });
    expect(intakes.get("thiamin").reference?.value.toFixed(6)).toBe("1.000000");
    expect(intakes.get("niacin").reference?.value.toFixed(6)).toBe("16.000000");
    expect(intakes.get("thiamin").reference?.per).toEqual({ of: "MJ", value: expect.anything() });
    const unknown = referenceIntakes("eu", { sex: "female", age: 30, mass: 60 });
    expect(unknown.get("thiamin").reference).toBeUndefined();
    expect(unknown.needEnergy).toEqual([
      "thiamin",
      "niacinEquivalents",
      "linoleicAcid",
      "alphaLinolenicAcid",
    ]);
  });

  it("shares of energy become grams at 9 kcal", () => {
    // 4 % of 2,250 kcal is 90 kcal, 10 g of fatty acid.
    expect(
      referenceIntakes("eu", woman, { energy: 2250 }).get("linoleicAcid").reference?.value.toString(),
    ).toBe("10");
  });

  it("figures per kilogram follow the person", () => {
    // EFSA 2012: 0.83 g per kg; +1, +9, +28 g in pregnancy; +19 g, later +13 g, breastfeeding.
    const protein = (p: Person): string | undefined =>
      referenceIntakes("eu", p).get("protein").reference?.value.toString();
    expect(protein({ ...woman, mass: "70 kg" })).toBe("58.1");
    expect(([1, 2, 3] as const).map((pregnant) => protein({ ...woman, pregnant }))).toEqual([
      "50.8",
      "58.8",
      "77.8",
    ]);
    expect(protein({ ...woman, breastfeeding: true })).toBe("68.8");
    expect(protein({ ...woman, breastfeeding: true, monthsSinceBirth: 6 })).toBe("62.8");
  });

  it("figures per kilogram stop at the mass of a usual body, and at the authority's own level", () => {
    const get = (p: Person, of: "protein" | "fluoride" | "caffeine"): string[] => {
      const { reference, upper } = referenceIntakes("eu", p).get(of);
      return [reference, upper].map((figure) => figure?.value.toString() ?? "none");
    };
    const heavy: Person = { sex: "male", age: 40, mass: "300 kg", height: "1.80 m" };
    const { height: _, ...bare } = heavy;
    // 0.83 g x 30 x 1.8 squared (97.2 kg); of someone of 2 m x 120 kg.
    expect(get(heavy, "protein")[0]).toBe("80.676");
    expect(get(bare, "protein")[0]).toBe("99.6");
    expect(referenceIntakes("eu", heavy).get("protein").reference?.note).toContain(
      "by 97 kg, the mass at a body mass index of 30 of someone of this height",
    );
    // EFSA 2013: 0.05 mg per kg; EFSA 2025: 3.3 mg a day is the safe level of intake, from 9 years on.
    expect(get(heavy, "fluoride")).toEqual(["3.3", "3.3"]);
    expect(get({ ...heavy, mass: "66 kg" }, "fluoride")).toEqual(["3.3", "3.3"]);
    expect(get({ ...heavy, mass: "60 kg" }, "fluoride")).toEqual(["3", "3.3"]);
    expect(referenceIntakes("eu", bare).get("fluoride").reference?.note).toContain(
      "6 mg by this body, held to the safe level of intake",
    );
    // EFSA 2025: 2 mg at 4 to 8 years. EFSA 2015: 3 mg of caffeine per kg of the young, 400 mg for adults.
    expect(get({ sex: "male", age: 8, mass: "45 kg" }, "fluoride")).toEqual(["2", "2"]);
    expect(get({ sex: "male", age: 17, mass: "150 kg" }, "caffeine")[1]).toBe("360");
  });

  it("the protein of US mothers follows their mass", () => {
    // Institute of Medicine 2002/2005: 0.8 g per kg and 25 g on top, or 1.1 g per kg (1.3 breastfeeding);
    // the summary table prints 71 g for its body of 57 kg.
    const { height: _, ...bare } = woman;
    const protein = (p: Partial<Person>): string[] =>
      referenceIntakes("us", { ...bare, ...p })
        .get("protein")
        .references.map(({ value }) => value.toString());
    expect(protein({ mass: "57 kg", pregnant: 2 })).toEqual(["70.6", "62.7", "71"]);
    expect(protein({ mass: "45 kg", pregnant: 2 })).toEqual(["61", "49.5", "71"]);
    expect(protein({ mass: "120 kg", pregnant: 2 })).toEqual(["121", "132", "71"]);
    expect(protein({ mass: "45 kg", breastfeeding: true })).toEqual(["61", "58.5", "71"]);
    expect(protein({ mass: "50 kg", age: 16, pregnant: 2 })).toEqual(["67.5", "55", "71"]);
    // Dietary Guidelines for Americans 2025-2030: 1.2 g per kg and more is served; of mothers nothing is said.
    expect(protein({ mass: "57 kg" })).toEqual(["45.6", "46", "68.4"]);
  });

  it("iron parts women at menopause, declared or by age", () => {
    const iron = (p: Person): string | undefined =>
      referenceIntakes("eu", p).get("iron").reference?.value.toString();
    expect([woman, { ...woman, age: 55 }, { ...woman, age: 55, postmenopausal: false }].map(iron)).toEqual([
      "16",
      "11",
      "16",
    ]);
    expect(iron({ ...woman, age: 45, postmenopausal: true })).toBe("11");
  });
});

describe("breastfeeding", () => {
  const figures = (authority: Authority, of: "zinc" | "protein", ...months: (string | number)[]): unknown =>
    months.map((monthsSinceBirth) =>
      referenceIntakes(authority, { ...woman, breastfeeding: true, monthsSinceBirth })
        .get(of)
        .reference?.value.toString(),
    );

  it("adds less from the month that each authority parts it at", () => {
    // British Nutrition Foundation 2021, pages 5 and 7, after COMA 1991: zinc 7.0 + 6.0 mg to four months,
    // + 2.5 after; protein + 11 g to six months, then + 8.
    expect(figures("uk", "zinc", 0, "3.9", 4, 5, 6)).toEqual(["13", "13", "9.5", "9.5", "9.5"]);
    expect(figures("uk", "protein", 0, "3.9", 4, "5.9", 6)).toEqual(["56", "56", "56", "56", "53"]);
    // EFSA, Summary of Dietary Reference Values 2017, table 2: protein + 19 g in the first six months, + 13 after.
    expect(figures("eu", "protein", 0, 5, "5.9", 6)).toEqual(["68.8", "68.8", "68.8", "62.8"]);
    const youth = referenceIntakes("uk", { ...woman, age: 17, breastfeeding: true, monthsSinceBirth: 6 });
    expect(youth.get("protein").reference?.value.toString()).toBe("53.4");
  });

  it("takes the first months where nothing is said, and says that they differ", () => {
    for (const of of ["zinc", "protein"] as const) {
      const { reference } = referenceIntakes("uk", { ...woman, breastfeeding: true }).get(of);
      expect(reference?.value.toString()).toBe(of === "zinc" ? "13" : "56");
      const months = of === "zinc" ? "four" : "six";
      expect(reference?.note).toContain(`breastfeeding adds more in the first ${months} months`);
    }
  });
});

describe("upper levels as limits", () => {
  it("are firm, and only those that count what food brings", () => {
    const limits = upperLimits(referenceIntakes("eu", woman));
    expect(limits.every((d) => d.firm === true && d.most !== undefined)).toBe(true);
    // EFSA: selenium 255 µg, retinol 3,000 µg, iodine 600 µg; magnesium and niacin count what is added.
    expect(limits).toContainEqual({ of: "selenium", most: "255", firm: true });
    expect(limits).toContainEqual({ of: "retinol", most: "3000", firm: true });
    expect(limits.map((d) => d.of)).not.toContain("magnesium");
    expect(limits.map((d) => d.of)).not.toContain("niacin");
    expect(new Set(limits.map((d) => d.of)).size).toBe(limits.length);
    expect(upperLimits(referenceIntakes("us", woman)).map((d) => d.of)).not.toContain("sodium");
  });

  it("give a meal its part", () => {
    expect(upperLimits(referenceIntakes("eu", woman), "1/3")).toContainEqual({
      of: "selenium",
      most: "85",
      firm: true,
    });
    expect(() => upperLimits(referenceIntakes("eu", woman), 2)).toThrow(SteelyardError);
  });
});

describe("bands", () => {
  it("change on the birthday after their last year", () => {
    const us = (age: string): string | undefined =>
      referenceIntakes("us", { ...woman, age })
        .get("magnesium")
        .reference?.value.toString();
    expect([us("30.99"), us("31")]).toEqual(["310", "320"]);
    const uk = (age: string): string | undefined =>
      referenceIntakes("uk", { ...woman, age })
        .get("iron")
        .reference?.value.toString();
    expect([uk("50.9"), uk("51")]).toEqual(["14.8", "8.7"]);
  });

  it("end where nothing is published", () => {
    expect(referenceIntakes("uk", { ...woman, age: 12 }).get("zinc").upper).toBeUndefined();
    expect(referenceIntakes("eu", woman).get("phytosterols")).toEqual({ references: [], uppers: [] });
  });

  it("say where a figure is unverified", () => {
    const check = (age: number): string | undefined =>
      referenceIntakes("uk", { ...woman, age }).get("protein").reference?.check;
    expect([8, 16, 30].map(check)).toEqual(["copy", "unverified", "copy"]);
  });

  it("do not change with the unit that a mass was written in", () => {
    const lb = referenceIntakes("eu", { ...woman, mass: "9 st 8 lb" });
    const kg = referenceIntakes("eu", { ...woman, mass: "60.78137758 kg" });
    for (const id of lb.components) expect(lb.get(id)).toEqual(kg.get(id));
  });
});

describe("a state that a table has no column for at an age", () => {
  const states = [{ pregnant: 1 }, { pregnant: 3 }, { breastfeeding: true }] as const;
  const ages = [12, 13, 14, 16, 17, 18, 19, 30, 49, 50, 51, 60];
  const all = authorities.flatMap((authority) =>
    ages.flatMap((age) => states.map((state) => [authority, age, state] as const)),
  );

  it.each(all)("takes no limit and no component away: %s, %s, %o", (authority, age, state) => {
    const usual = referenceIntakes(authority, { ...woman, age });
    const intakes = referenceIntakes(authority, { ...woman, age, ...state });
    const limits = upperLimits(usual).map(({ of }) => of);
    expect(upperLimits(intakes).map(({ of }) => of)).toEqual(expect.arrayContaining(limits));
    expect(usual.components.filter((id) => !intakes.components.includes(id))).toEqual([]);
    for (const id of usual.components) {
      expect(intakes.get(id).uppers.length, id).toBe(usual.get(id).uppers.length);
    }
  });

  it("has the figure of the sex and age stand in, and says so", () => {
    // EFSA: zinc UL of 15 to 17 years 22 mg, vitamin A PRI 650 µg, protein 0.83 g per kg at 17.
    const girl = referenceIntakes("eu", { ...woman, age: 17, breastfeeding: true });
    for (const id of ["zinc", "vitaminARe", "iodine", "protein", "iron", "water"] as const) {
      expect(girl.get(id).reference?.leavesOut, id).toBe("breastfeeding");
      expect(girl.get(id).reference?.note).toContain("no figure for breastfeeding is published here");
    }
    expect(girl.get("zinc").upper?.value.toString()).toBe("22");
    expect(girl.get("zinc").upper?.leavesOut).toBe("breastfeeding");
    expect(girl.get("vitaminARe").reference?.value.toString()).toBe("650");
    expect(girl.get("protein").reference?.value.toString()).toBe("49.8");
    // IOM: iron RDA of women from 51 is 8 mg; columns for pregnancy end at 50.
    const older = referenceIntakes("us", { ...woman, age: 55, pregnant: 1 }).get("iron").reference;
    expect([older?.value.toString(), older?.leavesOut]).toEqual(["8", "pregnancy"]);
  });

  it("says nothing where the state has its figure, its addition, or no increment", () => {
    const eu = referenceIntakes("eu", { ...woman, breastfeeding: true });
    expect(eu.get("zinc").reference?.leavesOut).toBeUndefined();
    expect(eu.get("protein").reference?.leavesOut).toBeUndefined();
    expect(eu.get("calcium").reference?.leavesOut).toBeUndefined();
    const uk = referenceIntakes("uk", { ...woman, age: 16, pregnant: 2 });
    for (const id of uk.components) expect(uk.get(id).reference?.leavesOut, id).toBeUndefined();
    for (const id of referenceIntakes("eu", woman).components) {
      const { references, uppers } = referenceIntakes("eu", woman).get(id);
      expect([...references, ...uppers].some(({ leavesOut }) => leavesOut)).toBe(false);
    }
  });

  it("keeps a level that is not set for the state, and says so", () => {
    // SCF 2003: the level of copper, 5 mg, was not set for pregnancy or breastfeeding.
    const { uppers } = referenceIntakes("eu", { ...woman, pregnant: 2 }).get("copper");
    const level = uppers.find(({ kind }) => kind === "UL");
    expect([level?.value.toString(), level?.leavesOut]).toEqual(["5", "pregnancy"]);
  });
});

describe("what is asked", () => {
  it("must be an authority, a component, an energy", () => {
    for (const name of ["fr", "__proto__", "constructor", "", null]) {
      expect(() => referenceIntakes(name as Authority, woman)).toThrow(SteelyardError);
      expect(() => energyRangesFor(name as Authority, woman)).toThrow(SteelyardError);
    }
    expect(() => referenceIntakes("uk", woman).get("vitaminX" as "iron")).toThrow(SteelyardError);
    for (const energy of [0, -5, Number.NaN, "much"]) {
      expect(() => referenceIntakes("eu", woman, { energy })).toThrow(SteelyardError);
    }
  });
});

describe("ranges of energy", () => {
  it("have a source and rising limits", () => {
    for (const authority of authorities) {
      for (const range of energyRanges[authority]) {
        expect(range.authority).toBe(authority);
        expect(range.source).toMatch(/\d{4}/);
        expect(range.least !== undefined || range.most !== undefined).toBe(true);
        if (range.least && range.most) expect(Number(range.least)).toBeLessThan(Number(range.most));
      }
    }
  });

  it("are those of the person's age", () => {
    // Institute of Medicine 2002/2005: adults 10-35, 20-35, 45-65 % of energy.
    const adult = energyRangesFor("us", woman).filter((r) => r.kind === "AMDR");
    expect(adult.map((r) => `${r.of} ${r.least}-${r.most}`)).toEqual([
      "protein 10-35",
      "fat 20-35",
      "carbohydrate 45-65",
      "linoleicAcid 5-10",
      "alphaLinolenicAcid 0.6-1.2",
    ]);
    const child = energyRangesFor("us", { ...woman, age: 10, mass: 32 });
    expect(child.find((r) => r.of === "fat")?.least).toBe("25");
  });
});
