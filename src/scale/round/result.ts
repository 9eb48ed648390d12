import { formatAmount } from "../../measure/format.ts";
import type { Measures } from "../../measure/measures.ts";
import type { Exact } from "../../number/exact.ts";
import { Result } from "../../number/result.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { type NotProven, notesOf, notProvenOf } from "../fit/answer.ts";
import type { Sheets } from "../fit/sheets.ts";
import { moveLines, type ScaleNote } from "../move.ts";
import { type FoundRounding, leastBroken, type RoundingChoice } from "./choose.ts";
import {
  allHold,
  type Drift,
  driftOf,
  factorOf,
  type RoundedDemand,
  type RoundedLine,
  roundedDemands,
  roundedLines,
} from "./report.ts";

/** What no choice betters, where a search stopped before its proof. */
export interface RoundBound {
  readonly excess: Exact;
  /** Of the choices with the least excess that was found. */
  readonly ratios: Exact;
}

/** Amounts that the kitchen can measure, and what they cost in accuracy. */
abstract class Measured extends Result {
  readonly is = "steelyard/rounding@1";
  /**
   * `met`: every demand holds, targets within their tolerance, and no choice drifts less. `nearest`:
   * not every target holds; of those that held before no choice misses the worst by less, and those
   * that did not are not pursued. `stopped`: the best that was found when the search ran out of its
   * nodes; see `bound`.
   */
  readonly status: "met" | "nearest" | "stopped";
  /** Every line, by sheet, in the recipe's order. */
  readonly lines: readonly RoundedLine[];
  readonly drift: Drift;
  /** The same of rounding each line to its own nearest measure. */
  readonly lineByLine: Drift;
  /** How far from proven the search stopped; nothing where it was proven. */
  readonly bound: RoundBound | undefined;
  /** Choices looked at. */
  readonly nodes: number;
  readonly #found: FoundRounding;
  readonly #best: RoundingChoice;
  #sheets: readonly Sheet[] | undefined;

  /** @internal */
  constructor(found: FoundRounding, best: RoundingChoice) {
    super();
    this.#found = found;
    this.#best = best;
    this.status = statusOf(found, best);
    this.lines = roundedLines(found, best);
    this.drift = driftOf(best);
    this.lineByLine = driftOf(found.lineByLine);
    this.bound = found.bound && boundOf(found.bound);
    this.nodes = found.nodes;
  }

  override toString(): string {
    const lines = this.lines.map(({ line, after }) => `${line} ${formatAmount(after)}`);
    return `to measure: ${lines.join(", ")}`;
  }

  /** Whether it is proven that nothing better can be chosen. */
  get proven(): boolean {
    return this.status !== "stopped";
  }

  /** Every demand with what a portion brought before and brings now. */
  get demands(): readonly RoundedDemand[] {
    return roundedDemands(this.#found, this.#best, this.measured());
  }

  /** Demands that lines are silent on: held by what is known, and not proven. */
  get notProven(): readonly NotProven[] {
    return notProvenOf(this.#found.task);
  }

  /** What a cook should know of the new amounts. */
  get notes(): readonly ScaleNote[] {
    return notesOf(this.#found.task.dishes, this.measured());
  }

  /** @internal Names of the sheets; nothing where it is one alone. */
  names(): readonly (string | undefined)[] {
    return this.#found.task.dishes.map(({ name }) => name);
  }

  /** @internal Whose cups and spoons a bare one is. */
  measures(): Measures {
    return this.#found.task.kitchen.measures;
  }

  /** @internal The sheets in the order of their names, amounts in the kitchen's units. */
  measured(): readonly Sheet[] {
    this.#sheets ??= this.#found.task.dishes.map((_, d) => this.#sheet(d));
    return this.#sheets;
  }

  #sheet(d: number): Sheet {
    const { lines, task } = this.#found;
    const { sheet } = task.dishes[d] as { readonly sheet: Sheet };
    const own = lines.filter((line) => line.dish === d);
    const factors = own.map((line) => factorOf(this.#best.offers, line));
    const { values } = moveLines(sheet, factors, sheet.values.portions);
    const amounts = own.map((line) => this.#best.offers.get(line)?.amount ?? line.exact);
    return sheet.version({ ...values, amounts });
  }
}

/** A sheet whose amounts the kitchen can measure. */
export class Rounded extends Measured {
  get sheet(): Sheet {
    return this.measured()[0] as Sheet;
  }
}

/** Sheets eaten together, whose amounts the kitchen can measure. */
export class RoundedTogether extends Measured {
  get sheets(): Sheets {
    return Object.fromEntries(
      this.names().flatMap((name, d) => {
        const made = this.measured()[d];
        return name === undefined || !made ? [] : [[name, made]];
      }),
    );
  }
}

/** Amounts that keep every limit were not found. */
export class RoundingOutOfReach extends Result {
  readonly is = "steelyard/rounding-out-of-reach@1";
  readonly status = "out-of-reach";
  /** Whether it is proven that there are none; else the search stopped before it had looked everywhere. */
  readonly proven: boolean;
  /** Choices looked at. */
  readonly nodes: number;
  readonly #found: FoundRounding;
  #limits: readonly RoundedDemand[] | undefined;

  /** @internal */
  constructor(found: FoundRounding) {
    super();
    this.#found = found;
    this.proven = found.status === "out-of-reach";
    this.nodes = found.nodes;
  }

  override toString(): string {
    return this.text;
  }

  /** In a sentence, why. */
  get text(): string {
    return this.proven
      ? "No amounts near these that the kitchen can measure keep every firm demand."
      : `No amounts that keep every firm demand were found in ${this.nodes} choices; there may be some.`;
  }

  /** The firm demands, with what the amounts would bring that break them least. No such sheet is handed out. */
  get limits(): readonly RoundedDemand[] {
    this.#limits ??= this.#readLimits();
    return this.#limits;
  }

  #readLimits(): RoundedDemand[] {
    const { task } = this.#found;
    const nearest = leastBroken(this.#found) ?? this.#found.lineByLine;
    const sheets = task.dishes.map(({ sheet }) => sheet);
    return roundedDemands(this.#found, nearest, sheets).filter(({ demand }) => demand.firm);
  }
}

export type { Measured };

function statusOf(found: FoundRounding, best: RoundingChoice): Measured["status"] {
  if (found.status === "stopped" || found.status === "out-of-reach") return "stopped";
  return allHold(found, best) ? "met" : "nearest";
}

function boundOf({ excess, drift }: { readonly excess: Exact; readonly drift: Exact }): RoundBound {
  return {
    excess,
    ratios: drift,
  };
}
