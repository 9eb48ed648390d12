import { type Restriction, shiftFor, smallest } from "./restriction.ts";

export interface Ordering {
  /** The lines, in the order they are decided. */
  readonly order: readonly number[];
  /** Each line's candidates, in the order they are tried. */
  readonly tries: readonly (readonly number[])[];
  /** For each line an earlier one like it in every way, whose candidate it does not go below; else −1. */
  readonly twins: readonly number[];
}

export interface Hunt extends Ordering {
  readonly restrictions: readonly Restriction[];
  readonly nodes: number;
}

/** What a found choice changes: the restrictions' limits, no wider than before, or nothing more is wanted. */
export type Found = (choice: readonly number[]) => readonly bigint[] | "enough";

export interface HuntEnd {
  readonly end: "seen-all" | "enough" | "stopped";
  readonly nodes: number;
}

/**
 * Depth-first search for choices, one candidate a line, that keep every restriction
 * `Σ value of the chosen ≤ limit`. A part of a choice is given up when, for some restriction, its
 * values and the least that the remaining lines can add pass the limit.
 *
 * Values and limits are whole numbers. Beside each stands a copy in doubles, shifted down to fit
 * and rounded down, whose sums stay below 2 to the 53 and so are exact: what the copies rule out is
 * ruled out. Where they cannot tell, the whole numbers are added up. So nothing is lost to
 * rounding, and ties are seen as ties.
 */
export function hunt(asked: Hunt, found: Found): HuntEnd {
  const { order, twins, nodes: most } = asked;
  if (order.length === 0) {
    if (asked.restrictions.every(({ limit }) => limit >= 0n)) found([]);
    return { end: "seen-all", nodes: 0 };
  }
  const s = searchOf(asked);
  const last = order.length - 1;
  const next = new Int32Array(order.length);
  let nodes = 0;
  let depth = 0;
  while (depth >= 0) {
    const line = order[depth] as number;
    const tries = s.tries[depth] as readonly number[];
    const index = next[depth] as number;
    if (index >= tries.length) {
      depth -= 1;
      continue;
    }
    if (nodes >= most) return { end: "stopped", nodes };
    next[depth] = index + 1;
    nodes += 1;
    const candidate = tries[index] as number;
    const twin = twins[line] as number;
    if (twin >= 0 && candidate < (s.choice[twin] as number)) continue;
    const kept = keeps(s, depth, candidate);
    if (kept === "no") continue;
    s.choice[line] = candidate;
    s.stamps[depth] = nodes;
    if (kept === "unsure" && breaks(s, depth)) continue;
    if (depth < last) {
      depth += 1;
      next[depth] = 0;
      continue;
    }
    const change = found(s.choice);
    if (change === "enough") return { end: "enough", nodes };
    setLimits(s, change);
  }
  return { end: "seen-all", nodes };
}

interface Search {
  readonly restrictions: readonly Restriction[];
  readonly order: readonly number[];
  readonly choice: number[];
  /** By depth: the candidates that are tried. */
  readonly tries: readonly (readonly number[])[];
  /** How many restrictions; the arrays below hold one number for each, place after place. */
  readonly width: number;
  readonly shifts: readonly bigint[];
  /** By depth: the copies' values, candidate after candidate. */
  readonly values: readonly Float64Array[];
  /** What the lines from each depth on add at least. */
  readonly rest: Float64Array;
  readonly sums: Float64Array;
  readonly limits: Float64Array;
  /** Below it the copies are sure that a limit is kept. */
  readonly sure: Float64Array;
  exactLimits: readonly bigint[];
  readonly exactRest: readonly (readonly bigint[])[];
  /** Sums in whole numbers, by restriction and depth, and the stamp of the choice that each was made for. */
  readonly exactSums: bigint[][];
  readonly exactStamps: Float64Array[];
  readonly stamps: Float64Array;
}

