/** One good call or more of every function that `steelyard` exports, for `hostile.test.ts` to spoil. */

import {
  amount,
  britishEnglish,
  type ColumnView,
  type Demand,
  type RecipeInput,
  type RowView,
  sheet,
  sweep,
  withColumn,
  withConstant,
  withRow,
} from "steelyard";
import { starterFoods } from "steelyard/foods";
import { labelReference, type Person, referenceIntakes } from "steelyard/person";
import { cookingSchedule, portionPlan, shoppingList } from "steelyard/plan";
import { table } from "steelyard/show";

const bowlDocument: RecipeInput = {
  name: "Rice bowl",
  portions: 1,
  lines: [
    { key: "rice", food: "rice-white-long-boiled", amount: "200 g" },
    { key: "tofu", food: "tofu-firm", amount: "100 g", scaling: "adjustable" },
    { key: "salt", food: "salt", amount: "1 g", scaling: "per-portion" },
  ],
  method: ["Warm {rice} with {tofu}."],
};
const foods = starterFoods.with([
  {
    id: "farm-oats",
    name: "Oats from the farm",
    state: "dry",
    group: "grains",
    source: "own",
    per100g: { protein: 12, fat: 7, water: 11, fibre: 10 },
  },
]);
const bowl = withConstant(
  withRow(
    withColumn(sheet(bowlDocument, foods), "twice", (at) => at.get("protein").times(2)),
    "sum",
    (at) => at.total().plus(at.portion()),
  ),
  "price",
  2,
);
const lightweight: Person = {
  sex: "female",
  age: 24,
  mass: "58.5 kg",
  height: "1.72 m",
  activity: "vigorous",
  allergens: ["fish"],
};
const demands: readonly Demand[] = [
  { of: "energy", exactly: "600 kcal" },
  { of: "protein", least: "20 g" },
];
const intakes = referenceIntakes("eu", lightweight);
const planInput = {
  meals: [{ id: "breakfast", dishes: { pot: { sheet: bowl, density: "1.05" } } }],
  people: [
    { id: "cox", person: lightweight, demands },
    { id: "bow", demands: { factor: 2 } },
  ],
  authority: "eu",
  kitchen: "metric",
} as const;
const labels = labelReference("eu");
const plan = portionPlan(planInput);
const figures = table({ columns: [{ key: "a", heading: "A" }], rows: [["1"]] });
const aim = { weight: "hold", protein: { perKg: "1.6" } } as const;
const label = {
  id: "pea-protein",
  name: "Pea protein powder",
  style: "us",
  per: "30 g",
  figures: { energy: 120, protein: "24 g", fat: "2 g" },
} as const;
const show = { language: britishEnglish };

/** Short, since every part of a document is spoilt in turn. */
const kept = sheet({ name: "Oats", portions: 1, lines: [{ food: "farm-oats", amount: "60 g" }] }, foods);
const keptPlan = portionPlan({ meals: [{ id: "early", dishes: { oats: kept } }], people: [{ id: "cox" }] });

/** Values of the scenario, one of each kind that functions take. */
export const good = {
  bowl,
  foods,
  lightweight,
  demands,
  intakes,
  plan,
  figures,
  "100 g": amount("100 g"),
  protein: "protein",
  rice: "rice",
  cox: "cox",
};

/** What the library made: to spoil its inside is to forge it. */
export const made: ReadonlySet<unknown> = new Set([intakes, labels]);

/** What methods are asked for by name. */
export const names: readonly unknown[] = [
  ...["rice", "protein", "cox", "breakfast", "pot", "total", "twice", "sum", "tofu-firm"],
  ...[{ line: "rice" }, { rice: "100 g" }, 2],
];

