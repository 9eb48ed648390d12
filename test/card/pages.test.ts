import { parse } from "parse5";
import { describe, expect, it } from "vitest";
import { cardPages, cookCard, personCard } from "../../src/card/personCard.ts";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import { starterFoods } from "../../src/foods.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { americanEnglish, toText } from "../../src/show.ts";
import { errorOf } from "../number/errorOf.ts";

const recipes = {
  paste: {
    name: "Spice paste",
    portions: 8,
    lines: [
      { key: "onions", food: "onions-raw", amount: "200 g" },
      { key: "oil", food: "olive-oil", amount: "60 g" },
    ],
    method: ["Grind {onions} with {oil}."],
  },
};
const dal = sheet(
  {
    name: "Dal",
    portions: 4,
    lines: [
      { key: "lentils", food: "lentils-red-dry", amount: "300 g" },
      { key: "water", food: "water-tap", amount: "900 g" },
      { key: "paste", recipe: "paste", amount: "130 g" },
      { key: "seeds", food: "pumpkin-seeds", amount: "40 g", added: "serving" },
    ],
    method: ["Fry {paste}, add {lentils} and {water}.", "Scatter {seeds}."],
    notes: [{ kind: "storage", text: "Cold, <b>2</b> days.", days: 2 }],
  },
  starterFoods,
  { recipes },
);
const days = ["mon", "tue", "wed"].map((id) => ({
  id,
  name: id === "mon" ? "Monday" : id,
  meals: [{ id: "supper", name: "Supper", dishes: { dal } }],
}));
const plan = portionPlan({
  days,
  people: [
    { id: "cox", name: "Cox", demands: [{ of: "energy", exactly: "420 kcal" }] },
    { id: "bow", name: "Bow & Co", demands: [{ of: "energy", exactly: "610 kcal" }], away: ["tue"] },
  ],
  kitchen: "metric",
});
const schedule = cookingSchedule(plan, { cook: { dal: ["mon", "wed"] } });

interface Node {
  readonly nodeName: string;
  readonly value?: string;
  readonly childNodes?: readonly Node[];
  readonly attrs?: readonly { readonly name: string; readonly value: string }[];
}
const all = (node: Node): readonly Node[] => [node, ...(node.childNodes ?? []).flatMap((each) => all(each))];
const named = (html: string, name: string): readonly Node[] =>
  all(parse(html) as Node).filter((each) => each.nodeName === name);
const shown = (node: Node): string =>
  all(node)
    .flatMap((each) => (each.nodeName === "#text" ? [each.value ?? ""] : []))
    .join(" ")
    .replace(/\s+/g, " ")
    .trim();
const of = (node: Node, name: string): readonly Node[] => all(node).filter((each) => each.nodeName === name);
const classOf = (node: Node): string => node.attrs?.find(({ name }) => name === "class")?.value ?? "";

describe("a cook's page", () => {
  const page = cookCard(schedule, { day: "mon", date: "2026-01-12" });

  it("says what to do first, what goes into what, and how it is made", () => {
    const text = shown(parse(page) as Node);
    expect(text).toContain("To cook: Monday 2026-01-12");
    expect(text.indexOf("Spice paste")).toBeLessThan(text.indexOf("Fry"));
    expect(named(page, "li").map(shown)).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^Grind \d+ g onions with \d+ g olive oil\.$/),
        expect.stringMatching(/^Dal: it is kept, the last of it for tue$/),
      ]),
    );
    expect(text).toContain("Cold, <b>2</b> days.");
    expect(named(page, "b")).toEqual([]);
  });

  it("has a row for everyone each time, with what is taken of the pot and what is added", () => {
    const served = named(page, "table").filter((each) => classOf(each) === "served");
    const rows = of(served.at(-1) as Node, "tr")
      .slice(1)
      .map(shown);
    expect(rows.map((row) => row.replace(/\d+ g/g, "n g").replace(/the rest \(n g\)/, "n g"))).toEqual([
      "Cox Supper n g n g pumpkin seeds",
      "Bow & Co Supper n g n g pumpkin seeds",
      "Cox tue: Supper n g n g pumpkin seeds",
    ]);
  });

  it("names its days, and refuses one that the schedule lacks", () => {
    expect(named(cookCard(schedule), "article")).toHaveLength(2);
    expect(errorOf(() => cookCard(schedule, { day: "fri" })).code).toBe("card-malformed");
    expect(errorOf(() => cookCard(plan as never)).code).toBe("card-malformed");
  });
});

