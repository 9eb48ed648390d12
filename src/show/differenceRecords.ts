import { type Exact, ZERO } from "../number/exact.ts";
import type { Difference } from "../sheet/difference.ts";
import type { Tally } from "../sheet/tally.ts";
import { cellRow, pointRow } from "./tallyRow.ts";
import type { Asked, Tidy, TidyRow } from "./tidy.ts";
import { tidyOf } from "./tidyOf.ts";

/**
 * What moved, for one portion, as three rows each: `before`, `after` and the `change` between; lines in grams
 * as weighed in, then the portion's mass and components as eaten. A line that came or left weighed nothing.
 */
export function differenceTidy(d: Difference, asked: Asked): Tidy {
  return tidyOf(asked, ["name", "moved"], () => differenceRows(d));
}

function* differenceRows({ lines, mass, components, before, after }: Difference): Generator<TidyRow> {
  const foods = new Map([...before.lines, ...after.lines].map(({ key, food }) => [key, food]));
  for (const { key, name, change, before: was, after: is, by } of lines) {
    const own = { name, moved: change };
    const head = { sheet: after.name, line: key, food: foods.get(key), row: "line", own };
    yield* masses(head, was ?? ZERO, is ?? ZERO, by);
  }
  const head: TidyRow = { sheet: after.name, row: "portion" };
  if (mass) yield* masses(head, mass.before, mass.after, mass.by);
  for (const { component, before: was, after: is, change } of components)
    for (const [what, tally] of [
      ["before", was],
      ["after", is],
      ["change", change],
    ] as readonly (readonly [string, Tally])[])
      yield cellRow({ ...head, what }, component, tally);
}

function* masses(head: TidyRow, was: Exact, is: Exact, by: Exact): Generator<TidyRow> {
  const of = { ...head, component: "mass" };
  yield { ...of, what: "before", ...pointRow(was, "g") };
  yield { ...of, what: "after", ...pointRow(is, "g") };
  yield { ...of, what: "change", ...pointRow(by, "g") };
}
