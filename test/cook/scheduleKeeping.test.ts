import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cookingSchedule, type ScheduleOptions } from "../../src/cook/cookingSchedule.ts";
import { foodTable } from "../../src/food/table.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { RecipeInput, RecipeNote } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import { runs } from "../runs.ts";

const foods = foodTable([
  { id: "barley", name: "Barley", source: "made up", per100g: {}, state: "dry" },
  { id: "stock", name: "Stock", source: "made up", per100g: {} },
  { id: "salt", name: "Salt, fine", source: "made up", per100g: {}, state: "dry" },
  { id: "herbs", name: "Herbs", source: "made up", per100g: {} },
]);
const broth = (more: Partial<RecipeInput> = {}): RecipeInput => ({
  name: "Broth",
  portions: 2,
  lines: [
    { key: "barley", food: "barley", amount: "100 g" },
    { key: "stock", food: "stock", amount: "500 g" },
    { key: "salt", food: "salt", amount: "4 g" },
    { key: "herbs", food: "herbs", amount: "10 g", added: "serving" },
  ],
  ...more,
});
const planOf = (recipe: RecipeInput, people = 2): Plan =>
  portionPlan({
    meals: [{ id: "supper", name: "Supper", dishes: sheet(recipe, foods) }],
    people: Array.from({ length: people }, (_, i) => ({ id: `p${i}` })),
  });

const WEEK = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const notes = (kept: readonly RecipeNote[], how: ScheduleOptions = { days: WEEK, cook: ["Sun", "Wed"] }) =>
  cookingSchedule(planOf(broth({ notes: kept })), how).notes.filter(({ code }) => code !== "large-factor");

