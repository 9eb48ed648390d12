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
import { componentIndex } from "./plan.ts";
import type { Sheet } from "./sheet.ts";
import type { Source } from "./source.ts";
import { type Bound, makeMarks, Tally } from "./tally.ts";

/** What one line brings more (or, below 0, less) of a component to a portion. */
interface Moved {
  /** What it brings to a batch, with what the figure says of itself. */
  readonly cell: Tally;
  readonly by: Fraction;
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
  return new Tally(value.n, value.d, components[id].unit, marks, () => coverage(moved), boundOf(moved));
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
  const [was, is] = [linesOf(before, id), linesOf(after, id)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((key): Moved[] => {
    const [a, b] = [was.get(key), is.get(key)];
    if (a && b && sameFigure(a.source, b.source, componentIndex(id))) {
      const [grams, by] = [minus(b.grams, a.grams), minus(b.value, a.value)];
      const { cell } = isZero(b.grams) ? a : b;
      return isZero(grams) ? [] : [{ cell, by, grams }];
    }
    return [
      ...(b && !isZero(b.grams) ? [{ cell: b.cell, by: b.value, grams: b.grams }] : []),
      ...(a && !isZero(a.grams)
        ? [{ cell: a.cell, by: minus(ZERO, a.value), grams: minus(ZERO, a.grams) }]
        : []),
    ];
  });
}

interface LineOf {
  readonly source: Source;
  readonly cell: Tally;
  /** What the line brings to one portion, and its grams there. */
  readonly value: Fraction;
  readonly grams: Fraction;
}

function linesOf(s: Sheet, id: ComponentId): Map<string, LineOf> {
  const share = over(ONE, s.values.portions);
  return new Map(
    s.plan.lines.map(({ line, source }, i): [string, LineOf] => {
      const cell = s.cell(line.key, id);
      const [value, grams] = [times(cell.exact, share), times(s.values.grams[i] ?? ZERO, share)];
      return [line.key, { source, cell, value, grams }];
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
    x.length === y.length &&
    x.every((mark, i) => {
      const other = y[i];
      return other && mark.at === other.at && mark.kind === other.kind && equals(mark.share, other.share);
    })
  );
}
