import { existsSync, readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import type { ComponentId } from "../../../src/food/components.ts";
import { usdaRetention } from "../../../src/food/data/retentionUsdaR6.ts";

/**
 * Foods of USDA's National Nutrient Database for Standard Reference, Release 28 (May 2016), that were
 * analysed both raw and cooked. The pairs, matched by name, lie outside the repository; those whose
 * cooked food has a number divisible by 3 are kept for judging, and nothing is estimated from them.
 */
const folder = new URL("../../../../shared/fooddata/", import.meta.url);

export const pairsAreHere: boolean = existsSync(new URL("cooked_pairs.json", folder));

/** SR28's numbers of the components that a table of retention factors speaks of. */
export const nutrients: { readonly [C in ComponentId]?: string } = {
  calcium: "301",
  iron: "303",
  magnesium: "304",
  phosphorus: "305",
  potassium: "306",
  sodium: "307",
  zinc: "309",
  copper: "312",
  manganese: "315",
  selenium: "317",
  retinol: "319",
  betaCarotene: "321",
  vitaminE: "323",
  vitaminC: "401",
  thiamin: "404",
  riboflavin: "405",
  niacin: "406",
  pantothenicAcid: "410",
  vitaminB6: "415",
  folate: "417",
  vitaminB12: "418",
  choline: "421",
  vitaminK: "430",
  ash: "207",
};

/** One component of one food, analysed raw and cooked. */
export interface Observation {
  readonly component: ComponentId;
  readonly raw: string;
  readonly cooked: string;
  /** USDA's code for this food cooked this way. */
  readonly code: string;
  /** Cooked mass for each 1 of raw, by the solids that both hold. */
  readonly yieldFactor: number;
  /** The share that is left, as analysed. */
  readonly left: number;
  /** Figures per 100 g, as printed. */
  readonly was: string;
  readonly is: string;
  /** The share that Release 6 says is left; whole where it says nothing. */
  readonly byRelease6: number;
  readonly isForJudging: boolean;
}

interface Pair {
  readonly raw: string;
  readonly cooked: string;
  readonly r6: string;
  readonly yield: number;
  readonly yieldBy: string;
}

/** Every component of every pair of which both figures were analysed (source 1, count above 0) and above 0. */
export function observations(): readonly Observation[] {
  const pairs = (
    JSON.parse(readFileSync(new URL("cooked_pairs.json", folder), "utf8")) as readonly Pair[]
  ).filter(({ yieldBy }) => yieldBy === "solids");
  const figures = analysed(new Set(pairs.flatMap(({ raw, cooked }) => [raw, cooked])));
  return pairs.flatMap(({ raw, cooked, r6, yield: factor }) =>
    Object.entries(nutrients).flatMap(([id, number]): Observation[] => {
      const [was, is] = [figures.get(`${raw} ${number}`), figures.get(`${cooked} ${number}`)];
      if (was === undefined || is === undefined) return [];
      const component = id as ComponentId;
      return [
        {
          ...{ component, raw, cooked, code: r6, yieldFactor: factor, was, is },
          left: (Number(is) * factor) / Number(was),
          byRelease6: release6(r6, component) / 100,
          isForJudging: Number(cooked) % 3 === 0,
        },
      ];
    }),
  );
}

/** What Release 6 leaves of a component, per cent; whole where it says nothing. */
export function release6(code: string, id: ComponentId): number {
  const column = usdaRetention.columns.findIndex((ids) => ids.includes(id));
  const percents = usdaRetention.codes[code]?.[1].split(" ") ?? [];
  return column < 0 ? 100 : Number(percents[column]);
}

/** Analysed figures above 0, by food and nutrient number. */
function analysed(foods: ReadonlySet<string>): ReadonlyMap<string, string> {
  const wanted = new Set(Object.values(nutrients));
  const text = gunzipSync(readFileSync(new URL("sr28/NUT_DATA.txt.gz", folder))).toString("latin1");
  const found = new Map<string, string>();
  for (const line of text.split("\n")) {
    const food = line.slice(1, 6);
    if (!foods.has(food)) continue;
    const [, number = "", value = "", count = "", , source = ""] = line.replaceAll("~", "").split("^");
    if (wanted.has(number) && source === "1" && Number(count) > 0 && Number(value) > 0)
      found.set(`${food} ${number}`, value);
  }
  return found;
}
