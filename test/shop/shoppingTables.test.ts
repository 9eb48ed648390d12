import fc from "fast-check";
import Papa from "papaparse";
import { parseFragment } from "parse5";
import { describe, expect, it } from "vitest";
import { britishEnglish } from "../../src/document/language.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { exact } from "../../src/number/exact.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { type ShoppingList, shoppingList } from "../../src/shop/shoppingList.ts";
import { toCsv } from "../../src/show/csv.ts";
import { toHtml } from "../../src/show/html.ts";
import { toRecords } from "../../src/show/records.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { toText } from "../../src/show/text.ts";
import { runs } from "../runs.ts";
import { HOSTILE, neutral, withoutIsolates } from "../show/hostile.ts";
import { elements, textOf } from "../show/markup.ts";
import { written } from "../written.ts";

/** Foods of our own: prices and packs are made up. */
const foods: readonly FoodInput[] = [
  {
    id: "oats",
    name: "Rolled oats",
    state: "dry",
    source: "made up",
    per100g: {},
    aisle: "dry goods",
    packs: [
      { name: "500 g bag", edible: 500, price: "0.90" },
      { name: "1 kg bag", edible: 1000, price: "1.50" },
    ],
    price: { currency: "GBP" },
    allergens: ["gluten"],
  },
  {
    id: "bananas",
    name: "Bananas",
    source: "made up",
    per100g: {},
    state: "raw",
    aisle: "fruit",
    edibleShare: "0.64",
    price: { currency: "GBP", per100g: "0.123" },
    allergens: [],
  },
  {
    id: "honey",
    name: "Honey",
    source: "made up",
    per100g: {},
    aisle: "dry goods",
    cautions: [{ code: "infant", text: "Not for infants.", source: "made up" }],
  },
  { id: "salt", name: "Salt", source: "made up", per100g: {} },
];
const foodOf = (name: string, about: Partial<FoodInput>): FoodInput => {
  return { id: name, name, source: "made up", per100g: {}, ...about };
};
const breakfast = (about: Partial<FoodInput> = {}): Sheet =>
  sheet(
    {
      name: "Breakfast",
      portions: 4,
      lines: foods.map(({ id }, i) => ({ food: id, amount: `${[1200, 250, 40, 3][i]} g` })),
    },
    foodTable(foods.map((food) => ({ ...food, ...about, id: food.id }))),
  );

