import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactText } from "../../../src/number/digits.ts";
import { equals, fraction, ONE } from "../../../src/number/exact.ts";
import { compareRatios } from "../../../src/number/ratio.ts";
import { startingBasis, takeUp } from "../../../src/scale/solve/basis.ts";
import { propose } from "../../../src/scale/solve/guide.ts";
import { minimise, minimiseInTurn } from "../../../src/scale/solve/minimise.ts";
import { worth } from "../../../src/scale/solve/optimal.ts";
import type { Objective, Programme } from "../../../src/scale/solve/programme.ts";
import { lessen, meetBounds } from "../../../src/scale/solve/simplex.ts";
import { inWholes, objectiveInWholes } from "../../../src/scale/solve/whole.ts";
import { runs, seedFor } from "../../runs.ts";
import { asModel, asNumber, solveOutside } from "./outside.ts";
import { type Asked, anyProgramme, fitProgramme } from "./programmes.ts";
import { faultsOf } from "./proof.ts";

/** The same status as HiGHS, the same objective to its tolerance, and a proof that needs no solver. */
function agrees({ programme, objective }: Asked): void {
  const ours = minimise(programme, objective);
  expect(faultsOf(programme, objective, ours)).toEqual([]);
  const outside = solveOutside(asModel(programme, objective));
  expect(outside.status).toBe(ours.status);
  if (ours.status !== "optimal" || outside.status !== "optimal") return;
  const [least] = ours.objectives;
  expect(Math.abs(asNumber(least ?? ONE) - outside.objective)).toBeLessThan(
    1e-6 * (1 + Math.abs(outside.objective)),
  );
}

describe("against HiGHS, and proven without it", () => {
  // 600 programmes in the shape of fits, 600 of any shape.
  it.each([
    [2, 150],
    [4, 150],
    [8, 150],
    [16, 100],
    [40, 50],
  ])("fits with %i factors to move", (moving, quick) => {
    const seed = seedFor(`fits of ${moving}`, 3000 + moving);
    fc.assert(fc.property(fitProgramme(moving, { min: 1, max: 5 }), agrees), { seed, numRuns: runs(quick) });
  });

  it("programmes of any shape", () => {
    fc.assert(fc.property(anyProgramme, agrees), { seed: seedFor("any programme", 77), numRuns: runs(600) });
  });
});

/** The least objective by exact pivots from the basis of row totals, no proposal taken. */
function unaided({ programme, objective }: Asked): string {
  const b = startingBasis(inWholes(programme));
  if (meetBounds(b, 10_000) !== "met") return "infeasible";
  const whole = objectiveInWholes(objective, b.whole);
  const { end } = lessen(b, whole.costs, 10_000);
  return end === "least" ? exactText(worth(b, whole)) : end;
}

function aided({ programme, objective }: Asked): string {
  const solution = minimise(programme, objective);
  return solution.status === "optimal" ? exactText(solution.objectives[0] ?? ONE) : solution.status;
}

