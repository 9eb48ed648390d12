import { type Language, say } from "../document/language.ts";

/**
 * How a published figure was checked before it was set down: read in the issuer's own document, read in a
 * faithful copy of it, or not read. The document itself, its year and its table stand beside it as `source`.
 */
export type Check = "issuer" | "copy" | "unverified";

/** Gives a source as a reader sees it: one that was not read says so. */
export function sourceText(
  { source, check }: { readonly source: string; readonly check?: Check | undefined },
  language: Language,
): string {
  return check === "unverified" ? say(language, "{source} (unverified)", { source }) : source;
}

/** Marks a published figure that was not read at its source, as other marks stand behind a figure. */
export function markUnverified(text: string, check: Check | undefined, language: Language): string {
  return check === "unverified" ? say(language, "{figure} u", { figure: text }) : text;
}

/** Explains the mark where a table has such a figure. */
export function unverifiedNotes(checks: Iterable<Check | undefined>, language: Language): string[] {
  for (const check of checks)
    if (check === "unverified")
      return [say(language, "u: unverified: not yet read in its issuer's document or a faithful copy")];
  return [];
}
