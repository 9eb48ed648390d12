import fc from "fast-check";
import Papa from "papaparse";
import { components, exact, type FoodInput, type FoodTable, foodTable } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { foodsFromCsv, foodsFromSr, foodsToCsv } from "steelyard/interchange";
import { describe, expect, it } from "vitest";
import { csvRecords } from "../../src/interchange/csvRecords.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";
import { isHere, srFile } from "./shared.ts";

const source = "own analysis";
const iron = (cell: string, how = {}) =>
  foodsFromCsv(`name,FE (mg)\nOats,${cell}`, { source, ...how }).foods.get("Oats").per100g.iron;
const faultsOf = (text: string, how: object = { source }): string[] =>
  errorOf(() => foodsFromCsv(text, how)).faults.map(({ code, message }) => `${code} ${message}`);
/** A table as it is written when it is packed anew. */
const written = (table: FoodTable): unknown =>
  JSON.parse(JSON.stringify(foodTable(table.ids.map((id) => ({ ...table.get(id) })))));
const back = (table: FoodTable): FoodTable => foodsFromCsv(foodsToCsv(table)).foods;

describe("foods from values between commas", () => {
  it("are read by tagname and unit, however the unit is set", () => {
    for (const heading of ["FE (mg)", "FE(mg)", "FE [mg]", "iron (mg)", '"FE, mg"', "FE (g)"]) {
      const { foods } = foodsFromCsv(`name,${heading}\nOats,${heading.endsWith("(g)") ? "0.0041" : "4.1"}`, {
        source,
      });
      expect([heading, foods.get("Oats").per100g.iron]).toEqual([heading, "4.1"]);
    }
  });

  it("have figures, traces, limits, estimates and gaps", () => {
    expect([
      iron("4.10"),
      iron(".5"),
      iron("tr"),
      iron("Trace"),
      iron("<0.2"),
      iron("[3]"),
      iron("(3)"),
      iron(""),
    ]).toEqual([
      "4.10",
      ".5",
      "trace",
      "trace",
      { below: "0.2" },
      { value: "3", calculated: "an estimate, as its table marks it" },
      { value: "3", calculated: "an estimate, as its table marks it" },
      undefined,
    ]);
    expect(iron("N", { unknown: ["N", "-"] })).toBe(undefined);
    expect(
      foodsFromCsv("name;FE (mg)\nOats;4,1", { source, decimal: "," }).foods.get("Oats").per100g.iron,
    ).toBe("4.1");
  });

  it("check units: vitamin D in IU, energy in kJ, and what does not turn into one another", () => {
    const { foods, leftOut } = foodsFromCsv(
      "name,VITD (IU),VITA_RAE (IU),ENERC (kJ),VITC (kcal)\nOats,40,100,418.4,3",
      { source },
    );
    expect(foods.get("Oats").per100g).toEqual({ vitaminD: "1", energy: "100" });
    expect(leftOut.map(({ code, count, why }) => [code, count, why])).toEqual([
      ["VITA_RAE (IU)", 1, "unit"],
      ["VITC (kcal)", 1, "unit"],
    ]);
    // Both forms of energy: the one in kcal is the figure.
    const both = foodsFromCsv("name,ENERC_KJ,ENERC_KCAL\nOats,1590,379", { source });
    expect(both.foods.get("Oats").per100g.energy).toBe("379");
    expect(both.leftOut).toMatchObject([{ code: "ENERC_KJ", count: 1, why: "told-elsewhere" }]);
    expect(faultsOf("name,FE\nOats,4")).toEqual(['foods-unreadable the column "FE" names no unit']);
    expect(faultsOf("name,ENERC\nOats,4")).toEqual(['foods-unreadable the column "ENERC" names no unit']);
  });

  it("are counted where they have no component, by name", () => {
    const { leftOut, figures } = foodsFromCsv("name,GLAZE (g),remark,FE (mg)\nOats,1,good,4\nRye,2,,5", {
      source,
    });
    expect([figures, leftOut.map(({ code, count, why }) => [code, count, why])]).toEqual([
      2,
      [
        ["GLAZE (g)", 2, "no-component"],
        ["remark", 1, "no-component"],
      ],
    ]);
  });

  it("take headings of others by a mapping", () => {
    const text = "Food,Eisen in mg,Energie,Notiz\nHafer,4.1,1590,x";
    const columns = {
      Food: "name",
      "Eisen in mg": { component: "iron", unit: "mg" },
      Energie: { component: "energy", unit: "kJ" },
      Notiz: null,
    } as const;
    const food = foodsFromCsv(text, { columns, source }).foods.get("Hafer");
    expect(food).toMatchObject({ name: "Hafer", per100g: { iron: "4.1" } });
    expect(
      exact(food.per100g.energy as string)
        .times("4.184")
        .toString(),
    ).toBe("1590");
  });

  it("of 100 ml are brought to 100 g by the food's density", () => {
    const text = "name,density,FE (mg)\nSyrup,1.25,4";
    expect(foodsFromCsv(text, { source, per: "100 ml" }).foods.get("Syrup").per100g.iron).toEqual({
      value: "3.2",
      derived: "from 100 ml, of 1.25 g per ml",
    });
    expect(faultsOf("name,FE (mg)\nSyrup,4", { source, per: "100 ml" })).toEqual([
      "foods-unreadable Syrup: figures of 100 ml, and no density",
    ]);
  });

  it("tell what does not read, with the food, all at once", () => {
    expect(
      faultsOf('name,FE (mg),state\nOats,4..1,dry\nRye,"4,1",dry\nOats,1,dry\nBarley,1,mouldy\n,2,raw'),
    ).toEqual([
      'foods-unreadable Oats: "4..1" in "iron" is not a figure',
      'foods-unreadable Rye: "4,1" in "iron" is not a figure',
      'food-duplicate two foods are called "Oats"',
      expect.stringContaining('food-malformed Barley: "mouldy" is not one of'),
      "food-malformed line 6: missing",
      "food-malformed line 6: missing",
    ]);
    expect(faultsOf("name,FE (mg)\nOats,4", {})[0]).toBe("food-malformed Oats: missing");
    expect(faultsOf('name,FE (mg)\n"Oats,4')[0]).toContain("a quotation mark that nothing closes");
    expect(faultsOf("name,FE (mg)\nOats,4,5")[0]).toContain("more fields than headings");
    expect(errorOf(() => foodsFromCsv("name\nx", { delimeter: ";" } as never)).hint).toContain("delimiter");
  });
});

