import { describe, expect, it } from "vitest";
import { britishEnglish, type Language } from "../../src/document/language.ts";
import { starterFoods } from "../../src/foods.ts";
import { proteinQuality } from "../../src/person/amino/quality.ts";
import { compare } from "../../src/person/compare/compare.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Person } from "../../src/person/person.ts";
import { allergensOf } from "../../src/person/portion/allergens.ts";
import { doseCheck } from "../../src/person/portion/doses.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Table } from "../../src/show/table.ts";
import { tablesOf } from "../../src/show/tabular.ts";

/** A language that puts every phrase it is asked for between marks: what is unmarked was never asked for. */
const marked: Language = {
  ...britishEnglish,
  decimal: ",",
  phrases: new Proxy(
    {},
    {
      get: (_, phrase) => `«${String(phrase)}»`,
      getOwnPropertyDescriptor: (_, phrase) => ({
        value: `«${String(phrase)}»`,
        configurable: true,
        enumerable: true,
      }),
    },
  ),
};

const person: Person = {
  sex: "female",
  age: 30,
  mass: "60 kg",
  height: "1.70 m",
  activity: "active",
  conditions: ["warfarin", "kidney-disease"],
};
const s = sheet(
  {
    name: "Broth",
    portions: 1,
    lines: [
      { key: "lentils", food: "lentils-boiled", amount: "200 g" },
      { key: "kale", food: "kale-raw", amount: "50 g" },
      { key: "bread", food: "bread-wholemeal", amount: "50 g" },
      { key: "nuts", food: "brazil-nuts", amount: "10 g", scaling: "per-portion" },
    ],
  },
  starterFoods,
);
const uk = referenceIntakes("uk", person);

const all: readonly [string, (language?: Language) => readonly Table[]][] = [
  ["a comparison", (l) => tablesOf(compare(s, uk), { language: l })],
  ["a comparison of several meals", (l) => tablesOf(compare({ lunch: s, supper: s }, uk), { language: l })],
  ["doses", (l) => tablesOf(doseCheck(s, { cox: uk, stroke: uk }), { language: l })],
  ["allergens", (l) => tablesOf(allergensOf(s), { language: l })],
  ["protein", (l) => tablesOf(proteinQuality(s, { person }), { language: l })],
];

describe("another language", () => {
  it.each(all)("has a word for everything that %s says", (_, tables) => {
    const shown = tables(marked);
    expect(shown.length).toBeGreaterThan(0);
    for (const t of shown) {
      // What is left as it is: names that the caller gave, and what sources are called.
      const given = new Set(["cox", "stroke"]);
      for (const { heading } of t.columns) if (!given.has(heading)) expect(heading).toContain("«");
      for (const note of t.notes) expect(note).toContain("«");
      for (const row of t.rows) {
        if (row.kind === "group") expect(row.heading).toContain("«");
      }
      expect(t.title).toContain("«");
    }
    const cells = shown.flatMap((t) =>
      t.rows.flatMap((row) =>
        row.kind === "group" ? [] : row.cells.map((c) => (typeof c === "string" ? c : c.text)),
      ),
    );
    expect(cells.filter((text) => /\d\.\d/.test(text) && !text.includes("«"))).toEqual([]);
  });

  it.each(all)("leaves %s as it was in British English", (_, tables) => {
    expect(tables(britishEnglish)).toEqual(tables());
  });
});
