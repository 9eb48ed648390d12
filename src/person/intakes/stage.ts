import { exact, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Facts } from "../person.ts";
import type { IntakeRow, StageText } from "./table.ts";

export type Letter = "M" | "F" | "P" | "L";

/** A stage as read from a table's heading. Ages in completed years: from one, and below another. */
export interface Stage {
  readonly text: StageText;
  readonly letter?: Letter;
  /** The trimesters that it is of, where not all. */
  readonly trimesters?: string;
  /** Of breastfeeding from this month after the birth. */
  readonly fromMonth?: number;
  readonly from: number;
  readonly below?: number;
}

const STAGE = /^(?:([MF]|P[123]*|L\d*) )?(\d+)(?:-(\d+)|\+)$/;

/** Reads a heading of our own tables; one that is not of the form finds nobody. */
export function readStage(text: StageText): Stage {
  const [, who, from = "1000", to] = STAGE.exec(text) ?? [];
  const letter = who?.[0] as Letter | undefined;
  const part = who?.slice(1);
  return {
    text,
    from: Number(from),
    ...(to !== undefined && { below: Number(to) + 1 }),
    ...(letter && { letter }),
    ...(letter === "P" && part && { trimesters: part }),
    ...(letter === "L" && part && { fromMonth: Number(part) }),
  };
}

/** What a figure may be set for besides sex and age. */
export type Childbearing = "pregnancy" | "breastfeeding";

/** A column of a table: its place, -1 where there is none, and whether it is that of a person's state. */
export interface StageColumn {
  readonly at: number;
  readonly ofState: boolean;
}

/** The column of a person's own state, or of their sex and age where the table has none for it at this age. */
export function columnFor(stages: readonly Stage[], facts: Facts): StageColumn {
  const letter = stateLetter(facts);
  const at = stages.findIndex(
    (stage) =>
      letter !== undefined && stage.letter === letter && holdsAge(stage, facts) && holdsTime(stage, facts),
  );
  return at >= 0 ? { at, ofState: true } : { at: usualColumn(stages, facts), ofState: false };
}

/** The column of a person's sex and age, whatever their state. */
export function usualColumn(stages: readonly Stage[], facts: Facts): number {
  const sex: Letter = facts.sex === "male" ? "M" : "F";
  return stages.findIndex(
    (stage) => (stage.letter === undefined || stage.letter === sex) && holdsAge(stage, facts),
  );
}

/** The state of a person that figures may be set for. */
export function childbearingOf(facts: Facts): Childbearing | undefined {
  return facts.pregnant ? "pregnancy" : facts.breastfeeding ? "breastfeeding" : undefined;
}

/** Whether a table has columns for a state, at whatever age. */
export function hasColumns(stages: readonly Stage[], letter: Letter | undefined): boolean {
  return letter !== undefined && stages.some((stage) => stage.letter === letter);
}

/** Whether a row has a figure for a person's state, or says what the state adds, at whatever age. */
export function heeds(stages: readonly Stage[], row: IntakeRow, facts: Facts): boolean {
  const letter = stateLetter(facts);
  if (letter === undefined) return false;
  const texts = row.values.split(" ");
  const isPrinted = stages.some((stage, at) => stage.letter === letter && texts[at] !== "-");
  return isPrinted || (letter === "P" ? row.adds?.pregnant : row.adds?.breastfeeding) !== undefined;
}

/** Pregnancy counts before breastfeeding, where both hold. */
export function stateLetter(facts: Facts): "P" | "L" | undefined {
  return facts.pregnant ? "P" : facts.breastfeeding ? "L" : undefined;
}

function holdsAge(stage: Stage, facts: Facts): boolean {
  return (
    compareRatios(facts.age, exact(stage.from)) >= 0 &&
    (stage.below === undefined || compareRatios(facts.age, exact(stage.below)) < 0)
  );
}

/** Tells whether a stage is of someone's trimester, or of their months since the birth. */
function holdsTime({ trimesters, fromMonth = 0 }: Stage, { pregnant = 1, monthsSinceBirth }: Facts): boolean {
  if (trimesters !== undefined) return trimesters.includes(String(pregnant));
  return fromMonth === 0 || compareRatios(monthsSinceBirth ?? ZERO, exact(fromMonth)) >= 0;
}
