/** What a worker does, in Node and in a browser alike: it opens the sheet once, then answers slice by slice. */
import { openSheet, type Quantity, type Sheet } from "steelyard";
import { type PortionColumns, portionsAt } from "steelyard/bulk";

export type Message =
  | { readonly sheet: string }
  | {
      readonly from: number;
      readonly energy: Float64Array<ArrayBuffer>;
      readonly components: readonly Quantity[];
    };

export interface Answer {
  readonly from: number;
  readonly columns: PortionColumns;
}

let opened: Sheet | undefined;

/** Answers a message, with the buffers that may be moved instead of copied. */
export function answer(
  message: Message,
): { readonly reply: Answer; readonly move: ArrayBuffer[] } | undefined {
  if ("sheet" in message) {
    opened = openSheet(JSON.parse(message.sheet));
    return undefined;
  }
  const { from, energy, components } = message;
  const columns = portionsAt(opened as Sheet, { energy }, components, { silent: "accept" });
  const arrays = Object.values(columns.columns).flatMap(({ value, least, most, bound }) => [
    value,
    least,
    most,
    bound,
  ]);
  // Columns that say the same are one array, and each buffer moves once.
  const buffers = [columns.factor, columns.status, ...arrays].map(({ buffer }) => buffer as ArrayBuffer);
  return { reply: { from, columns }, move: [...new Set(buffers)] };
}
