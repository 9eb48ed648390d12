/**
 * For the analyst: how far cooked foods reckoned from raw ones are from cooked foods that were analysed. Give
 * it a folder with the files of USDA SR28 in `sr28`, and in `cooked_pairs.json` pairs of a raw and a cooked
 * food with the yield and the retention code of the cooking: `cookedStudy.ts FOLDER`.
 */
import { existsSync, readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { type ComponentId, components, type FoodInput, recipe } from "steelyard";
import { portionsOfMany } from "steelyard/bulk";
import { usdaRetention } from "steelyard/foods";
import { foodsFromSr } from "steelyard/interchange";
import { type Cell, table, toText } from "steelyard/show";

type Pair = { readonly [F in "raw" | "cooked" | "r6"]: string } & { readonly yield: number };
const asked: readonly ComponentId[] = ["protein", "fat", "iron", "zinc", "thiamin", "vitaminC", "folate"];

/** A figure that was analysed (source 1, samples counted); undefined where it was not. */
function analysed(food: FoodInput, id: ComponentId): number | undefined {
  const figure = food.per100g[id];
  if (typeof figure !== "object" || !("value" in figure) || !figure.count) return undefined;
  return figure.sourceCode?.startsWith("1") ? Number(figure.value) : undefined;
}

const middle = (all: readonly number[]): string =>
  ([...all].sort((a, b) => a - b)[all.length >> 1] ?? 0).toFixed(1);

function study(folder: string): void {
  const file = (name: string): string => {
    const path = `${folder}/sr28/${name}.txt`;
    return (existsSync(path) ? readFileSync(path) : gunzipSync(readFileSync(`${path}.gz`))).toString(
      "latin1",
    );
  };
  const [FOOD_DES, NUT_DATA, NUTR_DEF] = ["FOOD_DES", "NUT_DATA", "NUTR_DEF"].map(file) as [
    string,
    string,
    string,
  ];
  const foods = foodsFromSr({ FOOD_DES, NUT_DATA, NUTR_DEF }).foods.withRetention(usdaRetention);
  const pairs = JSON.parse(readFileSync(`${folder}/cooked_pairs.json`, "utf8")) as readonly Pair[];
  const recipes = pairs.map(({ raw, r6, yield: factor }) => {
    const lines = [{ food: `ndb-${raw}`, amount: "100 g", retention: r6 }];
    return recipe({ name: raw, portions: 1, yieldFactor: String(factor), lines });
  });
  const [made] = portionsOfMany(recipes, foods, [...asked, "mass"], { slice: pairs.length });
  const rows = asked.map((id): Cell[] => {
    const off = pairs.flatMap(({ raw, cooked }, i) => {
      const [was, is] = [raw, cooked].map((ndb) => analysed(foods.get(`ndb-${ndb}`), id));
      const reckoned = ((made?.columns[id].value[i] ?? 0) * 100) / (made?.columns.mass.value[i] ?? 1);
      return was && is ? [100 * (reckoned / is - 1)] : [];
    });
    return [components[id].name, String(off.length), middle(off), middle(off.map(Math.abs))];
  });
  const headings = ["Component", "Pairs", "Median error, %", "Median size of error, %"];
  console.log(toText(table({ columns: headings.map((heading) => ({ key: heading, heading })), rows })));
}

if (process.argv[2] !== undefined) study(process.argv[2]);
else console.log("Give the folder that holds sr28 and cooked_pairs.json.");
