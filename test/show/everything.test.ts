import { from } from "arquero";
import { describe, expect, it } from "vitest";
import { components, isComponentId } from "../../src/food/components.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { exact, over } from "../../src/number/exact.ts";
import { withColumn, withRow } from "../../src/sheet/columns.ts";
import { explain } from "../../src/sheet/explain.ts";
import type { LibraryResult } from "../../src/show/makers.ts";
import type { TidyRecord } from "../../src/show/records.ts";
import { tablesOf, tidyFrom } from "../../src/show/tabular.ts";
import * as face from "../everything.ts";
import { errorOf } from "../number/errorOf.ts";

/** Presumed and derived figures, silent lines, a range, a nested recipe, a yield, a dose, columns and rows of one's own. */
const dal = {
  name: "Dal",
  portions: 2,
  lines: [
    { key: "lentils", food: "lentils-boiled", amount: "180 g" },
    { key: "spinach", food: "spinach-raw", amount: "60 g", retention: "3004" },
  ],
};
const bowl = withRow(
  withColumn(
    withColumn(
      face.sheet(
        {
          name: "Camp bowl",
          portions: 3,
          yieldFactor: "0.95",
          measures: "metric",
          lines: [
            { key: "rice", food: "rice-brown-long-boiled", amount: "450 g", part: "grain" },
            { key: "dal", recipe: "dal", amount: "1 batch", scaling: "adjustable" },
            { key: "honey", food: "honey", amount: "1 1/2 tbsp", added: "serving" },
            { key: "kelp", food: "kelp-raw", amount: "1 g", scaling: "per-portion" },
          ],
        },
        starterFoods,
        { recipes: { dal } },
      ),
      "proteinPerKcal",
      (at) => at.get("protein").over(at.get("energy")),
    ),
    "broken",
    (at) => at.get("nowhere"),
  ),
  "half",
  (at) => at.total().over(2),
);
const larger = face.scale(bowl, { factor: "3/2" }).sheet;
const plain = face.sheet(
  {
    name: "Beans and rice",
    portions: 3,
    lines: [
      { key: "rice", food: "rice-brown-long-boiled", amount: "200 g" },
      { key: "beans", food: "kidney-beans-red-boiled", amount: "150 g", scaling: "adjustable" },
    ],
  },
  starterFoods,
);
const lightweight: face.Person = { sex: "female", age: 24, mass: "57 kg", conditions: ["kidney-disease"] };
const plan = face.portionPlan({
  meals: [{ id: "supper", name: "Supper", dishes: bowl }],
  people: [
    { id: "cox", name: "Cox", person: lightweight, demands: [{ of: "energy", exactly: 400 }] },
    { id: "stroke", name: "Stroke", demands: [{ of: "energy", exactly: 700 }], avoid: ["milk"] },
    { id: "bow", name: "Bow", demands: { factor: 1 }, away: ["supper"] },
  ],
  kitchen: "metric",
  authority: "eu",
});
const missed = [
  { of: "mass", most: 1 },
  { of: "energy", least: 900 },
] as const;

type Result = LibraryResult;
const results: readonly (readonly [string, Result])[] = [
  ["a sheet", bowl],
  ["an explanation", explain(bowl, "iron", "portion")],
  ["an uncertainty", face.uncertainty(bowl, "iron", "portion")],
  ["a difference", face.difference(bowl, face.revise(larger, { remove: ["honey"] }))],
  ["a sweep", face.sweep(plain, [{ target: "energy", values: [300, "1000/3"] }])],
  ["a cooking balance", face.cooking(bowl)],
  ["an energy check", face.energyCheck(bowl)],
  [
    "a fit",
    face.fit(plain, [
      { of: "protein", least: "12 g" },
      { energyShareOf: "fat", most: "30 %" },
    ]),
  ],
  ["a fit of several", face.fit({ bowl, plain }, [{ of: "protein", least: "20 g" }])],
  ["a fit out of reach", face.fit(plain, missed)],
  ["a rounding", face.roundToKitchen(larger, "metric", { demands: [{ of: "energy", exactly: 600 }] })],
  ["substitutes", face.substitutes(plain, "beans")],
  ["a comparison", face.compare(bowl, face.referenceIntakes("eu", lightweight))],
  ["doses", face.doseCheck(bowl, face.referenceIntakes("eu", lightweight))],
  ["allergens", face.allergensOf(bowl)],
  ["what people avoid", plan.avoided],
  ["protein quality", face.proteinQuality(plain)],
  ["a plan", plan],
  ["a schedule", face.cookingSchedule(plan)],
  ["a shopping list", face.shoppingList(plan)],
  [
    "a difference of shopping lists",
    face.shoppingDifference(face.shoppingList(plain), face.shoppingList(plan)),
  ],
  [
    "a difference of plans",
    face.planDifference(
      plan,
      face.portionPlan({
        meals: [{ id: "supper", name: "Supper", dishes: bowl }],
        people: [{ id: "cox", name: "Cox", demands: { factor: 2 } }],
      }),
    ),
  ],
] as readonly (readonly [string, Result])[];

