import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { linesFromText } from "../../src/interchange/linesFromText.ts";
import type { ReadAmount, ReadLine } from "../../src/interchange/readLine.ts";
import { writeLine } from "../../src/interchange/writeLine.ts";
import { recipe } from "../../src/recipe/recipe.ts";
import { sheet } from "../../src/sheet/build.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";
import { ourLines } from "./ourLines.ts";

const only = (text: string): ReadLine => {
  const lines = linesFromText(text, starterFoods, { measures: "us" });
  expect(lines).toHaveLength(1);
  return lines[0] as ReadLine;
};

function amountsText(amounts: readonly ReadAmount[]): string {
  const one = ({ least, most, unit }: { least: string; most: string; unit: string | null }): string =>
    `${least}${least === most ? "" : `–${most}`} ${unit}`;
  return amounts
    .map(
      (a) =>
        `${one(a)}${a.each ? ` each ${one(a.each)}` : ""}${a.plus ? ` + ${one(a.plus)}` : ""}${a.approximate ? "~" : ""}`,
    )
    .join(" ; ");
}

describe("a line as people write it", () => {
  it.each(ourLines.map((line) => [line.text, line] as const))("%s", (text, line) => {
    const read = only(text);
    const {
      kind = "ingredient",
      amounts = "",
      food = "",
      state = [],
      preparation = [],
      alternatives = [],
    } = line;
    expect(read).toMatchObject({
      kind,
      food,
      state,
      preparation,
      alternatives,
      optional: line.optional ?? false,
      text: text.trim(),
    });
    expect(amountsText(read.amounts)).toBe(amounts);
    if (line.note !== undefined) expect(read.note).toBe(line.note);
  });

  it("is the same line when it is written out and read again", () => {
    for (const { text } of ourLines) {
      const read = only(text);
      if (read.food !== "") expect(words(only(writeLine(read)))).toEqual(words(read));
    }
  });

  it("is the same line when it is written out and read again, whatever it is made of", () => {
    const number = fc.constantFrom("1", "2", "1 1/2", "3/4", "2.5", "12");
    const unit = fc.constantFrom(null, "g", "tbsp", "cup", "lb", "clove", "bunch", "medium", "ml", "fl oz");
    const amount = fc.record({ number, isRange: fc.boolean(), unit, about: fc.boolean() });
    const food = fc.constantFrom("onion", "olive oil", "red lentils", "brown sugar", "black pepper", "peas");
    const state = fc.subarray(["fresh", "frozen", "unsalted"], { maxLength: 1 });
    const preparation = fc.subarray(["chopped", "finely diced", "peeled", "drained"]);
    const alternatives = fc.subarray(["ghee", "2 tbsp lard", "dried mint"], { maxLength: 2 });
    const note = fc.constantFrom("", "to taste", "from the garden", "2 of them (or so)");
    fc.assert(
      fc.property(
        fc.record({
          amounts: fc.array(amount, { maxLength: 1 }),
          food,
          state,
          preparation,
          alternatives,
          note,
          optional: fc.boolean(),
        }),
        (line) => {
          const amounts = line.amounts.map(
            (a): ReadAmount => ({
              least: a.number,
              most: a.isRange ? "40" : a.number,
              unit: a.unit,
              approximate: a.about,
            }),
          );
          expect(words(only(writeLine({ ...line, amounts })))).toEqual(words({ ...line, amounts }));
        },
      ),
      { numRuns: runs(60) },
    );
  });
});

function words(line: Omit<ReadLine, "candidates" | "kind" | "text">): object {
  const { amounts, food, state, preparation, optional, alternatives, note } = line;
  return { amounts, food, state, preparation, optional, alternatives, note };
}

