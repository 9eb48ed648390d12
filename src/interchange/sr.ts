import type { ComponentId } from "../food/components.ts";
import { componentIds } from "../food/components.ts";
import type { FoodInput } from "../food/food.ts";
import type { PackedFood } from "../food/packed.ts";
import { type FoodTable, trustedPacked } from "../food/table.ts";
import { exactText } from "../number/digits.ts";
import { type Fault, fault, kindOf, quote, throwIfAny } from "../number/error.ts";
import { exact, minus, over } from "../number/exact.ts";
import { didYouMean } from "../number/near.ts";
import { usdaAdded, usdaNutrients } from "./data/usdaNutrients.ts";
import { densityOf, measuresOf, type PrintedWeight } from "./measuresOf.ts";
import { type LeftOut, LeftOuts, Rows, type WhyLeftOut } from "./rows.ts";
import { stateOf } from "./stateOf.ts";
import { checkText, linesOf, type TextIn } from "./textIn.ts";
import { figureUnit, toUnitOf } from "./units.ts";
import { INSTEAD, provenance } from "./usdaFigures.ts";

/** The files of SR28 by their names, as they were published: read as Latin-1 text, whole or piece by piece. */
export interface SrFiles {
  readonly FOOD_DES: TextIn;
  readonly NUTR_DEF: TextIn;
  readonly NUT_DATA: TextIn;
  readonly WEIGHT?: TextIn;
  readonly FD_GROUP?: TextIn;
  readonly FOOTNOTE?: TextIn;
  /** The release's other files may come along unread: figures keep the codes that SRC_CD and DERIV_CD spell out. */
  readonly SRC_CD?: TextIn;
  readonly DERIV_CD?: TextIn;
  readonly LANGUAL?: TextIn;
  readonly LANGDESC?: TextIn;
  readonly DATA_SRC?: TextIn;
  readonly DATSRCLN?: TextIn;
}

/** Foods of a table, how many of its figures they hold, and what found no place. */
export interface FoodsRead {
  readonly foods: FoodTable;
  readonly figures: number;
  readonly leftOut: readonly LeftOut[];
}

/** Faults after which no more are looked for. */
const MOST_FAULTS = 100;
const FILES = ["FOOD_DES", "NUTR_DEF", "NUT_DATA", "WEIGHT", "FD_GROUP", "FOOTNOTE"] as const;
const UNREAD = ["SRC_CD", "DERIV_CD", "LANGUAL", "LANGDESC", "DATA_SRC", "DATSRCLN"] as const;
const NEEDED: ReadonlySet<string> = /* @__PURE__ */ new Set(["FOOD_DES", "NUTR_DEF", "NUT_DATA"]);

/**
 * Foods from the files of the USDA National Nutrient Database for Standard Reference, Release 28, all or
 * some of them, each figure as it is printed, with its standard error, count, least, most and codes, and
 * how the source came by it. Ids are `ndb-01001`; weights are measures for one of each; the state is that
 * which the description tells of (`stateOf`). Each figure is in its component, or counted among
 * `leftOut`.
 *
 * Throws `foods-unreadable`, with the food and the line, for what does not read as these files do.
 *
 * @example
 * ```ts
 * const { foods } = foodsFromSr({
 *   FOOD_DES: "~11090~^~1100~^~Broccoli, raw~^~BROCCOLI,RAW~^~~^~~^~Y~^~Leaves and tough stalks~^39^~Brassica oleracea~^6.25^2.44^8.37^3.57",
 *   NUTR_DEF: "~303~^~mg~^~FE~^~Iron, Fe~^~2~^~5400~",
 *   NUT_DATA: "~11090~^~303~^0.73^33^0.031^~1~^~A~^~~^~~^4^0.52^1.05^^^^~~^08/2013^",
 * });
 * const { state, per100g } = foods.get("ndb-11090");
 * console.log(state, JSON.stringify(per100g.iron)); // => raw {"value":"0.73","sourceCode":"1 A","error":"0.031","count":33,"least":"0.52","most":"1.05"}
 * ```
 */
