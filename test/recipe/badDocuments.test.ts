import { describe, expect, it } from "vitest";
import { foodFromLabel } from "../../src/food/label.ts";
import { foodTable } from "../../src/food/table.ts";
import { kitchen } from "../../src/measure/kitchen.ts";
import { SteelyardError } from "../../src/number/error.ts";
import { recipe } from "../../src/recipe/recipe.ts";
import { fit } from "../../src/scale/fit.ts";
import { roundToKitchen } from "../../src/scale/round.ts";
import { scale } from "../../src/scale/scale.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import { revise } from "../../src/sheet/revise.ts";

const foods = foodTable([
  { id: "oats", name: "Oats", source: "made up", per100g: { energy: 380 } },
  { id: "onion", name: "Onion", source: "made up", per100g: {}, measures: [{ name: "medium", grams: 110 }] },
  {
    id: "peas",
    name: "Peas",
    source: "made up",
    per100g: {},
    measuredWith: "us",
    measures: [
      { name: "cup, whole", grams: 150 },
      { name: "cup, mashed", grams: 200 },
    ],
  },
]);

const line = { food: "oats", amount: "100 g" };
const good = { name: "Porridge", portions: 2, lines: [line] };

function faultsOf(step: () => unknown): SteelyardError["faults"] {
  try {
    step();
  } catch (error) {
    if (error instanceof SteelyardError) return error.faults;
    throw error;
  }
  return [];
}

type Case = [why: string, document: unknown, code: string, path: string, hint: RegExp];

