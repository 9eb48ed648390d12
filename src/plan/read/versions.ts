import { type Exact, equals, isZero, ONE, over, times, ZERO } from "../../number/exact.ts";
import type { PlanLine } from "../../sheet/plan.ts";
import { Sheet } from "../../sheet/sheet.ts";
import { impliedYield } from "../../sheet/values.ts";
import type { LineAmounts, LineFactors } from "../share/lineFactors.ts";

/** A dish as someone eats it, beside the one sheet that holds the lines of all its versions. */
export class Version {
  /** One portion of it. */
  readonly sheet: Sheet;
  /** Where each of its lines stands in the sheet of all versions. */
  readonly at: readonly number[];
  /** Lines of that sheet that it has not. */
  readonly lacks: ReadonlySet<number>;
  readonly #all: Sheet;

  constructor(sheet: Sheet, at: readonly number[], all: Sheet) {
    this.sheet = sheet;
    this.at = at;
    this.lacks = new Set(all.plan.lines.flatMap((_, i) => (at.includes(i) ? [] : [i])));
    this.#all = all;
  }

  /** Its lines' factors as those of the sheet of all versions, which has none of what it lacks. */
  pooled(own: readonly Exact[]): readonly Exact[] {
    const all = this.#all.plan.lines.map(() => ZERO);
    this.at.forEach((place, i) => {
      all[place] = times(own[i] ?? ZERO, this.#by(i));
    });
    return all;
  }

  /** Factors of the sheet of all versions as those of its own lines. */
  own(all: readonly Exact[]): readonly Exact[] {
    return this.at.map((place, i) => over(all[place] ?? ZERO, this.#by(i)));
  }

  ownAmounts(all: LineAmounts | undefined): LineAmounts | undefined {
    return all && this.at.map((place) => all[place]);
  }

  /** What of the line in the sheet of all versions it has as written. */
  #by(i: number): Exact {
    const [own, all] = [this.sheet.values.grams[i] ?? ZERO, this.#all.values.grams[this.at[i] ?? -1] ?? ZERO];
    return isZero(all) || own === all ? ONE : over(own, all);
  }
}

/** A person's own versions of a meal's dishes, by dish. */
export type Versions = ReadonlyMap<string, Version>;

/** Gives the factors of a meal's own versions as those of the sheets of all versions. */
export function pooledFactors(own: LineFactors, versions: Versions): LineFactors {
  return new Map([...own].map(([dish, factors]) => [dish, versions.get(dish)?.pooled(factors) ?? factors]));
}

/** The other way about. */
export function ownFactors(all: LineFactors, versions: Versions | undefined): LineFactors {
  if (!versions) return all;
  return new Map([...all].map(([dish, factors]) => [dish, versions.get(dish)?.own(factors) ?? factors]));
}

/** A dish and its versions, one portion of each, brought onto one sheet. */
export interface PooledVersions {
  readonly all: Sheet;
  /** Of those that can be versions of the dish; others are dishes of their own. */
  readonly versions: ReadonlyMap<Sheet, Version>;
}

/**
 * Brings versions of a dish onto one sheet: its own lines, then what they have beside it. A version that
 * yields otherwise, or has nothing of the dish, is a dish of its own.
 */
export function poolVersions(base: Sheet, versions: readonly Sheet[]): PooledVersions {
  const lines: PlanLine[] = [...base.plan.lines];
  const amounts = [...base.values.amounts];
  const grams = [...base.values.grams];
  const texts = lines.map(textOf);
  const keys = new Set(lines.map(({ line }) => line.key));
  const places = new Map<Sheet, readonly number[]>([[base, lines.map((_, i) => i)]]);
  for (const version of versions) {
    if (!equals(version.masses.yieldFactor, base.masses.yieldFactor)) continue;
    const found = version.plan.lines.map((line, i) =>
      placeIn(texts, grams, line, version.values.grams[i] ?? ZERO),
    );
    if (!found.some((place) => place !== undefined && place < base.plan.lines.length)) continue;
    const at = version.plan.lines.map((line, i): number => {
      const place = found[i];
      if (place !== undefined) return place;
      const key = keyFor(line.line.key, keys);
      keys.add(key);
      texts.push(textOf(line));
      amounts.push(...version.values.amounts.slice(i, i + 1));
      grams.push(version.values.grams[i] ?? ZERO);
      return lines.push({ ...line, line: { ...line.line, key } }) - 1;
    });
    places.set(version, at);
  }
  const all = lines.length === base.plan.lines.length ? base : sheetOf(base, lines, { amounts, grams });
  return { all, versions: new Map([...places].map(([s, at]) => [s, new Version(s, at, all)])) };
}

function sheetOf(
  base: Sheet,
  lines: readonly PlanLine[],
  { amounts, grams }: Pick<Sheet["values"], "amounts" | "grams">,
): Sheet {
  const cooking = impliedYield(base.values.cooking, base.masses);
  const { cookedMass: _, ...recipe } = base.origin;
  const plan = base.plan.withLines(lines, recipe);
  return new Sheet(plan, { amounts, grams, portions: base.values.portions, cooking });
}

/** A line that is the same but for its amount; none of nothing can be had so many times. */
function placeIn(
  texts: readonly string[],
  grams: readonly Exact[],
  line: PlanLine,
  own: Exact,
): number | undefined {
  const place = texts.indexOf(textOf(line));
  const written = grams[place];
  return written && (isZero(written) ? isZero(own) : true) ? place : undefined;
}

/** Everything of a line but its amount: what it says of itself, and what it brings. */
function textOf({ line, source, least, most }: PlanLine): string {
  const { amount: _, ...rest } = line;
  const figures = [source.scale, ...source.values].map((value) => String(value)).join(" ");
  return JSON.stringify([rest, [least, most].map((end) => end?.toJSON()), figures]);
}

function keyFor(key: string, taken: ReadonlySet<string>): string {
  for (let n = 1; ; n += 1) {
    const own = n === 1 ? key : `${key}-${n}`;
    if (!taken.has(own)) return own;
  }
}
