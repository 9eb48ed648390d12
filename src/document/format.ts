import { type ErrorCode, quote } from "../number/error.ts";
import { isRecord } from "./safe.ts";
import { choice, leaf, type Refuse, type Schema } from "./schema.ts";

/**
 * A document that names its format, `steelyard-sheet/1` say: each version is read by a schema of its own.
 * One of a later version has the code `newer`.
 */
export function versioned<T>(
  of: string,
  newer: ErrorCode,
  versions: { readonly [version: number]: Schema<T> },
): Schema<T> {
  const known = Object.keys(versions).map(Number);
  const expected = `a steelyard-${of} document, as toJSON() gives it`;
  const refused = leaf(expected, {}, isRecord, ({ format }, refuse): T => {
    refuseFormat(format, { of, known, newer }, refuse);
    return undefined as never;
  });
  const pick = (given: unknown): Schema<T> | undefined => {
    if (!isRecord(given)) return undefined;
    return versions[known.find((version) => given.format === `steelyard-${of}/${version}`) ?? 0] ?? refused;
  };
  return choice(Object.values(versions), pick, expected);
}

/** Refuses a format that cannot be read: `known` are the versions that can, the newest last. */
export function refuseFormat(
  format: unknown,
  { of, known, newer }: { readonly of: string; readonly known: readonly number[]; readonly newer: ErrorCode },
  refuse: Refuse,
): void {
  const written = typeof format === "string" ? format : "";
  const version = Number(/^steelyard-([a-z]+)\/([1-9]\d{0,5})$/.exec(written)?.[2] ?? 0);
  const newest = known.at(-1) ?? 0;
  if (written === `steelyard-${of}/${version}` && known.includes(version)) return;
  if (written === `steelyard-${of}/${version}` && version > newest) {
    const hint = "open it with the version that wrote it, or update steelyard";
    refuse(`format ${quote(format)} is newer than this library`, hint, ["format"], newer);
    return;
  }
  const message = format === undefined ? "names no format" : `${quote(format)} is no steelyard-${of} format`;
  refuse(message, `write "steelyard-${of}/${newest}"`, ["format"]);
}
