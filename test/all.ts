/**
 * Runs all that `npm test` holds, two things at a time: types and lint beside the build, then the checks of the
 * packed package beside the tests. What fails in the first half is told before the second begins.
 */
import { spawn } from "node:child_process";

/** Runs a script of package.json; what it says is shown when it ends, or at once where it is `live`. */
function script(name: string, live = false): Promise<boolean> {
  return new Promise((done) => {
    const running = spawn("npm", ["run", "--silent", name], {
      stdio: ["ignore", live ? "inherit" : "pipe", live ? "inherit" : "pipe"],
      shell: process.platform === "win32",
    });
    const said: Buffer[] = [];
    for (const stream of [running.stdout, running.stderr])
      stream?.on("data", (part: Buffer) => said.push(part));
    running.on("close", (code) => {
      process.stdout.write(`${Buffer.concat(said)}`);
      console.log(`${code === 0 ? "ok" : "FAILED"}: npm run ${name}`);
      done(code === 0);
    });
  });
}

const before = await Promise.all([
  script("build"),
  script("types").then((ok) => script("lint").then((too) => ok && too)),
]);
const after = before.every(Boolean)
  ? await Promise.all([script("package"), script("test:units", true)])
  : [false];
process.exitCode = after.every(Boolean) ? 0 : 1;
