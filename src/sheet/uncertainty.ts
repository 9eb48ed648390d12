import { flag, number, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import { byName, choice, fields, leaf, once, optional, type Schema } from "../document/schema.ts";
import { type ComponentId, component, components } from "../food/components.ts";
import { type EnergyPart, termsOf } from "../food/energy.ts";
import { fault } from "../number/error.ts";
import {
  absolute,
  type Exact,
  fraction,
  greatest,
  isZero,
  minus,
  negate,
  ONE,
  over,
  plus,
  sum,
  times,
  type Value,
  ZERO,
} from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { rootUp } from "../number/root.ts";
import { type EnergyBy, energySystem, type NamedSystem } from "./energy.ts";
import { energySpread } from "./energySpread.ts";
import { checkWhere, type Where } from "./explain.ts";
import { checkSheet } from "./given.ts";
import { Sheet } from "./sheet.ts";
import { type Spread, type SpreadTerm, spreadOf, type Weighing } from "./spreadOf.ts";
import { type LineUncertainty, Uncertainty } from "./uncertain.ts";
import { unitOfQuotient } from "./unit.ts";

/**
 * What is asked about: a component; the ratio of two, each in its own unit; energy by a factor system, in kcal; or
 * the share of that energy which a constituent brings, 0 to 1, by general Atwater factors unless told.
 */
export type UncertainSubject =
  | ComponentId
  | { readonly ratioOf: readonly [ComponentId, ComponentId] }
  | { readonly energyBy: EnergyBy }
  | { readonly energyShareOf: EnergyPart; readonly system?: EnergyBy };

/** Where: as {@link explain}, or the share that a line has of the batch. */
export type UncertainWhere = Where | { readonly line: string; readonly shareOf: "total" };

/**
 * How an amount errs: `step`, the scale's in grams, within half of which it lies anywhere; or `spread`, the
 * standard deviation of what a spoon takes, as a share of it.
 */
export type WeighingInput = { readonly step: Value } | { readonly spread: Value };

/** Options of {@link uncertainty}. */
export interface UncertaintyOptions {
  /** A sheet to be taken off: of a difference, what both rest on cancels. */
  readonly less?: Sheet;
  /** Takes everything to err to the same side at once, different foods too. */
  readonly worst?: boolean;
  /** How many standard uncertainties `low` and `high` lie off: 2 unless told, about 95 in 100. */
  readonly coverage?: Value;
  /** How amounts err, of every line or by line; of lines that are not named, not at all. */
  readonly weighing?: WeighingInput | { readonly [line: string]: WeighingInput };
}

/**
 * Tells how sure a figure is, from the standard errors that a food table gives, the ends of published
 * ranges, what is known of retention factors, and how amounts err where that is told.
 *
 * To first order: each figure that is not known sharply counts by how the result moves with it; all lines
 * of one food move together, different foods and different components apart. Variances are exact; standard
 * deviations are rounded up to six digits. Source of the method: JCGM 100:2008, Guide to the expression of
 * uncertainty in measurement, 5.1.2 (equation 10) and 5.2.2 (equation 13); ratios by the same, so that what
 * stands above and below the line cancels as far as it is the same. Lines that bring something and say
 * nothing of how sure it is are named in `unsaid`; what they err by is not in it.
 *
 * Energy by a factor system moves with the constituents that it is reckoned from, and so does a share of it.
 *
 * Throws `component-unknown`, `line-unknown`, `sheet-malformed`, `energy-system-unknown` (also for a system whose
 * factors differ from food to food), and `uncertainty-of-nothing` for a ratio to nothing.
 *
 * @example
 * ```ts
 * const foods = foodTable([
 *   { id: "oats", name: "Oats", source: "own analysis", per100g: { iron: { value: "4", error: "0.2", count: 5 } } },
 * ]);
 * const porridge = sheet({ name: "Porridge", portions: 1, lines: [{ food: "oats", amount: "50 g" }] }, foods);
 * const iron = uncertainty(porridge, "iron", "portion");
 * console.log(`${iron.standard} mg; ${iron}`); // => 0.1 mg; iron of one portion of Porridge: about 2 mg, 1.8 to 2.2 mg
 * ```
 */
export function uncertainty(
  s: Sheet,
  of: UncertainSubject,
  where: UncertainWhere,
  how: UncertaintyOptions = {},
): Uncertainty {
  checkSheet(s);
  const options = read(optionsSchema(), how, "sheet-malformed");
  const subject = subjectOf(of);
  checkWhere(where);
  const { weighing } = options;
  if (weighing && !isOne(weighing)) for (const line of Object.keys(weighing)) s.plan.indexOf(line);
  const told: Asked = { where, weighing: weighingOf(weighing) };
  const own = quantityOf(s, subject, told);
  const { less } = options;
  const all = less ? without(own, quantityOf(less, subject, told)) : own;
  return made(all, {
    label: `${nameOf(subject)} of ${placeOf(where)} of ${s.name}${less ? `, less ${less.name}` : ""}`,
    unit: isShare(where) ? "" : unitOf(subject),
    floor: less ? undefined : ZERO,
    coverage: options.coverage ?? fraction(2n),
    worst: options.worst ?? false,
  });
}

interface Asked {
  readonly where: UncertainWhere;
  readonly weighing: (line: string) => Weighing | undefined;
}

/** A value to first order. */
interface Quantity extends Spread {
  readonly value: Exact;
}

/** A component, energy by a system or a part of it, over another of them where there is one. */
type Term = ComponentId | { readonly part: EnergyPart | undefined; readonly by: NamedSystem };
type Subject = readonly [top: Term, bottom?: Term];

function quantityOf(s: Sheet, [top, bottom]: Subject, told: Asked): Quantity {
  const above = sumOf(s, top, told, told.where);
  if (isShare(told.where)) return ratio(above, sumOf(s, top, told, "total"));
  return bottom === undefined ? above : ratio(above, sumOf(s, bottom, told, told.where));
}

function sumOf(s: Sheet, term: Term, { weighing }: Asked, where: Where): Quantity {
  const line = typeof where === "object" ? where.line : undefined;
  if (line !== undefined) s.plan.indexOf(line);
  const { value, terms, unsaid } =
    typeof term === "string"
      ? {
          ...spreadOf(s, term, weighing, line),
          value: line === undefined ? s.total(term).value : s.cell(line, term).value,
        }
      : energySpread(s, term.by.system, term.part, weighing, line);
  const share = where === "portion" ? over(ONE, s.values.portions) : ONE;
  return {
    value: times(value, share),
    unsaid,
    terms: terms.map((t) => ({ ...t, slope: times(t.slope, share) })),
  };
}

/** a/b moves by da/b − a·db/b². */
function ratio(a: Quantity, b: Quantity): Quantity {
  if (isZero(b.value))
    throw fault("uncertainty-of-nothing", "a ratio to nothing", "ask for a component that there is some of");
  const value = over(a.value, b.value);
  const by = (t: SpreadTerm, slope: Exact): SpreadTerm => ({
    ...t,
    slope: over(times(t.slope, slope), b.value),
  });
  return {
    value,
    terms: [...a.terms.map((t) => by(t, ONE)), ...b.terms.map((t) => by(t, negate(value)))],
    unsaid: [...new Set([...a.unsaid, ...b.unsaid])],
  };
}

function without(a: Quantity, b: Quantity): Quantity {
  return {
    value: minus(a.value, b.value),
    terms: [...a.terms, ...b.terms.map((t) => ({ ...t, slope: negate(t.slope) }))],
    unsaid: [...new Set([...a.unsaid, ...b.unsaid])],
  };
}

interface Made {
  readonly label: string;
  readonly unit: string;
  readonly floor: Exact | undefined;
  readonly coverage: Exact;
  readonly worst: boolean;
}

function made(
  { value, terms, unsaid }: Quantity,
  { label, unit, floor, coverage, worst }: Made,
): Uncertainty {
  const together = new Map<string, { slope: Exact; variance: Exact }>();
  for (const { of, slope, variance } of terms)
    together.set(of, { slope: plus(together.get(of)?.slope ?? ZERO, slope), variance });
  const apart = sum([...together.values()].map((t) => times(times(t.slope, t.slope), t.variance)));
  const all = sum([...together.values()].map((t) => times(absolute(t.slope), rootUp(t.variance))));
  const variance = worst ? times(all, all) : apart;
  const standard = worst ? all : rootUp(apart);
  const [off, worstOff] = [times(coverage, standard), times(coverage, all)];
  const down = (by: Exact): Exact => (floor ? greatest(floor, minus(value, by)) : minus(value, by));
  return new Uncertainty({
    ...{ label, unit, value, variance, standard, coverage, unsaid },
    ...{ low: down(off), high: plus(value, off), worstLow: down(worstOff), worstHigh: plus(value, worstOff) },
    by: byLine(terms, together, apart),
  });
}

/** What each line has in the variance: how it moves with each thing, times how all lines do. They add up to it. */
function byLine(
  terms: readonly SpreadTerm[],
  together: ReadonlyMap<string, { readonly slope: Exact; readonly variance: Exact }>,
  variance: Exact,
): readonly LineUncertainty[] {
  const lines = new Map<string, Exact>();
  for (const { of, line, slope } of terms) {
    const all = together.get(of);
    if (!all) continue;
    lines.set(line, plus(lines.get(line) ?? ZERO, times(times(slope, all.slope), all.variance)));
  }
  return [...lines]
    .map(([line, own]) => ({ line, variance: own, share: isZero(variance) ? ZERO : over(own, variance) }))
    .sort((a, b) => compareRatios(b.variance, a.variance));
}

function isShare(where: UncertainWhere): where is { readonly line: string; readonly shareOf: "total" } {
  return typeof where === "object" && "shareOf" in where;
}

function placeOf(where: UncertainWhere): string {
  if (typeof where !== "object") return where === "portion" ? "one portion" : "the batch";
  return isShare(where) ? `${where.line}, as a share of the batch` : where.line;
}

function subjectOf(of: UncertainSubject): Subject {
  if (isRecord(of) && ("energyBy" in of || "energyShareOf" in of)) {
    const by = energySystem(("energyBy" in of ? of.energyBy : of.system) ?? "atwater-general");
    if (by.system.factors === "food")
      throw fault(
        "energy-system-unknown",
        "a system whose factors differ from food to food",
        `take one that has the same for all, as "atwater-general"`,
      );
    const energy: Term = { part: undefined, by };
    if ("energyBy" in of) return [energy];
    const part = read(word(termsOf(by.system).map(([name]) => name)), of.energyShareOf, "sheet-malformed");
    return [{ part, by }, energy];
  }
  const ids: readonly unknown[] =
    isRecord(of) && Array.isArray(of.ratioOf) ? [of.ratioOf[0], of.ratioOf[1]] : [of];
  return ids.map((id) => component(id as ComponentId).id as ComponentId) as [ComponentId];
}

function nameOf([top, bottom]: Subject): string {
  const name = (term: Term): string =>
    typeof term === "string"
      ? components[term].name
      : `${term.part === undefined ? "energy" : `energy from ${term.part}`} by ${term.by.system.name}`;
  if (typeof top === "object" && bottom) return `share of ${name(top)}`;
  return bottom ? `${name(top)} to ${name(bottom)}` : name(top);
}

function unitOf([top, bottom]: Subject): string {
  const unit = (term: Term): string => (typeof term === "string" ? components[term].unit : "kcal");
  if (!bottom) return unit(top);
  return typeof top === "object" ? "" : unitOfQuotient(unit(top), unit(bottom));
}

type ReadWeighing = Weighing | { readonly [line: string]: Weighing };

function weighingOf(given: ReadWeighing | undefined): (line: string) => Weighing | undefined {
  if (given === undefined) return () => undefined;
  if (isOne(given)) return () => given;
  return (line) => (Object.hasOwn(given, line) ? given[line] : undefined);
}

/** A line may be called step or spread: what stands there is then no number. */
function isOne(given: object): given is Weighing {
  return ["step", "spread"].some((key) => Object.hasOwn(given, key) && !isWeighing(Reflect.get(given, key)));
}

function isWeighing(given: unknown): boolean {
  return isRecord(given) && ("step" in given || "spread" in given);
}

interface ReadOptions extends Omit<UncertaintyOptions, "coverage" | "weighing"> {
  readonly coverage?: Exact;
  readonly weighing?: ReadWeighing;
}

const optionsSchema: () => Schema<ReadOptions> = /* @__PURE__ */ once(() => {
  const step = fields<{ readonly step: Exact }>({ step: number({ from: 0 }) });
  const spread = fields<{ readonly spread: Exact }>({ spread: number({ from: 0 }) });
  const one = choice<Weighing>(
    [step, spread],
    (given) => (isRecord(given) ? ("spread" in given ? spread : step) : undefined),
    'how an amount errs: { step: "1" } in grams, or { spread: "0.1" }',
  );
  const each: Schema<ReadWeighing> = byName(one);
  return fields<ReadOptions>({
    less: optional(
      leaf(
        "a sheet",
        {},
        (given): given is Sheet => given instanceof Sheet,
        (given) => given,
      ),
    ),
    worst: optional(flag()),
    coverage: optional(number({ above: 0 })),
    weighing: optional(
      choice<ReadWeighing>(
        [one, each],
        (given) => (isRecord(given) ? (isOne(given) ? one : each) : undefined),
        "how amounts err",
      ),
    ),
  });
});
