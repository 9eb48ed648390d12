/**
 * Who is told what of a food, and who is not: person, food, codes, each row by hand from the document that its
 * table names. A row lists every code that meets the person, so that one which ought to be silent is.
 */
import { describe, expect, it } from "vitest";
import type { FoodInput } from "../../src/food/food.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import type { Condition, Person } from "../../src/person/person.ts";
import { cautionsFor } from "../../src/person/portion/cautions.ts";
import { sheet } from "../../src/sheet/build.ts";

const woman: Person = { sex: "female", age: 30, mass: "60 kg" };
const pregnant: Person = { ...woman, pregnant: 2 };
const feeding: Person = { ...woman, breastfeeding: true };
const aged = (age: number): Person => ({ ...woman, age, mass: age < 10 ? "16 kg" : "60 kg" });
const on = (...conditions: Condition[]): Person => ({ ...woman, conditions });

const named = (name: string, more: Partial<FoodInput> = {}): FoodInput => ({
  id: "own",
  name,
  source: "made up for a test",
  per100g: {},
  ...more,
});

/** A starter food by its id, or one that nothing is known of but its name. */
type Row = readonly [food: string | FoodInput, who: Person, codes: string, amount?: string];

function told([food, who, , amount = "50 g"]: Row): string {
  const input = typeof food === "string" ? starterFoods.get(food) : food;
  const lines = [{ food: input.id, amount }];
  return cautionsFor(sheet({ name: "Plate", portions: 1, lines }, foodTable([input])), who)
    .filter(({ because }) => because.length > 0)
    .map(({ code }) => code)
    .sort()
    .join(" ");
}

function table(what: string, rows: readonly Row[]): void {
  describe(what, () => {
    rows.forEach((row, i) => {
      const [food, who, codes] = row;
      const name = typeof food === "string" ? food : food.name;
      const state = [
        ...(who.conditions ?? []),
        who.pregnant ? "pregnant" : who.breastfeeding ? "breastfeeding" : "",
      ];
      it(`${i + 1}: ${name}, ${who.age} ${state.join(" ")}: ${codes || "nothing"}`, () => {
        expect(told(row)).toBe(codes);
      });
    });
  });
}

// NHS (England), foods to avoid in pregnancy: pâté, raw and cured meat, soft cheese. UK and Scottish food standards
// agencies 2023: smoked and cured fish. US Office on Women's Health: raw sprouts.
table("in pregnancy", [
  [named("Smoked salmon"), pregnant, "oily-fish-pregnancy smoked-fish-pregnancy"],
  [named("Smoked salmon"), woman, ""],
  [named("Smoked salmon"), feeding, "oily-fish-pregnancy"],
  [named("Gravadlax"), pregnant, "smoked-fish-pregnancy"],
  [named("Salmon, smoked, baked", { state: "cooked" }), pregnant, "oily-fish-pregnancy"],
  [named("Smoked mackerel"), pregnant, "oily-fish-pregnancy"],
  [named("Smoked paprika"), pregnant, ""],
  [named("Vegan smoked salmon", { origin: "plant" }), pregnant, ""],
  [named("Chicken liver pâté"), pregnant, "liver-pregnancy pate-pregnancy"],
  [named("Lentil pâté"), pregnant, "pate-pregnancy"],
  [named("Lentil pâté"), feeding, ""],
  [named("Pâte brisée"), pregnant, ""],
  [named("Alfalfa sprouts"), pregnant, "sprouts-pregnancy"],
  [named("Beansprouts"), pregnant, "sprouts-pregnancy"],
  [named("Beansprouts, boiled", { state: "cooked" }), pregnant, ""],
  ["brussels-sprouts-raw", pregnant, ""],
  [named("Alfalfa sprouts"), woman, ""],
  ["beef-mince-10-fat-raw", pregnant, "raw-meat-pregnancy"],
  ["lamb-leg-lean-raw", pregnant, "raw-meat-pregnancy"],
  ["chicken-breast-raw", pregnant, "raw-meat-pregnancy"],
  ["chicken-breast-roasted", pregnant, ""],
  ["beef-mince-10-fat-browned", pregnant, ""],
  ["beef-mince-10-fat-raw", woman, ""],
  [named("Beef carpaccio"), pregnant, "raw-meat-pregnancy"],
  [named("Salami"), pregnant, "cured-meat-pregnancy"],
  [named("Chorizo, fried", { state: "cooked" }), pregnant, ""],
  [named("Salami"), feeding, ""],
  [named("Serrano chillies"), pregnant, ""],
  [named("Brie"), pregnant, "soft-cheese-pregnancy"],
  [named("Queso fresco"), pregnant, "soft-cheese-pregnancy"],
  ["cheddar", pregnant, ""],
  ["mozzarella", pregnant, ""],
  ["coffee-brewed", pregnant, "caffeine-pregnancy"],
  ["coffee-brewed", feeding, "caffeine-pregnancy"],
  ["coffee-brewed", woman, ""],
]);

