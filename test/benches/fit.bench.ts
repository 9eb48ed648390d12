import fc from "fast-check";
import { bench, describe } from "vitest";
import { layOut, objectivesOf, solve } from "../../src/scale/engine/programme.ts";
import { taskProblem } from "../../src/scale/engine/task.ts";
import { readTask } from "../../src/scale/fit/read.ts";
import { fit } from "../../src/scale/fit.ts";
import { runs } from "../runs.ts";
import { ratioModel, solved } from "../scale/fit/outside.ts";
import { type World, worlds } from "../scale/fit/worlds.ts";
import { solveOutside } from "../scale/solve/outside.ts";

/**
 * A whole fit, from a sheet and its demands to factors in exact fractions, every tie settled; beside
 * HiGHS, which is given the first objective only, from the same sheet. Then the programme alone, laid
 * out beforehand, beside HiGHS with its model ready made. All are warmed up first, as they are in a
 * plan for many: HiGHS comes compiled, and what is written in TypeScript is not until it has run for
 * a while.
 */

/** Goes round a list, one a turn, so that nothing is timed on a single lucky one. */
function inTurn<T>(all: readonly T[], solve: (one: T) => unknown): () => void {
  let at = 0;
  return () => {
    solve(all[at % all.length] as T);
    at += 1;
  };
}

for (const moving of [2, 4, 8, 16, 200]) {
  const shape = {
    adjustable: { min: moving, max: moving },
    demands: { min: 2, max: 4 },
    wild: 0,
    bounds: moving < 100,
  };
  const all: World[] = fc.sample(worlds(shape), { seed: 1, numRuns: runs(moving < 100 ? 64 : 8) });
  const laidOut = all.map(({ sheet, demands }) => {
    const { model, constraints } = taskProblem(readTask(sheet, demands, {}));
    const layout = layOut(model, constraints, false);
    return { layout, objectives: objectivesOf(layout) };
  });
  const models = all.map(({ recipe, sheet, demands }) => ratioModel(recipe, sheet, demands).model.data);
  const budget = moving < 100 ? { warmupTime: 1500, time: 1500 } : { iterations: 24, time: 2000 };
  describe(`a fit of ${moving} adjustable lines`, () => {
    bench(
      "fit, exact",
      inTurn(all, ({ sheet, demands }) => fit(sheet, demands).factor),
      budget,
    );
    bench(
      "HiGHS in floats, from the sheet",
      inTurn(all, ({ recipe, sheet, demands }) => solved(ratioModel(recipe, sheet, demands).model)),
      budget,
    );
    bench(
      "the programme alone, exact",
      inTurn(laidOut, ({ layout, objectives }) => solve(layout, objectives, undefined)),
      budget,
    );
    bench("HiGHS in floats, its model ready made", inTurn(models, solveOutside), budget);
  });
}
