import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The repository's root folder. */
export const root: string = fileURLToPath(new URL("../..", import.meta.url));

/** A check that does not hold; its message is all that a reader needs to see. */
export class Failed extends Error {}

/** Runs a program and gives back what it printed; anything but exit 0 fails the check. */
export function run(command: string, args: readonly string[], cwd: string): string {
  const done = spawnSync(command, args, { cwd, encoding: "utf8", maxBuffer: 1 << 27, shell: false });
  if (done.error) throw new Failed(`${command} did not start: ${done.error.message}`);
  if (done.status !== 0) {
    throw new Failed(
      `\`${[command, ...args].join(" ")}\` exited ${done.status}\n${done.stdout}${done.stderr}`,
    );
  }
  return done.stdout;
}

/** Runs the command that an installed package brings. */
export function runTool(name: string, command: string, args: readonly string[], cwd: string): string {
  const manifest = join(root, "node_modules", name, "package.json");
  const { bin } = createRequire(import.meta.url)(manifest) as { bin: string | Record<string, string> };
  const file = typeof bin === "string" ? bin : bin[command];
  if (!file) throw new Failed(`${name} brings no command "${command}"`);
  return run(process.execPath, [join(dirname(manifest), file), ...args], cwd);
}