export function foodsFromSr(files: SrFiles): FoodsRead {
  checkFiles(files);
  const faults: Fault[] = [];
  const groups = new Map<string, string>();
  for (const [code = "", name = ""] of rowsIn(files.FD_GROUP, "FD_GROUP")) groups.set(code, name);
  const foods = new Map<string, readonly string[]>();
  for (const fields of rowsIn(files.FOOD_DES, "FOOD_DES")) {
    const [ndb = "", , name = ""] = fields;
    if (name === "") refuse(faults, "FOOD_DES", ndb, "it has no description");
    foods.set(ndb, fields);
  }
  const read = readFigures(files, foods, faults);
  const weights = byFood(files.WEIGHT, "WEIGHT", faults, ([, , amount = "", name = "", grams = ""], fail) => {
    if (!isAbove0(amount) || !isAbove0(grams) || name === "")
      fail(`${quote(name)} is no weight of something`);
    return { amount, name, grams };
  });
  const footnotes = byFood(files.FOOTNOTE, "FOOTNOTE", faults, ([, , of = "", nutrient = "", text = ""]) => {
    return { of, ...(nutrient && { nutrient }), text };
  });
  throwIfAny(faults);
  const made = [...foods].map(([ndb, fields]): PackedFood => {
    const about = foodOf(fields, weights.get(ndb) ?? [], {
      group: groups.get(fields[1] ?? ""),
      water: read.rows.value(ndb, "water"),
      footnotes: footnotes.get(ndb),
      added: read.added.get(ndb),
    });
    return { ...about, per100g: read.rows.row(ndb) };
  });
  const { figures, leftOut } = read;
  return {
    foods: trustedPacked({ foods: made, components: componentIds, marks: read.rows.marks }),
    figures,
    leftOut,
  };
}

function checkFiles(files: unknown): void {
  if (typeof files !== "object" || files === null)
    throw fault(
      "foods-unreadable",
      `expected the files, got ${kindOf(files)}`,
      `give ${FILES.join(", ")} by name`,
    );
  const known: readonly string[] = [...FILES, ...UNREAD];
  const strange = Object.keys(files).find((name) => !known.includes(name));
  if (strange !== undefined) {
    const hint = didYouMean(strange, FILES, `give ${FILES.join(", ")}`);
    throw fault("foods-unreadable", `no file is called ${quote(strange)}`, hint, [strange]);
  }
  for (const name of FILES) {
    const text = (files as { readonly [file: string]: unknown })[name];
    if (text !== undefined || NEEDED.has(name)) checkText(text, name);
  }
}

/** The fields of each line of a file: parted by `^`, text between `~`. */
function* rowsIn(text: TextIn | undefined, name: string): Generator<readonly string[]> {
  if (text === undefined) return;
  for (const line of linesOf(text, name)) yield line.replaceAll("~", "").split("^");
}

function refuse(faults: Fault[], file: string, food: string, message: string): void {
  if (faults.length > MOST_FAULTS) return;
  const hint = "give the files as they were published, or mend that line";
  faults.push({ code: "foods-unreadable", path: [file], message: `${food}: ${message}`, hint });
  if (faults.length > MOST_FAULTS) throwIfAny(faults);
}

interface Nutrient {
  readonly number: string;
  readonly name: string;
  readonly unit: string;
  readonly tag: string;
}

function nutrientsIn(files: SrFiles): ReadonlyMap<string, Nutrient> {
  const found = new Map<string, Nutrient>();
  for (const [number = "", unit = "", tag = "", name = ""] of rowsIn(files.NUTR_DEF, "NUTR_DEF"))
    found.set(number, { number, unit, tag, name });
  return found;
}

interface FiguresRead {
  readonly rows: Rows;
  readonly figures: number;
  readonly leftOut: readonly LeftOut[];
  /** What was added to foods as a nutrient. */
  readonly added: ReadonlyMap<string, ReadonlySet<ComponentId>>;
}

