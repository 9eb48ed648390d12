import { number, word } from "../document/leaves.ts";
import { isRecord } from "../document/safe.ts";
import { andThen, byName, choice, coded, fields, optional, readAs, type Schema } from "../document/schema.ts";
import { type Amount, amount, gramsOf, millilitresOf } from "../measure/amount.ts";
import { type Path, quote } from "../number/error.ts";
import { type Exact, isZero, ZERO } from "../number/exact.ts";
import type { WrittenAmount } from "../recipe/document.ts";
import { writtenAmount } from "../recipe/schema.ts";
import { type AwayDays, awayOf, awaySchema, type IsAway, THERE } from "./away.ts";
import { type Days, known as knownIn, placesOf, type RefuseAt, someDaysSchema } from "./days.ts";
import type { RunsOptions } from "./input.ts";

/** A vessel, read. */
export interface ReadVessel {
  readonly capacity: Amount;
  /** In grams or millilitres. */
  readonly size: Exact;
  readonly runs: RunsOptions;
}

/** A meal's part of a schedule, read. */
export interface ReadMealSchedule {
  readonly eaten: readonly number[] | undefined;
  readonly cook: readonly number[] | undefined;
  /** Portions on each day that it is eaten. */
  readonly servings: (person: string) => bigint;
  /** From this meal, though they may be there for others. */
  readonly isAway: IsAway;
  readonly vessel: (dish: string) => ReadVessel | undefined;
}

/** What a schedule can name. */
export interface Known {
  readonly days: Days;
  readonly people: readonly string[];
  readonly dishes: readonly string[];
  /** Whether the plan has someone there for the meal. */
  readonly isPlanned: (person: string) => boolean;
}

/** The fields of a meal's schedule as they are read. */
interface MealFields {
  readonly eaten?: readonly string[];
  readonly cook?: readonly string[];
  readonly servings?: bigint | { readonly [person: string]: bigint };
  readonly away?: AwayDays;
  readonly vessel?: ReadVessel;
  readonly vessels?: { readonly [dish: string]: ReadVessel };
}

const MOST_SERVINGS = 10_000;

/** The schema of a meal's schedule, before the plan is looked at. */
export function mealScheduleSchema(): Schema<MealFields> {
  const days = optional(someDaysSchema());
  const vessel = vesselSchema();
  return fields<MealFields>({
    eaten: days,
    cook: days,
    servings: optional(servingsSchema()),
    away: optional(awaySchema()),
    vessel: optional(vessel),
    vessels: optional(byName(vessel, { like: '{ pot: "2 l" }' })),
  });
}

function servingsSchema(): Schema<bigint | { readonly [person: string]: bigint }> {
  const count = andThen(number({ from: 0, to: MOST_SERVINGS }), (read, refuse) => {
    if (read.d !== 1n) refuse(`${quote(read)} portions`, `give a whole number from 0 to ${MOST_SERVINGS}`);
    return read.n;
  });
  const each = byName(count);
  return choice<bigint | { readonly [person: string]: bigint }>(
    [count, each],
    (given) => (isRecord(given) ? each : count),
    "a whole number, or one for each person: { cox: 2 }",
  );
}

/** The schema of what a dish is made in. */
export function vesselSchema(): Schema<ReadVessel> {
  const capacity = andThen(readAs(writtenAmount(), "how much it holds", amountOf), (capacity, refuse) => {
    const size = gramsOf(capacity) ?? millilitresOf(capacity);
    if (!size || isZero(size))
      refuse(`a capacity of ${quote(capacity)}`, 'write a volume or a weight above 0: "2 l", "1.5 kg"');
    return { capacity, size: size ?? ZERO };
  });
  const plain = andThen(capacity, (holds): ReadVessel => ({ ...holds, runs: "equal" }));
  const full = andThen(
    fields<{ readonly capacity: Omit<ReadVessel, "runs">; readonly runs?: RunsOptions }>({
      capacity: coded("amount-malformed", capacity),
      runs: optional(word(["equal", "full", "one"])),
    }),
    ({ capacity, runs = "equal" }): ReadVessel => ({ ...capacity, runs }),
  );
  return choice<ReadVessel>(
    [plain, full],
    (given) => (typeof given === "string" ? plain : isRecord(given) ? full : undefined),
    'how much it holds: "2 l", or { capacity: "2 l", runs: "full" }',
  );
}

function amountOf(given: unknown): Amount {
  return amount(given as WrittenAmount);
}

/** A meal of which nothing is said: eaten every day, one portion each, in no vessel that is known. */
export const EVERY_DAY: ReadMealSchedule = {
  eaten: undefined,
  cook: undefined,
  servings: () => 1n,
  isAway: THERE,
  vessel: () => undefined,
};

/** Reads on from a meal's schedule. */
export function mealScheduleOf(
  { eaten, cook, servings, away, vessel, vessels }: MealFields,
  path: Path,
  known: Known,
  refuse: RefuseAt,
): ReadMealSchedule {
  const { days, dishes } = known;
  const places = (given: readonly string[] | undefined, field: string): readonly number[] | undefined =>
    given && placesOf(given, [...path, field], days, refuse);
  const byDish = new Map(
    knownIn(vessels, [...path, "vessels"], { what: "dish", names: dishes }, refuse).map(({ name, value }) => [
      name,
      value,
    ]),
  );
  return {
    eaten: places(eaten, "eaten"),
    cook: places(cook, "cook"),
    servings: servingsOf(servings, [...path, "servings"], known, refuse),
    isAway: awayOf(away, [...path, "away"], known, refuse),
    vessel: (dish) => byDish.get(dish) ?? vessel,
  };
}

function servingsOf(
  given: MealFields["servings"],
  path: Path,
  { people, isPlanned }: Known,
  refuse: RefuseAt,
): ReadMealSchedule["servings"] {
  if (given === undefined) return EVERY_DAY.servings;
  if (typeof given === "bigint") return () => given;
  const counts = new Map(
    knownIn(given, path, { what: "person", names: people }, refuse).map(({ name, value, path }) => {
      if (value > 0n && !isPlanned(name)) {
        const hint = "let the plan have them there for it, or leave them out here";
        refuse(path, `the plan has ${quote(name)} away from this meal, without a portion`, hint);
      }
      return [name, value];
    }),
  );
  return (person) => counts.get(person) ?? 1n;
}
