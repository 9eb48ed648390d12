import { count, word } from "../document/leaves.ts";
import { read as readBySchema } from "../document/read.ts";
import { unitWords } from "../document/readLanguage.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { decimalText, fixedText } from "../number/digits.ts";
import { fault, kindOf, quote } from "../number/error.ts";
import { absolute, Exact, equals, exact, fraction, isZero, minus, times, toStep } from "../number/exact.ts";
import { compareRatios, floor, magnitude, nearest } from "../number/ratio.ts";
import type { Amount } from "./amount.ts";
import { LONGEST_AMOUNT, trimZeros } from "./clean.ts";
import { householdUnits } from "./measureSet.ts";
import { type Measures, measures, type ReadySet, readyMeasures } from "./measures.ts";
import type { DecimalMark } from "./numberText.ts";
import { englishWords, type UnitWords } from "./words.ts";

/** How an amount is written. */
export interface FormatOptions {
  /** The set that a bare "cup" means to the reader; amounts by any other set say whose they are. */
  readonly measures?: Measures;
  readonly decimal?: DecimalMark;
  readonly words?: UnitWords;
  /** Round to this many significant digits, 1 to 34. Not beside `places`. */
  readonly significant?: number;
  /** Round to this many decimals, 0 to 34. */
  readonly places?: number;
  /** Round spoons, cups, ounces and pieces to whole numbers or fractions over one of these, each 2 to 1000. */
  readonly denominators?: readonly number[];
}

/** Denominators that a cook meets on spoons and cups. */
const COOKS_DENOMINATORS: readonly bigint[] = [2n, 3n, 4n, 5n, 6n, 8n, 16n];

/** Units whose figures are written as fractions; metric ones take decimals. */
function takesFractions(a: Amount): boolean {
  return a.kind === "own" || ["oz", "lb", "st", ...householdUnits].includes(a.unit);
}

/**
 * Writes an amount as a cook would: `1 1/2 cups`, `1/4 tsp`, `1.25 kg`, `1 lb 4 oz`.
 *
 * Unless told to round it loses nothing: `amount(formatAmount(a), how)` is `a` again, with the same
 * measures, decimal mark and words. A figure that has no end stays a fraction (`1/3 g`). Rounding
 * leaves a cook's fraction as it is, and never rounds something to nothing. Halves go up.
 *
 * Throws `format-malformed`, `measures-unknown`, `measures-malformed`, and `amount-malformed` for what is
 * no amount, such as text that `amount` has yet to read.
 *
 * @example
 * ```ts
 * formatAmount(amount("1.5 us cups"), { measures: "us" }); // => 1 1/2 cups
 * formatAmount(amount("1.5 us cups")); // => 1 1/2 US cups
 * formatAmount(amount("100/3 g"), { significant: 3 }); // => 33.3 g
 * ```
 */
export function formatAmount(a: Amount, how: FormatOptions = NONE): string {
  checkAmount(a);
  const read = how === NONE ? {} : readBySchema(formatHow(), how, "format-malformed");
  return written(a, read);
}

const NONE: FormatOptions = {};

function written(a: Amount, how: ReadFormatOptions): string {
  const words = how.words ?? englishWords;
  if (!a.parts) return one(a, how, words);
  const joins = words.joins ?? { mass: " ", other: ADDED };
  const last = a.parts.length - 1;
  const { significant: _, places: __, denominators: ___, ...plain } = how;
  return a.parts
    .map((part, i) => {
      const text = one(part, i === last ? how : plain, words);
      const before = a.parts?.[i - 1];
      if (!before) return text;
      // The same unit twice reads as a sum only with a sign between.
      return (before.unit === part.unit ? ADDED : a.kind === "mass" ? joins.mass : joins.other) + text;
    })
    .join("");
}

const ADDED = " + ";

function one(a: Amount, how: ReadFormatOptions, words: UnitWords): string {
  const { text, shown } = figureText(a.value, takesFractions(a), how);
  const marked = how.decimal === "comma" ? text.replace(".", ",") : text;
  const whose = whoseUnit(a, how.measures, words);
  const unit = unitText(a, shown, words);
  // A language may set the figure elsewhere.
  if (unit.includes("{figure}")) return unit.replace("{figure}", marked);
  return `${marked} ${whose === "" ? "" : `${whose} `}${unit}`;
}

/** The figure's text, and the figure that the text says. */
function figureText(
  figure: Exact,
  asFraction: boolean,
  how: ReadFormatOptions,
): { text: string; shown: Exact } {
  if (asFraction && how.denominators) {
    const shown = nearestFraction(figure, how.denominators);
    return isZero(shown) && !isZero(figure)
      ? rounded(figure, -magnitude(figure))
      : { text: mixedText(shown), shown };
  }
  const cooks = figure.d === 1n || COOKS_DENOMINATORS.includes(figure.d);
  if (asFraction && cooks) return { text: mixedText(figure), shown: figure };
  if (how.significant !== undefined) return rounded(figure, how.significant - 1 - magnitude(figure));
  if (how.places !== undefined) {
    const lost = isZero(toStep(figure, fraction(1n, 10n ** BigInt(how.places))));
    return rounded(figure, lost ? -magnitude(figure) : how.places);
  }
  return { text: exactText(figure), shown: figure };
}

