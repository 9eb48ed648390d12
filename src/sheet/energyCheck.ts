import { number } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { coded, fields, once, optional, type Schema } from "../document/schema.ts";
import type { ComponentId } from "../food/components.ts";
import { type EnergyPart, type EnergySystem, likelySystem, systemFor, termsOf } from "../food/energy.ts";
import type { ReadFigure } from "../food/figure.ts";
import {
  type Exact,
  exact,
  greatest,
  isZero,
  minus,
  ONE,
  over,
  sum,
  times,
  type Value,
  ZERO,
} from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { Result } from "../number/result.ts";
import { addUp, type EnergyBy, energyBy, lineEnergies, type NamedSystem } from "./energy.ts";
import { type EnergyInterval, gapBetween, reckon } from "./energyInterval.ts";
import { checkSheet } from "./given.ts";
import { componentIndex } from "./plan.ts";
import type { Sheet } from "./sheet.ts";
import type { Tally } from "./tally.ts";

/** Options of {@link energyCheck}. */
export interface EnergyCheckOptions {
  /** Factors for every line; unless told, each line's own, else those that its carbohydrate asks for. */
  readonly system?: EnergyBy;
  /** The share by which the two may differ: 0.05 unless told. */
  readonly tolerance?: Value;
  /** What they may always differ by, in kcal per 100 g, since tables round: 1 unless told. */
  readonly floor?: Value;
}

/** One line, or the whole batch. */
export interface EnergyCheckLine {
  /** Key of the line, `dish/line` in a nested recipe. */
  readonly key: string;
  readonly name: string;
  /** What the energy was computed by. */
  readonly system: string | undefined;
  /** As the food gives it, kcal in the batch. */
  readonly given: Tally;
  readonly computed: Tally;
  /** Computed less given, kcal; nothing where one of them is not known. */
  readonly difference: Exact | undefined;
  readonly verdict: "agrees" | "differs" | "unknown";
  /** Constituents that nothing is known of, and that count as nothing. */
  readonly silent: readonly EnergyPart[];
  /** Why there is no verdict, where there is none. */
  readonly why?: string;
}

/** Where energy as given and as computed part. */
export class EnergyCheck extends Result {
  readonly is = "steelyard/energy-check@1";
  readonly lines: readonly EnergyCheckLine[];
  /** Of all lines that have a verdict. */
  readonly total: { readonly given: Exact; readonly computed: Exact };
  /** Keys of the lines that differ. */
  readonly differing: readonly string[];
  /** Of the sheet. */
  readonly name: string;
  /** By how much the two may differ. */
  readonly limits: EnergyCheckLimits;

  /** @internal Use {@link energyCheck}. */
  constructor(name: string, lines: readonly EnergyCheckLine[], limits: EnergyCheckLimits) {
    super();
    const judged = lines.filter((line) => line.verdict !== "unknown");
    this.lines = lines;
    this.total = {
      given: sum(judged.map((line) => line.given.value)),
      computed: sum(judged.map((line) => line.computed.value)),
    };
    this.differing = lines.filter((line) => line.verdict === "differs").map((line) => line.key);
    this.name = name;
    this.limits = limits;
  }

  override toString(): string {
    const count = this.differing.length;
    return `${this.name}: energy given and computed ${count === 0 ? "differ in no line" : `differ in ${this.differing.join(", ")}`}`;
  }
}

/** By how much energy given and computed may differ. */
export interface EnergyCheckLimits {
  /** As a share of what is given. */
  readonly tolerance: Exact;
  /** kcal in 100 g. */
  readonly floor: Exact;
}

/**
 * Tells for each line whether the energy that its food gives is the one its constituents come to:
 * by the food's own factors where it has them, else by EU factors where it gives available
 * carbohydrate, else by general Atwater factors. Intervals of rounded figures are allowed for. The
 * verdict is of the food before cooking; the figures beside it are of the batch as eaten.
 *
 * Throws `energy-system-unknown` for a system that is none, `sheet-malformed` for what is no sheet and
 * for options that there are not, and the number codes for limits that are none.
 *
 * Source of the tolerance: FAO/INFOODS Guidelines for Checking Food Composition Data (2012), about
 * 5 per cent; unverified.
 *
 * @example
 * ```ts
 * const bar = foodFromLabel({
 *   id: "bar", name: "Bar", style: "eu", per: "100 g",
 *   figures: { energy: "480 kcal", protein: "30 g", fat: "14 g", carbohydrate: "38 g", fibre: "11 g" },
 * });
 * const s = sheet({ name: "Snack", portions: 1, lines: [{ food: "bar", amount: "50 g" }] }, foodTable([bar]));
 * console.log(energyCheck(s).differing); // => [ 'bar' ]
 * ```
 */
