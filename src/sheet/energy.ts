import { anyText, flag, text, value, word } from "../document/leaves.ts";
import { read } from "../document/read.ts";
import { isRecord } from "../document/safe.ts";
import {
  andThen,
  byName,
  choice,
  coded,
  fields,
  list,
  once,
  optional,
  type Schema,
} from "../document/schema.ts";
import { componentId } from "../food/componentSchema.ts";
import type { ComponentId } from "../food/components.ts";
import {
  type EnergyPart,
  type EnergySystem,
  type EnergySystemId,
  type EnergyTerm,
  energySystems,
  systemFor,
  termsOf,
} from "../food/energy.ts";
import {
  type Exact,
  exact,
  greatest,
  isZero,
  least,
  minus,
  ONE,
  over,
  sum,
  times,
  type Value,
  ZERO,
} from "../number/exact.ts";
import { apportion } from "../number/share.ts";
import { boundOfSum } from "./bound.ts";
import { boundOfEnds, type Ends, scaledBy, sumOf } from "./ends.ts";
import { checkSheet } from "./given.ts";
import type { Sheet } from "./sheet.ts";
import type { Source } from "./source.ts";
import { type Bound, constantTally, makeMarks, Tally } from "./tally.ts";

/** One constituent's share of the energy. */
export interface EnergyShare {
  readonly of: EnergyPart;
  /** Its energy, kcal. */
  readonly energy: Tally;
  /** Its exact share, 0 to 1; of what is known, where lines are silent. */
  readonly share: Exact;
  /** Whole per cent; all of them total 100 (largest remainder), or 0 where there is no energy. */
  readonly percent: number;
}

/** The shares of energy, by a named factor system. */
export interface EnergyShares {
  readonly is: "steelyard/energy-shares@1";
  /** The system's id, or its name where it is one of the caller's own. */
  readonly system: string;
  readonly source: string;
  /** The energy that the shares are of: Σ grams × factor, kcal. */
  readonly energy: Tally;
  /** The same by the system's own factors for kilojoules, where it has them. */
  readonly kilojoules?: Tally;
  readonly shares: readonly EnergyShare[];
  /** Whether every line says all that the shares need. */
  readonly complete: boolean;
}

/** What energy is reckoned from: a sheet, and the sheets nested in it. */
export interface EnergySheet {
  readonly plan: {
    readonly lines: readonly {
      readonly line: { readonly key: string };
      readonly source: Source;
    }[];
  };
  readonly values: { readonly grams: readonly Exact[] };
  readonly masses: { readonly raw: Exact; readonly cooked: Exact };
  cell(lineKey: string, id: ComponentId): Tally;
}

/** Which factors energy is reckoned by: a named system, or one of the caller's own. */
export type EnergyBy = EnergySystemId | EnergySystem;

/** A system of factors, with its name. */
export interface NamedSystem {
  readonly name: string;
  readonly system: EnergySystem;
}

/** The system meant, with its name. Throws `energy-system-unknown` for what is none. */
export function energySystem(by: EnergyBy): NamedSystem {
  return read(energyBy(), by, "energy-system-unknown");
}

/** The schema of which factors energy is reckoned by; its faults have the code `energy-system-unknown`. */
export const energyBy: () => Schema<NamedSystem> = /* @__PURE__ */ once(() => {
  const ids = Object.keys(energySystems) as EnergySystemId[];
  const named = andThen(word(ids), (id): NamedSystem => ({ name: id, system: energySystems[id] }));
  const own = andThen(systemSchema(), (system): NamedSystem => ({ name: system.name, system }));
  return coded(
    "energy-system-unknown",
    choice([named, own], (given) => (isRecord(given) ? own : named), "a factor system, or one of its own"),
  );
});

function systemSchema(): Schema<EnergySystem> {
  const apart = optional(list(componentId()));
  const term = fields<EnergyTerm>({
    component: componentId(),
    factor: value(),
    kilojoules: optional(value()),
    less: apart,
    apart,
    atLeast: optional(andThen(flag(), (is) => is || undefined)),
  });
  return fields<EnergySystem>({
    name: text(),
    source: anyText(),
    factors: optional(word(["food"])),
    parts: byName(term),
  });
}

/**
 * Shares of the energy of a batch by a factor system, exact and as whole per cents that total 100: by general
 * Atwater factors, unless a named system or one of the caller's own is given. Throws `energy-system-unknown` for
 * an id that names no system, and `sheet-malformed` for what is no sheet.
 *
 * @example
 * ```ts
 * const oats = sheet(
 *   { name: "Oats", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const { shares } = energyShares(oats);
 * console.log(shares.reduce((all, { percent }) => all + percent, 0)); // => 100
 * ```
 */
export function energyShares(s: Sheet, how: { readonly system?: EnergyBy } = {}): EnergyShares {
  checkSheet(s);
  return shareEnergy(s, how);
}

function shareEnergy(s: EnergySheet, how: { readonly system?: EnergyBy }): EnergyShares {
  const { system: by = energySystem("atwater-general") } = read(sharesHow(), how, "sheet-malformed");
  const { name, system } = by;
  const energies = partEnergies(s, system, (term) => term.factor);
  const kilojoules = termsOf(system).every(([, term]) => term.kilojoules !== undefined)
    ? partEnergies(s, system, (term) => term.kilojoules ?? 0, "kJ")
    : undefined;
  const values = energies.map(({ value }) => value);
  const total = sum(values);
  const percents = isZero(total) ? [] : apportion(100n, values);
  return {
    is: "steelyard/energy-shares@1",
    system: name,
    source: system.source,
    energy: addUp("kcal", energies),
    ...(kilojoules && { kilojoules: addUp("kJ", kilojoules) }),
    shares: termsOf(system).map(([part], i) => {
      const energy = energies[i] ?? nothing("kcal");
      const share = isZero(total) ? ZERO : over(energy.value, total);
      return {
        of: part,
        energy,
        share,
        percent: Number(percents[i] ?? 0n),
      };
    }),
    complete: energies.every((energy) => energy.complete),
  };
}

