import { ZERO } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import { listText } from "../../scale/fit/words.ts";
import type { ServedPortion } from "../portion.ts";
import { type DishSharing, percent } from "./sharing.ts";

/**
 * How many pots are saved, for whom each is, how far off it leaves them, and whether that is the
 * fewest: `1 pot instead of 2, with no demand more than 5% off: for Cox and Bow. Off at worst: Bow
 * 3.1%.`
 */
export function sharingText(
  { apart, tolerance, proven, tried }: Omit<DishSharing, "text">,
  pots: readonly (readonly ServedPortion[])[],
  names: ReadonlyMap<string, string>,
): string {
  const nameOf = ({ person }: ServedPortion): string => names.get(person) ?? person;
  const within =
    tolerance.n === 0n ? "with every demand met" : `with no demand more than ${percent(tolerance)} off`;
  const whom = pots.map((pot) => `for ${listText(pot.map(nameOf))}`).join("; ");
  const counted = `${pots.length} ${pots.length === 1 ? "pot" : "pots"}`;
  const first =
    pots.length < apart
      ? `${counted} instead of ${apart}, ${within}: ${whom}.`
      : apart < 2
        ? `everyone already shares a pot, so that none can be saved ${within}.`
        : `${counted} as before: none can be saved ${within}.`;
  return [first, offText(pots.flat(), nameOf), fewestText(proven, tried)].filter((each) => each).join(" ");
}

function offText(all: readonly ServedPortion[], nameOf: (served: ServedPortion) => string): string {
  const worst = ({ shared }: ServedPortion) => shared?.worst ?? ZERO;
  const off = all
    .filter((served) => worst(served).n > 0n)
    .sort((a, b) => compareRatios(worst(b), worst(a)))
    .map((served) => `${nameOf(served)} ${percent(worst(served))}`);
  return off.length === 0 ? "" : `Off at worst: ${off.join(", ")}.`;
}

function fewestText(proven: boolean, tried: number): string {
  if (proven) return "";
  return `Fewer may be possible: not every way was tried, but ${tried} sets of people were.`;
}
