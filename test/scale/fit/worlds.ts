import fc from "fast-check";
import { type ComponentId, components } from "../../../src/food/components.ts";
import type { FoodInput } from "../../../src/food/food.ts";
import { type FoodTable, foodTable } from "../../../src/food/table.ts";
import { exactText } from "../../../src/number/digits.ts";
import { type Exact, fraction, minus, ONE, plus, sum, times } from "../../../src/number/exact.ts";
import type { LineInput, RecipeInput } from "../../../src/recipe/document.ts";
import type { Demand, EnergyShareOf } from "../../../src/scale/demand.ts";
import { moveLines } from "../../../src/scale/move.ts";
import { sheet } from "../../../src/sheet/build.ts";
import { energyShares } from "../../../src/sheet/energy.ts";
import type { Sheet } from "../../../src/sheet/sheet.ts";

/** Random dishes with demands on them, for the tests and the bench; the same seed gives the same. */

export const known: readonly ComponentId[] = [
  "energy",
  "protein",
  "fat",
  "carbohydrateByDifference",
  "alcohol",
  "fibre",
  "sodium",
  "omega3",
  "omega6",
];

export interface World {
  readonly recipe: RecipeInput;
  readonly table: FoodTable;
  readonly sheet: Sheet;
  readonly demands: readonly Demand[];
  /** The factors that the demands were taken from: the common one, and each line's. */
  readonly common: Exact;
  readonly factors: readonly Exact[];
  /** Whether a demand was moved away from what those factors bring. */
  readonly wild: boolean;
}

export interface Shape {
  readonly adjustable: { readonly min: number; readonly max: number };
  readonly demands: { readonly min: number; readonly max: number };
  /** Chance of a demand far from what can be met, 1 in so many; never where 0. */
  readonly wild: number;
  /** Whether adjustable lines may carry bounds of their own; they may unless told. */
  readonly bounds?: boolean;
}

const decimal = (most: number, places: number): fc.Arbitrary<string> =>
  fc.integer({ min: 0, max: most * 10 ** places }).map((n) => (n / 10 ** places).toFixed(places));

const figures = fc.record({
  energy: decimal(600, 0),
  protein: decimal(30, 2),
  fat: decimal(40, 2),
  carbohydrateByDifference: decimal(70, 2),
  alcohol: fc.constant("0"),
  fibre: decimal(12, 1),
  sodium: fc.oneof(decimal(900, 0), fc.constant("0")),
  omega3: decimal(3, 3),
  omega6: decimal(9, 3),
});

/** A food of which only these figures are told. */
export function food(id: string, per100g: FoodInput["per100g"]): FoodInput {
  return { id, name: id, source: "made up for a test", per100g };
}

const quarter = fc.integer({ min: 10, max: 40 }).map((n) => fraction(BigInt(n), 20n));

interface DrawnDemand {
  readonly of: ComponentId | "mass" | EnergyShareOf | "ratio";
  readonly kind: "exactly" | "least" | "most" | "band";
  readonly slack: number;
  readonly wild: boolean;
}

/** A dish of held lines, parts, adjustable lines and doses, with demands that mostly can be met. */
export function worlds(shape: Shape): fc.Arbitrary<World> {
  const line = fc.record({
    per100g: figures,
    grams: fc.integer({ min: 5, max: 900 }),
    serving: fc.boolean(),
  });
  const demand: fc.Arbitrary<DrawnDemand> = fc.record({
    of: fc.constantFrom(
      ...(["energy", "energy", "protein", "protein", "fibre", "sodium", "mass", "ratio"] as const),
      ...(["fat", "carbohydrate"] as const),
    ),
    kind: fc.constantFrom("exactly", "exactly", "least", "most", "band"),
    slack: fc.integer({ min: 0, max: 20 }),
    wild: shape.wild === 0 ? fc.constant(false) : fc.integer({ min: 1, max: shape.wild }).map((n) => n === 1),
  });
  return fc
    .record({
      portions: fc.integer({ min: 1, max: 6 }),
      yieldFactor: fc.constantFrom(undefined, "0.9", "1.2", "2.35"),
      held: fc.array(line, { minLength: 1, maxLength: 3 }),
      parts: fc.array(fc.array(line, { minLength: 1, maxLength: 2 }), { maxLength: 2 }),
      adjustable: fc.array(
        fc.record({
          line,
          bounds:
            shape.bounds === false
              ? fc.constant("none")
              : fc.constantFrom("none", "none", "most", "least", "both", "nothing"),
          factor: quarter,
        }),
        { minLength: shape.adjustable.min, maxLength: shape.adjustable.max },
      ),
      doses: fc.array(line, { maxLength: 2 }),
      partFactors: fc.array(quarter, { minLength: 2, maxLength: 2 }),
      common: fc.integer({ min: 5, max: 60 }).map((n) => fraction(BigInt(n), 20n)),
      demands: fc.array(demand, { minLength: shape.demands.min, maxLength: shape.demands.max }),
    })
    .map((drawn) => build(drawn));
}

