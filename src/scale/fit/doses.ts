import { type Exact, fraction, sum, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { linesByName } from "../engine/constraints.ts";
import { DOSE, type LineAt, type Model } from "../engine/model.ts";
import type { ReadDemand } from "../engine/readDemand.ts";
import type { Task } from "../engine/task.ts";
import { listText, subjectFigure, subjectName } from "./words.ts";

/** A limit that lines which are the same for everyone break by themselves, whatever else is served. */
export interface DosedOver {
  readonly demand: ReadDemand;
  /** Whether lines count with their high ends. */
  readonly isHigh: boolean;
  /** The lines that bring any, most first. */
  readonly lines: readonly (LineAt & { readonly name: string; readonly brings: Exact })[];
}

export function dosedOver({ asked }: Task, model: Model): DosedOver[] {
  const doses = linesByName(model).filter(({ dish, line }) => model.places[dish]?.[line] === DOSE);
  return asked.flatMap(({ demand, brought }): DosedOver[] => {
    const { most, subject } = demand;
    if (!most || subject.kind !== "amount") return [];
    const lines = doses
      .map((at) => ({
        ...at,
        brings: fraction(brought.value.lines[at.dish]?.[at.line] ?? 0n, brought.value.scale),
      }))
      .filter(({ brings }) => brings.n > 0n)
      .sort((a, b) => compareRatios(b.brings, a.brings));
    return compareRatios(sum(lines.map(({ brings }) => brings)), most) > 0
      ? [{ demand, lines, isHigh: brought.isHigh }]
      : [];
  });
}

/** In a sentence, what has to change: `Salt alone brings …`. */
export function dosedOverText({ demand, lines, isHigh }: DosedOver): string {
  const { subject, firm } = demand;
  const most = demand.most ?? ZERO;
  const alone = lines.find(({ brings }) => compareRatios(brings, most) > 0);
  const names = alone ? [alone.name] : lines.map(({ name }) => name);
  const brings = alone?.brings ?? sum(lines.map((line) => line.brings));
  const verb = isHigh ? "can bring" : alone ? "brings" : "bring";
  const who = `${listText(names)} ${alone ? "alone" : "together"} ${verb}`;
  const figures = `${subjectFigure(subject, brings, "down")} of ${subjectName(subject)} to every portion, whatever its size`;
  const dose = alone ? "its dose has" : "their doses have";
  return `${who} ${figures}: ${dose} to change, or the ${firm ? "firm " : ""}limit of ${subjectFigure(subject, most)}.`;
}