describe("a shopping list, shown", () => {
  const list = shoppingList(breakfast(), { cupboard: { salt: "enough", oats: "100 g" } });

  it("says by aisle what to buy, what is left over and what it costs, and what it does not know", () => {
    expect(`\n${toText(list)}\n`).toBe(`
Shopping list
Food              Needed (g)                          Buy  Left over (g)    Price (GBP)
────────────────  ──────────  ───────────────────────────  ─────────────  ─────────────
dry goods
Honey                     40                         40 g                             ?
Rolled oats, dry        1200  1 × 500 g bag; 1 × 1 kg bag            400           2.40

fruit
Bananas, raw             250                        400 g              6           0.49
────────────────  ──────────  ───────────────────────────  ─────────────  ─────────────
Total                                                                     at least 2.89
weights to buy are rounded up to what a shop weighs out
weight includes peel and trimmings: bananas (64% is eaten)
no refuse known, bought as eaten: honey
no price known of: honey
costs are rounded so that they add up to the total: each down, then the largest remainders up
Allergens: cereals containing gluten (rolled oats)
Allergens are not known of honey; salt: unknown is not free from
Honey: Not for infants. (made up)

From the cupboard
Food              In stock (g)  Use (g)  Remaining (g)
────────────────  ────────────  ───────  ─────────────
Rolled oats, dry           100      100              0
Salt                    enough        3         enough

What portions cost
Dish       Portions     Cost (GBP)  Per portion (GBP)
─────────  ────────  ─────────────  ─────────────────
Breakfast         4  at least 2.89      at least 0.72
each food's cost is shared by what is eaten of it, so what is left over is paid for too
`);
  });

  it("rounds up what is weighed out in the shop, so that what is bought covers the need", () => {
    const s = sheet(
      {
        name: "x",
        portions: 1,
        lines: [
          { food: "bananas", amount: "64.1 g" },
          { food: "salt", amount: "2.001 g" },
        ],
      },
      foodTable(foods),
    );
    const buy = toText(shoppingList(s))
      .split("\n")
      .filter((line) => / g( |$)/.test(line));
    expect(buy.map((line) => line.trim().split(/ {2,}/).slice(1, 3))).toEqual([
      ["64", "110 g"], // 100.15…
      ["2", "3 g"],
    ]);
  });

  it("tells pieces beside grams", () => {
    const apples = foodOf("Apples", { measures: [{ name: "medium", grams: 182 }] });
    const fish = foodOf("Cod", { measures: [{ name: "fillet", grams: 116 }] });
    const s = sheet(
      {
        name: "x",
        portions: 1,
        lines: [
          { food: "Apples", amount: "3.1 medium" },
          { food: "Cod", amount: "200 g" },
        ],
      },
      foodTable([apples, fish]),
    );
    const text = toText(shoppingList(s));
    expect(text).toMatch(/Apples +564 +570 g \(about 4 medium\)/);
    expect(text).toMatch(/Cod +200 +200 g \(about 2 fillets\)/);
    const rows = toRecords(shoppingList(s), { figures: "exact" });
    expect(
      rows.filter(({ component }) => component === "pieces").map(({ pack, amount }) => [pack, amount]),
    ).toEqual([
      ["medium", "4"],
      ["fillet", "2"],
    ]);
    expect(written(shoppingList(s).lines[0])).toMatchObject({
      weighOut: "570",
      pieces: { name: "medium", count: "4" },
    });
  });

  it("gives tidy rows: one figure each, of every food, with its unit", () => {
    const rows = toRecords(list, { figures: "exact" });
    const of = (food: string): unknown[] =>
      rows
        .filter((row) => row.food === food && row.row === "food" && row.component !== null)
        .map(({ what, component, pack, amount, unit }) => [what, component, pack, amount, unit]);
    expect(of("oats")).toEqual([
      ["needed", "mass", null, "1200", "g"],
      ["from-cupboard", "mass", null, "100", "g"],
      ["bought", "mass", null, "1500", "g"],
      ["left-over", "mass", null, "400", "g"],
      ["bought", "packs", "500 g bag", "1", "pack"],
      ["bought", "packs", "1 kg bag", "1", "pack"],
      ["bought", "cost", null, "2.4", "GBP"],
    ]);
    expect(of("bananas")).toContainEqual(["as-purchased", "mass", null, "390.625", "g"]);
    expect(of("honey")).toContainEqual(["bought", "cost", null, null, null]);
    expect(of("salt").map((row) => (row as unknown[])[1])).not.toContain("cost");
  });

  it("says what nobody needs to buy anything of", () => {
    expect(toText(shoppingList([]))).toContain("no dish takes anything");
    const all = Object.fromEntries(foods.map(({ id }) => [id, "enough"]));
    const text = toText(shoppingList(breakfast(), { cupboard: all }));
    expect(text).toContain("the cupboard has all that is needed");
    expect(text).not.toContain("Price");
  });

  it("writes the currency beside each figure where there are several", () => {
    const table = foodTable(
      ["GBP", "JPY"].map((currency) => ({
        id: currency,
        name: `Paid in ${currency}`,
        source: "made up",
        per100g: {},
        price: { currency, per100g: "120.5" },
      })),
    );
    const s = sheet(
      { name: "Mixed", portions: 2, lines: table.ids.map((food) => ({ food, amount: "100 g" })) },
      table,
    );
    const text = toText(shoppingList(s));
    expect(text).toContain("120.50 GBP");
    expect(text).toContain("121 JPY");
    expect(text.match(/Total/g)).toHaveLength(2);
    expect(text.match(/What portions cost/g)).toHaveLength(2);
  });

  it("shows what portions cost, by person and meal, which add up as they are shown", () => {
    const plan = portionPlan({
      meals: [
        { id: "early", name: "Early", dishes: breakfast() },
        { id: "late", name: "Late", dishes: breakfast() },
      ],
      people: [
        { id: "cox", name: "Cox", demands: { factor: "1/3" } },
        { id: "heavy", name: "Heavyweight", demands: { factor: "13/7" }, byMeal: { late: { factor: 1 } } },
      ],
    });
    const rows = tablesOf(shoppingList(plan))
      .at(-1)
      ?.rows.flatMap((row) => (row.kind === "group" ? [] : [row.cells.slice(1)]));
    const pence = (rows ?? []).map((cells) =>
      cells.map((cell) => (typeof cell === "string" ? Number.NaN : Number(cell.value) * 100)),
    );
    expect(pence).toHaveLength(3);
    const [cox = [], heavy = [], total = []] = pence.map((row) => row.map(Math.round));
    expect(total).toEqual(cox.map((each, i) => each + (heavy[i] ?? 0)));
    for (const [early = 0, late = 0, all = 0] of [cox, heavy, total]) expect(early + late).toBe(all);
    expect(total[2]).toBe(Number(shoppingList(plan).total().value) * 100);
  });

  it("speaks the language it is given, decimal mark and all", () => {
    const language = {
      ...britishEnglish,
      tag: "de",
      decimal: "," as const,
      phrases: {
        Total: "Summe",
        "dry goods": "Trockenwaren",
        "at least {figure}": "mindestens {figure}",
        "{count} × {pack}": "{count} mal {pack}",
        dry: "trocken",
        enough: "genug",
      },
    };
    const text = toText(list, { language });
    for (const word of [
      "Summe",
      "Trockenwaren",
      "mindestens 2,89",
      "1 mal 500 g bag",
      "oats, trocken",
      "genug",
    ])
      expect(text).toContain(word);
  });
});

