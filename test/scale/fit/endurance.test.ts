import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fit } from "../../../src/scale/fit.ts";
import { toText } from "../../../src/show/text.ts";
import { runs } from "../../runs.ts";
import { worlds } from "./worlds.ts";

/**
 * Fits far larger than any dish, in seconds of this process's own work: 200 lines that may move alone
 * and 30 demands on them.
 */

function timed<T>(work: () => T): readonly [T, seconds: number] {
  const before = process.cpuUsage().user;
  const made = work();
  return [made, (process.cpuUsage().user - before) / 1e6];
}

function sample(wild: number) {
  const shape = { adjustable: { min: 200, max: 200 }, demands: { min: 30, max: 30 }, wild, bounds: false };
  return fc.sample(worlds(shape), { seed: 7, numRuns: runs(1) });
}

describe("200 adjustable lines and 30 demands", () => {
  it("out of reach: says why, what comes nearest, and of how many changes it tried none", () => {
    for (const { sheet, demands } of sample(2)) {
      const missed = fit(sheet, demands);
      if (missed.status === "met") throw new Error("met");
      const [text, seconds] = timed(() => toText(missed));
      expect(seconds).toBeLessThan(30);
      expect(missed.conflict.length).toBeGreaterThan(1);
      expect(missed.nearest).toBeDefined();
      expect(missed.suggestions).toEqual([]);
      expect(missed.untried).toBeGreaterThan(100);
      expect(text).toContain("none of the changes that were tried would open it");
      expect(text).toContain(`${missed.untried} more changes were not tried`);
    }
  }, 60_000);

  it("met: shows demands, factors and amounts, and works out nothing else", () => {
    for (const { sheet, demands } of sample(0)) {
      const met = fit(sheet, demands);
      expect(met.status).toBe("met");
      const [text, seconds] = timed(() => toText(met));
      expect(seconds).toBeLessThan(30);
      expect(text).toContain("Fitted: every demand is met");
    }
  }, 60_000);
});
