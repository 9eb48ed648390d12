import type { Decimal } from "decimal.js";
import type { Amount } from "../../measure/amount.ts";
import { formatAmount } from "../../measure/format.ts";
import type { Measures } from "../../measure/measures.ts";
import { type Fraction, toDecimal } from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { measuresNote } from "../../sheet/show.ts";
import { Shown } from "../../table/shown.ts";
import { type Cell, type Table, table } from "../../table/table.ts";
import type { LineOffers } from "./candidates.ts";

/** Sheets eaten together, by name. */
export type Sheets = Readonly<Record<string, Sheet>>;

/** What became of one line. */
export interface RoundedLine {
  readonly line: string;
  readonly exact: Amount;
  readonly rounded: Amount;
  /** How far it moved, as a share of what it was: 0.02 is 2 % more. */
  readonly by: Decimal;
  /** Why it was left as it stood, where it was. */
  readonly kept: LineOffers["kept"];
  readonly measurable: boolean;
}

/** What became of one demand, one portion as eaten. */
export interface RoundedDemand {
  readonly demand: string;
  readonly exact: Decimal | null;
  readonly rounded: Decimal | null;
  /** How far outside what was asked, in its unit; 0 within. */
  readonly miss: Decimal;
  readonly withinTolerance: boolean;
  /** What rounding each line to its nearest measure would have brought. */
  readonly lineByLine: Decimal | null;
  /** Lines that say nothing of it, so that it is not proven. */
  readonly silent: readonly string[];
}

/** How far the dish drifted. */
export interface Drift {
  /** Σ |grams ÷ (exact grams × common) − 1| over the lines that were rounded. */
  readonly ratios: Decimal;
  /** The common factor by which the drift is least. */
  readonly common: Decimal;
  /** The worst excess of a target over its tolerance, as a share of it; 0 where all hold. */
  readonly excess: Decimal;
  /** The same of rounding each line to its nearest measure. */
  readonly lineByLine: { readonly ratios: Decimal; readonly excess: Decimal };
}

/** The figures of a rounding that its tables show. */
export interface RoundedFigures {
  readonly lines: readonly RoundedLine[];
  readonly demands: readonly RoundedDemand[];
  readonly drift: Drift;
  readonly nodes: number;
  /** Whose cups and spoons a bare one is: the kitchen's. */
  readonly measures: Measures;
}

/**
 * A sheet that the kitchen can measure. `met`: every target holds within its tolerance, proven least
 * drift; `nearest`: not all can, proven least worst excess; `stopped`: the best found when the search
 * ran out, with bounds that nothing betters.
 */
export class Rounded<S extends Sheet | Sheets> extends Shown {
  readonly status: "met" | "nearest" | "stopped";
  readonly sheet: S;
  readonly lines: readonly RoundedLine[];
  readonly demands: readonly RoundedDemand[];
  readonly drift: Drift;
  /** What no choice betters, where the search stopped before its proof. */
  readonly bound: { readonly excess: Decimal; readonly ratios: Decimal } | undefined;
  /** Choices looked at. */
  readonly nodes: number;
  readonly #measures: Measures;

  /** @internal Use {@link roundToKitchen}. */
  constructor(
    status: "met" | "nearest" | "stopped",
    sheet: S,
    figures: RoundedFigures,
    bound: { excess: Fraction; drift: Fraction } | undefined,
  ) {
    super();
    this.status = status;
    this.sheet = sheet;
    this.lines = figures.lines;
    this.demands = figures.demands;
    this.drift = figures.drift;
    this.nodes = figures.nodes;
    this.#measures = figures.measures;
    this.bound = bound && { excess: toDecimal(bound.excess), ratios: toDecimal(bound.drift) };
  }

  /** Whether nothing better can be chosen, proven. */
  get proven(): boolean {
    return this.status !== "stopped";
  }

