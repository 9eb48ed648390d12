import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { exactText } from "../../src/number/digits.ts";
import { exact } from "../../src/number/exact.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { errorOf } from "../number/errorOf.ts";
import { written } from "../written.ts";

const oats: FoodInput = {
  id: "oats",
  name: "Oats",
  source: "made up",
  per100g: { energy: 400 },
  packs: [{ name: "bag", edible: 500, price: "0.90" }],
  price: { currency: "GBP" },
};
const peas: FoodInput = { id: "peas", name: "Peas", source: "made up", per100g: {} };
const foods = foodTable([oats, peas]);
const porridge = sheet({ name: "Porridge", portions: 2, lines: [{ food: "oats", amount: "60 g" }] }, foods);

const faultsOf = (step: () => unknown): string[] =>
  errorOf(step).faults.map(({ code, path, message }) => `${code} ${path.join(".")}: ${message}`);

describe("what cannot be shopped for", () => {
  it.each([undefined, null, 5, "plan", {}, { meals: [] }, new Map(), () => porridge])(
    "is refused: %s",
    (x) => {
      expect(faultsOf(() => shoppingList(x as never))).toEqual([
        "shopping-malformed : there is nothing to shop for",
      ]);
    },
  );

  it("is refused inside a list, each with its place", () => {
    expect(faultsOf(() => shoppingList([porridge, null, porridge, {}] as never))).toEqual([
      "shopping-malformed 1: nobody can shop for this",
      "shopping-malformed 3: nobody can shop for this",
    ]);
  });

  it("is nothing at all: an empty list of an empty list, or of a plan of nothing", () => {
    const none = shoppingList([]);
    expect(written(none)).toEqual({
      is: "steelyard/shopping@1",
      lines: [],
      cupboard: [],
      totals: [],
      unpriced: [],
      left: {},
      portions: [],
    });
    const water = sheet({ name: "x", portions: 1, lines: [{ food: "peas", amount: "0 g" }] }, foods);
    expect(shoppingList(water).lines).toEqual([]);
    const plan = portionPlan({
      meals: [{ id: "m", dishes: water }],
      people: [{ id: "p", demands: { factor: 3 } }],
    });
    expect(written(shoppingList(plan))).toMatchObject({ lines: [], totals: [] });
  });

  it("is one food id that means two foods", () => {
    const dearer = foodTable([{ ...oats, packs: [{ name: "bag", edible: 500, price: "0.91" }] }]);
    const other = sheet({ name: "Other", portions: 1, lines: [{ food: "oats", amount: "1 g" }] }, dearer);
    expect(errorOf(() => shoppingList([porridge, other])).message).toContain('two foods called "oats"');
    // The same food said in other words is the same.
    const same = foodTable([{ ...oats, packs: [{ name: "bag", edible: "500.0", price: 0.9 }] }]);
    const again = sheet({ name: "Again", portions: 1, lines: [{ food: "oats", amount: "1 g" }] }, same);
    expect(exactText(shoppingList([porridge, again]).line("oats").needed)).toBe("61");
  });
});

