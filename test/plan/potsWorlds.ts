import fc from "fast-check";
import { type FoodTable, foodTable } from "../../src/food/table.ts";
import type { MealInput, PersonInput, PortionDemands } from "../../src/plan/input.ts";
import type { LineInput, RecipeInput } from "../../src/recipe/document.ts";
import type { Demand } from "../../src/scale/demand.ts";
import { sheet } from "../../src/sheet/build.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { food } from "../scale/fit/worlds.ts";

/** A dish with parts, perhaps one beside it, and people who need it in ratios of their own. */
export interface PotsWorld {
  readonly recipe: RecipeInput;
  readonly sheet: Sheet;
  readonly aside: { readonly recipe: RecipeInput; readonly sheet: Sheet } | undefined;
  readonly meal: MealInput;
  readonly people: readonly PersonInput[];
}

const known = ["energy", "protein", "fat", "fibre"] as const;

const figures = fc.record({
  energy: fc.integer({ min: 20, max: 600 }),
  protein: fc.integer({ min: 0, max: 30 }),
  fat: fc.integer({ min: 0, max: 40 }),
  fibre: fc.integer({ min: 0, max: 12 }),
});
const line = fc.record({ per100g: figures, grams: fc.integer({ min: 10, max: 300 }), serving: fc.boolean() });
type DrawnLine = typeof line extends fc.Arbitrary<infer L> ? L : never;

/** Demands as what some ratios would bring, mostly, so that they can be met. */
const person = fc.record({
  kind: fc.oneof(
    { weight: 5, arbitrary: fc.constant("demands" as const) },
    fc.constant("target" as const),
    fc.constant("factor" as const),
  ),
  size: fc.integer({ min: 50, max: 300 }),
  ratios: fc.array(fc.integer({ min: 55, max: 190 }), { minLength: 4, maxLength: 4 }),
  asks: fc.uniqueArray(
    fc.record({
      of: fc.constantFrom(...known, "mass" as const, "ratio" as const),
      kind: fc.constantFrom("exactly", "exactly", "exactly", "least", "most", "band"),
      firm: fc.integer({ min: 0, max: 4 }),
    }),
    { minLength: 2, maxLength: 4, selector: ({ of }) => of },
  ),
});
type DrawnPerson = typeof person extends fc.Arbitrary<infer P> ? P : never;

export interface PotsShape {
  readonly people: number;
  readonly parts: number;
  readonly aside: boolean;
}

export function potsWorlds({ people, parts, aside }: PotsShape): fc.Arbitrary<PotsWorld> {
  return fc
    .record({
      base: fc.array(line, { minLength: 1, maxLength: 2 }),
      parts: fc.array(fc.array(line, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: parts }),
      adjustable: fc.oneof(line, fc.constant(undefined), fc.constant(undefined), fc.constant(undefined)),
      dose: fc.option(line, { nil: undefined }),
      beside: fc.option(line, { nil: undefined }),
      yieldFactor: fc.constantFrom(undefined, "0.9", "1.25"),
      people: fc.array(person, { minLength: 3, maxLength: people }),
    })
    .map((drawn) => build({ ...drawn, beside: aside ? drawn.beside : undefined }));
}

interface Drawn {
  readonly base: readonly DrawnLine[];
  readonly parts: readonly (readonly DrawnLine[])[];
  readonly adjustable: DrawnLine | undefined;
  readonly dose: DrawnLine | undefined;
  readonly beside: DrawnLine | undefined;
  readonly yieldFactor: string | undefined;
  readonly people: readonly DrawnPerson[];
}

