import { type Json, meta } from "../../document/leaves.ts";
import { readInto } from "../../document/read.ts";
import { type ErrorCode, type Fault, type Path, quote } from "../../number/error.ts";
import { didYouMean } from "../../number/near.ts";

/** An object from outside, by its fields. */
export type Given = { readonly [field: string]: unknown };

const LONGEST_NAME = 200;

/** What is wrong with what was handed in, gathered as it is read. */
export class PlanFaults {
  readonly all: Fault[] = [];
  readonly #code: ErrorCode;

  constructor(code: ErrorCode = "plan-malformed") {
    this.#code = code;
  }

  refuse(path: Path, message: string, hint: string): undefined {
    this.all.push({ code: this.#code, path, message, hint });
    return undefined;
  }

  /** An object with no other fields than these; nothing, and a fault, where it is none. */
  record(
    value: unknown,
    path: Path,
    what: string,
    fields: readonly string[],
    hint: string,
  ): Given | undefined {
    if (typeof value !== "object" || value === null || Array.isArray(value)) {
      return this.refuse(path, `${what} is ${kindOf(value)}`, hint);
    }
    for (const field of Object.keys(value)) {
      if (fields.includes(field)) continue;
      this.refuse(
        [...path, field],
        `${quote(field)} is not a field of ${what}`,
        didYouMean(field, fields, `use ${fields.join(", ")}`),
      );
    }
    return value as Given;
  }

  /** A list, with what it is short of as left out; nothing, and a fault, where it is none. */
  list(value: unknown, path: Path, what: string, hint: string): readonly unknown[] | undefined {
    return Array.isArray(value)
      ? Array.from<unknown>(value)
      : this.refuse(path, `${what} is ${kindOf(value)}`, hint);
  }

  /** An app's own data, copied as it is; `{}` where there is none. */
  meta({ meta: given }: Given, path: Path): { readonly meta?: Json } {
    if (given === undefined) return {};
    const read = readInto(this.all, meta(), given, this.#code, [...path, "meta"]);
    return read === undefined ? {} : { meta: read };
  }

  /** A name that can stand in a table, in a key and in a path. */
  name(value: unknown, path: Path, hint: string): string | undefined {
    if (typeof value !== "string") return this.refuse(path, `expected text, got ${kindOf(value)}`, hint);
    if (value.trim() === "") return this.refuse(path, "a name of no characters", hint);
    if (value.length > LONGEST_NAME) {
      return this.refuse(path, `a name of ${value.length} characters`, `use at most ${LONGEST_NAME}`);
    }
    if (/\p{Cc}/u.test(value)) return this.refuse(path, "a name with control characters", "take them out");
    // Plain objects keyed by names cannot hold it: writing to it changes their prototype.
    if (value === "__proto__") return this.refuse(path, 'a name that is "__proto__"', "use another name");
    return value;
  }

  /** A name that may be left out. */
  optionalName(value: unknown, path: Path, hint: string): string | undefined {
    return value === undefined ? undefined : this.name(value, path, hint);
  }
}

/** What a value is, in words. */
export function kindOf(value: unknown): string {
  if (value === undefined) return "left out";
  if (value === null) return "null";
  if (Array.isArray(value)) return "a list";
  return typeof value === "object" ? "an object" : quote(value);
}

/** A field of an object that is keyed by names from outside, its own alone. */
export function own<T>(of: { readonly [name: string]: T } | undefined, name: string): T | undefined {
  return of !== undefined && Object.hasOwn(of, name) ? of[name] : undefined;
}
