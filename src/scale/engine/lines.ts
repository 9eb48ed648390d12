import type { ComponentId } from "../../food/components.ts";
import { type EnergySystem, termsOf } from "../../food/energy.ts";
import { type Exact, over, sum } from "../../number/exact.ts";
import { lcm } from "../../number/ratio.ts";
import { lineEnergies } from "../../sheet/energy.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Tally } from "../../sheet/tally.ts";
import type { Quantity } from "../demand.ts";
import { lineContributions, silentLines } from "../linear.ts";

interface KeyAt {
  readonly line: number;
  readonly key: string;
}

/** What each line of a sheet brings to one portion as eaten, in whole numbers over one scale. */
export interface LinesOf {
  readonly lines: readonly bigint[];
  readonly scale: bigint;
  /** Lines that do not say what they bring, by place; a nested recipe's by the key inside it, too. */
  readonly silent: readonly KeyAt[];
  /** Lines that tell only of a trace, or of a limit that they stay under: they may bring more than is counted. */
  readonly loose: readonly KeyAt[];
  /** Lines that count with a middle figure from which the truth may lie far. */
  readonly ranged: readonly KeyAt[];
  /** Whether some line counts with its high end instead of its figure. */
  readonly isHigh: boolean;
  /** The side to which lines are taken to err, where a demand has a margin, and those of which nobody says how far. */
  readonly margin?: "least" | "most";
  readonly unsure?: readonly KeyAt[];
}

/** Energy by a factor system: what each of its terms brings, and all of them. */
export interface EnergiesOf {
  readonly parts: readonly LinesOf[];
  readonly total: LinesOf;
}

interface Read {
  readonly quantities: Map<Quantity, LinesOf>;
  readonly highs: Map<Quantity, LinesOf>;
  readonly margins: Map<string, LinesOf>;
  readonly energies: WeakMap<EnergySystem, EnergiesOf>;
}

/** A sheet never changes, so it is read once for all who eat of it. */
const READ: WeakMap<Sheet, Read> = /* @__PURE__ */ new WeakMap();

export function readOf(s: Sheet): Read {
  const found = READ.get(s);
  if (found) return found;
  const made: Read = { quantities: new Map(), highs: new Map(), margins: new Map(), energies: new WeakMap() };
  READ.set(s, made);
  return made;
}

export function quantityOf(s: Sheet, of: Quantity): LinesOf {
  const { quantities } = readOf(s);
  const found = quantities.get(of);
  if (found) return found;
  // A line inside a nested recipe moves with the line that names the recipe.
  const at = (key: string): KeyAt => ({ line: s.plan.indexOf(key.split("/", 1)[0] ?? key), key });
  const loose = of === "mass" ? [] : looseIn(s.total(of));
  const made = {
    ...linesOverOneScale(lineContributions(s, of)),
    silent: silentLines(s, of).map(at),
    loose: loose.map(at),
    ranged: of === "mass" ? [] : rangedIn(s, of).map(at),
    isHigh: false,
  };
  quantities.set(of, made);
  return made;
}

/** Reckoned by the factors, whatever a line's own energy figure says. */
export function energiesOf(s: Sheet, system: EnergySystem): EnergiesOf {
  const { energies } = readOf(s);
  const found = energies.get(system);
  if (found) return found;
  const tallies = s.plan.lines.map((_, i) => lineEnergies(s, i, system, (term) => term.factor));
  const silent = tallies.flatMap((parts, line) =>
    [...new Set(parts.flatMap((part) => part.missing))].map((key) => ({ line, key })),
  );
  const looseOf = (parts: readonly Tally[], line: number): KeyAt[] =>
    [...new Set(parts.flatMap(looseIn))].map((key) => ({ line, key }));
  const rangedOf = (parts: readonly Tally[], line: number): KeyAt[] => {
    const far = parts.filter(({ bound }) => bound === "between");
    return [...new Set(far.flatMap(({ ranged }) => ranged))].map((key) => ({ line, key }));
  };
  const { portions } = s.values;
  const made = {
    parts: termsOf(system).map((_, part) => {
      const lines = tallies.flatMap((parts) => parts[part] ?? []);
      const loose = tallies.flatMap((parts, line) => looseOf(parts.slice(part, part + 1), line));
      const amounts = linesOverOneScale(lines.map((tally) => over(tally.value, portions)));
      const ranged = tallies.flatMap((parts, line) => rangedOf(parts.slice(part, part + 1), line));
      return { ...amounts, silent, loose, ranged, isHigh: false };
    }),
    total: {
      ...linesOverOneScale(tallies.map((parts) => over(sum(parts.map((p) => p.value)), portions))),
      silent,
      loose: tallies.flatMap(looseOf),
      ranged: tallies.flatMap(rangedOf),
      isHigh: false,
    },
  };
  energies.set(system, made);
  return made;
}

function looseIn({ trace, below }: Pick<Tally, "trace" | "below">): readonly string[] {
  return trace.length + below.length === 0 ? NONE : [...trace, ...below];
}

function rangedIn(s: Sheet, of: ComponentId): readonly string[] {
  const isFar = (key: string): boolean => s.cell(key.split("/", 1)[0] ?? key, of).bound === "between";
  return s.total(of).ranged.filter(isFar);
}

const NONE: readonly string[] = [];

/** Over one scale; the denominators are mostly the same, or powers of ten. */
export function linesOverOneScale(all: readonly Exact[]): Pick<LinesOf, "lines" | "scale"> {
  let scale = 1n;
  for (const { d } of all) if (scale % d !== 0n) scale = d % scale === 0n ? d : lcm(scale, d);
  return { lines: all.map(({ n, d }) => (d === scale ? n : n * (scale / d))), scale };
}
