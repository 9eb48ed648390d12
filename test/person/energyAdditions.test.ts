import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import type { Aim } from "../../src/person/aim.ts";
import { compare } from "../../src/person/compare/compare.ts";
import { dayTarget } from "../../src/person/dayTarget.ts";
import { demandsFor } from "../../src/person/demandsFor.ts";
import { energyNeed } from "../../src/person/energyNeed.ts";
import { labelReference } from "../../src/person/intakes/labelReference.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Authority } from "../../src/person/intakes/table.ts";
import type { Person } from "../../src/person/person.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const woman: Person = { sex: "female", age: 30, mass: "60 kg", height: "1.70 m", activity: "active" };
const hold: Aim = { weight: "hold" };
const trimesters = [1, 2, 3] as const;

/** What an authority's energy reference has more than before the state, kcal. */
function added(authority: Authority, person: Person): number | undefined {
  const { reference } = referenceIntakes(authority, person).get("energy");
  const base = referenceIntakes(authority, { ...woman, age: person.age }).get("energy").reference;
  expect(reference?.leavesOut === undefined).toBe(reference?.addition !== undefined);
  return reference && base && reference.value.minus(base.value).toNumber();
}

describe("energy of a day, as authorities add to it", () => {
  // SACN 2011 and IOM 2005: European PKU guidelines, table 10, and NAP 12584 page 316; EFSA 2013: its
  // announcement. Lactation: unverified.
  it.each([
    ["uk", [0, 0, 191]],
    ["us", [0, 340, 452]],
    ["eu", [70, 260, 500]],
  ] as const)("rises by trimester: %s", (authority, kcal) => {
    expect(trimesters.map((pregnant) => added(authority, { ...woman, pregnant }))).toEqual(kcal);
  });

  it.each([
    ["uk", [330, 330, 0, 0]],
    ["us", [330, 330, 400, 0]],
    ["eu", [500, 500, 0, 0]],
  ] as const)("rises with breastfeeding, by months: %s", (authority, kcal) => {
    const at = [0, "5.9", 6, 12].map((monthsSinceBirth) =>
      added(authority, { ...woman, breastfeeding: true, monthsSinceBirth }),
    );
    expect(at).toEqual(kcal);
    expect(added(authority, { ...woman, breastfeeding: true })).toBe(kcal[0]);
  });

  it("says where there is no figure, and what holds one", () => {
    const late = { ...woman, breastfeeding: true, monthsSinceBirth: 8 };
    const left = referenceIntakes("eu", late).get("energy").reference;
    expect([left?.leavesOut, left?.note]).toEqual([
      "breastfeeding",
      "Mifflin-St Jeor; no figure for breastfeeding is published here, and this one leaves it out",
    ]);
    expect(added("eu", { ...woman, age: 17, pregnant: 3 })).toBe(0);
    expect(added("us", { ...woman, age: 51, pregnant: 3 })).toBe(0);
    expect(added("us", { ...woman, age: 17, pregnant: 3 })).toBe(452);
    const held = referenceIntakes("eu", { ...woman, pregnant: 3 }).get("energy").reference;
    expect(held?.note).toMatch(/^Mifflin-St Jeor, with 500 kcal for pregnancy \(EFSA 2013/);
    expect(held?.addition).toMatchObject({ authority: "eu", for: "pregnancy" });
  });

  it("is what figures per megajoule go by; a day's energy that was given is taken as it is", () => {
    // EFSA 2016: thiamin 0.1 mg per MJ; 500 kcal are 2.092 MJ.
    const thiamin = (person: Person): number =>
      referenceIntakes("eu", person).get("thiamin").reference?.value.toNumber() ?? 0;
    expect(thiamin({ ...woman, pregnant: 3 }) - thiamin(woman)).toBeCloseTo(0.2092, 10);
    const given = referenceIntakes("eu", { ...woman, pregnant: 3 }, { energy: 2400 }).get("energy").reference;
    expect([given?.value.toString(), given?.addition]).toEqual(["2400", undefined]);
  });
});

describe("energy by an equation", () => {
  it("leaves the addition out, and lists what each authority adds", () => {
    const pregnant = energyNeed({ ...woman, pregnant: 3 });
    expect(pregnant.total.toString()).toBe(energyNeed(woman).total.toString());
    expect(pregnant.additions.map((a) => `${a.authority} ${a.value} ${a.for}`)).toEqual([
      "uk 191 pregnancy",
      "us 452 pregnancy",
      "eu 500 pregnancy",
    ]);
    expect(energyNeed(woman).additions).toEqual([]);
    expect(pregnant.cautions.map(({ code }) => code)).toContain("pregnant");
  });

  it("of a day's target holds the addition of the authority that is named", () => {
    const mother: Person = { ...woman, breastfeeding: true };
    const plain = dayTarget(mother, hold).energy;
    const eu = dayTarget(mother, hold, { authority: "eu" }).energy;
    expect([plain.addition, eu.addition?.value.toString()]).toEqual([undefined, "500"]);
    expect(eu.target.minus(plain.target).toString()).toBe("500");
    expect(eu.need.toString()).toBe(eu.target.toString());
    const { demands, energy } = demandsFor(mother, "eu", { aim: hold });
    expect(energy?.addition?.authority).toBe("eu");
    expect(demands[0]).toEqual({ of: "energy", exactly: eu.target.toString() });
    for (const name of ["fr", "__proto__", 3]) {
      expect(errorOf(() => dayTarget(mother, hold, { authority: name as Authority })).code).toBe(
        "authority-unknown",
      );
    }
  });
});

describe("a caution of pregnancy or breastfeeding", () => {
  const textOf = (cautions: readonly { readonly code: string; readonly text: string }[]): string =>
    cautions.find(({ code }) => code === "pregnant" || code === "breastfeeding")?.text ?? "";
  const byDay = (person: Person, authority?: Authority): string =>
    textOf(dayTarget(person, hold, authority && { authority }).cautions);
  const mother: Person = { ...woman, breastfeeding: true };

  it("says what was done about energy, by whose figure", () => {
    // The additions themselves are tested above.
    expect(byDay({ ...woman, pregnant: 3 }, "uk")).toMatch(/the 191 kcal a day that SACN .* are counted in/);
    expect(byDay({ ...woman, pregnant: 3 }, "us")).toMatch(
      /the 452 kcal a day that the Institute of Medicine/,
    );
    expect(byDay({ ...woman, pregnant: 1 }, "uk")).toMatch(/SACN .* adds no energy .* none was added/);
    expect(byDay(mother, "eu")).toMatch(/the 500 kcal a day that EFSA adds for breastfeeding/);
    expect(byDay({ ...mother, monthsSinceBirth: 8 }, "uk")).toMatch(
      /SACN .* has no figure .* leaves out what milk costs/,
    );
    expect(byDay({ ...woman, age: 17, pregnant: 2 }, "eu")).toMatch(/EFSA has no figure .* leaves out/);
    for (const pregnant of trimesters) {
      const uk = dayTarget({ ...woman, pregnant }, hold, { authority: "uk" }).cautions.find(
        ({ code }) => code === "pregnant",
      );
      expect(uk?.text).not.toMatch(/EFSA|leave/);
      expect(uk?.text).toContain("Weight-loss diets are not advised");
      expect(uk?.source).toMatch(/^SACN \(UK\) 2011.*NICE/);
    }
  });

  it("says that an equation alone leaves it out", () => {
    expect(byDay({ ...woman, pregnant: 3 })).toContain("equations for energy leave out");
    expect(textOf(energyNeed(mother).cautions)).toContain("equations for energy leave out");
  });

  it("goes by the intakes where there is no aim", () => {
    expect(textOf(demandsFor({ ...woman, pregnant: 3 }, "uk").cautions)).toContain("191 kcal");
    expect(textOf(demandsFor({ ...woman, pregnant: 3 }, "uk", { energy: 2400 }).cautions)).toContain(
      "was given, and taken as it is",
    );
    const { activity: _, ...idle } = woman;
    expect(textOf(demandsFor({ ...idle, pregnant: 3 }, "uk").cautions)).toContain(
      "equations for energy leave out",
    );
  });

  it("keeps pregnancy and breastfeeding apart where both hold", () => {
    const { cautions } = dayTarget({ ...mother, pregnant: 3 }, hold, { authority: "uk" });
    expect(cautions.map(({ text }) => text)).toEqual([
      expect.stringContaining("191 kcal"),
      expect.stringMatching(/only what pregnancy adds is counted in, .* leaves out what milk costs/),
    ]);
  });
});

describe("a comparison of someone pregnant or breastfeeding", () => {
  const lentils = sheet(
    { name: "Lentils", portions: 1, lines: [{ key: "lentils", food: "lentils-boiled", amount: "200 g" }] },
    starterFoods,
  );

  it("carries the caution of the state, and the energy of the state", () => {
    const c = compare(lentils, referenceIntakes("eu", { ...woman, pregnant: 3 }));
    const [first] = c.cautions;
    expect([first?.code, first?.because, first?.lines]).toEqual(["pregnant", ["pregnant"], []]);
    const usual = compare(lentils, referenceIntakes("eu", woman));
    expect(usual.cautions).toEqual([]);
    const kcal = (of: typeof c): number => of.get("energy")?.reference?.figure.value.toNumber() ?? 0;
    expect(kcal(c) - kcal(usual)).toBe(500);
    expect(toText(c)).toMatch(/the whole +pregnant +Pregnant: the 500 kcal a day/);
    const mother = compare(lentils, referenceIntakes("uk", { ...woman, breastfeeding: true }));
    expect(mother.cautions.map(({ code }) => code)).toEqual(["breastfeeding"]);
    expect(mother.cautions[0]?.text).toContain("the 330 kcal a day that SACN (UK) adds");
    const of = { ...woman, pregnant: 3 } as const;
    expect(compare(lentils, referenceIntakes("uk", woman), { person: of }).cautions[0]?.text).toContain(
      "leave out",
    );
    expect(compare(lentils, labelReference("eu"), { person: of }).cautions[0]?.text).toContain("leave out");
  });
});
