import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { recipeFromText } from "../../src/interchange/recipeFromText.ts";
import { sheet } from "../../src/sheet/build.ts";
import { errorOf } from "../number/errorOf.ts";

const pot = `Lentil pot for the boathouse
Serves 6

Ingredients
- 400 g red lentils
- 2 onions, chopped
- 2-3 tbsp olive oil
- 1 can (400 g) tomatoes
- 1 tbsp gochujang
- salt to taste

Method
1. Fry the onions in the oil.
2. Add {all} else and simmer for 25 minutes.`;

describe("a recipe pasted whole", () => {
  const read = recipeFromText(pot, starterFoods, { measures: "metric" });

  it("gives its name, portions, lines and steps", () => {
    expect(read.recipe).toMatchObject({
      name: "Lentil pot for the boathouse",
      portions: "6",
      measures: "metric",
      lines: [
        { food: "lentils-red-dry", amount: "400 g" },
        { food: "onions-raw", amount: "2 medium", prep: "chopped" },
        { food: "olive-oil", amount: "2-3 tbsp" },
        { food: "tomatoes-canned", amount: "400 g" },
      ],
      method: ["Fry the onions in the oil.", "Add (all) else and simmer for 25 minutes."],
    });
  });

  it("makes a sheet", () => {
    expect(sheet(read.recipe ?? (undefined as never), starterFoods).lines).toHaveLength(4);
  });

  it("tells what is unclear, by its line, and keeps every line", () => {
    expect(read.lines.map(({ text }) => text)).toEqual(pot.split("\n").slice(4, 10));
    expect(read.unclear.map(({ code, path }) => [code, path])).toEqual([
      ["food-unknown", ["lines", 4, "food"]],
      ["amount-empty", ["lines", 5, "amounts"]],
    ]);
  });

  it("is settled by what its words mean", () => {
    const { recipe: settled } = recipeFromText(pot, starterFoods, {
      measures: "metric",
      means: { gochujang: "tomato-paste" },
    });
    expect(settled?.lines[4]).toMatchObject({ food: "tomato-paste", amount: "1 tbsp" });
    const error = errorOf(() => recipeFromText(pot, starterFoods, { means: { gochujang: "no-such" } }));
    expect([error.code, error.path]).toEqual(["food-unknown", ["means", "gochujang"]]);
  });

  it.each([
    ["Porridge for two\n80 g rolled oats\n300 ml milk", "Porridge for two", "2"],
    ["Lentil soup\n\n200 g red lentils\n1 litre water", "Lentil soup", undefined],
    ["Pancakes (serves 4)\n\n200 g flour", "Pancakes (serves 4)", "4"],
    ["Porridge for two\nServes 3\n80 g rolled oats", "Porridge for two", "3"],
  ])("has a title that stands apart, and portions where it tells them: %j", (text, name, portions) => {
    const titled = recipeFromText(text, starterFoods);
    expect(titled.lines.map(({ kind }) => kind)).not.toContain("no-amount");
    expect(recipeFromText(text, starterFoods, { portions: 9 }).recipe?.name).toBe(name);
    expect(titled.recipe?.portions).toBe(portions);
  });

  it("takes each food of a line that names several", () => {
    const two = recipeFromText(
      "Pot for two\n200 g rolled oats\n2 carrots and 1 onion\nsalt and pepper",
      starterFoods,
    );
    expect(two.recipe?.lines.map(({ food }) => food)).toEqual([
      "oats-rolled-dry",
      "carrots-raw",
      "onions-raw",
    ]);
    expect(two.unclear.map(({ message, path }) => [message, path])).toEqual([
      ['"salt" has no amount', ["lines", 2, "apart", 0, "amounts"]],
      ['"pepper" has no amount', ["lines", 2, "apart", 1, "amounts"]],
    ]);
  });

  it("asks for a name and portions that it does not say, and takes those given", () => {
    const bare = recipeFromText("200 g rolled oats\n400 ml milk", starterFoods);
    expect(bare.recipe).toBeUndefined();
    expect(bare.unclear.map(({ path }) => path)).toEqual([["name"], ["portions"]]);
    const named = recipeFromText("200 g rolled oats\n400 ml milk", starterFoods, {
      name: "Oats",
      portions: 2,
    });
    expect(named.recipe?.lines).toHaveLength(2);
    expect(named.unclear).toEqual([]);
  });

  it.each([
    ["Serves 4", "4"],
    ["Makes 12 rolls", "12"],
    ["4 servings", "4"],
    ["Yield: 2 loaves", "2"],
    ["For four people", "4"],
    ["Serves 4-6", undefined],
  ])("reads how many it makes: %s", (line, portions) => {
    expect(recipeFromText(`Oats\n${line}\n- 100 g rolled oats`, starterFoods).recipe?.portions).toBe(
      portions,
    );
  });

  it("is refused where it is no text", () => {
    expect(errorOf(() => recipeFromText({} as never, starterFoods)).code).toBe("format-malformed");
    expect(errorOf(() => recipeFromText("2 eggs", starterFoods, { portions: 0 })).path).toEqual(["portions"]);
  });
});
