/** Columns held against sheets, figure by figure: the sheet is exact, and made one portion at a time. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { oatPot, seedTopping } from "../../examples/recipes.ts";
import { boundCodes, type PortionColumns, statusCodes } from "../../src/bulk/columns.ts";
import { portionsAt, type Targets } from "../../src/bulk/portionsAt.ts";
import { markKinds } from "../../src/food/figure.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { exact } from "../../src/number/exact.ts";
import type { Quantity } from "../../src/scale/demand.ts";
import { fit } from "../../src/scale/fit.ts";
import { splitOf } from "../../src/scale/linear.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText } from "../../src/show/text.ts";
import { arbitraryRecipe, watched } from "../arbitraries.ts";
import { isLong, met, runs } from "../runs.ts";
import { standsFor } from "./close.ts";

const asked: readonly Quantity[] = [...watched, "mass"];

/** What is wrong with a row, held against the sheet that it stands for; undefined stands for out of reach. */
function wrong(columns: PortionColumns, i: number, s: Sheet | undefined): string[] {
  const status = statusCodes[columns.status[i] as number];
  if (status !== (s ? "reached" : "out-of-reach")) return [`row ${i} is ${status}`];
  return asked.flatMap((of) => {
    const column = columns.columns[of];
    const bound = boundCodes[column.bound[i] as number];
    const ends = [column.value[i], column.least[i], column.most[i]] as number[];
    if (!s) return bound === "unknown" && ends.every(Number.isNaN) ? [] : [`${of} of what is out of reach`];
    if (of === "mass") return standsFor(ends[0] as number, s.portionMass) ? [] : ["mass"];
    const tally = s.portion(of);
    const figures = [tally.bound === "unknown" ? undefined : tally.value, tally.least, tally.most];
    const off = figures.flatMap((figure, k) =>
      standsFor(ends[k] as number, figure) ? [] : [`${of} ${k}: ${ends[k]}, not ${figure}`],
    );
    const marks = column.marks[column.marksOf?.[i] ?? 0];
    const unsaid = markKinds.filter((kind) => String(marks?.[kind]) !== String(tally[kind]));
    return [
      ...off,
      ...(bound === tally.bound ? [] : [`${of} is ${bound}, not ${tally.bound}`]),
      ...unsaid.map((kind) => `${of}: ${kind} are ${marks?.[kind]}, not ${tally[kind]}`),
    ];
  });
}

function scaled(s: Sheet, of: Quantity | "factor", target: number): Sheet | undefined {
  try {
    return scale(s, { [of]: target }, { silent: "accept" }).sheet;
  } catch (error) {
    if (error instanceof SteelyardError && error.code === "target-unreachable") return undefined;
    if (target <= 0) return undefined;
    throw error;
  }
}

/** Targets of all sizes, with some right at what the doses alone bring. */
function targetsFor(s: Sheet, of: Quantity | "factor", drawn: readonly number[]): number[] {
  const fixed = of === "factor" ? 0 : splitOf(s, of).fixed.toNumber();
  return drawn.map((size, k) =>
    k % 3 === 0 ? fixed * (1 + size * 1e-9) : k % 3 === 1 ? size : fixed + size,
  );
}