/** What `recipe` refuses. */
const malformed: Case[] = [
  ["not an object", "porridge", "recipe-malformed", "", /object/],
  ["nothing", undefined, "recipe-malformed", "", /object/],
  ["null", null, "recipe-malformed", "", /object/],
  ["a list", [], "recipe-malformed", "", /object/],
  ["empty", {}, "recipe-malformed", "name", /text/],
  ["no name", { ...good, name: " " }, "recipe-malformed", "name", /character/],
  ["a number for a name", { ...good, name: 7 }, "recipe-malformed", "name", /text/],
  ["no portions", { name: "P", lines: [line] }, "recipe-malformed", "portions", /number/],
  ["0 portions", { ...good, portions: 0 }, "recipe-malformed", "portions", /above 0/],
  ["minus portions", { ...good, portions: -2 }, "recipe-malformed", "portions", /above 0/],
  ["NaN portions", { ...good, portions: Number.NaN }, "number-not-finite", "portions", /finite/],
  [
    "endless portions",
    { ...good, portions: Number.POSITIVE_INFINITY },
    "number-not-finite",
    "portions",
    /finite/,
  ],
  ["portions in words", { ...good, portions: "two" }, "number-malformed", "portions", /digits/],
  ["portions over zero", { ...good, portions: "1/0" }, "number-zero-denominator", "portions", /above 0/],
  [
    "200,001 digits of portions",
    { ...good, portions: "9".repeat(200_001) },
    "number-too-long",
    "portions",
    /200000/,
  ],
  ["no lines", { name: "P", portions: 1 }, "recipe-malformed", "lines", /list/],
  ["an empty list of lines", { ...good, lines: [] }, "recipe-malformed", "lines", /at least one/],
  ["lines that are no list", { ...good, lines: { 0: line } }, "recipe-malformed", "lines", /list/],
  ["a line that is text", { ...good, lines: ["100 g oats"] }, "recipe-malformed", "lines[0]", /object/],
  [
    "neither food nor recipe",
    { ...good, lines: [{ amount: "1 g" }] },
    "recipe-malformed",
    "lines[0].food",
    /one food/,
  ],
  [
    "both food and recipe",
    { ...good, lines: [{ ...line, recipe: "x" }] },
    "recipe-malformed",
    "lines[0].food",
    /one food/,
  ],
  ["no amount", { ...good, lines: [{ food: "oats" }] }, "recipe-malformed", "lines[0].amount", /1 1\/2 tbsp/],
  [
    "a bare number for an amount",
    { ...good, lines: [{ food: "oats", amount: 100 }] },
    "amount-malformed",
    "lines[0].amount",
    /text/,
  ],
  [
    "a misspelt field",
    { ...good, lines: [{ ...line, ammount: "1 g" }] },
    "recipe-malformed",
    "lines[0].ammount",
    /amount/,
  ],
  [
    "an unknown field",
    { ...good, glutenFree: true },
    "recipe-malformed",
    "glutenFree",
    /in meta, or use format, name/,
  ],
  [
    "an unknown scaling",
    { ...good, lines: [{ ...line, scaling: "fixed" }] },
    "recipe-malformed",
    "lines[0].scaling",
    /write one of/,
  ],
  [
    "a part on a per-portion line",
    { ...good, lines: [{ ...line, scaling: "per-portion", part: "base" }] },
    "recipe-malformed",
    "lines[0].part",
    /leave out/,
  ],
  [
    "retention on a serving line",
    { ...good, lines: [{ ...line, added: "serving", retention: { iron: 1 } }] },
    "recipe-malformed",
    "lines[0].retention",
    /leave out/,
  ],
  [
    "a presumed retention without one",
    { ...good, lines: [{ ...line, retentionPresumed: true }] },
    "recipe-malformed",
    "lines[0].retentionPresumed",
    /give the retention/,
  ],
  [
    "retention above 1",
    { ...good, lines: [{ ...line, retention: { iron: 90 } }] },
    "recipe-malformed",
    "lines[0].retention.iron",
    /1 or less/,
  ],
  [
    "retention of nothing known",
    { ...good, lines: [{ ...line, retention: { irn: 1 } }] },
    "component-unknown",
    "lines[0].retention.irn",
    /iron/,
  ],
  [
    "two lines with one key",
    {
      ...good,
      lines: [
        { ...line, key: "a" },
        { ...line, key: "a" },
      ],
    },
    "line-duplicate",
    "lines[1].key",
    /own/,
  ],
  [
    "a key with a slash",
    { ...good, lines: [{ ...line, key: "a/b" }] },
    "recipe-malformed",
    "lines[0].key",
    /letters/,
  ],
  [
    "both cooked mass and yield",
    { ...good, cookedMass: "1 kg", yieldFactor: 1 },
    "recipe-malformed",
    "yieldFactor",
    /one/,
  ],
  ["a yield of 0", { ...good, yieldFactor: 0 }, "recipe-malformed", "yieldFactor", /above 0/],
  ["a yield of null", { ...good, yieldFactor: null }, "recipe-malformed", "yieldFactor", /number/],
  ["a step naming no line", { ...good, method: ["Stir {oat}"] }, "method-unknown-line", "method[0]", /oats/],
  ["a newer format", { ...good, format: "steelyard-recipe/9" }, "recipe-format-newer", "format", /update/],
  ["another format", { ...good, format: "card/1" }, "recipe-malformed", "format", /steelyard-recipe\/1/],
  [
    "a note of no kind",
    { ...good, notes: [{ kind: "joke", text: "x" }] },
    "recipe-malformed",
    "notes[0].kind",
    /write one of/,
  ],
  [
    "days on a note that is not on storage",
    { ...good, notes: [{ kind: "cooling", text: "x", days: 2 }] },
    "recipe-malformed",
    "notes[0].days",
    /storage/,
  ],
  [
    "days below nothing",
    { ...good, notes: [{ kind: "storage", text: "x", days: -1 }] },
    "recipe-malformed",
    "notes[0].days",
    /0 or more/,
  ],
  [
    "days without end",
    { ...good, notes: [{ kind: "storage", text: "x", days: Number.NaN }] },
    "number-not-finite",
    "notes[0].days",
    /finite/,
  ],
  [
    "a __proto__ key",
    JSON.parse('{"name":"P","portions":1,"lines":[],"__proto__":{"x":1}}'),
    "recipe-malformed",
    "__proto__",
    /another name/,
  ],
  [
    "a constructor key",
    JSON.parse('{"name":"P","portions":1,"lines":[{"food":"oats","amount":"1 g"}],"constructor":1}'),
    "recipe-malformed",
    "constructor",
    /use format, name/,
  ],
  [
    "control characters in a name",
    { ...good, name: "Por\u0007ridge" },
    "recipe-malformed",
    "name",
    /control/,
  ],
];

