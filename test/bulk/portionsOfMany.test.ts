/** Columns of many recipes held against a sheet of each: the sheet is exact, and knows every rule. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { oatPot, seedTopping } from "../../examples/recipes.ts";
import { boundCodes } from "../../src/bulk/columns.ts";
import { markCodes, portionsOfMany, type RecipeColumns } from "../../src/bulk/portionsOfMany.ts";
import { usdaRetention } from "../../src/food/data/retentionUsdaR6.ts";
import { starterFoods } from "../../src/foods.ts";
import type { LineInput, RecipeInput } from "../../src/recipe/document.ts";
import { recipe } from "../../src/recipe/recipe.ts";
import type { Quantity } from "../../src/scale/demand.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { arbitraryRecipe, watched } from "../arbitraries.ts";
import { runs } from "../runs.ts";
import { standsFor } from "./close.ts";

const asked: readonly Quantity[] = [...watched, "iodine", "selenium", "mass"];

function wrong({ columns }: RecipeColumns, i: number, s: Sheet): string[] {
  return asked.flatMap((of): string[] => {
    const { value, least, most, bound, marks, coverage } = columns[of];
    if (of === "mass") return standsFor(value[i] as number, s.portionMass) ? [] : ["mass"];
    const tally = s.portion(of);
    const figures = [
      [value, tally.bound === "unknown" ? undefined : tally.value],
      [least, tally.least],
      [most, tally.most],
      [coverage, tally.coverage],
    ] as const;
    const said = markCodes.filter((_, k) => ((marks[i] as number) >> k) & 1);
    const [here, there] = [
      [boundCodes[bound[i] as number], ...said].join(" "),
      [tally.bound, ...markCodes.filter((kind) => tally[kind].length > 0)].join(" "),
    ];
    return [
      ...figures.flatMap(([column, figure], k) =>
        standsFor(column[i] as number, figure) ? [] : [`${of} ${k}: ${column[i]}, not ${figure}`],
      ),
      ...(here === there ? [] : [`${of}: ${here}, not ${there}`]),
    ];
  });
}

describe("portions of many recipes", () => {
  it("are those of sheets, to 1e-12, with bounds and marks literally", () => {
    fc.assert(
      fc.property(arbitraryRecipe, ({ recipe: made, table }) => {
        const [columns] = portionsOfMany([made], table, asked);
        expect(wrong(columns as RecipeColumns, 0, sheet(made, table))).toEqual([]);
      }),
      { numRuns: runs(40) },
    );
  });

  const foods = starterFoods.withRetention(usdaRetention);
  const ids = starterFoods.ids.filter((id) => (starterFoods.get(id).measures?.length ?? 0) > 0);
  const line: fc.Arbitrary<LineInput> = fc
    .record({
      food: fc.constantFrom(...ids),
      tenths: fc.integer({ min: 0, max: 4000 }),
      unit: fc.constantFrom("g", "oz", "kg", "own"),
      added: fc.constantFrom("cooking" as const, "serving" as const),
      retention: fc.constantFrom(undefined, "3004", { vitaminC: "0.4", water: "0.9" }),
      left: fc.constantFrom(undefined, undefined, "0.7", "2.2"),
    })
    .map(({ food, tenths, unit, added, retention, left }) => {
      const own = starterFoods.get(food).measures?.[0]?.name;
      const amount = `${tenths / 10} ${unit === "own" ? own : unit}`;
      const cooked = { ...(retention && { retention }), ...(left && { yieldFactor: left }) };
      return { food, amount, added, ...(added === "cooking" ? cooked : {}) };
    });
  const document: fc.Arbitrary<RecipeInput> = fc
    .record({
      portions: fc.integer({ min: 1, max: 9 }),
      lines: fc.array(line, { minLength: 1, maxLength: 12 }),
      yieldFactor: fc.constantFrom(undefined, "0.2", "0.8", "1.4"),
    })
    .map(({ lines, yieldFactor, portions }) => ({
      name: "Dish",
      portions,
      measures: "us" as const,
      lines: lines.map((each, i) => ({ ...each, key: `line-${i}` })),
      ...(yieldFactor === undefined ? {} : { yieldFactor }),
    }));

  it("are those of sheets of starter foods, cooked and in their own measures", () => {
    fc.assert(
      fc.property(fc.array(document, { minLength: 1, maxLength: 5 }), (documents) => {
        const slices = [...portionsOfMany(documents, foods, asked, { slice: 2 })];
        documents.forEach((each, i) => {
          const columns = slices.find(({ from, length }) => i >= from && i < from + length) as RecipeColumns;
          expect(wrong(columns, i - columns.from, sheet(each, foods))).toEqual([]);
        });
      }),
      { numRuns: runs(12) },
    );
  });

  it("take nested recipes, weighed pots and read documents as well", () => {
    const recipes = { "seed-topping": seedTopping };
    const [columns] = portionsOfMany([oatPot, recipe(oatPot)], starterFoods, asked, { recipes });
    const s = sheet(oatPot, starterFoods, { recipes });
    for (const i of [0, 1]) expect(wrong(columns as RecipeColumns, i, s)).toEqual([]);
    expect(columns?.names).toEqual(["Oat pot", "Oat pot"]);
  });

  it("tells which recipe is at fault, and where", () => {
    const bad = {
      ...oatPot,
      lines: [
        { food: "oats-rolled-dry", amount: "10 g" },
        { food: "oets", amount: "1 g" },
      ],
    };
    const { cookedMass: _, method: __, ...plain } = bad;
    expect(() => [...portionsOfMany([seedTopping, plain], starterFoods, asked)]).toThrow(
      expect.objectContaining({ code: "food-unknown", path: [1, "lines", 1, "food"] }),
    );
  });

  it("takes recipes one by one, and keeps a slice of them", () => {
    let taken = 0;
    function* endless(): Generator<RecipeInput> {
      for (;;) {
        taken += 1;
        yield { name: `${taken}`, portions: 1, lines: [{ food: "oats-rolled-dry", amount: `${taken} g` }] };
      }
    }
    const made = portionsOfMany(endless(), starterFoods, ["energy"], { slice: 5 });
    expect(made.next().value?.columns.energy.value.length).toBe(5);
    expect(made.next().value?.names.at(-1)).toBe("10");
    expect(taken).toBe(10);
    made.return(undefined);
  });
});
