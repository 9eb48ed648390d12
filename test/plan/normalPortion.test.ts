import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { recipe, revise, sheet, toRecipe } from "../../src/index.ts";
import { portionPlan } from "../../src/plan.ts";
import { errorOf } from "../number/errorOf.ts";

const lines = [{ key: "lentils", food: "lentils-boiled", amount: "600 g" }];
const soup = { name: "Soup", portions: 2, lines, cookedMass: "500 g", normalPortion: "250 g" };
const served = (factor: string) =>
  portionPlan({
    meals: [{ id: "supper", dishes: sheet(soup, starterFoods) }],
    people: [{ id: "cox", demands: { factor } }],
  }).portion("cox", "supper").sizes;

describe("a normal portion", () => {
  it("tells what multiple of it each person is served, and flags what is beyond double or under half", () => {
    expect(served("1").map(({ times, flag }) => [times.toString(), flag])).toEqual([["1", undefined]]);
    expect(served("2").map(({ flag }) => flag)).toEqual([undefined]);
    expect(served("2.1").map(({ flag, text }) => [flag, text])).toEqual([
      ["large", "2.1 times a normal portion of 250 g: more than double"],
    ]);
    expect(served("0.4").map(({ flag }) => flag)).toEqual(["small"]);
  });

  it("stays with the recipe, revised or written again, and says nothing where it is not told", () => {
    const s = sheet(soup, starterFoods);
    expect(toRecipe(revise(s, { name: "Broth" })).normalPortion).toBe("250 g");
    expect(recipe(JSON.parse(JSON.stringify(recipe(soup)))).normalPortion).toBe("250 g");
    const { normalPortion: _, ...plain } = soup;
    const plan = portionPlan({
      meals: [{ id: "supper", dishes: sheet(plain, starterFoods) }],
      people: [{ id: "cox" }],
    });
    expect(plan.portion("cox", "supper").sizes).toEqual([]);
  });

  it("is a mass above 0", () => {
    expect(errorOf(() => recipe({ ...soup, normalPortion: "2 cups" })).path).toEqual(["normalPortion"]);
    expect(errorOf(() => recipe({ ...soup, normalPortion: "0 g" })).message).toContain("normal portion");
  });
});