/** What is longer than a cook writes is written as one fraction, which is read back however long it is. */
function exactText(figure: Exact): string {
  const plain = `${figure.n}/${figure.d}`;
  if (figure.d !== 1n && plain.length > 2 * LONGEST_AMOUNT) return plain;
  const text = decimalText(figure) ?? mixedText(figure);
  return text.length > LONGEST_AMOUNT ? plain : text;
}

function rounded(figure: Exact, places: number): { text: string; shown: Exact } {
  const text = trimZeros(fixedText(figure, places));
  return { text, shown: exact(text) };
}

function mixedText(figure: Exact): string {
  const whole = floor(figure);
  const part = minus(figure, fraction(whole));
  if (isZero(part)) return whole.toString();
  return whole === 0n ? `${part.n}/${part.d}` : `${whole} ${part.n}/${part.d}`;
}

function nearestFraction(figure: Exact, denominators: readonly number[]): Exact {
  const distance = (a: Exact): Exact => absolute(minus(a, figure));
  return [1, ...denominators]
    .map((d) => fraction(nearest(times(figure, fraction(BigInt(d)))), BigInt(d)))
    .reduce((best, each) => (compareRatios(distance(each), distance(best)) < 0 ? each : best));
}

function unitText(a: Amount, shown: Exact, words: UnitWords): string {
  const category = (words.category ?? englishWords.category)?.(shown) ?? "other";
  const word = Object.hasOwn(words.units, a.unit) ? words.units[a.unit] : undefined;
  if (word === undefined) return a.kind === "own" ? ownText(a.unit, category, words) : a.unit;
  return typeof word === "string" ? word : (word[category] ?? word.other);
}

function ownText(name: string, category: string, words: UnitWords): string {
  const first = /^[^\s,(]+/.exec(name)?.[0] ?? "";
  const nouns = words.nouns ?? {};
  const many = category !== "one" && Object.hasOwn(nouns, first) ? nouns[first] : undefined;
  if (many !== undefined) return many + name.slice(first.length);
  // A size may stand before it: `medium stalk`.
  const [, size = "", noun = "", rest = ""] =
    /^((?:extra )?(?:small|medium|large) )([^\s,]+)(.*)$/.exec(name) ?? [];
  const sized = category !== "one" && Object.hasOwn(nouns, noun) ? nouns[noun] : undefined;
  return sized === undefined ? name : `${size}${sized}${rest}`;
}

/** Whose measure it is, where the reader would take another. */
function whoseUnit(a: Amount, reader: ReadySet | undefined, words: UnitWords): string {
  if (a.measures === undefined) return "";
  const whose = readyMeasures(a.measures);
  if (reader !== undefined && sameSet(whose.measures, reader.measures)) return "";
  const word = words.sets && Object.hasOwn(words.sets, whose.name) ? words.sets[whose.name] : undefined;
  return word ?? whose.name;
}

function sameSet(a: Measures, b: Measures): boolean {
  if (typeof a === "string" || typeof b === "string") return a === b;
  return (
    a.name === b.name &&
    householdUnits.every((unit) => equals(exact(a.ml[unit] ?? 0), exact(b.ml[unit] ?? 0)))
  );
}

function checkAmount(a: unknown): void {
  if (
    typeof a === "object" &&
    a !== null &&
    "value" in a &&
    a.value instanceof Exact &&
    "unit" in a &&
    "kind" in a
  )
    return;
  const what = typeof a === "string" ? `the text ${quote(a)}` : kindOf(a);
  throw fault("amount-malformed", `${what} is not an amount`, 'read it first: amount("100 g")');
}

const formatHow: () => Schema<ReadFormatOptions> = /* @__PURE__ */ once(() =>
  fields<ReadFormatOptions>(
    {
      measures: optional(measures()),
      decimal: optional(word(["point", "comma"])),
      words: optional(unitWords()),
      significant: optional(count(1, 34)),
      places: optional(count(0, 34)),
      denominators: optional(list(count(2, 1000), { least: 1, most: 100 })),
    },
    ({ significant, places }, _, refuse) => {
      if (significant !== undefined && places !== undefined)
        refuse("both significant and places", "give significant or places, not both", ["places"]);
    },
  ),
);

interface ReadFormatOptions extends Omit<FormatOptions, "measures"> {
  readonly measures?: ReadySet;
}
