import fc from "fast-check";
import type { FoodInput } from "../../../src/food/food.ts";
import { type FoodTable, foodTable } from "../../../src/food/table.ts";
import { type Kitchen, kitchen, kitchens } from "../../../src/measure/kitchen.ts";
import { exactText } from "../../../src/number/digits.ts";
import { type Exact, exact, fraction, least, plus, times } from "../../../src/number/exact.ts";
import type { LineInput, RecipeInput } from "../../../src/recipe/document.ts";
import type { Demand } from "../../../src/scale/demand.ts";
import { sheet } from "../../../src/sheet/build.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";

/** Random dishes, kitchens and demands for the tests of rounding; the same seed gives the same. */

const figures = (
  energy: number,
  protein: number,
  fat: number,
  carbohydrate: number,
  sodium: number,
): FoodInput["per100g"] => ({
  energy,
  protein: `${protein}`,
  fat: `${fat}`,
  carbohydrateByDifference: `${carbohydrate}`,
  sodium,
  alcohol: 0,
});

const source = "made up for a test";

/** One food of each way to be measured; the onion's cup, chopped, weighs otherwise than its density says. */
export const foods: FoodTable = foodTable([
  { id: "flour", name: "Flour", source, density: "0.53", per100g: figures(361, 10.3, 1.2, 76.1, 2) },
  { id: "oil", name: "Oil", source, density: "0.92", per100g: figures(884, 0, 100, 0, 1) },
  {
    id: "egg",
    name: "Egg",
    source,
    measures: [{ name: "medium", grams: 50 }],
    per100g: figures(143, 12.6, 9.5, 0.7, 142),
  },
  {
    id: "onion",
    name: "Onion",
    source,
    density: "0.6",
    edibleShare: "0.9",
    measures: [
      { name: "cup, chopped", grams: 160 },
      { name: "cup", grams: 150 },
      { name: "medium", grams: 110 },
    ],
    per100g: figures(40, 1.1, 0.1, 9.3, 4),
  },
  { id: "salt", name: "Salt", source, density: "1.2", per100g: figures(0, 0, 0, 0, 38758) },
]);

/** Kitchens that differ in all a rounding looks at. */
export const places: readonly Kitchen[] = [
  ...Object.values(kitchens),
  kitchen({
    name: "camp",
    measures: "metric",
    drawer: { cup: ["1/4", "1/3", "1/2"], tbsp: ["1/2"], tsp: ["1/4", "1/2"] },
    scale: "5 g",
    jug: { step: "10 ml", least: "50 ml" },
    pieces: "half",
  }),
  kitchen({ name: "galley", measures: "us", drawer: { tsp: ["1/4"] }, scale: "1/4 oz", pieces: "whole" }),
  kitchen({ name: "hut", measures: "us", drawer: { cup: ["1/2"], tbsp: [] }, pieces: "whole" }),
];

const text = (most: number): fc.Arbitrary<string> =>
  fc.integer({ min: 7, max: most * 12 }).map((n) => exactText(fraction(BigInt(n), 12n)));

const held: fc.Arbitrary<LineInput> = fc.oneof(
  text(400).map((n) => ({ food: "flour", amount: `${n} g` })),
  text(12).map((n) => ({ food: "flour", amount: `${n} oz` })),
  text(9).map((n) => ({ food: "oil", amount: `${n} tbsp` })),
  text(3).map((n) => ({ food: "flour", amount: `${n} cup` })),
  text(3).map((n) => ({ food: "onion", amount: `${n} cup` })),
  text(3).map((n) => ({ food: "onion", amount: `${n} cup, chopped` })),
  text(4).map((n) => ({ food: "onion", amount: `${n} medium`, weighed: "as-purchased" as const })),
  text(5).map((n) => ({ food: "egg", amount: `${n} medium` })),
  text(300).map((n) => ({ food: "oil", amount: `${n} ml` })),
  text(200).map((n) => ({ food: "onion", amount: `${n} g`, added: "serving" as const })),
);

const nested: fc.Arbitrary<LineInput> = fc
  .tuple(text(3), fc.constantFrom("portions", "batch"))
  .map(([n, unit]) => ({ recipe: "mix", amount: `${n} ${unit}` }));

export const recipes: { readonly mix: RecipeInput } = {
  mix: {
    name: "Mix",
    portions: 3,
    yieldFactor: "0.9",
    lines: [
      { key: "flour", food: "flour", amount: "100 g" },
      { key: "oil", food: "oil", amount: "30 g" },
    ],
  },
};

export interface World {
  readonly recipe: RecipeInput;
  readonly sheet: Sheet;
  readonly place: Kitchen;
  readonly demands: readonly Demand[];
  readonly tolerance: string;
}

export interface Shape {
  readonly lines: { readonly min: number; readonly max: number };
  readonly demands: { readonly min: number; readonly max: number };
  /** Kinds of demand to choose from; all unless told. */
  readonly of?: readonly DrawnDemand["of"][];
  /** How many hundredths a demand may be off what the sheet brings: 6 unless told. */
  readonly off?: number;
}

