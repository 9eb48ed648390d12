import { type Exact, fraction, isZero, minus, ONE, over, plus, times, ZERO } from "../number/exact.ts";
import { type Ends, pointEnds, scaledBy, sumOf } from "./ends.ts";
import type { SheetPlan } from "./plan.ts";
import type { Source } from "./source.ts";

/**
 * The lines of a sheet by what they draw on. Lines of one food say the same of a component, so that sums,
 * ends and coverage take one step for each food however many lines there are.
 */
export class BySource {
  readonly #plan: SheetPlan;
  readonly #grams: readonly Exact[];
  #masses: readonly Exact[] | undefined;
  #lifted: readonly bigint[] | undefined;

  /** Of a version: the plan's lines with their grams. */
  constructor(plan: SheetPlan, grams: readonly Exact[]) {
    this.#plan = plan;
    this.#grams = grams;
  }

  /** What lines weigh in whole numbers, those of each source added up; `lines` are always the same. */
  lifted(lines: readonly bigint[]): readonly bigint[] {
    this.#lifted ??= this.#addLifted(lines);
    return this.#lifted;
  }

  #addLifted(lines: readonly bigint[]): readonly bigint[] {
    const all = this.#plan.sources.map(() => 0n);
    for (let i = 0; i < lines.length; i++) {
      const k = this.#plan.sourceOf[i] ?? 0;
      all[k] = (all[k] ?? 0n) + (lines[i] ?? 0n);
    }
    return all;
  }

  /** Between what all lines together can hold of a component. */
  ends(component: number): Ends {
    return sumOf(this.#plan.sources.map((source, k) => endsOf(source, component, this.#mass(k))));
  }

  /** The share of a mass whose figures are known. */
  coverage(component: number, raw: Exact): Exact {
    if (isZero(raw)) return ONE;
    let silent = ZERO;
    for (const [k, source] of this.#plan.sources.entries())
      for (const { kind, share } of source.marks(component))
        if (kind === "missing") silent = plus(silent, times(share, this.#mass(k)));
    return isZero(silent) ? ONE : minus(ONE, over(silent, raw));
  }

  #mass(k: number): Exact {
    this.#masses ??= this.#add();
    return this.#masses[k] ?? ZERO;
  }

  #add(): readonly Exact[] {
    const masses = this.#plan.sources.map(() => ZERO);
    for (let i = 0; i < this.#grams.length; i++) {
      const k = this.#plan.sourceOf[i] ?? 0;
      masses[k] = plus(masses[k] ?? ZERO, this.#grams[i] ?? ZERO);
    }
    return masses;
  }
}

/** Between what so many grams of a source can hold of a component. */
export function endsOf(source: Source, component: number, grams: Exact): Ends {
  if (isZero(grams)) return pointEnds(ZERO);
  const ends = source.ends(component);
  // Of what is silent, or a trace, nothing is told that a mass could change.
  const { low = ZERO, high = ZERO, told = ZERO } = ends;
  return isZero(low) && isZero(high) && isZero(told) ? ends : scaledBy(ends, over(grams, HUNDRED));
}

const HUNDRED: Exact = /* @__PURE__ */ fraction(100n);
