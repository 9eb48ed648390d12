import { describe, expect, it } from "vitest";
import { type Allergen, allergens } from "../../src/food/allergens.ts";
import { componentIds, isComponentId } from "../../src/food/components.ts";
import type { FoodInput } from "../../src/food/food.ts";
import { derivations } from "../../src/food/starter/derivation.ts";
import { shelves, starterFoodInputs } from "../../src/food/starter/index.ts";
import { iodine } from "../../src/food/starter/iodine.ts";
import { starterLenders } from "../../src/food/starter/lenders.ts";
import { panels } from "../../src/food/starter/row.ts";
import { FoodTable, foodTable } from "../../src/food/table.ts";
import * as foods from "../../src/foods.ts";
import { starterFoods } from "../../src/foods.ts";
import { exact } from "../../src/number/exact.ts";
import { referenceIntakes } from "../../src/person/intakes/referenceIntakes.ts";
import type { Person } from "../../src/person/person.ts";
import { doseCheck } from "../../src/person/portion/doses.ts";
import { sheet } from "../../src/sheet/build.ts";

const rows = shelves.flat().flatMap((shelf) => shelf.foods);

function food(id: string): FoodInput {
  return starterFoods.get(id);
}

describe("starter foods", () => {
  it("span the groups of an everyday kitchen", () => {
    expect(starterFoodInputs.length).toBeGreaterThanOrEqual(90);
    const groups = new Set(starterFoodInputs.map((f) => f.group));
    expect([...groups].sort()).toEqual(
      [
        "cocoa",
        "dairy",
        "dried fruit",
        "drinks",
        "eggs",
        "fish",
        "fruit",
        "grains",
        "herbs",
        "leavening",
        "meat",
        "nuts",
        "oils",
        "poultry",
        "pulses",
        "salt",
        "sauces",
        "seaweed",
        "seeds",
        "soya",
        "spices",
        "sweeteners",
        "vegetables",
        "vinegar",
      ].sort(),
    );
  });

  it("pass the checks that any caller's foods must pass", () => {
    expect(foodTable(starterFoodInputs).ids).toEqual(starterFoods.ids);
  });

  it("have plain ids, no two alike, and no two of one source record", () => {
    const ids = starterFoodInputs.map((f) => f.id);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(starterFoodInputs.map((f) => f.name)).size).toBe(ids.length);
    expect(new Set(starterFoodInputs.map((f) => f.source)).size).toBe(ids.length);
  });

  it("say state, group, origin, aisle and source", () => {
    for (const f of starterFoodInputs) {
      expect(f).toMatchObject({
        state: expect.any(String),
        group: expect.any(String),
        origin: expect.any(String),
        aisle: expect.any(String),
      });
      expect(f.source).toMatch(/^USDA SR28, NDB \d{5}(, by dry matter)?$/);
    }
  });

  it("name a food dry and cooked apart", () => {
    const stem = (f: FoodInput) => f.id.replace(/-(dry|raw|boiled|cooked|roasted|baked)(-drained)?$/, "");
    const states = new Map<string, Set<string | undefined>>();
    for (const f of starterFoodInputs) states.set(stem(f), (states.get(stem(f)) ?? new Set()).add(f.state));
    for (const pair of [
      "lentils",
      "chickpeas",
      "quinoa",
      "rice-brown-long",
      "bulgur",
      "couscous",
      "pasta",
      "soybeans",
    ]) {
      expect([pair, states.get(pair)]).toEqual([pair, new Set(["dry", "cooked"])]);
    }
  });

  it("write as many figures in a panel as it has columns", () => {
    for (const row of rows) {
      for (const [name, columns] of Object.entries(panels) as [keyof typeof panels, readonly unknown[]][]) {
        const cells = row[name]?.split(" ");
        if (cells) expect([row.id, name, cells.length]).toEqual([row.id, name, columns.length]);
        for (const cell of cells ?? []) expect(cell).toMatch(/^(-|(0|[1-9]\d*)(\*|[A-Za-z]\d?)?)$/);
      }
    }
  });

  it("hold components of the registry only, and none that the library derives", () => {
    for (const f of starterFoodInputs) {
      for (const id of Object.keys(f.per100g)) expect(isComponentId(id)).toBe(true);
      for (const derived of ["salt", "availableCarbohydrate", "niacinEquivalents", "addedSugars"] as const) {
        expect(f.per100g).not.toHaveProperty(derived);
      }
    }
  });

  it("keep what the source leaves out missing", () => {
    for (const id of [
      "chromium",
      "molybdenum",
      "biotin",
      "chloride",
      "phytate",
      "oxalate",
      "vitaminARe",
    ] as const) {
      expect(starterFoodInputs.filter((f) => f.per100g[id] !== undefined)).toEqual([]);
    }
    // Kale's amino acids are not in SR28; a zero there would be a false one.
    expect(food("kale-raw").per100g.lysine).toBeUndefined();
    const missing = (id: string) => componentIds.filter((c) => food(id).per100g[c] === undefined).length;
    expect(missing("soya-drink-unsweetened-fortified")).toBeGreaterThan(50);
  });

  it("mark what the source assumed to be zero, and nothing else, as presumed", () => {
    expect(food("oats-rolled-dry").per100g.cholesterol).toEqual({ value: "0", presumed: true });
    // SR28, NDB 08120: vitamin B12 0.00 with source code 4 and no derivation; NDB 09040: analysed.
    expect(food("oats-rolled-dry").per100g.vitaminB12).toMatchObject({
      value: "0.00",
      calculated: expect.any(String),
    });
    expect(food("bananas-raw").per100g.folicAcid).toEqual({ value: "0", presumed: true });
    for (const f of starterFoodInputs) {
      for (const figure of Object.values(f.per100g)) {
        if (typeof figure === "object" && "presumed" in figure) expect(Number(figure.value)).toBe(0);
      }
    }
  });

  it("name lenders that are used, and use no letter that says nothing", () => {
    const letters = new Set<string>();
    for (const row of rows) {
      const cells = Object.keys(panels).flatMap((name) => row[name as keyof typeof panels]?.split(" ") ?? []);
      const places = new Set(cells.flatMap((cell) => /[A-Za-z](\d)$/.exec(cell)?.[1] ?? []));
      const named = row.lenders?.split(" ") ?? [];
      expect([row.id, [...places].sort()]).toEqual([row.id, named.map((_, i) => String(i))]);
      for (const ndb of named)
        expect([row.id, ndb, starterLenders[ndb]]).toEqual([row.id, ndb, expect.any(String)]);
      for (const cell of cells) for (const letter of cell.match(/[A-Za-z]/g) ?? []) letters.add(letter);
    }
    for (const letter of letters) expect([letter, derivations[letter]]).toEqual([letter, expect.anything()]);
    expect(Object.keys(derivations).filter((letter) => !letters.has(letter))).toEqual([]);
    expect(
      Object.keys(starterLenders).filter((ndb) => !rows.some((row) => row.lenders?.includes(ndb))),
    ).toEqual([]);
  });

  it("read a food's figures once", () => {
    const oats = food("oats-rolled-dry");
    expect(oats.per100g).toBe(oats.per100g);
  });

  it("are plain data: text and back changes nothing", () => {
    expect(JSON.parse(JSON.stringify(starterFoodInputs))).toEqual(starterFoodInputs.map((f) => ({ ...f })));
  });
});

