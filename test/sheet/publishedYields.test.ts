import { describe, expect, it } from "vitest";
import { portionsOfMany } from "../../src/bulk.ts";
import { analysedRetention, starterFoods, usdaRetention } from "../../src/foods.ts";
import {
  citations,
  cooking,
  explain,
  methods,
  openSheet,
  type RecipeInput,
  recipe,
  revise,
  scale,
  sheet,
  toRecipe,
  type YieldInput,
  yieldCodes,
} from "../../src/index.ts";
import { errorOf } from "../number/errorOf.ts";

function mince(yieldFactor: YieldInput, onLine = false): RecipeInput {
  const line = { key: "mince", food: "beef-mince-10-fat-raw", amount: "500 g" };
  return {
    name: "Mince",
    portions: 4,
    ...(!onLine && { yieldFactor }),
    lines: [{ ...line, ...(onLine && { yieldFactor }) }],
  };
}

describe("published yields", () => {
  it("stand in tables by code and by name, each with its source", () => {
    // SR28 (2016), WEIGHT: 13317, "unit, cooked (yield from 1 lb raw meat)", 313 g; a pound is 453.59237 g.
    const [patties] = yieldCodes(analysedRetention, "ground patties broiled");
    expect([patties?.code, patties?.yieldFactor.times("453.59237").toString()]).toEqual(["13317", "313"]);
    // 20029: "oz, dry, yields" 86 g; 13373: 1166 g "yield from 1601 g raw meat"; 11464: 220 g from a pack of 10 oz.
    const factor = (words: string): string | undefined =>
      yieldCodes(analysedRetention, words)[0]?.yieldFactor.toFixed(4);
    expect([factor("couscous"), factor("chuck arm pot roast"), factor("spinach frozen")]).toEqual([
      (86 / 28.349523125).toFixed(4),
      (1166 / 1601).toFixed(4),
      (220 / 283.49523125).toFixed(4),
    ]);
    const rice = yieldCodes(analysedRetention, "rice boiled").find(({ code }) => code === "rice-boiled");
    expect([rice?.spread?.low.gt(2), rice?.spread?.high.lt(4), (rice?.spread?.count ?? 0) >= 3]).toEqual([
      true,
      true,
      true,
    ]);
    expect(yieldCodes(usdaRetention)).toEqual([]);
    expect(errorOf(() => yieldCodes(analysedRetention, 3 as never)).code).toBe("retention-malformed");
  });

  it("serve a recipe and a line alike, and stay named in what is written of them", () => {
    const told = { code: "13317" };
    const [whole, byLine] = [sheet(mince(told), starterFoods), sheet(mince(told, true), starterFoods)];
    for (const s of [whole, byLine]) {
      expect(s.mass.cooked.times("453.59237").toString()).toBe(String(500 * 313));
      const opened = openSheet(JSON.parse(JSON.stringify(s)));
      expect(opened.mass.cooked.eq(s.mass.cooked)).toBe(true);
      expect(openSheet(opened.toJSON()).total("water").toJSON()).toEqual(s.total("water").toJSON());
      expect(scale(s, { factor: 2 }).sheet.mass.cooked.eq(s.mass.cooked.times(2))).toBe(true);
    }
    expect(toRecipe(whole).yieldFactor).toEqual(told);
    expect(toRecipe(byLine).lines[0]?.yieldFactor).toEqual(told);
    expect(recipe(JSON.parse(JSON.stringify(toRecipe(whole)))).yieldFactor).toEqual(told);
    const stored = whole.toJSON().foods.retention;
    expect([stored?.codes, stored?.yields?.map(({ codes }) => Object.keys(codes))]).toEqual([
      {},
      [["13317"]],
    ]);
    const other = revise(whole, { yieldFactor: { code: "beef-grilled" } });
    expect(other.mass.cooked.toString()).toBe("385");
    expect(cooking(other).of("water").lost.value.toString()).toBe("115");
    const many = [...portionsOfMany([mince(told), mince(told, true)], starterFoods, ["water"])];
    expect(many[0]?.columns.water.value[0]).toBeCloseTo(whole.portion("water").value.toNumber(), 9);
    expect(many[0]?.columns.water.value[1]).toBeCloseTo(byLine.portion("water").value.toNumber(), 9);
  });

  it("move what is told to move with the yield, as a figure does", () => {
    const with_ = (yieldFactor: YieldInput): string =>
      sheet(
        {
          name: "M",
          portions: 1,
          lines: [{ food: "beef-mince-10-fat-raw", amount: "100 g", retention: "beef-grilled", yieldFactor }],
        },
        starterFoods,
      )
        .total("thiamin")
        .value.toString();
    expect(with_({ code: "beef-grilled" })).toBe(with_("0.77"));
    expect(with_({ code: "13317" })).not.toBe(with_("0.77"));
  });

  it("are cited, explained and told of in a paper's methods", () => {
    const s = sheet(mince({ code: "13317" }), starterFoods);
    expect(
      citations(s, { components: ["water"] }).sources.filter(({ kind }) => kind === "yield"),
    ).toMatchObject([
      { source: "USDA SR28 (2016), household weights that name what they are the yield of", figures: 1 },
    ]);
    const steps = explain(s, "water", "total").from.flatMap((each) => each.steps);
    expect(steps.join("\n")).toMatch(/yield factor 0\.69: code 13317, Beef, ground, patties/);
    expect(methods(s, { components: ["water"] })).toContain("Yield factors came from USDA National Nutrient");
    const lines = sheet(mince({ code: "beef-grilled" }, true), starterFoods);
    expect(methods(lines, { components: ["water"] })).toContain(
      "summed of yields of single ingredients for 1",
    );
    expect(explain(lines, "water", "total").from.at(-1)?.steps.join()).toMatch(
      /Beef.*: yield factor 0\.77, most from 0\.71 to 0\.84: code beef-grilled/,
    );
  });

  it("that no table has are refused where they stand, all at once", () => {
    const wrong = errorOf(() =>
      sheet(
        {
          ...mince({ code: "13318" }),
          lines: [
            { food: "oats-rolled-dry", amount: "1 g", yieldFactor: { code: "rice-boild" }, retention: "x" },
          ],
        },
        starterFoods,
      ),
    );
    expect(wrong.faults.map(({ code, path }) => [code, path.join(".")])).toEqual([
      ["yield-unknown", "lines.0.yieldFactor"],
      ["retention-unknown", "lines.0.retention"],
      ["yield-unknown", "yieldFactor"],
    ]);
    expect(wrong.faults[0]?.hint).toMatch(/rice-boiled/);
    expect(
      errorOf(() => sheet(mince({ code: "13317" }), starterFoods.withRetention(usdaRetention))).hint,
    ).toMatch(/table of retention factors that has yields/);
    expect(errorOf(() => recipe(mince({ code: 5 } as never))).code).toBe("recipe-malformed");
    expect(errorOf(() => recipe(mince({ code: "13317", of: 1 } as never))).code).toBe("recipe-malformed");
    const badly = (yields: unknown): readonly string[] =>
      errorOf(() => starterFoods.withRetention({ ...usdaRetention, yields } as never)).faults.map(
        ({ message }) => message,
      );
    expect(badly({})).toEqual(["not tables of yields"]);
    expect(badly([{ source: "x" }])).toEqual(["not a table of yields"]);
    expect(badly([{ source: "x", codes: { a: ["a", "0", "1"], b: ["b", "1", "2", "x"] } }])).toEqual([
      "not a yield",
      "not a spread",
    ]);
  });
});
