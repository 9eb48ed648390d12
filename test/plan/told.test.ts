import { describe, expect, it } from "vitest";
import { personCard } from "../../src/card/personCard.ts";
import { starterFoods } from "../../src/foods.ts";
import { type Kitchen, kitchen } from "../../src/measure/kitchen.ts";
import type { PlanInput } from "../../src/plan/input.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { LineInput } from "../../src/recipe/document.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecords } from "../../src/show/records.ts";
import type { Table } from "../../src/show/table.ts";
import { tablesOf } from "../../src/show/tabular.ts";
import { toText } from "../../src/show/text.ts";

const coarse: Kitchen = kitchen({
  name: "coarse",
  measures: "us",
  drawer: {},
  scale: "50 g",
  pieces: "whole",
});

const oats: LineInput = { key: "oats", food: "oats-rolled-dry", amount: "60 g" };
const kale: LineInput = { key: "kale", food: "kale-raw", amount: "100 g" };

function planned(demands: readonly Demand[], rest: Partial<PlanInput> = {}, lines = [oats]): Plan {
  const dishes = sheet({ name: "Pot", portions: 1, lines }, starterFoods);
  return portionPlan({
    meals: [{ id: "dinner", dishes }],
    people: [{ id: "cox", name: "Cox", demands }],
    ...rest,
  });
}

const titled = (plan: Plan, title: RegExp): Table | undefined =>
  tablesOf(plan).find((each) => title.test(each.title ?? ""));
const rows = (plan: Plan, title: RegExp): unknown[][] => {
  const found = titled(plan, title);
  return found ? toRecords(found).map((row) => Object.values(row)) : [];
};
const plain = (html: string): string => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");

describe("what is not met", () => {
  it("speaks of what is handed out where a kitchen measures it, with the cause", () => {
    // 379 kcal in 100 g of oats (SR28, NDB 08120): 300 kcal are 79 g, and the scale shows 100 g.
    const plan = planned([{ of: "energy", exactly: 300 }], { kitchen: coarse });
    expect(rows(plan, /not met/)).toEqual([
      [
        "Cox",
        "dinner",
        "energy exactly 300 kcal: 79 kcal over; the portion brings 379 kcal",
        "measurable amounts: exact ones bring 300 kcal",
      ],
    ]);
    expect(plain(personCard(plan, "cox"))).toContain("energy exactly 300 kcal: 79 kcal over");
    expect(rows(planned([{ of: "energy", exactly: 300 }]), /not met/)).toEqual([]);
  });

  it("tells of demands that the dish itself cannot meet by what is measured, and why", () => {
    const demands: Demand[] = [
      { of: "energy", exactly: 300 },
      { of: "protein", least: 40 },
    ];
    const plan = planned(demands, { kitchen: coarse });
    const { why } = plan.portion("cox", "dinner");
    expect(why).toContain("cannot stand together");
    // 13.15 g of protein in 100 g.
    expect(
      rows(plan, /not met/)
        .at(-1)
        ?.slice(2),
    ).toEqual(["protein at least 40 g: 26.85 g short; the portion brings 13.15 g", why]);
    // Without a kitchen what is handed out is exact.
    const [exactly] = rows(planned(demands), /not met/);
    expect(exactly?.at(-1)).toBe(why);
    expect(exactly?.[2]).toContain("the portion brings 10.41 g");
  });

  it("is silent where what is measured meets what exact amounts just miss", () => {
    const demands: Demand[] = [
      { of: "mass", most: "95 g" },
      { of: "protein", least: "13.15 g" },
    ];
    const plan = planned(demands, { kitchen: coarse, tolerance: "6 %" });
    expect(plan.unmet.map(({ status }) => status)).toEqual(["out-of-reach"]);
    expect(
      plan.portion("cox", "dinner").drift?.demands.map(({ holds, heldBefore }) => [holds, heldBefore]),
    ).toEqual([
      [true, true],
      [true, true],
    ]);
    expect(rows(plan, /not met/)).toEqual([]);
    expect(plain(personCard(plan, "cox"))).not.toContain("g short");
  });
});

