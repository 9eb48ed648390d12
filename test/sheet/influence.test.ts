/** The say of each line, held against sheets that were written anew with a tenth more of it. */
import * as Plot from "@observablehq/plot";
import { parseHTML } from "linkedom";
import { describe, expect, it } from "vitest";
import { oatPot, seedTopping } from "../../examples/recipes.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exact, ONE, sum } from "../../src/number/exact.ts";
import { sheet } from "../../src/sheet/build.ts";
import { explain } from "../../src/sheet/explain.ts";
import { influence } from "../../src/sheet/influence.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";

const lines = [
  { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
  { key: "milk", food: "milk-whole", amount: "200 g" },
  { key: "seaweed", food: "wakame-raw", amount: "5 g", added: "serving" as const },
];
const written = { name: "Porridge", portions: 2, yieldFactor: "0.9", lines };
const porridge = sheet(written, starterFoods);

describe("the influence of lines", () => {
  it.each(["iron", "water", "iodine"] as const)("is what a sheet with a tenth more comes to: %s", (id) => {
    for (const where of ["portion", "per100g"] as const) {
      const all = influence(porridge, id, { where }).lines;
      for (const each of all.filter(({ byAmount }) => byAmount)) {
        const more = lines.map((line) =>
          line.key === each.line
            ? { ...line, amount: `${exact(line.amount.replace(" g", "")).times("1.1")} g` }
            : line,
        );
        const of = (made: typeof lines): ReturnType<typeof exact> => {
          const s = sheet({ ...written, lines: made }, starterFoods);
          return (where === "portion" ? s.portion(id) : s.per100g(id)).value;
        };
        expect(each.byAmount?.toJSON()).toBe(of(more).minus(of(lines)).toJSON());
      }
      const shares = all.flatMap(({ share }) => share ?? []);
      expect(sum(shares).toJSON()).toBe(ONE.toJSON());
    }
  });

  it("is that of another figure, where a food is written anew with a tenth more in it", () => {
    const { per100g, ...oats } = starterFoods.get("oats-rolled-dry");
    const iron = exact((per100g.iron as { value: string }).value ?? per100g.iron).times("1.1");
    const foods = starterFoods.with([{ ...oats, per100g: { ...per100g, iron } }]);
    const before = porridge.portion("iron").value;
    const after = sheet(written, foods).portion("iron").value;
    const [first] = influence(porridge, "iron").lines;
    expect(first?.line).toBe("oats");
    expect(first?.byFigure?.toJSON()).toBe(after.minus(before).toJSON());
  });

  it("of a yield is water and mass alone", () => {
    const half = { name: "One", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] };
    const at = (yieldFactor: string) => sheet({ ...half, yieldFactor }, starterFoods);
    for (const id of ["water", "iron"] as const) {
      const [one] = influence(at("2"), id, { where: "per100g" }).lines;
      const change = at("2.2").per100g(id).value.minus(at("2").per100g(id).value);
      expect(one?.byYield?.toJSON()).toBe(change.toJSON());
    }
  });

  it("of a line's own yield is water and mass of that line alone", () => {
    const at = (yieldFactor: string) => {
      const [oats, milk] = lines.map(({ added: _, ...line }) => line);
      const made = [
        { ...oats, yieldFactor },
        { ...milk, yieldFactor: "0.8" },
      ] as unknown as typeof lines;
      return sheet({ name: "Porridge", portions: 2, lines: made }, starterFoods);
    };
    for (const id of ["water", "iron"] as const) {
      const oats = influence(at("2"), id, { where: "per100g" }).lines.find(({ line }) => line === "oats");
      const change = at("2.2").per100g(id).value.minus(at("2").per100g(id).value);
      expect(oats?.byYield?.toJSON()).toBe(change.toJSON());
    }
  });

  it("ranks by share, then what is unknown by mass, and is shown, recorded and drawn", () => {
    const s = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });
    const made = influence(s, "iodine");
    const known = made.lines.map(({ share }) => share !== undefined);
    expect(known.lastIndexOf(true)).toBeLessThan(known.indexOf(false));
    expect(toText(made)).toContain("where it comes from");
    expect(toRecords(made).map(({ line }) => line)).toEqual(made.lines.map(({ line }) => line));
    // Three lines, as the docs promise.
    const { document } = parseHTML("<html><body></body></html>");
    const { data, channels, options } = made.plot;
    const drawn = Plot.plot({ ...options, document, marks: [Plot.barX(data as never, channels as never)] });
    expect(drawn.querySelectorAll("rect").length).toBe(data.length);
  });
});

describe("an explanation", () => {
  it("ranks what is known by share, all of them one, and what is unknown by mass", () => {
    const why = explain(porridge, "iron", "portion");
    expect(sum(why.ranked.map(({ share }) => share)).toJSON()).toBe("1");
    expect(why.ranked[0]?.explanation.line).toBe("oats");
    const foods = foodTable([
      { id: "a", name: "A", source: "made up for a test", per100g: { iron: 1 } },
      { id: "b", name: "B", source: "made up for a test", per100g: {} },
    ]);
    const silent = [
      { key: "few", food: "b", amount: "10 g" },
      { key: "known", food: "a", amount: "10 g" },
      { key: "many", food: "b", amount: "90 g" },
    ];
    const made = explain(sheet({ name: "Dish", portions: 1, lines: silent }, foods), "iron", "total");
    expect(made.unknown.map(({ line }) => line)).toEqual(["many", "few"]);
    expect(toText(made)).toContain("Share");
    const shares = toRecords(made).map(({ line, share }) => [line, share]);
    expect(shares).toContainEqual(["known", 1]);
    expect(shares).toContainEqual(["many", null]);
  });
});
