import type { ErrorCode } from "./codes.ts";
import { type Fault, fault, kindOf, type Path, quote, throwIfAny } from "./error.ts";
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
  if (!hasFields(given)) {
    const hint = `give an object of ${fields.join(", ")}`;
    faults.push({ code, path, message: `expected an object of options, got ${kindOf(given)}`, hint });
    return {};
  }
  for (const field of Object.keys(given)) {
    if (fields.includes(field)) continue;
    const hint = didYouMean(field, fields, `use ${fields.join(", ")}`);
    faults.push({ code, path: [...path, field], message: `${quote(field)} is not an option`, hint });
  }
  return given as { readonly [field: string]: unknown };
}

/** As {@link fieldsGiven}, throwing at once: for options that are checked before all else. */
export function checkFields(
  given: unknown,
  fields: readonly string[],
  code: ErrorCode,
  path: Path = [],
): { readonly [field: string]: unknown } {
  const faults: Fault[] = [];
  const read = fieldsGiven(given, fields, code, faults, path);
  throwIfAny(faults);
  return read;
}

/** Refuses a word that is none of those that an option can be; left out is fine. */
export function checkChoice(
  given: unknown,
  option: string,
  choices: readonly string[],
  code: ErrorCode,
): void {
  if (given === undefined || choices.some((choice) => choice === given)) return;
  const message = `${option} is ${typeof given === "string" ? quote(given) : kindOf(given)}`;
  const hint = didYouMean(given, choices, `write ${choices.map((choice) => quote(choice)).join(" or ")}`);
  throw fault(code, message, hint, [option]);
}

/** Whether a value can hold named fields: a date, a map or the like has none that could be mistyped. */
function hasFields(given: unknown): given is object {
  return (
    typeof given === "object" &&
    given !== null &&
    !Array.isArray(given) &&
    Object.prototype.toString.call(given) === "[object Object]"
  );
}
