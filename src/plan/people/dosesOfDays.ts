import { type ComponentId, components } from "../../food/components.ts";
import { type Exact, fraction, isZero, ONE, over, sum } from "../../number/exact.ts";
import { groupBy } from "../../number/groupBy.ts";
import type { Dose, EatenPortion } from "../../person/portion/eaten.ts";
import { verdictOn } from "../../person/portion/verdict.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { combine, type Tally } from "../../sheet/tally.ts";

/** What someone eats on a day: what the plan serves, and what is eaten besides. */
export interface DosedDay {
  readonly id: string;
  readonly eaten: EatenPortion;
  readonly besides: readonly Sheet[];
  /** Whether all that is eaten on the day is known. */
  readonly isWhole: boolean;
}

/**
 * Gives the doses of each food as a level judges them: all of a day together, with what is eaten besides,
 * and of several days the mean of those that are wholly known.
 */
export function dosesOfDays(days: readonly DosedDay[]): readonly Dose[] {
  const whole = days.filter(({ isWhole }) => isWhole);
  const counted = whole.length > 0 ? whole : days.filter(({ eaten }) => eaten.meals.length > 0);
  const all = counted.flatMap((day) => day.eaten.doses.map((dose) => ({ day, dose })));
  return [...groupBy(all, ({ dose }) => dose.name).values()].map((own): Dose => {
    const [first] = own;
    const besides = counted.flatMap((day) => day.besides);
    if (first && counted.length === 1 && own.length === 1 && besides.length === 0) return first.dose;
    const share = over(ONE, fraction(BigInt(counted.length)));
    const bringsOn = (day: DosedDay, id: ComponentId, part: Exact): readonly (readonly [Tally, Exact])[] => [
      ...own.filter((each) => each.day === day).map(({ dose }) => [dose.brings(id), part] as const),
      ...day.besides
        .map((s) => s.portion(id))
        .flatMap((tally) => (isZero(tally.value) ? [] : [[tally, part] as const])),
    ];
    const unit = (id: ComponentId): string => components[id].unit;
    const brings = (id: ComponentId): Tally =>
      combine(
        unit(id),
        counted.flatMap((day) => bringsOn(day, id, share)),
      );
    return {
      key: [...new Set(own.map(({ dose }) => dose.key))].join(" + "),
      name: first?.dose.name ?? "",
      grams: over(sum(own.map(({ dose }) => dose.grams)), fraction(BigInt(counted.length))),
      cautions: own.flatMap(({ dose }) => dose.cautions).filter((each, i, list) => list.indexOf(each) === i),
      brings,
      ends: (id) => brings(id).ends,
      daysPast: (id, level) =>
        counted.length < 2
          ? []
          : counted
              .filter((day) => own.some((each) => each.day === day))
              .filter((day) => verdictOn(combine(unit(id), bringsOn(day, id, ONE)).ends, level) === "past")
              .map((day) => day.id),
    };
  });
}
