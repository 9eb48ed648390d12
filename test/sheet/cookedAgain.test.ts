import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { componentIds } from "../../src/food/components.ts";
import { usdaRetention } from "../../src/food/data/retentionUsdaR6.ts";
import { type EnergySystemId, energySystems, likelySystem, weightsOf } from "../../src/food/energy.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { type FoodTable, foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, minus, plus, sum, times } from "../../src/number/exact.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { type Between, between } from "../../src/sheet/between.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cooking } from "../../src/sheet/cooking.ts";
import { energyShares } from "../../src/sheet/energy.ts";
import { energyCheck } from "../../src/sheet/energyCheck.ts";
import { explain } from "../../src/sheet/explain.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText as shown } from "../../src/show/text.ts";
import { runs } from "../runs.ts";

/** Red wine by its usual figures, invented to the decimal; alcohol by mass. */
const wine: FoodInput = {
  ...{ id: "wine", name: "Wine", state: "as sold", source: "test" },
  per100g: {
    ...{ energy: 85, protein: "0.07", fat: 0, carbohydrateByDifference: "2.6", fibre: 0, ash: "0.28" },
    ...{ water: "86.5", alcohol: "10.6" },
  },
};
const bran: FoodInput = {
  ...{ id: "bran", name: "Bran", state: "dry", source: "test" },
  per100g: { protein: 15, fat: 4, carbohydrateByDifference: 65, fibre: 40, alcohol: 0 },
};

type Retention = RecipeInput["lines"][number]["retention"];

const one = (food: FoodInput, retention?: Retention): Sheet =>
  sheet(
    {
      name: "Stew",
      portions: 1,
      lines: [{ key: "in", food: food.id, amount: "100 g", ...(retention && { retention }) }],
    },
    foodTable([food]).withRetention(usdaRetention),
  );

describe("energy of what has lost alcohol", () => {
  // USDA Table of Nutrient Retention Factors, Release 6: code 5006, an hour's simmering, leaves 25 % of
  // the alcohol. 85 − 7 × 10.6 × 0.75 = 29.35; reckoned afresh 4 × 0.07 + 4 × 2.6 + 7 × 2.65 = 29.23.
  it("falls by 7 kcal with each gram, whoever asks", () => {
    const s = one(wine, "5006");
    const energy = s.total("energy");
    expect([energy.value.toString(), energy.bound, energy.derived]).toEqual(["29.35", "point", ["in"]]);
    expect(energyShares(s).energy.value.toString()).toBe("29.23");
    const [line] = energyCheck(s).lines;
    expect([line?.given.value.toString(), line?.computed.value.toString(), line?.verdict]).toEqual([
      ...["29.35", "29.23", "agrees"],
    ]);
    expect(between(s, "energy").least.toString()).toBe("29.35");
    expect(cooking(s).of("energy").lost.value.toString()).toBe("55.65");
    const { energy: _, ...silent } = wine.per100g;
    expect(
      one({ ...wine, per100g: silent }, "5006")
        .total("energy")
        .value.toString(),
    ).toBe("29.23");
  });

  it("is explained by what the code names, and by the factors", () => {
    expect(explain(one(wine, "5006"), "energy", { line: "in" }).steps.slice(2)).toEqual([
      "85 kcal in 100 g: test",
      expect.stringMatching(
        /^29.35 kcal left after cooking, since 25% of alcohol is left, by general Atwater factors: code 5006, alcoholic drinks.*Release 6/,
      ),
    ]);
    const { energy: _, ...silent } = wine.per100g;
    expect(explain(one({ ...wine, per100g: silent }, "5006"), "energy", { line: "in" }).steps[3]).toMatch(
      /^29.23 kcal left after cooking, since 25% of alcohol is left: code 5006/,
    );
    expect(explain(one(wine, "5006"), "alcohol", { line: "in" }).steps[3]).toMatch(
      /^25% left after cooking: code/,
    );
    expect(explain(one(wine, "5006"), "protein", { line: "in" }).steps.length).toBe(3);
  });

  it("goes by a share of its own where the recipe names one, and stays where nothing that gives energy is lost", () => {
    expect(one(wine, { alcohol: "0.25", energy: "0.5" }).total("energy").value.toString()).toBe("42.5");
    const salted = one({ ...wine, per100g: { ...wine.per100g, iron: 1 } }, { iron: "0.5" }).total("energy");
    expect([salted.value.toString(), salted.derived]).toEqual(["85", []]);
    expect(one(wine, { alcohol: 1 }).total("energy").derived).toEqual([]);
  });

  it("is at least what is sure where nobody says how much alcohol there was", () => {
    // 85 − 4 × 0.07 − 4 × 2.6 = 74.32 is all that alcohol can have brought: 85 − 0.75 × 74.32.
    const { alcohol: _, ...silent } = wine.per100g;
    const left = one({ ...wine, per100g: silent }, "5006");
    expect([left.total("energy").value.toString(), left.total("energy").bound]).toEqual([
      "29.26",
      "at-least",
    ]);
    expect([between(left, "energy").least, between(left, "energy").most].map(String)).toEqual([
      "29.26",
      "85",
    ]);
    expect(explain(left, "energy", { line: "in" }).steps[3]).toMatch(/^at least 29.26 kcal left/);
    // Below 2 g: 85 − 7 × 2 × 0.75 = 74.5 at least.
    const below = one({ ...wine, per100g: { ...silent, alcohol: { below: 2 } } }, "5006").total("energy");
    expect([below.value.toString(), below.bound]).toEqual(["74.5", "at-least"]);
    // Energy that never counted the alcohol cannot lose it: not 0 for sure.
    const none = one({ ...wine, per100g: { ...wine.per100g, energy: 11 } }, "5006").total("energy");
    expect([none.value.toString(), none.bound]).toEqual(["0", "at-least"]);
  });

  it("keeps to what a label's rounding allows", () => {
    const rounded = { ...wine.per100g, energy: { value: 85, low: "84.5", high: "85.5" } };
    const range = between(one({ ...wine, per100g: rounded }, "5006"), "energy");
    expect([range.least, range.most].map(String)).toEqual(["28.85", "29.85"]);
  });
});