describe("fatty acids of starter foods", () => {
  it("give linoleic and alpha-linolenic acid plainly where they were measured", () => {
    // SR28, NDB 04582: 675 = 18.640, 851 = 9.137 (618 and 619 are 19.005 and 9.137).
    expect(food("rapeseed-oil").per100g).toMatchObject({
      linoleicAcid: "18.640",
      alphaLinolenicAcid: "9.137",
    });
  });

  it("let the undifferentiated acid of a plant food stand in, and show it", () => {
    // SR28, NDB 12220: 618 = 5.903, 619 = 22.813; neither 675 nor 851.
    expect(food("linseed").per100g.alphaLinolenicAcid).toEqual({
      value: "22.813",
      derived: "18:3 undifferentiated, taken for 18:3 n-3",
    });
    expect(food("linseed").per100g.omega3).toEqual({
      value: "22.813",
      derived: "18:3 undifferentiated + EPA + DPA + DHA",
    });
  });

  it("let nothing stand in for animal foods, algae, fungi and yeast, nor where gamma-linolenic acid is reported", () => {
    // Spirulina's 18:3 is gamma-linolenic acid, an omega-6 (common knowledge of the trade, no source).
    const silent = [
      "cod-raw",
      "milk-whole",
      "spirulina-dried",
      "kelp-raw",
      "mushrooms-white-raw",
      "yeast-bakers-dried",
    ];
    for (const id of [...silent, "raisins"]) {
      expect([id, food(id).per100g.alphaLinolenicAcid, food(id).per100g.omega3]).toEqual([
        id,
        undefined,
        undefined,
      ]);
    }
    for (const id of silent) expect([id, food(id).per100g.omega6]).toEqual([id, undefined]);
    for (const f of starterFoodInputs.filter((each) => each.origin !== "plant")) {
      expect(JSON.stringify([f.per100g.linoleicAcid, f.per100g.alphaLinolenicAcid])).not.toMatch(/taken for/);
    }
  });

  it("sum omega acids exactly, naming the terms", () => {
    // SR28, NDB 01123: 675 = 1.531, 685 = 0.012, 620 = 0.188; 851 = 0.036, EPA 0, DPA 0.007, DHA 0.058.
    expect(food("egg-raw").per100g.omega6).toEqual({ value: "1.731", derived: "18:2 n-6 + 18:3 n-6 + 20:4" });
    expect(food("egg-raw").per100g.omega3).toEqual({ value: "0.101", derived: "18:3 n-3 + EPA + DPA + DHA" });
  });
});

