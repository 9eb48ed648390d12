import { absolute, type Exact, minus, ONE, over, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Bound } from "../../sheet/tally.ts";
import type { Demand } from "../demand.ts";
import { type Constraint, quotientAt, sideMissed } from "../engine/constraints.ts";
import type { Point } from "../engine/linear.ts";
import { BASE, baseOfMover, type Dish, lineFactorsAt, type Mover, nameIn } from "../engine/model.ts";
import type { ReadDemand } from "../engine/readDemand.ts";
import type { Problem, Task } from "../engine/task.ts";
import { moveLines, notesOn, type ScaleNote } from "../move.ts";
import { boundAt } from "./bound.ts";
import { boundText, demandText, differenceText, listText, subjectFigure, subjectUnit } from "./words.ts";

/** What a part or an adjustable line was multiplied by. */
export interface FitFactor {
  readonly kind: "line" | "part" | "sheet";
  /** The line's key, the part's or the sheet's name; `sheet/key` where several sheets are fitted. */
  readonly name: string;
  /** What its amounts of one portion were multiplied by; of a sheet, those of its base. */
  readonly factor: Exact;
  /** Its factor over its dish's: 1.5 is half as much again for the size of the dish. Of a sheet, over the common factor. */
  readonly ratio: Exact;
  /**
   * How far its factor is from its dish's, a sheet's from the common one, over the common factor: what a
   * fit makes least. Of one sheet alone that is `ratio` less 1.
   */
  readonly departure: Exact;
  /** Whether it had to keep its dish's factor, since a line in it says nothing of a figure to be reached. */
  readonly kept: boolean;
}

/** What a demand asked, and what the portion brings. */
export interface FitOutcome {
  readonly demand: Demand;
  /** The demand in words: `protein at least 30 g`. */
  readonly asked: string;
  /** What one portion brings: an amount in `unit`, a share (0 to 1) or a ratio; null where there is nothing to take it of. */
  readonly brings: Exact | null;
  readonly unit: string;
  /** How the figure bounds the truth, by what is known of each line. */
  readonly bound: Bound;
  readonly met: boolean;
  /** By how much the portion falls short (below 0) or goes over (above 0); 0 where the demand is met. */
  readonly miss: Exact;
  readonly text: string;
}

/** A demand that the data cannot prove. */
export interface NotProven {
  readonly demand: Demand;
  /** Lines that say nothing of it. */
  readonly silent: readonly string[];
  /** Lines of which only a trace, or a limit that they stay under, is told, where more would break the demand. */
  readonly loose: readonly string[];
  /** Of a firm demand that is no mere limit, lines that count with a middle figure, from which the truth may lie far. */
  readonly ranged: readonly string[];
  /** Of a demand with a confidence, lines that count as they stand, since nobody says how sure they are. */
  readonly unsure: readonly string[];
  readonly text: string;
}

/** A point read back: what every line is multiplied by, what the portion brings. */
export class Answer {
  readonly task: Task;
  readonly problem: Problem;
  readonly point: Point;
  /** The common factor. */
  readonly common: Exact;
  #sheets: readonly Sheet[] | undefined;

  constructor(task: Task, problem: Problem, point: Point) {
    this.task = task;
    this.problem = problem;
    this.point = point;
    this.common = over(ONE, point.u);
  }

  /** The fitted sheets, in the order of the dishes. */
  get sheets(): readonly Sheet[] {
    this.#sheets ??= this.problem.model.dishes.map(({ sheet }, d) =>
      moveLines(sheet, this.lineFactors[d] ?? [], sheet.values.portions),
    );
    return this.#sheets;
  }

  /** What each line is multiplied by, by dish and line. */
  get lineFactors(): readonly (readonly Exact[])[] {
    return lineFactorsAt(this.problem.model, this.point);
  }

  get factors(): FitFactor[] {
    const { movers, kept } = this.problem.model;
    const all = [
      ...movers.map((mover, j) => this.#factor(mover, this.point.ratios[j] ?? ONE, false)),
      ...kept.map((mover) => this.#factor(mover, this.#baseRatio(mover), true)),
    ];
    return all.sort((a, b) => (a.name === b.name ? (a.kind < b.kind ? -1 : 1) : a.name < b.name ? -1 : 1));
  }

  /** What a mover departs from, over the common factor. */
  #baseRatio(mover: Mover): Exact {
    const base = baseOfMover(this.problem.model, mover);
    return base === BASE ? ONE : (this.point.ratios[base] ?? ONE);
  }

  #factor(mover: Mover, own: Exact, kept: boolean): FitFactor {
    const { kind, name } = mover;
    const base = this.#baseRatio(mover);
    const exactFactor = times(own, this.common);
    const departure = minus(own, base);
    return {
      kind: kind === "dish" ? "sheet" : kind,
      name,
      factor: exactFactor,
      // Of nothing there is no proportion to leave.
      ratio: base.n === 0n ? ONE : over(own, base),
      departure,
      kept,
    };
  }

  get outcomes(): FitOutcome[] {
    const asked = new Map(this.task.asked.map((each) => [each.demand, each]));
    return demandsIn(this.problem).map(({ constraint, demand }) => {
      const brings = quotientAt(constraint, this.point);
      const { within, brought = NOTHING } = asked.get(demand) ?? {};
      const sheets = within ? within.flatMap((d) => this.sheets[d] ?? []) : this.sheets;
      const bound = boundAt(sheets, demand.subject, brought);
      return outcomeOf(constraint, demand, this.point, brings, bound);
    });
  }

  get notes(): ScaleNote[] {
    return notesOf(this.problem.model.dishes, this.sheets);
  }
}

