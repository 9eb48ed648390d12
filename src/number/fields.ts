import type { ErrorCode } from "./codes.ts";
import { type Fault, kindOf, type Path, quote } from "./error.ts";
import { didYouMean } from "./near.ts";

/**
 * The fields of an object of options from outside; a fault where it is none, and one for each field
 * that it cannot have, with the field that was likely meant.
 */
export function fieldsGiven(
  given: unknown,
  fields: readonly string[],
  code: ErrorCode,
  faults: Fault[],
  path: Path = [],
): { readonly [field: string]: unknown } {
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    const hint = `give an object of ${fields.join(", ")}`;
    faults.push({ code, path, message: `expected an object, got ${kindOf(given)}`, hint });
    return {};
  }
  for (const field of Object.keys(given)) {
    if (fields.includes(field)) continue;
    const hint = didYouMean(field, fields, `use ${fields.join(", ")}`);
    faults.push({ code, path: [...path, field], message: `${quote(field)} is not an option`, hint });
  }
  return given as { readonly [field: string]: unknown };
}
