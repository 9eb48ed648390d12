import { describe, expect, it } from "vitest";
import { type ComponentId, components, listedIds } from "../../src/food/components.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import type { WrittenAmount } from "../../src/recipe/document.ts";
import { type Axis, sweep } from "../../src/scale/sweep.ts";
import { between } from "../../src/sheet/between.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cellValue } from "../../src/sheet/columns.ts";
import { difference } from "../../src/sheet/difference.ts";
import { energyCheck } from "../../src/sheet/energyCheck.ts";
import { explain } from "../../src/sheet/explain.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import { revise } from "../../src/sheet/revise.ts";
import { toRecords } from "../../src/show/records.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const foods = foodTable([
  {
    id: "oats",
    name: "Oats",
    state: "dry",
    source: "table A",
    per100g: { energy: 400, protein: { value: 12, borrowedFrom: "groats" } },
  },
  {
    id: "milk",
    name: "Milk",
    source: "table B",
    density: "1.03",
    per100g: { energy: 60, protein: 3, iron: "trace" },
  },
  { id: "kelp", name: "Kelp", source: "table C", per100g: { iodine: { below: 5 } } },
]);
const bowl = sheet(
  {
    name: "Bowl",
    portions: 2,
    measures: "metric",
    method: ["Stir {oats} into {milk}."],
    lines: [
      { key: "oats", food: "oats", amount: "100 g", retention: { protein: "0.9" } },
      { key: "milk", food: "milk", amount: "1 cup" },
      { key: "kelp", food: "kelp", amount: "4 g", scaling: "per-portion" },
    ],
  },
  foods,
);

const code = (step: () => unknown): string => errorOf(step).code;

describe("explain", () => {
  it("goes from the portion down to written amounts, conversions, sources, loans and retention", () => {
    const why = explain(bowl, "protein", "portion");
    const [oats, milk, kelp] = why.from;
    expect(oats?.steps).toEqual([
      "100 g written",
      "100 g of edible portion",
      "12 g in 100 g: borrowed from groats: table A",
      "90% left after cooking, as the recipe says",
      "shared among 2 portions",
    ]);
    expect(oats?.label).toBe("oats: Oats, dry");
    expect(milk?.steps[1]).toBe("1.03 g to the ml, by its density");
    expect(milk?.steps[2]).toBe("257.5 g of edible portion"); // 250 ml × 1.03
    expect(kelp?.steps).toContain("nothing is known of it in table C");
    expect(why.steps).toEqual(["silent: kelp"]);
    const text = toText(why, { width: 200 });
    for (const word of ["protein of one portion of Bowl", "· oats: Oats, dry", "12 g in 100 g", "90% left"])
      expect(text).toContain(word);
  });

  it("names who stands behind a derived figure and what cooking leaves", () => {
    const s = sheet(
      {
        name: "Greens",
        portions: 1,
        lines: [
          { key: "spinach", food: "spinach-raw", amount: "100 g", retention: "3004" },
          { key: "milk", food: "milk-whole", amount: "244 g" },
          { key: "own", food: "own", amount: "10 g" },
        ],
      },
      starterFoods.with([
        {
          id: "own",
          name: "Own",
          source: "our weighing",
          per100g: { sodium: "400", fibre: { value: 3, derived: "by difference" } },
        },
      ]),
    );
    const why = (line: string, id: ComponentId): string => explain(s, id, { line }).steps.join("; ");
    expect(why("milk", "iodine")).toMatch(/85 \(39 to 185\) µg in 240 ml \(248 g\): .*retail milk/);
    expect(why("own", "salt")).toMatch(/derived: .* \(.+\), from figures of our weighing/);
    expect(why("own", "fibre")).toContain("derived: by difference: our weighing");
    // USDA Table of Nutrient Retention Factors, Release 6: greens, boiled, little water, drained.
    expect(why("spinach", "vitaminC")).toMatch(
      /60% left after cooking: code 3004, vegetables, greens.*Release 6/,
    );
  });

  it("says trace and below for what they are", () => {
    expect(explain(bowl, "iron", { line: "milk" }).steps.join()).toContain(
      "a trace, counted as none: table B",
    );
    expect(explain(bowl, "iodine", "total").from[2]?.steps.join()).toContain(
      "below 5 µg in 100 g, counted as none: table C",
    );
  });

  it("refuses what is not there", () => {
    expect(code(() => explain(bowl, "protien" as never, "total"))).toBe("component-unknown");
    expect(code(() => explain(bowl, "protein", { line: "oat" }))).toBe("line-unknown");
  });
});

