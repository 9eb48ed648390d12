import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { isAbsolute, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { type BuildOptions, build } from "esbuild";
import { rollup } from "rollup";
import { build as buildByVite } from "vite";
import { entries } from "../../entries.ts";
import { missing, skips } from "../browser/chromium.ts";
import { type Answers, answersInBrowser, answersInNode, answersWithoutGlobals } from "./contexts.ts";
import type { Scratch } from "./install.ts";
import { Failed } from "./run.ts";

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

/**
 * A small program of `programs/`, what it answers, and how large it may be once bundled, minified and gzipped, with
 * all that it depends on, in bytes; `aim` is what it ought to come down to.
 */
interface Fixture {
  readonly name: string;
  readonly answer: string;
  readonly aim?: number;
  readonly most: number;
  /** Packages that the program has no use for. */
  readonly without: readonly string[];
}

const fixtures: readonly Fixture[] = JSON.parse(
  readFileSync(new URL("fixtures.json", import.meta.url), "utf8"),
);
/** Words that stand in each of those packages alone, wherever its text has been built in. */
const marks: { readonly [name: string]: string } = {
  zod: "_zod",
  "decimal.js": "[DecimalError]",
  "convert-units": "degree Celsius",
  minisearch: "MiniSearch: ",
};
const expected: Answers = Object.fromEntries(fixtures.map(({ name, answer }) => [name, answer]));

/** Bundles each program against the installed package, weighs it, and runs it with and without Node's names. */
export async function checkFixtures({ folder }: Scratch): Promise<readonly string[]> {
  cpSync(here("programs"), join(folder, "programs"), { recursive: true });
  const weights: string[] = [];
  for (const { name, aim, most, without } of fixtures) {
    const script = scriptOf(folder, name);
    await build({ ...programOf(name, folder), outfile: script });
    const code = readFileSync(script);
    const held = without.find((unwanted) => code.includes(marks[unwanted] ?? unwanted));
    if (held) throw new Failed(`${name}: the bundle holds ${held}, which it has no use for`);
    const zipped = gzipSync(code, { level: 9 }).length;
    if (zipped > most)
      throw new Failed(
        `${name}: ${zipped} bytes, over its ceiling of ${most} in test/package/fixtures.json; find what grew, or raise it`,
      );
    const kilobytes = (n: number): string => (n / 1000).toFixed(1).padStart(6);
    const wanted = aim === undefined ? "" : `, aim ${kilobytes(aim)}`;
    weights.push(
      `${name.padEnd(8)}${kilobytes(code.length)} kB minified, ${kilobytes(zipped)} gzipped; ceiling ${kilobytes(most)}${wanted}`,
    );
  }
  const scripts = fixtures.map(({ name }) => scriptOf(folder, name));
  compare(answersInNode(scripts, folder), "in Node");
  compare(Object.assign({}, ...scripts.map(answersWithoutGlobals)), "without globals");
  return weights;
}

function programOf(name: string, folder: string): BuildOptions {
  const contents = `import answer from "./programs/${name}.ts"; (globalThis.answers ??= {})[${JSON.stringify(name)}] = answer();`;
  return { stdin: { contents, resolveDir: folder }, bundle: true, minify: true, logLevel: "silent" };
}

const scriptOf = (folder: string, name: string): string => join(folder, "out/site", `${name}.js`);

/**
 * The same bundles in Chromium, as modules of a site, and the programs once more as Vite builds that
 * site without any settings: in a page and in a module worker, under a strict policy.
 */
export async function checkBrowser({ folder }: Scratch): Promise<string> {
  if (skips) return `SKIPPED: ${missing}`;
  const site = join(folder, "out/site");
  cpSync(here("app"), site, { recursive: true });
  writeFileSync(
    join(site, "answers.js"),
    `${fixtures.map(({ name }) => `import "./${name}.js";`).join("\n")}\nexport const { answers } = globalThis;`,
  );

  const app = join(folder, "app");
  cpSync(here("app"), app, { recursive: true });
  const imports = fixtures.map(({ name }) => `import ${name} from "../programs/${name}.ts";`);
  const calls = fixtures.map(({ name }) => `${name}: ${name}()`);
  writeFileSync(
    join(app, "answers.js"),
    `${imports.join("\n")}\nexport const answers = { ${calls.join(", ")} };`,
  );
  await buildByVite({ root: app, configFile: false, logLevel: "error" });

  const builders = ["esbuild", "Vite"];
  const all = await answersInBrowser([site, join(app, "dist")]);
  for (const [i, { page, worker }] of all.entries()) {
    compare(page, `by ${builders[i]}, in a page`, { ...expected, eval: "refused" });
    compare(worker, `by ${builders[i]}, in a worker`, { ...expected, eval: "refused" });
  }
  return `${fixtures.length} programs built by ${builders.join(" and by ")}`;
}

function compare(answers: Answers, where: string, wanted: Answers = expected): void {
  for (const [name, answer] of Object.entries(wanted)) {
    if (answers[name] !== answer)
      throw new Failed(
        `${where}: ${name} answered ${JSON.stringify(answers[name])}, not ${JSON.stringify(answer)}`,
      );
  }
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
  // A notebook imports that entry for what it does.
  for (const { file } of entries.filter(({ name }) => name !== "steelyard/notebook")) {
    const user = "user";
    const bundle = await rollup({
      input: user,
      external: (id) => id !== user && !id.startsWith(".") && !isAbsolute(id),
      treeshake: { moduleSideEffects: true },
      plugins: [
        {
          name: user,
          resolveId: (id) => (id === user ? id : null),
          load: (id) =>
            id === user ? `import ${JSON.stringify(join(installed, "dist", `${file}.js`))};` : null,
        },
      ],
      onLog: () => {},
    });
    const { output } = await bundle.generate({ format: "es" });
    const left = output[0].code.replace(/^import\s[^;]*;\n/gm, "").trim();
    if (left !== "") {
      const shown = left.slice(0, 600);
      throw new Failed(
        `${file}.js does something when imported; mark it /* @__PURE__ */ or make it lazy:\n${shown}`,
      );
    }
  }
  return entries.map(({ name }) => name).join(" ");
}
