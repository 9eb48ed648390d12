import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ComponentId, componentIds } from "../../src/food/components.ts";
import { readFigure } from "../../src/food/composition.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { foodFromLabel } from "../../src/food/label.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { type Between, type BetweenOptions, between } from "../../src/sheet/between.ts";
import { sheet } from "../../src/sheet/build.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const food = (id: string, iron?: Figure, more: Partial<FoodInput> = {}): FoodInput => ({
  ...{ id, name: id, state: "raw", group: "greens", source: "test" },
  per100g: iron === undefined ? {} : { iron },
  ...more,
});
const dish = (...lines: readonly (readonly [string, number])[]): RecipeInput => ({
  name: "dish",
  portions: 2,
  lines: lines.map(([id, grams]) => ({ food: id, amount: `${grams} g` })),
});
const ends = ({ least, most }: Between): string[] => [exactText(least), most ? exactText(most) : "no limit"];

const foods = foodTable([
  food("silent"),
  food("low", 1),
  food("high", 5),
  food("wide", { value: 3, low: 2, high: 7 }),
  food("trace", "trace"),
  food("limit", { below: 4 }),
  food("borrowed", { value: 90, borrowedFrom: "elsewhere" }),
  food("cooked", 50, { state: "cooked" }),
  food("bean", 60, { group: "pulses" }),
  food("alone", undefined, { group: "fruit" }),
  { id: "unplaced", name: "unplaced", source: "test", per100g: {} },
]);
const iron = (recipe: RecipeInput, how?: BetweenOptions): Between =>
  between(sheet(recipe, foods), "iron", how);

describe("between", () => {
  it("takes a silent line to lie among like foods: its group and state, and what they know themselves", () => {
    // low 1, high 5, wide 2 to 7, limit 0 to 4; borrowed, cooked, of another group and traces do not count.
    const range = iron(dish(["silent", 100], ["low", 200]));
    expect(ends(range)).toEqual(["2", "9"]);
    expect(range.widened).toMatchObject([
      { key: "silent", why: "silent", like: ["low", "high", "wide", "limit"] },
    ]);
    expect(range.unlimited).toEqual([]);
  });

  it("widens figures by the interval they carry, and traces by the most of like foods", () => {
    expect(ends(iron(dish(["wide", 100])))).toEqual(["2", "7"]);
    expect(iron(dish(["wide", 100])).widened[0]).toMatchObject({ why: "interval", like: [] });
    expect(ends(iron(dish(["limit", 100])))).toEqual(["0", "4"]);
    expect(ends(iron(dish(["trace", 100])))).toEqual(["0", "7"]);
    expect(iron(dish(["trace", 100], ["limit", 100])).widened.map((l) => l.why)).toEqual(["trace", "limit"]);
  });

  it("keeps a trace down to nothing, whatever like foods hold at least, and heeds nothing borrowed", () => {
    const pair = foodTable([
      food("trace", "trace"),
      food("low", 1),
      food("high", 5),
      food("salted", undefined, { per100g: { salt: { value: 9, borrowedFrom: "elsewhere" } } }),
      food("saltless", undefined, { per100g: {} }),
      food("a", undefined, { per100g: { salt: 1 } }),
    ]);
    expect(ends(between(sheet(dish(["trace", 100]), pair), "iron"))).toEqual(["0", "5"]);
    // Sodium of `salted` would follow from a salt that was borrowed: only `a`, 1 g × 400, counts.
    const range = between(sheet(dish(["saltless", 100]), pair), "sodium");
    expect([...ends(range), range.widened[0]?.like]).toEqual(["400", "400", ["a"]]);
  });

  it("has no upper end where nothing limits a line, and names it", () => {
    const range = iron(dish(["alone", 100], ["low", 100]));
    expect(ends(range)).toEqual(["1", "no limit"]);
    expect([range.most, range.unlimited]).toEqual([undefined, ["alone"]]);
    expect(iron(dish(["unplaced", 100])).unlimited).toEqual(["unplaced"]);
  });

  it("is exact where all is known, borrowed figures as they stand", () => {
    expect(iron(dish(["low", 100], ["borrowed", 100]))).toMatchObject({ widened: [], unlimited: [] });
    expect(ends(iron(dish(["low", 100], ["borrowed", 100])))).toEqual(["91", "91"]);
  });

  it("asks of the batch, a portion or 100 g, and of foods that the caller names", () => {
    const recipe = dish(["silent", 50]);
    expect(ends(iron(recipe))).toEqual(["0", "3.5"]);
    expect(ends(iron(recipe, { where: "portion" }))).toEqual(["0", "1.75"]);
    expect(ends(iron(recipe, { where: "per100g" }))).toEqual(["0", "7"]);
    expect(ends(iron(recipe, { like: () => ["bean", "high"] }))).toEqual(["2.5", "30"]);
    expect(errorOf(() => iron(recipe, { like: () => ["nobody"] })).code).toBe("food-unknown");
    const holed = ["bean"];
    holed.length = 2;
    expect(errorOf(() => iron(recipe, { like: () => holed }))).toMatchObject({ path: ["like", 1] });
    class Likeness {}
    for (const like of [Likeness, "bean", Symbol("bean"), new Likeness(), ["bean"]])
      expect(errorOf(() => iron(recipe, { like: like as never }))).toMatchObject({
        code: "sheet-malformed",
        path: ["like"],
      });
    expect(errorOf(() => iron(dish(["silent", 0]), { where: "per100g" })).code).toBe("sheet-empty");
    expect(errorOf(() => between(sheet(recipe, foods), "mithril" as ComponentId)).code).toBe(
      "component-unknown",
    );
  });

  it("counts what cooking leaves, in nested dishes too", () => {
    const inner: RecipeInput = {
      name: "pot",
      portions: 1,
      yieldFactor: "0.5",
      lines: [{ food: "silent", amount: "100 g", retention: { iron: "0.8" } }],
    };
    const outer: RecipeInput = {
      name: "plate",
      portions: 1,
      lines: [{ recipe: inner, key: "pot", amount: "25 g", retention: { iron: "0.5" } }],
    };
    const range = iron(outer);
    // Half of the 50 g left of 100 g, 0.8 and then 0.5 of 0 to 7.
    expect(ends(range)).toEqual(["0", "1.4"]);
    expect(range.widened[0]).toMatchObject({ key: "pot/silent", why: "silent" });
  });

  it("carries the rounding of a label through", () => {
    const bar = foodFromLabel({
      id: "bar",
      name: "Bar",
      style: "us",
      per: "30 g",
      figures: { protein: "24 g", sugars: 0 },
    });
    const s = sheet(
      { name: "r", portions: 1, lines: [{ food: "bar", amount: "1 serving" }] },
      foodTable([bar]),
    );
    expect(ends(between(s, "protein"))).toEqual(["23.5", "24.5"]);
    expect(ends(between(s, "sugars"))).toEqual(["0", "0.5"]);
  });

  it("moves water with the pot", () => {
    const wet = foodTable([{ ...food("a"), per100g: { water: { value: 50, low: 40, high: 60 } } }]);
    const s = sheet(
      { name: "r", portions: 1, yieldFactor: "1.5", lines: [{ food: "a", amount: "100 g" }] },
      wet,
    );
    expect(ends(between(s, "water"))).toEqual(["90", "110"]);
  });
});

