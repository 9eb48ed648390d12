import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { substitutes } from "../../src/scale/substitutes.ts";
import { sheet } from "../../src/sheet/build.ts";
import { explain } from "../../src/sheet/explain.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import { type Changes, revise } from "../../src/sheet/revise.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText as shown } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const foods = starterFoods.with([
  {
    ...starterFoods.get("chicken-thigh-raw"),
    id: "chicken-bone",
    name: "Chicken thigh, on the bone",
    edibleShare: "0.7",
  },
]);

const curry: RecipeInput = {
  name: "Chicken curry on the bone",
  portions: 2,
  lines: [
    { key: "meat", food: "chicken-bone", amount: "185 g", weighed: "as-purchased", prep: "skinned" },
    { key: "rice", food: "rice-white-long-dry", amount: "120 g", part: "grain" },
    { key: "leaf", food: "spinach-raw", amount: "100 g", retention: "3004" },
    { key: "oil", food: "olive-oil", amount: "10 g", scaling: "per-portion" },
  ],
  method: ["Brown {meat} in {oil}.", "Add {leaf}; serve with {rice}."],
  notes: [{ kind: "storage", text: "Keep cold.", days: 2 }],
};
const s = sheet(curry, foods);

const lineOf = (made: Sheet, key: string) => toRecipe(made).lines.find((line) => line.key === key);

describe("revise changes of a line", () => {
  it("how it scales, its bounds, part, retention, when it is added and its preparation", () => {
    const made = revise(s, {
      lines: {
        meat: { scaling: "adjustable", least: "50 g", most: "120 g", prep: "diced" },
        leaf: { added: "serving", retention: null },
        rice: { part: "starch" },
      },
    });
    expect(lineOf(made, "meat")).toMatchObject({
      scaling: "adjustable",
      least: "50 g",
      most: "120 g",
      prep: "diced",
    });
    expect(lineOf(made, "leaf")).toMatchObject({ added: "serving" });
    expect(lineOf(made, "leaf")).not.toHaveProperty("retention");
    expect(lineOf(made, "rice")).toMatchObject({ part: "starch" });
    expect(made.lines.map(({ scaling }) => scaling)).toEqual(["adjustable", "held", "held", "per-portion"]);
    // Vitamin C of 100 g of raw spinach, SR28 11457: 28.1 mg, all of it where nothing cooks it.
    expect(made.cell("leaf", "vitaminC").value.toString()).toBe("28.1");
  });

  it("by null, back to none", () => {
    const bound = revise(s, { lines: { rice: { least: "10 g", part: null, prep: null } } });
    expect(lineOf(bound, "rice")).toMatchObject({ least: "10 g" });
    expect(lineOf(bound, "rice")).not.toHaveProperty("part");
    expect(lineOf(revise(bound, { lines: { rice: { least: null } } }), "rice")).not.toHaveProperty("least");
    expect(lineOf(revise(s, { lines: { oil: { scaling: null } } }), "oil")).toMatchObject({
      scaling: "held",
    });
  });

  it("and is the sheet of the changed document, whatever is changed", () => {
    const made = revise(s, { lines: { meat: { scaling: "adjustable", prep: "diced" } }, name: "Curry" });
    const [meat, ...others] = curry.lines;
    const written = {
      ...curry,
      name: "Curry",
      lines: [{ ...meat, scaling: "adjustable", prep: "diced" }, ...others],
    };
    expect(toRecipe(made)).toEqual(toRecipe(sheet(written as RecipeInput, foods)));
  });
});

describe("revise changes of a recipe", () => {
  it("its name, notes and method", () => {
    const made = revise(s, {
      name: "Supper",
      notes: [{ kind: "general", text: "Hot." }],
      method: ["Eat {meat}."],
    });
    const { name, notes, method } = toRecipe(made);
    expect([name, notes, method]).toEqual(["Supper", [{ kind: "general", text: "Hot." }], ["Eat {meat}."]]);
    const bare = toRecipe(revise(s, { notes: null, method: null }));
    expect([bare.notes, bare.method]).toEqual([undefined, undefined]);
  });
});

describe("what names a food that is gone", () => {
  const vegan = revise(s, { swap: { meat: "tofu-firm" } });

  it("does not stay the name of the dish", () => {
    expect(vegan.name).toBe(
      "Chicken curry on the bone, with Tofu, firm instead of Chicken thigh, on the bone",
    );
    expect(revise(s, { swap: { meat: "tofu-firm" }, name: "Tofu curry" }).name).toBe("Tofu curry");
    // No name of what is still there.
    expect(revise(s, { swap: { rice: "quinoa-dry" } }).name).toBe("Chicken curry on the bone");
    expect(revise(s, { swap: { meat: "chicken-breast-raw" } }).name).toBe("Chicken curry on the bone");
    const out = revise(s, { remove: ["meat"], method: ["Add {leaf}; serve with {rice} and {oil}."] });
    expect(out.name).toBe("Chicken curry on the bone, without Chicken thigh, on the bone");
  });

  it("is said once, and no more once it is back", () => {
    const again = revise(vegan, { swap: { meat: "tempeh" } });
    expect(again.name).toBe("Chicken curry on the bone, with Tempeh instead of Chicken thigh, on the bone");
    expect(revise(again, { swap: { meat: "chicken-bone" } }).name).toBe(s.name);
  });

  it("is not as purchased where nothing is thrown away", () => {
    expect(lineOf(vegan, "meat")).not.toHaveProperty("weighed");
    expect(shown(vegan)).not.toContain("as purchased");
    expect(vegan.lines[0]?.grams.toString()).toBe("185");
    expect(lineOf(revise(s, { swap: { meat: "bananas-raw" } }), "meat")).toMatchObject({
      weighed: "as-purchased",
    });
    expect(lineOf(revise(s, { lines: { meat: { weighed: null } } }), "meat")).not.toHaveProperty("weighed");
  });

  it("takes its preparation along, unless another is given", () => {
    expect(lineOf(vegan, "meat")).not.toHaveProperty("prep");
    const diced = revise(s, { swap: { meat: "tofu-firm" }, lines: { meat: { prep: "diced" } } });
    expect(lineOf(diced, "meat")).toMatchObject({ prep: "diced" });
  });
});

