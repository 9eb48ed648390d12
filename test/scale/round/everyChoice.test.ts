import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Demand } from "../../../src/scale/demand.ts";
import { Rounded, RoundingOutOfReach, roundToKitchen } from "../../../src/scale/round.ts";
import type { Sheet, SheetLine } from "../../../src/sheet/sheet.ts";
import { runs, seedFor } from "../../runs.ts";
import { asNumber } from "../solve/outside.ts";
import { type Shape, type World, worlds } from "./dishes.ts";
import { type End, isSizeHeld, standing } from "./judge.ts";
import { offersOf, perGram } from "./offers.ts";

/**
 * Roundings beside every choice there is, one after another, by the rule as it is told. Nothing of it
 * comes from the code that rounds: what lines bring is read off public cells, what they may become off
 * the kitchen, and the rest is doubles.
 */

interface Line {
  readonly grams: number;
  readonly offers: readonly number[];
  /** What a gram brings, by what is asked of. */
  readonly brings: Readonly<Record<string, number>>;
}

const QUANTITIES = ["energy", "protein", "fat", "carbohydrateByDifference", "sodium", "mass"] as const;

function linesOf({ sheet: s, place }: World): Line[] {
  return s.lines.map((line) => ({
    grams: asNumber(line.grams),
    offers: offersFor(s, line, place),
    brings: Object.fromEntries(QUANTITIES.map((of) => [of, asNumber(perGram(s, line, of))])),
  }));
}

/** A dose stays; so does what the kitchen cannot measure. */
function offersFor(s: Sheet, line: SheetLine, place: World["place"]): number[] {
  return line.scaling === "per-portion" ? [] : offersOf(s, line, place).map(asNumber);
}

/** What a portion brings of what a demand is about, by the grams of its lines. */
function brought(lines: readonly Line[], grams: readonly number[], { of, ratioOf }: Demand): number {
  const all = (quantity: string): number =>
    lines.reduce((sum, { brings }, i) => sum + (brings[quantity] ?? 0) * (grams[i] ?? 0), 0);
  if (of !== undefined) return all(of);
  if (ratioOf) return all(ratioOf[0]) / all(ratioOf[1]);
  // General factors, 4, 9 and 4 kcal/g: FAO Food and Nutrition Paper 77 (2003), 3.5.
  const fat = 9 * all("fat");
  return fat / (fat + 4 * (all("protein") + all("carbohydrateByDifference")));
}

/** How far an end is missed beyond its slack, as a share of it. */
function missed({ demand, asked, side, firm }: End, brings: number, tolerance: number): number {
  const end = asNumber(asked) * (1 + (firm ? 0 : tolerance) * side);
  return ((brings - end) * side) / (asNumber(asked) || 1) + (Number.isNaN(brings) && demand ? -1 : 0);
}

/** No difference, in doubles. */
const TINY = 1e-10;

interface Judged {
  readonly excess: number;
  readonly drift: number;
}

function judge(
  lines: readonly Line[],
  grams: readonly number[],
  ends: readonly End[],
  tolerance: number,
): Judged | undefined {
  let excess = 0;
  for (const end of ends) {
    const by = missed(end, brought(lines, grams, end.demand), tolerance);
    if (Number.isNaN(by) || by <= TINY) continue;
    if (end.firm) return undefined;
    excess = Math.max(excess, by);
  }
  const ratios = grams.flatMap((g, i) => (lines[i]?.offers.length === 0 ? [] : [g / (lines[i]?.grams ?? 1)]));
  const drifts = (isSizeHeld(ends) ? ratios : [1]).map((common) =>
    ratios.reduce((sum, ratio) => sum + Math.abs(ratio / common - 1), 0),
  );
  return { excess, drift: ratios.length === 0 ? 0 : Math.min(...drifts) };
}

function* everyChoice(lines: readonly Line[]): Generator<number[]> {
  const [first, ...rest] = lines;
  if (!first) yield [];
  else {
    const own = first.offers.length === 0 ? [first.grams] : first.offers;
    for (const grams of own) for (const others of everyChoice(rest)) yield [grams, ...others];
  }
}

function best(lines: readonly Line[], ends: readonly End[], tolerance: number): Judged | undefined {
  const all = [...everyChoice(lines)].flatMap((grams) => judge(lines, grams, ends, tolerance) ?? []);
  const excess = Math.min(...all.map((each) => each.excess));
  const within = all.filter((each) => each.excess <= excess + TINY);
  return within.length === 0 ? undefined : { excess, drift: Math.min(...within.map(({ drift }) => drift)) };
}

describe("a rounding beside every choice there is", () => {
  const lines = { min: 2, max: 4 };
  const cases: [string, Shape, number][] = [
    [
      "shares of energy and ratios",
      { lines, demands: { min: 1, max: 2 }, of: ["fat-share", "ratio"], off: 2 },
      600,
    ],
    [
      "amounts",
      { lines, demands: { min: 1, max: 3 }, of: ["energy", "energy", "protein", "sodium", "mass"] },
      2000,
    ],
    ["amounts beside shares and ratios", { lines, demands: { min: 2, max: 4 }, off: 3 }, 1400],
  ];
  it.each(cases)(
    "%s",
    (name, shape, all) => {
      const numRuns = runs(all / 10);
      const seen = { met: 0, nearest: 0, stopped: 0, "out-of-reach": 0, exceeded: 0 };
      const law = (world: World): void => {
        const { sheet: s, place, demands, tolerance } = world;
        const found = roundToKitchen(s, place, { demands, tolerance });
        seen[found.status] += 1;
        const own = linesOf(world);
        const ends = standing(s, demands, tolerance);
        const least = best(own, ends, Number(tolerance));
        if (!least || !(found instanceof Rounded)) {
          expect([least, found instanceof RoundingOutOfReach]).toEqual([undefined, true]);
          return;
        }
        if (least.excess > 0) seen.exceeded += 1;
        const { excess, ratios } = found.drift;
        expect(asNumber(excess)).toBeCloseTo(least.excess, 9);
        expect(asNumber(ratios)).toBeCloseTo(least.drift, 9);
        const chosen = found.sheet.lines.map((line) => asNumber(line.grams));
        const now = judge(own, chosen, ends, Number(tolerance));
        expect(now?.excess).toBeCloseTo(least.excess, 9);
        expect(now?.drift).toBeCloseTo(least.drift, 9);
      };
      fc.assert(fc.property(worlds(shape), law), { seed: seedFor(`every choice: ${name}`, 61), numRuns });
      expect(seen.stopped).toBe(0);
      expect(seen.met).toBeGreaterThan(numRuns / 10);
      expect(seen.exceeded).toBeGreaterThan(numRuns / 50);
    },
    240_000,
  );
});
