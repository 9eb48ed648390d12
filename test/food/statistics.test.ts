import { describe, expect, it } from "vitest";
import { compose, readFigure } from "../../src/food/composition.ts";
import { shareOfFigure } from "../../src/food/figure.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { openSheet, recipe, sheet } from "../../src/index.ts";
import { exactText } from "../../src/number/digits.ts";
import { Exact, exact } from "../../src/number/exact.ts";
import { errorOf } from "../number/errorOf.ts";

const iron = {
  value: "4.25",
  error: "0.17",
  count: 9,
  least: "3.62",
  most: "5.04",
  sourceCode: "1 A",
  source: "own analysis",
} satisfies Figure;
const oats: FoodInput = { id: "oats", name: "Oats", source: "made up", per100g: { iron } };
const withIron = (more: object): FoodInput[] => [{ ...oats, per100g: { iron: { value: 4, ...more } } }];

/** Exact numbers as their text. */
const told = (figure: object): object =>
  Object.fromEntries(Object.entries(figure).map(([k, v]) => [k, v instanceof Exact ? exactText(v) : v]));

describe("what a source tells of how good a figure is", () => {
  it("is kept as written, in a table and what it writes of itself", () => {
    const table = foodTable([oats]);
    expect(table.get("oats").per100g.iron).toEqual(iron);
    const again = foodTable(JSON.parse(JSON.stringify(table)));
    expect(again.get("oats").per100g.iron).toEqual(iron);
  });

  it("is kept by a stored sheet", () => {
    const made = sheet(
      recipe({ name: "Porridge", portions: 1, lines: [{ food: "oats", amount: "40 g" }] }),
      foodTable([oats]),
    );
    const opened = openSheet(JSON.parse(JSON.stringify(made)));
    expect(opened.plan.foods.get("oats").per100g.iron).toEqual(iron);
  });

  it("comes with the figure that sums are made of", () => {
    const figure = readFigure(oats, "iron");
    expect(told(figure)).toEqual({
      kind: "known",
      value: "4.25",
      low: "4.25",
      high: "4.25",
      note: "own analysis",
      error: "0.17",
      count: 9,
      least: "3.62",
      most: "5.04",
      sourceCode: "1 A",
    });
    expect(compose(oats).figures.filter(({ error }) => error !== undefined)).toEqual([figure]);
  });

  it("shrinks with what is left of the figure, the count and the code staying", () => {
    expect(told(shareOfFigure(readFigure(oats, "iron"), exact("1/2")))).toMatchObject({
      value: "2.125",
      error: "0.085",
      least: "1.81",
      most: "2.52",
      count: 9,
      sourceCode: "1 A",
    });
  });

  it("is refused where it cannot be", () => {
    const fault = (more: object) =>
      errorOf(() => foodTable(withIron(more))).faults.map(
        ({ path, message }) => `${path.join(".")}: ${message}`,
      );
    expect(fault({ error: -1 })).toEqual(['0.per100g.iron.error: "-1" is below 0']);
    expect(fault({ count: 0 })).toEqual([
      "0.per100g.iron.count: expected a whole number of 1 or more, got 0",
    ]);
    expect(fault({ least: 3, most: "2.5" })).toEqual([
      "0.per100g.iron.least: the least found is above the most",
    ]);
  });
});
