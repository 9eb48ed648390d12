import fc from "fast-check";
import { type ComponentId, components, exact, type FoodInput, foodTable, recipe, sheet } from "steelyard";
import { type FoodsRead, foodsFromSr, type SrFiles } from "steelyard/interchange";
import { beforeAll, describe, expect, it } from "vitest";
import { errorOf } from "../number/errorOf.ts";
import { isLong, runs } from "../runs.ts";
import { isHere, sharedJson, srFile, srRows } from "./shared.ts";

/** A made sample in the form of the files; its figures are made up. */
const made = {
  FD_GROUP: "~0100~^~Dairy~\r\n~2000~^~Cereal Grains and Pasta~\r\n",
  FOOD_DES: [
    "~00001~^~0100~^~Camp cheese, raw milk~^~CHS~^~boathouse cheese, cox cheese~^~~^~Y~^~Rind~^10^~~^6.38^4.27^8.79^3.87",
    "~00002~^~2000~^~Barley, raw~^~BARLEY~^~~^~~^~~^~~^^~Hordeum~^^^^",
    "~00003~^~2000~^~Barley, cooked, boiled, drained~^~BARLEY~^~~^~~^~~^~~^0^~~^^^^",
  ].join("\r\n"),
  NUTR_DEF: [
    "~203~^~g~^~PROCNT~^~Protein~^~2~^~600~",
    "~208~^~kcal~^~ENERC_KCAL~^~Energy~^~0~^~300~",
    "~255~^~g~^~WATER~^~Water~^~2~^~100~",
    "~268~^~kJ~^~ENERC_KJ~^~Energy~^~0~^~400~",
    "~303~^~mg~^~FE~^~Iron, Fe~^~2~^~5400~",
    "~313~^~\uFFFDg~^~FLD~^~Fluoride, F~^~1~^~6240~",
    "~324~^~IU~^~VITD~^~Vitamin D~^~0~^~8750~",
    "~328~^~µg~^~VITD~^~Vitamin D (D2 + D3)~^~1~^~8700~",
    "~401~^~IU~^~VITC~^~Vitamin C~^~1~^~6300~",
    "~578~^~µg~^~~^~Vitamin B-12, added~^~2~^~7340~",
  ].join("\n"),
  NUT_DATA: [
    "~00001~^~203~^20.50^16^0.074^~1~^~A~^~~^~~^4^19.1^22.0^8^20.1^20.9^~2, 3~^11/1976^",
    "~00001~^~208~^370^0^^~4~^~NC~^~~^~~^^^^^^^~~^11/1976^",
    "~00001~^~268~^1548^0^^~4~^~NC~^~~^~~^^^^^^^~~^11/1976^",
    "~00001~^~303~^0.00^0^^~7~^~Z~^~~^~~^^^^^^^~~^11/1976^",
    "~00001~^~313~^19.7^3^0.9^~1~^~A~^~~^~~^^^^^^^~~^11/1976^",
    "~00001~^~324~^40^0^^~4~^~NC~^~~^~Y~^^^^^^^~~^11/1976^",
    "~00001~^~328~^1.0^0^^~4~^~NC~^~~^~Y~^^^^^^^~~^11/1976^",
    "~00001~^~401~^3^0^^~4~^~~^~~^~~^^^^^^^~~^11/1976^",
    "~00001~^~578~^0.25^0^^~8~^~LC~^~~^~~^^^^^^^~~^11/1976^",
    "~00002~^~255~^10.09^0^^~1~^~A~^~~^~~^^^^^^^~~^11/1976^",
    "~00002~^~303~^2.50^0^^~9~^~MC~^~~^~N~^^^^^^^~~^11/1976^",
    "~00003~^~303~^1.33^0^^~4~^~BFSN~^~00002~^~~^^^^^^^~~^11/1976^",
  ].join("\r\n"),
  WEIGHT: [
    "~00001~^1^.5^~cup~^60^^",
    "~00001~^2^1^~cup~^118^^",
    "~00001~^3^3^~oz~^85^^",
    "~00001~^4^.333^~wheel~^100.0^1^",
    "~00001~^5^1^~6 inch stick~^40^^\r",
    "~00001~^6^2^~cup,~^240^^",
  ].join("\n"),
  FOOTNOTE: "~00001~^~01~^~N~^~303~^~Iron was not looked for~\r\n",
} satisfies SrFiles;

