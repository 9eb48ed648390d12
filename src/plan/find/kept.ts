import { type Fault, type Path, quote, throwIfAny } from "../../number/error.ts";
import { type Exact, isZero, ONE, over, ZERO } from "../../number/exact.ts";
import { didYouMean } from "../../number/near.ts";
import { moveLines } from "../../scale/move.ts";
import type { Sheet } from "../../sheet/sheet.ts";
import { type Answered, ServedPortion } from "../portion.ts";
import type { ReadMeal } from "../read/readMeal.ts";
import type { KeptAmounts, LineFactors } from "../share/lineFactors.ts";
import type { BesideOfDay } from "./dayTask.ts";

/** A portion that stays as it was: what is not named of its dishes is none. Throws what it names that is not there. */
export function keptPortion(person: string, meal: ReadMeal, kept: KeptAmounts, path: Path): ServedPortion {
  const faults: Fault[] = [];
  const factors: LineFactors = new Map(
    Object.entries(kept).flatMap(([dish, lines]) => {
      const s = meal.dishes.get(dish);
      if (s) return [[dish, factorsOf(faults, s, lines, [...path, dish])] as const];
      const hint = didYouMean(dish, meal.dishes.keys(), "use a dish of the meal");
      faults.push({
        code: "plan-malformed",
        path: [...path, dish],
        message: `no dish is called ${quote(dish)}`,
        hint,
      });
      return [];
    }),
  );
  throwIfAny(faults);
  const [first] = factors.values();
  const answer: Answered = { status: "met", factor: first?.[0] ?? ZERO, factors, fit: undefined };
  return new ServedPortion(person, meal, answer);
}

function factorsOf(
  faults: Fault[],
  { plan, values }: Sheet,
  lines: { readonly [line: string]: Exact },
  path: Path,
): readonly Exact[] {
  const keys = plan.lines.map(({ line }) => line.key);
  for (const key of Object.keys(lines)) {
    if (keys.includes(key)) continue;
    const hint = didYouMean(key, keys, "use a key from the dish's lines");
    faults.push({
      code: "line-unknown",
      path: [...path, key],
      message: `there is no line ${quote(key)}`,
      hint,
    });
  }
  return keys.map((key, i) => {
    const written = values.grams[i] ?? ZERO;
    const own = Object.hasOwn(lines, key) ? lines[key] : undefined;
    return !own || isZero(written) ? ZERO : over(own, written);
  });
}

/** What a kept portion brings to its day: as what is eaten of that meal, which nothing moves. */
export function besidesOfKept(portion: ServedPortion, meal: ReadMeal): readonly BesideOfDay[] {
  return [...portion.factors()].flatMap(([dish, factors]) => {
    const s = meal.dishes.get(dish);
    return s ? [{ name: dish, sheet: moveLines(s, factors, ONE), meal: meal.id }] : [];
  });
}