describe("iodine of starter foods", () => {
  it("is given for the foods of the table only, each with its source", () => {
    const given = starterFoodInputs.filter((f) => f.per100g.iodine !== undefined);
    expect(given.map((f) => f.id).sort()).toEqual(Object.keys(iodine).sort());
    for (const f of given)
      expect(f.per100g.iodine).toMatchObject({ source: expect.stringMatching(/copy|unverified/) });
  });

  it("follows from the serving that the source gives", () => {
    for (const { value, derived } of Object.values(iodine)) {
      const serving = /^(\d+)(?: \(\d+ to \d+\))? µg in .*\((\d+) g\)$/.exec(derived ?? "");
      if (serving)
        expect(Math.abs((Number(serving[1]) / Number(serving[2])) * 100 - Number(value))).toBeLessThan(0.2);
      else if (!derived?.includes("dry")) expect(derived).toBeUndefined();
    }
  });

  // Roseland et al. 2020, Nutrients 12:1246, abstract: 85 µg (standard error 5.5) in 240 ml, whatever the fat.
  it("of milk is one, whole to skimmed", () => {
    for (const id of ["milk-whole", "milk-whole-vitamin-d", "milk-semi-skimmed", "milk-skimmed"]) {
      const figure = food(id).per100g.iodine as Readonly<Record<"value" | "error", string>>;
      const grams = 240 * 1.033;
      expect(Math.abs((Number(figure.value) * grams) / 100 - 85)).toBeLessThan(0.5);
      expect(Math.abs((Number(figure.error) * grams) / 100 - 5.5)).toBeLessThan(0.1);
    }
  });

  /**
   * Dried seaweed, µg in 1 g: means and ends of Yeh et al. 2014 (J Food Drug Anal 22:189-196, abstract:
   * kombu 2523.5, 241 to 4921; wakame 139.7, 93.9 to 185.1; nori 36.9, 29.3 to 45.8), widened by Smyth
   * 2021 (Eur Thyroid J 10:101-108, table 1: kombu to 10,000, wakame from 30, nori and its kin to 200)
   * and Teas et al. 2004 (Thyroid 14:836-841, abstract: nori 16).
   */
  it.each([
    ["kelp-raw", 241, 2523.5, 10000],
    ["wakame-raw", 30, 139.7, 185.1],
    ["laver-raw", 16, 36.9, 200],
  ])("of seaweeds is that of surveys, with the water that they hold raw: %s", (id, low, mean, high) => {
    const { iodine: figure, water } = food(id).per100g;
    const dry = 100 - Number((water as { value?: string })?.value ?? water);
    const { value, low: least, high: most } = figure as { value: string; low: string; high: string };
    [low, mean, high].forEach((perGram, i) => {
      expect(Math.abs(Number([least, value, most][i]) - perGram * dry)).toBeLessThan(0.5);
    });
    // A spoonful of kelp (5 g) passes EFSA's 600 µg a day; a sheet of nori (2.6 g) does not reach it.
    if (id === "kelp-raw") expect((Number(value) * 5) / 100).toBeGreaterThan(600);
  });

  // 10 sheets are 26 g (SR28, WEIGHT of NDB 11446); 2.6 g × 36.9 (16 to 200) µg.
  it("of a sheet of nori is that of a dry one: about 96 µg, from 42 to 520", () => {
    const s = sheet(
      {
        name: "Roll",
        portions: 1,
        lines: [{ key: "nori", food: "nori-dried", amount: "1 sheet", scaling: "per-portion" }],
      },
      starterFoods,
    );
    const { value, least, most, bound, ranged, derived } = s.portion("iodine");
    expect([value, least, most].map(String)).toEqual(["95.94", "41.6", "520"]);
    expect([bound, ranged, derived]).toEqual(["between", ["nori"], ["nori"]]);
    const child: Person = { sex: "female", age: 3, mass: "15 kg", height: "0.95 m", activity: "active" };
    for (const authority of ["eu", "us"] as const) {
      const { rows } = doseCheck(s, { child: referenceIntakes(authority, child) });
      const iodine = rows.find(({ of }) => of === "iodine");
      expect([authority, iodine?.people.map(({ verdict }) => verdict)]).toEqual([authority, ["may-be-past"]]);
    }
  });

  it("of raw laver has no sheet to be weighed by", () => {
    expect(food("laver-raw").measures?.map(({ name }) => name)).toEqual(["tbsp"]);
    expect(food("nori-dried").measures).toEqual([{ name: "sheet", grams: "2.6" }]);
    expect(food("nori-dried").per100g).not.toHaveProperty("vitaminC");
    expect(food("nori-dried").per100g.protein).toMatchObject({
      derived: expect.stringMatching(/dry matter/),
    });
  });
});

