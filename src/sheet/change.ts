import { type ComponentId, components } from "../food/components.ts";
import {
  absolute,
  type Exact,
  equals,
  fraction,
  isZero,
  minus,
  negate,
  ONE,
  over,
  plus,
  sum,
  times,
  ZERO,
} from "../number/exact.ts";
import { boundOfSum, opposite } from "./bound.ts";
import { endsOf } from "./bySource.ts";
import { boundOfEnds, type Ends, lessOf, pointEnds, sameEnds, sumOf } from "./ends.ts";
import { componentIndex } from "./plan.ts";
import type { Sheet } from "./sheet.ts";
import type { Source } from "./source.ts";
import { type Bound, makeMarks, NO_MARKS, Tally } from "./tally.ts";

/** So much of one source in a portion, more or (below 0) less, of one line or of several. */
interface Flow {
  readonly source: Source;
  readonly grams: Exact;
  /** Lines that it is of, in the order of the sheets. */
  readonly keys: readonly string[];
}

/** What a flow brings of a component, with what the figure says of itself. */
interface Moved {
  readonly grams: Exact;
  /** Of the grams without their sign. */
  readonly cell: Tally;
}

/**
 * How much of each component a portion gains from one sheet to the other, line by line: a line that did not
 * move changes nothing, whether or not its figure is known, so that only moved lines bound the change. More
 * of a food that is silent is at least nothing more. Lines are compared once, for all components.
 */
export function changesBetween(before: Sheet, after: Sheet): (id: ComponentId) => Tally {
  const { flows, pairs, places } = linesMoved(before, after);
  // Water that the pot takes up belongs to no line.
  const dry = [before, after].every(({ water }) => isZero(water.change) && isZero(water.beyond));
  return (id) => {
    if (id === "water" && !dry) return after.portion(id).minus(before.portion(id));
    const c = componentIndex(id);
    const all = [...flows, ...pairs.flatMap((pair) => flowsOf(pair, c))];
    return changeBy(all, c, components[id].unit, places);
  };
}

function changeBy(
  flows: readonly Flow[],
  c: number,
  unit: string,
  places: ReadonlyMap<string, number>,
): Tally {
  const moved = flows.map((flow): Moved => ({ grams: flow.grams, cell: cellOf(flow, c, unit) }));
  const signed = ({ cell, grams }: Moved): Exact => (grams.n < 0n ? negate(cell.value) : cell.value);
  const value = sum(moved.map(signed));
  const inOrder = (a: string, b: string): number => placeOf(places, a) - placeOf(places, b);
  const marks = makeMarks((kind) => [...new Set(moved.flatMap(({ cell }) => cell[kind]))].sort(inOrder));
  const ends = (): Ends =>
    sumOf(moved.map(({ cell, grams }) => (grams.n < 0n ? lessOf(pointEnds(ZERO), cell.ends) : cell.ends)));
  const isRanged = marks.ranged.length > 0 && moved.some(({ cell }) => cell.bound !== "unknown");
  const bound = isRanged ? boundOfEnds(value, ends(), marks.below.length > 0) : boundOf(moved);
  return new Tally(value.n, value.d, unit, marks, () => coverage(moved), bound, ends);
}

/** A line of a nested recipe stands where the line around it does. */
function placeOf(places: ReadonlyMap<string, number>, key: string): number {
  return places.get(key) ?? places.get(key.slice(0, key.indexOf("/"))) ?? 0;
}

function cellOf({ source, grams, keys }: Flow, c: number, unit: string): Tally {
  const size = absolute(grams);
  const value = times(size, fraction(source.values[c] ?? 0n, source.scale * 100n));
  const said = source.marks(c);
  const of = (at: string): readonly string[] => (at === "" ? keys : keys.map((key) => `${key}/${at}`));
  const marks =
    said.length === 0
      ? NO_MARKS
      : makeMarks((kind) => said.flatMap((mark) => (mark.kind === kind ? of(mark.at) : [])));
  const silent = (): Exact => sum(said.flatMap(({ kind, share }) => (kind === "missing" ? [share] : [])));
  const covered = (): Exact => minus(ONE, silent());
  return new Tally(value.n, value.d, unit, marks, covered, undefined, () => endsOf(source, c, size));
}

function boundOf(moved: readonly Moved[]): Bound {
  if (moved.length > 0 && moved.every(({ cell }) => cell.bound === "unknown")) return "unknown";
  // A figure is never below 0, so a gain of which something is unknown is at least what is known.
  return moved.reduce<Bound>((all, { cell, grams }) => {
    const gain: Bound = cell.bound === "point" ? "point" : "at-least";
    return boundOfSum(all, grams.n < 0n ? opposite(gain) : gain);
  }, "point");
}

function coverage(moved: readonly Moved[]): Exact {
  const mass = sum(moved.map(({ grams }) => absolute(grams)));
  if (isZero(mass)) return ONE;
  return over(sum(moved.map(({ grams, cell }) => times(absolute(grams), cell.coverage))), mass);
}

/** A line of both sheets that draws on a source of another making, which may say the same of a component. */
interface Pair {
  readonly key: string;
  readonly a: LineOf;
  readonly b: LineOf;
}

interface LinesMoved {
  /** What came and what left of each source, lines of one source and direction together. */
  readonly flows: readonly Flow[];
  readonly pairs: readonly Pair[];
  readonly places: ReadonlyMap<string, number>;
}

function linesMoved(before: Sheet, after: Sheet): LinesMoved {
  const [was, is] = [linesOf(before), linesOf(after)];
  const keys = [...new Set([...was.keys(), ...is.keys()])];
  const pairs: Pair[] = [];
  const came = new Map<Source, Together>();
  const left = new Map<Source, Together>();
  const add = (source: Source, grams: Exact, key: string): void => {
    if (isZero(grams)) return;
    const to = grams.n < 0n ? left : came;
    const sofar = to.get(source) ?? { grams: ZERO, keys: [] };
    sofar.keys.push(key);
    to.set(source, { grams: plus(sofar.grams, grams), keys: sofar.keys });
  };
  for (const key of keys) {
    const [a, b] = [was.get(key), is.get(key)];
    if (a && b && a.source !== b.source && a.source.id === b.source.id) pairs.push({ key, a, b });
    else if (a && b && a.source === b.source) add(a.source, minus(b.grams, a.grams), key);
    else {
      if (b) add(b.source, b.grams, key);
      if (a) add(a.source, negate(a.grams), key);
    }
  }
  const flows = [came, left].flatMap((all) => [...all].map(([source, own]): Flow => ({ source, ...own })));
  return { flows, pairs, places: new Map(keys.map((key, i) => [key, i])) };
}

interface Together {
  readonly grams: Exact;
  readonly keys: string[];
}

/** Of a component that both say the same of, what lies between; else all that came and all that left. */
function flowsOf({ key, a, b }: Pair, c: number): Flow[] {
  const flow = (source: Source, grams: Exact): Flow[] =>
    isZero(grams) ? [] : [{ source, grams, keys: [key] }];
  if (sameFigure(a.source, b.source, c)) return flow(b.source, minus(b.grams, a.grams));
  return [...flow(b.source, b.grams), ...flow(a.source, negate(a.grams))];
}

interface LineOf {
  readonly source: Source;
  /** In one portion. */
  readonly grams: Exact;
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
  const value = (s: Source): Exact => fraction(s.values[c] ?? 0n, s.scale);
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
