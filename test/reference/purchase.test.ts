import { describe, expect, it } from "vitest";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText, fixedText } from "../../src/number/digits.ts";
import { type Exact, exact, minus, over, times, ZERO } from "../../src/number/exact.ts";
import { floor } from "../../src/number/ratio.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { type ShoppingList, shoppingList } from "../../src/shop/shoppingList.ts";

/** Published purchase quantities. READ: figures read in the published text; derived: its last step is ours. */

const pound = exact("453.59237");
const ounce = over(pound, exact(16));

const sold = (about: Partial<FoodInput>): FoodInput => ({
  id: "x",
  name: "x",
  source: "what is eaten of it only",
  per100g: {},
  ...about,
});
const recipeOf = (about: Partial<FoodInput>, amount: string, portions = 1): Sheet =>
  sheet(
    { name: "Card", portions, lines: [{ food: "x", amount, scaling: "held" }] },
    foodTable([sold(about)]),
  );
const asPurchased = (list: ShoppingList): Exact => list.lines[0]?.asPurchased ?? ZERO;
const packs = (list: ShoppingList): (string | undefined)[] =>
  list.lines.map((line) => line.packs[0]?.count.toString());

describe("edible portion to as purchased", () => {
  it("B1 green pepper, 82 % edible, AP = EP / yield: 1 lb EP is 1.2195 lb AP (yield and rule READ, figure derived)", () => {
    const list = shoppingList(recipeOf({ edibleShare: "0.82" }, "1 lb"));
    expect(fixedText(over(asPurchased(list), pound), 4)).toBe("1.2195");
  });

  it("B2 ProStart level 1, chapter 4: 10 lb of potatoes at 80 % are 8 lb, 128 oz, 42 portions of 3 oz (READ)", () => {
    const potatoes = foodTable([sold({ edibleShare: "0.8" })]);
    const s = sheet(
      { name: "Card", portions: 1, lines: [{ food: "x", amount: "10 lb", weighed: "as-purchased" }] },
      potatoes,
    );
    const list = shoppingList(s);
    const edible = list.lines[0]?.needed ?? ZERO;
    expect(exactText(over(edible, pound))).toBe("8");
    expect(exactText(over(edible, ounce))).toBe("128");
    const portions = over(edible, times(ounce, exact(3)));
    expect(fixedText(portions, 2)).toBe("42.67");
    expect(floor(portions)).toBe(42n);
    expect(exactText(over(asPurchased(list), pound))).toBe("10");
  });

  it("B2, same deck: five portions of 3 oz of green beans at 88 % are 15 oz EP, 17.05 oz AP (READ, last step derived)", () => {
    const one = recipeOf({ edibleShare: "0.88" }, "3 oz");
    const list = shoppingList(scale(one, { portions: 5 }).sheet);
    expect(exactText(over(list.lines[0]?.needed ?? ZERO, ounce))).toBe("15");
    expect(fixedText(over(asPurchased(list), ounce), 2)).toBe("17.05");
  });

  it("B2, same deck: orders are rounded up, 3.4 lb to 4 lb (READ)", () => {
    const byThePound = { packs: [{ name: "1 lb", edible: exactText(pound) }] };
    expect(packs(shoppingList(recipeOf(byThePound, "3.4 lb")))).toEqual(["4"]);
  });
});

