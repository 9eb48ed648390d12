import { defineConfig } from "tsup";

export default defineConfig({
  entry: { index: "src/index.ts", foods: "src/foods.ts" },
  format: ["esm"],
  target: "es2022",
  platform: "neutral",
  dts: true,
  sourcemap: true,
  clean: true,
  splitting: true,
});
