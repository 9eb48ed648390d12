import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cookCard } from "../../src/card.ts";
import { cookingSchedule } from "../../src/cook/cookingSchedule.ts";
import { starterFoods } from "../../src/foods.ts";
import { formatAmount } from "../../src/measure/format.ts";
import { type Kitchen, kitchen } from "../../src/measure/kitchen.ts";
import { exactText } from "../../src/number/digits.ts";
import {
  absolute,
  type Exact,
  exact,
  fraction,
  minus,
  over,
  plus,
  sum,
  times,
} from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import type { PersonInput, PlanInput } from "../../src/plan/input.ts";
import { type ShareWish, weighShares } from "../../src/plan/measure/weighShares.ts";
import { type Plan, portionPlan, portionPlanSteps } from "../../src/plan/plan.ts";
import type { LineInput } from "../../src/recipe/document.ts";
import { roundToKitchen } from "../../src/scale/round.ts";
import { sheet } from "../../src/sheet/build.ts";
import { shoppingList } from "../../src/shop/shoppingList.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const oats: LineInput = { key: "oats", food: "oats-rolled-dry", amount: "53.3 g" };
const milk: LineInput = { key: "milk", food: "milk-whole", amount: "151 ml" };
const honey: LineInput = { key: "honey", food: "honey", amount: "1.84 tsp", added: "serving" };
const cinnamon: LineInput = {
  key: "cinnamon",
  food: "cinnamon-ground",
  amount: "1/2 tsp",
  scaling: "per-portion",
};

function porridge(...lines: readonly LineInput[]) {
  return sheet({ name: "Porridge", portions: 1, measures: "metric", lines: [...lines] }, starterFoods);
}

const cox: PersonInput = { id: "cox", name: "Cox", demands: { factor: "0.8" } };
const bow: PersonInput = { id: "bow", name: "Bow", demands: { factor: "1.3" } };

function breakfast(
  lines: readonly LineInput[],
  people: readonly PersonInput[],
  rest: Partial<PlanInput>,
): Plan {
  return portionPlan({ meals: [{ id: "breakfast", dishes: porridge(...lines) }], people, ...rest });
}

/** Nothing but spoons and a cup: nothing can be weighed. */
const hut: Kitchen = kitchen({
  name: "hut",
  measures: "metric",
  drawer: { cup: ["1/4", "1/2"], tbsp: ["1/2"], tsp: ["1/2"] },
  pieces: "whole",
});
const coarse: Kitchen = kitchen({
  name: "coarse",
  measures: "metric",
  drawer: {},
  scale: "5 g",
  pieces: "whole",
});

describe("a kitchen handed to a plan", () => {
  it("is refused where it stands, with all that is wrong with it", () => {
    const wrong = { name: "", measures: "metric", drawer: { tsp: ["3/2"] }, pieces: "third" };
    const { faults } = errorOf(() =>
      breakfast(
        [oats],
        [
          { ...cox, kitchen: "lunar" as "us" },
          { ...bow, kitchen: null as never },
        ],
        {
          kitchen: wrong as unknown as Kitchen,
          tolerance: "130 %",
        },
      ),
    );
    expect(faults.map(({ code, path }) => `${code} ${path.join(".")}`).sort()).toEqual([
      "kitchen-malformed kitchen.drawer.tsp.0",
      "kitchen-malformed kitchen.name",
      "kitchen-malformed kitchen.pieces",
      "kitchen-malformed people.0.kitchen",
      "kitchen-malformed people.1.kitchen",
      "plan-malformed tolerance",
    ]);
  });

  it.each([1, "-1", Number.NaN, "__proto__", {}, null])("refuses a tolerance of %o", (tolerance) => {
    const { faults } = errorOf(() => breakfast([oats], [cox], { tolerance: tolerance as string }));
    expect(faults.map(({ path }) => path)).toEqual([["tolerance"]]);
  });

  it("changes nothing where there is none", () => {
    const plain = breakfast([oats, milk, honey, cinnamon], [cox, bow], {});
    expect(plain.portions.map(({ drift, kitchenNotes }) => [drift, kitchenNotes])).toEqual([
      [undefined, []],
      [undefined, []],
    ]);
    expect(
      exactText(plain.portion("cox", "breakfast").dishes.get("breakfast")?.values.grams[0] ?? exact(0)),
    ).toBe("42.64");
    expect(toText(plain, { parts: "all" })).not.toContain("Effect of rounding");
  });

  it("tells of each person twice, found and measured", () => {
    const meals = [{ id: "breakfast", dishes: porridge(oats, honey) }];
    const told = [...portionPlanSteps({ meals, people: [cox, bow], kitchen: "metric" })];
    expect(told).toEqual([
      { person: "cox", done: 1, of: 2 },
      { person: "bow", done: 2, of: 2 },
      { person: "cox", done: 1, of: 2, stage: "measured" },
      { person: "bow", done: 2, of: 2, stage: "measured" },
    ]);
  });
});

