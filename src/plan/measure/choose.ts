import type { Amount } from "../../measure/amount.ts";
import { absolute, type Exact, fraction, minus, ONE, over } from "../../number/exact.ts";
import { compareRatios } from "../../number/ratio.ts";
import {
  type LineOffers,
  lineOffers,
  nearestOffer,
  type Offer,
  type OfferTask,
} from "../../scale/round/candidates.ts";
import { type HeldEnd, movingIn, problemOf } from "../../scale/round/problem.ts";
import type { AmountsProblem } from "../../scale/solve/amounts.ts";
import { chooseAmounts } from "../../scale/solve/choose.ts";
import { fittingWishes, leftAsItStands, weighedPieces } from "./fittingWishes.ts";

/** An amount that can be measured, for one line. */
export interface LineChoice {
  readonly dish: number;
  readonly line: number;
  readonly amount: Amount;
  /** What the line's exact amount is multiplied by to come to it. */
  readonly ratio: Exact;
}

/** One amount for every line that is measured. */
export interface ChosenAmounts {
  readonly choices: readonly LineChoice[];
  /** The same, each line rounded for itself. */
  readonly lineByLine: readonly LineChoice[];
  /** Lines that the kitchen cannot measure as they stand, by dish and place. */
  readonly unmeasurable: readonly { readonly dish: number; readonly line: number }[];
  /** Lines that are weighed, since whole pieces of them would be far off or break what must hold. */
  readonly undivided: readonly { readonly dish: number; readonly line: number }[];
  /** Whether nothing better can be chosen. */
  readonly proven: boolean;
}

/** Choices looked at for one pot or one person: a fraction of a second, then the best found serves. */
const NODES = 100_000;

/** How many amounts are looked for on each side of a line's exact one. */
const NEAR = 2;
const WIDE = 40;
/** Of many, the places on each side that are tried: near ones closely, far ones widely. */
const PLACES: readonly number[] = [1, 2, 3, 5, 8, 13, 21, 34];
/** Amounts further off than this are no choice unless they are among the nearest. */
const FAR: Exact = /* @__PURE__ */ fraction(3n, 10n);

/** Lines that are measured, and what they are held to. */
export interface ChooseTask extends Omit<OfferTask, "each"> {
  readonly ends: readonly HeldEnd[];
}

/**
 * One measurable amount for every line, by what `roundToKitchen` asks; nothing where no choice
 * keeps the firm demands. A `pot` keeps its ratios, whatever its size. `additions` are what can still
 * make up for all that was settled before them: they are tried further off, and the size is settled.
 */
export function choose(task: ChooseTask, of: "pot" | "additions"): ChosenAmounts | undefined {
  const wide = of === "additions";
  const all = { ...task, each: wide ? WIDE : NEAR };
  for (const lines of waysOf(all, wide)) {
    const found = chosenOf(all, lines, wide);
    if (found) return found;
  }
  return undefined;
}

function chosenOf(
  { ends, wishes }: ChooseTask,
  lines: readonly LineOffers[],
  wide: boolean,
): ChosenAmounts | undefined {
  const own = problemOf(ends, lines);
  const problem: AmountsProblem = wide ? { ...own, common: ONE } : own;
  const moving = movingIn(lines);
  const found = moving.length === 0 ? nothingMoves(problem) : search(problem);
  if (!found) return undefined;
  const isWeighed = ({ division, name }: LineOffers, i: number): boolean =>
    division !== undefined &&
    !wishes.has(name) &&
    moving[i]?.offers[found.chosen[i] ?? 0]?.amount.kind !== "own";
  return {
    choices: moving.flatMap((line, i) => choiceOf(line, line.offers[found.chosen[i] ?? 0])),
    lineByLine: moving.flatMap((line) => choiceOf(line, nearestOffer(line))),
    unmeasurable: lines
      .filter(({ measurable, kept }) => !measurable && kept !== "as-written" && kept !== "nothing")
      .map(({ dish, line }) => ({ dish, line })),
    undivided: moving.filter(isWeighed).map(({ dish, line }) => ({ dish, line })),
    proven: found.proven,
  };
}

/**
 * How lines may be measured, the author's own way first. Where that breaks what must hold, pieces are
 * weighed; where that does too, what is too small to be measured stays as it is, so that one such line
 * does not leave the others unmeasured.
 */
function* waysOf(task: OfferTask, wide: boolean): Generator<readonly LineOffers[], void> {
  const offers = (wishes: OfferTask["wishes"]): readonly LineOffers[] => {
    const lines = lineOffers({ ...task, wishes });
    return wide ? lines.map(thinned) : lines;
  };
  const written = offers(task.wishes);
  const fitting = fittingWishes(task, written);
  const wishes = new Map([...task.wishes, ...fitting]);
  const own = fitting.size === 0 ? written : offers(wishes);
  yield own;
  const pieces = weighedPieces({ ...task, wishes }, own);
  const weighed = pieces.size === 0 ? own : offers(new Map([...wishes, ...pieces]));
  if (pieces.size > 0) yield weighed;
  const left = weighed.map(leftAsItStands);
  if (left.some((line, i) => line !== weighed[i])) yield left;
}

interface Found {
  readonly chosen: readonly number[];
  readonly proven: boolean;
}

function search(problem: AmountsProblem): Found | undefined {
  const found = chooseAmounts(problem, { nodes: NODES });
  if (found.status === "infeasible") return undefined;
  if (found.status !== "stopped") return { chosen: found.chosen, proven: true };
  return found.best && { chosen: found.best.chosen, proven: false };
}

/** Where nothing can be chosen all hangs on what is there already. */
function nothingMoves({ demands }: AmountsProblem): Found | undefined {
  const holds = demands.every(
    ({ firm, constant, lower, upper }) =>
      !firm ||
      (!(lower && compareRatios(constant, lower) < 0) && !(upper && compareRatios(constant, upper) > 0)),
  );
  return holds ? { chosen: [], proven: true } : undefined;
}

function choiceOf({ dish, line, grams }: LineOffers, offer: Offer | undefined): LineChoice[] {
  return offer ? [{ dish, line, amount: offer.amount, ratio: over(offer.grams, grams) }] : [];
}

function thinned(line: LineOffers): LineOffers {
  const { grams, offers } = line;
  const below = offers.filter((offer) => compareRatios(offer.grams, grams) < 0).reverse();
  const above = offers.filter((offer) => compareRatios(offer.grams, grams) > 0);
  const same = offers.filter((offer) => compareRatios(offer.grams, grams) === 0);
  const isNear = (offer: Offer): boolean =>
    compareRatios(absolute(minus(over(offer.grams, grams), ONE)), FAR) <= 0;
  const some = (side: readonly Offer[]): Offer[] =>
    PLACES.flatMap((place) => {
      const offer = side[place - 1];
      return offer && (place <= NEAR || isNear(offer)) ? [offer] : [];
    });
  return { ...line, offers: [...some(below).reverse(), ...same, ...some(above)] };
}
