/**
 * The public face, held against committed lists, so that no name comes, goes or changes its shape
 * unnoticed. After a change that is meant: `npm run face`.
 */
import { describe, expect, it } from "vitest";
import { entries } from "../../entries.ts";
import { root } from "../sources.ts";
import { declarationsOf } from "./face.ts";

describe.each(entries)("$name", ({ file }) => {
  it("exports these names at run time", async () => {
    const names = Object.keys(await import(/* @vite-ignore */ `${root}src/${file}.ts`)).sort();
    await expect(`${names.join("\n")}\n`).toMatchFileSnapshot(`face/${file}.txt`);
  });

  it("declares these types", async () => {
    await expect(`${declarationsOf(`${file}.ts`)}\n`).toMatchFileSnapshot(`face/${file}.d.txt`);
  });
});