describe("B3 USDA Food Buying Guide for Child Nutrition Programs: units per 100 servings × servings / 100 × size needed / size listed", () => {
  /** A serving of the listed size in grams: any mass will do, for it cancels out. */
  const serving = 37;

  it("corn, vacuum packed, 3.0 cans per 100 servings of 1/4 cup: 460 servings of 1/2 cup are 27.6, so 28 no. 10 cans (READ)", () => {
    const can = { packs: [{ name: "no. 10 can", edible: `${100 * serving}/3` }] };
    const cups = recipeOf(
      { ...can, measures: [{ name: "listed serving", grams: serving }] },
      "2 listed serving",
    );
    const list = shoppingList(scale(cups, { portions: 460 }).sheet);
    const cans = over(list.lines[0]?.needed ?? ZERO, exact(can.packs[0]?.edible ?? 1));
    expect(exactText(cans)).toBe("27.6");
    expect(packs(list)).toEqual(["28"]);
  });

  it("ground beef, 20 % fat, 8.5 lb per 100 servings of 1 oz: 230 servings of 2 oz are 39.1 lb (READ, last step derived)", () => {
    // 8.5 lb for 100 oz cooked, as the column prints it.
    const list = shoppingList(scale(recipeOf({ edibleShare: "100/136" }, "2 oz"), { portions: 230 }).sheet);
    expect(exactText(over(asPurchased(list), pound))).toBe("39.1");
    // By the yield printed beside it, 0.74 lb a pound, a quarter of a pound less: 8.5 is 8.446 rounded up.
    const byYield = shoppingList(scale(recipeOf({ edibleShare: "0.74" }, "2 oz"), { portions: 230 }).sheet);
    expect(fixedText(over(asPurchased(byYield), pound), 2)).toBe("38.85");
    expect(fixedText(over(over(exact(100), exact("0.74")), exact(16)), 1)).toBe("8.4");
  });

  it("corn on the cob: 75 servings at 2.44 a pound are 30.74 lb, at 41.0 lb per 100 are 30.75 lb (READ; the table rounds)", () => {
    const share = (servings: string, pounds: string): string =>
      exactText(over(times(exact(servings), exact(serving)), times(exact(pounds), pound)));
    const bought = (edibleShare: string): Exact =>
      over(
        asPurchased(shoppingList(scale(recipeOf({ edibleShare }, `${serving} g`), { portions: 75 }).sheet)),
        pound,
      );
    expect(fixedText(bought(share("2.44", "1")), 2)).toBe("30.74");
    expect(exactText(bought(share("100", "41.0")))).toBe("30.75");
  });
});

describe("B4 USDA SR28, refuse in per cent (DATA: recomputed from the agency's file FOOD_DES)", () => {
  const edibleOf100 = (s: Sheet): string => exactText(shoppingList(s).lines[0]?.needed ?? ZERO);
  const bought = (s: Sheet): string => exactText(asPurchased(shoppingList(s)));

  it.each([
    ["ginger-root-raw", 7],
    ["garlic-raw", 13],
    ["watermelon-raw", 48],
  ])("%s, of the starter foods: AP 100 g × (1 − refuse of %i per cent), there and back", (food, refuse) => {
    const of = (amount: string, weighed: "edible" | "as-purchased"): Sheet =>
      sheet({ name: "Card", portions: 1, lines: [{ food, amount, weighed }] }, starterFoods);
    expect(edibleOf100(of("100 g", "as-purchased"))).toBe(String(100 - refuse));
    expect(bought(of(`${100 - refuse} g`, "edible"))).toBe("100");
  });

  it("a piece, whichever way it is weighed: SR28 tells household measures without refuse", () => {
    // NDB 09040, banana: 1 medium is 118 g, refuse 36 %. What is bought of it is 118 ÷ 0.64.
    const of = (amount: string, weighed: "edible" | "as-purchased"): Sheet =>
      sheet({ name: "Card", portions: 1, lines: [{ food: "bananas-raw", amount, weighed }] }, starterFoods);
    for (const weighed of ["edible", "as-purchased"] as const) {
      expect(edibleOf100(of("1 medium", weighed))).toBe("118");
      expect(bought(of("1 medium", weighed))).toBe("184.375");
    }
    expect(edibleOf100(of("100 g", "as-purchased"))).toBe("64");
    const had = (held: string): string => {
      const cupboard = { "bananas-raw": { amount: held, weighed: "as-purchased" as const } };
      const [line] = shoppingList(of("5 medium", "edible"), { cupboard }).lines;
      return exactText(line?.fromCupboard ?? ZERO);
    };
    expect([had("1 medium"), had("100 g")]).toEqual(["118", "64"]);
  });

  it("honeydew melon, 54 %, is none of the starter foods: its share is written here", () => {
    expect(bought(recipeOf({ edibleShare: exactText(minus(exact(1), exact("0.54"))) }, "46 g"))).toBe("100");
  });
});
