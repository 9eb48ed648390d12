import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type CookingSchedule,
  cookingSchedule,
  type RunsOptions,
  type ScheduleOptions,
} from "../../src/cook/cookingSchedule.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import {
  type Exact,
  equals,
  exact,
  fraction,
  minus,
  plus,
  sum,
  times,
  ZERO,
} from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import type { PersonInput, PortionDemands } from "../../src/plan/input.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toRecords } from "../../src/show/records.ts";
import { arbitraryFactor, arbitraryRecipe, watched } from "../arbitraries.ts";
import { campPlan } from "../plan/camp.ts";
import { runs } from "../runs.ts";

const text = (f: Exact): string => exactText(f);
const whole = (n: number): Exact => fraction(BigInt(n));

/** Quantities that are held to add up: each line, masses raw and as eaten, and every watched component. */
function quantities(plan: Plan): readonly (readonly [string, (s: Sheet) => Exact])[] {
  const keys = plan.meals.flatMap(({ batch }) =>
    [...batch.values()].flatMap((s) => s.lines.map(({ key }) => key)),
  );
  return [
    ["raw", (s) => s.masses.raw],
    ["cooked", (s) => s.masses.cooked],
    ...keys.map(
      (key) => [key, (s: Sheet) => s.lines.find((line) => line.key === key)?.grams ?? ZERO] as const,
    ),
    ...watched.map((id) => [id, (s: Sheet) => s.total(id).value] as const),
  ];
}

/** A schedule and what it was made from, days by their places. */
interface World {
  readonly plan: Plan;
  readonly days: readonly string[];
  readonly cook: readonly number[];
  readonly eaten: readonly number[];
  readonly away: Readonly<Record<string, readonly number[]>>;
  readonly servings: Readonly<Record<string, number>>;
  readonly how: ScheduleOptions;
}

const NAMES = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri"];

const world: fc.Arbitrary<World> = fc
  .record({
    made: arbitraryRecipe,
    factors: fc.array(arbitraryFactor, { minLength: 1, maxLength: 4 }),
    days: fc.integer({ min: 1, max: NAMES.length }),
    seeds: fc.array(fc.boolean(), { minLength: 60, maxLength: 60 }),
    counts: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 4, maxLength: 4 }),
    capacity: fc.integer({ min: 1, max: 3000 }),
    runs: fc.constantFrom<RunsOptions>("equal", "full", "one"),
  })
  .map(({ made, factors, days: count, seeds, counts, capacity, runs }): World => {
    const people = factors.map((factor, i): PersonInput => ({ id: `p${i}`, demands: { factor } }));
    const plan = portionPlan({ meals: [{ id: "m", dishes: sheet(made.recipe, made.table) }], people });
    const days = NAMES.slice(0, count);
    const places = days.map((_, i) => i);
    const some = (from: number): readonly number[] => places.filter((i) => seeds[from + i]);
    const eaten = some(0);
    // What is eaten first is cooked by then.
    const cook = [...new Set([...(eaten.length > 0 ? [eaten[0] ?? 0] : []), ...some(10)])].sort();
    const away = Object.fromEntries(people.map(({ id }, i) => [id, some(20 + 10 * i)]));
    const servings = Object.fromEntries(people.map(({ id }, i) => [id, counts[i] ?? 1]));
    const named = (all: readonly number[]): string[] => all.map((i) => days[i] ?? "");
    const how: ScheduleOptions = {
      days,
      cook: named(cook),
      away: Object.fromEntries(Object.entries(away).map(([id, all]) => [id, named(all)])),
      meals: { m: { eaten: named(eaten), servings, vessel: { capacity: `${capacity} g`, runs } } },
    };
    return { plan, days, cook, eaten, away, servings, how };
  });

/** Portions that someone eats on a day, told from the input alone. */
function portionsOn({ eaten, away, servings }: World, person: string, day: number): number {
  return eaten.includes(day) && !away[person]?.includes(day) ? (servings[person] ?? 1) : 0;
}