  override toTables(): readonly Table[] {
    return [linesTable(this, this.#measures), ...(this.demands.length > 0 ? [demandsTable(this)] : [])];
  }
}

/** Limits that no measurable amounts keep. The sheet stays as it was. */
export class RoundingOutOfReach extends Shown {
  readonly status = "out-of-reach";
  readonly limits: readonly string[];

  /** @internal Use {@link roundToKitchen}. */
  constructor(limits: readonly string[]) {
    super();
    this.limits = limits;
  }

  override toTables(): readonly Table[] {
    const hint = "try a finer scale, more amounts on each side, or a limit that is not firm";
    return [
      table({
        title: "No measurable amounts keep the limits",
        columns: [{ key: "limit", heading: "Limit" }],
        rows: this.limits.map((limit) => [limit]),
        notes: [hint],
      }),
    ];
  }
}

const KEPT: { readonly [K in NonNullable<LineOffers["kept"]>]: string } = {
  "per-portion": "the same for everyone",
  nothing: "nothing of it",
  "as-written": "left as written",
  "not-measurable": "cannot be measured in this kitchen: left as it was",
};

function linesTable(
  r: {
    readonly lines: readonly RoundedLine[];
    readonly drift: Drift;
    readonly status: string;
    readonly bound: Rounded<Sheet>["bound"];
  },
  measures: Measures,
): Table {
  const rows = r.lines.map((line): Cell[] => [
    line.line,
    formatAmount(line.exact, { significant: 3, measures }),
    formatAmount(line.rounded, { measures }),
    line.kept === undefined ? percentBy(line) : KEPT[line.kept],
  ]);
  const { drift } = r;
  return table({
    title: "Amounts for the batch",
    columns: [
      { key: "line", heading: "Line" },
      { key: "exact", heading: "Exact", align: "end" },
      { key: "measured", heading: "Measured", align: "end" },
      { key: "by", heading: "Moved", align: "end" },
    ],
    rows,
    notes: [
      `drift of the ratios: ${percent(drift.ratios)} in all; line by line it would have been ${percent(drift.lineByLine.ratios)}`,
      ...(r.bound ? [`not proven best: the drift could be as little as ${percent(r.bound.ratios)}`] : []),
      ...r.lines
        .filter((line) => line.kept === "per-portion" && !line.measurable)
        .map((line) => `${line.line}: cannot be measured in this kitchen as it stands`),
      ...measuresNote(r.lines.flatMap(({ exact, rounded }) => [exact, ...(rounded.parts ?? [rounded])])),
    ],
  });
}

function demandsTable(r: { readonly demands: readonly RoundedDemand[] }): Table {
  const cell = (value: Decimal | null): string => value?.toSignificantDigits(4).toFixed() ?? "?";
  return table({
    title: "Demands, one portion as eaten",
    columns: [
      { key: "demand", heading: "Demand" },
      { key: "exact", heading: "Exact", align: "end" },
      { key: "measured", heading: "Measured", align: "end" },
      { key: "off", heading: "Off by", align: "end" },
      { key: "lineByLine", heading: "Line by line", align: "end" },
    ],
    rows: r.demands.map((d): Cell[] => [
      d.demand,
      cell(d.exact),
      cell(d.rounded),
      d.miss.isZero() ? "" : cell(d.miss),
      cell(d.lineByLine),
    ]),
    notes: [
      ...r.demands.filter((d) => !d.withinTolerance).map((d) => `${d.demand}: past its tolerance`),
      ...r.demands
        .filter((d) => d.silent.length > 0)
        .map((d) => `${d.demand}: not proven; silent: ${d.silent.join(", ")}`),
    ],
  });
}

function percentBy({ by }: RoundedLine): string {
  return `${by.isPositive() && !by.isZero() ? "+" : ""}${percent(by)}`;
}

function percent(share: Decimal): string {
  return `${share.times(100).toSignificantDigits(2).toFixed()}%`;
}
