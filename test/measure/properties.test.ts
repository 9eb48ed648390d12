import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Amount, amount, sameAmount, timesAmount, withExact } from "../../src/measure/amount.ts";
import { breakDown } from "../../src/measure/breakDown.ts";
import { convert } from "../../src/measure/convert.ts";
import { figure } from "../../src/measure/figure.ts";
import { formatAmount } from "../../src/measure/format.ts";
import { type Measures, measureSet, measureSetNames, measureSets } from "../../src/measure/measures.ts";
import { fixedUnitIds, householdUnits } from "../../src/measure/units.ts";
import { exactText } from "../../src/number/digits.ts";
import { SteelyardError } from "../../src/number/error.ts";
import {
  absolute,
  type Exact,
  equals,
  exact,
  fraction,
  isZero,
  minus,
  over,
  times,
} from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import { met, runs } from "../runs.ts";

const grandmother = measureSet({ name: "grandmother", ml: { cup: 200, tbsp: "40/3", tsp: "4.5" } });
const own = ["medium", "can", "can, drained", "cup, chopped", "slice (1/4 in thick)", "leaf", "8 fl oz can"];

/** Every unit there is, as an amount of 1: with whose it is, where that matters. */
const ones: readonly Amount[] = [
  ...fixedUnitIds().map((unit) => amount({ value: 1, unit })),
  ...[...measureSetNames, grandmother].flatMap((measures: Measures) => {
    const { ml } = typeof measures === "string" ? measureSets[measures] : measures;
    return householdUnits
      .filter((u) => ml[u] !== undefined)
      .map((unit) => amount({ value: 1, unit, measures }));
  }),
  ...own.map((unit) => amount({ value: 1, unit, kind: "own" })),
];

const figureOf: fc.Arbitrary<Exact> = fc.oneof(
  fc
    .tuple(fc.nat(40), fc.constantFrom(1, 2, 3, 4, 5, 6, 8, 12, 16))
    .map(([n, d]) => fraction(BigInt(n), BigInt(d))),
  fc
    .tuple(fc.bigInt({ min: 0n, max: 10n ** 30n }), fc.bigInt({ min: 1n, max: 10n ** 12n }))
    .map(([n, d]) => fraction(n, d)),
  fc.tuple(fc.nat(99_999), fc.nat(6)).map(([n, places]) => fraction(BigInt(n), 10n ** BigInt(places))),
);

const simple: fc.Arbitrary<Amount> = fc
  .tuple(fc.constantFrom(...ones), figureOf)
  .map(([one, f]) => withExact(one, f));
const sized = ones.filter((one) => one.kind !== "own");

const reader = fc.record(
  {
    measures: fc.constantFrom<Measures>(...measureSetNames, grandmother),
    decimal: fc.constantFrom("point" as const, "comma" as const),
  },
  { requiredKeys: [] },
);

