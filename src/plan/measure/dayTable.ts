import { type Exact, ONE, plus, sum, ZERO } from "../../number/exact.ts";
import type { ReadDemand, Subject } from "../../scale/engine/readDemand.ts";
import { heldBefore, holdsWithin, type SubjectFigures } from "../../scale/round/heldBefore.ts";

/** A plate of the day: what it brings of a subject as it was found, and as it stands. */
export interface DayPlate {
  readonly found: (subject: Subject) => SubjectFigures;
  readonly stands: (subject: Subject) => SubjectFigures;
}

/**
 * One person's plates of a day that was fitted as one. They are measured one after the other, each
 * knowing what those before it cost, so that the day's drift so far is carried forward.
 */
export class DayTable {
  readonly #plates: readonly DayPlate[];
  readonly #standing: readonly ReadDemand[];
  readonly #besides: (subject: Subject) => SubjectFigures;

  constructor(
    plates: readonly DayPlate[],
    demands: readonly ReadDemand[],
    tolerance: Exact,
    besides: (subject: Subject) => SubjectFigures,
  ) {
    this.#plates = plates;
    this.#besides = besides;
    this.#standing = demands.map((demand) => {
      const exact = plates.map((plate) => plate.found(demand.subject));
      return heldBefore(demand, tolerance, this.#together(demand.subject, exact));
    });
  }

  /** What a plate is held to for the day's sake, the others as they stand. */
  heldFor(plate: DayPlate): readonly { readonly demand: ReadDemand; readonly beside: SubjectFigures }[] {
    return this.#standing
      .filter(({ least, most }) => least !== undefined || most !== undefined)
      .map((demand) => {
        const others = this.#plates.filter((each) => each !== plate);
        const all = others.map((each) => each.stands(demand.subject));
        const { value, per } = this.#together(demand.subject, all);
        return { demand, beside: { value, per: demand.subject.kind === "amount" ? ZERO : per } };
      });
  }

  /** Whether every firm demand of the day holds, as its plates stand. */
  get firmHold(): boolean {
    return this.#standing
      .filter(({ firm }) => firm)
      .every((demand) => {
        const all = this.#plates.map((each) => each.stands(demand.subject));
        return holdsWithin(demand, ZERO, this.#together(demand.subject, all));
      });
  }

  #together(subject: Subject, all: readonly SubjectFigures[]): SubjectFigures {
    const { value, per } = this.#besides(subject);
    return {
      value: plus(value, sum(all.map((each) => each.value))),
      per: subject.kind === "amount" ? ONE : plus(per, sum(all.map((each) => each.per))),
    };
  }
}
