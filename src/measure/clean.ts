import { fault, quote } from "../number/error.ts";
import { vulgar } from "./data/vulgar.ts";

/** The longest amount read, in characters beside the number that it begins with. */
export const LONGEST_AMOUNT = 1000;

const NUMBER = /^\d+(?:[.,]\d+|\/\d+)?/;

/** Anything that does not show, save tabs and line breaks: it could hide what an amount says. */
const HIDDEN = /[^\P{Cc}\t\n\r]|[\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u;
const VULGAR = /(\d?)([¼½¾⅐-⅞])/g;

/**
 * Text made plain: fraction characters as `1/2`, one space between words, none around.
 *
 * Throws `amount-empty`, `amount-too-long`, `amount-malformed`.
 */
export function cleanText(text: string): string {
  if (text.length > LONGEST_AMOUNT && text.length - (NUMBER.exec(text)?.[0].length ?? 0) > LONGEST_AMOUNT) {
    throw fault(
      "amount-too-long",
      `an amount of ${text.length} characters: ${quote(text, 20)}`,
      `write it in at most ${LONGEST_AMOUNT} characters, long numbers as one fraction`,
    );
  }
  if (HIDDEN.test(text)) {
    throw fault(
      "amount-malformed",
      `${quote(text)} holds characters that do not show`,
      "type it again by hand instead of pasting it",
    );
  }
  const clean = plainFractions(text).replace(/\s+/g, " ").trim();
  if (clean === "") throw fault("amount-empty", "the amount is empty", 'write a figure and a unit: "100 g"');
  return clean;
}

/** Exact characters and slashes as `1/2`; a digit before one is a whole number: `1½` is `1 1/2`. */
export function plainFractions(text: string): string {
  if (!/[^\t\n\r -~]/.test(text)) return text;
  return text
    .replace(VULGAR, (character, digit: string, sign: string) => {
      const plain = vulgar[sign];
      return plain === undefined ? character : digit === "" ? plain : `${digit} ${plain}`;
    })
    .replace(/[⁄∕]/g, "/");
}

/** Decimal text without zeros that say nothing: `2.50` is `2.5`. */
export function trimZeros(text: string): string {
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}