describe("a sheet as text", () => {
  it("has a row or a note for every component that there is", () => {
    const [, figures] = tablesOf(bowl);
    const rows = new Set((figures?.rows ?? []).flatMap((row) => (row.kind === "body" ? [row.cells[0]] : [])));
    const note = figures?.notes?.find((each) => each.startsWith("nothing is known of: ")) ?? "";
    const absent = listedIds.filter((id) => !rows.has(components[id].name));
    expect(note).toBe(`nothing is known of: ${absent.map((id) => components[id].name).join(", ")}`);
    expect(absent).toEqual(listedIds.filter((id) => bowl.total(id).bound === "unknown"));
    expect(absent).toContain("biotin");
    expect(absent).not.toContain("iodine");
    expect(toText(bowl, { width: 400 } as never)).toContain(note.slice(0, 60));
  });
});

describe("what is handed in as a sheet", () => {
  it.each([
    ["difference", () => difference(bowl, {} as never), "after"],
    ["difference from nothing", () => difference(undefined as never, bowl), "before"],
    ["revise", () => revise({} as never, {}), "sheet"],
    ["toRecipe", () => toRecipe(null as never), "sheet"],
    ["between", () => between({} as never, "iron"), "sheet"],
    ["energyCheck", () => energyCheck([] as never), "sheet"],
  ])("has to be one: %s", (_, step, path) => {
    const error = errorOf(step);
    expect([error.code, error.path]).toEqual(["sheet-malformed", [path]]);
    expect(error.hint).toContain("sheet(recipe, foods)");
  });

  it("is made with options that there are", () => {
    const of = (how: unknown) => errorOf(() => sheet(toRecipe(bowl), foods, how as never));
    expect([of({ recipe: {} }).code, of({ recipe: {} }).hint]).toEqual([
      "sheet-malformed",
      "did you mean recipes?",
    ]);
    expect(of({ recipes: [] }).path).toEqual(["recipes"]);
    expect(of(null).hint).toContain("recipes");
  });

  it("is asked for rows that there are", () => {
    const [where, row] = [
      errorOf(() => explain(bowl, "protein", "bogus" as never)),
      errorOf(() => cellValue(bowl, "protein", "bogus" as never)),
    ];
    expect([where.code, where.path, row.code, row.path]).toEqual([
      ...["line-unknown", ["where"]],
      ...["line-unknown", ["row"]],
    ]);
    expect(code(() => explain(bowl, "protein", null as never))).toBe("line-unknown");
    expect(where.hint).toContain('"portion"');
  });
});

describe("edit", () => {
  it("tells every fault at once, each by its line", () => {
    const { faults } = errorOf(() => bowl.edit({ oats: "x", milk: "3-2 g", zz: "1 g" }));
    expect(faults.map((f) => [f.code, f.path])).toEqual([
      ["amount-no-number", ["oats"]],
      ["amount-range", ["milk"]],
      ["line-unknown", ["zz"]],
    ]);
  });

  it.each([null, undefined, "oats", 5, ["1 g"]])("refuses %s, which is no set of amounts", (given) => {
    const error = errorOf(() => bowl.edit(given as never));
    expect([error.code, error.hint]).toEqual(["amount-malformed", expect.stringContaining("by line key")]);
  });
});

