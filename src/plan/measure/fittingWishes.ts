import { withExact } from "../../measure/amount.ts";
import { type Exact, fraction, ONE, times } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import type { LineOffers, OfferTask } from "../../scale/round/candidates.ts";
import { gram, type Wish } from "../../scale/round/wish.ts";
import { inSpoons } from "./inSpoons.ts";

type Wishes = ReadonlyMap<string, Wish>;

/**
 * By what lines are measured instead of as they were written, by name: in spoons and cups where the
 * kitchen cannot weigh, on the scale where the least that can be counted is far too much (half a block
 * for a seventh of one). Lines that are wished for otherwise are left to that.
 */
export function fittingWishes(task: OfferTask, lines: readonly LineOffers[]): Wishes {
  const { dishes, kitchen, wishes } = task;
  const found = new Map<string, Wish>();
  for (const line of lines) {
    if (wishes.has(line.name)) continue;
    if (kitchen.scale !== undefined) {
      if (isCounted(line) && isAbove(line, FAR_TOO_MUCH)) found.set(line.name, { one: gram() });
    } else if (line.kept === "not-measurable") {
      const own = dishes[line.dish]?.sheet.plan.lines[line.line];
      const spoon = own && inSpoons(own, line.grams, kitchen);
      if (spoon) found.set(line.name, { one: withExact(spoon, ONE) });
    }
  }
  return found;
}

/** Lines that are counted and can be weighed instead. */
export function weighedPieces({ kitchen, wishes }: OfferTask, lines: readonly LineOffers[]): Wishes {
  const pieces = kitchen.scale === undefined ? [] : lines.filter(isCounted);
  return new Map(pieces.filter(({ name }) => !wishes.has(name)).map(({ name }) => [name, { one: gram() }]));
}

/** What is too small to be measured, as it stands. */
export function leftAsItStands(line: LineOffers): LineOffers {
  return isAbove(line, ONE) ? { ...line, offers: [], kept: "not-measurable", measurable: false } : line;
}

/** More than twice what is wanted. Common practice, no source. */
const FAR_TOO_MUCH: Exact = /* @__PURE__ */ fraction(2n);

/** Whether it comes in the food's own measures. */
function isCounted({ offers }: LineOffers): boolean {
  return offers.some(({ amount }) => amount.kind === "own");
}

/** Whether the least that can be measured is more than so many times what is wanted. */
function isAbove({ grams, offers }: LineOffers, factor: Exact): boolean {
  const most = times(grams, factor);
  return offers.length > 0 && offers.every((offer) => compareRatios(offer.grams, most) > 0);
}