type LineDrawn = {
  readonly per100g: FoodInput["per100g"];
  readonly grams: number;
  readonly serving: boolean;
};

interface Drawn {
  readonly portions: number;
  readonly yieldFactor: string | undefined;
  readonly held: readonly LineDrawn[];
  readonly parts: readonly (readonly LineDrawn[])[];
  readonly adjustable: readonly {
    readonly line: LineDrawn;
    readonly bounds: string;
    readonly factor: Exact;
  }[];
  readonly doses: readonly LineDrawn[];
  readonly partFactors: readonly Exact[];
  readonly common: Exact;
  readonly demands: readonly DrawnDemand[];
}

function build(drawn: Drawn): World {
  const foods: FoodInput[] = [];
  const lines: LineInput[] = [];
  const factors: Exact[] = [];
  const add = (
    key: string,
    { per100g, grams, serving }: LineDrawn,
    factor: Exact,
    more: Partial<LineInput>,
  ): void => {
    foods.push(food(key, per100g));
    lines.push({ key, food: key, amount: `${grams} g`, added: serving ? "serving" : "cooking", ...more });
    factors.push(factor);
  };
  const { common, portions } = drawn;
  drawn.held.forEach((line, i) => {
    add(`base-${i}`, line, common, {});
  });
  drawn.parts.forEach((part, p) => {
    part.forEach((line, i) => {
      add(`part-${p}-${i}`, line, times(common, drawn.partFactors[p] ?? ONE), { part: `part-${p}` });
    });
  });
  drawn.adjustable.forEach(({ line, bounds, factor }, i) => {
    const own = times(common, factor);
    // Bounds of one portion a fifth off what the drawn factor makes of the line.
    const portion = times(own, fraction(BigInt(line.grams), BigInt(portions)));
    const grams = (share: Exact): string => `${exactText(times(portion, share))} g`;
    add(`free-${i}`, line, own, {
      scaling: "adjustable",
      ...((bounds === "most" || bounds === "both") && { most: grams(fraction(6n, 5n)) }),
      ...((bounds === "least" || bounds === "both") && { least: grams(fraction(4n, 5n)) }),
      ...(bounds === "nothing" && { least: "0 g" }),
    });
  });
  drawn.doses.forEach((line, i) => {
    add(`dose-${i}`, { ...line, grams: Math.ceil(line.grams / 20) }, ONE, { scaling: "per-portion" });
  });
  const { yieldFactor } = drawn;
  const recipe = { name: "A dish", portions, lines, ...(yieldFactor !== undefined && { yieldFactor }) };
  const table = foodTable(foods);
  const s = sheet(recipe, table);
  const goal = moveLines(s, factors, s.values.portions);
  return {
    recipe,
    table,
    sheet: s,
    demands: drawn.demands.map((d) => demandOf(d, goal)),
    common,
    factors,
    wild: drawn.demands.some(({ wild }) => wild),
  };
}

const shares: readonly string[] = ["fat", "carbohydrate"];

function demandOf({ of, kind, slack, wild }: DrawnDemand, goal: Sheet): Demand {
  const { subject, value } = subjectAt(of, goal);
  const off = wild ? times(value, fraction(17n, 10n)) : value;
  const reached = shares.includes(of) && off.n > off.d ? ONE : off;
  const room = fraction(BigInt(slack), 100n);
  const low = exactText(times(reached, minus(ONE, room)));
  const most = times(reached, plus(ONE, room));
  const high = exactText(shares.includes(of) && most.n > most.d ? ONE : most);
  if (kind === "exactly") return { ...subject, exactly: exactText(reached) } as Demand;
  if (kind === "least") return { ...subject, least: low } as Demand;
  if (kind === "most") return { ...subject, most: high } as Demand;
  return { ...subject, least: low, most: high } as Demand;
}

/** What a sheet brings, from its public face alone. */
export function subjectAt(
  of: DrawnDemand["of"],
  s: Sheet,
): { readonly subject: object; readonly value: Exact } {
  if (of === "mass") return { subject: { of }, value: s.portionMass };
  if (of === "ratio") {
    const [a, b] = [s.portion("omega6").value, s.portion("omega3").value];
    return { subject: { ratioOf: ["omega6", "omega3"] }, value: b.n === 0n ? ONE : ratio(a, b) };
  }
  if (of === "carbohydrate" || of === "fat") {
    const all = energyShares(s);
    return {
      subject: { energyShareOf: of },
      value: sum(all.shares.filter((share) => share.of === of).map((share) => share.share)),
    };
  }
  if (!(of in components)) throw new Error(`no subject ${of}`);
  return { subject: { of }, value: s.portion(of as ComponentId).value };
}

function ratio(a: Exact, b: Exact): Exact {
  return fraction(a.n * b.d, a.d * b.n);
}
