/** Random tests draw the same cases in every run; `STEELYARD_SEED=7 npx vitest run` draws others. */
import fc from "fast-check";
import { runs } from "./runs.ts";

fc.configureGlobal({ seed: Number(process.env.STEELYARD_SEED ?? 1), numRuns: runs(100) });
