import type { ErrorCode } from "./codes.ts";

export type { ErrorCode } from "./codes.ts";

/** Where a value stands inside what was handed in: `["lines", 2, "amount"]`. */
export type Path = readonly (string | number)[];

/** One thing that is wrong, and a way out of it. */
export interface Fault {
  /** Stable name of what went wrong; safe to switch on. */
  readonly code: ErrorCode;
  /** The offending value's place in the input; empty where the input itself is meant. */
  readonly path: Path;
  /** What is wrong, in a sentence. */
  readonly message: string;
  /** What to write or do instead. */
  readonly hint: string;
}

/**
 * The only error that steelyard throws. It carries every fault found, the first one's fields
 * standing on the error itself.
 *
 * @example
 * ```ts
 * try {
 *   amount("2-3 tbsp");
 * } catch (error) {
 *   if (error instanceof SteelyardError) console.log(error.code); // => amount-range
 * }
 * ```
 */
export class SteelyardError extends Error {
  override readonly name = "SteelyardError";
  readonly code: ErrorCode;
  readonly path: Path;
  readonly hint: string;
  readonly faults: readonly Fault[];

  constructor(faults: readonly [Fault, ...Fault[]]) {
    super(describe(faults));
    this.faults = Object.freeze([...faults]);
    this.code = faults[0].code;
    this.path = faults[0].path;
    this.hint = faults[0].hint;
  }

  /** For a log or an answer over a network; an error's own message is not written otherwise. */
  toJSON(): Pick<SteelyardError, "name" | "code" | "path" | "message" | "hint" | "faults"> {
    const { name, code, path, message, hint, faults } = this;
    return { name, code, path, message, hint, faults };
  }
}

/** Makes the error for a single fault. */
export function fault(code: ErrorCode, message: string, hint: string, path: Path = []): SteelyardError {
  return new SteelyardError([{ code, path, message, hint }]);
}

/** Throws all the faults as one error where there are any. */
export function throwIfAny(faults: readonly Fault[]): void {
  const [first, ...rest] = faults;
  if (first) throw new SteelyardError([first, ...rest]);
}

/**
 * Runs a step, and where it throws puts `path` before the path of each fault, so that a fault
 * found deep inside is reported from where the caller stands.
 */
export function within<T>(path: Path, step: () => T): T {
  try {
    return step();
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    const [first, ...rest] = error.faults.map((f) => ({ ...f, path: [...path, ...f.path] }));
    throw first ? new SteelyardError([first, ...rest]) : error;
  }
}

/** Runs a step and keeps its faults in `faults` instead of throwing them. */
export function collect<T>(faults: Fault[], path: Path, step: () => T): T | undefined {
  try {
    return within(path, step);
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    // One at a time: spread arguments overflow the stack at some 100,000 faults.
    for (const each of error.faults) faults.push(each);
    return undefined;
  }
}

/** What each step gives, by its name, or one error with the faults of all of them. */
export function together<T extends object>(steps: { readonly [Name in keyof T]: () => T[Name] }): T {
  const faults: Fault[] = [];
  const made = Object.entries<() => unknown>(steps).map(([name, step]) => [name, collect(faults, [], step)]);
  throwIfAny(faults);
  return Object.fromEntries(made) as T;
}

/**
 * A path as a person reads it.
 *
 * @example
 * ```ts
 * showPath(["lines", 2, "amount"]); // => lines[2].amount
 * ```
 */
export function showPath(path: Path): string {
  return path
    .map((step, i) => (typeof step === "number" ? `[${step}]` : `${i === 0 ? "" : "."}${plain(step, 60)}`))
    .join("");
}

/**
 * Anything from outside as text for a message, cut short and without control or
 * direction-changing characters.
 *
 * @example
 * ```ts
 * quote("two\ncups"); // => "two�cups"
 * ```
 */
export function quote(value: unknown, longest = 60): string {
  return `"${plain(asText(value), longest)}"`;
}

/** What kind of value something from outside is, with its article, for a message. */
export function kindOf(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null) return "null";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "function" && isClass(value)) return "a class";
  if (typeof value !== "object") return `a ${typeof value}`;
  const [, kind = ""] =
    /^\[object ([A-Z][A-Za-z]{1,20})\]$/.exec(Object.prototype.toString.call(value)) ?? [];
  return kind === "" || kind === "Object" ? "an object" : `a ${kind}`;
}

/** Whether a function is a class, which cannot be called. */
export function isClass(value: unknown): boolean {
  return typeof value === "function" && /^class\b/.test(Function.prototype.toString.call(value));
}

function plain(text: string, longest: number): string {
  const shown = text.length > longest ? `${text.slice(0, longest)}…` : text;
  return shown.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, "\uFFFD");
}

/** An object from outside may have no text of its own, or throw when asked for it. */
function asText(value: unknown): string {
  try {
    return String(value);
  } catch {
    return typeof value;
  }
}

function describe(faults: readonly Fault[]): string {
  const shown = faults.slice(0, 20).map((f) => {
    const at = f.path.length > 0 ? `${showPath(f.path)}: ` : "";
    return `${at}${f.message} (${f.hint})`;
  });
  const more = faults.length - shown.length;
  if (more > 0) shown.push(`and ${more} more, in faults`);
  return shown.join("\n");
}
