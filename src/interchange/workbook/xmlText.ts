/** Characters that no XML 1.0 text may hold, halves of surrogate pairs among them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const FORBIDDEN = /[\u0000-\u0008\u000B\u000C\u000D\u000E-\u001F]/g;
const NO_CHARACTER = /[\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;
/** Text that a reader would take for an escaped character. */
const LOOKS_ESCAPED = /_(?=x[\dA-Fa-f]{4}_)/g;

/** The most characters that a cell holds. */
const LONGEST = 32_000;

/** Text as XML holds it, in an element or an attribute. */
export function xmlText(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/**
 * Text of a cell: what XML cannot hold is written `_x0008_`, as ISO/IEC 29500-1 has it (22.9.2.19,
 * ST_Xstring; read in notes on it), and what looks so is guarded.
 */
export function cellText(text: string): string {
  const safe = [...text]
    .slice(0, LONGEST)
    .join("")
    .replace(NO_CHARACTER, "\uFFFD")
    .replace(LOOKS_ESCAPED, "_x005F_")
    .replace(FORBIDDEN, (c) => `_x${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`);
  return xmlText(safe);
}