export const calls: { readonly [name: string]: readonly (readonly unknown[])[] } = {
  allergenCheck: [[bowl, lightweight, { override: { fish: "the club doctor, 5 January" } }]],
  allergensOf: [[bowl, { list: "eu" }], [{ breakfast: bowl, supper: bowl }]],
  alphaTocopherolEquivalents: [[{ alpha: 1, beta: 2 }, "usda"]],
  alphaTocopherolEstimate: [[1]],
  aminoRequirementMet: [[{ lysine: 1 }, 58]],
  aminoScore: [[{ protein: 1, lysine: "0.026" }, "iom-2002", { digestibility: "0.9" }]],
  amount: [["1 us cup", { measures: "us", own: ["medium"], decimal: "point", words: britishEnglish.words }]],
  between: [[bowl, "iodine", { where: "portion", like: () => ["tofu-firm"] }]],
  borrow: [
    [
      foods,
      {
        into: "farm-oats",
        from: "oats-rolled-dry",
        components: ["iron"],
        basis: "weight",
        acrossStates: true,
      },
    ],
  ],
  cautionsFor: [[bowl, lightweight]],
  citations: [[bowl, { components: ["iron"] }], [[bowl, kept]], [plan]],
  coefficients: [[bowl, ["iron", "water"]]],
  compare: [
    [bowl, intakes, { person: lightweight, components: ["protein"], system: "eu-1169" }],
    [{ breakfast: bowl }, labels],
  ],
  convert: [["1 us cup", "g", { density: "1.05", measures: "us", own: ["medium"], decimal: "point" }]],
  cooking: [[bowl]],
  cookingSchedule: [
    [
      plan,
      {
        days: ["Sun", "Mon"],
        cook: ["Sun"],
        away: { bow: ["Mon"] },
        meals: {
          breakfast: { eaten: ["Sun"], servings: { cox: 2 }, vessel: { capacity: "2 l", runs: "equal" } },
        },
      },
    ],
  ],
  countsFood: [[{ covers: "all sources" }]],
  dayTarget: [[lightweight, aim, { authority: "eu" }]],
  demandsFor: [
    [lightweight, "eu", { aim, share: "1/4", limits: 1, energy: 2000, equation: "henry-2005", phytate: 600 }],
  ],
  difference: [[bowl, bowl.edit({ rice: "100 g" })]],
  doseCheck: [
    [bowl, intakes],
    [bowl, { cox: intakes }],
  ],
  energyCheck: [[bowl, { system: "eu-1169", tolerance: "0.1", floor: 1 }]],
  energyNeed: [[lightweight, { equation: "henry-2005" }]],
  energyShares: [[bowl, { system: "eu-1169" }]],
  explain: [[bowl, "energy", "portion"]],
  uncertainty: [[bowl, "iron", "portion", { coverage: 2, weighing: { step: 1 }, less: bowl }]],
  estimatedEnergyRequirement: [[lightweight, { activity: "active" }]],
  energyRangesFor: [["eu", lightweight]],
  exact: [["1/3"]],
  fit: [
    [
      bowl,
      demands,
      { common: { least: "1/10", most: 10 }, parts: {}, system: "eu-1169", pivots: 1000, tries: 5 },
    ],
    [
      { bowl, other: bowl },
      [{ of: "protein", least: "900 g" }],
      { base: "bowl", parts: { other: { most: 3 } } },
    ],
  ],
  findFoods: [
    [foods, "rolled oats"],
    [foods, "beans", { state: "cooked", known: ["iron"], limit: 2 }],
  ],
  recipeFromText: [["Oats\nServes 2\n- 100 g rolled oats", foods, { measures: "us" }]],
  recipeFromJsonLd: [
    [{ "@type": "Recipe", name: "Oats", recipeYield: 2, recipeIngredient: ["100 g rolled oats"] }, foods],
  ],
  toJsonLd: [[bowl]],
  linesFromText: [["2 eggs\n1/2 cup milk (optional)", foods, { measures: "us" }]],
  foodFromLabel: [[label]],
  foodTable: [[[foods.get("farm-oats")]]],
  foodsFromCsv: [
    [
      "name,FE (mg)\nOats,4",
      { source: "own", columns: { x: null }, per: "100 g", delimiter: ",", decimal: ".", unknown: ["-"] },
    ],
  ],
  foodsFromFdc: [
    [
      {
        "food.csv": "fdc_id,description\n7,Kale",
        "nutrient.csv": "id,name,unit_name,nutrient_nbr\n1089,Iron,MG,303",
        "food_nutrient.csv": "fdc_id,nutrient_id,amount\n7,1089,1.6",
      },
    ],
  ],
  foodsToCsv: [[foods]],
  foodsFromSr: [
    [
      {
        FOOD_DES: "~11090~^~1100~^~Broccoli, raw~^~BROCCOLI,RAW~^~~^~~^~Y~^~~^39^~~^6.25^2.44^8.37^3.57",
        NUTR_DEF: "~303~^~mg~^~FE~^~Iron, Fe~^~2~^~5400~",
        NUT_DATA: "~11090~^~303~^0.73^33^0.031^~1~^~A~^~~^~~^4^0.52^1.05^^^^~~^08/2013^",
        WEIGHT: "~11090~^1^1^~cup chopped~^91^^",
      },
    ],
  ],
  formatAmount: [
    [amount("100/3 g"), { significant: 3, measures: "us", decimal: "comma" }],
    [amount("1 us cup"), { places: 1, denominators: [2, 4] }],
  ],
  inReaderUnits: [
    ["Bake at 180 °C for 90 min.", { ...britishEnglish, temperatures: "fahrenheit", times: "hours" }],
  ],
  kitchen: [
    [
      {
        name: "camp",
        measures: "metric",
        drawer: { cup: ["1/4"] },
        scale: "5 g",
        jug: { step: "10 ml", least: "50 ml" },
        pieces: "half",
      },
    ],
  ],
  labelReference: [["us"]],
  leftOfDay: [[demands, { energy: "200 kcal", protein: 5 }]],
  lenders: [[foods, "farm-oats", { components: ["iron"], acrossStates: true, most: 2 }]],
  mealDemands: [[demands, "1/4"]],
  measureSet: [[{ name: "grandmother", ml: { cup: 200 } }]],
  openPlan: [[JSON.parse(JSON.stringify(keptPlan)), { moved: "accept" }]],
  openSheet: [[JSON.parse(JSON.stringify(kept))]],
  personCard: [
    [
      plan,
      "cox",
      {
        date: "2031-01-05",
        version: "2",
        meals: ["breakfast"],
        components: ["protein"],
        day: [{ of: "protein", reference: { value: 60, source: "the camp's own" } }],
        cautions: [{ text: "Hot.", source: "the cook" }],
        personal: "show",
        about: { age: "24" },
        energyBy: "eu-1169",
        language: britishEnglish,
      },
    ],
  ],
  portionsAt: [
    [bowl, { energy: Float64Array.of(500, 600) }, ["iron", "water"], { silent: "accept" }],
    [bowl, { energy: Float64Array.of(500), protein: Float64Array.of(20) }, ["iron"]],
  ],
  portionsOfMany: [[[bowlDocument], foods, ["iron", "water"], { slice: 2, recipes: {} }]],
  influence: [[bowl, "iron", { where: "per100g" }]],
  methods: [[[bowl, kept], { components: ["iron"], language: britishEnglish }]],
  rankFoods: [[foods, "iron", { per: "energy", group: "grains", most: 3 }]],
  ownComponent: [["taurine", "mg", "other"]],
  portionPlan: [[planInput]],
  portionPlanSteps: [[planInput]],
  proteinQuality: [[bowl, { person: lightweight, patterns: ["iom-2002"], digestibility: { rice: "0.9" } }]],
  reach: [[bowl, "protein"]],
  recipe: [[bowlDocument]],
  referenceIntakes: [["eu", lightweight, { energy: 2000, equation: "henry-2005", phytate: 600 }]],
  refresh: [[JSON.parse(JSON.stringify(kept)), foods]],
  retentionCodes: [
    [
      { source: "camp", columns: [["iron"], ["folate"]], codes: { a: ["greens, boiled", "90 60"] } },
      "boiled",
    ],
  ],
  revise: [
    [
      bowl,
      {
        amounts: { rice: "100 g" },
        swap: { tofu: "chickpeas-boiled" },
        order: ["tofu"],
        portions: 2,
        yieldFactor: "0.9",
      },
    ],
  ],
  roundToKitchen: [
    [
      bowl,
      "metric",
      { demands, tolerance: "5 %", lines: { rice: "g" }, each: 3, system: "eu-1169", nodes: 200 },
    ],
    [{ bowl }, "metric"],
  ],
  scale: [
    [bowl, { protein: "30 g" }, { silent: "accept" }],
    [bowl, { factor: 2 }],
  ],
  shareDay: [[demands, { breakfast: "1/4", rest: "3/4" }]],
  sheet: [[bowlDocument, foods, { recipes: {} }]],
  shoppingList: [
    [plan, { cupboard: { "tofu-firm": { amount: "50 g", weighed: "edible" } }, measures: "metric" }],
  ],
  shoppingDifference: [[shoppingList(plan), shoppingList(bowl)]],
  shoppingLists: [[cookingSchedule(plan, { days: ["Sun"], cook: ["Sun"] }), { on: ["Sun"] }]],
  summary: [[plan, { language: britishEnglish }]],
  phrases: [[]],
  planDifference: [[plan, plan, { components: ["protein"] }]],
  swapFor: [[{ id: "cox" }, { dish: "pot", sheet: bowl, line: bowl.lines[0]?.key ?? "" }, { most: 2 }]],
  shoppingCard: [[shoppingList(bowl), { date: "2026-01-12" }]],
  cookCard: [[cookingSchedule(plan, { days: ["Sun"], cook: ["Sun"] }), { date: "2026-01-12" }]],
  weekPicture: [[plan, { components: ["iron"], id: "week" }]],
  multiplePicture: [[plan, plan.meals[0]?.id ?? "", { id: "multiples" }]],
  curvePicture: [
    [sweep(bowl, [{ target: "protein", values: ["20 g", "30 g"] }], { silent: "accept" }), { id: "curve" }],
  ],
  cardPages: [[plan, { people: ["cox"], date: "2026-01-12" }]],
  formatTally: [[bowl.portion("iodine"), { significant: 2 }]],
  withColumn: [[bowl, "thrice", (at: RowView) => at.get("protein").times(3)]],
  withRow: [[bowl, "batch", (at: ColumnView) => at.total()]],
  withConstant: [[bowl, "portion price", "1.50", "GBP"]],
  cellValue: [[bowl, "twice", "portion"]],
  cellReads: [[bowl, "twice", "portion"]],
  cellFeeds: [[bowl, "protein", "portion"]],
  substitutes: [
    [bowl, "rice", { components: ["protein"], avoid: ["soya"], among: ["chickpeas-boiled"], most: 2 }],
  ],
  sweep: [
    [
      bowl,
      [
        { target: "protein", values: ["20 g", "30 g"] },
        { line: "rice", amounts: ["100 g"] },
      ],
      { components: ["energy"], most: 100, silent: "accept" },
    ],
  ],
  table: [[{ title: "A", columns: [{ key: "a", heading: "A" }], rows: [["1"]], notes: ["b"] }]],
  toCsv: [[bowl, { figures: "plain", header: "key", notes: true, ...show }]],
  toDecimal: [["1/3"]],
  toHtml: [[bowl, { rows: 2, ...show }]],
  toMarkdown: [[bowl, { rows: 2, ...show }]],
  toRecipe: [[bowl]],
  toRecords: [[bowl, { figures: "exact" }]],
  toText: [[bowl, { width: 80, rows: 2, ...show }]],
  tablesOf: [[bowl, { rows: 2, ...show }]],
  yieldCodes: [
    [
      {
        source: "camp",
        columns: [["iron"]],
        codes: {},
        yields: [{ source: "camp", codes: { a: ["greens, boiled", "90", "100"] } }],
      },
      "boiled",
    ],
  ],
  notebookDisplay: [[bowl]],
  upperLimits: [[intakes, "1/4"]],
  vitaminDFromIu: [[400]],
  vitaminDToIu: [[10]],
  workbook: [[bowl, { language: britishEnglish }], [{ breakfast: bowl }], [plan]],
};