function readFigures(
  files: SrFiles,
  foods: ReadonlyMap<string, readonly string[]>,
  faults: Fault[],
): FiguresRead {
  const nutrients = nutrientsIn(files);
  const leftOut = new LeftOuts();
  const rows = new Rows();
  const added = new Map<string, Set<ComponentId>>();
  const places = new Map<string, string>();
  let figures = 0;
  const nameOf = (ndb: string): string => `${foods.get(ndb)?.[2] ?? "a food"} (NDB ${ndb})`;
  const placeOf = (source: string, derivation: string, from: string): string => {
    const key = `${source} ${derivation} ${from}`;
    let place = places.get(key);
    if (place === undefined) {
      const mark = provenance(source, derivation, from === "" ? undefined : nameOf(from));
      place = Object.keys(mark).length === 0 ? "" : String(rows.placeOf(mark));
      places.set(key, place);
    }
    return place;
  };
  const add = (ndb: string, id: ComponentId): void => {
    added.set(ndb, (added.get(ndb) ?? new Set()).add(id));
  };
  const put = (row: readonly string[], nutrient: Nutrient, id: ComponentId, otherwise: WhyLeftOut): void => {
    const [ndb = "", code = "", value = "", count = "", error = "", source = "", derivation = "", from = ""] =
      row;
    const [mark = "", , least = "", most = ""] = row.slice(8);
    const { name, unit } = nutrient;
    const known = figureUnit(unit);
    const own = known === undefined ? undefined : toUnitOf(id, value, known);
    if (known === undefined || own === undefined) {
      leftOut.add({ code, name, unit, why: "unit" });
      return;
    }
    const inOwn = (text: string): string =>
      text === value || text === "" ? text && own : (toUnitOf(id, text, known) ?? text);
    const place = placeOf(source, derivation, from);
    const many = Number(count) > 0 ? count : "";
    const cell = `${own}:${place}:${inOwn(error)}:${many}:${inOwn(least)}:${inOwn(most)}`.replace(/:+$/, "");
    if (mark === "Y" && Number(value) > 0) add(ndb, id);
    if (rows.put(ndb, id, cell)) figures += 1;
    else leftOut.add({ code, name, unit, why: otherwise });
  };
  const instead: { readonly row: readonly string[]; readonly nutrient: Nutrient }[] = [];
  for (const row of rowsIn(files.NUT_DATA, "NUT_DATA")) {
    const [ndb = "", number = "", value = "", count = "", error = ""] = row;
    const [, , least = "", most = ""] = row.slice(8);
    const nutrient = nutrients.get(number);
    if (!foods.has(ndb) || !nutrient) {
      const message = foods.has(ndb) ? `NUTR_DEF has no nutrient ${number}` : "FOOD_DES has no such food";
      refuse(faults, "NUT_DATA", foods.has(ndb) ? nameOf(ndb) : `NDB ${ndb}`, message);
      continue;
    }
    const { name, unit } = nutrient;
    const odd = [value, least, most, error, count].find(
      (each, i) => (i === 0 || each !== "") && !isNumber(each),
    );
    if (odd !== undefined) {
      refuse(faults, "NUT_DATA", nameOf(ndb), `${name}: ${quote(odd)} is not a number`);
      continue;
    }
    const of = { code: number, name, unit };
    const part = usdaAdded[number];
    if (part !== undefined) {
      if (Number(value) > 0) add(ndb, part);
      leftOut.add({ ...of, why: "added" });
      continue;
    }
    const id = Object.hasOwn(usdaNutrients, number) ? usdaNutrients[number] : undefined;
    const other = INSTEAD.get(number);
    if (other !== undefined && rows.has(ndb, other)) leftOut.add({ ...of, why: "told-elsewhere" });
    else if (other !== undefined) instead.push({ row, nutrient });
    else if (id === undefined) leftOut.add({ ...of, why: "no-component" });
    else put(row, nutrient, id, "second");
  }
  for (const { row, nutrient } of instead) {
    const id = INSTEAD.get(nutrient.number);
    if (id !== undefined) put(row, nutrient, id, "told-elsewhere");
  }
  return { rows, figures, leftOut: leftOut.list(), added };
}

const isNumber = (text: string): boolean => /^(?:\d+\.?\d*|\.\d+)$/.test(text);
const isAbove0 = (text: string): boolean => isNumber(text) && Number(text) > 0;

function byFood<T>(
  text: TextIn | undefined,
  name: string,
  faults: Fault[],
  read: (fields: readonly string[], fail: (message: string) => void) => T,
): ReadonlyMap<string, readonly T[]> {
  const found = new Map<string, T[]>();
  for (const fields of rowsIn(text, name)) {
    const [ndb = ""] = fields;
    const made = read(fields, (message) => refuse(faults, name, `NDB ${ndb}`, message));
    const list = found.get(ndb);
    if (list) list.push(made);
    else found.set(ndb, [made]);
  }
  return found;
}

interface Beside {
  readonly group: string | undefined;
  readonly water: string | undefined;
  readonly footnotes: readonly { readonly [field: string]: string }[] | undefined;
  readonly added: ReadonlySet<ComponentId> | undefined;
}

function foodOf(
  fields: readonly string[],
  weights: readonly PrintedWeight[],
  { group, water, footnotes, added }: Beside,
): Omit<FoodInput, "per100g"> {
  const [ndb = "", , name = "", , common = "", maker = "", , refuseText = "", refused = "", scientific = ""] =
    fields;
  const [nitrogen = "", protein = "", fat = "", carbohydrate = ""] = fields.slice(10);
  const state = stateOf(name, group, water === undefined ? undefined : Number(water));
  const measures = measuresOf(weights);
  const meta = {
    ...(maker && { maker }),
    ...(scientific && { scientificName: scientific }),
    ...(refuseText && { refuse: refuseText }),
    ...(nitrogen && { nitrogenFactor: nitrogen }),
    ...(footnotes && { footnotes }),
  };
  return {
    id: `ndb-${ndb}`,
    name,
    ...(state && { state }),
    ...(group && { group }),
    source: `USDA SR28, NDB ${ndb}`,
    ...(common && { otherNames: common.split(",").map((each) => each.trim()) }),
    ...(measures.length > 0 && { measures, measuredWith: "us" as const, ...densityOf(measures) }),
    ...(isNumber(refused) && Number(refused) < 100 && { edibleShare: edibleShare(refused) }),
    ...([protein, fat, carbohydrate].every(isNumber) && { energyFactors: { protein, fat, carbohydrate } }),
    ...(added && { fortifiedWith: [...added] }),
    ...(Object.keys(meta).length > 0 && { meta }),
  };
}

function edibleShare(refused: string): string {
  return exactText(over(minus(exact("100"), exact(refused)), exact("100")));
}
