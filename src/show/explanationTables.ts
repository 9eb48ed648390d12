import { exact, fraction, over, times, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Explanation } from "../sheet/explanation.ts";
import { figureCell, legend } from "./figure.ts";
import { type Table, type TableFigure, table } from "./table.ts";
import { tallyFigure } from "./tallyFigure.ts";
import { tallyRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/** The tree of figures, each with why it is what it is: the largest share first, what is unknown by its mass. */
export function explanationTables(e: Explanation): readonly Table[] {
  const rows = everyStep(e, 0, (all) => [...all].sort(byShare)).map(([depth, each]) => [
    `${"· ".repeat(depth)}${each.label}`,
    shownValue(each),
    shareOf(each, e),
    each.steps.join("; "),
  ]);
  return [
    table({
      title: e.label,
      columns: [
        { key: "what", heading: "What" },
        { key: "value", heading: "Value", unit: e.unit, align: "end" },
        { key: "share", heading: "Share", unit: "%", align: "end" },
        { key: "steps", heading: "Because" },
      ],
      rows,
      notes: legend(rows),
    }),
  ];
}

/** Its part of what is known of the whole. */
function shareOf(each: Explanation, { value }: Explanation): TableFigure | string {
  if (value.n === 0n || each.tally.bound === "unknown") return "";
  return figureCell(times(over(each.value, value), fraction(100n)));
}

/** One row for each figure of the tree, with its depth: 0 for what is explained. */
export function explanationTidy(e: Explanation, asked: Asked): Tidy {
  return tidyOf(asked, ["level", "label", "share", "grams", "steps"], () =>
    everyStep(e, 0).map((each) => tidyRow(each, e)),
  );
}

/** Values of the tree add up, middle figures too; what such a one lies between stands among the steps. */
function shownValue({ tally }: Explanation): TableFigure {
  if (tally.bound !== "between") return tallyFigure(tally);
  return { ...figureCell(tally.value), tone: "between" };
}

function everyStep(
  e: Explanation,
  depth: number,
  inOrder: (all: readonly Explanation[]) => readonly Explanation[] = (all) => all,
): [number, Explanation][] {
  return [[depth, e], ...inOrder(e.from).flatMap((each) => everyStep(each, depth + 1, inOrder))];
}

/** What is known before what is not, and water that cooking takes up or gives off behind what it is taken from. */
function byShare(a: Explanation, b: Explanation): number {
  const place = ({ tally, line }: Explanation): number =>
    line === undefined ? 2 : tally.bound === "unknown" ? 1 : 0;
  const [first, second] = [place(a), place(b)];
  if (first !== second) return first - second;
  return first === 0 ? compareRatios(b.value, a.value) : compareRatios(b.grams ?? ZERO, a.grams ?? ZERO);
}

function tidyRow([depth, explained]: [number, Explanation], { value }: Explanation): TidyRow {
  const { label, line, food, component, tally, source, steps, grams } = explained;
  const share = value.n === 0n || tally.bound === "unknown" ? undefined : over(explained.value, value);
  const own = { level: exact(depth), label, share, grams, steps: steps.join("; ") };
  const row = line === undefined ? "sum" : "line";
  return { line, food, row, component, ...tallyRow(tally), source, own };
}
