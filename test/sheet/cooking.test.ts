import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { componentIds } from "../../src/food/components.ts";
import { usdaRetention } from "../../src/food/data/retentionUsdaR6.ts";
import { starterFoods } from "../../src/foods.ts";
import { exactText } from "../../src/number/digits.ts";
import { equals, plus } from "../../src/number/exact.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { sheet } from "../../src/sheet/build.ts";
import { cooking } from "../../src/sheet/cooking.ts";
import { toText as shown } from "../../src/show/text.ts";
import { errorOf } from "../number/errorOf.ts";
import { runs } from "../runs.ts";

const codes = Object.keys(usdaRetention.codes);
const share = fc.integer({ min: 0, max: 20 }).map((n) => `${n}/20`);
const retention = fc.oneof(
  fc.constant(undefined),
  fc.constantFrom(...codes),
  fc.dictionary(fc.constantFrom(...componentIds), share, { maxKeys: 8, noNullPrototype: true }),
);
const grams = fc.integer({ min: 0, max: 90_000 }).map((n) => `${n}/97 g`);

function lineOf(food: string, amount: string, left: unknown, added: boolean): RecipeInput["lines"][number] {
  const cooked = left === undefined || added ? {} : { retention: left as string };
  return { food, amount, ...cooked, ...(added ? { added: "serving" as const } : {}) };
}

const lines = fc.array(
  fc.tuple(fc.constantFrom(...starterFoods.ids), grams, retention, fc.boolean()).map((all) => lineOf(...all)),
  { minLength: 1, maxLength: 6 },
);
const yieldFactor = fc.integer({ min: 1, max: 40 }).map((n) => `${n}/13`);

describe("cooking", () => {
  it("raw + gained = retained + lost, literally, for mass and every component, nested dishes and all", () => {
    fc.assert(
      fc.property(lines, lines, yieldFactor, yieldFactor, retention, (inner, outer, a, b, again) => {
        const weighed = inner.map((line, i) =>
          i === 0 ? { ...line, amount: "100 g", added: "cooking" as const } : line,
        );
        const sauce: RecipeInput = { name: "Sauce", portions: 1, yieldFactor: a, lines: weighed };
        const twice = again === undefined ? {} : { retention: again as string };
        const s = sheet(
          {
            name: "Dish",
            portions: 3,
            yieldFactor: b,
            lines: [...outer, { key: "sauce", recipe: sauce, amount: "50/7 g", ...twice }],
          },
          starterFoods,
        );
        const balance = cooking(s);
        const holds = ({ raw, gained, retained, lost }: typeof balance.mass): boolean =>
          equals(plus(raw.value, gained.value), plus(retained.value, lost.value)) &&
          gained.value.n >= 0n &&
          lost.value.n >= 0n;
        expect(holds(balance.mass)).toBe(true);
        for (const id of componentIds) {
          const all = balance.of(id);
          expect([id, holds(all)]).toEqual([id, true]);
          expect([id, exactText(all.retained.value)]).toEqual([id, exactText(s.total(id).value)]);
          for (const line of s.lines)
            expect([id, line.key, holds(balance.line(line.key, id))]).toEqual([id, line.key, true]);
        }
      }),
      { numRuns: runs(60) },
    );
  });

  it("says what went in: the raw amount is that of the same recipe uncooked", () => {
    fc.assert(
      fc.property(lines, yieldFactor, (some, factor) => {
        const recipe = { name: "Dish", portions: 1, lines: some };
        const raw = some.map(({ retention: _, ...line }) => line);
        const cooked = cooking(sheet({ ...recipe, yieldFactor: factor }, starterFoods));
        const uncooked = sheet({ ...recipe, lines: raw }, starterFoods);
        for (const id of componentIds)
          expect([id, exactText(cooked.of(id).raw.value)]).toEqual([id, exactText(uncooked.total(id).value)]);
      }),
      { numRuns: runs(60) },
    );
  });

  const greens = sheet(
    {
      name: "Greens",
      portions: 1,
      yieldFactor: "0.9",
      lines: [{ food: "spinach-raw", amount: "100 g", retention: "3004" }],
    },
    starterFoods,
  );

  it("takes a retention code and a yield to what is kept and lost", () => {
    // USDA retention code 3004 leaves 60 % of vitamin C, of which SR28 gives raw spinach 28.1 mg.
    const c = cooking(greens).of("vitaminC");
    expect([c.raw, c.gained, c.retained, c.lost].map((t) => t.value.toString())).toEqual([
      "28.1",
      "0",
      "16.86",
      "11.24",
    ]);
    const { raw, gained, retained, lost } = cooking(greens).mass;
    expect([raw, gained, retained, lost].map((t) => t.value.toString())).toEqual(["100", "0", "90", "10"]);
    expect(cooking(greens).of("water").lost.value.toString()).toBe("10");
    expect(cooking(greens).line("spinach-raw", "water").lost.value.toString()).toBe("0");
  });

  it("counts water taken up as gained", () => {
    const rice = sheet(
      {
        name: "Rice",
        portions: 1,
        yieldFactor: "2.5",
        lines: [{ food: "rice-white-long-dry", amount: "100 g" }],
      },
      starterFoods,
    );
    expect(cooking(rice).mass.gained.value.toString()).toBe("150");
    expect(cooking(rice).of("water").gained.value.toString()).toBe("150");
    expect(cooking(rice).of("protein").lost.value.toString()).toBe("0");
  });

  it("keeps what is not known, not known", () => {
    expect(cooking(greens).of("iodine").lost.bound).toBe("unknown");
  });

  it("counts what cooking a nested dish leaves of it", () => {
    const nested = sheet(
      {
        name: "Pie",
        portions: 1,
        lines: [{ key: "greens", recipe: greens.origin, amount: "90 g", retention: { vitaminC: "1/2" } }],
      },
      starterFoods,
    );
    const c = cooking(nested).of("vitaminC");
    expect([c.raw, c.retained, c.lost].map((t) => t.value.toString())).toEqual(["16.86", "8.43", "8.43"]);
  });

  it("shows only what cooking changes", () => {
    const text = shown(cooking(greens));
    expect(text).toMatch(/vitamin C\s+mg\s+28\.1\s+0\s+16\.9\s+11\.2\s+60/);
    expect(text).not.toMatch(/protein/);
  });

  it("names a line that is not there", () => {
    expect(errorOf(() => cooking(greens).line("kale", "iron")).code).toBe("line-unknown");
  });
});
