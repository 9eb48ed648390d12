import { exactText } from "../../number/digits.ts";
import { type Exact, equals, isZero, over, sum, times, ZERO } from "../../number/exact.ts";
import { groupBy } from "../../number/groupBy.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Eater, EaterGroup } from "./groups.ts";

/** Sorts eaters by what can be cooked together for them, each group where its first eater stands. */
export function potGroups(s: Sheet, eaters: readonly Eater[]): readonly EaterGroup[] {
  const held = s.plan.lines.flatMap(({ line }, i) =>
    line.added === "cooking" && line.scaling === "held" && !isZero(s.values.grams[i] ?? ZERO) ? [i] : [],
  );
  const distinct = representatives(held, eaters);
  const groups = groupBy(eaters, ({ factors }) => ratiosText(distinct, factors));
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
function ratiosText(lines: readonly number[], factors: readonly Exact[]): string {
  if (lines.length < 2) return "";
  const own = lines.map((line) => factors[line] ?? ZERO);
  const first = own.find((factor) => !isZero(factor));
  return own.map((factor) => (first ? exactText(over(factor, first)) : "0")).join(" ");
}

function sortLines(s: Sheet, eaters: readonly Eater[], held: readonly number[]): EaterGroup {
  const cooked = s.plan.lines.flatMap(({ line }, i) => (line.added === "cooking" ? [i] : []));
  const everyone = (line: number): boolean => eaters.every(({ factors }) => !isZero(factors[line] ?? ZERO));
  const by = held.find(everyone) ?? largest(s, cooked.filter(everyone), eaters);
  const isShared = by === undefined ? (): boolean => false : sharedWith(by, eaters);
  // What is in none of their versions goes into no pot of theirs.
  const pot = cooked.filter((line) => isShared(line) && eaters.some(({ lacks }) => !lacks?.has(line)));
  const inPot = new Set(pot);
  return { eaters, pot, apart: s.plan.lines.flatMap((_, i) => (inPot.has(i) ? [] : [i])), by };
}

/** Where no line is held: of lines that keep their ratios to each other, those that weigh most together. */
function largest(s: Sheet, lines: readonly number[], eaters: readonly Eater[]): number | undefined {
  const weight = (line: number): Exact =>
    times(s.values.grams[line] ?? ZERO, sum(eaters.map(({ factors }) => factors[line] ?? ZERO)));
  let [best, most, left] = [undefined as number | undefined, ZERO, lines];
  while (left[0] !== undefined) {
    const [first] = left;
    const isShared = sharedWith(first, eaters);
    const total = sum(left.filter(isShared).map(weight));
    if (best === undefined || compareRatios(total, most) > 0) [best, most] = [first, total];
    left = left.filter((line) => !isShared(line));
  }
  return best;
}

/** Whether a line keeps one ratio to another for everyone. Lines that move as one are looked at once. */
function sharedWith(by: number, eaters: readonly Eater[]): (line: number) => boolean {
  const known: { readonly line: number; readonly shared: boolean }[] = [];
  const ratio = ({ factors }: Eater, line: number): Exact => over(factors[line] ?? ZERO, factors[by] ?? ZERO);
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
