import * as z from "zod/mini";
import { type ErrorCode, type Fault, fault, type Path, quote, SteelyardError, throwIfAny } from "./error.ts";
import { compare, exact, type Fraction, isNumeric, type Value } from "./fraction.ts";
import { didYouMean } from "./near.ts";

/** Deeper than any document a person writes, and shallow enough for every engine's stack. */
const DEEPEST = 60;

/**
 * Reads an outside document through its schema. Every fault is listed at once, each with its path
 * and a hint; faults that the schema's own checks raise keep their code. A schema stops looking
 * across fields where one of them is at fault, so what holds between fields is for `across`: it is
 * given the document as handed in, free of cycles, whether or not the schema takes it.
 *
 * Throws `code` for shape, and whatever codes the checks carry.
 */
export function readDocument<T>(
  schema: z.ZodMiniType<T>,
  input: unknown,
  code: ErrorCode,
  across?: (input: unknown, faults: Fault[]) => void,
): T {
  refuseUnsafe(input, code, [], new Set());
  const result = schema.safeParse(input);
  const faults = result.success ? [] : result.error.issues.flatMap((issue) => faultsOf(issue, input, code));
  across?.(input, faults);
  throwIfAny(faults);
  if (result.success) return result.data;
  throw fault(code, "the document was refused", "compare it with the documented shape");
}

/** A number as a document may hold it, within an optional range; the value stays as written. */
export function valueSchema(
  range: { above?: number; from?: number; to?: number } = {},
): z.ZodMiniType<Value> {
  return z
    .custom<Value>(isValue, {
      error: "expected a number, or text, an exact number or a Decimal that holds one",
    })
    .check((ctx) => {
      const problem = valueProblem(ctx.value, range);
      if (problem)
        ctx.issues.push({
          code: "custom",
          input: ctx.value,
          message: problem.message,
          params: { ...problem },
        });
    });
}

/** Non-empty text without control characters, of at most `longest` characters. */
export function textSchema(longest = 2000): z.ZodMiniType<string> {
  return z.string().check((ctx) => {
    const text = ctx.value;
    if (text.trim() === "") push(ctx, "expected text, got none", "write at least one character");
    else if (text.length > longest)
      push(ctx, `text of ${text.length} characters`, `write at most ${longest} characters`);
    // Tabs and line breaks belong in prose; other control characters never do.
    else if (/[^\P{Cc}\t\r\n]/u.test(text))
      push(ctx, "text with control characters", "remove the control characters");
  });
}

/** One of a few words; the hint names the nearest, else lists them. */
export function wordSchema<const W extends string>(words: readonly [W, ...W[]]): z.ZodMiniType<W> {
  const all = words.map((word) => `"${word}"`).join(", ");
  return z
    .custom<W>((v) => typeof v === "string", { error: `expected ${words.length > 1 ? "one of " : ""}${all}` })
    .check((ctx) => {
      if (words.includes(ctx.value)) return;
      push(
        ctx,
        `${quote(ctx.value)} is not one of ${all}`,
        didYouMean(ctx.value, words, `write one of ${all}`),
      );
    });
}

/** Reports a fault from inside a schema's check, with a hint and, where given, its own code. */
export function push(
  ctx: { readonly value: unknown; readonly issues: z.core.$ZodRawIssue[] },
  message: string,
  hint: string,
  code?: ErrorCode,
  path: Path = [],
): void {
  ctx.issues.push({
    code: "custom",
    input: ctx.value,
    message,
    path: [...path],
    params: code ? { code, hint } : { hint },
  });
}

function isValue(v: unknown): v is Value {
  return typeof v === "string" || typeof v === "number" || isNumeric(v);
}

