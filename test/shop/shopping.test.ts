import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { exactText } from "../../src/number/digits.ts";
import {
  Exact,
  exact,
  fraction,
  isZero,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { LineInput, RecipeInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { type ShoppingList, shoppingList } from "../../src/shop/shoppingList.ts";
import { errorOf } from "../number/errorOf.ts";
import { campPlan } from "../plan/camp.ts";
import { runs } from "../runs.ts";
import { written } from "../written.ts";

/** Foods of our own: prices and packs are made up. */
const food = (id: string, about: Partial<FoodInput> = {}): FoodInput => ({
  id,
  name: id,
  source: "made up",
  per100g: { energy: 100 },
  ...about,
});
const foods = foodTable([
  food("oats", {
    name: "Rolled oats",
    state: "dry",
    aisle: "dry goods",
    packs: [
      { name: "500 g bag", edible: 500, price: "0.90" },
      { name: "1 kg bag", edible: 1000, price: "1.50" },
    ],
    price: { currency: "GBP" },
    measures: [{ name: "cup", grams: 80 }],
    allergens: ["gluten"],
  }),
  food("chickpeas", {
    name: "Chickpeas",
    state: "drained",
    aisle: "tins",
    packs: [{ name: "400 g tin, drained", edible: 240 }],
    price: { currency: "GBP", per100g: "0.25" },
    allergens: [],
  }),
  food("bananas", {
    name: "Bananas",
    state: "raw",
    aisle: "fruit",
    edibleShare: "0.64",
    price: { currency: "GBP", per100g: "0.12" },
    measures: [{ name: "medium", grams: 118 }],
  }),
  food("salt", { name: "Salt", cautions: [{ code: "salt", text: "Go easy.", source: "made up" }] }),
]);
const dish = (lines: readonly LineInput[], about: Partial<RecipeInput> = {}): Sheet =>
  sheet({ name: "Dish", portions: 2, lines, ...about }, foods);
const texts = (all: object): Record<string, string | undefined> =>
  Object.fromEntries(
    Object.entries(all).flatMap(([key, f]) => (f instanceof Exact ? [[key, exactText(f)]] : [])),
  );
const costs = (list: ShoppingList): (string | undefined)[] =>
  list.lines.map(({ cost }) => cost?.value.toFixed());

describe("from edible portion to as purchased", () => {
  it("brings a line that was weighed as purchased back to what was written, literally", () => {
    const s = dish([{ food: "bananas", amount: "1/3 lb", weighed: "as-purchased" }]);
    const grams = shoppingList(s).line("bananas");
    expect(exactText(times(grams.asPurchased ?? ZERO, fraction(3n)))).toBe("453.59237");
    expect(exactText(times(grams.needed, fraction(3n)))).toBe("290.2991168"); // 64 % of a pound
  });

  it("buys a food of which no refuse is known as it is eaten, and says so", () => {
    const line = shoppingList(dish([{ food: "salt", amount: "5 g" }])).line("salt");
    expect(line.edibleShare).toBeUndefined();
    expect(line.asPurchased?.toString()).toBe("5");
  });

  it("opens nested recipes to their foods, by the share of the batch that is used, after cooking", () => {
    const topping: RecipeInput = {
      name: "Topping",
      portions: 8,
      lines: [
        { food: "oats", amount: "300 g" },
        { food: "salt", amount: "4 g" },
      ],
      cookedMass: "200 g",
    };
    const twice: RecipeInput = {
      name: "Twice",
      portions: 1,
      lines: [{ recipe: "topping", amount: "50 g" }],
    };
    const s = sheet(
      {
        name: "Bowl",
        portions: 1,
        lines: [
          { key: "a", recipe: "topping", amount: "2 portions" },
          { key: "b", recipe: "twice", amount: "1/2 batch" },
          { key: "c", food: "oats", amount: "10 g" },
        ],
      },
      foods,
      { recipes: { topping, twice } },
    );
    // 2 of 8 portions, and half of 50 g of 200 g: 3/8 of the topping, and 10 g more.
    const list = shoppingList(s);
    expect(exactText(list.line("oats").needed)).toBe("122.5");
    expect(exactText(list.line("salt").needed)).toBe("1.5");
  });

  it("takes what is nested deep and wide in bounded time", () => {
    const recipes: Record<string, RecipeInput> = {};
    for (let i = 0; i < 12; i += 1) {
      const inner = (key: string): LineInput =>
        i === 0 ? { key, food: "oats", amount: "1 g" } : { key, recipe: `level ${i - 1}`, amount: "1 batch" };
      recipes[`level ${i}`] = { name: `Level ${i}`, portions: 1, lines: [inner("a"), inner("b")] };
    }
    const s = sheet({ name: "Top", portions: 1, lines: [{ recipe: "level 11", amount: "1 batch" }] }, foods, {
      recipes,
    });
    const start = performance.now();
    expect(exactText(shoppingList(s).line("oats").needed)).toBe(String(2n ** 12n));
    expect(performance.now() - start).toBeLessThan(20_000);
  }, 60_000);
});

describe("what is weighed out in the shop", () => {
  /** Common practice, no source: the steps are the documentation's own. */
  it.each([
    ["0.05 g", "1"],
    ["9.2 g", "10"],
    ["19 g", "19"],
    ["19.1 g", "20"],
    ["20 g", "20"],
    ["21 g", "25"],
    ["95.5 g", "100"],
    ["101 g", "110"],
    ["687 g", "690"],
    ["999.5 g", "1000"],
    ["1001 g", "1050"],
    ["9960 g", "10000"],
    ["10.01 kg", "10100"],
  ])("of %s is %s g, and the need stays as it is", (need, asked) => {
    const line = shoppingList(dish([{ food: "salt", amount: need }])).line("salt");
    expect(line.weighOut?.toString()).toBe(asked);
    expect(line.bought.toString()).toBe(asked);
    const grams = need.endsWith("kg") ? "10010" : need.replace(" g", "");
    expect([line.needed.toString(), line.asPurchased?.toString()]).toEqual([grams, grams]);
    expect(exactText(minus(line.bought, line.leftOver))).toBe(grams);
  });

  it("is what is paid for", () => {
    const list = shoppingList(dish([{ food: "bananas", amount: "250 g" }]));
    // 390.625 g with peel, of which 400 g are asked for at 0.12 for 100 g.
    expect(list.total().value.toString()).toBe("0.48");
    expect(exactText(list.total().unrounded)).toBe("0.48");
  });

  it("is told in pieces where the food has a measure of one: by the recipes' own, else the medium one", () => {
    const fruit = foodTable([
      food("apple", {
        measures: [
          { name: "cup, sliced", grams: 109 },
          { name: "small", grams: 149 },
          { name: "medium", grams: 182 },
          { name: "large", grams: 223 },
        ],
      }),
      food("plums", { name: "Plums, raw", measures: [{ name: "plum", grams: 66 }] }),
      food("tofu", {
        measures: [
          { name: "slice", grams: 84 },
          { name: "block", grams: 340 },
        ],
      }),
      food("lettuce", {
        measures: [
          { name: "medium leaf", grams: 15 },
          { name: "large head", grams: 626 },
        ],
      }),
      food("raisins", { name: "Raisins", measures: [{ name: "raisin", grams: "0.52" }] }),
      food("bread", { measures: [{ name: "slice", grams: 25 }] }),
    ]);
    const of = (id: string, amount: string, more: readonly LineInput[] = []): string | undefined => {
      const lines = [{ key: "one", food: id, amount }, ...more];
      const { pieces } = shoppingList(sheet({ name: "x", portions: 1, lines }, fruit)).line(id);
      return pieces && `${pieces.count} ${pieces.name}`;
    };
    expect(of("apple", "365 g")).toBe("3 medium");
    expect(of("apple", "2 large")).toBe("2 large");
    expect(of("apple", "2 large", [{ key: "more", food: "apple", amount: "1 g" }])).toBe("3 large");
    expect(of("plums", "132 g")).toBe("2 plum");
    expect(of("tofu", "341 g")).toBe("2 block");
    expect(of("lettuce", "100 g")).toBe("1 large head");
    expect(of("raisins", "52 g")).toBeUndefined();
    expect(of("bread", "100 g")).toBeUndefined();
  });

  it("is not told in pieces where packs are bought, or nothing is", () => {
    const eggs = food("eggs", {
      packs: [{ name: "six", edible: 300 }],
      measures: [{ name: "large", grams: 50 }],
    });
    const s = sheet(
      { name: "x", portions: 1, lines: [{ food: "eggs", amount: "3 large" }] },
      foodTable([eggs]),
    );
    expect(shoppingList(s).line("eggs").pieces).toBeUndefined();
    const had = shoppingList(dish([{ food: "bananas", amount: "2 medium" }]), {
      cupboard: { bananas: "enough" },
    });
    expect([had.line("bananas").pieces, had.line("bananas").weighOut]).toEqual([undefined, undefined]);
  });
});

describe("packs", () => {
  it("are whole across all dishes, and what is left over is said", () => {
    const beans = dish([{ food: "chickpeas", amount: "200 g" }]);
    const line = shoppingList([beans, beans, beans]).line("chickpeas");
    const { packs, proven } = line;
    expect(packs.map(({ name, count }) => `${count} × ${name}`)).toEqual(["3 × 400 g tin, drained"]);
    expect(texts(line)).toMatchObject({ needed: "600", bought: "720", leftOver: "120" });
    expect(proven).toBe(true);
  });

  it("cost what they are sold at, or their mass as purchased where only 100 g have a price", () => {
    const list = shoppingList(
      dish([
        { food: "oats", amount: "1.2 kg" },
        { food: "chickpeas", amount: "250 g" },
      ]),
    );
    expect(list.line("oats").cost?.value.toString()).toBe("2.4"); // 0.90 + 1.50
    expect(list.line("chickpeas").cost?.value.toString()).toBe("1.2"); // 2 × 240 g at 0.25
    const bag = foodTable([
      food("potatoes", {
        edibleShare: "0.8",
        packs: [{ name: "bag", edible: 1600 }],
        price: { currency: "GBP", per100g: "0.10" },
      }),
    ]);
    const s = sheet({ name: "Mash", portions: 1, lines: [{ food: "potatoes", amount: "1 g" }] }, bag);
    expect(shoppingList(s).total().value.toString()).toBe("2"); // 2 kg with peel
  });
});

describe("the cupboard", () => {
  const s = dish([
    { food: "oats", amount: "600 g" },
    { food: "bananas", amount: "3 medium" },
    { food: "salt", amount: "5 g" },
  ]);
  const list = shoppingList(s, {
    cupboard: {
      oats: "1 cup",
      bananas: { amount: "1 kg", weighed: "as-purchased" },
      salt: "enough",
      chickpeas: { value: "1/3", unit: "kg" },
    },
    measures: "metric",
  });

  it("is read by the food's own measures, as eaten or as purchased, and taken off", () => {
    expect(texts(list.line("oats"))).toMatchObject({ bought: "1000" });
    // A metric cup of 250 ml at 80 g for 236.588… ml, US customary.
    expect(list.line("oats").fromCupboard.toFixed(2)).toBe("84.54");
    expect(texts(list.line("bananas"))).toMatchObject({
      needed: "354",
      fromCupboard: "354",
      bought: "0",
    });
    expect(list.line("bananas").packs).toEqual([]);
    expect(list.line("salt").bought.isZero()).toBe(true);
    expect(list.unpriced).toEqual([]);
  });

  it("says what is left in it, of what nobody needs too", () => {
    const shown = list.cupboard.map(({ food: id, ...item }) => [
      id,
      { had: undefined, left: undefined, ...texts(item) },
    ]);
    expect(Object.fromEntries(shown)).toMatchObject({
      bananas: { had: "640", used: "354", left: "286" },
      chickpeas: { had: "1000/3", used: "0", left: "1000/3" },
      salt: { had: undefined, used: "5", left: undefined },
    });
    expect(list.cupboard.map(({ name }) => name)).toEqual(["Bananas", "Chickpeas", "Rolled oats", "Salt"]);
  });
});

describe("costs", () => {
  const priced = (id: string, per100g: string, currency = "GBP"): FoodInput =>
    food(id, { price: { per100g, currency } });
  const bought = (...all: FoodInput[]): ShoppingList =>
    shoppingList(
      sheet(
        { name: "Basket", portions: 3, lines: all.map(({ id }) => ({ food: id, amount: "100 g" })) },
        foodTable(all),
      ),
    );

  it("add up to the total: each is rounded down, then the largest remainders up", () => {
    const list = bought(priced("a", "0.104"), priced("b", "0.104"), priced("c", "0.107"), priced("d", "1"));
    expect(list.total().value.toString()).toBe("1.32"); // 1.315, a half up
    expect(costs(list)).toEqual(["0.11", "0.1", "0.11", "1"]);
  });

  it("never move what is in whole minor units already", () => {
    // In proportion to the rounded total, the first would become 1.01.
    const list = bought(
      priced("a", "1"),
      priced("b", "0.0017"),
      priced("c", "0.0017"),
      priced("d", "0.0017"),
    );
    expect(costs(list)).toEqual(["1", "0.01", "0", "0"]);
  });

  it("are in the minor units of ISO 4217", () => {
    expect(
      bought(priced("a", "12.5", "JPY"))
        .total()
        .value.toString(),
    ).toBe("13");
    expect(
      bought(priced("a", "0.12345", "KWD"))
        .total()
        .value.toString(),
    ).toBe("0.123");
    expect(
      bought(priced("a", "0.12345", "EUR"))
        .total()
        .value.toString(),
    ).toBe("0.12");
    expect(exactText(bought(priced("a", "0.12345", "EUR")).total().unrounded)).toBe("0.12345");
  });

  it("are not added up across currencies", () => {
    const list = bought(priced("a", "1"), priced("b", "2", "EUR"), priced("c", "3", "EUR"));
    expect(list.totals.map(({ currency, value }) => `${value} ${currency}`)).toEqual(["5 EUR", "1 GBP"]);
    expect(list.total("EUR").value.toString()).toBe("5");
    const mixed = errorOf(() => list.total());
    expect([mixed.code, mixed.message]).toEqual([
      "shopping-malformed",
      'prices in EUR, GBP do not add up to one total (ask for one, total("GBP"), or price all foods in one currency; .totals has each)',
    ]);
    expect(errorOf(() => list.total("USD")).hint).toBe("prices are in EUR, GBP");
    expect(errorOf(() => bought(food("a")).total()).code).toBe("shopping-malformed");
  });

  it("are at least what is known where something has no price", () => {
    const list = bought(priced("a", "1"), food("b"));
    expect(list.unpriced.map(({ food: id }) => id)).toEqual(["b"]);
    expect(list.total()).toMatchObject({ bound: "at-least" });
    expect(list.portions[0]?.perPortion[0]).toMatchObject({ bound: "at-least" });
    // Nothing is paid for what the cupboard has.
    const covered = shoppingList(
      sheet(
        { name: "x", portions: 1, lines: ["a", "b"].map((id) => ({ food: id, amount: "1 g" })) },
        foodTable([priced("a", "1"), food("b")]),
      ),
      { cupboard: { b: "1 g" } },
    );
    expect(covered.total().bound).toBe("point");
  });

  it("are not known of packs of which one that is bought has no price", () => {
    const mixed = food("a", {
      packs: [
        { name: "bag", edible: 100, price: "1" },
        { name: "sack", edible: 250 },
      ],
      price: { currency: "GBP" },
    });
    const of = (amount: string): ShoppingList =>
      shoppingList(sheet({ name: "x", portions: 1, lines: [{ food: "a", amount }] }, foodTable([mixed])));
    // A bag and a sack leave nothing over; the sack's price is not known, and neither is what both cost.
    expect(of("350 g").line("a").packs).toHaveLength(2);
    expect(of("350 g").line("a").cost).toBeUndefined();
    expect(of("350 g").unpriced).toHaveLength(1);
    expect(of("100 g").total()).toMatchObject({ bound: "point" });
  });

  it("are shared among portions by what each takes, left-overs and all", () => {
    const pot = dish([{ food: "chickpeas", amount: "480 g" }], { name: "Pot", portions: 4 });
    const side = dish([{ food: "chickpeas", amount: "120 g" }], { name: "Side" });
    const { portions } = shoppingList([pot, side]);
    // Three tins at 0.60, of which 4/5 and 1/5.
    expect(portions.map(({ dish: name, costs: all }) => [name, all[0]?.value.toString()])).toEqual([
      ["Pot", "1.44"],
      ["Side", "0.36"],
    ]);
    expect(portions.map(({ perPortion }) => perPortion[0]?.value.toString())).toEqual(["0.36", "0.18"]);
  });
});

describe("the list", () => {
  it("stands by aisle, other last, then by name, whatever the case", () => {
    const all = [
      food("1", { name: "rye", aisle: "Bread" }),
      food("2", { name: "Bun", aisle: "bread" }),
      food("3", { name: "apples", aisle: "fruit" }),
      food("4", { name: "Apples", aisle: "fruit" }),
      food("5", { name: "foil" }),
      food("6", { name: "Yeast", aisle: "zest" }),
    ];
    const s = sheet(
      { name: "x", portions: 1, lines: [...all].reverse().map(({ id }) => ({ food: id, amount: "1 g" })) },
      foodTable(all),
    );
    expect(shoppingList(s).lines.map(({ food: id }) => id)).toEqual(["1", "2", "4", "3", "6", "5"]);
  });

  it("carries allergens and cautions", () => {
    const list = shoppingList(
      dish([
        { food: "oats", amount: "1 g" },
        { food: "salt", amount: "1 g" },
      ]),
    );
    expect(list.line("oats").allergens).toEqual(["gluten"]);
    expect(list.line("salt").allergens).toBeUndefined();
    expect(list.line("salt").cautions.map(({ code }) => code)).toEqual(["salt"]);
  });

  it("is the camp's: every food of every dish, nested ones with them, and nothing else", () => {
    const list = shoppingList(campPlan(), { cupboard: { "water-tap": "enough" } });
    expect(list.lines.map(({ food: id }) => id).sort()).toEqual([
      "bananas-raw",
      "cayenne",
      "cinnamon-ground",
      "ginger-root-raw",
      "hemp-seeds-hulled",
      "honey",
      "lemon-juice-raw",
      "milk-whole",
      "oats-rolled-dry",
      "pumpkin-seeds",
      "water-tap",
      expect.stringContaining("yoghurt"),
    ]);
  });
});

const decimal = (most: number, places: number): fc.Arbitrary<string> =>
  fc.integer({ min: 0, max: most * 10 ** places }).map((n) => (n / 10 ** places).toFixed(places));
const some = decimal(400, 1).map((text) => `${text}5`);

/** Foods of every kind of sale: loose or packed, priced or not, with refuse or without, in two currencies. */
const anyFood = (id: string): fc.Arbitrary<FoodInput> =>
  fc
    .record({
      edibleShare: fc.option(
        fc.integer({ min: 1, max: 100 }).map((n) => `${n}/100`),
        { nil: undefined },
      ),
      packs: fc.option(
        fc.array(
          fc.record({
            name: fc.constantFrom("tin", "bag"),
            edible: some,
            price: fc.option(decimal(9, 2), { nil: undefined }),
          }),
          { minLength: 1, maxLength: 3 },
        ),
        { nil: undefined },
      ),
      per100g: fc.option(decimal(3, 4), { nil: undefined }),
      currency: fc.constantFrom("GBP", "GBP", "JPY", "KWD"),
    })
    .map(({ edibleShare, packs, per100g, currency }) =>
      food(id, {
        ...(edibleShare !== undefined && { edibleShare }),
        ...(packs && {
          packs: packs.map(({ name, edible, price }) => ({
            name,
            edible,
            ...(price !== undefined && { price }),
          })),
        }),
        price: { currency, ...(per100g !== undefined && { per100g }) },
      }),
    );

const ids = ["a", "b", "c", "d"];
const anyLines = fc.array(
  fc.record({
    food: fc.constantFrom(...ids),
    amount: some.map((text) => `${text} g`),
    scaling: fc.constantFrom("held" as const, "held" as const, "per-portion" as const),
  }),
  { minLength: 1, maxLength: 4 },
);
const anyPlan = fc
  .record({
    table: fc.tuple(...ids.map(anyFood)),
    dishes: fc.array(anyLines, { minLength: 1, maxLength: 3 }),
    factors: fc.array(
      fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 9 })).map(([n, d]) => `${n}/${d}`),
      { minLength: 1, maxLength: 4 },
    ),
    cupboard: fc.dictionary(
      fc.constantFrom(...ids),
      fc.oneof(
        some.map((text) => `${text} g`),
        fc.constant("enough"),
      ),
    ),
  })
  .map(({ table, dishes, factors, cupboard }) => {
    const all = foodTable(table);
    const sheets = dishes.map((lines, i) =>
      sheet(
        { name: `Dish ${i}`, portions: 2, lines: lines.map((line, j) => ({ ...line, key: `line ${j}` })) },
        all,
      ),
    );
    const plan = portionPlan({
      meals: sheets.map((dishes, i) => ({ id: `meal ${i}`, dishes })),
      people: factors.map((factor, i) => ({ id: `person ${i}`, demands: { factor } })),
    });
    return { table: all, sheets, plan, cupboard };
  });

