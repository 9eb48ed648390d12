import { readInto } from "../document/read.ts";
import { isRecord, refuseUnsafe } from "../document/safe.ts";
import { componentIds } from "../food/components.ts";
import type { FoodInput } from "../food/food.ts";
import type { PackedFood } from "../food/packed.ts";
import { foodSchema } from "../food/schema.ts";
import { trustedPacked } from "../food/table.ts";
import { type Fault, fault, kindOf, quote, throwIfAny } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import { csvRecords } from "./csvRecords.ts";
import { densityOf, measuresOf, type PrintedWeight } from "./measuresOf.ts";
import type { FoodsRead } from "./sr.ts";
import { stateOf } from "./stateOf.ts";
import { checkText, type TextIn } from "./textIn.ts";
import { UsdaFigures } from "./usdaFigures.ts";

/** Files of a release as CSV, by name; columns are found by their headings. */
export interface FdcFiles {
  readonly "food.csv": TextIn;
  readonly "nutrient.csv": TextIn;
  readonly "food_nutrient.csv": TextIn;
  readonly "food_portion.csv"?: TextIn;
  readonly "measure_unit.csv"?: TextIn;
  readonly "food_category.csv"?: TextIn;
  /** What `derivation_id` stands for. */
  readonly "food_nutrient_derivation.csv"?: TextIn;
}

const FILES = [
  "food.csv",
  "nutrient.csv",
  "food_nutrient.csv",
  "food_portion.csv",
  "measure_unit.csv",
  "food_category.csv",
  "food_nutrient_derivation.csv",
] as const;
const NEEDED: readonly string[] = ["food.csv", "nutrient.csv", "food_nutrient.csv"];

/** Faults after which no more are looked for. */
const MOST_FAULTS = 100;

/**
 * Foods of the USDA's FoodData Central: its JSON, as text or read (a release, a list of foods, or one food),
 * or the files of a release as CSV. Ids are `fdc-321358`. Nutrients are told by their numbers, which are
 * SR28's; energy is the table's own (208), else by specific factors (958), else by general ones (957), and
 * total sugars are those of the label where the others are not given. Each figure is in its component, or
 * counted among `leftOut`.
 *
 * Throws `foods-unreadable` and the codes of a food, each with the food.
 *
 * @example
 * ```ts
 * const { foods } = foodsFromFdc({
 *   fdcId: 1,
 *   description: "Kale, raw",
 *   dataType: "Foundation",
 *   foodNutrients: [{ nutrient: { number: "303", name: "Iron, Fe", unitName: "mg" }, amount: 1.6, dataPoints: 8 }],
 * });
 * console.log(foods.get("fdc-1").state, JSON.stringify(foods.get("fdc-1").per100g.iron)); // => raw {"value":"1.6","count":8}
 * ```
 */
export function foodsFromFdc(given: string | object | FdcFiles): FoodsRead {
  const reader = new Reader();
  const data = typeof given === "string" ? parsed(given) : given;
  if (isFiles(data)) reader.addFiles(data);
  else {
    refuseUnsafe(data, "foods-unreadable");
    for (const food of foodsIn(data)) reader.addJson(food);
  }
  return reader.made();
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    const hint = 'give a release\'s JSON whole, or its CSV files by name: { "food.csv": … }';
    throw fault("foods-unreadable", "this text is no JSON", hint);
  }
}

function isFiles(data: unknown): data is FdcFiles {
  return isRecord(data) && Object.keys(data).some((name) => name.endsWith(".csv"));
}

/** The foods of a release, of a list, or the one that it is. */
function foodsIn(data: unknown): readonly unknown[] {
  if (Array.isArray(data)) return data;
  if (isRecord(data)) {
    if ("foodNutrients" in data) return [data];
    const lists = Object.entries(data).filter(
      ([name, list]) => /Foods$|^foods$/.test(name) && Array.isArray(list),
    );
    if (lists.length > 0) return lists.flatMap(([, list]) => list as unknown[]);
  }
  const hint = "give FoodData Central's JSON: a release ({ FoundationFoods: […] }), a list of foods, or one";
  throw fault("foods-unreadable", `no foods of FoodData Central in ${kindOf(data)}`, hint);
}

interface About {
  readonly fdcId: string;
  readonly description: string;
  readonly dataType: string;
  readonly category: string;
}

type Row = { readonly [column: string]: string };

/** Text of a field of JSON, however it is written there. */
function textOf(data: unknown, ...path: readonly string[]): string {
  let at = data;
  for (const field of path) at = isRecord(at) && Object.hasOwn(at, field) ? at[field] : undefined;
  return typeof at === "string" || typeof at === "number" ? String(at) : "";
}

class Reader {
  readonly #figures = new UsdaFigures();
  readonly #foods = new Map<string, About>();
  readonly #weights = new Map<string, PrintedWeight[]>();
  readonly #more = new Map<string, Partial<FoodInput>>();
  readonly #faults: Fault[] = [];

