import { describe, expect, it } from "vitest";
import {
  type CookingSchedule,
  cookingSchedule,
  type ScheduleOptions,
} from "../../src/cook/cookingSchedule.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, fraction, plus, sum, times, ZERO } from "../../src/number/exact.ts";
import type { DayInput, PersonInput, PlanInput } from "../../src/plan/input.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { errorOf } from "../number/errorOf.ts";

const dal = sheet(
  {
    name: "Dal",
    portions: 4,
    lines: [
      { key: "lentils", food: "lentils-red-dry", amount: "300 g" },
      { key: "water", food: "water-tap", amount: "900 g" },
      { key: "seeds", food: "pumpkin-seeds", amount: "40 g", added: "serving" },
    ],
    notes: [
      { kind: "storage", text: "Cold, 2 days.", source: "the club's kitchen rules, invented", days: 2 },
    ],
  },
  starterFoods,
);
const riceOf = (more: Partial<RecipeInput> = {}): Sheet =>
  sheet(
    {
      name: "Rice",
      portions: 4,
      lines: [
        { key: "rice", food: "rice-white-long-dry", amount: "300 g" },
        { key: "water", food: "water-tap", amount: "600 g" },
      ],
      yieldFactor: "0.95",
      ...more,
    },
    starterFoods,
  );
const menuOf = (rice: Sheet): readonly DayInput[] =>
  ["mon", "tue", "wed"].map((id) => ({
    id,
    meals: [
      { id: "lunch", dishes: id === "tue" ? { dal } : { rice } },
      { id: "supper", dishes: { dal, rice } },
    ],
  }));
const people: readonly PersonInput[] = [
  { id: "cox", name: "Cox", demands: { factor: "0.8" } },
  {
    id: "bow",
    name: "Bow",
    byMeal: { supper: { factor: "1.4" }, "tue/lunch": { factor: "0.63" } },
    away: ["wed/supper"],
  },
];
function planOf(kitchen: PlanInput["kitchen"], rice = riceOf()): Plan {
  return portionPlan({ days: menuOf(rice), people, ...(kitchen !== undefined && { kitchen }) });
}
const told = (schedule: CookingSchedule): readonly string[] =>
  schedule.sessions.map(
    ({ day, dish, meals, eaten }) => `${day} ${dish} for ${meals.join(" ")} on ${eaten.join(" ")}`,
  );

