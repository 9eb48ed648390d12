import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { type WantedRows, wanted } from "./wanted.ts";

/**
 * Rows as a result gives them, of what is asked for; `names` are what rows may be of beside components and
 * `mass`. Throws `component-unknown`.
 */
export function tidyOf(
  asked: Asked,
  own: readonly string[],
  rows: (want: WantedRows) => Iterable<TidyRow>,
  names: Iterable<string> = [],
): Tidy {
  return { own: [...new Set(own)], rows: rows(wanted(asked, names)) };
}
