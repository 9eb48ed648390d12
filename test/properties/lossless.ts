/** Holds what a program reads on a result against what JSON, or a structured clone, makes of it. */

import { isDeepStrictEqual } from "node:util";
import { cellValue } from "../../src/sheet/columns.ts";
import {
  amount,
  type ComponentId,
  components,
  Exact,
  Explanation,
  exact,
  FoodTable,
  foodTable,
  openPlan,
  openSheet,
  Plan,
  Sheet,
  Tally,
  toRecipe,
} from "../everything.ts";

type Seen = Map<object, Set<unknown>>;

/** The faults of a copy: each place where it does not say what the original says. */
export function lost(x: unknown, y: unknown, path = "", seen: Seen = new Map()): readonly string[] {
  if (x === undefined || typeof x === "function" || typeof x === "symbol") return [];
  const fault = [`${path}: ${show(x)} became ${show(y)}`];
  if (typeof x !== "object" || x === null) return Object.is(x, y) || x === y ? [] : fault;
  // Bytes are saved or sent as they are, never as JSON.
  if (x instanceof Uint8Array) return [];
  if (seen.get(x)?.has(y)) return [];
  seen.set(x, (seen.get(x) ?? new Set()).add(y));
  const reads = reader(x);
  if (reads) return does(() => reads(y)) ? [] : fault;
  if (typeof y !== "object" || y === null) return fault;
  if (x instanceof Plan) return lost(of(x), asData(of(openPlan(y))), path, seen);
  if (x instanceof Set) return lost([...x], y instanceof Set ? [...y] : y, path, seen);
  const at = (name: string): unknown =>
    y instanceof Map ? y.get(name) : (y as { readonly [name: string]: unknown })[name];
  // A tally's JSON does not say what it is: there are thousands in a plan's.
  const entries: readonly (readonly [string, unknown])[] =
    x instanceof Map ? [...x] : fields(x).filter(([name]) => !(x instanceof Tally && name === "is"));
  return entries.flatMap(([name, value]) => lost(value, at(name), `${path}.${name}`, seen));
}

/** Of what has a form of its own in JSON: whether the function that reads it gives it back. */
function reader(x: object): ((y: unknown) => boolean) | undefined {
  if (x instanceof Exact) return (y) => exact(y as string).eq(x);
  if (x instanceof FoodTable) return (y) => same(foodTable(y as never), x);
  if (x instanceof Sheet) return (y) => isDeepStrictEqual(allOf(openSheet(y)), allOf(x));
  if ("kind" in x && "unit" in x && "value" in x && "toJSON" in x) return (y) => same(amount(y as never), x);
  return undefined;
}

/** All that a sheet says, but for columns whose formulas are functions: its lines, masses and every figure. */
export function allOf(s: Sheet): unknown {
  const { name, portions, mass } = s;
  const lines = s.lines.map(({ nested, ...line }) => [line, nested && allOf(nested)]);
  const constants = [...(s.grid?.own.constants.keys() ?? [])].map((each) => [each, cellValue(s, each)]);
  const figures = Object.keys(components).map((id) => [
    s.total(id as ComponentId),
    s.portion(id as ComponentId),
  ]);
  return asData({ name, portions, mass, lines, constants, figures, recipe: toRecipe(s), origin: s.origin });
}

/** All that a reader can reach by name: fields of its own, and getters of its classes. */
function fields(x: object): readonly (readonly [string, unknown])[] {
  const found = new Map<string, unknown>(Object.entries(x));
  for (let at = Object.getPrototypeOf(x); at && at !== Object.prototype; at = Object.getPrototypeOf(at)) {
    for (const [name, { get }] of Object.entries(Object.getOwnPropertyDescriptors(at))) {
      const isHidden =
        found.has(name) ||
        (x instanceof Tally && INTERNAL.includes(name)) ||
        (x instanceof Explanation && ["leaves", "ranked", "unknown"].includes(name));
      if (get && !isHidden) found.set(name, get.call(x));
    }
  }
  return [...found];
}

const of = (x: object): object => Object.fromEntries(fields(x));

/** Getters of a tally that its types do not show. */
const INTERNAL: readonly string[] = ["ratio", "isPlain", "isPoint", "nil", "ends"];

/** Whatever the order of fields. */
const same = (a: unknown, b: unknown): boolean => isDeepStrictEqual(asData(a), asData(b));

const asData = (x: unknown): unknown => JSON.parse(JSON.stringify(x));

function does(holds: () => boolean): boolean {
  try {
    return holds();
  } catch {
    return false;
  }
}

function show(x: unknown): string {
  if (x === undefined) return "nothing";
  return typeof x === "object" && x !== null ? `an object of ${Object.keys(x).join(", ")}` : String(x);
}
