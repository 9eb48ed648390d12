import { compare, exact } from "../../number/fraction.ts";
import type { Facts } from "../person.ts";
import type { StageText } from "./table.ts";

export type Letter = "M" | "F" | "P" | "L";

/** A stage as read from a table's heading. Ages in completed years: from one, and below another. */
export interface Stage {
  readonly letter?: Letter;
  readonly from: number;
  readonly below?: number;
}

const STAGE = /^(?:([MFPL]) )?(\d+)(?:-(\d+)|\+)$/;

/** Reads a heading of our own tables; one that is not of the form finds nobody. */
export function readStage(text: StageText): Stage {
  const [, letter, from = "1000", to] = STAGE.exec(text) ?? [];
  return {
    from: Number(from),
    ...(to !== undefined && { below: Number(to) + 1 }),
    ...(letter && { letter: letter as Letter }),
  };
}

/** The column of a person's own state, or of their sex and age where the table has none for the state. */
export function columnFor(stages: readonly StageText[], facts: Facts, asUsual = false): number {
  const read = stages.map(readStage);
  const letter = stateLetter(facts);
  if (!asUsual && letter && read.some((stage) => stage.letter === letter)) {
    return read.findIndex((stage) => stage.letter === letter && holdsAge(stage, facts));
  }
  const sex: Letter = facts.sex === "male" ? "M" : "F";
  return read.findIndex(
    (stage) => (stage.letter === undefined || stage.letter === sex) && holdsAge(stage, facts),
  );
}

/** Pregnancy counts before breastfeeding, where both hold. */
export function stateLetter(facts: Facts): "P" | "L" | undefined {
  return facts.pregnant ? "P" : facts.breastfeeding ? "L" : undefined;
}

function holdsAge(stage: Stage, facts: Facts): boolean {
  return (
    compare(facts.age, exact(stage.from)) >= 0 &&
    (stage.below === undefined || compare(facts.age, exact(stage.below)) < 0)
  );
}
