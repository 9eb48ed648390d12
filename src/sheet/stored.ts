import { atwaterGeneral } from "../food/data/energyFao77.ts";
import type { FoodInput } from "../food/food.ts";
import { type PackedFoods, packFoods } from "../food/packed.ts";
import { onlyCodes, retentionCode } from "../food/retention.ts";
import { isYieldCode } from "../food/yield.ts";
import type { Recipe, WrittenAmount } from "../recipe/document.ts";
import type { StoredCell } from "./grid.ts";
import { type CellEntry, cellKey, isFailure } from "./own.ts";
import { recipeNow } from "./recipeNow.ts";
import type { Sheet } from "./sheet.ts";

/** The format that this version writes. */
export const SHEET_FORMAT = "steelyard-sheet/1" as const;

/** A sheet as plain data, with all that it was made from: `openSheet` opens it with no table at hand. */
export interface StoredSheet {
  readonly format: typeof SHEET_FORMAT;
  /** The recipe with amounts as they are. */
  readonly recipe: Recipe;
  /** What of it was otherwise in the recipe that the sheet was first made from. */
  readonly origin?: StoredOrigin;
  /** Recipes that lines name by id, theirs too. */
  readonly recipes?: { readonly [id: string]: Recipe };
  /** The foods of all lines, and the codes of the retention table that lines name. */
  readonly foods: PackedFoods;
  /** The factor system by which energy is shared out unless told. */
  readonly energySystem: { readonly id: "atwater-general"; readonly source: string };
  readonly own?: StoredOwn;
}

/** The parts of a recipe that scaling and editing change, as they first were. */
export interface StoredOrigin
  extends Pick<Recipe, "portions" | "cookedMass" | "yieldFactor" | "yieldPresumed"> {
  /** Amounts by line, of lines that have another now. */
  readonly amounts: { readonly [line: string]: WrittenAmount };
}

/** Columns, rows and constants of one's own. */
export interface StoredOwn {
  readonly constants: { readonly [name: string]: { readonly value: string; readonly unit: string } };
  /** Names of columns and rows whose formulas are functions, which no document holds: to be defined again. */
  readonly untold: { readonly columns: readonly string[]; readonly rows: readonly string[] };
  /** What their cells came to, where anything is known. */
  readonly cells: readonly StoredCell[];
}

/** All that a sheet is made of, as plain data; `more` are foods besides, where its table has them. */
export function storedSheet(s: Sheet, more: readonly string[] = []): StoredSheet {
  const recipes: { [id: string]: Recipe } = {};
  const foods = new Map<string, FoodInput>();
  const codes = new Set<string>();
  const yields = new Set<string>();
  gather(s, { recipes, foods, codes, yields });
  for (const id of more) if (s.plan.foods.has(id)) foods.set(id, s.plan.foods.get(id));
  const own = storedOwn(s);
  const recipe = recipeNow(s);
  const origin = originOf(s, recipe);
  return {
    format: SHEET_FORMAT,
    recipe,
    ...(origin && { origin }),
    ...(Object.keys(recipes).length > 0 && { recipes }),
    foods: packFoods([...foods.values()], onlyCodes(s.plan.foods.retention, codes, yields)),
    energySystem: { id: "atwater-general", source: atwaterGeneral.source },
    ...(own && { own }),
  };
}

function originOf({ origin }: Sheet, now: Recipe): StoredOrigin | undefined {
  const moved = origin.lines.flatMap(({ key, amount }, i): [string, WrittenAmount][] => {
    const same = JSON.stringify(amount) === JSON.stringify(now.lines[i]?.amount);
    return same ? [] : [[key, amount]];
  });
  const { portions, cookedMass, yieldFactor, yieldPresumed } = origin;
  const cooking = { portions, cookedMass, yieldFactor, yieldPresumed };
  const same = Object.entries(cooking).every(([field, value]) => now[field as keyof Recipe] === value);
  if (same && moved.length === 0) return undefined;
  return { ...JSON.parse(JSON.stringify(cooking)), amounts: Object.fromEntries(moved) };
}

interface Drawn {
  readonly recipes: { [id: string]: Recipe };
  readonly foods: Map<string, FoodInput>;
  /** Of retention factors, and of yields. */
  readonly codes: Set<string>;
  readonly yields: Set<string>;
}

/** What lines draw on, all the way down. */
function gather(s: Sheet, drawn: Drawn): void {
  const { recipes, foods, codes, yields } = drawn;
  if (isYieldCode(s.origin.yieldFactor)) yields.add(s.origin.yieldFactor.code);
  for (const { line, source, nested } of s.plan.lines) {
    const code = retentionCode(line.retention);
    if (code !== undefined) codes.add(code);
    if (isYieldCode(line.yieldFactor)) yields.add(line.yieldFactor.code);
    if (source.food) foods.set(source.food.input.id, source.food.input);
    if (!nested) continue;
    if (typeof line.recipe === "string") {
      if (Object.hasOwn(recipes, line.recipe)) continue;
      recipes[line.recipe] = recipeNow(nested);
    }
    gather(nested, drawn);
  }
}

function storedOwn(s: Sheet): StoredOwn | undefined {
  if (!s.grid) return undefined;
  const { columns, rows, constants, stored = [] } = s.grid.own;
  const told = [...constants].map(
    ([name, { value, unit }]) => [name, { value: value.toJSON(), unit }] as const,
  );
  const earlier = new Map(stored.map((cell) => [cellKey(cell), cell]));
  return {
    constants: Object.fromEntries(told),
    untold: { columns: [...columns.keys()], rows: [...rows.keys()] },
    cells: s.grid.all().flatMap((entry) => storedCell(entry) ?? earlier.get(cellKey(entry.ref)) ?? []),
  };
}

/** What a cell came to; undefined where its formula is still to be given again. */
function storedCell({ ref, value }: CellEntry): StoredCell | readonly [] | undefined {
  if (!isFailure(value)) return value.bound === "unknown" ? [] : { ...ref, value: value.toJSON() };
  return value.code === "column-untold" ? undefined : { ...ref, value };
}
