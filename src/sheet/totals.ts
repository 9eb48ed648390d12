import { type ComponentId, components } from "../food/components.ts";
import { type Exact, isZero, minus, ONE, over, plus, sum, times, ZERO } from "../number/exact.ts";
import { BySource, endsOf } from "./bySource.ts";
import { driedBy, type Ends, isNothing, pointEnds, sumOf } from "./ends.ts";
import { componentIndex, gatherMarks, isMissing, type LineMark, type SheetPlan } from "./plan.ts";
import type { Mark } from "./source.ts";
import { type KeptMarks, NO_MARKS, Tally } from "./tally.ts";
import { type Masses, type Values, type Weights, weigh } from "./values.ts";
import { marksCooked, type WaterChange, waterChange } from "./water.ts";

/** What a version has summed so far, and hands to the next one: arrays alone, not the sheet. */
interface Kept {
  readonly weights: Weights;
  readonly hasEmpty: boolean;
  readonly sums: (bigint | undefined)[];
  readonly tallies: (Tally | undefined)[];
}

/**
 * The totals of one version, each summed when first asked for: from the earlier version's sum where
 * few lines changed, else from all lines. A total that no change reaches is the earlier one itself.
 */
export class SheetTotals {
  readonly #plan: SheetPlan;
  readonly #values: Values;
  readonly #masses: Masses;
  readonly #now: Kept;
  readonly #before: Kept | undefined;
  readonly #changed: readonly number[];
  #bySource: BySource | undefined;
  #water: WaterChange | undefined;
  #waterLeft: Tally | undefined;

  constructor(
    plan: SheetPlan,
    values: Values,
    masses: Masses,
    earlier?: SheetTotals,
    changed: readonly number[] = [],
  ) {
    this.#plan = plan;
    this.#values = values;
    this.#masses = masses;
    this.#changed = changed;
    const before = earlier === undefined ? undefined : earlier.#now;
    const weights = weigh(plan, values.grams, before?.weights.common);
    this.#now = { weights, hasEmpty: values.grams.some(isZero), sums: [], tallies: [] };
    // Sums carry over only in whole numbers of the same denominator.
    this.#before = before?.weights.denominator === weights.denominator ? before : undefined;
  }

  /** What cooking does to water. */
  get water(): WaterChange {
    this.#water ??= waterChange(this.#plan, this.#now.weights, this.#masses);
    return this.#water;
  }

  /** A component of the batch as eaten. */
  total(id: ComponentId): Tally {
    if (id !== "water") return this.brought(id);
    this.#waterLeft ??= this.#leaveWater();
    return this.#waterLeft;
  }

  /** What all lines bring together, before the pot takes up or gives off water. */
  brought(id: ComponentId): Tally {
    const c = componentIndex(id);
    const made = this.#now.tallies[c] ?? this.#make(id, c);
    this.#now.tallies[c] = made;
    return made;
  }

