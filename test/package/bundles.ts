import { readFileSync } from "node:fs";
import { isAbsolute, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { rollup } from "rollup";
import type { Scratch } from "./install.ts";
import { Failed, run } from "./run.ts";

/** A small program, what it prints, and how large it may be once bundled and minified, in bytes. */
interface Fixture {
  readonly name: string;
  readonly code: string;
  readonly prints: string;
  readonly most: number;
  /** Packages that the program has no use for. */
  readonly without: readonly string[];
}

const fixtures: readonly Fixture[] = JSON.parse(
  readFileSync(new URL("fixtures.json", import.meta.url), "utf8"),
);

/** Bundles each fixture against the installed package, weighs it, and runs it. */
export async function checkFixtures({ folder }: Scratch): Promise<string> {
  const weights: string[] = [];
  for (const { name, code, prints, most, without } of fixtures) {
    const outfile = join(folder, "out", `${name}.mjs`);
    const { metafile } = await build({
      stdin: { contents: code, resolveDir: folder },
      bundle: true,
      minify: true,
      format: "esm",
      platform: "neutral",
      mainFields: ["module", "main"],
      target: "es2022",
      metafile: true,
      outfile,
      logLevel: "silent",
    });
    const [output] = Object.values(metafile.outputs);
    if (!output) throw new Failed(`${name}: nothing was bundled`);
    const used = Object.entries(output.inputs).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
    for (const unwanted of without) {
      const held = used.find(([path]) => path.includes(`node_modules/${unwanted}/`));
      if (held)
        throw new Failed(
          `${name}: the bundle holds ${held[1].bytesInOutput} bytes of ${held[0]}, which it has no use for`,
        );
    }
    if (output.bytes > most) {
      throw new Failed(
        `${name}: ${output.bytes} bytes, over its ceiling of ${most} in test/package/fixtures.json; find what grew, or raise it`,
      );
    }
    const printed = run(process.execPath, [outfile], folder).trim();
    if (printed !== prints)
      throw new Failed(`${name}: printed ${JSON.stringify(printed)}, not ${JSON.stringify(prints)}`);
    weights.push(`${name} ${output.bytes}/${most}`);
  }
  return `bytes: ${weights.join(", ")}`;
}

/** Nothing of the starter foods may come along with the main entry. */
export async function checkFoodsStayOut({ folder, installed }: Scratch): Promise<string> {
  const foods = (await import(
    pathToFileURL(join(installed, "dist/foods.js")).href
  )) as typeof import("../../src/foods.ts");
  const marks = foods.starterFoods.ids
    .map((id) => foods.starterFoods.get(id).name)
    .filter((name) => name.length > 12);
  if (marks.length === 0) throw new Failed("no starter food has a name to look for");
  const outfile = join(folder, "out", "face.mjs");
  await build({
    stdin: { contents: 'export * from "./dist/index.js"', resolveDir: installed },
    bundle: true,
    format: "esm",
    platform: "neutral",
    packages: "external",
    charset: "utf8",
    outfile,
    logLevel: "silent",
  });
  const text = readFileSync(outfile, "utf8");
  const leaked = marks.find((mark) => text.includes(mark));
  if (leaked) throw new Failed(`the main entry carries starter foods: ${JSON.stringify(leaked)}`);
  return `${marks.length} names looked for in ${text.length} characters`;
}

/**
 * `"sideEffects": false` must be true: with that promise set aside and every export unused, a
 * bundler is left with nothing but the imports of other packages. Rollup judges, since it follows
 * what a constant holds: a table made by spreading another is data, not an effect.
 */
export async function checkNoSideEffects({ installed }: Scratch): Promise<string> {
  const entries = ["index.js", "foods.js"];
  for (const entry of entries) {
    const user = "user";
    const bundle = await rollup({
      input: user,
      external: (id) => id !== user && !id.startsWith(".") && !isAbsolute(id),
      treeshake: { moduleSideEffects: true },
      plugins: [
        {
          name: user,
          resolveId: (id) => (id === user ? id : null),
          load: (id) => (id === user ? `import ${JSON.stringify(join(installed, "dist", entry))};` : null),
        },
      ],
      onLog: () => {},
    });
    const { output } = await bundle.generate({ format: "es" });
    const left = output[0].code.replace(/^import\s[^;]*;\n/gm, "").trim();
    if (left !== "") {
      const shown = left.slice(0, 600);
      throw new Failed(
        `${entry} does something when imported; mark it /* @__PURE__ */ or make it lazy:\n${shown}`,
      );
    }
  }
  return entries.join(" ");
}
