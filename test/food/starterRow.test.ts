import { existsSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { rowsAreFrom, starterRows } from "./starterRow.ts";

it.runIf(existsSync(rowsAreFrom))("writes rows as they stand in the tables", () => {
  const { rows } = starterRows([
    {
      id: "sorghum-grain",
      ndb: "20067",
      state: "dry",
      name: "Sorghum, grain, dry",
      more: "allergens: []",
    },
  ]);
  const table = readFileSync(new URL("../../src/food/starter/grains.ts", import.meta.url), "utf8");
  const row = rows.get("sorghum-grain");
  expect(row).toContain("proximates");
  expect(table.includes(row ?? "none")).toBe(true);
});
