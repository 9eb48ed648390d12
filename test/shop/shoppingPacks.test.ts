import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactText } from "../../src/number/digits.ts";
import { type Exact, exact, fraction, minus, plus, sum, times, ZERO } from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { choosePacks, type PackChoice, type PackSize } from "../../src/shop/packs.ts";
import { runs } from "../runs.ts";

const pack = (edible: string, price?: string, name = edible): PackSize => ({
  name,
  edible: exact(edible),
  price: price === undefined ? undefined : exact(price),
});
const chosen = (need: string, ...packs: PackSize[]): string =>
  choosePacks(exact(need), packs).counts.join(" ");

const inPacks = ({ counts }: PackChoice, packs: readonly PackSize[], of: "edible" | "price"): Exact =>
  sum(packs.map((each, i) => times(each[of] ?? ZERO, fraction(counts[i] ?? 0n))));

/** Cost, grams and number of packs of every way to buy, by trying them all: what the choice is held against. */
function bestByTrial(need: Exact, packs: readonly PackSize[]): [Exact, Exact, number] {
  const priced = packs.every(({ price }) => price !== undefined);
  let best: [Exact, Exact, number] | undefined;
  const walk = (i: number, cost: Exact, grams: Exact, count: number): void => {
    const found = [cost, grams, count] as [Exact, Exact, number];
    if (compareRatios(grams, need) >= 0) {
      const order =
        best && (compareRatios(cost, best[0]) || compareRatios(grams, best[1]) || count - best[2]);
      if (order === undefined || order < 0) best = found;
      return;
    }
    const each = packs[i];
    if (!each) return;
    walk(i + 1, cost, grams, count);
    walk(i, priced && each.price ? plus(cost, each.price) : cost, plus(grams, each.edible), count + 1);
  };
  walk(0, ZERO, ZERO, 0);
  if (!best) throw new Error("nothing covers");
  return best;
}

const anyPacks = fc.array(
  fc.record({
    name: fc.constantFrom("tin", "bag", "sack"),
    // Sizes that share no measure, and some that do.
    edible: fc.oneof(
      fc.integer({ min: 1, max: 12 }).map((n) => fraction(BigInt(n))),
      fc
        .tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 7 }))
        .map(([n, d]) => fraction(BigInt(n), BigInt(d))),
    ),
    price: fc.option(
      fc.integer({ min: 0, max: 9 }).map((n) => fraction(BigInt(n), 4n)),
      { nil: undefined, freq: 6 },
    ),
  }),
  { minLength: 1, maxLength: 4 },
);

