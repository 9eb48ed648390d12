import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Amount, sameAmount } from "../../src/measure/amount.ts";
import { formatAmount } from "../../src/measure/format.ts";
import { exactText } from "../../src/number/digits.ts";
import {
  absolute,
  type Exact,
  equals,
  exact,
  isZero,
  least,
  minus,
  ONE,
  over,
  sum,
  ZERO,
} from "../../src/number/exact.ts";
import { compareRatios } from "../../src/number/ratio.ts";
import type { RecipeInput } from "../../src/recipe/document.ts";
import { Rounded, RoundingOutOfReach, roundToKitchen } from "../../src/scale/round.ts";
import { toRecipe } from "../../src/sheet/recipe.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { met, runs, seedFor } from "../runs.ts";
import { faultIn } from "../scale/round/checker.ts";
import { broughtBy, build, type World, worlds } from "../scale/round/dishes.ts";
import { endsOf, isSizeHeld, judged, standing } from "../scale/round/judge.ts";

/** Laws of rounding, held in fractions, on sheets' public figures. */

const some = worlds({ lines: { min: 1, max: 6 }, demands: { min: 0, max: 3 } });
const few = worlds({ lines: { min: 1, max: 4 }, demands: { min: 0, max: 3 } });

function check<T>(name: string, worlds: fc.Arbitrary<T>, law: (world: T) => void, quick = 80): void {
  fc.assert(fc.property(worlds, law), { seed: seedFor(`rounding: ${name}`, 2), numRuns: runs(quick) });
}

function round({ sheet: s, place, demands, tolerance }: World): Rounded | RoundingOutOfReach {
  return roundToKitchen(s, place, { demands, tolerance });
}

/** Σ |grams ÷ (grams before × common) − 1|, by the best of all common factors that can be it. */
function driftOf(ratios: readonly Exact[], isFree: boolean): Exact {
  const at = (common: Exact): Exact => sum(ratios.map((ratio) => absolute(minus(over(ratio, common), ONE))));
  return isFree && ratios.length > 0 ? ratios.map(at).reduce(least) : at(ONE);
}

function ratiosIn(found: Rounded, before: Sheet): Exact[] {
  return found.sheet.lines.flatMap((line, i) =>
    found.lines[i]?.kept === undefined ? [over(line.grams, before.lines[i]?.grams ?? ONE)] : [],
  );
}

