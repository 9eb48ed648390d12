import { fault, quote } from "../number/error.ts";
import {
  compare,
  exact,
  type Fraction,
  fraction,
  plus,
  times,
  type Value,
  ZERO,
} from "../number/fraction.ts";

interface Unit {
  readonly name: string;
  /** The unit in kilograms or metres, exact by definition. */
  readonly size: Fraction;
  /** How many of it make the next larger unit of a compound size: 14 pounds to the stone. */
  readonly fullAt?: bigint;
  readonly written: readonly string[];
}

/**
 * Units of body mass in kilograms. The pound is 0.45359237 kg, the inch 25.4 mm: international yard
 * and pound agreement, 1959; 16 ounces to the pound, 14 pounds to the stone.
 */
const massUnits: readonly Unit[] = [
  { name: "kg", size: { n: 1n, d: 1n }, written: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"] },
  { name: "g", size: { n: 1n, d: 1000n }, fullAt: 1000n, written: ["g", "gram", "grams"] },
  { name: "st", size: { n: 635029318n, d: 100000000n }, written: ["st", "stone", "stones"] },
  {
    name: "lb",
    size: { n: 45359237n, d: 100000000n },
    fullAt: 14n,
    written: ["lb", "lbs", "pound", "pounds"],
  },
  { name: "oz", size: { n: 45359237n, d: 1600000000n }, fullAt: 16n, written: ["oz", "ounce", "ounces"] },
];

/** Units of height in metres. */
const lengthUnits: readonly Unit[] = [
  { name: "m", size: { n: 1n, d: 1n }, written: ["m", "metre", "metres", "meter", "meters"] },
  {
    name: "cm",
    size: { n: 1n, d: 100n },
    fullAt: 100n,
    written: ["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
  },
  { name: "ft", size: { n: 381n, d: 1250n }, written: ["ft", "foot", "feet", "'", "′", "’"] },
  {
    name: "in",
    size: { n: 127n, d: 5000n },
    fullAt: 12n,
    written: ["in", "inch", "inches", '"', "″", "”"],
  },
];

/** A number (3, 3.5, 3,5, 1/2, 3 1/2), then the unit's letters or sign. */
const PART = /\s*(\d+\s+\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)?|[.,]\d+)\s*([a-zA-Z]+|['"′″’”])\.?/y;
const LONGEST = 60;

/**
 * Reads a body mass exactly, in kilograms: `"61 kg"`, `"134 lb"`, `"9 st 8 lb"`, or a bare number of
 * kilograms.
 *
 * Throws `person-malformed`.
 */
export function readMass(value: Value): Fraction {
  if (typeof value !== "string" || /^[\s\d./]*$/.test(value)) return positive(exact(value), value);
  return positive(readParts(value, massUnits, "a body mass", '"61 kg", "134 lb" or "9 st 8 lb"'), value);
}

/**
 * Reads a height exactly, in metres: `"1.70 m"`, `"170 cm"`, `"5 ft 7 in"`. A bare number is refused:
 * it could be metres, centimetres or inches.
 *
 * Throws `person-malformed`.
 */
export function readHeight(value: Value): Fraction {
  if (typeof value !== "string" || /^[\s\d.,/]*$/.test(value)) {
    throw malformed(`the height ${quote(value)} has no unit`, 'write "1.70 m", "170 cm" or "5 ft 7 in"');
  }
  return positive(readParts(value, lengthUnits, "a height", '"1.70 m", "170 cm" or "5 ft 7 in"'), value);
}

function readParts(text: string, units: readonly Unit[], what: string, example: string): Fraction {
  const hint = `write ${example}`;
  if (text.length > LONGEST) throw malformed(`${what} of ${text.length} characters`, hint);
  let total = ZERO;
  let previous: Unit | undefined;
  let at = 0;
  while (at < text.trimEnd().length) {
    PART.lastIndex = at;
    const [whole, number = "", word = ""] = PART.exec(text) ?? [];
    if (whole === undefined) throw malformed(`${quote(text)} is not ${what}`, hint);
    const unit = units.find((u) => u.written.includes(word.toLowerCase()));
    if (!unit) throw malformed(`${quote(word)} is not a unit of ${what.slice(2)}`, hint);
    const count = readNumber(number, text);
    if (previous) refuseOdd(previous, unit, count, units, text, hint);
    total = plus(total, times(count, unit.size));
    previous = unit;
    at = PART.lastIndex;
  }
  if (!previous) throw malformed(`no number in ${quote(text)}`, hint);
  return total;
}

/** After `9 st` only a smaller unit of the same system may follow, and less of it than makes a whole. */
function refuseOdd(
  previous: Unit,
  unit: Unit,
  count: Fraction,
  units: readonly Unit[],
  text: string,
  hint: string,
): void {
  if (units.indexOf(unit) !== units.indexOf(previous) + 1 || unit.fullAt === undefined) {
    throw malformed(`${quote(text)} mixes units that do not go together`, hint);
  }
  if (compare(count, fraction(unit.fullAt)) >= 0) {
    throw malformed(`${quote(text)}: ${unit.fullAt} ${unit.name} make a whole ${previous.name}`, hint);
  }
}

function readNumber(text: string, whole: string): Fraction {
  const mixed = /^(\d+)\s+(\d+\/\d+)$/.exec(text);
  if (mixed) return plus(exact(mixed[1] ?? ""), exact(mixed[2] ?? ""));
  if (/,\d{3}$/.test(text)) {
    throw malformed(`${quote(whole)} could mean a thousand or one`, "leave the comma out, or write a point");
  }
  return exact(text.replace(",", "."));
}

function positive(size: Fraction, written: Value): Fraction {
  if (size.n <= 0n) throw malformed(`${quote(written)} is not above 0`, "give a size above 0");
  return size;
}

function malformed(message: string, hint: string): Error {
  return fault("person-malformed", message, hint);
}
