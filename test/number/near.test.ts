import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { didYouMean, nearNames } from "../../src/number/near.ts";
import { runs } from "../runs.ts";

/** Edits and swaps of neighbours by plain recursion, as an independent method. */
function distance(a: string, b: string, known = new Map<string, number>()): number {
  if (a === "" || b === "") return a.length + b.length;
  const key = `${a.length},${b.length}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  const [restA, restB] = [a.slice(1), b.slice(1)];
  const swap = a[0] === b[1] && a[1] === b[0] && a[0] !== undefined && a[1] !== undefined;
  const least = Math.min(
    swap ? distance(a.slice(2), b.slice(2), known) + 1 : Number.POSITIVE_INFINITY,
    distance(restA, restB, known) + (a[0] === b[0] ? 0 : 1),
    distance(restA, b, known) + 1,
    distance(a, restB, known) + 1,
  );
  known.set(key, least);
  return least;
}

const word = fc.string({ unit: fc.constantFrom(..."abcd"), maxLength: 14 });

describe("near names", () => {
  it("are those within a third of their length in edits, nearest first", () => {
    fc.assert(
      fc.property(word, fc.uniqueArray(word, { maxLength: 20 }), (name, names) => {
        const near = nearNames(name, names, names.length);
        for (const each of names) {
          const limit = Math.max(1, Math.floor(Math.max(name.length, each.length) / 3));
          const begins = name.length > 2 && each.startsWith(name);
          expect(near.includes(each)).toBe(begins || distance(name, each) <= limit);
        }
        const rank = (each: string): number =>
          name.length > 2 && each.startsWith(name) ? 1 : distance(name, each);
        expect(near.map(rank)).toEqual(near.map(rank).sort((a, b) => a - b));
      }),
      { numRuns: runs(500) },
    );
  });

  it("do not depend on the order of the names, nor on capitals", () => {
    fc.assert(
      fc.property(word, fc.uniqueArray(word, { maxLength: 20 }), (name, names) => {
        expect(nearNames(name, [...names].reverse())).toEqual(nearNames(name, names));
        expect(nearNames(name.toUpperCase(), names)).toEqual(nearNames(name, names));
      }),
    );
  });

  it("are at most three unless told", () => {
    const names = ["aaaa", "aaab", "aaac", "aaad"];
    expect(nearNames("aaa", names)).toEqual(["aaaa", "aaab", "aaac"]);
    expect(nearNames("aaa", names, 1)).toEqual(["aaaa"]);
  });

  it("make a hint, else leave it to the caller's", () => {
    expect(didYouMean("protien", ["protein", "fat"], "see the list")).toBe("did you mean protein?");
    expect(didYouMean("zzz", ["protein", "fat"], "see the list")).toBe("see the list");
    expect(didYouMean("oats", ["o\u202eats"], "see the list")).toBe("did you mean o\ufffdats?");
  });

  it("are found in bounded time, however long and many the names", () => {
    const start = performance.now();
    const names = Array.from({ length: 10_000 }, (_, i) => `name-${i}-${"x".repeat(i % 100)}`);
    nearNames("n".repeat(1_000_000), names);
    nearNames(`name-x-${"x".repeat(50)}`, names);
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});