describe("bran in a dish that is cooked again", () => {
  // Half of 40 g of fibre is left; carbohydrate by difference stays 65 g, as no share names it.
  const flat = one(bran, { fibre: "0.5" });
  const nested = sheet(
    {
      name: "Outer",
      portions: 1,
      lines: [
        {
          key: "mash",
          retention: { fibre: "0.5" },
          amount: "1 batch",
          recipe: { name: "Mash", portions: 1, lines: [{ key: "bran", food: "bran", amount: "100 g" }] },
        },
      ],
    },
    foodTable([bran]),
  );

  it("has what the same bran has that is cooked so at once", () => {
    for (const s of [flat, nested]) {
      expect(s.total("availableCarbohydrate").value.toString()).toBe("45");
      expect(
        energyShares(s, { system: "us-101.9-c" })
          .shares.find((x) => x.of === "carbohydrate")
          ?.energy.value.toString(),
      ).toBe("180");
    }
  });

  it("is explained down to the line, loss and all", () => {
    const why = explain(nested, "fibre", "total");
    expect(why.leaves[0]?.steps).toEqual([
      "100 g written",
      "100 g of edible portion",
      "40 g in 100 g: test",
      "50% left after cooking, as the recipe says",
      "a share of Mash",
    ]);
    expect(exactText(why.leaves[0]?.value ?? exact(0))).toBe("20");
    expect(explain(nested, "availableCarbohydrate", "total").leaves[0]?.steps[3]).toBe(
      "45 g left after cooking, since 50% of fibre is left, as the recipe says",
    );
  });
});

