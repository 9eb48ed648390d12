// Runs the worker from source, as the examples are; an app names the worker that its build made instead.
import { register } from "tsx/esm/api";

register();
await import("./nodeWorker.ts");
