import { type Amount, amount, gramsOf, millilitresOf } from "../measure/amount.ts";
import { collect, type Path, quote } from "../number/error.ts";
import { exact, type Fraction, isZero, type Value } from "../number/fraction.ts";
import { kindOf, type PlanFaults } from "../plan/read/planFaults.ts";
import type { WrittenAmount } from "../recipe/document.ts";
import { type IsAway, readAway, THERE } from "./away.ts";
import { type Days, readByName, readSomeDays } from "./days.ts";
import type { MealSchedule, RunsHow } from "./input.ts";

/** A vessel, read. */
export interface ReadVessel {
  readonly capacity: Amount;
  /** In grams or millilitres. */
  readonly size: Fraction;
  readonly runs: RunsHow;
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

const MEAL: readonly string[] = [
  "eaten",
  "cook",
  "servings",
  "away",
  "vessel",
  "vessels",
] satisfies (keyof MealSchedule)[];
const VESSEL: readonly string[] = ["capacity", "runs"];
const RUNS: readonly RunsHow[] = ["equal", "full", "one"];
const MOST_SERVINGS = 10_000n;

/** A meal of which nothing is said: eaten every day, one portion each, in no vessel that is known. */
export const EVERY_DAY: ReadMealSchedule = {
  eaten: undefined,
  cook: undefined,
  servings: () => 1n,
  isAway: THERE,
  vessel: () => undefined,
};

export function readMealSchedule(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  known: Known,
): ReadMealSchedule {
  const { days, dishes } = known;
  const hint = 'say when it is eaten, or in what it is cooked: { vessel: "2 l" }';
  const meal = faults.record(given, path, "a meal's schedule", MEAL, hint);
  if (!meal) return EVERY_DAY;
  const usual = meal.vessel === undefined ? undefined : readVessel(faults, meal.vessel, [...path, "vessel"]);
  const byDish = new Map(
    readByName(faults, meal.vessels, [...path, "vessels"], {
      what: "dish",
      names: dishes,
      hint: 'write vessels by dish: { pot: "2 l" }',
    }).map(({ name, value, path }) => [name, readVessel(faults, value, path)]),
  );
  return {
    eaten: readSomeDays(faults, meal.eaten, [...path, "eaten"], days),
    cook: readSomeDays(faults, meal.cook, [...path, "cook"], days),
    servings: readServings(faults, meal.servings, [...path, "servings"], known),
    isAway: readAway(faults, meal.away, [...path, "away"], known),
    vessel: (dish) => byDish.get(dish) ?? usual,
  };
}

function readServings(
  faults: PlanFaults,
  given: unknown,
  path: Path,
  { people, isPlanned }: Known,
): ReadMealSchedule["servings"] {
  if (given === undefined) return EVERY_DAY.servings;
  const isOne = typeof given !== "object" || given === null || "toFixed" in given;
  if (isOne) {
    const count = readCount(faults, given, path);
    return () => count;
  }
  const counts = new Map(
    readByName(faults, given, path, {
      what: "person",
      names: people,
      hint: "give a whole number, or one for each person: { cox: 2 }",
    }).map(({ name, value, path }) => {
      const count = readCount(faults, value, path);
      if (count > 0n && !isPlanned(name)) {
        const hint = "let the plan have them there for it, or leave them out here";
        faults.refuse(path, `the plan has ${quote(name)} away from this meal, without a portion`, hint);
      }
      return [name, count];
    }),
  );
  return (person) => counts.get(person) ?? 1n;
}

function readCount(faults: PlanFaults, given: unknown, path: Path): bigint {
  const count = collect(faults.all, path, () => exact(given as Value));
  if (!count || (count.d === 1n && count.n >= 0n && count.n <= MOST_SERVINGS)) return count?.n ?? 1n;
  faults.refuse(path, `${quote(given)} portions`, `give a whole number from 0 to ${MOST_SERVINGS}`);
  return 1n;
}

function readVessel(faults: PlanFaults, given: unknown, path: Path): ReadVessel | undefined {
  const hint = 'write how much it holds: "2 l", or { capacity: "2 l", runs: "full" }';
  if (typeof given === "string") return vesselOf(faults, given, path, "equal");
  const vessel = faults.record(given, path, "a vessel", VESSEL, hint);
  if (!vessel) return undefined;
  const runs = RUNS.find((each) => each === (vessel.runs ?? "equal"));
  if (runs === undefined) {
    faults.refuse([...path, "runs"], `runs is ${kindOf(vessel.runs)}`, 'write "equal", "full" or "one"');
  }
  return vesselOf(faults, vessel.capacity, [...path, "capacity"], runs ?? "equal");
}

function vesselOf(faults: PlanFaults, given: unknown, path: Path, runs: RunsHow): ReadVessel | undefined {
  const capacity = collect(faults.all, path, () => amount(given as WrittenAmount));
  if (!capacity) return undefined;
  const size = gramsOf(capacity) ?? millilitresOf(capacity);
  if (size && !isZero(size)) return { capacity, size, runs };
  const hint = 'write a volume or a weight above 0: "2 l", "1.5 kg"';
  return faults.refuse(path, `a capacity of ${quote(given)}`, hint);
}