describe("revise", () => {
  it("say what to do where a line goes that the method names", () => {
    const written = {
      name: "Oats",
      portions: 1,
      lines: [
        { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
        { key: "salt", food: "salt", amount: "1 g" },
      ],
      method: ["Simmer {oats} with {salt}."],
    };
    const oats = sheet(written, starterFoods);
    const error = errorOf(() => revise(oats, { remove: ["salt"] }));
    expect([error.code, error.path]).toEqual(["method-unknown-line", ["method", 0]]);
    expect(error.hint).toContain("change the method too");
    expect(revise(oats, { remove: ["salt"], method: ["Simmer {oats}."] }).lines).toHaveLength(1);
    // Of a method that was given with the changes, its own hint is enough.
    const other = errorOf(() => revise(oats, { remove: ["salt"], method: ["Salt with {salt}."] }));
    expect(other.hint).not.toContain("change the method too");
  });

  it("swaps, removes, adds, orders and changes the rest in one step", () => {
    const next = revise(bowl, {
      swap: { milk: "oats" },
      remove: ["kelp"],
      add: [{ key: "more", food: "milk", amount: "50 ml", before: "oats" }],
      amounts: { milk: "30 g" },
      order: ["milk"],
      portions: 3,
      yieldFactor: "0.9",
    });
    expect(next.lines.map((l) => `${l.key} ${l.food} ${l.grams}`)).toEqual([
      "milk oats 30",
      "more milk 51.5",
      "oats oats 100",
    ]);
    expect(next.portions.toString()).toBe("3");
    expect(next.mass.cooked.toString()).toBe("163.35"); // 181.5 × 0.9
    expect(revise(next, { yieldFactor: null }).mass.cooked.toString()).toBe("181.5");
    expect(bowl.lines.map((l) => l.key)).toEqual(["oats", "milk", "kelp"]);
  });

  it("reads spoons and cups anew by other measures", () => {
    expect(revise(bowl, { measures: "us-label" }).lines[1]?.grams.toString()).toBe("247.2"); // 240 ml × 1.03
  });

  it.each([
    [{ bogus: 1 }, "bogus", /use amounts/],
    [{ portion: 3 }, "portion", /portions/],
    [{ scaling: { oats: "held" } }, "scaling", /use amounts/],
    [null, "", /object of amounts/],
    [5, "", /object of amounts/],
    [{ amounts: "1 g" }, "amounts", /oats: "80 g"/],
    [{ remove: "oats" }, "remove", /list of the keys of lines/],
    [{ order: [1] }, "order.0", /text/],
    [{ add: [null] }, "add.0", /give a line/],
  ])("refuses the change %j", (changes, path, hint) => {
    const error = errorOf(() => revise(bowl, changes as never));
    expect([error.code, error.path.join(".")]).toEqual(["recipe-malformed", path]);
    expect(error.hint).toMatch(hint);
  });

  it("tells unknown lines, foods and amounts in one error", () => {
    const changes = { remove: ["x"], swap: { milk: "cream" }, amounts: { oats: "3-2 g" } };
    expect(errorOf(() => revise(bowl, changes)).faults.map((f) => f.code)).toEqual([
      "line-unknown",
      "amount-range",
      "food-unknown",
    ]);
  });

  it("refuses lines that are not there, and a method that would name none, all at once", () => {
    expect(code(() => revise(bowl, { remove: ["salt"], order: ["x"] }))).toBe("line-unknown");
    expect(code(() => revise(bowl, { remove: ["milk"] }))).toBe("method-unknown-line");
    expect(code(() => revise(bowl, { swap: { milk: "cream" } }))).toBe("food-unknown");
    expect(revise(bowl, { remove: ["milk"], method: ["Stir {oats}."] }).lines.length).toBe(2);
  });

  it("keeps what is written in amounts that did not move", () => {
    expect(revise(bowl, { portions: 4 }).lines[1]?.amount.unit).toBe("cup");
  });
});

describe("difference", () => {
  it("tells lines added, removed, swapped and moved, in grams of a portion", () => {
    const next = revise(bowl, {
      swap: { milk: "oats" },
      remove: ["kelp"],
      add: [{ key: "new", food: "milk", amount: "10 g" }],
      amounts: { oats: "80 g", milk: "30 g" },
    });
    const moved = difference(bowl, next);
    expect(moved.lines.map((l) => [l.key, l.change, l.by.toString()])).toEqual([
      ["oats", "moved", "-10"],
      ["milk", "swapped", "-113.75"],
      ["kelp", "removed", "-2"],
      ["new", "added", "5"],
    ]);
    const energy = moved.components.find((c) => c.component === "energy");
    // Oats that lose 1.2 g of protein have 395.2 kcal: 80 × 3.952 + 30 × 4 + 10 × 0.6 = 442.16 from
    // 395.2 + 154.5 = 549.7 with kelp silent; of a portion, at most 53.77 less.
    expect([energy?.change.value.toString(), energy?.change.bound]).toEqual(["-53.77", "at-most"]);
    expect(toText(moved)).toContain("at most -53.7");
  });
});

describe("a change of a component", () => {
  const plate = sheet(
    {
      name: "Plate",
      portions: 1,
      lines: [
        { key: "oats", food: "oats", amount: "100 g" },
        { key: "kelp", food: "kelp", amount: "5 g" },
      ],
    },
    foods,
  );
  const energy = (after: typeof plate, from = plate): unknown[] => {
    const { components: all } = difference(from, after);
    const change = all.find((c) => c.component === "energy")?.change;
    return [change?.value.toString(), change?.bound, change?.missing];
  };

  it("is exact where the silent line stayed: it cancels", () => {
    // Kelp is silent on energy; 50 g of oats at 400 kcal in 100 g are 200 kcal.
    expect(energy(plate.edit({ oats: "150 g" }))).toEqual(["200", "point", []]);
    expect(energy(revise(plate, { amounts: { oats: "50 g" } }))).toEqual(["-200", "point", []]);
  });

  it("is bounded by the silent lines that moved, and unknown where nothing else did", () => {
    expect(energy(plate.edit({ oats: "150 g", kelp: "8 g" }))).toEqual(["200", "at-least", ["kelp"]]);
    expect(energy(plate.edit({ oats: "50 g", kelp: "2 g" }))).toEqual(["-200", "at-most", ["kelp"]]);
    expect(energy(plate.edit({ oats: "150 g", kelp: "2 g" }))).toEqual(["200", "at-most", ["kelp"]]);
    expect(energy(plate.edit({ kelp: "2 g" }))).toEqual(["0", "unknown", ["kelp"]]);
    expect(energy(revise(plate, { swap: { kelp: "milk" } }))).toEqual(["3", "at-most", ["kelp"]]);
  });
});

describe("sweep", () => {
  it("makes a grid over an amount and a target, in tidy records", () => {
    const s = sheet(
      {
        name: "P",
        portions: 1,
        lines: [
          { key: "o", food: "oats-rolled-dry", amount: "50 g" },
          { key: "m", food: "milk-whole", amount: "100 g" },
        ],
      },
      starterFoods,
    );
    const grid = sweep(
      s,
      [
        { line: "m", amounts: ["100 g", "200 g"] },
        { target: "energy", values: ["300 kcal", 600] },
      ],
      { components: ["protein", "iodine"] },
    );
    expect(
      grid.points.map((p) => [p.at.m, p.at.energy, p.sheet?.portion("energy").value.toString()]),
    ).toEqual([
      ["100 g", "300 kcal", "300"],
      ["100 g", "600", "600"],
      ["200 g", "300 kcal", "300"],
      ["200 g", "600", "600"],
    ]);
    const records = toRecords(grid);
    expect(records.length).toBe(8);
    expect(records[1]).toMatchObject({ component: "iodine", unit: "µg", bound: "at-least", silent: "o" });
    expect(records.map((r) => [r.at_m, r.at_energy])[2]).toEqual([100, 600]);
    expect(records.every((r) => r.status === "reached")).toBe(true);
    expect(toText(grid)).toContain("no iodine data: oats");
  });

  it("keeps a point that cannot be reached, with the reason", () => {
    const grid = sweep(bowl, [{ target: "mass", values: [1, 100] }]);
    expect(grid.points.map((p) => p.missed?.code)).toEqual(["target-unreachable", undefined]);
    expect(toText(grid)).toContain("target-unreachable");
    const rows = toRecords(grid).filter((r) => r.component === "energy");
    expect(rows.map((r) => [r.at_mass, r.status])).toEqual([
      [1, "target-unreachable"],
      [100, "reached"],
    ]);
    expect(rows[0]).toMatchObject({ amount: null, unit: "kcal", bound: "unknown" });
  });

  it("gives what nothing is known of no amount in its records", () => {
    const grid = sweep(bowl, [{ target: "factor", values: [1] }], { components: ["alcohol", "iron"] });
    expect(toRecords(grid).map((r) => [r.amount, r.bound])).toEqual([
      [null, "unknown"],
      [0, "at-least"],
    ]);
  });

  it("stands on an axis of amounts in the unit of the first, where they have one scale", () => {
    const at = (amounts: readonly WrittenAmount[]): unknown[] =>
      toRecords(sweep(bowl, [{ line: "milk", amounts }], { components: ["energy"] })).map((r) => r.at_milk);
    expect(at(["100 ml", { value: "1/2", unit: "cup" }])).toEqual([100, 125]); // a metric cup, 250 ml
    expect(at([{ value: 0.5, unit: "kg" }, "100 g"])).toEqual([0.5, 0.1]);
    expect(at(["100 g", "100 ml"])).toEqual(["100 g", "100 ml"]);
  });

  it("is refused beyond the points that are allowed, and not begun", () => {
    const axes: readonly Axis[] = [
      { target: "factor", values: Array.from({ length: 400 }, (_, i) => i + 1) },
      { target: "portions", values: Array.from({ length: 400 }, (_, i) => i + 1) },
    ];
    const { code, message, hint } = errorOf(() => sweep(bowl, axes));
    expect(code).toBe("sweep-malformed");
    expect(message).toContain("a grid of 160000 points, and 10000 at most");
    expect(hint).toContain("most");
    const two = { target: "factor", values: [1, 2] } as const;
    expect(errorOf(() => sweep(bowl, [two], { most: 1 })).code).toBe("sweep-malformed");
    expect(sweep(bowl, [two], { most: 2 }).points).toHaveLength(2);
  });

  it.each([
    ["null", null, ["axes"]],
    ["an axis of null", [null], [0]],
    ["an axis without amounts", [{ line: "oats" }], [0, "amounts"]],
    ["an amount of null", [{ line: "oats", amounts: ["1 g", null] }], [0, "amounts", 1]],
    ["a value of null", [{ target: "energy", values: [null] }], [0, "values", 0]],
    ["a line that there is not", [{ line: "otas", amounts: ["1 g"] }], [0, "line"]],
    ["a target that there is not", [{ target: "enregy", values: [1] }], [0, "target"]],
  ])("of %s is refused, in place", (_, axes, path) => {
    expect(errorOf(() => sweep(bowl, axes as never)).path).toEqual(path);
  });

  it.each([
    [{ silent: "yes" }, ["how", "silent"]],
    [{ silnet: "accept" }, ["how", "silnet"]],
    [{ components: "energy" }, ["how", "components"]],
    [{ components: ["enregy"] }, ["how", "components", 0]],
    [{ most: 0 }, ["how", "most"]],
    [null, ["how"]],
  ])("with options %j is refused, in place", (how, path) => {
    const axes = [{ target: "factor", values: [1] }] as const;
    expect(errorOf(() => sweep(bowl, axes, how as never)).path).toEqual(path);
  });

  it.each([
    ["no axis", []],
    [
      "three axes",
      [
        { target: "factor", values: [1] },
        { target: "portions", values: [1] },
        { line: "oats", amounts: ["1 g"] },
      ],
    ],
    [
      "an axis twice",
      [
        { target: "energy", values: [1] },
        { target: "energy", values: [2] },
      ],
    ],
    [
      "two targets",
      [
        { target: "energy", values: [1] },
        { target: "mass", values: [2] },
      ],
    ],
    ["nothing on it", [{ target: "energy", values: [] }]],
  ])("refuses %s", (_, axes) => {
    expect(code(() => sweep(bowl, axes as never))).toBe("sweep-malformed");
  });
});