describe("amounts", () => {
  it("are read back from what is written of them, for every unit and set", () => {
    expect(ones.length).toBeGreaterThan(met(60));
    fc.assert(
      fc.property(simple, reader, (a, how) => {
        // A set of one's own is known only to a reader who has it.
        fc.pre(a.measures !== grandmother || how.measures === grandmother);
        const again = amount(formatAmount(a, how), { ...how, own });
        expect(again.toJSON()).toEqual(a.toJSON());
        expect(sameAmount(again, a)).toBe(true);
      }),
      { numRuns: runs(3000) },
    );
  });

  it("are read back from JSON, parts and all", () => {
    fc.assert(
      fc.property(fc.array(simple, { minLength: 1, maxLength: 4 }), (parts) => {
        const kind = parts.filter(
          (part) => part.kind === parts[0]?.kind && (part.kind !== "own" || part.unit === parts[0].unit),
        );
        const a = amount({ parts: kind.map((part) => JSON.parse(JSON.stringify(part))) });
        const again = amount(JSON.parse(JSON.stringify(a)));
        expect(sameAmount(again, a)).toBe(true);
        const written = amount(formatAmount(a, { measures: grandmother }), { measures: grandmother, own });
        expect(sameAmount(written, a)).toBe(true);
      }),
      { numRuns: runs(500) },
    );
  });

  it("sum their parts exactly, in whatever order", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom("kg", "g", "mg", "lb", "oz"), figureOf), {
          minLength: 1,
          maxLength: 5,
        }),
        (parts) => {
          const all = parts.map(([unit, f]) => ({ value: exactText(f), unit }));
          const sum = amount({ parts: all });
          const alone = all.map((part) => convert(amount(part), "g").value);
          const total = alone.reduce((a, b) => fraction(a.n * b.d + b.n * a.d, a.d * b.d));
          expect(convert(sum, "g").value).toEqual(total);
          expect(convert(amount({ parts: [...all].reverse() }), "g").value).toEqual(total);
        },
      ),
    );
  });

  it("go to every unit of their kind and back to exactly what they were", () => {
    for (const from of sized) {
      for (const to of sized.filter((one) => one.kind === from.kind)) {
        const how = { measures: to.measures ?? "us" } as const;
        const back = convert(convert(withExact(from, exact("7/3")), to.unit, how), from.unit, {
          measures: from.measures ?? "us",
        });
        expect(back.value, `${from.unit} to ${to.unit}`).toEqual(exact("7/3"));
      }
    }
  });

  it("cross from mass to volume and back by any density", () => {
    fc.assert(
      fc.property(figureOf, figureOf, (f, density) => {
        fc.pre(!isZero(density));
        const how = { density: exactText(density) };
        const a = withExact(amount("1 lb"), f);
        expect(convert(convert(a, "us cup", how), "lb", how).value).toEqual(f);
      }),
    );
  });

  it("scale by a factor and its inverse to exactly what they were", () => {
    fc.assert(
      fc.property(simple, figureOf, (a, f) => {
        fc.pre(!isZero(f));
        const there = timesAmount(a, f);
        expect([there.unit, there.kind, there.measures]).toEqual([a.unit, a.kind, a.measures]);
        expect(timesAmount(there, fraction(f.d, f.n)).value).toEqual(a.value);
      }),
    );
  });

  it("are figures in any unit of their kind", () => {
    fc.assert(
      fc.property(
        figureOf,
        fc.constantFrom("g", "mg", "µg", "oz"),
        fc.constantFrom("g", "mg", "µg"),
        (f, unit, of) => {
          const a = withExact(amount(`1 ${unit}`), f);
          expect(figure(formatAmount(a), of)).toEqual(convert(a, of).value);
          expect(figure(exactText(f), of)).toEqual(f);
        },
      ),
    );
  });
});

describe("breaking down", () => {
  const ladders = [
    ["lb", "oz"],
    ["kg", "g"],
    ["us gallon", "us quart", "us pint", "us cup", "us tbsp", "us tsp"],
    ["imperial pint", "imperial fl oz"],
    ["australian cup", "australian tbsp", "australian tsp"],
    ["us cup", "metric tbsp", "australian tsp"],
  ] as const;
  const step = fc.constantFrom("1/4", "1/3", "1/2", "1", "0.1", "5");

  it("without a step conserves the amount exactly, in whole numbers but for the last", () => {
    fc.assert(
      fc.property(fc.constantFrom(...ladders), figureOf, (units, f) => {
        const a = withExact(amount(`1 ${units[0]}`), f);
        const broken = breakDown(a, units);
        expect(convert(broken, units[0]).value).toEqual(f);
        const parts = broken.parts ?? [broken];
        const last = units.at(-1)?.replace(/^(us|imperial|australian|metric) /, "");
        for (const part of parts) if (part.unit !== last) expect(part.value.d).toBe(1n);
        // No part could have been one more of a larger unit.
        for (const [i, part] of parts.entries()) {
          const larger = parts[i - 1];
          if (larger)
            expect(
              compareRatios(
                convert(part, units[0]).value,
                convert(withExact(larger, exact(1)), units[0]).value,
              ),
            ).toBe(-1);
        }
      }),
    );
  });

  it("with a step is within half a step of the amount, and never above one more of a larger unit", () => {
    fc.assert(
      fc.property(fc.constantFrom(...ladders.slice(0, 4)), figureOf, step, (units, f, s) => {
        const a = withExact(amount(`1 ${units[0]}`), f);
        const last = units.at(-1) ?? "";
        const broken = breakDown(a, units, { step: s });
        const missed = absolute(minus(convert(broken, last).value, convert(a, last).value));
        expect(compareRatios(times(missed, exact(2)), exact(s))).toBeLessThanOrEqual(0);
        // Every unit of these ladders is a whole number of the last, so what rounds up to one is carried.
        const least = (broken.parts ?? [broken]).at(-1);
        const above = units.at(-2);
        if (least && above && broken.parts && last.endsWith(least.unit))
          expect(compareRatios(convert(least, above).value, exact(1))).toBe(-1);
      }),
    );
  });
});

