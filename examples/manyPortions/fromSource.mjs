// Runs the worker from source, as the examples are; an app names the worker that its build made instead.
import { fileURLToPath } from "node:url";

process.env.TSX_TSCONFIG_PATH ??= fileURLToPath(new URL("../../test/tsconfig.json", import.meta.url));
const { register } = await import("tsx/esm/api");
register();
await import("./nodeWorker.ts");
