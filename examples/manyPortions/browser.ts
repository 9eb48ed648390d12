/** For a page: the same pool over a browser's workers. A bundler builds this file and `browserWorker.ts`. */
import { sheet } from "steelyard";
import { starterFoods } from "steelyard/foods";
import { oatPot, seedTopping } from "../recipes.ts";
import { inSlices, type Lane } from "./pool.ts";
import type { Answer } from "./work.ts";

/** As much of a browser's worker as this needs. */
interface PageWorker {
  onmessage: (event: { readonly data: Answer }) => void;
  postMessage(message: unknown, move?: ArrayBuffer[]): void;
  terminate(): void;
}
declare const Worker: new (url: string, how: { readonly type: "module" }) => PageWorker;

/** Protein of so many portions from 400 kcal on, a tenth of a kcal apart, worked out by so many workers. */
export async function manyPortions(
  count: number,
  workers: number,
  progress: (done: number, of: number) => void,
): Promise<Float64Array> {
  const all = Array.from({ length: workers }, () => new Worker("browserWorker.js", { type: "module" }));
  const lanes = all.map((worker): Lane => {
    let take: (answer: Answer) => void = () => {};
    worker.onmessage = ({ data }) => take(data);
    return {
      send: (message, move) => worker.postMessage(message, move),
      next: () =>
        new Promise((done) => {
          take = done;
        }),
    };
  });
  const s = sheet(oatPot, starterFoods, { recipes: { "seed-topping": seedTopping } });
  const energy = Float64Array.from({ length: count }, (_, i) => 400 + i / 10);
  const slice = Math.ceil(count / (4 * workers));
  const whole = await inSlices(s, energy, ["protein"], lanes, { slice, progress });
  for (const worker of all) worker.terminate();
  return whole.get("protein") ?? new Float64Array();
}

Object.assign(globalThis, { manyPortions });
