import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import { byName, fields, once, optional, readAs, type Schema } from "../document/schema.ts";
import type { Shares } from "../food/composition.ts";
import { retentionShares } from "../food/retention.ts";
import type { RetentionTable } from "../food/retentionTable.ts";
import { FoodTable } from "../food/table.ts";
import { foundYield, isYieldCode, yieldFigure } from "../food/yield.ts";
import { type Amount, amount, gramsOf } from "../measure/amount.ts";
import type { Measures } from "../measure/measures.ts";
import { collect, type Fault, fault, kindOf, quote, throwIfAny, within } from "../number/error.ts";
import { type Exact, exact, ONE, times, type Value } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { LEAST_ABOVE_MOST, LEAST_HINT, NESTED_UNITS } from "../recipe/across.ts";
import type { Line, LineInput, Recipe, RecipeInput } from "../recipe/document.ts";
import { recipeAsFar, unknownRecipe } from "../recipe/recipe.ts";
import { type AmountReader, amountReader, readWritten } from "../recipe/resolve.ts";
import { recipeSchema } from "../recipe/schema.ts";
import { type PlanLine, type RecipesById, SheetPlan } from "./plan.ts";
import { Sheet } from "./sheet.ts";
import { foodSource, nestedSource } from "./source.ts";
import { type Cooking, checkedValues } from "./values.ts";

/** Options of {@link sheet}. */
export interface SheetOptions {
  /** Recipes that lines name by id. */
  readonly recipes?: RecipesById;
}

/**
 * Resolves a recipe to grams and figures.
 *
 * Throws one error with every fault: the codes of `recipe`, `food-unknown`, `recipe-unknown`,
 * `recipe-cycle` (with the way round), `sheet-malformed` for options, `retention-unknown`, `yield-unknown`, `density-needed`, and the `amount-…` and
 * `measures-…` codes.
 *
 * @example
 * ```ts
 * const s = sheet(
 *   { name: "Porridge", portions: 2, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * console.log(s.portion("energy").value.toString()); // => 189.5
 * ```
 */
export function sheet(recipe: RecipeInput | Recipe, foods: FoodTable, how: SheetOptions = {}): Sheet {
  if (!(foods instanceof FoodTable)) {
    throw fault(
      "food-malformed",
      "the second argument is not a food table",
      "make one with foodTable([…]), or use starterFoods",
    );
  }
  const { recipes = {} } = read(sheetHow(), how, "sheet-malformed");
  return new Builder(foods, recipes).build(recipe, []);
}

/** The recipes themselves are read where a line names them, once each. */
const sheetHow: () => Schema<SheetOptions> = /* @__PURE__ */ once(() =>
  fields<SheetOptions>({ recipes: optional(recipesById()) }),
);

function recipesById(): Schema<RecipesById> {
  const hint = "recipes by the id that lines name: { pesto: { … } }";
  return readAs(byName(recipeSchema()), hint, (given) => {
    if (isRecord(given)) return given as RecipesById;
    throw fault("sheet-malformed", `recipes are ${kindOf(given)}`, `give ${hint}`);
  });
}

/** Builds a sheet and those nested in it, each id once, however often it is named. */
class Builder {
  readonly #foods: FoodTable;
  readonly #recipes: RecipesById;
  readonly #built = new Map<string, Sheet>();
  readonly #refused = new Set<string>();

  constructor(foods: FoodTable, recipes: RecipesById) {
    this.#foods = foods;
    this.#recipes = recipes;
  }

