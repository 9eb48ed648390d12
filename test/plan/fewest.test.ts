import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fewest } from "../../src/plan/share/fewest.ts";
import { runs } from "../runs.ts";
import { partitions } from "./partitions.ts";

/** People, and sets of them that cannot share; nor can any set with one of these in it. */
const families = fc
  .integer({ min: 1, max: 6 })
  .chain((count) =>
    fc.record({
      count: fc.constant(count),
      barred: fc.array(
        fc.uniqueArray(fc.integer({ min: 0, max: count - 1 }), {
          minLength: Math.min(2, count),
          maxLength: 4,
        }),
        { maxLength: 8 },
      ),
    }),
  )
  .map(({ count, barred }) => {
    const bars = barred.filter((set) => set.length > 1);
    const canShare = (group: readonly number[]): boolean =>
      !bars.some((set) => set.every((each) => group.includes(each)));
    return { count, canShare };
  });

const sorted = (groups: readonly (readonly number[])[]): number[] => groups.flat().sort((a, b) => a - b);

describe("fewest", () => {
  it("finds as few groups as trying every partition does", () => {
    fc.assert(
      fc.property(families, ({ count, canShare }) => {
        const found = fewest(count, canShare, 10_000);
        const all = partitions(Array.from({ length: count }, (_, i) => i));
        const best = Math.min(...all.filter((p) => p.every(canShare)).map((p) => p.length));
        expect(found.proven).toBe(true);
        expect(found.groups.length).toBe(best);
        expect(found.groups.every(canShare)).toBe(true);
        expect(sorted(found.groups)).toEqual(Array.from({ length: count }, (_, i) => i));
      }),
      { numRuns: runs(500) },
    );
  });

  it("never calls proven what it had not the tries to prove, and still groups everyone", () => {
    fc.assert(
      fc.property(families, fc.integer({ min: 1, max: 8 }), ({ count, canShare }, tries) => {
        const found = fewest(count, canShare, tries);
        const all = partitions(Array.from({ length: count }, (_, i) => i));
        const best = Math.min(...all.filter((p) => p.every(canShare)).map((p) => p.length));
        expect(found.tried).toBeLessThanOrEqual(tries);
        expect(found.groups.every(canShare)).toBe(true);
        expect(sorted(found.groups)).toEqual(Array.from({ length: count }, (_, i) => i));
        if (found.proven) expect(found.groups.length).toBe(best);
      }),
      { numRuns: runs(500) },
    );
  });

  it("of intervals in the order of their far ends it proves the fewest in one look at each", () => {
    const interval = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 60 }));
    fc.assert(
      fc.property(fc.array(interval, { maxLength: 60 }), (drawn) => {
        const all = drawn.map(([low, size]) => ({ low, high: low + size })).sort((a, b) => a.high - b.high);
        const canShare = (group: readonly number[]): boolean =>
          Math.max(...group.map((i) => all[i]?.low ?? 0)) <= Math.min(...group.map((i) => all[i]?.high ?? 0));
        const found = fewest(all.length, canShare, all.length, true);
        // The textbook way (unverified): stab at the first far end that is not stabbed yet.
        let [stabs, last] = [0, Number.NEGATIVE_INFINITY];
        for (const { low, high } of all) if (low > last) [stabs, last] = [stabs + 1, high];
        expect(found.groups.length).toBe(stabs);
        expect(found.proven).toBe(true);
      }),
    );
  });

  it("begins a pot too many where it takes people as they come, and then finds better", () => {
    // 0 could share with 1, 2 or 3; 1 with 2 only beside; 2 and 3 and 1 not all. Taken as they come
    // 0 and 1 share, then 2 and 3 cannot: three groups. 0 with 3, 1 with 2 are two.
    const pairs = new Set(["0,1", "0,3", "1,2"]);
    const canShare = (group: readonly number[]): boolean =>
      group.length < 2 || (group.length === 2 && pairs.has([...group].sort().join()));
    expect(fewest(4, canShare, 100).groups).toHaveLength(2);
    expect(fewest(4, canShare, 100).proven).toBe(true);
    expect(fewest(4, canShare, 4).proven).toBe(false);
  });
});