/** Good calls with every list that `calls` leaves out, to be handed in with holes. */
export const lists: typeof calls = {
  allergenCheck: [[[bowl, bowl], lightweight]],
  amount: [[{ parts: [amount("1 lb"), amount("4 oz")] }]],
  between: [[bowl, "iodine", { like: () => ["tofu-firm"] }]],
  cautionsFor: [[[bowl, bowl], lightweight]],
  compare: [[[bowl, bowl], intakes]],
  convert: [[{ parts: [amount("1 lb"), amount("4 oz")] }, "g"]],
  cookingSchedule: [[plan, { days: ["Sun"], cook: ["Sun"], meals: { breakfast: { eaten: ["Sun"] } } }]],
  energyCheck: [
    [
      bowl,
      {
        system: {
          name: "camp",
          source: "camp",
          parts: { protein: { component: "protein", factor: 4, less: ["alcohol"] } },
        },
      },
    ],
  ],
  energyNeed: [[{ ...lightweight, conditions: ["warfarin"] }]],
  fit: [[bowl, [{ ratioOf: ["omega6", "omega3"], most: 5 }]]],
  foodTable: [
    [
      [
        {
          ...{ id: "a", name: "A", source: "own", per100g: {} },
          measures: [{ name: "piece", grams: 10 }],
          fortifiedWith: ["iron"],
          allergens: ["fish"],
          cautions: [{ code: "hot", text: "Hot.", source: "the cook" }],
          packs: [{ name: "bag", edible: 500 }],
        },
      ],
    ],
  ],
  personCard: [
    [plan, "cox", { about: { conditions: ["none"] }, cautions: [{ text: "Hot.", because: ["salt"] }] }],
  ],
  portionPlan: [
    [
      {
        meals: [{ id: "breakfast", dishes: bowl }],
        people: [
          { id: "cox", avoid: ["fish"], away: ["breakfast"], byMeal: { breakfast: demands } },
          { id: "bow" },
        ],
        answers: [{ meal: "breakfast", line: "salt", answer: "serving" }],
      },
    ],
  ],
  proteinQuality: [[[bowl, bowl]]],
  recipe: [[{ ...bowlDocument, notes: [{ kind: "safety", text: "Hot." }] }]],
  revise: [
    [
      bowl,
      {
        remove: ["salt"],
        add: [{ food: "salt", amount: "1 g" }],
        method: ["Warm it."],
        notes: [{ kind: "safety", text: "Hot." }],
      },
    ],
  ],
  shoppingList: [[[plan, bowl]]],
  toCsv: [[[figures, figures]]],
  toHtml: [[[figures, figures]]],
  toMarkdown: [[[figures, figures]]],
  toRecords: [
    [bowl, { components: ["protein"] }],
    [[figures, figures], { components: ["protein"] }],
  ],
  toText: [[[figures, figures]]],
  tablesOf: [[[figures, figures]]],
  notebookDisplay: [[[figures, figures]]],
};
