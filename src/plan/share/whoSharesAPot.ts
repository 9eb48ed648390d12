import type { Amount } from "../../measure/amount.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import {
  compare,
  equals,
  type Fraction,
  isZero,
  over,
  sum,
  times,
  toText,
  ZERO,
} from "../../number/fraction.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { PotAsked } from "../measure/roundPot.ts";

/** What every line of a meal is multiplied by for someone, by dish and line. */
export type LineFactors = ReadonlyMap<string, readonly Fraction[]>;

/** Amounts as they were measured, by line; nothing where a line was not. */
export type LineAmounts = readonly (Amount | undefined)[];

/** Someone who eats of a dish, and what each line of one base portion is multiplied by for them. */
export interface Eater {
  readonly person: string;
  readonly factors: readonly Fraction[];
  /** This portion's, where a kitchen measured it. */
  readonly amounts?: LineAmounts;
  /** What this person measures with, where there is a kitchen. */
  readonly kitchen?: Kitchen | undefined;
}

/** People who can eat of one pot: the held lines that are cooked keep the same ratios for all of them. */
export interface Group {
  readonly eaters: readonly Eater[];
  /** Lines that go into the pot: cooked, and in the same ratios for everyone. Empty where nothing is. */
  readonly pot: readonly number[];
  /** Lines that are added person by person. */
  readonly apart: readonly number[];
  /** A line of the pot that everyone has some of, by which shares are told. */
  readonly by: number | undefined;
  /** How a kitchen measured the pot, where one did. */
  readonly measured?: MeasuredPot;
}

/** A pot as a kitchen measures it out and shares it. */
export interface MeasuredPot {
  /** Who eats of it, with factors as they were found: the ratios that people need. */
  readonly before: readonly Eater[];
  readonly amounts: LineAmounts;
  /** Each person's share as it is weighed, by id; empty where shares are not. */
  readonly weighed: ReadonlyMap<string, Amount>;
  /** Who gets what is left, which is no whole number of the scale's steps. */
  readonly rest: string | undefined;
  readonly notes: readonly KitchenNote[];
  /** What it was measured with and for whom, for another lot of it; nothing where it stays as it was found. */
  readonly asked: PotAsked | undefined;
}

/** What a cook should know of amounts that a kitchen was to measure. Never an error. */
export interface KitchenNote {
  readonly code: "not-measurable" | "shares-exact" | "not-rounded" | "off-target" | "not-proven";
  /** The line it speaks of; nothing where it speaks of the whole. */
  readonly line: string | undefined;
  readonly text: string;
}

/** Sorts eaters by what can be cooked together for them, each group where its first eater stands. */
export function groupsOf(s: Sheet, eaters: readonly Eater[]): readonly Group[] {
  const held = s.plan.lines.flatMap(({ line }, i) =>
    line.added === "cooking" && line.scaling === "held" && !isZero(s.values.grams[i] ?? ZERO) ? [i] : [],
  );
  const distinct = representatives(held, eaters);
  const groups = new Map<string, Eater[]>();
  for (const eater of eaters) {
    const key = ratiosText(distinct, eater.factors);
    const group = groups.get(key);
    if (group) group.push(eater);
    else groups.set(key, [eater]);
  }
  return [...groups.values()].map((group) => sortLines(s, group, held));
}

/** Lines that stand for all: of those that move as one for everyone, the first. */
function representatives(lines: readonly number[], eaters: readonly Eater[]): readonly number[] {
  const found: number[] = [];
  for (const line of lines) {
    if (!found.some((other) => movesAs(line, other, eaters))) found.push(line);
  }
  return found;
}

function movesAs(line: number, other: number, eaters: readonly Eater[]): boolean {
  return eaters.every(({ factors }) => factors[line] === factors[other]);
}

/** The ratios of lines to the first that is there at all, as text: the same for whoever can share a pot. */
function ratiosText(lines: readonly number[], factors: readonly Fraction[]): string {
  if (lines.length < 2) return "";
  const own = lines.map((line) => factors[line] ?? ZERO);
  const first = own.find((factor) => !isZero(factor));
  return own.map((factor) => (first ? toText(over(factor, first)) : "0")).join(" ");
}

function sortLines(s: Sheet, eaters: readonly Eater[], held: readonly number[]): Group {
  const cooked = s.plan.lines.flatMap(({ line }, i) => (line.added === "cooking" ? [i] : []));
  const everyone = (line: number): boolean => eaters.every(({ factors }) => !isZero(factors[line] ?? ZERO));
  const by = held.find(everyone) ?? largest(s, cooked.filter(everyone), eaters);
  const isShared = by === undefined ? (): boolean => false : sharedWith(by, eaters);
  const pot = cooked.filter(isShared);
  const inPot = new Set(pot);
  return { eaters, pot, apart: s.plan.lines.flatMap((_, i) => (inPot.has(i) ? [] : [i])), by };
}

/** Where no line is held: of lines that keep their ratios to each other, those that weigh most together. */
function largest(s: Sheet, lines: readonly number[], eaters: readonly Eater[]): number | undefined {
  const weight = (line: number): Fraction =>
    times(s.values.grams[line] ?? ZERO, sum(eaters.map(({ factors }) => factors[line] ?? ZERO)));
  let [best, most, left] = [undefined as number | undefined, ZERO, lines];
  while (left[0] !== undefined) {
    const [first] = left;
    const isShared = sharedWith(first, eaters);
    const total = sum(left.filter(isShared).map(weight));
    if (best === undefined || compare(total, most) > 0) [best, most] = [first, total];
    left = left.filter((line) => !isShared(line));
  }
  return best;
}

/** Whether a line keeps one ratio to another for everyone. Lines that move as one are looked at once. */
function sharedWith(by: number, eaters: readonly Eater[]): (line: number) => boolean {
  const known: { readonly line: number; readonly shared: boolean }[] = [];
  const ratio = ({ factors }: Eater, line: number): Fraction =>
    over(factors[line] ?? ZERO, factors[by] ?? ZERO);
  return (line) => {
    const same = known.find((other) => movesAs(line, other.line, eaters));
    if (same) return same.shared;
    const [first] = eaters;
    const shared =
      first !== undefined && eaters.every((eater) => equals(ratio(eater, line), ratio(first, line)));
    known.push({ line, shared });
    return shared;
  };
}
