import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { retentionShares } from "../../src/food/retention.ts";
import { analysedRetention, starterFoods, usdaRetention } from "../../src/foods.ts";
import { explain, openSheet, type RecipeInput, retentionCodes, sheet } from "../../src/index.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const flat = (x: Parameters<typeof toText>[0]): string => toText(x).replace(/\s+/g, " ");

type Retention = RecipeInput["lines"][number]["retention"];

function chickpeas(retention: Retention): RecipeInput {
  return {
    name: "Chickpeas",
    portions: 1,
    lines: [
      { key: "peas", food: "chickpeas-dry", amount: "100 g", ...(retention !== undefined && { retention }) },
    ],
  };
}

describe("two tables of retention factors beside each other", () => {
  it("leave each code its own figures: USDA's 521 keeps 45 % of folate, the analysed one more", () => {
    // SR28 16056: 557 µg of folate in 100 g of dry chickpeas; Release 6, code 521: 45 %.
    const folate = (retention: Retention, foods = starterFoods): string =>
      sheet(chickpeas(retention), foods).total("folate").value.toString();
    expect(folate("521")).toBe("250.65");
    expect(folate("521", starterFoods.withRetention(usdaRetention))).toBe("250.65");
    const left = analysedRetention.codes["legumes-boiled"]?.[1].split(" ")[13];
    expect(Number(left)).toBeGreaterThan(75);
    expect(folate("legumes-boiled")).toBe(String((557 * Number(left)) / 100));
    expect(errorOf(() => folate("legumes-boiled", starterFoods.withRetention(usdaRetention))).code).toBe(
      "retention-unknown",
    );
  });

  it("list the analysed one's codes first, each with its source", () => {
    const found = retentionCodes(analysedRetention, "legumes boiled");
    expect(found[0]?.code).toBe("lentils-boiled");
    expect(found.map(({ source }) => source)).toContain(usdaRetention.source);
    expect(found.find(({ code }) => code === "521")?.spread).toBeUndefined();
    const { low, high, count } = found.find(({ code }) => code === "legumes-boiled")?.spread?.folate ?? {};
    expect([low?.lt("0.8"), high?.gt("0.9"), (count ?? 0) > 10]).toEqual([true, true, true]);
  });

  it("say in words how far the analyses lie apart", () => {
    const text = flat(explain(sheet(chickpeas("legumes-boiled"), starterFoods), "folate", { line: "peas" }));
    expect(text).toMatch(
      /8\d% left after cooking \(nine analyses in ten lay from \d+% to \d+%\): code legumes-boiled/,
    );
  });

  it("store no more than the codes that lines name, of the table that has them", () => {
    const { retention } = sheet(chickpeas("521"), starterFoods).toJSON().foods;
    expect([retention?.source, Object.keys(retention?.codes ?? {})]).toEqual([usdaRetention.source, ["521"]]);
    const both = sheet(
      {
        ...chickpeas("521"),
        lines: [...chickpeas("521").lines, ...chickpeas("legumes-boiled").lines].map((line, i) => ({
          ...line,
          key: `l${i}`,
        })),
      },
      starterFoods,
    );
    const stored = JSON.parse(JSON.stringify(both));
    expect(Object.keys(stored.foods.retention.codes)).toEqual(["legumes-boiled"]);
    expect(Object.keys(stored.foods.retention.beside.codes)).toEqual(["521"]);
    const opened = openSheet(stored);
    for (const id of ["folate", "iron", "ash"] as const)
      expect(opened.total(id).toJSON()).toEqual(both.total(id).toJSON());
  });
});

describe("a document that names USDA's codes", () => {
  const stored = JSON.parse(readFileSync(new URL("../stored/sheet-1-usda.json", import.meta.url), "utf8"));

  it("opens with the figures that it had, as a sheet and as a recipe", () => {
    // Of chickpeas (SR28 16056) code 521 keeps 45 % of folate, 80 % of iron; of spinach (11457) 3004 keeps
    // 65 % of folate, 95 % of iron, 60 % of vitamin C, 100 and 50 g for two portions.
    const half = (a: number, b: number): number => Number(((a + b / 2) / 2).toFixed(6));
    for (const s of [openSheet(stored), sheet(stored.recipe, starterFoods)]) {
      expect(s.portion("folate").value.toNumber()).toBe(half(557 * 0.45, 194 * 0.65));
      expect(s.portion("vitaminC").value.toNumber()).toBe(half(4 * 0.65, 28.1 * 0.6));
      expect(s.mass.cooked.toString()).toBe("210");
    }
    const { foods, ...rest } = JSON.parse(JSON.stringify(openSheet(stored)));
    const { foods: before, ...restBefore } = stored;
    expect([rest, foods.retention]).toEqual([restBefore, before.retention]);
  });
});

