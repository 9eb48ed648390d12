/** Components that the registry lacks, from a food to all that is made of it. */
import Ajv from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { read, utils } from "xlsx";
import { portionsAt } from "../../src/bulk/portionsAt.ts";
import { portionsOfMany } from "../../src/bulk/portionsOfMany.ts";
import { type ComponentId, component, components, ownComponent } from "../../src/food/components.ts";
import { foodTable } from "../../src/food/table.ts";
import { foodsFromCsv } from "../../src/interchange/foodsFromCsv.ts";
import { foodsToCsv } from "../../src/interchange/foodsToCsv.ts";
import { workbook } from "../../src/interchange/workbook/workbook.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { fit } from "../../src/scale/fit.ts";
import { scale } from "../../src/scale/scale.ts";
import { foodJsonSchema } from "../../src/schema.ts";
import { sheet } from "../../src/sheet/build.ts";
import { citations } from "../../src/sheet/citations.ts";
import { difference } from "../../src/sheet/difference.ts";
import { influence } from "../../src/sheet/influence.ts";
import { openSheet } from "../../src/sheet/openSheet.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const taurine = ownComponent("taurine", "mg");
const elaidic = ownComponent("elaidic acid (18:1 t9)".replace(/[()]/g, ""), "g", "fattyAcid");

const written = [
  {
    id: "mussels",
    name: "Mussels",
    source: "own analysis",
    per100g: { energy: 86, fat: 2, [taurine]: { value: "655", error: "20" } },
  },
  {
    id: "rice",
    name: "Rice",
    source: "own analysis",
    per100g: { energy: 360, fat: 0, [taurine]: "trace" as const, [elaidic]: 0 },
  },
  { id: "leek", name: "Leek", source: "own analysis", per100g: { energy: 30, fat: 0 } },
];
const foods = foodTable(written);
const dish = (over: object = {}): Sheet =>
  sheet(
    {
      name: "Pot",
      portions: 2,
      lines: [
        { key: "mussels", food: "mussels", amount: "300 g", retention: { [taurine]: "0.8" } },
        { key: "rice", food: "rice", amount: "150 g" },
        { key: "base", recipe: "base", amount: "100 g" },
      ],
      ...over,
    },
    foods,
    {
      recipes: {
        base: {
          name: "Base",
          portions: 1,
          lines: [
            { food: "mussels", amount: "50 g" },
            { food: "leek", amount: "50 g" },
          ],
        },
      },
    },
  );