describe("a menu of days, cooked", () => {
  it("has its own days, and cooks every meal on its day unless told", () => {
    const schedule = cookingSchedule(planOf("metric"));
    expect(schedule.days).toEqual(["mon", "tue", "wed"]);
    expect(told(schedule).slice(0, 3)).toEqual([
      "mon rice for mon/lunch on mon",
      "mon dal for mon/supper on mon",
      "mon rice for mon/supper on mon",
    ]);
  });

  it("cooks one dish for several days without the dishes beside it", () => {
    const schedule = cookingSchedule(planOf("metric"), { cook: { dal: ["mon"] } });
    expect(told(schedule)).toEqual([
      "mon rice for mon/lunch on mon",
      "mon dal for mon/supper tue/lunch tue/supper wed/supper on mon tue wed",
      "mon rice for mon/supper on mon",
      "tue rice for tue/supper on tue",
      "wed rice for wed/lunch on wed",
      "wed rice for wed/supper on wed",
    ]);
    expect(schedule.sessions[1]?.pots[0]?.people.map(({ person, count }) => `${person} ${count}`)).toEqual([
      "cox 4",
      "bow 3",
    ]);
  });

  it("cooks rice on the day, and says why, unless its recipe or its name in cook says otherwise", () => {
    const days = (how: ScheduleOptions, rice = riceOf()): readonly (string | undefined)[] => [
      ...new Set(
        cookingSchedule(planOf("metric", rice), how)
          .sessions.filter(({ dish }) => dish === "rice")
          .map(({ day }) => day),
      ),
    ];
    expect(days({ cook: ["mon"] })).toEqual(["mon", "tue", "wed"]);
    expect(days({ cook: { rice: ["mon"] } })).toEqual(["mon"]);
    expect(
      days({ cook: ["mon"] }, riceOf({ notes: [{ kind: "storage", text: "1 day.", days: 1 }] })),
    ).toEqual(["mon"]);
    const { notes, sessions } = cookingSchedule(planOf("metric"), { cook: ["mon"] });
    expect(notes.filter(({ code }) => code === "cooked-on-the-day").map(({ text }) => text)[0]).toContain(
      "common practice",
    );
    expect(sessions.filter(({ dish }) => dish === "dal")).toHaveLength(1);
  });

  it("loses nothing, and keeps what everyone was planned to within a step of the scale and the ratios", () => {
    for (const kitchen of [undefined, "metric"] as const) {
      const plan = planOf(kitchen);
      const schedule = cookingSchedule(plan, { cook: { dal: ["mon", "wed"] }, vessels: { dal: "2 kg" } });
      const cooked = new Map<string, Exact>();
      for (const { dish, pots } of schedule.sessions) {
        for (const { sheet: s } of pots) cooked.set(dish, plus(cooked.get(dish) ?? ZERO, s.masses.cooked));
      }
      for (const [dish, grams] of cooked) {
        const own = schedule.servings.filter((each) => each.dish === dish);
        expect(exactText(sum(own.map(({ portion, count }) => times(portion.grams, count))))).toBe(
          exactText(grams),
        );
      }
      // Bow is served three times, cox four, each what the plan has for that meal but for rounding.
      for (const { person, meal, portion, count } of schedule.servings.filter(
        (each) => each.dish === "dal",
      )) {
        expect(exactText(count)).toBe("1");
        const planned = plan.dish(meal, "dal").serving(person).grams;
        const off = portion.grams.minus(planned).abs();
        expect(off.comparedTo(kitchen ? fraction(6n) : ZERO) <= 0).toBe(true);
      }
      const needed = (food: string): string => exactText(shoppingList(schedule).line(food).needed);
      const eaten = schedule.eaten().flatMap(({ sheets }) => sheets);
      for (const food of ["lentils-red-dry", "rice-white-long-dry", "pumpkin-seeds"]) {
        const all = eaten.flatMap((s) =>
          s.lines.filter((line) => line.food === food).map(({ grams }) => grams),
        );
        expect(needed(food)).toBe(exactText(sum(all)));
      }
    }
  });

  it("may start before the menu does, and leaves out none of its days", () => {
    const early = cookingSchedule(planOf(undefined), {
      days: ["sun", "mon", "tue", "wed"],
      cook: { dal: ["sun", "tue"] },
    });
    expect(told(early)[0]).toBe("sun dal for mon/supper on mon");
    const error = errorOf(() => cookingSchedule(planOf(undefined), { days: ["mon", "tue"] }));
    expect([error.code, error.path.join(".")]).toEqual(["schedule-malformed", "days"]);
  });
});

describe("a dish that is cooked once for days on which someone was fitted otherwise", () => {
  const bowl = sheet(
    {
      name: "Bowl",
      portions: 1,
      lines: [
        { key: "rice", food: "rice-white-long-boiled", amount: "100 g" },
        { key: "lentils", food: "lentils-boiled", amount: "100 g", part: "pulses" },
      ],
    },
    starterFoods,
  );
  const days = ["mon", "tue"].map((id) => ({ id, meals: [{ id: "supper", dishes: { bowl } }] }));
  const energy = { of: "energy", exactly: 500 } as const;
  const cox = { id: "cox", name: "Cox" };
  const cook = { bowl: ["mon"] };

  it("says what that costs in pots, and takes one where the first portion is kept", () => {
    const before = portionPlan({
      days,
      people: [
        {
          ...cox,
          byMeal: { "mon/supper": [energy, { of: "protein", least: "28 g" }], "tue/supper": [energy] },
        },
      ],
    });
    const apart = cookingSchedule(before, { cook });
    expect(apart.sessions[0]?.pots).toHaveLength(2);
    const [told] = apart.notes.filter(({ code }) => code === "fitted-apart");
    expect(told?.text).toContain("2 pots where 1 would do on any one day, since Cox");
    const kept = before.kept("cox", "mon/supper");
    const after = portionPlan({
      days,
      people: [{ ...cox, demands: [energy], keep: { "mon/supper": kept, "tue/supper": kept } }],
    });
    const together = cookingSchedule(after, { cook });
    expect(together.sessions[0]?.pots).toHaveLength(1);
    expect(together.notes.filter(({ code }) => code === "fitted-apart")).toEqual([]);
  });
});
