import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import type { YieldRow } from "../../../src/food/yieldTable.ts";
import { median } from "./estimate.ts";
import { observations } from "./pairs.ts";
import { ways } from "./ways.ts";

const folder = new URL("../../../../shared/fooddata/sr28/", import.meta.url);

/** The fields of each line of a file of SR28. */
function lines(name: string): readonly (readonly string[])[] {
  const text = gunzipSync(readFileSync(new URL(`${name}.txt.gz`, folder))).toString("latin1");
  const rows = text.split("\n").filter((line) => line.trim() !== "");
  return rows.map((line) =>
    line
      .replace(/\r/g, "")
      .split("^")
      .map((field) => field.replace(/^~|~$/g, "").replace(/\s+/g, " ")),
  );
}

/** What 1 of each unit weighs, grams, by the definition of the avoirdupois pound. */
const GRAMS: Readonly<Record<string, string>> = { g: "1", lb: "453.59237", oz: "28.349523125" };

/** Of a measure that prints what went in: how much, and its unit. Whatever stands with its bone is left out. */
function rawOf(measure: string): readonly [number: string, unit: string] | undefined {
  if (/refuse|ready-to|bone/.test(measure)) return undefined;
  const meat = /yield from (?:1 )?(?:raw (?:steak|roast) weighing )?(\d+(?:\/\d+)?) ?(lb|oz|g)\b/i.exec(
    measure,
  );
  const pack = /^package \(?(\d+) (oz)\)?,? yields?$/.exec(measure);
  const dry = /^(oz), dry, yields$/.exec(measure);
  const [number, unit] = dry ? ["1", "oz"] : [(meat ?? pack)?.[1], (meat ?? pack)?.[2]?.toLowerCase()];
  return number && unit ? [number, unit] : undefined;
}

/**
 * Yields that SR28 prints in its household weights, each with the mass that it came from: meat without its
 * bone, frozen vegetables by the pack, couscous and instant oats by the dry ounce. Left out are twins: with
 * salt where the food without has one, grades and the lean alone where the whole has; separable fat; and
 * a steak of 233 g from 233 g (13391), which is a slip.
 */
export function weighedYields(): Readonly<Record<string, YieldRow>> {
  const names = new Map(lines("FOOD_DES").map(([id = "", , name = ""]) => [id, name]));
  const found = new Map<string, YieldRow>();
  for (const [id = "", , amount = "", measure = "", grams = ""] of lines("WEIGHT")) {
    const raw = rawOf(measure);
    const name = names.get(id) ?? "";
    if (!raw || amount !== "1" || found.has(id) || id === "13391") continue;
    if (/ raw$|with salt$|separable fat/.test(name)) continue;
    const [number, unit] = raw;
    const [top = "", bottom = "1"] = number.split("/");
    const size = Number(GRAMS[unit]) === 1 ? top : text((Number(top) / Number(bottom)) * Number(GRAMS[unit]));
    found.set(id, [name.replace(/, without salt$/, ""), grams, size]);
  }
  const whole = new Set([...found.values()].map(([name]) => name));
  const twins = ([name]: YieldRow): boolean =>
    ["choice", "select"].some(
      (grade) => whole.has(name.replace(`, ${grade},`, ", all grades,")) && name.includes(`, ${grade},`),
    ) ||
    (name.includes("separable lean only") && whole.has(name.replace("lean only", "lean and fat")));
  return Object.fromEntries([...found].filter(([, row]) => !twins(row)).sort());
}

function text(x: number): string {
  return String(Number(x.toFixed(9)));
}

/**
 * What is usual for each way of cooking: the median of its pairs' yields by the solids that both hold (none
 * of a pair kept for judging), with the ends of the middle nine tenths and the count; of 3 pairs and more.
 */
export function usualBySolids(): Readonly<Record<string, YieldRow>> {
  const all = observations().filter((o) => !o.isForJudging);
  return Object.fromEntries(
    ways.flatMap(({ code, name, usda }): [string, YieldRow][] => {
      const pairs = new Map(
        all.filter((o) => o.code === usda).map((o) => [`${o.raw} ${o.cooked}`, o.yieldFactor]),
      );
      const some = [...pairs.values()].sort((a, b) => a - b);
      if (some.length < 3) return [];
      const at = (share: number): string => (some[Math.round(share * (some.length - 1))] ?? 1).toFixed(2);
      return [[code, [name, median(some).toFixed(2), "1", `${at(0.05)}-${at(0.95)}:${some.length}`]]];
    }),
  );
}

const row = ([code, told]: readonly [string, YieldRow]): string =>
  `    ${JSON.stringify(code)}: ${JSON.stringify(told)},`;

/** The data file, as the two make it. */
export function writtenYields(): string {
  return `import type { YieldTable } from "../yieldTable.ts";

/**
 * What foods weigh cooked, grams, and what they were raw.
 *
 * Source: USDA National Nutrient Database for Standard Reference, Release 28 (May 2016), a public-domain
 * work of the US government, file WEIGHT: measures that say what they are the yield of ("unit, cooked
 * (yield from 1 lb raw meat)"), by the NDB number of the cooked food, its name as printed. Meat is without
 * its bone on both sides. Written by \`test/reference/retention/yields.ts\`, which says what was left out.
 */
export const weighedYields: YieldTable = {
  source: "USDA SR28 (2016), household weights that name what they are the yield of",
  // biome-ignore format: one food a line
  codes: {
${Object.entries(weighedYields()).map(row).join("\n")}
  },
};

/**
 * What a way of cooking usually leaves of 1 of raw, by mass, with the ends of the middle nine tenths of foods and their number.
 *
 * Source: worked out from the foods of the same release that are printed raw and cooked, paired by name, as
 * the ratio of their solids (100 less water): what cooks away with its juice or dissolves is counted as
 * kept, so that pasta and meat come out a few per cent high. The median of each way's pairs; none of those
 * kept for judging retention factors. Written by the same script.
 */
export const usualYields: YieldTable = {
  source: "median of yields by solids of foods that USDA SR28 (2016) gives raw and cooked",
  // biome-ignore format: one way of cooking a line
  codes: {
${Object.entries(usualBySolids()).map(row).join("\n")}
  },
};
`;
}