describe("portions at a target", () => {
  it("are those of sheets, to 1e-12, with bounds and silences literally", () => {
    let pairs = 0;
    const rows = isLong ? Math.ceil(10_000 / runs(84)) : 4;
    const sizes = fc.array(fc.double({ min: 1e-9, max: 900, noNaN: true }), {
      minLength: rows,
      maxLength: rows,
    });
    fc.assert(
      fc.property(arbitraryRecipe, fc.constantFrom(...asked, "factor" as const), sizes, (made, of, drawn) => {
        const s = sheet(made.recipe, made.table);
        const targets = targetsFor(s, of, drawn);
        const columns = portionsAt(s, { [of]: Float64Array.from(targets) }, asked, { silent: "accept" });
        targets.forEach((target, i) => {
          expect(wrong(columns, i, scaled(s, of, target))).toEqual([]);
          pairs += 1;
        });
      }),
      { numRuns: runs(84) },
    );
    expect(pairs).toBeGreaterThanOrEqual(isLong ? 10_000 : 4 * runs(84));
  });

  const foods = foodTable([
    {
      id: "fish",
      name: "Fish",
      source: "made up for a test",
      per100g: {
        energy: { value: 90, low: 80, high: 99.5 },
        protein: { value: "18", low: "17.5", high: "18.2" },
        fat: { value: 2, low: 0 },
        water: { value: 78, low: 70, high: 80 },
        iron: { below: "0.2" },
        sodium: "trace",
      },
    },
    {
      id: "rice",
      name: "Rice",
      source: "made up for a test",
      per100g: { energy: 350, protein: 7, water: 12, fat: 1 },
    },
    {
      id: "oil",
      name: "Oil",
      source: "made up for a test",
      per100g: { energy: 884, protein: 0, fat: 100, water: 0 },
    },
  ]);
  const stock = {
    name: "Stock",
    portions: 1,
    yieldFactor: "0.8",
    lines: [{ food: "fish", amount: "300 g" }],
  };
  const cases: readonly (readonly [string, Sheet])[] = [
    ["the oat pot", sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } })],
    ...["0.95", "0.6", "0.45", "0.2"].map((yieldFactor) => {
      const lines = [
        { food: "fish", amount: "120 g" },
        { food: "rice", amount: "80 g", scaling: "per-portion" as const },
        { food: "oil", amount: "10 g" },
        { recipe: stock, amount: "50 g" },
      ];
      return [
        `a pot that keeps ${yieldFactor}`,
        sheet({ name: "Pot", portions: 2, yieldFactor, lines }, foods),
      ] as const;
    }),
  ];
  const around = [...Array(30).keys()].map((k) => 0.03 * 1.35 ** k);

  it.each(cases)("pass every turn that a figure takes, of %s", (_, s) => {
    for (const of of ["factor", "energy", "water", "mass"] as const) {
      const targets =
        of === "factor" ? around : around.map((by) => by * 100 + splitOf(s, of).fixed.toNumber());
      const columns = portionsAt(s, { [of]: Float64Array.from(targets) }, asked, { silent: "accept" });
      targets.forEach((target, i) => {
        expect(wrong(columns, i, scaled(s, of, target))).toEqual([]);
      });
    }
  });

  it("are exact right at a turn", () => {
    // 60 g of fish in the pot lose half: beyond 78 % of water at no factor, and doses of rice keep some.
    const pot = cases.at(-2)?.[1] as Sheet;
    const lost = pot.scaled(exact(1), pot.portions);
    expect(lost.masses.change.n < 0n).toBe(true);
    const turn = turnOf(pot);
    const near = [turn, turn * (1 + 1e-13), turn * (1 - 1e-13), turn * 1.01, turn * 0.99];
    const columns = portionsAt(pot, { factor: Float64Array.from(near) }, asked);
    near.forEach((target, i) => {
      expect(wrong(columns, i, scaled(pot, "factor", target))).toEqual([]);
    });
    expect(columns.columns.water.marks.length).toBe(2);
  });

  it("stand for nothing where there is no target", () => {
    const s = cases[0]?.[1] as Sheet;
    const { status, factor } = portionsAt(s, { energy: Float64Array.of(Number.NaN, 600, Infinity, -3) }, [
      "iron",
    ]);
    expect([...status].map((code) => statusCodes[code])).toEqual([
      "no-target",
      "reached",
      "no-target",
      "out-of-reach",
    ]);
    expect([...factor].map(Number.isNaN)).toEqual([true, false, true, true]);
  });
});

/** The factor at which the pot is known to hold no water any more: between two that differ in it, by halving. */
function turnOf(s: Sheet): number {
  const isDried = (by: number): boolean => s.scaled(exact(by), s.portions).water.beyond.n !== 0n;
  let [low, high] = [0.01, 100];
  expect(isDried(low)).not.toBe(isDried(high));
  for (let k = 0; k < 60; k += 1) {
    const middle = (low + high) / 2;
    if (isDried(middle) === isDried(low)) low = middle;
    else high = middle;
  }
  return low;
}

