import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Allergen } from "../../src/food/allergens.ts";
import type { ComponentId } from "../../src/food/components.ts";
import { readFigure } from "../../src/food/composition.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import {
  absolute,
  compare,
  type Fraction,
  fraction,
  isZero,
  minus,
  over,
  plus,
  sum,
  times,
  toText,
} from "../../src/number/fraction.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { type SubstitutesHow, substitutes } from "../../src/scale/substitutes.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText as shown } from "../../src/table/text.ts";
import { errorOf } from "../number/error-of.ts";

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
    expect(asked.found.map(({ grams }) => grams)).toEqual(
      known.found.map(({ grams }) => grams),
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
    const [soya] = substitutes(camp, "beans", { among: ["soy-sauce"] }).found;
    const sodium = soya?.also.find(({ component }) => component === "sodium");
    const perGram = over(readFigure(starterFoods.get("soy-sauce"), "sodium").value, fraction(100n, 1n));
    const grams = over(soya?.grams ?? fraction(0n, 1n), camp.values.portions);
    const before = camp.cell("beans", "sodium").value;
    const brought = minus(times(grams, perGram), over(before, camp.values.portions));
    expect(sodium && minus(sodium.after.value, sodium.before.value)).toEqual(brought);
    expect(shown(substitutes(camp, "beans", { among: ["soy-sauce"] }), { width: 200 })).toContain(
      "sodium (mg more)",
    );
    const close = substitutes(camp, "beans", { among: ["soy-sauce"], components: ["protein", "sodium"] });
    expect(close.found[0]?.also).toEqual([]);
  });

  it("give the sheet with the food in the line's place: key, scaling and all other lines as they were", () => {
    const [first] = substitutes(camp, "beans").found;
    const made = first?.sheet as Sheet;
    expect(made.lines.map((l) => [l.key, l.food, l.scaling])).toEqual([
      ["rice", "rice-brown-long-boiled", "held"],
      ["beans", "black-beans-boiled", "adjustable"],
      ["oil", "olive-oil", "per-portion"],
    ]);
    expect(made.lines[1]?.grams.toString()).toBe(first?.grams.toString());
    expect(made.lines[0]?.grams.toString()).toBe("400");
    const again = sheet(toRecipe(made), starterFoods);
    for (const id of ["energy", "protein", "iron"] as const)
      expect(toText(again.total(id).value)).toBe(toText(made.total(id).value));
  });

  it("keep columns of one's own", () => {
    const own = camp.column("proteinPerGram", (at) => at.get("protein").over(at.get("grams")));
    const [first] = substitutes(own, "beans").found;
    const cell = first?.sheet.value("proteinPerGram", { line: "beans" });
    // SR28 16015: 8.86 g of protein in 100 g of boiled black beans.
    expect(cell && !cell.failed && cell.value.toString()).toBe("0.0886");
  });

  it("say what moves, and that exactly", () => {
    for (const { sheet: made, changes, distance } of substitutes(camp, "beans").found) {
      for (const { component, before, after, share } of changes) {
        expect(toText(before.value)).toBe(toText(camp.portion(component).value));
        expect(toText(after.value)).toBe(toText(made.portion(component).value));
        expect(share.toNumber()).toBeCloseTo(after.value.div(before.value).minus(1).toNumber(), 10);
      }
      const total = sum(
        changes.map(({ before, after }) => absolute(over(minus(after.value, before.value), before.value))),
      );
      expect(toText(total)).toBe(toText(distance));
    }
  });

  it("leave out what holds an allergen and what nothing is known of, and list both", () => {
    const among = ["tofu-firm", "chickpeas-boiled", "bread-wholemeal", "cheddar", "soy-sauce"];
    const all = substitutes(camp, "beans", { among });
    expect([all.found.length, all.avoided, all.unknown]).toEqual([5, [], []]);
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
    expect(found[0]?.cautions.map((c) => c.code)).toEqual(["beans-boil"]);
    expect(shown(substitutes(camp, "beans", { among: ["kidney-beans-red-dry"] }))).toMatch(
      /boil in fresh water/,
    );
  });

  it("put foods that say all before foods that are silent, and leave out what brings nothing", () => {
    const table = starterFoods.with([
      {
        id: "quiet",
        name: "Quiet beans",
        group: "pulses",
        state: "cooked",
        source: "test",
        per100g: { energy: 127 },
      },
      {
        id: "ice",
        name: "Ice",
        group: "pulses",
        state: "cooked",
        source: "test",
        per100g: { energy: 0, protein: 0, fat: 0, carbohydrateByDifference: 0, fibre: 0 },
      },
    ]);
    const { found } = substitutes(sheet(bowl, table), "beans", { most: 100 });
    expect(found.map((s) => s.food)).not.toContain("ice");
    expect(found.at(-1)).toMatchObject({
      food: "quiet",
      silent: ["protein", "fat", "carbohydrateByDifference", "fibre"],
    });
  });

  it("of twice the food is half of it", () => {
    const beans = starterFoods.get("kidney-beans-red-boiled");
    const double = Object.fromEntries(
      (["energy", "protein", "fat", "carbohydrateByDifference", "fibre"] as const).map((id) => [
        id,
        toText(times(readFigure(beans, id).value, fraction(2n, 1n))),
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
          { key: "leaf", food: "spinach-raw", amount: "200 g", retention: "3004" },
          { food: "potatoes-raw", amount: "100 g" },
        ],
      },
      starterFoods,
    );
    const [first] = substitutes(stew, "leaf", { among: ["kale-raw"], components: ["vitaminC"] }).found;
    // Kale keeps 60 % of its vitamin C as spinach does: 28.1 × 200 = 120 × 46.83…
    expect(first?.distance.toString()).toBe("0");
    expect(first?.grams).toEqual(
      over(
        times(readFigure(starterFoods.get("spinach-raw"), "vitaminC").value, fraction(200n, 1n)),
        readFigure(starterFoods.get("kale-raw"), "vitaminC").value,
      ),
    );
  });
});

