import { anyText, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { unitWords } from "../document/readLanguage.ts";
import { fields, list, once, optional, type Schema, type Shape } from "../document/schema.ts";
import { exactText } from "../number/digits.ts";
import { fault, quote } from "../number/error.ts";
import { type Exact, equals, over, plus, times, type Value, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { readData, readEnds } from "./amountData.ts";
import { type Measures, measures, type ReadySet } from "./measures.ts";
import type { DecimalMark } from "./numberText.ts";
import { parseAmount, type ReadContext, type ReadPart } from "./parse.ts";
import type { UnitKind } from "./units.ts";
import type { UnitWords } from "./words.ts";

/** What an amount measures; `own` is one of a food's own measures, whose size the food knows. */
export type AmountKind = UnitKind | "own";

/** A value with the unit it was written in. Plain, frozen data. */
export interface Amount {
  /** The figure, in the unit; to 34 digits where it does not end. */
  readonly value: Exact;
  /** Canonical name of the unit (`g`, `tbsp`, `fl oz`), or the name of a food's own measure. */
  readonly unit: string;
  readonly kind: AmountKind;
  /** Grams, millilitres, millimetres or kilojoules in one unit; a food's own measure has none here. */
  readonly size?: Exact;
  /** Which set the spoon or cup is of, where that matters. */
  readonly measures?: Measures;
  /** The parts of an amount written in several (`1 lb 4 oz`); the figure is their sum in the largest unit. */
  readonly parts?: readonly Amount[];
  /** The ends of an amount that a recipe gave as a range, in the unit; the figure is their middle. */
  readonly range?: AmountRange;
  /** What `amount` reads back as exactly this amount. */
  toJSON(): AmountData;
}

/** The ends of an amount that was written as a range: `2-3 tbsp`. */
export interface AmountRange {
  readonly least: Exact;
  readonly most: Exact;
}

/** An amount as JSON holds it. */
export type AmountData = PartData | { readonly parts: readonly PartData[] };

/** One figure in one unit, as JSON holds it. */
export interface PartData {
  readonly value: string;
  readonly unit: string;
  readonly measures?: Measures;
  /** Set where the unit is one of the food's own measures. */
  readonly kind?: "own";
  /** The ends of an amount that a recipe gave as a range. */
  readonly range?: { readonly least: string; readonly most: string };
}

/** An amount as a caller may hand it in. */
export type AmountInput =
  | string
  | Amount
  | AmountData
  | (Omit<PartData, "value"> & { readonly value: Value });

/** By what a written amount is read. */
export interface AmountOptions {
  /** Which spoons and cups are meant. Without it a spoon or cup has to name its set: `1 us cup`. */
  readonly measures?: Measures;
  /** Names of the food's own measures: `["medium", "can, drained"]`. A plain unit name stays that unit. */
  readonly own?: readonly string[];
  /** Which mark stands before decimals; the other groups thousands. Either may, where this is left out. */
  readonly decimal?: DecimalMark;
  /** Unit words of another language, read beside the English ones. */
  readonly words?: UnitWords;
}

/**
 * Reads an amount as a cook writes it: `400 g`, `1 1/2 tbsp`, `½ us cup`, `1 lb 4 oz`,
 * `1 cup + 2 tbsp`, `2 medium`. Exact: no figure is rounded.
 *
 * Throws, each with a hint that says what to write: `amount-empty`, `amount-too-long` (above 1,000
 * characters beside its first number), `amount-malformed`, `amount-no-number`, `amount-no-unit`, `amount-unknown-unit`,
 * `amount-ambiguous`, `amount-range`, `amount-negative`, `amount-mixed-kinds`, `amount-no-size`
 * (a pinch, to taste), `measures-needed` (a spoon or cup of unsaid size), `measures-unknown`,
 * `measures-malformed`, `format-malformed` for an option that there is not, and the `number-…` codes.
 *
 * @example
 * ```ts
 * amount("1 1/2 tbsp", { measures: "metric" }).value.toString(); // => 1.5
 * amount("2 medium", { own: ["medium"] }).kind; // => own
 * ```
 */
export function amount(input: AmountInput, how: AmountOptions = NONE): Amount {
  return readAmount(input, how === NONE ? {} : readContext(read(amountHow(), how, "format-malformed")));
}

const NONE: AmountOptions = {};

/** @internal The fields of {@link AmountOptions}, for options that have more. */
export function amountShape(): Shape<ReadAmountOptions> {
  return {
    measures: optional(measures()),
    own: optional(list(anyText())),
    decimal: optional(word(["point", "comma"])),
    words: optional(unitWords()),
  };
}

const amountHow: () => Schema<ReadAmountOptions> = /* @__PURE__ */ once(() => fields(amountShape()));

/** {@link AmountOptions}, read. */
export interface ReadAmountOptions extends Omit<AmountOptions, "measures"> {
  readonly measures?: ReadySet;
}

/** @internal Reads an amount in a context that was read before. */
export function readAmount(input: AmountInput, context: ReadContext): Amount {
  if (input instanceof Written) return input;
  if (typeof input === "string") return sumOfAmounts(parseAmount(input, context).map(simple));
  const read = sumOfAmounts(readData(input, context).map(simple));
  const range = readRange(input);
  return range ? ranged(read, read.value, range) : read;
}

/** The ends of an amount given as data, about its value. */
function readRange(input: object): AmountRange | undefined {
  if (!("range" in input) || input.range === undefined) return undefined;
  const { least, most } = readEnds(input.range);
  return { least, most };
}

/** @internal An amount that a recipe gave as a range, with its middle. */
export function ranged(a: Amount, middle: Exact, range: AmountRange): Amount {
  if (equals(range.least, range.most)) return withExact(a, middle);
  return new Written(middle, a.unit, a.kind, a.size, a.measures, undefined, range);
}

/** Grams in a mass, exactly; nothing where it is not a mass. */
export function gramsOf(a: Amount): Exact | undefined {
  return a.kind === "mass" && a.size ? times(a.value, a.size) : undefined;
}

/** Millilitres in a volume, exactly; nothing where it is not a volume. */
export function millilitresOf(a: Amount): Exact | undefined {
  return a.kind === "volume" && a.size ? times(a.value, a.size) : undefined;
}

/** The amount times an exact factor, in the same unit, its ends with it; parts are drawn together unless the factor is 1. */
export function timesAmount(a: Amount, factor: Exact): Amount {
  const figure = times(a.value, factor);
  if (!a.range || equals(a.value, figure)) return withExact(a, figure);
  const { least, most } = a.range;
  return ranged(a, figure, { least: times(least, factor), most: times(most, factor) });
}

/** Another figure in the same unit; the amount itself, as written, where the figure is its own. */
export function withExact(a: Amount, figure: Exact): Amount {
  if (equals(a.value, figure)) return a;
  return new Written(figure, a.unit, a.kind, a.size, a.measures);
}

/** Whether two amounts are written alike: the same figures in the same units of the same size. */
export function sameAmount(a: Amount, b: Amount): boolean {
  const sizes = a.size && b.size ? equals(a.size, b.size) : a.size === b.size;
  if (!sizes || a.unit !== b.unit || a.kind !== b.kind || !equals(a.value, b.value)) return false;
  if (JSON.stringify(a.range) !== JSON.stringify(b.range)) return false;
  const [left, right] = [a.parts ?? [], b.parts ?? []];
  return (
    left.length === right.length &&
    left.every((part, i) => right[i] !== undefined && sameAmount(part, right[i]))
  );
}

/** @internal One figure in one unit, as an amount. */
export function simple(part: ReadPart): Amount {
  const { value: figure, unit } = part;
  return unit.kind === "own"
    ? new Written(figure, unit.id, "own", undefined, undefined)
    : new Written(figure, unit.id, unit.kind, unit.size, unit.measures);
}

/**
 * @internal Several amounts as one, in the largest of their units. Throws `amount-mixed-kinds`.
 */
export function sumOfAmounts(parts: readonly Amount[]): Amount {
  const [first, ...others] = parts;
  if (!first) throw fault("amount-empty", "the amount is empty", 'write a figure and a unit: "100 g"');
  if (others.length === 0) return first;
  const odd = others.find(
    (part) => part.kind !== first.kind || (part.kind === "own" && part.unit !== first.unit),
  );
  if (odd) {
    throw fault(
      "amount-mixed-kinds",
      `${quote(first.unit, 40)} and ${quote(odd.unit, 40)} do not add up to one amount`,
      "write them as two lines, or both by weight",
    );
  }
  const largest = parts.reduce((a, b) => (compareRatios(b.size ?? ZERO, a.size ?? ZERO) > 0 ? b : a));
  const total = parts.reduce((sum, part) => plus(sum, inUnit(part, largest)), ZERO);
  return new Written(total, largest.unit, largest.kind, largest.size, largest.measures, parts);
}

/** @internal The context that units are read in. */
export function readContext({ measures: set, ...rest }: ReadAmountOptions): ReadContext {
  return { set, ...rest };
}

function inUnit(part: Amount, of: Amount): Exact {
  return part.size && of.size ? over(times(part.value, part.size), of.size) : part.value;
}

/** An amount; its face is made when first looked at. */
class Written implements Amount {
  readonly unit: string;
  readonly kind: AmountKind;
  declare readonly size?: Exact;
  declare readonly measures?: Measures;
  declare readonly parts?: readonly Amount[];
  declare readonly range?: AmountRange;

  constructor(
    figure: Exact,
    unit: string,
    kind: AmountKind,
    size: Exact | undefined,
    measures: Measures | undefined,
    parts?: readonly Amount[],
    range?: AmountRange,
  ) {
    this.value = figure;
    this.unit = unit;
    this.kind = kind;
    if (size) this.size = size;
    if (measures) this.measures = measures;
    if (parts) this.parts = Object.freeze([...parts]);
    if (range) this.range = Object.freeze({ ...range });
    Object.freeze(this);
  }

  readonly value: Exact;

  toJSON(): AmountData {
    return this.parts ? { parts: this.parts.map(partData) } : partData(this);
  }
}

function partData({ value, unit, kind, measures, range }: Amount): PartData {
  const whose = measures === undefined ? {} : { measures };
  const ends = range && { range: { least: exactText(range.least), most: exactText(range.most) } };
  return { value: exactText(value), unit, ...whose, ...(kind === "own" ? { kind } : {}), ...ends };
}
