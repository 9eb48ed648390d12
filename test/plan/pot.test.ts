import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, equals, exact, over, plus, sum, times, ZERO } from "../../src/number/exact.ts";
import type { PlanInput } from "../../src/plan/input.ts";
import type { PartServing, Pot } from "../../src/plan/plan.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import { sheet } from "../../src/sheet/build.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText } from "../../src/show/text.ts";
import { arbitraryFactor, arbitraryRecipe, watched } from "../arbitraries.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const text = (f: Exact | undefined): string => exactText(f ?? exact(-1));

/** Quantities that are held to add up: masses as weighed in and as eaten, and every watched component. */
const quantities: readonly (readonly [string, (s: Sheet) => Exact])[] = [
  ["raw", (s) => s.masses.raw],
  ["cooked", (s) => s.masses.cooked],
  ...watched.map((id) => [id, (s: Sheet) => (id === "water" ? water(s) : s.total(id).value)] as const),
];

/**
 * Water by the mass balance alone. A spoon of salt that shares its pot's yield gives off more than it
 * holds, and a sheet of it then does not know its water; in the balance it still counts in full.
 */
function water(s: Sheet): Exact {
  return plus(s.brought("water").value, s.masses.change);
}

/** A share of the pot and what is added to it. */
function made({ pot, share: exactShare, added }: PartServing, of: (s: Sheet) => Exact): Exact {
  const share = pot ? times(of(pot.sheet), exactShare) : ZERO;
  return added ? plus(share, of(added)) : share;
}

/** Every law of pots that holds whatever was planned. */
function holdsTogether(plan: Plan): void {
  for (const meal of plan.meals) {
    for (const [name, dish] of meal.dishes) {
      for (const [, of] of quantities) {
        for (const serving of dish.servings) {
          const portion = plan.portion(serving.person, meal.id).dishes.get(name);
          expect(text(made(serving, of))).toBe(text(portion && of(portion)));
        }
        const pots = sum(dish.pots.map(({ sheet: s }) => of(s)));
        const added = sum(dish.servings.map((serving) => (serving.added ? of(serving.added) : ZERO)));
        expect(text(plus(pots, added))).toBe(text(of(dish.batch)));
      }
      for (const pot of dish.pots) {
        const eating = dish.servings.filter((serving) => serving.pot === pot);
        expect(eating.map(({ person }) => person)).toEqual(pot.people);
        expect(text(sum(eating.map(({ share }) => share)))).toBe("1");
        expect(text(sum(eating.map(({ grams }) => grams)))).toBe(text(pot.sheet.masses.cooked));
        expect(pot.sheet.lines.every(({ added }) => added === "cooking")).toBe(true);
        // What is in the pot is in it for everyone in the same ratios.
        for (const { key, grams } of pot.sheet.lines) {
          for (const { person, share } of eating) {
            const portion = plan.portion(person, meal.id).dishes.get(name);
            const served = portion?.lines.find((line) => line.key === key)?.grams;
            expect(text(served)).toBe(text(times(grams, share)));
          }
        }
      }
    }
  }
}

const demand = fc.record({
  of: fc.constantFrom("energy" as const, "protein" as const, "mass" as const),
  least: fc.integer({ min: 0, max: 300 }),
});
const wanted = fc.oneof(
  fc.array(demand, { minLength: 1, maxLength: 3 }),
  arbitraryFactor.map((factor) => ({ factor })),
);
const parts = fc.array(fc.constantFrom(undefined, "sauce", "grain"), { minLength: 7, maxLength: 7 });