describe("measures of starter foods", () => {
  it("have a name once and a mass above zero, and are US measures", () => {
    for (const f of starterFoodInputs) {
      const names = (f.measures ?? []).map((m) => m.name);
      expect(new Set(names).size).toBe(names.length);
      for (const m of f.measures ?? []) expect(exact(m.grams).n > 0n).toBe(true);
      expect(f.measuredWith).toBe(names.length > 0 ? "us" : undefined);
    }
  });

  it("agree with the density that follows from one of them", () => {
    // US customary cup 236.5882365 ml, tablespoon 1/16 and teaspoon 1/48 of it, fluid ounce 1/8.
    const cup = 236.5882365;
    const ml: Readonly<Record<string, number>> = {
      cup,
      tbsp: cup / 16,
      tsp: cup / 48,
      "fl oz": cup / 8,
      litre: 1000,
    };
    let held = 0;
    for (const f of starterFoodInputs) {
      if (f.density === undefined || f.id === "chia-seeds") continue;
      const density = Number(exact(f.density).n) / Number(exact(f.density).d);
      const implied = (f.measures ?? []).map(
        (m) =>
          Number(exact(m.grams).n) /
          Number(exact(m.grams).d) /
          (ml[m.name.split(", ")[0] ?? ""] ?? Number.NaN),
      );
      expect([f.id, implied.some((d) => Math.abs(d - density) < 1e-12)]).toEqual([f.id, true]);
      held += 1;
    }
    expect(held).toBeGreaterThan(80);
  });

  it("let a bare spoon be weighed: of the form that cooks mean, or by a published bulk density", () => {
    // SR28, WEIGHT: tsp ground 2.3 (02030), tsp leaves 1.0 (02027); bulk density of chia 0.667 to 0.722 g/cm3
    // (Ixtaina, Nolasco and Tomas 2008, Ind Crops Prod 28:286-293, abstract).
    const spoon = (id: string): number =>
      sheet(
        { name: "Spoon", portions: 1, measures: "us", lines: [{ food: id, amount: "1 tsp" }] },
        starterFoods,
      ).mass.raw.toNumber();
    expect(spoon("black-pepper")).toBeCloseTo(2.3, 5);
    expect(spoon("oregano-dried")).toBeCloseTo(1, 5);
    expect(spoon("chia-seeds")).toBeGreaterThan(0.667 * 4.92892);
    expect(spoon("chia-seeds")).toBeLessThan(0.722 * 4.92892);
  });

  it("give liquids the densities that the trade knows", () => {
    // Common practice, no source: oil floats, milk is a little heavier than water, honey is about 1.4.
    const density = (id: string) =>
      Number(exact(food(id).density ?? "0").n) / Number(exact(food(id).density ?? "0").d);
    expect(density("water-tap")).toBe(1);
    expect(density("olive-oil")).toBeGreaterThan(0.9);
    expect(density("olive-oil")).toBeLessThan(0.93);
    expect(density("milk-whole")).toBeCloseTo(1.03, 2);
    expect(density("honey")).toBeGreaterThan(1.38);
    expect(density("honey")).toBeLessThan(1.45);
  });
});

