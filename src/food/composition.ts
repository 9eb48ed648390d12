import { exact, type Fraction, gcd, isZero, lcm, ZERO } from "../number/fraction.ts";
import { type ComponentId, componentIds } from "./components.ts";
import type { Figure, FoodInput } from "./food.ts";
import { presumedZero } from "./presumed.ts";

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
}

/**
 * All components of a food in one row of whole numbers over one common denominator, in registry
 * order, so that a sheet's totals are integer sums. `kinds` tells zeros that are known from gaps.
 */
export interface Composition {
  readonly values: readonly bigint[];
  readonly scale: bigint;
  readonly kinds: readonly FigureKind[];
}

const MISSING: ReadFigure = { kind: "missing", value: ZERO };

/** Reads what a food says of one component, presumed zeros included. */
export function readFigure(food: FoodInput, id: ComponentId): ReadFigure {
  const figure = Object.hasOwn(food.per100g, id) ? food.per100g[id] : undefined;
  if (figure !== undefined) return read(figure);
  const reason = presumedZero(food, id);
  return reason === undefined
    ? MISSING
    : { kind: "presumed", value: ZERO, low: ZERO, high: ZERO, note: reason };
}

/** The whole composition of a food. */
export function compose(food: FoodInput): Composition {
  const figures = componentIds.map((id) => readFigure(food, id));
  const scale = figures.reduce((all, f) => lcm(all, f.value.d), 1n);
  return {
    scale,
    values: figures.map((f) => f.value.n * (scale / f.value.d)),
    kinds: figures.map((f) => f.kind),
  };
}

/** A row of fractions over one denominator in lowest terms. */
export function overOneScale(values: readonly Fraction[]): { values: bigint[]; scale: bigint } {
  const scale = values.reduce((all, v) => lcm(all, v.d), 1n);
  const whole = values.map((v) => v.n * (scale / v.d));
  const common = whole.reduce((all, v) => gcd(all, v < 0n ? -v : v), scale);
  return common > 1n
    ? { values: whole.map((v) => v / common), scale: scale / common }
    : { values: whole, scale };
}

function read(figure: Figure): ReadFigure {
  if (figure === "trace") return { kind: "trace", value: ZERO, low: ZERO };
  if (typeof figure !== "object" || "toFixed" in figure) return point(figure, "known");
  if ("below" in figure) {
    return { kind: "below", value: ZERO, low: ZERO, high: exact(figure.below), ...noted(figure.source) };
  }
  const { kind, note } = provenance(figure);
  const whole = point(figure.value, kind);
  return {
    ...whole,
    ...(figure.low === undefined ? {} : { low: exact(figure.low) }),
    ...(figure.high === undefined ? {} : { high: exact(figure.high) }),
    ...noted(note),
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
  if (figure.borrowedFrom !== undefined) return { kind: "borrowed", note: figure.borrowedFrom };
  if (figure.derived !== undefined) return { kind: "derived", note: figure.derived };
  if (figure.presumed) return { kind: "presumed", note: figure.source ?? "presumed zero by the source" };
  return { kind: "known", note: figure.source };
}

/** Whether the figure counts as data: a food is silent only where it says nothing at all. */
export function isKnown(kind: FigureKind): boolean {
  return kind !== "missing";
}

export function isKnownZero(figure: ReadFigure): boolean {
  return (
    figure.kind !== "missing" && figure.kind !== "trace" && figure.kind !== "below" && isZero(figure.value)
  );
}