describe("a code with shares that say otherwise", () => {
  const left = (retention: Retention): ReturnType<typeof retentionShares> =>
    retentionShares({ ...(retention !== undefined && { retention }) }, analysedRetention);

  it("keeps the code's shares but for those", () => {
    const [code, both] = [left("521"), left({ code: "521", fat: "0.8", folate: 1 })];
    expect([both.get("fat"), both.get("folate"), both.get("iron")].map(String)).toEqual(["0.8", "1", "0.8"]);
    expect(code.get("fat")).toBeUndefined();
    expect(left({ code: "legumes-boiled", folate: "0.5" }).spread?.has("folate")).toBe(false);
    const s = sheet(chickpeas({ code: "521", folate: "0.5" }), starterFoods);
    expect(s.total("folate").value.toString()).toBe("278.5");
    expect(flat(explain(s, "folate", { line: "peas" }))).toMatch(
      /50% left after cooking, as the recipe says/,
    );
    expect(
      openSheet(JSON.parse(JSON.stringify(s)))
        .total("iron")
        .toJSON(),
    ).toEqual(s.total("iron").toJSON());
  });

  it.each([
    [{ code: "none" }, "retention-unknown"],
    [{ code: 5 }, "recipe-malformed"],
    [{ code: "" }, "recipe-malformed"],
    [{ code: "521", fat: 2 }, "recipe-malformed"],
    [{ code: "521", fats: 1 }, "component-unknown"],
  ])("%j is refused in its place", (retention, code) => {
    const error = errorOf(() => sheet(chickpeas(retention as never), starterFoods));
    expect([error.code, error.path.slice(0, 3)]).toEqual([code, ["lines", 0, "retention"]]);
  });
});

describe("a line that tells its own yield", () => {
  it("keeps less of what runs off with the juice, and never more than all", () => {
    const [, , , usual = ""] = analysedRetention.codes["beef-grilled"] ?? [];
    const at = (yieldFactor: string): string =>
      retentionShares({ retention: "beef-grilled", yieldFactor }, analysedRetention)
        .get("magnesium")
        ?.toString() ?? "";
    const [whole, follows] = [Number(at(usual)), Number(analysedRetention.follows?.split(" ")[2]) / 100];
    const ratio = (Number(usual) - 0.1) / Number(usual);
    expect(Number(at(String(Number(usual) - 0.1)))).toBeCloseTo(whole * (1 + follows * (ratio - 1)), 12);
    expect(at("5")).toBe("1");
    expect(Number(at("0.0001"))).toBeGreaterThanOrEqual(0);
    const legumes = (yieldFactor: string): string =>
      `${retentionShares({ retention: "legumes-boiled", yieldFactor }, analysedRetention).get("magnesium")}`;
    expect(legumes("2")).toBe(legumes("3"));
  });
});

describe("a table of retention factors from outside", () => {
  it("is checked, spreads, yields, slopes and what stands beside it", () => {
    const table = {
      source: "own",
      columns: [["iron"], ["zinc"]],
      follows: "5",
      codes: {
        a: ["a", "90 80", "1-2:3"],
        b: ["b", "90 80", "1-2:3 x"],
        c: ["c", "90 80", "- -", "0"],
        d: ["d", "90 80", "80-95:3 -", "0.8"],
      },
      beside: { source: "other", columns: [["iron"]], codes: { e: ["e", "101"] } },
    } as never;
    const error = errorOf(() => starterFoods.withRetention(table));
    expect(error.faults.map((f) => f.path.join("/"))).toEqual([
      "follows",
      "codes/a",
      "codes/b",
      "codes/c",
      "beside/codes/e",
    ]);
    const loop: { [key: string]: unknown } = { source: "own", columns: [], codes: {} };
    loop.beside = loop;
    expect(errorOf(() => starterFoods.withRetention(loop as never)).code).toBe("retention-malformed");
  });
});