const sharesHow: () => Schema<{ readonly system?: NamedSystem }> = /* @__PURE__ */ once(() =>
  fields<{ readonly system?: NamedSystem }>({ system: optional(energyBy()) }),
);

/** What each constituent brings to the batch, in the order of the system. */
function partEnergies(
  s: EnergySheet,
  system: EnergySystem,
  factor: (term: EnergyTerm) => Value,
  unit: "kcal" | "kJ" = "kcal",
): Tally[] {
  const lines = s.plan.lines.map((_, i) => lineEnergies(s, i, system, factor, unit));
  const ofMass = s.values.grams.map((g) => (isZero(s.masses.raw) ? ZERO : over(g, s.masses.raw)));
  return termsOf(system).map((_, part) =>
    addUp(
      unit,
      lines.map((parts) => parts[part] ?? nothing(unit)),
      ofMass,
    ),
  );
}

/** What each constituent brings by one line: a food's own figures, or a nested recipe's lines in turn. */
export function lineEnergies(
  s: EnergySheet,
  i: number,
  system: EnergySystem,
  factor: (term: EnergyTerm) => Value,
  unit: "kcal" | "kJ" = "kcal",
): Tally[] {
  const { line, source } = s.plan.lines[i] ?? {};
  const grams = s.values.grams[i] ?? ZERO;
  if (!line || !source || isZero(grams)) return termsOf(system).map(() => nothing(unit));
  const { asEaten } = source;
  if (asEaten) {
    const share = over(grams, asEaten.masses.cooked);
    return partEnergies(asEaten, system, factor, unit).map((part) => part.share(share).within(line.key));
  }
  const own = source.food && systemFor(system, source.food.input);
  const read = termsOf(own ?? system).map(([, term]) => ({
    term,
    amount: own && constituent((id) => s.cell(line.key, id), term),
  }));
  const countedElsewhere = new Set(read.flatMap(({ term, amount }) => (amount ? (term.apart ?? []) : [])));
  return read.map(({ term, amount }) => {
    if (amount) return atFactor(amount, exact(factor(term)), term, unit);
    return countedElsewhere.has(term.component) ? nothing(unit) : silent(line.key, unit);
  });
}

/** What a line holds of a constituent, or nothing where that is not known. */
function constituent(cell: (id: ComponentId) => Tally, term: EnergyTerm): Tally | undefined {
  let amount = cell(term.component);
  for (const id of term.less ?? []) {
    const off = cell(id);
    if (off.bound === "unknown") return undefined;
    amount = amount.minus(off);
  }
  for (const id of term.apart ?? []) {
    const off = cell(id);
    if (off.bound !== "unknown") amount = amount.minus(off);
  }
  return cell(term.component).bound === "unknown" ? undefined : amount;
}

function atFactor(amount: Tally, factor: Exact, term: EnergyTerm, unit: string): Tally {
  // Rounded figures of a table can make a difference come out a little below nothing.
  const grams = amount.value.n < 0n ? ZERO : amount.value;
  const value = times(grams, factor);
  const open = term.atLeast === true && !isZero(grams);
  const ends = (): Ends => {
    const { low, high, told } = scaledBy(amount.ends, factor);
    const zero = (end: Exact | undefined): Exact | undefined => end && greatest(ZERO, end);
    return { low: zero(low), high: open ? undefined : zero(high), told: zero(told) };
  };
  const bound = open ? boundOfOpen(amount, value, ends) : amount.bound;
  return new Tally(value.n, value.d, unit, amount, () => amount.coverage, bound, ends);
}

/** The factor leaves some of the energy out: there is at least what it reckons. */
function boundOfOpen(amount: Tally, value: Exact, ends: () => Ends): Bound {
  return amount.ranged.length > 0 ? boundOfEnds(value, ends(), false) : "at-least";
}

function nothing(unit: string): Tally {
  return constantTally(ZERO, unit);
}

function silent(key: string, unit: string): Tally {
  const marks = makeMarks((kind) => (kind === "missing" ? [key] : []));
  return new Tally(0n, 1n, unit, marks, () => ZERO);
}

/** Adds up what cannot be below nothing: a silent term makes the sum "at least" and leaves the rest as it is. */
export function addUp(unit: string, terms: readonly Tally[], ofMass?: readonly Exact[]): Tally {
  const value = sum(terms.map((t) => t.value));
  const marks = makeMarks((kind) => [...new Set(terms.flatMap((t) => t[kind]))]);
  const covered = (): Exact =>
    ofMass
      ? minus(ONE, sum(terms.map((t, i) => times(minus(ONE, t.coverage), ofMass[i] ?? ZERO))))
      : terms.reduce((all, t) => least(all, t.coverage), ONE);
  const known = terms.filter((t) => !isZero(t.coverage));
  const sofar = known.length < terms.length ? "at-least" : "point";
  const bound =
    known.length === 0 && terms.length > 0
      ? "unknown"
      : known.reduce((all, t) => boundOfSum(all, t.bound), sofar as Bound);
  const ends = (): Ends => sumOf(terms.map((t) => ({ ...t.ends, low: t.ends.low ?? ZERO })));
  const isRanged = marks.ranged.length > 0 && known.every((t) => t.bound !== "unknown");
  const own = isRanged ? boundOfEnds(value, ends(), marks.below.length > 0) : bound;
  return new Tally(value.n, value.d, unit, marks, covered, own, ends);
}
