import { type Amount, amount, gramsOf, withExact } from "../../measure/amount.ts";
import { type Kitchen, readyKitchen } from "../../measure/kitchen.ts";
import { measurable } from "../../measure/measurable.ts";
import { showFigure } from "../../measure/showFigure.ts";
import { type Exact, equals, fraction, isZero, ONE, over, sum, times, ZERO } from "../../number/exact.ts";
import { moveLines } from "../../scale/move.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { lineTotals } from "../share/batch.ts";
import type { EaterGroup, KitchenNote, MeasuredPot } from "../share/groups.ts";
import type { LineAmounts } from "../share/lineFactors.ts";
import { shareEnds } from "./limits.ts";
import { pieceOf, stepIn } from "./pieces.ts";
import type { PotAsked } from "./potAsked.ts";
import type { PotTask, Taster } from "./potTask.ts";
import { type RoundedPot, roundPot } from "./roundPot.ts";
import { weighShares } from "./weighShares.ts";

type Weighing = Pick<PotTask, "kitchen" | "figures" | "tasters">;

/** A pot on its way into measurable amounts: exact until `measure`, and again after `leave`. */
export class SharedPot {
  readonly dish: string;
  readonly base: Sheet;
  readonly group: EaterGroup;
  #rounded: RoundedPot | undefined;
  #shares: ReadonlyMap<string, Exact>;
  #weighed: ReadonlyMap<string, Amount> = new Map();
  #rest: string | undefined;
  #left: Exact = ZERO;
  #notes: readonly KitchenNote[] = [];
  #asked: PotAsked | undefined;

  constructor(dish: string, base: Sheet, group: EaterGroup) {
    this.dish = dish;
    this.base = base;
    this.group = group;
    this.#shares = exactShares(group);
  }

  get people(): readonly string[] {
    return this.group.eaters.map(({ person }) => person);
  }

  get isRounded(): boolean {
    return this.#rounded !== undefined;
  }

  /** Whether it was given up. */
  get isLeft(): boolean {
    return this.#notes.some(({ code }) => code === "not-rounded");
  }

  /** Rounds what goes in, then weighs out the shares. */
  measure(asked: PotAsked, tasters: readonly Taster[]): void {
    const { dish, base, group } = this;
    this.#asked = asked;
    const totals = lineTotals(group.eaters, base.plan.lines.length);
    const portions = fraction(BigInt(group.eaters.length));
    const rounded = roundPot({ ...asked, tasters, dish, base, group, totals, portions });
    this.#rounded = rounded;
    const search = rounded.proven ? [] : [notProven("the pot")];
    this.#notes = [...lineNotes(base, rounded), ...search];
    if (group.eaters.length < 2 && !pieceOf(base)) return;
    const why = this.#weigh({ ...asked, tasters }, rounded.totals);
    if (why) this.#notes = [...this.#notes, { code: "shares-exact", line: undefined, text: why }];
  }

  /** Shares in the scale's steps; where they stay exact, why. */
  #weigh({ kitchen, figures, tasters }: Weighing, totals: readonly Exact[]): string | undefined {
    const { dish, base, group } = this;
    const mass = moveLines(base, this.#onlyPot(totals), ONE).masses.cooked;
    const { step, read, why } = scaleFor(kitchen, base, group, {
      mass,
      portions: fraction(BigInt(group.eaters.length)),
    });
    if (!step) return why;
    const wishes = tasters.map(({ person, demands, factors }) => {
      const ends = shareEnds(figures, demands, factors, { dish, lines: group.pot, totals });
      return { person, share: this.#shares.get(person) ?? ZERO, ...ends };
    });
    const found = weighShares(wishes, mass, step);
    if (!found) return TOO_COARSE;
    this.#shares = found.shares;
    this.#rest = found.rest;
    this.#left = found.left;
    if (!isZero(found.left)) this.#notes = [...this.#notes, leftNote(times(mass, found.left))];
    this.#weighed = new Map(
      [...found.shares].flatMap(([person, share]): [string, Amount][] => {
        const shown = person === found.rest ? undefined : read?.(times(mass, share));
        return shown ? [[person, shown]] : [];
      }),
    );
    return undefined;
  }

  /** Back to what was found, since measuring would break something. */
  leave(text: string): void {
    this.#asked = undefined;
    this.#rounded = undefined;
    this.#shares = exactShares(this.group);
    this.#weighed = new Map();
    this.#rest = undefined;
    this.#left = ZERO;
    this.#notes = [{ code: "not-rounded", line: undefined, text }];
  }

  /** The lines of the pot as they are in someone's portion, and all others as they were. */
  portionOf(person: string, factors: readonly Exact[], how?: "line-by-line"): readonly Exact[] {
    const rounded = this.#rounded;
    const share = this.#shares.get(person);
    if (!rounded || !share) return factors;
    const totals = how === undefined ? rounded.totals : rounded.lineByLine;
    const inPot = new Set(this.group.pot);
    return factors.map((factor, line) => (inPot.has(line) ? times(totals[line] ?? ZERO, share) : factor));
  }