/** Everything that is cooked and added, added up. */
function all(schedule: CookingSchedule, of: (s: Sheet) => Exact): Exact {
  const cooked = schedule.sessions.flatMap(({ pots, apart }) =>
    [...pots, ...apart].map(({ sheet: s }) => of(s)),
  );
  const added = schedule.servings.map((each) => (each.added ? times(of(each.added), each.count) : ZERO));
  return sum([...cooked, ...added]);
}

describe("a cooking schedule", () => {
  it("is, over all sessions and servings, every portion on every day, literally", () => {
    fc.assert(
      fc.property(world, (w) => {
        const schedule = cookingSchedule(w.plan, w.how);
        for (const [name, of] of quantities(w.plan)) {
          // What a pot gives off stops at the water that is known in it, which depends on what shares the pot.
          if (name === "water") continue;
          const eaten = w.days.flatMap((_, day) =>
            w.plan.people.map(({ id }) => {
              const s = w.plan.portion(id, "m").dishes.get("m");
              return s ? times(of(s), whole(portionsOn(w, id, day))) : ZERO;
            }),
          );
          expect(text(all(schedule, of))).toBe(text(sum(eaten)));
        }
      }),
      { numRuns: runs(150) },
    );
  });

  it("cooks on a day what is eaten from then until it is cooked again, for each of those who eat it", () => {
    fc.assert(
      fc.property(world, (w) => {
        const schedule = cookingSchedule(w.plan, w.how);
        const dish = w.plan.dish("m");
        // Day by day, each portion is taken from the latest cooking.
        const taken = new Map<string, { grams: Exact; readonly people: Map<string, number> }>();
        w.days.forEach((_, day) => {
          for (const { person, grams } of dish.servings) {
            const count = portionsOn(w, person, day);
            const from = w.days[w.cook.filter((cooked) => cooked <= day).at(-1) ?? -1] ?? "never";
            if (count === 0) continue;
            const so = taken.get(from) ?? { grams: ZERO, people: new Map<string, number>() };
            so.grams = plus(so.grams, times(grams, whole(count)));
            so.people.set(person, (so.people.get(person) ?? 0) + count);
            taken.set(from, so);
          }
        });
        const sessions = schedule.sessions.filter(({ pots }) => pots.length > 0);
        expect(sessions.map(({ day }) => day)).toEqual(w.days.filter((day) => taken.has(day)));
        for (const { day = "", pots } of sessions) {
          const grams = sum(pots.map(({ sheet: s }) => s.masses.cooked));
          expect(text(grams)).toBe(text(taken.get(day)?.grams ?? exact(-1)));
          for (const { people, sheet: s } of pots) {
            expect(new Map(people.map(({ person, count }) => [person, count.toNumber()]))).toEqual(
              taken.get(day)?.people,
            );
            expect(text(s.values.portions)).toBe(text(sum(people.map((p) => p.count))));
          }
        }
      }),
      { numRuns: runs(150) },
    );
  });

  it("parts pots into runs that are the pot, none over the capacity and no more than it takes", () => {
    fc.assert(
      fc.property(world, (w) => {
        for (const { pots } of cookingSchedule(w.plan, w.how).sessions) {
          for (const { sheet: s, runs, vessel } of pots) {
            const room = (of: Sheet): Exact =>
              compareRatios(of.masses.raw, of.masses.cooked) > 0 ? of.masses.raw : of.masses.cooked;
            const size = vessel?.capacity.value ?? ZERO;
            for (const [, of] of quantities(w.plan)) {
              const parts = runs.map((run) => times(of(run.sheet), run.count));
              expect(text(sum(parts))).toBe(text(of(s)));
            }
            const fits = (of: Exact): boolean => compareRatios(of, size) <= 0;
            const count = sum(runs.map(({ count }) => count)).n;
            expect(text(vessel?.needs?.value ?? exact(-1))).toBe(text(room(s)));
            if (vessel?.fit === "fits") expect([fits(room(s)), count]).toEqual([true, 1n]);
            if (vessel?.fit === "overflows") expect([fits(room(s)), count]).toEqual([false, 1n]);
            if (vessel?.fit === "several") {
              expect(runs.every((run) => fits(room(run.sheet)))).toBe(true);
              // One run fewer could not hold it.
              expect(fits(times(room(s), fraction(1n, count - 1n)))).toBe(false);
              const [first, rest] = runs;
              if (rest) expect(text(room(first?.sheet ?? s))).toBe(text(size));
            }
          }
        }
      }),
      { numRuns: runs(150) },
    );
  });

  it("does not heed in which order days of cooking, people and options are named", () => {
    fc.assert(
      fc.property(world, fc.boolean(), (w, turned) => {
        const turn = <T>(list: readonly T[] = []): T[] => (turned ? [...list].reverse() : [...list]);
        const how = {
          ...w.how,
          cook: turn(w.how.cook as readonly string[]),
          away: Object.fromEntries(turn(Object.entries(w.how.away ?? {}))),
        };
        expect(toRecords(cookingSchedule(w.plan, how), { figures: "exact" })).toEqual(
          toRecords(cookingSchedule(w.plan, w.how), { figures: "exact" }),
        );
      }),
      { numRuns: runs(40) },
    );
  });

  it("gives tidy rows whose amounts times their times are all that is cooked and added", () => {
    fc.assert(
      fc.property(world, (w) => {
        const schedule = cookingSchedule(w.plan, w.how);
        const rows = toRecords(schedule, { figures: "exact" });
        const total = (what: readonly string[]): Exact =>
          sum(
            rows
              .filter(({ row, component }) => row !== "total" && component === "mass")
              .filter((row) => what.includes(String(row.what)) && row.unit === "g")
              .map(({ amount, times: often }) => times(exact(String(amount)), exact(String(often)))),
          );
        expect(text(total(["pot", "apart", "serving"]))).toBe(text(all(schedule, (s) => s.masses.raw)));
        expect(text(total(["run"]))).toBe(text(total(["pot"])));
        // Shares as cooked are the pots as cooked.
        const cooked = schedule.sessions.flatMap(({ pots }) => pots.map(({ sheet: s }) => s.masses.cooked));
        expect(text(total(["share"]))).toBe(text(sum(cooked)));
      }),
      { numRuns: runs(60) },
    );
  });

  it("is planned so, too, where a kitchen measures portions and then what is cooked", () => {
    const oats = sheet(
      {
        name: "Porridge",
        portions: 2,
        measures: "metric",
        lines: [
          { key: "oats", food: "oats-rolled-dry", amount: "123 g" },
          { key: "milk", food: "milk-whole", amount: "1 1/3 cups" },
          { key: "honey", food: "honey", amount: "1 tsp", scaling: "per-portion", added: "serving" },
        ],
      },
      starterFoods,
    );
    fc.assert(
      fc.property(fc.array(arbitraryFactor, { minLength: 1, maxLength: 3 }), (factors) => {
        const plan = portionPlan({
          meals: [{ id: "m", dishes: oats }],
          people: factors.map((factor, i) => ({ id: `p${i}`, demands: { factor } })),
          kitchen: "metric",
        });
        const schedule = cookingSchedule(plan, {
          days: ["a", "b", "c"],
          cook: ["a", "c"],
          away: { p0: ["b"] },
        });
        for (const [, of] of quantities(plan)) {
          const portion = (id: string): Exact => of(plan.portion(id, "m").dishes.get("m") ?? oats);
          const expected = sum(plan.people.map(({ id }) => times(portion(id), whole(id === "p0" ? 2 : 3))));
          const pots = schedule.sessions.flatMap((session) => session.pots);
          const measured = sum(pots.map((pot) => of(pot.sheet)));
          const before = sum(pots.map((pot) => of(pot.exact)));
          expect(text(plus(minus(all(schedule, of), measured), before))).toBe(text(expected));
        }
      }),
      { numRuns: runs(15) },
    );
  });

  it("sorts pots apart: everyone's portions come from the pot that is theirs", () => {
    const { plan } = severalPots();
    expect(plan.dish("m").pots.length).toBeGreaterThan(1);
    const schedule = cookingSchedule(plan, { days: ["a", "b", "c"], cook: ["a", "c"], away: { p1: ["b"] } });
    for (const [, of] of quantities(plan)) {
      const portion = (id: string): Exact => {
        const s = plan.portion(id, "m").dishes.get("m");
        return s ? of(s) : ZERO;
      };
      const expected = sum(plan.people.map(({ id }) => times(portion(id), whole(id === "p1" ? 2 : 3))));
      expect(text(all(schedule, of))).toBe(text(expected));
    }
    const [first] = schedule.sessions;
    expect(
      first?.pots.map(({ number, people }) => [number, people.map((p) => `${p.person} ${p.count}`)]),
    ).toEqual(
      plan
        .dish("m")
        .pots.map(({ people }, i) => [i + 1, people.map((person) => `${person} ${person === "p1" ? 1 : 2}`)]),
    );
  });

  it("is in order of days, then of the plan, and gives whoever is not named one portion", () => {
    const oats = sheet(
      { name: "Oats", portions: 1, lines: [{ food: "honey", amount: "60 g" }] },
      starterFoods,
    );
    const plan = portionPlan({
      meals: ["early", "late"].map((id) => ({ id, dishes: oats })),
      people: [{ id: "cox" }, { id: "bow" }],
    });
    const schedule = cookingSchedule(plan, { days: ["b", "a"], meals: { late: { servings: { cox: 3 } } } });
    const cooked = schedule.sessions.map(
      ({ day, meal, pots }) => `${day} ${meal} ${pots[0]?.sheet.portions}`,
    );
    expect(cooked).toEqual(["b early 2", "b late 4", "a early 2", "a late 4"]);
  });

  it("cooks everything at once where no days are named, and every day where no days of cooking are", () => {
    const plan = campPlan();
    const once = cookingSchedule(plan);
    expect(once.days).toEqual([]);
    expect(once.sessions.map(({ day, dish }) => [day, dish])).toEqual([
      [undefined, "pot"],
      [undefined, "shot"],
    ]);
    const pot = plan.dish("breakfast", "pot").pots[0];
    expect(text(once.sessions[0]?.pots[0]?.sheet.masses.raw ?? ZERO)).toBe(
      text(pot?.sheet.masses.raw ?? exact(-1)),
    );
    expect(once.notes.some(({ code }) => code.startsWith("k") || code === "no-storage-limit")).toBe(false);
    const daily = cookingSchedule(plan, { days: ["a", "b"] });
    expect(daily.sessions.map(({ day, eaten }) => [day, eaten])).toEqual([
      ["a", ["a"]],
      ["a", ["a"]],
      ["b", ["b"]],
      ["b", ["b"]],
    ]);
    const unlimited = daily.notes.filter(({ code }) => code === "no-storage-limit");
    // The topping is made once for both days.
    expect(unlimited.map(({ recipe }) => recipe)).toEqual(["seed-topping"]);
  });
});