const faultsOf = (files: object): string[] =>
  errorOf(() => foodsFromSr({ ...made, ...files } as never)).faults.map(
    ({ code, path, message }) => `${code} ${path.join(".")}: ${message}`,
  );

describe("foods from the files of SR28", () => {
  it("takes the release whole, and passes over files that say nothing of a food by itself", () => {
    const all = {
      SRC_CD: "~1~^~Analytical~",
      DERIV_CD: "",
      LANGUAL: "",
      LANGDESC: "",
      DATA_SRC: "",
      DATSRCLN: "",
    };
    const written = (files: SrFiles): string => JSON.stringify(foodsFromSr(files).foods);
    expect(written({ ...made, ...all })).toBe(written(made));
    expect(faultsOf({ SRC: "" })).toHaveLength(1);
  });

  it("carry all that the files say of them", () => {
    const { foods, figures, leftOut } = foodsFromSr(made);
    expect(figures).toBe(8);
    expect(foods.get("ndb-00001")).toEqual({
      id: "ndb-00001",
      name: "Camp cheese, raw milk",
      state: "raw",
      group: "Dairy",
      source: "USDA SR28, NDB 00001",
      otherNames: ["boathouse cheese", "cox cheese"],
      measures: [
        { name: "cup, weight 2", grams: "120" },
        { name: "cup", grams: "118" },
        { name: "wheel", grams: "300" },
        { name: "portion, 6 inch stick", grams: "40" },
      ],
      measuredWith: "us",
      density: expect.any(String),
      edibleShare: "0.9",
      energyFactors: { protein: "4.27", fat: "8.79", carbohydrate: "3.87" },
      fortifiedWith: ["vitaminD", "vitaminB12"],
      meta: {
        refuse: "Rind",
        nitrogenFactor: "6.38",
        footnotes: [{ of: "N", nutrient: "303", text: "Iron was not looked for" }],
      },
      per100g: {
        energy: { value: "370", calculated: "from other figures of the food", sourceCode: "4 NC" },
        protein: {
          value: "20.50",
          error: "0.074",
          count: 16,
          least: "19.1",
          most: "22.0",
          sourceCode: "1 A",
        },
        iron: { value: "0.00", presumed: true, sourceCode: "7 Z" },
        fluoride: { value: "0.0197", error: "0.0009", count: 3, sourceCode: "1 A" },
        vitaminD: { value: "1.0", calculated: "from other figures of the food", sourceCode: "4 NC" },
      },
    });
    expect(foods.get("ndb-00002")).toMatchObject({
      state: "dry",
      per100g: { iron: { value: "2.50", calculated: "by its maker", sourceCode: "9 MC" } },
    });
    expect(foods.get("ndb-00003")).toMatchObject({
      state: "cooked",
      edibleShare: "1",
      per100g: {
        iron: { value: "1.33", borrowedFrom: "Barley, raw (NDB 00002), by solids", sourceCode: "4 BFSN" },
      },
    });
    expect(leftOut.map(({ code, count, why }) => [code, count, why]).sort()).toEqual([
      ["268", 1, "told-elsewhere"],
      ["324", 1, "told-elsewhere"],
      ["401", 1, "unit"],
      ["578", 1, "added"],
    ]);
  });

  it("take vitamin D in international units, and energy in kilojoules, where they are told in nothing else", () => {
    const rows = made.NUT_DATA.split("\n").filter((row) => !/^~00001~\^~(?:208|328)~/.test(row));
    const { foods, figures, leftOut } = foodsFromSr({ ...made, NUT_DATA: rows.join("\n") });
    const printed = (number: string): string =>
      srRows(made.NUT_DATA).find(([ndb, code]) => ndb === "00001" && code === number)?.[2] ?? "";
    const { vitaminD, energy } = foods.get("ndb-00001").per100g as { [id: string]: { value: string } };
    expect(
      exact(vitaminD?.value ?? 0)
        .times(40)
        .eq(printed("324")),
    ).toBe(true);
    expect(
      exact(energy?.value ?? 0)
        .times("4.184")
        .eq(printed("268")),
    ).toBe(true);
    expect([figures, leftOut.some(({ why }) => why === "told-elsewhere")]).toEqual([8, false]);
  });

  it("are the same from text, lines, and chunks of any size", () => {
    const whole = JSON.stringify(foodsFromSr(made).foods);
    const inPieces = (cut: (text: string) => string[]): string =>
      JSON.stringify(
        foodsFromSr(Object.fromEntries(Object.entries(made).map(([n, text]) => [n, cut(text)])) as never)
          .foods,
      );
    expect(inPieces((text) => text.split("\n"))).toBe(whole);
    expect(inPieces((text) => text.split(/\r?\n/))).toBe(whole);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (size) => {
        const chunks = (text: string) => text.match(new RegExp(`[^]{1,${size}}`, "g")) ?? [];
        expect(inPieces(chunks)).toBe(whole);
      }),
      { numRuns: runs(20) },
    );
  });

  it("are good for a recipe, and for a table that is stored and opened", () => {
    const { foods } = foodsFromSr(made);
    const again = foodTable(JSON.parse(JSON.stringify(foods)));
    for (const table of [foods, again]) {
      const lines = [{ food: "ndb-00001", amount: "1 cup" }];
      expect(
        sheet(recipe({ name: "Board", portions: 2, measures: "us", lines }), table)
          .portion("protein")
          .value.toString(),
      ).toBe("12.095");
    }
  });

  it("tell what does not read, with the food", () => {
    const row = (fields: string) => `${made.NUT_DATA}\n${fields}`;
    expect(faultsOf({ NUT_DATA: row("~00002~^~203~^a lot^0^^~1~^~A~^~~^~~^^^") })).toEqual([
      'foods-unreadable NUT_DATA: Barley, raw (NDB 00002): Protein: "a lot" is not a number',
    ]);
    expect(faultsOf({ NUT_DATA: row("~00009~^~203~^1^0^^~1~^~A~^~~^~~^^^") })).toEqual([
      "foods-unreadable NUT_DATA: NDB 00009: FOOD_DES has no such food",
    ]);
    expect(faultsOf({ NUT_DATA: row("~00002~^~999~^1^0^^~1~^~A~^~~^~~^^^") })).toEqual([
      "foods-unreadable NUT_DATA: Barley, raw (NDB 00002): NUTR_DEF has no nutrient 999",
    ]);
    expect(faultsOf({ WEIGHT: "~00002~^1^0^~cup~^20^^" })).toEqual([
      'foods-unreadable WEIGHT: NDB 00002: "cup" is no weight of something',
    ]);
    expect(faultsOf({ NUT_DATA: 4 })).toEqual([
      "foods-unreadable NUT_DATA: expected the text of NUT_DATA, got a number",
    ]);
    expect(faultsOf({ NUT_DATA: [4] })).toEqual([
      "foods-unreadable NUT_DATA: expected the text of NUT_DATA, got a number",
    ]);
    expect(errorOf(() => foodsFromSr(undefined as never)).code).toBe("foods-unreadable");
  });
});