describe("a cupboard that cannot be read", () => {
  const cupboard =
    (held: unknown, more: object = {}) =>
    (): unknown =>
      shoppingList(porridge, { cupboard: held, ...more } as never);

  it("is refused with every fault at once, and a way out of each", () => {
    const held = {
      oat: "1 kg",
      oats: "2 cups",
      peas: "-3 g",
      "no such thing": "1 g",
      constructor: "1 g",
    };
    expect(faultsOf(cupboard(held))).toEqual([
      'amount-negative cupboard.peas: "-3 g" is below 0',
      'shopping-malformed cupboard.oat: no food is called "oat"',
      expect.stringContaining("measures-needed cupboard.oats: a cup is"),
      'shopping-malformed cupboard.no such thing: no food is called "no such thing"',
      'shopping-malformed cupboard.constructor: no food is called "constructor"',
    ]);
    expect(errorOf(cupboard({ oat: "1 kg" })).hint).toBe("did you mean oats?");
  });

  it("is refused where its shape is wrong", () => {
    const held = {
      oats: 5,
      peas: { amount: "1 g", weighed: "peeled", more: 1 },
    };
    expect(faultsOf(cupboard(held, { aisle: 1, measures: 7 }))).toEqual([
      "amount-malformed cupboard.oats: a number is not an amount",
      'shopping-malformed cupboard.peas.weighed: "peeled" is not one of "edible", "as-purchased"',
      'shopping-malformed cupboard.peas.more: "more" is not a field here',
      "measures-malformed measures: a number is no set of measures",
      'shopping-malformed aisle: "aisle" is not a field here',
    ]);
    for (const wrong of [[], "oats", 7, null])
      expect(errorOf(cupboard(wrong)).code).toBe("shopping-malformed");
    expect(errorOf(() => shoppingList(porridge, null as never)).code).toBe("shopping-malformed");
    expect(errorOf(cupboard(JSON.parse('{"__proto__": "1 g"}'))).code).toBe("shopping-malformed");
    const round: { oats?: unknown } = {};
    round.oats = round;
    expect(errorOf(cupboard(round)).message).toContain("contains itself");
  });

  it("is refused where peel and bone would have to be guessed, or a unit says nothing of the food", () => {
    expect(faultsOf(cupboard({ oats: { amount: "1 kg", weighed: "as-purchased" } }))).toEqual([
      'shopping-malformed cupboard.oats.weighed: nothing is known of what of "Oats" is eaten',
    ]);
    expect(errorOf(cupboard({ oats: "3 kJ" })).code).toBe("amount-unknown-unit");
    expect(errorOf(cupboard({ oats: "1 l" })).code).toBe("density-needed");
  });

  it("may hold nothing, all, or more than there is in the world", () => {
    expect(cupboard({ oats: "0 g" })).not.toThrow();
    const list = shoppingList(porridge, { cupboard: { oats: { value: "1e300", unit: "g" } } });
    expect(list.line("oats").bought.isZero()).toBe(true);
    expect(list.cupboard[0]?.left?.n).toBe(10n ** 300n - 60n);
    const missing = errorOf(() => list.line("oat"));
    expect([missing.code, missing.hint]).toEqual(["shopping-malformed", "did you mean oats?"]);
  });
});

describe("figures beyond any shop", () => {
  it.each(["1e-300", "1e300", "123456789/7"])("are exact and bounded: %s g", (amount) => {
    for (const edible of ["1e-100", "1e200", "500"]) {
      const table = foodTable([
        { ...oats, packs: [{ name: "bag", edible, price: "1e-50" }], edibleShare: "1e-9" },
      ]);
      const s = sheet(
        { name: "x", portions: "1e9", lines: [{ food: "oats", amount: { value: amount, unit: "g" } }] },
        table,
      );
      const start = performance.now();
      const list = shoppingList(s);
      const grams = list.line("oats");
      expect(grams.leftOver.n >= 0n).toBe(true);
      expect(exactText(grams.needed)).toBe(exactText(exact(amount)));
      expect(tablesOf(list).length).toBe(2);
      expect(performance.now() - start).toBeLessThan(20_000);
    }
  });

  it("hold any three letters for a currency of two decimals, and no other text for one", () => {
    fc.assert(
      fc.property(fc.string({ minLength: 0, maxLength: 4 }), (currency) => {
        const make = () => foodTable([{ ...oats, price: { currency } }]);
        if (!/^[A-Z]{3}$/.test(currency)) expect(errorOf(make).path).toEqual([0, "price", "currency"]);
        else expect(make).not.toThrow();
      }),
    );
    const made = foodTable([{ ...oats, price: { currency: "ZZZ" } }]);
    const s = sheet({ name: "x", portions: 1, lines: [{ food: "oats", amount: "1 g" }] }, made);
    expect(shoppingList(s).total()).toMatchObject({ currency: "ZZZ" });
  });

  it("come back for 500 people and 14 meals, priced each, in bounded time", () => {
    const table = foodTable(
      Array.from({ length: 60 }, (_, i) => ({
        ...oats,
        id: `food ${i}`,
        name: `Food ${i}`,
        per100g: { energy: 100 + i },
      })),
    );
    const meals = Array.from({ length: 14 }, (_, m) => ({
      id: `meal ${m}`,
      dishes: sheet(
        {
          name: `Meal ${m}`,
          portions: 2,
          lines: Array.from({ length: 30 }, (_, i) => ({
            key: `line ${i}`,
            food: `food ${(m * 7 + i) % 60}`,
            amount: `${10 + i} g`,
          })),
        },
        table,
      ),
    }));
    const people = Array.from({ length: 500 }, (_, i) => ({ id: `p${i}`, demands: { energy: 400 + i } }));
    const plan = portionPlan({ meals, people });
    const start = performance.now();
    const list = shoppingList(plan);
    expect(list.portions).toHaveLength(7000);
    expect(performance.now() - start).toBeLessThan(30_000);
  }, 90_000);
});
