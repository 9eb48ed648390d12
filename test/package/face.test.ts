/**
 * The public face, held against committed lists, so that no name comes, goes or changes its shape
 * unnoticed. After a change that is meant: `npm run face`.
 */
import { describe, expect, it } from "vitest";
import { declarationsOf } from "./face.ts";

describe.each([
  ["steelyard", "index", () => import("../../src/index.ts")],
  ["steelyard/foods", "foods", () => import("../../src/foods.ts")],
])("%s", (_, entry, load) => {
  it("exports these names at run time", async () => {
    const names = Object.keys(await load()).sort();
    await expect(`${names.join("\n")}\n`).toMatchFileSnapshot(`face/${entry}.txt`);
  });

  it("declares these types", async () => {
    await expect(`${declarationsOf(`${entry}.ts`)}\n`).toMatchFileSnapshot(`face/${entry}.d.txt`);
  });
});
