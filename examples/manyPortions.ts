/**
 * For the analyst: portions for half a million energy targets, worked out slice by slice by a pool of
 * workers, with progress. However the targets are sliced the figures are the same.
 */
import { once } from "node:events";
import { Worker } from "node:worker_threads";
import { sheet } from "steelyard";
import { portionsAt } from "steelyard/bulk";
import { starterFoods } from "steelyard/foods";
import { inSlices, type Lane } from "./manyPortions/pool.ts";
import { oatPot, seedTopping } from "./recipes.ts";

const pot = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });
const energy = Float64Array.from({ length: 500_000 }, (_, i) => 350 + i / 1000);
const components = ["protein", "iron", "folate"] as const;

const workers = [1, 2].map(() => new Worker(new URL("./manyPortions/fromSource.mjs", import.meta.url)));
const lanes = workers.map(
  (worker): Lane => ({
    send: (message, move) => worker.postMessage(message, move),
    next: async () => (await once(worker, "message"))[0],
  }),
);
let told = 0;
const whole = await inSlices(pot, energy, components, lanes, {
  slice: 60_000,
  progress: (done, of) => {
    if (Math.floor((4 * done) / of) > told) console.log(`${Math.round((100 * done) / of)} % done`);
    told = Math.floor((4 * done) / of);
  },
});
await Promise.all(workers.map((worker) => worker.terminate()));

const alone = portionsAt(pot, { energy }, components, { silent: "accept" });
for (const of of components) {
  const values = whole.get(of) ?? new Float64Array();
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const isSame = values.every((value, i) => value === alone.columns[of].value[i]);
  console.log(
    `${of}: ${mean.toFixed(3)} ${alone.columns[of].unit} on average, ${isSame ? "as" : "not as"} in one go`,
  );
}
