import { type ComponentId, component, components } from "../food/components.ts";
import { readFigure } from "../food/composition.ts";
import { isRanged, type ReadFigure } from "../food/figure.ts";
import type { FoodInput } from "../food/food.ts";
import type { RetentionInput } from "../food/retention.ts";
import { formatAmount } from "../measure/format.ts";
import { fault, kindOf, quote } from "../number/error.ts";
import { equals, type Fraction, isZero, ONE, over, times, toText, ZERO } from "../number/fraction.ts";
import type { Conversion } from "../recipe/resolve.ts";
import { figure, showFigure, showPercent } from "../table/figure.ts";
import { Shown } from "../table/shown.ts";
import { type Table, table } from "../table/table.ts";
import { cookingSteps } from "./explainCooking.ts";
import type { PlanLine } from "./plan.ts";
import type { Sheet } from "./sheet.ts";
import { endsFigure, stated } from "./show.ts";
import type { Source } from "./source.ts";
import type { Tally } from "./tally.ts";
import { driedNote } from "./water.ts";

/** What is to be explained: one line, the batch, or one portion. */
export type Where = { readonly line: string } | "total" | "portion";

/**
 * Why a figure is what it is: a tree in which every value is the sum of those below it, so that the
 * leaves add up to the root, literally. Plain data; shown as an indented table.
 */
export class Explanation extends Shown {
  readonly label: string;
  readonly exact: Fraction;
  readonly unit: string;
  /** How the figure came to be, step by step. */
  readonly steps: readonly string[];
  readonly from: readonly Explanation[];

  /** @internal */
  constructor(
    label: string,
    exact: Fraction,
    unit: string,
    steps: readonly string[],
    from: readonly Explanation[] = [],
  ) {
    super();
    this.label = label;
    this.exact = exact;
    this.unit = unit;
    this.steps = steps;
    this.from = from;
  }

  /** The figures that nothing stands below. */
  get leaves(): readonly Explanation[] {
    return this.from.length === 0 ? [this] : this.from.flatMap((each) => each.leaves);
  }

  override toTables(): readonly Table[] {
    const rows = this.#rows(0);
    return [
      table({
        title: this.label,
        columns: [
          { key: "what", heading: "What" },
          { key: "value", heading: "Value", unit: this.unit, align: "end" },
          { key: "steps", heading: "Because" },
        ],
        rows,
      }),
    ];
  }