describe("changes that there are not", () => {
  it.each<[unknown, string[]]>([
    [{ lines: { meet: { prep: "diced" } } }, ["line-unknown lines.meet"]],
    [{ lines: { meat: { scale: "held" } } }, ["recipe-malformed lines.meat.scale"]],
    [{ lines: { meat: "held" } }, ["recipe-malformed lines.meat"]],
    [{ lines: ["meat"] }, ["recipe-malformed lines"]],
    [{ lines: { oil: { part: "x" } } }, ["recipe-malformed lines.3.part"]],
    [{ name: "" }, ["recipe-malformed name"]],
    [{ swap: { rice: 3 } }, ["recipe-malformed lines.1.food"]],
    [{ swap: { rice: "mithril" } }, ["food-unknown lines.1.food"]],
  ])("%j", (changes, expected) => {
    const { faults } = errorOf(() => revise(s, changes as Changes));
    expect(faults.map(({ code, path }) => `${code} ${path.join(".")}`)).toEqual(expected);
  });
});

describe("a swap on a line whose retention is said", () => {
  const kale = revise(s, { swap: { leaf: "kale-raw" } });
  const said = "what cooking leaves of Kale, raw is assumed";

  it("keeps it, presumed: in the document, in figures that it changes and in words", () => {
    expect(lineOf(kale, "leaf")).toMatchObject({ retention: "3004", retentionPresumed: true });
    expect(s.cell("leaf", "vitaminC")).toMatchObject({ derived: ["leaf"], presumed: [] });
    expect(kale.cell("leaf", "vitaminC")).toMatchObject({ derived: ["leaf"], presumed: ["leaf"] });
    expect(kale.portion("vitaminC").presumed).toContain("leaf");
    // USDA's code 3004 leaves all protein: nothing of it is presumed.
    expect(kale.cell("leaf", "protein").presumed).toEqual([]);
    expect(shown(kale)).toContain(said);
    expect(shown(s)).not.toContain("what cooking leaves of");
    expect(shown(explain(kale, "vitaminC", { line: "leaf" }))).toContain("presumed: it was said of another");
  });

  it("marks what is computed from a figure that it changes", () => {
    // Salt is 2.5 times sodium (Regulation (EU) No 1169/2011, Annex I), of which the water takes a part.
    const shares = { sodium: "0.5" };
    const own = sheet(
      { ...curry, lines: curry.lines.map((l) => (l.key === "leaf" ? { ...l, retention: shares } : l)) },
      foods,
    );
    const made = revise(own, { swap: { leaf: "kale-raw" } });
    expect(own.cell("leaf", "salt").presumed).toEqual([]);
    expect(made.cell("leaf", "salt").presumed).toEqual(["leaf"]);
  });

  it("reads back as it is, and goes through a second swap", () => {
    const again = sheet(toRecipe(kale), foods);
    expect(toRecipe(again)).toEqual(toRecipe(kale));
    expect(again.cell("leaf", "vitaminC").presumed).toEqual(["leaf"]);
    expect(lineOf(revise(kale, { swap: { leaf: "spinach-raw" } }), "leaf")).toMatchObject({
      retentionPresumed: true,
    });
    const nested = sheet(
      {
        name: "Supper",
        portions: 1,
        lines: [{ key: "dish", recipe: toRecipe(kale), amount: "200 g", retention: { vitaminC: "0.9" } }],
      },
      foods,
    );
    expect(nested.total("vitaminC").presumed).toContain("dish/leaf");
  });

  it("is sure again once it is said of the new food, or taken away", () => {
    for (const retention of ["3004", { vitaminC: "0.6" }]) {
      const told = revise(s, { swap: { leaf: "kale-raw" }, lines: { leaf: { retention } } });
      expect(lineOf(told, "leaf")).toMatchObject({ retention });
      expect(lineOf(told, "leaf")).not.toHaveProperty("retentionPresumed");
      expect(told.cell("leaf", "vitaminC").presumed).toEqual([]);
      const later = revise(kale, { lines: { leaf: { retention } } });
      expect(lineOf(later, "leaf")).not.toHaveProperty("retentionPresumed");
    }
    const raw = revise(kale, { lines: { leaf: { retention: null } } });
    expect(lineOf(raw, "leaf")).not.toHaveProperty("retention");
    expect(lineOf(raw, "leaf")).not.toHaveProperty("retentionPresumed");
    expect(lineOf(revise(s, { swap: { leaf: "spinach-raw" } }), "leaf")).not.toHaveProperty(
      "retentionPresumed",
    );
    expect(lineOf(revise(s, { swap: { rice: "oats-rolled-dry" } }), "rice")).not.toHaveProperty(
      "retentionPresumed",
    );
  });

  it("is so of a substitute, too", () => {
    const [first] = substitutes(s, "leaf", { match: "mass", among: ["kale-raw"] }).found;
    expect(first && lineOf(first.sheet, "leaf")).toMatchObject({
      retention: "3004",
      retentionPresumed: true,
    });
    expect(first?.sheet.cell("leaf", "vitaminC").presumed).toEqual(["leaf"]);
  });
});
