import type { ComponentId } from "../food/components.ts";
import { showFigure } from "../measure/showFigure.ts";
import { type Exact, isZero, over } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { Result } from "../number/result.ts";
import type { Tally } from "./tally.ts";

/** What an explanation is made of. */
interface Explained {
  readonly label: string;
  readonly component: ComponentId;
  readonly tally: Tally;
  readonly steps: readonly string[];
  readonly line?: string | undefined;
  readonly food?: string | undefined;
  readonly source?: string | undefined;
  readonly grams?: Exact | undefined;
  readonly from?: readonly Explanation[];
}

/** A figure that nothing stands below, with its share, 0 to 1, of what is known of the whole. */
export interface RankedLeaf {
  readonly explanation: Explanation;
  readonly share: Exact;
}

/**
 * Why a figure is what it is: a tree in which every value is the sum of those below it, so that the
 * leaves add up to the root, literally. What nothing is known of counts as none in that sum, and is
 * shown and recorded as unknown. Plain data; shown as an indented table.
 */
export class Explanation extends Result {
  readonly is = "steelyard/explanation@1";
  readonly label: string;
  /** Key of the line that it is of, `pot/oats` within a nested recipe; nothing for a sum of lines. */
  readonly line: string | undefined;
  /** The line's food; nothing for a nested recipe and for a sum. */
  readonly food: string | undefined;
  readonly component: ComponentId;
  /** The figure, how it bounds the truth, and its marks. */
  readonly tally: Tally;
  readonly value: Exact;
  readonly unit: string;
  /** Who published the figure of a food; nothing for what is added up. */
  readonly source: string | undefined;
  /** Grams of the line that count here: of the batch, or of one portion; nothing for a sum of lines. */
  readonly grams: Exact | undefined;
  /** How the figure came to be, step by step. */
  readonly steps: readonly string[];
  readonly from: readonly Explanation[];

  /** @internal */
  constructor({ label, component: id, tally, steps, line, food, source, grams, from = [] }: Explained) {
    super();
    this.label = label;
    this.line = line;
    this.food = food;
    this.component = id;
    this.tally = tally;
    this.value = tally.value;
    this.unit = tally.unit;
    this.source = source;
    this.grams = grams;
    this.steps = steps;
    this.from = from;
  }

  /** Gives all but {@link leaves} and what is ranked of them, which stand in what it comes {@link from}. */
  override toJSON(): object {
    const { leaves: _, ranked: __, unknown: ___, ...held } = super.toJSON() as Partial<Explanation>;
    return held;
  }

  override toString(): string {
    const { value, bound } = this.tally;
    if (bound === "unknown") return `${this.label}: not known`;
    const figure = showFigure(value, { unit: this.unit });
    const said = bound === "point" || bound === "between" ? figure : `${bound.replace("-", " ")} ${figure}`;
    return `${this.label}: ${said}`;
  }

  /** The figures that nothing stands below. */
  get leaves(): readonly Explanation[] {
    return this.from.length === 0 ? [this] : this.from.flatMap((each) => each.leaves);
  }

  /** The leaves that something is known of, the largest share first. */
  get ranked(): readonly RankedLeaf[] {
    if (isZero(this.value)) return [];
    return this.leaves
      .filter(({ tally }) => tally.bound !== "unknown")
      .map((explanation) => ({ explanation, share: over(explanation.value, this.value) }))
      .sort((a, b) => compareRatios(b.share, a.share));
  }

  /** The leaves that nothing is known of, the heaviest first: where a figure would tell most. */
  get unknown(): readonly Explanation[] {
    const grams = (each: Explanation): Exact => each.grams ?? each.value;
    return this.leaves
      .filter(({ tally }) => tally.bound === "unknown")
      .sort((a, b) => compareRatios(grams(b), grams(a)));
  }
}