  /** What one line brings. */
  cell(i: number, id: ComponentId): Tally {
    const c = componentIndex(id);
    const n = (this.#now.weights.lifted[i] ?? 0n) * (this.#plan.lines[i]?.source.values[c] ?? 0n);
    const { unit } = components[id];
    const d = this.#now.weights.denominator;
    const isEmpty = isZero(this.#values.grams[i] ?? ZERO);
    const marks = isEmpty ? NO_MARKS : this.#plan.keptOf(i, c);
    if (marks === NO_MARKS) return new Tally(n, d, unit, NO_MARKS, wholly);
    const [plan, { grams }] = [this.#plan, this.#values];
    const covered =
      marks.missing.length === 0
        ? wholly
        : (): Exact =>
            minus(
              ONE,
              sum(
                plan
                  .marksOf(i, c)
                  .filter(isMissing)
                  .map((m) => m.mark.share),
              ),
            );
    const ends = (): Ends => lineEnds(plan, grams, i, c);
    return new Tally(n, d, unit, marks, covered, undefined, ends);
  }

  /** What the figures of a component say of themselves, as shares of this sheet's mass. */
  marks(component: number): readonly Mark[] {
    const { grams } = this.#values;
    const water = component === componentIndex("water") ? this.water : undefined;
    return asEaten(this.#plan, this.#values, component, water).map(({ key, mark, line }) => ({
      at: key,
      kind: mark.kind,
      share: times(mark.share, massShare(grams, this.#masses.raw, line)),
    }));
  }

  #make(id: ComponentId, c: number): Tally {
    const n = this.#sum(c);
    const earlier = this.#unreached(c, n);
    if (earlier) return earlier;
    // What these hold is the plan and the grams alone, so that a tally kept for long keeps no sheet.
    const { unit } = components[id];
    const [plan, { grams }, { raw }, { hasEmpty, weights }] = [
      this.#plan,
      this.#values,
      this.#masses,
      this.#now,
    ];
    const marks = hasEmpty
      ? (): KeptMarks => gatherMarks(present(plan, grams, c))
      : (): KeptMarks => plan.marks(c);
    const by = this.#grouped;
    const covered = once(() => by.coverage(c, raw));
    const ends = (): Ends => by.ends(c);
    return new Tally(n, weights.denominator, unit, marks, covered, undefined, ends);
  }

  #leaveWater(): Tally {
    const { raw } = this.#masses;
    const left = plus(this.brought("water").value, this.water.change);
    // Looked up when first asked for: recipes nested wide have more marks than anyone can list.
    const [plan, values, water] = [this.#plan, this.#values, this.water];
    const marks = (): readonly LineMark[] => asEaten(plan, values, componentIndex("water"), water);
    const covered = once(() => coverage(marks().filter(isMissing), values.grams, raw));
    const { change } = this.#masses;
    const ends = (): Ends => waterEnds(plan, values.grams, change);
    const { unit } = components.water;
    return new Tally(left.n, left.d, unit, () => gatherMarks(marks()), covered, undefined, ends);
  }

  /** The earlier version's tally, where nothing that it says has changed. */
  #unreached(c: number, n: bigint): Tally | undefined {
    const before = this.#before;
    if (!before || n !== before.sums[c] || before.hasEmpty || this.#now.hasEmpty) return undefined;
    if (this.#plan.isSilent(c)) return undefined;
    const { trace, below, ranged } = this.#plan.marks(c);
    const isPlain = trace.length + below.length + ranged.length === 0;
    const reaches = (i: number): boolean =>
      !isNothing(this.#plan.lines[i]?.source.ends(c) ?? pointEnds(ZERO));
    return isPlain || !this.#changed.some(reaches) ? before.tallies[c] : undefined;
  }

  #sum(c: number): bigint {
    const { lifted } = this.#now.weights;
    const before = this.#before;
    const from = before?.sums[c];
    let n = from ?? 0n;
    if (before && from !== undefined) {
      for (const i of this.#changed) {
        const value = this.#plan.lines[i]?.source.values[c] ?? 0n;
        if (value !== 0n) n += ((lifted[i] ?? 0n) - (before.weights.lifted[i] ?? 0n)) * value;
      }
    } else {
      const { sources } = this.#plan;
      const all = this.#grouped.lifted(lifted);
      for (let k = 0; k < sources.length; k++) n += (all[k] ?? 0n) * (sources[k]?.values[c] ?? 0n);
    }
    this.#now.sums[c] = n;
    return n;
  }

  /** Made when first asked for: most versions of a sheet are read for little. */
  get #grouped(): BySource {
    this.#bySource ??= new BySource(this.#plan, this.#values.grams);
    return this.#bySource;
  }
}

/** Between what a line's share of a component can lie. */
function lineEnds({ lines }: SheetPlan, grams: readonly Exact[], i: number, c: number): Ends {
  const source = lines[i]?.source;
  return source === undefined ? pointEnds(ZERO) : endsOf(source, c, grams[i] ?? ZERO);
}

/** Water as eaten: what the pot takes up or gives off, and what is added at serving. */
function waterEnds(plan: SheetPlan, grams: readonly Exact[], change: Exact): Ends {
  const of = (added: "cooking" | "serving"): Ends =>
    sumOf(
      plan.lines.flatMap(({ line }, i) =>
        line.added === added ? lineEnds(plan, grams, i, componentIndex("water")) : [],
      ),
    );
  return sumOf([driedBy(of("cooking"), change), of("serving")]);
}

const wholly = (): Exact => ONE;

/** A share that portions and 100 g have in common with the batch is worked out once. */
function once(make: () => Exact): () => Exact {
  let made: Exact | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** Lines of no mass bring nothing, whether or not their figures are known. */
function present(plan: SheetPlan, grams: readonly Exact[], component: number): readonly LineMark[] {
  return plan.lineMarks(component).filter((m) => !isZero(grams[m.line] ?? ZERO));
}

/** Marks as they stand after cooking, which changes what is said of water. */
function asEaten(
  plan: SheetPlan,
  values: Values,
  component: number,
  water: WaterChange | undefined,
): readonly LineMark[] {
  const marks = present(plan, values.grams, component);
  return water ? marksCooked(plan, marks, values, water) : marks;
}

/** The share of the mass whose figures are known. */
function coverage(silent: readonly LineMark[], grams: readonly Exact[], raw: Exact): Exact {
  if (silent.length === 0 || isZero(raw)) return ONE;
  return minus(ONE, over(sum(silent.map((m) => times(m.mark.share, grams[m.line] ?? ZERO))), raw));
}

function massShare(grams: readonly Exact[], raw: Exact, line: number): Exact {
  return isZero(raw) ? ZERO : over(grams[line] ?? ZERO, raw);
}
