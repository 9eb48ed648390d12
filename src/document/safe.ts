import { type ErrorCode, fault, type Path, SteelyardError, within } from "../number/error.ts";
import { isNumeric } from "../number/exact.ts";

/** Deeper than any document a person writes, and shallow enough for every engine's stack. */
const DEEPEST = 60;
/** More values than any document needs, a thing that stands in two places counted twice. */
const LARGEST = 2_000_000;

/**
 * Whether a value holds named fields: no number, nothing that writes itself, as a date or a result of
 * this library does, and no map or the like, whose content is not in fields.
 */
export function isRecord(value: unknown): value is { readonly [field: string]: unknown } {
  return (
    typeof value === "object" &&
    value !== null &&
    !isNumeric(value) &&
    (isPlain(value) || Object.prototype.toString.call(value) === "[object Object]") &&
    typeof (value as { readonly toJSON?: unknown }).toJSON !== "function"
  );
}

/** Tells plain data, of any realm, from what a class makes. */
function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return !Array.isArray(value) && (prototype === null || Object.getPrototypeOf(prototype) === null);
}

/** Sizes of what cannot change any more, or was looked through and is trusted to stay as it was. */
const settled: WeakMap<object, Size> = /* @__PURE__ */ new WeakMap();

/** Says that something of ours need not be looked through again. */
export function trust(value: object): void {
  settled.set(value, LEAF);
}

/**
 * Refuses what would hang or mislead whoever reads it: data that contain themselves, nested too deep,
 * larger than any document, lists with holes, fields that are computed when looked at, `__proto__`.
 */
export function refuseUnsafe(given: unknown, code: ErrorCode): void {
  const path: (string | number)[] = [];
  const refuse = (message: string, hint: string, at: Path = path): SteelyardError =>
    fault(code, message, hint, at.slice(0, DEEPEST));
  const sizes = new Map<object, Size>();
  try {
    sizeOf(given);
  } catch (error) {
    if (error instanceof SteelyardError) throw error;
    throw refuse("it throws when it is looked at", PLAIN_DATA);
  }

  function sizeOf(value: unknown): Size {
    const isList = Array.isArray(value);
    if (!isList && !isRecord(value)) return LEAF;
    const known = sizes.get(value) ?? settled.get(value);
    if (known === OPEN) throw refuse("the document contains itself", "write plain data without cycles");
    const size = known ?? measure(value, isList);
    const { height, values } = size;
    if (path.length + height > DEEPEST)
      throw refuse("the document is nested too deep", `nest at most ${DEEPEST} levels`, path.slice(0, 8));
    if (values > LARGEST)
      throw refuse("the document is too large", `write at most ${LARGEST} values`, path.slice(0, 8));
    return size;
  }

  function measure(value: object, isList: boolean): Size {
    if (path.length > DEEPEST)
      throw refuse("the document is nested too deep", `nest at most ${DEEPEST} levels`, path.slice(0, 8));
    sizes.set(value, OPEN);
    const keys = Object.keys(value);
    if (isList) refuseOdd(value as readonly unknown[], keys);
    let height = 0;
    let values = 1;
    let isSettled = Object.isFrozen(value);
    for (const key of keys) {
      path.push(isList ? Number(key) : key);
      if (key === "__proto__") throw refuse('a key named "__proto__"', "use another name");
      const field = Object.getOwnPropertyDescriptor(value, key);
      if (field?.get) throw refuse("a field that is computed when it is looked at", PLAIN_DATA);
      const held: unknown = field?.value;
      const inner = sizeOf(held);
      isSettled &&= inner === LEAF || settled.has(held as object);
      height = Math.max(height, inner.height + 1);
      values += inner.values;
      path.pop();
    }
    const size = { height, values };
    sizes.set(value, size);
    if (isSettled) settled.set(value, size);
    return size;
  }

  function refuseOdd(items: readonly unknown[], keys: readonly string[]): void {
    if (items.length > LARGEST)
      throw refuse(`a list of ${items.length} items`, `write at most ${LARGEST} values`);
    within(path, () => refuseHole(items, code));
    if (keys.length > items.length) throw refuse("a list with fields of its own", PLAIN_DATA);
  }
}

/** Refuses a list that is short of an item, which loops would pass over without a word; of any length, at the first hole. */
export function refuseHole(items: readonly unknown[], code: ErrorCode): void {
  for (let i = 0; i < items.length; i += 1)
    if (!Object.hasOwn(items, i))
      throw fault(code, "a list with holes", "give every item, or leave it out of the list", [i]);
}

const PLAIN_DATA = "hand in plain data, as JSON.parse gives it";

interface Size {
  /** Levels below it. */
  readonly height: number;
  readonly values: number;
}

const LEAF: Size = { height: 0, values: 1 };
/** Being looked at. */
const OPEN: Size = { height: 0, values: 0 };
