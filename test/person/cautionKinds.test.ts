/**
 * Who is warned of what, and who is not. The lists of foods are those of the bodies that the meetings
 * name: NHS 111 Wales and NHS Scotland for pregnancy, FDA and EPA for mercury, Coeliac UK for oats.
 */
import { describe, expect, it } from "vitest";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import type { Person } from "../../src/person/person.ts";
import { cautionsFor } from "../../src/person/portion/cautions.ts";
import { sheet } from "../../src/sheet/build.ts";

const rower: Person = { sex: "female", age: 30, mass: "60 kg" };
const pregnant: Person = { ...rower, pregnant: 2 };
const on = (...conditions: NonNullable<Person["conditions"]>): Person => ({ ...rower, conditions });

/** Codes of what meets the person in one line of a food. */
function met(food: FoodInput, person: Person, amount = "50 g"): string[] {
  const plate = sheet({ name: "Plate", portions: 1, lines: [{ food: food.id, amount }] }, foodTable([food]));
  return cautionsFor(plate, person)
    .filter(({ because }) => because.length > 0)
    .map(({ code }) => code);
}

const starter = (id: string): FoodInput => starterFoods.get(id);
const own = (name: string, more: Partial<FoodInput> = {}): FoodInput => ({
  id: "own",
  name,
  source: "made up for a test",
  per100g: {},
  ...more,
});

describe("ordinary foods", () => {
  it.each(
    `oats-rolled-dry soya-drink-unsweetened-fortified mussels-cooked cod-baked prawns-cooked chicken-breast-roasted
    milk-whole yoghurt-plain-whole cheddar parmesan feta mozzarella ricotta cottage-cheese-low-fat
    egg-hard-boiled apples-raw bananas-raw carrots-raw potatoes-boiled rice-white-long-boiled pasta-dry lentils-red-dry
    kidney-beans-red-boiled almonds olive-oil ginger-root-raw cinnamon-ground cider-vinegar water-tap honey
    buckwheat-roasted-dry couscous-dry quinoa-dry tofu-firm tempeh chia-seeds laver-raw butter-salted`.split(
      /\s+/,
    ),
  )("%s: nothing is said in pregnancy", (id) => {
    expect(met(starter(id), pregnant)).toEqual([]);
  });

  it.each([
    ["ginger-root-raw", "100 g"],
    ["oats-rolled-dry", "80 g"],
    ["rice-white-long-boiled", "200 g"],
    ["salmon-wild-raw", "140 g"],
    ["mussels-cooked", "100 g"],
    ["cinnamon-ground", "1.3 g"],
    ["olive-oil", "5 g"],
    ["bananas-raw", "120 g"],
  ])("%s, %s: nothing is said on warfarin", (id, amount) => {
    expect(met(starter(id), on("warfarin"), amount)).toEqual([]);
  });

  it.each(["rice-brown-long-dry", "buckwheat-roasted-dry", "maize-starch", "potatoes-boiled", "milk-whole"])(
    "%s: nothing is said with coeliac disease",
    (id) => {
      expect(met(starter(id), on("coeliac-disease"))).toEqual([]);
    },
  );

  it.each(["chicken-breast-roasted", "kale-raw", "salmon-farmed-baked", "egg-hard-boiled", "olive-oil"])(
    "%s: nothing is said with diabetes or high blood pressure",
    (id) => {
      expect(met(starter(id), on("diabetes", "hypertension"))).toEqual([]);
    },
  );
});

describe("vitamin K on warfarin", () => {
  // Regulation (EU) No 1169/2011, Annex XIII: 15 % of 75 µg, 11.25 µg, is a significant amount in a portion.
  it("is told from a significant amount on", () => {
    const oil = own("Oil", { per100g: { vitaminK: "60" } });
    expect(met(oil, on("warfarin"), "18.74 g")).toEqual([]);
    expect(met(oil, on("warfarin"), "18.75 g")).toEqual(["warfarin-vitamin-k"]);
  });

  it("is told of greens that say nothing of it, and of leafy ones however little", () => {
    expect(met(own("Swiss chard"), on("warfarin"))).toEqual(["warfarin-vitamin-k"]);
    expect(met(own("Chicken soup"), on("warfarin"))).toEqual([]);
    expect(met(starter("parsley-fresh"), on("warfarin"), "0.5 g")).toEqual(["warfarin-vitamin-k"]);
  });
});

