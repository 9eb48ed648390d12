import { versioned } from "../document/format.ts";
import { anyText, flag, text, value, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import {
  andThen,
  byName,
  fields,
  leaf,
  list,
  once,
  optional,
  readAs,
  type Schema,
} from "../document/schema.ts";
import { packedSchema } from "../food/packed.ts";
import { checkFoodTable, type FoodTable, foodTable } from "../food/table.ts";
import { fault, within } from "../number/error.ts";
import type { Value } from "../number/exact.ts";
import type { Recipe } from "../recipe/document.ts";
import { recipe as recipeRead } from "../recipe/recipe.ts";
import { rangedAmount, recipeSchema, writtenAmount, yieldSchema } from "../recipe/schema.ts";
import { sheet } from "./build.ts";
import { withColumn, withConstant, withRow, withStored } from "./columns.ts";
import { type Difference, difference } from "./difference.ts";
import type { StoredCell } from "./grid.ts";
import { Sheet } from "./sheet.ts";
import { SHEET_FORMAT, type StoredOrigin, type StoredSheet } from "./stored.ts";

/**
 * Opens a sheet that was stored: what `JSON.parse` gives of a sheet's JSON. It needs no food table, and gives
 * the figures that the sheet had, literally; its recipe is the one that the sheet stood for. A sheet that
 * another copy of this package made is opened too.
 *
 * Columns and rows of one's own stand in it by name, and fail with `column-untold` until they are defined
 * again: their formulas are functions, which no document holds. What their cells came to stands in the
 * stored document, under `own`.
 *
 * Throws `sheet-malformed` with every fault, `sheet-format-newer` for one that a later version wrote, and
 * the codes of {@link sheet} and of foods.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 3, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const stored = JSON.stringify(porridge);
 * openSheet(JSON.parse(stored)).portion("energy").value.toJSON(); // => 379/3
 * ```
 */
export function openSheet(stored: unknown): Sheet {
  return read(sheetSchema(), writtenBy(stored), "sheet-malformed");
}

/** What became of a stored sheet with the foods of today. */
export interface Refreshed {
  readonly sheet: Sheet;
  /** What moved, for one portion as eaten. */
  readonly difference: Difference;
  /** Ids of foods that the table does not have: their figures are the stored ones. */
  readonly kept: readonly string[];
}

/**
 * Works a stored sheet, or one at hand, out again with the figures and retention factors of a food table,
 * and tells what moved. Throws as {@link openSheet}.
 *
 * @example
 * ```ts
 * const oats = { id: "oats", name: "Oats", source: "own analysis", per100g: { protein: 13 } };
 * const stored = sheet({ name: "Oats", portions: 1, lines: [{ food: "oats", amount: "50 g" }] }, foodTable([oats])).toJSON();
 * const today = foodTable([{ ...oats, per100g: { protein: 14 } }]);
 * refresh(stored, today).difference.components.map(({ component, change }) => `${component} ${change.value}`); // => [ 'protein 0.5' ]
 * ```
 */
export function refresh(stored: unknown, foods: FoodTable): Refreshed {
  const { recipe, recipes, foods: before, own } = read(storedSchema(), writtenBy(stored), "sheet-malformed");
  checkFoodTable(foods);
  const how = { recipes: recipes ?? {} };
  const kept = before.ids.filter((id) => !foods.has(id));
  const table = foods.with(kept.map((id) => before.get(id)));
  const retention = foods.retention ?? before.retention;
  const now = withOwn(sheet(recipe, retention ? table.withRetention(retention) : table, how), own);
  return { sheet: now, difference: difference(sheet(recipe, before, how), now), kept };
}

/** The schema of a stored sheet, read to the sheet. */
export const sheetSchema: () => Schema<Sheet> = /* @__PURE__ */ once(() =>
  andThen(storedSchema(), ({ recipe, origin, recipes, foods, own }) => {
    const now = within(["recipe"], () => sheet(recipe, foods, { recipes: recipes ?? {} }));
    return withOwn(origin ? within(["origin"], () => withOrigin(now, origin)) : now, own);
  }),
);

/** The sheet with the recipe that it was first made from. */
function withOrigin(now: Sheet, { amounts, ...first }: StoredOrigin): Sheet {
  const { plan, values } = now;
  const { cookedMass: _, yieldFactor: __, yieldPresumed: ___, ...rest } = plan.recipe;
  for (const key of Object.keys(amounts)) within(["amounts"], () => plan.indexOf(key));
  const written = plan.recipe.lines.map((line) => ({ ...line, amount: amounts[line.key] ?? line.amount }));
  const origin = recipeRead({ ...rest, ...first, lines: written });
  const lines = plan.lines.map((own, i) => ({ ...own, line: origin.lines[i] ?? own.line }));
  return new Sheet(plan.withLines(lines, origin), values);
}

/** What a thing of this or another copy of the package writes of itself. */
export function writtenBy(given: unknown): unknown {
  const { toJSON } = (given ?? {}) as { readonly toJSON?: unknown };
  return typeof toJSON === "function" ? toJSON.call(given) : given;
}

interface ReadStored extends Omit<StoredSheet, "foods" | "own"> {
  readonly foods: FoodTable;
  readonly own?: ReadOwn;
}

interface ReadOwn {
  readonly constants: { readonly [name: string]: { readonly value: Value; readonly unit: string } };
  readonly untold: { readonly columns: readonly string[]; readonly rows: readonly string[] };
  readonly cells: readonly StoredCell[];
}

/** Every format that a sheet was ever written in. */
const storedSchema: () => Schema<ReadStored> = /* @__PURE__ */ once(() =>
  versioned<ReadStored>("sheet", "sheet-format-newer", {
    1: fields<ReadStored>({
      format: word([SHEET_FORMAT]),
      recipe: recipeSchema(),
      origin: optional(
        fields<StoredOrigin>({
          portions: text(100_000),
          amounts: byName(rangedAmount()),
          cookedMass: optional(writtenAmount()),
          yieldFactor: optional(yieldSchema()),
          yieldPresumed: optional(flag()),
        }),
      ),
      recipes: optional(byName<Recipe>(recipeSchema())),
      foods: readAs(packedSchema(), "foods", (given) => foodTable(given as never)),
      energySystem: fields<StoredSheet["energySystem"]>({ id: word(["atwater-general"]), source: text() }),
      own: optional(
        fields<ReadOwn>({
          constants: byName(fields<{ value: Value; unit: string }>({ value: value(), unit: anyText() })),
          untold: fields<ReadOwn["untold"]>({ columns: list(text()), rows: list(text()) }),
          cells: list(leaf("a cell", cellJson, isStoredCell, inTodaysWords)),
        }),
      ),
    }),
  }),
);

const cellJson = {
  type: "object",
  required: ["column", "row", "value"],
  properties: {
    column: { type: "string" },
    row: {
      anyOf: [
        { enum: ["total", "portion", "per100g"] },
        { type: "object", properties: { line: { type: "string" } }, required: ["line"] },
        { type: "object", properties: { row: { type: "string" } }, required: ["row"] },
      ],
    },
    value: { type: "object" },
  },
} as const;

function isStoredCell(given: unknown): given is StoredCell {
  if (!isRecord(given) || typeof given.column !== "string" || !isRecord(given.value)) return false;
  const { row } = given;
  if (row === "total" || row === "portion" || row === "per100g") return true;
  return isRecord(row) && (typeof row.line === "string" || typeof row.row === "string");
}

/** Sheets were once stored with the word `exact` for the bound that is now called `point`. */
function inTodaysWords(given: StoredCell): StoredCell {
  const { value } = given;
  const bound: string | undefined = "bound" in value ? value.bound : undefined;
  return "bound" in value && bound === "exact" ? { ...given, value: { ...value, bound: "point" } } : given;
}

/** What cells came to goes with the sheet until their formulas are given again, so that storing it loses nothing. */
function withOwn(s: Sheet, own: ReadOwn | undefined): Sheet {
  if (!own) return s;
  let made = s;
  for (const [name, { value, unit }] of Object.entries(own.constants))
    made = withConstant(made, name, value, unit);
  for (const name of own.untold.columns) made = withColumn(made, name, untold(name, "withColumn"));
  for (const name of own.untold.rows) made = withRow(made, name, untold(name, "withRow"));
  return withStored(made, own.cells);
}

function untold(name: string, what: "withColumn" | "withRow"): () => never {
  return () => {
    const hint = `define it again: ${what}(sheet, "${name}", …)`;
    throw fault("column-untold", `the formula of ${name} is a function, which no document holds`, hint);
  };
}