interface DrawnDemand {
  readonly of: "energy" | "protein" | "sodium" | "mass" | "fat-share" | "ratio";
  readonly kind: "exactly" | "band" | "least" | "most";
  /** Hundredths off what the sheet brings. */
  readonly off: number;
  readonly firm: boolean;
}

const everything: readonly DrawnDemand["of"][] = [
  "energy",
  "energy",
  "protein",
  "sodium",
  "mass",
  "fat-share",
  "ratio",
];

export function build(recipe: RecipeInput): Sheet {
  return sheet(recipe, foods, { recipes });
}

export function worlds(shape: Shape): fc.Arbitrary<World> {
  const demand: fc.Arbitrary<DrawnDemand> = fc.record({
    of: fc.constantFrom(...(shape.of ?? everything)),
    kind: fc.constantFrom("exactly", "exactly", "band", "least", "most"),
    off: fc.integer({ min: -(shape.off ?? 6), max: shape.off ?? 6 }),
    firm: fc.integer({ min: 0, max: 3 }).map((n) => n === 0),
  });
  return fc
    .record({
      lines: fc.array(fc.oneof({ weight: 9, arbitrary: held }, { weight: 1, arbitrary: nested }), {
        minLength: shape.lines.min,
        maxLength: shape.lines.max,
      }),
      doses: fc.integer({ min: 0, max: 2 }),
      portions: fc.integer({ min: 1, max: 4 }),
      measures: fc.constantFrom("metric" as const, "us" as const, "australian" as const),
      cooking: fc.constantFrom({}, { yieldFactor: "9/10" }, { cookedMass: "777 g" }),
      place: fc.constantFrom(...places),
      demands: fc.array(demand, { minLength: shape.demands.min, maxLength: shape.demands.max }),
      tolerance: fc.constantFrom("0.02", "0.02", "0.005", "0"),
    })
    .map(({ lines, doses, cooking, demands, place, tolerance, ...rest }) => {
      const isCooked = lines.some((line) => line.added !== "serving");
      const recipe: RecipeInput = {
        name: "Dish",
        ...rest,
        ...(isCooked ? cooking : {}),
        lines: [
          ...lines.map((line, i): LineInput => ({ ...line, key: `line-${i}` })),
          ...["0.7 g", "0.13 tsp"].slice(0, doses).map(
            (amount, i): LineInput => ({
              key: `dose-${i}`,
              food: "salt",
              amount,
              scaling: "per-portion",
            }),
          ),
        ],
      };
      const s = build(recipe);
      return { recipe, sheet: s, place, demands: demands.map((d) => demandOn(s, d)), tolerance };
    });
}

function demandOn(s: Sheet, { of, kind, off, firm }: DrawnDemand): Demand {
  const now = broughtBy(s, subjects[of]);
  const middle = times(now ?? fraction(1n), fraction(BigInt(100 + off), 100n));
  const end = (hundredths: bigint): string => {
    const figure = times(middle, fraction(100n + hundredths, 100n));
    return exactText(of === "fat-share" ? least(figure, fraction(1n)) : figure);
  };
  // Firm ends leave a little room, since what is measured is seldom just so.
  const [low, high] = firm ? [end(-4n), end(4n)] : [end(-1n), end(1n)];
  const ends =
    kind === "band" || (kind === "exactly" && firm)
      ? { least: low, most: high }
      : kind === "exactly"
        ? { exactly: end(0n) }
        : kind === "least"
          ? { least: low }
          : { most: high };
  return { ...subjects[of], ...ends, ...(firm && { firm }) } as Demand;
}

type Subject = Pick<Demand, "of" | "energyShareOf" | "ratioOf">;

const subjects: { readonly [K in DrawnDemand["of"]]: Subject } = {
  energy: { of: "energy" },
  protein: { of: "protein" },
  sodium: { of: "sodium" },
  mass: { of: "mass" },
  "fat-share": { energyShareOf: "fat" },
  ratio: { ratioOf: ["protein", "fat"] },
};

/** What a portion brings of a demand's subject, from the sheet's public figures; null where there is nothing to take it of. */
export function broughtBy(s: Sheet, subject: Subject): Exact | null {
  const one = (of: "energy" | "protein" | "fat" | "sodium" | "carbohydrateByDifference"): Exact =>
    s.portion(of).value;
  if (subject.of === "mass") return s.portionMass;
  if (subject.of === "energy" || subject.of === "protein" || subject.of === "sodium") return one(subject.of);
  // General factors, 4, 9 and 4 kcal/g: FAO Food and Nutrition Paper 77 (2003), 3.5.
  const fatEnergy = times(exact(9), one("fat"));
  const [above, below] = subject.ratioOf
    ? [one("protein"), one("fat")]
    : [fatEnergy, plus(fatEnergy, times(exact(4), plus(one("protein"), one("carbohydrateByDifference"))))];
  return below.n === 0n ? null : fraction(above.n * below.d, above.d * below.n);
}