describe("how long a dish keeps", () => {
  const two: RecipeNote = { kind: "storage", text: "Cold, 2 days.", source: "club rules", days: 2 };

  it("is reported where a portion is eaten later than its recipe says, in the recipe's words and with its source", () => {
    expect(notes([two])).toEqual([
      {
        code: "kept-too-long",
        days: ["Wed"],
        meal: "supper",
        dish: "supper",
        text: "eaten on Sat, up to 3 days after it is cooked; the recipe gives 2 days: Cold, 2 days.",
        source: "club rules",
      },
      {
        code: "storage",
        days: ["Sun", "Wed"],
        meal: "supper",
        dish: "supper",
        text: "Cold, 2 days.",
        source: "club rules",
      },
    ]);
  });

  it("is held against each day on which someone eats, and the day of cooking counts as none", () => {
    const one = { ...two, days: 1, text: "A day." };
    const late = (how: ScheduleOptions): string[] =>
      notes([one], how).flatMap(({ code, text }) =>
        code === "kept-too-long" ? [text.split(",")[0] ?? ""] : [],
      );
    expect(late({ days: WEEK, cook: ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] })).toEqual([]);
    expect(late({ days: WEEK, cook: ["Sun", "Tue", "Thu"] })).toEqual(["eaten on Sat"]);
    // Whoever is away eats nothing late.
    expect(late({ days: WEEK, cook: ["Sun", "Tue", "Thu"], away: { p0: ["Sat"], p1: ["Sat"] } })).toEqual([]);
    expect(late({ days: WEEK, cook: ["Sun", "Tue", "Thu"], away: { p0: ["Sat"] } })).toEqual([
      "eaten on Sat",
    ]);
  });

  it("agrees with counting the days by hand", () => {
    fc.assert(
      fc.property(
        fc.subarray(WEEK.slice(1)),
        fc.subarray(WEEK),
        fc.integer({ min: 0, max: 6 }),
        (more, eaten, limit) => {
          const cook = ["Sun", ...more];
          const how: ScheduleOptions = { days: WEEK, cook, meals: { supper: { eaten } } };
          const found = notes([{ ...two, days: limit }], how);
          const age = (day: string): number => {
            let i = WEEK.indexOf(day);
            while (!cook.includes(WEEK[i] ?? "")) i -= 1;
            return WEEK.indexOf(day) - i;
          };
          expect(found.some(({ code }) => code === "kept-too-long")).toBe(
            eaten.some((day) => age(day) > limit),
          );
          expect(found.some(({ code }) => code === "storage")).toBe(eaten.some((day) => age(day) > 0));
        },
      ),
      { numRuns: runs(150) },
    );
  });

  it("tells each limit apart where a recipe gives several, nested recipes' too", () => {
    const frozen: RecipeNote = { kind: "storage", text: "Frozen, 90 days.", days: 90 };
    expect(notes([two, frozen]).map(({ code, text }) => `${code}: ${text.slice(-16)}`)).toEqual([
      "kept-too-long: s: Cold, 2 days.",
      "storage: Cold, 2 days.",
      "storage: Frozen, 90 days.",
    ]);
    const outer = broth({
      lines: [{ key: "base", recipe: { ...broth(), notes: [{ ...two, days: 1 }] }, amount: "1 portion" }],
    });
    const found = cookingSchedule(planOf(outer), { days: ["a", "b", "c"], cook: ["a"] }).notes;
    expect(found.map(({ code }) => code)).toContain("kept-too-long");
    // What is added at serving is not kept with the pot, but made ahead.
    const topped = broth({
      lines: [...broth().lines, ...outer.lines.map((line) => ({ ...line, added: "serving" as const }))],
    });
    const fresh = cookingSchedule(planOf(topped), { days: ["a", "b", "c"], cook: ["a"] }).notes;
    const told = (recipe: string | undefined): readonly string[] =>
      fresh.filter((note) => note.recipe === recipe).map(({ code }) => code);
    expect(told(undefined)).toContain("no-storage-limit");
    expect(told(undefined)).not.toContain("kept-too-long");
    expect(told("Broth")).toContain("kept-too-long");
  });

  it("is never made up: without a limit it says so and sends the cook to local rules", () => {
    const [first, ...others] = notes([]);
    expect(others).toHaveLength(1);
    expect(first).toMatchObject({ code: "no-storage-limit", source: undefined, days: ["Sun"] });
    expect(first?.text).toBe(
      "eaten up to 2 days after it is cooked, and the recipe carries no storage limit: follow what its foods say of keeping, and local food-safety rules",
    );
    const words: RecipeNote = { kind: "storage", text: "Keep it cold." };
    expect(notes([words]).map(({ code }) => code)).toContain("no-storage-limit");
    expect(notes([words])[0]?.text).toContain("gives no number of days");
    // Eaten when it is cooked, nothing is kept.
    expect(notes([], { days: WEEK })).toEqual([]);
  });

  it("is not known where one person gets several portions on days that are not named", () => {
    const found = notes([two], { meals: { supper: { servings: 3 } } });
    expect(found.map(({ code }) => code)).toEqual(["keeping-not-known", "storage"]);
  });

  it("comes with what the recipe says of cooling and reheating where it is kept, and of safety always", () => {
    const kinds = ["storage", "cooling", "reheating", "safety", "general"] as const;
    const all = kinds.map((kind): RecipeNote => ({ kind, text: `On ${kind}.`, source: `${kind} source` }));
    const said = (how: ScheduleOptions): string[] =>
      notes(all, how).flatMap(({ text, source }) => (source === undefined ? [] : [`${text} (${source})`]));
    expect(said({ days: ["a"] })).toEqual(["On safety. (safety source)"]);
    expect(said({ days: ["a", "b"], cook: ["a"] })).toEqual(
      kinds.slice(0, 4).map((kind) => `On ${kind}. (${kind} source)`),
    );
  });

  it("is nothing to cook where nobody eats until the next time", () => {
    const found = notes([], { days: WEEK, cook: ["Sun", "Wed"], meals: { supper: { eaten: ["Sun"] } } });
    expect(found).toMatchObject([{ code: "nothing-to-cook", days: ["Wed"], dish: undefined }]);
  });
});

describe("a batch far from the recipe", () => {
  const large = (how: ScheduleOptions, people = 2): string[] =>
    cookingSchedule(planOf(broth(), people), how).notes.flatMap(({ code, days, text }) =>
      code === "large-factor" ? [`${days.join(" ")}: ${text.split(" the ")[0]}`] : [],
    );

  it("is told for each day, by what is cooked at once", () => {
    // The recipe makes 2 portions, and two people eat; the note begins beyond double and below half.
    expect(large({ days: WEEK.slice(0, 4), cook: ["Sun", "Tue"] })).toEqual([]);
    expect(large({ days: WEEK, cook: ["Sun", "Wed"] })).toEqual(["Sun: 3 times", "Wed: 4 times"]);
    expect(large({ days: WEEK, cook: ["Sun"], meals: { supper: { vessel: "1.3 kg" } } })).toEqual([]);
    expect(
      large({ days: WEEK, cook: ["Sun"], meals: { supper: { vessel: { capacity: "2 kg", runs: "one" } } } }),
    ).toEqual(["Sun: 7 times"]);
    expect(large({ days: WEEK, meals: { supper: { servings: { p0: 0 } } } })).toEqual([]);
    expect(large({ days: WEEK, cook: ["Sun"], meals: { supper: { vessel: "200 g" } } })[0]).toMatch(
      /^Sun: a run of 0\.3\d+ times$/,
    );
  });
});

