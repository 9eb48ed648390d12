import { existsSync, readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { shelves } from "../../src/food/starter/index.ts";
import { type PanelName, panels, type StarterColumn } from "../../src/food/starter/row.ts";

/**
 * The published files of the USDA National Nutrient Database for Standard Reference, Release 28 (May 2016),
 * lie outside the repository. Of each figure of a starter food of which they print a standard error, that
 * and the number of data points stand in the table, as printed.
 */
const folder = new URL("../../../shared/fooddata/sr28/", import.meta.url);
const here = existsSync(new URL("NUT_DATA.txt.gz", folder));

const columns = (Object.keys(panels) as PanelName[]).flatMap(
  (name): readonly StarterColumn[] => panels[name],
);

/** `55:9` is a standard error of 0.055 and a count; `~3` leaves three columns out. */
function statisticsOf(ndb: string, printed: ReadonlyMap<string, string>): string {
  const tokens: string[] = [];
  let left = 0;
  for (const column of columns) {
    const told = "acid" in column ? undefined : printed.get(`${ndb} ${column.nutrient}`);
    if (told === undefined) {
      left += 1;
      continue;
    }
    if (left > 0) tokens.push(`~${left}`);
    tokens.push(told);
    left = 0;
  }
  return tokens.join(" ");
}

function printedStatistics(foods: ReadonlySet<string>): ReadonlyMap<string, string> {
  const text = gunzipSync(readFileSync(new URL("NUT_DATA.txt.gz", folder))).toString("latin1");
  const found = new Map<string, string>();
  for (const line of text.split("\n")) {
    if (!foods.has(line.slice(1, 6))) continue;
    const [food, nutrient, , count = "", error = "", source] = line.replaceAll("~", "").split("^");
    expect(error).toMatch(/^(\d*\.\d{3})?$/);
    // Of a calculated figure an error would be of something else.
    if (error !== "" && Number(error) > 0 && Number(count) > 0 && source === "1")
      found.set(`${food} ${nutrient}`, `${Number(error.replace(".", ""))}:${count}`);
  }
  return found;
}

describe.runIf(here)("standard errors of starter foods", () => {
  it("are those of SR28, as printed", () => {
    const rows = shelves.flat().flatMap(({ foods }) => foods);
    const own = rows.filter(({ dryMatter }) => dryMatter === undefined);
    const printed = printedStatistics(new Set(own.map(({ ndb }) => ndb)));
    const told = own.filter(({ errors }) => errors !== undefined);
    expect(told.length).toBeGreaterThan(100);
    for (const { id, ndb, errors = "" } of own)
      expect([id, errors]).toEqual([id, statisticsOf(ndb, printed)]);
  });
});
