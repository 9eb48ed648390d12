import { type Exact, exact, isZero, times, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { Formula } from "./data/formulas.ts";
import type { Figure } from "./food.ts";

/** What can be said of a figure beside its value. */
export type MarkKind =
  | "missing"
  | "trace"
  | "below"
  | "borrowed"
  | "calculated"
  | "derived"
  | "presumed"
  | "ranged";

/**
 * All that can be said of a figure beside its value: that nothing is known, or no more than a limit; that it
 * is of another food, that its source calculated it, that it was worked out here, that it is presumed;
 * that it is the middle of a range. Marks, tallies and what is written of them go by this list.
 */
export const markKinds: readonly MarkKind[] = [
  "missing",
  "trace",
  "below",
  "borrowed",
  "calculated",
  "derived",
  "presumed",
  "ranged",
];

/** How a figure came to be known, or that it is not. */
export type FigureKind = "known" | Exclude<MarkKind, "ranged">;

/** One component of a food per 100 g, read: the value that counts, and the interval it may lie in. */
export interface ReadFigure {
  readonly kind: FigureKind;
  /** What is added up: 0 for trace, below and missing. In the component's own unit. */
  readonly value: Exact;
  readonly low?: Exact;
  /** The most it can be; nothing where no limit is known (trace, missing). */
  readonly high?: Exact;
  /** What the figure says of itself: its source, lender or formula. */
  readonly note?: string;
  /** What it was computed by here, from other figures of the food. */
  readonly formula?: Formula;
  /** What else is to be said of it, and of the figures it was computed from. */
  readonly inputs?: readonly Exclude<FigureKind, "known" | "missing">[];
  /** Standard error of the value where it is a mean, of how many figures, and the least and most of these. */
  readonly error?: Exact;
  readonly count?: number;
  readonly least?: Exact;
  readonly most?: Exact;
  readonly sourceCode?: string;
}

export const MISSING: ReadFigure = { kind: "missing", value: ZERO };

/** Whether the value is a middle figure of an interval; of a trace or a limit it is what is known at least. */
export function isRanged({ kind, value, low, high, inputs = [] }: ReadFigure): boolean {
  if (low !== undefined && low !== value && compareRatios(low, value) < 0) return true;
  const isFloor = [kind, ...inputs].some((each) => each === "trace" || each === "below");
  return !isFloor && high !== undefined && high !== value && compareRatios(high, value) > 0;
}

/** Reads a figure as a food gives it. */
export function figureAsRead(figure: Figure): ReadFigure {
  if (figure === "trace") return { kind: "trace", value: ZERO, low: ZERO };
  if (typeof figure !== "object" || "toFixed" in figure) return point(figure, "known");
  if ("below" in figure)
    return { kind: "below", value: ZERO, low: ZERO, high: exact(figure.below), ...noted(figure.source) };
  const { kind, note, inputs } = provenance(figure);
  return {
    ...point(figure.value, kind),
    ...(inputs.length > 0 && { inputs }),
    ...(figure.low === undefined ? {} : { low: exact(figure.low) }),
    ...(figure.high === undefined ? {} : { high: exact(figure.high) }),
    ...noted(note),
    ...statistics(figure),
  };
}

function statistics({ error, count, least, most, sourceCode }: FullFigure): Partial<ReadFigure> {
  return {
    ...(error !== undefined && { error: exact(error) }),
    ...(count !== undefined && { count }),
    ...(least !== undefined && { least: exact(least) }),
    ...(most !== undefined && { most: exact(most) }),
    ...(sourceCode !== undefined && { sourceCode }),
  };
}

type FullFigure = Extract<Figure, { readonly value: unknown }>;

/** What a figure says of itself, one entry for each thing to be said. */
export function figureMarks({ kind, inputs = [] }: ReadFigure): readonly Exclude<FigureKind, "known">[] {
  return kind === "known" ? inputs : [...new Set([kind, ...inputs])];
}

/**
 * A figure of which a share is left: worked out, whatever it was before. Of nothing nothing can go, and a
 * trace stays one.
 */
export function shareOfFigure(figure: ReadFigure, left: Exact): ReadFigure {
  const { kind, inputs = [] } = figure;
  if (kind === "missing" || kind === "trace" || (figure.high && isZero(figure.high))) return figure;
  const said = kind === "known" || kind === "derived" ? inputs : [kind, ...inputs];
  const isLimit = kind === "below";
  return {
    ...figure,
    kind: isLimit ? kind : "derived",
    inputs: isLimit
      ? [...new Set([...inputs, "derived" as const])]
      : said.filter((each) => each !== "derived"),
    value: times(figure.value, left),
    ...timesEach(figure, left),
  };
}

/** What is told in the component's unit beside the value, times the same. */
function timesEach(figure: ReadFigure, left: Exact): Partial<ReadFigure> {
  const told = (["low", "high", "error", "least", "most"] as const).flatMap((name) => {
    const each = figure[name];
    return each === undefined ? [] : [[name, times(each, left)]];
  });
  return Object.fromEntries(told);
}

/** A figure that rests on something presumed. */
export function presuming(figure: ReadFigure): ReadFigure {
  const { kind, inputs = [] } = figure;
  return kind === "missing" || kind === "presumed"
    ? figure
    : { ...figure, inputs: [...new Set([...inputs, "presumed" as const])] };
}

function point(value: Parameters<typeof exact>[0], kind: FigureKind): ReadFigure {
  const at = exact(value);
  return { kind, value: at, low: at, high: at };
}

function noted(note: string | undefined): { note?: string } {
  return note === undefined ? {} : { note };
}

/** What is said of how a figure came to be, the weightiest first; of several, the rest are its inputs. */
function provenance(figure: FullFigure): {
  kind: FigureKind;
  note: string | undefined;
  inputs: NonNullable<ReadFigure["inputs"]>;
} {
  const { borrowedFrom, derived, calculated, presumed, source } = figure;
  if (borrowedFrom === undefined && derived === undefined && calculated === undefined)
    return presumed
      ? { kind: "presumed", note: source ?? "presumed zero by the source", inputs: [] }
      : { kind: "known", note: source, inputs: [] };
  const said = [
    ...(borrowedFrom === undefined
      ? []
      : [["borrowed", borrowedFrom, `borrowed from ${borrowedFrom}`] as const]),
    ...(derived === undefined ? [] : [["derived", derived, `derived: ${derived}`] as const]),
    ...(calculated === undefined ? [] : [["calculated", calculated, `calculated: ${calculated}`] as const]),
    ...(presumed ? [["presumed", "in part presumed zero", "in part presumed zero"] as const] : []),
  ];
  const [first, ...others] = said;
  const how = [first?.[1], ...others.map(([, , words]) => words)].join("; ");
  return {
    kind: first?.[0] ?? "known",
    note: source === undefined ? how : `${how}: ${source}`,
    inputs: others.map(([kind]) => kind),
  };
}
