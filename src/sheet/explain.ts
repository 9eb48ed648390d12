import { type ComponentId, component, components } from "../food/components.ts";
import { readFigure } from "../food/composition.ts";
import { type FigureKind, isRanged, type ReadFigure } from "../food/figure.ts";
import type { FoodInput } from "../food/food.ts";
import type { RetentionInput } from "../food/retention.ts";
import type { Amount } from "../measure/amount.ts";
import { formatAmount } from "../measure/format.ts";
import { showFigure, showPercent } from "../measure/showFigure.ts";
import { exactText } from "../number/digits.ts";
import { fault, kindOf, quote } from "../number/error.ts";
import { type Exact, equals, isZero, ONE, over, times, ZERO } from "../number/exact.ts";
import type { Conversion } from "../recipe/resolve.ts";
import { cookingSteps, yieldSteps } from "./explainCooking.ts";
import { Explanation } from "./explanation.ts";
import { checkSheet } from "./given.ts";
import type { PlanLine } from "./plan.ts";
import type { Sheet } from "./sheet.ts";
import type { Source } from "./source.ts";
import { endsText, stated } from "./stated.ts";
import { constantTally, type Tally } from "./tally.ts";
import { driedNote } from "./water.ts";

/** What is to be explained: one line, the batch, or one portion. */
export type Where = { readonly line: string } | "total" | "portion";

/**
 * Explains a figure down to each line, its conversion, and the published row with its source.
 *
 * Throws `component-unknown`, `line-unknown`, `sheet-malformed` for what is no sheet.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 2, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const why = explain(porridge, "protein", "portion");
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
  checkSheet(s);
  component(id);
  checkWhere(where);
  if (typeof where === "object") return lineExplained(s, s.plan.indexOf(where.line), id, { share: ONE });
  const share = where === "portion" ? over(ONE, s.values.portions) : ONE;
  const among = where === "portion" ? [`shared among ${exactText(s.values.portions)} portions`] : [];
  const { name, unit } = components[id];
  const lines = s.plan.lines.map((_, i) => lineExplained(s, i, id, { share, among }));
  const tally = s.total(id).share(share);
  return new Explanation({
    label: `${name} of ${where === "portion" ? "one portion" : "the batch"} of ${s.name}`,
    component: id,
    tally,
    steps: [
      ...(tally.ranged.length > 0 ? [rangedStep(tally, unit)] : []),
      ...(tally.missing.length > 0 ? [`silent: ${tally.missing.join(", ")}`] : []),
    ],
    from: [...lines, ...waterChange(s, id, share)],
  });
}

/** The sums below are of middle figures; what they can come to is said beside them. */
function rangedStep(total: Tally, unit: string): string {
  const ends = endsText(total, { unit });
  return `${ends}: the figure is a middle one, since a range is published for ${total.ranged.join(", ")}`;
}

export function checkWhere(where: unknown): void {
  const line = typeof where === "object" && where !== null && "line" in where;
  if (where === "total" || where === "portion" || line) return;
  const message = `${typeof where === "string" ? quote(where) : kindOf(where)} is nothing that can be explained`;
  throw fault("line-unknown", message, 'write "total", "portion", or { line: "its key" }', ["where"]);
}

/** Water that cooking takes up or gives off stands beside the lines. */
function waterChange(s: Sheet, id: ComponentId, share: Exact): Explanation[] {
  const { change } = s.water;
  const { raw, cooked } = s.masses;
  if (id !== "water" || isZero(change)) return [];
  const masses = `${gramsText(raw)} as weighed in, ${gramsText(cooked)} as eaten`;
  const [step] = driedNote(s.water);
  return [
    new Explanation({
      label: change.n > 0n ? "taken up in cooking" : "given off in cooking",
      component: id,
      tally: constantTally(times(change, share), "g"),
      steps: [step ?? `${masses}: the change is taken to be water`, ...yieldSteps(s)],
    }),
  ];
}

/** Where a line stands: what share of it counts, and what is around it. */
interface Place {
  readonly share: Exact;
  /** How that share came to be. */
  readonly among?: readonly string[];
  /** What is said of retention on the lines around a nested recipe's lines, from the nearest outwards. */
  readonly around?: readonly RetentionInput[];
  /** Keys of the lines around it, each with a stroke behind it. */
  readonly path?: string;
}