describe("a pot and what is added", () => {
  it("are the portions, in mass and every component, literally", () => {
    fc.assert(
      fc.property(
        arbitraryRecipe,
        parts,
        fc.array(wanted, { minLength: 1, maxLength: 4 }),
        fc.boolean(),
        ({ table, recipe }, named, all, weighed) => {
          const { yieldFactor: _, ...plain } = recipe;
          const lines = recipe.lines.map((line, i) =>
            line.scaling === "held" && named[i] ? { ...line, part: named[i] } : line,
          );
          const written = weighed ? { ...plain, lines, cookedMass: "321 g" } : { ...recipe, lines };
          if (weighed && /^0/.test(String(recipe.lines[0]?.amount))) return;
          holdsTogether(
            portionPlan({
              meals: [{ id: "meal", dishes: sheet(written, table) }],
              people: all.map((demands, i) => ({ id: `p${i}`, demands })),
            }),
          );
        },
      ),
      { numRuns: runs(150) },
    );
  });

  it("are apart as the recipe says: what is served, what is the same for everyone, what was fitted", () => {
    const topping = {
      name: "Topping",
      portions: 4,
      lines: [{ key: "seeds", food: "pumpkin-seeds", amount: "60 g" }],
    };
    const lines = [
      ...toRecipe(simmered).lines.slice(0, 3),
      { key: "milk", food: "milk-whole", amount: "100 g", scaling: "adjustable" as const },
      { key: "topping", recipe: topping, amount: "1 portion", added: "serving" as const },
    ];
    const plan = portionPlan({
      meals: [{ id: "m", dishes: sheet({ name: "Oats", portions: 1, lines }, starterFoods) }],
      people: [
        { id: "cox", demands: { factor: 1 } },
        { id: "bow", demands: { factor: 2 } },
      ],
    });
    const dish = plan.dish("m");
    // One factor moves adjustable lines with the rest.
    expect(dish.pots.map((pot) => pot.sheet.lines.map(({ key }) => key))).toEqual([
      ["oats", "water", "milk"],
    ]);
    // A nested recipe is one line.
    expect(dish.serving("bow").additions.map(({ line, why, cooked }) => [line, why, cooked])).toEqual([
      ["cinnamon", "per-portion", true],
      ["topping", "serving", false],
    ]);
    expect(dish.serving("bow").share.times(3).toString()).toBe("2");
    holdsTogether(plan);
  });

  it("put all in the pot where everyone takes the same, and all of it where one person eats", () => {
    for (const factors of [["1/3"], ["5/7", "5/7", "5/7"]]) {
      const plan = portionPlan({
        meals: [{ id: "m", dishes: simmered }],
        people: factors.map((factor, i) => ({ id: `p${i}`, demands: { factor } })),
      });
      const { pots, questions } = plan.dish("m");
      expect(pots[0]?.sheet.lines.map(({ key }) => key)).toContain("salt");
      expect(questions).toEqual([]);
      holdsTogether(plan);
    }
  });

  it("makes a pot that is a recipe of its own", () => {
    const plan = campDish();
    expect(plan.dish("m").why).toMatch(/^one pot/);
    expect(toText(plan, { parts: "all" })).toMatch(/m: what each person gets/);
    expect(toText(plan, { parts: "all" })).toMatch(/bow +75% +\d+ g +Cinnamon, ground, dry 2 g; Salt.* 1 g/);
    const [pot] = plan.dish("m").pots;
    const again = pot && sheet(toRecipe(pot.sheet), starterFoods);
    expect(text(again?.masses.cooked)).toBe(text(pot?.sheet.masses.cooked));
    expect(text(again?.total("energy").value)).toBe(text(pot?.sheet.total("energy").value));
    expect(again?.origin.method).toEqual(["Simmer {oats} with cinnamon, ground and salt."]);
  });
});

describe("a cooked mass that was weighed", () => {
  it("is presumed of a pot that holds less than was weighed, and stands where the pot holds it all", () => {
    const pots = (plan: Plan): readonly (boolean | string | undefined)[] =>
      plan.dish("m").pots.map(({ sheet: { origin } }) => origin.yieldPresumed ?? String(origin.cookedMass));
    // Cinnamon and salt are each eater's own: what was weighed had them in.
    const parted = campDish();
    expect(pots(parted)).toEqual([true]);
    const [pot] = parted.dish("m").pots;
    const notes = pot ? toText(pot.sheet) : "";
    expect(notes).toContain("the yield is assumed");
    expect(pot?.sheet.total("water").derived).not.toEqual([]);
    const whole = portionPlan({
      meals: [{ id: "m", dishes: simmered }],
      people: [{ id: "cox", demands: { factor: 1 } }],
    });
    expect(pots(whole)).toEqual(["240 g"]);
  });
});