describe("a component of one's own", () => {
  const s = dish();
  // By hand: 300 g × 6.55 × 0.8 + 50 g × 6.55 = 1899.5 mg in two portions.
  const portion = "949.75";

  it("is added up, with what is silent, through cooking and nested recipes", () => {
    const tally = s.portion(taurine);
    expect([tally.value.toString(), tally.unit, tally.bound]).toEqual([portion, "mg", "at-least"]);
    expect([tally.missing, tally.trace]).toEqual([["base/leek"], ["rice"]]);
    expect(component(taurine)).toMatchObject({ name: "taurine", unit: "mg", group: "other", tagList: "own" });
    // Of no fat there are no fatty acids; of mussels nobody knows.
    expect(s.cell("rice", elaidic).bound).toBe("point");
    expect(s.total(elaidic).missing).toEqual(["mussels", "base/mussels"]);
    expect(s.total(elaidic).presumed).toEqual(["base/leek"]);
  });

  it("is a target and a demand like any other", () => {
    const plain = sheet({ name: "One", portions: 1, lines: [{ food: "mussels", amount: "100 g" }] }, foods);
    expect(scale(plain, { [taurine]: "1310 mg" }).factor.toString()).toBe("2");
    const met = fit(plain, [{ of: taurine, exactly: "0.131 g" }]);
    expect(met.status === "met" && met.sheet.portion(taurine).value.toString()).toBe("131");
    const { columns } = portionsAt(plain, { [taurine]: Float64Array.of(655, 1310) }, [taurine, "energy"]);
    expect([...columns.energy.value]).toEqual([86, 172]);
    const [many] = portionsOfMany(
      [{ name: "One", portions: 1, lines: [{ food: "mussels", amount: "200 g" }] }],
      foods,
      [taurine],
    );
    expect(many?.columns[taurine].value[0]).toBe(1310);
  });

  it("is shown and recorded, and stands in differences, sources and plans", () => {
    expect(toText(s)).toMatch(/^taurine +mg +at least 949/m);
    const rows = toRecords(s, { figures: "exact" }).filter(({ component: id }) => id === taurine);
    expect(rows.find(({ row }) => row === "portion")).toMatchObject({
      amount: portion,
      unit: "mg",
      bound: "at-least",
    });
    expect(toRecords(s, { components: [taurine] }).length).toBe(rows.length);
    expect(difference(s, s.edit({ mussels: "100 g" })).components.map(({ component: id }) => id)).toContain(
      taurine,
    );
    expect(influence(s, taurine).lines[0]?.line).toBe("mussels");
    expect(citations(s, { components: [taurine] }).sources.map(({ kind }) => kind)).toContain("data");
    const plan = portionPlan({ meals: [{ id: "supper", dishes: { s } }], people: [{ id: "cox" }] });
    expect(plan.brings("cox", "supper", taurine).value.toString()).toBe(portion);
    expect(toRecords(plan).some(({ component: id }) => id === taurine)).toBe(true);
  });

  it("comes back from JSON, packed foods, values between commas and a workbook", () => {
    const again = openSheet(JSON.parse(JSON.stringify(s)));
    expect(JSON.stringify(again.portion(taurine))).toBe(JSON.stringify(s.portion(taurine)));
    expect(JSON.stringify(foodTable(JSON.parse(JSON.stringify(foods))))).toBe(JSON.stringify(foods));
    const csv = foodsToCsv(foods);
    expect(csv.split("\r\n")[0]).toContain("taurine (mg)");
    expect(foodsToCsv(foodsFromCsv(csv).foods)).toBe(csv);
    expect(foodsFromCsv(csv).foods.get("mussels").per100g[taurine]).toMatchObject({
      value: "655",
      error: "20",
    });
    const book = read(workbook(s), { type: "array" });
    const rows = utils.sheet_to_json<unknown[]>(book.Sheets.Pot ?? {}, { header: 1 });
    const column = rows.map((row) => row.indexOf("taurine, mg in 100 g")).find((at) => at >= 0) ?? -1;
    expect(rows.find(([label]) => label === "Batch: one portion")?.[column]).toBe(Number(portion));
  });

  it("makes no difference to whoever does not hold it, nor does the order in which several are met", () => {
    const other = ownComponent("ornithine", "mg");
    const both = (ids: readonly ComponentId[]) =>
      foodTable(
        ids.map((id, i) => ({ id: `f${i}`, name: `F${i}`, source: "own", per100g: { [id]: 5, energy: 9 } })),
      );
    const of = (table: ReturnType<typeof both>) =>
      toRecords(
        sheet({ name: "x", portions: 1, lines: table.ids.map((food) => ({ food, amount: "10 g" })) }, table),
      );
    const ids = (rows: ReturnType<typeof of>) => [...new Set(rows.map(({ component: id }) => id))];
    const [glycan, carnosine] = [ownComponent("glycan", "mg"), ownComponent("carnosine", "mg")];
    expect(ids(of(both([glycan, carnosine])))).toEqual(ids(of(both([carnosine, glycan]))));
    expect(ids(of(both([other])))).not.toContain(carnosine);
    expect(Object.keys(components)).not.toContain(taurine);
  });

  it("is refused where its name will not do, and a misspelt one of the registry stays one", () => {
    for (const [name, unit] of [
      ["", "mg"],
      ["a (b)", "mg"],
      ["iron", "mg"],
      ["FE", "mg"],
      ["TAU", "mg"],
      ["x", "IU"],
    ] as const)
      expect(errorOf(() => ownComponent(name, unit as "mg")).code).toBe("component-unknown");
    expect(errorOf(() => s.total("protien" as never)).hint).toContain("protein");
    expect(
      errorOf(() => foodTable([{ id: "a", name: "A", source: "s", per100g: { "taurine (IU)": 1 } as never }]))
        .code,
    ).toBe("component-unknown");
  });

  it("passes the JSON Schema of a food, as the reader does", () => {
    const check = new Ajv({ strict: false }).compile(foodJsonSchema as object);
    expect(check(written[0])).toBe(true);
    expect(check({ ...written[0], per100g: { "taurine (IU)": 1 } })).toBe(false);
  });
});
