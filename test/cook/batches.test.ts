import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type CookingSchedule,
  cookingSchedule,
  type ScheduleOptions,
} from "../../src/cook/cookingSchedule.ts";
import { partOf } from "../../src/cook/vessel.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, minus, over, plus, sum, ZERO } from "../../src/number/exact.ts";
import type { PersonInput, PlanInput } from "../../src/plan/input.ts";
import { portionPlan } from "../../src/plan/plan.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

// Conservation is held by adding up, literally; the dishes are our own.

const garlicOil: RecipeInput = {
  name: "Garlic oil",
  portions: 4,
  lines: [
    { key: "garlic", food: "garlic-raw", amount: "30 g" },
    { key: "oil", food: "olive-oil", amount: "50 g" },
  ],
  method: ["Warm {garlic} in {oil} until it smells, and strain."],
};
const paste: RecipeInput = {
  name: "Spice paste",
  portions: 8,
  lines: [
    { key: "onions", food: "onions-raw", amount: "200 g" },
    { key: "ginger", food: "ginger-root-raw", amount: "40 g" },
    { key: "oil", recipe: "garlic-oil", amount: "60 g" },
  ],
  method: ["Grind {onions} and {ginger} with {oil} to a paste."],
  notes: [
    {
      kind: "storage",
      text: "Covered in the cold for 3 days.",
      source: "the club's kitchen rules, invented",
      days: 3,
    },
  ],
};
const dal: RecipeInput = {
  name: "Dal",
  portions: 4,
  lines: [
    { key: "lentils", food: "lentils-red-dry", amount: "300 g" },
    { key: "water", food: "water-tap", amount: "900 g" },
    { key: "paste", recipe: "paste", amount: "130 g" },
  ],
  method: ["Fry {paste}, add {lentils} and {water}, and simmer until soft."],
};
const stew: RecipeInput = {
  name: "Chickpea stew",
  portions: 3,
  lines: [
    { key: "onions", food: "onions-raw", amount: "150 g" },
    { key: "paste", recipe: "paste", amount: "77 g" },
    { key: "dip", recipe: "garlic-oil", amount: "21 g", added: "serving" },
  ],
};
const muffins: RecipeInput = {
  name: "Oat muffins",
  portions: 12,
  lines: [
    { key: "oats", food: "oats-rolled-dry", amount: "360 g" },
    { key: "eggs", food: "egg-raw", amount: "200 g" },
    { key: "milk", food: "milk-whole", amount: "240 g" },
  ],
  yieldFactor: "0.9",
  method: ["Stir {oats}, {eggs} and {milk}, and bake."],
};
const plate: RecipeInput = {
  name: "Muffin plate",
  portions: 1,
  lines: [{ key: "muffin", recipe: "muffins", amount: "1 portion", added: "serving" }],
};
const recipes = { paste, "garlic-oil": garlicOil, muffins };
const made = (of: RecipeInput): Sheet => sheet(of, starterFoods, { recipes });

const days = ["Mon", "Tue", "Wed", "Thu", "Fri"];
function planOf(people: readonly PersonInput[], kitchen: PlanInput["kitchen"]) {
  return portionPlan({
    meals: [
      { id: "snack", dishes: made(plate) },
      { id: "supper", dishes: { dal: made(dal), stew: made(stew) } },
    ],
    people,
    ...(kitchen !== undefined && { kitchen }),
  });
}
const crew: readonly PersonInput[] = [
  { id: "cox", demands: { factor: "0.7" } },
  { id: "bow", demands: { factor: "1.3" } },
];

const quantities: readonly ((s: Sheet) => Exact)[] = [
  (s) => s.masses.cooked,
  ...(["energy", "protein", "sodium", "iodine", "water"] as const).map(
    (id) => (s: Sheet) => s.total(id).value,
  ),
];

/** What lines of a sheet bring that name one recipe. */
function drawnIn(s: Sheet, recipe: string, of: (s: Sheet) => Exact): Exact {
  return sum(
    s.plan.lines.flatMap(({ source, nested }, i) => {
      const grams = s.values.grams[i] ?? ZERO;
      return nested && source.id === recipe ? [of(partOf(nested, over(grams, nested.masses.cooked)))] : [];
    }),
  );
}

/** Every sheet that is cooked or served, once for each time. */
function allSheets({ batches, sessions, servings }: CookingSchedule): readonly Sheet[] {
  const cooked = sessions.flatMap(({ pots, apart }) => [...pots, ...apart].map((each) => each.sheet));
  const served = servings.flatMap(({ added, count }) => (added ? [partOf(added, count)] : []));
  return [...batches.map((batch) => batch.sheet), ...cooked, ...served];
}

function holds(schedule: CookingSchedule): void {
  const ids = new Set(schedule.batches.map(({ recipe }) => recipe));
  for (const id of ids) {
    const own = schedule.batches.filter(({ recipe }) => recipe === id);
    for (const { left, draws, sheet: s, exact } of own) {
      expect(left.n >= 0n).toBe(true);
      expect(exactText(plus(left, sum(draws.map(({ grams }) => grams))))).toBe(exactText(s.masses.cooked));
      expect(minus(s.masses.cooked, exact.masses.cooked).n >= 0n).toBe(true);
    }
    for (const of of quantities) {
      const batch = sum(own.map((each) => of(each.sheet)));
      const rest = sum(own.map(({ sheet: s, left }) => of(partOf(s, over(left, s.masses.cooked)))));
      const taken = sum(allSheets(schedule).map((s) => drawnIn(s, id, of)));
      expect(exactText(batch)).toBe(exactText(plus(taken, rest)));
    }
  }
}