describe("rounding", () => {
  it("says what its amounts do: excess, drift, and what each demand comes to", () => {
    const seen = { met: 0, nearest: 0, stopped: 0, "out-of-reach": 0 };
    check("figures", some, (world) => {
      const { sheet: s, demands, tolerance } = world;
      const found = round(world);
      seen[found.status] += 1;
      if (!(found instanceof Rounded)) return;
      const ends = standing(s, demands, tolerance);
      const { excess, firm } = judged(found.sheet, ends, tolerance);
      expect(firm).toBe(true);
      expect(exactText(found.drift.excess)).toBe(exactText(excess));
      const all = judged(found.sheet, endsOf(demands), tolerance);
      expect(found.status).toBe(isZero(all.excess) ? "met" : "nearest");
      const drift = driftOf(ratiosIn(found, s), isSizeHeld(ends));
      expect(exactText(found.drift.ratios)).toBe(exactText(drift));
      expect(exactText(sum(found.lines.map(({ drift: exactDrift }) => absolute(exactDrift))))).toBe(
        exactText(drift),
      );
      for (const { demand, before, brings, holds, heldBefore } of found.demands) {
        expect(brings && exactText(brings)).toEqual(textOf(broughtBy(found.sheet, demand)));
        expect(before && exactText(before)).toEqual(textOf(broughtBy(s, demand)));
        const [now, then] = [found.sheet, s].map((each) => judged(each, endsOf([demand]), tolerance));
        expect(holds).toBe(now?.firm && isZero(now.excess));
        expect(heldBefore).toBe(then?.firm && isZero(then.excess));
      }
    });
    expect(seen.met).toBeGreaterThan(met(15));
    expect(seen.nearest).toBeGreaterThan(met(9));
    expect(seen["out-of-reach"]).toBeGreaterThan(met(1));
    expect(seen.stopped).toBe(0);
  });

  it("gives only what is in the kitchen's set, by a checker of its own, and reports the rest", () => {
    let checked = 0;
    check("in the set", some, (world) => {
      const found = round(world);
      if (!(found instanceof Rounded)) return;
      found.sheet.lines.forEach(({ amount }, i) => {
        const { kept, measurable, after } = found.lines[i] ?? {};
        expect(after && sameAmount(after, amount)).toBe(true);
        const fault = faultIn(amount, world.place);
        if (kept === undefined) {
          checked += 1;
          expect(fault).toBeUndefined();
        } else if (measurable) expect(fault).toBeUndefined();
      });
    });
    expect(checked).toBeGreaterThan(met(120));
  });

  it("touches no per-portion line, and lets no line vanish", () => {
    check("doses", some, (world) => {
      const found = round(world);
      if (!(found instanceof Rounded)) return;
      expect(exactText(exact(found.sheet.portions))).toBe(exactText(exact(world.sheet.portions)));
      found.sheet.lines.forEach((line, i) => {
        const was = world.sheet.lines[i];
        if (!was) throw new Error("a line too many");
        if (line.scaling === "per-portion") {
          expect(sameAmount(line.amount, was.amount)).toBe(true);
          expect(equals(line.grams, was.grams)).toBe(true);
          expect(found.lines[i]?.kept).toBe("per-portion");
        }
        expect(line.grams.n > 0n).toBe(was.grams.n > 0n);
      });
    });
  });

  it("is never worse than rounding each line to its own nearest measure", () => {
    let better = 0;
    check("line by line", some, (world) => {
      const found = round(world);
      if (!(found instanceof Rounded) || !found.lineByLine.limitsHold) return;
      const excess = compareRatios(found.drift.excess, found.lineByLine.excess);
      const drift = compareRatios(found.drift.ratios, found.lineByLine.ratios);
      expect(excess === 0 ? drift : excess).toBeLessThanOrEqual(0);
      if ((excess || drift) < 0) better += 1;
    });
    expect(better).toBeGreaterThan(met(7));
  });

  it("told of line by line, tells the truth: each line's nearest, and what that comes to", () => {
    check("what line by line does", some, (world) => {
      const { sheet: s, demands, tolerance } = world;
      const found = round(world);
      if (!(found instanceof Rounded)) return;
      const each = remade(s, new Map(found.lines.map((line) => [line.line, line.lineByLine])));
      const { excess, firm } = judged(each, standing(s, demands, tolerance), tolerance);
      expect(found.lineByLine.limitsHold).toBe(firm);
      expect(exactText(found.lineByLine.excess)).toBe(exactText(excess));
      for (const [i, line] of found.lines.entries()) {
        if (line.kept !== undefined) continue;
        const aim = s.lines[i]?.grams ?? ZERO;
        const off = (of: Sheet): Exact => absolute(minus(of.lines[i]?.grams ?? ZERO, aim));
        expect(compareRatios(off(each), off(found.sheet))).toBeLessThanOrEqual(0);
      }
      for (const { demand, lineByLine } of found.demands)
        expect(lineByLine && exactText(lineByLine)).toEqual(textOf(broughtBy(each, demand)));
    });
  });

  it("changes nothing the second time", () => {
    check("twice", some, (world) => {
      const { sheet: s, place } = world;
      const once = roundToKitchen(s, place);
      if (!(once instanceof Rounded)) throw new Error("nothing was asked");
      const twice = roundToKitchen(once.sheet, place);
      if (!(twice instanceof Rounded)) throw new Error("nothing was asked");
      expect(exactText(twice.drift.ratios)).toBe("0");
      expect(gramsIn(twice.sheet)).toEqual(gramsIn(once.sheet));
    });
  });

  it("without demands rounds each line to its nearest", () => {
    check("no demands", some, ({ sheet: s, place }) => {
      const found = roundToKitchen(s, place);
      if (!(found instanceof Rounded)) throw new Error("nothing was asked");
      expect(found.status).toBe("met");
      expect(exactText(found.drift.ratios)).toBe(exactText(found.lineByLine.ratios));
    });
  });

  it("gives a sheet that its own recipe gives again", () => {
    check("there and back", some, (world) => {
      const found = round(world);
      if (!(found instanceof Rounded)) return;
      const again = build(JSON.parse(JSON.stringify(toRecipe(found.sheet))) as RecipeInput);
      expect(gramsIn(again)).toEqual(gramsIn(found.sheet));
      expect(exactText(again.portion("energy").value)).toBe(exactText(found.sheet.portion("energy").value));
      expect(exactText(again.portionMass)).toBe(exactText(found.sheet.portionMass));
    });
  });

  it("does not mind the order of lines or demands", () => {
    check("order", fc.tuple(some, fc.nat()), ([world, turn]) => {
      const { recipe, demands } = world;
      const turned = build({ ...recipe, lines: turnedBy(recipe.lines, turn) });
      const [a, b] = [round(world), round({ ...world, sheet: turned, demands: turnedBy(demands, turn) })];
      expect(b.status).toBe(a.status);
      if (!(a instanceof Rounded) || !(b instanceof Rounded)) return;
      expect(new Map(gramsIn(b.sheet))).toEqual(new Map(gramsIn(a.sheet)));
      expect(b.demands.map(({ asked }) => asked)).toEqual(a.demands.map(({ asked }) => asked));
    });
  });

  it("with more tolerance exceeds less, and what was met already drifts no more", () => {
    check("tolerance", few, (world) => {
      // What counts is what held before, which more tolerance makes more of: only demands that held by the tighter.
      const demands = world.demands.filter((d) => {
        const { excess } = judged(world.sheet, endsOf([d]), "0.005");
        return d.firm || isZero(excess);
      });
      const [tight, wide] = ["0.005", "0.03"].map((tolerance) => round({ ...world, demands, tolerance }));
      if (!(tight instanceof Rounded) || !(wide instanceof Rounded)) {
        expect(wide?.status).toBe(tight?.status);
        return;
      }
      expect(compareRatios(wide.drift.excess, tight.drift.excess)).toBeLessThanOrEqual(0);
      if (tight.status === "met")
        expect(compareRatios(wide.drift.ratios, tight.drift.ratios)).toBeLessThanOrEqual(0);
    });
  });

  it("with more to choose from is no worse", () => {
    check("each", few, ({ sheet: s, place, demands, tolerance }) => {
      const [narrow, wide] = [1, 3].map((each) => roundToKitchen(s, place, { demands, tolerance, each }));
      if (!(narrow instanceof Rounded)) return;
      if (!(wide instanceof Rounded)) throw new Error("what few amounts keep, more do");
      const order = compareRatios(wide.drift.excess, narrow.drift.excess);
      expect(order).toBeLessThanOrEqual(0);
      if (order === 0) expect(compareRatios(wide.drift.ratios, narrow.drift.ratios)).toBeLessThanOrEqual(0);
    });
  });

  it("cut short, says so, keeps the limits, and its bounds hold", () => {
    let cut = 0;
    const hard = worlds({ lines: { min: 4, max: 6 }, demands: { min: 2, max: 3 } });
    check("cut short", fc.tuple(hard, fc.integer({ min: 1, max: 12 })), ([world, nodes]) => {
      const { sheet: s, place, demands } = world;
      const how = { demands, tolerance: "0" };
      const [short, whole] = [roundToKitchen(s, place, { ...how, nodes }), roundToKitchen(s, place, how)];
      if (short instanceof RoundingOutOfReach) {
        if (short.proven) expect(whole.status).toBe("out-of-reach");
        return;
      }
      if (!(whole instanceof Rounded)) throw new Error("what is found cut short is there");
      if (short.status !== "stopped" || !short.bound) {
        expect(short.drift).toEqual(whole.drift);
        return;
      }
      cut += 1;
      expect(short.proven).toBe(false);
      expect(judged(short.sheet, endsOf(demands), "0").firm).toBe(true);
      expect(compareRatios(short.bound.excess, whole.drift.excess)).toBeLessThanOrEqual(0);
      expect(compareRatios(whole.drift.excess, short.drift.excess)).toBeLessThanOrEqual(0);
      expect(compareRatios(short.bound.ratios, whole.drift.ratios)).toBeLessThanOrEqual(0);
      if (!short.lineByLine.limitsHold) return;
      const excess = compareRatios(short.drift.excess, short.lineByLine.excess);
      const drift = compareRatios(short.drift.ratios, short.lineByLine.ratios);
      expect(excess === 0 ? drift : excess).toBeLessThanOrEqual(0);
    });
    expect(cut).toBeGreaterThan(met(6));
  });
});

function textOf(f: Exact | null): string | null {
  return f && exactText(f);
}

function gramsIn(s: Sheet): [string, string][] {
  return s.lines.map(({ key, grams }) => [key, exactText(grams)]);
}

/** The same dish with other amounts, cooked as before. */
function remade(s: Sheet, amounts: ReadonlyMap<string, Amount>): Sheet {
  const { cookedMass: _, ...recipe } = toRecipe(s);
  const measures = recipe.measures === undefined ? {} : { measures: recipe.measures };
  const lines = recipe.lines.map((line) => {
    const after = amounts.get(line.key);
    return after ? { ...line, amount: formatAmount(after, measures) } : line;
  });
  return build({ ...recipe, lines, yieldFactor: exactText(s.masses.yieldFactor) });
}

function turnedBy<T>(all: readonly T[], by: number): T[] {
  const at = all.length === 0 ? 0 : by % all.length;
  return [...all.slice(at), ...all.slice(0, at)].reverse();
}
