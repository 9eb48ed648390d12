import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Allergen } from "../../src/food/allergens.ts";
import type { ComponentId } from "../../src/food/components.ts";
import { readFigure } from "../../src/food/composition.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { amount, gramsOf } from "../../src/measure/amount.ts";
import { exactText } from "../../src/number/digits.ts";
import { absolute, exact, fraction, minus, over, sum, times, ZERO } from "../../src/number/exact.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import type { SubstitutesOptions } from "../../src/scale/substitutes/options.ts";
import { substitutes } from "../../src/scale/substitutes.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cellValue, withColumn } from "../../src/sheet/columns.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText as shown } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { met, runs } from "../runs.ts";

const bowl: RecipeInput = {
  name: "Camp bowl",
  portions: 2,
  lines: [
    { key: "rice", food: "rice-brown-long-boiled", amount: "400 g" },
    { key: "beans", food: "kidney-beans-red-boiled", amount: "300 g", scaling: "adjustable", least: "100 g" },
    { key: "oil", food: "olive-oil", amount: "10 g", scaling: "per-portion" },
  ],
};
const camp = sheet(bowl, starterFoods);

describe("substitutes", () => {
  it("keep to the same group and state, rank the closest first, and never name the food itself", () => {
    const { found } = substitutes(camp, "beans", { most: 50 });
    expect(found[0]?.food).toBe("black-beans-boiled");
    expect(found.map(({ food }) => food)).not.toContain("kidney-beans-red-boiled");
    for (const { food, state } of found)
      expect([starterFoods.get(food).group, state]).toEqual(["pulses", "cooked"]);
    const distances = found.map(({ distance }) => distance.toNumber());
    expect(distances).toEqual([...distances].sort((a, b) => a - b));
    expect(substitutes(camp, "beans").found).toHaveLength(5);
    expect(substitutes(camp, "beans", { most: 1 }).found.map((s) => s.food)).toEqual(["black-beans-boiled"]);
  });

  it("hold nothing close to what the line says nothing of, and tell who fills that gap", () => {
    const canned: FoodInput = {
      id: "canned",
      name: "Canned beans",
      source: "made up: a label with four figures",
      state: "as sold",
      per100g: { energy: "90", protein: "6" },
    };
    const lines = [
      { key: "rice", food: "rice-brown-long-boiled", amount: "100 g" },
      { key: "beans", food: "canned", amount: "130 g" },
    ];
    const chilli = sheet({ name: "Chilli", portions: 1, lines }, starterFoods.with([canned]));
    const among = ["kidney-beans-red-boiled", "black-beans-boiled"];
    const components: ComponentId[] = ["energy", "protein", "vitaminE", "choline", "vitaminK"];
    const asked = substitutes(chilli, "beans", { components, among });
    // What is not known has no say: the amounts are those of a search for what is known alone.
    const known = substitutes(chilli, "beans", { components: ["energy", "protein"], among });
    expect(asked.untold).toEqual(["vitaminE", "choline", "vitaminK"]);
    expect(asked.found.map(({ grams }) => exactText(grams))).toEqual(
      known.found.map(({ grams }) => exactText(grams)),
    );
    expect(asked.found.map(({ tells, silent }) => [tells.length, silent.length])).toEqual([
      [3, 0],
      [3, 0],
    ]);
    expect(shown(asked)).toContain("Canned beans says nothing of vitamin E");
    const none = errorOf(() => substitutes(chilli, "beans", { components: ["choline"], among }));
    expect([none.code, none.path]).toEqual(["substitutes-malformed", ["components"]]);
  });

  it("show the salt that a swap brings, though it was not asked to stay close", () => {
    const among = ["kidney-beans-red-canned-drained"];
    const [canned] = substitutes(camp, "beans", { among }).found;
    const sodium = canned?.also.find(({ component }) => component === "sodium");
    // SR28 16029: 231 mg of sodium in 100 g of canned beans, drained.
    const perGram = fraction(231n, 100n);
    const grams = over(canned?.grams ?? ZERO, camp.values.portions);
    const before = camp.cell("beans", "sodium").value;
    const brought = minus(times(grams, perGram), over(before, camp.values.portions));
    expect(sodium && exactText(minus(sodium.after.value, sodium.before.value))).toBe(exactText(brought));
    expect(shown(substitutes(camp, "beans", { among }), { width: 200 })).toContain("sodium (mg more)");
    expect(substitutes(camp, "beans", { among, components: ["protein", "sodium"] }).found[0]?.also).toEqual(
      [],
    );
  });

  it("give the sheet with the food in the line's place: key, scaling and all other lines as they were", () => {
    const [first] = substitutes(camp, "beans").found;
    const made = first?.sheet as Sheet;
    expect(made.lines.map((l) => [l.key, l.food, l.scaling])).toEqual([
      ["rice", "rice-brown-long-boiled", "held"],
      ["beans", "black-beans-boiled", "adjustable"],
      ["oil", "olive-oil", "per-portion"],
    ]);
    expect(made.lines[1] && exactText(made.lines[1].grams)).toBe(first && exactText(first.grams));
    expect(made.lines[0]?.grams.toString()).toBe("400");
    const again = sheet(toRecipe(made), starterFoods);
    for (const id of ["energy", "protein", "iron"] as const)
      expect(exactText(again.total(id).value)).toBe(exactText(made.total(id).value));
  });

  it("keep columns of one's own", () => {
    const own = withColumn(camp, "proteinPerGram", (at) => at.get("protein").over(at.get("grams")));
    const [first] = substitutes(own, "beans").found;
    const cell = first && cellValue(first.sheet, "proteinPerGram", { line: "beans" });
    // SR28 16015: 8.86 g of protein in 100 g of boiled black beans.
    expect(cell && !cell.failed && cell.value.toString()).toBe("0.0886");
  });

  it("say what moves, and that exactly", () => {
    for (const { sheet: made, changes, distance } of substitutes(camp, "beans").found) {
      for (const { component, before, after, share } of changes) {
        expect(exactText(before.value)).toBe(exactText(camp.portion(component).value));
        expect(exactText(after.value)).toBe(exactText(made.portion(component).value));
        expect(share.toNumber()).toBeCloseTo(after.value.div(before.value).minus(1).toNumber(), 10);
      }
      const total = sum(
        changes.map(({ before, after }) => absolute(over(minus(after.value, before.value), before.value))),
      );
      expect(exactText(total)).toBe(exactText(distance));
    }
  });

  it("leave out what holds an allergen and what nothing is known of, and list both", () => {
    const among = ["tofu-firm", "chickpeas-boiled", "bread-wholemeal", "cheddar", "soy-sauce"];
    const all = substitutes(camp, "beans", { among });
    expect(all.found.map(({ food }) => food).sort()).toEqual([
      "bread-wholemeal",
      "cheddar",
      "chickpeas-boiled",
      "tofu-firm",
    ]);
    expect([all.outside.map(({ food }) => food), all.avoided, all.unknown]).toEqual([["soy-sauce"], [], []]);
    const some = substitutes(camp, "beans", { among, avoid: ["soya", "milk"] });
    expect(some.found.map((s) => s.food)).toEqual(["chickpeas-boiled"]);
    expect(some.avoided).toEqual([
      { food: "tofu-firm", holds: ["soya"] },
      { food: "cheddar", holds: ["milk"] },
      { food: "soy-sauce", holds: ["soya"] },
    ]);
    expect(some.unknown).toEqual(["bread-wholemeal"]);
    expect(shown(some)).toMatch(/allergens not known, left out: bread-wholemeal/);
  });

  it("carry the cautions of what stands in", () => {
    const { found } = substitutes(camp, "beans", { among: ["kidney-beans-red-dry"] });
    expect(found[0]?.grams.toNumber()).toBeCloseTo((300 * 8.67) / 22.53, 10);
    expect(found[0]?.cautions.map((c) => c.code)).toEqual(["beans-boil"]);
    expect(shown(substitutes(camp, "beans", { among: ["kidney-beans-red-dry"] }))).toMatch(
      /boil in fresh water/,
    );
  });

  it("put foods that say all before foods that are silent, and leave out what brings nothing", () => {
    const like = { group: "pulses", state: "cooked", source: "made up" } as const;
    const table = starterFoods.with([
      { ...like, id: "quiet", name: "Quiet beans", per100g: { protein: "8.67" } },
      { ...like, id: "silent", name: "Silent beans", per100g: { energy: 127 } },
      { ...like, id: "ice", name: "Ice", per100g: { energy: 0, protein: 0, fat: 0 } },
    ]);
    const all = substitutes(sheet(bowl, table), "beans", { most: 100 });
    expect(all.found.at(-1)).toMatchObject({
      food: "quiet",
      silent: ["energy", "fat", "carbohydrateByDifference", "fibre"],
    });
    expect(all.without).toEqual(["silent", "ice"]);
    expect(shown(all)).toContain("no protein, or silent on it, left out: silent, ice");
  });

  it("of twice the food is half of it", () => {
    const beans = starterFoods.get("kidney-beans-red-boiled");
    const double = Object.fromEntries(
      (["energy", "protein", "fat", "carbohydrateByDifference", "fibre", "sodium"] as const).map((id) => [
        id,
        exactText(times(readFigure(beans, id).value, fraction(2n, 1n))),
      ]),
    );
    const strong: FoodInput = { ...beans, id: "strong", per100g: double };
    const [first] = substitutes(sheet(bowl, starterFoods.with([strong])), "beans").found;
    expect([first?.food, first?.grams.toString(), first?.distance.toString()]).toEqual([
      "strong",
      "150",
      "0",
    ]);
  });

  it("are cooked as the line was", () => {
    const stew = sheet(
      {
        name: "Stew",
        portions: 1,
        lines: [
          { key: "leaf", food: "spinach-raw", amount: "200 g", retention: { protein: "0.5" } },
          { food: "potatoes-raw", amount: "100 g" },
        ],
      },
      starterFoods,
    );
    const [first] = substitutes(stew, "leaf", { among: ["kale-raw"], match: "protein" }).found;
    // Both keep half: 2.86 × 200 = 4.28 × 133.6…
    expect(first && exactText(first.grams)).toBe(exactText(over(exact("572"), exact("4.28"))));
    expect(first && exactText(first.sheet.cell("leaf", "protein").value)).toBe("2.86");
  });
});

