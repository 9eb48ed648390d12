/** Coefficients held against the sheets that they speak of, exactly, at factors on either side of every turn. */
import { describe, expect, it } from "vitest";
import { oatPot, seedTopping } from "../../examples/recipes.ts";
import { type AtFactor, coefficients } from "../../src/bulk/coefficients.ts";
import { foodTable } from "../../src/food/table.ts";
import { starterFoods } from "../../src/foods.ts";
import { type Exact, exact } from "../../src/number/exact.ts";
import type { Quantity } from "../../src/scale/demand.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { toRecords } from "../../src/show/records.ts";
import { toText } from "../../src/show/text.ts";

const asked: readonly Quantity[] = ["energy", "protein", "water", "iodine", "sodium", "mass"];

const foods = foodTable([
  {
    id: "fish",
    name: "Fish",
    source: "made up for a test",
    per100g: {
      energy: { value: 90, low: 80, high: "99.9" },
      protein: { value: 18, low: 17, high: 19 },
      water: 78,
    },
  },
  {
    id: "rice",
    name: "Rice",
    source: "made up for a test",
    per100g: { energy: 350, protein: { value: 7, low: 1, high: 13 }, water: 12 },
  },
]);
const pot = sheet(
  {
    name: "Pot",
    portions: 2,
    yieldFactor: "0.5",
    lines: [
      { food: "fish", amount: "120 g" },
      { food: "rice", amount: "80 g", scaling: "per-portion" },
    ],
  },
  foods,
);
const cases: readonly (readonly [string, Sheet])[] = [
  ["the oat pot", sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } })],
  ["a pot that dries", pot],
];

const at = (form: AtFactor | undefined, factor: Exact): string | undefined =>
  form?.fixed.plus(form.perFactor.times(factor)).toJSON();

describe("coefficients", () => {
  it.each(cases)("give every figure of a portion exactly, of %s", (_, s) => {
    const { rows } = coefficients(s, asked);
    for (let k = 1; k <= 40; k += 1) {
      const factor = exact(`${k * k}/37`);
      const scaled = s.scaled(factor, s.portions);
      for (const of of asked) {
        const row = rows.find(
          ({ component, from, to }) =>
            component === of && from.lt(factor) && (to === undefined || factor.lte(to)),
        );
        if (of === "mass") {
          expect(at(row?.value, factor)).toBe(scaled.portionMass.toJSON());
          continue;
        }
        const tally = scaled.portion(of);
        expect([
          of,
          at(row?.value, factor),
          at(row?.least, factor),
          at(row?.most, factor),
          row?.bound,
          row?.missing,
        ]).toEqual([
          of,
          tally.bound === "unknown" ? undefined : tally.value.toJSON(),
          tally.least?.toJSON(),
          tally.most?.toJSON(),
          tally.bound,
          tally.missing,
        ]);
      }
    }
  });

  it("have a row for each stretch, and one where nothing turns", () => {
    const count = (of: Quantity): number =>
      coefficients(pot, asked).rows.filter(({ component }) => component === of).length;
    expect([count("mass"), count("energy"), count("water")]).toEqual([1, 2, 2]);
  });

  it("are shown and recorded, as doubles or exactly", () => {
    const made = coefficients(pot, ["energy"]);
    expect(toText(made)).toContain("for each unit of the factor");
    const [mass] = toRecords(made, { figures: "exact" });
    expect(mass).toMatchObject({
      component: "mass",
      fixed: "20",
      per_factor: "30",
      from_factor: "0",
      to_factor: null,
    });
    expect(toRecords(made, { components: ["energy"] }).every(({ component }) => component === "energy")).toBe(
      true,
    );
  });
});
