import { type Path, quote } from "../number/error.ts";
import { didYouMean } from "../number/near.ts";
import { type Given, own, type PlanFaults } from "../plan/read/planFaults.ts";

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

  place(name: unknown): number | undefined {
    return typeof name === "string" ? this.#places.get(name) : undefined;
  }
}

/** Reads the list of days; one that cannot be read is none, and a fault. */
export function readDays(faults: PlanFaults, given: unknown): Days {
  if (given === undefined) return new Days([]);
  const hint = 'name them in order: ["Sun", "Mon", "Tue"]';
  const list = faults.list(given, ["days"], "the list of days", hint);
  if (!list || !isOfLength(faults, list, ["days"])) return new Days([], false);
  if (list.length === 0) faults.refuse(["days"], "a schedule without days", "leave days out, or name one");
  const seen = new Set<string>();
  for (const [i, each] of list.entries()) {
    const name = faults.name(each, ["days", i], hint);
    if (name === undefined) continue;
    if (seen.has(name)) {
      faults.refuse(["days", i], `${quote(name)} comes twice`, 'tell them apart: "Sun 1", "Sun 2"');
    }
    seen.add(name);
  }
  return new Days([...seen]);
}

function isOfLength(faults: PlanFaults, list: readonly unknown[], path: Path): boolean {
  if (list.length <= MOST_DAYS) return true;
  faults.refuse(
    path,
    `a list of ${list.length} days`,
    `give at most ${MOST_DAYS}: make one schedule after another`,
  );
  return false;
}

/** Places of days that a list names, in their own order; nothing where it is left out or no list. */
export function readSomeDays(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  days: Days,
): readonly number[] | undefined {
  if (given === undefined) return undefined;
  const list = faults.list(given, path, "the list of days", 'name days of the schedule: ["Sun", "Wed"]');
  if (!list || !isOfLength(faults, list, path)) return undefined;
  const found = new Set<number>();
  for (const [i, name] of list.entries()) {
    const place = days.place(name);
    if (place !== undefined) found.add(place);
    else if (days.isKnown)
      faults.refuse([...path, i], `no day is called ${quote(name)}`, dayHint(name, days));
  }
  return [...found].sort((a, b) => a - b);
}

function dayHint(name: unknown, days: Days): string {
  if (days.names.length === 0) return 'name the days first, in order: days: ["Sun", "Mon", "Tue"]';
  const otherwise = `use ${someOf(days.names)}`;
  return typeof name === "string" ? didYouMean(name, days.names, otherwise) : otherwise;
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
export function readByName(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  about: { readonly what: string; readonly names: readonly string[]; readonly hint: string },
): readonly { readonly name: string; readonly value: unknown; readonly path: Path }[] {
  if (given === undefined) return [];
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    faults.refuse(path, `expected an object by ${about.what}`, about.hint);
    return [];
  }
  const known = new Set(about.names);
  return Object.keys(given).flatMap((name) => {
    const at = [...path, name];
    if (known.has(name)) return [{ name, value: own(given as Given, name), path: at }];
    const hint = didYouMean(name, about.names, `use ${someOf(about.names)}`);
    faults.refuse(at, `no ${about.what} is called ${quote(name)}`, hint);
    return [];
  });
}