describe("the amount of a substitute", () => {
  // An independent method: the sum of shares missed is a convex polyline in the amount, least at a corner.
  function leastDistance(s: Sheet, i: number, food: FoodInput, ids: readonly ComponentId[]): Fraction {
    const key = s.lines[i]?.key ?? "";
    const parts = ids.map((id) => ({
      whole: s.total(id).value,
      rest: minus(s.total(id).value, s.cell(key, id).value),
      gram: over(readFigure(food, id).value, fraction(100n, 1n)),
    }));
    const corners = parts.filter((p) => !isZero(p.gram)).map((p) => over(minus(p.whole, p.rest), p.gram));
    const at = (x: Fraction): Fraction =>
      sum(parts.map((p) => over(absolute(minus(plus(p.rest, times(p.gram, x)), p.whole)), p.whole)));
    // A substitute weighs from a thousandth to a thousand times what it stands in for: those ends are corners too.
    const grams = s.lines[i]?.grams ?? fraction(0n, 1n);
    const [low, high] = [times(grams, fraction(1n, 1000n)), times(grams, fraction(1000n, 1n))];
    const within = corners.filter((x) => compare(x, low) > 0 && compare(x, high) < 0);
    const all = [low, ...within, high].map(at);
    return all.reduce((a, b) => (compare(a, b) <= 0 ? a : b));
  }
  const ids: readonly ComponentId[] = ["energy", "protein", "fat", "carbohydrateByDifference", "fibre"];
  const complete = starterFoods.ids.filter((id) =>
    ids.every(
      (c) =>
        readFigure(starterFoods.get(id), c).kind !== "missing" &&
        readFigure(starterFoods.get(id), c).value.n > 0n,
    ),
  );

  it("is the best there is: no amount brings the portion closer", () => {
    const line = fc.tuple(fc.constantFrom(...complete), fc.integer({ min: 5, max: 400 }));
    fc.assert(
      fc.property(
        fc.array(line, { minLength: 1, maxLength: 4 }),
        fc.uniqueArray(fc.constantFrom(...complete), { minLength: 1, maxLength: 4 }),
        (lines, among) => {
          const s = sheet(
            { name: "r", portions: 3, lines: lines.map(([food, g]) => ({ food, amount: `${g} g` })) },
            starterFoods,
          );
          const key = s.lines[0]?.key ?? "";
          for (const { food, distance } of substitutes(s, key, { among, most: 10 }).found)
            expect([food, toText(distance)]).toEqual([
              food,
              toText(leastDistance(s, 0, starterFoods.get(food), ids)),
            ]);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("substitutes refuse", () => {
  const faults = (how: unknown, key = "beans"): string[] =>
    errorOf(() => substitutes(camp, key, how as SubstitutesHow)).faults.map(
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

  it("nothing where no food is like it", () => {
    const lone = foodTable([
      { id: "a", name: "A", source: "test", per100g: { energy: 100 } },
      { id: "b", name: "B", source: "test", per100g: { energy: 100 } },
    ]);
    const s = sheet({ name: "r", portions: 1, lines: [{ food: "a", amount: "1 g" }] }, lone);
    expect(substitutes(s, "a", { components: ["energy"] }).found).toEqual([]);
    expect(
      substitutes(s, "a", { components: ["energy"], among: ["a", "b"] }).found.map((f) => f.food),
    ).toEqual(["b"]);
  });
});
