import { showPercent } from "../../measure/showFigure.ts";
import type { Exact } from "../../number/exact.ts";
import type { Demand } from "../demand.ts";
import type { LimitEnd } from "../engine/constraints.ts";
import type { InTheWay } from "../engine/open.ts";
import { type LeastDeparture, totalDeparture } from "../engine/task.ts";
import { moverText, proportionText } from "../fit/conflict.ts";
import {
  askedText,
  demandText,
  factorText,
  gramsText,
  listText,
  subjectFigure,
  subjectName,
} from "../fit/words.ts";

/** A change that lets everything else be met. Each was tried: the fit was solved again with it. */
export interface FitSuggestion {
  readonly change:
    | "make-adjustable"
    | "ease-demand"
    | "ease-line"
    | "ease-ratio"
    | "ease-common"
    | "ease-share"
    | "change-dose";
  /** Line keys, the part or sheet; empty where a demand or the common factor is meant. */
  readonly names: readonly string[];
  readonly demand: Demand | undefined;
  /** Which end gives way; nothing where a line is made adjustable within half to double its ratio. */
  readonly end: LimitEnd | undefined;
  /** The bound to ease to, exact: grams of a portion for a line, else as the demand or range has it. */
  readonly to: Exact | undefined;
  /** What the departures then total. */
  readonly departure: Exact;
  /** Changes needed beside this one; empty where it is enough by itself. */
  readonly also: readonly FitSuggestion[];
  /** In words, with what is needed beside it. */
  readonly text: string;
}

/** A line, or several together, made adjustable within the usual range. */
export function adjustable(names: readonly string[], found: LeastDeparture): FitSuggestion {
  return {
    change: "make-adjustable",
    names,
    demand: undefined,
    end: undefined,
    to: undefined,
    departure: totalDeparture(found),
    also: [],
    text: `make ${listText(names)} adjustable`,
  };
}

/** What stands in the way, eased to where everything else can be met. */
export function easedTo(standing: InTheWay, to: Exact, found: LeastDeparture): FitSuggestion {
  return {
    demand: undefined,
    end: standing.side,
    to,
    departure: totalDeparture(found),
    also: [],
    ...whatGives(standing, to),
  };
}

/** Changes that are enough only together. */
export function allTogether([first, ...others]: readonly FitSuggestion[]): FitSuggestion[] {
  if (!first) return [];
  return [{ ...first, also: others, text: listText([first, ...others].map(({ text }) => text)) }];
}

function whatGives(
  standing: InTheWay,
  to: Exact,
): Pick<FitSuggestion, "change" | "names" | "text"> & { readonly demand?: Demand } {
  const { side } = standing;
  // What is shown has to do as well as what was found.
  const rounding = side === "most" ? "up" : "down";
  if (standing.on === "common") {
    const text = `let the whole dish go ${farther(side)} ${factorText(to, rounding)} times the recipe (now at ${side} ${factorText(standing.bound)})`;
    return { change: "ease-common", names: [], text };
  }
  if (standing.on === "range") {
    const { kind, name } = standing.mover;
    const what = moverText(standing.mover);
    const bound =
      standing.bound.n === 0n
        ? "no less than none"
        : `at ${side} ${proportionText(standing.mover, standing.bound)}`;
    const text =
      kind === "line"
        ? `let ${what} go ${farther(side)} ${gramsText(to, rounding)} a portion (now ${bound})`
        : `let ${what} go ${farther(side)} ${proportionText(standing.mover, to, rounding)} (now ${bound})`;
    return { change: kind === "line" ? "ease-line" : "ease-ratio", names: [name], text };
  }
  const { on } = standing.constraint;
  if (on.kind === "sheet") {
    const now = factorText(standing.constraint[side] ?? to);
    const text = `let the ${on.name} sheet go ${farther(side)} ${factorText(to, rounding)} times its recipe (now at ${side} ${now})`;
    return { change: "ease-common", names: [on.name], text };
  }
  if (on.kind === "share") {
    const text = `let ${on.name} go ${farther(side)} ${showPercent(to, { significant: 3, rounding })} of the day's energy`;
    return { change: "ease-share", names: [on.name], text };
  }
  if (on.kind === "line") {
    const change = on.isDose ? "change-dose" : "ease-line";
    const grams = gramsText(to, rounding);
    const text = on.isDose
      ? `give everyone ${grams} of ${on.name} a portion (now ${gramsText(standing.constraint.least ?? to)})`
      : `let ${on.name} go ${farther(side)} ${grams} a portion (now at ${side} ${gramsText(standing.constraint[side] ?? to)})`;
    return { change, names: [on.name], text };
  }
  const { demand, subject, firm } = on.demand;
  const figure = subjectFigure(subject, to, rounding);
  const text = firm
    ? `${demandText(on.demand)} is firm; all else could be met with ${subjectName(subject)} at ${figure}`
    : `accept ${subjectName(subject)} ${farther(side)} ${figure} (asked: ${askedText(on.demand)})`;
  return { change: "ease-demand", names: [], demand, text };
}

function farther(side: LimitEnd): string {
  return side === "most" ? "up to" : "down to";
}