describe("a whole text", () => {
  const text = `
    Lentils of the camp
    - 200 g red lentils
    - 1 can (400 g) chickpeas,
      drained
    - 2-3 tbsp olive oil

    - salt`;

  it("comes back line by line, in order, with nothing lost", () => {
    const lines = linesFromText(text, starterFoods);
    expect(lines.map(({ kind, food }) => [kind, food])).toEqual([
      ["heading", ""],
      ["ingredient", "red lentils"],
      ["ingredient", "chickpeas"],
      ["ingredient", "olive oil"],
      ["no-amount", "salt"],
    ]);
    expect(lines[2]?.preparation).toEqual(["drained"]);
  });

  it("loses no word, whatever it is", () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.string(), fc.constantFrom(...ourLines.map((line) => line.text))), {
          maxLength: 8,
        }),
        (given) => {
          const whole = given.join("\n") || "x";
          const written = linesFromText(whole.trim() === "" ? "x" : whole, starterFoods)
            .map((line) => line.text)
            .join(" ");
          const visible = (each: string): string => each.replace(/\s+/g, "");
          expect(visible(written)).toBe(visible(whole.trim() === "" ? "x" : whole));
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it("is refused where it is no text, or the options are none", () => {
    expect(errorOf(() => linesFromText(3 as never, starterFoods)).code).toBe("format-malformed");
    expect(errorOf(() => linesFromText("2 eggs", [] as never)).code).toBe("food-malformed");
    expect(errorOf(() => linesFromText("2 eggs", starterFoods, { measure: "us" } as never)).hint).toContain(
      "measures",
    );
  });

  it("is read quickly, however long and odd", () => {
    const long = [
      "(".repeat(2000),
      "1 ".repeat(1000),
      "a ".repeat(5000),
      `${"1/".repeat(900)}2`,
      "or ".repeat(600),
      "x, ".repeat(600),
    ].join("\n");
    expect(linesFromText(long, starterFoods)).toHaveLength(6);
  });
});

describe("a size among the measures that SR28 prints", () => {
  // USDA SR28 (2016), file WEIGHT, NDB 09040: bananas, raw.
  const measures = [
    { name: 'large (8" to 8-7/8" long)', grams: 136 },
    { name: 'extra large (9" or longer)', grams: 152 },
    { name: 'medium (7" to 7-7/8" long)', grams: 118 },
  ];
  const bananas = foodTable([{ id: "b", name: "Bananas, raw", source: "SR28", per100g: {}, measures }]);

  it.each([
    ["1 large banana", '1 large (8" to 8-7/8" long)'],
    ["2 bananas", '2 medium (7" to 7-7/8" long)'],
  ])("is found: %s", (text, amount) => {
    const [line] = linesFromText(text, bananas);
    expect(line?.line).toEqual({ food: "b", amount });
    const written = recipe({ name: "One", portions: 1, lines: [{ food: "b", amount }] });
    expect(sheet(written, bananas).lines[0]?.amount.range).toBeUndefined();
  });
});

describe("a line that names several foods", () => {
  it.each([
    ["salt and pepper", [undefined, undefined], ["amount-empty", "amount-empty"]],
    [
      "salt, pepper and paprika",
      [undefined, undefined, undefined],
      ["amount-empty", "amount-empty", "amount-empty"],
    ],
    ["2 carrots and 1 onion", ["carrots-raw", "onions-raw"], [undefined, undefined]],
    ["1 tsp each salt and sugar", ["salt", "sugar-white"], [undefined, undefined]],
    ["200 g carrots and onions", [undefined, undefined], ["amount-empty", "amount-empty"]],
  ])("has a line for each: %s", (text, foods, codes) => {
    const read = only(text);
    expect(read.line).toBeUndefined();
    expect(read.apart?.map(({ line }) => line?.food)).toEqual(foods);
    expect(read.apart?.map(({ unclear }) => unclear?.code)).toEqual(codes);
  });

  it("reads a figure that could be a thousand or one by what else the line says, and as neither alone", () => {
    expect(only("1,000 g (1 kg) flour").line?.amount).toBe("1 kg");
    expect(only("1,000 g flour").unclear?.message).toBe('"1,000" could be 1000 or 1');
    expect(only("1,000 g flour").amounts[0]?.least).toBe("1,000");
  });
});

