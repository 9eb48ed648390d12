import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { amount } from "../../src/measure/amount.ts";
import { breakDown } from "../../src/measure/breakDown.ts";
import { formatAmount } from "../../src/measure/format.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, over, times, toStep } from "../../src/number/exact.ts";
import { floor } from "../../src/number/ratio.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { energyShares } from "../../src/sheet/energy.ts";
import { explain } from "../../src/sheet/explain.ts";

/** Foods of which only the mass counts here. */
const plain = (...ids: string[]) =>
  foodTable(ids.map((id) => ({ id, name: id, source: "mass only", per100g: {} })));

const grams = (text: string): string =>
  exactText(
    sheet({ name: "x", portions: 1, lines: [{ food: "x", amount: text }] }, plain("x")).lines[0]!.grams,
  );

describe("armed-forces recipe cards (US DoD, Armed Forces Recipe Service, A. General Information No. 1; read in the published text)", () => {
  const card = (portions: number, lines: [string, string][]) =>
    sheet(
      { name: "Card", portions, lines: lines.map(([food, text]) => ({ food, amount: text })) },
      plain(...lines.map(([food]) => food)),
    );

  it("1(2): 348 portions from a card for 100 is a working factor of 3.48, and 1.25 lb becomes 4.35 lb, or 4 lb 5 1/2 oz", () => {
    const scaled = scale(card(100, [["meat", "1.25 lb"]]), { portions: 348 }).sheet;
    const line = scaled.lines[0]!;
    expect(line.amount.value.toString()).toBe("4.35");
    const ounces = over(line.grams, exact(grams("1 oz")));
    expect(exactText(toStep(ounces, exact("1/4")))).toBe(exactText(exact("69.5"))); // 4 lb 5.5 oz
    const card14 = breakDown(line.amount, ["lb", "oz"], { step: "1/4" });
    expect(formatAmount(card14)).toBe("4 lb 5 1/2 oz");
  });

  it("1(3): portions of 3 oz for 4 oz, 348 of them: 261 portions' worth, factor 2.61; 2 lb of cornstarch becomes 5.22 lb (continued in NAVEDTRA 14163)", () => {
    const batch = card(100, [["cornstarch", "2 lb"]]);
    const scaled = scale(batch, { factor: "3/4", portions: 348 }).sheet;
    expect(scaled.lines[0]!.amount.value.toString()).toBe("5.22");
  });

  it("NAVEDTRA 14163: 333 portions of a card for 100 turn 6 gal into 19.98 gal", () => {
    const water = foodTable([{ id: "stock", name: "stock", source: "volume only", density: 1, per100g: {} }]);
    const s = sheet(
      { name: "Card", portions: 100, measures: "us", lines: [{ food: "stock", amount: "6 gal" }] },
      water,
    );
    const scaled = scale(s, { portions: 333 }).sheet.lines[0]!.amount;
    expect(scaled.value.toString()).toBe("19.98");
    const spoons = breakDown(scaled, ["gallon", "quart", "pint", "cup", "tbsp", "tsp"], { step: "1/4" });
    expect(exactText(spoons.value)).toBe(
      exactText(amount("19 gal 3 qt 1 pt 1 c 10 tbsp 2 3/4 tsp", { measures: "us" }).value),
    );
  });

  it("1(2), quantity on hand: 102 lb where the card has 30 lb is a factor of 3.40", () => {
    const { factor } = scale(card(100, [["beef", "30 lb"]]), { mass: "1.02 lb" });
    expect(factor.toString()).toBe("3.4");
  });
});

describe("quantity recipes", () => {
  it("USDA Recipes for Schools, factor method: 100 servings of 3.49 oz to 80 is 349 oz to 279.2 oz (read; last step derived)", () => {
    const s = sheet({ name: "Card", portions: 100, lines: [{ food: "x", amount: "349 oz" }] }, plain("x"));
    expect(scale(s, { portions: 80 }).sheet.lines[0]!.amount.value.toString()).toBe("279.2");
  });

  it("Kendall College guide: five 8 oz bowls are ten 4 oz cups: the total is what a factor compares (read)", () => {
    const s = sheet({ name: "Soup", portions: 5, lines: [{ food: "x", amount: "40 oz" }] }, plain("x"));
    const cups = scale(s, { mass: "4 oz", portions: 10 });
    expect(cups.sheet.lines[0]!.amount.value.toString()).toBe("40");
    expect(cups.factor.toString()).toBe("0.5");
  });

  it("USDA FNS E-07 chicken salad: exact doublings from 25 to 50 servings (read; OCR, unambiguous cells)", () => {
    const lines: [string, string, string][] = [
      ["chicken", "3 lb 3 oz", "6 lb 6 oz"],
      ["celery", "11 oz", "1 lb 6 oz"],
      ["onions", "6 oz", "12 oz"],
      ["relish", "7 1/2 oz", "15 oz"],
    ];
    const s = sheet(
      { name: "Salad", portions: 25, lines: lines.map(([food, text]) => ({ food, amount: text })) },
      plain(...lines.map(([f]) => f)),
    );
    const doubled = scale(s, { portions: 50 }).sheet;
    lines.forEach(([, , expected], i) => {
      expect(exactText(doubled.lines[i]!.grams)).toBe(grams(expected));
    });
  });
});

