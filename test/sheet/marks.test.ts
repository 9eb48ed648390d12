import { describe, expect, it } from "vitest";
import { markKinds } from "../../src/food/figure.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cooking } from "../../src/sheet/cooking.ts";
import { explain } from "../../src/sheet/explain.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toRecords } from "../../src/show/records.ts";
import type { Table } from "../../src/show/table.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { tallyFigure } from "../../src/show/tallyFigure.ts";

const food = (id: string, per100g: FoodInput["per100g"]): FoodInput => ({
  ...{ id, name: id, source: `table of ${id}`, per100g },
});
const one = (figure: Figure, retention?: Record<string, string> | string): Sheet =>
  sheet(
    {
      name: "One",
      portions: 1,
      lines: [{ key: "a", food: "a", amount: "100 g", ...(retention !== undefined && { retention }) }],
    },
    foodTable([food("a", { iron: figure, protein: "10" })]),
  );

/** Of each kind one figure that says so, and what a tally of it says. */
const says: readonly (readonly [Figure, readonly string[]])[] = [
  ["4", []],
  ["trace", ["trace"]],
  [{ below: "1" }, ["below"]],
  [{ value: "4", borrowedFrom: "b" }, ["borrowed"]],
  [{ value: "4", calculated: "by recipe" }, ["calculated"]],
  [{ value: "4", derived: "a + b" }, ["derived"]],
  [{ value: "0", presumed: true }, ["presumed"]],
  [{ value: "4", low: "1", high: "9" }, ["ranged"]],
  [{ value: "4", borrowedFrom: "b", calculated: "by solids" }, ["borrowed", "calculated"]],
  [
    { value: "4", derived: "a + b", calculated: "of recipes", presumed: true },
    ["calculated", "derived", "presumed"],
  ],
];

const kindsOf = (s: Sheet): readonly string[] => markKinds.filter((kind) => s.total("iron")[kind].length > 0);

describe("marks", () => {
  it("are one list: a tally has each of them, and so has its data", () => {
    const tally = one("4").total("iron");
    for (const kind of markKinds) expect([kind, tally[kind]]).toEqual([kind, []]);
    const data = Object.keys(tally.toJSON());
    expect(markKinds.filter((kind) => !data.includes(kind))).toEqual([]);
  });

  it("say all that a figure says of itself", () => {
    for (const [figure, kinds] of says) {
      const s = one(figure);
      expect([figure, kindsOf(s)]).toEqual([figure, kinds]);
      const data = s.total("iron").toJSON();
      for (const kind of kinds) expect(data[kind as "derived"]).toEqual(["a"]);
    }
  });

  it("are read back from a food's own data, and unknown words in them refused", () => {
    expect(
      explain(one({ value: "4", calculated: "by recipe" }), "iron", "total").leaves[0]?.steps.join(),
    ).toContain("calculated: by recipe: table of a");
    expect(() => one({ value: "4", calculated: true } as never)).toThrow(/calculated|text/);
  });
});