function lineExplained(s: Sheet, i: number, id: ComponentId, place: Place): Explanation {
  const { share, among = [], around = [], path = "" } = place;
  const planned = s.plan.lines[i] as PlanLine;
  const amount = s.values.amounts[i] as Amount;
  const { line, source } = planned;
  const grams = s.values.grams[i] ?? ZERO;
  const measures = s.origin.measures;
  const own = {
    label: `${line.key}: ${stated(source.name, source.state)}`,
    line: `${path}${line.key}`,
    food: source.food?.input.id,
    component: id,
    tally: s.cell(line.key, id).share(share),
    grams: times(grams, share),
  };
  const steps = [
    `${formatAmount(amount, measures === undefined ? {} : { measures })} written`,
    ...conversionSteps(planned, amount, grams),
  ];
  const cooked =
    line.retention === undefined || source.left.size === 0 ? around : [line.retention, ...around];
  if (source.asEaten) {
    const within = { share: times(grams, share), around: cooked, path: `${own.line}/` };
    const from = withinNested(planned, id, within);
    return new Explanation({ ...own, steps: [...steps, ...among], from });
  }
  const said = [...figureSteps(source, id), ...cookingSteps(source, id, cooked, s.plan.foods)];
  const input = source.food?.input;
  const published = input && (ownSource(input, id) ?? input.source);
  return new Explanation({ ...own, source: published, steps: [...steps, ...said, ...among] });
}

/** A nested recipe's lines, each by its share of the grams that count of it. */
function withinNested({ source }: PlanLine, id: ComponentId, place: Omit<Place, "among">): Explanation[] {
  const { asEaten, left } = source;
  if (!asEaten) return [];
  const { cooked } = asEaten.masses;
  const water = (id === "water" && left.get(id)) || ONE;
  const kept = equals(water, ONE) ? [] : [`${showPercent(water)} of its water left after cooking`];
  const share = isZero(cooked) ? ZERO : times(over(place.share, cooked), water);
  const among = [...kept, `a share of ${asEaten.name}`];
  return [
    ...asEaten.plan.lines.map((_, i) => lineExplained(asEaten, i, id, { ...place, share, among })),
    ...waterChange(asEaten, id, share),
  ];
}

function conversionSteps({ reader, line }: PlanLine, amount: Amount, grams: Exact): string[] {
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
  const from = saidOf(figure, food, id);
  if (kind === "missing") return [`nothing is known of it in ${food.source}`];
  if (kind === "trace") return [`a trace, counted as none: ${from}`];
  if (kind === "below")
    return [`below ${showFigure(high ?? ZERO, { unit })} in 100 g, counted as none: ${from}`];
  const how = kind === "borrowed" ? "borrowed from " : isReckoned(kind) ? `${kind}: ` : "";
  const ends = isRanged(figure) ? `, from ${exactFigure(low ?? value)} to ${exactFigure(high ?? value)}` : "";
  return [`${exactFigure(value)} ${unit} in 100 g${ends}: ${how}${from}`];
}

function isReckoned(kind: FigureKind): boolean {
  return kind === "borrowed" || kind === "calculated" || kind === "derived";
}

/** What is said of how a figure came to be, and whose it is. */
function saidOf({ kind, note, formula }: ReadFigure, food: FoodInput, id: ComponentId): string {
  if (formula) return `${note ?? formula.formula} (${formula.source}), from figures of ${food.source}`;
  const own = ownSource(food, id) === undefined ? `: ${food.source}` : "";
  return isReckoned(kind) ? `${note ?? ""}${own}` : (note ?? food.source);
}

/** Whom a figure itself names as its source; nothing where that is the food's own. */
function ownSource(food: FoodInput, id: ComponentId): string | undefined {
  const given = Object.hasOwn(food.per100g, id) ? food.per100g[id] : undefined;
  return typeof given === "object" && "source" in given ? given.source : undefined;
}

function exactFigure(value: Exact): string {
  return showFigure(value, { significant: 6 });
}

function gramsText(grams: Exact): string {
  return showFigure(grams, { significant: 4, unit: "g" });
}
