import { collect, type ErrorCode, type Fault, type Path, quote, throwIfAny } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import { refuseUnsafe } from "./safe.ts";
import { type Issue, namesOf, run, type Schema, type ToldFault } from "./schema.ts";

/**
 * Reads what was handed in by its schema: the value, or one error with every fault, each with its place
 * below `path` and a way out. Faults of shape have the code `code`, others that of what they are about.
 */
export function read<T>(schema: Schema<T>, given: unknown, code: ErrorCode, path: Path = []): T {
  const faults: Fault[] = [];
  const value = readInto(faults, schema, given, code, path);
  throwIfAny(faults);
  return value as T;
}

/** As {@link read}, its faults kept in `faults`; undefined where there are any. */
export function readInto<T>(
  faults: Fault[],
  schema: Schema<T>,
  given: unknown,
  code: ErrorCode,
  path: Path = [],
): T | undefined {
  const before = faults.length;
  const value = readFar(faults, schema, given, code, path);
  return faults.length > before ? undefined : (value as T);
}

/** As {@link readInto}, with as much of an object as has no fault. */
export function readFar<T>(
  faults: Fault[],
  schema: Schema<T>,
  given: unknown,
  code: ErrorCode,
  path: Path = [],
): Partial<T> | undefined {
  const before = faults.length;
  collect(faults, path, () => refuseUnsafe(given, code));
  if (faults.length > before) return undefined;
  const { value, issues } = run(schema, { value: given, issues: [] });
  for (const issue of issues) {
    for (const told of toldOf(issue))
      faults.push({
        code: told.code ?? issue.place ?? code,
        path: [...path, ...(issue.path ?? []), ...told.path],
        message: told.message,
        hint: told.hint,
      });
  }
  return value as Partial<T> | undefined;
}

/** Names of one object told apart one by one; of more, nobody reads. */
const MOST_NAMES = 100;

function toldOf({ told, keys = [], inst }: Issue): readonly ToldFault[] {
  if (told) return [{ path: [], ...told }];
  const shape = inst?._zod.def.shape ?? {};
  const known = Object.keys(shape);
  const own = "meta" in shape ? "put an app's own data in meta, or use" : "use";
  const strange: ToldFault[] = keys.slice(0, MOST_NAMES).map((key) => ({
    path: [key],
    message: `${quote(key)} is not a field here`,
    hint: didYouMean(key, known, `${own} ${namesOf(shape)}`),
  }));
  const more = keys.length - strange.length;
  return more > 0
    ? [...strange, { path: [], message: `and ${more} fields more`, hint: `${own} ${namesOf(shape)}` }]
    : strange;
}
