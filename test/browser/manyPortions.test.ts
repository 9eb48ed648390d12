/** The pool of workers in a real browser: the same figures as in one go, whatever the slices. */
import { join } from "node:path";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { oatPot, seedTopping } from "../../examples/recipes.ts";
import { portionsAt } from "../../src/bulk/portionsAt.ts";
import { starterFoods } from "../../src/foods.ts";
import { sheet } from "../../src/sheet/build.ts";
import { root } from "../sources.ts";
import { launch, missing, skips } from "./chromium.ts";

async function built(file: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(root, "examples/manyPortions", file)],
    tsconfig: join(root, "test/tsconfig.json"),
    bundle: true,
    format: "esm",
    write: false,
    logLevel: "silent",
  });
  return outputFiles[0]?.text ?? "";
}

describe.skipIf(skips)(missing ? `workers in Chromium (${missing})` : "workers in Chromium", () => {
  it("give what one go gives, with progress", async () => {
    const [page, worker] = await Promise.all([built("browser.ts"), built("browserWorker.ts")]);
    const browser = await launch();
    try {
      const context = await browser.newContext();
      const files: { readonly [path: string]: readonly [string, string] } = {
        "/": ["text/html", '<script type="module" src="page.js"></script>'],
        "/page.js": ["text/javascript", page],
        "/browserWorker.js": ["text/javascript", worker],
      };
      await context.route("**", (route) => {
        const file = files[new URL(route.request().url()).pathname];
        return file ? route.fulfill({ contentType: file[0], body: file[1] }) : route.abort();
      });
      const shown = await context.newPage();
      await shown.goto("http://camp.test/");
      const { values, told } = (await shown.evaluate(`(async () => {
        const told = [];
        const values = await manyPortions(5003, 2, (done, of) => told.push(done / of));
        return { values: [...values], told };
      })()`)) as { values: number[]; told: number[] };
      const s = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });
      const energy = Float64Array.from({ length: 5003 }, (_, i) => 400 + i / 10);
      const alone = portionsAt(s, { energy }, ["protein"], { silent: "accept" });
      expect(values).toEqual([...alone.columns.protein.value]);
      expect(told.length).toBeGreaterThan(4);
      expect(told.at(-1)).toBe(1);
    } finally {
      await browser.close();
    }
  });
});
