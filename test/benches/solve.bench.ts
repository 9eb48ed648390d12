import fc from "fast-check";
import { bench, describe } from "vitest";
import { fraction } from "../../src/number/exact.ts";
import type { AmountsProblem } from "../../src/scale/solve/amounts.ts";
import { chooseAmounts } from "../../src/scale/solve/choose.ts";
import { minimise, minimiseInTurn } from "../../src/scale/solve/minimise.ts";
import type { Objective } from "../../src/scale/solve/programme.ts";
import { runs } from "../runs.ts";
import { asModel, solveOutside } from "../scale/solve/outside.ts";
import { roundOutside } from "../scale/solve/outsideRounding.ts";
import { fitProgramme } from "../scale/solve/programmes.ts";
import { rounding } from "../scale/solve/roundings.ts";

/** Goes round a list of problems, one a turn, so that no solver is timed on a single lucky one. */
function inTurn<T>(all: readonly T[], solve: (one: T) => unknown): () => void {
  let at = 0;
  return () => {
    solve(all[at % all.length] as T);
    at += 1;
  };
}

for (const moving of [2, 4, 8, 16, 200]) {
  const fits = fc.sample(fitProgramme(moving, { min: 2, max: 4 }), {
    seed: 1,
    numRuns: runs(moving > 100 ? 8 : 64),
  });
  const models = fits.map(({ programme, objective }) => asModel(programme, objective));
  describe(`a linear programme in the shape of a fit, ${moving} lines to move`, () => {
    bench(
      "exact",
      inTurn(fits, ({ programme, objective }) => minimise(programme, objective)),
    );
    bench("HiGHS, in floats", inTurn(models, solveOutside));
    // The departures, the common factor nearest to 1, then each line in turn.
    const every = fits.map(({ programme, objective }) => {
      const each = Array.from({ length: moving }, (_, j): Objective => [2 * j, 2 * j + 1].map(one));
      return { programme, objectives: [objective, [one(2 * moving)], ...each] };
    });
    bench(
      "exact, every tie settled",
      inTurn(every, ({ programme, objectives }) => minimiseInTurn(programme, objectives)),
    );
  });
}

function one(variable: number): Objective[number] {
  return { variable, coefficient: fraction(1n) };
}

const shape = { lines: 20, candidates: 4, demands: 3, tolerance: 20 };
const problems = fc.sample(rounding(shape), { seed: 1, numRuns: runs(40) });
const free = problems.map(({ common: _, ...p }): AmountsProblem => p);
const held = problems.map((p): AmountsProblem => ({ ...p, common: fraction(1n) }));
for (const [name, all] of [
  ["the common factor free", free],
  ["the common factor held at 1", held],
] as const) {
  // HiGHS is given the least excess, so it solves once what is solved twice here.
  const known = all.map((p) => {
    const answer = chooseAmounts(p);
    const excess = "excess" in answer ? Number(answer.excess.n) / Number(answer.excess.d) + 1e-9 : 0;
    return { p, excess };
  });
  describe(`amounts for 20 lines × 4 candidates × 3 demands, ${name}`, () => {
    bench(
      "exact, proven",
      inTurn(all, (p) => chooseAmounts(p)),
    );
    bench(
      "HiGHS, in floats",
      inTurn(known, ({ p, excess }) => roundOutside(p, { excess })),
      { iterations: 40, time: 3000 },
    );
  });
}