  build(input: RecipeInput | Recipe, above: readonly string[]): Sheet {
    const faults: Fault[] = [];
    const recipe = recipeAsFar(input, faults);
    const amounts: Amount[] = [];
    const grams: Exact[] = [];
    const lines: PlanLine[] = [];
    // Spoons and cups of measures that were refused would be told again at each line.
    const isMeasured = !faults.some(({ path }) => path[0] === "measures");
    (recipe.lines ?? []).forEach((line: Partial<Line> | undefined, i) => {
      if (line?.food === undefined && line?.recipe === undefined) return;
      const { amount: _, least: __, most: ___, ...weightless } = line;
      const read = isMeasured ? line : weightless;
      const made = collect(faults, ["lines", i], () => this.#line(read, recipe.measures, above));
      if (!made) return;
      lines.push(made.line);
      amounts.push(made.amount);
      grams.push(made.grams);
    });
    this.#knownYield(recipe, faults);
    throwIfAny(faults);
    return this.#made(recipe as Recipe, lines, amounts, grams);
  }

  #made(recipe: Recipe, lines: PlanLine[], amounts: Amount[], grams: Exact[]): Sheet {
    const plan = new SheetPlan(recipe, this.#foods, lines, this.#recipes);
    if (plan.spread > WIDEST && lines.some(({ nested }) => nested)) throw tooWide();
    const portions = exact(recipe.portions);
    const cooking = cookingOf(recipe, this.#foods.retention);
    return new Sheet(plan, checkedValues(plan, { amounts, grams, portions, cooking }));
  }

  /** A line, or what is wrong with as much of it as is sound; undefined where that is nothing. */
  #line(
    line: Partial<Line>,
    measures: Measures | undefined,
    above: readonly string[],
  ): { line: PlanLine; amount: Amount; grams: Exact } | undefined {
    const faults: Fault[] = [];
    const { yieldFactor: _, ...unyielding } = line;
    const told = this.#knownYield(line, faults) ? line : unyielding;
    const shares = collect(faults, ["retention"], () => retentionShares(told, this.#foods.retention));
    const drawn = collect(faults, [], () => this.#drawsOn(line, shares ?? NO_SHARES, measures, above));
    if (!drawn) return throwIfAny(faults) as undefined;
    const { source, nested, reader } = drawn;
    const read = (field: "amount" | "least" | "most"): { amount: Amount; grams: Exact } | undefined => {
      const written = line[field];
      if (written === undefined) return undefined;
      return collect(faults, [field], () => {
        const read = reader.read(written);
        return { amount: read, grams: reader.toGrams(read).grams };
      });
    };
    const [amount, least, most] = [read("amount"), read("least")?.grams, read("most")?.grams];
    if (least && most && compareRatios(least, most) > 0)
      faults.push({ code: "recipe-malformed", path: ["least"], message: LEAST_ABOVE_MOST, hint: LEAST_HINT });
    throwIfAny(faults);
    return amount && { line: { line: line as Line, source, nested, reader, least, most }, ...amount };
  }

  /** Whether a yield that is named stands in a table; where it does not, that is a fault. */
  #knownYield({ yieldFactor }: Pick<LineInput, "yieldFactor">, faults: Fault[]): boolean {
    if (!isYieldCode(yieldFactor)) return true;
    return (
      collect(faults, ["yieldFactor"], () => foundYield(yieldFactor.code, this.#foods.retention)) !==
      undefined
    );
  }

  #drawsOn(
    line: Partial<Line>,
    shares: Shares,
    measures: Measures | undefined,
    above: readonly string[],
  ): Pick<PlanLine, "source" | "nested"> & { reader: AmountReader } {
    if (line.recipe !== undefined) {
      const id = typeof line.recipe === "string" ? line.recipe : line.recipe.name;
      const nested = within(["recipe"], () => this.#nested(line.recipe ?? "", above));
      return { source: nestedSource(id, nested, shares), nested, reader: nestedReader(nested) };
    }
    const food = within(["food"], () => this.#foods.food(line.food ?? ""));
    const reader = amountReader(food.input, measures);
    return {
      source: foodSource(food, shares),
      nested: undefined,
      reader:
        line.weighed === "as-purchased" ? edibleOf(reader, food.input.edibleShare, food.input.name) : reader,
    };
  }

  #nested(named: string | Recipe, above: readonly string[]): Sheet {
    if (typeof named !== "string") return this.build(named, above);
    if (above.includes(named)) {
      const way = [...above.slice(above.indexOf(named)), named].join(" → ");
      throw fault("recipe-cycle", `recipes contain each other: ${way}`, "take one of them out of the other");
    }
    if (above.length >= DEEPEST) {
      throw fault("recipe-malformed", `recipes nested too deep, over ${DEEPEST}`, "nest fewer levels");
    }
    const built = this.#built.get(named);
    if (built) return built;
    const found = Object.hasOwn(this.#recipes, named) ? this.#recipes[named] : undefined;
    if (found === undefined) throw unknownRecipe(named, Object.keys(this.#recipes), []);
    if (this.#refused.has(named)) {
      const hint = "mend them, as told where it is first named";
      throw fault("recipe-malformed", `the recipe ${quote(named)} has faults`, hint);
    }
    try {
      const made = this.build(found, [...above, named]);
      this.#built.set(named, made);
      return made;
    } catch (error) {
      // Its faults are told once: told again at every mention, they would multiply level by level.
      this.#refused.add(named);
      throw error;
    }
  }
}

/**
 * Lines that nested recipes may come to, written out. Ten levels that each name the next one three times
 * are past it: each line has to be named wherever a total says what it does not know.
 */
const WIDEST = 10_000;

function tooWide(): Error {
  const message = `nested recipes come to more than ${WIDEST} lines once they are written out`;
  return fault("recipe-malformed", message, "nest fewer levels, or name a recipe once with the whole amount");
}

/** Levels of nested recipes: beyond any kitchen, and well within every engine's stack. */
const DEEPEST = 50;

const AS_WEIGHED: Cooking = { by: "factor", factor: ONE };
const NO_SHARES: Shares = /* @__PURE__ */ new Map();

/** What is cooked weighs what the recipe says, which has been found to be a mass above 0. */
function cookingOf(
  { cookedMass, yieldFactor, yieldPresumed, lines }: Recipe,
  table: RetentionTable | undefined,
): Cooking {
  const mass = cookedMass === undefined ? undefined : gramsOf(amount(cookedMass));
  if (mass) return { by: "mass", mass };
  if (yieldFactor === undefined)
    return lines.some((line) => line.yieldFactor !== undefined) ? { by: "lines" } : AS_WEIGHED;
  return { by: "factor", factor: yieldFigure(yieldFactor, table), ...(yieldPresumed && { presumed: true }) };
}

/** A nested recipe is measured by mass as eaten, by its portions or pieces, or as a share of its batch. */
function nestedReader(nested: Sheet): AmountReader {
  const { piece } = nested.origin;
  const own = piece ? [...NESTED_UNITS, piece.name] : NESTED_UNITS;
  return {
    read: (written) => readWritten(written, { own }),
    toGrams: (a) => {
      const grams = gramsOf(a);
      if (grams !== undefined) return { grams, by: { kind: "mass" } };
      const one =
        a.unit === "portion"
          ? nested.portionMass
          : a.unit === "batch"
            ? nested.masses.cooked
            : a.unit === piece?.name
              ? gramsOf(amount(piece.mass))
              : undefined;
      if (one === undefined) {
        throw fault(
          "amount-unknown-unit",
          `a nested recipe cannot be measured in ${a.unit}`,
          `write a mass, "2 portions"${piece ? `, "1 ${piece.name}"` : ""} or "1/2 batch"`,
        );
      }
      return { grams: times(a.value, one), by: { kind: "measure", measure: a.unit, grams: one } };
    },
  };
}

/**
 * Takes peel, bone and core off what was weighed with them. A food's own measures are told in grams of
 * what is eaten of them (`1 medium` of SR28 is without its peel), so that nothing comes off those.
 */
function edibleOf(reader: AmountReader, edibleShare: Value | undefined, name: string): AmountReader {
  if (edibleShare === undefined) {
    throw fault(
      "recipe-malformed",
      `nothing is known of what of ${name} is eaten`,
      "weigh the edible portion, or give the food an edibleShare",
      ["weighed"],
    );
  }
  const share = exact(edibleShare);
  return {
    read: reader.read,
    toGrams: (a) => {
      const { grams, by } = reader.toGrams(a);
      return { grams: by.kind === "measure" ? grams : times(grams, share), by };
    },
  };
}
