import { anyText, asWritten } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import { byName, fields, leaf, list, once, optional, type Schema } from "../document/schema.ts";
import type { FoodTable } from "../food/table.ts";
import type { Measures } from "../measure/measures.ts";
import { exactText } from "../number/digits.ts";
import { collect, type Fault, throwIfAny } from "../number/error.ts";
import { equals, exact, isZero, ONE, type Value, ZERO } from "../number/exact.ts";
import type { Line, LineInput, Recipe, RecipeInput, RecipeNote, WrittenAmount } from "../recipe/document.ts";
import { sheet } from "./build.ts";
import { checkSheet } from "./given.ts";
import { nameAfter } from "./nameAfter.ts";
import { toRecipe } from "./recipe.ts";
import type { Sheet } from "./sheet.ts";

/** What to change of a recipe, all in one step. Lines are named by their keys. */
export interface Changes {
  /** Other amounts, as `edit` takes them. */
  readonly amounts?: Readonly<Record<string, WrittenAmount>>;
  /**
   * Another food for a line, by its id; the amount stays unless `amounts` gives one. What was said of the
   * food that goes, its preparation and that it is weighed as purchased where the new one has no waste,
   * goes with it. It is cooked as the other was: a retention that `lines` does not give anew stays, and what
   * it changes is presumed.
   */
  readonly swap?: Readonly<Record<string, string>>;
  /** What a line says of itself, field by field; null takes it away. */
  readonly lines?: Readonly<Record<string, LineChanges>>;
  readonly remove?: readonly string[];
  /** New lines, before a line or at the end. */
  readonly add?: readonly (LineInput & { readonly before?: string })[];
  /** Keys in their new order; lines not named keep theirs, after those that are. */
  readonly order?: readonly string[];
  readonly portions?: Value;
  /**
   * Mass of what was cooked, or null to take the food as weighed in. Unless told, a mass that was weighed
   * becomes the yield factor that it implied, presumed, where what is cooked changes.
   */
  readonly cookedMass?: WrittenAmount | null;
  readonly yieldFactor?: RecipeInput["yieldFactor"] | null;
  readonly measures?: Measures;
  /** Unless told, a name that speaks of a food which goes says so: `Chicken curry, with Tofu instead of Chicken`. */
  readonly name?: string;
  readonly method?: readonly string[] | null;
  readonly notes?: readonly RecipeNote[] | null;
}

/** What of a line can be changed; null takes it away. */
export type LineChanges = { readonly [F in LineField]?: LineInput[F] | null };

