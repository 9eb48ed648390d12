import { describe, expect, it } from "vitest";
import type { ComponentId } from "../../src/food/components.ts";
import { authorities } from "../../src/person/intakes/authority.ts";
import { intakeTables } from "../../src/person/intakes/figures.ts";
import { type ReferenceIntakes, referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { ReferenceFigure, UpperFigure } from "../../src/person/intakes/resolve.ts";
import { columnFor, readStage } from "../../src/person/intakes/stage.ts";
import type { Authority, Basis, IntakeRow } from "../../src/person/intakes/table.ts";
import { upperLimits } from "../../src/person/intakes/upperLimits.ts";
import type { Person } from "../../src/person/person.ts";
import { personFacts } from "../../src/person/readPerson.ts";
import * as eu from "./seconds/eu.ts";
import { peopleOf, type Second, type SecondAddition } from "./seconds/second.ts";
import * as uk from "./seconds/uk.ts";
import * as uppers from "./seconds/uppers.ts";
import * as us from "./seconds/us.ts";
import * as who from "./seconds/who.ts";

const woman: Person = { sex: "female", age: 30, mass: "60 kg", height: "1.70 m", activity: "active" };
const man: Person = { sex: "male", age: 30, mass: "80 kg", height: "1.80 m", activity: "active" };

type Who = Pick<Second, "sex" | "age" | "state">;

function personOf({ sex, age, state }: Who, monthsSinceBirth?: number): Person {
  return {
    sex,
    age,
    mass: 60,
    ...(state === "pregnant" && { pregnant: 3 as const }),
    ...(state === "breastfeeding" && { breastfeeding: true }),
    ...(monthsSinceBirth !== undefined && { monthsSinceBirth }),
  };
}

function intakesOf(authority: Authority, who: Who, months?: number): ReferenceIntakes {
  return referenceIntakes(authority, personOf(who, months), { energy: 2000 });
}

const seconds: readonly [Authority, string, readonly Second[]][] = [
  ["us", "elements", us.usElementsAgain],
  ["us", "calcium and vitamin D", us.usCalciumAndVitaminDAgain],
  ["us", "vitamins", us.usAllVitaminsAgain],
  ["us", "vitamins, the academies", us.usVitaminsAgain],
  ["us", "vitamins, a manual", us.usManualAgain],
  ["us", "macronutrients", us.usMacronutrientsAgain],
  ["us", "electrolytes", us.usElectrolytesAgain],
  ["uk", "vitamins", uk.ukVitaminsAgain],
  ["uk", "minerals", uk.ukMineralsAgain],
  ["uk", "protein", uk.ukProteinAgain],
  ["uk", "fibre", uk.ukFibreAgain],
  ["uk", "women", uk.ukWomenAgain],
  ["uk", "children", uk.ukChildrenAgain],
  ["eu", "vitamins", eu.euVitaminsAgain],
  ["eu", "vitamins per MJ", eu.euPerMegajouleAgain],
  ["eu", "vitamin E", eu.euVitaminEAgain],
  ["eu", "minerals", eu.euMineralsAgain],
  ["eu", "fibre and water", eu.euFibreAndWaterAgain],
  ["eu", "protein", eu.euProteinAgain],
  ["eu", "sodium and chloride", eu.euSaltAgain],
  ["eu", "fluoride", eu.euFluorideAgain],
  ["eu", "choline", eu.euCholineAgain],
  ["who", "iron", who.whoIronAgain],
  ["who", "iodine", who.whoIodineAgain],
  ["who", "minerals", who.whoMineralsAgain],
  ["who", "zinc", who.whoZincAgain],
  ["who", "young children", who.whoChildrenAgain],
];

const additions: readonly [Authority, readonly SecondAddition[]][] = [
  ["uk", uk.ukAdditionsAgain],
  ["us", us.usAdditionsAgain],
  ["eu", eu.euAdditionsAgain],
];

const adults: readonly [Authority, readonly uppers.SecondUpper[]][] = [
  ["uk", uppers.ukUppersAgain],
  ["us", uppers.usUppersAgain],
];

const tables: readonly (readonly [Authority, string, uppers.UpperTable])[] = [
  ["us", "the young", uppers.usUppersOfYoung],
  ["us", "the older", uppers.usUppersOfOlder],
  ["us", "every adult", uppers.usUppersOfAdults],
  ["us", "mothers", uppers.usUppersOfMothers],
  ...uppers.euUppersAgain.map((table) => ["eu", table.bands[0] ?? "", table] as const),
];

/** The cells of an authority's tables that hold a figure for someone, by table, row and column. */
function cellsOf(authority: Authority, who: Who, wanted: Wanted): string[] {
  const facts = personFacts(personOf(who));
  return intakeTables[authority].flatMap(({ stages, ...table }, t) =>
    (table[wanted.in] ?? []).flatMap((row: IntakeRow, r): string[] => {
      const { of, basis, per } = wanted;
      const isOther =
        row.of[0] !== of || (basis && row.basis !== basis) || (row.per ?? "day") !== (per ?? "day");
      const past = who.age > 50 ? "premenopausal" : "postmenopausal";
      if (isOther || row.when === past) return [];
      const { at } = columnFor(stages.map(readStage), facts);
      return /\d/.test(row.values.split(" ")[at] ?? "") ? [`${authority} ${t} ${wanted.in} ${r} ${at}`] : [];
    }),
  );
}

interface Wanted {
  readonly in: "references" | "uppers";
  readonly of: ComponentId;
  readonly basis?: Basis | undefined;
  readonly per?: Second["per"] | undefined;
}

/** Targets that stand beside what nobody goes short on. */
const TARGETS: readonly string[] = ["dietary guideline"];

function figureFor(intakes: ReferenceIntakes, { of, per }: Pick<Second, "of" | "per">): ReferenceFigure[] {
  return intakes
    .get(of)
    .references.filter((f) => f.of[0] === of && f.per?.of === per && !TARGETS.includes(f.kind));
}

describe("a second transcription", () => {
  it.each(seconds)("agrees: %s, %s", (authority, _, second) => {
    expect(second.length).toBeGreaterThan(3);
    for (const s of second) {
      const figures = figureFor(intakesOf(authority, s), s);
      const who = `${s.of}, ${s.sex} of ${s.age} ${s.state ?? ""}`;
      expect(
        figures.map((f) => Number(f.per?.value ?? f.value)),
        who,
      ).toEqual([Number(s.value)]);
    }
  });

  it("agrees: eu, fatty acids", () => {
    // Mothers have two figures of DHA: 250 mg with EPA, and what they add.
    for (const s of eu.euFattyAcidsAgain) {
      const found = figureFor(intakesOf("eu", s), s).map((f) => Number(f.per?.value ?? f.value));
      expect(found, `${s.of}, ${s.sex} of ${s.age} ${s.state ?? ""}`).toContain(Number(s.value));
    }
  });

  it.each(additions)("agrees on what mothers add: %s", (authority, second) => {
    const figure = (of: SecondAddition["of"], who: Who, months?: number): number =>
      Number(intakesOf(authority, who, months).get(of).reference?.value);
    for (const { of, age, pregnant = "0", breastfeeding = "0", later } of second) {
      const usual = figure(of, { sex: "female", age });
      const added = (state: Second["state"], months?: number): number =>
        Math.round((figure(of, { sex: "female", age, ...(state && { state }) }, months) - usual) * 1e6) / 1e6;
      expect([added("pregnant"), added("breastfeeding")], `${of} at ${age}`).toEqual([
        Number(pregnant),
        Number(breastfeeding),
      ]);
      if (later) {
        const [month, value] = later;
        expect([added("breastfeeding", month - 1), added("breastfeeding", month)], of).toEqual([
          Number(breastfeeding),
          Number(value),
        ]);
      }
    }
  });

  it("agrees: uk, iron of children, to ten micromoles", () => {
    // Standard atomic weight of iron 55.845 (IUPAC): 1 mg is 17.907 µmol. The copy rounds 124 down and
    // 202 down, 155.8 and 265 to the nearer ten, so that half a ten more is allowed for.
    for (const [sex, age, micromoles] of uk.ukIronAgain) {
      const { reference } = referenceIntakes("uk", { sex, age, mass: 40 }).get("iron");
      const printed = (Number(reference?.value) * 1000) / 55.845;
      expect(Math.abs(printed - Number(micromoles)), `${sex} of ${age}`).toBeLessThan(10);
    }
  });

  it("agrees: eu, zinc by phytate", () => {
    for (const [phytate, men, women] of eu.euZincAgain) {
      const zinc = (person: Person): string | undefined =>
        referenceIntakes("eu", person, { phytate }).get("zinc").reference?.value.toString();
      expect([zinc(man), zinc(woman)]).toEqual([men, women]);
    }
  });
});

describe("a second transcription of upper levels", () => {
  const per = { g: 1e6, mg: 1e3, µg: 1 } as const;
  const micrograms = (value: number, unit: string): number =>
    Math.round(value * per[unit as keyof typeof per] * 1000) / 1000;

  /** The levels of a component for someone: goals for a population, the CDRR and the ADI are none. */
  function levelsFor(authority: Authority, person: Person, of: uppers.SecondUpper["of"]): UpperFigure[] {
    return referenceIntakes(authority, person)
      .get(of)
      .uppers.filter((f) => f.of[0] === of && !["CDRR", "population goal", "ADI"].includes(f.kind));
  }

  function expectLevel(authority: Authority, who: Who, second: uppers.SecondUpper): void {
    const { of, basis, value, unit } = second;
    const found = levelsFor(authority, personOf(who), of).filter(
      (f) => basis === undefined || f.basis === basis,
    );
    const figures = found.map((f) => micrograms(Number(f.value), f.unit));
    expect(figures, `${of} ${basis ?? ""}, ${who.sex} of ${who.age} ${who.state ?? ""}`).toEqual([
      micrograms(value, unit),
    ]);
  }

  function expectTable(authority: Authority, { bands, rows }: uppers.UpperTable): void {
    for (const [of, unit, values, basis] of rows)
      values.split(" ").forEach((text, i) => {
        if (text === ".") return;
        // 40 IU are 1 µg of vitamin D.
        const value =
          unit === "IU" ? { value: Number(text) / 40, unit: "µg" as const } : { value: Number(text), unit };
        for (const who of peopleOf(bands[i] ?? ""))
          expectLevel(authority, who, { of, ...value, ...(basis && { basis }) });
      });
  }

  it.each(adults)("agrees on adults: %s", (authority, second) => {
    for (const sex of ["female", "male"] as const)
      for (const each of second) expectLevel(authority, { sex, age: 30 }, each);
  });

  it.each(tables)("agrees: %s, %s", (authority, _, table) => expectTable(authority, table));

  it("leaves no level of an adult out", () => {
    const typed: { readonly [A in Authority]: readonly (readonly [ComponentId, Basis | undefined])[] } = {
      uk: uppers.ukUppersAgain.map(({ of, basis }) => [of, basis]),
      us: uppers.usUppersAgain.map(({ of, basis }) => [of, basis]),
      eu: uppers.euUppersAgain.flatMap(({ rows }) => rows.map(([of, , , basis]) => [of, basis] as const)),
      nordic: [],
      who: [],
    };
    const once: { readonly [name: string]: { readonly [C in ComponentId]?: string } } = {
      uk: uppers.ukUppersOnce,
      eu: uppers.euUppersOnce,
      // The Swedish Food Agency's pages alone were read.
      nordic: {
        calcium: "Swedish Food Agency",
        selenium: "Swedish Food Agency",
        magnesium: "Swedish Food Agency",
      },
    };
    for (const authority of authorities)
      for (const person of [woman, man])
        for (const of of referenceIntakes(authority, person).components)
          for (const figure of levelsFor(authority, person, of)) {
            if (typed[authority].some(([id, basis]) => id === of && (!basis || basis === figure.basis)))
              continue;
            const read = of === "coumarin" ? "EFSA Journal 793" : (once[authority]?.[of] ?? "none");
            expect(`${figure.source} ${figure.note}`, `${authority} ${of}`).toContain(read);
          }
  });

  it("of coumarin goes by body mass under every authority: EFSA 2008, 0.1 mg per kg", () => {
    for (const authority of authorities) {
      const level = (p: Person): string | undefined =>
        referenceIntakes(authority, p).get("coumarin").upper?.value.toString();
      expect([15, 60, 300].map((mass) => level({ sex: "male", age: mass === 15 ? 4 : 40, mass }))).toEqual([
        "1.5",
        "6",
        "12",
      ]);
    }
  });

  it("of copper has EFSA's acceptable intake of 2023 beside it, of adults alone", () => {
    // EFSA Scientific Committee 2023 (EFSA Journal 21(1):7728): 0.07 mg per kg; at 71.4 kg it meets the UL of 5 mg.
    const levels = (mass: number, age = 30): string[] =>
      referenceIntakes("eu", { sex: "female", age, mass })
        .get("copper")
        .uppers.map((f) => `${f.kind} ${f.value}`);
    expect(levels(60)).toEqual(["UL 5", "ADI 4.2"]);
    expect(levels(80)).toEqual(["UL 5", "ADI 5.6"]);
    expect(levels(45, 14)).toEqual(["UL 4"]);
    const limit = upperLimits(referenceIntakes("eu", woman)).find(({ of }) => of === "copper");
    expect(limit?.most).toBe("5");
  });

  it("of caffeine holds for mothers under every authority", () => {
    // EFSA 2015: 200 mg for both. COT and FSA 2008, ACOG 2010: 200 mg in pregnancy; 300 when breastfeeding.
    const level = (authority: Authority, p: Partial<Person>): string | undefined =>
      referenceIntakes(authority, { ...woman, ...p })
        .get("caffeine")
        .upper?.value.toString();
    const efsa = ["200", "200"]; // Of authorities of whom none was read, EFSA's stands.
    expect(authorities.map((a) => level(a, { pregnant: 2 }))).toEqual(["200", "200", "200", ...efsa]);
    expect(authorities.map((a) => level(a, { breastfeeding: true }))).toEqual(["300", "300", "200", ...efsa]);
    expect(authorities.map((a) => level(a, { age: 16, pregnant: 2 }))).toEqual([
      "200",
      "200",
      "180",
      ...efsa,
    ]);
    expect(authorities.map((a) => level(a, {})).slice(0, 3)).toEqual([undefined, undefined, "400"]);
    for (const authority of authorities) {
      const intakes = referenceIntakes(authority, { ...woman, pregnant: 2 });
      expect(upperLimits(intakes).find(({ of }) => of === "caffeine")?.most, authority).toBe("200");
      const others = referenceIntakes(authority, woman).withoutUpper.map(({ of }) => of);
      expect(others, authority).not.toContain("caffeine");
    }
  });
});

describe("what has been typed twice", () => {
  it("is 1,650 published figures and more", () => {
    const references = (authority: Authority, who: Who, of: ComponentId, per?: Second["per"]): string[] =>
      cellsOf(authority, who, { in: "references", of, per });
    const levels = (authority: Authority, who: Who, of: ComponentId, basis?: Basis): string[] =>
      cellsOf(authority, who, { in: "uppers", of, basis });
    const mothers = ["pregnant", "breastfeeding"] as const;
    const cells = new Set([
      ...[...seconds, ["eu", "", eu.euFattyAcidsAgain] as const].flatMap(([authority, , list]) =>
        list.flatMap((s) => references(authority, s, s.of, s.per)),
      ),
      ...["female", "male"].flatMap((sex) => references("eu", { sex, age: 30 } as Who, "zinc")),
      ...us.usAdditionsAgain.flatMap(({ of, age }) =>
        mothers.flatMap((state) => references("us", { sex: "female", age, state }, of)),
      ),
      ...adults.flatMap(([authority, list]) =>
        list.flatMap(({ of, basis }) => levels(authority, { sex: "female", age: 30 }, of, basis)),
      ),
      ...tables.flatMap(([authority, , { bands, rows }]) =>
        rows.flatMap(([of, , values, basis]) =>
          values
            .split(" ")
            .flatMap((text, i) =>
              text === "."
                ? []
                : peopleOf(bands[i] ?? "").flatMap((who) => levels(authority, who, of, basis)),
            ),
        ),
      ),
    ]);
    // What mothers add under the UK and the EU, 35 figures, comes on top.
    const by = authorities.map((a) => `${a} ${[...cells].filter((cell) => cell.startsWith(a)).length}`);
    console.log(`published figures typed twice: ${by.join(", ")}, ${cells.size} in all`);
    expect(cells.size).toBeGreaterThan(1650);
  });
});
