import { checkFields, fieldsGiven } from "../document/fields.ts";
import { type ComponentId, component } from "../food/components.ts";
import {
  type EnergyPart,
  type EnergySystem,
  type EnergySystemId,
  type EnergyTerm,
  energySystems,
  systemFor,
  termsOf,
} from "../food/energy.ts";
import { collect, type Fault, fault, kindOf, type Path, quote, throwIfAny, within } from "../number/error.ts";
import {
  exact,
  type Fraction,
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
} from "../number/fraction.ts";
import { didYouMean } from "../number/near.ts";
import { apportion } from "../number/share.ts";
import { boundOfSum } from "./bound.ts";
import { boundOfEnds, type Ends, scaledBy, sumOf } from "./ends.ts";
import type { Source } from "./source.ts";
import { type Bound, constantTally, makeMarks, Tally } from "./tally.ts";

/** One constituent's share of the energy. */
export interface EnergyShare {
  readonly of: EnergyPart;
  /** What it brings, kcal. */
  readonly energy: Tally;
  /** Its exact share, 0 to 1; of what is known, where lines are silent. */
  readonly share: Fraction;
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
  readonly values: { readonly grams: readonly Fraction[] };
  readonly masses: { readonly raw: Fraction; readonly cooked: Fraction };
  cell(lineKey: string, id: ComponentId): Tally;
}

/** Which factors energy is reckoned by: a named system, or one of the caller's own. */
export type EnergyBy = EnergySystemId | EnergySystem;

/** The system meant, with its name. Throws `energy-system-unknown` for what is none. */
export function energySystem(by: EnergyBy): { readonly name: string; readonly system: EnergySystem } {
  if (typeof by === "object" && by !== null) {
    checkSystem(by);
    return { name: by.name, system: by };
  }
  if (typeof by === "string" && Object.hasOwn(energySystems, by))
    return { name: by, system: energySystems[by] };
  const ids = Object.keys(energySystems);
  throw fault(
    "energy-system-unknown",
    `no factor system is called ${quote(by)}`,
    didYouMean(by, ids, `use one of ${ids.join(", ")}`),
  );
}

/** Refuses what is no system of factors. Throws `energy-system-unknown`, all faults at once. */
function checkSystem(by: EnergySystem): void {
  const faults: Fault[] = [];
  const code = "energy-system-unknown";
  const { name, source, parts } = fieldsGiven(by, ["name", "source", "factors", "parts"], code, faults);
  const refuse = (path: Path, message: string, hint: string): void => {
    faults.push({ code, path, message, hint });
  };
  if (typeof name !== "string" || name === "") refuse(["name"], `name is ${kindOf(name)}`, "name the system");
  if (typeof source !== "string")
    refuse(["source"], `source is ${kindOf(source)}`, "say whose factors they are");
  if (typeof parts !== "object" || parts === null || Array.isArray(parts)) {
    const hint = 'give terms by constituent: { protein: { component: "protein", factor: 4 } }';
    refuse(["parts"], `parts are ${kindOf(parts)}`, hint);
  } else {
    for (const [part, term] of Object.entries(parts)) {
      collect(faults, ["parts", part], () => checkTerm(term));
    }
  }
  throwIfAny(faults);
}

const TERM: readonly string[] = ["component", "factor", "kilojoules", "less", "apart", "atLeast"];

function checkTerm(given: unknown): void {
  const term = checkFields(given, TERM, "energy-system-unknown");
  component(term.component as ComponentId);
  within(["factor"], () => exact(term.factor as Value));
  if (term.kilojoules !== undefined) within(["kilojoules"], () => exact(term.kilojoules as Value));
  for (const field of ["less", "apart"]) {
    const ids = term[field] ?? [];
    if (!Array.isArray(ids)) {
      throw fault("energy-system-unknown", `${field} is ${kindOf(ids)}`, "list components", [field]);
    }
    for (const id of ids) within([field], () => component(id));
  }
}

/** Shares energy among its constituents, from what each line holds of them. Throws `energy-system-unknown`. */
export function shareEnergy(s: EnergySheet, by: EnergyBy): EnergyShares {
  const { name, system } = energySystem(by);
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

function atFactor(amount: Tally, factor: Fraction, term: EnergyTerm, unit: string): Tally {
  // Rounded figures of a table can make a difference come out a little below nothing.
  const grams = amount.value.n < 0n ? ZERO : amount.value;
  const value = times(grams, factor);
  const open = term.atLeast === true && !isZero(grams);
  const ends = (): Ends => {
    const { low, high, told } = scaledBy(amount.ends, factor);
    const zero = (end: Fraction | undefined): Fraction | undefined => end && greatest(ZERO, end);
    return { low: zero(low), high: open ? undefined : zero(high), told: zero(told) };
  };
  const bound = open ? boundOfOpen(amount, value, ends) : amount.bound;
  return new Tally(value.n, value.d, unit, amount, () => amount.coverage, bound, ends);
}

/** The factor leaves some of the energy out: there is at least what it reckons. */
function boundOfOpen(amount: Tally, value: Fraction, ends: () => Ends): Bound {
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
export function addUp(unit: string, terms: readonly Tally[], ofMass?: readonly Fraction[]): Tally {
  const value = sum(terms.map((t) => t.value));
  const marks = makeMarks((kind) => [...new Set(terms.flatMap((t) => t[kind]))]);
  const covered = (): Fraction =>
    ofMass
      ? minus(ONE, sum(terms.map((t, i) => times(minus(ONE, t.coverage), ofMass[i] ?? ZERO))))
      : terms.reduce((all, t) => least(all, t.coverage), ONE);
  const known = terms.filter((t) => !isZero(t.coverage));
  const sofar = known.length < terms.length ? "at-least" : "exact";
  const bound =
    known.length === 0 && terms.length > 0
      ? "unknown"
      : known.reduce((all, t) => boundOfSum(all, t.bound), sofar as Bound);
  const ends = (): Ends => sumOf(terms.map((t) => ({ ...t.ends, low: t.ends.low ?? ZERO })));
  const isRanged = marks.ranged.length > 0 && known.every((t) => t.bound !== "unknown");
  const own = isRanged ? boundOfEnds(value, ends(), marks.below.length > 0) : bound;
  return new Tally(value.n, value.d, unit, marks, covered, own, ends);
}