/** The fields of a line that `revise` changes. */
export type LineField =
  | "scaling"
  | "part"
  | "least"
  | "most"
  | "retention"
  | "yieldFactor"
  | "added"
  | "prep"
  | "weighed";

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
 * console.log(other.lines[0].name); // => Chickpeas, boiled
 * ```
 */
export function revise(s: Sheet, asked: Changes): Sheet {
  checkSheet(s);
  // What is not of the right kind cannot be asked for keys.
  const changes = read(changesSchema(), asked, "recipe-malformed");
  const faults: Fault[] = [];
  for (const [field, keys] of keysNamed(changes)) {
    for (const key of keys) collect(faults, [field, key], () => s.plan.indexOf(key));
  }
  const { foods, recipes } = s.plan;
  const build = (written: RecipeInput): Sheet => sheet(written, foods, { recipes });
  const changed = collect(faults, [], () => build(changedDocument(s, changes)));
  throwIfAny(faults.map((each) => ofTheMethod(each, changes)));
  if (!changed) return s;
  const isTold = changes.cookedMass !== undefined || changes.yieldFactor !== undefined;
  return s.rebuilt(isTold || isPotSame(s, changed) ? changed : build(withImpliedYield(s, changed)));
}

/** Whether the same foods go into the pot, as much of each. */
function isPotSame(a: Sheet, b: Sheet): boolean {
  const pot = ({ plan, values }: Sheet): string =>
    plan.lines
      .flatMap(({ line, source }, i) => {
        const grams = values.grams[i] ?? ZERO;
        return line.added === "serving" || isZero(grams) ? [] : `${source.id} ${exactText(grams)}`;
      })
      .sort()
      .join("\n");
  return pot(a) === pot(b);
}

/** What is cooked of other lines was never weighed: they yield what the earlier ones did, presumed. */
function withImpliedYield(before: Sheet, after: Sheet): RecipeInput {
  const { cooking } = after.values;
  const written = toRecipe(after);
  if (cooking.by !== "mass") return written;
  const { cookedMass: _, ...rest } = written;
  return { ...rest, yieldFactor: exactText(before.masses.yieldFactor), yieldPresumed: true };
}

/** A method that was not changed is at fault because a line went that it names: what to change is the method. */
function ofTheMethod(fault: Fault, { method }: Changes): Fault {
  if (fault.path[0] !== "method" || method !== undefined) return fault;
  return { ...fault, hint: `${fault.hint}; or change the method too: { method: ["…"] }` };
}

/** Sets of changes. The values that a document holds are the document's to check. */
const changesSchema: () => Schema<Changes> = /* @__PURE__ */ once(() => {
  const keys = optional(list(anyText(), { like: "the keys of lines" }));
  return fields<Changes>({
    amounts: optional(byName(asWritten<WrittenAmount>(), { like: '{ oats: "80 g" }' })),
    swap: optional(byName(asWritten<string>(), { like: '{ milk: "milk-whole" }' })),
    lines: optional(byName(lineChanges(), { like: '{ oats: { scaling: "held" } }' })),
    remove: keys,
    add: optional(list(leaf("a line", {}, isRecord, (line) => line as unknown as LineInput))),
    order: keys,
    portions: optional(asWritten()),
    cookedMass: optional(asWritten()),
    yieldFactor: optional(asWritten()),
    measures: optional(asWritten()),
    name: optional(asWritten()),
    method: optional(asWritten()),
    notes: optional(asWritten()),
  });
});

function lineChanges(): Schema<LineChanges> {
  return fields<LineChanges>({
    scaling: optional(asWritten()),
    part: optional(asWritten()),
    least: optional(asWritten()),
    most: optional(asWritten()),
    retention: optional(asWritten()),
    yieldFactor: optional(asWritten()),
    added: optional(asWritten()),
    prep: optional(asWritten()),
    weighed: optional(asWritten()),
  });
}

function keysNamed({
  amounts,
  swap,
  lines,
  remove,
  add,
  order,
}: Changes): (readonly [string, readonly string[]])[] {
  return [
    ["amounts", Object.keys(amounts ?? {})],
    ["swap", Object.keys(swap ?? {})],
    ["lines", Object.keys(lines ?? {})],
    ["remove", remove ?? []],
    ["add", (add ?? []).flatMap(({ before }) => before ?? [])],
    ["order", order ?? []],
  ];
}

function changedDocument(s: Sheet, changes: Changes): RecipeInput {
  const written = toRecipe(s);
  const { cookedMass, yieldFactor, yieldPresumed, method, notes, ...rest } = written;
  const said = { method, notes, ...given({ method: changes.method, notes: changes.notes }) };
  const cooked =
    changes.cookedMass === undefined && changes.yieldFactor === undefined
      ? { cookedMass, yieldFactor, yieldPresumed }
      : changes;
  return {
    ...rest,
    name: changes.name ?? nameAfter(s, changes),
    lines: changedLines(written.lines, changes, s.plan.foods),
    ...(changes.portions === undefined ? {} : { portions: changes.portions }),
    ...(changes.measures === undefined ? {} : { measures: changes.measures }),
    ...(said.method == null ? {} : { method: said.method }),
    ...(said.notes == null ? {} : { notes: said.notes }),
    ...(cooked.cookedMass == null ? {} : { cookedMass: cooked.cookedMass }),
    ...(cooked.yieldFactor == null ? {} : { yieldFactor: cooked.yieldFactor }),
    ...("yieldPresumed" in cooked && cooked.yieldPresumed ? { yieldPresumed: true } : {}),
  };
}

/** The fields that are given; null is. */
function given<T extends object>(fields: T): Partial<T> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Partial<T>;
}

/** A line with another food: what was said of the one that goes does not stay. */
function swapped({ recipe: _, prep: __, weighed, ...plain }: Line, food: string, foods: FoodTable): Line {
  const isOther = food !== plain.food;
  const { edibleShare } = foods.has(food) ? foods.get(food) : {};
  const hasWaste = edibleShare !== undefined && !equals(exact(edibleShare), ONE);
  return {
    ...plain,
    food,
    ...(weighed && hasWaste && { weighed }),
    ...(isOther && plain.retention !== undefined && { retentionPresumed: true }),
  };
}

/** A line with what is changed of it; what becomes null is no longer said. */
function restated(line: LineInput, changes: LineChanges): LineInput {
  const { retentionPresumed: _, ...sure } = line;
  const told = changes.retention === undefined ? line : sure;
  return Object.fromEntries(
    Object.entries({ ...told, ...given(changes) }).filter(([, value]) => value !== null),
  ) as unknown as LineInput;
}

function changedLines(
  lines: Recipe["lines"],
  { amounts, swap, lines: changes, remove, add, order }: Changes,
  foods: FoodTable,
): LineInput[] {
  const own = <T>(of: Readonly<Record<string, T>> | undefined, key: string): T | undefined =>
    of && Object.hasOwn(of, key) ? of[key] : undefined;
  const changed = lines.map((line): LineInput => {
    const food = own(swap, line.key);
    const amount = own(amounts, line.key);
    const stated = restated(
      food === undefined ? line : swapped(line, food, foods),
      own(changes, line.key) ?? {},
    );
    return { ...stated, amount: amount === undefined ? line.amount : amount };
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