describe("a share on energy around a nested dish", () => {
  it("is in what is given: the lines total the sheet's energy", () => {
    const pot = { name: "Pot", portions: 1, lines: [{ key: "wine", food: "wine", amount: "100 g" }] };
    const s = sheet(
      {
        name: "Outer",
        portions: 1,
        lines: [{ key: "pot", recipe: pot, amount: "50 g", retention: { energy: "0.8" } }],
      },
      foodTable([wine]),
    );
    const check = energyCheck(s);
    expect(check.lines.map(({ key, given, verdict }) => [key, given.value.toString(), verdict])).toEqual([
      ["pot/wine", "34", "agrees"],
    ]);
    expect(s.total("energy").value.toString()).toBe("34");
  });
});

const systems = Object.keys(energySystems) as EnergySystemId[];
const share = fc.integer({ min: 0, max: 20 }).map((n) => `${n}/20`);
const cooked = fc.dictionary(fc.constantFrom(...componentIds), share, { maxKeys: 6, noNullPrototype: true });
const everything = fc
  .array(share, { minLength: componentIds.length, maxLength: componentIds.length })
  .map((all) => Object.fromEntries(componentIds.map((id, i) => [id, all[i] ?? "1"])));
const weighed = fc.array(
  fc.tuple(fc.constantFrom(...starterFoods.ids, "wine", "bran", "bar"), fc.integer({ min: 1, max: 3000 })),
  { minLength: 1, maxLength: 4 },
);
const bar: FoodInput = {
  ...{ id: "bar", name: "Bar", source: "test" },
  per100g: {
    ...{ energy: 388, protein: 30, fat: 14, availableCarbohydrate: 38, polyols: 20, fibre: 11 },
    ...{ organicAcids: 0, alcohol: 0 },
  },
};
const table: FoodTable = starterFoods.with([wine, bran, bar]);

type Shares = Readonly<Record<string, string>>;

const product = (a: Shares, b: Shares): Shares =>
  Object.fromEntries(
    [...new Set([...Object.keys(a), ...Object.keys(b)])].map((id) => [
      id,
      exactText(times(exact(a[id] ?? "1"), exact(b[id] ?? "1"))),
    ]),
  );

/** What is cooked in a dish of its own and again in another, and the same cooked once by both. */
function twice(
  lines: readonly (readonly [string, number])[],
  inside: Shares,
  around: Shares,
): [Sheet, Sheet] {
  const of = (retention: Shares): RecipeInput["lines"][number][] =>
    lines.map(([food, n], i) => ({ key: `l${i}`, food, amount: `${n}/7 g`, retention }));
  const dish = { name: "Dish", portions: 1, lines: of(inside) };
  const outer = { name: "Outer", portions: 2 };
  const nested = [{ key: "in", recipe: dish, amount: "1 batch", retention: around }];
  return [
    sheet({ ...outer, lines: nested }, table),
    sheet({ ...outer, lines: of(product(inside, around)) }, table),
  ];
}

const text = (f: Exact | undefined): string => (f ? exactText(f) : "none");
const inner = (keys: readonly string[]): readonly string[] => keys.map((key) => `in/${key}`);

function expectSame(nested: Sheet, flat: Sheet): void {
  for (const id of componentIds) {
    const [a, b] = [nested.total(id), flat.total(id)];
    expect([id, text(a.value), a.bound, text(a.coverage)]).toEqual([
      id,
      text(b.value),
      b.bound,
      text(b.coverage),
    ]);
    for (const kind of ["missing", "trace", "below", "borrowed", "derived", "presumed"] as const)
      expect([id, kind, [...a[kind]].sort()]).toEqual([id, kind, [...inner(b[kind])].sort()]);
    expect([id, text(nested.portion(id).value)]).toEqual([id, text(flat.portion(id).value)]);
    expect([id, text(nested.per100g(id).value)]).toEqual([id, text(flat.per100g(id).value)]);
    const ends = ({ least, most }: Between): string[] => [text(least), text(most)];
    expect([id, ...ends(between(nested, id))]).toEqual([id, ...ends(between(flat, id))]);
    const leaves = (s: Sheet): Exact => sum(explain(s, id, "total").leaves.map((leaf) => leaf.value));
    expect([id, text(leaves(nested))]).toEqual([id, text(a.value)]);
    expect([id, text(leaves(flat))]).toEqual([id, text(a.value)]);
    const { raw, gained, retained, lost } = cooking(nested).of(id);
    expect(text(plus(raw.value, gained.value))).toBe(text(plus(retained.value, lost.value)));
    expect(text(retained.value)).toBe(text(a.value));
  }
  for (const system of systems) {
    const [a, b] = [nested, flat].map((s) => energyShares(s, { system }));
    expect(a?.shares.map((part) => [part.of, text(part.energy.value), part.energy.bound])).toEqual(
      b?.shares.map((part) => [part.of, text(part.energy.value), part.energy.bound]),
    );
    expect(text(a?.kilojoules?.value)).toBe(text(b?.kilojoules?.value));
  }
  const [a, b] = [energyCheck(nested), energyCheck(flat)];
  expect(a.lines.map((l) => [l.key, text(l.given.value), text(l.computed.value), l.verdict])).toEqual(
    b.lines.map((l) => [`in/${l.key}`, text(l.given.value), text(l.computed.value), l.verdict]),
  );
  expect(text(sum(a.lines.map((l) => l.given.value)))).toBe(text(nested.total("energy").value));
}

