import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import type { DayInput, PersonInput } from "../../src/plan/input.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { summary, tablesOf, toText } from "../../src/show.ts";
import { campPlan } from "../plan/camp.ts";

const dish = (i: number) =>
  sheet(
    {
      name: `Dish ${i}`,
      portions: 2,
      lines: [
        { key: "oats", food: "oats-rolled-dry", amount: `${80 + i} g` },
        { key: "milk", food: "milk-whole", amount: "300 g" },
      ],
    },
    starterFoods,
  );

describe("a plan's summary", () => {
  it("is what text shows unless asked for more, in every language that is told", () => {
    const plan = campPlan();
    expect(toText(plan)).toBe(toText(summary(plan)));
    expect(toText(plan).split("\n").length).toBeLessThan(25);
    expect(tablesOf(plan, { parts: ["unmet", "summary"] }).slice(0, 3)).toEqual(summary(plan));
    expect(toText(plan, { parts: "nutrients" })).toBe(toText(tablesOf(plan, { parts: ["nutrients"] })));
    // All parts together are what all of it is, each once.
    const parts = ["amounts", "pots", "nutrients", "rounding", "unmet", "people"] as const;
    const titles = (of: readonly { readonly title?: string | undefined }[]) =>
      of.map(({ title }) => title).sort();
    expect(titles(parts.flatMap((part) => tablesOf(plan, { parts: part })))).toEqual(titles(tablesOf(plan)));
  });

  it("fits one screen for ten people and a week, and names who misses most", () => {
    const dishes = Array.from({ length: 15 }, (_, i) => dish(i));
    const days = Array.from(
      { length: 6 },
      (_, d): DayInput => ({
        id: `day ${d}`,
        meals: Array.from({ length: 3 }, (_, m) => ({
          id: `meal ${m}`,
          dishes: { [`d${(d * 3 + m) % 15}`]: dishes[(d * 3 + m) % 15] ?? dish(0) },
        })),
      }),
    );
    const people = Array.from(
      { length: 10 },
      (_, i): PersonInput => ({
        id: `p${i}`,
        name: `Person ${i}`,
        demands: [
          { of: "energy", exactly: `${400 + i * 40} kcal` },
          { of: "protein", most: i === 7 ? "5 g" : "90 g" },
        ],
      }),
    );
    const text = toText(portionPlan({ days, people }));
    expect(text.split("\n").length).toBeLessThanOrEqual(60);
    expect(text).toMatch(/^Person 7 .* 0 of 18 +day 0: meal 0: (protein|energy)/m);
    expect(text).toMatch(/^Person 6 .* 18 of 18 *$/m);
  });
});