interface Tag {
  readonly sr: string;
  readonly id: string | null;
}

// USDA National Nutrient Database for Standard Reference, Release 28 (May 2016), files as published.
describe.skipIf(!isHere)(isLong ? "all of SR28" : "one in 97 of SR28", () => {
  let text: { [F in keyof Required<SrFiles>]: string };
  let read: FoodsRead;
  let foods: Map<string, FoodInput>;

  beforeAll(() => {
    const names = ["FOOD_DES", "NUTR_DEF", "NUT_DATA", "WEIGHT", "FD_GROUP"] as const;
    text = Object.fromEntries(names.map((name) => [name, srFile(name)])) as typeof text;
    read = foodsFromSr(text);
    foods = new Map(read.foods.ids.map((id) => [id, read.foods.get(id)]));
  }, 60_000);

  it("has each value in its component, equal to the printed digit, or among what is left out", () => {
    // Component ids by nutrient number as our notes on the tagnames have them, made apart from the reader.
    const tags = (sharedJson("../standards/infoods_tagnames.json") as { numbers: readonly Tag[] }).numbers;
    const idOf = new Map(tags.map(({ sr, id }) => [sr, sr === "665" ? "fa18d2t" : id]));
    const units = new Map(srRows(text.NUTR_DEF).map(([number = "", unit = ""]) => [number, unit]));
    const scale = (number: string, id: ComponentId): string =>
      units.get(number) === components[id].unit ? "1" : (factors[number] ?? "no factor");
    const factors: { readonly [number: string]: string } = { "313": "1000", "324": "40" };
    const has = new Set(srRows(text.NUT_DATA).map(([ndb, number]) => `${ndb} ${number}`));
    const left = new Map<string, number>();
    let held = 0;
    const wrong: unknown[] = [];
    for (const [
      ndb = "",
      number = "",
      value = "",
      count = "",
      error = "",
      source = "",
      derivation = "",
      ,
      ,
      ,
      least = "",
      most = "",
    ] of srRows(text.NUT_DATA)) {
      const isOther = number === "324" && !has.has(`${ndb} 328`);
      const id = (isOther ? "vitaminD" : idOf.get(number)) as ComponentId | undefined;
      const figure = id && (foods.get(`ndb-${ndb}`)?.per100g[id] as { [field: string]: string } | undefined);
      if (id === undefined || figure === undefined || (["268", "324"].includes(number) && !isOther)) {
        left.set(number, (left.get(number) ?? 0) + 1);
        continue;
      }
      const factor = scale(number, id);
      const same = (ours: unknown, theirs: string): boolean =>
        theirs === ""
          ? ours === undefined
          : factor === "1"
            ? ours === theirs
            : exact(ours as string)
                .times(factor)
                .eq(theirs);
      const code = [source, derivation].filter((each) => each !== "").join(" ");
      const isSame =
        same(figure.value, value) &&
        same(figure.error, error) &&
        same(figure.least, least) &&
        same(figure.most, most) &&
        (figure.count ?? 0) === Number(count) &&
        figure.sourceCode === code &&
        (figure.presumed !== undefined) === (source === "7");
      if (!isSame) wrong.push([ndb, number, value, figure]);
      held += 1;
    }
    expect(wrong.slice(0, 5)).toEqual([]);
    expect(held).toBe(read.figures);
    expect(new Map(read.leftOut.map(({ code, count }) => [code, count]))).toEqual(left);
    const all = read.figures + read.leftOut.reduce((sum, { count }) => sum + count, 0);
    if (isLong) expect([foods.size, all]).toEqual([8789, 679_045]);
    else expect(foods.size).toBeGreaterThan(60);
  });

  it("reads each weight as an amount of the food", () => {
    let weights = 0;
    const odd: unknown[] = [];
    const parts: { readonly [printed: string]: string } = {
      ".333": "1/3",
      ".33": "1/3",
      ".667": "2/3",
      ".67": "2/3",
      ".666": "2/3",
      ".167": "1/6",
      ".083": "1/12",
      "1.33": "4/3",
      "1.333": "4/3",
      "2.33": "7/3",
    };
    const gramsOf = (food: string, value: string, unit: string): string | undefined => {
      try {
        const lines = [{ key: "a", food, amount: { value, unit } }];
        return sheet(
          recipe({ name: "x", portions: 1, measures: "us", lines }),
          read.foods,
        ).lines[0]?.grams?.toString();
      } catch {
        return undefined;
      }
    };
    for (const [ndb = "", , amount = "", name = "", grams = ""] of srRows(text.WEIGHT)) {
      weights += 1;
      const food = `ndb-${ndb}`;
      const value = parts[amount] ?? amount;
      const unit = name.replace(/,$/, "");
      const numbered = [unit, `portion, ${unit}`, ...[2, 3, 4].map((k) => `${unit}, weight ${k}`)];
      const reads = (each: string): boolean => {
        const found = gramsOf(food, value, each);
        const isPound = ["oz", "lb"].includes(each) && Math.abs(Number(found) / Number(grams) - 1) < 0.015;
        return found !== undefined && (isPound || exact(found).minus(grams).abs().lt("1e-9"));
      };
      if (!numbered.some(reads)) odd.push([ndb, amount, name, grams]);
    }
    expect(odd).toEqual([]);
    expect(weights).toBe(isLong ? 15_438 : weights);
    expect(weights).toBeGreaterThan(100);
  }, 300_000);

  it("is opened from what it writes of itself with the same foods", () => {
    const again = foodTable(JSON.parse(JSON.stringify(read.foods)));
    expect(again.ids).toEqual(read.foods.ids);
    for (const id of again.ids)
      if (isLong || Number(id.slice(-1)) < 3) expect(again.get(id)).toEqual(foods.get(id));
  }, 60_000);
});
