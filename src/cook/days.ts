import { anyText } from "../document/leaves.ts";
import { list, type Schema } from "../document/schema.ts";
import { type Path, quote } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import { name } from "../plan/read/name.ts";

/** A year and a leap day: more would be a plan that nobody keeps, and takes long to show. */
const MOST_DAYS = 366;

/** The days of a schedule by their place. Without any there is one, which has no name. */
export class Days {
  readonly names: readonly string[];
  /** Whether there is a list of them at all; without one, names say nothing. */
  readonly isKnown: boolean;
  readonly #places: ReadonlyMap<string, number>;

  constructor(names: readonly string[], isKnown = true) {
    this.names = names;
    this.isKnown = isKnown;
    this.#places = new Map(names.map((name, i) => [name, i]));
  }

  get count(): number {
    return Math.max(1, this.names.length);
  }

  /** Every place, in order. */
  get all(): readonly number[] {
    return Array.from({ length: this.count }, (_, i) => i);
  }

  place(name: string): number | undefined {
    return this.#places.get(name);
  }
}

/** Tells what is at fault, by its place. */
export type RefuseAt = (path: Path, message: string, hint: string) => void;

/** The schema of the days of a schedule, in order. */
export function cookingDaysSchema(): Schema<readonly string[]> {
  return list(name(), { least: 1, most: MOST_DAYS, like: '["Sun", "Mon", "Tue"]' });
}

/** The schema of some of them. */
export function someDaysSchema(): Schema<readonly string[]> {
  return list(anyText(), { most: MOST_DAYS, like: '["Sun", "Wed"]' });
}

/** The days of a list, told apart; names that were refused are left out. */
export function daysOf(given: readonly (string | undefined)[], isKnown: boolean, refuse: RefuseAt): Days {
  given.forEach((name, i) => {
    if (name !== undefined && given.indexOf(name) < i)
      refuse(["days", i], `${quote(name)} comes twice`, 'tell them apart: "Sun 1", "Sun 2"');
  });
  return new Days([...new Set(given.filter((name) => name !== undefined))], isKnown);
}

/** Places of days that a list names, in their own order. */
export function placesOf(
  given: readonly string[],
  path: Path,
  days: Days,
  refuse: RefuseAt,
): readonly number[] {
  const found = new Set<number>();
  for (const [i, name] of given.entries()) {
    if (name === undefined) continue;
    const place = days.place(name);
    if (place !== undefined) found.add(place);
    else if (days.isKnown) refuse([...path, i], `no day is called ${quote(name)}`, dayHint(name, days));
  }
  return [...found].sort((a, b) => a - b);
}

function dayHint(name: string, days: Days): string {
  if (days.names.length === 0) return 'name the days first, in order: days: ["Sun", "Mon", "Tue"]';
  return didYouMean(name, days.names, `use ${someOf(days.names)}`);
}

/** Some days by name, the first few of many. */
export function dayList(days: Days, places: readonly number[]): string {
  const named = places.map((place) => days.names[place] ?? "");
  return named.length > 5 ? `${someOf(named)} and ${named.length - 5} more` : someOf(named);
}

/** The first few names of a list, for a hint. */
export function someOf(names: readonly string[]): string {
  if (names.length === 0) return "none: there are no others";
  return names
    .slice(0, 5)
    .map((name) => quote(name))
    .join(", ");
}

/** What is given by id, each with its place in the input; ids that are not known are faults. */
export function known<T>(
  given: { readonly [id: string]: T | undefined } | undefined,
  path: Path,
  about: { readonly what: string; readonly names: readonly string[] },
  refuse: RefuseAt,
): readonly { readonly name: string; readonly value: T; readonly path: Path }[] {
  return Object.entries(given ?? {}).flatMap(([name, value]) => {
    const at = [...path, name];
    if (about.names.includes(name)) return value === undefined ? [] : [{ name, value, path: at }];
    const hint = didYouMean(name, about.names, `use ${someOf(about.names)}`);
    refuse(at, `no ${about.what} is called ${quote(name)}`, hint);
    return [];
  });
}
