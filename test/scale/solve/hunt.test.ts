import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hunt } from "../../../src/scale/solve/hunt.ts";
import type { Restriction } from "../../../src/scale/solve/restriction.ts";
import { runs, seedFor } from "../../runs.ts";

/** Figures of 160 bits that agree in their upper part more often than not, so that doubles see ties. */
const figure = fc
  .tuple(fc.integer({ min: -2, max: 2 }), fc.integer({ min: -1, max: 1 }), fc.integer({ min: -3, max: 3 }))
  .map(([high, middle, low]) => (BigInt(high) << 160n) + (BigInt(middle) << 70n) + BigInt(low));

const lots = fc
  .record({ lines: fc.integer({ min: 1, max: 5 }), wide: fc.integer({ min: 1, max: 3 }) })
  .chain(({ lines, wide }) => {
    const choice = fc.array(fc.integer({ min: 0, max: wide - 1 }), { minLength: lines, maxLength: lines });
    const values = fc.array(fc.array(figure, { minLength: wide, maxLength: wide }), {
      minLength: lines,
      maxLength: lines,
    });
    return fc.record({
      // A limit is what some choice adds up to, or one less.
      restrictions: fc.array(
        fc.record({ values, at: choice, less: fc.integer({ min: 0, max: 1 }) }).map(
          ({ values, at, less }): Restriction => ({
            values,
            limit: totalOf(values, at) - BigInt(less),
          }),
        ),
        { minLength: 1, maxLength: 3 },
      ),
      order: fc.shuffledSubarray([...Array(lines).keys()], { minLength: lines, maxLength: lines }),
      tries: fc.array(fc.shuffledSubarray([...Array(wide).keys()], { minLength: wide, maxLength: wide }), {
        minLength: lines,
        maxLength: lines,
      }),
    });
  });

function totalOf(values: readonly (readonly bigint[])[], choice: readonly number[]): bigint {
  return values.reduce((sum, line, i) => sum + (line[choice[i] ?? -1] ?? 0n), 0n);
}

function everyChoice(tries: readonly (readonly number[])[]): number[][] {
  return tries.reduce<number[][]>((all, line) => all.flatMap((c) => line.map((k) => [...c, k])), [[]]);
}

describe("hunt", () => {
  it("finds every choice that keeps the limits to the last digit, and no other", () => {
    const property = fc.property(lots, ({ restrictions, order, tries }) => {
      const found: string[] = [];
      const limits = restrictions.map((r) => r.limit);
      const { end } = hunt(
        { restrictions, order, tries, twins: order.map(() => -1), nodes: 10_000 },
        (choice) => {
          found.push(String(choice));
          return limits;
        },
      );
      expect(end).toBe("seen-all");
      const kept = everyChoice(tries).filter((c) =>
        restrictions.every(({ values, limit }) => totalOf(values, c) <= limit),
      );
      expect(found.sort()).toEqual(kept.map(String).sort());
    });
    fc.assert(property, { seed: seedFor("hunt", 61), numRuns: runs(600) });
  });

  it("takes up tighter limits as it goes", () => {
    const property = fc.property(lots, ({ restrictions, order, tries }) => {
      const [first, ...others] = restrictions;
      if (!first) return;
      const rest = others.map((r) => r.limit);
      let least: bigint | undefined;
      hunt({ restrictions, order, tries, twins: order.map(() => -1), nodes: 10_000 }, (choice) => {
        least = totalOf(first.values, choice);
        return [least - 1n, ...rest];
      });
      const kept = everyChoice(tries).filter((c) =>
        restrictions.every(({ values, limit }) => totalOf(values, c) <= limit),
      );
      const totals = kept.map((c) => totalOf(first.values, c)).sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
      expect(least).toBe(totals[0]);
    });
    fc.assert(property, { seed: seedFor("tighter", 62), numRuns: runs(400) });
  });

  it("counts what it looks at, and stops there", () => {
    const values = [
      [0n, 0n],
      [0n, 0n],
    ];
    const all = {
      restrictions: [{ values, limit: 0n }],
      order: [0, 1],
      tries: values.map(() => [0, 1]),
      twins: [-1, -1],
    };
    const go = (nodes: number): unknown => hunt({ ...all, nodes }, () => [0n]);
    expect(go(6)).toEqual({ end: "seen-all", nodes: 6 });
    expect(go(5)).toEqual({ end: "stopped", nodes: 5 });
    expect(go(0)).toEqual({ end: "stopped", nodes: 0 });
  });
});