  /**
   * What of the pot's measured amounts is in someone's portion: of a pot of one's own as they are, of
   * one that is shared in grams, since nobody measures them apart.
   */
  amountsOf(person: string): LineAmounts {
    const { amounts, totals } = this.#rounded ?? { amounts: [], totals: [] };
    if (this.group.eaters.length < 2) return amounts;
    const share = this.#shares.get(person) ?? ZERO;
    const grams = (line: number): Exact =>
      times(times(totals[line] ?? ZERO, share), this.base.values.grams[line] ?? ZERO);
    return amounts.map((own, line) => {
      // What is weighed as purchased weighs more than what is eaten of it.
      const one = this.base.plan.lines[line]?.reader.toGrams(inGrams(ONE)).grams;
      return own && inGrams(over(grams(line), one ?? ONE));
    });
  }

  get measured(): MeasuredPot {
    return {
      before: this.group.eaters,
      amounts: this.#rounded?.amounts ?? [],
      weighed: this.#weighed,
      rest: this.#rest,
      left: this.#left,
      notes: this.#notes,
      asked: this.#asked,
    };
  }

  #onlyPot(totals: readonly Exact[]): readonly Exact[] {
    const inPot = new Set(this.group.pot);
    return totals.map((f, line) => (inPot.has(line) ? f : ZERO));
  }
}

function exactShares({ eaters, by }: EaterGroup): ReadonlyMap<string, Exact> {
  const own = eaters.map(({ person, factors }) => [person, factors[by ?? -1] ?? ZERO] as const);
  const whole = sum(own.map(([, factor]) => factor));
  return new Map(own.map(([person, factor]) => [person, whole.n === 0n ? ZERO : over(factor, whole)]));
}

function inGrams(grams: Exact): Amount {
  return withExact(amount({ value: 1, unit: "g" }), grams);
}

export const TOO_COARSE = "shares of the pot are not weighed: the scale's step is too coarse for so many";

/** How a pot is shared out. */
interface ShareScale {
  /** In grams; undefined where shares stay exact. */
  readonly step?: Exact;
  /** Tells so many grams as the scale shows them, or in pieces. */
  readonly read?: (grams: Exact) => Amount | undefined;
  readonly why?: string;
}

/** In what steps a pot that weighs so much is shared out: by weight, or by the pieces it is made into; where shares stay exact, why. */
export function scaleFor(
  kitchen: Kitchen,
  base: Sheet,
  { pot }: EaterGroup,
  { mass, portions }: { readonly mass: Exact; readonly portions: Exact },
): ShareScale {
  const { plan } = base;
  const { scale } = readyKitchen(kitchen);
  const piece = pieceOf(base);
  const step = piece ? stepIn(piece, mass, portions) : scale && gramsOf(scale);
  if (!step) return { why: "shares of the pot are not weighed: the kitchen has no scale" };
  const dose = pot.find((line) => plan.lines[line]?.line.scaling === "per-portion");
  if (dose === undefined) {
    const inPieces = (grams: Exact): Amount | undefined =>
      piece && withExact(piece.one, times(over(grams, step), piece.step));
    return { step, read: piece ? inPieces : (grams) => readOn(kitchen, grams) };
  }
  const name = plan.lines[dose]?.source.name ?? "";
  return { why: `shares of the pot are equal, not weighed: ${name} in it is the same for everyone` };
}

/** As the scale shows it. */
export function readOn(kitchen: Kitchen, grams: Exact): Amount | undefined {
  const near = measurable(kitchen, inGrams(grams), { each: 1 });
  return near.find(({ value: exact }) => equals(exact, grams))?.amount;
}

/** What a cook should know of single lines of what was rounded. */
export function lineNotes(
  base: Sheet,
  { unmeasurable, undivided }: Pick<RoundedPot, "unmeasurable" | "undivided">,
): readonly KitchenNote[] {
  return [
    ...unmeasurable.map((line) => unmeasurableNote(base, line)),
    ...undivided.map((line) => undividedNote(base, line)),
  ];
}

function undividedNote({ plan }: Sheet, line: number): KitchenNote {
  const own = plan.lines[line];
  const name = own?.source.name ?? "";
  return {
    code: "not-divided",
    line: own?.line.key,
    text: `${name}: weighed, since in whole pieces it would be far off or break what must hold`,
  };
}

function unmeasurableNote({ plan }: Sheet, line: number): KitchenNote {
  const own = plan.lines[line];
  const name = own?.source.name ?? "";
  return {
    code: "not-measurable",
    line: own?.line.key,
    text: `${name}: the kitchen cannot measure this amount; it stays as it is`,
  };
}

function leftNote(grams: Exact): KitchenNote {
  const text = `${showFigure(grams, { unit: "g" })} stay in the pot: more than the limits of those who eat of it leave room for`;
  return { code: "left-in-pot", line: undefined, text };
}

export function notProven(what: string): KitchenNote {
  const text = `${what}: the best amounts that were found; there may be better ones`;
  return { code: "not-proven", line: undefined, text };
}
