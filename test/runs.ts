/**
 * How many random cases are drawn, and from which seed. `npm test` draws the same few every time; `npm run
 * test:long` draws `STEELYARD_RUNS` times as many, from the seed that it prints.
 */
const times = Number(process.env.STEELYARD_RUNS ?? 1);

/** Whether this is the long run, in which every slow case is tried. */
export const isLong: boolean = times > 1;

/** How many runs a property gets that has so many in `npm test`. */
export function runs(quick: number): number {
  return Math.max(1, Math.ceil(quick * times));
}

/** The seed of a random run of its own, printed so that it can be repeated: `STEELYARD_SEED`, or the usual one. */
export function seedFor(name: string, usual: number): number {
  const seed = Number(process.env.STEELYARD_SEED ?? usual);
  console.info(`${name}: seed ${seed}`);
  return seed;
}
