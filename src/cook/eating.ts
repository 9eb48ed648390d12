/** How many portions of a meal people eat, from day to day. */
export class Eating {
  /** Places of days on which somebody eats of it, in order. */
  readonly days: readonly number[];
  readonly #people: readonly string[];
  readonly #servings: (person: string) => bigint;
  readonly #isAway: (person: string, day: number) => boolean;

  constructor(at: {
    readonly eaten: readonly number[];
    /** Who is served it at all. */
    readonly people: readonly string[];
    readonly servings: (person: string) => bigint;
    readonly isAway: (person: string, day: number) => boolean;
  }) {
    this.#people = at.people;
    this.#servings = at.servings;
    this.#isAway = at.isAway;
    const hungry = at.people.filter((person) => at.servings(person) > 0n);
    this.days = at.eaten.filter((day) => hungry.some((person) => !at.isAway(person, day)));
  }

  /** Portions on each day that this person eats of it. */
  servings(person: string): bigint {
    return this.#servings(person);
  }

  /** Portions that each person eats of it on some days together; nobody who eats none. */
  counts(days: readonly number[]): ReadonlyMap<string, bigint> {
    return new Map(
      this.#people.flatMap((person): [string, bigint][] => {
        const count = this.#servings(person) * BigInt(this.daysOf(person, days).length);
        return count === 0n ? [] : [[person, count]];
      }),
    );
  }

  /** The days, of some, on which this person eats of it. */
  daysOf(person: string, days: readonly number[] = this.days): readonly number[] {
    return this.#servings(person) === 0n ? [] : days.filter((day) => !this.#isAway(person, day));
  }
}

/** What is cooked on one day, and the days on which that is eaten; none where nobody eats of it. */
export interface EatingSpan {
  readonly cooked: number;
  readonly eaten: readonly number[];
}

/** Days of eating, each under the last day of cooking that is not after it, and those that have none. */
export function spansOf(
  cook: readonly number[],
  eaten: readonly number[],
): { readonly spans: readonly EatingSpan[]; readonly early: readonly number[] } {
  const spans = cook.map((cooked, i): EatingSpan => {
    const next = cook[i + 1] ?? Number.POSITIVE_INFINITY;
    return { cooked, eaten: eaten.filter((day) => day >= cooked && day < next) };
  });
  const first = cook[0] ?? Number.POSITIVE_INFINITY;
  return { spans, early: eaten.filter((day) => day < first) };
}
