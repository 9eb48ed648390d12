import type { Exact } from "../../number/exact.ts";
import { Result } from "../../number/result.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Demand } from "../demand.ts";
import type { LimitEnd } from "../engine/constraints.ts";
import type { InTheWay } from "../engine/open.ts";
import type { SolvedMissed } from "../engine/solveTask.ts";
import { type Problem, type Task, taskProblem } from "../engine/task.ts";
import type { ScaleNote } from "../move.ts";
import { type Advice, adviceFor } from "../waysOut/advice.ts";
import type { FitSuggestion } from "../waysOut/suggestion.ts";
import { eachAlone, type FitAlone } from "./alone.ts";
import { type Answer, type FitFactor, type FitOutcome, type NotProven, notProvenOf } from "./answer.ts";
import { moverText, standingText, standingTogether } from "./conflict.ts";
import { type DosedOver, dosedOver, dosedOverText } from "./doses.ts";
import { dishNames, type Sheets, sheetsByName } from "./sheets.ts";
import { listText } from "./words.ts";

/** How many of a conflict's members a sentence names. */
const SHOWN = 8;

export abstract class Missed extends Result {
  readonly is = "steelyard/fit-out-of-reach@1";
  readonly status = "out-of-reach";
  readonly #task: Task;
  readonly #problem: Problem;
  readonly #nearest: () => Answer | undefined;
  #standing: readonly InTheWay[] | undefined;
  #advice: Advice | undefined;
  #doses: readonly DosedOver[] | undefined;
  #opened: Problem | undefined;
  #alone: readonly FitAlone[] | undefined;

  /** @internal */
  constructor({ task, problem, nearest }: SolvedMissed) {
    super();
    this.#task = task;
    this.#problem = problem;
    this.#nearest = nearest;
  }

  /** In a sentence, why. */
  get text(): string {
    const all = this.conflict.map(({ text }) => text);
    const more = all.length > SHOWN ? [`and ${all.length - SHOWN} more`] : [];
    const set = [...all.slice(0, SHOWN), ...more].join("; ");
    const doses = this.#dosedOver().map((each) => ` ${dosedOverText(each)}`);
    const why = `These cannot stand together: ${set}.${doses.join("")}`;
    if (this.#problem.model.movers.length > 0) return why;
    return `${this.#nothingMoves()} ${why}`;
  }

  #nothingMoves(): string {
    const { kept } = this.#problem.model;
    if (kept.length === 0) {
      return "No line is adjustable and there is no second part, so one factor has to meet every demand.";
    }
    const [names, many] = [listText(kept.map(moverText)), kept.length > 1];
    return `Only the size of the dish can change, since ${names} ${many ? "do" : "does"} not say all that is asked.`;
  }

  /**
   * A set that cannot stand together, of which each is needed: leave out any one demand or line
   * bound, and the rest of the set can. Lines that are the same for everyone are named where they
   * break a limit by themselves.
   */
  get conflict(): readonly FitConflict[] {
    return this.#standings().map((standing): FitConflict => {
      const on = standing.on === "constraint" ? standing.constraint.on : undefined;
      const ofRange = standing.on === "range" ? "ratio" : "common";
      const kind = on === undefined ? ofRange : on.kind === "sheet" ? "common" : on.kind;
      const named = on && on.kind !== "demand" ? on.name : undefined;
      const name = standing.on === "range" ? standing.mover.name : named;
      const demand = on?.kind === "demand" ? on.demand.demand : undefined;
      return { kind, demand, name, end: standing.side, text: standingText(standing) };
    });
  }

  #standings(): readonly InTheWay[] {
    this.#standing ??= standingTogether(this.#opening(), this.#task.pivots);
    return this.#standing;
  }

  #dosedOver(): readonly DosedOver[] {
    this.#doses ??= dosedOver(this.#task, this.#problem.model);
    return this.#doses;
  }

  /** What is looked through for a way out: doses that break a limit by themselves may change in it. */
  #opening(): Problem {
    this.#opened ??= this.#withDoses(this.#dosedOver().flatMap(({ lines }) => lines));
    return this.#opened;
  }

  #withDoses(lines: DosedOver["lines"]): Problem {
    return lines.length === 0 ? this.#problem : taskProblem(this.#task, { lines, within: "any" });
  }

  /**
   * Ways to make it possible, tried and found to: lines to make adjustable, bounds to ease and how far.
   * Where no single change would, pairs that do; where none does, all that has to give together.
   */
  get suggestions(): readonly FitSuggestion[] {
    return this.#advised().suggestions;
  }

  /** How many changes more there are than `how.tries` let be tried. */
  get untried(): number {
    return this.#advised().untried;
  }

  #advised(): Advice {
    this.#advice ??= adviceFor(this.#task, this.#opening(), this.#standings());
    return this.#advice;
  }

  /** Where no ratio can move: what each demand by itself would give. Empty otherwise. */
  get alone(): readonly FitAlone[] {
    const stuck = this.#problem.model.movers.length === 0 && this.#task.asked.length > 1;
    this.#alone ??= stuck ? eachAlone(this.#task, this.#problem) : [];
    return this.#alone;
  }

  /** What each demand is missed by in the nearest answer, those that are missed. */
  get misses(): readonly FitOutcome[] {
    return this.outcomes.filter(({ met }) => !met);
  }

  /** What the nearest answer brings of each demand; empty where firm demands cannot hold. */
  get outcomes(): readonly FitOutcome[] {
    return this.#nearest()?.outcomes ?? [];
  }

  /** The nearest answer's common factor. */
  get factor(): Exact | undefined {
    return this.#nearest()?.common;
  }

  get factors(): readonly FitFactor[] {
    return this.#nearest()?.factors ?? [];
  }

  get departures(): readonly FitFactor[] {
    return this.factors.filter(({ departure }) => departure.n !== 0n);
  }

  get notProven(): readonly NotProven[] {
    return notProvenOf(this.#task);
  }

  get notes(): readonly ScaleNote[] {
    return this.#nearest()?.notes ?? [];
  }

  override toString(): string {
    return this.text;
  }

  /** @internal The sheets that miss least. */
  nearestSheets(): readonly Sheet[] {
    return this.#nearest()?.sheets ?? [];
  }
}

/** One of a set that cannot stand together. */
export interface FitConflict {
  /** `common` speaks of how many times its recipe a dish may be: the whole, or the sheet that is named. */
  readonly kind: "demand" | "line" | "ratio" | "common" | "share";
  readonly demand: Demand | undefined;
  /** The line, the part or the sheet. */
  readonly name: string | undefined;
  /** The end that stands in the way; of one figure asked, whether it is too much or too little. */
  readonly end: LimitEnd;
  readonly text: string;
}

/** Not every demand can be met: why, how near the sheet comes, and what would help. */
export class FitOutOfReach extends Missed {
  /** The sheet that misses least; nothing where even the firm demands and bounds cannot hold. */
  get nearest(): Sheet | undefined {
    return this.nearestSheets()[0];
  }
}

/** Not every demand can be met by the sheets together. */
export class FitOutOfReachTogether extends Missed {
  readonly #names: readonly string[];

  /** @internal */
  constructor(solved: SolvedMissed) {
    super(solved);
    this.#names = dishNames(solved.task);
  }

  /** The sheets that miss least; nothing where even the firm demands and bounds cannot hold. */
  get nearest(): Sheets | undefined {
    const sheets = this.nearestSheets();
    return sheets.length === 0 ? undefined : sheetsByName(this.#names, sheets);
  }
}