describe("baker's percentage: every ingredient per 100 of flour", () => {
  const dough = (lines: Record<string, string>) =>
    sheet(
      {
        name: "Dough",
        portions: 1,
        lines: Object.entries(lines).map(([food, text]) => ({ food, amount: text })),
      },
      plain(...Object.keys(lines)),
    );
  const percent = (s: ReturnType<typeof dough>, food: string, flour = "flour"): string => {
    const of = (key: string) => s.lines.find((l) => l.key === key)!.grams;
    return exactText(times(exact(100), over(of(food), of(flour))));
  };

  it("PMQ dough: 640 oz of flour with 11.2, 2.4, 6.4 and 371.2 oz is 1.75, 0.375, 1 and 58 %; to 800 oz: 14, 3, 8 oz (read)", () => {
    const s = dough({ flour: "640 oz", salt: "11.2 oz", yeast: "2.4 oz", oil: "6.4 oz", water: "371.2 oz" });
    expect(["salt", "yeast", "oil", "water"].map((food) => percent(s, food))).toEqual([
      "1.75",
      "0.375",
      "1",
      "58",
    ]);
    const larger = scale(s, { factor: "800/640" }).sheet;
    expect(
      ["salt", "yeast", "oil"].map((key) => larger.lines.find((l) => l.key === key)!.amount.value.toString()),
    ).toEqual(["14", "3", "8"]);
    expect(["salt", "yeast", "oil", "water"].map((food) => percent(larger, food))).toEqual([
      "1.75",
      "0.375",
      "1",
      "58",
    ]);
  });

  it("Baker's Math: 40 lb of flour at 1.75 % takes 0.7 lb or 11.2 oz of salt, and 23 lb of water is 57.5 % (read)", () => {
    const s = dough({ flour: "40 lb", salt: "0.7 lb", water: "23 lb" });
    expect(percent(s, "salt")).toBe("1.75");
    expect(percent(s, "water")).toBe("57.5");
    expect(grams("0.7 lb")).toBe(grams("11.2 oz"));
  });

  const cut = (grams: Exact, places: number): string =>
    fraction(floor(grams.times(10 ** places)), 10n ** BigInt(places)).toFixed(places);

  it("73 baguettes of 390 g at 170 %: flour 16747.058, water 11220.528, salt 334.941, yeast 167.470 g (read; the source cuts off)", () => {
    const s = dough({ flour: "100 g", water: "67 g", salt: "2 g", yeast: "1 g" });
    const scaled = scale(s, { mass: "28470 g" }).sheet;
    const [flour, , salt, yeast] = scaled.lines.map((l) => cut(l.grams, 3));
    expect([flour, salt, yeast]).toEqual(["16747.058", "334.941", "167.470"]);
    // 28470 × 67/170 = 11220.5294…: the source's 11220.528 is 0.001 low.
    expect(cut(scaled.lines[1]!.grams, 4)).toBe("11220.5294");
  });

  it("poolish as a nested recipe: 936 g of it in 2340 g of dough, and flour, water, salt, yeast in all 1368, 936, 27, 9.3 g (by hand; bakers' percentages are common practice, no source)", () => {
    const foods = plain("flour", "water", "yeast", "salt");
    const poolish = {
      name: "Poolish",
      portions: 1,
      lines: [
        { food: "flour", amount: "468 g" },
        { food: "water", amount: "468 g" },
        { food: "yeast", amount: "0.3 g" },
      ],
    };
    const s = sheet(
      {
        name: "Dough",
        portions: 1,
        lines: [
          { food: "flour", amount: "900 g" },
          { food: "water", amount: "468 g" },
          { food: "yeast", amount: "9 g" },
          { food: "salt", amount: "27 g" },
          { key: "poolish", recipe: poolish, amount: "1 batch" },
        ],
      },
      foods,
    );
    // 468 + 468 + 0.3 g of poolish.
    expect(s.mass.raw.toString()).toBe("2340.3");
    const nested = s.lines[4]!.nested!;
    const all = (food: string) =>
      s.lines
        .filter((l) => l.food === food)
        .concat(nested.lines.filter((l) => l.food === food))
        .reduce((sum, l) => sum.plus(l.grams), nested.mass.raw.times(0));
    expect(["flour", "water", "salt", "yeast"].map((f) => all(f).toString())).toEqual([
      "1368",
      "936",
      "27",
      "9.3",
    ]);
    expect(all("water").div(all("flour")).times(100).toFixed(2)).toBe("68.42");
    expect(all("salt").div(all("flour")).times(100).toFixed(3)).toBe("1.974");
  });

  it("1000 flour, 600 water, 2 yeast, 10 salt: 60, 0.2 and 1 % (read)", () => {
    const s = dough({ flour: "1000 g", water: "600 g", yeast: "2 g", salt: "10 g" });
    expect(["water", "yeast", "salt"].map((food) => percent(s, food))).toEqual(["60", "0.2", "1"]);
  });

  it("pizza by pounds and ounces: 40 lb flour, 11.2 oz, 12.8 oz, 9.6 oz, 1 lb 3.2 oz, 23 lb 3.2 oz are 1.75, 2, 1.5, 3, 58 % (read)", () => {
    const s = dough({
      flour: "40 lb",
      salt: "11.2 oz",
      sugar: "12.8 oz",
      yeast: "9.6 oz",
      oil: "1 lb 3.2 oz",
      water: "23 lb 3.2 oz",
    });
    expect(["salt", "sugar", "yeast", "oil", "water"].map((food) => percent(s, food))).toEqual([
      "1.75",
      "2",
      "1.5",
      "3",
      "58",
    ]);
  });
});