describe("foods to values between commas and back", () => {
  it("are the same: starter foods, with all that they say", () => {
    const kept = foodTable(starterFoods.ids.map((id) => starterFoods.get(id)));
    expect(written(back(kept))).toEqual(written(kept));
  });

  it("are the same: odd names and figures of every kind", () => {
    const names = fc.oneof(
      fc.constantFrom("=1+1", "'=1", "+a;-b", "a\nb", '"x"', "a,b", "tr", "@x", " y ", "-3"),
      fc.string({ minLength: 1 }).filter((s) => s.trim() !== "" && !/[^\P{Cc}\t\n]/u.test(s)),
    );
    const figure = fc.constantFrom(
      "4.10",
      3,
      "1/3",
      "trace",
      { below: "0.5" },
      { below: "2", source: "x" },
      { value: "3", presumed: true },
      { value: "2", low: "1", high: "3", error: "0.1", count: 3, least: "0", most: "9", sourceCode: "1 A" },
      { value: 0, calculated: "an estimate, as its table marks it" },
      { value: "1", borrowedFrom: "=oats" },
    ) as fc.Arbitrary<FoodInput["per100g"]["iron"]>;
    fc.assert(
      fc.property(
        fc.uniqueArray(names, { minLength: 1, maxLength: 4 }),
        fc.array(figure, { minLength: 3, maxLength: 3 }),
        (all, [a, b, c]) => {
          const table = foodTable(
            all.map((name, i) => ({
              id: name,
              name,
              source: name,
              ...(i % 2 === 0 && {
                measures: [{ name: "cup", grams: "1/3" }],
                meta: { odd: [name] },
                state: "dry" as const,
              }),
              per100g: { ...(a && { iron: a }), ...(b && { energy: b }), ...(c && i > 0 && { zinc: c }) },
            })),
          );
          expect(written(back(table))).toEqual(written(table));
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it.skipIf(!isHere)(
    "are the same: foods of SR28",
    () => {
      const names = ["FOOD_DES", "NUTR_DEF", "NUT_DATA", "WEIGHT", "FD_GROUP"] as const;
      const { foods } = foodsFromSr(Object.fromEntries(names.map((name) => [name, srFile(name)])) as never);
      expect(written(back(foods))).toEqual(written(foods));
    },
    120_000,
  );

  it("are read by another reader as they were written", () => {
    const rows = Papa.parse<Record<string, string>>(foodsToCsv(starterFoods), {
      header: true,
      skipEmptyLines: true,
    }).data;
    expect(rows.length).toBe(starterFoods.ids.length);
    expect(rows.find(({ id }) => id === "oats-rolled-dry")).toMatchObject({
      "PROCNT (g)": "13.15",
      state: "dry",
    });
    for (const id of Object.keys(components))
      expect(Object.keys(rows[0] ?? {}).filter((h) => h === id)).toEqual([]);
  });
});

describe("records of a file", () => {
  it("are those that another reader finds, whole or in pieces", () => {
    const field = fc.oneof(
      fc.constantFrom("", '"', "a\nb", ",", " x", 'a"b'),
      fc.string({ maxLength: 5 }).map((s) => s.replaceAll("\r", "")),
    );
    fc.assert(
      fc.property(
        fc.array(fc.array(field, { minLength: 2, maxLength: 3 }), { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 1, max: 9 }),
        (rows, size) => {
          const text = `${Papa.unparse(rows, { newline: "\r\n" })}\r\n`;
          const none = (message: string) => expect(message).toBe("");
          const ours = (given: string | string[]) =>
            [...csvRecords(given, "x", none, ",")].map(({ fields }) => fields);
          expect(ours(text)).toEqual(rows);
          expect(ours(text.match(new RegExp(`[^]{1,${size}}`, "g")) ?? [])).toEqual(rows);
        },
      ),
      { numRuns: runs(100) },
    );
  });
});
