import { amount, gramsOf } from "../measure/amount.ts";
import { cleanText } from "../measure/clean.ts";
import { hinting } from "../measure/figure.ts";
import { readNumber } from "../measure/numberText.ts";
import { fault, quote, SteelyardError } from "../number/error.ts";
import { type Exact, exact, fraction, ONE, over, plus, times, type Value, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";

/** A unit of height, in metres. The inch is 25.4 mm: international yard and pound agreement, 1959. */
interface LengthUnit {
  readonly size: Exact;
  /** The larger unit that it may follow, and how many of it make one of that. */
  readonly after?: { readonly unit: string; readonly full: bigint };
  readonly written: readonly string[];
}

const lengthUnits: { readonly [name: string]: LengthUnit } = {
  m: { size: ONE, written: ["m", "metre", "metres", "meter", "meters"] },
  cm: {
    size: /* @__PURE__ */ fraction(1n, 100n),
    after: { unit: "m", full: 100n },
    written: ["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
  },
  ft: { size: /* @__PURE__ */ fraction(381n, 1250n), written: ["ft", "foot", "feet", "'", "′", "’"] },
  in: {
    size: /* @__PURE__ */ fraction(127n, 5000n),
    after: { unit: "ft", full: 12n },
    written: ["in", "inch", "inches", '"', "″", "”"],
  },
};

const UNIT = /^ ?([a-z]+|['"′″’”])\.? ?/i;
const BARE = /^[\s\d.,/]*$/;
const LONGEST = 60;
const heightHint = 'write "1.70 m", "170 cm" or "5 ft 7 in"';

/**
 * Reads a body mass exactly, in kilograms: `"61 kg"`, `"134 lb"`, `"9 st 8 lb"` or `"9st8lb"`, or a
 * bare number of kilograms.
 *
 * Throws `person-malformed`, `amount-ambiguous`, and the number codes.
 */
export function readMass(value: Value): Exact {
  if (typeof value !== "string" || BARE.test(value)) return positive(exact(value), value);
  return positive(over(readGrams(value), fraction(1000n)), value);
}

function readGrams(text: string): Exact {
  const hint = 'write "61 kg", "134 lb" or "9 st 8 lb"';
  try {
    // "9st8lb": a number after the letters of a unit begins the next part.
    const grams = gramsOf(amount(text.replaceAll(/(?<=[a-z]{2})(?=\d)/gi, " ")));
    if (grams) return grams;
  } catch (error) {
    if (!(error instanceof SteelyardError) || error.code === "amount-ambiguous") throw error;
    throw malformed(`${quote(text)} is not a body mass: ${error.faults[0]?.message ?? ""}`, hint);
  }
  throw malformed(`${quote(text)} is not a body mass`, hint);
}

/**
 * Reads a height exactly, in metres: `"1.70 m"`, `"1m70"`, `"170 cm"`, `"5 ft 7 in"`. A bare number
 * is refused: it could be metres, centimetres or inches.
 *
 * Throws `person-malformed`, and the codes of written numbers.
 */
export function readHeight(value: Value): Exact {
  if (typeof value !== "string" || BARE.test(value)) {
    throw malformed(`the height ${quote(value)} has no unit`, heightHint);
  }
  if (value.length > LONGEST) throw malformed(`a height of ${value.length} characters`, heightHint);
  let total = ZERO;
  let previous: string | undefined;
  for (let rest = cleanText(value); rest !== ""; ) {
    // "1m70": two digits at the end, after metres, are centimetres.
    const isCm = previous === "m" && /^\d\d$/.test(rest);
    const number = hinting(heightHint, () => readNumber(rest));
    const [whole = "", word = ""] = isCm ? ["", "cm"] : (UNIT.exec(number.rest) ?? []);
    const name = Object.keys(lengthUnits).find((key) =>
      lengthUnits[key]?.written.includes(word.toLowerCase()),
    );
    const unit = name && lengthUnits[name];
    if (!unit) throw malformed(`${quote(value)} is not a height`, heightHint);
    if (previous !== undefined) refuseOdd(unit, previous, number.value, value);
    total = plus(total, times(number.value, unit.size));
    previous = name;
    rest = number.rest.slice(whole.length);
  }
  return positive(total, value);
}

/** After `5 ft` only inches may follow, and fewer than make a foot. */
function refuseOdd(unit: LengthUnit, previous: string, count: Exact, text: string): void {
  if (unit.after?.unit !== previous) {
    throw malformed(`${quote(text)} mixes units that do not go together`, heightHint);
  }
  if (compareRatios(count, fraction(unit.after.full)) >= 0) {
    throw malformed(
      `${quote(text)}: ${unit.after.full} ${unit.written[0]} make a whole ${previous}`,
      heightHint,
    );
  }
}

function positive(size: Exact, written: Value): Exact {
  if (size.n <= 0n) throw malformed(`${quote(written)} is not above 0`, "give a size above 0");
  return size;
}

function malformed(message: string, hint: string): SteelyardError {
  return fault("person-malformed", message, hint);
}