function valueProblem(
  v: Value,
  range: { above?: number; from?: number; to?: number },
): Partial<Fault> | undefined {
  let read: Fraction;
  try {
    read = exact(v);
  } catch (error) {
    if (error instanceof SteelyardError)
      return { code: error.code, message: error.faults[0]?.message ?? "", hint: error.hint };
    throw error;
  }
  const { above, from, to } = range;
  if (above !== undefined && compare(read, exact(above)) <= 0)
    return { message: `${quote(v)} is not above ${above}`, hint: `give a number above ${above}` };
  if (from !== undefined && compare(read, exact(from)) < 0)
    return { message: `${quote(v)} is below ${from}`, hint: `give ${from} or more` };
  if (to !== undefined && compare(read, exact(to)) > 0)
    return { message: `${quote(v)} is above ${to}`, hint: `give ${to} or less` };
  return undefined;
}

/** Cycles, endless depth and `__proto__` keys never reach a schema, which would hang on or drop them. */
function refuseUnsafe(input: unknown, code: ErrorCode, path: (string | number)[], above: Set<object>): void {
  if (typeof input !== "object" || input === null || isNumeric(input)) return;
  if (above.has(input))
    throw fault(code, "the document contains itself", "write plain data without cycles", [...path]);
  if (path.length > DEEPEST)
    throw fault(code, "the document is nested too deep", `nest at most ${DEEPEST} levels`, path.slice(0, 8));
  above.add(input);
  for (const key of Array.isArray(input) ? input.keys() : Object.keys(input)) {
    path.push(key);
    if (key === "__proto__") throw fault(code, 'a key named "__proto__"', "use another name", [...path]);
    refuseUnsafe((input as Record<string | number, unknown>)[key], code, path, above);
    path.pop();
  }
  above.delete(input);
}

function faultsOf(issue: z.core.$ZodIssue, input: unknown, code: ErrorCode): Fault[] {
  const path = issue.path.map((step) => (typeof step === "symbol" ? String(step) : step));
  const got = describeValue(valueAt(input, path));
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) => ({
        code,
        path: [...path, key],
        message: `${quote(key)} is not a field here`,
        hint: didYouMean(key, knownFields, "remove it, or check its spelling"),
      }));
    case "invalid_type":
      return [
        got === "nothing"
          ? { code, path, message: "missing", hint: `give ${article(issue.expected)}` }
          : {
              code,
              path,
              message: `expected ${article(issue.expected)}, got ${got}`,
              hint: `give ${article(issue.expected)}`,
            },
      ];
    case "custom": {
      const params: Partial<Fault> = issue.params ?? {};
      if (params.hint !== undefined)
        return [{ code: params.code ?? code, path, message: issue.message, hint: params.hint }];
      const hint = issue.message.replace(/^expected/, "give");
      return [{ code, path, message: got === "nothing" ? "missing" : `${issue.message}, got ${got}`, hint }];
    }
    default:
      return [{ code, path, message: `${issue.message}, got ${got}`, hint: "see the documented shape" }];
  }
}

/** Field names of our documents, for near-name hints only. */
const knownFields: readonly string[] = [
  "name",
  "portions",
  "measures",
  "lines",
  "key",
  "food",
  "recipe",
  "amount",
  "scaling",
  "part",
  "least",
  "most",
  "retention",
  "added",
  "prep",
  "cookedMass",
  "yieldFactor",
  "method",
  "format",
  "notes",
  "id",
  "state",
  "per100g",
  "source",
  "density",
  "edibleShare",
  "allergens",
  "cautions",
  "packs",
  "price",
  "group",
  "origin",
  "energyFactors",
  "fortifiedWith",
  "aisle",
]; // prettier-ignore

function valueAt(input: unknown, path: Path): unknown {
  let at = input;
  for (const step of path) {
    if (typeof at !== "object" || at === null || !Object.hasOwn(at, step)) return undefined;
    at = (at as Record<string | number, unknown>)[step];
  }
  return at;
}

function describeValue(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null) return "null";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "an object";
  return typeof value === "string" ? quote(value) : quote(value).slice(1, -1);
}

function article(expected: string): string {
  const name = expected === "array" ? "list" : expected;
  return /^[aeiou]/.test(name) ? `an ${name}` : `a ${name}`;
}
