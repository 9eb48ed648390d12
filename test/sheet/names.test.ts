import { describe, expect, it } from "vitest";
import { britishEnglish } from "../../src/document/language.ts";
import { starterFoods } from "../../src/foods.ts";
import { sheet } from "../../src/sheet/build.ts";
import { inSentence, lineNameIn } from "../../src/sheet/names.ts";
import { stated } from "../../src/sheet/stated.ts";

describe("names of foods", () => {
  it("stand in a sentence without their capital, but for places and capitals, and in English alone", () => {
    const said = ["Oats, rolled", "Greek yoghurt", "MCT oil", "Brussels sprouts", "eggs", "Ähren"];
    expect(said.map((name) => inSentence(name, britishEnglish))).toEqual([
      ...["oats, rolled", "Greek yoghurt", "MCT oil", "Brussels sprouts", "eggs", "ähren"],
    ]);
    expect(inSentence("Linsen", { ...britishEnglish, tag: "de" })).toBe("Linsen");
  });

  it("tell starter foods apart with their state, as short as they are", () => {
    const names = [...starterFoods].map(({ kitchenName, name, state }) => stated(kitchenName ?? name, state));
    expect(names.filter((name, i) => names.indexOf(name) < i)).toEqual([]);
    expect(names.join()).not.toContain("as sold");
    expect(stated("Rice, boiled", "cooked")).toBe("Rice, boiled");
    expect(stated("Oats", "dry")).toBe("Oats, dry");
  });

  it("are what a line within a nested recipe is called by", () => {
    const topping = {
      name: "Topping",
      portions: 1,
      lines: [{ key: "h", food: "hemp-seeds-hulled", amount: "9 g" }],
    };
    const pot = sheet(
      { name: "Pot", portions: 1, lines: [{ key: "top", recipe: "topping", amount: "9 g" }] },
      starterFoods,
      { recipes: { topping } },
    );
    expect(lineNameIn(pot, "top/h", britishEnglish)).toBe("Hemp seeds");
    expect(lineNameIn(pot, "nowhere/atAll", britishEnglish)).toBe("at all");
  });
});
