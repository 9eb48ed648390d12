/** Named characters of HTML that texts of recipes have; others stand as they are. */
const NAMED: ReadonlyMap<string, string> = new Map(
  Object.entries({
    amp: "&", lt: "<", gt: ">", quot: '"', apos: "'", nbsp: " ", deg: "°", frac12: "½", frac14: "¼", frac34: "¾",
    ndash: "–", mdash: "—", hellip: "…", lsquo: "‘", rsquo: "’", ldquo: "“", rdquo: "”", times: "×", eacute: "é",
    egrave: "è", ecirc: "ê", agrave: "à", acirc: "â", ccedil: "ç", ntilde: "ñ", ouml: "ö", uuml: "ü", auml: "ä",
    iuml: "ï", ocirc: "ô", icirc: "î", oslash: "ø", aring: "å", szlig: "ß",
  }),
); // biome-ignore format: pairs

/** A text of a page without its marks: scripts and styles gone, tags as spaces or new lines, characters read once. */
export function plainText(text: string): string {
  return text
    .replace(/<(script|style)\b[^<]*(?:<(?!\/\1\b)[^<]*)*(?:<\/\1\s*>|$)/gi, " ")
    .replace(/<\/?(?:br|p|li|ul|ol|div|h\d)\b[^<>]*>/gi, "\n")
    .replace(/<\/?[a-z!][^<>]*>/gi, " ")
    .replace(/&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|([a-z0-9]{2,8}));/gi, (all, decimal, hex, name) => {
      if (name !== undefined) return NAMED.get(name) ?? NAMED.get(name.toLowerCase()) ?? all;
      const code = decimal === undefined ? Number.parseInt(hex, 16) : Number(decimal);
      return code > 31 && code <= 0x10ffff && (code < 0xd800 || code > 0xdfff)
        ? String.fromCodePoint(code)
        : " ";
    })
    .replace(/[^\P{Cc}\n\t]|[\p{Cf}\p{Cs}]/gu, "")
    .replace(/[^\S\n]+/g, " ")
    .replace(/ ?\n[ \n]*/g, "\n")
    .trim();
}
