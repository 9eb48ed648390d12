import type { Path } from "../number/error.ts";
import type { PlanFaults } from "../plan/read/planFaults.ts";
import { type Days, readByName, readSomeDays } from "./days.ts";

/** Whether someone is away on a day. */
export type IsAway = (person: string, day: number) => boolean;

/** Nobody ever is. */
export const THERE: IsAway = () => false;

/** Reads days on which people are away, by person. */
export function readAway(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  { people, days }: { readonly people: readonly string[]; readonly days: Days },
): IsAway {
  const away = new Map(
    readByName(faults, given, path, {
      what: "person",
      names: people,
      hint: 'write days by the person\'s id: { cox: ["Tue"] }',
    }).map(({ name, value, path }) => [name, new Set(readSomeDays(faults, value, path, days) ?? [])]),
  );
  return (person, day) => away.get(person)?.has(day) ?? false;
}