/** Amounts that are wrong whatever the food is. */
const badAmounts: Case[] = (
  [
    ["x", "amount-no-number", /figure/],
    ["2-3 g", "amount-range", /least and most/],
    ["2 g to 3 g", "amount-range", /least and most/],
    ["5g-10g", "amount-range", /least and most/],
    ["-1 g", "amount-negative", /0 or more/],
    ["", "amount-empty", /figure/],
    ["5", "amount-no-unit", /say of what/],
    ["1.2.3 g", "number-malformed", /./],
    ["1/0 g", "number-zero-denominator", /./],
  ] as const
).flatMap(([text, code, hint]) =>
  // An amount may be a range; a bound of one may not.
  (code === "amount-range" ? (["least", "most"] as const) : (["amount", "least", "most"] as const)).map(
    (field): Case => [
      `${field} ${JSON.stringify(text)}`,
      { ...good, lines: [{ ...line, [field]: text }] },
      code,
      `lines[0].${field}`,
      hint,
    ],
  ),
);

const tooLate: Case[] = [
  ...badAmounts,
  [
    "an amount in data below 0",
    { ...good, lines: [{ food: "oats", amount: { value: -1, unit: "g" } }] },
    "amount-negative",
    "lines[0].amount.value",
    /0 or more/,
  ],
  [
    "an amount in data of NaN, with no unit",
    { ...good, lines: [{ food: "oats", amount: { value: Number.NaN } }] },
    "amount-no-unit",
    "lines[0].amount.unit",
    /unit/,
  ],
  [
    "an amount in data with another field",
    { ...good, lines: [{ food: "oats", amount: { value: 1, unit: "g", about: true } }] },
    "amount-malformed",
    "lines[0].amount.about",
    /nothing else/,
  ],
  [
    "least above most",
    { ...good, lines: [{ ...line, least: "200 g", most: "100 g" }] },
    "recipe-malformed",
    "lines[0].least",
    /lower bound/,
  ],
  [
    "least above most in other units of mass",
    { ...good, lines: [{ ...line, least: "1 lb", most: "400 g" }] },
    "recipe-malformed",
    "lines[0].least",
    /lower bound/,
  ],
  [
    "least above most in spoons",
    { ...good, measures: "us", lines: [{ ...line, least: "4 tsp", most: "1 tbsp" }] },
    "recipe-malformed",
    "lines[0].least",
    /lower bound/,
  ],
  [
    "a spoon of no size",
    { ...good, measures: { name: "ours", ml: { tbsp: 0 } } },
    "measures-malformed",
    "measures.ml.tbsp",
    /./,
  ],
  ["measures of nobody", { ...good, measures: "martian" }, "measures-unknown", "measures", /./],
];

