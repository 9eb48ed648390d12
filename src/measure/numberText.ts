import { exactText } from "../number/digits.ts";
import { fault, quote, type SteelyardError } from "../number/error.ts";
import { type Exact, exact, fraction, ONE, plus } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { sizeless } from "./data/spellings.ts";

/**
 * Which mark stands before decimals; the other then groups thousands. Where none is named, either
 * may stand before decimals and what could be read both ways is refused.
 */
export type DecimalMark = "point" | "comma";

/** A number at the start of a text, and what follows it. */
export interface NumberRead {
  readonly value: Exact;
  readonly rest: string;
}

const TOKEN = /^[.,]?\d[\d.,]*/;
const MIXED = /^(?: | and | ?& ?)(\d+) ?\/ ?(\d+)/;
const SIMPLE = /^ ?\/ ?(\d+)/;
const NEGATIVE = /^[-−–—‒] ?[.,]?\d/;
const INEXACT =
  /^(?:about|around|approx(?:imately|\.)?|ca\.?|c\.|circa|roughly|nearly|up to|at least|at most|less than|more than|[~≈<>≤≥±]) ?[.,]?\d/i;
const COUNT_WORD =
  /^(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|half|quarter|third|dozen|couple)\b/i;

/**
 * Reads the number that a clean text begins with: a whole number, a decimal, a fraction or a mixed
 * number. What follows is the caller's to judge, with {@link refuseAfter}.
 *
 * Throws `amount-no-number`, `amount-no-size`, `amount-negative`, `amount-ambiguous`,
 * `number-malformed`, `number-zero-denominator`, `number-too-long`.
 */
export function readNumber(text: string, mark?: DecimalMark): NumberRead {
  const token = TOKEN.exec(text)?.[0];
  if (token === undefined) throw noNumber(text);
  const rest = text.slice(token.length);
  if (!/^\d+$/.test(token)) return { value: readDecimal(token, mark), rest };
  const simple = SIMPLE.exec(rest);
  if (simple) return { value: ratio(token, simple[1]), rest: rest.slice(simple[0].length) };
  const mixed = MIXED.exec(rest);
  if (!mixed) return { value: exact(token), rest };
  const part = ratio(mixed[1], mixed[2]);
  if (compareRatios(part, ONE) >= 0) {
    throw fault(
      "amount-ambiguous",
      `${quote(token + mixed[0])} is a whole number beside a fraction of 1 or more`,
      `write "${exactText(plus(exact(token), part))}" if that is the sum you mean`,
    );
  }
  return { value: plus(exact(token), part), rest: rest.slice(mixed[0].length) };
}

function ratio(n = "", d = ""): Exact {
  return fraction(exact(n).n, exact(d).n);
}

function readDecimal(token: string, mark: DecimalMark | undefined): Exact {
  if (/\d\.{2,}\d/.test(token)) throw rangeFault(token);
  const marks = token.replace(/\d/g, "");
  if (/[.,]$/.test(token) || (marks.length > 1 && !GROUPED_COMMA.test(token) && !GROUPED_POINT.test(token))) {
    const hint = "write digits with one point for decimals: 12.5";
    throw fault("number-malformed", `${quote(token)} is not a number`, hint);
  }
  const asDecimal = token.replace(",", ".");
  const asGrouped = GROUPED_COMMA.test(token)
    ? token.replaceAll(",", "")
    : GROUPED_POINT.test(token)
      ? token.replaceAll(".", "").replace(",", ".")
      : undefined;
  if (marks.length > 1) return readGrouped(token, asGrouped ?? "", mark);
  const isComma = marks === ",";
  if (mark !== undefined && isComma !== (mark === "comma")) {
    if (asGrouped !== undefined) return exact(asGrouped);
    throw fault(
      "amount-ambiguous",
      `${quote(token)} has a ${isComma ? "comma" : "point"} where decimals take a ${mark}`,
      `write ${mark === "comma" ? asDecimal.replace(".", ",") : asDecimal}`,
    );
  }
  if (mark === undefined && isComma && asGrouped !== undefined) {
    throw fault(
      "amount-ambiguous",
      `${quote(token)} could be ${asGrouped} or ${exactText(exact(asDecimal))}`,
      `write ${asGrouped} or ${exactText(exact(asDecimal))}`,
    );
  }
  return exact(asDecimal);
}

const GROUPED_COMMA = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/;
const GROUPED_POINT = /^[1-9]\d{0,2}(?:\.\d{3})+(?:,\d+)?$/;

