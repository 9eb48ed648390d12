import { describe, expect, it } from "vitest";
import { personCard } from "../../src/card/personCard.ts";
import { starterFoods } from "../../src/foods.ts";
import { formatAmount } from "../../src/measure/format.ts";
import { type Kitchen, kitchen } from "../../src/measure/kitchen.ts";
import { exactText } from "../../src/number/digits.ts";
import type { MealInput, PersonInput, PlanInput } from "../../src/plan/input.ts";
import { type Plan, portionPlan } from "../../src/plan/plan.ts";
import type { LineInput } from "../../src/recipe/document.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toText } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";

const galley: Kitchen = kitchen({
  name: "galley",
  measures: "us",
  drawer: { cup: ["1/4", "1/2"], tbsp: ["1/2"], tsp: ["1/4", "1/2"] },
  scale: "5 g",
  pieces: "half",
});
/** Spoons and a cup: nothing can be weighed. */
const hut: Kitchen = kitchen({
  name: "hut",
  measures: "us",
  drawer: { cup: ["1/4", "1/2"], tbsp: ["1/2"], tsp: ["1/4", "1/2"] },
  pieces: "half",
});

function dish(name: string, ...lines: readonly LineInput[]): Sheet {
  return sheet({ name, portions: 2, measures: "us", lines: [...lines] }, starterFoods);
}

const beans: LineInput = { key: "beans", food: "chickpeas-canned-drained", amount: "2 cans, drained" };
const oats: LineInput = { key: "oats", food: "oats-rolled-dry", amount: "100 g" };
const stew = dish("Stew", beans, oats);

const energy = (id: string, exactly: number): PersonInput => ({
  id,
  name: id,
  demands: [{ of: "energy", exactly }],
});

function planned(
  people: readonly PersonInput[],
  rest: Partial<PlanInput>,
  dishes: MealInput["dishes"] = stew,
): Plan {
  return portionPlan({ meals: [{ id: "dinner", dishes }], people, kitchen: galley, ...rest });
}

const amounts = (s: Sheet | undefined): string[] =>
  (s?.lines ?? []).map(({ amount }) => formatAmount(amount, { measures: "us" }));

