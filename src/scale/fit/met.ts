import { showFigure } from "../../measure/showFigure.ts";
import type { Exact } from "../../number/exact.ts";
import { Result } from "../../number/result.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { SolvedMet } from "../engine/solveTask.ts";
import { totalDeparture } from "../engine/task.ts";
import type { ScaleNote } from "../move.ts";
import { type Answer, type FitFactor, type FitOutcome, type NotProven, notProvenOf } from "./answer.ts";
import { bindingOf, type FitBinding } from "./binding.ts";
import { dishNames, type Sheets, sheetsByName } from "./sheets.ts";

/** Every demand is met, with the least departure. What is costly to tell is worked out when asked for. */
export abstract class Met extends Result {
  readonly is = "steelyard/fit@1";
  readonly status = "met";
  readonly #solved: SolvedMet;
  #binding: readonly FitBinding[] | undefined;

  /** @internal */
  constructor(solved: SolvedMet) {
    super();
    this.#solved = solved;
  }

  get #answer(): Answer {
    return this.#solved.answer;
  }

  /** The common factor: what held lines were multiplied by, of several sheets those of the one that sets it. */
  get factor(): Exact {
    return this.#answer.common;
  }

  /** Every part and adjustable line with its factor, and each further sheet, by name. */
  get factors(): readonly FitFactor[] {
    return this.#answer.factors;
  }

  /** Those of them that left their dish's factor, or the common one. */
  get departures(): readonly FitFactor[] {
    return this.factors.filter(({ departure }) => departure.n !== 0n);
  }

  /** What was made least: the sum of departures, a fall counted twice. */
  get departure(): Exact {
    return totalDeparture(this.#solved.found);
  }

  /** What the portion brings of each demand. */
  get outcomes(): readonly FitOutcome[] {
    return this.#answer.outcomes;
  }

  /** Demands and line bounds that the answer stands right at, and what easing each would buy. */
  get binding(): readonly FitBinding[] {
    this.#binding ??= bindingOf(this.#solved.found, this.#solved.task.pivots);
    return this.#binding;
  }

  /** Demands that lines are silent on: met by what is known, and not proven. */
  get notProven(): readonly NotProven[] {
    return notProvenOf(this.#solved.task);
  }

  /** What a cook should know of the new amounts. */
  get notes(): readonly ScaleNote[] {
    return this.#answer.notes;
  }

  override toString(): string {
    return `every demand is met, at ${showFigure(this.factor)} times the recipe`;
  }

  /** @internal The fitted sheets, in the order of their names. */
  fitted(): readonly Sheet[] {
    return this.#answer.sheets;
  }
}

/** A sheet that meets its demands. */
export class FitMet extends Met {
  get sheet(): Sheet {
    return this.fitted()[0] as Sheet;
  }
}

/** Sheets that meet their demands together. */
export class FitMetTogether extends Met {
  readonly #names: readonly string[];

  /** @internal */
  constructor(solved: SolvedMet) {
    super(solved);
    this.#names = dishNames(solved.task);
  }

  get sheets(): Sheets {
    return sheetsByName(this.#names, this.fitted());
  }
}
