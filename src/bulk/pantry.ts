import { isRanged, markKinds } from "../food/figure.ts";
import type { FoodTable } from "../food/table.ts";
import type { Measures } from "../measure/measures.ts";
import { within } from "../number/error.ts";
import { toFloat } from "../number/ratio.ts";
import type { Line, Recipe, WrittenAmount } from "../recipe/document.ts";
import type { AmountReader } from "../recipe/resolve.ts";
import type { Quantity } from "../scale/demand.ts";
import { sheet } from "../sheet/build.ts";
import { componentIndex, type PlanLine } from "../sheet/plan.ts";
import type { Source } from "../sheet/source.ts";

/** What 100 g of a food bring of the components asked for, and what is to be said of that. */
export interface Brings {
  readonly value: Float64Array;
  readonly low: Float64Array;
  /** No number where nothing limits the most. */
  readonly high: Float64Array;
  /** A bit for each of `markKinds`. */
  readonly marks: Uint16Array;
  /** 1 where the value is not the least that it can be, 2 where it is not the most. */
  readonly off: Uint8Array;
}

/** A line as it is drawn on: its food, and grams of edible portion. */
export interface DrawnAmount {
  readonly brings: Brings;
  grams(written: WrittenAmount): number;
}

/**
 * What lines draw on, each food read once however many recipes name it: a sheet of the one line says what
 * food, cooking and unit come to, so that every rule is the sheet's.
 */
export class Pantry {
  readonly #foods: FoodTable;
  readonly #asked: readonly Quantity[];
  readonly #drawn = new Map<unknown, Map<string, DrawnAmount>>();
  readonly #brings = new Map<Source, Brings>();

  constructor(foods: FoodTable, asked: readonly Quantity[]) {
    this.#foods = foods;
    this.#asked = asked;
  }

  /** How the lines of recipes with these measures are drawn. Each throws what a sheet of the line would. */
  by(measures: Recipe["measures"]): (line: Line) => DrawnAmount {
    const kept = this.#drawn.get(measures) ?? new Map<string, DrawnAmount>();
    this.#drawn.set(measures, kept);
    return (line) => {
      const key = keyOf(line);
      const found = kept.get(key);
      if (found) return found;
      const { source, reader } = this.#alone(line, measures);
      const brings = this.#brings.get(source) ?? bringsOf(source, this.#asked);
      this.#brings.set(source, brings);
      const made = { brings, grams: gramsBy(reader) };
      kept.set(key, made);
      return made;
    };
  }

  #alone({ key: _, least: __, most: ___, ...line }: Line, measures: Measures | undefined): PlanLine {
    const alone = { name: "A line", portions: 1, lines: [line], ...(measures && { measures }) };
    return within([], () => sheet(alone, this.#foods)).plan.lines[0] as PlanLine;
  }
}

/** Tells lines apart that bring other things by the gram, or are weighed otherwise. */
function keyOf(line: Line): string {
  const { food = "", weighed, retention } = line;
  if (weighed === undefined && retention === undefined) return food;
  return JSON.stringify([food, weighed, retention, line.retentionPresumed, retention && line.yieldFactor]);
}

function bringsOf(source: Source, asked: readonly Quantity[]): Brings {
  const made = {
    value: new Float64Array(asked.length),
    low: new Float64Array(asked.length),
    high: new Float64Array(asked.length),
    marks: new Uint16Array(asked.length),
    off: new Uint8Array(asked.length),
  };
  for (const [c, of] of asked.entries()) {
    if (of === "mass") continue;
    const at = componentIndex(of);
    const { low, high } = source.ends(at);
    const value = toFloat({ n: source.values[at] ?? 0n, d: source.scale });
    made.value[c] = value;
    made.low[c] = low ? toFloat(low) : Number.NaN;
    made.high[c] = high ? toFloat(high) : Number.NaN;
    for (const { kind } of source.marks(at))
      if (kind !== "nil") made.marks[c] = (made.marks[c] as number) | (1 << markKinds.indexOf(kind));
    const figure = source.figure(at);
    if (figure && isRanged(figure))
      made.off[c] = (made.low[c] !== value ? 1 : 0) | (made.high[c] !== value ? 2 : 0);
  }
  return made;
}

/** Number and unit as most amounts are written: what the unit comes to is read once. */
const PLAIN = /^(\d{1,7}(?:\.\d{1,7})?) (\p{L}[\p{L} ]*)$/u;

/** Grams of a written amount, by the line's own reader. Whatever has a unit is in proportion to its number. */
function gramsBy({ read, toGrams }: AmountReader): DrawnAmount["grams"] {
  const perUnit = new Map<string, number>();
  const others = new Map<string, number>();
  const exactly = (written: WrittenAmount): number => toFloat(toGrams(read(written)).grams);
  return (written) => {
    if (typeof written !== "string") return exactly(written);
    const parts = PLAIN.exec(written);
    const [, digits = "", unit = ""] = parts ?? [];
    const known = parts ? perUnit.get(unit) : others.get(written);
    if (known !== undefined) return parts ? Number(digits) * known : known;
    const grams = exactly(written);
    if (!parts) others.set(written, grams);
    else if (Number(digits) > 0) perUnit.set(unit, toFloat(toGrams(read(`1 ${unit}`)).grams));
    return grams;
  };
}
