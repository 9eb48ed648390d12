import type { ComponentId } from "../../../src/food/components.ts";
import type { Per } from "../../../src/person/intakes/table.ts";

/**
 * Reference intakes typed a second time, to hold against the tables of `src/person/intakes`: apart from the
 * first, from another copy or from a document that was not at hand when the first was typed, and laid out as
 * that copy is (by age rather than by nutrient where it is so). A slip of the hand shows here; a figure that
 * both copies have wrong does not.
 */
export interface Second {
  readonly of: ComponentId;
  readonly sex: "female" | "male";
  readonly age: number;
  readonly state?: "pregnant" | "breastfeeding";
  /** What it is published for, where that is not a day. */
  readonly per?: Exclude<Per, "day">;
  /** In the component's own unit. */
  readonly value: string;
}

/** What mothers add to the figure of the same age, in the component's own unit. */
export interface SecondAddition {
  readonly of: ComponentId;
  readonly age: number;
  /** In the last three months. */
  readonly pregnant?: string;
  /** At first, and from when the copy has less. */
  readonly breastfeeding?: string;
  readonly later?: readonly [fromMonth: number, value: string];
}

type Sex = "female" | "male";
type Column = readonly [sex: Sex, ages: readonly number[], state?: "pregnant" | "breastfeeding"];

export const girl = (...ages: number[]): Column => ["female", ages];
export const boy = (...ages: number[]): Column => ["male", ages];

/** Reads rows of a copy: who each speaks of, and its figures in the order of the copy's columns, `.` for none. */
export function byAge(
  columns: readonly ComponentId[],
  rows: readonly (readonly [Column, string])[],
  per?: Second["per"],
): Second[] {
  return rows.flatMap(([[sex, ages, state], figures]) =>
    ages.flatMap((age) =>
      figures.split(" ").flatMap((value, i): Second[] => {
        const of = columns[i];
        return of && value !== "."
          ? [{ of, sex, age, value, ...(state && { state }), ...(per && { per }) }]
          : [];
      }),
    ),
  );
}

/**
 * Reads rows headed as a table heads them: `4-6`, `M 19+`, `F 11-14`, `P 14-18`, `L 18+` (completed years; P
 * pregnant, L breastfeeding). Each is asked for at both ends of its ages.
 */
export function byBand(
  columns: readonly ComponentId[],
  rows: readonly (readonly [string, string])[],
  per?: Second["per"],
): Second[] {
  return byAge(
    columns,
    rows.flatMap(([band, figures]) => columnsOf(band).map((column) => [column, figures] as const)),
    per,
  );
}

/** The people whom a heading speaks of, at both ends of its ages. */
export function peopleOf(band: string): Pick<Second, "sex" | "age" | "state">[] {
  return columnsOf(band).flatMap(([sex, ages, state]) =>
    ages.map((age) => ({ sex, age, ...(state && { state }) })),
  );
}

function columnsOf(band: string): Column[] {
  const [, letter, from = "", to] = /^(?:([MFPL]) )?(\d+)(?:-(\d+)|\+)$/.exec(band) ?? [];
  const ages = [Number(from), to === undefined ? (/[PL]/.test(letter ?? "") ? 48 : 90) : Number(to)];
  if (letter === "M") return [boy(...ages)];
  if (letter === "F") return [girl(...ages)];
  if (letter === "P") return [["female", ages, "pregnant"]];
  if (letter === "L") return [["female", ages, "breastfeeding"]];
  return [boy(...ages), girl(...ages)];
}