describe("a measured pot", () => {
  it("is what rounding the whole pot by itself gives, where nobody demands more than a size", () => {
    const held = fc.array(fc.integer({ min: 20, max: 4000 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(held, fc.integer({ min: 3, max: 40 }), (tenths, size) => {
        const foods = ["oats-rolled-dry", "milk-whole", "honey", "rice-white-long-boiled"];
        const lines = tenths.map((n, i): LineInput => ({ food: foods[i] ?? "honey", amount: `${n / 10} g` }));
        const people = [cox, { ...bow, demands: { factor: size / 10 } }];
        const [exactly] = breakfast(lines, people, {}).dish("breakfast").pots;
        const [pot] = breakfast(lines, people, { kitchen: "metric" }).dish("breakfast").pots;
        const alone = exactly && roundToKitchen(exactly.sheet, "metric");
        if (!alone || alone.status === "out-of-reach") throw new Error("nothing to hold against");
        expect(pot?.sheet.values.grams.map(exactText)).toEqual(alone.sheet.values.grams.map(exactText));
      }),
      { numRuns: runs(60) },
    );
  });

  it("is shared out by weight, what does not divide going to the largest", () => {
    const plan = breakfast([oats, milk], [cox, bow], { kitchen: coarse });
    const [small, large] = plan.dish("breakfast").servings;
    // 55 g of oats and 260 g of milk are 0.8 + 1.3 portions; of 315 g Cox's 120 g are 24 steps.
    expect(plan.dish("breakfast").pots[0]?.sheet.values.grams.map(exactText)).toEqual(["110", "325"]);
    expect(small?.weighed && formatAmount(small.weighed)).toBe("165 g");
    expect(large?.weighed && formatAmount(large.weighed)).toBe("270 g");
    expect([small?.isRest, large?.isRest]).toEqual([false, false]);
    // Between its steps nothing can be weighed: the larger share is what is left.
    const odd = breakfast([{ ...oats, amount: "1 cup" }, milk], [cox, bow], { kitchen: "metric" });
    const [one, rest] = odd.dish("breakfast").servings;
    expect([one?.isRest, rest?.isRest, rest?.weighed]).toEqual([false, true, undefined]);
    expect(
      toText(breakfast([{ ...oats, amount: "1 cup" }, milk, honey], [cox, bow], { kitchen: "metric" }), {
        parts: "all",
      }),
    ).toMatch(/the rest \(\d+ g\)/);
  });

  it("is shared out so that what is firm holds, though another share would be nearer", () => {
    // 58 g is 11.6 steps of 5 g and 62 g is 12.4: the largest remainder would give Cox 60 g.
    const people: PersonInput[] = [
      {
        id: "cox",
        demands: [
          { of: "mass", exactly: "58 g" },
          { of: "mass", most: "58 g", firm: true },
        ],
      },
      { id: "bow", demands: [{ of: "mass", exactly: "62 g" }] },
    ];
    const plan = breakfast([oats], people, { kitchen: coarse, tolerance: "10 %" });
    expect(plan.portions.map(({ drift }) => drift?.status)).toEqual(["met", "met"]);
    expect(plan.dish("breakfast").servings.map(({ grams }) => grams.toString())).toEqual(["55", "65"]);
  });

  it("leaves in the pot what nobody's limits leave room for, and says so from plan to page", () => {
    // Each is to have 8 tbsp, about 41 g, and at most that: on a scale of 7 g that is 5 steps, not 6.
    const place = kitchen({ ...coarse, name: "odd", drawer: { tbsp: [] }, scale: "7 g" });
    const cup = { ...oats, amount: "8 tbsp" };
    const { portion } = sheet(
      { name: "Oats", portions: 1, measures: "metric", lines: [cup] },
      starterFoods,
    ).mass;
    const demands = [
      { of: "mass", exactly: portion } as const,
      { of: "mass", most: portion, firm: true } as const,
    ];
    const people = ["cox", "bow"].map((id) => ({ id, demands }));
    const plan = breakfast([cup], people, { kitchen: place, tolerance: "20 %" });
    const { pots, servings, batch } = plan.dish("breakfast");
    const [pot] = pots;
    expect(pot?.notes.map(({ code }) => code)).toEqual(["left-in-pot"]);
    expect(plan.portions.map(({ drift }) => drift?.status)).not.toContain("unrounded");
    const taken = sum(servings.map((each) => each.grams));
    expect(pot?.left.gt(0)).toBe(true);
    expect(exactText(plus(taken, pot?.left ?? exact(0)))).toBe(exactText(pot?.sheet.mass.cooked ?? exact(0)));
    expect(exactText(batch.mass.cooked)).toBe(exactText(pot?.sheet.mass.cooked ?? exact(0)));
    const schedule = cookingSchedule(plan);
    expect(schedule.sessions[0]?.pots[0]?.left.eq(pot?.left ?? 0)).toBe(true);
    expect(cookCard(schedule)).toContain("left in the pot");
  });

  it("keeps exact shares without a scale, and says so", () => {
    const plan = breakfast([{ ...oats, amount: "1 cup" }, milk], [cox, bow], { kitchen: hut });
    const { pots, servings } = plan.dish("breakfast");
    expect(pots[0]?.notes.map(({ code }) => code)).toEqual(["shares-exact"]);
    expect(servings.map(({ share, weighed }) => [exactText(share), weighed])).toEqual([
      ["8/21", undefined],
      ["13/21", undefined],
    ]);
    expect(
      toText(breakfast([{ ...oats, amount: "1 cup" }, milk, honey], [cox, bow], { kitchen: hut }), {
        parts: "all",
      }),
    ).toContain("the kitchen has no scale");
  });

  it("keeps equal shares where a dose is cooked in it, so that each gets what is meant", () => {
    const people = [
      cox,
      { ...bow, demands: { factor: "0.8" } },
      { ...bow, id: "two", demands: { factor: "0.8" } },
    ];
    const plan = breakfast([oats, milk, cinnamon], people, { kitchen: "metric" });
    const dish = plan.dish("breakfast");
    expect(dish.pots[0]?.sheet.lines.map(({ key }) => key)).toContain("cinnamon");
    expect(dish.servings.map(({ share }) => exactText(share))).toEqual(["1/3", "1/3", "1/3"]);
    expect(dish.pots[0]?.notes.map(({ text }) => text).join()).toContain("Cinnamon");
  });
});

describe("what a kitchen cannot do", () => {
  it("leaves a portion as it was found where nothing measurable keeps what must hold, and says so", () => {
    const people: PersonInput[] = [
      { id: "cox", demands: [{ of: "mass", exactly: "53.3 g", firm: true }] },
      bow,
    ];
    const plan = breakfast([oats], people, { kitchen: coarse });
    const own = plan.portion("cox", "breakfast");
    expect(own.drift?.status).toBe("unrounded");
    expect(own.kitchenNotes.map(({ code }) => code)).toEqual(["not-rounded"]);
    expect(toText(plan, { parts: "all" })).toContain("what must hold for someone would not");
    expect(own.dishes.get("breakfast")?.mass.portion.toString()).toBe("53.3");
    // Bow eats of the same pot, so that stays exact too.
    expect(plan.dish("breakfast").pots[0]?.notes.map(({ code }) => code)).toEqual(["not-rounded"]);
    expect(plan.dish("breakfast").batch.mass.raw.toString()).toBe("122.59");
  });

  it("says which target is off by more than the tolerance", () => {
    const people: PersonInput[] = [{ id: "cox", demands: [{ of: "mass", exactly: "53.3 g" }] }];
    const plan = breakfast([oats], people, { kitchen: coarse, tolerance: "1 %" });
    const { drift, kitchenNotes } = plan.portion("cox", "breakfast");
    expect(drift?.status).toBe("off-target");
    expect(kitchenNotes.map(({ text }) => text)).toEqual([
      "mass exactly 53.3 g: measurable amounts are off by more than the tolerance",
    ]);
    // 55 g for 53.3 g: 55 ÷ 53.3 − 1.
    expect(drift?.demands[0]?.off?.toFixed(4)).toBe("0.0319");
    expect(toText(plan, { parts: "all" })).toContain("+3.2%");
    // What was found is met; what a kitchen can measure is not.
    expect([plan.unmet.length, plan.offTarget.map(({ person }) => person)]).toEqual([0, ["cox"]]);
    const exactly = breakfast([oats], people, {});
    expect(exactly.offTarget).toEqual([]);
  });

  it("makes up with additions for what the pot's rounding costs", () => {
    const people: PersonInput[] = [{ id: "cox", demands: [{ of: "energy", exactly: "450 kcal" }] }];
    const lines: LineInput[] = [
      oats,
      milk,
      { key: "nuts", food: "pumpkin-seeds", amount: "20 g", added: "serving" },
    ];
    const own = people.map((person) => ({ ...person, kitchen: "metric" as const }));
    const plan = breakfast(lines, own, { kitchen: coarse, tolerance: "0.4 %" });
    const { drift } = plan.portion("cox", "breakfast");
    expect(drift?.status).toBe("met");
    const off = (of: "brings" | "lineByLine"): Exact =>
      absolute(minus(drift?.demands[0]?.[of] ?? exact(0), exact(450)));
    expect(compareRatios(off("brings"), off("lineByLine"))).toBeLessThan(0);
  });
});

describe("a person's own kitchen", () => {
  it("measures what is added for them, with spoon sizes in ml", () => {
    const plan = breakfast([oats, honey], [cox, { ...bow, kitchen: "us" }], { kitchen: "metric" });
    const added = plan.dish("breakfast").servings.map((serving) => serving.added?.lines[0]?.amount.measures);
    expect(added).toEqual(["metric", "us"]);
    const shown = toText(plan, { parts: "all" });
    expect(shown).toMatch(/US (tsp|tbsp)/);
    // 1/768 and 1/256 of a US gallon of 231 cubic inches: NIST Handbook 44, appendix C.
    expect(shown).toMatch(/1 US tsp is 4\.929 ml|1 US tbsp is 14\.79 ml/);
  });
});

describe("what follows from a measured plan", () => {
  const plan = breakfast([oats, milk, honey, cinnamon], [cox, bow], { kitchen: "metric" });

  it("is bought as it was measured", () => {
    const list = shoppingList(plan);
    const [s] = [plan.dish("breakfast").batch];
    for (const line of list.lines) {
      const own = s.lines.find(({ food }) => food === line.food);
      expect([line.food, line.needed.toString()]).toEqual([line.food, own?.grams.toString()]);
    }
  });

  it("stands in the long rows", () => {
    const rows = toRecords(plan, { components: ["mass"], figures: "exact" });
    const honeyed = rows.filter(({ line, person, what }) => line === "honey" && person && what === "raw");
    const grams = plan.portions.map(({ dishes }) => dishes.get("breakfast")?.lines[2]?.grams ?? exact(0));
    expect(honeyed.map(({ amount }) => amount)).toEqual(grams.map(exactText));
  });
});

describe("shares in steps of a scale", () => {
  const people = fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 1, maxLength: 30 });
  const wishesOf = (weights: readonly number[]): ShareWish[] => {
    const whole = exact(weights.reduce((a, b) => a + b, 0));
    return weights.map((w, i) => ({
      person: `p${String(i).padStart(3, "0")}`,
      share: over(exact(w), whole),
      least: undefined,
      most: undefined,
    }));
  };

  it("are those of the largest remainder, what is left of a step on top of the largest", () => {
    fc.assert(
      fc.property(
        people,
        fc.integer({ min: 1, max: 200_000 }),
        fc.integer({ min: 1, max: 50 }),
        (weights, tenths, step) => {
          const [mass, by] = [fraction(BigInt(tenths), 10n), exact(step)];
          const wishes = wishesOf(weights);
          const found = weighShares(wishes, mass, by);
          const steps = over(mass, by);
          const whole = steps.n / steps.d;
          if (!found) {
            expect(whole < BigInt(weights.length)).toBe(true);
            return;
          }
          const shares = wishes.map(({ person }) => found.shares.get(person) ?? exact(0));
          expect(exactText(sum(shares))).toBe("1");
          // Steps below one a head are made up for by others; elsewhere it is the known method.
          if (wishes.some(({ share }) => compareRatios(times(share, steps), exact(1)) < 0)) return;
          const known = largestRemainder(wishes, steps, whole);
          const inSteps = shares.map((share) => times(share, steps)).map(({ n, d }) => n / d);
          expect(inSteps).toEqual(known);
        },
      ),
      { numRuns: runs(300) },
    );
  });

  it("stay within what firm demands leave, where there is room for all", () => {
    fc.assert(
      fc.property(people, fc.nat(), (weights, pick) => {
        const wishes = wishesOf(weights);
        const one = pick % wishes.length;
        const capped = wishes.map((wish, i) =>
          i === one ? { ...wish, most: times(wish.share, exact("0.97")) } : wish,
        );
        const mass = exact(100_000);
        const found = weighShares(capped, mass, exact(1));
        const own = capped[one];
        if (!own?.most || wishes.length < 2 || compareRatios(times(own.most, mass), exact(1)) < 0) return;
        expect(compareRatios(found?.shares.get(own.person) ?? exact(2), own.most)).toBeLessThanOrEqual(0);
      }),
    );
  });
});

/** By number/share.ts: whole parts, then one each by remainder; ties by the larger share. */
function largestRemainder(wishes: readonly ShareWish[], steps: Exact, whole: bigint): bigint[] {
  const order = wishes.map((wish, i) => ({ wish, i }));
  order.sort((a, b) => compareRatios(b.wish.share, a.wish.share) || a.i - b.i);
  // The same whole parts and remainders, by the whole pot, as one weight more for what is left of a step.
  const ideal = order.map(({ wish }) => times(wish.share, steps));
  const floors = ideal.map(({ n, d }) => n / d);
  const left = whole - floors.reduce((a, b) => a + b, 0n);
  const ranked = ideal
    .map((each, i) => ({ i, rest: minus(each, fraction(floors[i] ?? 0n)) }))
    .sort((a, b) => compareRatios(b.rest, a.rest) || a.i - b.i);
  for (const { i } of ranked.slice(0, Number(left))) floors[i] = (floors[i] ?? 0n) + 1n;
  const out: bigint[] = [];
  for (const [at, { i }] of order.entries()) out[i] = floors[at] ?? 0n;
  return out;
}