describe("hostile names", () => {
  const named = (text: string): ShoppingList => {
    const name = text.trim() === "" || /[^\P{Cc}\t\r\n]/u.test(text) ? "plain" : text;
    const hostile: FoodInput = {
      id: "x",
      name,
      source: "made up",
      per100g: {},
      aisle: name,
      packs: [{ name, edible: 7, price: 1 }],
      price: { currency: "GBP" },
      cautions: [{ code: "c", text: name, source: name }],
    };
    const s = sheet({ name, portions: 1, lines: [{ food: "x", amount: "10 g" }] }, foodTable([hostile]));
    return shoppingList(s, { cupboard: { x: "1 g" } });
  };

  it("stay inert in html, and read back as they were written", () => {
    const allowed = new Set([
      "table",
      "caption",
      "thead",
      "tbody",
      "tfoot",
      "tr",
      "th",
      "td",
      "br",
      "p",
      "ul",
      "li",
      "bdi",
      "div",
      "section",
      "footer",
      "small",
    ]);
    fc.assert(
      fc.property(fc.constantFrom(...HOSTILE), (text) => {
        const list = named(text);
        const html = parseFragment(toHtml(list));
        expect(elements(html).filter(({ nodeName }) => !allowed.has(nodeName))).toEqual([]);
        const cells = elements(html, "td", "th").map((cell) => withoutIsolates(textOf(cell)).trim());
        const shown = neutral(list.lines[0]?.name ?? "").trim();
        expect(cells.map((cell) => cell.replace(/\s+/g, " "))).toContain(shown.replace(/\s+/g, " "));
      }),
      { numRuns: runs(200) },
    );
  });

  it("start no formula in csv", () => {
    for (const text of HOSTILE) {
      const { data } = Papa.parse<string[]>(toCsv(named(text)).replace(/^\uFEFF/, ""));
      for (const cell of data.flat()) expect(cell).not.toMatch(/^\s*[=+\-@＝＋－＠](?![\d.]+$)/);
    }
  });

  it("of people and meals name columns and rows, and nothing else", () => {
    const odd = ["constructor", "toString", "person", "all", "=1+1", "<b>x</b>"];
    const plan = portionPlan({
      meals: odd.map((id) => ({ id, name: id, dishes: breakfast() })),
      people: odd.map((id) => ({ id, name: id, demands: { factor: 1 } })),
    });
    const list = shoppingList(plan);
    expect(list.portions).toHaveLength(36);
    const table = tablesOf(list).at(-1);
    expect(table?.rows).toHaveLength(7);
    const first = table?.rows[0];
    const total = first?.kind === "body" ? first.cells.at(-1) : undefined;
    expect(typeof total === "object" && exact(total.value ?? "0").n > 0n).toBe(true);
  });
});
