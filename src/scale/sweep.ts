import { type ComponentId, component, components } from "../food/components.ts";
import { type ErrorCode, fault, SteelyardError, within } from "../number/error.ts";
import { exact, toText, type Value } from "../number/fraction.ts";
import type { WrittenAmount } from "../recipe/document.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { silentNotes, tallyFigure } from "../sheet/show.ts";
import { Shown } from "../table/shown.ts";
import { type Cell, type Table, table } from "../table/table.ts";
import type { Quantity } from "./demand.ts";
import { type ScaleHow, scale } from "./scale.ts";

/** What to vary: one line's amount, or one target. */
export type Axis =
  | { readonly line: string; readonly amounts: readonly WrittenAmount[] }
  | { readonly target: Quantity | "factor" | "portions"; readonly values: readonly Value[] };

/** Options of {@link sweep}. */
export interface SweepHow extends ScaleHow {
  /** Components in the records; energy and its sources unless told. */
  readonly components?: readonly ComponentId[];
}

/** One point of the grid: where it stands on each axis, and its sheet, or why there is none. */
export interface SweepPoint {
  readonly at: Readonly<Record<string, string>>;
  readonly sheet: Sheet | undefined;
  readonly missed: { readonly code: ErrorCode; readonly message: string } | undefined;
}

/** A grid of sheets, ready for a plot: `toRecords` gives a row for each point and component. */
export class Sweep extends Shown {
  readonly axes: readonly string[];
  readonly points: readonly SweepPoint[];
  readonly components: readonly ComponentId[];

  /** @internal Use {@link sweep}. */
  constructor(axes: readonly string[], points: readonly SweepPoint[], ids: readonly ComponentId[]) {
    super();
    this.axes = axes;
    this.points = points;
    this.components = ids;
  }

  /** A row for each point, components as columns. */
  override toTables(): readonly Table[] {
    const rows = this.points.map(({ at, sheet, missed }): Cell[] => [
      ...this.axes.map((axis) => at[axis] ?? ""),
      ...this.components.map((id) => (sheet ? tallyFigure(sheet.portion(id)) : (missed?.code ?? ""))),
    ]);
    const silent = this.points.flatMap(({ sheet }) =>
      this.components.map((id) => (sheet ? ([components[id].name, sheet.portion(id)] as const) : undefined)),
    );
    return [
      table({
        title: "One portion as eaten",
        columns: [
          ...this.axes.map((axis) => ({ key: `at ${axis}`, heading: axis })),
          ...this.components.map((id) => ({
            key: id,
            heading: components[id].name,
            unit: components[id].unit,
            align: "end" as const,
          })),
        ],
        rows,
        notes: [...new Set(silentNotes([...new Map(silent.filter((s) => s !== undefined))]))],
      }),
    ];
  }

  /** A row for each point and component: long and tidy. */
  toLong(): readonly Table[] {
    const rows = this.points.flatMap(({ at, sheet }) =>
      sheet === undefined
        ? []
        : this.components.map((id): Cell[] => {
            const tally = sheet.portion(id);
            const value = { text: toText(tally.exact), value: toText(tally.exact), tone: "known" } as const;
            return [
              ...this.axes.map((axis) => at[axis] ?? ""),
              id,
              value,
              tally.unit,
              tally.bound,
              tally.missing.join(" "),
            ];
          }),
    );
    const headings = ["component", "amount", "unit", "bound", "silent"];
    const columns = [...this.axes.map((axis) => `at ${axis}`), ...headings].map((key) => ({
      key,
      heading: key,
    }));
    return [table({ columns, rows })];
  }
}

const USUAL: readonly ComponentId[] = ["energy", "protein", "fat", "carbohydrateByDifference", "fibre"];