function readGrouped(token: string, plain: string, mark: DecimalMark | undefined): Exact {
  const comma = GROUPED_COMMA.test(token);
  if (mark === (comma ? "point" : "comma")) return exact(plain);
  throw fault(
    "amount-ambiguous",
    `${quote(token)} groups its thousands`,
    `write ${mark === "comma" ? plain.replace(".", ",") : plain}`,
  );
}

/** What is wrong with a text that does not begin with a number. */
function noNumber(text: string): SteelyardError {
  if (NEGATIVE.test(text))
    return fault("amount-negative", `${quote(text)} is below 0`, "write an amount of 0 or more");
  if (INEXACT.test(text)) {
    const hint = "write the one figure to use, without a word or sign before it";
    return fault("amount-ambiguous", `${quote(text)} does not say one figure`, hint);
  }
  if (saysNoSize(text)) return noSize(text);
  if (/^\p{Nd}/u.test(text))
    return fault(
      "amount-no-number",
      `${quote(text)} has other digits than 0 to 9`,
      "write it with the digits 0 to 9",
    );
  const hint = COUNT_WORD.test(text)
    ? 'write the figure in digits: "1 cup", "1/2 cup"'
    : 'begin with a figure: "100 g", "1 1/2 tbsp"';
  return fault("amount-no-number", `${quote(text)} does not begin with a number`, hint);
}

function saysNoSize(text: string): boolean {
  const lower = text.toLowerCase();
  return sizeless.some((word) => new RegExp(`(?:^| )${word}(?: |$)`).test(lower));
}

/** The fault for a word that nobody has published a size of. */
export function noSize(text: string): SteelyardError {
  return fault(
    "amount-no-size",
    `${quote(text)} has no published size`,
    'write grams or a spoon: "0.5 g", "1/8 tsp"',
  );
}

/** The fault for two figures where one is wanted. */
export function rangeFault(text: string): SteelyardError {
  const hint = "write the one figure to use; bounds belong in least and most";
  return fault("amount-range", `${quote(text)} is a range`, hint);
}

const RANGE = /^ ?(?:[-–—‒−~…]|\.\.+|to |or |bis )(?: ?[.,]?\d)/i;
const HYPHENED = /^ ?[-–—‒−] ?(\d+ ?\/ ?\d+)/;
const GROUPED_SPACE = /^(?: \d{3})+(?!\d)/;

/**
 * Refuses what cannot follow a number: a second number, a range, a sum or a product.
 *
 * Throws `amount-range`, `amount-ambiguous`, `number-malformed`, `amount-no-unit`.
 */
export function refuseAfter(written: string, rest: string): void {
  if (rest === "") {
    const hint = `say of what: "${written.slice(0, 40)} g", "${written.slice(0, 40)} tbsp"`;
    throw fault("amount-no-unit", `${quote(written)} has no unit`, hint);
  }
  if (/^ ?[x×*] ?\d/i.test(rest)) {
    throw fault("amount-ambiguous", `${quote(written + rest)} is a product`, "write what it comes to");
  }
  if (/^e[+-]?\d/i.test(rest)) {
    const hint = "write the figure out, or hand it in as { value, unit }: an amount in text has no exponent";
    throw fault("number-malformed", `${quote(written + rest)} has an exponent`, hint);
  }
  if (/^[a-zA-Zµ]/.test(rest)) return;
  const hyphened = /^\d+$/.test(written) ? HYPHENED.exec(rest) : null;
  if (hyphened) {
    throw fault(
      "amount-ambiguous",
      `${quote(written + hyphened[0])} could be ${written} and ${hyphened[1]}, or ${written} to ${hyphened[1]}`,
      `write "${written} ${hyphened[1]}" with a space if you mean the sum`,
    );
  }
  if (RANGE.test(rest)) {
    throw rangeFault(written + rest);
  }
  if (/^ ?[/.,]/.test(rest)) {
    const hint = 'write a whole number, a decimal or one fraction: "1 1/2"';
    throw fault("number-malformed", `${quote(written + rest)} is not one number`, hint);
  }
  const grouped = /^\d{1,3}$/.test(written) ? GROUPED_SPACE.exec(rest) : null;
  if (/^ ?['’]\d|^ ?\d/.test(rest)) {
    const hint = grouped
      ? `write ${written}${grouped[0].replaceAll(" ", "")} if that is one number`
      : "write one number, without spaces or marks between its thousands";
    throw fault("amount-ambiguous", `${quote(written + rest)} has two numbers in a row`, hint);
  }
}
