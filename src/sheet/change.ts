import { type ComponentId, components } from "../food/components.ts";
import {
  absolute,
  equals,
  type Fraction,
  fraction,
  isZero,
  minus,
  ONE,
  over,
  sum,
  times,
  ZERO,
} from "../number/fraction.ts";
import { boundOfSum, opposite } from "./bound.ts";
import { boundOfEnds, type Ends, lessOf, pointEnds, sameEnds, scaledBy, sumOf } from "./ends.ts";
import { componentIndex } from "./plan.ts";
import type { Sheet } from "./sheet.ts";
import type { Source } from "./source.ts";
import { type Bound, makeMarks, Tally } from "./tally.ts";

/** What one line brings more (or, below 0, less) of a component to a portion. */
interface Moved {
  /** What it brings to a batch, with what the figure says of itself. */
  readonly cell: Tally;
  readonly by: Fraction;
  /** Between what that can lie. */
  readonly change: () => Ends;
  /** Grams of a portion more or less. */
  readonly grams: Fraction;
}

/**
 * How much of a component a portion gains from one sheet to the other, line by line: a line that did
 * not move changes nothing, whether or not its figure is known, so that only moved lines bound the
 * change. More of a food that is silent is at least nothing more.
 */
export function changeOf(before: Sheet, after: Sheet, id: ComponentId): Tally {
  // Water that the pot takes up belongs to no line.
  const dry = [before, after].every(({ water }) => isZero(water.change) && isZero(water.beyond));
  if (id === "water" && !dry) return after.portion(id).minus(before.portion(id));
  const moved = movedLines(before, after, id);
  const value = sum(moved.map(({ by }) => by));
  const marks = makeMarks((kind) => [...new Set(moved.flatMap(({ cell }) => cell[kind]))]);
  const ends = (): Ends => sumOf(moved.map(({ change }) => change()));
  const isRanged = marks.ranged.length > 0 && moved.some(({ cell }) => cell.bound !== "unknown");
  const bound = isRanged ? boundOfEnds(value, ends(), marks.below.length > 0) : boundOf(moved);
  return new Tally(value.n, value.d, components[id].unit, marks, () => coverage(moved), bound, ends);
}

function boundOf(moved: readonly Moved[]): Bound {
  if (moved.length > 0 && moved.every(({ cell }) => cell.bound === "unknown")) return "unknown";
  // A figure is never below 0, so a gain of which something is unknown is at least what is known.
  return moved.reduce<Bound>((all, { cell, grams }) => {
    const gain: Bound = cell.bound === "exact" ? "exact" : "at-least";
    return boundOfSum(all, grams.n < 0n ? opposite(gain) : gain);
  }, "exact");
}

function coverage(moved: readonly Moved[]): Fraction {
  const mass = sum(moved.map(({ grams }) => absolute(grams)));
  if (isZero(mass)) return ONE;
  return over(sum(moved.map(({ grams, cell }) => times(absolute(grams), cell.coverage))), mass);
}

function movedLines(before: Sheet, after: Sheet, id: ComponentId): Moved[] {
  const [was, is] = [linesOf(before), linesOf(after)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((key): Moved[] => {
    const [a, b] = [was.get(key), is.get(key)];
    if (a && b && sameFigure(a.source, b.source, componentIndex(id))) {
      const grams = minus(b.grams, a.grams);
      if (isZero(grams)) return [];
      const [left, come] = [broughtBy(before, key, id), broughtBy(after, key, id)];
      const [s, { cell }, whole] = isZero(b.grams) ? [before, left, a.grams] : [after, come, b.grams];
      const change = changeBy(s, cell, over(grams, whole));
      return [{ cell, by: minus(come.value, left.value), change, grams }];
    }
    const [left, come] = [a && !isZero(a.grams) ? a : undefined, b && !isZero(b.grams) ? b : undefined];
    return [
      ...(come ? [movedWhole(after, key, id, come.grams, ONE)] : []),
      ...(left ? [movedWhole(before, key, id, left.grams, MINUS)] : []),
    ];
  });
}

const MINUS: Fraction = /* @__PURE__ */ fraction(-1n);

function movedWhole(s: Sheet, key: string, id: ComponentId, grams: Fraction, sign: Fraction): Moved {
  const { cell, value } = broughtBy(s, key, id);
  return { cell, by: times(value, sign), change: changeBy(s, cell, sign), grams: times(grams, sign) };
}

/** What a portion of so much of a line, more or (below 0) less, can come to. */
function changeBy(s: Sheet, cell: Tally, by: Fraction): () => Ends {
  return () => {
    const size = scaledBy(cell.ends, over(absolute(by), s.values.portions));
    return by.n < 0n ? lessOf(pointEnds(ZERO), size) : size;
  };
}

/** What a line brings to a batch, and its share of one portion. */
function broughtBy(
  s: Sheet,
  key: string,
  id: ComponentId,
): { readonly cell: Tally; readonly value: Fraction } {
  const cell = s.cell(key, id);
  return { cell, value: over(cell.value, s.values.portions) };
}

interface LineOf {
  readonly source: Source;
  /** In one portion. */
  readonly grams: Fraction;
}

function linesOf({ plan, values }: Sheet): ReadonlyMap<string, LineOf> {
  return new Map(
    plan.lines.map(({ line, source }, i): [string, LineOf] => {
      return [line.key, { source, grams: over(values.grams[i] ?? ZERO, values.portions) }];
    }),
  );
}

/** Whether two lines draw on the same food, or nested recipe, and it says the same of a component. */
function sameFigure(a: Source, b: Source, c: number): boolean {
  if (a === b) return true;
  const value = (s: Source): Fraction => fraction(s.values[c] ?? 0n, s.scale);
  const [x, y] = [a.marks(c), b.marks(c)];
  return (
    a.id === b.id &&
    equals(value(a), value(b)) &&
    sameEnds(a.ends(c), b.ends(c)) &&
    x.length === y.length &&
    x.every((mark, i) => {
      const other = y[i];
      return other && mark.at === other.at && mark.kind === other.kind && equals(mark.share, other.share);
    })
  );
}