// Kidshealth (New Zealand) 2021: no whole nuts under 5. Chief Medical Officer
// for England 2009: no alcohol before 15, best none before 18. NHS (England): no shark, swordfish or marlin under 16.
table("of children", [
  ["almonds", aged(4), "nuts-whole-child"],
  ["hazelnuts", aged(4.9), "nuts-whole-child"],
  ["peanuts-raw", aged(2), "nuts-whole-child"],
  ["almonds", aged(5), ""],
  ["peanut-butter-unsalted", aged(4), ""],
  [named("Almonds, ground"), aged(4), ""],
  [named("Almond milk"), aged(4), ""],
  [named("Milk chocolate with whole hazelnuts"), aged(4), "nuts-whole-child"],
  ["nutmeg-ground", aged(4), ""],
  ["coconut-desiccated", aged(4), ""],
  ["butternut-squash-raw", aged(4), ""],
  [named("Red wine"), aged(17), "alcohol-child"],
  [named("Red wine"), aged(18), ""],
  [named("Red wine"), { ...aged(17), pregnant: 1 }, "alcohol-child alcohol-pregnancy"],
  [named("Beer, alcohol-free"), aged(12), ""],
  [named("Ripe banana", { per100g: { alcohol: "0.2" } }), aged(12), ""],
  [named("Swordfish"), aged(15), "mercury-fish"],
  [named("Swordfish"), aged(17), ""],
  ["kelp-raw", aged(17), "seaweed-growth"],
  ["kelp-raw", aged(18), ""],
]);

// CSM and MHRA 2004: cranberry with warfarin. British Thyroid Foundation: soya with levothyroxine. ANSES 2018:
// seaweed with thyroid and kidney disease and with lithium. NHS (England): lithium and salt.
table("with medicines", [
  [named("Cranberry juice"), on("warfarin"), "warfarin-cranberry"],
  [named("Dried cranberries"), on("warfarin"), "warfarin-cranberry"],
  [named("Cranberry beans, boiled"), on("warfarin"), ""],
  [named("Cranberry juice"), woman, ""],
  ["grapefruit-raw", on("warfarin"), "warfarin-grapefruit"],
  ["tofu-firm", on("levothyroxine"), "levothyroxine-soya"],
  ["soya-drink-unsweetened-fortified", on("levothyroxine"), "levothyroxine-soya"],
  ["edamame-frozen-cooked", on("levothyroxine"), "levothyroxine-soya"],
  ["soy-sauce", on("levothyroxine"), ""],
  ["milk-whole", on("levothyroxine"), ""],
  ["tofu-firm", on("thyroid-disease"), ""],
  ["tofu-firm", woman, ""],
  ["kelp-raw", on("levothyroxine"), "seaweed-thyroid"],
  ["kelp-raw", on("lithium"), "seaweed-thyroid"],
  ["kelp-raw", on("diabetes"), ""],
  ["feta", on("lithium"), "lithium-salt"],
  ["salt", on("lithium"), "lithium-salt", "1 g"],
  ["salt", on("lithium"), "", "0.8 g"],
  ["salt", woman, ""],
]);

// British National Formulary, monoamine-oxidase inhibitors: what to leave out.
table("on MAO inhibitors", [
  ["cheddar", on("mao-inhibitors"), "maoi-tyramine"],
  ["parmesan", on("mao-inhibitors"), "maoi-tyramine"],
  [named("Salami"), on("mao-inhibitors"), "maoi-tyramine"],
  [named("Pickled herring"), on("mao-inhibitors"), "maoi-tyramine"],
  [named("Yeast extract"), on("mao-inhibitors"), "maoi-tyramine"],
  ["soy-sauce", on("mao-inhibitors"), "maoi-tyramine"],
  ["tempeh", on("mao-inhibitors"), "maoi-tyramine"],
  [named("Beer, alcohol-free"), on("mao-inhibitors"), "maoi-tyramine"],
  ["cottage-cheese-low-fat", on("mao-inhibitors"), ""],
  ["ricotta", on("mao-inhibitors"), ""],
  ["milk-whole", on("mao-inhibitors"), ""],
  ["chicken-breast-roasted", on("mao-inhibitors"), ""],
  ["cider-vinegar", on("mao-inhibitors"), ""],
  ["cheddar", woman, ""],
]);

// Regulation (EU) No 1169/2011, Annex III: aspartame. European guidelines 2017: phenylalanine counts in all food.
table("with phenylketonuria", [
  [named("Diet cola", { per100g: { protein: 0 } }), on("phenylketonuria"), "pku-aspartame"],
  [named("Aspartame", { per100g: { protein: 0 } }), on("phenylketonuria"), "pku-aspartame"],
  [named("Aspartame", { per100g: { protein: 0 } }), woman, ""],
  ["chicken-breast-roasted", on("phenylketonuria"), "pku-phenylalanine"],
  ["lentils-boiled", on("phenylketonuria"), "pku-phenylalanine"],
  [named("Sugar", { per100g: { protein: 0, phenylalanine: 0 } }), on("phenylketonuria"), ""],
  ["chicken-breast-roasted", woman, ""],
]);

// EASL 2022, haemochromatosis. A portion's 2.1 mg of iron: 15 % of 14 mg, Regulation (EU) No 1169/2011, Annex XIII.
table("with haemochromatosis", [
  [named("Oysters", { per100g: { iron: 1 } }), on("haemochromatosis"), "haemochromatosis-shellfish"],
  [named("Oyster mushrooms", { per100g: { iron: 1 } }), on("haemochromatosis"), ""],
  ["mussels-cooked", on("haemochromatosis"), "haemochromatosis-iron"],
  [named("Cereal", { per100g: { iron: 12 } }), on("haemochromatosis"), "haemochromatosis-iron"],
  [named("Cereal", { per100g: { iron: "4.1" } }), on("haemochromatosis"), ""],
  [
    named("Red wine", { per100g: { iron: "0.5", alcohol: 10 } }),
    on("haemochromatosis"),
    "haemochromatosis-alcohol",
  ],
  [named("Cereal", { per100g: { iron: 12 } }), woman, ""],
  [named("Oysters"), woman, ""],
]);

// NICE (England), NG136: potassium salt is not for older people, either.
table("of older people", [
  [named("Low-sodium salt"), aged(65), "potassium-salt"],
  [named("Low-sodium salt"), aged(64), ""],
]);
