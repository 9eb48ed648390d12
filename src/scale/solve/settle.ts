import { type Restriction, shiftFor } from "./restriction.ts";

/**
 * A quick improver in doubles: changes one line or two at once as long as the restrictions come
 * nearer to holding, or hold as before and the cost falls. It only gives the search a good choice to
 * start from; what it hands back is checked in whole numbers before it counts.
 */
export function settleNearby(
  costs: readonly (readonly bigint[])[],
  restrictions: readonly Restriction[],
  start: readonly number[],
): number[] {
  const state = stateOf(costs, restrictions, start);
  for (let round = 0; round < ROUNDS; round += 1) {
    if (!changeOne(state) && !changeTwo(state)) break;
  }
  return state.chosen;
}

const ROUNDS = 200;

interface State {
  readonly chosen: number[];
  readonly costs: readonly Float64Array[];
  /** By line, candidate after candidate, each restriction's value over its own size. */
  readonly values: readonly Float64Array[];
  readonly width: number;
  /** What is left of each limit; below 0 where it is passed. */
  readonly room: Float64Array;
}

function stateOf(
  costs: readonly (readonly bigint[])[],
  restrictions: readonly Restriction[],
  start: readonly number[],
): State {
  const width = restrictions.length;
  const shift = shiftFor(costs);
  const values = costs.map((line) => new Float64Array(line.length * width));
  const room = new Float64Array(width);
  for (const [r, { values: whole, limit }] of restrictions.entries()) {
    const by = shiftFor(whole);
    let left = limit;
    for (const [i, line] of whole.entries()) {
      left -= line[start[i] as number] as bigint;
      for (const [k, v] of line.entries()) (values[i] as Float64Array)[k * width + r] = Number(v >> by);
    }
    room[r] = Number(left >> by);
  }
  return {
    chosen: [...start],
    costs: costs.map((l) => Float64Array.from(l, (c) => Number(c >> shift))),
    values,
    width,
    room,
  };
}

/** By how much the room is passed, squared and summed, once two changes are made. */
function passed(
  { room, values, width }: State,
  i: number,
  from: number,
  to: number,
  j: number,
  was: number,
  now: number,
): number {
  const first = values[i] as Float64Array;
  const second = values[j] as Float64Array;
  let total = 0;
  for (let r = 0; r < width; r += 1) {
    const left =
      (room[r] as number) +
      (first[from * width + r] as number) -
      (first[to * width + r] as number) +
      (second[was * width + r] as number) -
      (second[now * width + r] as number);
    if (left < 0) total += left * left;
  }
  return total;
}

function changeOne(s: State): boolean {
  let changed = false;
  for (let i = 0; i < s.chosen.length; i += 1) {
    const costs = s.costs[i] as Float64Array;
    for (let k = 0; k < costs.length; k += 1) {
      const from = s.chosen[i] as number;
      if (k === from) continue;
      const before = passed(s, i, from, from, i, from, from);
      const after = passed(s, i, from, k, i, from, from);
      if (after > before || (after === before && (costs[k] as number) >= (costs[from] as number))) continue;
      take(s, i, k);
      changed = true;
    }
  }
  return changed;
}

function changeTwo(s: State): boolean {
  let changed = false;
  for (let i = 0; i < s.chosen.length; i += 1) {
    for (let j = i + 1; j < s.chosen.length; j += 1) if (changePair(s, i, j)) changed = true;
  }
  return changed;
}

function changePair(s: State, i: number, j: number): boolean {
  const first = s.costs[i] as Float64Array;
  const second = s.costs[j] as Float64Array;
  const from = s.chosen[i] as number;
  const was = s.chosen[j] as number;
  let best = passed(s, i, from, from, j, was, was);
  let cheapest = (first[from] as number) + (second[was] as number);
  let [to, now] = [from, was];
  for (let k = 0; k < first.length; k += 1) {
    for (let l = 0; l < second.length; l += 1) {
      const cost = (first[k] as number) + (second[l] as number);
      const after = passed(s, i, from, k, j, was, l);
      if (after > best || (after === best && cost >= cheapest)) continue;
      [best, cheapest, to, now] = [after, cost, k, l];
    }
  }
  if (to === from && now === was) return false;
  take(s, i, to);
  take(s, j, now);
  return true;
}

function take(s: State, i: number, k: number): void {
  const values = s.values[i] as Float64Array;
  const from = s.chosen[i] as number;
  for (let r = 0; r < s.width; r += 1) {
    s.room[r] =
      (s.room[r] as number) + (values[from * s.width + r] as number) - (values[k * s.width + r] as number);
  }
  s.chosen[i] = k;
}
