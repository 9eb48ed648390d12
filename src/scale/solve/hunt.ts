/**
 * Depth-first search for choices, one candidate a line, that keep every restriction
 * `Σ value of the chosen ≤ limit`. A part of a choice is given up when, for some restriction, its
 * values and the least that the remaining lines can add pass the limit.
 *
 * Values and limits are whole numbers. Beside each stands a copy in doubles, shifted down to fit
 * and rounded down (limits up), whose sums stay below 2 to the 53 and so are exact: what the
 * copies rule out is ruled out. Where they cannot tell, the whole numbers are added up. So nothing
 * is lost to rounding, and ties are seen as ties.
 */
export interface Restriction {
  /** By line, by candidate. */
  readonly values: readonly (readonly bigint[])[];
  readonly limit: bigint;
}

export interface Ordering {
  /** The lines, in the order they are decided. */
  readonly order: readonly number[];
  /** Each line's candidates, in the order they are tried. */
  readonly tries: readonly (readonly number[])[];
}

export interface Hunt extends Ordering {
  readonly restrictions: readonly Restriction[];
  readonly nodes: number;
}

/** What a found choice changes: the restrictions' new limits, or nothing more is wanted. */
export type Found = (choice: readonly number[]) => readonly bigint[] | "enough";

export interface HuntEnd {
  readonly end: "seen-all" | "enough" | "stopped";
  readonly nodes: number;
}

export function hunt({ restrictions, order, tries, nodes: limit }: Hunt, found: Found): HuntEnd {
  const copies = restrictions.map((r) => copyOf(r, order));
  const depthOf = order.length;
  if (depthOf === 0) {
    if (restrictions.every((r) => r.limit >= 0n)) found([]);
    return { end: "seen-all", nodes: 0 };
  }
  const width = copies.length;
  const values = order.map((line) => valuesAt(copies, line));
  const rest = new Float64Array((depthOf + 1) * width);
  for (const [r, copy] of copies.entries())
    for (let d = 0; d <= depthOf; d += 1) rest[d * width + r] = copy.rest[d] as number;
  const limits = new Float64Array(width);
  const sure = new Float64Array(width);
  let exact = restrictions.map((r) => r.limit);
  const setLimits = (): void => {
    for (const [r, { shift }] of copies.entries()) {
      const low = Number((exact[r] as bigint) >> shift);
      limits[r] = low;
      sure[r] = shift === 0n ? low + 1 : low - depthOf;
    }
  };
  setLimits();
  const sums = new Float64Array((depthOf + 1) * width);
  const next = new Int32Array(depthOf + 1);
  const choice = new Array<number>(depthOf).fill(0);
  const breaks = (depth: number): boolean =>
    restrictions.some(({ values }, r) => {
      let total = (copies[r] as Copy).exactRest[depth + 1] as bigint;
      for (let d = 0; d <= depth; d += 1) {
        const line = order[d] as number;
        total += (values[line] as readonly bigint[])[choice[line] as number] as bigint;
      }
      return total > (exact[r] as bigint);
    });
  let nodes = 0;
  let depth = 0;
  while (depth >= 0) {
    const line = order[depth] as number;
    const candidates = tries[line] as readonly number[];
    const index = next[depth] as number;
    if (index >= candidates.length) {
      depth -= 1;
      continue;
    }
    if (nodes >= limit) return { end: "stopped", nodes };
    next[depth] = index + 1;
    nodes += 1;
    const candidate = candidates[index] as number;
    const at = values[depth] as Float64Array;
    const here = depth * width;
    const there = here + width;
    const from = candidate * width;
    let keeps = true;
    let unsure = false;
    for (let r = 0; r < width; r += 1) {
      const sum = (sums[here + r] as number) + (at[from + r] as number);
      sums[there + r] = sum;
      const least = sum + (rest[there + r] as number);
      if (least > (limits[r] as number)) {
        keeps = false;
        break;
      }
      if (least >= (sure[r] as number)) unsure = true;
    }
    if (!keeps) continue;
    choice[line] = candidate;
    if (unsure && breaks(depth)) continue;
    if (depth < depthOf - 1) {
      depth += 1;
      next[depth] = 0;
      continue;
    }
    const change = found(choice);
    if (change === "enough") return { end: "enough", nodes };
    exact = [...change];
    setLimits();
  }
  return { end: "seen-all", nodes };
}

interface Copy {
  readonly shift: bigint;
  readonly values: readonly (readonly number[])[];
  /** What the lines from each depth on add at least; the copies' and the whole numbers'. */
  readonly rest: readonly number[];
  readonly exactRest: readonly bigint[];
}

/** Sums of up to 4,096 values of 40 bits stay below 2 to the 53. */
const BITS = 40;

function copyOf({ values }: Restriction, order: readonly number[]): Copy {
  const shift = shiftFor(values);
  const copies = values.map((line) => line.map((v) => Number(v >> shift)));
  const rest = [0];
  const exactRest = [0n];
  for (const line of [...order].reverse()) {
    rest.unshift((rest[0] as number) + Math.min(...(copies[line] as number[])));
    exactRest.unshift((exactRest[0] as bigint) + smallest(values[line] as readonly bigint[]));
  }
  return { shift, values: copies, rest, exactRest };
}

/** How far to shift whole numbers down for their size to fit {@link BITS}. */
export function shiftFor(values: readonly (readonly bigint[])[]): bigint {
  let most = 0n;
  for (const line of values) {
    for (const v of line) {
      const size = v < 0n ? -v : v;
      if (size > most) most = size;
    }
  }
  return BigInt(Math.max(0, most.toString(2).length - BITS));
}

export function smallest(values: readonly bigint[]): bigint {
  let [least = 0n] = values;
  for (const v of values) if (v < least) least = v;
  return least;
}

/** The copies' values of a line, candidate after candidate. */
function valuesAt(copies: readonly Copy[], line: number): Float64Array {
  const all = new Float64Array((copies[0]?.values[line]?.length ?? 0) * copies.length);
  for (const [r, { values }] of copies.entries()) {
    for (const [k, v] of (values[line] as readonly number[]).entries()) all[k * copies.length + r] = v;
  }
  return all;
}

/** The indices of some values, the least first, earlier ones first among equals. */
export function ranked(values: readonly bigint[]): number[] {
  return values
    .map((_, k) => k)
    .sort((a, b) => {
      const [left, right] = [values[a] as bigint, values[b] as bigint];
      return left < right ? -1 : left > right ? 1 : a - b;
    });
}
