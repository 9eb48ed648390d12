import { type ComponentId, componentIds, components } from "../food/components.ts";
import { equals, exact, type Fraction, isZero, minus, over, ZERO } from "../number/fraction.ts";
import { figure, legend } from "../table/figure.ts";
import { Shown } from "../table/shown.ts";
import { type Cell, type Row, type Table, table } from "../table/table.ts";
import type { Asked, Tidy } from "../table/tidy.ts";
import { changesBetween } from "./change.ts";
import { differenceTidy } from "./differenceRecords.ts";
import { checkSheet } from "./given.ts";
import type { Sheet } from "./sheet.ts";
import { stated, tallyFigure } from "./show.ts";
import type { Tally } from "./tally.ts";

/** A line that is not as it was; grams are of one portion. */
export interface LineChange {
  readonly key: string;
  readonly name: string;
  readonly change: "added" | "removed" | "swapped" | "moved";
  readonly before: Fraction | null;
  readonly after: Fraction | null;
  /** After less before. */
  readonly by: Fraction;
}

/** A component of one portion that is not as it was. */
export interface ComponentChange {
  readonly component: ComponentId;
  readonly before: Tally;
  readonly after: Tally;
  /** After less before, line by line: lines that did not move cancel, whether or not they are known. */
  readonly change: Tally;
}

/** A portion that does not weigh what it did, in grams as eaten. */
export interface MassChange {
  readonly before: Fraction;
  readonly after: Fraction;
  /** After less before. */
  readonly by: Fraction;
}

/** What moved between two sheets, for one portion as eaten. */
export class Difference extends Shown {
  readonly lines: readonly LineChange[];
  /** Nothing where a portion weighs the same. */
  readonly mass: MassChange | undefined;
  readonly components: readonly ComponentChange[];
  readonly before: Sheet;
  readonly after: Sheet;

  /** @internal Use {@link difference}. */
  constructor(before: Sheet, after: Sheet) {
    super();
    this.before = before;
    this.after = after;
    this.lines = lineChanges(before, after);
    this.mass = massChange(before.portionMass, after.portionMass);
    const changeIn = changesBetween(before, after);
    this.components = componentIds.flatMap((component): ComponentChange[] => {
      const [was, is] = [before.portion(component), after.portion(component)];
      if (was.same(is)) return [];
      return [{ component, before: was, after: is, change: changeIn(component) }];
    });
  }

  /** Whether a portion is the same, line by line, in its mass and in every component. */
  get none(): boolean {
    return this.lines.length === 0 && this.mass === undefined && this.components.length === 0;
  }

  override toTables(): readonly Table[] {
    return [linesTable(this.lines), figuresTable(this.mass, this.components)];
  }

  /** What moved, before, after and by how much, as tidy rows: `toRecords` reads them. */
  toRows(asked: Asked): Tidy {
    return differenceTidy(this, asked);
  }
}

/**
 * What moved from one sheet to another: lines by key, in grams of one portion, and mass and
 * components of one portion as eaten. Throws `sheet-malformed` for what is no sheet.
 *
 * @example
 * ```ts
 * const was = sheet(
 *   { name: "Porridge", portions: 1, lines: [{ key: "oats", food: "oats-rolled-dry", amount: "50 g" }] },
 *   starterFoods,
 * );
 * const moved = difference(was, was.edit({ oats: "60 g" }));
 * console.log(moved.lines.map((line) => `${line.key} ${line.change} by ${line.by} g`)); // => [ 'oats moved by 10 g' ]
 * ```
 */
export function difference(before: Sheet, after: Sheet): Difference {
  checkSheet(before, "before");
  checkSheet(after, "after");
  return new Difference(before, after);
}

function lineChanges(before: Sheet, after: Sheet): LineChange[] {
  const of = (
    s: Sheet,
  ): Map<string, { readonly name: string; readonly id: string; readonly grams: Fraction }> =>
    new Map(
      s.plan.lines.map(({ line, source }, i) => {
        return [
          line.key,
          {
            name: stated(source.name, source.state),
            id: source.id,
            grams: over(s.values.grams[i] ?? ZERO, s.values.portions),
          },
        ];
      }),
    );
  const [was, is] = [of(before), of(after)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((key): LineChange[] => {
    const [a, b] = [was.get(key), is.get(key)];
    if (a && b && a.id === b.id && equals(a.grams, b.grams)) return [];
    const by = minus(b?.grams ?? ZERO, a?.grams ?? ZERO);
    return [
      {
        key,
        name: b?.name ?? a?.name ?? key,
        change: a === undefined ? "added" : b === undefined ? "removed" : a.id === b.id ? "moved" : "swapped",
        before: a ? a.grams : null,
        after: b ? b.grams : null,
        by,
      },
    ];
  });
}

function massChange(before: Fraction, after: Fraction): MassChange | undefined {
  const by = minus(after, before);
  if (isZero(by)) return undefined;
  return { before, after, by };
}

/** Two figures and what lies between them, with the decimals that it takes to see it. */
function figuresOf(before: Fraction | null, after: Fraction | null, by: Fraction): readonly Cell[] {
  const moved = figure(by);
  const cell = (grams: Fraction | null): Cell => {
    if (grams === null) return { ...figure(ZERO), text: "none" };
    const plain = figure(exact(grams));
    const places = Math.max(decimalsOf(plain.text), decimalsOf(moved.text));
    return places === 0 ? plain : figure(exact(grams), { places });
  };
  return [cell(before), cell(after), moved];
}

/** How many decimals a figure is shown with; none where it is shown as a power of ten. */
function decimalsOf(text: string): number {
  return /^-?\d+\.(\d+)$/.exec(text)?.[1]?.length ?? 0;
}

function linesTable(lines: readonly LineChange[]): Table {
  return table({
    title: "Lines, one portion",
    columns: [
      { key: "line", heading: "Line" },
      { key: "change", heading: "Change" },
      { key: "before", heading: "Before", unit: "g", align: "end" },
      { key: "after", heading: "After", unit: "g", align: "end" },
      { key: "by", heading: "By", unit: "g", align: "end" },
    ],
    rows: lines.map(({ name, change, before, after, by }) => [name, change, ...figuresOf(before, after, by)]),
  });
}

function figuresTable(mass: MassChange | undefined, changes: readonly ComponentChange[]): Table {
  const weighed: Row[] = mass
    ? [{ kind: "body", cells: ["mass", "g", ...figuresOf(mass.before, mass.after, mass.by)] }]
    : [];
  const changed = changes.map(({ component, before, after, change }): Row => {
    const { name, unit } = components[component];
    return {
      kind: "body",
      cells: [name, unit, tallyFigure(before), tallyFigure(after), tallyFigure(change)],
    };
  });
  const rows = [...weighed, ...changed];
  return table({
    title: "Figures, one portion as eaten",
    columns: [
      { key: "component", heading: "Component" },
      { key: "unit", heading: "Unit" },
      { key: "before", heading: "Before", align: "end" },
      { key: "after", heading: "After", align: "end" },
      { key: "by", heading: "By", align: "end" },
    ],
    rows,
    notes: legend(rows),
  });
}