describe("portions at several targets", () => {
  const bowl = sheet(
    {
      name: "Rice, tofu and greens",
      portions: 2,
      lines: [
        { key: "rice", food: "rice-white-long-boiled", amount: "300 g" },
        { key: "tofu", food: "tofu-firm", amount: "200 g", scaling: "adjustable" },
        { key: "oil", food: "olive-oil", amount: "15 g", scaling: "adjustable", most: "20 g" },
        { key: "spinach", food: "spinach-raw", amount: "150 g", part: "greens" },
        { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion" },
      ],
    },
    starterFoods,
  );
  const fitted = (targets: { readonly [of: string]: number }): Sheet | undefined => {
    const demands = Object.entries(targets).map(([of, exactly]) => ({ of: of as Quantity, exactly }));
    const result = fit(bowl, demands);
    return result.status === "met" ? result.sheet : undefined;
  };
  const draw = (seed: number) => (low: number, high: number, k: number) =>
    low + (high - low) * ((Math.abs(Math.sin(seed + k * 12.9898)) * 43758.5453) % 1);

  it.each([
    ["two", { energy: [250, 900], protein: [8, 40] }],
    ["three", { energy: [300, 800], protein: [10, 35], fat: [6, 30] }],
  ] as const)("are those of fits: %s of them", (_, ranges) => {
    const count = Math.max(40, runs(40));
    const columns = Object.fromEntries(
      Object.entries(ranges).map(([of, [low, high]], d) => [
        of,
        Float64Array.from({ length: count }, (_, k) => draw(d + 1)(low, high, k)),
      ]),
    );
    const made = portionsAt(bowl, columns as Targets, asked);
    let reached = 0;
    for (let i = 0; i < count; i += 1) {
      const targets = Object.fromEntries(Object.entries(columns).map(([of, all]) => [of, all[i] as number]));
      const s = fitted(targets);
      if (s) reached += 1;
      expect(wrong(made, i, s)).toEqual([]);
    }
    expect(reached).toBeGreaterThan(met(3));
  });

  it("take few solutions, and none for rows that follow others", () => {
    const count = 20_000;
    const energy = Float64Array.from({ length: count }, (_, k) => draw(1)(250, 900, k));
    const protein = energy.map((kcal, k) => kcal * draw(2)(0.03, 0.055, k));
    const made = portionsAt(bowl, { energy, protein }, ["iron"]);
    expect(made.solved).toBeLessThan(60);
  });

  it("are the same whatever the slices", () => {
    const energy = Float64Array.from({ length: 500 }, (_, k) => draw(1)(250, 900, k));
    const protein = Float64Array.from({ length: 500 }, (_, k) => draw(2)(8, 40, k));
    const whole = portionsAt(bowl, { energy, protein }, asked);
    for (let from = 0; from < 500; from += 77) {
      const part = portionsAt(
        bowl,
        { energy: energy.subarray(from, from + 77), protein: protein.subarray(from, from + 77) },
        asked,
      );
      expect(part.status).toEqual(whole.status.slice(from, from + 77));
      for (const { component, value, bound } of Object.values(part.columns)) {
        const all = whole.columns[component];
        expect(value).toEqual(all.value.slice(from, from + 77));
        expect(bound).toEqual(all.bound.slice(from, from + 77));
      }
    }
  });
});

describe("targets", () => {
  const s = sheet(
    { name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
    starterFoods,
  );
  const one = Float64Array.of(1);
  it.each([
    ["target-malformed", {}, ["iron"]],
    ["target-malformed", { energy: [1] }, ["iron"]],
    ["target-malformed", { enrgy: one }, ["iron"]],
    ["target-malformed", { energy: one, protein: Float64Array.of(1, 2) }, ["iron"]],
    ["target-malformed", { energy: one, factor: one }, ["iron"]],
    ["component-unknown", { energy: one }, ["irn"]],
    ["target-silent", { iodine: one }, ["iron"]],
  ])("are refused with %s: %j", (code, targets, components) => {
    expect(() => portionsAt(s, targets as Targets, components as Quantity[])).toThrow(
      expect.objectContaining({ code }),
    );
  });
});

describe("columns", () => {
  const s = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });
  const columns = portionsAt(s, { energy: Float64Array.of(0, 450, 900) }, ["iron", "iodine"], {
    silent: "accept",
  });

  it("show their rows as a table, and say how many more there are", () => {
    const text = toText(columns);
    expect(text).toMatch(/^1 +0\.797 +3\.39 +at least 103$/m);
    expect(text).toContain("out of reach");
    expect(toText(columns, { rows: 1 })).toContain("2 more rows");
  });

  it("are plain data to a clone", () => {
    expect(structuredClone(columns)).toEqual({ ...columns });
  });
});
