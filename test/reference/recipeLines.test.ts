import { existsSync, readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { type FoodTable, trustedTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { linesFromText } from "../../src/interchange/linesFromText.ts";
import type { LineKind, ReadAmount } from "../../src/interchange/readLine.ts";

/**
 * Reads lines that others wrote, each labelled by hand, from a public-domain collection of recipes that lies
 * outside the repository; foods are looked up among the 8,789 descriptions of the USDA National Nutrient
 * Database for Standard Reference, Release 28 (May 2016). Prints the score by field.
 */
const shared = new URL("../../../shared/", import.meta.url);
const lines = new URL("recipes/lines.json", shared);
const recipes = new URL("recipes/recipes.json", shared);
const isHere = existsSync(lines) && existsSync(recipes);
const title = isHere
  ? "lines as others write them"
  : "lines as others write them (skipped: ../shared is not there)";

interface Labelled {
  readonly text: string;
  readonly kind: LineKind;
  readonly amounts: readonly ReadAmount[];
  readonly food: string;
  readonly state: readonly string[];
  readonly preparation: readonly string[];
  readonly optional: boolean;
  readonly sr28: readonly string[];
}

function rows(name: string): string[][] {
  return gunzipSync(readFileSync(new URL(`fooddata/sr28/${name}.txt.gz`, shared)))
    .toString("latin1")
    .split(/\r?\n/)
    .filter((row) => row !== "")
    .map((row) => row.split("^").map((field) => field.replace(/^~|~$/g, "")));
}

function names(): FoodTable {
  const groups = new Map(rows("FD_GROUP").map(([code, group]) => [code, group]));
  const foods = rows("FOOD_DES").map(([id = "", code, name = "", , others = ""]) => {
    const otherNames = others.split(/, ?/).filter((each) => each !== "");
    const group = groups.get(code ?? "") ?? "";
    return { id, name, group, source: "SR28", per100g: {}, ...(otherNames.length > 0 && { otherNames }) };
  });
  return trustedTable(foods);
}

function amountText({ least, most, unit, each }: ReadAmount): string {
  const size = each ? ` each ${each.least} to ${each.most} ${each.unit}` : "";
  return `${least} to ${most} ${unit}${size}`;
}

describe.skipIf(!isHere)(title, () => {
  const foods = isHere ? names() : trustedTable([]);

  it("are read as their labels say, by field", () => {
    const labelled = JSON.parse(readFileSync(lines, "utf8")) as readonly Labelled[];
    const right = { kind: 0, amounts: 0, food: 0, state: 0, preparation: 0, optional: 0, first: 0, among: 0 };
    let sought = 0;
    const sorted = (words: readonly string[]): string => [...words].sort().join("|");
    for (const label of labelled) {
      const read = linesFromText(label.text, foods, { measures: "us" });
      expect(read).toHaveLength(1);
      const [line] = read;
      if (!line) continue;
      right.kind += Number(line.kind === label.kind);
      right.amounts += Number(line.amounts.map(amountText).join() === label.amounts.map(amountText).join());
      right.food += Number(line.food === label.food);
      right.state += Number(sorted(line.state) === sorted(label.state));
      right.preparation += Number(sorted(line.preparation) === sorted(label.preparation));
      right.optional += Number(line.optional === label.optional);
      if (label.sr28.length === 0) continue;
      sought += 1;
      const ids = line.candidates.map(({ id }) => id);
      right.first += Number(label.sr28.includes(ids[0] ?? ""));
      right.among += Number(ids.slice(0, 5).some((id) => label.sr28.includes(id)));
    }
    const { first, among, ...fields } = right;
    const share = (n: number, of: number): string => ((100 * n) / of).toFixed(1);
    const told = [
      ...Object.entries(fields).map(([field, n]) => `${field} ${share(n, labelled.length)} %`),
      `a right food first ${share(first, sought)} %, among five ${share(among, sought)} %`,
    ];
    console.log(`${labelled.length} lines: ${told.join(", ")}`);
    expect(right.kind / labelled.length).toBeGreaterThanOrEqual(0.97);
    expect(right.amounts / labelled.length).toBeGreaterThanOrEqual(0.95);
    expect(right.food / labelled.length).toBeGreaterThanOrEqual(0.85);
    expect(first / sought).toBeGreaterThanOrEqual(0.8);
    expect(among / sought).toBeGreaterThanOrEqual(0.94);
  });

  it("find a starter food", () => {
    const labelled = JSON.parse(readFileSync(lines, "utf8")) as readonly Labelled[];
    const sought = labelled.filter(({ kind, sr28 }) => kind === "ingredient" && sr28.length > 0);
    const held = { held: 0, first: 0 };
    const missing: string[] = [];
    for (const label of sought) {
      const right = starterFoods.ids.filter((id) =>
        label.sr28.some((ndb) => starterFoods.get(id).source.includes(`NDB ${ndb}`)),
      );
      held.held += Number(right.length > 0);
      if (right.length === 0) missing.push(label.food);
      const [line] = linesFromText(label.text, starterFoods, { measures: "us" });
      held.first += Number(right.includes(line?.candidates[0]?.id ?? ""));
    }
    console.log(
      `of ${sought.length} lines with a food of SR28, ${held.held} have a starter food, found first for ${held.first}; none for ${missing.join(", ")}`,
    );
    expect(held.held).toBeGreaterThanOrEqual(110);
    expect(held.first).toBeGreaterThanOrEqual(105);
  });

  it("are read in whole recipes, and none is lost", () => {
    const whole = JSON.parse(readFileSync(recipes, "utf8")) as readonly { readonly text: string }[];
    const visible = (text: string): string => text.replace(/\s+/g, "");
    for (const { text } of whole) {
      const read = linesFromText(text, foods, { measures: "us" });
      expect(visible(read.map((line) => line.text).join(""))).toBe(visible(text));
    }
  });
});
