import { type ComponentId, components } from "../food/components.ts";
import {
  type Fraction,
  fraction,
  isZero,
  minus,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../number/fraction.ts";
import { componentIndex, gatherMarks, isMissing, type LineMark, type SheetPlan } from "./plan.ts";
import type { Mark } from "./source.ts";
import { Tally } from "./tally.ts";
import { type Masses, type Values, type Weights, weigh } from "./values.ts";

const ALL = (): Fraction => ONE;

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
export class Totals {
  readonly #plan: SheetPlan;
  readonly #values: Values;
  readonly #masses: Masses;
  readonly #now: Kept;
  readonly #before: Kept | undefined;
  readonly #changed: readonly number[];

  constructor(
    plan: SheetPlan,
    values: Values,
    masses: Masses,
    earlier?: Totals,
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

  /** A component of the batch as eaten. */
  total(id: ComponentId): Tally {
    const c = componentIndex(id);
    const made = this.#now.tallies[c] ?? this.#make(id, c);
    this.#now.tallies[c] = made;
    return made;
  }

  /** What one line brings. */
  cell(i: number, id: ComponentId): Tally {
    const c = componentIndex(id);
    const n = (this.#now.weights.lifted[i] ?? 0n) * (this.#plan.lines[i]?.source.values[c] ?? 0n);
    const marks = this.#present(c).filter((m) => m.line === i);
    const silent = marks.filter(isMissing);
    const covered =
      silent.length === 0 ? ALL : (): Fraction => minus(ONE, sum(silent.map((m) => m.mark.share)));
    return new Tally(n, this.#now.weights.denominator, components[id].unit, gatherMarks(marks), covered);
  }

  /** What the figures of a component say of themselves, as shares of this sheet's mass. */
  marks(component: number): readonly Mark[] {
    const { grams } = this.#values;
    return this.#present(component).map(({ key, mark, line }) => ({
      at: key,
      kind: mark.kind,
      share: times(mark.share, massShare(grams, this.#masses.raw, line)),
    }));
  }

  #make(id: ComponentId, c: number): Tally {
    const n = this.#sum(c);
    const before = this.#before?.tallies[c];
    const silent = this.#now.hasEmpty ? this.#present(c).filter(isMissing) : this.#plan.silent(c);
    const marksStand = !this.#now.hasEmpty && this.#before?.hasEmpty === false;
    if (before && marksStand && silent.length === 0 && id !== "water" && n === this.#before?.sums[c])
      return before;
    const marks = this.#now.hasEmpty ? gatherMarks(this.#present(c)) : this.#plan.marks(c);
    const covered = silent.length === 0 ? ALL : coverage(silent, this.#values.grams, this.#masses.raw);
    const { unit } = components[id];
    if (id !== "water") return new Tally(n, this.#now.weights.denominator, unit, marks, covered);
    const water = plus(fraction(n, this.#now.weights.denominator), this.#masses.waterChange);
    return new Tally(water.n, water.d, unit, marks, covered);
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
      for (let i = 0; i < lifted.length; i++)
        n += (lifted[i] ?? 0n) * (this.#plan.lines[i]?.source.values[c] ?? 0n);
    }
    this.#now.sums[c] = n;
    return n;
  }

  /** Lines of no mass bring nothing, whether or not their figures are known. */
  #present(component: number): readonly LineMark[] {
    const all = this.#plan.lineMarks(component);
    return this.#now.hasEmpty ? all.filter((m) => !isZero(this.#values.grams[m.line] ?? ZERO)) : all;
  }
}

/** Holds the grams alone, so that a tally kept for long does not keep its sheet. */
function coverage(silent: readonly LineMark[], grams: readonly Fraction[], raw: Fraction): () => Fraction {
  return () => minus(ONE, sum(silent.map((m) => times(m.mark.share, massShare(grams, raw, m.line)))));
}

function massShare(grams: readonly Fraction[], raw: Fraction, line: number): Fraction {
  return isZero(raw) ? ZERO : over(grams[line] ?? ZERO, raw);
}
