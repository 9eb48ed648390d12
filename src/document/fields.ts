import {
  collect,
  type ErrorCode,
  type Fault,
  fault,
  kindOf,
  type Path,
  quote,
  throwIfAny,
} from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import { isRecord, refuseUnsafe } from "./safe.ts";

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
  if (!isRecord(given)) {
    const hint = `give an object of ${fields.join(", ")}`;
    faults.push({ code, path, message: `expected an object of options, got ${kindOf(given)}`, hint });
    return {};
  }
  const before = faults.length;
  collect(faults, path, () => refuseUnsafe(given, code));
  if (faults.length > before) return {};
  for (const field of Object.keys(given)) {
    if (fields.includes(field)) continue;
    const hint = didYouMean(field, fields, `use ${fields.join(", ")}`);
    faults.push({ code, path: [...path, field], message: `${quote(field)} is not an option`, hint });
  }
  return given;
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
