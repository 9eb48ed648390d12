/** What a built entry costs its users beside single files: bytes in their bundles, time at import. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { entries } from "../../entries.ts";
import type { Scratch } from "./install.ts";
import { Failed, root, run } from "./run.ts";

/** One of so many exports is weighed: all of them take a minute. */
const EVERY = 8;
/** Bytes by which short names may happen to fall otherwise. */
const SLACK = 64;

/**
 * Bundles single exports from the installed entries and from the files of `src`: a built entry must
 * not hold on to what a program does not use.
 */
export async function checkBuilt({ folder, manifest }: Scratch): Promise<string> {
  const all = await Promise.all(
    entries.map(async ({ name, file }) => {
      const names = Object.keys(await import(`${root}src/${file}.ts`));
      return names.filter((_, i) => i % EVERY === 0).map((exported) => ({ entry: name, exported }));
    }),
  );
  const taken = all.flat();
  const built = await weigh(taken, folder, (file) =>
    join(folder, "node_modules", manifest.name, "dist", `${file}.js`),
  );
  const single = await weigh(taken, root, (file) => join(root, "src", `${file}.ts`));
  const larger = taken.flatMap(({ entry, exported }, i) => {
    const [ours = 0, theirs = 0] = [built[i], single[i]];
    return ours > theirs + SLACK
      ? [`${exported} of ${entry} takes ${ours} bytes, and ${theirs} from single files`]
      : [];
  });
  if (larger.length > 0)
    throw new Failed(
      `${larger.join("\n")}\nlook for what a bundler cannot drop: see nothingOnImport in tsup.config.ts`,
    );
  const [ours, theirs] = [built, single].map((sizes) => sizes.reduce((a, b) => a + b, 0));
  return `${taken.length} exports, ${ours} bytes in all; from single files ${theirs}`;
}

/** Minified bytes of a program that uses one export and nothing else, for each. */
async function weigh(
  taken: readonly { readonly entry: string; readonly exported: string }[],
  folder: string,
  pathOf: (file: string) => string,
): Promise<readonly number[]> {
  const { metafile } = await build({
    entryPoints: taken.map((_, i) => ({ in: `taken:${i}`, out: String(i) })),
    bundle: true,
    minify: true,
    write: false,
    metafile: true,
    outdir: "/out",
    logLevel: "silent",
    plugins: [
      {
        name: "taken",
        setup({ onResolve, onLoad }) {
          onResolve({ filter: /^taken:/ }, ({ path }) => ({ path: path.slice(6), namespace: "taken" }));
          onLoad({ filter: /.*/, namespace: "taken" }, ({ path }) => {
            const { entry, exported } = taken[Number(path)] ?? taken[0] ?? { entry: "", exported: "" };
            const contents = `import { ${exported} } from "${entry}"; globalThis.taken = ${exported};`;
            return { contents, resolveDir: folder };
          });
          onResolve({ filter: /^steelyard/ }, ({ path }) => {
            const file = entries.find(({ name }) => name === path)?.file;
            return file === undefined ? null : { path: pathOf(file), sideEffects: false };
          });
        },
      },
    ],
  });
  const sizes = Object.entries(metafile.outputs).map(([path, { bytes }]): [number, number] => [
    Number(/(\d+)\.js$/.exec(path)?.[1]),
    bytes,
  ]);
  return sizes.sort(([a], [b]) => a - b).map(([, bytes]) => bytes);
}

const RUNS = 7;

/** How long Node takes to import each entry, beside decimal.js in the same run: medians, in milliseconds. */
export function timeImports({ folder, installed }: Scratch): readonly string[] {
  const names = ["decimal.js", ...entries.map(({ name }) => name)];
  const times = names.map((): number[] => []);
  for (let i = 0; i < RUNS; i++) {
    for (const [at, name] of names.entries()) {
      const script = `const start = performance.now(); await import("${name}"); console.log(performance.now() - start);`;
      const taken = run(process.execPath, ["--no-warnings", "--input-type=module", "--eval", script], folder);
      times[at]?.push(Number(taken));
    }
  }
  const medians = times.map((all) => all.sort((a, b) => a - b)[RUNS >> 1] ?? 0);
  const least = medians[0] ?? 1;
  const files = readdirSync(join(installed, "dist")).filter((name) => name.endsWith(".js")).length;
  return [
    ...names.map((name, i) => {
      const ms = medians[i] ?? 0;
      return `${name.padEnd(16)}${ms.toFixed(1).padStart(8)} ms, ${(ms / least).toFixed(1)} × decimal.js`;
    }),
    `${files} built files`,
  ];
}