  addJson(food: unknown): void {
    const fdcId = textOf(food, "fdcId");
    const about = {
      fdcId,
      description: textOf(food, "description"),
      dataType: textOf(food, "dataType"),
      category: textOf(food, "foodCategory", "description") || textOf(food, "foodCategory"),
    };
    if (!isRecord(food) || !this.#addFood(about)) return;
    if (/^ml/i.test(textOf(food, "servingSizeUnit")))
      this.#refuse(
        about.description,
        "its figures may be of 100 ml",
        "leave it out, or give it as CSV of 100 ml with its density",
      );
    for (const each of listOf(food.foodNutrients)) {
      const number = textOf(each, "nutrient", "number") || textOf(each, "number");
      const value = textOf(each, "amount");
      // What a release lists without an amount is a heading, or not known.
      if (value === "") continue;
      this.#addFigure(fdcId, {
        number,
        name: textOf(each, "nutrient", "name") || textOf(each, "name"),
        unit: textOf(each, "nutrient", "unitName") || textOf(each, "unitName"),
        value,
        count: textOf(each, "dataPoints"),
        least: textOf(each, "min"),
        most: textOf(each, "max"),
        derivation: textOf(each, "foodNutrientDerivation", "code") || textOf(each, "derivationCode"),
        source: textOf(each, "foodNutrientDerivation", "foodNutrientSource", "code"),
      });
    }
    for (const each of listOf(food.foodPortions))
      this.#addWeight(fdcId, {
        amount: textOf(each, "amount") || textOf(each, "value"),
        unit: textOf(each, "measureUnit", "abbreviation") || textOf(each, "measureUnit", "name"),
        modifier: textOf(each, "modifier"),
        description: textOf(each, "portionDescription"),
        grams: textOf(each, "gramWeight"),
      });
    for (const each of listOf(food.nutrientConversionFactors)) {
      const [protein, fat, carbohydrate] = ["proteinValue", "fatValue", "carbohydrateValue"].map((name) =>
        textOf(each, name),
      );
      if (protein && fat && carbohydrate)
        this.#more.set(fdcId, { energyFactors: { protein, fat, carbohydrate } });
    }
  }

  addFiles(files: FdcFiles): void {
    const strange = Object.keys(files).find((name) => !FILES.some((each) => each === name));
    if (strange !== undefined)
      throw fault(
        "foods-unreadable",
        `no file of these is called ${quote(strange)}`,
        didYouMean(strange, FILES, `give ${FILES.join(", ")}`),
        [strange],
      );
    for (const name of FILES)
      if (files[name] !== undefined || NEEDED.includes(name)) checkText(files[name], name);
    const categories = this.#named(files["food_category.csv"], "food_category.csv", "description");
    const units = this.#named(files["measure_unit.csv"], "measure_unit.csv", "name");
    const derivations = this.#named(
      files["food_nutrient_derivation.csv"],
      "food_nutrient_derivation.csv",
      "code",
    );
    for (const row of this.#rowsIn(files["food.csv"], "food.csv", ["fdc_id", "description"])) {
      const {
        fdc_id: fdcId = "",
        description = "",
        data_type: dataType = "",
        food_category_id: category = "",
      } = row;
      this.#addFood({ fdcId, description, dataType, category: categories.get(category) ?? "" });
    }
    const nutrients = new Map<string, Row>();
    for (const row of this.#rowsIn(files["nutrient.csv"], "nutrient.csv", ["id", "name", "unit_name"]))
      nutrients.set(row.id ?? "", row);
    for (const row of this.#rowsIn(files["food_nutrient.csv"], "food_nutrient.csv", [
      "fdc_id",
      "nutrient_id",
      "amount",
    ])) {
      const { fdc_id: fdcId = "", nutrient_id: id = "", amount: value = "" } = row;
      const nutrient = nutrients.get(id);
      const food = this.#foods.get(fdcId);
      if (!food || !nutrient) {
        const message = food ? `nutrient.csv has no nutrient ${id}` : "food.csv has no such food";
        this.#refuse(food?.description ?? `FDC ${fdcId}`, message, "give the files of one release");
        continue;
      }
      if (value === "") continue;
      const { nutrient_nbr: number = "", name = "", unit_name: unit = "" } = nutrient;
      const {
        data_points: count = "",
        min: least = "",
        max: most = "",
        derivation_id: derivation = "",
      } = row;
      const told = derivations.get(derivation) ?? "";
      this.#addFigure(fdcId, {
        number: number || id,
        name,
        unit,
        value,
        count,
        least,
        most,
        derivation: told,
      });
    }
    for (const row of this.#rowsIn(files["food_portion.csv"], "food_portion.csv", [
      "fdc_id",
      "gram_weight",
    ])) {
      const {
        fdc_id: fdcId = "",
        amount = "",
        modifier = "",
        gram_weight: grams = "",
        portion_description: description = "",
      } = row;
      if (this.#foods.has(fdcId))
        this.#addWeight(fdcId, {
          amount,
          unit: units.get(row.measure_unit_id ?? "") ?? "",
          modifier,
          description,
          grams,
        });
    }
  }

  made(): FoodsRead {
    throwIfAny(this.#faults);
    const figures = this.#figures.finish();
    const foods: PackedFood[] = [];
    for (const [fdcId, { description, dataType, category }] of this.#foods) {
      const water = this.#figures.rows.value(fdcId, "water");
      const state = stateOf(description, category, water === undefined ? undefined : Number(water));
      const measures = measuresOf(this.#weights.get(fdcId) ?? []);
      const added = this.#figures.added.get(fdcId);
      const food = {
        id: `fdc-${fdcId}`,
        name: description,
        ...(state && { state }),
        ...(category && { group: category }),
        source: `USDA FoodData Central${dataType && `, ${dataType}`}, FDC ${fdcId}`,
        ...(measures.length > 0 && { measures, measuredWith: "us" as const, ...densityOf(measures) }),
        ...this.#more.get(fdcId),
        ...(added && { fortifiedWith: [...added] }),
        per100g: {},
      };
      const before = this.#faults.length;
      const sound = readInto(this.#faults, foodSchema(), food, "food-malformed", [`fdc-${fdcId}`]);
      if (this.#faults.length > before) continue;
      if (sound) foods.push({ ...sound, per100g: this.#figures.rows.row(fdcId) });
    }
    throwIfAny(this.#faults);
    const packing = { components: componentIds, marks: this.#figures.rows.marks };
    return { foods: trustedPacked({ foods, ...packing }), figures, leftOut: this.#figures.left.list() };
  }

  #addFood(about: About): boolean {
    const { fdcId, description } = about;
    if (fdcId === "" || description === "") {
      this.#refuse(
        description || `FDC ${fdcId}`,
        "a food without its fdcId or description",
        "give foods as FoodData Central does",
      );
      return false;
    }
    if (this.#foods.has(fdcId)) {
      this.#refuse(description, `two foods have the number ${fdcId}`, "give each food once");
      return false;
    }
    this.#foods.set(fdcId, about);
    return true;
  }

  #addFigure(fdcId: string, figure: Parameters<UsdaFigures["add"]>[1]): void {
    const { value, count = "", least = "", most = "", name } = figure;
    const odd = [value, least, most, count].find((each, i) => (i === 0 || each !== "") && !isNumber(each));
    if (odd === undefined) this.#figures.add(fdcId, figure);
    else
      this.#refuse(
        this.#foods.get(fdcId)?.description ?? fdcId,
        `${name}: ${quote(odd)} is no figure`,
        "give figures in digits, 0 or more",
      );
  }

  /** A weight by its unit and modifier; where the unit is not determined, the words stand in the modifier or the description. */
  #addWeight(fdcId: string, of: { readonly [part: string]: string }): void {
    const { amount = "", unit = "", modifier = "", description = "", grams = "" } = of;
    const named = unit === "" || unit === "undetermined" ? [modifier || description] : [unit, modifier];
    const name = named.filter((each) => each !== "").join(", ");
    if (name === "" || !isNumber(grams) || Number(grams) === 0) return;
    const many = isNumber(amount) && Number(amount) > 0 ? amount : "1";
    const all = this.#weights.get(fdcId) ?? [];
    all.push({ amount: many, name, grams });
    this.#weights.set(fdcId, all);
  }

  #named(text: TextIn | undefined, name: string, column: string): ReadonlyMap<string, string> {
    const found = new Map<string, string>();
    for (const row of this.#rowsIn(text, name, ["id", column])) found.set(row.id ?? "", row[column] ?? "");
    return found;
  }

  *#rowsIn(text: TextIn | undefined, name: string, needed: readonly string[]): Generator<Row> {
    if (text === undefined) return;
    const records = csvRecords(text, name, (message, line) =>
      this.#refuse(name, `line ${line}: ${message}`, "give the file as it was published"),
    );
    const head = records.next();
    const headings = head.done ? [] : head.value.fields;
    const missing = needed.filter((each) => !headings.includes(each));
    if (missing.length > 0)
      throw fault(
        "foods-unreadable",
        `${name} has no column ${missing.join(", ")}`,
        "give the file as it was published, with its headings",
        [name],
      );
    for (const { fields } of records)
      yield Object.fromEntries(headings.map((each, i) => [each, fields[i] ?? ""]));
  }

  #refuse(food: string, message: string, hint: string): void {
    this.#faults.push({ code: "foods-unreadable", path: [food], message: `${food}: ${message}`, hint });
    if (this.#faults.length > MOST_FAULTS) throwIfAny(this.#faults);
  }
}

const isNumber = (text: string): boolean => /^\d+(?:\.\d+)?(?:e-?\d+)?$/.test(text);

function listOf(given: unknown): readonly unknown[] {
  return Array.isArray(given) ? given : [];
}
