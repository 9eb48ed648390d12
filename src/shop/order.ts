import { OTHER_AISLE } from "./goods.ts";

/** By aisle, `other` last, then by name. No alphabet is heeded, so the order is the same everywhere. */
export function byAisle(a: Placed, b: Placed): number {
  const last = (aisle: string): number => (aisle === OTHER_AISLE ? 1 : 0);
  return last(a.aisle) - last(b.aisle) || inOrder(a.aisle, b.aisle) || byItsName(a, b);
}

/** What is put in order by its name. */
export interface InOrder {
  readonly name: string;
  readonly food: string;
}

/** What stands in an aisle. */
export interface Placed extends InOrder {
  readonly aisle: string;
}

export function byItsName(a: InOrder, b: InOrder): number {
  return inOrder(a.name, b.name) || inOrder(a.food, b.food);
}

/** Whatever their case, and with it only where nothing else tells them apart. */
function inOrder(a: string, b: string): number {
  return compareText(a.toLowerCase(), b.toLowerCase()) || compareText(a, b);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