/**
 * Which starter foods are or hold a regulated allergen, written out by hand from the two lists of
 * law: Regulation (EU) No 1169/2011, Annex II; US FD&C Act 201(qq). Wheat foods carry gluten too.
 */
const carrying: { readonly [A in Allergen]?: string } = {
  gluten: `wheat-germ wheat-bran semolina soy-sauce-reduced-salt beer oats-rolled-dry oat-porridge-water oat-bran-dry barley-pearl-dry barley-pearl-boiled rye-flour-dark
    wheat-flour-white wheat-flour-wholemeal bulgur-dry bulgur-cooked couscous-dry couscous-cooked pasta-dry
    pasta-cooked pasta-wholewheat-dry pasta-wholewheat-cooked soy-sauce`,
  wheat: `wheat-germ wheat-bran semolina soy-sauce-reduced-salt wheat-flour-white wheat-flour-wholemeal bulgur-dry bulgur-cooked couscous-dry couscous-cooked pasta-dry
    pasta-cooked pasta-wholewheat-dry pasta-wholewheat-cooked soy-sauce`,
  crustaceans: "prawns-cooked",
  egg: "egg-raw egg-white-raw egg-yolk-raw egg-hard-boiled",
  fish: `haddock-raw herring-raw anchovies-canned-oil-drained fish-sauce salmon-wild-raw salmon-farmed-raw salmon-farmed-baked cod-raw cod-baked mackerel-raw
    tuna-light-canned-water-drained sardines-canned-oil-drained`,
  peanut: "peanuts-raw peanut-butter-unsalted",
  soya: `soy-sauce-reduced-salt soybeans-dry soybeans-boiled edamame-frozen-cooked tofu-firm tofu-firm-nigari tempeh soya-drink-sweetened
    soya-drink-unsweetened-fortified soya-protein-isolate soy-sauce`,
  milk: `sour-cream cream-light buttermilk-low-fat cream-cheese gouda gruyere brie ghee milk-skimmed-dried milk-whole milk-whole-vitamin-d milk-semi-skimmed milk-skimmed yoghurt-plain-whole yoghurt-plain-low-fat
    yoghurt-greek-fat-free cottage-cheese-low-fat cheddar feta mozzarella parmesan ricotta cream-heavy butter-salted
    butter-unsalted`,
  nuts: "macadamia-nuts walnut-oil almond-drink-unsweetened almonds walnuts hazelnuts cashew-nuts-raw pecan-nuts pistachio-nuts-raw brazil-nuts",
  celery: "celeriac-raw celery-raw",
  mustard: "mustard-seed-ground",
  sesame: "sesame-seeds tahini sesame-oil",
  sulphites: "vinegar-balsamic vinegar-red-wine wine-red wine-white apricots-dried-sulphured",
  lupin: "lupin-seeds-boiled",
  molluscs: "mussels-cooked",
};