describe("nested is flat, for every way of asking", () => {
  it("with shares around the dish alone", () => {
    fc.assert(
      fc.property(weighed, cooked, (lines, around) => expectSame(...twice(lines, {}, around))),
      { numRuns: runs(25) },
    );
  });

  it("with every component named inside and around", () => {
    fc.assert(
      fc.property(weighed, everything, everything, (lines, inside, around) =>
        expectSame(...twice(lines, inside, around)),
      ),
      { numRuns: runs(15) },
    );
  });

  it("with some named inside and others around, but for what one cooking names and the other works out", () => {
    const computed = new Set<string>(["energy", "availableCarbohydrate", "carbohydrateByDifference"]);
    for (const id of ["vitaminARae", "vitaminARe", "folate", "foodFolate", "folateDfe", "niacinEquivalents"])
      computed.add(id);
    for (const id of ["salt", "sodium", "omega3", "omega6"]) computed.add(id);
    const some = fc.dictionary(fc.constantFrom(...componentIds.filter((id) => !computed.has(id))), share, {
      maxKeys: 8,
      noNullPrototype: true,
    });
    fc.assert(
      fc.property(weighed, some, some, (lines, inside, around) => {
        expectSame(...twice(lines, inside, around));
      }),
      { numRuns: runs(25) },
    );
  });
});

