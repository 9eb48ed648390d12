import { byName, type Schema } from "../document/schema.ts";
import type { Path } from "../number/error.ts";
import { type Days, known, placesOf, type RefuseAt, someDaysSchema } from "./days.ts";

/** Whether someone is away on a day. */
export type IsAway = (person: string, day: number) => boolean;

/** Nobody ever is. */
export const THERE: IsAway = () => false;

/** Days on which people are away, by person. */
export type AwayDays = { readonly [person: string]: readonly string[] };

/** The schema of days on which people are away. */
export function awaySchema(): Schema<AwayDays> {
  return byName(someDaysSchema(), { like: '{ cox: ["Tue"] }' });
}

/** Reads on from days on which people are away. */
export function awayOf(
  given: AwayDays | undefined,
  path: Path,
  { people, days }: { readonly people: readonly string[]; readonly days: Days },
  refuse: RefuseAt,
): IsAway {
  const away = new Map(
    known(given, path, { what: "person", names: people }, refuse).map(({ name, value, path }) => [
      name,
      new Set(placesOf(value, path, days, refuse)),
    ]),
  );
  return (person, day) => away.get(person)?.has(day) ?? false;
}