describe("a line for the recipe document", () => {
  it.each([
    ["1 1/2 cups (120 g) rolled oats", { food: "oats-rolled-dry", amount: "120 g" }],
    ["2 onions, chopped", { food: "onions-raw", amount: "2 medium", prep: "chopped" }],
    ["3 egg yolks", { food: "egg-yolk-raw", amount: "3 large" }],
    ["1 cup onion, chopped", { food: "onions-raw", amount: "1 cup, chopped", prep: "chopped" }],
    ["2 cans kidney beans", { food: "kidney-beans-red-canned-drained", amount: "2 can, drained" }],
    ["1/2 tsp pepper", { food: "black-pepper", amount: "1/2 tsp, ground" }],
    ["1 cup flour (2.5 dl)", { food: "wheat-flour-white", amount: "2.5 dl" }],
    ["2 x 250 g tofu", { food: "tofu-firm", amount: "500 g" }],
  ])("%s", (text, line) => {
    const read = only(text);
    expect(read.line).toEqual(line);
    expect(() =>
      sheet({ name: "One", portions: 1, measures: "us", lines: [line] }, starterFoods),
    ).not.toThrow();
  });

  it.each([
    ["3 tbsp gochujang", "food-unknown"],
    ["1 tsp each salt and sugar", "line-several-foods"],
    ["a pinch of salt", "amount-no-size"],
    ["2 tbsp desiccated coconut", "density-needed"],
    ["olive oil", "amount-empty"],
    ["1,000 g flour", "amount-ambiguous"],
    ["2 x 1,000 g flour", "amount-ambiguous"],
  ])("is not made up: %s", (text, code) => {
    const { line, unclear } = only(text);
    expect(line).toBeUndefined();
    expect(unclear?.code).toBe(code);
    expect(unclear?.hint).not.toBe("");
  });

  it.each([
    ["2 celery sticks", '2 stalk, medium (7-1/2" - 8" long)'],
    ["2 medium celery", '2 stalk, medium (7-1/2" - 8" long)'],
    ["3 celery", '3 stalk, medium (7-1/2" - 8" long)'],
    ["1 large celery", '1 stalk, large (11"-12" long)'],
  ])("finds the piece among measures that say more of it: %s", (text, amount) => {
    // Celery's measures as SR28 names and weighs them (WEIGHT, food 11143).
    const measures = [
      { name: "cup chopped", grams: 101 },
      { name: 'stalk, large (11"-12" long)', grams: 64 },
      { name: 'stalk, medium (7-1/2" - 8" long)', grams: 40 },
      { name: 'stalk, small (5" long)', grams: 17 },
    ];
    const table = foodTable([{ id: "celery", name: "Celery, raw", source: "SR28", per100g: {}, measures }]);
    const [line] = linesFromText(text, table);
    expect(line?.line).toEqual({ food: "celery", amount });
    expect(() =>
      sheet({ name: "One", portions: 1, lines: [{ food: "celery", amount }] }, table),
    ).not.toThrow();
  });

  it("asks for a density by name, with what foods of its kind weigh", () => {
    const { unclear } = only("2 tbsp desiccated coconut");
    expect(unclear?.message).toContain("Coconut, desiccated");
    // Ends of the nuts' measures in SR28: macadamia nuts 134 g and coconut milk 226 g a cup of 236.6 ml.
    expect(unclear?.hint).toMatch(
      /of its kind, a millilitre weighs from 0\.57 g \(Macadamia nuts\) to 0\.96 g \(Coconut milk.*\)/,
    );
  });

  it("asks whose spoons are meant", () => {
    const [line] = linesFromText("2 tbsp olive oil", starterFoods);
    expect(line?.unclear?.code).toBe("measures-needed");
  });

  it("offers foods of a table without one that fits", () => {
    const table = foodTable([{ id: "oats", name: "Porridge oats", source: "made up", per100g: {} }]);
    const [line] = linesFromText("90 g rolled oats", table);
    expect(line?.candidates.map(({ id }) => id)).toEqual(["oats"]);
  });
});