describe("a wish for a line of a plan", () => {
  it("weighs what would be counted, so that a portion comes out on target", () => {
    const people = [energy("cox", 300)];
    const few = dish("Stew", beans, { ...oats, amount: "20 g" });
    const counted = planned(people, {}, few);
    const [pot] = counted.dish("dinner").pots;
    expect(pot?.sheet.lines[0]?.amount.unit).toBe("can, drained");
    expect(counted.offTarget.map(({ person }) => person)).toEqual(["cox"]);
    const weighed = planned(people, { lines: { beans: "weigh" } }, few);
    expect(weighed.dish("dinner").pots[0]?.sheet.lines[0]?.amount.unit).toBe("g");
    expect(weighed.offTarget).toEqual([]);
  });

  it("counts what would be weighed, leaves alone, and measures by a unit, as roundToKitchen does", () => {
    const people = [energy("cox", 90)];
    // A fifth of a can or so: the least that can be counted is far too much.
    expect(amounts(planned(people, {}).dish("dinner").pots[0]?.sheet)[0]).toMatch(/^\d+ g$/);
    const lines = { beans: "can, drained", oats: "tbsp" };
    const [can, spoons] = amounts(planned(people, { lines }).dish("dinner").pots[0]?.sheet);
    expect(can).toBe("1/2 can, drained");
    expect(spoons).toMatch(/tbsp|tsp/);
    const alone = planned([energy("cox", 333)], { lines: { oats: "as-written" } });
    const exactly = portionPlan({ meals: [{ id: "dinner", dishes: stew }], people: [energy("cox", 333)] });
    const grams = (plan: Plan): string | undefined => {
      const own = plan.portion("cox", "dinner").dishes.get("dinner")?.lines[1]?.grams;
      return own && exactText(own);
    };
    expect(grams(alone)).toBe(grams(exactly));
  });

  it("speaks of its key in every dish, or of one dish, which wins", () => {
    const side = dish("Side", { ...beans, amount: "1 can, drained" });
    const people = [energy("cox", 900)];
    const units = (lines: Record<string, string>): (string | undefined)[] => {
      const plan = planned(people, { lines }, { stew, side });
      return ["stew", "side"].map((name) => plan.dish("dinner", name).pots[0]?.sheet.lines[0]?.amount.unit);
    };
    expect(units({ beans: "weigh" })).toEqual(["g", "g"]);
    expect(units({ "side/beans": "weigh" })).toEqual(["can, drained", "g"]);
    expect(units({ "dinner/side/beans": "can, drained", beans: "weigh" })).toEqual(["g", "can, drained"]);
  });

  it("is a person's own for what is added for them", () => {
    const bowl = dish("Bowl", oats, {
      key: "nuts",
      food: "walnuts",
      amount: "1 cup, chopped",
      added: "serving",
    });
    const people = [energy("cox", 700), { ...energy("bow", 800), lines: { nuts: "weigh" } }];
    const units = (plan: Plan): (string | undefined)[] =>
      plan.dish("dinner").servings.map(({ added }) => added?.lines[0]?.amount.unit);
    expect(units(planned(people, {}, bowl))).toEqual(["cup, chopped", "g"]);
    // The plan's own holds for whoever measures in its kitchen.
    expect(units(planned(people, { lines: { nuts: "weigh" } }, bowl))).toEqual(["g", "g"]);
    const away = [{ ...energy("cox", 700), kitchen: galley }, energy("bow", 800)];
    expect(units(planned(away, { lines: { nuts: "weigh" } }, bowl))).toEqual(["cup, chopped", "g"]);
  });

  it("is refused where it stands, with all that is wrong", () => {
    const dosed = dish("Stew", beans, { ...oats, scaling: "per-portion" });
    const people = [{ ...energy("cox", 400), lines: { bean: "weigh" } }];
    const lines = { oats: "weigh", beans: "furlong", "lunch/beans": "weigh" };
    const { faults } = errorOf(() => planned(people, { lines }, dosed));
    expect(faults.map(({ code, path }) => `${code} ${path.join(".")}`)).toEqual([
      "rounding-malformed lines.oats",
      "amount-unknown-unit lines.beans",
      "line-unknown lines.lunch/beans",
      "line-unknown people.0.lines.bean",
    ]);
    expect(faults.at(-1)?.hint).toContain("beans");
    const { kitchen: _, ...none } = { kitchen: undefined, lines: { beans: "weigh" } };
    const bare = errorOf(() =>
      portionPlan({ meals: [{ id: "m", dishes: stew }], people: [{ id: "cox" }], ...none }),
    );
    expect(bare.faults.map(({ code, path }) => `${code} ${path.join(".")}`)).toEqual([
      "plan-malformed lines",
    ]);
    const list = errorOf(() => planned([energy("cox", 400)], { lines: ["weigh"] as never }));
    expect(list.faults.map(({ path }) => path.join("."))).toEqual(["lines"]);
  });
});