/**
 * A grid of sheets over one or two axes, each point made from `s` afresh: amounts first, then the
 * targets. A target that cannot be reached is a point without a sheet, and says why.
 *
 * Throws `sweep-malformed` (no axis, more than two, an axis twice or with nothing on it),
 * `line-unknown`, `component-unknown`, and the codes of amounts.
 *
 * @example
 * ```ts
 * const porridge = sheet(
 *   { name: "Porridge", portions: 1, lines: [{ food: "oats-rolled-dry", amount: "100 g" }] },
 *   starterFoods,
 * );
 * const grid = sweep(porridge, [{ target: "energy", values: [379, 758] }]);
 * console.log(grid.points.map((point) => point.sheet?.portion("protein").value.toString())); // => [ '13.15', '26.3' ]
 * ```
 */
export function sweep(s: Sheet, axes: readonly Axis[], how: SweepHow = {}): Sweep {
  const names = axes.map((axis) => ("line" in axis ? axis.line : axis.target));
  checkAxes(s, axes, names);
  const ids = how.components ?? USUAL;
  for (const [i, id] of ids.entries()) within(["components", i], () => component(id));
  const [first = [], second] = axes.map((axis, i) => settings(axis, names[i] ?? ""));
  const grid = second === undefined ? first.map((a) => [a]) : first.flatMap((a) => second.map((b) => [a, b]));
  return new Sweep(
    names,
    grid.map((at) => pointAt(s, at, how)),
    ids,
  );
}

interface Setting {
  readonly name: string;
  readonly shown: string;
  readonly line: WrittenAmount | undefined;
  readonly target: Value | undefined;
}

function settings(axis: Axis, name: string): Setting[] {
  if ("line" in axis) {
    return axis.amounts.map((line) => ({
      name,
      line,
      target: undefined,
      shown: typeof line === "string" ? line : `${String(line.value)} ${line.unit}`,
    }));
  }
  return axis.values.map((target) => ({
    name,
    line: undefined,
    target,
    shown: typeof target === "number" ? toText(exact(target)) : String(target),
  }));
}

function pointAt(s: Sheet, at: readonly Setting[], how: ScaleHow): SweepPoint {
  const amounts = at.flatMap(({ name, line }) => (line === undefined ? [] : [[name, line] as const]));
  const targets = at.flatMap(({ name, target }) => (target === undefined ? [] : [[name, target] as const]));
  const shown = Object.fromEntries(at.map(({ name, shown }) => [name, shown]));
  const edited = amounts.length === 0 ? s : s.edit(Object.fromEntries(amounts));
  if (targets.length === 0) return { at: shown, sheet: edited, missed: undefined };
  try {
    return { at: shown, sheet: scale(edited, Object.fromEntries(targets), how).sheet, missed: undefined };
  } catch (error) {
    if (
      !(error instanceof SteelyardError) ||
      !(error.code === "target-unreachable" || error.code === "target-silent")
    )
      throw error;
    return { at: shown, sheet: undefined, missed: { code: error.code, message: error.message } };
  }
}

function checkAxes(s: Sheet, axes: readonly Axis[], names: readonly string[]): void {
  const hint = "give one or two axes: { line, amounts } or { target, values }";
  if (axes.length < 1 || axes.length > 2) throw fault("sweep-malformed", `${axes.length} axes`, hint);
  if (names[0] === names[1]) throw fault("sweep-malformed", "both axes vary the same thing", hint);
  for (const [i, axis] of axes.entries()) {
    if ("line" in axis) within([i, "line"], () => s.plan.indexOf(axis.line));
    else if (axis.target !== "mass" && axis.target !== "factor" && axis.target !== "portions")
      within([i, "target"], () => component(axis.target));
    const many = "line" in axis ? axis.amounts.length : axis.values.length;
    if (many === 0) throw fault("sweep-malformed", "an axis with nothing on it", hint, [i]);
  }
  const targets = axes.filter((axis) => "target" in axis && axis.target !== "portions");
  if (targets.length > 1)
    throw fault(
      "sweep-malformed",
      "two targets, and one factor meets only one",
      "vary one target and one amount, or use fit",
    );
}
