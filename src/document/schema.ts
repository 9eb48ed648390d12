import { type ErrorCode, type Fault, kindOf, type Path, quote, SteelyardError } from "../number/error.ts";
import { isRecord } from "./safe.ts";
import { $ZodObject, $ZodType } from "./zod.ts";

/** What a document, a part of one or an object of options looks like; made on first use, by {@link once}. */
export type Schema<T> = $ZodType<T>;

/** A fault as a schema tells it: without a code it takes that of the document. */
export type ToldFault = Omit<Fault, "code"> & { readonly code?: ErrorCode | undefined };

/** What a schema is run on, and what it leaves there: a value, and what is wrong with it. */
export interface Payload {
  value: unknown;
  readonly issues: Issue[];
}

/** One of zod's own issues, or one that tells a fault of ours. */
export interface Issue {
  readonly code?: string;
  path?: Path;
  /** Of `unrecognized_keys`, with the object's schema. */
  readonly keys?: readonly string[];
  readonly inst?: { readonly _zod: { readonly def: { readonly shape: object } } };
  readonly told?: Omit<ToldFault, "path">;
  /** Code of all faults of this place that have none of their own. */
  place?: ErrorCode;
}

/** Runs a schema as zod runs the ones inside it. */
export function run(schema: Schema<unknown>, payload: Payload): Payload {
  return schema._zod.run(payload as never, { async: false }) as unknown as Payload;
}

/** Reports a fault, by its place below the value that is being read. */
export type Refuse = (message: string, hint: string, path?: Path, code?: ErrorCode) => void;

/** What a JSON Schema says of a value. */
export type JsonSchema = { readonly [keyword: string]: unknown };

/** Faults in one list or map after which no more are looked for. */
const MOST_FAULTS = 1000;