const simmered = sheet(
  {
    name: "Oats",
    portions: 1,
    cookedMass: "240 g",
    lines: [
      { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
      { key: "water", food: "water-tap", amount: "240 g" },
      {
        key: "cinnamon",
        food: "cinnamon-ground",
        amount: "2 g",
        scaling: "per-portion",
        retention: { iron: "0.5" },
      },
      { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion" },
    ],
    method: ["Simmer {oats} with {cinnamon} and {salt}."],
  },
  starterFoods,
);

function campDish(more: Partial<PlanInput> = {}): Plan {
  return portionPlan({
    meals: [{ id: "m", dishes: simmered }],
    people: [
      { id: "cox", demands: { factor: 1 } },
      { id: "bow", demands: { factor: 3 } },
    ],
    ...more,
  });
}

describe("a dose that is cooked in a pot of unequal shares", () => {
  it("is asked about, and counts as the portions say until it is answered", () => {
    const plan = campDish();
    expect(plan.questions.map(({ code, meal, dish, line }) => [code, meal, dish, line])).toEqual([
      ["per-portion-in-pot", "m", "m", "cinnamon"],
      ["per-portion-in-pot", "m", "m", "salt"],
    ]);
    expect(plan.questions[0]?.text).toMatch(/Cinnamon, ground .* from 25% to 75%/);
    expect(plan.questions[0]?.options.map(({ answer }) => answer)).toEqual(["serving", "pot"]);
    const { additions } = plan.dish("m").serving("bow");
    expect(additions.map(({ line, cooked, grams }) => [line, cooked, text(grams)])).toEqual([
      ["cinnamon", true, "2"],
      ["salt", true, "1"],
    ]);
    holdsTogether(plan);
  });

  it("added at serving is uncooked: nothing boils off it, and it keeps what cooking would have taken", () => {
    const plan = campDish({ answers: [{ meal: "m", line: "cinnamon", answer: "serving" }] });
    expect(plan.questions.map(({ line }) => line)).toEqual(["salt"]);
    const bow = plan.portion("bow", "m").dishes.get("m");
    // 2 g stay 2 g; the rest is 901 g that loses water as 303 g lose 63.
    expect(text(bow?.masses.cooked)).toBe(text(plus(exact(2), times(exact(901), exact("240/303")))));
    expect(text(bow?.cell("cinnamon", "iron").value)).toBe(
      text(
        times(
          campDish().portion("bow", "m").dishes.get("m")?.cell("cinnamon", "iron").value ?? ZERO,
          exact(2),
        ),
      ),
    );
    holdsTogether(plan);
  });

  it("that follows the pot is in it, in everyone's share", () => {
    const plan = campDish({ answers: [{ meal: "m", dish: "m", line: "salt", answer: "pot" }] });
    expect(plan.questions.map(({ line }) => line)).toEqual(["cinnamon"]);
    const [pot] = plan.dish("m").pots;
    expect(text(pot?.sheet.lines.find(({ key }) => key === "salt")?.grams)).toBe("4");
    expect(text(plan.portion("bow", "m").dishes.get("m")?.lines[3]?.grams)).toBe("3");
    holdsTogether(plan);
  });

  it("follows the pot without becoming its base, where every held line is in a part", () => {
    const parted = sheet(
      {
        name: "Bowl",
        portions: 1,
        lines: [
          { key: "rice", food: "rice-white-long-boiled", amount: "200 g", part: "grain" },
          { key: "tofu", food: "tofu-firm", amount: "100 g", part: "top" },
          { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion" },
        ],
      },
      starterFoods,
    );
    const people = [30, 45].map((protein, i) => ({
      id: `p${i}`,
      demands: [
        { of: "energy", exactly: 600 },
        { of: "protein", exactly: protein },
      ] as const,
    }));
    const meals = [{ id: "m", dishes: parted }];
    const before = portionPlan({ meals, people });
    const after = portionPlan({ meals, people, answers: [{ meal: "m", line: "salt", answer: "pot" }] });
    for (const person of ["p0", "p1"]) {
      const factor = (plan: Plan): string => text(plan.portion(person, "m").factor);
      expect(factor(after)).toBe(factor(before));
    }
    holdsTogether(after);
  });

  it("answered wrongly is a fault where it stands", () => {
    const answers = [
      { meal: "n", line: "salt", answer: "pot" },
      { meal: "m", dish: "lid", line: "salt", answer: "pot" },
      { meal: "m", line: "oats", answer: "pot" },
      { meal: "m", line: "salt", answer: "both" },
      { meal: "m", line: "cinnamon", answer: "pot" },
      { meal: "m", line: "cinnamon", answer: "serving", why: 1 },
      null,
    ] as unknown as NonNullable<PlanInput["answers"]>;
    const { faults } = errorOf(() => campDish({ answers }));
    expect(faults.map(({ path }) => path.join("."))).toEqual([
      "answers.3.answer",
      "answers.5.why",
      "answers.6",
      "answers.0.meal",
      "answers.1.dish",
      "answers.2.line",
      "answers.5",
    ]);
    expect(errorOf(() => campDish({ answers: {} as never })).path).toEqual(["answers"]);
  });
});

describe("different versions of a held part", () => {
  const bowl = sheet(
    {
      name: "Bowl",
      portions: 1,
      lines: [
        { key: "rice", food: "rice-white-long-boiled", amount: "200 g" },
        { key: "tofu", food: "tofu-firm", amount: "100 g", part: "top" },
        { key: "peas", food: "peas-frozen-boiled-drained", amount: "60 g", part: "top" },
      ],
    },
    starterFoods,
  );

  it("need a pot for each, and those who want the same share one", () => {
    const asks = [30, 45, 30].map((protein, i) => ({
      id: `p${i}`,
      demands: [
        { of: "energy", exactly: 600 },
        { of: "protein", exactly: protein },
      ] as const,
    }));
    const doubled = {
      id: "p3",
      demands: [
        { of: "energy", exactly: 1200 },
        { of: "protein", exactly: 60 },
      ] as const,
    };
    const plan = portionPlan({ meals: [{ id: "m", dishes: bowl }], people: [...asks, doubled] });
    expect(plan.dish("m").pots.map(({ people }) => people)).toEqual([["p0", "p2", "p3"], ["p1"]]);
    expect(plan.dish("m").serving("p3").share.toString()).toBe("0.5");
    expect(plan.dish("m").servings.map(({ person }) => person)).toEqual(["p0", "p1", "p2", "p3"]);
    // The first pot's top over its rice, against the recipe's.
    const [{ sheet: pot, ratios }] = plan.dish("m").pots as [Pot, Pot];
    const [rice, tofu] = pot.lines.map(({ grams }) => grams) as [Exact, Exact];
    expect(ratios.map(({ part, lines }) => [part, lines])).toEqual([["top", ["tofu", "peas"]]]);
    expect(text(times(ratios[0]?.ratio ?? ZERO, exact("1/2")))).toBe(text(over(tofu, rice)));
    expect(plan.dish("m").why).toMatch(/^2 pots, since .*: top at [\d.]+, [\d.]+ of what it has$/);
    const shown = toText(plan, { parts: "all" });
    expect(shown).toMatch(/m: pot 1, for p0, p2, p3/);
    expect(shown).toMatch(/p3 +1 +50% /);
    expect(shown).toContain("2 pots, since");
    holdsTogether(plan);
  });

  it("ask about a dose once, however many pots there are", () => {
    const dosed = sheet(
      {
        name: "Bowl",
        portions: 1,
        lines: [
          ...toRecipe(bowl).lines,
          { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion" },
        ],
      },
      starterFoods,
    );
    const people = [30, 60, 45, 90].map((protein, i) => ({
      id: `p${i}`,
      demands: [
        { of: "energy", exactly: i % 2 === 0 ? 600 : 1200 },
        { of: "protein", exactly: protein },
      ] as const,
    }));
    const plan = portionPlan({ meals: [{ id: "m", dishes: dosed }], people });
    expect(plan.dish("m").pots.map((pot) => pot.people)).toEqual([
      ["p0", "p1"],
      ["p2", "p3"],
    ]);
    expect(plan.questions.map(({ line }) => line)).toEqual(["salt"]);
  });

  it("are told by what is there: a line of nothing, or one that vanished, splits no pot", () => {
    const lines = [
      { key: "milk", food: "milk-whole", amount: "80 g", part: "a" },
      { key: "nothing", food: "salt", amount: "0 g" },
      { key: "rice", food: "rice-white-long-boiled", amount: "200 g" },
      { key: "tofu", food: "tofu-firm", amount: "100 g", scaling: "adjustable" as const },
    ];
    const dish = sheet({ name: "Bowl", portions: 1, lines }, starterFoods);
    const none = { of: "cholesterol", most: 0, firm: true } as const;
    const plan = portionPlan({
      meals: [{ id: "m", dishes: dish, fit: { parts: { a: { least: 0 } } } }],
      people: [500, 700].map((energy, i) => ({
        id: `p${i}`,
        demands: [{ of: "energy", exactly: energy }, none] as const,
      })),
    });
    const { pots, servings } = plan.dish("m");
    expect(plan.unmet).toEqual([]);
    expect(pots.map((pot) => pot.people)).toEqual([["p0", "p1"]]);
    expect(text(pots[0]?.sheet.lines.find(({ key }) => key === "milk")?.grams)).toBe("0");
    expect(servings.map(({ share }) => share.times(12).toString())).toEqual(["5", "7"]);
    holdsTogether(plan);
  });

  it("tell of held lines alone: what one eater's pot holds beside them has no ratio to keep", () => {
    const lines = [
      { key: "rice", food: "rice-white-long-boiled", amount: "200 g", added: "cooking" as const },
      { key: "tofu", food: "tofu-firm", amount: "100 g", scaling: "adjustable" as const },
      { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion" as const },
      { key: "peas", food: "peas-frozen-boiled-drained", amount: "80 g", part: "peas" },
    ];
    const dish = sheet({ name: "Bowl", portions: 1, lines }, starterFoods);
    const ask = {
      id: "p0",
      demands: [{ of: "mass", exactly: 900 } as const, { of: "protein", exactly: 50 } as const],
    };
    const [pot] = portionPlan({ meals: [{ id: "m", dishes: dish }], people: [ask] }).dish("m").pots;
    const factors = dish.lines.map(({ key, grams }) => {
      const own = pot?.sheet.lines.find((line) => line.key === key)?.grams;
      return own && over(own, grams);
    });
    expect(factors.map((factor) => factor && equals(factor, factors[0] ?? ZERO))).toEqual([
      true,
      false,
      false,
      true,
    ]);
    expect(pot?.ratios).toEqual([]);
    const doubled = { id: "p0", demands: { factor: 2 } };
    const [twice] = portionPlan({ meals: [{ id: "m", dishes: dish }], people: [doubled] }).dish("m").pots;
    expect(twice?.sheet.lines.map(({ grams }) => text(grams))).toEqual(["400", "200", "1", "160"]);
    expect(twice?.ratios).toEqual([]);
  });

  it("are none where no line is held: the pot is then what keeps its ratios and weighs most", () => {
    const lines = [
      { key: "tofu", food: "tofu-firm", amount: "90 g", scaling: "adjustable" as const },
      { key: "rice", food: "rice-white-long-boiled", amount: "80 g", scaling: "adjustable" as const },
      { key: "peas", food: "peas-frozen-boiled-drained", amount: "80 g", scaling: "adjustable" as const },
    ];
    const dish = sheet({ name: "Bowl", portions: 1, lines }, starterFoods);
    const plan = portionPlan({
      meals: [{ id: "m", dishes: dish }],
      people: [
        { id: "p0", demands: { factor: 1 } },
        {
          id: "p1",
          demands: [
            { of: "mass", exactly: 250 },
            { of: "protein", exactly: 22 },
          ] as const,
        },
      ],
    });
    expect(plan.dish("m").pots.map((pot) => pot.sheet.lines.map(({ key }) => key))).toEqual([
      ["rice", "peas"],
    ]);
    expect(
      plan
        .dish("m")
        .serving("p0")
        .additions.map(({ line, why }) => [line, why]),
    ).toEqual([["tofu", "adjustable"]]);
    holdsTogether(plan);
  });
});

describe("a share by volume", () => {
  it("is the mass over the density that the dish is given", () => {
    const plan = (density?: string) =>
      campDish({ meals: [{ id: "m", dishes: { m: density ? { sheet: simmered, density } : simmered } }] });
    const serving = plan("1.05").dish("m").serving("bow");
    expect(text(serving.millilitres && times(serving.millilitres, exact("1.05")))).toBe(text(serving.grams));
    expect(plan().dish("m").serving("bow").millilitres).toBeUndefined();
    for (const density of ["0", "-1", "thick"]) {
      expect(errorOf(() => plan(density)).path).toEqual(["meals", 0, "dishes", "m", "density"]);
    }
  });
});

describe("asking for what is not there", () => {
  it("names what there is", () => {
    const plan = campDish();
    expect(errorOf(() => plan.dish("n")).code).toBe("plan-malformed");
    expect(errorOf(() => plan.dish("m", "lid")).hint).toMatch(/m/);
    expect(errorOf(() => plan.dish("m").serving("nobody")).code).toBe("plan-malformed");
    expect(equals(plan.dish("m").serving("cox").share, exact("1/4"))).toBe(true);
  });
});