describe("cooked dishes", () => {
  it("per 100 g cooked is total ÷ cooked mass × 100, and water takes up the change (Greenfield & Southgate, FAO 2003: method read; figures worked by hand)", () => {
    const foods = foodTable([
      { id: "stew", name: "stew", source: "made up", per100g: { energy: 80, protein: 4, water: 75 } },
    ]);
    const s = sheet(
      { name: "Stew", portions: 4, cookedMass: "800 g", lines: [{ food: "stew", amount: "1 kg" }] },
      foods,
    );
    expect(s.per100g("energy").value.toString()).toBe("100"); // 800 kcal ÷ 800 g × 100
    expect(s.per100g("protein").value.toString()).toBe("5"); // 40 g ÷ 800 g × 100
    expect(s.per100g("water").value.toString()).toBe("68.75"); // (750 − 200) ÷ 800 × 100
    expect(s.portion("energy").value.toString()).toBe("200");
    expect([s.mass.raw, s.mass.cooked, s.mass.portion].map(String)).toEqual(["1000", "800", "200"]);
  });

  it("net carbohydrate is carbohydrate by difference less fibre (common practice, no source)", () => {
    const foods = foodTable([
      { id: "x", name: "x", source: "made up", per100g: { carbohydrateByDifference: "27.5", fibre: "10.5" } },
    ]);
    const s = sheet({ name: "x", portions: 1, lines: [{ food: "x", amount: "200 g" }] }, foods);
    // (27.5 − 10.5) × 2, which the sheet works out and says of itself that it did.
    const net = s.total("availableCarbohydrate");
    expect([net.value.toString(), net.bound, net.derived]).toEqual(["34", "point", ["x"]]);
    expect(explain(s, "availableCarbohydrate", "total").leaves[0]?.steps.join()).toContain("fibre");
  });

  it("energy shares are quoted in whole per cents, which need not add up unless apportioned (common practice, no source)", () => {
    // 10 g protein, 5 g fat, 20 g carbohydrate: 40, 45 and 80 of 165 kcal: 24.24, 27.27 and 48.48 %.
    const foods = foodTable([
      {
        id: "x",
        name: "x",
        source: "made up",
        per100g: { protein: 10, fat: 5, carbohydrateByDifference: 20, alcohol: 0 },
      },
    ]);
    const { shares, energy } = energyShares(
      sheet({ name: "x", portions: 1, lines: [{ food: "x", amount: "100 g" }] }, foods),
    );
    expect(energy.value.toString()).toBe("165");
    const rounded = shares.map((s) => s.share.times(100).toDecimalPlaces(0).toNumber());
    expect(rounded.reduce((a, b) => a + b)).toBe(99);
    expect(shares.map((s) => s.percent)).toEqual([24, 27, 49, 0]);
    expect(shares.reduce((all, s) => all + s.percent, 0)).toBe(100);
  });
});