function searchOf({ restrictions, order, tries }: Hunt): Search {
  const width = restrictions.length;
  const places = order.length + 1;
  const shifts = restrictions.map((r) => shiftFor(r.values));
  const values = order.map((line) => {
    const [first] = restrictions;
    const copies = new Float64Array((first?.values[line]?.length ?? 0) * width);
    for (const [r, { values }] of restrictions.entries()) {
      const whole = values[line] as readonly bigint[];
      for (let k = 0; k < whole.length; k += 1)
        copies[k * width + r] = Number((whole[k] as bigint) >> (shifts[r] as bigint));
    }
    return copies;
  });
  const s: Search = {
    restrictions,
    order,
    choice: new Array<number>(order.length).fill(0),
    tries: order.map((line) => tries[line] as readonly number[]),
    width,
    shifts,
    values,
    rest: restOf(values, width),
    sums: new Float64Array(places * width),
    limits: new Float64Array(width),
    sure: new Float64Array(width),
    exactLimits: [],
    exactRest: restrictions.map((r) => exactRestOf(r, order)),
    exactSums: restrictions.map(() => new Array<bigint>(order.length).fill(0n)),
    exactStamps: restrictions.map(() => new Float64Array(order.length)),
    stamps: new Float64Array(order.length),
  };
  setLimits(
    s,
    restrictions.map((r) => r.limit),
  );
  return s;
}

function restOf(values: readonly Float64Array[], width: number): Float64Array {
  const rest = new Float64Array((values.length + 1) * width);
  for (let depth = values.length - 1; depth >= 0; depth -= 1) {
    const at = values[depth] as Float64Array;
    for (let r = 0; r < width; r += 1) {
      let least = Number.POSITIVE_INFINITY;
      for (let v = r; v < at.length; v += width) least = Math.min(least, at[v] as number);
      rest[depth * width + r] = least + (rest[(depth + 1) * width + r] as number);
    }
  }
  return rest;
}

function exactRestOf({ values }: Restriction, order: readonly number[]): bigint[] {
  const rest = new Array<bigint>(order.length + 1).fill(0n);
  for (let depth = order.length - 1; depth >= 0; depth -= 1) {
    rest[depth] = smallest(values[order[depth] as number] as readonly bigint[]) + (rest[depth + 1] as bigint);
  }
  return rest;
}

function setLimits(s: Search, limits: readonly bigint[]): void {
  s.exactLimits = limits;
  for (let r = 0; r < s.width; r += 1) {
    const shift = s.shifts[r] as bigint;
    const low = Number((limits[r] as bigint) >> shift);
    s.limits[r] = low;
    // Each of the copies may be one too low; without a shift they are the numbers themselves.
    s.sure[r] = shift === 0n ? low + 1 : low - s.order.length;
  }
}

/** Whether the copies say that a candidate keeps every limit, given what was chosen before. */
function keeps(s: Search, depth: number, candidate: number): "yes" | "no" | "unsure" {
  const { width, sums, rest, limits, sure } = s;
  const values = s.values[depth] as Float64Array;
  const here = depth * width;
  const there = here + width;
  const from = candidate * width;
  let kept: "yes" | "unsure" = "yes";
  for (let r = 0; r < width; r += 1) {
    const sum = (sums[here + r] as number) + (values[from + r] as number);
    sums[there + r] = sum;
    const least = sum + (rest[there + r] as number);
    if (least > (limits[r] as number)) return "no";
    if (least >= (sure[r] as number)) kept = "unsure";
  }
  return kept;
}

/** Whether the whole numbers pass a limit that the copies could not tell about. */
function breaks(s: Search, depth: number): boolean {
  const there = (depth + 1) * s.width;
  for (let r = 0; r < s.width; r += 1) {
    if ((s.sums[there + r] as number) + (s.rest[there + r] as number) < (s.sure[r] as number)) continue;
    const rest = (s.exactRest[r] as readonly bigint[])[depth + 1] as bigint;
    if (exactSum(s, r, depth) + rest > (s.exactLimits[r] as bigint)) return true;
  }
  return false;
}

/** The whole-number sum down to a depth, going on from the deepest one still good. */
function exactSum(s: Search, r: number, depth: number): bigint {
  const sums = s.exactSums[r] as bigint[];
  const stamps = s.exactStamps[r] as Float64Array;
  let good = depth;
  while (good >= 0 && stamps[good] !== s.stamps[good]) good -= 1;
  let sum = good < 0 ? 0n : (sums[good] as bigint);
  const { values } = s.restrictions[r] as Restriction;
  for (let d = good + 1; d <= depth; d += 1) {
    const line = s.order[d] as number;
    sum += (values[line] as readonly bigint[])[s.choice[line] as number] as bigint;
    sums[d] = sum;
    stamps[d] = s.stamps[d] as number;
  }
  return sum;
}