describe("what must hold of every programme", () => {
  it("the proposal in floats changes nothing of the answer", () => {
    const crossing = ({ lower, upper }: { lower?: typeof ONE; upper?: typeof ONE }): boolean =>
      lower !== undefined && upper !== undefined && compareRatios(lower, upper) > 0;
    const whole = fc
      .oneof(anyProgramme, fitProgramme(5, { min: 1, max: 5 }))
      .filter(({ programme }) => ![...programme.rows, ...programme.variables].some(crossing));
    fc.assert(
      fc.property(whole, (asked) => {
        expect(unaided(asked)).toBe(aided(asked));
      }),
      { seed: seedFor("unaided", 5), numRuns: runs(400) },
    );
  });

  it("the proposal leaves no pivot to make in nearly every fit", () => {
    const fits = fc.sample(fitProgramme(12, { min: 2, max: 5 }), {
      seed: seedFor("proposals", 7),
      numRuns: runs(200),
    });
    const further = fits.filter(({ programme, objective }) => {
      const b = startingBasis(inWholes(programme));
      const whole = objectiveInWholes(objective, b.whole);
      takeUp(b, propose(b.whole, b.standing, whole.costs) ?? [], 100);
      const { pivots } = b;
      if (meetBounds(b, 1000) === "met") lessen(b, whole.costs, 1000);
      return b.pivots > pivots;
    });
    expect(further.length).toBeLessThan(10);
  });

  it("the order of rows and variables changes nothing of the least objective", () => {
    const shuffled = anyProgramme.chain((asked) => {
      const n = asked.programme.variables.length;
      return fc.record({
        asked: fc.constant(asked),
        places: fc.shuffledSubarray([...Array(n).keys()], { minLength: n, maxLength: n }),
      });
    });
    fc.assert(
      fc.property(shuffled, ({ asked: { programme, objective }, places }) => {
        const moved = (terms: Objective): Objective =>
          terms.map((t) => ({ ...t, variable: places[t.variable] ?? 0 }));
        const variables = places.map((_, j) => programme.variables[places.indexOf(j)] ?? {});
        const rows = programme.rows.map((r) => ({ ...r, terms: moved(r.terms) })).reverse();
        expect(aided({ programme: { variables, rows }, objective: moved(objective) })).toBe(
          aided({ programme, objective }),
        );
      }),
      { seed: seedFor("order", 6), numRuns: runs(300) },
    );
  });

  it("objectives in turn give what holding each at its least by a row gives", () => {
    const several = anyProgramme.chain((asked) =>
      fc.record({
        asked: fc.constant(asked),
        more: fc.array(
          fc.array(fc.integer({ min: -3, max: 3 }), {
            minLength: asked.objective.length,
            maxLength: asked.objective.length,
          }),
          { minLength: 1, maxLength: 3 },
        ),
      }),
    );
    fc.assert(
      fc.property(several, ({ asked: { programme, objective }, more }) => {
        const objectives = [
          objective,
          ...more.map((cs) => cs.map((c, variable) => ({ variable, coefficient: fraction(BigInt(c)) }))),
        ];
        const inTurn = minimiseInTurn(programme, objectives);
        let held: Programme = programme;
        for (const [turn, terms] of objectives.entries()) {
          const one = minimise(held, terms);
          if (one.status !== "optimal") {
            expect(inTurn.status).toBe(one.status);
            if (inTurn.status === "unbounded") expect(inTurn.turn).toBe(turn);
            return;
          }
          const [least = ONE] = one.objectives;
          if (inTurn.status === "optimal") expect(equals(inTurn.objectives[turn] ?? ONE, least)).toBe(true);
          held = { ...held, rows: [...held.rows, { terms, lower: least, upper: least }] };
        }
        expect(inTurn.status).toBe("optimal");
        expect(faultsOf(programme, objective, inTurn)).toEqual([]);
      }),
      { seed: seedFor("in turn", 8), numRuns: runs(500) },
    );
  });

  it("a price is what easing its end a little buys, where the answer is not degenerate", () => {
    fc.assert(
      fc.property(fitProgramme(4, { min: 2, max: 4 }), ({ programme, objective }) => {
        const before = minimise(programme, objective);
        if (before.status !== "optimal") return;
        const basics = before.basis.variables.flatMap((s, j) =>
          s === "basic" ? [before.binding.variables[j]] : [],
        );
        const totals = before.basis.rows.flatMap((s, i) => (s === "basic" ? [before.binding.rows[i]] : []));
        if ([...basics, ...totals].some((end) => end !== "neither")) return;
        const step = fraction(1n, 10n ** 30n);
        for (const [i, row] of programme.rows.entries()) {
          const raised = {
            ...row,
            ...(row.lower && { lower: fraction(row.lower.n * step.d + row.lower.d, row.lower.d * step.d) }),
            ...(row.upper && { upper: fraction(row.upper.n * step.d + row.upper.d, row.upper.d * step.d) }),
          };
          const rows = programme.rows.map((r, k) => (k === i ? raised : r));
          const after = minimise({ ...programme, rows }, objective);
          if (after.status !== "optimal") throw new Error(after.status);
          const [was = ONE, is = ONE] = [before.objectives[0], after.objectives[0]];
          const gained = fraction((is.n * was.d - was.n * is.d) * step.d, is.d * was.d);
          expect(exactText(gained)).toBe(exactText(before.prices.rows[i] ?? ONE));
        }
      }),
      { seed: seedFor("prices", 9), numRuns: runs(60) },
    );
  });
});