describe("limits in the table of drift", () => {
  // 4.25 mg of iron and 0 µg of vitamin D in 100 g; nothing is said of chromium.
  const demands = (iron: number): Demand[] => [
    { of: "energy", exactly: 379 },
    { of: "iron", most: iron },
    { of: "vitaminD", most: 100 },
    { of: "chromium", most: 3000 },
  ];
  const of = (plan: Plan): unknown[] => rows(plan, /^Effect of rounding/).map(([, , demand]) => demand);

  it("are shown from four fifths of them on, or where they are missed; the drift itself has all", () => {
    const rest = { kitchen: coarse, silent: "accept" } as const;
    const far = planned(demands(5.4), rest);
    expect(of(far)).toEqual(["energy", "largest ratio change: Oats, rolled, dry"]);
    expect(
      far
        .portion("cox", "dinner")
        .drift?.demands.map((each) => each.of)
        .sort(),
    ).toEqual(["chromium", "energy", "iron", "vitamin D (D2 and D3)"]);
    expect(titled(far, /^Effect of rounding/)?.notes[0]).toBe(
      "limits of which a portion brings less than 80%, as far as is known, are left out: 3",
    );
    expect(of(planned(demands(5.3), rest))).toContain("iron");
    expect(of(planned(demands(3), rest))).toContain("iron");
    expect(titled(planned([{ of: "energy", exactly: 379 }], rest), /^Effect of rounding/)?.notes).toEqual([]);
  });
});

describe("vitamins of what is cooked without a word of losses", () => {
  const note = "vitamins are as before cooking, since no losses are given";
  const figures = (plan: Plan): string => titled(plan, /brings/)?.notes.join("\n") ?? "";
  const told = (lines: LineInput[]): [boolean, boolean] => {
    const plan = planned([{ of: "energy", exactly: 300 }], {}, lines);
    const card = plain(personCard(plan, "cox", { components: ["energy", "vitaminC"] }));
    return [figures(plan).includes(note), card.includes(note)];
  };

  it("are said to be those before cooking, in the figures and on the card, once", () => {
    const plan = planned([{ of: "energy", exactly: 300 }], {}, [kale, oats]);
    expect(figures(plan).split(note)).toHaveLength(2);
    expect(figures(plan)).toContain(`${note}: Kale, raw; Oats, rolled, dry`);
    // Oats bring no vitamin C, which is all that this card shows.
    const card = plain(personCard(plan, "cox", { components: ["energy", "vitaminC"] }));
    expect(card).toContain(`${note}: Kale, raw`);
    expect(card).not.toContain(`${note}: Kale, raw; Oats`);
    expect(plain(personCard(plan, "cox", { components: ["energy", "iron"] }))).not.toContain(note);
  });

  it("are not where losses are given, nothing is cooked, or it was cooked before", () => {
    expect(told([{ ...kale, retention: { vitaminC: "0.6" } }])).toEqual([false, false]);
    expect(told([{ ...kale, added: "serving" }])).toEqual([false, false]);
    expect(told([{ key: "beans", food: "chickpeas-boiled", amount: "100 g" }])).toEqual([false, false]);
    expect(told([kale])).toEqual([true, true]);
  });

  it("are looked for in nested recipes, and named three at most", () => {
    const raw = ["spinach-raw", "carrots-raw", "onions-raw", "kale-raw"].filter((id) => starterFoods.has(id));
    expect(raw.length).toBeGreaterThan(3);
    const base = { name: "Base", portions: 1, lines: raw.map((food) => ({ food, amount: "50 g" })) };
    const plan = planned([{ of: "energy", exactly: 300 }], {}, [
      { key: "base", recipe: base, amount: "1 portion" },
    ]);
    expect(figures(plan)).toContain("; 1 more");
    expect(toText(plan, { parts: "all" })).toContain(note);
    const kept = { key: "base", recipe: base, amount: "1 portion", retention: { vitaminC: "0.5" } };
    expect(figures(planned([{ of: "energy", exactly: 300 }], {}, [kept]))).not.toContain(note);
  });
});
