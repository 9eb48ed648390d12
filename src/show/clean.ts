/*
 * What every renderer does first to text from outside.
 *
 * - Marks that show nothing yet change how their neighbours show are dropped: direction marks,
 *   embeddings, overrides and isolates, soft hyphens, zero-width spaces, byte order marks, tags.
 *   Joiners and variation selectors stay, since scripts and emoji need them.
 * - Control characters, the terminal's escape among them, and half surrogates become U+FFFD.
 * - Tabs become spaces, and every kind of line end a newline.
 */

const OTHER_THAN_PLAIN = /[^\x20-\x7E]/;
const LINE_END = /\r\n|[\r\v\f\u0085\u2028\u2029]/g;
const INVISIBLE =
  /(?!\u200C|\u200D|[\u180B-\u180D\u180F\uFE00-\uFE0F\u{E0100}-\u{E01EF}])[\p{Default_Ignorable_Code_Point}\uFFF9-\uFFFB]/gu;
const CONTROL = /[^\P{Cc}\n]|\p{Cs}/gu;

/** Text without what could change how other text shows. */
export function clean(text: string): string {
  if (!OTHER_THAN_PLAIN.test(text)) return text;
  return text.replace(LINE_END, "\n").replaceAll("\t", " ").replace(INVISIBLE, "").replace(CONTROL, "\uFFFD");
}

// The blocks that Unicode sets aside for right-to-left scripts (UAX #9, default bidi classes).
const RIGHT_TO_LEFT = /[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFE\u{10800}-\u{10FFF}\u{1E800}-\u{1EFFF}]/u;

/**
 * Clean text set apart from its neighbours where it runs from right to left: without that, a name
 * in Hebrew or Arabic swaps the figures that follow it on the line. First-strong isolate and its
 * end: Unicode Standard Annex 9.
 */
export function isolate(text: string): string {
  return RIGHT_TO_LEFT.test(text) ? `\u2068${text}\u2069` : text;
}