/** What `sheet` refuses, once foods and amounts are looked at. */
const unresolved: Case[] = [
  [
    "an unknown food",
    { ...good, lines: [{ food: "oat", amount: "1 g" }] },
    "food-unknown",
    "lines[0].food",
    /oats/,
  ],
  [
    "a food called __proto__",
    { ...good, lines: [{ food: "__proto__", amount: "1 g" }] },
    "food-unknown",
    "lines[0].food",
    /\.with/,
  ],
  [
    "an unknown recipe",
    { ...good, lines: [{ recipe: "pesto", amount: "1 portion" }] },
    "recipe-unknown",
    "lines[0].recipe",
    /recipes/,
  ],
  [
    "a recipe called constructor",
    { ...good, lines: [{ recipe: "constructor", amount: "1 portion" }] },
    "recipe-unknown",
    "lines[0].recipe",
    /recipes/,
  ],
  [
    "a volume without density",
    { ...good, lines: [{ food: "oats", amount: "100 ml" }] },
    "density-needed",
    "lines[0].amount",
    /density/,
  ],
  [
    "a cup of one of two forms",
    { ...good, measures: "us", lines: [{ food: "peas", amount: "1 cup" }] },
    "density-needed",
    "lines[0].amount",
    /cup, whole/,
  ],
  [
    "a spoon of nobody's",
    { ...good, lines: [{ food: "oats", amount: "1 tbsp" }] },
    "measures-needed",
    "lines[0].amount",
    /measures/,
  ],
  [
    "a cooked mass that is no mass",
    { ...good, cookedMass: "1 l" },
    "recipe-malformed",
    "cookedMass",
    /850 g/,
  ],
  [
    "a cooked mass of nothing cooked",
    { ...good, cookedMass: "1 kg", lines: [{ ...line, added: "serving" }] },
    "recipe-malformed",
    "cookedMass",
    /leave out/,
  ],
  [
    "peel on a food of unknown refuse",
    { ...good, lines: [{ ...line, weighed: "as-purchased" }] },
    "recipe-malformed",
    "lines[0].weighed",
    /edible/,
  ],
  [
    "a measure that the food has not",
    { ...good, lines: [{ food: "onion", amount: "2 large" }] },
    "amount-unknown-unit",
    "lines[0].amount",
    /./,
  ],
];

const show = (path: readonly (string | number)[]): string =>
  path.map((p, i) => (typeof p === "number" ? `[${p}]` : i === 0 ? p : `.${p}`)).join("");

