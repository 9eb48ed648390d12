import { plainFractions } from "../../measure/clean.ts";

/** Longest line that is read; what is longer is kept as something else. */
export const LONGEST_LINE = 2000;

const BULLET = /^\s*(?:[-*•‣◦·▪–—+]|\[[ xX]?\]|\d{1,2}[)])\s+(?:\[[ xX]?\]\s*)?/;

/** Whether a line begins as an item of a list. */
export function isItem(line: string): boolean {
  return BULLET.test(line);
}

/** A line without marks of lists, links and emphasis, its fractions in plain figures, one space between words. */
export function plainLine(line: string): string {
  return plainFractions(line)
    .replace(BULLET, "")
    .replace(/^\s*#{1,6}\s+/, "")
    .replace(/!?\[([^\][]*)\]\([^()\s]*\)/g, "$1")
    .replace(/<\/?[a-z][^<>]*>/gi, " ")
    .replace(/\*+|(?<![\p{L}\d])_+|_+(?![\p{L}\d])|`+/gu, "")
    .replace(/&nbsp;/gi, " ")
    .replace(/&amp;/gi, "&")
    .replace(/\\([()*_#-])/g, "$1")
    .replace(/[\u200B-\u200D\uFEFF]/g, "")
    .replace(/\s+/g, " ")
    .trim();
}
