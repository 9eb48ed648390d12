import type { ComponentId } from "../food/components.ts";
import { exact, type Fraction } from "../number/fraction.ts";
import { figure, legend } from "../table/figure.ts";
import { Shown } from "../table/shown.ts";
import { type Figure, type Table, table } from "../table/table.ts";
import type { Asked, Tidy, TidyRow } from "../table/tidy.ts";
import { tallyFigure } from "./show.ts";
import type { Tally } from "./tally.ts";
import { tallyRow } from "./tallyRow.ts";
import { tidyOf } from "./tidyOf.ts";

/** What an explanation is made of. */
interface Explained {
  readonly label: string;
  readonly component: ComponentId;
  readonly tally: Tally;
  readonly steps: readonly string[];
  readonly line?: string | undefined;
  readonly food?: string | undefined;
  readonly source?: string | undefined;
  readonly from?: readonly Explanation[];
}

/**
 * Why a figure is what it is: a tree in which every value is the sum of those below it, so that the
 * leaves add up to the root, literally. What nothing is known of counts as none in that sum, and is
 * shown and recorded as unknown. Plain data; shown as an indented table.
 */
export class Explanation extends Shown {
  readonly label: string;
  /** Key of the line that it is of, `pot/oats` within a nested recipe; nothing for a sum of lines. */
  readonly line: string | undefined;
  /** The line's food; nothing for a nested recipe and for a sum. */
  readonly food: string | undefined;
  readonly component: ComponentId;
  /** The figure, how it bounds the truth, and its marks. */
  readonly tally: Tally;
  readonly value: Fraction;
  readonly unit: string;
  /** Who published the figure of a food; nothing for what is added up. */
  readonly source: string | undefined;
  /** How the figure came to be, step by step. */
  readonly steps: readonly string[];
  readonly from: readonly Explanation[];

  /** @internal */
  constructor({ label, component: id, tally, steps, line, food, source, from = [] }: Explained) {
    super();
    this.label = label;
    this.line = line;
    this.food = food;
    this.component = id;
    this.tally = tally;
    this.value = tally.value;
    this.unit = tally.unit;
    this.source = source;
    this.steps = steps;
    this.from = from;
  }

  /** Gives all but {@link leaves}, which stand in what it comes {@link from}. */
  override toJSON(): object {
    const { leaves: _, ...held } = super.toJSON() as Partial<Explanation>;
    return held;
  }

  /** The figures that nothing stands below. */
  get leaves(): readonly Explanation[] {
    return this.from.length === 0 ? [this] : this.from.flatMap((each) => each.leaves);
  }

  override toTables(): readonly Table[] {
    const rows = this.#all(0).map(([depth, each]) => [
      `${"· ".repeat(depth)}${each.label}`,
      each.#shown(),
      each.steps.join("; "),
    ]);
    return [
      table({
        title: this.label,
        columns: [
          { key: "what", heading: "What" },
          { key: "value", heading: "Value", unit: this.unit, align: "end" },
          { key: "steps", heading: "Because" },
        ],
        rows,
        notes: legend(rows),
      }),
    ];
  }

  /** One row for each figure of the tree, with its depth: 0 for what is explained; `toRecords` reads them. */
  toRows(asked: Asked): Tidy {
    return tidyOf(asked, ["level", "label", "steps"], () => this.#all(0).map(tidyRow));
  }

  /** Values of the tree add up, middle figures too; what such a one lies between stands among the steps. */
  #shown(): Figure {
    const { tally } = this;
    if (tally.bound !== "between") return tallyFigure(tally);
    return { ...figure(tally.value), tone: "between" };
  }

  #all(depth: number): [number, Explanation][] {
    return [[depth, this], ...this.from.flatMap((each) => each.#all(depth + 1))];
  }
}

function tidyRow([depth, explained]: [number, Explanation]): TidyRow {
  const { label, line, food, component, tally, source, steps } = explained;
  const own = { level: exact(depth), label, steps: steps.join("; ") };
  const row = line === undefined ? "sum" : "line";
  return { line, food, row, component, ...tallyRow(tally), source, own };
}
