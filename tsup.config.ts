import { readFile } from "node:fs/promises";
import { defineConfig } from "tsup";

/**
 * One built file for each source file. Together with `"sideEffects": false` this lets a user's
 * bundler drop what is not used, and with it the packages that only the dropped files import.
 */
export default defineConfig({
  entry: ["src/**/*.ts", "!src/**/*.d.ts"],
  bundle: false,
  format: ["esm"],
  target: "es2022",
  platform: "neutral",
  dts: { entry: { index: "src/index.ts", foods: "src/foods.ts" } },
  sourcemap: true,
  clean: true,
  splitting: false,
  silent: true,
  esbuildPlugins: [
    {
      name: "name built files",
      setup({ onLoad }) {
        onLoad({ filter: /\.ts$/ }, async ({ path }) => {
          const source = await readFile(path, "utf8");
          return { contents: source.replace(/(\bfrom\s+"\.[^"]*)\.ts"/g, '$1.js"'), loader: "ts" };
        });
      },
    },
  ],
});