describe("choosing packs", () => {
  it("is the best of all ways to buy, tried one by one", () => {
    fc.assert(
      fc.property(anyPacks, fc.integer({ min: 1, max: 60 }), (packs, n) => {
        const smallest = packs
          .map(({ edible }) => edible)
          .reduce((a, b) => (compareRatios(a, b) < 0 ? a : b));
        const largest = packs.map(({ edible }) => edible).reduce((a, b) => (compareRatios(a, b) > 0 ? a : b));
        // At most a dozen of the smallest, so that trying stays short.
        const most = times(smallest, fraction(12n));
        const need = times(compareRatios(largest, most) < 0 ? largest : most, fraction(BigInt(n), 20n));
        const found = choosePacks(need, packs);
        const priced = packs.every(({ price }) => price !== undefined);
        const [cost, grams, count] = bestByTrial(need, packs);
        expect(found.proven).toBe(true);
        expect(exactText(inPacks(found, packs, "edible"))).toBe(exactText(grams));
        if (priced) expect(exactText(inPacks(found, packs, "price"))).toBe(exactText(cost));
        expect(found.counts.reduce((a, b) => a + b, 0n)).toBe(BigInt(count));
      }),
      { numRuns: runs(600) },
    );
  });

  it("covers the need, and one pack fewer does not, however large it is", () => {
    const need = fc.tuple(fc.bigInt(1n, 10n ** 15n), fc.bigInt(1n, 10n ** 6n));
    fc.assert(
      fc.property(anyPacks, need, (packs, [n, d]) => {
        const wanted = fraction(n, d);
        const found = choosePacks(wanted, packs);
        const grams = inPacks(found, packs, "edible");
        expect(compareRatios(grams, wanted)).toBeGreaterThanOrEqual(0);
        packs.forEach(({ edible }, i) => {
          if (found.counts[i]) expect(compareRatios(minus(grams, edible), wanted)).toBeLessThan(0);
        });
      }),
      { numRuns: runs(300) },
    );
  });

  it("fills large needs with bulk and still finds the best: all that is not bulk is as near the end", () => {
    const packs = [pack("7", "7.70"), pack("11", "11.50"), pack("16", "16.50")];
    // The bulk goes into 10^6 × 16 g more a million times more, and nothing else changes.
    for (let need = 150; need < 250; need += 1) {
      const small = choosePacks(exact(need), packs).counts;
      const large = choosePacks(exact(need + 16_000_000), packs);
      expect(large.proven).toBe(true);
      expect(large.counts).toEqual([small[0], small[1], (small[2] ?? 0n) + 1_000_000n]);
    }
  });

  it("goes by cost where every pack has a price", () => {
    expect(chosen("900", pack("1000", "2"), pack("500", "1.05"))).toBe("1 0");
    expect(chosen("900", pack("1000", "2.20"), pack("500", "1.05"))).toBe("0 2");
    // Dearer by mass, yet cheaper here: less of it is bought.
    expect(chosen("400", pack("1000", "2"), pack("500", "1.5"))).toBe("0 1");
    // As dear: the one that leaves less; then fewer.
    expect(chosen("900", pack("1200", "2"), pack("500", "1"))).toBe("0 2");
    expect(chosen("900", pack("500", "1"), pack("1000", "2"))).toBe("0 1");
    expect(chosen("900", pack("500", "0"), pack("1000", "0"))).toBe("0 1");
  });

  it("goes by what is left over where a price is missing", () => {
    expect(chosen("900", pack("1000", "2.20"), pack("500"))).toBe("1 0");
    expect(chosen("900", pack("1000", "0.01"), pack("450"))).toBe("0 2");
    // 3 × 240 g drained leaves 20 g; no other number of tins does better.
    expect(chosen("700", pack("240"), pack("400"))).toBe("3 0");
  });

  it("buys nothing where nothing is needed, and a pack for the least need", () => {
    expect(chosen("0", pack("240"))).toBe("0");
    expect(chosen("1e-300", pack("240"), pack("400"))).toBe("1 0");
    expect(choosePacks(exact("5"), []).counts).toEqual([]);
    expect(chosen("240", pack("240"))).toBe("1");
    expect(chosen(`240.${"0".repeat(300)}1`, pack("240"))).toBe("2");
  });

  it("does not depend on the order in which packs are given", () => {
    fc.assert(
      fc.property(anyPacks, fc.integer({ min: 1, max: 500 }), (packs, n) => {
        const need = fraction(BigInt(n), 3n);
        const named = packs.map((each, i) => ({ ...each, name: `${i}` }));
        const ahead = choosePacks(need, named).counts;
        const back = choosePacks(need, [...named].reverse()).counts;
        expect([...back].reverse()).toEqual(ahead);
      }),
    );
  });

  it.each([
    ["sizes without a common measure, and far more than can be looked through", "123456789.123456789"],
    ["sizes apart by hundreds of powers of ten", "1e300"],
  ])("stays in bounded time, and says that its choice is not proven: %s", (_, need) => {
    const packs = [
      pack("411.068085", "0.93"),
      pack("397.1230017", "0.91"),
      pack("28.349523125", "0.08"),
      pack("1e-9", "1e-9"),
    ];
    const start = performance.now();
    const found = choosePacks(exact(need), packs);
    expect(performance.now() - start).toBeLessThan(20_000);
    expect(found.proven).toBe(false);
    const grams = inPacks(found, packs, "edible");
    expect(compareRatios(grams, exact(need))).toBeGreaterThanOrEqual(0);
    packs.forEach(({ edible }, i) => {
      if (found.counts[i]) expect(compareRatios(minus(grams, edible), exact(need))).toBeLessThan(0);
    });
  });
});
