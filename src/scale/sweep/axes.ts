import { checkFields } from "../../document/fields.ts";
import { refuseUnsafe } from "../../document/safe.ts";
import { component } from "../../food/components.ts";
import type { Amount } from "../../measure/amount.ts";
import { figure as readFigure } from "../../measure/figure.ts";
import { collect, type Fault, fault, kindOf, throwIfAny } from "../../number/error.ts";
import { exact, type Fraction, over, times, toText, type Value } from "../../number/fraction.ts";
import type { WrittenAmount } from "../../recipe/document.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Quantity } from "../demand.ts";
import { unitOf } from "../linear.ts";

/** What to vary: one line's amount, or one target. */
export type Axis =
  | { readonly line: string; readonly amounts: readonly WrittenAmount[] }
  | { readonly target: Quantity | "factor" | "portions"; readonly values: readonly Value[] };

/** One place on an axis. */
export interface Setting {
  readonly name: string;
  /** As it was written. */
  readonly shown: string;
  /** As a number in the axis's unit; nothing where the axis has none. */
  readonly figure: Fraction | undefined;
  readonly line: WrittenAmount | undefined;
  readonly target: Value | undefined;
}

/** An axis, read. */
export interface ReadAxis {
  readonly name: string;
  readonly unit: string | undefined;
  readonly settings: readonly Setting[];
}

const HINT = "give one or two axes: { line, amounts } or { target, values }";

/** Reads the axes, all faults at once. Throws what {@link sweep} says. */
export function readAxes(s: Sheet, given: unknown): ReadAxis[] {
  if (!Array.isArray(given)) throw fault("sweep-malformed", `the axes are ${kindOf(given)}`, HINT, ["axes"]);
  refuseUnsafe(given, "sweep-malformed");
  const axes: readonly unknown[] = given;
  if (axes.length < 1 || axes.length > 2) throw fault("sweep-malformed", `${axes.length} axes`, HINT);
  const faults: Fault[] = [];
  const read = axes.flatMap((axis, i) => collect(faults, [i], () => readAxis(s, axis)) ?? []);
  throwIfAny(faults);
  checkTogether(read);
  return read;
}

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

function readAxis(s: Sheet, axis: unknown): ReadAxis {
  if (typeof axis !== "object" || axis === null) {
    throw fault("sweep-malformed", `an axis is ${kindOf(axis)}`, HINT);
  }
  const fields = ["line", "amounts", "target", "values"];
  const { line, amounts, target, values } = checkFields(axis, fields, "sweep-malformed");
  if (line !== undefined) return lineAxis(s, line as string, listed("amounts", amounts));
  return targetAxis(target as Quantity, listed("values", values));
}

function listed(field: string, given: unknown): readonly unknown[] {
  if (!Array.isArray(given)) throw fault("sweep-malformed", `${field} are ${kindOf(given)}`, HINT, [field]);
  if (given.length === 0) throw fault("sweep-malformed", "an axis with nothing on it", HINT, [field]);
  return given;
}

function lineAxis(s: Sheet, name: string, amounts: readonly unknown[]): ReadAxis {
  const faults: Fault[] = [];
  const i = collect(faults, ["line"], () => s.plan.indexOf(name));
  throwIfAny(faults);
  const reader = s.plan.lines[i ?? 0]?.reader;
  const read = amounts.flatMap(
    (each, k) => collect(faults, ["amounts", k], () => reader?.read(each as WrittenAmount)) ?? [],
  );
  throwIfAny(faults);
  const [first] = read;
  const inFirst = first && read.map((each) => inUnitOf(each, first));
  const settings = amounts.map((each, k): Setting => {
    const line = each as WrittenAmount;
    const shown = typeof line === "string" ? line : `${String(read[k]?.value)} ${read[k]?.unit}`;
    return { name, shown, figure: inFirst?.[k], line, target: undefined };
  });
  // Pieces and grams are not on one scale.
  if (!first || !settings.every((each) => each.figure !== undefined))
    return { name, unit: undefined, settings: settings.map((each) => ({ ...each, figure: undefined })) };
  return { name, unit: first.unit, settings };
}

function inUnitOf(each: Amount, first: Amount): Fraction | undefined {
  if (each.kind !== first.kind) return undefined;
  if (each.size && first.size) return over(times(each.value, each.size), first.size);
  return each.unit === first.unit ? each.value : undefined;
}

function targetAxis(name: Quantity | "factor" | "portions", values: readonly unknown[]): ReadAxis {
  const isNumber = name === "factor" || name === "portions";
  const faults: Fault[] = [];
  if (!isNumber && name !== "mass") collect(faults, ["target"], () => component(name));
  throwIfAny(faults);
  const unit = isNumber ? undefined : unitOf(name);
  const settings = values.flatMap((each, k): Setting[] => {
    const target = each as Value;
    const figure = collect(faults, ["values", k], () =>
      unit === undefined ? exact(target) : readFigure(target, unit),
    );
    if (!figure) return [];
    const shown = typeof target === "number" ? toText(figure) : String(target);
    return [{ name, shown, figure, line: undefined, target }];
  });
  throwIfAny(faults);
  return { name, unit, settings };
}
