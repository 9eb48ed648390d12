import { showFigure, showPercent } from "../../measure/showFigure.ts";
import { type Exact, equals, fraction, minus, ONE, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Bound } from "../../sheet/tally.ts";
import type { EnergyShareOf } from "../demand.ts";
import type { ReadDemand, Subject } from "../engine/readDemand.ts";
import { quantityName, unitOf } from "../linear.ts";

/** How a cook would say it. Figures are rounded so that what is shown still holds. */

export type FigureRounding = "nearest" | "down" | "up";

const SHARES: { readonly [S in EnergyShareOf]: string } = {
  protein: "protein",
  fat: "fat",
  carbohydrate: "carbohydrate",
  saturatedFat: "saturated fat",
  addedSugars: "added sugars",
  fibre: "fibre",
  alcohol: "alcohol",
};

/** The unit of a subject's figures; shares and ratios have none. */
export function subjectUnit(subject: Subject): string {
  return subject.kind === "amount" ? unitOf(subject.of) : "";
}

/** What a subject is called: `protein`, `energy from fat`, `sodium to potassium`. */
export function subjectName(subject: Subject): string {
  if (subject.kind === "amount") return quantityName(subject.of);
  if (subject.kind === "share") return `energy from ${SHARES[subject.of]}`;
  return subject.of.map(quantityName).join(" to ");
}

/** A figure of a subject: `60 g`, `35%`, `4`. */
export function subjectFigure(subject: Subject, f: Exact, rounding: FigureRounding = "nearest"): string {
  if (subject.kind === "share") return showPercent(f, { significant: 3, rounding });
  const unit = subjectUnit(subject);
  return showFigure(f, { significant: 4, rounding, ...(unit !== "" && { unit }) });
}

/** A difference between two figures of a subject: of shares, in percentage points. */
export function differenceText(subject: Subject, f: Exact): string {
  return subject.kind === "share" ? pointsText(f) : subjectFigure(subject, f);
}

/** A difference of shares: `2 percentage points`. */
export function pointsText(f: Exact): string {
  const points = showPercent(f, { significant: 3 }).replace("%", "");
  return `${points} percentage point${points === "1" || points === "-1" ? "" : "s"}`;
}

/** A figure with what is known of it: `at least 4.1 mg`, `25.7% of what is known`, `785 µg by middle figures`. */
export function boundText(figure: string, bound: Bound): string {
  if (bound === "point") return figure;
  if (bound === "between") return `${figure} by middle figures`;
  return bound === "unknown" ? `${figure} of what is known` : `${bound.replace("-", " ")} ${figure}`;
}

/** What is asked: `exactly 650 kcal`, `at least 30 g`, `20% to 35%`. */
export function askedText(asked: Pick<ReadDemand, "subject" | "least" | "most">): string {
  const { subject } = asked;
  const margin = subject.kind === "amount" ? subject.margin : undefined;
  const sure = margin ? ` with ${showPercent(margin.confidence, { significant: 3 })}` : "";
  return `${amountText(asked)}${sure}`;
}

function amountText({ subject, least, most }: Pick<ReadDemand, "subject" | "least" | "most">): string {
  if (least && most) {
    if (equals(least, most)) return `exactly ${subjectFigure(subject, least)}`;
    return `${subjectFigure(subject, least)} to ${subjectFigure(subject, most)}`;
  }
  return least
    ? `at least ${subjectFigure(subject, least)}`
    : most
      ? `at most ${subjectFigure(subject, most)}`
      : `at least ${subjectFigure(subject, ZERO)}`;
}

/** A demand in a phrase: `protein at least 30 g`. */
export function demandText(demand: ReadDemand): string {
  return `${subjectName(demand.subject)} ${askedText(demand)}`;
}

/** Grams of a line: `212 g`. */
export function gramsText(f: Exact, rounding: FigureRounding = "nearest"): string {
  return showFigure(f, { unit: "g", rounding });
}

/** A factor or a ratio, bare: `1.45`. */
export function factorText(f: Exact, rounding: FigureRounding = "nearest"): string {
  return showFigure(f, { rounding });
}

/** A ratio in words: `twice the recipe's proportion`, `1.45 times the recipe's proportion`. */
export function timesText(ratio: Exact, rounding: FigureRounding = "nearest"): string {
  const proportion = "the recipe's proportion";
  if (equals(ratio, ONE)) return proportion;
  if (equals(ratio, fraction(1n, 2n))) return `half ${proportion}`;
  if (equals(ratio, fraction(2n))) return `twice ${proportion}`;
  return `${factorText(ratio, rounding)} times ${proportion}`;
}

/** A departure as a cook reads it: `+45%`, `-20%`, `as written`. */
export function departureText(ratio: Exact): string {
  const departure = minus(ratio, ONE);
  if (departure.n === 0n) return "as written";
  return `${compareRatios(ratio, ONE) > 0 ? "+" : ""}${showPercent(departure, { significant: 3 })}`;
}

/** `a`, `a and b`, `a, b and c`. */
export function listText(all: readonly string[]): string {
  if (all.length < 2) return all[0] ?? "";
  return `${all.slice(0, -1).join(", ")} and ${all.at(-1)}`;
}