describe("a figure that went through a retention factor", () => {
  const kept = (figure: Figure, left = "0.8"): readonly string[] => kindsOf(one(figure, { iron: left }));

  it("is derived, whatever else it is", () => {
    expect(kept("4")).toEqual(["derived"]);
    for (const [figure, kinds] of says
      .slice(3)
      .filter(([, kinds]) => !kinds.includes("presumed") || kinds.length > 1))
      expect([figure, kept(figure)]).toEqual([
        figure,
        markKinds.filter((k) => k === "derived" || kinds.includes(k)),
      ]);
    expect(kept({ below: "1" })).toEqual(["below", "derived"]);
  });

  it("is not where nothing goes: of a zero, of what stays whole, of a trace or a gap", () => {
    expect(kept("4", "1")).toEqual([]);
    expect(kept("0")).toEqual([]);
    expect(kept({ value: "0", presumed: true })).toEqual(["presumed"]);
    expect(kept("trace")).toEqual(["trace"]);
    expect(one("4", { calcium: "0.5" }).total("calcium").derived).toEqual([]);
    expect(one("4", { iron: "0.5" }).total("protein").derived).toEqual([]);
  });

  // USDA Table of Nutrient Retention Factors, Release 6 (2007), code 3004: greens, boiled; 95 % of iron.
  const greens = sheet(
    {
      name: "Greens",
      portions: 2,
      yieldFactor: "0.9",
      lines: [
        { key: "spinach", food: "spinach-raw", amount: "200 g", retention: "3004" },
        { key: "oil", food: "olive-oil", amount: "10 g", added: "serving" },
      ],
    },
    starterFoods,
  );
  const plate = sheet(
    { name: "Plate", portions: 1, lines: [{ key: "greens", recipe: "greens", amount: "1 portion" }] },
    starterFoods,
    { recipes: { greens: greens.origin } },
  );

  it("says so in the cell, the batch, a portion, 100 g and around a nested recipe", () => {
    for (const tally of [
      greens.cell("spinach", "iron"),
      greens.total("iron"),
      greens.portion("iron"),
      greens.per100g("iron"),
    ])
      expect(tally.derived).toEqual(["spinach"]);
    expect(plate.total("iron").derived).toEqual(["greens/spinach"]);
    expect(greens.total("iron").plus(greens.total("iron")).derived).toEqual(["spinach"]);
    expect(greens.total("iron").toJSON()).toMatchObject({ bound: "point", derived: ["spinach"] });
  });

  it("is marked in tables, in records and in JSON", () => {
    expect(tallyFigure(greens.portion("iron"))).toMatchObject({
      tone: "derived",
      text: expect.stringMatching(/ d$/),
    });
    const why = tablesOf(explain(greens, "iron", "total"))[0] as Table;
    expect(why.notes.filter((note) => note.startsWith("d:"))).toHaveLength(1);
    expect(toRecords(tablesOf(greens)).find(({ component }) => component === "iron")).toMatchObject({
      marks: "d",
    });
    expect(JSON.stringify(greens.total("iron"))).toContain('"derived":["spinach"]');
  });

  it("makes no storm: one letter a row of figures, and one note for each letter", () => {
    for (const t of [tablesOf(greens)[1], tablesOf(cooking(greens))[0]] as Table[]) {
      const figures = t.rows.flatMap((row) => (row.kind === "group" ? [] : row.cells.slice(0, -1)));
      for (const cell of figures) expect(typeof cell === "string" ? cell : cell.text).not.toMatch(/ [bcdp]$/);
      expect(t.notes.filter((note) => /^[bcdpt]: /.test(note)).length).toBeLessThanOrEqual(5);
      expect(t.notes.filter((note) => note.startsWith("d: "))).toHaveLength(1);
    }
  });

  it("was not before it went through", () => {
    const { raw, retained, lost } = cooking(greens).of("vitaminC");
    expect([raw.derived, retained.derived, lost.derived]).toEqual([[], ["spinach"], ["spinach"]]);
    const line = cooking(greens).line("spinach", "iron");
    expect([line.raw.derived, line.retained.derived]).toEqual([[], ["spinach"]]);
    const whole = sheet(
      { ...greens.origin, yieldFactor: 1, lines: [{ food: "spinach-raw", amount: "200 g" }] },
      starterFoods,
    );
    expect(raw.value.toString()).toBe(whole.total("vitaminC").value.toString());
  });

  it("is told of water too, which follows the yield", () => {
    expect(greens.total("water").derived).toEqual(["spinach"]);
    expect(greens.cell("spinach", "water").derived).toEqual([]);
    expect(sheet({ ...greens.origin, yieldFactor: 1 }, starterFoods).total("water").derived).toEqual([]);
    expect(plate.total("water").derived).toEqual(["greens/spinach"]);
  });
});
