import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { derivations } from "../../src/food/starter/derivation.ts";
import { type PanelName, panels, type StarterColumn } from "../../src/food/starter/row.ts";

/**
 * Writes rows of the starter tables from the published files of USDA SR28 (May 2016), which lie outside the
 * repository: figures as printed, how the source came by each, standard errors, measures, refuse, factors.
 * What we say of a food ourselves is handed in.
 */
const folder = new URL("../../../shared/fooddata/sr28/", import.meta.url);

/** A file that is there where rows can be written. */
export const rowsAreFrom: URL = new URL("NUT_DATA.txt.gz", folder);

/** What we say of a food. */
export interface OwnWords {
  readonly id: string;
  readonly ndb: string;
  readonly state: string;
  readonly name: string;
  /** More fields of the row, as they are to stand there. */
  readonly more?: string;
}

type Fields = readonly string[];

function lines(name: string, wanted: ReadonlySet<string>): readonly Fields[] {
  const text = gunzipSync(readFileSync(new URL(`${name}.txt.gz`, folder))).toString("latin1");
  const rows = text.split("\n").filter((line) => wanted.has(line.slice(1, 6)));
  return rows.map((line) =>
    line
      .replace(/\r/g, "")
      .split("^")
      .map((field) => field.replace(/^~|~$/g, "")),
  );
}

/** A letter for how a figure was come by; throws for a way that derivation.ts does not know. */
function letterOf([, number, , , , source = "", code = "", from = ""]: Fields): string {
  if (source === "7") return "*";
  if (["1", "6", "12", "13"].includes(source) && from === "") return "";
  const found = Object.entries(derivations).find(
    ([, each]) => each.code === code && each.sources.includes(source),
  );
  if (!found)
    throw new Error(`no letter for source ${source}, derivation ${code || "none"} (nutrient ${number})`);
  return found[0];
}

/** Forms in which a food is spooned: a spoon of its leaves or of it ground is a spoon of it. */
const SPOONED =
  /^(cup|tbsp|tsp)(?:, (?:leaves|ground|crumbled|drained)| (?:chopped|slices|sprigs)|, whole or halves)?$/;
const KEPT =
  /^(fl oz|slice|large|medium|small|clove|cube|sheet|cup, (?:chopped|sliced|shredded|diced|grated|crumbled|mashed|cubes))$/;

/** Of a food's weights, those that a kitchen measures by: spoons and cups, plain or of one form, and pieces. */
function measuresOf(weights: readonly Fields[]): readonly (readonly [string, string])[] {
  const found = new Map<string, string>();
  for (const [, , amount = "", name = "", grams = ""] of weights) {
    const kept = SPOONED.exec(name)?.[1] ?? KEPT.exec(name)?.[1];
    const half = amount === ".5" ? 2 : 1;
    if (kept === undefined || (amount !== "1" && amount !== ".5") || found.has(kept)) continue;
    found.set(kept, String(Number(grams) * half));
  }
  return [...found];
}

/** The row of each food, by id, and the numbers of their lenders with their names. */
export function starterRows(foods: readonly OwnWords[]): {
  readonly rows: ReadonlyMap<string, string>;
  readonly lenders: ReadonlyMap<string, string>;
} {
  const wanted = new Set(foods.map(({ ndb }) => ndb));
  const figures = new Map(lines("NUT_DATA", wanted).map((each) => [`${each[0]} ${each[1]}`, each]));
  const weights = lines("WEIGHT", wanted);
  const about = new Map(lines("FOOD_DES", wanted).map((each) => [each[0], each]));
  const borrowed = new Set<string>();
  const rows = new Map<string, string>();
  for (const food of foods) {
    const lent: string[] = [];
    const cell = (column: StarterColumn): string => {
      const told = figures.get(`${food.ndb} ${column.nutrient}`);
      if (!told) return "-";
      const [, , value = "", , , , , from = ""] = told;
      if (from !== "" && letterOf(told) !== "*" && !lent.includes(from)) lent.push(from);
      const place = from !== "" && letterOf(told) !== "*" ? String(lent.indexOf(from)) : "";
      if (place.length > 1) throw new Error("more than ten lenders");
      return `${digitsOf(value, column.places)}${letterOf(told)}${place}`;
    };
    const names = Object.keys(panels) as PanelName[];
    const cells = names.map((name) => [name, panels[name].map(cell)] as const);
    const told = cells.filter(([, some]) => some.some((each) => each !== "-"));
    const errors = errorsOf(
      names.flatMap((name) => panels[name]),
      (n) => figures.get(`${food.ndb} ${n}`),
    );
    const measures = measuresOf(weights.filter(([ndb]) => ndb === food.ndb));
    const density = ["cup", "fl oz", "tbsp", "tsp"].find((unit) => measures.some(([name]) => name === unit));
    const des = about.get(food.ndb) ?? [];
    const [refuse = "", protein = "", fat = "", carbohydrate = ""] = [des[8], des[11], des[12], des[13]];
    for (const each of lent) borrowed.add(each);
    const fields = [
      `id: "${food.id}", ndb: "${food.ndb}",${lent.length > 0 ? ` lenders: "${lent.join(" ")}",` : ""} state: "${food.state}", name: "${food.name}",`,
      ...(errors === "" ? [] : [`errors: "${errors}",`]),
      [
        ...(measures.length > 0 ? [`measures: "${measures.map((each) => each.join(" ")).join("; ")}",`] : []),
        ...(density === undefined ? [] : [`density: "${density}",`]),
        ...(refuse === "" ? [] : [`refuse: "${refuse}",`]),
        ...(protein !== "" && fat !== "" && carbohydrate !== ""
          ? [`factors: "${[protein, fat, carbohydrate].map(plain).join(" ")}",`]
          : []),
      ].join(" "),
      ...(food.more ? [`${food.more},`] : []),
      ...told.map(([name, some]) => `${name}: "${some.join(" ")}",`),
    ].filter((line) => line !== "");
    rows.set(food.id, `      {\n${fields.map((line) => `        ${line}\n`).join("")}      },\n`);
  }
  const names = new Map(lines("FOOD_DES", borrowed).map(([ndb = "", , name = ""]) => [ndb, name]));
  return { rows, lenders: names };
}

/** A figure in units of the last decimal that the source prints in its column. */
function digitsOf(printed: string, places: number): string {
  const [whole = "", decimals = ""] = printed.split(".");
  if (decimals.length !== places) throw new Error(`${printed} does not have ${places} decimals`);
  return String(BigInt(`${whole}${decimals}`));
}

function plain(figure: string): string {
  return figure.replace(/^\./, "0.");
}

function errorsOf(columns: readonly StarterColumn[], told: (nutrient: string) => Fields | undefined): string {
  const tokens: string[] = [];
  let left = 0;
  for (const column of columns) {
    const [, , , count = "", error = "", source] =
      ("acid" in column ? undefined : told(column.nutrient)) ?? [];
    if (source !== "1" || !(Number(error) > 0) || !(Number(count) > 0)) {
      left += 1;
      continue;
    }
    if (left > 0) tokens.push(`~${left}`);
    tokens.push(`${digitsOf(error, 3)}:${count}`);
    left = 0;
  }
  return tokens.join(" ");
}
