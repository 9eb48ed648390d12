import { existsSync, readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { bench, describe } from "vitest";
import { foodTable } from "../../src/index.ts";
import { foodsFromCsv, foodsFromSr, foodsToCsv } from "../../src/interchange.ts";

const folder = new URL("../../../shared/fooddata/sr28/", import.meta.url);
const isHere = existsSync(folder);
const names = ["FOOD_DES", "NUTR_DEF", "NUT_DATA", "WEIGHT", "FD_GROUP"] as const;
const text = (name: string): string =>
  new TextDecoder("latin1").decode(gunzipSync(readFileSync(new URL(`${name}.txt.gz`, folder))));

describe.skipIf(!isHere)("all of SR28: 8,789 foods, 679,045 values", () => {
  const files = isHere ? Object.fromEntries(names.map((name) => [name, text(name)])) : {};
  const read = isHere ? foodsFromSr(files as never).foods : foodTable([]);
  const stored = JSON.stringify(read);
  const csv = foodsToCsv(read);
  // Each takes seconds: once is told as well as often.
  const few = { iterations: 1, warmupIterations: 0, time: 0, warmupTime: 0 };

  bench("read from its files", () => void foodsFromSr(files as never), few);
  bench("opened from what it wrote of itself, JSON and all", () => void foodTable(JSON.parse(stored)), few);
  bench("written", () => void JSON.stringify(read), few);
  bench(
    "iron of each food",
    () => {
      const table = foodTable(JSON.parse(stored));
      for (const id of table.ids) void table.get(id).per100g.iron;
    },
    few,
  );
  bench("to values between commas", () => void foodsToCsv(read), few);
  bench("from values between commas", () => void foodsFromCsv(csv), few);
});
