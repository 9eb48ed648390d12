import { word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { fields, once, optional, type Schema } from "../document/schema.ts";
import { type ComponentId, component, components } from "../food/components.ts";
import { timesAmount } from "../measure/amount.ts";
import { type Exact, fraction, isZero, minus, ONE, over, plus, times, ZERO } from "../number/exact.ts";
import { compareRatios, toFloat } from "../number/ratio.ts";
import { Result } from "../number/result.ts";
import { checkSheet } from "./given.ts";
import type { PlanLine } from "./plan.ts";
import type { Sheet } from "./sheet.ts";
import { stated } from "./stated.ts";
import type { Tally } from "./tally.ts";
import { impliedYield, lineYield } from "./values.ts";

/** Options of {@link influence}. */
export interface InfluenceOptions {
  /** One portion as eaten, unless 100 g are told. */
  readonly where?: "portion" | "per100g";
}

/** What one line has to say in a figure. Changes are in the component's unit, above 0 for more. */
export interface LineInfluence {
  readonly line: string;
  readonly name: string;
  /** Its amount in one portion, or in 100 g. */
  readonly brings: Tally;
  /** Its share, 0 to 1, of what is known; undefined where nothing is known of it, or of any line. */
  readonly share: Exact | undefined;
  /** What the figure changes by where there is 10 % more of the line. */
  readonly byAmount: Exact | undefined;
  /** Where its food's figure is 10 % higher. */
  readonly byFigure: Exact | undefined;
  /** Where 10 % more of it is left after cooking: mass, taken to be water. */
  readonly byYield: Exact | undefined;
  /** Grams of it for the batch, by which lines of which nothing is known are ranked. */
  readonly grams: Exact;
}

/** What a plot of Observable Plot is made of: `Plot.plot({ ...options, marks: [Plot.barX(data, channels)] })`. */
export interface BarPlot {
  readonly data: readonly { readonly line: string; readonly percent: number }[];
  readonly channels: {
    readonly x: "percent";
    readonly y: "line";
    readonly sort: { readonly y: "-x" };
    readonly tip: true;
  };
  readonly options: {
    readonly marginLeft: number;
    readonly x: { readonly label: string };
    readonly y: { readonly label: null };
  };
}

/** The lines of a sheet by their say in one figure, the largest first; of which nothing is known, by mass. */
export class Influence extends Result {
  readonly is = "steelyard/influence@1";
  /** Of the sheet. */
  readonly name: string;
  readonly component: ComponentId;
  readonly unit: string;
  readonly where: "portion" | "per100g";
  readonly tally: Tally;
  readonly lines: readonly LineInfluence[];

  /** @internal Use {@link influence}. */
  constructor(s: Sheet, id: ComponentId, where: "portion" | "per100g", lines: readonly LineInfluence[]) {
    super();
    this.name = s.name;
    this.component = id;
    this.unit = components[id].unit;
    this.where = where;
    this.tally = where === "portion" ? s.portion(id) : s.per100g(id);
    this.lines = lines;
  }

  /** Each line's share in per cent, as a plotting library takes it. */
  get plot(): BarPlot {
    const known = this.lines.flatMap(({ line, share }) =>
      share ? [{ line, percent: toFloat(times(share, fraction(100n))) }] : [],
    );
    const longest = Math.max(0, ...known.map(({ line }) => line.length));
    return {
      data: known,
      channels: { x: "percent", y: "line", sort: { y: "-x" }, tip: true },
      options: {
        marginLeft: 30 + 7 * longest,
        x: { label: `% of the ${components[this.component].name.toLowerCase()} that is known` },
        y: { label: null },
      },
    };
  }

  override toString(): string {
    const [first] = this.lines;
    const most = first?.share ? `, most of it from ${first.line}` : "";
    return `${components[this.component].name} of ${this.name}: ${this.lines.length} lines${most}`;
  }
}

/**
 * Tells how much of a figure each line has to answer for: its share, and what 10 % more of its amount, of its
 * food's figure or of what cooking leaves of its mass would change, all else staying as it is. Where to weigh
 * with care, and which figure to look up again. Exact: by amount and by yield the sheet is worked out anew.
 *
 * Throws `component-unknown`, `sheet-malformed` for what is no sheet or an option that there is not, and
 * `sheet-empty` for 100 g of nothing.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   {
 *     name: "Porridge",
 *     portions: 1,
 *     lines: [
 *       { key: "milk", food: "milk-whole", amount: "200 g" },
 *       { key: "oats", food: "oats-rolled-dry", amount: "60 g" },
 *     ],
 *   },
 *   starterFoods,
 * );
 * const [oats] = influence(porridge, "iron").lines;
 * console.log(`${oats.line}: ${oats.share?.times(100).toFixed(1)} %`); // => oats: 97.7 %
 * ```
 */
export function influence(s: Sheet, id: ComponentId, how: InfluenceOptions = {}): Influence {
  checkSheet(s);
  component(id);
  const { where = "portion" } = read(howSchema(), how, "sheet-malformed", ["how"]);
  const of = (each: Sheet): Exact => (where === "portion" ? each.portion(id) : each.per100g(id)).value;
  const now = of(s);
  const part = where === "portion" ? over(ONE, s.values.portions) : over(fraction(100n), s.masses.cooked);
  const lines = s.plan.lines.map((each, i): LineInfluence => {
    const brings = s.cellAt(i, id).share(part);
    const grams = s.values.grams[i] ?? ZERO;
    const isKnown = brings.bound !== "unknown";
    const total = s.brought(id).share(part).value;
    return {
      line: each.line.key,
      name: stated(each.source.name, each.source.state),
      brings,
      share: isKnown && !isZero(total) ? over(brings.value, total) : undefined,
      byAmount: isKnown ? minus(of(withMore(s, i)), now) : undefined,
      byFigure: isKnown ? times(brings.value, TENTH) : undefined,
      byYield: minus(withLeft(s, each, i, id, where), now),
      grams,
    };
  });
  return new Influence(s, id, where, lines.sort(byShare));
}

const howSchema: () => Schema<InfluenceOptions> = /* @__PURE__ */ once(() =>
  fields<InfluenceOptions>({ where: optional(word(["portion", "per100g"])) }),
);

const TENTH: Exact = /* @__PURE__ */ fraction(1n, 10n);
const MORE: Exact = /* @__PURE__ */ fraction(11n, 10n);

function byShare(a: LineInfluence, b: LineInfluence): number {
  if (a.share && b.share) return compareRatios(b.share, a.share);
  return a.share ? -1 : b.share ? 1 : compareRatios(b.grams, a.grams);
}

/** The sheet with a tenth more of one line, cooked as it is. */
function withMore(s: Sheet, i: number): Sheet {
  const { values } = s;
  const more = <T>(all: readonly T[], by: (one: T) => T): T[] =>
    all.map((each, k) => (k === i ? by(each) : each));
  return s.version({
    ...values,
    cooking: impliedYield(values.cooking, s.masses),
    amounts: more(values.amounts, (each) => timesAmount(each, MORE)),
    grams: more(values.grams, (each) => times(each, MORE)),
  });
}

/** The figure where a tenth more of the line's cooked mass is left, all of it water. */
function withLeft(
  s: Sheet,
  { line }: PlanLine,
  i: number,
  id: ComponentId,
  where: "portion" | "per100g",
): Exact {
  const { cooked } = s.masses;
  const yieldFactor = s.values.cooking.by === "lines" ? lineYield(s.plan, i) : s.masses.yieldFactor;
  const added = line.added === "cooking" ? times(times(s.values.grams[i] ?? ZERO, yieldFactor), TENTH) : ZERO;
  const total = id === "water" ? plus(s.total(id).value, added) : s.total(id).value;
  return where === "portion"
    ? over(total, s.values.portions)
    : over(times(total, fraction(100n)), plus(cooked, added));
}
