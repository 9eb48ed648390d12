/**
 * Ranks the foods of USDA SR28 by iron per 100 kcal, with who measured it how often.
 *
 * The files are published by the USDA Agricultural Research Service as "USDA National Nutrient Database for
 * Standard Reference, Release 28": FOOD_DES.txt, NUTR_DEF.txt, NUT_DATA.txt and, for names and measures,
 * FD_GROUP.txt and WEIGHT.txt. Unpack them, or leave each packed as .txt.gz, and give their folder:
 *
 *     npx tsx --tsconfig test/tsconfig.json examples/ironRanking.ts path/to/sr28
 *
 * Without a folder it ranks three foods that are made up.
 */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { exact, type Figure } from "steelyard";
import { foodsFromSr, type SrFiles } from "steelyard/interchange";

const folder = process.argv[2];

/** A file of the folder, as Latin-1: the units of NUTR_DEF are not UTF-8. */
function file(name: string): string {
  const path = join(folder ?? "", `${name}.txt`);
  const bytes = existsSync(path) ? readFileSync(path) : gunzipSync(readFileSync(`${path}.gz`));
  return new TextDecoder("latin1").decode(bytes);
}

const madeUp: SrFiles = {
  FOOD_DES: "~1~^~~^~Camp spinach, raw~\n~2~^~~^~Camp lentils, cooked, boiled~\n~3~^~~^~Boathouse biscuit~\n",
  NUTR_DEF: "~208~^~kcal~^~ENERC_KCAL~^~Energy~\n~303~^~mg~^~FE~^~Iron, Fe~\n",
  NUT_DATA: [
    "~1~^~208~^23^0^^~4~^~NC~\n~1~^~303~^2.71^10^0.5^~1~^~A~",
    "~2~^~208~^116^0^^~4~^~NC~\n~2~^~303~^3.33^7^^~1~^~A~",
    "~3~^~208~^460^0^^~4~^~NC~\n~3~^~303~^9.1^0^^~4~^~RC~\n",
  ].join("\n"),
};
const files: SrFiles = folder
  ? {
      FOOD_DES: file("FOOD_DES"),
      NUTR_DEF: file("NUTR_DEF"),
      NUT_DATA: file("NUT_DATA"),
      WEIGHT: file("WEIGHT"),
      FD_GROUP: file("FD_GROUP"),
    }
  : madeUp;

const { foods, figures, leftOut } = foodsFromSr(files);
console.log(`${foods.ids.length} foods, ${figures} figures; left out: ${leftOut.length} nutrients`);

/** A figure that somebody measured in the food itself, and how often; nothing for what was reckoned or taken over. */
function measured(
  figure: Figure | undefined,
): { value: ReturnType<typeof exact>; count: number } | undefined {
  if (typeof figure !== "object" || !("value" in figure) || "toFixed" in figure) return undefined;
  const { value, count = 0, calculated, borrowedFrom, presumed } = figure;
  return calculated === undefined && borrowedFrom === undefined && !presumed
    ? { value: exact(value), count }
    : undefined;
}

const ranked = foods.ids
  .flatMap((id) => {
    const { name, per100g } = foods.get(id);
    const iron = measured(per100g.iron);
    const energy = per100g.energy;
    if (!iron || typeof energy !== "object" || !("value" in energy)) return [];
    const kcal = exact(energy.value as string);
    // Below 20 kcal nobody eats 100 kcal of it.
    return kcal.lt(20) ? [] : [{ name, per100kcal: iron.value.div(kcal).times(100), count: iron.count }];
  })
  .sort((a, b) => b.per100kcal.comparedTo(a.per100kcal));

for (const { name, per100kcal, count } of ranked.slice(0, 15))
  console.log(`${per100kcal.toFixed(2).padStart(7)} mg per 100 kcal  ${name} (${count} measured)`);