describe("steps", () => {
  const pot = (recipe: RecipeInput, how: ScheduleOptions = {}) =>
    cookingSchedule(planOf(recipe), how).sessions[0]?.pots[0];

  it("put each line's amount of one run where it is named first, once, and say which lines they leave out", () => {
    const keys = ["barley", "stock", "salt", "herbs"];
    const piece = fc.oneof(
      fc.constantFrom(...keys).map((key) => `{${key}}`),
      fc.constantFrom("stir", "5 minutes"),
    );
    const step = fc.array(piece, { minLength: 1, maxLength: 6 }).map((all) => all.join(" "));
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 4 }),
        (method, servings) => {
          const made = pot(broth({ method }), { meals: { supper: { servings, vessel: "700 g" } } });
          const steps = made?.steps();
          const runs = made?.runs[0]?.count ?? 0n;
          expect(steps?.steps).toHaveLength(method.length);
          const shown: Readonly<Record<string, string>> = { barley: "barley", stock: "stock", salt: "salt" };
          for (const [i, key] of ["barley", "stock", "salt"].entries()) {
            const grams = ([100, 500, 4][i] ?? 0) * servings;
            const each = grams / Number(runs);
            const amount = `${Number(each.toFixed(each < 10 ? 1 : 0))} g ${shown[key]}`;
            const times = (steps?.steps ?? []).join("\n").split(amount).length - 1;
            const named = method.some((text) => text.includes(`{${key}}`));
            expect(times).toBe(named ? 1 : 0);
            expect(steps?.unnamed.includes(amount)).toBe(!named);
          }
          // What is left for serving is named as the method has it, and has no amount.
          expect((steps?.steps ?? []).join(" ")).not.toMatch(/g herbs/);
          expect(steps?.atServing).toEqual(["herbs"]);
        },
      ),
      { numRuns: runs(100) },
    );
  });

  it("are the order of loading where the recipe has none: dry and small before bulky (common practice, no source)", () => {
    const steps = pot(broth())?.steps();
    expect(steps).toMatchObject({ by: "common-practice", unnamed: [], atServing: ["herbs"] });
    expect(steps?.steps).toEqual(["4 g salt", "100 g barley", "500 g stock"]);
    const lines = [...broth().lines, { key: "syrup", food: "herbs", amount: "20 g" }];
    expect(pot(broth({ lines }))?.steps().steps).toEqual([
      "4 g salt",
      "100 g barley",
      "20 g herbs",
      "500 g stock",
    ]);
  });

  it("say apart what is left for serving, and what is weighed out for each person though it is cooked", () => {
    const recipe = broth({
      lines: broth().lines.map((line) => (line.key === "salt" ? { ...line, scaling: "per-portion" } : line)),
      method: ["Simmer {barley} and {salt} in {stock}."],
    });
    const plan = portionPlan({
      meals: [{ id: "supper", dishes: sheet(recipe, foods) }],
      people: [{ id: "cox" }, { id: "bow", demands: { factor: 2 } }],
    });
    const [session] = cookingSchedule(plan, { days: ["a", "b"], cook: ["a"] }).sessions;
    const steps = session?.pots[0]?.steps();
    expect(steps).toMatchObject({ atServing: ["herbs"], apart: ["salt"], unnamed: [] });
    expect(steps?.steps).toEqual(["Simmer 300 g barley and salt in 1500 g stock."]);
    expect(session?.apart.map(({ person, sheet: s }) => `${person} ${s.mass.raw}`)).toEqual([
      "cox 4",
      "bow 4",
    ]);
    expect(session?.notes.map(({ code }) => code)).toContain("per-portion-in-pot");
  });
});