const NOTHING = { silent: [], loose: [], looseRest: [], ranged: [], unsure: [], isHigh: false } as const;

/** What a cook should know of sheets made from dishes, in their order. */
export function notesOf(dishes: readonly Dish[], sheets: readonly Sheet[]): ScaleNote[] {
  return dishes.flatMap((dish, d) =>
    notesOn(dish.sheet, sheets[d] ?? dish.sheet).map((note) =>
      note.line === undefined || dish.name === undefined
        ? note
        : { ...note, line: nameIn(dish, note.line), text: nameIn(dish, note.text) },
    ),
  );
}

/** The demands among a problem's constraints. */
export function demandsIn({ constraints }: Pick<Problem, "constraints">): {
  readonly constraint: Constraint;
  readonly demand: ReadDemand;
}[] {
  return constraints.flatMap((constraint) =>
    constraint.on.kind === "demand" ? [{ constraint, demand: constraint.on.demand }] : [],
  );
}

function outcomeOf(
  constraint: Constraint,
  read: ReadDemand,
  point: Point,
  brings: Exact | null,
  bound: Bound,
): FitOutcome {
  const { demand, subject } = read;
  const miss = brings ? missOf(constraint, brings) : ZERO;
  return {
    demand,
    asked: demandText(read),
    brings,
    unit: subjectUnit(subject),
    bound,
    // It can fail where there is nothing to divide by.
    met: sideMissed(constraint, point) === undefined,
    miss,
    text: outcomeText(read, brings, bound),
  };
}

/** How far a figure falls short of what is asked (below 0) or goes over (above 0). */
export function missOf({ least, most }: Pick<ReadDemand, "least" | "most">, brings: Exact): Exact {
  if (least && compareRatios(brings, least) < 0) return minus(brings, least);
  return most && compareRatios(brings, most) > 0 ? minus(brings, most) : ZERO;
}

/** Says in a sentence what a portion makes of a demand. */
export function outcomeText(read: ReadDemand, brings: Exact | null, bound: Bound): string {
  const asked = demandText(read);
  if (brings === null) return `${asked}: there is nothing to take it of`;
  const now = boundText(subjectFigure(read.subject, brings), bound);
  const miss = missOf(read, brings);
  if (miss.n === 0n) return `${asked}: the portion brings ${now}`;
  const size = differenceText(read.subject, absolute(miss));
  return `${asked}: ${size} ${miss.n < 0n ? "short" : "over"}; the portion brings ${now}`;
}

/** Demands that lines are silent on, or of which what they tell could break it; of firm ones, those that rest on middle figures. */
export function notProvenOf({ asked }: Pick<Task, "asked">): NotProven[] {
  return asked.flatMap(({ demand, brought }): NotProven[] => {
    if (!demand.least && !demand.most) return [];
    const silent = namesOf(brought.silent);
    const loose = namesOf([
      ...(demand.most ? brought.loose : []),
      ...(demand.least ? brought.looseRest : []),
    ]).filter((name) => !silent.includes(name));
    const ranged = demand.firm ? namesOf(brought.ranged) : [];
    const unsure = namesOf(brought.unsure);
    if (silent.length + loose.length + ranged.length + unsure.length === 0) return [];
    const why = [
      ...(silent.length > 0 ? [`${few(silent)} ${silent.length === 1 ? "says" : "say"} nothing of it`] : []),
      ...(loose.length > 0 ? [`${few(loose)} may bring more than is counted`] : []),
      ...(unsure.length > 0
        ? [`nobody says how sure ${few(unsure)} ${unsure.length === 1 ? "is" : "are"}`]
        : []),
      ...(ranged.length > 0 ? [`of ${few(ranged)} a range is published, and its middle is counted`] : []),
    ];
    const text = `${demandText(demand)} is not proven: ${why.join("; ")}`;
    return [{ demand: demand.demand, silent, loose, ranged, unsure, text }];
  });
}

function namesOf(lines: readonly { readonly name: string }[]): string[] {
  return [...new Set(lines.map(({ name }) => name))].sort();
}

function few(names: readonly string[]): string {
  return listText(names.length > 6 ? [...names.slice(0, 5), `${names.length - 5} more`] : names);
}
