import { SteelyardError } from "../../src/number/error.ts";

/** The SteelyardError that a step throws; anything else it throws, or nothing thrown, fails the test. */
export function errorOf(step: () => unknown): SteelyardError {
  try {
    step();
  } catch (error) {
    if (error instanceof SteelyardError) return error;
    throw error;
  }
  throw new Error("nothing was thrown");
}