/** A dish of one line, for one. */
const alone = (food: string, amount: string): Sheet =>
  sheet({ name: "r", portions: 1, lines: [{ key: "line", food, amount }] }, starterFoods);

describe("what is matched", () => {
  it.each([
    // Shares of energy by 4 kcal/g: chicken 75 %, beans 27, tofu 48; oats 14, milk 21 of 3 g in 100.
    ["chicken-breast-roasted", "150 g", "protein"],
    ["kidney-beans-red-boiled", "150 g", "protein"],
    ["tofu-firm", "150 g", "protein"],
    ["oats-rolled-dry", "60 g", "energy"],
    ["milk-whole", "200 g", "energy"],
    ["olive-oil", "10 g", "energy"],
    // Half of spinach's energy is protein, and nobody eats it for that.
    ["spinach-raw", "200 g", "energy"],
    ["spinach-raw", "30 g", "mass"],
    ["soy-sauce", "15 g", "sodium"],
    ["cumin-seed", "2 g", "mass"],
    ["salt", "2 g", "sodium"],
  ])("of %s, %s: %s", (food, amount, match) => {
    const found = substitutes(alone(food, amount), "line", {
      components: food === "salt" ? ["sodium"] : ["energy"],
      among: ["egg-raw"],
    });
    expect(found.match).toBe(match);
  });

  it("is what the caller says, and named with the table", () => {
    const beans = substitutes(camp, "beans", { match: "energy" });
    expect(beans.match).toBe("energy");
    for (const { sheet: made } of beans.found)
      expect(exactText(made.portion("energy").value)).toBe(exactText(camp.portion("energy").value));
    expect(shown(beans)).toContain("each brings as much energy as Kidney beans, red, boiled did");
    const byMass = substitutes(camp, "beans", { match: "mass" }).found;
    expect(byMass.map(({ grams }) => exactText(grams))).toEqual(byMass.map(() => "300"));
  });

  it("must be there to be matched", () => {
    const { code, path, hint } = errorOf(() => substitutes(camp, "beans", { match: "vitaminB12" }));
    expect([code, path, hint]).toEqual([
      "substitutes-malformed",
      ["match"],
      "match protein, or leave it out",
    ]);
    expect(errorOf(() => substitutes(camp, "beans", { match: "mithril" as never })).code).toBe(
      "component-unknown",
    );
  });
});

