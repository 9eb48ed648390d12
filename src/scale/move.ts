import { britishEnglish } from "../document/language.ts";
import { timesAmount } from "../measure/amount.ts";
import { type Exact, equals, fraction, isZero, ONE, over, times, ZERO } from "../number/exact.ts";
import { compareRatios } from "../number/ratio.ts";
import { lineNameIn } from "../sheet/names.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { impliedYield, massesOf } from "../sheet/values.ts";

/** Something that a cook should know about a scaled sheet. Never an error. */
export interface ScaleNote {
  readonly code: "below-least" | "above-most" | "large-factor" | "inner-dose-moved";
  /** The line it speaks of; nothing where it speaks of the whole. */
  readonly line: string | undefined;
  readonly text: string;
}

/**
 * A sheet with every line multiplied by a factor of its own, for a number of portions. The yield
 * factor stays, so the cooked mass follows; in other ratios than those that were weighed it is presumed.
 */
export function moveLines(s: Sheet, factors: readonly Exact[], portions: Exact): Sheet {
  const grams = s.values.grams.map((g, i) => times(g, factors[i] ?? ONE));
  const amounts = s.values.amounts.map((a, i) => timesAmount(a, factors[i] ?? ONE));
  const cooking = impliedYield(s.values.cooking, s.masses);
  const moved = { amounts, grams, portions, cooking };
  if (s.values.cooking.by !== "mass" || !isPotScaled(s, factors)) return s.version(moved);
  return s.version({ ...moved, cooking: { by: "mass", mass: massesOf(s.plan, moved).pot } });
}

/** Whether all that is cooked is multiplied by one factor. */
function isPotScaled(s: Sheet, factors: readonly Exact[]): boolean {
  const own = s.plan.lines.flatMap(({ line }, i) =>
    line.added === "serving" || isZero(s.values.grams[i] ?? ZERO) ? [] : [factors[i] ?? ONE],
  );
  return own.every((factor) => equals(factor, own[0] ?? ONE));
}

/** Factors of the batch beyond these carry a note: double, and half. Common practice, no source. */
const LARGE = 2n;

/** What a cook should know of `after`, made from `before`. */
export function notesOn(before: Sheet, after: Sheet): ScaleNote[] {
  return [...boundNotes(after), ...innerDoses(before, after), ...largeFactor(before, after)];
}

function boundNotes(s: Sheet): ScaleNote[] {
  return s.plan.lines.flatMap(({ line, least, most }, i): ScaleNote[] => {
    const grams = over(s.values.grams[i] ?? ZERO, s.values.portions);
    if (least !== undefined && compareRatios(grams, least) < 0) {
      return [
        {
          code: "below-least",
          line: line.key,
          text: `${lineNameIn(s, line.key, britishEnglish)} is below the least for one portion`,
        },
      ];
    }
    if (most !== undefined && compareRatios(grams, most) > 0) {
      return [
        {
          code: "above-most",
          line: line.key,
          text: `${lineNameIn(s, line.key, britishEnglish)} is above the most for one portion`,
        },
      ];
    }
    return [];
  });
}

/** A dose inside a nested recipe moves with it, which its own recipe did not want. */
function innerDoses(before: Sheet, after: Sheet): ScaleNote[] {
  return after.plan.lines.flatMap(({ line, nested }, i): ScaleNote[] => {
    const per = (s: Sheet): Exact => over(s.values.grams[i] ?? ZERO, s.values.portions);
    if (!nested || compareRatios(per(before), per(after)) === 0) return [];
    return dosesWithin(nested).map((inner) => {
      const key = `${line.key}/${inner}`;
      return {
        code: "inner-dose-moved",
        line: key,
        text: `${lineNameIn(after, key, britishEnglish)} is the same for every portion of ${nested.name}, and moved with it here`,
      };
    });
  });
}

function dosesWithin(s: Sheet): string[] {
  return s.plan.lines.flatMap(({ line, nested }) => {
    if (line.scaling === "per-portion") return [line.key];
    return nested ? dosesWithin(nested).map((inner) => `${line.key}/${inner}`) : [];
  });
}

function largeFactor(before: Sheet, after: Sheet): ScaleNote[] {
  const [was, is] = [before.masses.raw, after.masses.raw];
  if (was.n === 0n || is.n === 0n) return [];
  const ratio = over(is, was);
  const large = compareRatios(ratio, fraction(LARGE)) > 0 || compareRatios(ratio, fraction(1n, LARGE)) < 0;
  const text =
    "cooking times, pans, leavening and strong spices do not follow the amounts: check them by eye and taste";
  return large ? [{ code: "large-factor", line: undefined, text }] : [];
}
