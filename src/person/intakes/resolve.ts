import { type ComponentId, type ComponentUnit, components } from "../../food/components.ts";
import { type Exact, exact, fraction, over, plus, times, ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { countedMass, countedText } from "../body.ts";
import type { Check } from "../check.ts";
import type { EnergyAddition } from "../energyAdditions.ts";
import type { Facts } from "../person.ts";
import {
  type Childbearing,
  childbearingOf,
  columnFor,
  hasColumns,
  type Stage,
  stateLetter,
  usualColumn,
} from "./stage.ts";
import type { Basis, Covers, IntakeRow, IntakeTable, Per, ReferenceKind, UpperKind } from "./table.ts";

/** One published figure, as it stands for a person. */
export interface IntakeFigure {
  /** The components that it counts; several are summed. */
  readonly of: readonly ComponentId[];
  /** In `unit`, for a day. */
  readonly value: Exact;
  /** The upper end, where the figure is a range. */
  readonly most?: Exact;
  /** The component's own unit. */
  readonly unit: ComponentUnit;
  readonly basis?: Basis;
  /** What it is published for, where that is not a day: the figure as printed. */
  readonly per?: { readonly of: Exclude<Per, "day">; readonly value: Exact };
  readonly note?: string;
  /**
   * The person's state that the figure leaves out: none is published for it here, and the figure of the
   * same sex and age stands in. `note` says so, too.
   */
  readonly leavesOut?: Childbearing;
  readonly source: string;
  readonly check: Check;
}

export interface ReferenceFigure extends IntakeFigure {
  readonly kind: ReferenceKind;
  /** What of a day's energy is for pregnancy or breastfeeding: the figure holds it. */
  readonly addition?: EnergyAddition;
}

export interface UpperFigure extends IntakeFigure {
  readonly kind: UpperKind;
  readonly covers: Covers;
}

/** What a figure needs that is not in the table: energy in kcal a day, phytate in mg a day. */
export interface IntakeSetting {
  readonly energy?: Exact;
  readonly phytate: string;
}

/** Why a row gave no figure, though it has one for this person. */
export type Unresolved = "energy";

const KJ_PER_KCAL = "4.184";
/** General Atwater factor of fat, kcal per g. */
const FAT_KCAL = "9";
const MICROGRAMS: { readonly [U in ComponentUnit]?: bigint } = { g: 1000000n, mg: 1000n, µg: 1n };

/** A table with its headings read. */
export interface ReadTable {
  readonly source: string;
  readonly stages: readonly Stage[];
  readonly mothers?: IntakeTable["mothers"];
}

/** How a row is read, besides for whom. */
export interface Reading {
  /** An upper level: it never goes because of a state. */
  readonly isUpper?: boolean;
  /** The authority has a figure of this component for the person's state, perhaps at another age. */
  readonly isHeeded?: boolean;
}

/** Reads a row for a person: a figure, or what it lacks, or nothing where none is published. */
export function resolveRow(
  table: ReadTable,
  row: IntakeRow,
  facts: Facts,
  setting: IntakeSetting,
  reading: Reading = {},
): IntakeFigure | Unresolved | undefined {
  if (!isMeantFor(row, facts, setting)) return undefined;
  const printed = printedFor(table, row, facts, reading);
  if (!printed) return undefined;
  const factor = factorFor(row, facts, setting);
  if (factor === "energy") return factor;
  const own = components[row.of[0]].unit;
  const unit = inOwnUnit(row.unit ?? own, own);
  const amount = (value: Exact): Exact => times(plus(times(value, factor), printed.add), unit);
  return {
    of: row.of,
    value: amount(printed.value),
    unit: own,
    source: row.source ?? table.source,
    check: printed.check,
    ...(printed.most && { most: amount(printed.most) }),
    ...(row.basis && { basis: row.basis }),
    ...(row.per && row.per !== "day" && { per: { of: row.per, value: printed.value } }),
    ...noted(row, printed.leavesOut, row.per === "kg" ? countedText(facts) : undefined),
  };
}

/** A figure's note, and what it says of a state that the figure leaves out. */
export function noted(
  { note: own }: { readonly note?: string },
  leavesOut: Childbearing | undefined,
  counted?: string,
): Pick<IntakeFigure, "note" | "leavesOut"> {
  const left = leavesOut && `no figure for ${leavesOut} is published here, and this one leaves it out`;
  const note = [own, counted, left].filter((text) => text !== undefined).join("; ");
  return { ...(note !== "" && { note }), ...(leavesOut && { leavesOut }) };
}

interface Printed {
  readonly value: Exact;
  readonly most?: Exact;
  readonly add: Exact;
  readonly check: Check;
  readonly leavesOut?: Childbearing;
}

function printedFor(table: ReadTable, row: IntakeRow, facts: Facts, reading: Reading): Printed | undefined {
  const texts = row.values.split(" ");
  const own = columnFor(table.stages, facts);
  const isSame = texts[own.at] === "=";
  const isLost = reading.isUpper === true && own.ofState && texts[own.at] === "-";
  const at = isSame || isLost ? usualColumn(table.stages, facts) : own.at;
  const [low, high] = readRange(texts[at]);
  if (low === undefined) return undefined;
  const { add, name } = additionFor(row, facts);
  const seen = (part: string): boolean => row.seen === undefined || row.seen.includes(part);
  const wholly = seen(table.stages[at]?.text ?? "") && (name === undefined || seen(name));
  const isOfState = (own.ofState && !isLost) || name !== undefined;
  const isHeeded =
    reading.isHeeded === true || table.mothers === "not read" || hasColumns(table.stages, stateLetter(facts));
  const state = isHeeded && !isOfState ? childbearingOf(facts) : undefined;
  return {
    value: exact(low),
    add: exact(add),
    check: wholly ? row.check : "unverified",
    ...(high !== undefined && { most: exact(high) }),
    ...(state && { leavesOut: state }),
  };
}

function readRange(text: string | undefined): [low?: string, high?: string] {
  if (text === undefined || text === "-") return [];
  const [low = "", high] = text.split("-");
  return high === undefined ? [low] : [low, high];
}

function additionFor(row: IntakeRow, facts: Facts): { add: string; name?: string } {
  const letter = stateLetter(facts);
  if (letter === "P" && row.adds) {
    const { pregnant = "0" } = row.adds;
    const add = typeof pregnant === "string" ? pregnant : (pregnant[(facts.pregnant ?? 1) - 1] ?? "0");
    return { add, name: "adds pregnant" };
  }
  if (letter === "L" && row.adds) {
    const { breastfeeding = "0" } = row.adds;
    if (typeof breastfeeding === "string") return { add: breastfeeding, name: "adds breastfeeding" };
    const { first, later, fromMonth } = breastfeeding;
    const isLater = compareRatios(facts.monthsSinceBirth ?? ZERO, fraction(BigInt(fromMonth))) >= 0;
    return { add: isLater ? later : first, name: "adds breastfeeding" };
  }
  return { add: "0" };
}

function isMeantFor(row: IntakeRow, facts: Facts, setting: IntakeSetting): boolean {
  if (row.when === undefined) return true;
  if (typeof row.when === "object") return row.when.phytate === setting.phytate;
  // Where it is not said, the age at which other authorities part women: from 51.
  const past = facts.postmenopausal ?? facts.age.n >= 51n * facts.age.d;
  return past === (row.when === "postmenopausal");
}

/** What a printed figure is multiplied by to stand for this person's day. */
function factorFor(row: IntakeRow, facts: Facts, setting: IntakeSetting): Exact | "energy" {
  if (row.per === "kg") return countedMass(facts);
  if (row.per !== "MJ" && row.per !== "% energy") return fraction(1n);
  if (!setting.energy) return "energy";
  if (row.per === "MJ") return over(times(setting.energy, exact(KJ_PER_KCAL)), fraction(1000n));
  return over(setting.energy, times(fraction(100n), exact(FAT_KCAL)));
}

function inOwnUnit(printed: ComponentUnit, own: ComponentUnit): Exact {
  if (printed === own) return fraction(1n);
  return fraction(MICROGRAMS[printed] ?? 1n, MICROGRAMS[own] ?? 1n);
}