describe("in pregnancy", () => {
  it.each<[string, Partial<FoodInput>, readonly string[]]>([
    ["Tuna steak", {}, ["tuna-pregnancy"]],
    ["Smoked trout", { allergens: ["fish"] }, ["smoked-fish-pregnancy", "oily-fish-pregnancy"]],
    ["Kippers", { group: "fish" }, ["oily-fish-pregnancy"]],
    ["Swordfish", {}, ["mercury-fish"]],
    ["Marlin, raw", { allergens: ["fish"] }, ["mercury-fish"]],
    ["King mackerel", {}, ["mercury-fish"]],
    ["Tuna, bigeye", {}, ["mercury-fish"]],
    ["Brie", { allergens: ["milk"] }, ["soft-cheese-pregnancy"]],
    ["Chèvre, ripe", {}, ["soft-cheese-pregnancy"]],
    ["Camembert, baked", { state: "cooked" }, []],
    ["Goats' cheese, mould-ripened", {}, ["soft-cheese-pregnancy"]],
    ["Liver sausage", {}, ["liver-pregnancy"]],
    ["Pâté", { origin: "animal" }, ["liver-pregnancy", "pate-pregnancy"]],
    ["Mushroom pâté", {}, ["pate-pregnancy"]],
    ["Leber", { per100g: { retinol: 9000 } }, ["liver-pregnancy"]],
    ["Eggs, medium", { group: "eggs" }, ["raw-egg-pregnancy"]],
    ["Egg white, pasteurised", { group: "eggs" }, []],
    ["Egg noodles", { allergens: ["egg", "wheat"], state: "dry" }, []],
    ["Red wine", {}, ["alcohol-pregnancy"]],
    ["Stew with beer", { per100g: { alcohol: 2 } }, ["alcohol-pregnancy"]],
    ["White wine vinegar", {}, []],
    ["Beer, alcohol-free", {}, []],
    ["Ripe banana", { per100g: { alcohol: "0.2" } }, []],
    ["Guaraná", {}, ["caffeine-pregnancy"]],
    ["Energy gel", {}, ["caffeine-pregnancy"]],
    ["Energy gel", { per100g: { caffeine: 0 } }, []],
    ["Cappuccino", { per100g: { caffeine: { below: 1 } } }, []],
    ["Decaf coffee", {}, []],
    ["Steak", {}, []],
    ["Vegan tuna", { origin: "plant" }, []],
    ['Chickpea "tuna"', { allergens: [] }, []],
  ])("%s %o: %o", (name, more, expected) => {
    expect(met(own(name, more), pregnant)).toEqual(expected);
    expect(met(own(name, more), rower)).toEqual([]);
  });

  it("is told of a food that carries the meeting's code, whatever it is called", () => {
    const caution = { code: "tuna-pregnancy", text: "Höchstens vier Dosen.", source: "made up" };
    expect(met(own("Thunfisch", { cautions: [caution] }), pregnant)).toEqual(["tuna-pregnancy"]);
  });
});

