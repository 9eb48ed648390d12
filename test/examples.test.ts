/** Runs every example from source, and looks over what it prints. */
import { spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { format } from "node:util";
import { afterEach, describe, expect, it, vi } from "vitest";
import { root } from "./sources.ts";
import { stumbles } from "./words.ts";

/** What a careless print leaves behind where a figure, a name or an object should be. */
const careless = [/\bundefined\b/, /\bNaN\b/, /\[object \w+\]/, /\bInfinity\b/];

/** What an example must not keep to itself: a food's own caution concerns everyone who eats it. */
const says: { readonly [file: string]: RegExp } = {
  "campDay.ts": /^everyone, wakame: Seaweed can hold more iodine/m,
};

/** What `npm start` runs prints a screen, and no more. */
const mostLines: { readonly [file: string]: number } = { "camp.ts": 60 };

/** One is also started by itself, as a reader would, and prints the same. */
const byItself = "notebookLoop.ts";

const examples = readdirSync(join(root, "examples")).filter((file) => file.endsWith(".ts"));

afterEach(() => {
  vi.restoreAllMocks();
});

describe("examples", () => {
  it("has one for each kind of user", () => {
    expect(examples.length).toBeGreaterThanOrEqual(4);
  });

  it.each(examples)("%s runs and prints only what a person can read", async (file) => {
    const { printed, complaints } = await run(join(root, "examples", file));
    expect(complaints).toBe("");
    for (const sign of careless) expect(printed).not.toMatch(sign);
    for (const words of stumbles) expect(printed).not.toMatch(words);
    expect(printed).toMatch(says[file] ?? /^/);
    expect(printed.split("\n").length - 1).toBeLessThanOrEqual(mostLines[file] ?? Number.POSITIVE_INFINITY);
    if (file === byItself) expect(await started(file)).toEqual({ status: 0, printed, complaints: "" });
  });
});

interface Run {
  readonly printed: string;
  readonly complaints: string;
}

/** In this process, where the library is loaded already. */
async function run(path: string): Promise<Run> {
  const said = { printed: "", complaints: "" };
  const into =
    (where: keyof Run) =>
    (...args: readonly unknown[]): void => {
      said[where] += `${format(...args)}\n`;
    };
  for (const print of ["log", "info"] as const) vi.spyOn(console, print).mockImplementation(into("printed"));
  for (const print of ["warn", "error"] as const)
    vi.spyOn(console, print).mockImplementation(into("complaints"));
  // Nothing of what this run was started with is an example's own.
  vi.spyOn(process, "argv", "get").mockReturnValue([process.execPath, path]);
  await import(path);
  return said;
}

/** With the same command as `npm start`. */
function started(file: string): Promise<Run & { readonly status: number | null }> {
  const tsx = join(root, "node_modules/tsx/dist/cli.mjs");
  const child = spawn(process.execPath, [tsx, "--tsconfig", "test/tsconfig.json", `examples/${file}`], {
    cwd: root,
  });
  let printed = "";
  let complaints = "";
  child.stdout.on("data", (data) => {
    printed += String(data);
  });
  child.stderr.on("data", (data) => {
    complaints += String(data);
  });
  return new Promise((done, refuse) => {
    child.on("error", refuse);
    child.on("close", (status) => done({ status, printed, complaints }));
  });
}
