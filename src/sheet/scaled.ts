import { timesAmount } from "../measure/amount.ts";
import { fault } from "../number/error.ts";
import { type Exact, isZero, ONE, over, plus, sum, times } from "../number/exact.ts";
import type { SheetPlan } from "./plan.ts";
import { type Cooking, cookedMasses, lineYield, type Masses, massesOf, type Values } from "./values.ts";

/** Where scaled values come from: those that were first scaled, and all factors since as one. */
export interface FromOrigin {
  readonly origin: Values;
  /** What the held and adjustable lines of a portion were multiplied by. */
  readonly factor: Exact;
  readonly portions: Exact;
}

/** Binary digits of 90,000 decimal ones: what an amount can be written with, twice. */
const LONGEST_FACTOR = 299_000n;

/**
 * One factor more. Throws `number-too-long` where all of them together make one that no recipe could be
 * written with.
 */
export function onceMore(
  from: FromOrigin | undefined,
  values: Values,
  by: Exact,
  portions: Exact,
): FromOrigin {
  const { origin, factor } = from ?? { origin: values, factor: ONE };
  const all = times(factor, by);
  if ([all.n, all.d].some((part) => part >> LONGEST_FACTOR !== 0n)) {
    const hint = "scale the sheet that you began with by one factor of fewer digits";
    throw fault("number-too-long", "the factors make one of more than 90,000 digits", hint);
  }
  return { origin, factor: all, portions };
}

/**
 * Values scaled by one factor for portions of the size, and to a number of portions. Lines are
 * multiplied when first looked at, always from the origin, so that factors one after the other cost no
 * more than their product.
 */
export function scaledValues(plan: SheetPlan, from: FromOrigin): Values {
  const { origin, portions } = from;
  let factors: ReturnType<typeof factorsOf> | undefined;
  const factor = (i: number): Exact => {
    factors ??= factorsOf(from);
    return isDose(plan, i) ? factors.dose : factors.held;
  };
  return lazy({
    amounts: () => origin.amounts.map((a, i) => timesAmount(a, factor(i))),
    grams: () => origin.grams.map((g, i) => times(g, factor(i))),
    portions: () => portions,
    cooking: (): Cooking =>
      origin.cooking.by === "mass" ? { by: "mass", mass: scaledMasses(plan, from).pot } : origin.cooking,
  });
}

/** The masses of scaled values, from those of their origin: no sum of long fractions. */
export function scaledMasses(plan: SheetPlan, from: FromOrigin): Masses {
  const { grams } = from.origin;
  const { held, dose } = factorsOf(from);
  const of = (added: "cooking" | "serving", weighed: readonly Exact[] = grams): Exact => {
    const all = weighed.map((g, i) => [g, i] as const).filter(([, i]) => plan.lines[i]?.line.added === added);
    const doses = sum(all.flatMap(([g, i]) => (isDose(plan, i) ? g : [])));
    const rest = sum(all.flatMap(([g, i]) => (isDose(plan, i) ? [] : g)));
    return plus(times(rest, held), times(doses, dose));
  };
  const [raw, served] = [of("cooking"), of("serving")];
  if (from.origin.cooking.by !== "lines" || isZero(raw))
    return cookedMasses(raw, served, massesOf(plan, from.origin).yieldFactor);
  const pot = of(
    "cooking",
    grams.map((g, i) => times(g, lineYield(plan, i))),
  );
  return cookedMasses(raw, served, over(pot, raw));
}

/** What lines of the batch are multiplied by: those that a factor moves, and the doses. */
function factorsOf({ origin, factor, portions }: FromOrigin): {
  readonly held: Exact;
  readonly dose: Exact;
} {
  const dose = over(portions, origin.portions);
  return { held: times(factor, dose), dose };
}

function isDose(plan: SheetPlan, i: number): boolean {
  return plan.lines[i]?.line.scaling === "per-portion";
}

/** Fields that are each worked out when first asked for. */
function lazy<T extends object>(make: { readonly [K in keyof T]: () => T[K] }): T {
  const made: Partial<T> = {};
  for (const key of Object.keys(make) as (keyof T)[]) {
    let known: { readonly value: T[keyof T] } | undefined;
    Object.defineProperty(made, key, {
      enumerable: true,
      get: () => {
        known ??= { value: make[key]() };
        return known.value;
      },
    });
  }
  return made as T;
}