describe("cooking after cooking", () => {
  it("takes one step after the other: a share around a dish is of the dish as it was eaten", () => {
    const pot = (retention: Shares): RecipeInput => ({
      ...{ name: "Pot", portions: 1, lines: [{ food: "wine", amount: "100 g", retention }] },
    });
    const energy = (inside: Shares, around: Shares): string => {
      const lines = [{ recipe: pot(inside), amount: "1 batch", retention: around }];
      return sheet({ name: "Dish", portions: 1, lines }, table).total("energy").value.toString();
    };
    // 0.9 × 85 − 7 × 10.6 × 0.75, and 0.9 × (85 − 7 × 10.6 × 0.75).
    expect(energy({ energy: "0.9" }, { alcohol: "0.25" })).toBe("20.85");
    expect(energy({ alcohol: "0.25" }, { energy: "0.9" })).toBe("26.415");
  });

  it("reaches through dishes in dishes, whatever boils off on the way", () => {
    fc.assert(
      fc.property(weighed, cooked, cooked, fc.constantFrom("0.9", "1", "1.3"), (lines, a, b, yieldFactor) => {
        const of = (retention: Shares): RecipeInput["lines"][number][] =>
          lines.map(([food, n]) => ({ food, amount: `${n}/7 g`, retention }));
        const dish = (name: string, within: RecipeInput["lines"]): RecipeInput => ({
          ...{ name, portions: 1, yieldFactor, lines: within },
        });
        const inner = dish("Inner", of({}));
        const middle = dish("Middle", [{ key: "in", recipe: inner, amount: "1 batch", retention: a }]);
        const outer = dish("Outer", [{ key: "mid", recipe: middle, amount: "1/2 batch", retention: b }]);
        // The same with what the inner dish is made of in the middle one.
        const shallow = dish("Outer", [
          { key: "mid", recipe: dish("Middle", of(a)), amount: "1/2 batch", retention: b },
        ]);
        const [deep, flat] = [sheet(outer, table), sheet(shallow, table)];
        for (const id of componentIds) {
          if (id === "water") continue;
          expect([id, text(deep.total(id).value)]).toEqual([id, text(flat.total(id).value)]);
          const leaves = explain(deep, id, "portion").leaves.map((leaf) => leaf.value);
          expect([id, text(sum(leaves))]).toEqual([id, text(deep.total(id).value)]);
        }
        for (const system of systems)
          expect(text(energyShares(deep, { system }).energy.value)).toBe(
            text(energyShares(flat, { system }).energy.value),
          );
      }),
      { numRuns: runs(20) },
    );
  });

  it("leaves water as a whole: the share is of what the dish holds as eaten", () => {
    const pot = { name: "Pot", portions: 1, yieldFactor: "2", lines: [{ food: "wine", amount: "100 g" }] };
    const lines = [{ recipe: pot, amount: "1 batch", retention: { water: "0.5" } }];
    const s = sheet({ name: "Dish", portions: 1, lines }, table);
    expect(s.total("water").value.toString()).toBe("93.25"); // (86.5 + 100) × 0.5
    const why = explain(s, "water", "total");
    expect(exactText(sum(why.leaves.map((leaf) => leaf.value)))).toBe("93.25");
    expect(why.leaves[0]?.steps.slice(-2)).toEqual(["50% of its water left after cooking", "a share of Pot"]);
  });
});

describe("energy given, after cooking", () => {
  it("lies from what the factors make of what is left just as far as it did before", () => {
    fc.assert(
      fc.property(fc.constantFrom("wine", "bar", "bran", ...starterFoods.ids), everything, (id, shares) => {
        // Polyols are part of the carbohydrate: more of them cannot be left than there is of it.
        const polyols = shares.availableCarbohydrate ?? "1";
        const { energy: _, ...others }: Shares = { ...shares, polyols, organicAcids: polyols };
        const food = table.get(id);
        const { system } = likelySystem(food);
        const at = (retention: Shares): Sheet =>
          sheet({ name: "r", portions: 1, lines: [{ food: id, amount: "100 g", retention }] }, table);
        const [before, after] = [at({}), at(others)];
        const constituents = [...weightsOf(system).keys()];
        if (constituents.some((c) => before.total(c).bound !== "point")) return;
        if (after.total("energy").bound !== "point") return;
        const off = (s: Sheet): Exact =>
          minus(s.total("energy").value, energyShares(s, { system }).energy.value);
        expect(exactText(off(after))).toBe(exactText(off(before)));
      }),
      { numRuns: runs(120) },
    );
  });
});

describe("sugar alcohols by US factors", () => {
  // 21 CFR 101.9(c)(1)(i)(C) and (F): 60 g of them count at 0 until it is said which they are.
  const gum = (energy: number): Sheet =>
    one({
      ...{ id: "gum", name: "Gum", source: "test" },
      per100g: {
        ...{ energy, protein: 0, fat: 0, carbohydrateByDifference: 98, fibre: 0, solubleFibre: 0 },
        ...{ polyols: 60, alcohol: 0 },
      },
    });
  const check = (energy: number) => energyCheck(gum(energy), { system: "us-101.9-c" });

  it("prove nothing of more energy than is counted, and something of less", () => {
    const [more] = check(240).lines;
    expect([more?.computed.value.toString(), more?.computed.bound, more?.verdict, more?.difference]).toEqual([
      ...["152", "at-least", "unknown", undefined],
    ]);
    expect(check(240).differing).toEqual([]);
    expect(shown(check(240))).toMatch(/240 +at least 152 +\? +by these factors it is at least/);
    expect(check(152).lines[0]?.verdict).toBe("agrees");
    expect(check(100).differing).toEqual(["in"]);
  });
});