describe("between, as a property", () => {
  const raw = starterFoods.ids.filter(
    (id) => starterFoods.get(id).group === "vegetables" && starterFoods.get(id).state === "raw",
  );
  const some = fc.uniqueArray(fc.tuple(fc.constantFrom(...raw), fc.integer({ min: 1, max: 900 })), {
    minLength: 1,
    maxLength: 5,
    selector: ([id]) => id,
  });
  const component = fc.constantFrom(...componentIds.filter((id) => id !== "energy"));

  it("holds whatever the silent lines turn out to be, if they are like other foods", () => {
    fc.assert(
      fc.property(
        some,
        component,
        fc.array(fc.nat(1000), { minLength: 5, maxLength: 5 }),
        (lines, id, picks) => {
          const [[first = ""] = []] = lines;
          const { [id]: _, ...rest } = starterFoods.get(first).per100g;
          const hidden = starterFoods.with([{ ...starterFoods.get(first), per100g: rest }]);
          const s = sheet(dish(...lines), hidden);
          const range = between(s, id);
          const silent = range.widened.filter((line) => line.why === "silent");
          const filled = hidden.with(
            silent.flatMap(({ key, like }, i) => {
              const lender = like[(picks[i] ?? 0) % Math.max(1, like.length)];
              if (lender === undefined) return [];
              const { value } = readFigure(hidden.get(lender), id);
              const line = hidden.get(key);
              return [{ ...line, per100g: { ...line.per100g, [id]: exactText(value) } }];
            }),
          );
          const full = sheet(dish(...lines), filled).total(id).value;
          expect([id, compareRatios(range.least, full) <= 0]).toEqual([id, true]);
          if (range.most) expect([id, compareRatios(full, range.most) <= 0]).toEqual([id, true]);
        },
      ),
      { numRuns: runs(200) },
    );
  });

  it("is the total itself where nothing widens it", () => {
    fc.assert(
      fc.property(some, component, (lines, id) => {
        const s = sheet(dish(...lines), starterFoods);
        const range = between(s, id);
        if (range.widened.length > 0) return;
        expect([id, ...ends(range)]).toEqual([
          id,
          exactText(s.total(id).value),
          exactText(s.total(id).value),
        ]);
      }),
      { numRuns: runs(100) },
    );
  });
});
