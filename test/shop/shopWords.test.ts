import { describe, expect, it } from "vitest";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import type { LineInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import { type ShoppingList, shoppingList } from "../../src/shop/shoppingList.ts";
import { tablesOf } from "../../src/show/tabular.ts";

// What a shop counts, pours and weighs: common practice, no source.

const food = (id: string, name: string, more: Partial<FoodInput> = {}): FoodInput => {
  return { id, name, source: "made up", per100g: {}, ...more };
};
const own = foodTable([
  food("celery", "Celery, raw", { measures: [{ name: "medium stalk", grams: 40 }] }),
  food("tomatoes-tinned", "Tomatoes, canned, whole", {
    measures: [
      { name: "medium", grams: 111 },
      { name: "can", grams: 400 },
    ],
  }),
  food("tomatoes", "Tomatoes, raw", { measures: [{ name: "medium", grams: 123 }] }),
  food("soya", "Soya drink, unsweetened", { density: "1.03" }),
  food("powder", "Milk, dried, powder", { density: "0.5" }),
  food("heads", "Lettuce, raw", { measures: [{ name: "medium head", grams: 300 }] }),
]);
function list(lines: readonly LineInput[], foods = own): ShoppingList {
  return shoppingList(sheet({ name: "Dish", portions: 1, lines }, foods));
}
const buy = (id: string, amount: string): string => {
  const [table] = tablesOf(list([{ food: id, amount }]));
  const cell = table?.rows.flatMap((row) => (row.kind === "body" ? [row.cells[2]] : []))[0];
  return typeof cell === "string" ? cell : (cell?.text ?? "");
};

describe("a shopping list in the shop's words", () => {
  it("buys no tap water, and says how much there has to be", () => {
    const lines = [
      { food: "water-tap", amount: "29.8 kg" },
      { food: "oats-rolled-dry", amount: "1 kg" },
    ];
    const found = list(lines, starterFoods);
    const water = found.line("water-tap");
    expect([water.needed, water.fromCupboard, water.bought].map(String)).toEqual(["29800", "29800", "0"]);
    const [table] = tablesOf(found);
    expect(JSON.stringify(table?.rows)).not.toContain("Water");
    expect(table?.notes).toContain("from the tap, not bought: water, tap 29800 g");
    // Whoever has only so much of it buys the rest, as of everything else.
    const some = shoppingList(sheet({ name: "Dish", portions: 1, lines }, starterFoods), {
      cupboard: { "water-tap": "20 kg" },
    });
    expect(some.line("water-tap").bought.toString()).toBe("9800");
  });

  it("tells by volume what is sold so, and covers what is needed", () => {
    // 21400 g of 1.03 g/ml are 20776.7 ml.
    expect(buy("soya", "21.4 kg")).toBe("20.8 l");
    expect(buy("soya", "200 g")).toBe("200 ml");
    expect(buy("soya", "60 g")).toBe("60 ml");
    expect(buy("powder", "200 g")).toBe("200 g");
  });

  it("counts tins in tins, and pieces only where a shop does", () => {
    expect(buy("tomatoes-tinned", "11.2 kg")).toBe("11200 g (about 28 cans)");
    expect(buy("tomatoes", "500 g")).toBe("500 g (about 5 medium)");
    expect(buy("tomatoes", "11.2 kg")).toBe("11200 g");
    expect(buy("celery", "1.1 kg")).toBe("1100 g");
    expect(buy("heads", "600 g")).toBe("600 g (about 2 medium heads)");
    expect(buy("heads", "300 g")).toBe("300 g (about 1 medium head)");
  });
});
