/** Slices of targets handed out to workers as they come free; the same for Node's workers and a browser's. */
import type { Quantity, Sheet } from "steelyard";
import type { Answer, Message } from "./work.ts";

/** A worker, however it is reached. */
export interface Lane {
  send(message: Message, move?: ArrayBuffer[]): void;
  /** The next answer. */
  next(): Promise<Answer>;
}

/** The values of each component at every target, in the targets' order. */
export async function inSlices(
  s: Sheet,
  energy: Float64Array,
  components: readonly Quantity[],
  lanes: readonly Lane[],
  how: { readonly slice: number; readonly progress?: (done: number, of: number) => void },
): Promise<ReadonlyMap<Quantity, Float64Array>> {
  const whole = new Map(components.map((of) => [of, new Float64Array(energy.length)]));
  let [begun, done] = [0, 0];
  const work = async (lane: Lane): Promise<void> => {
    lane.send({ sheet: JSON.stringify(s) });
    while (begun < energy.length) {
      const part = energy.slice(begun, begun + how.slice);
      const from = begun;
      begun += part.length;
      // What has moved to the worker is empty here.
      lane.send({ from, energy: part, components }, [part.buffer]);
      const { columns } = await lane.next();
      for (const of of components) whole.get(of)?.set(columns.columns[of].value, from);
      done += columns.length;
      how.progress?.(done, energy.length);
    }
  };
  await Promise.all(lanes.map(work));
  return whole;
}