describe("the amount of a substitute", () => {
  it("is none that leaves the food out, and none that nobody would serve", () => {
    const chicken = substitutes(alone("chicken-breast-roasted", "150 g"), "line", {
      among: ["tofu-firm", "soy-sauce", "almonds", "lentils-boiled", "tempeh"],
    });
    // 150 g of chicken bring 46.53 g of protein, 100 g of tofu 17.27.
    const tofu = chicken.found.find(({ food }) => food === "tofu-firm");
    expect(tofu?.grams.toNumber()).toBeCloseTo((46.53 / 17.27) * 100, 8);
    expect(chicken.found.map(({ food }) => food).sort()).toEqual(["tempeh", "tofu-firm"]);
    expect(chicken.outside.map(({ food }) => food).sort()).toEqual([
      "almonds",
      "lentils-boiled",
      "soy-sauce",
    ]);
    const soya = substitutes(alone("tofu-firm", "150 g"), "line", { most: 100 });
    // 318 g of soy sauce have that protein, and 17 g of sodium. Of soya drink it would take 900 g.
    expect(soya.outside.map(({ food }) => food)).toEqual(
      expect.arrayContaining(["soy-sauce", "soya-drink-unsweetened-fortified"]),
    );
    const sauce = soya.outside.find(({ food }) => food === "soy-sauce");
    expect(sauce?.grams.toNumber()).toBeCloseTo((150 * 17.27) / 8.14, 8);
    expect(sauce?.most.toNumber()).toBeCloseTo(100_000 / 5493, 8);
    expect(shown(soya, { width: 300 })).toContain("soy-sauce (318 g, served at most 18.2 g)");
  });

  it("of what seasons is that of a seasoning, unless the line had more of its like", () => {
    const among = ["honey", "maple-syrup"];
    // A tablespoon of sugar by a tablespoon of honey; 100 g of sugar by more than 50 g of it.
    expect(substitutes(alone("sugar-white", "12 g"), "line", { among }).outside).toEqual([]);
    expect(substitutes(alone("sugar-white", "100 g"), "line", { among }).outside).toEqual([]);
    expect(substitutes(alone("bananas-raw", "200 g"), "line", { among: ["honey"] }).outside).toEqual([
      expect.objectContaining({ food: "honey" }),
    ]);
    // Gelatine has no measure but a tablespoon of 7 g: four of them, though 32.6 g have the protein.
    const spread = substitutes(alone("chicken-breast-roasted", "90 g"), "line", {
      among: ["gelatine-powder"],
    });
    expect(spread.found).toEqual([]);
    expect(spread.outside[0]?.most.toNumber()).toBe(28);
  });

  it("moves the line's own least and most with it", () => {
    const lines = [
      { key: "beans", food: "kidney-beans-red-boiled", amount: "300 g", least: "100 g", most: "200 g" },
    ];
    const s = sheet({ name: "r", portions: 2, lines }, starterFoods);
    const [tofu] = substitutes(s, "beans", { among: ["tofu-firm"] }).found;
    // 75.3 g a portion for 150 g of beans.
    const portion = (300 * 8.67) / 17.27 / 2;
    expect(tofu?.grams.toNumber()).toBeCloseTo(2 * portion, 8);
    const [{ least = "", most = "" } = {}] = tofu ? toRecipe(tofu.sheet).lines : [];
    const grams = (written: unknown): number => gramsOf(amount(String(written)))?.toNumber() ?? 0;
    expect(grams(least)).toBeCloseTo((portion * 100) / 150, 8);
    expect(grams(most)).toBeCloseTo((portion * 200) / 150, 8);
  });

  const complete = starterFoods.ids.filter((id) =>
    (["energy", "protein", "sodium"] as const).every(
      (c) => readFigure(starterFoods.get(id), c).kind !== "missing",
    ),
  );

  // By the rule as the page tells it, in doubles, from the table's own figures.
  it("brings just what the line did, and is within what a cook would serve, whatever the foods", () => {
    const of = (food: string, c: "energy" | "protein" | "sodium"): number => {
      const { n, d } = readFigure(starterFoods.get(food), c).value;
      return Number(n) / Number(d) / 100;
    };
    const seen = { found: 0, outside: 0 };
    fc.assert(
      fc.property(
        fc.constantFrom(...complete),
        fc.integer({ min: 5, max: 400 }),
        fc.integer({ min: 1, max: 3 }),
        fc.uniqueArray(fc.constantFrom(...complete), { minLength: 4, maxLength: 12 }),
        (line, grams, portions, among) => {
          const lines = [
            { key: "line", food: line, amount: `${grams * portions} g` },
            { food: "oats-rolled-dry", amount: "50 g" },
          ];
          const s = sheet({ name: "r", portions, lines }, starterFoods);
          const { found, outside, without, match } = substitutes(s, "line", { among, most: 20 });
          expect(found.length + outside.length + without.length).toBe(
            among.filter((id) => id !== line).length,
          );
          const fits = (food: string, portion: number): boolean =>
            portion >= grams / 3 - 1e-9 &&
            portion <= 3 * grams + 1e-9 &&
            portion * of(food, "energy") <= Math.max(2 * grams * of(line, "energy"), 50) + 1e-6 &&
            portion * of(food, "sodium") <= Math.max(grams * of(line, "sodium"), 1000) + 1e-6;
          for (const { food, grams: batch, sheet: made } of found) {
            seen.found += 1;
            expect([food, fits(food, batch.toNumber() / portions)]).toEqual([food, true]);
            const was = match === "mass" ? s.lines[0]?.grams : s.cell("line", match).value;
            const is = match === "mass" ? made.lines[0]?.grams : made.cell("line", match).value;
            expect(is && exactText(is)).toBe(was && exactText(was));
          }
          for (const { food, grams: batch, least, most } of outside) {
            seen.outside += 1;
            expect(batch.lt(least) || batch.gt(most)).toBe(true);
            const isStrewn = most.toNumber() / portions <= Math.max(100, 2 * grams);
            expect([food, fits(food, batch.toNumber() / portions) && !isStrewn]).toEqual([food, false]);
          }
        },
      ),
      { seed: 7, numRuns: runs(150) },
    );
    expect(Math.min(seen.found, seen.outside)).toBeGreaterThan(met(100));
  });
});