describe("any text at all", () => {
  const piece = fc.constantFrom(
    "1",
    "2",
    "1/2",
    "½",
    "0",
    ".",
    ",",
    "/",
    "-",
    "–",
    "to",
    "+",
    "and",
    " ",
    "  ",
    "g",
    "cup",
    "tbsp",
    "T",
    "us",
    "fl oz",
    "lb",
    "medium",
    "can, drained",
    "e",
    "1,000",
    "x",
    "(",
    "pinch",
    "\u00a0",
    "kcal",
  );
  const number = fc.constantFrom("1", "2", "0.5", "1,5", "1/2", "1 1/2", "½", "3½", "1,000", "-1", "2-3", "");
  const unit = fc.constantFrom(
    "g",
    "lb",
    "oz",
    "cups",
    "Tbsp",
    "fl. oz.",
    "imp pint",
    "medium",
    "cans, drained",
    "T",
    "cup, chopped",
    "blob",
    "",
  );
  const joint = fc.constantFrom(" ", " + ", ", ", " and ", "");
  const likely = fc.array(fc.tuple(number, fc.constantFrom(" ", ""), unit, joint), {
    minLength: 1,
    maxLength: 3,
  });
  const text = fc.oneof(
    fc.string({ unit: "binary" }),
    fc.array(piece, { maxLength: 12 }).map((all) => all.join(" ")),
    fc.array(piece, { maxLength: 12 }).map((all) => all.join("")),
    { weight: 3, arbitrary: likely.map((all) => all.flat().join("").trim()) },
  );

  it("is an amount of 0 or more that reads back from what is written of it, or an error with a hint", () => {
    let readings = 0;
    fc.assert(
      fc.property(text, (written) => {
        let a: Amount;
        try {
          a = amount(written, { measures: "us", own });
        } catch (error) {
          expect(error).toBeInstanceOf(SteelyardError);
          for (const f of (error as SteelyardError).faults) expect(f.hint.length).toBeGreaterThan(5);
          return;
        }
        readings += 1;
        expect(a.value.n >= 0n).toBe(true);
        const again = amount(formatAmount(a, { measures: "us" }), { measures: "us", own });
        expect(equals(again.value, a.value)).toBe(true);
      }),
      { numRuns: runs(4000) },
    );
    expect(readings).toBeGreaterThan(met(80));
  });

  it("is never read as another figure than its digits say", () => {
    fc.assert(
      fc.property(
        fc.nat(9999),
        fc.nat(9999),
        fc.integer({ min: 1, max: 99 }),
        fc.integer({ min: 1, max: 99 }),
        (whole, part, n, d) => {
          expect(amount(`${whole}.${part} g`).value).toEqual(exact(`${whole}.${part}`));
          expect(amount(`${n}/${d} g`).value).toEqual(over(exact(n), exact(d)));
          if (n < d)
            expect(amount(`${whole} ${n}/${d} g`).value).toEqual(fraction(BigInt(whole * d + n), BigInt(d)));
        },
      ),
    );
  });
});
