import { compare, exact, type Fraction, times, ZERO } from "../number/fraction.ts";
import type { Formula } from "./data/formulas.ts";
import type { Figure } from "./food.ts";

/** How a figure came to be known, or that it is not. */
export type FigureKind = "known" | "trace" | "below" | "borrowed" | "derived" | "presumed" | "missing";

/** One component of a food per 100 g, read: the value that counts, and the interval it may lie in. */
export interface ReadFigure {
  readonly kind: FigureKind;
  /** What is added up: 0 for trace, below and missing. In the component's own unit. */
  readonly value: Fraction;
  readonly low?: Fraction;
  /** The most it can be; nothing where no limit is known (trace, missing). */
  readonly high?: Fraction;
  /** What the figure says of itself: its source, lender or formula. */
  readonly note?: string;
  /** What it was computed by here, from other figures of the food. */
  readonly formula?: Formula;
  /** What the figures it was computed from say of themselves, where that is not plainly known. */
  readonly inputs?: readonly Exclude<FigureKind, "known" | "missing">[];
}

export const MISSING: ReadFigure = { kind: "missing", value: ZERO };

/** Whether the value is a middle figure of an interval; of a trace or a limit it is what is known at least. */
export function isRanged({ kind, value, low, high, inputs = [] }: ReadFigure): boolean {
  if (low !== undefined && low !== value && compare(low, value) < 0) return true;
  const isFloor = [kind, ...inputs].some((each) => each === "trace" || each === "below");
  return !isFloor && high !== undefined && high !== value && compare(high, value) > 0;
}

/** Reads a figure as a food gives it. */
export function read(figure: Figure): ReadFigure {
  if (figure === "trace") return { kind: "trace", value: ZERO, low: ZERO };
  if (typeof figure !== "object" || "toFixed" in figure) return point(figure, "known");
  if ("below" in figure)
    return { kind: "below", value: ZERO, low: ZERO, high: exact(figure.below), ...noted(figure.source) };
  const { kind, note } = provenance(figure);
  return {
    ...point(figure.value, kind),
    ...(figure.low === undefined ? {} : { low: exact(figure.low) }),
    ...(figure.high === undefined ? {} : { high: exact(figure.high) }),
    ...noted(note),
  };
}

/** A figure of which a share is left. */
export function share(figure: ReadFigure, left: Fraction): ReadFigure {
  if (figure.kind === "missing") return figure;
  return {
    ...figure,
    value: times(figure.value, left),
    ...(figure.low === undefined ? {} : { low: times(figure.low, left) }),
    ...(figure.high === undefined ? {} : { high: times(figure.high, left) }),
  };
}

function point(value: Parameters<typeof exact>[0], kind: FigureKind): ReadFigure {
  const at = exact(value);
  return { kind, value: at, low: at, high: at };
}

function noted(note: string | undefined): { note?: string } {
  return note === undefined ? {} : { note };
}

function provenance(figure: Extract<Figure, { readonly value: unknown }>): {
  kind: FigureKind;
  note: string | undefined;
} {
  const { borrowedFrom, source } = figure;
  if (borrowedFrom !== undefined)
    return { kind: "borrowed", note: source === undefined ? borrowedFrom : `${borrowedFrom}: ${source}` };
  if (figure.derived !== undefined)
    return { kind: "derived", note: source === undefined ? figure.derived : `${figure.derived}: ${source}` };
  if (figure.presumed) return { kind: "presumed", note: figure.source ?? "presumed zero by the source" };
  return { kind: "known", note: figure.source };
}