describe("where nothing is left", () => {
  it("says why, and what would open it", () => {
    const chicken = alone("chicken-breast-roasted", "150 g");
    const found = substitutes(chicken, "line", { among: ["lentils-boiled", "almonds"] });
    expect(found.found).toEqual([]);
    expect(found.why).toBe("none is left of 2: 2 of which a cook would not serve so much, or so little");
    expect(found.opens[0]).toMatch(/^match energy: lentils-boiled \(213 g\)/);
    expect(found.opens.some((open) => /^look beyond its group: among: \["[a-z-]+"/.test(open))).toBe(true);
    expect(shown(found)).toContain("nothing stands in: none is left of 2");
    expect(shown(found)).toContain("what would open it: match energy");
  });

  it("names foods that do what it says", () => {
    const chicken = alone("chicken-breast-roasted", "150 g");
    const { opens } = substitutes(chicken, "line", { among: ["almonds"], avoid: ["soya"] });
    const [open] = opens.flatMap((each) => /^look beyond its group: among: (.*)$/.exec(each)?.[1] ?? []);
    const among = JSON.parse(open ?? "[]") as string[];
    const again = substitutes(chicken, "line", { among, avoid: ["soya"] });
    expect(again.found.map(({ food }) => food).sort()).toEqual([...among].sort());
    expect(again.why).toBeUndefined();
    expect(again.opens).toEqual([]);
  });

  it("tells avoided, unknown and silent foods apart, and never proposes an allergen that is avoided", () => {
    const like = { group: "pulses", state: "cooked", source: "made up" } as const;
    const foods = foodTable([
      { ...like, id: "a", name: "A", per100g: { energy: 120, protein: 9 }, allergens: [] },
      { ...like, id: "b", name: "B", per100g: { energy: 120, protein: 9 }, allergens: ["soya"] },
      { ...like, id: "c", name: "C", per100g: { energy: 120, protein: 9 } },
      { ...like, id: "d", name: "D", per100g: { energy: 120 }, allergens: [] },
    ]);
    const s = sheet({ name: "r", portions: 1, lines: [{ key: "a", food: "a", amount: "100 g" }] }, foods);
    const { why, opens } = substitutes(s, "a", { components: ["energy"], avoid: ["soya"] });
    expect(why).toBe(
      "none is left of 3: 1 with what is avoided; 1 of unknown allergens; 1 without protein, or silent on it",
    );
    expect(opens).toEqual([
      "match energy: d (100 g)",
      "match mass: d (100 g)",
      "find out which allergens these hold, and say so of them: c",
    ]);
  });

  it("says that there is no other food like it", () => {
    const lone = foodTable([
      { id: "a", name: "A", source: "test", per100g: { energy: 100 } },
      { id: "b", name: "B", source: "test", per100g: { energy: 100 } },
      { id: "c", name: "C", source: "test", group: "roots", per100g: { energy: 100 } },
    ]);
    const one = (food: string): Sheet =>
      sheet({ name: "r", portions: 1, lines: [{ food, amount: "30 g" }] }, lone);
    const none = substitutes(one("a"), "a", { components: ["energy"] });
    expect([none.found, none.why]).toEqual([
      [],
      "the food has no group, so that none is known to be like it",
    ]);
    expect(none.opens).toEqual(['look beyond its group: among: ["b", "c"]']);
    expect(substitutes(one("c"), "c", { components: ["energy"] }).why).toBe(
      "the table has no other food of its group and state (roots)",
    );
    expect(
      substitutes(one("a"), "a", { components: ["energy"], among: ["a", "b"] }).found.map((f) => f.food),
    ).toEqual(["b"]);
    expect(substitutes(one("a"), "a", { components: ["energy"], among: ["a"] }).why).toBe(
      "no other food is named to choose among",
    );
  });
});

describe("substitutes refuse", () => {
  const faults = (how: unknown, key = "beans"): string[] =>
    errorOf(() => substitutes(camp, key, how as SubstitutesOptions)).faults.map(
      (f) => `${f.code} ${f.path.join(".")}`,
    );

  it("options that are none, all at once", () => {
    expect(
      faults({
        components: ["energy", "mithril"],
        avoid: ["soya", "gluten-free", "__proto__"],
        among: ["nobody", "kale-raw"],
        most: 0,
      }),
    ).toEqual([
      "component-unknown components.1",
      "substitutes-malformed avoid.1",
      "substitutes-malformed avoid.2",
      "substitutes-malformed most",
      "food-unknown among.0",
    ]);
  });

  it.each([
    [{ components: "energy" }, "substitutes-malformed components"],
    [{ avoids: ["soya"] }, "substitutes-malformed avoids"],
    [null, "substitutes-malformed "],
    [{ avoid: "soya" as unknown as Allergen[] }, "substitutes-malformed avoid"],
    [{ among: "all" }, "substitutes-malformed among"],
    [{ most: Number.NaN }, "substitutes-malformed most"],
    [{ components: [] }, "substitutes-malformed components"],
    [{ components: ["iodine"] }, "substitutes-malformed components"],
  ])("%j", (how, expected) => expect(faults(how)).toContain(expected));

  it("a line that is not there, a nested recipe, and nothing to replace", () => {
    expect(faults({}, "kale")).toEqual(["line-unknown "]);
    const nested = sheet(
      { name: "r", portions: 1, lines: [{ key: "bowl", recipe: bowl, amount: "100 g" }] },
      starterFoods,
    );
    expect(errorOf(() => substitutes(nested, "bowl")).code).toBe("substitutes-malformed");
    expect(errorOf(() => substitutes(camp.edit({ beans: "0 g" }), "beans")).message).toMatch(/no mass/);
  });
});