describe("a bad recipe document", () => {
  it.each([...malformed, ...tooLate])("%s", (_, document, code, path, hint) => {
    const found = faultsOf(() => recipe(document)).find((f) => f.code === code && show(f.path) === path);
    expect(found, JSON.stringify(faultsOf(() => recipe(document)))).toBeDefined();
    expect(found?.hint).toMatch(hint);
  });

  it.each(unresolved)("%s", (_, document, code, path, hint) => {
    const faults = faultsOf(() => sheet(recipe(document), foods));
    const found = faults.find((f) => f.code === code && show(f.path) === path);
    expect(found, JSON.stringify(faults)).toBeDefined();
    expect(found?.hint).toMatch(hint);
  });

  it("has all its faults told at once", () => {
    const faults = faultsOf(() =>
      recipe({ name: "", portions: 0, lines: [{ amount: 5, scaling: "x" }], extra: 1 }),
    );
    expect(faults.map((f) => show(f.path)).sort()).toEqual(
      ["extra", "lines[0].amount", "lines[0].food", "lines[0].scaling", "name", "portions"].sort(),
    );
    const more = faultsOf(() =>
      sheet(
        {
          ...good,
          lines: [
            { food: "oat", amount: "1 g" },
            { food: "oats", amount: "1 cup" },
          ],
        },
        foods,
      ),
    );
    expect(more.map((f) => f.code)).toEqual(["food-unknown", "measures-needed"]);
  });

  it("gives the fields of that place for what was likely meant", () => {
    const hints = (document: object): string[] =>
      faultsOf(() => recipe({ ...good, ...document })).map(({ hint }) => hint);
    expect(hints({ id: "p1" })[0]).toMatch(/^put an app's own data in meta, or use format, name/);
    expect(hints({ portion: 2 })).toEqual(["did you mean portions?"]);
    expect(hints({ lines: [{ ...line, ammount: 1 }] })).toEqual(["did you mean amount?"]);
    expect(hints({ lines: [{ ...line, portions: 1 }] })[0]).toMatch(/or use key, food, recipe/);
    expect(hints({ notes: [{ kind: "general", text: "x", txt: "y" }] })).toEqual(["did you mean text?"]);
  });

  it.each([
    ["steelyard-recipe/2", "recipe-format-newer"],
    ["steelyard-recipe/10", "recipe-format-newer"],
    ["steelyard-recipe/0", "recipe-malformed"],
    ["steelyard-recipe/01", "recipe-malformed"],
    ["steelyard-recipe/", "recipe-malformed"],
  ])("of the format %s is told as %s", (format, code) => {
    expect(faultsOf(() => recipe({ ...good, format })).map((f) => f.code)).toEqual([code]);
  });

  it("is measured before it is looked at: its length, its holes, its circles", () => {
    const start = performance.now();
    const numbers = faultsOf(() => recipe({ ...good, lines: Array.from({ length: 125_000 }, () => 1) }));
    expect(numbers[0]).toMatchObject({ path: ["lines", 0], message: "expected an object, got 1" });
    expect(numbers.at(-1)).toMatchObject({ path: ["lines"], hint: "mend these first" });
    expect(faultsOf(() => recipe({ ...good, lines: new Array(2) }))).toMatchObject([
      { message: "a list with holes" },
    ]);
    const twice: unknown[] = [];
    twice.push(twice, twice);
    expect(faultsOf(() => recipe({ ...good, lines: twice }))).toMatchObject([{ path: ["lines", 0] }]);
    let nested: object = { ...good };
    for (let i = 0; i < 15; i += 1) {
      const inner = nested;
      nested = { ...good, lines: ["a", "b", "c", "d"].map((key) => ({ key, recipe: inner, amount: "1 g" })) };
    }
    expect(faultsOf(() => recipe(nested))).toMatchObject([
      { code: "recipe-malformed", hint: expect.stringMatching(/at most/) },
    ]);
    expect(performance.now() - start).toBeLessThan(20_000);
  });

  it("has a fault in one field hide none in another", () => {
    const found = (document: unknown): string[] =>
      faultsOf(() => sheet(document as never, foods))
        .map((f) => `${f.code} ${show(f.path)}`)
        .sort();
    const all = {
      name: "",
      portions: 0,
      format: "card/1",
      cookedMass: "1 l",
      yieldFactor: 1,
      method: ["Stir {nope}."],
      lines: [
        { key: "k", food: "oat", amount: "1 g", least: "2 g", most: "1 g" },
        { key: "k", food: "oats", amount: "1 tbsp", retention: "9999" },
        { food: "oat", amount: "1 g" },
        { food: "onion", amount: "2 large", least: "3 medium", most: "2 medium" },
        { food: "oats", amount: "3-2 g", part: "base", scaling: "adjustable" },
        { food: "oat", amount: "1.2.3 g" },
        { recipe: { ...good, portions: 0, lines: [{ food: "oats", amount: "-1 g" }] }, amount: "1 portion" },
      ],
    };
    expect(found(all)).toEqual(
      [
        "recipe-malformed name",
        "recipe-malformed portions",
        "recipe-malformed format",
        "recipe-malformed cookedMass",
        "recipe-malformed yieldFactor",
        "method-unknown-line method[0]",
        "food-unknown lines[0].food",
        "recipe-malformed lines[0].least",
        "measures-needed lines[1].amount",
        "retention-unknown lines[1].retention",
        "line-duplicate lines[1].key",
        "food-unknown lines[2].food",
        "amount-unknown-unit lines[3].amount",
        "recipe-malformed lines[3].least",
        "amount-range lines[4].amount",
        "recipe-malformed lines[4].part",
        "food-unknown lines[5].food",
        "number-malformed lines[5].amount",
        "recipe-malformed lines[6].recipe.portions",
        "amount-negative lines[6].recipe.lines[0].amount",
      ].sort(),
    );
    // Of one line, all that its food, retention and amounts have wrong.
    expect(found({ ...good, lines: [{ food: "oats", amount: "1 tbsp", retention: "9999" }] })).toEqual([
      "measures-needed lines[0].amount",
      "retention-unknown lines[0].retention",
    ]);
    expect(found({ ...good, method: ["{nope}"], lines: [{ food: "oat", amount: "1 g" }] })).toEqual([
      "food-unknown lines[0].food",
      "method-unknown-line method[0]",
    ]);
  });

  it("tells the faults of a recipe named many times once, in bounded time", () => {
    const both = (id: string) => ({
      ...good,
      lines: [
        { key: "a", recipe: id, amount: "1 portion" },
        { key: "b", recipe: id, amount: "1 portion" },
      ],
    });
    const recipes: Record<string, unknown> = Object.fromEntries(
      Array.from({ length: 30 }, (_, i) => [`r${i}`, both(`r${i + 1}`)]),
    );
    recipes.r30 = { ...good, lines: [{ food: "oat", amount: "1 g" }] };
    const faults = faultsOf(() => sheet(both("r0"), foods, { recipes: recipes as never }));
    expect(faults.filter((f) => f.code === "food-unknown").length).toBe(1);
    expect(faults.length).toBe(32);
  });

  it("is not refused for what only the food can say: its own measures may hold figures and ranges", () => {
    const named = ["medium (5-6 inch)", "inch 10-wide", "can 400 g", "piece, 2 to 3 to the kg"];
    const own = foodTable([
      {
        id: "tortilla",
        name: "Tortilla",
        source: "made up",
        per100g: {},
        measures: named.map((name) => ({ name, grams: 50 })),
      },
    ]);
    for (const name of named) {
      const document = { ...good, lines: [{ food: "tortilla", amount: `2 ${name}` }] };
      expect(sheet(document, own).lines[0]?.grams.toString(), name).toBe("100");
    }
  });

  it("names the way round a cycle of nested recipes", () => {
    const nest = (id: string) => ({ name: id, portions: 1, lines: [{ recipe: id, amount: "1 portion" }] });
    const recipes = { a: nest("b"), b: nest("c"), c: nest("a") };
    const [first] = faultsOf(() => sheet(nest("a"), foods, { recipes }));
    expect(first?.code).toBe("recipe-cycle");
    expect(first?.message).toContain("a → b → c → a");
  });

  it("that contains itself is refused, not followed", () => {
    const self: { name: string; portions: number; lines: unknown[] } = {
      name: "Self",
      portions: 1,
      lines: [],
    };
    self.lines.push({ recipe: self, amount: "1 portion" });
    expect(faultsOf(() => recipe(self))[0]?.message).toContain("contains itself");
  });

  it("nested a thousand deep is refused, not followed to the end of the stack", () => {
    let inner: unknown = good;
    for (let i = 0; i < 1000; i++)
      inner = { name: "Nest", portions: 1, lines: [{ recipe: inner, amount: "1 portion" }] };
    expect(faultsOf(() => recipe(inner))[0]?.message).toContain("too deep");
    const recipes = Object.fromEntries(
      Array.from({ length: 5000 }, (_, i) => [
        `r${i}`,
        i === 4999
          ? good
          : { name: "Nest", portions: 1, lines: [{ recipe: `r${i + 1}`, amount: "1 portion" }] },
      ]),
    );
    expect(
      faultsOf(() =>
        sheet({ ...good, lines: [{ recipe: "r0", amount: "1 portion" }] }, foods, { recipes }),
      )[0]?.message,
    ).toContain("too deep");
  });

  it("nested so wide that what is not known could not be listed is refused, however short its document", () => {
    // Each level names the next one twice: 2 to the power of the levels, written out.
    const levels = (count: number) => {
      const twice = (i: number) =>
        ["a", "b"].map((key) => ({ key, recipe: `r${i + 1}`, amount: "1 portion" }));
      const recipe = (i: number) => ({ name: `r${i}`, portions: 1, lines: i === count ? [line] : twice(i) });
      const recipes = Object.fromEntries(Array.from({ length: count + 1 }, (_, i) => [`r${i}`, recipe(i)]));
      return sheet({ ...good, lines: [{ recipe: "r0", amount: "1 portion" }] }, foods, { recipes });
    };
    expect(levels(13).plan.spread).toBe(2 ** 13);
    const faults = faultsOf(() => levels(40));
    expect(faults[0]).toMatchObject({ code: "recipe-malformed" });
    expect(faults[0]?.message).toContain("more than 10000 lines");
    expect(faults[0]?.hint).not.toBe("");
  });

  it("with 100,000 lines is read, and its faults are found", () => {
    const many = { ...good, lines: Array.from({ length: 100_000 }, () => line) };
    const read = recipe(many);
    expect(new Set(read.lines.map((l) => l.key)).size).toBe(100_000);
    expect(sheet(read, foods).total("energy").value.toString()).toBe("38000000");
    many.lines[99_999] = { food: "oats", amount: "1 g\u202E" };
    expect(faultsOf(() => recipe({ ...many, name: 5 }))[0]?.path).toEqual(["name"]);
  });

  it("of tiny and huge amounts stays exact", () => {
    const s = sheet(
      {
        ...good,
        lines: [
          { food: "oats", amount: { value: "1e300", unit: "g" } },
          { food: "oats", amount: { value: "1e-300", unit: "g" } },
        ],
      },
      foods,
    );
    expect(s.mass.raw.minus("1e-300").eq("1e300")).toBe(true);
    expect(s.lines[1]?.grams.eq("1e-300")).toBe(true);
  });

  it("read twice is the same document, frozen", () => {
    const once = recipe({
      ...good,
      portions: "3/2",
      lines: [line, line, { food: "oats", amount: { value: 0.1, unit: "kg" }, least: "5 g" }],
      notes: [{ kind: "storage", text: "Keep it cold.", source: "camp rules", days: 2.5 }],
    });
    expect(once.notes?.[0]?.days).toBe("2.5");
    expect(recipe(JSON.parse(JSON.stringify(once)))).toEqual(once);
    expect(once.lines.map((l) => l.key)).toEqual(["oats", "oats-2", "oats-3"]);
    expect(Object.isFrozen(once.lines[2]?.amount)).toBe(true);
    expect(once.lines[2]?.amount).toEqual({ value: "0.1", unit: "kg" });
  });
});

describe("an app's own data", () => {
  const meta = { id: 7, tags: ["winter"], rated: null, 1: { price: 1.5 } };

  it("travel with a recipe and its lines through every operation, untouched", () => {
    const kept = JSON.stringify(meta);
    const made = recipe({ ...good, meta, lines: [{ ...line, key: "oats", meta }] });
    expect(recipe(JSON.parse(JSON.stringify(made)))).toEqual(made);
    const s = sheet(made, foods);
    const steps = [s, scale(s, { factor: 2 }).sheet, s.edit({ oats: "80 g" }), revise(s, { portions: 3 })];
    const measured = roundToKitchen(scale(s, { factor: "1.013" }).sheet, "metric");
    if (measured.status !== "out-of-reach") steps.push(measured.sheet);
    expect(steps).toHaveLength(5);
    for (const each of steps) {
      const { meta: recipes, lines } = toRecipe(each);
      expect([recipes, lines[0]?.meta].map((one) => JSON.stringify(one))).toEqual([kept, kept]);
    }
    const fitted = fit(s, [{ of: "mass", exactly: "60 g" }]);
    expect(fitted.status === "met" && JSON.stringify(toRecipe(fitted.sheet).meta)).toBe(kept);
    expect(JSON.stringify(meta)).toBe(kept);
    expect(Object.isFrozen(meta.tags)).toBe(false);
  });

  it("travel with a food, and with a kitchen", () => {
    const oats = { id: "oats", name: "Oats", source: "made up", per100g: {}, meta };
    const table = foodTable([oats]).with([{ ...oats, id: "two" }]);
    expect([table.get("oats").meta, table.get("two").meta]).toEqual([meta, meta]);
    const own = kitchen({ name: "boathouse", measures: "metric", drawer: {}, pieces: "half", meta });
    expect(own.meta).toEqual(meta);
    expect(kitchen(JSON.parse(JSON.stringify(own)))).toEqual(own);
    const label = foodFromLabel({ id: "bar", name: "Bar", style: "eu", per: "100 g", figures: {}, meta });
    expect(foodTable([label]).get("bar").meta).toEqual(meta);
  });

  it("are refused where JSON would lose some of them", () => {
    expect(faultsOf(() => recipe({ ...good, meta: { at: new Date(0) } }))).toMatchObject([
      { path: ["meta", "at"] },
    ]);
    expect(
      faultsOf(() => recipe({ ...good, lines: [{ ...line, meta: "x".repeat(100_001) }] })),
    ).toMatchObject([{ path: ["lines", 0, "meta"] }]);
  });
});