describe("allergens of starter foods", () => {
  it.each(Object.keys(allergens) as Allergen[])("name every food that is or holds %s", (allergen) => {
    const here = starterFoodInputs.filter((f) => f.allergens?.includes(allergen)).map((f) => f.id);
    expect(here.sort()).toEqual((carrying[allergen] ?? "").split(/\s+/).sort());
  });

  it("are left unknown where the maker decides, with a caution to read the label", () => {
    const unknown = starterFoodInputs.filter((f) => f.allergens === undefined);
    expect(unknown.map((f) => f.id).sort()).toEqual([
      "bacon-raw",
      "baking-powder",
      "barbecue-sauce",
      "bread-gluten-free-white",
      "bread-gluten-free-wholegrain",
      "bread-wholemeal",
      "breadcrumbs-dry",
      "capers-canned",
      "chocolate-dark-70",
      "cider-vinegar",
      "coconut-desiccated",
      "coconut-milk-canned",
      "coconut-oil",
      "curry-powder",
      "gelatine-powder",
      "hoisin-sauce",
      "mayonnaise",
      "miso",
      "molasses",
      "mustard-prepared",
      "oyster-sauce",
      "raisins",
      "rice-drink-unsweetened",
      "soy-sauce-tamari",
      "tomato-ketchup",
      "tomato-salsa",
      "worcestershire-sauce",
    ]);
    for (const f of unknown)
      expect([f.id, f.cautions?.some((c) => /label/.test(c.text))]).toEqual([f.id, true]);
  });
});

describe("cautions of starter foods", () => {
  it.each([
    ["kidney-beans-red-dry", "beans-boil"],
    ["kelp-raw", "iodine-seaweed"],
    ["wakame-raw", "iodine-seaweed"],
    // Laver, sold as nori, is a red seaweed; what is advised of brown ones is not said of it.
    ["laver-raw", "iodine-nori"],
    ["nori-dried", "iodine-nori"],
    ["beef-liver-braised", "vitamin-a-liver"],
    ["chicken-liver-raw", "vitamin-a-liver"],
    ["grapefruit-raw", "grapefruit-medicines"],
    ["brazil-nuts", "selenium-brazil-nuts"],
    ["spinach-raw", "vitamin-k-steady"],
    ["honey", "honey-infants"],
    ["rice-white-long-dry", "rice-keeping"],
    ["rice-white-long-boiled", "rice-keeping"],
    ["rice-brown-long-dry", "rice-keeping"],
    ["rice-brown-long-boiled", "rice-keeping"],
    ["cinnamon-ground", "coumarin-cassia"],
    ["nutmeg-ground", "nutmeg-dose"],
  ])("%s carries %s, with who says so", (id, code) => {
    const caution = food(id).cautions?.find((c) => c.code === code);
    expect(caution).toMatchObject({ text: expect.any(String), source: expect.any(String) });
  });

  it("leave nori without the advice on brown seaweed", () => {
    expect(food("laver-raw").cautions?.map(({ code }) => code)).toEqual(["iodine-nori"]);
    expect(food("laver-raw").cautions?.some(({ text }) => /brown/.test(text))).toBe(false);
  });

  it("leave spices and grains that nobody warns of without one", () => {
    const ordinary = ["ginger-ground", "cumin-seed", "paprika", "oats-rolled-dry", "pasta-dry", "quinoa-dry"];
    for (const id of ordinary) expect([id, food(id).cautions]).toEqual([id, undefined]);
  });

  // EFSA Journal 2008 793: 0.1 mg per kg; BfR: 2 g of cassia a day at 60 kg (read in copies).
  it("keep a half teaspoon of cinnamon within what the caution gives a light rower", () => {
    const tsp = food("cinnamon-ground").measures?.find(({ name }) => name === "tsp")?.grams;
    expect(Number(tsp) / 2).toBeLessThan((2 / 60) * 52);
    expect(Number(tsp)).toBeGreaterThan((2 / 60) * 61);
  });

  it("leave cooked beans without the caution of raw ones", () => {
    expect(food("kidney-beans-red-boiled").cautions).toBeUndefined();
    expect(food("kidney-beans-red-canned-drained").cautions).toBeUndefined();
  });
});

describe("starter foods by group", () => {
  const { starterFoods: all, usdaRetention: _, ...rest } = foods;
  const groups = Object.values(rest).filter((each) => each instanceof FoodTable);

  it("are all of them, each in one group, figure for figure", () => {
    expect(groups.length).toBe(8);
    expect(groups.flatMap(({ ids }) => ids)).toEqual(all.ids);
    for (const group of groups) for (const id of group.ids) expect(group.get(id)).toEqual(all.get(id));
  });

  it("are put together again by one table with another", () => {
    const joined = groups.reduce((table, next) => table.with(next));
    expect(joined.ids).toEqual(all.ids);
    expect(joined.retention).toBe(all.retention);
    expect(JSON.stringify(joined)).toBe(JSON.stringify(all));
  });
});
