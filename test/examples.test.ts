/** Runs every example as a reader would, from source, and looks over what it prints. */
import { spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./sources.ts";

/** What a careless print leaves behind where a figure, a name or an object should be. */
const careless = [/\bundefined\b/, /\bNaN\b/, /\[object \w+\]/, /\bInfinity\b/];

/** What an example must not keep to itself: a food's own caution concerns everyone who eats it. */
const says: { readonly [file: string]: RegExp } = {
  "campDay.ts": /^everyone: supper\/wakame\. Seaweed can hold more iodine/m,
};

const examples = readdirSync(join(root, "examples")).filter((file) => file.endsWith(".ts"));

describe("examples", () => {
  it("has one for each kind of user", () => {
    expect(examples.length).toBeGreaterThanOrEqual(4);
  });

  it.concurrent.each(examples)("%s runs and prints only what a person can read", async (file) => {
    const { status, printed, complaints } = await runExample(join("examples", file));
    expect(complaints).toBe("");
    expect(status).toBe(0);
    for (const sign of careless) expect(printed).not.toMatch(sign);
    expect(printed).toMatch(says[file] ?? /^/);
  });
});

interface Run {
  readonly status: number | null;
  readonly printed: string;
  readonly complaints: string;
}

/** With the same command as `npm start`. */
function runExample(path: string): Promise<Run> {
  const tsx = join(root, "node_modules/tsx/dist/cli.mjs");
  const child = spawn(process.execPath, [tsx, "--tsconfig", "test/tsconfig.json", path], { cwd: root });
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
