import fc from "fast-check";
import type { ComponentId } from "../src/food/components.ts";
import type { Figure, FoodInput } from "../src/food/food.ts";
import { type FoodTable, foodTable } from "../src/food/table.ts";
import type { LineInput, RecipeInput } from "../src/recipe/document.ts";

/** Random foods and recipes for the properties: gaps, traces, limits and presumed zeros included. */

const decimal = (most: number, places: number): fc.Arbitrary<string> =>
  fc.integer({ min: 0, max: most * 10 ** places }).map((n) => (n / 10 ** places).toFixed(places));

const figure: fc.Arbitrary<Figure | undefined> = fc.oneof(
  { weight: 6, arbitrary: decimal(100, 3) },
  { weight: 2, arbitrary: fc.constant(undefined) },
  { weight: 1, arbitrary: fc.constant("trace" as const) },
  { weight: 1, arbitrary: decimal(5, 2).map((value) => ({ below: `${value}1` })) },
  { weight: 1, arbitrary: decimal(9, 1).map((value) => ({ value, borrowedFrom: "kin" })) },
);

/** Components that the properties look at: one of each kind of treatment. */
export const watched: readonly ComponentId[] = [
  "energy",
  "protein",
  "fat",
  "water",
  "sodium",
  "iron",
  "leucine",
  "vitaminB12",
];

export const arbitraryTable: fc.Arbitrary<FoodTable> = fc
  .array(fc.tuple(...watched.map(() => figure)), { minLength: 1, maxLength: 6 })
  .map((rows) =>
    foodTable(
      rows.map((row, i): FoodInput => {
        const per100g: { [C in ComponentId]?: Figure } = {};
        row.forEach((f, c) => {
          const id = watched[c];
          if (id && f !== undefined) per100g[id] = f;
        });
        return {
          id: `food-${i}`,
          name: `Food ${i}`,
          source: "made up for a test",
          origin: i % 2 === 0 ? "plant" : "animal",
          per100g,
        };
      }),
    ),
  );

const grams = fc.oneof(
  decimal(800, 1).map((g) => `${g}5 g`),
  fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 12 })).map(([n, d]) => `${n}/${d} oz`),
);

export interface Made {
  readonly table: FoodTable;
  readonly recipe: RecipeInput;
}

/** A recipe over a random table; `doses` are per-portion lines, and the first line is always held. */
export const arbitraryRecipe: fc.Arbitrary<Made> = arbitraryTable.chain((table) =>
  fc
    .record({
      portions: fc.integer({ min: 1, max: 12 }),
      lines: fc.array(
        fc.record({
          food: fc.constantFrom(...table.ids),
          amount: grams,
          scaling: fc.constantFrom(
            "held" as const,
            "held" as const,
            "adjustable" as const,
            "per-portion" as const,
          ),
          added: fc.constantFrom("cooking" as const, "cooking" as const, "serving" as const),
        }),
        { minLength: 1, maxLength: 7 },
      ),
      yieldFactor: fc.option(
        decimal(2, 2).map((f) => `${f}1`),
        { nil: undefined },
      ),
    })
    .map(({ portions, lines, yieldFactor }) => ({
      table,
      recipe: {
        name: "A dish",
        portions,
        lines: lines.map(
          (line, i): LineInput => ({
            ...line,
            key: `line-${i}`,
            ...(i === 0 ? { scaling: "held", added: "cooking" } : {}),
          }),
        ),
        ...(yieldFactor === undefined ? {} : { yieldFactor }),
      },
    })),
);

/** A factor above 0, often not a decimal. */
export const arbitraryFactor: fc.Arbitrary<string> = fc
  .tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }))
  .map(([n, d]) => `${n}/${d}`);
