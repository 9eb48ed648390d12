import { readFileSync } from "node:fs";
import fc from "fast-check";
import {
  foodTable,
  openSheet,
  recipe,
  refresh,
  revise,
  type Sheet,
  type StoredSheet,
  scale,
  sheet,
  toRecipe,
} from "steelyard";
import { starterFoods, usdaRetention } from "steelyard/foods";
import { openPlan } from "steelyard/plan";
import { describe, expect, it } from "vitest";
import { roundToKitchen } from "../../src/scale/round.ts";
import { cellValue, withColumn, withConstant } from "../../src/sheet/columns.ts";
import { arbitraryFactor, arbitraryRecipe } from "../arbitraries.ts";
import { errorOf } from "../number/errorOf.ts";
import { allOf } from "../properties/lossless.ts";
import { runs } from "../runs.ts";
import { figuresOf, foods, made } from "../stored/made.ts";
import { written } from "../written.ts";

const stored = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../stored/${name}.json`, import.meta.url), "utf8"));

const reopened = (s: Sheet): Sheet => openSheet(written(s));

describe("a stored sheet", () => {
  it("keeps whose cup it is, where two are as large", () => {
    const foods = foodTable([{ id: "flour", name: "Flour", source: "test", density: "0.53", per100g: {} }]);
    const written = { name: "Dough", portions: 1, measures: "australian" as const };
    const dough = sheet({ ...written, lines: [{ food: "flour", amount: "1.25 cup" }] }, foods);
    const measured = roundToKitchen(dough, "metric");
    if (measured.status === "out-of-reach") throw new Error(measured.text);
    const [line] = openSheet(JSON.parse(JSON.stringify(measured.sheet))).lines;
    expect(line?.amount.toString()).toBe(measured.sheet.lines[0]?.amount.toString());
    expect(line?.amount.measures).toBe(measured.sheet.lines[0]?.amount.measures);
  });

  it("opens with every figure literally the same, whatever was done to the sheet", () => {
    fc.assert(
      fc.property(arbitraryRecipe, arbitraryFactor, fc.nat(), ({ table, recipe: document }, factor, n) => {
        const first = sheet(document, table);
        const [line] = first.lines;
        const larger = scale(first, { factor }).sheet;
        const all = [
          first,
          larger,
          larger.edit({ [line?.key ?? ""]: `${n % 900}/7 g` }),
          revise(larger, { swap: { [line?.key ?? ""]: table.ids[n % table.ids.length] ?? "" }, portions: 5 }),
        ];
        for (const each of all) {
          expect(allOf(reopened(each))).toEqual(allOf(each));
          expect(written(reopened(each))).toEqual(written(each));
        }
      }),
      { numRuns: runs(60) },
    );
  });

  it("holds nested recipes, retention factors, spoons of one's own and constants, and no food but those used", () => {
    const s = made();
    expect(allOf(reopened(s))).toEqual(allOf(s));
    const { foods: kept, recipes } = s.toJSON();
    expect(kept.foods.map(({ id }) => id)).toEqual(["oats", "greens", "salt"]);
    expect(Object.keys(recipes ?? {})).toEqual(["seasoned"]);
    expect(Object.keys(kept.retention?.codes ?? {})).toEqual(["1"]);
    expect(cellValue(reopened(s), "price").failed).toBe(undefined);
    const { origin } = reopened(s);
    expect([origin, origin.lines, origin.lines[0], origin.meta].map(Object.isFrozen)).toEqual([
      true,
      true,
      true,
      true,
    ]);
  });

  it("keeps an amount of two units as it was measured, though it comes to what was written", () => {
    const s = sheet(
      {
        name: "Flour",
        portions: 1,
        measures: "us",
        lines: [{ key: "oats", food: "oats", amount: "2.25 cup" }],
      },
      foods,
    ).edit({ oats: "2 cups 4 tbsp" });
    expect(written(s.lines[0]?.amount)).toMatchObject({ parts: [{ value: "2" }, { value: "4" }] });
    expect(allOf(reopened(s))).toEqual(allOf(s));
  });

  it("can be scaled, edited and revised as the sheet could", () => {
    const s = made();
    const change = (each: Sheet): unknown =>
      allOf(
        revise(scale(each, { mass: "400 g" }).sheet.edit({ more: "10 g" }), {
          remove: ["oats"],
          method: null,
        }),
      );
    expect(change(reopened(s))).toEqual(change(s));
  });

  it("says which columns and rows are not told, gives what they came to, and asks for their formulas", () => {
    const { own } = made().toJSON();
    expect(own?.untold).toEqual({ columns: ["cost"], rows: ["spread"] });
    expect(own?.cells).toContainEqual({
      column: "cost",
      row: "portion",
      value: written(cellValue(made(), "cost", "portion")),
    });
    const opened = reopened(made());
    expect(cellValue(opened, "cost", "portion")).toMatchObject({ failed: true, code: "column-untold" });
    expect(cellValue(opened, "protein", { row: "spread" })).toMatchObject({
      failed: true,
      code: "column-untold",
    });
    const again = withColumn(opened, "cost", (at) => at.get("grams").times(at.constant("price").value));
    expect(written(cellValue(again, "cost", "portion"))).toEqual(
      written(cellValue(made(), "cost", "portion")),
    );
    // Stored again before its formulas are given, it loses nothing; other amounts make other cells.
    expect(opened.toJSON().own).toEqual(own);
    const [first] = opened.lines;
    expect(opened.edit({ [first?.key ?? ""]: "7 g" }).toJSON().own).toMatchObject({
      untold: own?.untold,
      cells: [],
    });
  });

  it("is under 30 kB for twenty lines, 32 where they are the foods of which most is told", () => {
    const twenty = starterFoods.ids.slice(0, 20).map((food) => ({ food, amount: "100 g" }));
    const usual = sheet({ name: "Twenty lines", portions: 4, lines: twenty }, starterFoods);
    expect(JSON.stringify(usual).length).toBeLessThan(30_000);

    const longest = [...starterFoods.ids].sort(
      (a, b) => JSON.stringify(starterFoods.get(b)).length - JSON.stringify(starterFoods.get(a)).length,
    );
    const lines = longest.slice(0, 20).map((food) => ({ food, amount: "100 g" }));
    const s = sheet({ name: "Twenty lines", portions: 4, lines }, starterFoods);
    expect(JSON.stringify(s).length).toBeLessThan(32_000);
    expect(allOf(reopened(s))).toEqual(allOf(s));
  });

  it("gives every starter food back as it was", () => {
    const lines = starterFoods.ids.map((food) => ({ food, amount: "10 g" }));
    const all = sheet({ name: "All", portions: 1, lines }, starterFoods).toJSON();
    expect(written(foodTable(all.foods))).toEqual({ ...written(starterFoods), retention: undefined });
  });

  it("is opened from another copy of the package by what it writes of itself", () => {
    const foreign = { toJSON: () => written(made()) };
    expect(allOf(openSheet(foreign))).toEqual(allOf(made()));
    expect(allOf(openSheet(made()))).toEqual(allOf(made()));
  });

  it("opens the same from a database that keeps no order of fields", () => {
    const turned = (x: unknown): unknown => {
      if (Array.isArray(x)) return x.map(turned);
      if (typeof x !== "object" || x === null) return x;
      const fields = Object.entries(x).map(([name, each]) => [name, turned(each)] as const);
      return Object.fromEntries(fields.reverse());
    };
    expect(allOf(openSheet(turned(written(made()))))).toEqual(allOf(made()));
  });

  it("is refused by a clone in words that name what opens it", () => {
    expect(() => structuredClone(made())).toThrow(/toJSON.*openSheet/);
  });
});

describe("stored documents of every format", () => {
  it("open as they were: a sheet", () => {
    expect(figuresOf(openSheet(stored("sheet-1")))).toEqual(stored("sheet-1.figures"));
  });

  it("are stored again in the words of today: the bound of a figure known to a point", () => {
    const words = (x: unknown): boolean => JSON.stringify(x).includes('"bound":"exact"');
    expect(words(stored("sheet-1"))).toBe(true);
    expect(words(openSheet(stored("sheet-1")).toJSON())).toBe(false);
    expect(words(openPlan(stored("plan-1")).toJSON())).toBe(false);
  });

  it("open as they were: foods, in all of their formats", () => {
    for (const name of ["foods-1", "foods-2", "foods-3"])
      expect(written(foodTable(stored(name) as never))).toEqual(stored("foods-3"));
    expect(written(foods)).toEqual(stored("foods-3"));
  });

  it("open as they were: a recipe", () => {
    expect(recipe(stored("recipe-1"))).toEqual(toRecipe(openSheet(stored("sheet-1"))));
  });
});

describe("a stored sheet at fault", () => {
  const told = (given: unknown): readonly string[] => {
    const { faults } = errorOf(() => openSheet(given));
    return faults.map(({ code, path, message }) => `${code} ${path.join(".")}: ${message}`);
  };
  const good = written(made()) as unknown as StoredSheet;

  it("of a later version is told as that, and nothing else of it", () => {
    expect(told({ format: "steelyard-sheet/2", lines: 3 })).toEqual([
      'sheet-format-newer format: format "steelyard-sheet/2" is newer than this library',
    ]);
    expect(told({ ...good, foods: { ...good.foods, format: "steelyard-foods/9" } })).toEqual([
      'foods-format-newer foods.format: format "steelyard-foods/9" is newer than this library',
    ]);
  });

  it.each<[string, unknown, string]>([
    ["nothing", undefined, "sheet-malformed : missing"],
    ["text", "{}", 'sheet-malformed : expected a steelyard-sheet document, as toJSON() gives it, got "{}"'],
    ["no format", {}, "sheet-malformed format: names no format"],
    [
      "another document",
      stored("recipe-1"),
      'sheet-malformed format: "steelyard-recipe/1" is no steelyard-sheet format',
    ],
    [
      "version 0",
      { format: "steelyard-sheet/0" },
      'sheet-malformed format: "steelyard-sheet/0" is no steelyard-sheet format',
    ],
  ])("is refused: %s", (_, given, fault) => {
    expect(told(given)).toEqual([fault]);
  });

  it("tells every fault at once, with its place", () => {
    const { foods: packed, recipe: document } = good;
    const [oats] = packed.foods;
    const at = (per100g: string): unknown => ({
      ...good,
      foods: { ...packed, foods: [{ ...oats, per100g }] },
    });
    expect(
      told({ ...good, recipe: { ...document, portions: 0 }, foods: { ...packed, components: ["protien"] } }),
    ).toEqual([
      'sheet-malformed recipe.portions: "0" is not above 0',
      'component-unknown foods.components.0: no component is called "protien"',
    ]);
    expect(told(at("1 2 3"))).toEqual(["food-malformed foods.foods.0.per100g: 3 figures for 10 components"]);
    expect(told(at("1:77 - - - - - - - - -"))).toEqual([
      "food-malformed foods.foods.0.per100g: there is no mark 77 for energy",
    ]);
    expect(told(at("x - - - - - - - - -"))).toEqual([
      'number-malformed foods.foods.0.per100g.energy: "x" is not a number',
    ]);
    const { recipes: _, ...alone } = good;
    expect(told(alone)).toEqual(['recipe-unknown recipe.lines.1.recipe: no recipe is called "seasoned"']);
  });
});

describe("refresh", () => {
  const oats = { id: "oats", name: "Oats", source: "made up", per100g: { protein: 13, iron: 4 } };
  const honey = { id: "honey", name: "Honey", source: "made up", per100g: { energy: 300 } };
  const before = withConstant(
    sheet(
      {
        name: "Oats and honey",
        portions: 2,
        lines: [
          { key: "oats", food: "oats", amount: "100 g" },
          { key: "honey", food: "honey", amount: "20 g" },
        ],
      },
      foodTable([oats, honey]),
    ),
    "price",
    2,
  );

  it("works a sheet out with today's foods and tells what moved", () => {
    const today = foodTable([{ ...oats, per100g: { protein: 14, iron: 4, zinc: 3 } }, honey]);
    const { sheet: now, difference: moved, kept } = refresh(written(before), today);
    expect(now.portion("protein").value.toJSON()).toBe("7");
    expect(moved.components.map(({ component, change }) => [component, change.value.toJSON()])).toEqual([
      ["protein", "0.5"],
      ["zinc", "1.5"],
    ]);
    expect([moved.lines, moved.mass, kept]).toEqual([[], undefined, []]);
    expect(written(cellValue(now, "price"))).toEqual(written(cellValue(before, "price")));
    expect(refresh(before, today).difference.components).toHaveLength(2);
  });

  it("tells that nothing moved where nothing did", () => {
    const same = foodTable([oats, honey]);
    expect(refresh(written(before), same).difference.none).toBe(true);
  });

  it("keeps the stored figures of foods that the table does not have, and names them", () => {
    const { kept, difference: moved } = refresh(written(before), foodTable([oats]));
    expect([kept, moved.none]).toEqual([["honey"], true]);
  });

  it("takes today's retention factors", () => {
    const [code] = Object.keys(usdaRetention.codes);
    const retained = foodTable([oats]).withRetention(usdaRetention);
    const s = sheet(
      { name: "Oats", portions: 1, lines: [{ food: "oats", amount: "100 g", retention: code ?? "" }] },
      retained,
    );
    const { codes } = usdaRetention;
    const [name, percents] = codes[code ?? ""] ?? ["", ""];
    const none = {
      ...usdaRetention,
      codes: { ...codes, [code ?? ""]: [name, percents.replace(/\d+/g, "0")] as const },
    };
    const { sheet: now } = refresh(written(s), foodTable([oats]).withRetention(none));
    expect(s.portion("iron").value.gt(0)).toBe(true);
    expect(now.portion("iron").value.toJSON()).toBe("0");
  });

  it("refuses what is no table, or no stored sheet", () => {
    expect(errorOf(() => refresh(written(before), [] as never)).code).toBe("food-malformed");
    expect(errorOf(() => refresh({}, starterFoods)).code).toBe("sheet-malformed");
  });
});