describe("nested recipes", () => {
  it("are made first, with their amounts and method, and pooled over dishes and days", () => {
    const schedule = cookingSchedule(planOf(crew, "metric"), {
      days,
      cook: { dal: ["Mon", "Thu"], stew: ["Mon", "Thu"] },
    });
    const told = schedule.batches.map(({ name, day }) => `${day} ${name}`);
    // The paste keeps 3 days: what Thursday's pots take is made on Thursday, the third day after Monday, no more.
    expect(told).toEqual(["Mon Oat muffins", "Mon Garlic oil", "Mon Spice paste"]);
    const [, oil, spice] = schedule.batches;
    expect(oil?.steps().steps.join()).toMatch(/^Warm \d+ g garlic in \d+ g olive oil/);
    expect(spice?.steps().steps.join()).toMatch(/onions and [\d.]+ g ginger root with \d+ g garlic oil/);
    expect(spice?.draws.map(({ dish, into, day }) => `${day} ${dish} ${into}`)).toEqual([
      "Mon dal pot",
      "Mon stew pot",
      "Thu dal pot",
      "Thu stew pot",
    ]);
    expect(new Set(oil?.draws.map(({ recipe, dish }) => recipe ?? dish))).toEqual(new Set(["stew", "paste"]));
    holds(schedule);
  });

  it("served by the portion are made, too", () => {
    const schedule = cookingSchedule(planOf(crew, undefined), { days: ["Mon"] });
    const found = schedule.batches.find(({ recipe }) => recipe === "muffins");
    // 0.7 and 1.3 portions are two.
    expect(found?.exact.values.portions.toString()).toBe("2");
    expect(found?.draws.map(({ person, into }) => `${person} ${into}`)).toEqual([
      "cox serving",
      "bow serving",
    ]);
    expect(found?.left.toString()).toBe("0");
    expect(found?.steps().steps).toEqual(["Stir 60 g oats, 33 g egg and 40 g milk, and bake."]);
    holds(schedule);
  });

  it("are made anew when they keep no longer, or on the days that are told", () => {
    const longer = [...days, "Sat", "Sun"];
    const on = (cook: ScheduleOptions["cook"]): readonly (string | undefined)[] =>
      cookingSchedule(planOf(crew, undefined), { days: longer, ...(cook && { cook }) })
        .batches.filter(({ recipe }) => recipe === "paste")
        .map(({ day }) => day);
    expect(on(undefined)).toEqual(["Mon", "Fri"]);
    expect(on({ paste: ["Mon", "Tue", "Sat"] })).toEqual(["Mon", "Tue", "Sat"]);
    expect(on(["Mon", "Sat"])).toEqual(["Mon", "Sat"]);
    const late = errorOf(() => on({ paste: ["Tue"] }));
    expect([late.code, late.path.join(".")]).toEqual(["schedule-malformed", "cook.paste"]);
  });

  it("lose nothing over a week, whoever is away: batch = draws + what is left, of mass and every component", () => {
    const factor = fc.integer({ min: 2, max: 30 }).map((n) => `${n}/10`);
    const some = fc.subarray(days);
    fc.assert(
      fc.property(
        fc.array(factor, { minLength: 1, maxLength: 3 }),
        fc.constantFrom("metric", "us", undefined),
        fc.record({ dal: some, stew: some, paste: some }),
        some,
        (factors, kitchen, cooked, away) => {
          const people = factors.map((each, i): PersonInput => ({ id: `p${i}`, demands: { factor: each } }));
          const cook = Object.fromEntries(
            Object.entries(cooked).map(([dish, on]) => [dish, [...new Set(["Mon", ...on])]]),
          );
          const schedule = cookingSchedule(planOf(people, kitchen), {
            ...{ days, cook, away: { p0: away } },
            vessels: { paste: "500 g", dal: { capacity: "2 kg", runs: "full" } },
          });
          holds(schedule);
          // What is bought is what goes into batches, pots and portions, each food once.
          const list = shoppingList(schedule);
          const grams = new Map<string, Exact>();
          for (const s of allSheets(schedule)) {
            for (const line of s.lines) {
              if (line.food) grams.set(line.food, plus(grams.get(line.food) ?? ZERO, line.grams));
            }
          }
          for (const { food, needed } of list.lines)
            expect(exactText(needed)).toBe(exactText(grams.get(food) ?? ZERO));
        },
      ),
      { numRuns: runs(8) },
    );
  });

  it("keep a portion's firm limit as they were measured, and tell what that costs", () => {
    const people: readonly PersonInput[] = [
      {
        id: "cox",
        demands: [
          { of: "energy", exactly: "420 kcal" },
          { of: "sodium", most: "60 mg", firm: true },
        ],
      },
      { id: "bow", demands: { factor: 1 } },
    ];
    const plan = portionPlan({
      meals: [{ id: "supper", dishes: { dal: made(dal) } }],
      people,
      kitchen: "metric",
    });
    const schedule = cookingSchedule(plan);
    const [session] = schedule.sessions;
    const { drift } = session?.drifts.find(({ person }) => person === "cox") ?? {};
    expect(drift?.demands.map(({ holds }) => holds)).toEqual([true, true]);
    // The pot draws on the batch as it was measured, and what that does to the portion is in its drift.
    const inPot = session?.pots[0]?.sheet.plan.lines.find(({ line }) => line.key === "paste");
    const batch = schedule.batches.find(({ recipe }) => recipe === "paste");
    expect(schedule.batches.some(({ drift }) => drift !== undefined)).toBe(true);
    expect(exactText(inPot?.nested?.per100g("sodium").value ?? ZERO)).toBe(
      exactText(batch?.sheet.per100g("sodium").value ?? ZERO),
    );
  });
});