describe("with coeliac disease", () => {
  it.each<[string, Partial<FoodInput>, readonly string[]]>([
    ["Spelt flour", { allergens: ["gluten"] }, ["coeliac-gluten"]],
    ["Spelt flour", {}, ["coeliac-gluten"]],
    ["Oat biscuits", { allergens: ["gluten"] }, ["coeliac-gluten"]],
    ["Oats", { allergens: ["gluten", "wheat"] }, ["coeliac-gluten"]],
    ["Oats, gluten-free", { allergens: [] }, ["coeliac-oats"]],
    ["Oatmeal", {}, ["coeliac-oats"]],
    ["Bread, gluten-free", { allergens: [] }, []],
    ["Stock powder", {}, ["coeliac-unknown"]],
    ["Stock powder", { allergens: ["celery"] }, []],
  ])("%s %o: %o", (name, more, expected) => {
    expect(met(own(name, more), on("coeliac-disease"))).toEqual(expected);
  });

  it("is told once of all lines of a kind", () => {
    const lines = ["pasta-dry", "barley-pearl-dry", "milk-whole"].map((food) => ({ food, amount: "50 g" }));
    const plate = sheet({ name: "Plate", portions: 1, lines }, starterFoods);
    const found = cautionsFor(plate, on("coeliac-disease"));
    expect(found.map(({ code, lines }) => [code, lines])).toEqual([
      ["coeliac-gluten", ["pasta-dry", "barley-pearl-dry"]],
    ]);
  });
});

describe("with diabetes", () => {
  it("is told from a carbohydrate portion on, unless insulin says it already", () => {
    const sugar = own("Sugar", { per100g: { availableCarbohydrate: 100 } });
    expect(met(sugar, on("diabetes"), "14.9 g")).toEqual([]);
    expect(met(sugar, on("diabetes"), "15 g")).toEqual(["diabetes-carbohydrate"]);
    expect(met(sugar, on("diabetes", "insulin"), "15 g")).toEqual(["insulin-carbohydrate"]);
  });
});

describe("with high blood pressure", () => {
  // 15 % of 6 g, the day's reference intake of Regulation (EU) No 1169/2011, Annex XIII; sodium is 0.4 of salt.
  it("is told from 0.9 g of salt in the portion on, with the salty lines", () => {
    const broth = own("Broth", { per100g: { sodium: 360 } });
    expect(met(broth, on("hypertension"), "99.9 g")).toEqual([]);
    expect(met(broth, on("hypertension"), "100 g")).toEqual(["hypertension-salt"]);
    const lines = [
      { food: "rice-white-long-boiled", amount: "200 g" },
      { food: "soy-sauce", amount: "10 ml" },
    ];
    const [first] = cautionsFor(
      sheet({ name: "Rice", portions: 1, lines }, starterFoods),
      on("hypertension"),
    );
    expect(first?.code).toBe("hypertension-salt");
    expect(first?.lines).toEqual(["soy-sauce"]);
    expect(first?.amounts.map(({ of }) => of)).toEqual(["salt"]);
  });

  it("is told of a salty food that says nothing of its salt", () => {
    expect(met(own("Stock cube"), on("hypertension"), "5 g")).toEqual(["hypertension-salt"]);
    expect(met(own("Crispbread, unsalted"), on("hypertension"))).toEqual([]);
  });

  // NICE NG136: salt substitutes of potassium chloride, and who is not to use them.
  it.each<Person>([on("hypertension"), on("kidney-disease"), on("diabetes"), pregnant])(
    "and others, is told of salt made with potassium: %o",
    (person) => {
      const lean = own("Low sodium salt", { per100g: { sodium: 13000, potassium: 34000 } });
      expect(met(lean, person, "1 g")).toContain("potassium-salt");
      expect(met(starter("salt"), person, "1 g")).not.toContain("potassium-salt");
      expect(met(lean, rower, "1 g")).toEqual([]);
    },
  );
});

describe("what is to be left out", () => {
  it("stands before what is to be limited, whatever the order of the lines", () => {
    const lines = ["coffee-brewed", "tuna-light-canned-water-drained", "egg-raw", "beef-liver-braised"].map(
      (food) => ({ food, amount: "50 g" }),
    );
    const found = cautionsFor(sheet({ name: "Plate", portions: 1, lines }, starterFoods), pregnant);
    expect(found.map(({ code }) => code)).toEqual([
      "liver-pregnancy",
      "raw-egg-pregnancy",
      "tuna-pregnancy",
      "caffeine-pregnancy",
      "vitamin-a-liver",
    ]);
  });
});