describe("what is too coarse a measure", () => {
  const tofu: LineInput = {
    key: "tofu",
    food: "tofu-firm",
    amount: "1/2 block",
    added: "serving",
    scaling: "adjustable",
  };
  const walnuts: LineInput = {
    key: "walnuts",
    food: "walnuts",
    amount: "40 g",
    added: "serving",
    scaling: "adjustable",
  };
  const bowl = dish("Bowl", { ...beans, amount: "1 can, drained" }, oats, tofu, walnuts);
  const crew = [400, 450, 500, 550, 600, 700].map((exactly, i): PersonInput => {
    const demands: Demand[] = [
      { of: "energy", exactly },
      { of: "calcium", most: 250, firm: true },
    ];
    return { id: `seat${i + 1}`, demands };
  });

  it("is weighed where a limit leaves no half block, and leaves nothing else unmeasured", () => {
    const plan = planned(crew, {}, bowl);
    expect(plan.portions.map(({ drift }) => drift?.status)).not.toContain("unrounded");
    for (const { added } of plan.dish("dinner").servings) {
      for (const { amount } of added?.lines ?? []) {
        expect(["g", "block"]).toContain(amount.unit);
        expect(amount.value.div(amount.unit === "g" ? 5 : "0.5").d).toBe(1n);
      }
    }
    for (const portion of plan.portions) {
      const limit = portion.drift?.demands.find(({ of }) => of === "calcium");
      expect(limit?.holds).toBe(true);
    }
  });

  it("stays as it is without a scale, and is the only one to", () => {
    const people = crew.slice(0, 2);
    const plan = planned(
      people,
      { kitchen: hut },
      dish("Bowl", { ...oats, amount: "1 cup" }, tofu, { ...walnuts, amount: "1/2 cup, chopped" }),
    );
    for (const { person } of people.map(({ id }) => ({ person: id }))) {
      const { drift, kitchenNotes } = plan.portion(person, "dinner");
      expect(drift?.status).not.toBe("unrounded");
      expect(kitchenNotes.filter(({ code }) => code === "not-measurable").map(({ line }) => line)).toEqual([
        "tofu",
      ]);
      const nuts = plan.dish("dinner").serving(person).added?.lines[1]?.amount;
      expect(nuts?.value.times(4).d).toBe(1n);
    }
  });
});

describe("a kitchen without a scale", () => {
  const salt: LineInput = { key: "salt", food: "salt", amount: "3.1 g", scaling: "per-portion" };
  const plain = (html: string): string => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");

  it("measures what was weighed by cup and spoon, and tells so on the card", () => {
    const porridge = dish("Porridge", { ...oats, amount: "210 g" }, salt);
    const plan = portionPlan({
      meals: [{ id: "m", dishes: porridge }],
      people: [{ id: "cox" }],
      kitchen: hut,
    });
    const [pot] = plan.dish("m").pots;
    // A US cup of rolled oats weighs 81 g (SR28, NDB 08120): of 105 g the nearest are 1 1/4 cups and a spoon.
    expect(amounts(pot?.sheet)[0]).toMatch(/^1 1\/4 cups \+ /);
    const card = plain(personCard(plan, "cox"));
    expect(card).toMatch(/Oats, dry 1¼ cups \+ /);
    // A teaspoon of salt weighs 6 g (NDB 02047): 1.55 g are a quarter of one and a little.
    expect(card).toMatch(/Salt, dry the same for everyone about ¼ tsp/);
    expect(card).toContain("Salt: the kitchen cannot measure this amount; it stays as it is");
    expect(toText(plan, { parts: "all" })).toContain("Salt: the kitchen cannot measure this amount");
  });

  it("shares a pot by parts of it, since grams say nothing there", () => {
    const plan = planned(
      [energy("cox", 300), energy("bow", 600)],
      { kitchen: hut },
      dish("Porridge", { ...oats, amount: "1 cup" }),
    );
    const card = plain(personCard(plan, "cox"));
    expect(card).toMatch(/From the pot 33% of it/);
    expect(card).toContain("shares of the pot are not weighed: the kitchen has no scale");
  });

  it("does not measure by cup what does not say what one weighs, or is to be trimmed first", () => {
    const other = dish(
      "Stew",
      { key: "kale", food: "kale-raw", amount: "200 g", weighed: "as-purchased" },
      { key: "nuts", food: "walnuts", amount: "60 g" },
    );
    const plan = portionPlan({ meals: [{ id: "m", dishes: other }], people: [{ id: "cox" }], kitchen: hut });
    // Four forms of a cup of walnuts weigh from 80 to 120 g (SR28, NDB 12155).
    expect(plan.dish("m").pots[0]?.notes.map(({ line }) => line)).toEqual(["kale", "nuts"]);
    expect(plain(personCard(plan, "cox"))).toContain("Kale, raw: the kitchen cannot measure this amount");
  });
});
