import { type Exact, greatest, least, ONE, plus, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import type { PlannedDish } from "../plan/dish.ts";
import { type DemandDrift, type DriftOf, PortionDrift } from "../plan/measure/drift.ts";
import { type DemandRow, type MealFigures, rowAt } from "../plan/measure/figures.ts";
import type { PotAsked } from "../plan/measure/potAsked.ts";
import type { Taster } from "../plan/measure/potTask.ts";
import type { KitchenNote } from "../plan/share/groups.ts";
import type { Pot } from "../plan/share/parts.ts";
import { moveLines } from "../scale/move.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { exactLot, type Lot, type LotOf, settleLot } from "./lot.ts";
import { type LotAsked, type MeasuredLot, measuredLot } from "./measuredLot.ts";
import { byShares, byWeight, meanShare, type SharedOut, withShare } from "./shareOut.ts";

/** What measuring all that is cooked of a meal does to what one person is served of it. */
export interface PersonDrift {
  readonly person: string;
  /** Their portions on the mean: `before` is what the plan serves, `brings` what they are served now. */
  readonly drift: PortionDrift;
  /** Demands that hold for the portion as it was planned, and no longer do. */
  readonly lost: readonly DemandDrift[];
}

/** By dish, what each line of one portion as written is multiplied by. */
type Factors = ReadonlyMap<string, readonly Exact[]>;

/** What one person eats of a meal, as pots are measured one after another. */
interface Plate {
  readonly planned: Factors;
  readonly mean: Map<string, readonly Exact[]>;
  readonly lineByLine: Map<string, readonly Exact[]>;
  /** Portions of all sizes. */
  readonly sizes: Map<string, readonly (readonly Exact[])[]>;
  isLeft: boolean;
}

const LEFT =
  "the pot stays in exact amounts: in measurable ones, what must hold for someone would not, or a run would not go into its vessel";

/** What is measured at once. */
interface MeasuringOf {
  /** All dishes of the meal as they are made, by name. */
  readonly dishes: ReadonlyMap<string, PlannedDish>;
  /** The same as they were planned. */
  readonly before: ReadonlyMap<string, PlannedDish>;
  readonly counts: ReadonlyMap<string, bigint>;
  readonly lots: readonly LotOf[];
}

/**
 * Brings all that is cooked of a meal at once to amounts that the plan's kitchen can measure: pot
 * after pot, each knowing what those before it cost, every firm demand of everyone kept. A pot that
 * cannot keep them stays as it was planned.
 */
export class Measuring {
  readonly lots: Map<Pot, Lot> = new Map();
  readonly #dishes: ReadonlyMap<string, PlannedDish>;
  readonly #before: ReadonlyMap<string, PlannedDish>;
  readonly #plates = new Map<string, Plate>();
  #asked: (PotAsked & { readonly before: MealFigures }) | undefined;

  constructor({ dishes, before, counts, lots }: MeasuringOf) {
    this.#dishes = dishes;
    this.#before = before;
    for (const person of counts.keys()) this.#plates.set(person, this.#plateOf(person));
    for (const of of lots) {
      const { asked } = of.group.measured ?? {};
      if (!asked) continue;
      const figures = asked.figures.with((name) => dishes.get(name)?.base());
      const now = { ...asked, figures };
      this.#asked = { ...now, before: asked.figures };
      const lot = this.#measure(of, now);
      settleLot(of, lot);
      this.lots.set(of.pot, lot);
    }
  }

  /** Everyone who eats of the meal, in order. */
  get drifts(): readonly PersonDrift[] {
    const asked = this.#asked;
    return asked ? [...this.#plates].map(([person, plate]) => this.#drift(person, plate, asked)) : [];
  }

  #measure(of: LotOf, asked: PotAsked): Lot {
    const isOther = this.#before.get(of.dish.name)?.base() !== of.dish.base();
    // A dish of several meals was measured in none of them.
    const isMeasured = (of.group.measured?.amounts.length ?? 0) > 0;
    if (isMeasured && !isOther && isAsPlanned(of)) {
      const lot = exactLot(
        of,
        of.pot.notes.filter(({ code }) => OF_LINES.has(code)),
      );
      // In one run it is the plan's own pot, measured already.
      if (lot.runs.length === 1 && lot.runs[0]?.count.eq(1)) return lot;
    }
    const now = { ...asked, tasters: [...of.counts.keys()].flatMap((person) => this.#now(person, asked)) };
    const made = measuredLot(of, now);
    const lot = made && this.#shared(of, made, now);
    if (lot) return lot;
    for (const person of of.counts.keys()) (this.#plates.get(person) as Plate).isLeft = true;
    return exactLot(of, [{ code: "not-rounded", line: undefined, text: LEFT }]);
  }

  /** The first way to share a lot out that keeps what must hold for everyone. */
  #shared(of: LotOf, made: MeasuredLot, asked: LotAsked): Lot | undefined {
    const { tasters } = asked;
    if (made.isAsPlanned) return { ...made.lot, portions: undefined };
    const weighed = byWeight(of, made, asked);
    const ways = [...weighed, byShares(of, weighed[0]?.why ?? NOT_WEIGHED)];
    const found = ways.find((way) => tasters.every((taster) => this.#keeps(of, made, way, taster, asked)));
    if (!found) return undefined;
    for (const { person } of tasters) this.#serve(of, made, found, person);
    const { portions, why } = found;
    const notes: readonly KitchenNote[] = why ? [{ code: "shares-exact", line: undefined, text: why }] : [];
    return { ...made.lot, portions, notes: [...made.lot.notes, ...notes] };
  }

  /** Whether someone's firm demands hold, whichever of their portions of each dish they eat together. */
  #keeps(
    of: LotOf,
    { totals }: MeasuredLot,
    { portions }: SharedOut,
    { person, demands }: Taster,
    { figures }: PotAsked,
  ): boolean {
    const plate = this.#plates.get(person) as Plate;
    const name = of.dish.name;
    const now = plate.mean.get(name) ?? [];
    const own = (portions.get(person) ?? []).map(({ share }) => withShare(now, of.group.pot, totals, share));
    if (of.keeps && !own.every((factors) => of.keeps?.(person, factors))) return false;
    const sizes = new Map([...plate.sizes, [name, own]]);
    return demands
      .filter(({ firm }) => firm)
      .flatMap((demand) => figures.rows(demand))
      .every((row) => {
        const side = compareRatios(worst(row, sizes), row.end);
        return row.side === "most" ? side <= 0 : side >= 0;
      });
  }

  #serve(of: LotOf, { totals, lineByLine }: MeasuredLot, { portions }: SharedOut, person: string): void {
    const plate = this.#plates.get(person) as Plate;
    const own = portions.get(person) ?? [];
    const { name } = of.dish;
    const now = plate.mean.get(name) ?? [];
    const at = (multiples: readonly Exact[], share: Exact): readonly Exact[] =>
      withShare(now, of.group.pot, multiples, share);
    plate.mean.set(name, at(totals, meanShare(own)));
    plate.lineByLine.set(name, at(lineByLine, meanShare(own)));
    plate.sizes.set(
      name,
      own.map(({ share }) => at(totals, share)),
    );
  }

  /** Someone who eats of a lot, as those before it leave their plate. */
  #now(person: string, { heldTo }: PotAsked): readonly Taster[] {
    const [held, plate] = [heldTo.get(person), this.#plates.get(person)];
    return held && plate ? [{ ...held, factors: plate.mean }] : [];
  }

  #plateOf(person: string): Plate {
    const planned = new Map(
      [...this.#dishes].flatMap(([name, dish]): [string, readonly Exact[]][] => {
        const eater = dish
          .groups()
          .flatMap(({ eaters }) => eaters)
          .find((each) => each.person === person);
        return eater ? [[name, eater.factors]] : [];
      }),
    );
    const sizes = new Map([...planned].map(([name, factors]) => [name, [factors]]));
    return { planned, mean: new Map(planned), lineByLine: new Map(planned), sizes, isLeft: false };
  }

  #drift(person: string, plate: Plate, asked: PotAsked & { readonly before: MealFigures }): PersonDrift {
    const { planned: exact, mean: measured, lineByLine, isLeft: unrounded } = plate;
    const { figures, before: figuresBefore, tolerance } = asked;
    const demands = asked.heldTo.get(person)?.demands ?? [];
    const of: DriftOf = {
      figures,
      figuresBefore,
      demands,
      tolerance,
      exact,
      measured,
      lineByLine,
      unrounded,
    };
    const drift = new PortionDrift(of, () => this.#sheets(measured));
    return {
      person,
      drift,
      get lost() {
        return drift.demands.filter(({ holds, heldBefore }) => !holds && heldBefore);
      },
    };
  }

  #sheets(factors: Factors): readonly Sheet[] {
    return [...factors].flatMap(([name, own]) => {
      const base = this.#dishes.get(name)?.base();
      return base ? [moveLines(base, own, ONE)] : [];
    });
  }
}

/** What the plan's own pot says of its amounts, where it is cooked as it is. */
const OF_LINES: ReadonlySet<KitchenNote["code"]> = /* @__PURE__ */ new Set([
  "left-in-pot",
  "not-divided",
  "not-measurable",
] as const);

const NOT_WEIGHED =
  "shares of the pot are not weighed: in the scale's steps, what must hold for someone would not";

/** Whether everybody who eats of the pot takes one portion. */
function isAsPlanned({ pot, counts }: LotOf): boolean {
  return pot.people.every((person) => counts.get(person) === 1n);
}

/** The least a row comes to, or the most where it has to stay below an end. */
function worst(row: DemandRow, sizes: ReadonlyMap<string, readonly (readonly Exact[])[]>): Exact {
  let total = ZERO;
  for (const [dish, own] of sizes) {
    const all = own.map((factors) => rowAt(row, new Map([[dish, factors]])));
    const [first, ...others] = all;
    if (first) total = plus(total, others.reduce(row.side === "most" ? greatest : least, first));
  }
  return total;
}
