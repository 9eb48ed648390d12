import { count } from "../document/leaves.ts";
import { readInto } from "../document/read.ts";
import { fields, list, once, optional, type Schema } from "../document/schema.ts";
import { componentId } from "../food/componentSchema.ts";
import type { ComponentId } from "../food/components.ts";
import { collect, type ErrorCode, type Fault, fault, SteelyardError, throwIfAny } from "../number/error.ts";
import type { Exact } from "../number/exact.ts";
import { Result } from "../number/result.ts";
import { checkSheet } from "../sheet/given.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { type ScaleOptions, scale, scaleShape } from "./scale.ts";
import { type Axis, readAxes } from "./sweep/axes.ts";
import type { Setting } from "./sweep/axis.ts";

export type { Axis } from "./sweep/axes.ts";

/** Options of {@link sweep}. */
export interface SweepOptions extends ScaleOptions {
  /** Components in the records; energy and its sources unless told. */
  readonly components?: readonly ComponentId[];
  /** How many points the grid may have: 10,000 unless told. Some thousand points take a second. */
  readonly most?: number;
}

/** One point of the grid: where it stands on each axis, and its sheet, or why there is none. */
export interface SweepPoint {
  readonly at: Readonly<Record<string, string>>;
  readonly sheet: Sheet | undefined;
  readonly missed: { readonly code: ErrorCode; readonly message: string } | undefined;
}

/**
 * A grid of sheets, ready for a plot: `toRecords` gives a row for each point and component, with where
 * it stands on each axis as a number: in the component's unit, in grams for a mass, in the unit of the
 * axis's first amount for a line (text, where its amounts are not all masses, volumes or one measure).
 */
export class Sweep extends Result {
  readonly is = "steelyard/sweep@1";
  readonly axes: readonly string[];
  readonly points: readonly SweepPoint[];
  readonly components: readonly ComponentId[];
  /** Of the sheet. */
  readonly name: string;
  /** Where each point stands, axis by axis: a figure, or words where the axis has no unit of its own. */
  readonly places: readonly (readonly (Exact | string)[])[];

  /** @internal Use {@link sweep}. */
  constructor(
    name: string,
    axes: readonly string[],
    grid: readonly (readonly Setting[])[],
    points: readonly SweepPoint[],
    ids: readonly ComponentId[],
  ) {
    super();
    this.axes = axes;
    this.points = points;
    this.components = ids;
    this.name = name;
    this.places = grid.map((at) => at.map(({ figure, shown }) => figure ?? shown));
  }

  override toString(): string {
    return `${this.name}: ${this.points.length} points over ${this.axes.join(" and ")}`;
  }
}

const USUAL: readonly ComponentId[] = ["energy", "protein", "fat", "carbohydrateByDifference", "fibre"];

/**
 * A grid of sheets over one or two axes, each point made from `s` afresh: what is known of foods and of
 * cooking first, then amounts, then the targets. A target that cannot be reached is a point without a sheet, and says why.
 *
 * Throws one error with every fault: `sweep-malformed` (no axis, more than two, an axis twice or with
 * nothing on it, options that there are not, more points than `most`), `target-malformed`,
 * `line-unknown`, `component-unknown`, the codes of amounts, and `sheet-malformed` for what is no sheet.
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
export function sweep(s: Sheet, axes: readonly Axis[], how: SweepOptions = {}): Sweep {
  checkSheet(s);
  const faults: Fault[] = [];
  const read = collect(faults, [], () => readAxes(s, axes)) ?? [];
  const options = readInto(faults, sweepHow(), how, "sweep-malformed", ["how"]) ?? {};
  throwIfAny(faults);
  const { components: ids = USUAL, most = MOST_POINTS, silent = "refuse" } = options;
  const [first = [], second] = read.map(({ settings }) => settings);
  const count = first.length * (second?.length ?? 1);
  if (count > most) {
    const hint = "take fewer on each axis, or allow more: { most: … }";
    throw fault("sweep-malformed", `a grid of ${count} points, and ${most} at most`, hint);
  }
  const grid = second === undefined ? first.map((a) => [a]) : first.flatMap((a) => second.map((b) => [a, b]));
  const points = grid.map((at) => pointAt(s, at, { silent }));
  const names = read.map(({ name }) => name);
  return new Sweep(s.name, names, grid, points, ids);
}

const MOST_POINTS = 10_000;

const sweepHow: () => Schema<SweepOptions> = /* @__PURE__ */ once(() =>
  fields<SweepOptions>({
    ...scaleShape(),
    components: optional(list(componentId())),
    most: optional(count(1)),
  }),
);

function pointAt(s: Sheet, at: readonly Setting[], how: ScaleOptions): SweepPoint {
  const amounts = at.flatMap(({ name, line }) => (line === undefined ? [] : [[name, line] as const]));
  const targets = at.flatMap(({ name, target }) => (target === undefined ? [] : [[name, target] as const]));
  const shown = Object.fromEntries(at.map(({ name, shown }) => [name, shown]));
  const varied = at.reduce((made, { vary }) => vary?.(made) ?? made, s);
  const edited = amounts.length === 0 ? varied : varied.edit(Object.fromEntries(amounts));
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
