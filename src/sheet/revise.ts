import type { Measures } from "../measure/measures.ts";
import { collect, type Fault, kindOf, throwIfAny } from "../number/error.ts";
import { fieldsGiven } from "../number/fields.ts";
import type { Value } from "../number/fraction.ts";
import type { LineInput, Recipe, RecipeInput, WrittenAmount } from "../recipe/document.ts";
import { sheet } from "./build.ts";
import { checkSheet } from "./given.ts";
import { toRecipe } from "./recipe.ts";
import type { Sheet } from "./sheet.ts";

/** What to change of a recipe, all in one step. Lines are named by their keys. */
export interface Changes {
  /** Other amounts, as `edit` takes them. */
  readonly amounts?: Readonly<Record<string, WrittenAmount>>;
  /** Another food for a line, by its id; the amount stays unless `amounts` gives one. */
  readonly swap?: Readonly<Record<string, string>>;
  readonly remove?: readonly string[];
  /** New lines, before a line or at the end. */
  readonly add?: readonly (LineInput & { readonly before?: string })[];
  /** Keys in their new order; lines not named keep theirs, after those that are. */
  readonly order?: readonly string[];
  readonly portions?: Value;
  /** Mass of what was cooked, or null to take the food as weighed in. */
  readonly cookedMass?: WrittenAmount | null;
  readonly yieldFactor?: Value | null;
  readonly measures?: Measures;
  readonly method?: readonly string[];
}

/**
 * A sheet of the changed recipe, with its own columns and rows. It is the sheet that the changed
 * document would give, built anew; for amounts alone `edit` is quicker.
 *
 * Throws one error with every fault: `line-unknown`, the codes of {@link sheet} (`recipe-malformed` for
 * a change that there is not), and `sheet-malformed` for what is no sheet.
 *
 * @example
 * ```ts
 * const soup = sheet(
 *   { name: "Soup", portions: 2, lines: [{ key: "bean", food: "kidney-beans-red-boiled", amount: "150 g" }] },
 *   starterFoods,
 * );
 * const other = revise(soup, { swap: { bean: "chickpeas-boiled" }, portions: 3 });
 * console.log(other.lines[0].name); // => Chickpeas, boiled without salt
 * ```
 */
export function revise(s: Sheet, changes: Changes): Sheet {
  checkSheet(s);
  const faults: Fault[] = [];
  checkShape(changes, faults);
  // What is not of the right kind cannot be asked for keys.
  throwIfAny(faults);
  for (const [field, keys] of keysNamed(changes)) {
    for (const key of keys) collect(faults, [field, key], () => s.plan.indexOf(key));
  }
  const { foods, recipes } = s.plan;
  const changed = collect(faults, [], () => sheet(changedDocument(toRecipe(s), changes), foods, { recipes }));
  throwIfAny(faults.map((each) => ofTheMethod(each, changes)));
  return changed ? s.rebuilt(changed) : s;
}

/** A method that was not changed is at fault because a line went that it names: what to change is the method. */
function ofTheMethod(fault: Fault, { method }: Changes): Fault {
  if (fault.path[0] !== "method" || method !== undefined) return fault;
  return { ...fault, hint: `${fault.hint}; or change the method too: { method: ["…"] }` };
}

const FIELDS = [
  ...["amounts", "swap", "remove", "add", "order"],
  ...["portions", "cookedMass", "yieldFactor", "measures", "method"],
] as const;

/** Refuses what is no set of changes. The values that a document holds are the document's to check. */
function checkShape(changes: unknown, faults: Fault[]): void {
  const given = fieldsGiven(changes, FIELDS, "recipe-malformed", faults);
  const wrong = (field: string, hint: string): void => {
    const message = `${field} is ${kindOf(given[field])}`;
    faults.push({ code: "recipe-malformed", path: [field], message, hint });
  };
  for (const field of ["amounts", "swap"]) {
    const value = given[field];
    if (value !== undefined && (typeof value !== "object" || value === null || Array.isArray(value)))
      wrong(field, 'give an object by line key: { oats: "…" }');
  }
  for (const field of ["remove", "order"]) {
    const value = given[field];
    if (value !== undefined && !isListOf(value, "string")) wrong(field, "give a list of line keys");
  }
  if (given.add !== undefined && !isListOf(given.add, "object")) wrong("add", "give a list of lines");
}

function isListOf(value: unknown, kind: "string" | "object"): boolean {
  return Array.isArray(value) && value.every((each) => typeof each === kind && each !== null);
}

function keysNamed({ amounts, swap, remove, add, order }: Changes): (readonly [string, readonly string[]])[] {
  return [
    ["amounts", Object.keys(amounts ?? {})],
    ["swap", Object.keys(swap ?? {})],
    ["remove", remove ?? []],
    ["add", (add ?? []).flatMap(({ before }) => before ?? [])],
    ["order", order ?? []],
  ];
}

function changedDocument(written: Recipe, changes: Changes): RecipeInput {
  const { cookedMass, yieldFactor, ...rest } = written;
  const cooked =
    changes.cookedMass === undefined && changes.yieldFactor === undefined
      ? { cookedMass, yieldFactor }
      : changes;
  return {
    ...rest,
    lines: changedLines(written.lines, changes),
    ...(changes.portions === undefined ? {} : { portions: changes.portions }),
    ...(changes.measures === undefined ? {} : { measures: changes.measures }),
    ...(changes.method === undefined ? {} : { method: changes.method }),
    ...(cooked.cookedMass == null ? {} : { cookedMass: cooked.cookedMass }),
    ...(cooked.yieldFactor == null ? {} : { yieldFactor: cooked.yieldFactor }),
  };
}

function changedLines(lines: Recipe["lines"], { amounts, swap, remove, add, order }: Changes): LineInput[] {
  const own = <T>(of: Readonly<Record<string, T>> | undefined, key: string): T | undefined =>
    of && Object.hasOwn(of, key) ? of[key] : undefined;
  const changed = lines.map((line): LineInput => {
    const food = own(swap, line.key);
    const amount = own(amounts, line.key);
    const { recipe: _, ...plain } = line;
    return {
      ...(food === undefined ? line : { ...plain, food }),
      amount: amount === undefined ? line.amount : amount,
    };
  });
  for (const { before, ...line } of add ?? []) {
    const at = before === undefined ? -1 : changed.findIndex(({ key }) => key === before);
    changed.splice(at < 0 ? changed.length : at, 0, line);
  }
  const kept = changed.filter(({ key }) => key === undefined || !remove?.includes(key));
  const place = (line: LineInput): number => {
    const at = line.key === undefined ? -1 : (order ?? []).indexOf(line.key);
    return at < 0 ? kept.length + kept.indexOf(line) : at;
  };
  return order === undefined ? kept : [...kept].sort((a, b) => place(a) - place(b));
}