/** Makes a schema when it is first asked for, so that an import does nothing. */
export function once<T>(make: () => Schema<T>): () => Schema<T> {
  let made: Schema<T> | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/**
 * A value that is looked at whole: `is` tells its kind from others, `read` takes it or refuses it, with
 * `refuse` or by throwing one of our errors. `expected` names the kind with its article.
 */
export function leaf<G, T = G>(
  expected: string,
  json: JsonSchema,
  is: (given: unknown) => given is G,
  read: (given: G, refuse: Refuse) => T,
): Schema<T> {
  return parsedBy(described({ type: "unknown", json }), (payload) => {
    const { value } = payload;
    if (!is(value)) return refuseKind(payload, expected);
    payload.value = attempt(payload, (refuse) => read(value, refuse));
  }) as Schema<T>;
}

/** A value that `read` takes whole, and that looks like what another schema describes. */
export function readAs<T>(like: Schema<unknown>, expected: string, read: (given: unknown) => T): Schema<T> {
  return parsedBy(
    later(() => like),
    (payload) => {
      const { value } = payload;
      if (value === undefined) return refuseKind(payload, expected);
      payload.value = attempt(payload, () => read(value));
    },
  ) as unknown as Schema<T>;
}

/** A value that is read on from the one of another schema, where that one has no fault. */
export function andThen<T, U>(schema: Schema<T>, read: (value: T, refuse: Refuse) => U): Schema<U> {
  return after(schema, (payload, before) => {
    payload.value =
      payload.issues.length > before
        ? undefined
        : attempt(payload, (refuse) => read(payload.value as T, refuse));
  }) as unknown as Schema<U>;
}

/**
 * A value that is read on from as much as could be read of another schema's, whatever is at fault in
 * it: fields and items that were refused are undefined.
 */
export function asFar<T, U>(
  schema: Schema<T>,
  read: (value: T, refuse: Refuse, given: unknown) => U,
): Schema<U> {
  return after(schema, (payload, _, given) => {
    if (payload.value !== undefined)
      payload.value = attempt(payload, (refuse) => read(payload.value as T, refuse, given));
  }) as unknown as Schema<U>;
}

/** A value whose faults have a code of their own, wherever it stands. */
export function coded<T>(code: ErrorCode, schema: Schema<T>): Schema<T> {
  return after(schema, ({ issues }, before) => {
    for (const issue of issues.slice(before)) issue.place ??= code;
  });
}

function after<T>(
  schema: Schema<T>,
  step: (payload: Payload, before: number, given: unknown) => void,
): Schema<T> {
  return parsedBy(
    later(() => schema),
    (payload) => {
      const { value, issues } = payload;
      const before = issues.length;
      run(schema, payload);
      step(payload, before, value);
    },
  );
}

export function optional<T>(schema: Schema<T>): Schema<T | undefined> {
  const made = described({ type: "optional", innerType: schema });
  made._zod.optin = "optional";
  made._zod.optout = "optional";
  return parsedBy(made, (payload) => {
    if (payload.value !== undefined) run(schema, payload);
  }) as Schema<T | undefined>;
}

/** A schema that holds itself. */
export function later<T>(schema: () => Schema<T>): Schema<T> {
  const made = described({ type: "lazy", getter: schema });
  Object.defineProperty(made._zod, "innerType", { get: schema });
  return parsedBy(made, (payload) => void run(schema(), payload)) as Schema<T>;
}

/** A field for each of a type's, no more and no less. */
export type Shape<T> = { readonly [K in keyof T]-?: Schema<T[K] | undefined> };

/**
 * An object with these fields and no others. What holds between fields is for `across`: it is given the
 * fields as handed in and as far as they could be read, whether or not one of them is at fault.
 */
export function fields<T extends object>(
  shape: Shape<T>,
  across?: (given: Given, read: Partial<T>, refuse: Refuse) => void,
): Schema<T> {
  const schema = new $ZodObject({
    type: "object",
    shape: shape as { [field: string]: $ZodType },
    catchall: described({ type: "never" }),
  });
  const { parse } = schema._zod;
  return parsedBy(schema, (payload) => {
    const { value } = payload;
    if (!isRecord(value)) return refuseKind(payload, "an object", `an object of ${namesOf(shape)}`);
    parse(payload as never, { async: false });
    attempt(payload, (refuse) => across?.(value, payload.value as Partial<T>, refuse));
  }) as unknown as Schema<T>;
}

/** An object with these fields, in which others may stand. */
export function openFields<T extends object>(shape: Shape<T>): Schema<T> {
  const catchall = parsedBy(described({ type: "unknown" }), () => {});
  const schema = new $ZodObject({ type: "object", shape: shape as { [field: string]: $ZodType }, catchall });
  const { parse } = schema._zod;
  return parsedBy(schema, (payload) => {
    if (!isRecord(payload.value)) return refuseKind(payload, "an object", `an object of ${namesOf(shape)}`);
    parse(payload as never, { async: false });
  }) as unknown as Schema<T>;
}

/** An object with one of these fields and no other: its name, and what it holds. */
export function oneOf<T extends object>(
  shape: Shape<T>,
): Schema<{ readonly [K in keyof T]: readonly [K, T[K]] }[keyof T]> {
  const names = Object.keys(shape);
  const optionals = Object.fromEntries(names.map((name) => [name, optional(shape[name as keyof T])]));
  const schema = fields<Given>(optionals as Shape<Given>, (given, _, refuse) => {
    const present = names.filter((name) => given[name] !== undefined);
    if (present.length === 1) return;
    const message = present.length === 0 ? "nothing asked" : `${present.join(" and ")} at once`;
    refuse(message, `give one of ${names.join(", ")}`);
  });
  Object.assign(schema._zod.def, { json: { minProperties: 1, maxProperties: 1 } });
  const chosen = (read: Given) => Object.entries(read).find(([, value]) => value !== undefined);
  return andThen(schema, chosen as (read: Given) => never);
}

/** An object of which nothing is known but that it has fields. */
export type Given = { readonly [field: string]: unknown };

/** A list of alike items; `like` shows one, for a hint. */
export function list<T>(
  item: Schema<T>,
  { least = 0, most, like }: { readonly least?: number; readonly most?: number; readonly like?: string } = {},
): Schema<readonly T[]> {
  const json = { ...(least > 0 && { minItems: least }), ...(most !== undefined && { maxItems: most }) };
  return parsedBy(described({ type: "array", element: item, json }), (payload) => {
    const { value } = payload;
    if (!Array.isArray(value)) return refuseKind(payload, "a list", shownBy("a list", like));
    if (value.length < least) {
      const message = value.length === 0 ? "an empty list" : `a list of ${value.length}`;
      const hint = least === 1 ? "give at least one" : `give at least ${least}`;
      tell(payload, { path: [], message, hint: like === undefined ? hint : `${hint}: ${like}` });
    }
    payload.value = undefined;
    if (most !== undefined && value.length > most)
      return tell(payload, { path: [], message: `a list of ${value.length}`, hint: `give at most ${most}` });
    const made: unknown[] = [];
    for (const [i, each] of value.entries()) {
      const read = run(item, { value: each, issues: [] });
      made.push(read.value);
      if (isFull(payload, read, i)) break;
    }
    payload.value = made;
  }) as unknown as Schema<readonly T[]>;
}

/** An object of alike values by names, which `check` may refuse; `like` shows one, for a hint. */
export function byName<T>(
  each: Schema<T>,
  { check, names, pattern, like }: ByName = {},
): Schema<{ readonly [name: string]: T }> {
  const told = pattern === undefined ? { enum: names } : { anyOf: [{ enum: names }, { pattern }] };
  const json = names === undefined ? {} : { propertyNames: told };
  const def = { type: "record", keyType: described({ type: "string" }), valueType: each, json };
  return parsedBy(described(def), (payload) => {
    const { value } = payload;
    if (!isRecord(value)) return refuseKind(payload, "an object", shownBy("an object", like));
    const made: { [name: string]: unknown } = {};
    for (const [key, given] of Object.entries(value)) {
      if (given === undefined) continue;
      const read = run(each, { value: given, issues: [] });
      if (check) attempt(read, (refuse) => check(key, refuse));
      made[key] = read.value;
      if (isFull(payload, read, key)) break;
    }
    payload.value = made;
  }) as unknown as Schema<{ readonly [name: string]: T }>;
}

interface ByName {
  readonly check?: (name: string, refuse: Refuse) => void;
  /** All that there can be. */
  readonly names?: readonly string[];
  /** What others look like. */
  readonly pattern?: string;
  readonly like?: string;
}

function shownBy(kind: string, like: string | undefined): string {
  return like === undefined ? kind : `${kind}${/^[[{]/.test(like) ? ":" : " of"} ${like}`;
}

/** One of several kinds of value, told apart by `pick`. */
export function choice<T>(
  options: readonly Schema<T>[],
  pick: (given: unknown) => Schema<T> | undefined,
  expected: string,
): Schema<T> {
  return parsedBy(described({ type: "union", options }), (payload) => {
    const picked = pick(payload.value);
    if (picked) run(picked, payload);
    else refuseKind(payload, expected);
  }) as unknown as Schema<T>;
}

/**
 * A bare schema of zod's that says what it is, for its JSON Schema, and is read by a step of ours. zod's own
 * classes of lists, maps, unions and the like would bring the reading that ours stands in for.
 */
function described(def: { readonly type: string; readonly [field: string]: unknown }): $ZodType {
  return new $ZodType(def as never);
}

/** Lets `parse` read in the schema's stead; what the schema says of itself stays for its JSON Schema. */
function parsedBy<S extends $ZodType>(schema: S, parse: (payload: Payload) => void): S {
  schema._zod.run = (payload) => {
    parse(payload as unknown as Payload);
    return payload as never;
  };
  return schema;
}

/** Hands on the faults of an item; true where there are too many to go on. */
function isFull(payload: Payload, { issues }: Payload, step: string | number): boolean {
  for (const issue of issues) {
    issue.path = [step, ...(issue.path ?? [])];
    payload.issues.push(issue);
  }
  if (payload.issues.length < MOST_FAULTS) return false;
  tell(payload, { path: [], message: "more faults than are told here", hint: "mend these first" });
  return true;
}

/** Runs a step on a value; undefined where it refused. */
function attempt<T>(payload: Payload, step: (refuse: Refuse) => T): T | undefined {
  const before = payload.issues.length;
  const refuse: Refuse = (message, hint, path = [], code) => tell(payload, { path, message, hint, code });
  const made = attemptAt(refuse, [], () => step(refuse));
  return payload.issues.length > before ? undefined : made;
}

/** Runs a step, and refuses at `path` what it refuses by throwing. */
export function attemptAt<T>(refuse: Refuse, path: Path, step: () => T): T | undefined {
  try {
    return step();
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    for (const each of error.faults) refuse(each.message, each.hint, [...path, ...each.path], each.code);
    return undefined;
  }
}

function tell(payload: Payload, { path, ...told }: ToldFault): void {
  // A copy, for zod puts the way to it before.
  payload.issues.push({ path: [...path], told });
}

function refuseKind(payload: Payload, expected: string, wanted: string = expected): void {
  const { value } = payload;
  const message = value === undefined ? "missing" : `expected ${expected}, got ${shown(value)}`;
  payload.value = undefined;
  tell(payload, { path: [], message, hint: `give ${wanted}` });
}

function shown(value: unknown): string {
  if (typeof value === "string") return quote(value);
  return typeof value === "object" || value === undefined || typeof value === "function"
    ? kindOf(value)
    : quote(value).slice(1, -1);
}

/** Names enough to see what is meant. */
export function namesOf(shape: object): string {
  const names = Object.keys(shape);
  return names.length > 12 ? `${names.slice(0, 10).join(", ")}, …` : names.join(", ");
}