export function energyCheck(s: Sheet, how: EnergyCheckOptions = {}): EnergyCheck {
  checkSheet(s);
  const { system, tolerance = exact("0.05"), floor = ONE } = read(checkHow(), how, "sheet-malformed");
  const limits = { tolerance, floor };
  return new EnergyCheck(s.name, linesOf(s, system, limits), limits);
}

const checkHow: () => Schema<Partial<EnergyCheckLimits> & { readonly system?: NamedSystem }> =
  /* @__PURE__ */ once(() => {
    const limit = optional(coded("number-malformed", number({ from: 0 })));
    return fields<Partial<EnergyCheckLimits> & { readonly system?: NamedSystem }>({
      system: optional(energyBy()),
      tolerance: limit,
      floor: limit,
    });
  });

function linesOf(s: Sheet, by: NamedSystem | undefined, limits: EnergyCheckLimits): EnergyCheckLine[] {
  return s.plan.lines.flatMap(({ line, source }, i): EnergyCheckLine[] => {
    const grams = s.values.grams[i] ?? ZERO;
    if (isZero(grams)) return [];
    const { asEaten } = source;
    if (asEaten) {
      const part = over(grams, asEaten.masses.cooked);
      return linesOf(asEaten, by, limits).map((inner) => nestedLine(inner, line.key, part));
    }
    const named = by ?? likelySystem(source.food?.input);
    return [lineOf(s, i, named, limits)];
  });
}

function nestedLine(inner: EnergyCheckLine, key: string, part: Exact): EnergyCheckLine {
  const { given, computed, difference } = inner;
  return {
    ...inner,
    key: `${key}/${inner.key}`,
    given: given.share(part).within(key),
    computed: computed.share(part).within(key),
    difference: difference && times(minus(computed.value, given.value), part),
  };
}

const MAIN: readonly EnergyPart[] = ["protein", "fat", "carbohydrate"];

function lineOf(
  s: Sheet,
  i: number,
  { name, system }: NamedSystem,
  limits: EnergyCheckLimits,
): EnergyCheckLine {
  const { line, source } = s.plan.lines[i] ?? {};
  const { input: food, composition } = source?.food ?? {};
  const parts = lineEnergies(s, i, system, (term) => term.factor);
  const silent = termsOf(system).flatMap(([part], k) => (isZero(parts[k]?.coverage ?? ZERO) ? [part] : []));
  const given = s.cell(line?.key ?? "", "energy");
  const computed = addUp("kcal", parts);
  const own = food && systemFor(system, food);
  // The question is what the food says, and cooking would only blur it.
  const raw = (id: ComponentId): ReadFigure | undefined => composition?.figures[componentIndex(id)];
  const energy = raw("energy");
  const why = whyNot(energy, own, silent);
  const base = {
    key: line?.key ?? "",
    name: source?.name ?? "",
    system: own && name,
    given,
    computed,
    silent,
  };
  if (why !== undefined || !energy || !own)
    return { ...base, difference: undefined, verdict: "unknown", why: why ?? "" };
  const difference = minus(computed.value, given.value);
  const reckoned = reckon(own, raw);
  const allowed = greatest(times(limits.tolerance, energy.value), limits.floor);
  const isOff = (by: EnergyInterval): boolean => compareRatios(gapBetween(energy, by), allowed) > 0;
  if (isOff(reckoned)) return { ...base, difference, verdict: "differs" };
  if (isOff({ ...reckoned, high: reckoned.highAsStated }))
    return { ...base, difference: undefined, verdict: "unknown", why: AT_LEAST };
  return { ...base, difference, verdict: "agrees" };
}

/** @internal */
export const AT_LEAST: string = "by these factors it is at least so much, and what is given is more";

function whyNot(
  energy: ReadFigure | undefined,
  own: EnergySystem | undefined,
  silent: readonly EnergyPart[],
): string | undefined {
  if (!own) return "the food has no factors of its own";
  if (!energy || energy.kind === "missing") return "no energy is given";
  if (energy.formula) return "no energy is given, it is computed";
  const main = silent.filter((part) => MAIN.includes(part));
  return main.length > 0 ? `nothing is known of ${main.join(", ")}` : undefined;
}