function build({ base, parts, adjustable, dose, beside, yieldFactor, people }: Drawn): PotsWorld {
  const made: { line: LineInput; per100g: DrawnLine["per100g"]; group: number | "dose" }[] = [];
  const add = (
    key: string,
    { per100g, grams, serving }: DrawnLine,
    group: number | "dose",
    more: Partial<LineInput>,
  ): void => {
    const added = serving && made.length > 0 ? "serving" : "cooking";
    made.push({ line: { key, food: key, amount: `${grams} g`, added, ...more }, per100g, group });
  };
  base.forEach((own, i) => {
    add(`base${i}`, own, 0, {});
  });
  parts.forEach((part, p) => {
    part.forEach((own, i) => {
      add(`part${p}${i}`, own, p + 1, { part: `part${p}`, ...(i === 0 && { added: "cooking" }) });
    });
  });
  if (adjustable) add("loose", adjustable, 3, { scaling: "adjustable" });
  if (dose) add("dose", dose, "dose", { scaling: "per-portion", added: "serving" });
  const recipe = { name: "Pot", portions: 1, lines: made.map((each) => each.line), yieldFactor };
  const asideRecipe: RecipeInput = {
    name: "Aside",
    portions: 1,
    lines: [{ key: "beside", food: "beside", amount: `${beside?.grams ?? 1} g` }],
  };
  const table: FoodTable = foodTable([
    ...made.map((each) => food(each.line.key as string, each.per100g)),
    ...(beside ? [food("beside", beside.per100g)] : []),
  ]);
  const { yieldFactor: _, ...plain } = recipe;
  const written: RecipeInput = yieldFactor === undefined ? plain : { ...plain, yieldFactor };
  const pot = sheet(written, table);
  const asideSheet = beside && sheet(asideRecipe, table);
  // A factor for each line: of the base 1, of parts and the loose line their own.
  const brings = (of: (typeof known)[number] | "mass", { size, ratios }: DrawnPerson): number => {
    const ownYield = Number(yieldFactor ?? 1);
    const amount = (l: LineInput, per100g: DrawnLine["per100g"]): number => {
      const grams = Number.parseInt(String(l.amount), 10);
      return of === "mass" ? grams * (l.added === "cooking" ? ownYield : 1) : (grams * per100g[of]) / 100;
    };
    const all = made.map(({ line: l, per100g, group }) => {
      const factor =
        group === "dose" ? 1 : (size / 100) * (group === 0 ? 1 : (ratios[group - 1] ?? 100) / 100);
      return amount(l, per100g) * factor;
    });
    const more = beside
      ? (amount(asideRecipe.lines[0] as LineInput, beside.per100g) / (of === "mass" ? ownYield : 1)) *
        (size / 100)
      : 0;
    return all.reduce((a, b) => a + b, more);
  };
  const demandsOf = (drawn: DrawnPerson): PortionDemands => {
    if (drawn.kind === "factor") return { factor: `${drawn.size}/100` };
    if (drawn.kind === "target") return { energy: Math.max(1, Math.round(brings("energy", drawn))) };
    return drawn.asks.map(({ of, kind, firm }): Demand => {
      const value =
        of === "ratio"
          ? Math.round((brings("protein", drawn) / brings("energy", drawn)) * 10_000) / 10_000
          : Math.round(brings(of, drawn) * 10) / 10;
      const about = of === "ratio" ? ({ ratioOf: ["protein", "energy"] } as const) : ({ of } as const);
      const text = (v: number): string => v.toFixed(5);
      const ends =
        kind === "exactly"
          ? { exactly: text(value) }
          : kind === "least"
            ? { least: text(value * 0.97) }
            : kind === "most"
              ? { most: text(value * 1.04) }
              : { least: text(value * 0.97), most: text(value * 1.04) };
      return { ...about, ...ends, ...(firm === 0 && kind !== "exactly" && { firm: true }) };
    });
  };
  return {
    recipe: written,
    sheet: pot,
    aside: asideSheet && { recipe: asideRecipe, sheet: asideSheet },
    // By name the dish beside comes first, and sets the common factor.
    meal: { id: "meal", dishes: asideSheet ? { aside: asideSheet, pot } : pot },
    people: people.map((drawn, i) => ({ id: `p${i}`, demands: demandsOf(drawn) })),
  };
}
