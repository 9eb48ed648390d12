import type { Amount } from "../../measure/amount.ts";
import type { Kitchen } from "../../measure/kitchen.ts";
import { type Exact, isZero, ONE, over, times, ZERO } from "../../number/exact.ts";
import { ToldResult } from "../../number/told.ts";
import { moveLines } from "../../scale/move.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import type { Eater, EaterGroup } from "./groups.ts";
import { onlyLines, withLineAmounts } from "./lines.ts";
import type { Addition, PartServing, Pot } from "./parts.ts";

/** Sheets of some of the lines, each set of lines once. */
export class Subsets {
  readonly #base: Sheet;
  readonly #made = new Map<string, Sheet>();

  constructor(base: Sheet) {
    this.#base = base;
  }

  get(lines: readonly number[]): Sheet {
    const key = lines.join();
    const made = this.#made.get(key) ?? onlyLines(this.#base, lines);
    this.#made.set(key, made);
    return made;
  }
}

interface Made {
  readonly eater: Eater;
  readonly base: Sheet;
  readonly group: EaterGroup;
  readonly subsets: Subsets;
  readonly pot: Pot | undefined;
  readonly share: Exact;
  readonly cooked: Exact;
  readonly density: Exact | undefined;
}

/** A serving whose sheet is made when first looked at. */
export class PotServing extends ToldResult implements PartServing {
  readonly person: string;
  readonly pot: Pot | undefined;
  readonly #made: Made;
  #added: { readonly sheet: Sheet | undefined } | undefined;

  constructor(made: Made) {
    super();
    const { eater, pot, share, cooked, density } = made;
    this.person = eater.person;
    this.pot = pot;
    this.share = share;
    this.grams = times(cooked, share);
    this.millilitres = density && over(this.grams, density);
    this.#made = made;
  }

  get weighed(): Amount | undefined {
    return this.#made.group.measured?.weighed.get(this.person);
  }

  get isRest(): boolean {
    return this.#made.group.measured?.rest === this.person;
  }

  readonly share: Exact;

  readonly grams: Exact;

  readonly millilitres: Exact | undefined;

  get measured(): readonly string[] {
    const { base, eater, group } = this.#made;
    const shared = new Set(group.eaters.length > 1 ? group.pot : []);
    const isOwn = (line: number): boolean => eater.amounts?.[line] !== undefined && !shared.has(line);
    return base.plan.lines.flatMap(({ line }, i) => (isOwn(i) ? [line.key] : []));
  }

  get kitchen(): Kitchen | undefined {
    return this.#made.eater.kitchen;
  }

  get added(): Sheet | undefined {
    this.#added ??= { sheet: this.#add() };
    return this.#added.sheet;
  }

  get additions(): readonly Addition[] {
    const written = this.added?.plan.lines ?? [];
    return (this.added?.lines ?? []).map(({ key, name, state, scaling, added, amount, grams }, i) => ({
      line: key,
      name,
      state,
      why: added === "serving" ? "serving" : scaling === "per-portion" ? "per-portion" : "adjustable",
      cooked: added === "cooking",
      amount,
      weighed: written[i]?.line.weighed ?? "edible",
      grams,
    }));
  }

  #add(): Sheet | undefined {
    const { eater, base, group, subsets } = this.#made;
    const has = (line: number): boolean =>
      !isZero(eater.factors[line] ?? ZERO) && !isZero(base.values.grams[line] ?? ZERO);
    const lines = group.apart.filter(has);
    if (lines.length === 0) return undefined;
    const added = moveLines(
      subsets.get(lines),
      lines.map((line) => eater.factors[line] ?? ZERO),
      ONE,
    );
    return withLineAmounts(
      added,
      lines.map((line) => eater.amounts?.[line]),
    );
  }
}
