import { existsSync, readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { beforeAll, describe, expect, it } from "vitest";
import { type ComponentId, componentIds, components } from "../../src/food/components.ts";
import type { Figure, FoodInput } from "../../src/food/food.ts";
import { derivations } from "../../src/food/starter/derivation.ts";
import { starterFoodInputs } from "../../src/food/starter/index.ts";
import { exactText } from "../../src/number/digits.ts";
import { equals, exact, over, times } from "../../src/number/exact.ts";

/**
 * Holds every starter figure, measure, refuse and energy factor against the published files of the
 * USDA National Nutrient Database for Standard Reference, Release 28 (May 2016), which lie outside
 * the repository.
 */
const folder = new URL("../../../shared/fooddata/sr28/", import.meta.url);
const here = existsSync(new URL("NUT_DATA.txt.gz", folder));
const title = here
  ? "starter foods against the published SR28 files"
  : "starter foods against the published SR28 files (skipped: ../shared/fooddata/sr28 is not there)";

/** Components by the description that SR28 itself prints in NUTR_DEF, so that no number is trusted twice. */
const described: Readonly<Record<string, ComponentId>> = {
  Energy: "energy",
  Protein: "protein",
  "Total lipid (fat)": "fat",
  "Carbohydrate, by difference": "carbohydrateByDifference",
  "Fiber, total dietary": "fibre",
  "Sugars, total": "sugars",
  Starch: "starch",
  Water: "water",
  Ash: "ash",
  "Alcohol, ethyl": "alcohol",
  "Fatty acids, total saturated": "saturatedFat",
  "Fatty acids, total monounsaturated": "monounsaturatedFat",
  "Fatty acids, total polyunsaturated": "polyunsaturatedFat",
  "Fatty acids, total trans": "transFat",
  "20:5 n-3 (EPA)": "epa",
  "22:5 n-3 (DPA)": "dpa",
  "22:6 n-3 (DHA)": "dha",
  Cholesterol: "cholesterol",
  "Sodium, Na": "sodium",
  "Potassium, K": "potassium",
  "Calcium, Ca": "calcium",
  "Magnesium, Mg": "magnesium",
  "Phosphorus, P": "phosphorus",
  "Iron, Fe": "iron",
  "Zinc, Zn": "zinc",
  "Copper, Cu": "copper",
  "Manganese, Mn": "manganese",
  "Fluoride, F": "fluoride",
  "Selenium, Se": "selenium",
  "Vitamin C, total ascorbic acid": "vitaminC",
  Thiamin: "thiamin",
  Riboflavin: "riboflavin",
  Niacin: "niacin",
  "Pantothenic acid": "pantothenicAcid",
  "Vitamin B-6": "vitaminB6",
  "Folate, total": "folate",
  "Folate, food": "foodFolate",
  "Folic acid": "folicAcid",
  "Folate, DFE": "folateDfe",
  "Vitamin B-12": "vitaminB12",
  "Vitamin E (alpha-tocopherol)": "vitaminE",
  "Vitamin D (D2 + D3)": "vitaminD",
  "Vitamin K (phylloquinone)": "vitaminK",
  "Choline, total": "choline",
  "Vitamin A, RAE": "vitaminARae",
  Retinol: "retinol",
  "Carotene, beta": "betaCarotene",
  "Carotene, alpha": "alphaCarotene",
  "Cryptoxanthin, beta": "betaCryptoxanthin",
  Lycopene: "lycopene",
  "Lutein + zeaxanthin": "luteinZeaxanthin",
  Betaine: "betaine",
  Caffeine: "caffeine",
  Theobromine: "theobromine",
  Phytosterols: "phytosterols",
  Tryptophan: "tryptophan",
  Threonine: "threonine",
  Isoleucine: "isoleucine",
  Leucine: "leucine",
  Lysine: "lysine",
  Methionine: "methionine",
  Cystine: "cystine",
  Phenylalanine: "phenylalanine",
  Tyrosine: "tyrosine",
  Valine: "valine",
  Arginine: "arginine",
  Histidine: "histidine",
  Alanine: "alanine",
  "Aspartic acid": "asparticAcid",
  "Glutamic acid": "glutamicAcid",
  Glycine: "glycine",
  Proline: "proline",
  Serine: "serine",
};

/** Components that the starter foods hold beyond SR28's own figures, or by a formula. */
const ownRules: readonly ComponentId[] = [
  "linoleicAcid",
  "alphaLinolenicAcid",
  "omega3",
  "omega6",
  "iodine",
  "coumarin",
];

/** How many of one unit make one of another. */
const inOne: Readonly<Record<string, string>> = {
  "g mg": "1000",
  "mg µg": "1000",
  "g g": "1",
  "mg mg": "1",
  "µg µg": "1",
  "kcal kcal": "1",
};

/** A figure of NUT_DATA with its source code, its derivation code and the food that it was taken from. */
interface Theirs {
  readonly value: string;
  readonly unit: string;
  readonly source: string;
  readonly derivation: string;
  readonly from: string;
}

interface Published {
  /** By description: the value as printed, its unit, and how the source came by it. */
  readonly figures: Map<string, Theirs>;
  readonly weights: { amount: string; name: string; grams: string }[];
  description: string;
  refuse: string;
  factors: string[];
}

/** Foods whose figures are SR28's own; those by dry matter are held to it apart. */
const asPrinted = starterFoodInputs.filter(({ source }) => !source.includes("dry matter"));

const published = new Map<string, Published>();
const names = new Map<string, string>();

/** The fields of each line of a file; of foods that are not wanted, no line. */
function lines(name: string, wanted?: ReadonlySet<string>): string[][] {
  const text = new TextDecoder("latin1").decode(gunzipSync(readFileSync(new URL(`${name}.txt.gz`, folder))));
  return text
    .split("\n")
    .filter((line) => line !== "" && (wanted === undefined || wanted.has(line.slice(1, 6))))
    .map((line) =>
      line
        .replaceAll("\r", "")
        .split("^")
        .map((field) => field.replace(/^~|~$/g, "")),
    );
}

function ndb(food: FoodInput): string {
  return /NDB (\d{5})/.exec(food.source)?.[1] ?? "";
}

function of(food: FoodInput): Published {
  const found = published.get(ndb(food));
  if (!found) throw new Error(`${food.id}: SR28 has no food ${ndb(food)}`);
  return found;
}

function readFigure(figure: Figure | undefined): { value: string; presumed: boolean } | undefined {
  if (figure === undefined) return undefined;
  if (typeof figure === "string") return { value: figure, presumed: false };
  if (typeof figure === "object" && "value" in figure) {
    return { value: String(figure.value), presumed: figure.presumed === true };
  }
  throw new Error(`a starter figure of an unexpected form: ${JSON.stringify(figure)}`);
}

describe.skipIf(!here)(title, () => {
  beforeAll(() => {
    const wanted = new Set(starterFoodInputs.map(ndb));
    for (const [id = "", , description = "", , , , , , refuse = "", , , ...factors] of lines(
      "FOOD_DES",
      wanted,
    )) {
      published.set(id, {
        figures: new Map(),
        weights: [],
        description,
        refuse,
        factors: factors.slice(0, 3),
      });
    }
    const nutrients = new Map(
      lines("NUTR_DEF").map(([number = "", unit = "", , name = ""]) => [number, { unit, name }]),
    );
    for (const [id = "", , name = ""] of lines("FOOD_DES")) names.set(id, name);
    for (const [id = "", number = "", value = "", , , source = "", derivation = "", from = ""] of lines(
      "NUT_DATA",
      wanted,
    )) {
      const nutrient = nutrients.get(number);
      // Energy stands there twice, in kcal and in kJ; vitamin D in IU has another description.
      if (!nutrient || nutrient.unit === "kJ") continue;
      published.get(id)?.figures.set(nutrient.name, { value, unit: nutrient.unit, source, derivation, from });
    }
    for (const [id = "", , amount = "", name = "", grams = ""] of lines("WEIGHT", wanted)) {
      published.get(id)?.weights.push({ amount, name, grams });
    }
  });

  it("reads every nutrient by the description it was given here", () => {
    const nutrients = new Set(lines("NUTR_DEF").map(([, , , name]) => name));
    for (const name of Object.keys(described)) expect([name, nutrients.has(name)]).toEqual([name, true]);
    const covered = new Set([...Object.values(described), ...ownRules]);
    const held = componentIds.filter((id) =>
      starterFoodInputs.some((food) => food.per100g[id] !== undefined),
    );
    expect(held.filter((id) => !covered.has(id))).toEqual([]);
  });

  it("holds each figure that SR28 gives, to the last digit, and no other", () => {
    let compared = 0;
    for (const food of asPrinted) {
      const { figures } = of(food);
      for (const [name, id] of Object.entries(described)) {
        const theirs = figures.get(name);
        const ours = readFigure(food.per100g[id]);
        if (!theirs) {
          // Alcohol of four foods that cannot hold any is our own presumption, and marked so.
          const presumed = id === "alcohol" && ours ? { value: "0", presumed: true } : undefined;
          expect([food.id, id, ours]).toEqual([food.id, id, presumed]);
          continue;
        }
        const scale = inOne[`${components[id].unit} ${theirs.unit}`];
        if (scale === undefined) throw new Error(`${name}: ${theirs.unit} is not ${components[id].unit}`);
        const value = exactText(over(exact(theirs.value), exact(scale)));
        expect([food.id, id, ours && exactText(exact(ours.value)), ours?.presumed]).toEqual([
          food.id,
          id,
          value,
          theirs.source === "7",
        ]);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(14_000);
  });

  it("holds dried seaweeds to raw ones by dry matter, what was imputed of them left out", () => {
    const dried = starterFoodInputs.filter((food) => !asPrinted.includes(food));
    expect(dried.map(({ id }) => id)).toEqual(["kelp-dried", "wakame-dried", "nori-dried"]);
    for (const food of dried) {
      const { figures } = of(food);
      const dry = 100 - Number(figures.get("Water")?.value);
      let compared = 0;
      for (const [name, id] of Object.entries(described)) {
        const figure = food.per100g[id];
        if (figure === undefined || typeof figure !== "object" || !("value" in figure)) continue;
        const { value, source } = figures.get(name) as Theirs;
        const raw = over(times(exact(figure.value), exact(dry.toFixed(2))), exact(100));
        expect([food.id, id, exactText(raw)]).toEqual([food.id, id, exactText(exact(value))]);
        if (source === "4") expect(["energy", "carbohydrateByDifference"]).toContain(id);
        compared += 1;
      }
      expect(compared).toBeGreaterThan(30);
    }
  });

  it("marks each figure that nobody measured in the food, as SRC_CD and DERIV_CD say", () => {
    // README of the files, SRC_CD: 1, 6, 12 and 13 are analysed, 7 assumed zero, the rest calculated, imputed or told.
    const analysed = ["1", "6", "12", "13"];
    const counts = { calculated: 0, borrowed: 0, imputed: 0, otherForm: 0 };
    for (const food of asPrinted) {
      for (const [name, id] of Object.entries(described)) {
        const theirs = of(food).figures.get(name);
        if (!theirs) continue;
        const figure = food.per100g[id];
        const ours = typeof figure === "object" && "value" in figure ? figure : undefined;
        const { source, derivation, from } = theirs;
        const at = [food.id, id, source, derivation, from];
        // DERIV_CD: B… is based on another form or a similar food, T taken from another table.
        const isBorrowed = source !== "7" && (from !== "" || /^(B|T$)/.test(derivation));
        expect([...at, ours?.borrowedFrom !== undefined]).toEqual([...at, isBorrowed]);
        if (isBorrowed && from !== "")
          expect([...at, ours?.borrowedFrom]).toEqual([
            ...at,
            expect.stringContaining(`${names.get(from)} (NDB ${from})`),
          ]);
        const isCalculated = !["7", ...analysed].includes(source) && !/^(B|T$)/.test(derivation);
        expect([...at, ours?.calculated !== undefined]).toEqual([...at, isCalculated]);
        if (isBorrowed) counts.borrowed += 1;
        if (isCalculated) counts.calculated += 1;
        if (source === "4") counts.imputed += 1;
        if (source === "4" && derivation.startsWith("B")) counts.otherForm += 1;
      }
    }
    expect(counts).toMatchObject({ imputed: 4094, otherForm: 1064 });
    expect(counts.calculated + counts.borrowed).toBeGreaterThan(2806);
  });

  it("says of adjustments what DERIV_CD says", () => {
    const words = new Map(lines("DERIV_CD").map(([code = "", text = ""]) => [code, text.toLowerCase()]));
    const basis: Readonly<Record<string, string>> = {
      "by carbohydrate": "carbohydrate",
      "by fat": "fat;",
      "by solids but fat": "non-fat solids",
      "by protein": "protein",
      "by solids": "solids; retention factors not used",
      "by solids and retention factors": "solids; retention factors used",
      "by yield": "yield",
      "its share of vitamin a": "vitamin a",
      "by recipe, of approximate proportions": "recipe; approximate ingredient proportions",
      "the level that a standard sets": "product standard",
      "from a label": "label",
      "the mean of foods of its kind, by solids": "average values for food category; solids",
      "the mean of foods of its kind": "average values for food category; no adjustment",
      "from other figures of the food": "calculated rather than analyzed",
      "another figure of the food, as it stands": "value used directly",
    };
    let compared = 0;
    for (const { code, calculated, borrowed } of Object.values(derivations)) {
      const says = basis[(calculated ?? borrowed ?? "").toLowerCase()];
      if (code === "" || says === undefined) continue;
      expect([code, words.get(code)]).toEqual([code, expect.stringContaining(says)]);
      compared += 1;
    }
    expect(compared).toBe(15);
    for (const { code } of Object.values(derivations))
      expect([code, code === "" || words.has(code)]).toEqual([code, true]);
  });

  it("holds linoleic and alpha-linolenic acid to theirs, or to the undifferentiated acid of a plant food", () => {
    for (const food of asPrinted) {
      const { figures } = of(food);
      for (const [id, own, whole] of [
        ["linoleicAcid", "18:2 n-6 c,c", "18:2 undifferentiated"],
        ["alphaLinolenicAcid", "18:3 n-3 c,c,c (ALA)", "18:3 undifferentiated"],
      ] as const) {
        const figure = food.per100g[id];
        const measured = figures.get(own);
        const standIn = typeof figure === "object" && "derived" in figure;
        if (measured)
          expect([food.id, readFigure(figure)?.value, standIn]).toEqual([food.id, measured.value, false]);
        else if (figure === undefined) continue;
        else {
          expect([food.id, food.origin, readFigure(figure)?.value]).toEqual([
            food.id,
            "plant",
            figures.get(whole)?.value,
          ]);
          expect(standIn).toBe(true);
        }
      }
    }
  });

  it("holds each measure to a published weight", () => {
    // SR28 prints thirds as .333.
    const amounts: Readonly<Record<string, string>> = { ".333": "1/3", ".33": "1/3" };
    const volume = (name: string) => /^(cup|tbsp|tsp|fl oz)/.exec(name.replace("tablespoon", "tbsp"))?.[0];
    let compared = 0;
    for (const food of starterFoodInputs) {
      for (const { name, grams } of food.measures ?? []) {
        const match = of(food).weights.some(
          (w) =>
            equals(times(exact(grams), exact(amounts[w.amount] ?? w.amount)), exact(w.grams)) &&
            (volume(w.name) === volume(name) || w.name === "envelope (1 tbsp)"),
        );
        expect([food.id, name, String(grams), match]).toEqual([food.id, name, String(grams), true]);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(400);
  });

  it("holds edible shares to the published refuse", () => {
    for (const food of starterFoodInputs) {
      if (food.edibleShare === undefined) continue;
      expect([food.id, 100 - Number(food.edibleShare) * 100]).toEqual([
        food.id,
        expect.closeTo(Number(of(food).refuse), 9),
      ]);
      expect(of(food).refuse).not.toBe("");
    }
    // Left out where the published refuse is of another form: shells, hulls, stones, bones and skin.
    const left = starterFoodInputs.filter((f) => f.edibleShare === undefined && Number(of(f).refuse) > 0);
    expect(left.map((f) => f.id).sort()).toEqual([
      "almonds",
      "brazil-nuts",
      "chicken-breast-roasted",
      "chicken-thigh-raw",
      "chicken-thigh-roasted",
      "hazelnuts",
      "lamb-leg-lean-raw",
      "pecan-nuts",
      "pistachio-nuts-raw",
      "pork-tenderloin-raw",
      "pork-tenderloin-roasted",
      "prunes",
      "pumpkin-seeds",
      "sunflower-seeds",
      "turkey-breast-raw",
      "turkey-breast-roasted",
      "walnuts",
    ]);
  });

  it("holds energy factors to the published ones", () => {
    for (const food of starterFoodInputs) {
      const ours = food.energyFactors && [
        food.energyFactors.protein,
        food.energyFactors.fat,
        food.energyFactors.carbohydrate,
      ];
      const theirs = of(food).factors;
      expect([food.id, ours]).toEqual([
        food.id,
        theirs.every((factor) => factor !== "") ? theirs : undefined,
      ]);
    }
  });

  it("is of the food and the state that it says", () => {
    for (const food of starterFoodInputs) {
      const description = of(food).description.toLowerCase();
      if (food.state === "cooked")
        expect([food.id, description]).toEqual([
          food.id,
          expect.stringMatching(/cooked|boiled|baked|roasted|prepared|brewed/),
        ]);
      if (food.state === "raw")
        expect([food.id, description]).toEqual([
          food.id,
          expect.stringMatching(/raw|fresh|unprepared|frozen/),
        ]);
      if (food.state === "drained")
        expect([food.id, description]).toEqual([food.id, expect.stringMatching(/drained/)]);
      if (/-dry$/.test(food.id))
        expect([food.id, description]).toEqual([food.id, expect.stringMatching(/raw|dry|uncooked/)]);
      expect([
        food.id,
        /cooked|boiled|roasted/.test(description.replace("uncooked", "")) &&
          ["raw", "dry"].includes(food.state ?? ""),
      ]).toEqual([food.id, ["buckwheat-roasted-dry"].includes(food.id)]);
    }
  });
});