  #rows(depth: number): [string, ReturnType<typeof figure>, string][] {
    const own: [string, ReturnType<typeof figure>, string] = [
      `${"· ".repeat(depth)}${this.label}`,
      figure(this.exact),
      this.steps.join("; "),
    ];
    return [own, ...this.from.flatMap((each) => each.#rows(depth + 1))];
  }
}

/**
 * Explains a figure down to each line, its conversion, and the published row with its source.
 *
 * Throws `component-unknown`, `line-unknown`.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 2, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const why = porridge.explain("protein", "portion");
 * console.log(why.leaves[0].steps);
 * ```
 * ```text
 * [
 *   '100 g written',
 *   '100 g of edible portion',
 *   '13.15 g in 100 g: USDA SR28, NDB 08120',
 *   'shared among 2 portions'
 * ]
 * ```
 */
export function explain(s: Sheet, id: ComponentId, where: Where): Explanation {
  component(id);
  checkWhere(where);
  if (typeof where === "object") return lineExplained(s, s.plan.indexOf(where.line), id, ONE, []);
  const share = where === "portion" ? over(ONE, s.values.portions) : ONE;
  const among = where === "portion" ? [`shared among ${toText(s.values.portions)} portions`] : [];
  const { name, unit } = components[id];
  const lines = s.plan.lines.map((_, i) => lineExplained(s, i, id, share, among));
  const total = s.total(id);
  const label = `${name} of ${where === "portion" ? "one portion" : "the batch"} of ${s.name}`;
  const said = [
    ...(total.ranged.length > 0 ? [rangedStep(total.share(share), unit)] : []),
    ...(total.missing.length > 0 ? [`${boundWord(total)}: silent: ${total.missing.join(", ")}`] : []),
  ];
  return new Explanation(label, times(total.exact, share), unit, said, [
    ...lines,
    ...waterChange(s, id, share),
  ]);
}

/** The sums below are of middle figures; what they can come to is said beside them. */
function rangedStep(total: Tally, unit: string): string {
  const ends = endsFigure(total, { unit }).text;
  return `${ends}: the figure is a middle one, since a range is published for ${total.ranged.join(", ")}`;
}

function boundWord({ bound }: Tally): string {
  return bound === "between" ? "at-least" : bound;
}

function checkWhere(where: unknown): void {
  const line = typeof where === "object" && where !== null && "line" in where;
  if (where === "total" || where === "portion" || line) return;
  const message = `${typeof where === "string" ? quote(where) : kindOf(where)} is nothing that can be explained`;
  throw fault("line-unknown", message, 'write "total", "portion", or { line: "its key" }', ["where"]);
}

/** Water that cooking takes up or gives off stands beside the lines. */
function waterChange(s: Sheet, id: ComponentId, share: Fraction): Explanation[] {
  const { change } = s.water;
  const { raw, cooked } = s.masses;
  if (id !== "water" || isZero(change)) return [];
  const masses = `${gramsText(raw)} as weighed in, ${gramsText(cooked)} as eaten`;
  const [step] = driedNote(s.water);
  return [
    new Explanation(
      change.n > 0n ? "taken up in cooking" : "given off in cooking",
      times(change, share),
      "g",
      [step ?? `${masses}: the change is taken to be water`],
    ),
  ];
}

/** What is said of retention on the lines around a nested recipe's lines, from the nearest outwards. */
type Around = readonly RetentionInput[];

function lineExplained(
  s: Sheet,
  i: number,
  id: ComponentId,
  share: Fraction,
  among: readonly string[],
  around: Around = [],
): Explanation {
  const planned = s.plan.lines[i];
  const amount = s.values.amounts[i];
  const grams = s.values.grams[i] ?? ZERO;
  const { unit } = components[id];
  if (!planned || !amount) return new Explanation("", ZERO, unit, []);
  const { line, source } = planned;
  const value = times(s.cell(line.key, id).exact, share);
  const measures = s.origin.measures;
  const steps = [
    `${formatAmount(amount, measures === undefined ? {} : { measures })} written`,
    ...conversionSteps(planned, grams, s, i),
  ];
  const label = `${line.key}: ${stated(source.name, source.state)}`;
  const cooked =
    line.retention === undefined || source.left.size === 0 ? around : [line.retention, ...around];
  if (!source.asEaten) {
    const said = [...figureSteps(source, id), ...cookingSteps(source, id, cooked, s.plan.foods)];
    return new Explanation(label, value, unit, [...steps, ...said, ...among]);
  }
  return new Explanation(label, value, unit, [...steps, ...among], withinNested(planned, id, value, cooked));
}

/** A nested recipe's lines, each by its share of what the line brings. */
function withinNested({ source }: PlanLine, id: ComponentId, value: Fraction, cooked: Around): Explanation[] {
  const { asEaten, left } = source;
  if (!asEaten) return [];
  const whole = asEaten.total(id).exact;
  const share = isZero(whole) ? ZERO : over(value, whole);
  const water = id === "water" ? left.get(id) : undefined;
  const kept = water && !equals(water, ONE) ? [`${showPercent(water)} of its water left after cooking`] : [];
  const steps = [...kept, `a share of ${asEaten.name}`];
  return [
    ...asEaten.plan.lines.map((_, i) => lineExplained(asEaten, i, id, share, steps, cooked)),
    ...waterChange(asEaten, id, share),
  ];
}

function conversionSteps({ reader, line }: PlanLine, grams: Fraction, s: Sheet, i: number): string[] {
  const amount = s.values.amounts[i];
  if (!amount) return [];
  const { by } = reader.toGrams(amount);
  const part = line.weighed === "as-purchased" ? " after peel, bone and core" : " of edible portion";
  return [...byText(by), `${gramsText(grams)}${part}`];
}

function byText(by: Conversion["by"]): string[] {
  if (by.kind === "mass") return [];
  if (by.kind === "measure") return [`1 ${by.measure} is ${gramsText(by.grams)}`];
  return [`${showFigure(by.gramsPerMl, { significant: 4 })} g to the ml, by ${by.from}`];
}

/** The published figure, and where it comes from. */
function figureSteps({ food: of }: Source, id: ComponentId): string[] {
  const food = of?.input;
  if (!food) return [];
  const figure = readFigure(food, id);
  const { kind, value, low, high } = figure;
  const { unit } = components[id];
  const from = kind === "derived" ? derivedFrom(figure, food, id) : (figure.note ?? food.source);
  if (kind === "missing") return [`nothing is known of it in ${food.source}`];
  if (kind === "trace") return [`a trace, counted as none: ${from}`];
  if (kind === "below")
    return [`below ${showFigure(high ?? ZERO, { unit })} in 100 g, counted as none: ${from}`];
  const how = kind === "known" ? "" : kind === "borrowed" ? "borrowed from " : `${kind}: `;
  const ends = isRanged(figure) ? `, from ${exactFigure(low ?? value)} to ${exactFigure(high ?? value)}` : "";
  return [`${exactFigure(value)} ${unit} in 100 g${ends}: ${how}${from}`];
}

/** The formula or published quantity behind a derived figure, and whose it is. */
function derivedFrom({ note, formula }: ReadFigure, food: FoodInput, id: ComponentId): string {
  if (formula) return `${note ?? formula.formula} (${formula.source}), from figures of ${food.source}`;
  const given = Object.hasOwn(food.per100g, id) ? food.per100g[id] : undefined;
  const says = typeof given === "object" && "source" in given && given.source !== undefined;
  return says ? (note ?? "") : `${note ?? ""}: ${food.source}`;
}

function exactFigure(value: Fraction): string {
  return showFigure(value, { significant: 6 });
}

function gramsText(grams: Fraction): string {
  return showFigure(grams, { significant: 4, unit: "g" });
}
