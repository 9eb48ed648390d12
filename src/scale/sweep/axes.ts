import { anyText, asWritten, figureWritten } from "../../document/leaves.ts";
import { read } from "../../document/read.ts";
import { isRecord } from "../../document/safe.ts";
import { choice, coded, fields, list, once, type Schema } from "../../document/schema.ts";
import type { Amount } from "../../measure/amount.ts";
import { figure as readFigure } from "../../measure/figure.ts";
import { exactText } from "../../number/digits.ts";
import { collect, type Fault, fault, throwIfAny } from "../../number/error.ts";
import { type Exact, exact, over, times, type Value } from "../../number/exact.ts";
import type { WrittenAmount } from "../../recipe/document.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Quantity } from "../demand.ts";
import { unitOf } from "../linear.ts";
import { quantity } from "../quantity.ts";
import type { ReadAxis, Setting } from "./axis.ts";
import { type VariedAxis, variedAxis, variedSchema, variedSchemas } from "./varied.ts";

/**
 * What to vary: one line's amount, or one target; what cooking leaves, as yield factors of the recipe or as
 * shares of a component that a line keeps; a food's figure for 100 g, or its price for 100 g as purchased.
 */
export type Axis = LineAxis | TargetAxis | VariedAxis;

/** Amounts that one line takes, one after another. */
export interface LineAxis {
  readonly line: string;
  readonly amounts: readonly WrittenAmount[];
}

/** Figures that one portion is brought to, or factors, or numbers of portions. */
export interface TargetAxis {
  readonly target: Quantity | "factor" | "portions";
  readonly values: readonly Value[];
}

const HINT = "give one or two axes: { line, amounts } or { target, values }, or one of what is known";

/** Reads the axes, all faults at once. Throws what {@link sweep} says. */
export function readAxes(s: Sheet, given: unknown): ReadAxis[] {
  const axes = read(axesSchema(), given, "sweep-malformed", Array.isArray(given) ? [] : ["axes"]);
  const faults: Fault[] = [];
  const made = axes.flatMap(
    (axis, i) =>
      collect(faults, [i], () =>
        "target" in axis
          ? targetAxis(axis.target, axis.values)
          : "amounts" in axis
            ? lineAxis(s, axis.line, axis.amounts)
            : variedAxis(s, axis),
      ) ?? [],
  );
  throwIfAny(faults);
  checkTogether(made);
  return made;
}

const axesSchema: () => Schema<readonly Axis[]> = /* @__PURE__ */ once(() => {
  const byLine = fields<LineAxis>({
    line: anyText(),
    amounts: list(asWritten<WrittenAmount>(), { least: 1 }),
  });
  const byTarget = fields<TargetAxis>({
    target: coded("component-unknown", quantity(["factor", "portions"])),
    values: list(figureWritten(), { least: 1 }),
  });
  const pick = (given: unknown): Schema<Axis> | undefined =>
    isRecord(given) ? (variedSchema(given) ?? (given.line === undefined ? byTarget : byLine)) : undefined;
  const axis = choice<Axis>(
    [byLine, byTarget, ...variedSchemas()],
    pick,
    "an axis: { line, amounts } or { target, values }",
  );
  return list(axis, { least: 1, most: 2, like: "{ line, amounts } or { target, values }" });
});

function checkTogether(axes: readonly ReadAxis[]): void {
  const [first, second] = axes;
  if (!first || !second) return;
  const isTarget = ({ settings }: ReadAxis): boolean => settings[0]?.target !== undefined;
  if (first.name === second.name) throw fault("sweep-malformed", "both axes vary the same thing", HINT);
  if (axes.every((axis) => isTarget(axis) && axis.name !== "portions"))
    throw fault(
      "sweep-malformed",
      "two targets, and one factor meets only one",
      "vary one target and one amount, or use fit",
    );
}

function lineAxis(s: Sheet, name: string, amounts: readonly WrittenAmount[]): ReadAxis {
  const faults: Fault[] = [];
  const i = collect(faults, ["line"], () => s.plan.indexOf(name));
  throwIfAny(faults);
  const reader = s.plan.lines[i ?? 0]?.reader;
  const read = amounts.flatMap((each, k) => collect(faults, ["amounts", k], () => reader?.read(each)) ?? []);
  throwIfAny(faults);
  const [first] = read;
  const inFirst = first && read.map((each) => inUnitOf(each, first));
  const settings = amounts.map((line, k): Setting => {
    const shown = typeof line === "string" ? line : `${String(read[k]?.value)} ${read[k]?.unit}`;
    return { name, shown, figure: inFirst?.[k], line, target: undefined };
  });
  // Pieces and grams are not on one scale.
  if (!first || !settings.every((each) => each.figure !== undefined))
    return { name, unit: undefined, settings: settings.map((each) => ({ ...each, figure: undefined })) };
  return { name, unit: first.unit, settings };
}

function inUnitOf(each: Amount, first: Amount): Exact | undefined {
  if (each.kind !== first.kind) return undefined;
  if (each.size && first.size) return over(times(each.value, each.size), first.size);
  return each.unit === first.unit ? each.value : undefined;
}

function targetAxis(name: Quantity | "factor" | "portions", values: readonly Value[]): ReadAxis {
  const isNumber = name === "factor" || name === "portions";
  const faults: Fault[] = [];
  const unit = isNumber ? undefined : unitOf(name);
  const settings = values.flatMap((target, k): Setting[] => {
    const figure = collect(faults, ["values", k], () =>
      unit === undefined ? exact(target) : readFigure(target, unit),
    );
    if (!figure) return [];
    const shown = typeof target === "number" ? exactText(figure) : String(target);
    return [{ name, shown, figure, line: undefined, target }];
  });
  throwIfAny(faults);
  return { name, unit, settings };
}