const COLUMNS = [
  ...["sheet", "person", "day", "meal", "dish", "line", "food", "row", "what", "component", "amount"],
  ...["unit", "bound", "least", "most", "coverage", "marks", "silent", "source"],
];

/** Whether a record is about what a row of a table is headed by; every record is, where no name is known. */
function isAbout({ component, line, name, label }: TidyRecord, heading: string): boolean {
  const parts = (component ?? "").split("+").map((id) => (isComponentId(id) ? components[id].name : id));
  const isNamed = [parts.join(" and "), label].some((each) => each !== "" && heading === each);
  // A line's name is shown with its state behind it.
  return isNamed || [line, name].some((each) => typeof each === "string" && heading.startsWith(each));
}

const isNumber = (value: unknown): value is string =>
  typeof value === "string" && /^-?\d[\d./]*$/.test(value);

/** Every exact figure of some records, as text in one form. */
function figuresIn(records: readonly TidyRecord[]): Set<string> {
  return new Set(
    records.flatMap((r) =>
      Object.values(r)
        .filter(isNumber)
        .map((v) => exactText(exact(v))),
    ),
  );
}

describe("the records of", () => {
  it.each(results)("%s hold every figure that its tables show", (_, result) => {
    const records = face.toRecords(result, { figures: "exact" });
    const all = figuresIn(records);
    const lost: string[] = [];
    for (const t of tablesOf(result))
      for (const row of t.rows) {
        if (row.kind === "group") continue;
        const [first] = row.cells;
        const heading = typeof first === "string" ? first : "";
        const own = records.filter((r) => isAbout(r, heading));
        const known = own.length > 0 ? figuresIn(own) : all;
        for (const [i, cell] of row.cells.entries()) {
          if (typeof cell === "string") continue;
          const at = `${t.title}: ${heading}: ${t.columns[i]?.key}: ${cell.text}`;
          if (cell.value === null) {
            const about = own.length > 0 ? own : records;
            if (!about.some(({ amount }) => amount === null)) lost.push(at);
            continue;
          }
          const value = exact(cell.value);
          const said = [value, over(value, exact(100))].map(exactText);
          if (!said.some((text) => known.has(text))) lost.push(at);
        }
      }
    expect(lost).toEqual([]);
  });

  it.each(results)(
    "%s have the columns of all, figures with units and bounds, and keys without spaces",
    (_, result) => {
      const records = face.toRecords(result);
      expect(records.length).toBeGreaterThan(0);
      for (const record of records) {
        const keys = Object.keys(record);
        expect(keys.slice(0, COLUMNS.length)).toEqual(COLUMNS);
        expect(keys).toEqual(Object.keys(records[0] as object));
        expect(keys.filter((key) => /\s/.test(key))).toEqual([]);
        const { amount, unit, bound, component } = record;
        if (amount !== null) expect([typeof unit, typeof bound]).toEqual(["string", "string"]);
        if (bound === "point") expect([record.least, record.most]).toEqual([amount, amount]);
        if (bound === "unknown" && component !== null)
          expect(amount === null || record.what === "share-of-known").toBe(true);
      }
    },
  );

  it.each(results)("%s have a column for all that a row says of its own", (_, result) => {
    const { own, rows } = tidyFrom(result, {}) ?? { own: [], rows: [] };
    for (const row of rows)
      for (const said of [row.own, row.head?.own])
        expect(Object.keys(said ?? {}).filter((column) => !own.includes(column))).toEqual([]);
  });

  it("a sweep give the ends of a mass, too", () => {
    const swept = face.sweep(plain, [{ target: "energy", values: [300] }]);
    const [mass] = face.toRecords(swept, { components: ["mass"], figures: "exact" });
    expect([mass?.least, mass?.most]).toEqual([mass?.amount, mass?.amount]);
  });

  // arquero is a general library of data frames: a column for each key, a row for each record, nothing turned.
  it.each(results)("%s go into a data frame and come back", (_, result) => {
    const records = face.toRecords(result);
    expect(from([...records]).objects()).toEqual(records);
  });

  it.each(results)("%s are picked by component, and a name that nothing has is refused", (_, result) => {
    const some = face.toRecords(result, { components: ["energy"] });
    expect(some).toEqual(face.toRecords(result).filter(({ component }) => component === "energy"));
    const error = errorOf(() => face.toRecords(result, { components: ["energy", "enrgy"] }));
    expect([error.code, error.path]).toEqual(["component-unknown", ["components", 1]]);
  });
});