/** Three people, two of whom need protein that only a second held part brings. */
function severalPots(): { readonly plan: Plan } {
  const foods: readonly FoodInput[] = [
    { id: "base", name: "Base", source: "made up", per100g: { energy: 100, protein: 2 } },
    { id: "beans", name: "Beans", source: "made up", per100g: { energy: 100, protein: 20 } },
  ];
  const recipe: RecipeInput = {
    name: "Stew",
    portions: 1,
    lines: [
      { key: "base", food: "base", amount: "200 g" },
      { key: "beans", food: "beans", amount: "100 g", part: "beans" },
    ],
  };
  const wants = (protein: number): PortionDemands => [
    { of: "energy", exactly: 300 },
    { of: "protein", exactly: protein },
  ];
  const plan = portionPlan({
    meals: [{ id: "m", dishes: sheet(recipe, foodTable(foods)) }],
    people: [
      { id: "p0", demands: wants(24) },
      { id: "p1", demands: wants(33) },
      { id: "p2", demands: wants(33) },
    ],
  });
  return { plan };
}

describe("room in a vessel", () => {
  const foods = foodTable([
    { id: "stock", name: "Stock", source: "made up", per100g: {}, density: 1 },
    { id: "rice", name: "Rice", source: "made up", per100g: {}, state: "dry" },
    {
      id: "flour",
      name: "Flour",
      source: "made up",
      per100g: {},
      measures: [{ name: "cup", grams: 118.29411825 }],
    },
    { id: "fruit", name: "Fruit", source: "made up", per100g: {}, density: 1, edibleShare: "0.5" },
    {
      id: "oats",
      name: "Oats",
      source: "made up",
      per100g: {},
      measures: [
        { name: "tbsp", grams: 16 },
        { name: "cup", grams: 50 },
      ],
    },
  ]);
  const made = (lines: RecipeInput["lines"], more: Partial<RecipeInput> = {}, density?: string) =>
    portionPlan({
      meals: [
        {
          id: "m",
          dishes: {
            d: {
              sheet: sheet({ name: "D", portions: 1, measures: "us", lines, ...more }, foods),
              ...(density && { density }),
            },
          },
        },
      ],
      people: [{ id: "p" }],
    });
  const use = (plan: Plan, vessel: string) =>
    cookingSchedule(plan, { meals: { m: { vessel } } }).sessions[0]?.pots[0]?.vessel;
  const stock = { key: "stock", food: "stock", amount: "3 kg" };

  it("is told by weight, the larger of what goes in and what comes out", () => {
    // Rice takes up more than its own weight of water: a pot of it grows.
    const grows = made([{ key: "rice", food: "rice", amount: "1 kg" }], { yieldFactor: "2.8" });
    expect(use(grows, "2 kg")).toMatchObject({ fit: "several", by: "weight" });
    expect(use(grows, "2 kg")?.needs?.value.toString()).toBe("2.8");
    const shrinks = made([stock], { yieldFactor: "0.5" });
    expect(use(shrinks, "2 kg")?.needs?.value.toString()).toBe("3");
  });

  it("is told by the dish's density, in the unit of the vessel", () => {
    expect(use(made([stock], {}, "1.2"), "2 l")).toMatchObject({ fit: "several", by: "density", silent: [] });
    expect(use(made([stock], {}, "1.2"), "2 l")?.needs?.value.toString()).toBe("2.5");
    // A US gallon is 231 cubic inches, 3785.411784 ml (NIST SP 811).
    expect(use(made([stock], {}, "1.2"), "1 us gallon")?.needs?.value).toEqual(
      exact("2500000000/3785411784"),
    );
  });

  it("is told line by line where each says its own volume: written, by density, or by the cup", () => {
    // A US cup is 236.5882365 ml (NIST SP 811), so that the flour weighs half a gram in a millilitre.
    const plan = made([
      { key: "stock", food: "stock", amount: "1.5 kg" },
      { key: "flour", food: "flour", amount: "100 g" },
      { key: "more", food: "flour", amount: "2 us cups" },
    ]);
    const found = use(plan, "2 l");
    expect(found).toMatchObject({ fit: "several", by: "lines" });
    expect(text(found?.needs?.value ?? ZERO)).toBe(text(exact("2.173176473")));
    const codes = cookingSchedule(plan, { meals: { m: { vessel: "2 l" } } }).notes.map(({ code }) => code);
    expect(codes).toEqual(["several-runs", "volume-by-lines"]);
  });

  it("grows line by line with the water that a pot takes up, and shrinks with what is not eaten", () => {
    expect(use(made([stock], { yieldFactor: "1.5" }), "2 l")?.needs?.value.toString()).toBe("4.5");
    expect(use(made([stock], { yieldFactor: "0.5" }), "2 l")?.needs?.value.toString()).toBe("3");
    // A litre as purchased, of which half is eaten.
    const peeled = made([{ key: "fruit", food: "fruit", amount: "1 l", weighed: "as-purchased" }]);
    expect(use(peeled, "2 l")?.needs?.value.toString()).toBe("0.5");
  });

  it("is by the lightest of a food's cups and spoons, which takes most room", () => {
    const light = made([{ key: "oats", food: "oats", amount: "1 kg" }]);
    // 50 g in a US cup of 236.5882365 ml, and not 16 g in a tablespoon of 14.78676478125 ml.
    expect(text(use(light, "2 l")?.needs?.value ?? ZERO)).toBe(text(exact("4.73176473")));
  });

  it("is each dish's own where dishes have vessels of their own", () => {
    const schedule = cookingSchedule(campPlan(), {
      meals: { breakfast: { vessel: "5 l", vessels: { shot: "100 ml" } } },
    });
    const held = schedule.sessions.map(({ pots }) => pots[0]?.vessel);
    expect(held.map((vessel) => `${vessel?.capacity.value} ${vessel?.capacity.unit} ${vessel?.fit}`)).toEqual(
      ["5 l fits", "100 ml several"],
    );
  });

  it("is not known where a line says none, and that is said with a way out", () => {
    const plan = made([stock, { key: "rice", food: "rice", amount: "200 g" }]);
    expect(use(plan, "2 l")).toMatchObject({ fit: "not-known", needs: undefined, silent: ["Rice"] });
    const schedule = cookingSchedule(plan, { meals: { m: { vessel: "2 l" } } });
    expect(schedule.notes[0]?.text).toBe(
      "whether it goes into 2 l is not known, since nothing says the volume of Rice: give the dish a density, those lines a volume, or the vessel a weight that it may hold",
    );
    expect(schedule.sessions[0]?.pots[0]?.runs.map(({ count }) => count.toNumber())).toEqual([1]);
  });

  it("overflows where one run is all there is time for, and by how much", () => {
    const schedule = cookingSchedule(made([stock]), {
      meals: { m: { vessel: { capacity: "2 l", runs: "one" } } },
    });
    expect(schedule.notes[0]).toMatchObject({ code: "overflows" });
    expect(schedule.notes[0]?.text).toMatch(/^3 l is more than the 2 l that it holds, by 1 l,/);
  });

  it("is parted in equal runs, or in full ones and a rest", () => {
    const runs = (how: RunsOptions): string[] =>
      (
        cookingSchedule(made([stock]), { meals: { m: { vessel: { capacity: "800 ml", runs: how } } } })
          .sessions[0]?.pots[0]?.runs ?? []
      ).map(({ count, sheet: s }) => `${count} × ${s.mass.raw} g`);
    expect(runs("equal")).toEqual(["4 × 750 g"]);
    expect(runs("full")).toEqual(["3 × 800 g", "1 × 600 g"]);
  });

  it("takes as long for very many runs as for one", () => {
    const schedule = cookingSchedule(made([stock]), {
      meals: { m: { vessel: { capacity: { value: "1e-30", unit: "l" } } } },
    });
    expect(schedule.sessions[0]?.pots[0]?.runs[0]?.count.n).toBe(3n * 10n ** 30n);
    expect(equals(exact("3e33"), exact(schedule.sessions[0]?.pots[0]?.runs[0]?.count.times(1000) ?? 0))).toBe(
      true,
    );
  });
});