describe("all pages in one document", () => {
  const pages = cardPages(schedule);

  it("are the cook's days, then each person's, every mark its own", () => {
    expect(named(pages, "article").map((each) => shown(of(each, "h1")[0] as Node))).toEqual([
      "To cook: Monday",
      "To cook: wed",
      "Cox",
      "Bow & Co",
    ]);
    const ids = all(parse(pages) as Node).flatMap(({ attrs = [] }) =>
      attrs.filter(({ name }) => name === "id").map(({ value }) => value),
    );
    expect(new Set(ids).size).toBe(ids.length);
    expect(named(cardPages(plan, { people: ["bow"] }), "article")).toHaveLength(1);
  });

  it("say the same to the cook and to each person, and nobody is told to weigh what is in the pot", () => {
    const articles = named(pages, "article");
    const weights = (node: Node): readonly string[] =>
      of(node, "td")
        .filter((each) => classOf(each) === "weigh")
        .map(shown);
    const cook = articles
      .slice(0, 2)
      .flatMap((each) => of(each, "table").filter((t) => classOf(t) === "served"));
    const told = (person: string): readonly string[] =>
      cook
        .flatMap((t) =>
          of(t, "tr")
            .filter((row) => shown(row).startsWith(person))
            .flatMap(weights),
        )
        .sort();
    const own = (at: number): readonly string[] =>
      all(articles[at] as Node)
        .filter((each) => classOf(each) === "pot-share" || classOf(each) === "taken")
        .flatMap(weights)
        .map((text) => text)
        .sort();
    expect(own(2)).toEqual(told("Cox"));
    expect(own(3)).toEqual(told("Bow"));
    expect(own(2)).toHaveLength(3);
    for (const each of articles.slice(2)) {
      expect(shown(each)).not.toContain("Lentils, red, split, dry 1");
      expect(of(each, "li").some((item) => shown(item).startsWith("Fry"))).toBe(false);
    }
  });

  it("tell each person that what they eat is what they take and add, as it is cooked", () => {
    const grams = (node: Node): number => Number(/([\d.]+) g/.exec(shown(node))?.[1] ?? 0);
    const tables = named(personCard(schedule, "bow", { days: ["mon"] }), "table")
      .map((each) => of(each, "tr"))
      .filter((rows) => rows.some((row) => shown(row).startsWith("As eaten")));
    expect(tables.length).toBeGreaterThan(0);
    for (const rows of tables) {
      const eaten = rows.filter((row) => shown(row).startsWith("As eaten"));
      const taken = rows.filter((row) => !eaten.includes(row)).map(grams);
      const told = eaten.map(grams).reduce((a, b) => a + b, 0);
      expect(Math.abs(told - taken.reduce((a, b) => a + b, 0))).toBeLessThanOrEqual(1);
    }
  });

  it("show some days, and figures of several on their mean, never their sum", () => {
    const energy = (html: string): string =>
      named(html, "tr")
        .map(shown)
        .find((row) => row.startsWith("energy")) ?? "";
    expect(energy(personCard(schedule, "cox"))).toMatch(/4[12]\d kcal/);
    expect(energy(personCard(schedule, "cox", { days: ["tue"] }))).toMatch(/4[12]\d kcal/);
    expect(named(personCard(schedule, "cox", { days: ["tue"] }), "h1").map(shown)[0]).toBe("Cox tue");
    expect(named(personCard(schedule, "cox", { days: ["tue"] }), "h2").map(shown)[0]).toBe("Supper");
    expect(shown(parse(personCard(schedule, "cox")) as Node)).toContain("Nutrients a day, mean of 3 days");
    expect(errorOf(() => personCard(plan, "cox", { days: ["fri"] })).path.join(".")).toBe("days.0");
  });

  it("speak to each person in their own words", () => {
    const mixed = cardPages(plan, {
      languages: {
        bow: {
          ...americanEnglish,
          phrases: { ...americanEnglish.phrases, Sources: "Where it is from" },
        },
      },
    });
    expect(mixed.match(/>Sources /g)).toHaveLength(1);
    expect(mixed.match(/>Where it is from /g)).toHaveLength(1);
  });
});

describe("a card without a schedule", () => {
  it("tells what is made first in the amounts that are taken of it", () => {
    const paste = {
      name: "Paste",
      portions: 2,
      lines: [
        { key: "garlic", food: "garlic-raw", amount: "40 g" },
        { key: "oil", food: "olive-oil", amount: "60 g" },
      ],
      method: ["Grind {garlic} with {oil}."],
    };
    const dish = sheet(
      {
        name: "Fried rice",
        portions: 2,
        lines: [
          { key: "rice", food: "rice-white-long-boiled", amount: "300 g" },
          { key: "paste", recipe: "paste", amount: "50 g" },
        ],
        method: ["Fry {paste}, add {rice}."],
      },
      starterFoods,
      { recipes: { paste } },
    );
    const own = portionPlan({
      meals: [{ id: "supper", dishes: dish }],
      people: [{ id: "cox", demands: { factor: 4 } }],
    });
    // Four times half of 50 g of paste are 100 g: the paste as it is written.
    const text = shown(parse(personCard(own, "cox")) as Node);
    expect(text).toContain("First make 100 g of Paste");
    expect(text).toMatch(/Grind 40 g garlic\s+with 60 g olive oil/);
    expect(text.indexOf("Grind")).toBeLessThan(text.indexOf("Fry"));
    expect(shown(parse(personCard(cookingSchedule(own), "cox")) as Node)).not.toContain("First make");
    expect(toText(own, { parts: ["pots"] })).toMatch(/Paste, made first[\s\S]*Garlic, raw +40 g/);
  });
});