/** What a plan takes of a food, added up from what each person is served: another way than by batches. */
function served(plan: Plan, id: string): Exact {
  const lines = plan.portions.flatMap(({ dishes }) => [...dishes.values()].flatMap((s) => s.lines));
  return sum(lines.filter((line) => line.food === id).map(({ grams }) => grams));
}

describe("properties", () => {
  it("covers the plan, and one pack fewer does not; cupboard + bought − left = needed, literally", () => {
    fc.assert(
      fc.property(anyPlan, ({ plan, cupboard, table }) => {
        const list = shoppingList(plan, { cupboard });
        for (const id of ids) {
          const needed = served(plan, id);
          const line = list.lines.find((each) => each.food === id);
          expect(line !== undefined).toBe(!isZero(needed));
          if (!line) continue;
          const grams = line;
          const { packs } = line;
          expect(exactText(grams.needed)).toBe(exactText(needed));
          expect(exactText(minus(plus(grams.fromCupboard, grams.bought), grams.leftOver))).toBe(
            exactText(needed),
          );
          expect(grams.leftOver.n >= 0n).toBe(true);
          const item = list.cupboard.find((each) => each.food === id);
          expect(item !== undefined).toBe(Object.hasOwn(cupboard, id));
          expect(exactText(item?.used ?? ZERO)).toBe(exactText(grams.fromCupboard));
          if (item?.had && item.left) {
            expect(item.left.n >= 0n).toBe(true);
            expect(exactText(item.had)).toBe(exactText(plus(item.left, item.used)));
            // Nothing is bought while there is some left.
            expect(isZero(item.left) || isZero(grams.bought)).toBe(true);
          }
          const sizes = packs.map(({ count, edible }) => times(exact(count), exact(edible)));
          const sold = (table.get(id).packs ?? []).length > 0;
          if (sold) expect(exactText(sum(sizes))).toBe(exactText(grams.bought));
          for (const { edible, count } of packs) {
            expect(count.gt(0)).toBe(true);
            const fewer = minus(plus(grams.fromCupboard, grams.bought), exact(edible));
            expect(compareRatios(fewer, needed)).toBeLessThan(0);
          }
          if (!sold && grams.asPurchased && grams.weighOut) {
            const share = exact(table.get(id).edibleShare ?? 1);
            const toBuy = minus(grams.needed, grams.fromCupboard);
            expect(exactText(times(grams.asPurchased, share))).toBe(exactText(toBuy));
            expect(exactText(times(grams.weighOut, share))).toBe(exactText(grams.bought));
            // Less than a step more than is needed, and whole steps, as the documentation has them.
            const size = Number(
              exactText(grams.asPurchased)
                .split("/")
                .reduce((n, d) => String(Number(n) / Number(d))),
            );
            const step = size < 20 ? 1 : size < 100 ? 5 : size < 1000 ? 10 : size < 10_000 ? 50 : 100;
            expect(over(grams.weighOut, exact(step)).d).toBe(1n);
            expect(compareRatios(minus(grams.weighOut, grams.asPurchased), exact(step))).toBe(-1);
          }
        }
      }),
      { numRuns: runs(200) },
    );
  });

  it("costs add up to the total, and portions to the lines, to the minor unit and exactly", () => {
    fc.assert(
      fc.property(anyPlan, ({ plan, cupboard, sheets }) => {
        for (const list of [shoppingList(plan, { cupboard }), shoppingList(sheets, { cupboard })]) {
          for (const { currency, value, unrounded: whole } of list.totals) {
            const lines = list.lines.flatMap(({ cost }) => (cost?.currency === currency ? [cost] : []));
            const parts = list.portions.flatMap(({ costs: all }) =>
              all.filter((each) => each.currency === currency),
            );
            for (const all of [lines, parts]) {
              expect(exactText(sum(all.map((each) => exact(each.value))))).toBe(exactText(exact(value)));
              expect(exactText(sum(all.map((each) => each.unrounded)))).toBe(exactText(whole));
              for (const each of all) {
                // Within one minor unit: the thousandth of a dinar, a penny, a yen.
                const unit = { GBP: "0.01", JPY: "1", KWD: "0.001" }[currency] ?? "";
                const off = over(minus(exact(each.value), each.unrounded), exact(unit));
                expect(compareRatios(off, ONE) < 0 && compareRatios(off, minus(ZERO, ONE)) > 0).toBe(true);
                expect(exact(each.value).d <= exact(unit).d).toBe(true);
              }
            }
          }
        }
      }),
      { numRuns: runs(150) },
    );
  });

  it("does not depend on the order of dishes, nor of their lines", () => {
    fc.assert(
      fc.property(anyPlan, fc.infiniteStream(fc.nat()), ({ sheets, cupboard }, chance) => {
        const shuffled = <T>(all: readonly T[]): T[] =>
          all
            .map((each) => ({ each, at: chance.next().value ?? 0 }))
            .sort((a, b) => a.at - b.at)
            .map(({ each }) => each);
        const again = shuffled(sheets).map((s) =>
          sheet({ ...s.origin, lines: shuffled(s.origin.lines) }, s.plan.foods),
        );
        const entries = Object.fromEntries(shuffled(Object.entries(cupboard)));
        const { portions: _, ...before } = written(shoppingList(sheets, { cupboard }));
        const { portions: __, ...after } = written(shoppingList(again, { cupboard: entries }));
        expect(after).toEqual(before);
      }),
      { numRuns: runs(100) },
    );
  });

  it("buys no less for more people", () => {
    fc.assert(
      fc.property(anyPlan, ({ sheets }) => {
        const [first, ...others] = sheets;
        const some = shoppingList(others);
        const all = shoppingList([...(first ? [first] : []), ...others]);
        for (const { food: id, needed } of some.lines) {
          expect(compareRatios(all.line(id).needed, needed)).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: runs(50) },
    );
  });

  it("says the same of portions as of the plan", () => {
    fc.assert(
      fc.property(anyPlan, ({ plan, cupboard }) => {
        expect(shoppingList(plan, { cupboard }).portions.map(({ person, meal }) => [person, meal])).toEqual(
          plan.portions.map(({ person, meal }) => [person, meal]),
        );
      }),
      { numRuns: runs(30) },
    );
  });
});
